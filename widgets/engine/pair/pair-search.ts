/**
 * Finding a pair: every two threads of a catalogue, in like and in unlike hands, held against what a maker asks.
 *
 * A pair is two threads and one of two hand relations: like hands move |L_2 − L_1| a turn, unlike ones L_1 + L_2. Which of them is
 * thread A is settled afterwards (pair-row.ts): the net lead only changes its sign, except that a sleeve needs the larger one outside.
 *   gain    G = max(L_1, L_2)/|Δ|                       (differential.ts)
 *   stroke  S = |Δ| min(q d_1/L_1, q d_2/L_2)           q diameters of each thread may be used up (travel.ts)
 *   wall    at the limits of size, larger outside       (nesting.ts)
 *   load    σ π/4 times the smaller core, a sleeve less its bore
 *   step    |Δ|/k with the divider, of those at hand, that comes nearest to the motion wanted (resolution.ts)
 * Lengths mm, forces N, stress MPa. A pair is told by a code, (i n + j)·2 + (0 like hands, 1 unlike), i ≤ j < n places in the catalogue.
 */

import { at, numberAt } from '../kernel/at.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';
import { SERIES_NAMES } from '../thread/series.ts';
import { type Catalogue, wallOf, weakerSquared } from './pair-catalogue.ts';
import { FILTERS, type Filter } from './pair-filters.ts';
import { type PairRow, pairOf } from './pair-row.ts';
import type { Order, Wish } from './pair-wish.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'wish-without-divider': Readonly<Record<string, never>>;
    'wish-motion-outside': { readonly perTurn: number };
    'wish-band-outside': { readonly band: number };
    'wish-sizes-crossed': { readonly smallest: number; readonly largest: number };
    'wish-below-nought': { readonly what: 'leastWall' | 'leastStroke' | 'load'; readonly value: number };
    'wish-usable-outside': { readonly diameters: number };
    'wish-stress-outside': { readonly stress: number };
  }
}

export interface Found {
  readonly kind: 'found';
  /** Pairs looked at: all that move at all. */
  readonly pairs: number;
  /** Codes of all that pass, in the order of the catalogue. */
  readonly hits: Int32Array;
  /** The first of them in the order asked. */
  readonly rows: readonly PairRow[];
}

export interface Nothing {
  readonly kind: 'nothing';
  readonly pairs: number;
  /** How many pairs each filter excludes, whatever the others do. */
  readonly excluded: Readonly<Record<Filter, number>>;
  /** The filter that excludes the most. */
  readonly most: Filter;
  /** The pair outside that filter which fails the fewest others and lies nearest to it; undefined in an empty catalogue. */
  readonly nearest: PairRow | undefined;
  /** The other filters that this pair fails as well. */
  readonly also: readonly Filter[];
  /** For each filter that need only give way alone: the pair that fails nothing else and lies nearest to it. */
  readonly ways: readonly { readonly filter: Filter; readonly row: PairRow }[];
  /** The pair of the nearest motion that passes all but motion and stroke; undefined where every pair fails something else. */
  readonly anyStroke: PairRow | undefined;
}

/** A remainder of binary rounding in `motion × band` must not shut out a pair on the very edge. */
const EDGE = 1e-12;

/** Net leads that a divider makes into the motion wanted, times the denominator. */
interface Window {
  readonly k: number;
  readonly wanted: number;
  readonly low: number;
  readonly high: number;
}

/** Everything the loops need, as plain numbers. */
interface Terms {
  readonly n: number;
  /** One window a divider. */
  readonly windows: readonly Window[];
  readonly low: number;
  readonly high: number;
  readonly same: boolean;
  readonly opposite: boolean;
  readonly nestedOnly: boolean;
  readonly least: number;
  readonly inSize: Uint8Array;
  readonly inSeries: Uint8Array;
  readonly owned: 0 | 1 | 2;
  /** Turns each thread alone allows. */
  readonly turns: Float64Array;
  readonly stroke: number;
  /** Least square of a core that carries the load. */
  readonly coreSquared: number;
}

const termsOf = (c: Catalogue, w: Wish): Terms => {
  const n = c.candidates.length;
  const bought = SERIES_NAMES.map((name) => w.series.includes(name));
  const edge = 1 + EDGE;
  const windows = w.dividers.map((k) => {
    const wanted = w.motion * k * c.denominator;
    return { k, wanted, low: (wanted * (1 - w.band)) / edge, high: wanted * (1 + w.band) * edge };
  });
  return {
    n,
    windows,
    low: Math.min(...windows.map((window) => window.low)),
    high: Math.max(...windows.map((window) => window.high)),
    same: w.hands !== 'opposite',
    opposite: w.hands !== 'same',
    nestedOnly: w.arrangement === 'nested',
    least: w.leastWall,
    inSize: Uint8Array.from(c.d, (d) => Number(d >= w.smallest - 1e-9 && d <= w.largest + 1e-9)),
    inSeries: Uint8Array.from(c.series, (s, i) => Number(bought[s] || numberAt(c.owned, i) > 0)),
    owned: w.owned === 'none' ? 0 : w.owned === 'one' ? 1 : 2,
    turns: Float64Array.from(c.d, (d, i) => (w.usable * d * c.denominator) / numberAt(c.leads, i)),
    stroke: w.leastStroke,
    coreSquared: w.load / (w.stress * (Math.PI / 4)),
  };
};

