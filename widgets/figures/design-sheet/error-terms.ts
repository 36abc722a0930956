/** What lead errors, periodic errors and the hand put into the error budget. */

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
}

export const errorTerms = (numbers: SheetNumbers, Delta: number, wanted: number, judge: Judge): ErrorTerms => {
  const { A, C } = numbers.threads;
  const { eps_A, eps_C, theta_h: theta } = numbers.values;
  const leads = { L_C: C.L, eps_C: plain(eps_C), L_A: A.L, eps_A: plain(eps_A), Delta: mm(Delta) };
  const worst = worstLeadError.of(leads);
  const rss = rssLeadError.of(leads);
  const hand = perAngle.of({ Delta: mm(Delta), theta: rad(theta) });
  const lead = (name: string, eps: Result<number>): Entry => {
    const e = eps.ok ? positionError.of({ z_c: mm(wanted), eps: plain(eps.value) }) : eps;
    return e.ok ? { name, size: e.value.e_z } : { name, why: reasonOf(e), at: AT.lead };
  };
  const independent = lead('the same, root sum square', rss.ok ? good(rss.value.eps_r) : rss);
  return {
    fixed: [
      periodicTerm(numbers, Delta, judge),
      hand.ok ? { name: HAND, size: hand.value.s } : { name: HAND, why: reasonOf(hand), at: AT.hand },
    ],
    growing: [lead('lead error over the stroke, worst case', worst.ok ? good(worst.value.eps_w) : worst)],
    independent: isTerm(independent) ? independent : undefined,
  };
};

const HAND = 'what a hand can set';

/** From crest to trough, since the reading that the rest is counted from may have been taken at either. */
const periodicTerm = ({ values, choices }: SheetNumbers, Delta: number, { check, leave }: Judge): Entry => {
  const name = 'periodic error, both threads, crest to trough';
  const { a_A, a_C } = values;
  if (choices.periodic !== 'measured') {
    leave('whether the motion stalls', 'the periodic errors are not measured', AT.periodic);
    return { name, why: 'not measured', at: AT.periodic };
  }
  const a = { a_A: mm(a_A), a_C: mm(a_C) };
  const slope = periodicSlope.of(a);
  const rate = slope.ok ? leastRate.of({ Delta: mm(Delta), v_p: slope.value.v_p }) : slope;
  if (rate.ok)
    check(rate.value.v_min > 0, (view) =>
      rate.value.v_min > 0
        ? `The motion never stalls: at its slowest it still makes ${show(rate.value.v_min, MOTION, view)} a turn.`
        : 'The periodic errors are steeper than the net lead: in part of every turn the motion stalls or runs back.',
    );
  else leave('whether the motion stalls', reasonOf(rate), AT.periodic);
  const [half, trough] = [turns(0.5), turns(-0.25)];
  const swing = periodicError.of({ n: half, ...a, phi_A: trough, phi_C: trough });
  return swing.ok ? { name, size: swing.value.e_p } : { name, why: reasonOf(swing), at: AT.periodic };
};
