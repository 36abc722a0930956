/** A pair and its numbers as list and sentence write them. */
import type { PairRow } from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';

export const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 4 }, view);
export const percent = (share: number): string => `${withSign(numeral(100 * share, 2))} %`;
export const off = (share: number): string => (Math.abs(share) < 5e-5 ? 'on the mark' : percent(share));
export const named = (p: PairRow): string => `${p.A.designation} with ${p.C.designation}`;
