/**
 * Play of a batch: screws and nuts drawn from their pitch-diameter zones and put together at random.
 *
 * For each assembly and each thread the pitch diameters d2 of the screw and D2 of the nut are drawn independently;
 * the play of the thread is j = (D2 − d2)·tan 30° (play.ts), of the assembly the sum over its threads. Laws:
 *   uniform        anywhere in the zone alike
 *   normal         mean in the middle of the zone, σ = zone/(6 Cp) (Cp = zone/6σ, ISO 22514-2; a zone held exactly
 *                  to ±3σ has Cp = 1). `clipped` false: parts outside the zone are made and used. `clipped` true:
 *                  every part is gauged and those outside are scrapped, so the law is cut off at the limits.
 * Assemblies in which any thread has a negative clearance do not go together: they are counted and left out of all
 * figures. Quantiles: numerics/quantile.ts.
 * Lengths mm. Values are kept in single precision: 0.02 nm on a play of 0.3 mm.
 */

import { at } from '../kernel/at.ts';
import { type Millimetres, mm } from '../kernel/quantity.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';
import { runToEnd } from '../kernel/task.ts';
import { quantileSteps } from '../numerics/quantile.ts';
import { fillNormal, fillUniform, type RandomState, randomState } from '../numerics/random.ts';
import { TAN30 } from '../thread/thread.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'batch-of-threads': { readonly count: number };
    'batch-count': { readonly count: number; readonly most: number };
    'batch-capability': { readonly Cp: number };
    'batch-bars': { readonly bars: number };
    'batch-share': { readonly share: number };
    'batch-limit': { readonly thread: number; readonly value: number };
    'batch-limits-crossed': { readonly thread: number };
    'batch-all-interfere': { readonly thread: number; readonly least: number };
  }
}

/** Limits of pitch diameter of one thread: external d2, internal D2. */
export interface PitchZones {
  readonly d2min: Millimetres;
  readonly d2max: Millimetres;
  readonly D2min: Millimetres;
  readonly D2max: Millimetres;
}

export type BatchLaw =
  | { readonly kind: 'uniform' }
  | { readonly kind: 'normal'; readonly Cp: number; readonly clipped: boolean };

export interface PlayBatchSettings {
  /** One thread, or the two of a differential pair. */
  readonly threads: readonly PitchZones[];
  /** Assemblies to draw. */
  readonly count: number;
  readonly seed: number;
  readonly law: BatchLaw;
  /** Shares for which the play is wanted, each from 0 to 1; left out: 0.05, 0.5 and 0.95. */
  readonly shares?: readonly number[];
  /** Bars of the histogram; left out: 60. */
  readonly bars?: number;
}

export interface PlayBatch {
  /** Assemblies drawn. */
  readonly count: number;
  /** Of these, how many go together; all further figures are of these. */
  readonly together: number;
  /** How many have interference in a thread. */
  readonly interfering: number;
  /** Least and most play that the limits allow, whatever was drawn (the least is 0 where the zones overlap). */
  readonly limits: { readonly least: Millimetres; readonly most: Millimetres };
  /** What was drawn; undefined where nothing went together. */
  readonly drawn: PlayFigures | undefined;
}

export interface PlayFigures {
  readonly least: Millimetres;
  readonly most: Millimetres;
  readonly mean: Millimetres;
  /** Standard deviation about the mean (divisor: number together). */
  readonly sd: Millimetres;
  readonly quantiles: readonly { readonly share: number; readonly play: Millimetres }[];
  /** Bars of equal width from `from` to `to`, which take in the limits and everything drawn. */
  readonly histogram: { readonly from: Millimetres; readonly to: Millimetres; readonly counts: Uint32Array };
}

/**
 * Ten million assemblies take 40 MB and a second or so; the median is then known to about 1/2500 of the standard
 * deviation, finer than any indicator, so more would only make the page stall.
 */
export const LARGEST_BATCH = 1e7;

/** Assemblies drawn at a time: small enough to stay in the cache. Part of the result: the draws are dealt in blocks. */
const BLOCK = 2048;
const BLOCKS_A_STEP = 32;

/** Values looked at, or changed about, in one step of the counting. */
const COUNTED_A_STEP = 2 ** 18;

/**
 * The batch as a run of steps of a few milliseconds: each `next()` draws 65 536 assemblies and yields the share done, from
 * 0 to 1. While a large batch is then counted it yields 1 now and again; the last step returns the batch. The result does
 * not depend on how the run is driven.
 */
export const playBatchRun = (settings: PlayBatchSettings): Result<Generator<number, PlayBatch, void>> => {
  const state = randomState(settings.seed);
  if (!state.ok) return state;
  const refused = refusal(settings);
  return refused ?? good(run(settings, state.value));
};

/** The whole batch at one go. */
export const playBatch = (settings: PlayBatchSettings): Result<PlayBatch> => {
  const started = playBatchRun(settings);
  return started.ok ? good(runToEnd(started.value)) : started;
};

