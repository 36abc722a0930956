/**
 * A maker's judgement of a pair, in words.
 *
 * How touchy it is goes by the gain: a lead error of 0.1 % in one thread, good ordinary work, shifts the motion per turn by 0.1 % times the gain.
 * The lines are drawn where that is 2.5 % and 10 %. A sleeve is called thin where its wall at the limits is less than the pitch of its outer
 * thread, and two cores unequal where one has less than a quarter of the other's area. Common practice, no source: they sort, they forbid nothing.
 * A pair that fails what was asked is none of these: it is the nearest, and by how much it misses stands first.
 */

import { listed, say } from '../kernel/say.ts';
import { diameters, type Thread } from '../thread/thread.ts';
import type { Candidate } from './pair-catalogue.ts';
import { FILTER_WORDS, type Filter } from './pair-filters.ts';

const GRADES = ['sound', 'with care', 'delicate', 'nearest'] as const;
export type Grade = (typeof GRADES)[number];

export interface Verdict {
  readonly grade: Grade;
  /** Short remarks, the weightiest first. */
  readonly remarks: readonly string[];
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
  const remarks: string[] = [];
  let grade = pair.gain <= CARE ? 0 : pair.gain <= DELICATE ? 1 : 2;
  if (fails.length > 0) {
    grade = GRADES.indexOf('nearest');
    remarks.push(
      ...fails.map((f) =>
        f === 'motion'
          ? `${pair.off > 0 ? '+' : ''}${say(100 * pair.off, 2)} % off the motion wanted`
          : `misses ${FILTER_WORDS[f]}`,
      ),
    );
  }
  const lower = (to: number) => {
    grade = Math.max(grade, to);
  };
  if (pair.gain > CARE)
    remarks.push(
      `0.1 % of lead error in one thread is ${say(100 * ORDINARY_LEAD_ERROR * pair.gain, 2)} % of the motion`,
    );
  if (pair.arrangement === 'nested' && pair.wall !== undefined && !(pair.wall.limit >= pair.A.P)) {
    remarks.push('thin wall, less than a pitch');
    lower(1);
  }
  const [a, b] = [diameters(first.thread).d3, diameters(second.thread).d3];
  if (pair.arrangement === 'in line' && Math.min(a, b) < Math.max(a, b) / 2) {
    remarks.push('one core is much the weaker');
    lower(1);
  }
  const leftHand = pair.toBuy.filter((t) => t.h === -1).map((t) => t.designation);
  const buy = pair.toBuy.filter((t) => t.h === 1).map((t) => t.designation);
  if (leftHand.length > 0) {
    remarks.push(`left-hand tools to order: ${listed(leftHand)}`);
    lower(1);
  }
  if (buy.length > 0) remarks.push(`to buy: ${listed(buy)}`);
  if (pair.toBuy.length === 0) remarks.push('both in your drawer');
  return { grade: GRADES[grade] ?? 'delicate', remarks };
};
