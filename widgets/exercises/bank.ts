/**
 * The question bank: every exercise of every chapter, under a version that is worked out from what decides its numbers and from what the engine
 * answers, so that a bank with other numbers can't pass for the one a paper was set from. Words are not counted: a link to papers opens in every
 * language, and after a question was put more plainly, with the same numbers.
 */
import { type Input, readInput } from '../assembly/numbers.ts';
import type { Step } from '../assembly/steps.ts';
import { draws, type Exercise, itemAt, picksAt } from './exercise.ts';
import { fnv1a64 } from './seed.ts';

export interface BankChapter {
  readonly slug: string;
  readonly title: string;
  readonly exercises: readonly Exercise[];
}

export interface Bank {
  readonly version: string;
  readonly chapters: readonly BankChapter[];
}

/** Raise it when the way an item is drawn or its interval is made is changed. */
const DRAWING = 1;

/** A size as it is read: “1/4 turn” is the same in every language. */
const sizeOf = (input: Input, text: string): string | number => {
  const read = readInput(input, text, 'metric');
  return !read.ok ? text : typeof read.value === 'object' ? read.value.designation : read.value;
};
const worksOut = ({ relation, output, bind, as, digits }: Step) => [relation, output, bind, as, digits];

/** What decides the numbers of an exercise, without a word of it. */
const decides = (exercise: Exercise) => {
  const { id, kind, unit, digits, pools, steps, slips, picture, faults, order, drawer, backwards } = exercise;
  return [
    [id, kind, unit, digits, picture, faults],
    pools.map(({ input, options }) => [input.name, options.map((option) => sizeOf(input, option))]),
    steps.map(worksOut),
    slips.map(({ way, at }) => [typeof way === 'string' ? way : way.map(worksOut), at]),
    order && [order.lines, order.of.map(({ lines }) => lines.length)],
    drawer?.stacks.map((stack) => drawer.inputs.map((input, i) => [input.name, sizeOf(input, stack[i] ?? '')])),
    backwards && [backwards.name, backwards.unit, backwards.digits],
  ];
};

/** So many items of an exercise are worked when the book is read: they are checked, and the version of the bank follows from them. */
const MOST_WORKED = 120;

/** The picks of these items, evenly through all that the pools can give. */
export const workedPicks = (exercise: Exercise): readonly (readonly number[])[] => {
  const all = draws(exercise);
  const count = Math.min(all, MOST_WORKED);
  return Array.from({ length: count }, (_, i) => picksAt(exercise, Math.floor((i * all) / count)));
};

/** What the engine makes of it: answers to six digits, a dash where there is no item. A mended relation is another bank. */
const worked = (exercise: Exercise): string =>
  workedPicks(exercise)
    .map((picks) => {
      const item = itemAt(exercise, picks);
      return item.ok ? `${item.value.amount.toPrecision(6)}${item.value.offered?.right ?? ''}` : '-';
    })
    .join(' ');

export const makeBank = (chapters: readonly BankChapter[]): Bank => {
  const full = chapters.filter((c) => c.exercises.length > 0);
  const holds = JSON.stringify(
    full.map(({ slug, exercises }) => [slug, exercises.map((e) => [decides(e), worked(e)])]),
  );
  return { version: `${DRAWING}-${fnv1a64(holds).toString(16).padStart(16, '0').slice(0, 10)}`, chapters: full };
};
