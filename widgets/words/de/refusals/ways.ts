/** Ablehnungen der anderen Arten zu derselben Bewegung. */
import { asRead, type Refusals, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const SIZES: Readonly<Record<Refusals['wanted-size']['what'], string>> = {
  resolution: 'Auflösung',
  stroke: 'Hub',
  height: 'Höhe',
  'short arm': 'Kurzer Arm',
  seat: 'Sitz des Keils',
  engagement: 'Einschraublänge',
  ball: 'Radius der Kugeln',
};

export const WAYS_REFUSALS = {
  'hand-angle-of-nought': () => 'Der wiederholbare Handwinkel ist über 0°: Gib einen wie 1,5°.',
  'balls-collide': ({ radius, spacing }) =>
    `Kugeln mit ${say(radius)} mm Radius können ihre Mitten nicht ${say(spacing)} mm auseinander haben: Gib mindestens ${say(2 * radius)} mm, wo sie sich berühren.`,
  'ball-falls-between-balls': ({ spacing, most }) =>
    `Die Kugel fällt zwischen Kugeln hindurch, die ${say(spacing)} mm auseinanderliegen: Halte sie unter ${say(most)} mm.`,
  'wanted-size': ({ what, value, most }) =>
    `${SIZES[what]}: gelesen ${asRead(value)} mm; gib einen Wert über 0 mm und bis ${asRead(most)} mm.`,
  'hand-angle': ({ angle }) =>
    `Wiederholbarer Handwinkel: gelesen ${say((angle * 180) / Math.PI)}°; gib einen über 0°, etwa 1,5°.`,
  'price-of-way': ({ way, price }) => `Preis (${way}): gelesen ${asRead(price)}; gib eine Zahl ab 0 oder lass ihn weg.`,
  'pair-of-equal-leads': () =>
    'Die beiden Steigungen des Paars sind gleich, darum bewegt es nichts: Wähle Gewinde mit verschiedenen Steigungen.',
  'wedge-jams': () =>
    'Die Neigung und der doppelte Reibungswinkel erreichen zusammen einen rechten Winkel, darum klemmt der Keil, und kein Druck treibt ihn: Nimm eine flachere Neigung oder weniger Reibung.',
  'height-of-top-ball': () =>
    'Die Mitte der oberen Kugel steht über den anderen und nicht höher als beide Radien zusammen: Gib eine Höhe dazwischen.',
  'nothing-bends': () =>
    'Die Last steht über der Schraube oder dahinter, darum biegt sich dazwischen kein Teil dieses Balkens: Gib einen kurzen Arm unter dem langen.',
  'load-past-screw': () =>
    'Die Last steht hinter der Schraube und würde den Balken von seinem Drehpunkt heben: Gib eine Bewegung der Spitze, die nicht größer ist als die des Antriebs, höchstens 1.',
  'ways-without-load': () =>
    'Last längs der Achse: gelesen 0 N; ohne Last ist kein Kraftaufwand zu vergleichen: Gib eine wie 50 N.',
} satisfies Partial<RefusalWords>;
