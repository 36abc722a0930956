/** Refusals of passports of pieces. */
import { quoted, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const PASSPORTS: RefusalWords<
  | 'passport-row-unread'
  | 'passport-day'
  | 'passport-value'
  | 'passport-lead'
  | 'passport-too-long'
  | 'passport-lead-far'
> = {
  'passport-row-unread': ({ row, text }) =>
    `Row ${row} of the passports: read ${quoted(text)}; write one like 1, 2026-11-03: lead 88.7 µm, new grease.`,
  'passport-day': ({ row, text }) =>
    `Row ${row} of the passports: read ${quoted(text)} as a day; write it as year, month and day, like 2026-11-03, or day, month and year with dots, like 3.11.2026.`,
  'passport-value': ({ row, field, why }, reasonOf) => `Row ${row} of the passports, ${field}: ${reasonOf(why)}`,
  'passport-lead': ({ row }) =>
    `Row ${row} of the passports: a measured lead is above 0 and below 120 mm; give one within that.`,
  'passport-too-long': ({ rows, most }) => `There are ${rows} rows of passports; keep the last ${most}.`,
  'passport-lead-far': ({ foot, lead, nominal }) =>
    `The passport of foot ${foot} says ${say(1000 * lead)} µm a turn and its threads give ${say(1000 * nominal)} µm: one of the two belongs to another piece.`,
};
