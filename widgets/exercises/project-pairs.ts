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

/** As a student makes it: threads from M6 to M16 by hand on a bench, a diameter of each engaged for good and one to use up. */
const SMALLEST = 6;
const LARGEST = 16;
const SHOWN = 6;

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
    SHOWN,
  );
  if (!found.ok) return found;
  return found.value.kind === 'found' && found.value.rows.length > 0
    ? good(found.value.rows)
    : bad('project-none', { taps });
};
