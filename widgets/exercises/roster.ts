/** The class as pasted: one name or code a line. It stays in the browser; nothing here sends or keeps it. */
import { good, quoted, type Result, said } from '../engine/index.ts';

export interface Roster {
  readonly students: readonly string[];
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

export const readRoster = (text: string): Result<Roster> => {
  const lines = text.split(/\r\n|\r|\n/).map(tidy);
  const names = lines.filter((l) => l !== '');
  if (names.length === 0)
    return said('The roster is empty; paste one name or code a line, and each gets a paper of its own.');
  if (!(names.length <= MOST_STUDENTS))
    return said(
      `The roster has ${names.length} names; at most ${MOST_STUDENTS} papers are set at once: paste it in parts.`,
    );
  const long = lines.findIndex((l) => [...l].length > LONGEST_NAME);
  if (long >= 0)
    return said(
      `Line ${long + 1} of the roster, ${quoted(lines[long] ?? '')}, is longer than ${LONGEST_NAME} characters: shorten it, or put each name on a line of its own.`,
    );
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
  const notes =
    twice.length === 0
      ? []
      : [
          `${twice.length === 1 ? 'One name stands' : `${twice.length} names stand`} in the roster more than once; the later ones are numbered, ${quoted(twice[0] ?? '')} and so on, so that no two students get one paper.`,
        ];
  return good({ students, notes });
};

export const readClassCode = (text: string): Result<string> => {
  const code = tidy(text.slice(0, 500));
  if (code === '') return said('The class code is empty; type one, for example 7B-autumn.');
  return [...code].length <= LONGEST_CODE
    ? good(code)
    : said(`Read ${quoted(text)}; a class code has at most ${LONGEST_CODE} characters: shorten it.`);
};
