/**
 * How the doubt of inputs passes into a result: JCGM 100:2008 (GUM), clause 5, to the first order.
 *
 *   u_c²(y) = Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ r(xᵢ, xⱼ)        cᵢ = ∂f/∂xᵢ            (13), (16)
 *   ν_eff   = u_c⁴ / Σᵢ (cᵢ uᵢ)⁴/νᵢ                                     (G.2b), cut to a whole number
 *   U       = k u_c,  k = t_p(ν_eff)                                    (18), p = 95.45 %, so k = 2 where ν is without bound
 *
 * Limits ±a between which all values are equally likely have u = a/√3 (4.3.7). The mean of n readings with the standard deviation s has
 * u = s/√n and ν = n − 1 (4.2.3). An input that enters in several places is one variable here, so what it does in all of them is added
 * with its sign before anything is squared.
 */
import { at } from '../kernel/at.ts';
import { runToEnd, type Task } from '../kernel/task.ts';
import { studentT } from './line-fit.ts';
import { quantileOfSorted } from './quantile.ts';
import { fillNormal, type RandomState, randomState, uniform } from './random.ts';

/** One input’s doubt. */
export interface Doubt {
  /** Standard uncertainty, in the unit of the input. */
  readonly u: number;
  /** Degrees of freedom; without bound where it was not read off readings. */
  readonly freedom: number;
  /** Equally likely within ±√3 u and nowhere else, or bell-shaped. */
  readonly shape: 'flat' | 'bell';
}

export const flat = (half: number): Doubt => ({
  u: half / Math.sqrt(3),
  freedom: Number.POSITIVE_INFINITY,
  shape: 'flat',
});
export const expanded = (U: number, k: number): Doubt => ({
  u: U / k,
  freedom: Number.POSITIVE_INFINITY,
  shape: 'bell',
});
export const fromReadings = (s: number, n: number): Doubt => ({ u: s / Math.sqrt(n), freedom: n - 1, shape: 'bell' });

/** The share of values that ±2u holds under a normal law, the everyday 95 %. */
export const COVERED = 0.9545;

/** A function of several numbers that may have no value. */
export type ManyLaw = (xs: readonly number[]) => number | undefined;

/** Slopes by central differences; at the edge of where the law has a value, by the side that has one. */
export const slopesOf = (law: ManyLaw, xs: readonly number[], us: readonly number[]): readonly number[] | undefined => {
  const y = law(xs);
  if (y === undefined) return undefined;
  const slopes: number[] = [];
  for (const [i, x] of xs.entries()) {
    const u = us[i] ?? 0;
    if (u === 0) {
      slopes.push(0);
      continue;
    }
    // About the cube root of the last bit; never beyond the doubt itself, over which alone the slope matters.
    const step = Math.min(u, 6e-6 * Math.abs(x) || 1e-2 * u);
    const moved = (by: number) => law(xs.map((other, j) => (j === i ? other + by : other)));
    const [up, down] = [moved(step), moved(-step)];
    if (up === undefined && down === undefined) return undefined;
    slopes.push(
      up === undefined ? (y - (down ?? y)) / step : down === undefined ? (up - y) / step : (up - down) / (2 * step),
    );
  }
  return slopes;
};

/** u_c of a result from its slopes; `correlation` of two inputs by their places, nought where left out. */
export const combined = (
  slopes: readonly number[],
  us: readonly number[],
  correlation: (i: number, j: number) => number = () => 0,
): number => {
  let sum = 0;
  for (let i = 0; i < us.length; i++)
    for (let j = 0; j < us.length; j++)
      sum += at(slopes, i) * at(slopes, j) * at(us, i) * at(us, j) * (i === j ? 1 : correlation(i, j));
  return Math.sqrt(Math.max(0, sum));
};

/** Welch and Satterthwaite; without bound where no part has bounded freedom. */
export const effectiveFreedom = (
  u: number,
  parts: readonly { readonly part: number; readonly freedom: number }[],
): number => {
  const sum = parts.reduce((total, { part, freedom }) => total + part ** 4 / freedom, 0);
  return sum === 0 ? Number.POSITIVE_INFINITY : u ** 4 / sum;
};

