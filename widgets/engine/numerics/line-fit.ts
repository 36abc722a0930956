/**
 * A straight line through readings, y = a + b x, by least squares, with what it is worth.
 *
 *   b = Sxy/Sxx,  a = ȳ − b x̄                       Sxx = Σ(x − x̄)², Sxy = Σ(x − x̄)(y − ȳ)
 *   s² = Σ e²/(n − 2),  e = y − a − b x              residual variance
 *   s_b = s/√Sxx,  s_a = s √(1/n + x̄²/Sxx)           standard errors
 *   R² = 1 − Σ e²/Σ(y − ȳ)²
 *   b ± t s_b                                        t of Student with n − 2 degrees of freedom
 * All the scatter is taken to be in y, independent from row to row and alike everywhere.
 *
 * Source: Draper & Smith, Applied Regression Analysis, ch. 1 (from memory). Checked against NIST StRD, Norris.
 * Sums: the mean in two passes, compensated (Neumaier), since the sums of squares of raw readings would
 * lose half of the digits where the readings sit far from nought.
 * Units: x and y in any units; b is in y per x.
 *
 * Student’s t: the share within ±t for whole degrees of freedom ν is a finite series, Abramowitz & Stegun 26.7.3 and
 * 26.7.4 with θ = atan(t/√ν); its inverse by bisection on θ, so no table and no approximation stands behind it.
 */
import { at } from '../kernel/at.ts';
import { bad, good, type Result } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'places-unlike-readings': { readonly places: number; readonly readings: number };
    'rows-too-few': { readonly rows: number };
    'row-not-numbers': { readonly row: number; readonly x: unknown; readonly y: unknown };
    'places-all-alike': { readonly rows: number; readonly x: number };
    'readings-all-alike': { readonly rows: number; readonly y: number };
    'level-not-a-share': { readonly level: number };
    'freedom-out-of-range': { readonly freedom: number };
  }
}

export interface LineFit {
  readonly rows: number;
  readonly intercept: number;
  readonly slope: number;
  /** Standard error of the intercept. */
  readonly interceptError: number;
  /** Standard error of the slope. */
  readonly slopeError: number;
  /** Residual standard deviation. */
  readonly scatter: number;
  /** Σ e². */
  readonly sumOfSquares: number;
  readonly rSquared: number;
  /** Sxx. */
  readonly spread: number;
  /** n − 2. */
  readonly freedom: number;
  /** y less the line, in the order of the rows. */
  readonly residuals: readonly number[];
}

/** Half-width of an interval and its two ends. */
export interface Interval {
  readonly half: number;
  readonly low: number;
  readonly high: number;
}

/** Numbers beyond this are no readings, and their squares would run out of range. */
const LARGEST = 1e100;

/** Fits the line; refuses fewer than three rows, one x only, readings all alike, and numbers that are none. */
export const lineFit = (xs: readonly number[], ys: readonly number[]): Result<LineFit> => {
  const n = xs.length;
  if (!(ys.length === n)) return bad('places-unlike-readings', { places: n, readings: ys.length });
  if (!(n >= 3)) return bad('rows-too-few', { rows: n });
  for (let i = 0; i < n; i++)
    if (!(Math.abs(xs[i] ?? Number.NaN) <= LARGEST && Math.abs(ys[i] ?? Number.NaN) <= LARGEST))
      return bad('row-not-numbers', { row: i + 1, x: xs[i], y: ys[i] });
  const x = centred(xs);
  const y = centred(ys);
  const Sxx = compensated(n, (i) => at(x.from, i) ** 2);
  const Syy = compensated(n, (i) => at(y.from, i) ** 2);
  if (!spreads(Sxx, xs)) return bad('places-all-alike', { rows: n, x: at(xs, 0) });
  if (!spreads(Syy, ys)) return bad('readings-all-alike', { rows: n, y: at(ys, 0) });
  const along = (values: readonly number[]) => compensated(n, (i) => at(x.from, i) * at(values, i)) / Sxx;
  const b = along(y.from);
  // What rounding took from b: below its last digit, but not below that of the intercept.
  const more = along(y.from.map((v, i) => v - b * at(x.from, i)));
  const slope = b + more;
  const residuals = y.from.map((v, i) => v - slope * at(x.from, i));
  const sumOfSquares = compensated(n, (i) => at(residuals, i) ** 2);
  // a = ȳ − b x̄ nearly cancels when the line passes close to the origin: the product is kept with its own rounding.
  const [product, rest] = exactProduct(b, x.mean);
  const intercept = y.mean - product + (y.rest - rest - b * x.rest - more * x.mean);
  const freedom = n - 2;
  const scatter = Math.sqrt(sumOfSquares / freedom);
  return good({
    rows: n,
    intercept,
    slope,
    interceptError: scatter * Math.sqrt(1 / n + x.mean ** 2 / Sxx),
    slopeError: scatter / Math.sqrt(Sxx),
    scatter,
    sumOfSquares,
    rSquared: 1 - sumOfSquares / Syy,
    spread: Sxx,
    freedom,
    residuals,
  });
};

