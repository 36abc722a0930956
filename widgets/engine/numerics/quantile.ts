/**
 * The one quantile of the notebook: the value that a share p of all that could be drawn stays below, from n that were.
 *
 * Of n sorted values x_1 … x_n it stands at h = (n + 1)p, straight between neighbours, and is the first or the last of them beyond those. A
 * new draw falls below x_k with the chance k/(n + 1), whatever its law; so this one, of the many in use, is that below which the share p is to
 * be expected. It matters where few are drawn: of 16 assemblies it is the largest that “95 of 100” may name, where others name less. Source: NIST/SEMATECH
 * e-Handbook of Statistical Methods, 7.2.6.2 (from memory); definition 6 of R. Hyndman, Y. Fan, The American Statistician 50 (1996) 361.
 */
import { at } from '../kernel/at.ts';
import { runToEnd } from '../kernel/task.ts';

const COUNTED_A_STEP = 2 ** 18;
const SWAPPED_A_STEP = 2 ** 16;

/** The lower of the two neighbours, counted from 0, and how far it lies towards the other. */
const placeOf = (n: number, share: number): { readonly k: number; readonly part: number } => {
  const h = Math.max(0, Math.min(n - 1, (n + 1) * share - 1));
  const k = Math.floor(h);
  return { k, part: h - k };
};

/** No values, or a share outside 0 … 1, are a programmer’s mistake. */
const checked = (n: number, share: number): void => {
  if (n === 0) throw new RangeError('quantile: no values');
  if (!(share >= 0 && share <= 1)) throw new RangeError(`quantile: share ${share} is not from 0 to 1`);
};

/** Of values in rising order. */
export const quantileOfSorted = (sorted: readonly number[], share: number): number => {
  checked(sorted.length, share);
  const { k, part } = placeOf(sorted.length, share);
  const low = at(sorted, k);
  return part === 0 ? low : low + part * (at(sorted, k + 1) - low);
};

/**
 * Several of them, in the order asked for; found by selection, not by sorting, which reorders `values`.
 */
export const quantiles = (
  values: Float32Array | Float64Array,
  shares: readonly number[],
): { readonly share: number; readonly value: number }[] => runToEnd(quantileSteps(values, shares));

/** The same with a pause now and again, at which it yields 1. */
export function* quantileSteps(
  values: Float32Array | Float64Array,
  shares: readonly number[],
): Generator<number, { readonly share: number; readonly value: number }[], void> {
  for (const share of shares) checked(values.length, share);
  const found = new Map<number, number>();
  let left = 0;
  for (const share of [...shares].sort((a, b) => a - b)) {
    const { k, part } = placeOf(values.length, share);
    yield* select(values, k, left, values.length - 1);
    // Everything from k on is now at least the k-th value, so the next quantile is sought only there.
    left = k;
    const low = at(values, k);
    found.set(share, part === 0 ? low : low + part * ((yield* leastFrom(values, k + 1)) - low));
  }
  return shares.map((share) => ({ share, value: found.get(share) ?? 0 }));
}

function* leastFrom(values: Float32Array | Float64Array, start: number): Generator<number, number, void> {
  let least = Number.POSITIVE_INFINITY;
  for (let from = start; from < values.length; from += COUNTED_A_STEP) {
    if (from > start) yield 1;
    const to = Math.min(values.length, from + COUNTED_A_STEP);
    for (let i = from; i < to; i++) {
      const v = at(values, i);
      if (v < least) least = v;
    }
  }
  return least;
}

/**
 * Reorders values[left … right] so that place k holds the value it would hold if sorted, smaller or equal ones before
 * it, larger or equal ones after. C. A. R. Hoare, Algorithm 65: Find (CACM 4, 1961), with the pivot of R. Floyd and
 * R. Rivest, Algorithm 489: Select (CACM 18, 1975): chosen from a small sample, so that one or two passes do.
 */
function* select(
  values: Float32Array | Float64Array,
  k: number,
  left: number,
  right: number,
): Generator<number, void, void> {
  let lo = left;
  let hi = right;
  while (hi > lo) {
    if (hi - lo > 600) {
      const n = hi - lo + 1;
      const i = k - lo + 1;
      const z = Math.log(n);
      const s = 0.5 * Math.exp((2 * z) / 3);
      const sd = 0.5 * Math.sqrt((z * s * (n - s)) / n) * Math.sign(i - n / 2);
      yield* select(
        values,
        k,
        Math.max(lo, Math.floor(k - (i * s) / n + sd)),
        Math.min(hi, Math.floor(k + ((n - i) * s) / n + sd)),
      );
    }
    const pivot = at(values, k);
    let i = lo;
    let j = hi;
    for (let swapped = 1; i <= j; swapped++) {
      if (swapped % SWAPPED_A_STEP === 0) yield 1;
      while (at(values, i) < pivot) i++;
      while (at(values, j) > pivot) j--;
      if (i <= j) {
        const v = at(values, i);
        values[i++] = at(values, j);
        values[j--] = v;
      }
    }
    if (j < k) lo = i;
    if (i > k) hi = j;
  }
}
