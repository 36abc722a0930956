/** What lead errors, periodic errors and the hand put into the error budget. */

import { LINES } from '#words/figures/design-sheet-lines.ts';
import {
  good,
  leastRate,
  mm,
  perAngle,
  periodicError,
  periodicSlope,
  plain,
  positionError,
  type Result,
  rad,
  rssLeadError,
  turns,
  worstLeadError,
} from '../../engine/index.ts';
import { show } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { type Entry, isTerm, type Term } from './budget.ts';
import { AT, type Judge } from './judge.ts';
import { MOTION } from './lines.ts';
import type { SheetNumbers } from './sheet-numbers.ts';

interface ErrorTerms {
  readonly fixed: readonly Entry[];
  readonly growing: readonly Entry[];
  readonly independent: Term | undefined;
  /** What the growing terms come to over all that the threads give; undefined where that is no more than is wanted. */
  readonly whole: Term | undefined;
}

/** Lead errors over the wanted stroke, and beside them over the whole one where it is longer. All in mm. */
export const errorTerms = (
  numbers: SheetNumbers,
  Delta: number,
  wanted: number,
  stroke: number,
  judge: Judge,
): ErrorTerms => {
  const { A, C } = numbers.threads;
  const { eps_A, eps_C, theta_h: theta } = numbers.values;
  const leads = { L_C: C.L, eps_C: plain(eps_C), L_A: A.L, eps_A: plain(eps_A), Delta: mm(Delta) };
  const worst = worstLeadError.of(leads);
  const rss = rssLeadError.of(leads);
  const hand = perAngle.of({ Delta: mm(Delta), theta: rad(theta) });
  const lead = (name: string, eps: Result<number>, over = wanted): Entry => {
    const e = eps.ok ? positionError.of({ z_c: mm(over), eps: plain(eps.value) }) : eps;
    return e.ok ? { name, size: e.value.e_z } : { name, why: reasonOf(e), at: AT.lead };
  };
  const eps_w: Result<number> = worst.ok ? good(worst.value.eps_w) : worst;
  const whole = lead(LINES.errors.leadWhole, eps_w, stroke);
  const independent = lead(LINES.errors.leadIndependent, rss.ok ? good(rss.value.eps_r) : rss);
  return {
    fixed: [
      periodicTerm(numbers, Delta, judge),
      hand.ok
        ? { name: LINES.errors.hand, size: hand.value.s }
        : { name: LINES.errors.hand, why: reasonOf(hand), at: AT.hand },
    ],
    growing: [lead(LINES.errors.lead, eps_w)],
    independent: isTerm(independent) ? independent : undefined,
    whole: isTerm(whole) && stroke > wanted ? whole : undefined,
  };
};

/** From crest to trough, since the reading that the rest is counted from may have been taken at either. */
const periodicTerm = ({ values, choices }: SheetNumbers, Delta: number, { check, leave }: Judge): Entry => {
  const name = LINES.errors.periodic;
  const { a_A, a_C } = values;
  if (choices.periodic !== 'measured') {
    leave(LINES.errors.stalls, LINES.errors.periodicUnknown, AT.periodic);
    return { name, why: LINES.errors.notMeasured, at: AT.periodic };
  }
  const a = { a_A: mm(a_A), a_C: mm(a_C) };
  const slope = periodicSlope.of(a);
  const rate = slope.ok ? leastRate.of({ Delta: mm(Delta), v_p: slope.value.v_p }) : slope;
  if (rate.ok)
    check(rate.value.v_min > 0, (view) =>
      rate.value.v_min > 0 ? LINES.errors.neverStalls(show(rate.value.v_min, MOTION, view)) : LINES.errors.doesStall,
    );
  else leave(LINES.errors.stalls, reasonOf(rate), AT.periodic);
  const [half, trough] = [turns(0.5), turns(-0.25)];
  const swing = periodicError.of({ n: half, ...a, phi_A: trough, phi_C: trough });
  return swing.ok ? { name, size: swing.value.e_p } : { name, why: reasonOf(swing), at: AT.periodic };
};
