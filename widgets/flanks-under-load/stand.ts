/** Where the flanks of both threads stand under the pushes, settled by the notebook's one simulator of motion. */
import { flankPushes, newtons, type Result, simulate } from '../engine/index.ts';
import type { PairPlay } from '../shared/pair-play.ts';

export interface Stand {
  /** Push across each thread. */
  readonly pushA: number;
  readonly pushC: number;
  /** −1 pressed down, +1 pressed up, 0 free. */
  readonly flankA: number;
  readonly flankC: number;
  /** Turned part over the base, carried part over the turned part, from the middle of their plays. */
  readonly offA: number;
  readonly offC: number;
  /** Carried part over the base, from the middle of both plays. */
  readonly carried: number;
}

export const standAt = (play: PairPlay, Q_t: number, Q_c: number): Result<Stand> => {
  const pushes = flankPushes.of({ Q_t: newtons(Q_t), Q_c: newtons(Q_c) });
  if (!pushes.ok) return pushes;
  const { A, C } = play;
  const run = simulate(
    {
      A: { h: A.thread.h, L: A.thread.L, play: A.j },
      C: { h: C.thread.h, L: C.thread.L, play: C.j },
      pushes: { turned: newtons(Q_t), carried: newtons(Q_c) },
      drags: { turned: newtons(0), carried: newtons(0) },
    },
    [],
  );
  if (!run.ok) return run;
  const { turned, carried, flankA, flankC } = run.value;
  const [t, c] = [turned[0] ?? 0, carried[0] ?? 0];
  return {
    ok: true,
    value: {
      pushA: pushes.value.Q_A,
      pushC: pushes.value.Q_C,
      flankA: flankA[0] ?? 0,
      flankC: flankC[0] ?? 0,
      offA: t,
      offC: c - t,
      carried: c,
    },
  };
};

/** Pushes on the carried part at which a thread changes sides, in rising order: C where it is nought, A where the sum is. */
export const changes = (Q_t: number): readonly { readonly thread: 'A' | 'C'; readonly at: number }[] =>
  [
    { thread: 'A' as const, at: Q_t === 0 ? 0 : -Q_t },
    { thread: 'C' as const, at: 0 },
  ].sort((a, b) => a.at - b.at);
