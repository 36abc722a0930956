/** Ablehnungen der Bilder vom Steigungsfehler bis zu den Prismen. */
import { spokenNumber } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const FIGURES_B = {
  'round-readings': ({ round, given, places }) =>
    `Runde ${round} hat ${given} ${given === 1 ? 'Ablesung' : 'Ablesungen'} für ${places} Stellen; gib eine für jede Stelle, in derselben Reihenfolge, oder nimm diese Zeile weg.`,
  'turns-beyond-drawing': ({ read, most }) =>
    `Gelesen: ${read} Umdrehungen; die Zeichnung hat Platz für ${most} nach jeder Seite.`,
  'ways-unlike-hands': () =>
    'Die beiden Gewinde des Paars sind entgegengesetzt gängig, darum addieren sich ihre Steigungen, und die Bewegung ist grob: Gib beiden dieselbe Gangrichtung.',
  'loop-loses-too-much': ({ turns }) =>
    `Dieses Paar hätte bei Umkehr einen toten Gang von ${turns} Umdrehungen, mehr als das Bild zeigen kann; nimm Gewinde, deren Steigungen sich mehr unterscheiden.`,
  'nothing-to-round': ({ A, C }) =>
    `${spokenNumber(A)} und ${spokenNumber(C)} haben bis zur letzten Ziffer dieselbe Steigung, darum gibt es nichts zu runden: Wähle Gewinde mit verschiedenen Steigungen.`,
  'batch-of-equal-leads': () =>
    'Die beiden Steigungen sind gleich, darum nimmt keine Zahl von Umdrehungen das Spiel auf: Wähle Gewinde mit verschiedenen Steigungen.',
  'nothing-goes-together': () =>
    'Nichts Gezogenes geht zusammen: Jede Schraube hatte eine Mutter, die kleiner ist als sie. Wähle Toleranzklassen mit mehr Spiel.',
  'force-needed-below-nought': ({ needed }) => `Gelesen: ${needed} als Kraft, die bleiben muss; gib null oder mehr.`,
  'spring-too-weak-when-new': ({ start, needed }) =>
    `Die Feder beginnt mit ${start}, unter den ${needed}, die bleiben müssen. Die Flanken liegen also schon neu nicht an: Gib eine stärkere Feder.`,
  'part-without-weight': () =>
    'Das Teil hat hier kein Gewicht, darum drückt nichts die Kugeln in ihre Prismen: Gib eines über 0 N.',
} satisfies Partial<RefusalWords>;
