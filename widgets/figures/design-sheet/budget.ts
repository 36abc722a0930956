/** The error budget: its terms, those that have no number, and both held against the accuracy wanted. */
import { LINES } from '#words/figures/design-sheet-lines.ts';
import { show, type UnitView } from '../../input/format.ts';
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

export interface Budget {
  /** The same all over the stroke. */
  readonly fixed: readonly Term[];
  /** There only at the far end of the stroke. */
  readonly growing: readonly Term[];
  /** What the growing terms come to where the errors of the two threads have nothing to do with each other. */
  readonly independent: Term | undefined;
  /** What the growing terms come to over the whole stroke, where that is longer than the wanted one. */
  readonly overAll: Term | undefined;
  /** All terms that have a number, each at its worst and all one way. */
  readonly total: number;
  /** Whether that is every term. */
  readonly whole: boolean;
  readonly seated: boolean;
}

/** The sum as a line of the sheet, named for what it leaves out. */
export const sumOf = ({ total, whole }: Pick<Budget, 'total' | 'whole'>): Term => ({
  name: whole ? LINES.errors.together : LINES.errors.togetherKnown,
  size: total,
});

/**
 * Over more stroke than is wanted, errors grow past what was judged. That is no failure of what was wanted, so it is named beside
 * the checks where the sum there is more than the accuracy.
 */
export const leaveBeyond = (
  { fixed, overAll }: Pick<Budget, 'fixed' | 'overAll'>,
  sizes: { readonly accuracy: number; readonly wanted: number; readonly stroke: number },
  { leave }: Judge,
): void => {
  if (!overAll) return;
  const sum = fixed.reduce((all, t) => all + t.size, overAll.size);
  if (sum <= sizes.accuracy) return;
  const text = (x: number, view: UnitView) => show(x, MOTION, view);
  leave(
    LINES.errors.beyond,
    (view) =>
      LINES.errors.beyondText({
        stroke: text(sizes.wanted, view),
        whole: text(sizes.stroke, view),
        found: text(sum, view),
        wanted: text(sizes.accuracy, view),
      }),
    AT.lead,
  );
};

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
    check(size <= wanted, (view) =>
      LINES.errors.termCheck({ term: name, found: show(size, MOTION, view), wanted: show(wanted, MOTION, view) }),
    );
  for (const t of known) against(t.name, t.size);
  // A part of the sum can fail; only the whole of it can pass.
  const sum = sumOf(result);
  if (result.whole || total > wanted) against(sum.name, sum.size);
  else
    leave(
      LINES.errors.together,
      (view) =>
        LINES.errors.sumUnjudged({
          found: show(total, MOTION, view),
          wanted: show(wanted, MOTION, view),
          missing: missing.length,
        }),
      AT.sheet,
    );
  return result;
};
