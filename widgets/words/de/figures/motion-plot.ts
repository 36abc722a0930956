/** Wörter des Orts über den Umdrehungen. */
import type * as En from '../../en/figures/motion-plot.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Ort über den Umdrehungen',
  curves: { relative: 'Hubteil auf Stellteil', turned: 'Stellteil', carried: 'Hubteil' },
  allThree: 'Alle drei Bewegungen',
  carriedAlone: 'Das Hubteil allein',
  panel: (name, unit) => `${name}, in ${unit}`,
  turns: 'Umdrehungen, im Uhrzeigersinn',
  caption: ({ reach, turned, relative, carried, turns, here }) =>
    `Drei Geraden durch null. Über ${reach} Umdrehungen bewegt sich das Stellteil um ${turned}, das Hubteil darauf um ${relative} und das Hubteil selbst nur um ${carried}. Bei ${turns} steht es bei ${here}.`,
};
