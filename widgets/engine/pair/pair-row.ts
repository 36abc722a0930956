/**
 * One pair, written out: which thread goes where and in which hand, its exact net lead, what it costs, and a maker's judgement of it.
 *
 * In line the shorter lead goes into the base (thread A), so that clockwise lifts; where only a sleeve is asked for, the larger thread is A.
 * For unlike hands the left-hand thread is A; hands that the reader owns come first. Lengths mm, forces N.
 */

import { type Millimetres, mm, type Newtons, newtons } from '../kernel/quantity.ts';
import { diameters, type Thread } from '../thread/thread.ts';
import { type Fraction, netLeadFraction, numberOf, type RoundedFirst, roundedFirst } from './fraction.ts';
import { type Candidate, type Catalogue, inHand, wallOf, weakerSquared } from './pair-catalogue.ts';
import type { Filter } from './pair-filters.ts';
import { judge, type Verdict } from './pair-verdict.ts';
import type { Wish } from './pair-wish.ts';

/** Decimals of a millimetre to which a drawing usually keeps a pitch. */
const DRAWING_DECIMALS = 3;

export interface PairRow {
  readonly A: Thread;
  readonly C: Thread;
  /** As the figures can show it: in line, unless only a sleeve was asked for. */
  readonly arrangement: 'in line' | 'nested';
  /** Net lead, exactly; positive where clockwise lifts. */
  readonly net: Fraction;
  readonly Delta: Millimetres;
  /** Steps in a turn with which it comes nearest to the motion wanted, and the motion of one. */
  readonly k: number;
  readonly step: Millimetres;
  /** That motion relative to the one wanted: 0.04 is 4 % more. */
  readonly off: number;
  /** Of the longer lead. */
  readonly gain: number;
  readonly stroke: Millimetres;
  /** Major diameter of the larger thread. */
  readonly size: Millimetres;
  /** Wall if the larger is bored for the smaller: at basic sizes and at the limits of size. Undefined where neither is larger. */
  readonly wall: { readonly basic: Millimetres; readonly limit: Millimetres } | undefined;
  /** Load the weaker core carries at the stress allowed, in the arrangement above. */
  readonly carries: Newtons;
  /** Threads whose tap or die is not in the reader's drawer, in the hand needed. */
  readonly toBuy: readonly Thread[];
  readonly roundedFirst: RoundedFirst;
  readonly verdict: Verdict;
}

/** Writes out the pair with this code (see pair-search.ts), which fails these filters. */
export const pairOf = (c: Catalogue, w: Wish, code: number, fails: readonly Filter[]): PairRow => {
  const n = c.candidates.length;
  const [i, j] = [Math.floor(code / 2 / n), (code >> 1) % n];
  const [short, long] = [c.candidates[i], c.candidates[j]];
  if (!short || !long) throw new RangeError(`No pair has the code ${code}.`);
  const nested = w.arrangement === 'nested';
  const [first, second] = nested && short.thread.d < long.thread.d ? [long, short] : [short, long];
  const [hA, hC] = handsFor(first, second, code % 2 === 1);
  const [A, C] = [inHand(first.thread, hA), inHand(second.thread, hC)];
  const net = netLeadFraction(A, C);
  const Delta = numberOf(net);
  const { k, step, off } = nearestStep(mm(Delta), w);
  const [outer, inner] = short.thread.d > long.thread.d ? [short, long] : [long, short];
  const wall =
    short.thread.d === long.thread.d
      ? undefined
      : { basic: mm((diameters(outer.thread).d3 - inner.thread.d) / 2), limit: mm(wallOf(c, i, j)) };
  const facts = {
    A,
    C,
    arrangement: nested ? ('nested' as const) : ('in line' as const),
    net,
    Delta: mm(Delta),
    k,
    step,
    off,
    gain: long.thread.L / Math.abs(Delta),
    stroke: mm(Math.abs(Delta) * w.usable * Math.min(A.d / A.L, C.d / C.L)),
    size: mm(Math.max(A.d, C.d)),
    wall,
    carries: newtons(w.stress * (Math.PI / 4) * Math.max(0, weakerSquared(c, nested, i, j))),
    toBuy: [...(has(first, hA) ? [] : [A]), ...(has(second, hC) ? [] : [C])],
    roundedFirst: roundedFirst(A, C, DRAWING_DECIMALS),
  };
  return { ...facts, verdict: judge(facts, [first, second], fails) };
};

/** The divider that brings a step nearest to the motion wanted, by ratio; the first where two come equally near. */
const nearestStep = (Delta: Millimetres, w: Wish): Pick<PairRow, 'k' | 'step' | 'off'> =>
  w.dividers
    .map((k) => {
      const step = mm(Math.abs(Delta) / k);
      return { k, step, off: step / w.motion - 1 };
    })
    .reduce((best, next) => (Math.abs(Math.log1p(next.off)) < Math.abs(Math.log1p(best.off)) ? next : best));

const has = (candidate: Candidate, h: 1 | -1): boolean => (h === 1 ? candidate.owned.right : candidate.owned.left);

/** Hands that leave the least to buy; right-hand, or left-hand in the base, where nothing tells between them. */
const handsFor = (A: Candidate, C: Candidate, unlike: boolean): readonly [1 | -1, 1 | -1] => {
  const choices: readonly (readonly [1 | -1, 1 | -1])[] = unlike
    ? [
        [-1, 1],
        [1, -1],
      ]
    : [
        [1, 1],
        [-1, -1],
      ];
  const missing = ([a, b]: readonly [1 | -1, 1 | -1]) => Number(!has(A, a)) + Number(!has(C, b));
  return choices.reduce((best, next) => (missing(next) < missing(best) ? next : best));
};
