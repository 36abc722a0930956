/** Warum keine Linie durch Ablesungen geht, und was die Rechenwerkzeuge sonst ablehnen. */
import { asRead, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const NUMERICS = {
  'places-unlike-readings': ({ places, readings }) =>
    `Gelesen: ${places} Stellen und ${readings} Ablesungen; jede Stelle braucht eine Ablesung: Gib von beiden gleich viele.`,
  'rows-too-few': ({ rows }) =>
    `Gelesen: ${rows} ${rows === 1 ? 'Ablesung' : 'Ablesungen'}; eine Linie braucht zwei und ihre Unsicherheit eine mehr: Gib mindestens drei, besser zehn.`,
  'row-not-numbers': ({ row, x, y }) => `Zeile ${row} hat ${asRead(x)} und ${asRead(y)}; gib zwei Zahlen.`,
  'places-all-alike': ({ rows, x }) =>
    `Alle ${rows} Ablesungen stehen bei ${say(x)}; ein Anstieg braucht Ablesungen an mindestens zwei Stellen.`,
  'readings-all-alike': ({ rows, y }) =>
    `Alle ${rows} Ablesungen sind ${say(y)}; nichts bewegte sich oder nichts wurde abgelesen: Prüfe, ob die Messuhr anliegt und die Sicherung hält.`,
  'level-not-a-share': ({ level }) =>
    `Gelesen: ein Niveau von ${asRead(level)}; gib einen Anteil zwischen 0 und 1, etwa 0,95.`,
  'freedom-out-of-range': ({ freedom }) =>
    `Gelesen: ${asRead(freedom)} Freiheitsgrade; gib eine ganze Zahl von 1 bis zu einer Million: Es muss mehr Ablesungen geben als Unbekannte.`,
  'seed-out-of-range': ({ seed }) =>
    `Startzahl: gelesen ${asRead(seed)}; gib eine ganze Zahl von 0 bis ${Number.MAX_SAFE_INTEGER}.`,
} satisfies Partial<RefusalWords>;
