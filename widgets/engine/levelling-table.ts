/**
 * Feet and indicator readings as they are typed: one a row.
 *
 *   feet        A: 0, 0                three rows; the letter may be left out, then the rows are A, B, C in order
 *   readings    40, 20: −3 µm          x, y and what the indicator shows there; three rows or more
 *   rounds      2; −1; 0.5             one row for each later round: readings at the same places in the same order
 *
 * Rows are parted by a line break or a semicolon; rounds by a line break or a bar, since semicolons part the readings in
 * them. x and y are parted by a comma and a blank, by blanks or a tab, so that a comma inside a number is a decimal mark;
 * a lone comma between two numbers parts them too. A bare place is mm, a bare reading µm; other lengths carry their unit.
 * Units out: mm. Errors: one sentence for the first row that can’t be read, or for places that span no plane.
 */
import { type Place, type Point, planeThrough } from './plane.ts';
import { readQuantity, type Unit } from './quantity.ts';
import { bad, good, quoted, type Result } from './result.ts';
import { say } from './say.ts';
import { LONGEST_LIST } from './thread-list.ts';

export interface NamedPlace extends Place {
  readonly name: string;
}

const FOOT_NAMES = ['A', 'B', 'C'] as const;
const MOST_READINGS = 20;
const MOST_ROUNDS = 8;

