/**
 * Lead error and periodic error: what an imperfect pair makes of its net lead.
 *
 * Relative lead error ε of a thread: its true lead is L(1 + ε). In series the errors carry the same signs as the
 * leads, so with Δ = h_C L_C − h_A L_A
 *   ε = (h_C L_C ε_C − h_A L_A ε_A)/Δ
 * Equal errors on both threads give that same error of Δ and nothing more; opposite ones are multiplied by the
 * gains. Where only bounds are known: worst case (L_A|ε_A| + L_C|ε_C|)/|Δ|, root-sum-square for errors that
 * have nothing to do with each other (ε small; Δ itself is exact in ε, so these hold without expansion).
 * Periodic error a·sin(2πn) of each thread, as measured on the motion, adds to it undiminished; its steepest slope is
 * 2πa per turn, so the motion never stalls at any phase while 2π(a_A + a_C) < |Δ|.
 * Pitch-diameter equivalent of a lead deviation δ over the engagement, flank angle β: δ·cot β (1.732 δ at 30°,
 * 1.921 δ at 27.5°): so much pitch-diameter clearance it uses up.
 * Lengths mm, angles rad, motion per turn mm, ε plain numbers, positive where the lead is long.
 */
import { mm, plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'equal-leads-no-relative-error': Readonly<Record<string, never>>;
  }
}

/** Why there is no relative error, or undefined where there is one. */
export const noNetLead = ({ Delta }: { readonly Delta: number }): Bad | undefined =>
  Math.abs(Delta) > 0 ? undefined : bad('equal-leads-no-relative-error', {});

export const netLeadError = relation({
  name: 'net-lead-error',
  says: 'Relative error of the net lead from the relative lead errors of both threads, with their signs.',
  takes: ['h_C', 'L_C', 'eps_C', 'h_A', 'L_A', 'eps_A', 'Delta'],
  gives: { eps: '(h_C*L_C*eps_C - h_A*L_A*eps_A)/Delta' },
  source: 'Net lead of two helices in series, with leads L(1 + ε), less the nominal net lead.',
  refuses: noNetLead,
  compute: ({ h_C, L_C, eps_C, h_A, L_A, eps_A, Delta }) => ({
    eps: plain((h_C * L_C * eps_C - h_A * L_A * eps_A) / Delta),
  }),
});

export const trueNetLead = relation({
  name: 'true-net-lead',
  says: 'What a turn really moves when the net lead is off by this share.',
  takes: ['Delta', 'eps'],
  gives: { Delta_e: 'Delta*(1 + eps)' },
  source: 'Definition of a relative error.',
  compute: ({ Delta, eps }) => ({ Delta_e: mm(Delta * (1 + eps)) }),
});

export const positionError = relation({
  name: 'position-error',
  says: 'How far off the carried part is after a nominal motion when the net lead is off by this share.',
  takes: ['z_c', 'eps'],
  gives: { e_z: 'z_c*eps' },
  source: 'A constant relative error of the lead grows in proportion to the motion.',
  compute: ({ z_c, eps }) => ({ e_z: mm(z_c * eps) }),
});

export const worstLeadError = relation({
  name: 'worst-lead-error',
  says: 'Largest relative error of the net lead when each thread may be off by this much either way.',
  takes: ['L_C', 'eps_C', 'L_A', 'eps_A', 'Delta'],
  gives: { eps_w: '(L_C*abs(eps_C) + L_A*abs(eps_A))/abs(Delta)' },
  source: 'Bound of net-lead-error over both signs of both errors.',
  refuses: noNetLead,
  compute: ({ L_C, eps_C, L_A, eps_A, Delta }) => ({
    eps_w: plain((L_C * Math.abs(eps_C) + L_A * Math.abs(eps_A)) / Math.abs(Delta)),
  }),
});

export const rssLeadError = relation({
  name: 'rss-lead-error',
  says: 'Relative error of the net lead by root-sum-square, for errors independent of each other.',
  takes: ['L_C', 'eps_C', 'L_A', 'eps_A', 'Delta'],
  gives: { eps_r: 'sqrt((L_C*eps_C)^2 + (L_A*eps_A)^2)/abs(Delta)' },
  source: 'Law of propagation for uncorrelated inputs (JCGM 100:2008, 5.1.2) applied to net-lead-error.',
  refuses: noNetLead,
  compute: ({ L_C, eps_C, L_A, eps_A, Delta }) => ({
    eps_r: plain(Math.hypot(L_C * eps_C, L_A * eps_A) / Math.abs(Delta)),
  }),
});

export const periodicSlope = relation({
  name: 'periodic-slope',
  says: 'Steepest motion per turn that the periodic errors of both threads add or take away, at the worst phase.',
  takes: ['a_A', 'a_C'],
  gives: { v_p: '2*pi*(a_A + a_C)' },
  source: 'Derivative of a sin(2πn), both threads in phase.',
  compute: ({ a_A, a_C }) => ({ v_p: mm(2 * Math.PI * (a_A + a_C)) }),
});

export const leastRate = relation({
  name: 'least-rate',
  says: 'Slowest motion per turn with periodic errors, at the worst phase; below zero the motion runs backwards for part of each turn.',
  takes: ['Delta', 'v_p'],
  gives: { v_min: 'abs(Delta) - v_p' },
  source: 'Net lead less the steepest slope of the periodic errors.',
  compute: ({ Delta, v_p }) => ({ v_min: mm(Math.abs(Delta) - v_p) }),
});

export const diameterEquivalent = relation({
  name: 'diameter-equivalent',
  says: 'Pitch-diameter equivalent: the clearance at the pitch diameter that a lead deviation uses.',
  takes: ['delta_L', 'beta_f'],
  gives: { d_e: 'abs(delta_L)/tan(beta_f)' },
  source: 'Screw thread measurement: deviation times the cotangent of the flank angle (NBS Handbook H28, from memory).',
  compute: ({ delta_L, beta_f }) => ({ d_e: mm(Math.abs(delta_L) / Math.tan(beta_f)) }),
});
