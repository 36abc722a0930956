/**
 * Exact leads. A net lead is a small difference of larger numbers, so nothing may be rounded before the subtraction.
 *
 * A metric lead is the decimal it is written as, an inch lead 25.4 N/tpi = 127 N/(5 tpi) mm (1 in = 25.4 mm exactly, NIST SP 811,
 * B.8). Both are fractions of whole numbers, and so is every difference of them: 25.4/36 − 0.7 = 127/180 − 126/180 = 1/180 mm.
 * Numerator and denominator are bigints, reduced, the denominator positive; the unit is mm.
 */
import { type Millimetres, mm } from '../kernel/quantity.ts';
import type { Thread } from '../thread/thread.ts';

/** top/bottom, reduced; bottom > 0. */
export interface Fraction {
  readonly top: bigint;
  readonly bottom: bigint;
}

const divisor = (a: bigint, b: bigint): bigint => {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y > 0n) [x, y] = [y, x % y];
  return x;
};

/** top/bottom in lowest terms; a bottom of nought is a programmer's mistake. */
export const fraction = (top: bigint, bottom = 1n): Fraction => {
  if (bottom === 0n) throw new RangeError('A fraction over nought.');
  const common = divisor(top, bottom) * (bottom < 0n ? -1n : 1n);
  return { top: top / common, bottom: bottom / common };
};

export const minus = (a: Fraction, b: Fraction): Fraction =>
  fraction(a.top * b.bottom - b.top * a.bottom, a.bottom * b.bottom);
export const times = (a: Fraction, whole: number): Fraction => fraction(a.top * BigInt(whole), a.bottom);
export const leastCommonMultiple = (a: bigint, b: bigint): bigint => (a / divisor(a, b)) * b;

/** Nearest binary number. Where top or bottom is more than a double holds, 60 decimals are worked out and read as one number. */
export const numberOf = ({ top, bottom }: Fraction): number => {
  const size = top < 0n ? -top : top;
  if (size <= BigInt(Number.MAX_SAFE_INTEGER) && bottom <= BigInt(Number.MAX_SAFE_INTEGER))
    return Number(top) / Number(bottom);
  return Number(`${(top * 10n ** 60n) / bottom}e-60`);
};

/**
 * The decimal a number was written as: the fewest digits that read back as it, at most 12 of them, so that 25.4 × 0.05 counts as the
 * 1.27 it stands for. `x` is finite.
 */
export const decimalFraction = (x: number): Fraction => {
  const [, sign = '', whole = '0', decimals = '', exponent = '0'] =
    /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/.exec(String(Number(x.toPrecision(12)))) ?? [];
  const power = Number(exponent) - decimals.length;
  const top = BigInt(`${sign}${whole}${decimals}`);
  return power >= 0 ? fraction(top * 10n ** BigInt(power)) : fraction(top, 10n ** BigInt(-power));
};

/** The lead of a thread in mm, exactly; always positive, the hand is not in it. */
export const leadFraction = (thread: Pick<Thread, 'P' | 'N' | 'tpi'>): Fraction => {
  if (thread.tpi === undefined) return times(decimalFraction(thread.P), thread.N);
  const tpi = decimalFraction(thread.tpi);
  return fraction(127n * BigInt(thread.N) * tpi.bottom, 5n * tpi.top);
};

/** h_C L_C − h_A L_A in mm, exactly. */
export const netLeadFraction = (A: Thread, C: Thread): Fraction =>
  minus(times(leadFraction(C), C.h), times(leadFraction(A), A.h));

/** `1/180`, `−3/20`, `3 7/80`, `3`, `0`: whole part first, a true minus. */
export const fractionText = ({ top, bottom }: Fraction): string => {
  const size = top < 0n ? -top : top;
  const [whole, rest] = [size / bottom, size % bottom];
  const parts = [...(whole > 0n || rest === 0n ? [whole] : []), ...(rest > 0n ? [`${rest}/${bottom}`] : [])];
  return `${top < 0n ? '−' : ''}${parts.join(' ')}`;
};

/** A lead kept to so many decimals of a millimetre, halves up, as one writes it down; leads are positive. */
const roundedLead = (lead: Fraction, decimals: number): Fraction => {
  const scale = 10n ** BigInt(decimals);
  return fraction((2n * lead.top * scale + lead.bottom) / (2n * lead.bottom), scale);
};

export interface RoundedFirst {
  readonly decimals: number;
  readonly L_A: Millimetres;
  readonly L_C: Millimetres;
  /** Net lead of the rounded leads. */
  readonly Delta: Millimetres;
  /** Relative to the exact net lead, with its sign; nought where nothing was lost. Undefined where the exact net lead is nought. */
  readonly error: number | undefined;
}

/** What comes out when both leads are rounded to so many decimals of a millimetre before they are subtracted. */
export const roundedFirst = (A: Thread, C: Thread, decimals: number): RoundedFirst => {
  const [a, c] = [roundedLead(leadFraction(A), decimals), roundedLead(leadFraction(C), decimals)];
  const rounded = minus(times(c, C.h), times(a, A.h));
  const exact = netLeadFraction(A, C);
  const off = minus(rounded, exact);
  return {
    decimals,
    L_A: mm(numberOf(a)),
    L_C: mm(numberOf(c)),
    Delta: mm(numberOf(rounded)),
    error: exact.top === 0n ? undefined : numberOf(fraction(off.top * exact.bottom, off.bottom * exact.top)),
  };
};
