/**
 * A list of parts with the reader's own prices: `stud M10: 2 × 1.20; ball: 1 × 0.35; guide post`. A part without a
 * price is kept and said to be missing one; the sum is of those that have one. No currency: whatever the reader thinks in.
 */

import { good, quoted, type Result, said } from '../engine/index.ts';
import { reasonOf } from '../words/reason.ts';
import { readNumber } from './quantity.ts';

export interface PartLine {
  readonly name: string;
  readonly count: number;
  /** Price of one, or undefined where none was given. */
  readonly price: number | undefined;
}

export interface PartsList {
  readonly parts: readonly PartLine[];
  readonly total: number;
  /** Names of parts without a price. */
  readonly unpriced: readonly string[];
}

const MOST_PARTS = 40;
export const LONGEST_PARTS = 2000;

export const readPartsList = (text: string): Result<PartsList> => {
  if (!(text.length <= LONGEST_PARTS))
    return said(`Read ${quoted(text)}; ${LONGEST_PARTS} characters are the most here: leave some parts out.`);
  const rows = text
    .split(/[;\n]/)
    .map((row) => row.replace(/\s+/g, ' ').trim())
    .filter((row) => row !== '');
  if (!(rows.length <= MOST_PARTS))
    return said(`Read ${rows.length} parts; at most ${MOST_PARTS} are listed: join those that are bought together.`);
  const parts: PartLine[] = [];
  for (const row of rows) {
    const read = readPart(row);
    if (!read.ok) return read;
    parts.push(read.value);
  }
  return good({
    parts,
    total: parts.reduce((sum, { count, price }) => sum + count * (price ?? 0), 0),
    unpriced: parts.filter((p) => p.price === undefined).map((p) => p.name),
  });
};

const readPart = (row: string): Result<PartLine> => {
  const [name = '', cost] = row.split(/:\s*/, 2);
  if (!(name.length > 0 && name.length <= 60))
    return said(`Read ${quoted(row)}; a part has a name of at most 60 characters, then a colon, count × price.`);
  if (cost === undefined || cost === '') return good({ name, count: 1, price: undefined });
  const [first = '', second] = cost.split(/\s*[×x*]\s*/i, 2);
  const count = second === undefined ? good(1) : readNumber(first);
  const price = readNumber(second ?? first);
  if (!count.ok) return said(`${quoted(name)}: ${reasonOf(count)}`);
  if (!price.ok) return said(`${quoted(name)}: ${reasonOf(price)}`);
  if (!(Number.isInteger(count.value) && count.value >= 1 && count.value <= 1000))
    return said(`${quoted(name)}: read ${quoted(first)} as the count; a whole number from 1 to 1000 stands before ×.`);
  return price.value >= 0 && price.value <= 1e6
    ? good({ name, count: count.value, price: price.value })
    : said(`${quoted(name)}: read a price of ${quoted(second ?? first)}; it is from 0 to 1 000 000.`);
};
