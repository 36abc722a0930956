/**
 * Friction in a thread as it was measured: a weight on the screw, a torque that raises it slowly.
 *
 * The torque that raises F on one thread is M = F d₂/2·tan(λ + ρ), tan ρ = μ/cos 30°; read backwards it gives μ. Tape, grease and wear are all in the number.
 * Source: the law of the effort relations, solved for the friction. Units: N·mm, N, mm.
 */
import { plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'torque-of-no-friction': { readonly torque: number; readonly least: number };
    'friction-without-load': Record<never, never>;
  }
}

const HALF = Math.PI / 6;
const slope = (L: number, d_2: number): number => Math.atan(L / (Math.PI * d_2));

export const frictionRead = relation({
  name: 'friction-read',
  says: 'Coefficient of friction in a 60° thread, from the torque that slowly raises a load on it.',
  takes: ['M_r', 'F', 'd_2', 'L'],
  gives: { mu: 'cos(30 deg)*tan(atan(2*M_r/(F*d_2)) - atan(L/(pi*d_2)))' },
  source: 'Torque of a thread while a load is raised, solved for the friction.',
  refuses: ({ M_r, F, d_2, L }) => {
    if (!(F > 0)) return bad('friction-without-load', {});
    const least = (F * L) / (2 * Math.PI);
    return Math.atan((2 * M_r) / (F * d_2)) >= slope(L, d_2)
      ? undefined
      : bad('torque-of-no-friction', { torque: M_r, least });
  },
  compute: ({ M_r, F, d_2, L }) => ({
    mu: plain(Math.cos(HALF) * Math.tan(Math.max(0, Math.atan((2 * M_r) / (F * d_2)) - slope(L, d_2)))),
  }),
});