const refusal = ({ threads, count, law, shares, bars }: PlayBatchSettings): Bad | undefined => {
  if (!(threads.length === 1 || threads.length === 2)) return bad('batch-of-threads', { count: threads.length });
  if (!(Number.isInteger(count) && count >= 1 && count <= LARGEST_BATCH))
    return bad('batch-count', { count, most: LARGEST_BATCH });
  if (law.kind === 'normal' && !(law.Cp >= 0.1 && law.Cp <= 10)) return bad('batch-capability', { Cp: law.Cp });
  if (!(bars === undefined || (Number.isInteger(bars) && bars >= 1 && bars <= 1000)))
    return bad('batch-bars', { bars });
  for (const p of shares ?? []) if (!(p >= 0 && p <= 1)) return bad('batch-share', { share: p });
  for (const [i, zones] of threads.entries()) {
    const thread = i + 1;
    for (const value of [zones.d2min, zones.d2max, zones.D2min, zones.D2max])
      if (!(value >= 0.1 && value <= 400)) return bad('batch-limit', { thread, value });
    if (!(zones.d2min <= zones.d2max && zones.D2min <= zones.D2max)) return bad('batch-limits-crossed', { thread });
    if (!(zones.D2max >= zones.d2min)) return bad('batch-all-interfere', { thread, least: zones.d2min });
  }
  return undefined;
};

function* run(settings: PlayBatchSettings, state: RandomState): Generator<number, PlayBatch, void> {
  const { threads, count, law } = settings;
  const normal = law.kind === 'normal';
  // Each deviate is stretched over its zone: a uniform one from the lower limit, a normal one about the middle.
  const scaleOf = (min: number, max: number) => (normal ? (max - min) / (6 * law.Cp) : max - min) * TAN30;
  const originOf = (min: number, max: number) => (normal ? (min + max) / 2 : min) * TAN30;
  const scales = threads.map((t) => [scaleOf(t.D2min, t.D2max), scaleOf(t.d2min, t.d2max)] as const);
  const origins = threads.map((t) => originOf(t.D2min, t.D2max) - originOf(t.d2min, t.d2max));
  const [nutA, screwA] = at(scales, 0);
  const [nutC, screwC] = scales[1] ?? [0, 0];
  const [originA = 0, originC = 0] = origins;
  const each = 2 * threads.length;
  const limit = normal && law.clipped ? 3 * law.Cp : Number.POSITIVE_INFINITY;

  const least = threads.reduce((sum, t) => sum + Math.max(0, t.D2min - t.d2max) * TAN30, 0);
  const most = threads.reduce((sum, t) => sum + (t.D2max - t.d2min) * TAN30, 0);
  const plays = new Float32Array(count);
  const draws = new Float64Array(BLOCK * each);
  const middle = (least + most) / 2;
  let together = 0;
  let lowest = Number.POSITIVE_INFINITY;
  let highest = Number.NEGATIVE_INFINITY;
  // Sums about the middle of the limits, so that no digits are lost to a mean much larger than the spread.
  let sum = 0;
  let squares = 0;

  for (let done = 0, block = 1; done < count; block++) {
    if (normal) fillNormal(state, draws, limit);
    else fillUniform(state, draws);
    const here = Math.min(BLOCK, count - done);
    for (let i = 0, k = 0; i < here; i++, k += each) {
      const a = originA + nutA * at(draws, k) - screwA * at(draws, k + 1);
      const c = each === 4 ? originC + nutC * at(draws, k + 2) - screwC * at(draws, k + 3) : 0;
      if (!(a >= 0 && c >= 0)) continue;
      const play = Math.fround(a + c);
      plays[together++] = play;
      if (play < lowest) lowest = play;
      if (play > highest) highest = play;
      const off = play - middle;
      sum += off;
      squares += off * off;
    }
    done += here;
    if (block % BLOCKS_A_STEP === 0 || done === count) yield done / count;
  }

  const limits = { least: mm(least), most: mm(most) };
  const totals = { count, together, interfering: count - together, limits };
  if (together === 0) return { ...totals, drawn: undefined };
  const values = plays.subarray(0, together);
  const mean = sum / together;
  const from = Math.min(least, lowest);
  const to = Math.max(most, highest);
  // Counted before the selection shuffles the values: it is quicker, and no different.
  const counts = new Uint32Array(settings.bars ?? 60);
  for (let start = 0; start < together; start += COUNTED_A_STEP) {
    if (start > 0) yield 1;
    countInto(counts, values.subarray(start, start + COUNTED_A_STEP), from, to);
  }
  const found = yield* quantileSteps(values, settings.shares ?? [0.05, 0.5, 0.95]);
  return {
    ...totals,
    drawn: {
      least: mm(lowest),
      most: mm(highest),
      mean: mm(middle + mean),
      sd: mm(Math.sqrt(Math.max(0, squares / together - mean * mean))),
      quantiles: found.map(({ share, value }) => ({
        share,
        play: mm(value),
      })),
      histogram: { from: mm(from), to: mm(to), counts },
    },
  };
}

/** Adds how many values fall in each of the equal bars from `from` to `to`; the upper edge belongs to the last bar. */
const countInto = (counts: Uint32Array, values: Float32Array, from: number, to: number): void => {
  const bars = counts.length;
  const perUnit = to > from ? bars / (to - from) : 0;
  for (let i = 0; i < values.length; i++) {
    const bar = Math.min(bars - 1, Math.max(0, Math.floor((at(values, i) - from) * perUnit)));
    counts[bar] = at(counts, bar) + 1;
  }
};
