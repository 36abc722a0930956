/**
 * Readings of one student, as they stand on the lab sheet: flat, reading and way, one a line. A reading may bear its unit; one unit in a table. They
 * become a table with a head, for the chapter on calibration, and are judged by the same fit.
 */
import {
  type Bad,
  bad,
  type Calibration,
  calibrate,
  type GaugeReading,
  good,
  type Result,
  type Unit,
} from '../engine/index.ts';
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

/** Where the screw stands, with its unit, at the head of a line. */
const PLACE = /^(\s*[+−-]?[\d.,]+)\s*(?:°|º|˚|deg\w*|grad|turns?|revs?)(?=\s*[;,\t])/i;
const placeOf = (cell: string) => (/turn|rev/i.test(cell) ? 'turns' : 'degrees');

/** The table with a head that names the unit; one that has a head already is taken as it is. */
export const typedTable = (text: string, bare: ReadIn): Result<string> => {
  const trimmed = wordsKept('runs', text).trim();
  if (/^[^\d\s+−-]/.test(trimmed)) return good(trimmed);
  let unit: Unit | undefined;
  let mixed: Bad | undefined;
  // The place may be said as an angle or in turns, in all lines alike; a bare nought is one in any.
  const first = trimmed.split(/\r\n|\r|\n/).find((line) => PLACE.test(line));
  const place = first === undefined ? 'flats' : placeOf(PLACE.exec(first)?.[0] ?? '');
  const lines = trimmed.split(/\r\n|\r|\n/).map((whole, i) => {
    const cell = PLACE.exec(whole)?.[0];
    const own = cell === undefined ? 'flats' : placeOf(cell);
    if (own !== place && /^\s*[+−-]?[\d.,]*[1-9]/.test(whole))
      mixed ??= bad('lab-units-mixed', { line: i + 1, unit: own, before: place });
    const line = whole.replace(PLACE, '$1');
    return line.replace(WITH_UNIT, (found, digit: string, name: string) => {
      const length = unitNamed(name);
      if (length === undefined || !LENGTHS.includes(length)) return found;
      if (unit !== undefined && length !== unit)
        mixed ??= bad('lab-units-mixed', { line: i + 1, unit: length, before: unit });
      unit ??= length;
      return digit;
    });
  });
  return mixed ?? good(`${place}; reading (${unit ?? bare}); direction\n${lines.join('\n')}`);
};

/** What a fit of the table says of a pair with this net lead, mm a turn. */
export const judgeTable = (table: string, nominal: number): Result<Calibration> => {
  const readings = parseReadings(table, { stepsPerTurn: FLATS });
  return readings.ok ? calibrate(readings.value.rows, { nominal }) : readings;
};

/** Readings whose ± is a larger share of the lead by design than this tell nothing of a pair; common practice, no source. */
const ROUGH = 0.1;
/** One reading is named as a slip where without it no more than this share of the ± is left; common practice, no source. */
const MENDED = 0.3;

export interface LabVerdict {
  readonly verdict: 'agrees' | 'differs' | 'too rough';
  /** The reading without which the others lie on a line: its flat and its way. */
  readonly stray: { readonly flat: number; readonly way: GaugeReading['direction'] } | undefined;
  /** Down lies ahead of up by more than its own uncertainty, which no thread does. */
  readonly swapped: boolean;
}

const strayOf = ({ rows, leadInterval }: Calibration, nominal: number): LabVerdict['stray'] => {
  const halves = rows.map((_, left) => {
    const without = calibrate(
      rows.filter((_row, i) => i !== left),
      { nominal },
    );
    return without.ok ? without.value.leadInterval.half : Number.POSITIVE_INFINITY;
  });
  const least = Math.min(...halves);
  const row = rows[halves.indexOf(least)];
  return row && least < MENDED * leadInterval.half
    ? { flat: Math.round(row.turns * FLATS), way: row.direction }
    : undefined;
};

/** What the fit of a student’s readings says of a pair with this net lead, mm a turn. */
export const labVerdict = (fit: Calibration, nominal: number): LabVerdict => {
  const { leadInterval, hysteresis } = fit;
  const rough = leadInterval.half > ROUGH * Math.abs(nominal);
  const within = leadInterval.low <= nominal && nominal <= leadInterval.high;
  return {
    verdict: rough ? 'too rough' : within ? 'agrees' : 'differs',
    stray: rough ? strayOf(fit, nominal) : undefined,
    swapped: hysteresis.determined && hysteresis.lostMotion < 0 && Math.abs(hysteresis.gap) > hysteresis.interval.half,
  };
};