/** The interval that covers the true slope in a share `level` of all such trials. */
export const slopeInterval = (fit: LineFit, level = 0.95): Result<Interval> =>
  intervalAbout(fit.slope, fit.slopeError, fit.freedom, level);

/** value ± t × error. */
export const intervalAbout = (value: number, error: number, freedom: number, level: number): Result<Interval> => {
  const t = studentT(level, freedom);
  if (!t.ok) return t;
  const half = t.value * error;
  return good({ half, low: value - half, high: value + half });
};

/**
 * Student’s t: the number within whose ± a share `level` of the distribution lies, for example 0.95 and 10 degrees of
 * freedom: 2.228. Tables headed by one tail p give it at level = 1 − 2p.
 */
export const studentT = (level: number, freedom: number): Result<number> => {
  if (!(level > 0 && level < 1)) return bad('level-not-a-share', { level });
  if (!(Number.isInteger(freedom) && freedom >= 1 && freedom <= 1e6)) return bad('freedom-out-of-range', { freedom });
  let [low, high] = [0, Math.PI / 2];
  // Halving stops by itself when the two ends are neighbours.
  for (;;) {
    const middle = (low + high) / 2;
    if (!(middle > low && middle < high)) break;
    if (shareWithin(middle, freedom) < level) low = middle;
    else high = middle;
  }
  return good(Math.sqrt(freedom) * Math.tan(low));
};

/** Abramowitz & Stegun 26.7.3 (odd ν) and 26.7.4 (even ν). */
const shareWithin = (theta: number, freedom: number): number => {
  const [sin, cos] = [Math.sin(theta), Math.cos(theta)];
  const odd = freedom % 2 === 1;
  let term = odd ? cos : 1;
  let series = 0;
  for (let j = odd ? 1 : 0; j <= freedom - 2; j += 2) {
    series += term;
    term *= ((j + 1) / (j + 2)) * cos * cos;
  }
  return odd ? (2 / Math.PI) * (theta + sin * series) : sin * series;
};

/** The mean as a double and what is left of it, and the distances from it. */
const centred = (values: readonly number[]): { mean: number; rest: number; from: readonly number[] } => {
  const n = values.length;
  const mean = compensated(n, (i) => at(values, i)) / n;
  const rest = compensated(n, (i) => at(values, i) - mean) / n;
  return { mean, rest, from: values.map((v) => v - mean - rest) };
};

/** Whether a sum of squared distances from the mean is more than the rounding of the values themselves. */
const spreads = (S: number, values: readonly number[]): boolean => {
  let largest = 0;
  for (const v of values) largest = Math.max(largest, Math.abs(v));
  return S > values.length * (8 * Number.EPSILON * largest) ** 2;
};

/** Σ term(i) with the lost low parts carried along (Neumaier 1974). */
const compensated = (n: number, term: (i: number) => number): number => {
  let total = 0;
  let lost = 0;
  for (let i = 0; i < n; i++) {
    const v = term(i);
    const next = total + v;
    lost += Math.abs(total) >= Math.abs(v) ? total - next + v : v - next + total;
    total = next;
  }
  return total + lost;
};

/** a b as the rounded product and its exact rounding error (Dekker 1971). */
const exactProduct = (a: number, b: number): readonly [number, number] => {
  const split = (v: number) => {
    const c = 134217729 * v;
    const high = c - (c - v);
    return [high, v - high] as const;
  };
  const product = a * b;
  const [a1, a2] = split(a);
  const [b1, b2] = split(b);
  return [product, a2 * b2 - (product - a1 * b1 - a2 * b1 - a1 * b2)];
};
