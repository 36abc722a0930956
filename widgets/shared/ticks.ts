/** Round places on an axis. */

/** About `count` round values between two bounds, in order; 1, 2 or 5 times a power of ten apart. */
export const roundTicks = (least: number, most: number, count: number): readonly number[] => {
  const span = most - least;
  if (!(span > 0 && Number.isFinite(span))) return [];
  const raw = span / count;
  const ten = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5].find((k) => k * ten >= raw * (1 - 1e-9)) ?? 10) * ten;
  const ticks: number[] = [];
  for (let i = Math.ceil(least / step - 1e-9); i <= Math.floor(most / step + 1e-9); i++) ticks.push(i * step + 0);
  return ticks;
};

/** A line of figures for a table, from end to end. */
export const evenly = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
