/** Ablehnungen einer Liste von Ablesungen nach einer Einstellung. */
import { quoted } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const FIELDS = { time: 'Zeit', reading: 'Messuhr', temperature: 'Temperatur' } as const;

export const SETTLING = {
  'settling-too-few': ({ readings, least }) =>
    `Es sind ${readings} Ablesungen, zu wenige, um ein Gesetz vom anderen zu unterscheiden: Lies mindestens ${least}-mal ab.`,
  'settling-no-time': () =>
    'Alle Ablesungen sind von einer Zeit, darum ist über Bewegung nichts zu sagen: Lies später wieder ab und schreibe die Zeit daneben.',
  'settling-out-of-range': ({ row }) =>
    `Zeile ${row} der Liste hat eine Zeit vor der Einstellung oder eine Zahl, die keine Ablesung hat: Achte auf ihre Einheiten.`,
  'log-row-unread': ({ row, text }) =>
    `Zeile ${row} der Liste: gelesen ${quoted(text)}; schreibe Zeit, Messuhr und, wenn du sie abliest, Temperatur, wie 2 h; -1,4 µm; 20,6.`,
  'log-value': ({ row, field, why }, reasonOf) => `Zeile ${row} der Liste, ${FIELDS[field]}: ${reasonOf(why)}`,
  'log-some-warm': ({ row }) =>
    `Zeile ${row} der Liste hat keine Temperatur und andere haben eine: Gib sie in jeder Zeile oder in keiner.`,
  'log-too-long': ({ rows, most }) => `Die Liste hat ${rows} Zeilen; behalte ${most} davon.`,
} satisfies Partial<RefusalWords>;
