/**
 * The two threads of a pair as two slopes: what each meets while the load is moved against itself, uphill plus and
 * downhill minus. With the sign in the slope, one formula serves a thread that climbs and one that yields.
 *
 * Equation: thread A lifts the turned part by −h_A L_A for a clockwise turn, thread C the carried part off it by
 * +h_C L_C; the load goes up where the turn has the sign of Δ. So with λ = atan(L/(π d2)), at the pitch diameter d2,
 *   ζ_A = −h_A sign(Δ) λ_A,   ζ_C = +h_C sign(Δ) λ_C,
 *   torque against the load  M = F d2/2 · tan(ρ + ζ),   with the load  M = F d2/2 · tan(ρ − ζ).
 * Source: block on an incline, wrapped round a cylinder (Khurmi & Gupta, A Textbook of Machine Design, ch. 17), both
 * threads under the one load F, as in their differential screw.
 *
 * Sign convention: z up, clockwise seen from above plus, h = +1 right hand; the load presses the carried part
 * towards the base. A torque is positive in the sense of turning. Units: N, mm, N·mm, rad.
 */

import { newtonMillimetres, newtons, rad } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';
import { JAMMED } from './effort.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'no-uphill': Record<string, never>;
    'slope-jams': Record<string, never>;
    'load-without-torque': Record<string, never>;
    'torque-of-lowering': Record<string, never>;
  }
}

const SLOPE_SOURCE =
  'Kinematics of the pair: a thread goes uphill where its own motion lifts what stands on it (ISO 5408 for hand and lead angle).';

export const slopeMetA = relation({
  name: 'slope-met-a',
  says: 'Slope that thread A meets while the load is raised, uphill plus.',
  takes: ['h_A', 'Delta', 'L_A', 'd_2A'],
  gives: { zeta_A: '-h_A*Delta/abs(Delta)*atan(L_A/(pi*d_2A))' },
  source: SLOPE_SOURCE,
  refuses: ({ Delta }) => (Delta !== 0 ? undefined : bad('no-uphill', {})),
  compute: ({ h_A, Delta, L_A, d_2A }) => ({
    zeta_A: rad(-h_A * Math.sign(Delta) * Math.atan(L_A / (Math.PI * d_2A))),
  }),
});

export const slopeMetC = relation({
  name: 'slope-met-c',
  says: 'Slope that thread C meets while the load is raised, uphill plus.',
  takes: ['h_C', 'Delta', 'L_C', 'd_2C'],
  gives: { zeta_C: 'h_C*Delta/abs(Delta)*atan(L_C/(pi*d_2C))' },
  source: SLOPE_SOURCE,
  refuses: ({ Delta }) => (Delta !== 0 ? undefined : bad('no-uphill', {})),
  compute: ({ h_C, Delta, L_C, d_2C }) => ({
    zeta_C: rad(h_C * Math.sign(Delta) * Math.atan(L_C / (Math.PI * d_2C))),
  }),
});

export const raisingTorque = relation({
  name: 'raising-torque',
  says: 'Torque of one thread while the load is raised, whether it goes uphill or downhill.',
  takes: ['F', 'd_2', 'rho', 'zeta'],
  gives: { M_r: 'F*d_2/2*tan(rho + zeta)' },
  source: 'Khurmi & Gupta, A Textbook of Machine Design, ch. 17: block on an incline round a cylinder.',
  refuses: ({ rho, zeta }) => (Math.abs(rho + zeta) < JAMMED ? undefined : bad('slope-jams', {})),
  compute: ({ F, d_2, rho, zeta }) => ({ M_r: newtonMillimetres(((F * d_2) / 2) * Math.tan(rho + zeta)) }),
});

export const loweringTorque = relation({
  name: 'lowering-torque',
  says: 'Torque of one thread while the load is lowered, turned the other way; negative where the load drives it.',
  takes: ['F', 'd_2', 'rho', 'zeta'],
  gives: { M_l: 'F*d_2/2*tan(rho - zeta)' },
  source: 'Khurmi & Gupta, A Textbook of Machine Design, ch. 17: block on an incline round a cylinder.',
  refuses: ({ rho, zeta }) => (Math.abs(rho - zeta) < JAMMED ? undefined : bad('slope-jams', {})),
  compute: ({ F, d_2, rho, zeta }) => ({ M_l: newtonMillimetres(((F * d_2) / 2) * Math.tan(rho - zeta)) }),
});

export const effort = relation({
  name: 'effort',
  says: 'Torque that raises a load on a pair of threads, both threads in one line.',
  takes: ['F', 'd_2A', 'zeta_A', 'd_2C', 'zeta_C', 'rho'],
  gives: { M: 'F*d_2A/2*tan(rho + zeta_A) + F*d_2C/2*tan(rho + zeta_C)' },
  source: 'Khurmi & Gupta, ch. 17, differential screw: T = T1 − T2, the sign of T2 being that of its slope.',
  refuses: ({ rho, zeta_A, zeta_C }) =>
    Math.abs(rho + zeta_A) < JAMMED && Math.abs(rho + zeta_C) < JAMMED ? undefined : bad('slope-jams', {}),
  compute: ({ F, d_2A, zeta_A, d_2C, zeta_C, rho }) => ({
    M: newtonMillimetres(((F * d_2A) / 2) * Math.tan(rho + zeta_A) + ((F * d_2C) / 2) * Math.tan(rho + zeta_C)),
  }),
});

export const loadForTorque = relation({
  name: 'load-for-torque',
  says: 'Load along the axis that a torque of the hand makes, from the torque that one load takes.',
  takes: ['F', 'M', 'M_h'],
  gives: { F_w: 'F*M_h/M' },
  source: 'Coulomb friction: every part of the torque of a thread is proportional to the load on it.',
  refuses: ({ M, M_h }) => {
    if (!(M > 0)) return bad('load-without-torque', {});
    return M_h >= 0 ? undefined : bad('torque-of-lowering', {});
  },
  compute: ({ F, M, M_h }) => ({ F_w: newtons((F * M_h) / M) }),
});
