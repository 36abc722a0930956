/**
 * An arm of a clip that is bent aside while it snaps over an edge.
 *
 * A straight arm of length l_a, thickness t_a and width b_a, held at its root, is bent aside by its lip y_a: force P = 3 E I y/l³, moment P l at the root, so
 *   strain at the root    ε = 3 t y/(2 l²)
 *   force aside           P = b t² E ε/(6 l)
 * While the edge slides up a lip that leans by α from the way of the push, friction μ makes the push of each arm P (μ + tan α)/(1 − μ tan α); where μ tan α reaches 1
 * nothing moves. The same law pulls it off, by the angle on the back of the lip.
 * Source: beam theory, derived here; force and push as in makers’ guides to snap fits (from memory). An arm shorter than about ten thicknesses bends
 * at its root too and is strained less than said (second-hand). Units: mm, N, MPa, rad.
 */
import { mm, newtons, plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    /** Radians. */
    'lip-locks': { readonly angle: number; readonly most: number };
  }
}

export const snapStrain = relation({
  name: 'snap-strain',
  says: 'Strain at the root of a clip’s arm while its lip is pushed aside.',
  takes: ['t_a', 'y_a', 'l_a'],
  gives: { eps_f: '3*t_a*y_a/(2*l_a^2)' },
  source: 'Beam theory: arm of even thickness, held at its root, bent at its end.',
  compute: ({ t_a, y_a, l_a }) => ({ eps_f: plain((3 * t_a * y_a) / (2 * l_a ** 2)) }),
});

export const snapArm = relation({
  name: 'snap-arm',
  says: 'Least length of a clip’s arm that keeps its strain within what is allowed.',
  takes: ['t_a', 'y_a', 'eps_m'],
  gives: { l_a: 'sqrt(3*t_a*y_a/(2*eps_m))' },
  source: 'The strain of an arm, solved for its length.',
  compute: ({ t_a, y_a, eps_m }) => ({ l_a: mm(Math.sqrt((3 * t_a * y_a) / (2 * eps_m))) }),
});

export const snapForce = relation({
  name: 'snap-force',
  says: 'Force that holds a clip’s arm aside, from the strain at its root.',
  takes: ['b_a', 't_a', 'E_f', 'eps_f', 'l_a'],
  gives: { P_a: 'b_a*t_a^2*E_f*eps_f/(6*l_a)' },
  source: 'Beam theory: moment P l, section modulus b t²/6.',
  compute: ({ b_a, t_a, E_f, eps_f, l_a }) => ({ P_a: newtons((b_a * t_a ** 2 * E_f * eps_f) / (6 * l_a)) }),
});

export const snapPush = relation({
  name: 'snap-push',
  says: 'Push that slides a clip over an edge, all arms together; with the angle of its back, the pull that takes it off.',
  takes: ['m_a', 'P_a', 'mu_f', 'alpha_a'],
  gives: { F_on: 'm_a*P_a*(mu_f + tan(alpha_a))/(1 - mu_f*tan(alpha_a))' },
  source: 'A slope with friction; as in makers’ guides to snap fits, from memory.',
  refuses: ({ mu_f, alpha_a }) =>
    mu_f * Math.tan(alpha_a) < 1 ? undefined : bad('lip-locks', { angle: alpha_a, most: Math.atan(1 / mu_f) }),
  compute: ({ m_a, P_a, mu_f, alpha_a }) => ({
    F_on: newtons((m_a * P_a * (mu_f + Math.tan(alpha_a))) / (1 - mu_f * Math.tan(alpha_a))),
  }),
});
