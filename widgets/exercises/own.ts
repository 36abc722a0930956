/**
 * What a teacher changes of the bank without code: exercises left out, marks, words and stock sizes. A changed bank has a version of its
 * own, so that nobody takes its papers for those of another.
 */
import { SEPARATOR } from '#words/language.ts';
import { type Input, readInput } from '../assembly/numbers.ts';
import { bad, good, type Result, spokenNumber } from '../engine/index.ts';
import { CHOICES, type ChoiceName, optionText } from '../input/choices.ts';
import type { Bank } from './bank.ts';
import { draws, type Exercise, itemAt, picksAt } from './exercise.ts';
import { fnv1a64 } from './seed.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'own-marks-odd': { readonly text: string; readonly most: number };
    'own-place-unknown': { readonly place: string; readonly places: readonly string[] };
    'own-place-missing': { readonly place: string };
    'own-size-unread': { readonly name: string; readonly why: Bad };
    'own-sizes-twice': { readonly name: string; readonly size: string };
    'own-items-few': { readonly sound: number; readonly tried: number; readonly why: Bad | undefined };
    'own-draws-few': { readonly draws: number; readonly least: number };
    'own-file-unread': Readonly<Record<never, never>>;
    'own-question-empty': Readonly<Record<never, never>>;
  }
}

export interface Edit {
  readonly title: string;
  readonly question: string;
  readonly hint: string;
  /** By pool its options, parted by commas. */
  readonly sizes: Readonly<Record<string, string>>;
}

export interface Own {
  readonly hidden: readonly string[];
  readonly marks: Readonly<Record<string, number>>;
  readonly edits: Readonly<Record<string, Edit>>;
}
export const NO_OWN: Own = { hidden: [], marks: {}, edits: {} };
const MOST_MARKS = 20;
const FORMAT = 'differential-screw-exercises';

export const editOf = ({ title, question, hint, pools }: Exercise): Edit => ({
  title,
  question,
  hint,
  sizes: Object.fromEntries(pools.map(({ input, options }) => [input.name, options.join(', ')])),
});

const parted = (text: string, between: string | RegExp): readonly string[] =>
  text
    .split(between)
    .map((o) => o.trim())
    .filter((o) => o !== '');

/** Stock sizes as a teacher sees them: in a language whose decimal mark is a comma they are parted by semicolons. */
export const sizesShown = ({ kind, name }: Pick<Input, 'kind' | 'name'>, kept: string): string =>
  parted(kept, ',')
    .map((size) => (kind === 'choice' ? optionText(name as ChoiceName, size) : spokenNumber(size)))
    .join(`${SEPARATOR} `);

/** The same as a bank keeps it: parted by commas, with decimal points, choices by their names. */
export const sizesKept = ({ kind, name }: Pick<Input, 'kind' | 'name'>, typed: string): string =>
  parted(typed, typed.includes(';') ? (SEPARATOR === ',' ? /[;,]/ : ';') : SEPARATOR === ',' ? ',' : /,(?!\d)/)
    .map((size) => {
      if (kind !== 'choice') return SEPARATOR === ',' ? size : size.replace(/(\d),(?=\d)/g, '$1.');
      const { options } = CHOICES[name as ChoiceName];
      return (
        options.find((option) => optionText(name as ChoiceName, option).toLowerCase() === size.toLowerCase()) ?? size
      );
    })
    .join(', ');

/** What of a teacher’s changes changes something here, and the exercises of the rest: unknown to this bank, or such that no item can be drawn. */
export const fitting = (bank: Bank, own: Own): { readonly own: Own; readonly unfit: readonly string[] } => {
  const exercises = new Map(bank.chapters.flatMap((chapter) => chapter.exercises.map((one) => [one.id, one] as const)));
  const edits = Object.entries(own.edits).filter(([id, edit]) => {
    const exercise = exercises.get(id);
    return exercise !== undefined && edited(exercise, edit).ok;
  });
  const marks = Object.entries(own.marks).filter(([id]) => exercises.has(id));
  const taken = new Set(edits.map(([id]) => id));
  return {
    own: {
      hidden: own.hidden.filter((id) => exercises.has(id)),
      marks: Object.fromEntries(marks.filter(([, n]) => n !== 1)),
      edits: Object.fromEntries(edits.filter(([id, edit]) => !isAsWritten(exercises.get(id), edit))),
    },
    unfit: [...new Set([...own.hidden, ...Object.keys(own.marks), ...Object.keys(own.edits)])].filter(
      (id) => !exercises.has(id) || (own.edits[id] !== undefined && !taken.has(id)),
    ),
  };
};

/** A change that was taken back by hand is none. */
const isAsWritten = (exercise: Exercise | undefined, edit: Edit): boolean =>
  exercise !== undefined && JSON.stringify(editOf(exercise)) === JSON.stringify(edit);

const TRIED = 200;
/** With fewer draws neighbours in a class get the same numbers. */
const FEWEST = 4;

