/**
 * The threads a search draws from, in columns.
 *
 * All of ISO 261 and of UNC, UNF and UNEF that series.ts holds, and what the reader owns besides. Leads are whole numbers over one
 * common denominator, so that equal leads are equal and every difference is exact; where a reader's thread would push the denominator
 * past what a double counts exactly, leads are plain mm instead and a remainder of rounding counts as nought.
 * Threads stand in order of rising lead, then diameter. Lengths mm.
 */

import { numberAt } from '../kernel/at.ts';
import { nutLimits, screwLimits } from '../thread/designated-limits.ts';
import { METRIC_SERIES, SERIES_NAMES, type SeriesName, type SeriesThread, UNIFIED_SERIES } from '../thread/series.ts';
import { diameters, type Thread } from '../thread/thread.ts';
import { leadFraction, leastCommonMultiple } from './fraction.ts';
import { largestNutRoot } from './nesting.ts';

export interface Candidate {
  /** The size, right-hand, with its class where the reader wrote one. */
  readonly thread: Thread;
  readonly series: SeriesName | 'own';
  /** In which hands the reader has the tap or die. */
  readonly owned: { readonly right: boolean; readonly left: boolean };
}

export interface Catalogue {
  readonly candidates: readonly Candidate[];
  /** Leads times `denominator`: whole numbers where `exact`. */
  readonly leads: Float64Array;
  readonly denominator: number;
  readonly exact: boolean;
  /** Major diameters. */
  readonly d: Float64Array;
  /** Cores, d3. */
  readonly core: Float64Array;
  /** Roots as deep as the class allows, and bores as wide: for the wall of a sleeve. */
  readonly root: Float64Array;
  readonly bore: Float64Array;
  /** 1 owned right-hand, 2 owned left-hand, 3 both. */
  readonly owned: Uint8Array;
  /** Place in SERIES_NAMES, or their count for a size in none of them. */
  readonly series: Uint8Array;
}

const NONE = { right: false, left: false };
/** Diameters and pitches nearer than this are one size. */
const SAME = 1e-6;
/** Differences and sums of two leads of at most 60 mm stay whole below this denominator. */
const LARGEST_DENOMINATOR = BigInt(Math.floor(Number.MAX_SAFE_INTEGER / 120));

const asThread = (row: SeriesThread): Thread => ({
  designation: row.designation,
  kind: row.tpi === undefined ? 'metric' : 'unified',
  d: row.d,
  P: row.P,
  N: 1,
  L: row.P,
  h: 1,
  ...(row.tpi === undefined ? {} : { tpi: row.tpi }),
  notes: [],
});

/** The same thread in a stated hand, its designation with it. */
export const inHand = (thread: Thread, h: 1 | -1): Thread =>
  thread.h === h
    ? thread
    : {
        ...thread,
        h,
        designation: h === -1 ? `${thread.designation} LH` : thread.designation.replace(/ LH$/, ''),
      };

/** Every thread of both series, and the reader's own among or beside them. */
export const catalogueOf = (own: readonly Thread[] = []): Catalogue => {
  const candidates: Candidate[] = [...METRIC_SERIES, ...UNIFIED_SERIES].map((row) => ({
    thread: asThread(row),
    series: row.series,
    owned: NONE,
  }));
  for (const mine of own) {
    const thread = inHand(mine, 1);
    const place = candidates.findIndex(
      ({ thread: t }) => Math.abs(t.d - mine.d) < SAME && Math.abs(t.P - mine.P) < SAME && t.N === mine.N,
    );
    const before = candidates[place];
    const owned = {
      right: mine.h === 1 || (before?.owned.right ?? false),
      left: mine.h === -1 || (before?.owned.left ?? false),
    };
    if (before === undefined) candidates.push({ thread, series: 'own', owned });
    else candidates[place] = { ...before, thread: thread.toleranceClass === undefined ? before.thread : thread, owned };
  }
  candidates.sort((a, b) => a.thread.L - b.thread.L || a.thread.d - b.thread.d);
  return { candidates, ...leadColumn(candidates), ...sizeColumns(candidates) };
};

const leadColumn = (candidates: readonly Candidate[]): Pick<Catalogue, 'leads' | 'denominator' | 'exact'> => {
  const exactLeads = candidates.map((c) => leadFraction(c.thread));
  let common = 1n;
  for (const { bottom } of exactLeads) {
    common = leastCommonMultiple(common, bottom);
    if (common > LARGEST_DENOMINATOR)
      return { leads: Float64Array.from(candidates, (c) => c.thread.L), denominator: 1, exact: false };
  }
  return {
    leads: Float64Array.from(exactLeads, ({ top, bottom }) => Number((top * common) / bottom)),
    denominator: Number(common),
    exact: true,
  };
};

const sizeColumns = (
  candidates: readonly Candidate[],
): Pick<Catalogue, 'd' | 'core' | 'root' | 'bore' | 'owned' | 'series'> => {
  const column = (of: (thread: Thread) => number) => Float64Array.from(candidates, (c) => of(c.thread));
  return {
    d: column((t) => t.d),
    core: column((t) => diameters(t).d3),
    root: column(leastRootOf),
    bore: column(widestBoreOf),
    owned: Uint8Array.from(candidates, ({ owned }) => Number(owned.right) + 2 * Number(owned.left)),
    series: Uint8Array.from(candidates, ({ series }) =>
      series === 'own' ? SERIES_NAMES.length : SERIES_NAMES.indexOf(series),
    ),
  };
};

/** How deep the root of this thread may reach as a screw; basic size where no class exists for it. */
const leastRootOf = (thread: Thread): number => {
  const screw = screwLimits(thread);
  return screw.ok ? screw.value.limits.root.least : diameters(thread).d3;
};

/** How wide this thread may be cut into a bore; basic size where no class exists for it. See nesting.ts. */
const widestBoreOf = (thread: Thread): number => {
  const nut = nutLimits(thread);
  const root = nut.ok ? largestNutRoot.of({ D_2: nut.value.limits.pitch.max, P: thread.P }) : nut;
  return root.ok ? Math.max(thread.d, root.value.D_r) : thread.d;
};

/** Wall of the sleeve at the limits of size, the larger thread outside; minus infinity where neither is larger. */
export const wallOf = (c: Catalogue, i: number, j: number): number => {
  const [di, dj] = [numberAt(c.d, i), numberAt(c.d, j)];
  if (di === dj) return Number.NEGATIVE_INFINITY;
  const [outer, inner] = di > dj ? [i, j] : [j, i];
  return (numberAt(c.root, outer) - numberAt(c.bore, inner)) / 2;
};

/** Square of the core that decides what the pair carries: in line the smaller one; a sleeve has lost its bore. */
export const weakerSquared = (c: Catalogue, nested: boolean, i: number, j: number): number => {
  const [a, b] = [numberAt(c.core, i), numberAt(c.core, j)];
  if (!nested) return Math.min(a, b) ** 2;
  const [outer, inner, core] = numberAt(c.d, i) > numberAt(c.d, j) ? [a, j, b] : [b, i, a];
  return Math.min(core ** 2, outer ** 2 - numberAt(c.bore, inner) ** 2);
};