/** Pairs of a catalogue that answer a wish, or which filter leaves none. Refuses a wish that contradicts itself. */
export const searchPairs = (
  catalogue: Catalogue,
  wish: Wish,
  order: Order = 'nearest',
  most = 40,
): Result<Found | Nothing> => {
  const refusal = refuse(wish);
  if (refusal !== undefined) return refusal;
  const terms = termsOf(catalogue, wish);
  const { n } = terms;
  const hits = new Int32Array(n * (n + 1));
  const shortlist = new Shortlist(most);
  let count = 0;
  const { leads, denominator } = catalogue;
  for (let i = 0; i < n; i++) {
    if (!(terms.inSize[i] && terms.inSeries[i])) continue;
    for (let j = i; j < n; j++) {
      if (!(terms.inSize[j] && terms.inSeries[j])) continue;
      for (let hand = terms.same ? 0 : 1; hand < (terms.opposite ? 2 : 1); hand++) {
        const net = netOf(catalogue, i, j, hand);
        if (!(net > 0 && isWanted(terms, net))) continue;
        if (!(isOwned(catalogue, terms.owned, i, j, hand) && reaches(terms, i, j, net, denominator))) continue;
        if (terms.nestedOnly && !nests(catalogue, terms.least, i, j)) continue;
        if (!carries(catalogue, terms, i, j)) continue;
        const code = (i * n + j) * 2 + hand;
        hits[count++] = code;
        const off = offBy(terms, net);
        const gain = numberAt(leads, j) / net;
        const size = Math.max(numberAt(catalogue.d, i), numberAt(catalogue.d, j));
        if (order === 'nearest') shortlist.offer(code, off, size);
        else if (order === 'gain') shortlist.offer(code, gain, off);
        else if (order === 'size') shortlist.offer(code, size, off);
        else shortlist.offer(code, -net * Math.min(numberAt(terms.turns, i), numberAt(terms.turns, j)), off);
      }
    }
  }
  const pairs = movingPairs(catalogue);
  return good(
    count === 0
      ? whyNothing(catalogue, wish, terms, pairs)
      : {
          kind: 'found',
          pairs,
          hits: hits.slice(0, count),
          rows: shortlist.codes.map((code) => pairOf(catalogue, wish, code, [])),
        },
  );
};

const isWanted = (t: Terms, net: number): boolean =>
  net >= t.low && net <= t.high && t.windows.some(({ low, high }) => net >= low && net <= high);

/** How far a net lead is from the motion wanted, as a ratio, with the divider that comes nearest. */
const offBy = (t: Terms, net: number): number => {
  let least = Number.POSITIVE_INFINITY;
  for (const { wanted } of t.windows) least = Math.min(least, Math.abs(Math.log(net / wanted)));
  return least;
};

/** Net lead of a pair times the denominator; i ≤ j, so that the lead of j is the longer. */
const netOf = (c: Catalogue, i: number, j: number, hand: number): number => {
  const [a, b] = [numberAt(c.leads, i), numberAt(c.leads, j)];
  if (hand === 1) return a + b;
  const net = b - a;
  return c.exact || net >= 8 * Number.EPSILON * b ? net : 0;
};

/** Whether as many taps as asked are in the drawer, in the hands that this pair needs. */
const isOwned = (c: Catalogue, asked: 0 | 1 | 2, i: number, j: number, hand: number): boolean => {
  if (asked === 0) return true;
  const [a, b] = [numberAt(c.owned, i), numberAt(c.owned, j)];
  if (asked === 1) return a > 0 || b > 0;
  // Like hands share a bit; for unlike ones the bits of b are exchanged first.
  return (a & (hand === 0 ? b : ((b & 1) << 1) | (b >> 1))) > 0;
};

const reaches = (t: Terms, i: number, j: number, net: number, denominator: number): boolean =>
  t.stroke === 0 || (net / denominator) * Math.min(numberAt(t.turns, i), numberAt(t.turns, j)) >= t.stroke * (1 - EDGE);

const nests = (c: Catalogue, least: number, i: number, j: number): boolean => {
  const wall = wallOf(c, i, j);
  return wall > 0 && wall >= least;
};

