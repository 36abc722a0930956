/**
 * Feet and indicator readings as they are typed: one a row.
 *
 *   feet        1: 0, 0                three rows; the number may be left out, then the rows are 1, 2, 3 in order
 *   readings    40, 20: −3 µm          x, y and what the indicator shows there; three rows or more
 *   rounds      2; −1; 0.5             one row for each later round: readings at the same places in the same order
 *   stands      1: 1.5                 turns of a foot from the middle of its travel, clockwise plus; a foot left out is at 0
 *
 * Rows are parted by a line break or a semicolon; rounds by a line break or a bar, since semicolons part the readings in
 * them. x and y are parted by a comma and a blank, by blanks or a tab, so that a comma inside a number is a decimal mark; older
 * notebooks called the feet A, B and C, as the threads of each foot are called, and those letters are still read. A lone comma between two numbers parts them too. A bare place is mm, a bare reading µm; other lengths carry their unit.
 * Units out: mm. Errors: one sentence for the first row that can’t be read, or for places that span no plane.
 */

import {
  type Bad,
  bad,
  good,
  type Place,
  type Point,
  planeThrough,
  type Result,
  say,
  type Unit,
} from '../engine/index.ts';
import { readQuantity } from './quantity.ts';
import { LONGEST_LIST } from './thread-list.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'rows-too-long': { readonly text: string; readonly most: number };
    'length-beyond': { readonly text: string };
    /** With why a number of it can’t be read; without, where there are not two numbers. */
    'foot-row-unread': { readonly row: number; readonly text: string; readonly why: Bad | undefined };
    'listed-feet-not-three': { readonly feet: number };
    'foot-twice': { readonly name: string };
    'foot-of-other-name': { readonly name: string };
    'stand-unread': { readonly foot: string; readonly why: Bad };
    'stand-beyond': { readonly foot: string; readonly text: string; readonly most: number };
    'reading-row-unread': { readonly row: number; readonly text: string; readonly why: Bad | undefined };
    'reading-unread': { readonly row: number; readonly why: Bad };
    'too-many-readings': { readonly readings: number; readonly most: number };
    'too-many-rounds': { readonly rounds: number; readonly most: number };
    'round-unread': { readonly round: number; readonly why: Bad };
  }
}

export interface NamedPlace extends Place {
  readonly name: string;
}

const FOOT_NAMES = ['1', '2', '3'] as const;
const FORMER_NAMES = 'ABC';
export type FootName = (typeof FOOT_NAMES)[number];
const MOST_READINGS = 20;
const MOST_ROUNDS = 8;

/** The three feet, refused where they are not three, share a number or stand in a line. */
export const readFeet = (text: string): Result<readonly NamedPlace[]> => {
  const rows = rowsOf(text, /[;\n]/);
  if (!rows.ok) return rows;
  const feet: NamedPlace[] = [];
  for (const [i, row] of rows.value.entries()) {
    const { name, rest } = footOfRow(row, i);
    const place = placeIn(rest);
    if (!place?.ok) return bad('foot-row-unread', { row: i + 1, text: row, why: place });
    feet.push({ name, ...place.value });
  }
  if (!(feet.length === 3)) return bad('listed-feet-not-three', { feet: feet.length });
  const odd = oddNames(feet.map((foot) => foot.name));
  if (odd) return odd;
  const plane = planeThrough(
    feet.map((foot) => ({ ...foot, z: 0 })),
    'feet',
  );
  return plane.ok ? good([...feet].sort((a, b) => a.name.localeCompare(b.name))) : plane;
};

