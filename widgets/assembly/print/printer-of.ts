/** What a printer does to widths, as read once off its ladder coupon. */
import { good, holeOffset, mm, outsideOffset, plain, type Result, rungWidth } from '../../engine/index.ts';
import type { Printer } from './clip-plate.ts';
import { type Ladder, ladderOf } from './coupons.ts';

export const LADDER_QUANTITIES = ['w_n', 'w_s', 'i_r', 'w_p'] as const;
export type LadderValues = Readonly<Record<(typeof LADDER_QUANTITIES)[number], number>>;

export interface PrinterRead {
  readonly ladder: Ladder;
  readonly printer: Omit<Printer, 'line'>;
  /** Drawn width of the rung that takes the piece. */
  readonly rung: number;
}

export const printerOf = ({ w_n, w_s, i_r, w_p }: LadderValues): Result<PrinterRead> => {
  const ladder = ladderOf(w_n, w_s);
  const rung = rungWidth.of({ w_n: mm(w_n), w_s: mm(w_s), i_r: plain(i_r) });
  if (!rung.ok) return rung;
  const holes = holeOffset.of({ ...rung.value, w_n: mm(w_n) });
  if (!holes.ok) return holes;
  const outsides = outsideOffset.of({ w_p: mm(w_p), w_d: mm(ladder.across) });
  if (!outsides.ok) return outsides;
  return good({ ladder, rung: rung.value.w_d, printer: { holes: holes.value.o_h, outsides: outsides.value.o_u } });
};
