/** What the figure shows, from the reader's numbers: both joints, the travel between the stops, the wall of a sleeve. */

import {
  type Assembled,
  type ExternalLimits,
  good,
  type InternalLimits,
  type Joint,
  jointOf,
  midMark,
  mm,
  type NestedWall,
  nestingRefusal,
  nutLimits,
  type PairStanding,
  type Result,
  type Stop,
  screwLimits,
  standAt,
  type Travel,
  travelOfPair,
  wallOfSleeve,
} from '../engine/index.ts';
import type { OptionOf } from '../input/choices.ts';
import { reasonOf } from '../words/reason.ts';
import type { Arrangement } from './assembly-layout.ts';
import type { BothThreads } from './pair-of.ts';

export interface Wall extends NestedWall {
  readonly outside: ExternalLimits;
  readonly inside: InternalLimits;
}

export interface FitState {
  readonly arrangement: Arrangement;
  readonly A: Joint;
  readonly C: Joint;
  readonly travel: Travel;
  readonly standing: PairStanding;
  /** Turns to back each thread out from home to the mark. */
  readonly mark: { readonly A: number; readonly C: number };
  /** Of a nested pair: the wall by limits, or why only its nominal size is known. */
  readonly wall: Wall | { readonly nominalOnly: string } | undefined;
}

/** The lengths of screws and nuts, and how they were put together. */
export interface FitNumbers {
  readonly threads: BothThreads;
  readonly values: Readonly<Record<'l_A' | 'b_A' | 'l_C' | 'b_C' | 'q_e', number>>;
  readonly choices: { readonly arrangement: Arrangement; readonly assembly: OptionOf<'assembly'> };
}

const ASSEMBLY: Readonly<Record<OptionOf<'assembly'>, readonly [Assembled, Assembled]>> = {
  'both at mid-range': ['middle', 'middle'],
  'both screwed home': ['home', 'home'],
  'A at mid-range, C home': ['middle', 'home'],
};

/** `n` turns from where it was put together, as far as the stops let it. */
export const fitStateOf = ({ threads, values, choices }: FitNumbers, n: number): Result<FitState> => {
  const { A: threadA, C: threadC } = threads;
  const { l_A, b_A, l_C, b_C, q_e } = values;
  const { arrangement, assembly } = choices;
  const [atA, atC] = ASSEMBLY[assembly];
  if (arrangement === 'nested') {
    const refusal = nestingRefusal(threadA, threadC);
    if (refusal !== undefined) return refusal;
  }
  const A = jointOf(threadA, mm(l_A), mm(b_A), q_e, atA, 'A');
  if (!A.ok) return A;
  const C = jointOf(threadC, mm(l_C), mm(b_C), q_e, atC, 'C');
  if (!C.ok) return C;
  const travel = travelOfPair(A.value, C.value, arrangement === 'one spindle, two nuts' ? -1 : 1);
  if (!travel.ok) return travel;
  const markA = midMark.of({ X: travel.value.A.usable, L: threadA.L });
  const markC = midMark.of({ X: travel.value.C.usable, L: threadC.L });
  if (!markA.ok) return markA;
  if (!markC.ok) return markC;
  return good({
    arrangement,
    A: A.value,
    C: C.value,
    travel: travel.value,
    standing: standAt(A.value, C.value, travel.value, n),
    mark: { A: markA.value.n_b, C: markC.value.n_b },
    wall: arrangement === 'nested' ? wallOf(A.value, C.value) : undefined,
  });
};

const wallOf = (A: Joint, C: Joint): FitState['wall'] => {
  const outside = screwLimits(A.thread);
  if (!outside.ok) return { nominalOnly: reasonOf(outside) };
  const inside = nutLimits(C.thread);
  if (!inside.ok) return { nominalOnly: reasonOf(inside) };
  const wall = wallOfSleeve(outside.value.limits, inside.value.limits);
  return wall.ok
    ? { ...wall.value, outside: outside.value.limits, inside: inside.value.limits }
    : { nominalOnly: reasonOf(wall) };
};

export const whyStopped = (stop: Stop): string =>
  stop.end === 'home' ? `thread ${stop.thread} is home` : `thread ${stop.thread} has only its least engagement left`;