const carries = (c: Catalogue, t: Terms, i: number, j: number): boolean =>
  t.coreSquared === 0 || weakerSquared(c, t.nestedOnly, i, j) >= t.coreSquared;

/** All pairs but those of equal leads in like hands, which stand still. */
const movingPairs = (c: Catalogue): number => {
  const n = c.candidates.length;
  let pairs = n * (n + 1);
  for (let i = 0, from = 0; i < n; i++) {
    if (netOf(c, from, i, 0) > 0) from = i;
    pairs -= i - from + 1;
  }
  return pairs;
};

/** The codes of every pair that moves, for a map of them all. */
export const everyPair = (c: Catalogue): Int32Array => {
  const n = c.candidates.length;
  const codes = new Int32Array(n * (n + 1));
  let count = 0;
  for (let i = 0; i < n; i++)
    for (let j = i; j < n; j++)
      for (let hand = 0; hand < 2; hand++) if (netOf(c, i, j, hand) > 0) codes[count++] = (i * n + j) * 2 + hand;
  return codes.slice(0, count);
};

/** Columns of a set of pairs, for drawing: mm, and the gain. `usable` in diameters. */
export const measurePairs = (c: Catalogue, codes: Int32Array, usable: number) => {
  const n = c.candidates.length;
  const column = () => new Float64Array(codes.length);
  const [motion, gain, stroke, size, shorter, longer] = [column(), column(), column(), column(), column(), column()];
  for (let place = 0; place < codes.length; place++) {
    const code = numberAt(codes, place);
    const [i, j] = [Math.floor(code / 2 / n), (code >> 1) % n];
    const net = netOf(c, i, j, code % 2) / c.denominator;
    const [di, dj] = [numberAt(c.d, i), numberAt(c.d, j)];
    const [li, lj] = [numberAt(c.leads, i) / c.denominator, numberAt(c.leads, j) / c.denominator];
    motion[place] = net;
    gain[place] = lj / net;
    stroke[place] = net * usable * Math.min(di / li, dj / lj);
    size[place] = Math.max(di, dj);
    shorter[place] = li;
    longer[place] = lj;
  }
  return { motion, gain, stroke, size, shorter, longer };
};

const refuse = (w: Wish): Bad | undefined => {
  if (w.dividers.length === 0) return bad('wish-without-divider', {});
  for (const k of w.dividers)
    if (!(w.motion * k > 0 && w.motion * k <= 200)) return bad('wish-motion-outside', { perTurn: w.motion * k });
  if (!(w.band >= 0 && w.band <= 100)) return bad('wish-band-outside', { band: w.band });
  const { smallest, largest } = w;
  if (!(smallest <= largest)) return bad('wish-sizes-crossed', { smallest, largest });
  for (const what of ['leastWall', 'leastStroke', 'load'] as const)
    if (!(w[what] >= 0 && Number.isFinite(w[what]))) return bad('wish-below-nought', { what, value: w[what] });
  if (!(w.usable > 0 && w.usable <= 1000)) return bad('wish-usable-outside', { diameters: w.usable });
  return w.stress > 0 && Number.isFinite(w.stress) ? undefined : bad('wish-stress-outside', { stress: w.stress });
};

/** The codes with the least keys, second key where the first ties. A short sorted list: most offers fail at its end. */
class Shortlist {
  readonly codes: number[] = [];
  private readonly keys: (readonly [number, number])[] = [];
  private readonly most: number;
  constructor(most: number) {
    this.most = most;
  }
  offer(code: number, first: number, second: number): void {
    const end = this.keys.length;
    const last = this.keys[end - 1];
    if (end >= this.most && last && !before(first, second, last)) return;
    let place = end;
    for (let key = this.keys[place - 1]; key && before(first, second, key); key = this.keys[place - 1]) place--;
    this.codes.splice(place, 0, code);
    this.keys.splice(place, 0, [first, second]);
    if (end >= this.most) {
      this.codes.pop();
      this.keys.pop();
    }
  }
}

const NEAR = 1e-12;
const before = (first: number, second: number, [a, b]: readonly [number, number]): boolean =>
  Math.abs(first - a) > NEAR * Math.abs(a) ? first < a : second < b;

// An empty answer is looked into pair by pair, every filter on its own.

