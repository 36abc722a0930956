/**
 * Passports of pieces as they are typed: what was found on one piece on one day, a row each.
 *
 *   1, 2026-11-03: lead 88.72 ± 0.45 µm, wave 0.4 µm, hysteresis 1.5 ± 0.1 µm, place 1.5 turns, wear 0.6 µm, new grease
 *
 * The piece is any short name; where it is the number of a foot, levelling takes its lead and its place from here. Lead (bare: µm) is the size of the motion of a turn, so it has no sign: the sense is that
 * of the threads. Wave is its periodic error, crest to trough; hysteresis is the distance between the readings on the way up and on the way down; place is in turns from the middle of the stroke, clockwise plus; wear is how much play has grown. Lead, wave and hysteresis may have a ± behind them. What is none of these is a note.
 * Rows are parted by a line break or a bar. Units out: mm, turns.
 */
import { bad, good, type Result } from '../engine/index.ts';
import { dayIn } from './day.ts';
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
  readonly hysteresis: number | undefined;
  /** The ± of those that have one. */
  readonly doubt: Readonly<Partial<Record<Doubted, number>>>;
  readonly place: number | undefined;
  readonly wear: number | undefined;
  readonly note: string;
}

type Doubted = 'lead' | 'wave' | 'hysteresis';

export const LONGEST_PASSPORTS = 8000;
const MOST_ROWS = 120;
const DOUBTED: readonly Doubted[] = ['lead', 'wave', 'hysteresis'];
const LENGTHS = [...DOUBTED, 'wear'] as const;

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
  const day = dayIn(when.trim());
  if (day === undefined) return bad('passport-day', { row, text: when.trim() });
  const found: { lead?: number; wave?: number; hysteresis?: number; wear?: number; place?: number } = {};
  const doubt: Partial<Record<Doubted, number>> = {};
  const notes: string[] = [];
  for (const phrase of rest.split(/, |;/)) {
    const [, name = '', value = ''] = /^(lead|wave|hysteresis|wear|place) (.+)$/i.exec(phrase.trim()) ?? [];
    const field = name.toLowerCase();
    if (field === 'place') {
      const turns = readNumber(value.replace(/ ?turns?$/i, ''));
      if (!turns.ok) return bad('passport-value', { row, field, why: turns });
      found.place = turns.value;
    } else if (LENGTHS.some((l) => l === field)) {
      const [, middle = value, half] = /^(.+?) ?(?:±|\+-) ?(.+)$/.exec(value) ?? [];
      // The unit behind the ± is that of both.
      const unit = half === undefined || /[a-zµμ"]/i.test(middle) ? '' : ` ${/[^\d.,\s]*$/.exec(half)?.[0] ?? ''}`;
      const read = value.length <= 40 ? readQuantity(`${middle}${unit}`.trim(), 'mm', 'µm') : undefined;
      if (!read?.ok)
        return read
          ? bad('passport-value', { row, field, why: read })
          : bad('passport-row-unread', { row, text: text.slice(0, 80) });
      const length = Math.abs(read.value.value);
      if (field === 'lead' && !(length > 0 && length < 120)) return bad('passport-lead', { row });
      found[field as 'lead'] = length;
      if (half === undefined) continue;
      const known = DOUBTED.find((name) => name === field);
      const apart = readQuantity(half, 'mm', 'µm');
      if (!known || !apart.ok || !(apart.value.value >= 0))
        return known && !apart.ok
          ? bad('passport-value', { row, field, why: apart })
          : bad('passport-row-unread', { row, text: text.slice(0, 80) });
      doubt[known] = apart.value.value;
    } else if (phrase.trim() !== '') notes.push(phrase.trim());
  }
  return good({
    piece: piece.trim(),
    day,
    lead: found.lead,
    wave: found.wave,
    hysteresis: found.hysteresis,
    doubt,
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
): { readonly value: number; readonly half: number | undefined; readonly day: string } | undefined => {
  // By its day: A and a are one piece, which its rows are not sorted as.
  const last = entries
    .filter((e) => alike(e.piece, piece) && e[field] !== undefined)
    .reduce<Entry | undefined>((late, e) => (late === undefined || e.day >= late.day ? e : late), undefined);
  const value = last?.[field];
  return last === undefined || value === undefined
    ? undefined
    : { value, half: field === 'lead' ? last.doubt.lead : undefined, day: last.day };
};

/** Rows typed one below the other, as a field keeps them. */
export const tidyPassports = (text: string): string =>
  text
    .split(/[|\n]/)
    .map((row) => row.replace(/\s+/g, ' ').trim())
    .filter((row) => row !== '')
    .join('\n');

/** What was found on a piece on a day, in mm and turns: what it does not name is kept. */
export type Measured = Pick<Entry, 'piece' | 'day'> &
  Partial<Pick<Entry, 'lead' | 'wave' | 'hysteresis' | 'doubt' | 'place'>>;

/** A length with its ±, in µm to a hundredth. */
const lengthText = (name: string, length: number | undefined, half?: number): readonly string[] => {
  const hundredths = (mm: number) => String(Number((1000 * mm).toFixed(2)));
  return length === undefined
    ? []
    : [`${name} ${hundredths(length)}${half === undefined ? '' : ` ± ${hundredths(half)}`} µm`];
};

const rowOf = (e: Entry): string =>
  `${e.piece}, ${e.day}: ${[
    ...DOUBTED.flatMap((name) => lengthText(name, e[name], e.doubt[name])),
    ...(e.place === undefined ? [] : [`place ${e.place} turns`]),
    ...lengthText('wear', e.wear),
    ...(e.note === '' ? [] : [e.note]),
  ].join(', ')}`;

/** The passports with what was found: in the row of this piece and day where it has one, which keeps what was not found anew, else in a new row. */
export const withMeasured = (
  passports: string,
  measured: Measured,
): Result<{ readonly text: string; readonly row: string }> => {
  const read = readPassports(passports);
  if (!read.ok) return read;
  const rows = tidyPassports(passports)
    .split('\n')
    .filter((row) => row !== '');
  const at = rows.findIndex((row, i) => {
    const entry = entryOf(row, i + 1);
    return entry.ok && entry.value.day === measured.day && alike(entry.value.piece, measured.piece);
  });
  const before = at < 0 ? undefined : entryOf(rows[at] ?? '', at + 1);
  const row = rowOf({
    lead: undefined,
    wave: undefined,
    hysteresis: undefined,
    doubt: {},
    place: undefined,
    wear: undefined,
    note: '',
    ...(before?.ok ? before.value : {}),
    ...measured,
  });
  const text = (at < 0 ? [...rows, row] : rows.with(at, row)).join('\n');
  const again = readPassports(text);
  return again.ok ? good({ text, row }) : again;
};

const alike = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();
