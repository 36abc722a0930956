/**
 * A class’s answers, as a grid comes back: each is judged against the student’s own item, and what was missed is counted by exercise and
 * by slip. The grid is that of `gridCsv`: names down, keys of items across, parted by commas, semicolons or tabs.
 */
import { QUESTION } from '#words/classroom.ts';
import { bad, good, type Result } from '../engine/index.ts';
import type { SetPaper } from './answer-grid.ts';
import { csvRow } from './csv-row.ts';
import type { Item } from './exercise.ts';
import { judge, type Verdict } from './judge.ts';
import { looselyWritten } from './loosely.ts';
import type { Marks } from './paper-html.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'grid-empty': Readonly<Record<never, never>>;
    'grid-too-long': { readonly characters: number; readonly most: number };
    'grid-without-names': { readonly text: string };
    'grid-keys-unknown': { readonly keys: readonly string[] };
  }
}

/** Characters that are read of a grid: a thousand students with fifty answers each. */
const MOST_READ = 2_000_000;

/** A text in cells: quotes as RFC 4180 has them. The separator is the first of tab, semicolon and comma that the head holds. */
export const cellsOf = (text: string): readonly (readonly string[])[] => {
  const head = text.slice(0, text.search(/\r|\n|$/));
  const separator = ['\t', ';'].find((sign) => head.includes(sign)) ?? ',';
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  const end = () => {
    row.push(cell.trim());
    cell = '';
  };
  for (let i = 0; i < text.length; i++) {
    const sign = text[i] ?? '';
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (text[i + 1] === '"') {
        cell += '"';
        i++;
      } else quoted = false;
    } else if (sign === '"' && cell.trim() === '') quoted = true;
    else if (sign === separator) end();
    else if (sign === '\n' || sign === '\r') {
      end();
      rows.push(row);
      row = [];
    } else cell += sign;
  }
  end();
  rows.push(row);
  return rows.filter((cells) => cells.some((c) => c !== ''));
};

export interface MarkedAnswer {
  readonly key: string;
  readonly item: Item;
  readonly typed: string;
  readonly verdict: Verdict | undefined;
  readonly marks: number;
}
export interface MarkedStudent {
  readonly student: string;
  readonly answers: readonly MarkedAnswer[];
  readonly score: number;
}
export interface Marked {
  readonly students: readonly MarkedStudent[];
  readonly most: number;
  /** Of each exercise how many were right, wrong, not to be read, and left out. */
  readonly items: readonly {
    readonly key: string;
    readonly title: string;
    readonly right: number;
    readonly wrong: number;
    readonly unread: number;
    readonly left: number;
  }[];
  /** What was said to wrong answers, and how often, the most frequent first. */
  readonly slips: readonly { readonly key: string; readonly says: string; readonly count: number }[];
  /** Names of the grid that are on no roster, and of the roster that the grid lacks. */
  readonly unknown: readonly string[];
  readonly missing: readonly string[];
  /** Names of the grid that were taken for one of the roster that is written a little otherwise. */
  readonly taken: readonly { readonly name: string; readonly student: string }[];
}

