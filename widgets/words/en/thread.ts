/** What a reader ought to know of limits of size. */
import type { LimitsRemark } from '../../engine/index.ts';

export const LIMITS_REMARKS: Readonly<Record<LimitsRemark, string>> = {
  'position-f-from-memory':
    'The deviation of position f is from memory; compare it with the standard before work depends on it.',
  'no-standard-series': 'The thread is not in a standard series; its limits follow the standard as if it were.',
  'several-starts':
    'The standard tables are written for single-start threads; for several starts makers often allow more on the pitch diameter (common practice, no source).',
  'no-series-named':
    'No Unified series is named, so the length of engagement is taken as nine pitches, as for special threads.',
  'finer-than-tables': 'The tables of ASME B1.1 end at 80 threads per inch; beyond that, its formulas are used.',
};
