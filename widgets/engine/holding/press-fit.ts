/**
 * A printed hub pressed over a knurled or round steel head.
 *
 * Steel gives nothing against plastic, so the whole interference I goes into the hub: its bore is stretched round by ε = I/d. Outside D, modulus E, Poisson’s ratio ν:
 *   pressure   p = E ε/((D² + d²)/(D² − d²) + ν)
 *   torque     M = μ p π d² b/2         over a pressed length b
 * A thin ring has p = E ε (D − d)/d, a hub without end E ε/(1 + ν). The teeth of a knurl bite besides, which is not counted. Plastic lets the pressure go with time as
 * it does the force of a spring. Source: Lamé’s thick ring (from memory), held in the tests to its two limits and to the balance of the cut ring.
 * Units: mm, N, MPa.
 */
import { megapascals, newtonMillimetres, plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'hub-without-wall': { readonly outside: number; readonly bore: number };
  }
}

export const pressStrain = relation({
  name: 'press-strain',
  says: 'Strain round the bore of a printed hub that is pressed over steel.',
  takes: ['I_k', 'd_k'],
  gives: { eps_f: 'I_k/d_k' },
  source: 'The bore is stretched by the whole interference.',
  compute: ({ I_k, d_k }) => ({ eps_f: plain(I_k / d_k) }),
});

export const pressPressure = relation({
  name: 'press-pressure',
  says: 'Pressure of a printed hub on the steel it is pressed over.',
  takes: ['E_f', 'eps_f', 'd_k', 'D_k', 'nu_f'],
  gives: { p_k: 'E_f*eps_f/((D_k^2 + d_k^2)/(D_k^2 - d_k^2) + nu_f)' },
  source: 'Lamé’s thick ring, the steel taken as stiff; from memory.',
  refuses: ({ D_k, d_k }) => (D_k > d_k ? undefined : bad('hub-without-wall', { outside: D_k, bore: d_k })),
  compute: ({ E_f, eps_f, d_k, D_k, nu_f }) => ({
    p_k: megapascals((E_f * eps_f) / ((D_k ** 2 + d_k ** 2) / (D_k ** 2 - d_k ** 2) + nu_f)),
  }),
});

export const pressTorque = relation({
  name: 'press-torque',
  says: 'Torque that a press fit holds by friction alone.',
  takes: ['mu_f', 'p_k', 'd_k', 'b_k'],
  gives: { M_kn: 'mu_f*p_k*pi*d_k^2*b_k/2' },
  source: 'Pressure times area times friction, at the radius of the fit.',
  compute: ({ mu_f, p_k, d_k, b_k }) => ({ M_kn: newtonMillimetres((mu_f * p_k * Math.PI * d_k ** 2 * b_k) / 2) }),
});
