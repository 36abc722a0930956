/** Places on an axis: its ends, round ones, even ones. */

/** 1, 2 or 5 times a power of ten, no smaller than wanted. */
export const roundStep = (wanted: number): number => {
  const ten = 10 ** Math.floor(Math.log10(wanted));
  return ([1, 2, 5].find((k) => k * ten >= wanted * (1 - 1e-9)) ?? 10) * ten;
};

/** About `count` round values between two bounds, in order; a round step apart. */
export const roundTicks = (least: number, most: number, count: number): readonly number[] => {
  const span = most - least;
  if (!(span > 0 && Number.isFinite(span))) return [];
  const step = roundStep(span / count);
  const ticks: number[] = [];
  for (let i = Math.ceil(least / step - 1e-9); i <= Math.floor(most / step + 1e-9); i++) ticks.push(i * step + 0);
  return ticks;
};

/** A line of figures for a table, from end to end. */
export const evenly = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

/** The least and the most of these, of which there may be a hundred thousand. */
export const extent = (values: Iterable<number>): [number, number] => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const v of values) {
    if (v < low) low = v;
    if (v > high) high = v;
  }
  return [low, high];
};
