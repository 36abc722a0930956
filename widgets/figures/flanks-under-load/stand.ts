/** Where the flanks of both threads stand under the forces on the parts, settled by the notebook's one simulator of motion. */

import type { PairPlay } from '../../assembly/pair-play.ts';
import { at, type Flank, flankForces, good, newtons, type Result, simulate } from '../../engine/index.ts';

export interface Stand {
  /** Force across each thread, N, towards the base plus. */
  readonly forceA: number;
  readonly forceC: number;
  /** The flank that touches. */
  readonly flankA: Flank;
  readonly flankC: Flank;
  /** Turned part over the base, carried part over the turned part, from the middle of their plays. */
  readonly offA: number;
  readonly offC: number;
  /** Carried part over the base, from the middle of both plays. */
  readonly carried: number;
}

export const standAt = (play: PairPlay, Q_pt: number, Q_pc: number): Result<Stand> => {
  const forces = flankForces.of({ Q_pt: newtons(Q_pt), Q_pc: newtons(Q_pc) });
  if (!forces.ok) return forces;
  const { A, C } = play;
  const run = simulate(
    {
      A: { h: A.thread.h, L: A.thread.L, play: A.j },
      C: { h: C.thread.h, L: C.thread.L, play: C.j },
      loads: { turned: newtons(Q_pt), carried: newtons(Q_pc) },
      drags: { turned: newtons(0), carried: newtons(0) },
    },
    [],
  );
  if (!run.ok) return run;
  const { turned, carried, flankA, flankC } = run.value;
  const [t, c] = [at(turned, 0), at(carried, 0)];
  return good({
    forceA: forces.value.F_A,
    forceC: forces.value.F_C,
    flankA: at(flankA, 0) as Flank,
    flankC: at(flankC, 0) as Flank,
    offA: t,
    offC: c - t,
    carried: c,
  });
};

/** Forces on the carried part at which a thread changes sides, in rising order: C where it is nought, A where the sum is. */
export const changes = (Q_pt: number): readonly { readonly thread: 'A' | 'C'; readonly at: number }[] =>
  [
    { thread: 'A' as const, at: Q_pt === 0 ? 0 : -Q_pt },
    { thread: 'C' as const, at: 0 },
  ].sort((a, b) => a.at - b.at);
