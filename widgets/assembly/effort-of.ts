/** What the figures of effort share: the reader's pair and load as the engine takes them, and a plain screw beside. */
import { SENSES } from '#words/force.ts';
import {
  collarTorque,
  diameters,
  type EffortThread,
  good,
  mm,
  newtons,
  type PairEffort,
  type PlainEffort,
  pairEffort,
  plain,
  plainEffort,
  type Result,
  type Thread,
} from '../engine/index.ts';
import type { OptionOf } from '../input/choices.ts';
import { show, type UnitView } from '../input/format.ts';

/** What the torque of a thread depends on; flanks of 60° threads. */
export const effortThread = (thread: Thread, mu: number): EffortThread => ({
  h: thread.h,
  L: thread.L,
  d2: diameters(thread).d2,
  mu,
});

export interface EffortState {
  readonly A: Thread;
  readonly C: Thread;
  readonly load: number;
  readonly mu: number;
  readonly pair: PairEffort;
  /** A plain screw with thread C. */
  readonly plain: PlainEffort;
}

/** The numbers that effort follows from. */
export interface EffortNumbers {
  readonly threads: Readonly<Record<'A' | 'C', Thread>>;
  readonly values: Readonly<Record<'F' | 'mu' | 'd_b' | 'mu_g' | 'r_k', number>>;
  readonly choices: { readonly rubs: OptionOf<'rubs'> };
}

/** `mu` stands in for the reader's friction where a curve needs another. */
export const effortState = (numbers: EffortNumbers, mu = numbers.values.mu): Result<EffortState> => {
  const { A, C } = numbers.threads;
  const load = numbers.values.F;
  const { rubs } = numbers.choices;
  const rubbing = collarTorque.of({ mu_b: plain(mu), F: newtons(load), d_b: mm(numbers.values.d_b) });
  if (!rubbing.ok) return rubbing;
  const { M_b } = rubbing.value;
  // The carried part does not turn, so its tip rubs only where a plain screw takes the place of the pair.
  const pair = pairEffort({
    A: effortThread(A, mu),
    C: effortThread(C, mu),
    load,
    collar: rubs === 'a collar' ? M_b : 0,
    key: { mu: numbers.values.mu_g, radius: numbers.values.r_k },
  });
  if (!pair.ok) return pair;
  const one = plainEffort(effortThread(C, mu), load, rubs === 'nothing' ? 0 : M_b);
  return one.ok ? good({ A, C, load, mu, pair: pair.value, plain: one.value }) : one;
};

export const torqueText = (torque: number, view: UnitView): string => show(torque, { shown: 'N·mm', digits: 4 }, view);
export const forceText = (force: number, view: UnitView): string => show(force, { shown: 'force', digits: 4 }, view);

export const senseText = (sense: 1 | -1): string => (sense === 1 ? SENSES.clockwise : SENSES.anticlockwise);
