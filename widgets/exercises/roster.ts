/** The class as pasted: one name or code a line. It stays in the browser; nothing here sends or keeps it. */
import { namesTwice, unitNotTaken } from '#words/papers.ts';
import { bad, good, quoted, type Result } from '../engine/index.ts';
import type { OwnUnits } from './forms.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'roster-empty': Readonly<Record<never, never>>;
    'roster-too-long': { readonly names: number; readonly most: number };
    'roster-line-too-long': { readonly line: number; readonly text: string; readonly most: number };
    'class-code-empty': Readonly<Record<never, never>>;
    'class-code-too-long': { readonly text: string; readonly most: number };
  }
}

export interface Roster {
  readonly students: readonly string[];
  /** Of students whose line ends in `; inch` or `; mm`: the unit in which they are asked. */
  readonly units: ReadonlyMap<string, OwnUnits>;
  /** What was done to the list, one sentence each. */
  readonly notes: readonly string[];
}

const MOST_STUDENTS = 1000;
export const LONGEST_NAME = 80;
const LONGEST_CODE = 40;

/** Spaces evened out, accents in one spelling, characters that can't be seen taken out: what looks the same is the same. */
const tidy = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** A line in two: the name, and behind a semicolon or a tab the unit in which the student is asked. */
const apart = (line: string): { readonly name: string; readonly units?: OwnUnits } => {
  const [, name, unit] =
    /^(.*?)\s*[;\t]\s*(mm|metric|metrisch|inch|in|imperial|zoll)\s*$/i.exec(line.slice(0, 2000)) ?? [];
  if (name === undefined || unit === undefined) return { name: tidy(line) };
  return { name: tidy(name), units: /^m/i.test(unit) ? 'mm' : 'inch' };
};

export const readRoster = (text: string): Result<Roster> => {
  const raw = text.split(/\r\n|\r|\n/).map(apart);
  const lines = raw.map(({ name }) => name);
  const names = lines.filter((l) => l !== '');
  if (names.length === 0) return bad('roster-empty', {});
  if (!(names.length <= MOST_STUDENTS)) return bad('roster-too-long', { names: names.length, most: MOST_STUDENTS });
  const long = lines.findIndex((l) => [...l].length > LONGEST_NAME);
  if (long >= 0) return bad('roster-line-too-long', { line: long + 1, text: lines[long] ?? '', most: LONGEST_NAME });
  const taken = new Set(names);
  const count = new Map<string, number>();
  const twice: string[] = [];
  const students = names.map((name) => {
    let n = (count.get(name) ?? 0) + 1;
    count.set(name, n);
    if (n === 1) return name;
    while (taken.has(`${name} (${n})`)) n++;
    count.set(name, n);
    taken.add(`${name} (${n})`);
    twice.push(`${name} (${n})`);
    return `${name} (${n})`;
  });
  const units = new Map<string, OwnUnits>();
  for (const [i, own] of raw.filter(({ name }) => name !== '').entries())
    if (own.units !== undefined) units.set(students[i] ?? '', own.units);
  const notes = twice.length === 0 ? [] : [namesTwice(twice.length, quoted(twice[0] ?? ''))];
  const odd = names.find((name) => name.includes(';'));
  if (odd !== undefined) notes.push(unitNotTaken(quoted(odd), quoted(odd.slice(odd.lastIndexOf(';') + 1).trim())));
  return good({ students, units, notes });
};

export const readClassCode = (text: string): Result<string> => {
  const code = tidy(text.slice(0, 500));
  if (code === '') return bad('class-code-empty', {});
  return [...code].length <= LONGEST_CODE ? good(code) : bad('class-code-too-long', { text, most: LONGEST_CODE });
};
