/** Ablehnungen der Berührung: Kugeln in Sitzen, Ketten von Teilen, Werkstoffe. */
import { asRead, quoted, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const CONTACT_REFUSALS = {
  'core-over-thread': ({ core, d }) =>
    `Der Kern von ${say(core)} mm ist dicker als das Gewinde von ${say(d)} mm: Gib einen Kern darunter.`,
  'nothing-swings': () => 'Ohne Gewicht schwingt nichts: Gib ein Gewicht über 0 N.',
  'dent-out-of-range': ({ load, least, most }) =>
    `Die Formeln für eine Delle gelten für diese Kugel und dieses Metall von ${say(least, 3)} N bis ${say(most, 3)} N, gelesen ${say(load, 3)} N: Nimm eine Last dazwischen.`,
  'contact-too-wide': ({ across, radius }) =>
    `Die Berührung wäre ${say(across)} mm breit auf einer Kugel von ${say(radius)} mm Radius, weit jenseits der Theorie kleiner Berührflächen: Nimm weniger Last oder eine größere Kugel.`,
  'vee-closed': () =>
    'Ein geschlossenes Prisma lässt keine Kugel hinein: Gib einen halben Winkel von 1° bis 89°, 45° für ein rechtwinkliges.',
  'vee-flat': () =>
    'Ein auf 180° geöffnetes Prisma ist eine Planfläche mit einer Berührung und nicht zweien: Nimm die Kugel auf einer Planfläche.',
  'relative-radii': ({ Rx, Ry }) =>
    `Relative Radien: gelesen ${asRead(Rx)} mm und ${asRead(Ry)} mm; gib beide über 0 und bis 1000000 mm: Eine Rille muss weiter sein als die Kugel.`,
  'contact-is-a-line': () =>
    'Ein Radius ist mehr als eine Million Mal der andere, das ist eine Linie, keine Ellipse: Nimm die Berührung eines Rings oder einer Rolle.',
  'contact-as-large-as-ball': () =>
    'Die Berührung wäre so groß wie die Kugel, weit jenseits der Theorie kleiner Berührflächen: Nimm weniger Last.',
  'rollers-collide': ({ radius, spacing }) =>
    `Rollen von ${say(radius)} mm Radius können nicht ${say(spacing)} mm auseinanderliegen, sie stießen zusammen: Gib mindestens ${say(2 * radius)} mm.`,
  'ball-falls-between-rollers': ({ spacing, most }) =>
    `Die Kugel fällt zwischen Rollen hindurch, die ${say(spacing)} mm auseinanderliegen: Halte sie unter ${say(most)} mm.`,
  'wedge-force-past-bounds': ({ load, across }) =>
    `Der Keil macht aus ${say(load)} N an jeder Berührung ${say(across)} N, über 100000 N: Nimm weniger Last oder ein weiteres Prisma.`,
  'contacts-run-into-one': () =>
    'Die beiden Berührungen laufen in eine zusammen, darum lassen sie sich nicht einzeln rechnen: Nimm weniger Last oder einen engeren Sitz.',
  'cone-angle': () =>
    'Ein Kegel braucht zwischen Seite und Achse einen halben Winkel von 1° bis 89°: Gib einen wie 45°; einer von 90° ist eine Planfläche.',
  'ring-too-broad': () =>
    'Der Ring der Berührung wäre so breit wie sein eigener Radius, jenseits der Theorie kleiner Berührflächen: Nimm weniger Last.',
  'no-such-material': ({ read, known }) =>
    `Gelesen: ${quoted(read)}, das nicht in der Tabelle steht: Nimm ${known.join(', ')}.`,
  'chain-of-no-part': () =>
    'Kein Teil ist genannt: Gib mindestens eines mit seiner Steifigkeit, etwa Schaft 50000 N/mm.',
  'part-stiffness': ({ part, stiffness }) =>
    `Steifigkeit (${part}): gelesen ${asRead(stiffness)}; gib einen Wert über 0 und bis 1000000000000 N/mm.`,
} satisfies Partial<RefusalWords>;