/** The three feet, refused where they are not three, share a letter or stand in a line. */
export const readFeet = (text: string): Result<readonly NamedPlace[]> => {
  const rows = rowsOf(text, /[;\n]/);
  if (!rows.ok) return rows;
  const feet: NamedPlace[] = [];
  for (const [i, row] of rows.value.entries()) {
    const [, letter, rest = row] = /^(?:foot\s+)?([a-z])(?=[\s:=(])\s*[:=]?\s*(.*)$/i.exec(row) ?? [];
    const name = letter === undefined ? (FOOT_NAMES[i] ?? 'another') : letter.toUpperCase();
    const place = placeIn(rest);
    if (!place.ok)
      return bad(`Row ${i + 1} of the feet reads ${quoted(row)}; ${place.reason ?? 'give x and y, like A: 0, 0.'}`);
    feet.push({ name, ...place.value });
  }
  if (!(feet.length === 3))
    return bad(`Read ${feet.length} feet; a plate is levelled on exactly three: give three rows, like A: 0, 0.`);
  const twice = feet.find((foot, i) => feet.findIndex((f) => f.name === foot.name) < i);
  if (twice !== undefined) return bad(`Two feet are called ${twice.name}; call them A, B and C.`);
  const other = feet.find((foot) => !(FOOT_NAMES as readonly string[]).includes(foot.name));
  if (other !== undefined) return bad(`One foot is called ${other.name}; call them A, B and C.`);
  const plane = planeThrough(
    feet.map((foot) => ({ ...foot, z: 0 })),
    'feet',
  );
  return plane.ok ? good([...feet].sort((a, b) => a.name.localeCompare(b.name))) : plane;
};

/** Readings with their places, refused where there are fewer than three or they stand in a line. */
export const readReadings = (text: string): Result<readonly Point[]> => {
  const rows = rowsOf(text, /[;\n]/);
  if (!rows.ok) return rows;
  const points: Point[] = [];
  for (const [i, row] of rows.value.entries()) {
    const [left = '', right, ...more] = row.split(/[:=]/).map((part) => part.trim());
    const columns = right === undefined ? columnsIn(left, 3) : undefined;
    const [place, reading] = columns === undefined ? [left, right] : [`${columns[0]}, ${columns[1]}`, columns[2]];
    const at = placeIn(place);
    if (!at.ok || reading === undefined || more.length > 0)
      return bad(
        `Row ${i + 1} of the readings reads ${quoted(row)}; ${(!at.ok && at.reason) || 'give x, y and the reading, like 40, 20: −3 µm.'}`,
      );
    const height = lengthIn(reading, 'µm');
    if (!height.ok) return bad(`Row ${i + 1} of the readings: ${height.reason}`);
    points.push({ ...at.value, z: height.value });
  }
  if (!(points.length <= MOST_READINGS))
    return bad(`Read ${points.length} readings; ${MOST_READINGS} are the most here: a few, well spread, say as much.`);
  const plane = planeThrough(points, 'readings');
  return plane.ok ? good(points) : plane;
};

/** Later rounds, heights in mm; none where nothing is typed. */
export const readRounds = (text: string): Result<readonly (readonly number[])[]> => {
  const rows = rowsOf(text, /[|\n]/);
  if (!rows.ok) return rows;
  if (!(rows.value.length <= MOST_ROUNDS))
    return bad(
      `Read ${rows.value.length} rounds; ${MOST_ROUNDS} are kept here: put the last readings first and begin again.`,
    );
  const rounds: number[][] = [];
  for (const [i, row] of rows.value.entries()) {
    const cells = row.split(row.includes(';') ? ';' : /,\s+|\t|\s+(?=[+\-−–]?[\d.])/);
    const heights: number[] = [];
    for (const cell of cells.filter((text, j) => text !== '' || j < cells.length - 1)) {
      const height = lengthIn(cell, 'µm');
      if (!height.ok) return bad(`Round ${i + 2}: ${height.reason}`);
      heights.push(height.value);
    }
    rounds.push(heights);
  }
  return good(rounds);
};

/** The rows as a reader would type them, one a line; they read back as the same feet. */
export const writeFeet = (feet: readonly NamedPlace[]): string =>
  feet.map(({ name, x, y }) => `${name}: ${amount(x)}, ${amount(y)}`).join('\n');

export const writeReadings = (points: readonly Point[]): string =>
  points.map(({ x, y, z }) => `${amount(x)}, ${amount(y)}: ${amount(z * 1e3)} µm`).join('\n');

/** Readings of rounds in µm, to a tenth, which is finer than any indicator is read. */
export const writeRounds = (rounds: readonly (readonly number[])[]): string =>
  rounds.map((heights) => heights.map((z) => amount(Math.round(z * 1e4) / 10)).join('; ')).join('\n');

/** To a millionth, below which nothing is read: a word for “hardly anything” would not read back. */
const amount = (x: number): string => say(Math.abs(x) < 1e-6 ? 0 : x, 9);

const rowsOf = (text: string, between: RegExp): Result<readonly string[]> =>
  text.length <= LONGEST_LIST
    ? good(
        text
          .split(between)
          .map((row) => row.trim())
          .filter((row) => row !== ''),
      )
    : bad(`Read ${quoted(text)}; ${LONGEST_LIST} characters are the most here: leave some rows out.`);

/** A length in mm within what planes are laid through. */
const lengthIn = (text: string, fallback: Unit): Result<number> => {
  const read = readQuantity(text, 'mm', fallback);
  if (!read.ok) return read;
  return Math.abs(read.value.value) <= 1e4
    ? good(read.value.value)
    : bad(`Read ${quoted(text)}; give a length from −10 m to 10 m.`);
};

/** A place, or the reason of its first odd number; no reason where there are not two numbers. */
const placeIn = (
  text: string,
): { readonly ok: true; readonly value: Place } | { readonly ok: false; readonly reason: string | undefined } => {
  const [left, right] = columnsIn(text.replace(/^\((.*)\)$/, '$1'), 2) ?? [];
  if (left === undefined || right === undefined) return { ok: false, reason: undefined };
  const [x, y] = [lengthIn(left, 'mm'), lengthIn(right, 'mm')];
  if (!x.ok) return { ok: false, reason: lower(x.reason) };
  if (!y.ok) return { ok: false, reason: lower(y.reason) };
  return { ok: true, value: { x: x.value, y: y.value } };
};

const lower = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);

/** So many numbers out of a row, or undefined. */
const columnsIn = (text: string, count: number): readonly string[] | undefined => {
  for (const between of [/,\s+|\t/, /\s+(?=[+\-−–]?[\d.])/, /,/]) {
    const parts = text.split(between).map((part) => part.trim());
    if (parts.length === count && parts.every((part) => part !== '')) return parts;
  }
  return undefined;
};
