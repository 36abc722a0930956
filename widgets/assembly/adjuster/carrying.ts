/**
 * Which flanks of an adjuster carry, standing upright: the forces across its two threads from the load on its tip, the weights of its
 * parts and its springs, by the engine’s rule. Plus presses the upper part of a thread towards the base. Forces in N.
 */
import { type FlankName, FREE_FALL, flankUnder, threadForces } from '../../engine/index.ts';
import type { Adjuster } from './adjuster.ts';
import { massOf } from './part.ts';

/** Weight of a gram, N. */
const WEIGHT = FREE_FALL * 1e-6;
const ENDS = {
  'base and carried': ['base', 'carried'],
  'base and turned': ['base', 'turned'],
  'turned and carried': ['turned', 'carried'],
} as const;

export interface Carrying {
  readonly force: { readonly A: number; readonly C: number };
  readonly flank: { readonly A: FlankName | undefined; readonly C: FlankName | undefined };
}

/** `load` on the tip, N, plus down. */
export const carryingOf = (a: Adjuster, n: number, load: number): Carrying => {
  const { springs, A, C } = a;
  const force = threadForces(
    {
      h_A: A.thread.h,
      L_A: A.thread.L,
      h_C: C?.thread.h ?? 1,
      L_C: C?.thread.L ?? 0,
      springs:
        springs?.force === undefined
          ? []
          : [
              {
                lower: ENDS[springs.between][0],
                upper: ENDS[springs.between][1],
                kind: 'pull',
                force: springs.force,
                rate: springs.rate ?? 0,
              },
            ],
      weightTurned: massOf(a.turned) * WEIGHT,
      weightCarried: a.carried ? massOf(a.carried) * WEIGHT : 0,
      attitude: 1,
      load: { least: load, most: load },
      from: n,
      to: n,
      margin: 0,
    },
    n,
    load,
  );
  return { force, flank: { A: flankUnder(force.A), C: C && flankUnder(force.C) } };
};