const whyNothing = (c: Catalogue, w: Wish, t: Terms, pairs: number): Nothing => {
  const filters = FILTERS.length;
  const counts = new Int32Array(filters);
  // For each filter the pair that fails it, fails the fewest others, and of those lies nearest.
  const codes = new Int32Array(filters).fill(-1);
  const fewest = new Int32Array(filters).fill(filters + 1);
  const offs = new Float64Array(filters).fill(Number.POSITIVE_INFINITY);
  const also = new Int32Array(filters);
  let [anyStroke, leastOff] = [-1, Number.POSITIVE_INFINITY];
  for (let i = 0; i < t.n; i++)
    for (let j = i; j < t.n; j++)
      for (let hand = 0; hand < 2; hand++) {
        const net = netOf(c, i, j, hand);
        if (!(net > 0)) continue;
        const fails = failures(c, t, i, j, hand, net);
        if ((fails & ~MOTION_AND_STROKE) === 0) {
          const off = offBy(t, net);
          if (off < leastOff) [anyStroke, leastOff] = [(i * t.n + j) * 2 + hand, off];
        }
        let failed = 0;
        for (let f = 0; f < filters; f++) failed += (fails >> f) & 1;
        for (let f = 0; f < filters; f++) {
          if (((fails >> f) & 1) === 0) continue;
          counts[f] = numberAt(counts, f) + 1;
          if (failed > numberAt(fewest, f)) continue;
          const off = distance(f, c, w, t, i, j, net);
          if (failed === fewest[f] && !(off < numberAt(offs, f))) continue;
          codes[f] = (i * t.n + j) * 2 + hand;
          fewest[f] = failed;
          offs[f] = off;
          also[f] = fails;
        }
      }
  const most = counts.indexOf(Math.max(...counts));
  const failedBy = (bits: number) => FILTERS.filter((_, f) => ((bits >> f) & 1) === 1);
  const row = (f: number): PairRow | undefined => {
    const code = numberAt(codes, f);
    return code >= 0 ? pairOf(c, w, code, failedBy(numberAt(also, f))) : undefined;
  };
  return {
    kind: 'nothing',
    pairs,
    excluded: Object.fromEntries(FILTERS.map((filter, f) => [filter, numberAt(counts, f)])) as Record<Filter, number>,
    most: at(FILTERS, most),
    nearest: row(most),
    also: failedBy(numberAt(also, most)).filter((filter) => filter !== FILTERS[most]),
    ways: FILTERS.flatMap((filter, f) => {
      const alone = fewest[f] === 1 ? row(f) : undefined;
      return alone ? [{ filter, row: alone }] : [];
    }),
    anyStroke: anyStroke >= 0 ? pairOf(c, w, anyStroke, failedBy(failuresOf(c, t, anyStroke))) : undefined,
  };
};

/** The bits of motion and stroke in `failures`. */
const MOTION_AND_STROKE = 1 | 64;

const failuresOf = (c: Catalogue, t: Terms, code: number): number => {
  const [i, j, hand] = [Math.floor(code / 2 / t.n), (code >> 1) % t.n, code % 2];
  return failures(c, t, i, j, hand, netOf(c, i, j, hand));
};

/** One bit for each filter, in the order of FILTERS, set where the pair fails it. */
const failures = (c: Catalogue, t: Terms, i: number, j: number, hand: number, net: number): number =>
  (isWanted(t, net) ? 0 : 1) |
  ((hand === 0 ? t.same : t.opposite) ? 0 : 2) |
  (!t.nestedOnly || nests(c, t.least, i, j) ? 0 : 4) |
  (t.inSize[i] && t.inSize[j] ? 0 : 8) |
  (t.inSeries[i] && t.inSeries[j] ? 0 : 16) |
  (isOwned(c, t.owned, i, j, hand) ? 0 : 32) |
  (reaches(t, i, j, net, c.denominator) ? 0 : 64) |
  (carries(c, t, i, j) ? 0 : 128);

/** How far outside a filter a pair lies: by its own measure, and by the motion where the filter is a plain yes or no. */
const distance = (filter: number, c: Catalogue, w: Wish, t: Terms, i: number, j: number, net: number): number => {
  const motion = offBy(t, net);
  const [di, dj] = [numberAt(c.d, i), numberAt(c.d, j)];
  switch (FILTERS[filter]) {
    case 'wall': {
      // Two equal diameters have no sleeve at all: beyond every pair that only lacks some wall.
      const short = t.least - wallOf(c, i, j);
      return Number.isFinite(short) ? short : 1e3;
    }
    case 'size':
      return Math.max(0, w.smallest - Math.min(di, dj)) + Math.max(0, Math.max(di, dj) - w.largest);
    case 'stroke':
      return t.stroke - (net / c.denominator) * Math.min(numberAt(t.turns, i), numberAt(t.turns, j));
    case 'load':
      return t.coreSquared - weakerSquared(c, t.nestedOnly, i, j);
    case 'owned':
      return motion + 100 * (t.owned - Number(numberAt(c.owned, i) > 0) - Number(numberAt(c.owned, j) > 0));
    default:
      return motion;
  }
};
