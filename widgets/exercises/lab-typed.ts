/**
 * Readings of one student, as they stand on the lab sheet: flat, reading and way, one a line. A reading may bear its unit; one unit in a table. They
 * become a table with a head, for the chapter on calibration, and are judged by the same fit.
 */
import { type Bad, bad, type Calibration, calibrate, good, type Result, type Unit } from '../engine/index.ts';
import { unitNamed } from '../input/quantity.ts';
import { parseReadings } from '../input/readings-table.ts';
import { wordsKept } from '../input/typed-words.ts';
import { FLATS } from './lab.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'lab-units-mixed': { readonly line: number; readonly unit: string; readonly before: string };
  }
}

/** In which readings are typed without a unit. */
export const READ_IN = ['µm', 'thou'] as const;
export type ReadIn = (typeof READ_IN)[number];

const LENGTHS: readonly Unit[] = ['µm', 'mm', 'thou', 'tenths', 'in'];

/** A number and the unit behind it, in any cell of a line. */
const WITH_UNIT = /(\d)[ \u00a0\u202f]*(µm|μm|um|mm|thou|tenths|in|")(?=\s*(?:[;,\t]|$|\s(?:up|down)))/gi;

/** The table with a head that names the unit; one that has a head already is taken as it is. */
export const typedTable = (text: string, bare: ReadIn): Result<string> => {
  const trimmed = wordsKept('runs', text).trim();
  if (/^[^\d\s+−-]/.test(trimmed)) return good(trimmed);
  let unit: Unit | undefined;
  let mixed: Bad | undefined;
  const lines = trimmed.split(/\r\n|\r|\n/).map((line, i) =>
    line.replace(WITH_UNIT, (whole, digit: string, name: string) => {
      const own = unitNamed(name);
      if (own === undefined || !LENGTHS.includes(own)) return whole;
      if (unit !== undefined && own !== unit)
        mixed ??= bad('lab-units-mixed', { line: i + 1, unit: own, before: unit });
      unit ??= own;
      return digit;
    }),
  );
  return mixed ?? good(`flats; reading (${unit ?? bare}); direction\n${lines.join('\n')}`);
};

/** What a fit of the table says of a pair with this net lead, mm a turn. */
export const judgeTable = (table: string, nominal: number): Result<Calibration> => {
  const readings = parseReadings(table, { stepsPerTurn: FLATS });
  return readings.ok ? calibrate(readings.value.rows, { nominal }) : readings;
};
