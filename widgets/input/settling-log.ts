/**
 * A log of readings of one place that nobody turned, as it is typed: time since the setting, indicator, and the temperature if it was read. A row each,
 * parted by a line break or a bar:
 *
 *   2 h; -1.4 µm; 20.6
 *
 * A bare time is hours, a bare reading µm, a bare temperature °C. Rows come out by time. Units out: h, mm, °C; each with half a unit of its last digit.
 */
import { bad, good, type Result, type SettlingReading } from '../engine/index.ts';
import { readNumber, readQuantity } from './quantity.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'log-row-unread': { readonly row: number; readonly text: string };
    'log-value': { readonly row: number; readonly field: 'time' | 'reading' | 'temperature'; readonly why: Bad };
    'log-some-warm': { readonly row: number };
    'log-too-long': { readonly rows: number; readonly most: number };
  }
}

const MOST_ROWS = 200;

export const readSettlingLog = (text: string): Result<readonly SettlingReading[]> => {
  const rows = text
    .split(/[|\n]/)
    .map((row) => row.replace(/\s+/g, ' ').trim())
    .filter((row) => row !== '');
  if (!(rows.length <= MOST_ROWS)) return bad('log-too-long', { rows: rows.length, most: MOST_ROWS });
  const read: SettlingReading[] = [];
  for (const [i, row] of rows.entries()) {
    const entry = entryOf(row, i + 1);
    if (!entry.ok) return entry;
    read.push(entry.value);
  }
  const warm = read.filter(({ T }) => T !== undefined).length;
  if (warm > 0 && warm < read.length)
    return bad('log-some-warm', { row: read.findIndex(({ T }) => T === undefined) + 1 });
  return good(read.sort((a, b) => a.t - b.t));
};

const entryOf = (row: string, number: number): Result<SettlingReading> => {
  const [time, reading, warmth, ...rest] = row.split(/;|\t/).map((part) => part.trim());
  if (!time || !reading || rest.length > 0) return bad('log-row-unread', { row: number, text: row });
  const wrong = (field: 'time' | 'reading' | 'temperature', why: Result<unknown>) =>
    why.ok ? bad('log-row-unread', { row: number, text: row }) : bad('log-value', { row: number, field, why });
  const t = readQuantity(time, 'h', 'h');
  if (!t.ok) return wrong('time', t);
  const z = readQuantity(reading, 'mm', 'µm');
  if (!z.ok) return wrong('reading', z);
  const read = { t: t.value.value, z: z.value.value, half: z.value.half };
  if (!warmth) return good(read);
  const T = readNumber(warmth.replace(/\s*°\s*C$/i, ''));
  if (!T.ok) return wrong('temperature', T);
  const decimals = /[.,](\d+)/.exec(warmth)?.[1]?.length ?? 0;
  return good({ ...read, T: T.value, halfT: 0.5 * 10 ** -decimals });
};