/** The exercise with a teacher’s words and sizes, or what is wrong with them. Steps, slips and what is asked stay. */
export const edited = (exercise: Exercise, edit: Edit): Result<Exercise> => {
  const question = edit.question.replace(/\s+/g, ' ').trim();
  if (question === '') return bad('own-question-empty', {});
  const names = exercise.pools.map(({ input }) => input.name as string);
  // A wanted result of a drawer is a place too, which no pool fills.
  const places = (text: string) => [...text.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name);
  const known = [...new Set([...names, ...places(exercise.question)])];
  for (const name of [...places(question), ...places(edit.hint)])
    if (!known.includes(name)) return bad('own-place-unknown', { place: `{${name}}`, places: known });
  for (const name of places(exercise.question))
    if (!places(question).includes(name)) return bad('own-place-missing', { place: `{${name}}` });
  const pools = [];
  for (const pool of exercise.pools) {
    const options = parted(edit.sizes[pool.input.name] ?? pool.options.join(','), ',');
    for (const option of options) {
      const read = readInput(pool.input, option, 'metric');
      if (!read.ok) return bad('own-size-unread', { name: pool.input.name, why: read });
    }
    const twice = options.find((o, i) => options.indexOf(o) < i);
    if (twice !== undefined) return bad('own-sizes-twice', { name: pool.input.name, size: twice });
    pools.push({ ...pool, options: options.length > 0 ? options : pool.options });
  }
  const own: Exercise = {
    ...exercise,
    title: edit.title.trim() || exercise.title,
    question,
    hint: edit.hint.trim(),
    pools,
  };
  const all = draws(own);
  const tried = Math.min(all, TRIED);
  const items = Array.from({ length: tried }, (_, i) => itemAt(own, picksAt(own, Math.floor((i * all) / tried))));
  const sound = items.filter((item) => item.ok).length;
  // As the press asks of a chapter: most draws must make an item.
  const why = items.find((item) => !item.ok);
  if (!why && sound < FEWEST) return bad('own-draws-few', { draws: sound, least: FEWEST });
  if (sound * 4 < tried || sound < FEWEST)
    return bad('own-items-few', { sound, tried, why: why && !why.ok ? why : undefined });
  return good(own);
};

/** The bank as a teacher wants it; edits that no longer fit are left out. */
export const withOwn = (bank: Bank, own: Own): Bank => {
  if (own.hidden.length === 0 && Object.keys(own.edits).length === 0) return bank;
  const changed = JSON.stringify([[...own.hidden].sort(), Object.entries(own.edits).sort()]);
  return {
    version: `${bank.version}-${fnv1a64(changed).toString(16).padStart(16, '0').slice(0, 6)}`,
    chapters: bank.chapters
      .map((chapter) => ({
        ...chapter,
        exercises: chapter.exercises
          .filter(({ id }) => !own.hidden.includes(id))
          .map((exercise) => {
            const edit = own.edits[exercise.id];
            const now = edit && edited(exercise, edit);
            return now?.ok ? now.value : exercise;
          }),
      }))
      .filter(({ exercises }) => exercises.length > 0),
  };
};

export const readMarks = (text: string): Result<number> => {
  const marks = /^\s*\d{1,2}\s*$/.test(text) ? Number(text) : Number.NaN;
  return marks >= 0 && marks <= MOST_MARKS ? good(marks) : bad('own-marks-odd', { text, most: MOST_MARKS });
};

export const writeOwn = (own: Own): string => `${JSON.stringify({ format: FORMAT, version: 1, ...own }, null, 2)}\n`;

const isRecord = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null && !Array.isArray(x);
const isText = (x: unknown): x is string => typeof x === 'string';

/** A file that was written here; what is no text or number of its kind is left out, and every edit is judged again when it is used. */
export const readOwn = (text: string): Result<Own> => {
  let read: unknown;
  try {
    read = JSON.parse(text.slice(0, 2_000_000));
  } catch {
    return bad('own-file-unread', {});
  }
  if (!isRecord(read) || read.format !== FORMAT || read.version !== 1) return bad('own-file-unread', {});
  const marks = isRecord(read.marks) ? Object.entries(read.marks) : [];
  const edits = isRecord(read.edits) ? Object.entries(read.edits) : [];
  return good({
    hidden: Array.isArray(read.hidden) ? read.hidden.filter(isText) : [],
    marks: Object.fromEntries(
      marks.filter((one): one is [string, number] => typeof one[1] === 'number' && readMarks(String(one[1])).ok),
    ),
    edits: Object.fromEntries(
      edits.flatMap(([id, edit]) =>
        isRecord(edit) && isText(edit.title) && isText(edit.question) && isText(edit.hint) && isRecord(edit.sizes)
          ? [
              [
                id,
                {
                  title: edit.title,
                  question: edit.question,
                  hint: edit.hint,
                  sizes: Object.fromEntries(
                    Object.entries(edit.sizes).filter((s): s is [string, string] => isText(s[1])),
                  ),
                },
              ],
            ]
          : [],
      ),
    ),
  });
};
