/**
 * A list of parts with the reader's own prices: `stud M10: 2 × 1.20; ball: 1 × 0.35; guide post`. A part without a
 * price is kept and said to be missing one; the sum is of those that have one. No currency: whatever the reader thinks in.
 */

import { bad, good, type Result } from '../engine/index.ts';
import { readNumber } from './quantity.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'part-list-too-long': { readonly text: string; readonly most: number };
    'too-many-parts': { readonly parts: number; readonly most: number };
    'part-name-missing': { readonly row: string };
    /** Count or price is no number. */
    'part-unread': { readonly name: string; readonly why: Bad };
    'part-count-odd': { readonly name: string; readonly count: string };
    'part-price-odd': { readonly name: string; readonly price: string };
  }
}

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
  if (!(text.length <= LONGEST_PARTS)) return bad('part-list-too-long', { text, most: LONGEST_PARTS });
  const rows = text
    .split(/[;\n]/)
    .map((row) => row.replace(/\s+/g, ' ').trim())
    .filter((row) => row !== '');
  if (!(rows.length <= MOST_PARTS)) return bad('too-many-parts', { parts: rows.length, most: MOST_PARTS });
  const parts: PartLine[] = [];
  for (const row of rows) {
    const read = readPart(row);
    if (!read.ok) return read;
    parts.push(read.value);
  }
  return good(totalled(parts));
};

/** The list with its sum, of the parts that have a price. */
export const totalled = (parts: readonly PartLine[]): PartsList => ({
  parts,
  total: parts.reduce((sum, { count, price }) => sum + count * (price ?? 0), 0),
  unpriced: parts.filter((p) => p.price === undefined).map((p) => p.name),
});

const readPart = (row: string): Result<PartLine> => {
  const [name = '', cost] = row.split(/:\s*/, 2);
  if (!(name.length > 0 && name.length <= 60)) return bad('part-name-missing', { row });
  if (cost === undefined || cost === '') return good({ name, count: 1, price: undefined });
  const [first = '', second] = cost.split(/\s*[×x*]\s*/i, 2);
  const count = second === undefined ? good(1) : readNumber(first);
  const price = readNumber(second ?? first);
  if (!count.ok) return bad('part-unread', { name, why: count });
  if (!price.ok) return bad('part-unread', { name, why: price });
  if (!(Number.isInteger(count.value) && count.value >= 1 && count.value <= 1000))
    return bad('part-count-odd', { name, count: first });
  return price.value >= 0 && price.value <= 1e6
    ? good({ name, count: count.value, price: price.value })
    : bad('part-price-odd', { name, price: second ?? first });
};
