/**
 * Two threads in series: thread A joins base and turned part, thread C joins turned part and carried part.
 *
 * The base is fixed, the turned part is rotated, the carried part is kept from turning. With z up, n turns
 * clockwise seen from above and h = +1 for a right-hand thread:
 *   turned part         z_t = −h_A L_A n
 *   carried on turned   z_r = +h_C L_C n
 *   carried part        z_c = n (h_C L_C − h_A L_A)
 * Kinematics of two helices in series; checked in the tests by moving the two helices point by point.
 * Lengths mm, n in turns.
 */
import { mm, plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'equal-leads-no-gain': Readonly<Record<string, never>>;
  }
}

export const turnedMotion = relation({
  name: 'turned-motion',
  says: 'Motion of the turned part: thread A screws it through the base.',
  takes: ['h_A', 'L_A', 'n'],
  gives: { z_t: '-h_A*L_A*n' },
  source: 'Kinematics of a helix in a fixed nut; see advance.',
  compute: ({ h_A, L_A, n }) => ({ z_t: mm(-h_A * L_A * n) }),
});

export const relativeMotion = relation({
  name: 'relative-motion',
  says: 'Motion of the carried part seen from the turned part: thread C screws it up off that part.',
  takes: ['h_C', 'L_C', 'n'],
  gives: { z_r: 'h_C*L_C*n' },
  source: 'Kinematics of a helix: seen from the turned part, the carried part turns the other way.',
  compute: ({ h_C, L_C, n }) => ({ z_r: mm(h_C * L_C * n) }),
});

export const netLead = relation({
  name: 'net-lead',
  says: 'Net lead: motion of the carried part per turn, a difference for two threads of the same hand and a sum for opposite hands.',
  takes: ['h_C', 'L_C', 'h_A', 'L_A'],
  gives: { Delta: 'h_C*L_C - h_A*L_A' },
  source:
    'Two helices in series; the general form of the pitch difference (Khurmi & Gupta, Machine Design, ch. 17, differential and compound screws).',
  compute: ({ h_C, L_C, h_A, L_A }) => ({ Delta: mm(exactDifference(h_C * L_C, h_A * L_A)) }),
});

export const netMotion = relation({
  name: 'net-motion',
  says: 'Motion of the carried part after n turns.',
  takes: ['n', 'Delta'],
  gives: { z_c: 'n*Delta' },
  source: 'Net lead times turns.',
  compute: ({ n, Delta }) => ({ z_c: mm(n * Delta) }),
});

export const slippedLead = relation({
  name: 'slipped-lead',
  says: 'Motion per turn when the lock gives and the carried part takes a share f of the rotation.',
  takes: ['f', 'h_C', 'L_C', 'h_A', 'L_A'],
  gives: { Delta: '(1 - f)*h_C*L_C - h_A*L_A' },
  source:
    'Two helices in series with relative rotation (1 − f) on thread C; f = 0 is the locked pair, f = 1 thread A alone.',
  compute: ({ f, h_C, L_C, h_A, L_A }) => ({ Delta: mm(exactDifference((1 - f) * h_C * L_C, h_A * L_A)) }),
});

export const windUp = relation({
  name: 'wind-up',
  says: 'Motion of the carried part when its lock winds up by a small angle and the turned part stands still.',
  takes: ['h_C', 'L_C', 'psi'],
  gives: { z_c: 'h_C*L_C*psi/(360*deg)' },
  source: 'Thread C moves its lead per turn of relative rotation; psi positive anticlockwise seen from above.',
  compute: ({ h_C, L_C, psi }) => ({ z_c: mm((h_C * L_C * psi) / (2 * Math.PI)) }),
});

const noDifference = ({ Delta }: { readonly Delta: number }): Bad | undefined =>
  Math.abs(Delta) > 0 ? undefined : bad('equal-leads-no-gain', {});

export const gain = relation({
  name: 'gain',
  says: 'Gain of a thread in a pair: how many times its lead is larger than the net lead.',
  takes: ['L', 'Delta'],
  gives: { G: 'L/abs(Delta)' },
  source: 'Ratio of component motion to net motion; a relative lead error of the thread is multiplied by it.',
  refuses: noDifference,
  compute: ({ L, Delta }) => ({ G: plain(L / Math.abs(Delta)) }),
});

/**
 * a − b, with a remainder of rounding taken as nought: 25.4/20 and 1.27 are the same lead and must not
 * leave a net lead of 2e-16 mm that later divides something.
 */
const exactDifference = (a: number, b: number): number => {
  const difference = a - b;
  return Math.abs(difference) < 8 * Number.EPSILON * Math.abs(a) ? 0 : difference;
};