/** The foot a row is about, by its number or else by its order, and what stands behind. A number alone may be a length, so its colon must be there. */
const footOfRow = (row: string, i: number): { readonly name: string; readonly rest: string } => {
  const [, sign, rest = row] =
    /^(?:foot\s+)?([a-z])(?=[\s:=(])\s*[:=]?\s*(.*)$/i.exec(row) ??
    /^foot\s+(\d+)(?=[\s:=(])\s*[:=]?\s*(.*)$/i.exec(row) ??
    /^(\d+)\s*[:=]\s*(.*)$/.exec(row) ??
    [];
  if (sign === undefined) return { name: FOOT_NAMES[i] ?? 'another', rest };
  const letter = sign.toUpperCase();
  return { name: FOOT_NAMES[FORMER_NAMES.indexOf(letter)] ?? letter, rest };
};

const oddNames = (names: readonly string[]): Bad | undefined => {
  const twice = names.find((name, i) => names.indexOf(name) < i);
  if (twice !== undefined) return bad('foot-twice', { name: twice });
  const other = names.find((name) => !(FOOT_NAMES as readonly string[]).includes(name));
  return other === undefined ? undefined : bad('foot-of-other-name', { name: other });
};

/** Turns of each foot from the middle of its travel, clockwise plus; a foot that is not named stands in the middle. */
export const readStands = (text: string): Result<Readonly<Record<FootName, number>>> => {
  const rows = rowsOf(text, /[;\n]/);
  if (!rows.ok) return rows;
  const stands = new Map<string, number>();
  const named = rows.value.map(footOfRow);
  const odd = oddNames(named.map((row) => row.name));
  if (odd) return odd;
  for (const { name, rest } of named) {
    const read = readQuantity(rest, 'turn', 'turns');
    if (!read.ok) return bad('stand-unread', { foot: name, why: read });
    if (!(Math.abs(read.value.value) <= MOST_TURNS))
      return bad('stand-beyond', { foot: name, text: rest, most: MOST_TURNS });
    stands.set(name, read.value.value);
  }
  const of = (name: FootName) => stands.get(name) ?? 0;
  return good({ 1: of('1'), 2: of('2'), 3: of('3') });
};

/** More than any foot has thread for. */
const MOST_TURNS = 1000;

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
    if (!at?.ok) return bad('reading-row-unread', { row: i + 1, text: row, why: at });
    if (reading === undefined || more.length > 0)
      return bad('reading-row-unread', { row: i + 1, text: row, why: undefined });
    const height = lengthIn(reading, 'µm');
    if (!height.ok) return bad('reading-unread', { row: i + 1, why: height });
    points.push({ ...at.value, z: height.value });
  }
  if (!(points.length <= MOST_READINGS))
    return bad('too-many-readings', { readings: points.length, most: MOST_READINGS });
  const plane = planeThrough(points, 'readings');
  return plane.ok ? good(points) : plane;
};

/** Later rounds, heights in mm; none where nothing is typed. */
export const readRounds = (text: string): Result<readonly (readonly number[])[]> => {
  const rows = rowsOf(text, /[|\n]/);
  if (!rows.ok) return rows;
  if (!(rows.value.length <= MOST_ROUNDS))
    return bad('too-many-rounds', { rounds: rows.value.length, most: MOST_ROUNDS });
  const rounds: number[][] = [];
  for (const [i, row] of rows.value.entries()) {
    const cells = row.split(row.includes(';') ? ';' : /,\s+|\t|\s+(?=[+\-−–]?[\d.])/);
    const heights: number[] = [];
    for (const cell of cells.filter((text, j) => text !== '' || j < cells.length - 1)) {
      const height = lengthIn(cell, 'µm');
      if (!height.ok) return bad('round-unread', { round: i + 2, why: height });
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
    : bad('rows-too-long', { text, most: LONGEST_LIST });

/** A length in mm within what planes are laid through. */
const lengthIn = (text: string, fallback: Unit): Result<number> => {
  const read = readQuantity(text, 'mm', fallback);
  if (!read.ok) return read;
  return Math.abs(read.value.value) <= 1e4 ? good(read.value.value) : bad('length-beyond', { text });
};

/** A place, or the refusal of its first odd number; neither where there are not two numbers. */
const placeIn = (text: string): Result<Place> | undefined => {
  const [left, right] = columnsIn(text.replace(/^\((.*)\)$/, '$1'), 2) ?? [];
  if (left === undefined || right === undefined) return undefined;
  const [x, y] = [lengthIn(left, 'mm'), lengthIn(right, 'mm')];
  if (!x.ok) return x;
  if (!y.ok) return y;
  return good({ x: x.value, y: y.value });
};

/** So many numbers out of a row, or undefined. */
const columnsIn = (text: string, count: number): readonly string[] | undefined => {
  for (const between of [/,\s+|\t/, /\s+(?=[+\-−–]?[\d.])/, /,/]) {
    const parts = text.split(between).map((part) => part.trim());
    if (parts.length === count && parts.every((part) => part !== '')) return parts;
  }
  return undefined;
};