/** What a spreadsheet keeps a cell from being a formula by is no part of an answer. */
const plainCell = (text: string): string => text.replace(/^'/, '');
/** Of a name too, which may begin with an apostrophe of its own. */
export const plainName = (text: string): string => text.replace(/^'(?=[\s\0]*[=+\-@])/, '');

/** The rows of a grid by student: those of the very name first, then those that only one student and one row are written like. */
const rowsByStudent = (typedBy: ReadonlyMap<string, readonly string[]>, students: readonly string[]) => {
  const found = new Map(students.flatMap((one) => (typedBy.has(one) ? [[one, one] as const] : [])));
  const names = [...typedBy.keys()].filter((name) => name !== '' && !found.has(name));
  const open = students.filter((one) => !found.has(one));
  for (const name of names) {
    const like = (other: string) => looselyWritten(other) === looselyWritten(name);
    const [student, another] = open.filter(like);
    if (student !== undefined && another === undefined && names.filter(like).length === 1) found.set(student, name);
  }
  return found;
};

/** A head may have the titles, or the numbers that stand over the printed grid, where no key stands: each is then the key of its column. */
const keysOf = (cells: readonly string[], lines: SetPaper['lines']): readonly string[] => {
  if (cells.some((cell) => lines.some(({ key }) => key === cell))) return cells;
  const left = [...lines];
  return cells.map((cell) => {
    const at = left.findIndex(
      (line) =>
        looselyWritten(line.item.exercise.title) === looselyWritten(cell) || cell === String(lines.indexOf(line) + 1),
    );
    // Of two with one title the first comes first, as in the empty grid.
    return at < 0 ? cell : (left.splice(at, 1)[0]?.key ?? cell);
  });
};

/** `forSlip` is the share of the marks that a known slip still earns. */
export const markGrid = (text: string, papers: readonly SetPaper[], marks: Marks, forSlip = 0): Result<Marked> => {
  if (!(text.length <= MOST_READ)) return bad('grid-too-long', { characters: text.length, most: MOST_READ });
  const [head, ...rows] = cellsOf(text);
  if (!head) return bad('grid-empty', {});
  const keys = papers[0]?.lines.map(({ key }) => key) ?? [];
  const columns = keysOf(head.slice(1).map(plainCell), papers[0]?.lines ?? []);
  if (columns.length === 0) return bad('grid-without-names', { text: head.join(' ') });
  const strange = columns.filter((key) => key !== '' && !keys.includes(key));
  if (strange.length > 0) return bad('grid-keys-unknown', { keys: strange });
  // The second row of a grid may have the titles; it is no student.
  const titles = new Set((papers[0]?.lines ?? []).map(({ item }) => item.exercise.title));
  const isTitles = ([name = '', ...cells]: readonly string[]) =>
    name === QUESTION || cells.some((cell) => titles.has(plainCell(cell)));
  const answered = rows.filter((row, i) => i > 0 || !isTitles(row));
  const typedBy = new Map(answered.map(([name = '', ...cells]) => [plainName(name), cells]));
  const rowOf = rowsByStudent(
    typedBy,
    papers.map(({ student }) => student),
  );
  const used = new Set(rowOf.values());
  const students = papers.flatMap(({ student, lines }): MarkedStudent[] => {
    const row = rowOf.get(student);
    // A row without a name, such as one of sums, is nobody’s.
    const cells = row === undefined ? undefined : typedBy.get(row);
    if (!cells) return [];
    const answers = lines.map(({ key, exercise, item }): MarkedAnswer => {
      const typed = plainCell(cells[columns.indexOf(key)] ?? '');
      const verdict = typed === '' ? undefined : judge(item, typed);
      const full = marks(exercise);
      const share =
        verdict?.kind === 'right' ? 1 : verdict?.kind === 'slip' || verdict?.kind === 'other way' ? forSlip : 0;
      return { key, item, typed, verdict, marks: share * full };
    });
    return [{ student, answers, score: answers.reduce((sum, a) => sum + a.marks, 0) }];
  });
  const all = students.flatMap(({ answers }) => answers);
  const slips = new Map<string, { key: string; says: string; count: number }>();
  for (const { key, verdict } of all) {
    if (verdict?.kind !== 'slip' && verdict?.kind !== 'other way') continue;
    const at = `${key}\n${verdict.says}`;
    const known = slips.get(at) ?? { key, says: verdict.says, count: 0 };
    known.count++;
    slips.set(at, known);
  }
  return good({
    students,
    most: papers[0]?.lines.reduce((sum, { exercise }) => sum + marks(exercise), 0) ?? 0,
    items: (papers[0]?.lines ?? []).map(({ key, item }) => {
      const own = all.filter((a) => a.key === key);
      const right = own.filter(({ verdict }) => verdict?.kind === 'right').length;
      const left = own.filter(({ verdict }) => verdict === undefined).length;
      const unread = own.filter(({ verdict }) => verdict?.kind === 'unread').length;
      return { key, title: item.exercise.title, right, wrong: own.length - right - unread - left, unread, left };
    }),
    slips: [...slips.values()].sort((a, b) => b.count - a.count),
    unknown: [...typedBy.keys()].filter((name) => name !== '' && !used.has(name)),
    missing: papers.flatMap(({ student }) => (rowOf.has(student) ? [] : [student])),
    taken: [...rowOf].flatMap(([student, name]) => (name === student ? [] : [{ name, student }])),
  });
};

/** How an answer is named in a table. */
export type AnswerName = 'right' | 'wrong' | 'unread' | 'left';

/** Answer by answer, student by student: what was typed, what it is worth, and what is said to what is not right. */
export const answersOf = ({ students }: Marked) =>
  students.flatMap(({ student, answers }) =>
    answers.map(({ key, item, typed, verdict }) => {
      const kind: AnswerName =
        verdict === undefined ? 'left' : verdict.kind === 'right' || verdict.kind === 'unread' ? verdict.kind : 'wrong';
      const says = kind === 'wrong' || kind === 'unread' ? (verdict?.says ?? '') : '';
      return { student, key, title: item.exercise.title, typed, kind, says };
    }),
  );

/** Students with their marks by item and in all, then the exercises and slips that were missed, then every answer. */
export const scoresCsv = (
  marked: Marked,
  words: {
    readonly heads: readonly string[];
    readonly score: string;
    readonly of: string;
    readonly says: string;
    readonly answers: readonly string[];
    readonly kinds: Readonly<Record<AnswerName, string>>;
  },
): string => {
  const { students, items, slips, most } = marked;
  const number = (x: number) => String(Math.round(x * 100) / 100);
  return `${[
    // Score and most apart: a spreadsheet takes 5/6 for a day of June.
    csvRow([words.heads[0] ?? '', ...items.map(({ key }) => key), words.score, words.of]),
    ...students.map(({ student, answers, score }) =>
      csvRow([student, ...answers.map((a) => number(a.marks)), number(score), number(most)]),
    ),
    '',
    csvRow(words.heads.slice(1)),
    ...items.map(({ key, title, right, wrong, unread, left }) =>
      csvRow([key, title, String(right), String(wrong), String(unread), String(left)]),
    ),
    '',
    ...slips.map(({ key, says, count }) => csvRow([key, says, String(count)])),
    '',
    csvRow(words.answers),
    ...answersOf(marked).map(({ student, key, title, typed, kind, says }) =>
      csvRow([student, key, title, typed, words.kinds[kind], says]),
    ),
  ].join('\r\n')}\r\n`;
};
