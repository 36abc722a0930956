/**
 * Passports of pieces as they are typed: what was found on one piece on one day, a row each.
 *
 *   1, 2026-11-03: lead 88.7 µm, wave 0.4 µm, place 1.5 turns, wear 0.6 µm, new grease
 *
 * The piece is any short name; where it is the number of a foot, levelling takes its lead and its place from here. Lead (bare: µm) is the size of the motion of a turn, so it has no sign: the sense is that
 * of the threads. Wave is its periodic error, crest to trough; place is in turns from the middle of the stroke, clockwise plus; wear is how much play has grown. What is none of these is a note.
 * Rows are parted by a line break or a bar. Units out: mm, turns.
 */
import { bad, good, type Result } from '../engine/index.ts';
import { readNumber, readQuantity } from './quantity.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'passport-row-unread': { readonly row: number; readonly text: string };
    'passport-day': { readonly row: number; readonly text: string };
    'passport-value': { readonly row: number; readonly field: string; readonly why: Bad };
    'passport-lead': { readonly row: number };
    'passport-too-long': { readonly rows: number; readonly most: number };
  }
}

export interface Entry {
  readonly piece: string;
  /** As the calendar writes it, so that days sort as texts. */
  readonly day: string;
  readonly lead: number | undefined;
  readonly wave: number | undefined;
  readonly place: number | undefined;
  readonly wear: number | undefined;
  readonly note: string;
}

export const LONGEST_PASSPORTS = 8000;
const MOST_ROWS = 120;
const LENGTHS = ['lead', 'wave', 'wear'] as const;

const dayOf = (text: string): string | undefined => {
  const [, y, m, d] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text) ?? [];
  if (y === undefined || m === undefined || d === undefined) return undefined;
  const date = new Date(Date.UTC(Number(y), Number(m) - 1, Number(d)));
  const same = date.getUTCMonth() === Number(m) - 1 && date.getUTCDate() === Number(d);
  return same && Number(y) >= 1900 ? `${y}-${m.padStart(2, '0')}-${d.padStart(2, '0')}` : undefined;
};

/** By piece, each by day; rows that were typed in any order. */
export const readPassports = (text: string): Result<readonly Entry[]> => {
  const rows = text
    .split(/[|\n]/)
    .map((row) => row.replace(/\s+/g, ' ').trim())
    .filter((row) => row !== '');
  if (!(rows.length <= MOST_ROWS)) return bad('passport-too-long', { rows: rows.length, most: MOST_ROWS });
  const entries: Entry[] = [];
  for (const [i, row] of rows.entries()) {
    const entry = entryOf(row, i + 1);
    if (!entry.ok) return entry;
    entries.push(entry.value);
  }
  return good(
    entries.sort((a, b) => a.piece.localeCompare(b.piece, 'en') || (a.day < b.day ? -1 : a.day > b.day ? 1 : 0)),
  );
};

const entryOf = (text: string, row: number): Result<Entry> => {
  const [, piece, when, rest = ''] = /^([^,:]{1,24}), ?([^:]{1,20}): ?(.*)$/.exec(text) ?? [];
  if (piece === undefined || when === undefined) return bad('passport-row-unread', { row, text: text.slice(0, 80) });
  const day = dayOf(when.trim());
  if (day === undefined) return bad('passport-day', { row, text: when.trim() });
  const found: { lead?: number; wave?: number; wear?: number; place?: number } = {};
  const notes: string[] = [];
  for (const phrase of rest.split(/, |;/)) {
    const [, name = '', value = ''] = /^(lead|wave|wear|place) (.+)$/i.exec(phrase.trim()) ?? [];
    const field = name.toLowerCase();
    if (field === 'place') {
      const turns = readNumber(value.replace(/ ?turns?$/i, ''));
      if (!turns.ok) return bad('passport-value', { row, field, why: turns });
      found.place = turns.value;
    } else if (LENGTHS.some((l) => l === field)) {
      const read = value.length <= 30 ? readQuantity(value, 'mm', 'µm') : undefined;
      if (!read?.ok)
        return read
          ? bad('passport-value', { row, field, why: read })
          : bad('passport-row-unread', { row, text: text.slice(0, 80) });
      const length = Math.abs(read.value.value);
      if (field === 'lead' && !(length > 0 && length < 120)) return bad('passport-lead', { row });
      found[field as 'lead'] = length;
    } else if (phrase.trim() !== '') notes.push(phrase.trim());
  }
  return good({
    piece: piece.trim(),
    day,
    lead: found.lead,
    wave: found.wave,
    place: found.place,
    wear: found.wear,
    note: notes.join(', ').slice(0, 200),
  });
};

/** The last of its kind that was found on a piece, and the day; undefined where none was. */
export const lastOf = (
  field: 'lead' | 'place',
  entries: readonly Entry[],
  piece: string,
): { readonly value: number; readonly day: string } | undefined => {
  // By its day: A and a are one piece, which its rows are not sorted as.
  const last = entries
    .filter((e) => e.piece.toLowerCase() === piece.toLowerCase() && e[field] !== undefined)
    .reduce<Entry | undefined>((late, e) => (late === undefined || e.day >= late.day ? e : late), undefined);
  const value = last?.[field];
  return last === undefined || value === undefined ? undefined : { value, day: last.day };
};

/** Rows typed one below the other, as a field keeps them. */
export const tidyPassports = (text: string): string =>
  text
    .split(/[|\n]/)
    .map((row) => row.replace(/\s+/g, ' ').trim())
    .filter((row) => row !== '')
    .join('\n');
