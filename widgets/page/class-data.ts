/** What the page for a class and the mixed review need of the whole book: half a megabyte, so it comes in a script of its own, once it is wanted. */
import type { Bank } from '../exercises/bank.ts';
import type { CourseChapter } from '../exercises/plan.ts';

export interface ClassData {
  /** Every exercise of the book. */
  readonly bank: Bank;
  /** The formulas of the steps of each exercise, set. */
  readonly methods: Readonly<Record<string, readonly string[]>>;
  /** What each chapter states of itself. */
  readonly course: readonly CourseChapter[];
}

/** Its script gives it under this name, since a page from a file can fetch nothing else. */
export const CLASS_GLOBAL = 'notebookClass';
