/** Pairs for the project, from the engine’s search: with metric taps alone, with inch taps alone, or with either. */
import {
  bad,
  catalogueOf,
  good,
  megapascals,
  mm,
  newtons,
  type PairRow,
  type Result,
  type SeriesName,
  searchPairs,
  type Thread,
} from '../engine/index.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'project-none': { readonly taps: string };
  }
}

export const TAPS = ['metric', 'inch', 'either'] as const;
export type Taps = (typeof TAPS)[number];

const SERIES: Readonly<Record<Taps, readonly SeriesName[]>> = {
  metric: ['coarse', 'fine'],
  inch: ['UNC', 'UNF'],
  either: ['coarse', 'fine', 'UNC', 'UNF'],
};

/** As a student makes it: threads from M4 to M16 by hand on a bench, a diameter of each engaged for good and one to use up. */
const SMALLEST = 4;
const LARGEST = 16;
const SHOWN = 6;
/** Metric sizes that a shop has taps of: the first choice of ISO 261, and M14, from memory. Taps of M7, M9 or M11 are hard to buy. */
const COMMON = [4, 5, 6, 8, 10, 12, 14, 16];
const common = ({ kind, d }: Thread): boolean => kind !== 'metric' || COMMON.some((one) => Math.abs(one - d) < 1e-6);
/** Rows that are looked through for those of common sizes. */
const SEARCHED = 400;
/** A pair that is further off than this share of the motion asked for is none that one would call near. */
const NEAR = 0.1;

/** The pairs nearest to this net lead, mm a turn; the band is wide, since with one system of threads there are few. */
export const projectPairs = (wanted: number, taps: Taps): Result<readonly PairRow[]> => {
  const found = searchPairs(
    catalogueOf(),
    {
      motion: mm(wanted),
      band: 3,
      dividers: [1],
      hands: 'same',
      arrangement: 'in line',
      leastWall: mm(0),
      smallest: mm(SMALLEST),
      largest: mm(LARGEST),
      series: SERIES[taps],
      owned: 'none',
      usable: 1,
      leastStroke: mm(0),
      load: newtons(0),
      stress: megapascals(100),
    },
    'nearest',
    SEARCHED,
  );
  if (!found.ok) return found;
  const rows = found.value.kind === 'found' ? found.value.rows.filter(({ A, C }) => common(A) && common(C)) : [];
  return rows.length > 0 ? good(rows.toSorted(easier(wanted)).slice(0, SHOWN)) : bad('project-none', { taps });
};

const COARSE = new Set(
  catalogueOf().candidates.flatMap(({ thread, series }) =>
    series === 'coarse' || series === 'UNC' ? [thread.designation] : [],
  ),
);
/** Net leads that are this near to each other are one to a shop, mm. */
const ALIKE = 1e-3;

/** The nearer first; of those alike the one with more coarse threads, whose taps every shop has, then the one with more stroke. */
const easier =
  (wanted: number) =>
  (a: PairRow, b: PairRow): number => {
    const off = ({ Delta }: PairRow) => Math.round(Math.abs(Math.abs(Delta) - wanted) / ALIKE);
    const fine = ({ A, C }: PairRow) => [A, C].filter(({ designation }) => !COARSE.has(designation)).length;
    return off(a) - off(b) || fine(a) - fine(b) || b.stroke - a.stroke;
  };

/** How far the nearest of these is from the net lead asked for, as a share of it; none where it is near. */
export const farOff = ([nearest]: readonly PairRow[], wanted: number): number | undefined => {
  const off = nearest ? Math.abs(Math.abs(nearest.Delta) / wanted - 1) : 0;
  return off > NEAR ? off : undefined;
};
