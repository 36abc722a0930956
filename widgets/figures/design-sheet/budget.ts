/** The error budget: its terms, those that have no number, and both held against the accuracy wanted. */
import { show } from '../../input/format.ts';
import { AT, type Judge } from './judge.ts';
import { MOTION } from './lines.ts';

export interface Term {
  readonly name: string;
  /** mm, never negative. */
  readonly size: number;
}

/** A term of the budget that has no number, and why. */
interface Missing {
  readonly name: string;
  readonly why: string;
  readonly at: string;
}
export type Entry = Term | Missing;
export const isTerm = (entry: Entry): entry is Term => 'size' in entry;
const isMissing = (entry: Entry): entry is Missing => !isTerm(entry);

/** What the terms of the budget come to, all at once and all one way, at the far end of the stroke. */
const TOGETHER = 'together at the far end, if all add up';

export interface Budget {
  /** The same all over the stroke. */
  readonly fixed: readonly Term[];
  /** There only at the far end of the stroke. */
  readonly growing: readonly Term[];
  /** What the growing terms come to where the errors of the two threads have nothing to do with each other. */
  readonly independent: Term | undefined;
  /** All terms that have a number, each at its worst and all one way. */
  readonly total: number;
  /** Whether that is every term. */
  readonly whole: boolean;
  readonly seated: boolean;
}

/** The sum as a line of the sheet, named for what it leaves out. */
export const sumOf = ({ total, whole }: Pick<Budget, 'total' | 'whole'>): Term => ({
  name: whole ? TOGETHER : `${TOGETHER}, of those that have a number`,
  size: total,
});

/** Every term against the accuracy wanted, and all of them together where all have a number. */
export const judgeBudget = (
  fixed: readonly Entry[],
  growing: readonly Entry[],
  wanted: number,
  { check, leave }: Judge,
): Pick<Budget, 'fixed' | 'growing' | 'total' | 'whole'> => {
  const entries = [...fixed, ...growing];
  const known = entries.filter(isTerm);
  const total = known.reduce((sum, t) => sum + t.size, 0);
  const missing = entries.filter(isMissing);
  for (const e of missing) leave(e.name, e.why, e.at);
  const result = { fixed: fixed.filter(isTerm), growing: growing.filter(isTerm), total, whole: missing.length === 0 };
  const against = (name: string, size: number) =>
    check(
      size <= wanted,
      (view) =>
        `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${show(size, MOTION, view)}; ${show(wanted, MOTION, view)} or less was wanted.`,
    );
  for (const t of known) against(t.name, t.size);
  // A part of the sum can fail; only the whole of it can pass.
  const sum = sumOf(result);
  if (result.whole || total > wanted) against(sum.name, sum.size);
  else
    leave(
      TOGETHER,
      (view) =>
        `${show(total, MOTION, view)} of ${show(wanted, MOTION, view)} wanted, without ${missing.length === 1 ? 'the term that has' : `the ${missing.length} terms that have`} no number`,
      AT.sheet,
    );
  return result;
};
