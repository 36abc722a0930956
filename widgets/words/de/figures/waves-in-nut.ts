/** Wörter der zwei Wellen, die ringsum anliegen. */
import type * as En from '../../en/figures/waves-in-nut.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Zwei Wellen, die ringsum anliegen',
  unrolled:
    'Die Flanke der Mutter, gefüllt, und darauf die der Schraube, einmal herum und abgewickelt; der Punkt ist, wo sie sich berühren',
  round: 'einmal herum, abgewickelt',
  panel: 'Die Schraube steht höher um',
  plan: 'Wohin die Spitze in einer Umdrehung geht, von oben, wenn die Schraube frei kippen und wenn sie frei seitlich gehen kann',
  tilts: 'die Spitze, wenn die Schraube kippt',
  goes: 'die Spitze, wenn sie seitlich geht',
  rows: {
    stands: 'steht an dieser Stelle höher um',
    through: 'Amplitude der Bewegung, aufrecht geführt',
    lean: 'Neigung, wenn sie frei kippt',
    tip: 'die Spitze, dadurch neben der Achse',
    shift: 'neben der Achse, wenn sie frei seitlich geht',
  },
  caption: (v) =>
    `Aufrecht geführt, schwankt die Bewegung mit einer Amplitude von ${v.through}. Kann die Schraube in einer genauen Mutter frei kippen, läuft stattdessen die Spitze im Abstand von ${v.tip} um die Achse; kann sie frei seitlich gehen, im Abstand von ${v.shift}.`,
  head: ['Umdrehungen von da, wo die Wellen am besten passen', 'höher um'],
};
