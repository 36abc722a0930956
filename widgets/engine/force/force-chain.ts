/**
 * The force chain for a page: the two free bodies as relations, the friction of the guide, and the spring that is needed.
 *
 * Equations; every force, across a thread or on a part, is positive towards the base (flanks.ts):
 *   F_C = F_o + W_c + f_c        F_A = F_C + W_t + f_t
 * A side load Q_s on the carried part is taken by its guide, which may rub either way: the load along the axis is then only
 * known to ± µ_g Q_s, so both ends of its range move out by that. Lying on its side the weight is a side load too.
 * A spring that is to leave F_p at the worst place and at the end of its life needs
 *   F_0 = F_p/(1 − q log10(1 + t/t_0)) − k u,
 * since a relaxed spring has both force and rate down to the same share.
 * Source: statics of the two moving parts, Coulomb friction, the log law of preload.ts; derived here. Units: N, mm, N/mm, h.
 */

import { newtons } from '../kernel/quantity.ts';
import { outOfBounds, relation } from '../kernel/relation.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { tenfoldTimes } from './log-law.ts';
import type { PreloadCase } from './preload.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'no-spring-needed': { readonly force: number };
    'preload-gone-in-life': Record<string, never>;
    'stretch-alone-does': Record<string, never>;
  }
}

export const forceChain = relation({
  name: 'force-chain',
  says: 'Forces across the two threads: load, weight and springs on the parts above it add up; towards the base is plus.',
  takes: ['F_o', 'W_c', 'W_t', 'f_c', 'f_t'],
  gives: { F_C: 'F_o + W_c + f_c', F_A: 'F_o + W_c + f_c + W_t + f_t' },
  source: 'Free bodies of the carried part and of the turned part; derived here.',
  compute: ({ F_o, W_c, W_t, f_c, f_t }) => {
    const F_C = F_o + W_c + f_c;
    return { F_C: newtons(F_C), F_A: newtons(F_C + W_t + f_t) };
  },
});

export const guideFriction = relation({
  name: 'guide-friction',
  says: 'Friction of the guide under a side load; it may act either way along the axis.',
  takes: ['mu_g', 'Q_s'],
  gives: { F_gf: 'mu_g*Q_s' },
  source: 'Coulomb friction; common practice, no source, for the coefficient.',
  compute: ({ mu_g, Q_s }) => ({ F_gf: newtons(mu_g * Q_s) }),
});

export const preloadNeeded = relation({
  name: 'preload-needed',
  says: 'Force that a spring pulling the carried part to the base must still have at the worst place; zero or less where weight and load alone seat the threads.',
  takes: ['F_g', 'F_gf', 'F_lo', 'W_c'],
  gives: { F_p: 'F_g + F_gf - F_lo - W_c' },
  source:
    'Force across thread C under the least load, less the friction of the guide, not below the margin; derived here.',
  compute: ({ F_g, F_gf, F_lo, W_c }) => ({ F_p: newtons(F_g + F_gf - F_lo - W_c) }),
});

export const preloadForLife = relation({
  name: 'preload-for-life',
  says: 'Force a spring needs at the start so that enough is left at the worst place and at the end of its life.',
  takes: ['F_p', 'k_s', 'u_s', 'q_r', 't', 't_0'],
  gives: { F_0: 'F_p/(1 - q_r*log(1 + t/t_0)/log(10)) - k_s*u_s' },
  source: 'Hooke’s law and the log law, solved for the force at the start; derived here.',
  refuses: ({ F_p, k_s, u_s, q_r, t, t_0 }) => {
    if (!(F_p > 0)) return bad('no-spring-needed', { force: F_p });
    const left = share(q_r, t, t_0);
    if (!(left > 0)) return bad('preload-gone-in-life', {});
    return F_p / left - k_s * u_s >= 0 ? undefined : bad('stretch-alone-does', {});
  },
  compute: ({ F_p, k_s, u_s, q_r, t, t_0 }) => ({ F_0: newtons(F_p / share(q_r, t, t_0) - k_s * u_s) }),
});

const share = (q_r: number, t: number, t_0: number): number => 1 - q_r * tenfoldTimes(t, t_0);

/**
 * A case with the friction of its guide: the range of the load is widened by µ times everything that presses sideways,
 * which is the side load and, where the assembly does not stand upright, that share of the carried part's weight.
 */
export const withGuide = (
  given: PreloadCase,
  guide: { readonly side: number; readonly mu: number },
): Result<{ readonly given: PreloadCase; readonly friction: number }> => {
  const refusal = outOfBounds('Q_s', guide.side) ?? outOfBounds('mu_g', guide.mu);
  if (refusal) return refusal;
  const across = given.weightCarried * Math.sqrt(Math.max(0, 1 - given.attitude ** 2));
  const friction = guide.mu * (guide.side + across);
  const { least, most } = given.load;
  return good({ given: { ...given, load: { least: least - friction, most: most + friction } }, friction });
};
