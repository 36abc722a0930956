/**
 * The question bank: every exercise of every chapter, under a version that is worked out from what it holds, so that a bank
 * that has been changed can't pass for the one a paper was set from.
 */
import type { Exercise } from './exercise.ts';
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

export const makeBank = (chapters: readonly BankChapter[]): Bank => {
  const full = chapters.filter((c) => c.exercises.length > 0);
  const holds = JSON.stringify(full.map(({ slug, exercises }) => [slug, exercises.map(written)]));
  return { version: `${DRAWING}-${fnv1a64(holds).toString(16).padStart(16, '0').slice(0, 10)}`, chapters: full };
};
