/**
 * The question bank: every exercise of every chapter, under a version that is worked out from what it holds and what the engine
 * answers, so that a bank that has been changed can't pass for the one a paper was set from.
 */
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

/** What an author wrote, without what the glossary adds to it: its labels and bounds change no number. */
const written = ({ pools, ...rest }: Exercise) => ({ ...rest, pools: pools.map((p) => [p.input.name, p.options]) });

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
    full.map(({ slug, exercises }) => [slug, exercises.map((e) => [written(e), worked(e)])]),
  );
  return { version: `${DRAWING}-${fnv1a64(holds).toString(16).padStart(16, '0').slice(0, 10)}`, chapters: full };
};
