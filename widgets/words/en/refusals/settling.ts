/** Refusals of a log of readings after a setting. */
import { quoted } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const FIELDS = { time: 'time', reading: 'indicator', temperature: 'temperature' } as const;

export const SETTLING = {
  'settling-too-few': ({ readings, least }) =>
    `There are ${readings} readings, too few to tell one law from another: read at least ${least} times.`,
  'settling-no-time': () =>
    'All readings are of one time, so nothing can be told of motion: read again later, and write the time beside it.',
  'settling-out-of-range': ({ row }) =>
    `Row ${row} of the log has a time before the setting or a number that no reading has: look at its units.`,
  'log-row-unread': ({ row, text }) =>
    `Row ${row} of the log: read ${quoted(text)}; write time, indicator and, if you read it, temperature, like 2 h; -1.4 µm; 20.6.`,
  'log-value': ({ row, field, why }, reasonOf) => `Row ${row} of the log, ${FIELDS[field]}: ${reasonOf(why)}`,
  'log-some-warm': ({ row }) =>
    `Row ${row} of the log has no temperature and others have: give it in every row, or in none.`,
  'log-too-long': ({ rows, most }) => `There are ${rows} rows in the log; keep ${most} of them.`,
} satisfies Partial<RefusalWords>;
