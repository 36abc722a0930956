/** Lab readings of a whole class in one table: name, flat, reading, its unit where it has one, and way; as the rigs are written, and as a class types them. */

import { looselyWritten } from './loosely.ts';
import { cellsOf, plainName } from './mark.ts';

export interface TypedBy {
  readonly student: string;
  /** As one student’s readings are typed: flat; reading; way. */
  readonly text: string;
}

export interface TypedClass {
  readonly students: readonly TypedBy[];
  /** First cells that are no name of the roster, each once. */
  readonly unknown: readonly string[];
}

const NAMED_ROW = 4;

/** A row that nothing but blanks divides, as it is typed in haste: the longest name that it begins with, and what follows. */
const byBlanks = (row: readonly string[], roster: readonly string[]): readonly string[] => {
  const [only = ''] = row;
  if (row.length > 1) return row;
  const name = roster
    .filter((student) => only.startsWith(`${student} `))
    .sort((a, b) => b.length - a.length)
    .at(0);
  return name === undefined ? row : [name, ...only.slice(name.length).trim().split(/\s+/)];
};

/** What each student read, or undefined where no row begins with a name of the roster: then it is one student’s table. */
export const readingsByStudent = (text: string, roster: readonly string[]): TypedClass | undefined => {
  const rows = cellsOf(text).map((row) => byBlanks(row, roster));
  const known = new Map(roster.map((student) => [looselyWritten(student), student]));
  const nameOf = ([name = '']: readonly string[]) =>
    roster.includes(name) ? name : known.get(looselyWritten(plainName(name)));
  if (!rows.some((row) => nameOf(row) !== undefined)) return undefined;
  const typed = new Map<string, string[]>();
  const unknown = new Set<string>();
  for (const [i, row] of rows.entries()) {
    const student = nameOf(row);
    const [name = '', flat = '', reading = '', ...rest] = row.map((cell) => cell.replace(/^'(?=[=+\-−@])/, ''));
    // The first row may be the head of the table.
    if (student === undefined) {
      if (i > 0 || /^\s*[+−-]?\d/.test(flat)) unknown.add(name);
      continue;
    }
    const line =
      rest.length + 3 > NAMED_ROW ? [flat, `${reading} ${rest[0]}`, ...rest.slice(1)] : [flat, reading, ...rest];
    typed.set(student, [...(typed.get(student) ?? []), line.join('; ')]);
  }
  return {
    students: [...typed].map(([student, lines]) => ({ student, text: lines.join('\n') })),
    unknown: [...unknown],
  };
};
