/**
 * What the threads of a screw and of its nut carry before they shear off, at a stated shear stress.
 *
 * A screw shears on a cylinder at the crests of the nut, of the diameter D1, a nut at the crests of the screw, of the diameter d. There a ridge is as wide as half a pitch and what two 30°
 * flanks add from there to the pitch line: P/2 + (d2 − D1)/√3 for the screw, P/2 + (d − D2)/√3 for the nut. The length engaged has l/P ridges, taken as loaded alike.
 * Source: shear areas of 60° threads as handbooks and the United States federal screw-thread handbook have them (from memory). No bending of the
 * nut’s wall, no first thread that takes more: a first sieve, as core-load is. mm, MPa, N.
 */
import { newtons } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'threads-pass-each-other': Record<never, never>;
  }
}

/** Half a pitch and what the flanks add must leave a ridge. */
const meets = (width: number): Bad | undefined => (width > 0 ? undefined : bad('threads-pass-each-other', {}));

export const stripScrew = relation({
  name: 'strip-screw',
  says: 'Load at which the thread of a screw shears off, at a stated shear stress, over its engaged length.',
  takes: ['tau_a', 'd_1', 'd_2', 'P', 'l_e'],
  gives: { F_st: 'tau_a*pi*d_1*l_e/P*(P/2 + (d_2 - d_1)/sqrt(3))' },
  source: 'Shear area of a 60° external thread (handbooks, from memory); d_1 is the minor diameter of the nut.',
  refuses: ({ d_1, d_2, P }) => meets(P / 2 + (d_2 - d_1) / Math.sqrt(3)),
  compute: ({ tau_a, d_1, d_2, P, l_e }) => ({
    F_st: newtons(((tau_a * Math.PI * d_1 * l_e) / P) * (P / 2 + (d_2 - d_1) / Math.sqrt(3))),
  }),
});

export const stripNut = relation({
  name: 'strip-nut',
  says: 'Load at which the thread of a nut shears off, at a stated shear stress, over its engaged length.',
  takes: ['tau_a', 'd', 'D_2', 'P', 'l_e'],
  gives: { F_sn: 'tau_a*pi*d*l_e/P*(P/2 + (d - D_2)/sqrt(3))' },
  source: 'Shear area of a 60° internal thread (handbooks, from memory); d is the major diameter of the screw.',
  refuses: ({ d, D_2, P }) => meets(P / 2 + (d - D_2) / Math.sqrt(3)),
  compute: ({ tau_a, d, D_2, P, l_e }) => ({
    F_sn: newtons(((tau_a * Math.PI * d * l_e) / P) * (P / 2 + (d - D_2) / Math.sqrt(3))),
  }),
});
