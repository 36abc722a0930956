/**
 * Which answers count as right: within max(1 %, half a unit of the last digit asked) of the engine's value. The edges are
 * rounded outwards to one digit more than was asked, so that they can be printed as they are.
 */
export interface Interval {
  readonly low: number;
  readonly high: number;
  /** Decimals of both edges. */
  readonly decimals: number;
}

const SHARE = 0.01;

/** `amount` is not nought; `digits` are significant digits. */
export const acceptedInterval = (amount: number, digits: number): Interval => {
  const size = Math.abs(amount);
  const exponent = Math.floor(Math.log10(size));
  const half = Math.max(SHARE * size, 10 ** (exponent - digits + 1) / 2);
  const decimals = Math.max(0, digits - exponent);
  const scale = 10 ** decimals;
  // A hair, so that an edge that is a round number is not pushed out by its binary spelling.
  const hair = 1e-7;
  return {
    low: Math.floor((amount - half) * scale + hair) / scale,
    high: Math.ceil((amount + half) * scale - hair) / scale,
    decimals,
  };
};

/** Half a unit of the last digit asked: how far off a value may be that was rounded to it. */
export const halfDigit = (amount: number, digits: number): number =>
  amount === 0 ? 0 : 10 ** (Math.floor(Math.log10(Math.abs(amount))) - digits + 1) / 2;

/** Within the edges, a thousandth of their last digit being lost in arithmetic. */
export const within = (amount: number, { low, high, decimals }: Interval): boolean => {
  const hair = 1e-3 * 10 ** -decimals;
  return amount >= low - hair && amount <= high + hair;
};