/** k for these degrees of freedom, cut to a whole number as G.4.1 has it. */
export const coverageFactor = (freedom: number, level = COVERED): number => {
  // The normal law holds 95.4500 % within ±2.0000 u.
  if (!(freedom < 1e4)) return level === COVERED ? 2 : inverseNormal(level);
  const t = studentT(level, Math.max(1, Math.floor(freedom)));
  return t.ok ? t.value : inverseNormal(level);
};

/** ±z of the normal law holds this share: Student’s t with so many degrees of freedom that the fourth digit stands. */
const inverseNormal = (level: number): number => {
  const t = studentT(level, 100_000);
  return t.ok ? t.value : 2;
};

export interface Sampled {
  readonly mean: number;
  readonly u: number;
  /** Between which the middle `COVERED` of the results lie. */
  readonly low: number;
  readonly high: number;
  /** Share of draws for which the law has no value. */
  readonly lost: number;
}

/** JCGM 101:2008, clause 7: the law asked at drawn inputs. The same seed gives the same draws. */
export const sampled = (...given: Parameters<typeof sampling>): Sampled | undefined => runToEnd(sampling(...given));

/** The same in steps, for a law that takes long. */
export function* sampling(
  law: ManyLaw,
  xs: readonly number[],
  doubts: readonly Doubt[],
  count: number,
  seed = 1,
  level = COVERED,
): Task<Sampled | undefined> {
  const state = randomState(seed);
  if (!state.ok) return undefined;
  const columns = doubts.map((doubt) => drawn(state.value, doubt, count));
  const ys: number[] = [];
  for (let i = 0; i < count; i++) {
    const y = law(xs.map((x, k) => x + at(at(columns, k), i)));
    if (y !== undefined) ys.push(y);
    if (i % STEP === 0) yield;
  }
  if (ys.length < count / 2) return undefined;
  ys.sort((a, b) => a - b);
  const mean = ys.reduce((sum, y) => sum + y, 0) / ys.length;
  const u = Math.sqrt(ys.reduce((sum, y) => sum + (y - mean) ** 2, 0) / (ys.length - 1));
  const edge = (share: number): number => quantileOfSorted(ys, share);
  return { mean, u, low: edge((1 - level) / 2), high: edge((1 + level) / 2), lost: 1 - ys.length / count };
}

/** Draws from one step to the next. */
const STEP = 4;

/** Of readings, by Student’s t: a normal value over the root of a mean of ν squares of such. */
const drawn = (state: RandomState, { u, freedom, shape }: Doubt, count: number): Float64Array => {
  const out = new Float64Array(count);
  if (shape === 'flat') {
    const half = u * Math.sqrt(3);
    for (let i = 0; i < count; i++) out[i] = half * (2 * uniform(state) - 1);
    return out;
  }
  fillNormal(state, out);
  const few = freedom < 100;
  const squares = few ? new Float64Array(freedom) : undefined;
  for (let i = 0; i < count; i++) {
    let t = at(out, i) * u;
    if (squares) {
      fillNormal(state, squares);
      t /= Math.sqrt(squares.reduce((sum, z) => sum + z * z, 0) / freedom);
    }
    out[i] = t;
  }
  return out;
};

/** Two significant digits of a doubt, and the decimals of a value that go with them (7.2.6: no more than two). */
export const decimalsOf = (U: number): number => 1 - Math.floor(Math.log10(Number(U.toPrecision(2))));

/** Mean and standard deviation of readings, taken about the mean so that a large common part costs no digits. */
export const meanAndScatter = (readings: readonly number[]): { readonly mean: number; readonly scatter: number } => {
  const n = readings.length;
  const first = at(readings, 0);
  const mean = first + readings.reduce((total, x) => total + (x - first), 0) / n;
  const rest = readings.reduce((total, x) => total + (x - mean), 0) / n;
  const squares = readings.reduce((total, x) => total + (x - mean - rest) ** 2, 0);
  return { mean: mean + rest, scatter: n > 1 ? Math.sqrt(squares / (n - 1)) : 0 };
};
