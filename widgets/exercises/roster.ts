/** The class as pasted: one name or code a line. It stays in the browser; nothing here sends or keeps it. */
import { behindComma, namesTwice, unitNotTaken } from '#words/papers.ts';
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
  /** Students whose line ends in `; large`: their sheets are in large print. */
  readonly large: ReadonlySet<string>;
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

interface Line {
  readonly name: string;
  readonly units?: OwnUnits;
  readonly large?: boolean;
}

const SUFFIX =
  /^(.*?)\s*[;\t]\s*(?:(mm|metric|metrisch|inch|in|imperial|zoll)|(large(?: print)?|groß(?:druck)?|gross(?:druck)?))\s*$/iu;

/** A line in its parts: the name, and behind semicolons or tabs the unit in which the student is asked, and large print; the last one counts. */
const apart = (line: string): Line => {
  const [, rest, unit, large] = SUFFIX.exec(line.slice(0, 2000).normalize('NFC')) ?? [];
  if (rest === undefined) return { name: tidy(line) };
  const before = apart(rest);
  if (large !== undefined) return { ...before, large: true };
  return { ...before, units: /^m/i.test(unit ?? '') ? 'mm' : 'inch' };
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
  const large = new Set<string>();
  for (const [i, own] of raw.filter(({ name }) => name !== '').entries()) {
    if (own.units !== undefined) units.set(students[i] ?? '', own.units);
    if (own.large) large.add(students[i] ?? '');
  }
  const notes = twice.length === 0 ? [] : [namesTwice(twice.length, quoted(twice[0] ?? ''))];
  const odd = names.find((name) => name.includes(';'));
  if (odd !== undefined) notes.push(unitNotTaken(quoted(odd), quoted(odd.slice(odd.lastIndexOf(';') + 1).trim())));
  // A name may hold a comma, so what stands behind one is only asked about.
  const comma = names.find((name) => SUFFIX.test(name.replace(/,(?=[^,]*$)/, ';')) && !name.includes(';'));
  if (comma !== undefined) notes.push(behindComma(quoted(comma)));
  return good({ students, units, large, notes });
};

export const readClassCode = (text: string): Result<string> => {
  const code = tidy(text.slice(0, 500));
  if (code === '') return bad('class-code-empty', {});
  return [...code].length <= LONGEST_CODE ? good(code) : bad('class-code-too-long', { text, most: LONGEST_CODE });
};
