/**
 * A strip that bends: the straight strap with both ends kept parallel, and the coupon from which the modulus of a print is found.
 *
 * Second moment of the section I = b t³/12, t the thickness that bends, b across it. A strap of length l whose ends stay parallel and may
 * come nearer each other is stiff by 12 E I/l³ = E b t³/l³; its end moments are F l/2, so its surface is strained by M t/(2 E I) = 3 t u/l². One end held, a force at the other: 3 E I/l³.
 * Source: beam theory (Euler and Bernoulli), derived here. The force grows faster than the law: by 1.0 % at u/l = 0.1, 2.4 % at 0.15, 4.3 % at 0.2 (elastica,
 * solved by shooting). A strap whose ends can't come nearer hardens at once: by 4.5 % at u = t/4, 18 % at t/2, 70 % at t. A strip shorter than about ten times its thickness
 * also gives by shear and at its root, which is not counted.
 * Units: mm, N, MPa.
 */
import { megapascals, mm, newtonsPerMillimetre, plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'coupon-without-sag': Record<never, never>;
    'strip-without-thickness': Record<never, never>;
  }
}

export const strapRate = relation({
  name: 'strap-rate',
  says: 'Rate of a strap that bends with both its ends kept parallel and free to come nearer each other.',
  takes: ['E_f', 'b_f', 't_f', 'l_m'],
  gives: { k_f: 'E_f*b_f*t_f^3/l_m^3' },
  source: 'Beam theory: 12 E I/l³ with I = b t³/12; within 1 % to a motion of a tenth of the length.',
  compute: ({ E_f, b_f, t_f, l_m }) => ({ k_f: newtonsPerMillimetre((E_f * b_f * t_f ** 3) / l_m ** 3) }),
});

export const strapRateEdgewise = relation({
  name: 'strap-rate-edgewise',
  says: 'Rate of the same strap pushed the stiff way, across its printed height, where shear gives beside bending.',
  takes: ['E_f', 'b_f', 't_f', 'l_m'],
  gives: { k_f: 'E_f*t_f/((l_m/b_f)^3 + 3.36*l_m/b_f)' },
  source:
    'Timoshenko’s beam, both ends kept parallel: l³/(12 E I) with I = t b³/12, and 1.2 l/(G A) with G = E/2.8 (ν = 0.4, from memory for plastics).',
  compute: ({ E_f, b_f, t_f, l_m }) => ({
    k_f: newtonsPerMillimetre((E_f * t_f) / ((l_m / b_f) ** 3 + (3.36 * l_m) / b_f)),
  }),
});

export const strapStrain = relation({
  name: 'strap-strain',
  says: 'Strain at the surface of a strap at its ends, both kept parallel.',
  takes: ['t_f', 'u_f', 'l_m'],
  gives: { eps_f: '3*t_f*abs(u_f)/l_m^2' },
  source: 'Moment F l/2 at the ends, strain M t/(2 E I).',
  compute: ({ t_f, u_f, l_m }) => ({ eps_f: plain((3 * t_f * Math.abs(u_f)) / l_m ** 2) }),
});

export const couponModulus = relation({
  name: 'coupon-modulus',
  says: 'Young’s modulus of a print, from a strip held at one end that a weight at the other bends down.',
  takes: ['F_k', 'l_m', 'b_f', 't_f', 'u_f'],
  gives: { E_f: '4*F_k*l_m^3/(b_f*t_f^3*abs(u_f))' },
  source: 'Beam theory: u = F l³/(3 E I), solved for E; within 3 % to a sag of a sixth of the length.',
  refuses: ({ u_f }) => (Math.abs(u_f) > 0 ? undefined : bad('coupon-without-sag', {})),
  compute: ({ F_k, l_m, b_f, t_f, u_f }) => ({
    E_f: megapascals((4 * F_k * l_m ** 3) / (b_f * t_f ** 3 * Math.abs(u_f))),
  }),
});

export const thicknessScatter = relation({
  name: 'thickness-scatter',
  says: 'Change of the rate of a bending strip whose thickness is off, as a share of the rate.',
  takes: ['t_e', 't_f'],
  gives: { q_k: '(1 + t_e/t_f)^3 - 1' },
  source: 'The rate goes with the cube of the thickness.',
  refuses: ({ t_e, t_f }) => (t_f + t_e > 0 ? undefined : bad('strip-without-thickness', {})),
  compute: ({ t_e, t_f }) => ({ q_k: plain((1 + t_e / t_f) ** 3 - 1) }),
});

export const leastStrip = relation({
  name: 'least-strip',
  says: 'Least length of strip that can store the work of a stretch without passing a strain, were it bent alike all along.',
  takes: ['F_k', 'u_f', 'E_f', 'eps_m', 'b_f', 't_f'],
  gives: { l_m: '3*F_k*abs(u_f)/(E_f*eps_m^2*b_f*t_f)' },
  source:
    'Work F u/2; a strip bent to a surface strain stores E strain²/6 of its volume. Real shapes need more; derived here.',
  compute: ({ F_k, u_f, E_f, eps_m, b_f, t_f }) => ({
    l_m: mm((3 * F_k * Math.abs(u_f)) / (E_f * eps_m ** 2 * b_f * t_f)),
  }),
});
