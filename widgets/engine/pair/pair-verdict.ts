/**
 * A maker's judgement of a pair.
 *
 * How touchy it is goes by the gain: a lead error of 0.1 % in one thread, good ordinary work, shifts the motion per turn by 0.1 % times the gain.
 * The lines are drawn where that is 2.5 % and 10 %. A sleeve is called thin where its wall at the limits is less than the pitch of its outer
 * thread, and two cores unequal where one has less than a quarter of the other's area. Common practice, no source: they sort, they forbid nothing.
 * A pair that fails what was asked is none of these: it is the nearest, and by how much it misses stands first.
 */

import { at } from '../kernel/at.ts';
import { diameters, type Thread } from '../thread/thread.ts';
import type { Candidate } from './pair-catalogue.ts';
import type { Filter } from './pair-filters.ts';

const GRADES = ['sound', 'with care', 'delicate', 'nearest'] as const;
export type Grade = (typeof GRADES)[number];

/** What may be remarked on a pair, each with what its words need. */
interface RemarkValues {
  /** Relative to the motion wanted: 0.04 is 4 % more. */
  'off-the-motion': { readonly off: number };
  misses: { readonly filter: Filter };
  /** What a lead error of one thread, a share of its lead, is of the motion. */
  touchy: { readonly leadError: number; readonly ofMotion: number };
  'thin-wall': Readonly<Record<string, never>>;
  'one-core-weaker': Readonly<Record<string, never>>;
  'left-hand-to-order': { readonly threads: readonly string[] };
  'to-buy': { readonly threads: readonly string[] };
  'all-owned': Readonly<Record<string, never>>;
}
export type PairRemark = {
  readonly [K in keyof RemarkValues]: { readonly code: K; readonly values: RemarkValues[K] };
}[keyof RemarkValues];

export interface Verdict {
  readonly grade: Grade;
  /** The weightiest first. */
  readonly remarks: readonly PairRemark[];
}

/** Relative lead error of ordinary good work. */
const ORDINARY_LEAD_ERROR = 0.001;
const CARE = 25;
const DELICATE = 100;

/** What of a pair is judged; see the row of a pair for the words. */
interface Judged {
  readonly A: Thread;
  readonly arrangement: 'in line' | 'nested';
  readonly off: number;
  readonly gain: number;
  readonly wall: { readonly limit: number } | undefined;
  readonly toBuy: readonly Thread[];
}

export const judge = (
  pair: Judged,
  [first, second]: readonly [Candidate, Candidate],
  fails: readonly Filter[],
): Verdict => {
  const remarks: PairRemark[] = [];
  let grade = pair.gain <= CARE ? 0 : pair.gain <= DELICATE ? 1 : 2;
  if (fails.length > 0) {
    grade = GRADES.indexOf('nearest');
    remarks.push(
      ...fails.map(
        (filter): PairRemark =>
          filter === 'motion'
            ? { code: 'off-the-motion', values: { off: pair.off } }
            : { code: 'misses', values: { filter } },
      ),
    );
  }
  const lower = (to: number) => {
    grade = Math.max(grade, to);
  };
  if (pair.gain > CARE)
    remarks.push({
      code: 'touchy',
      values: { leadError: ORDINARY_LEAD_ERROR, ofMotion: ORDINARY_LEAD_ERROR * pair.gain },
    });
  if (pair.arrangement === 'nested' && pair.wall !== undefined && !(pair.wall.limit >= pair.A.P)) {
    remarks.push({ code: 'thin-wall', values: {} });
    lower(1);
  }
  const [a, b] = [diameters(first.thread).d3, diameters(second.thread).d3];
  if (pair.arrangement === 'in line' && Math.min(a, b) < Math.max(a, b) / 2) {
    remarks.push({ code: 'one-core-weaker', values: {} });
    lower(1);
  }
  const leftHand = pair.toBuy.filter((t) => t.h === -1).map((t) => t.designation);
  const buy = pair.toBuy.filter((t) => t.h === 1).map((t) => t.designation);
  if (leftHand.length > 0) {
    remarks.push({ code: 'left-hand-to-order', values: { threads: leftHand } });
    lower(1);
  }
  if (buy.length > 0) remarks.push({ code: 'to-buy', values: { threads: buy } });
  if (pair.toBuy.length === 0) remarks.push({ code: 'all-owned', values: {} });
  return { grade: at(GRADES, grade), remarks };
};
