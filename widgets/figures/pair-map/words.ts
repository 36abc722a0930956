/** A pair and its numbers as list and sentence write them. */

import { WORDS } from '#words/figures/pair-map.ts';
import type { PairRow } from '../../engine/index.ts';
import { spokenNumber } from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';

export const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 4 }, view);
export const percent = (share: number): string => `${withSign(numeral(100 * share, 2))} %`;
export const off = (share: number): string => (Math.abs(share) < 5e-5 ? WORDS.onTheMark : percent(share));
export const named = (p: PairRow): string => spokenNumber(`${p.A.designation} ${WORDS.with} ${p.C.designation}`);

/** What a sentence tells of a pair. */
export const factsOf = (p: PairRow, view: UnitView) => ({
  pair: named(p),
  aTurn: motion(Math.abs(p.Delta), view),
  step: motion(p.step, view),
  off: off(p.off),
  stroke: motion(p.stroke, view),
  gain: numeral(p.gain, 3),
});
