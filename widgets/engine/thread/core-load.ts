/**
 * What the core of a thread carries along its axis at a stated stress: F = σ π/4 (d3² − d_o²), with the bore of a sleeve taken out.
 * No bending, no twist (see core-shear), no stress raised at the root: a first sieve, not a proof of strength. mm, MPa, N.
 */
import { newtons } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'bore-takes-the-core': { readonly bore: number; readonly core: number };
  }
}

export const coreLoad = relation({
  name: 'core-load',
  says: 'Load that the core of a thread carries at a stated stress; a sleeve has a bore through it.',
  takes: ['sigma_a', 'd_3', 'd_o'],
  gives: { F_a: 'sigma_a*pi/4*(d_3^2 - d_o^2)' },
  source: 'Stress is force over area, on the least section of an external thread (ISO 68-1 design profile).',
  refuses: ({ d_3, d_o }) => (d_o < d_3 ? undefined : bad('bore-takes-the-core', { bore: d_o, core: d_3 })),
  compute: ({ sigma_a, d_3, d_o }) => ({ F_a: newtons(sigma_a * (Math.PI / 4) * (d_3 ** 2 - d_o ** 2)) }),
});
