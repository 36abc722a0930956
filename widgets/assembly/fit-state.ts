/** What a figure shows of a pair with its lengths: the adjuster they make, where it stands after n turns, and the wall of a sleeve. */
import {
  type ExternalLimits,
  good,
  type InternalLimits,
  type NestedWall,
  nutLimits,
  type Result,
  screwLimits,
  type Thread,
  wallOfSleeve,
} from '../engine/index.ts';
import type { OptionOf } from '../input/choices.ts';
import { reasonOf } from '../words/reason.ts';
import { type Adjuster, type Fitted, type Standing, standing } from './adjuster/adjuster.ts';
import { arrangementOf } from './adjuster/as-numbers.ts';
import { type Arrangement, adjusterOf } from './adjuster/from-numbers.ts';
import type { ThreadEnd } from './adjuster/part.ts';
import type { BothThreads } from './pair-of.ts';

export interface Wall extends NestedWall {
  readonly outside: ExternalLimits;
  readonly inside: InternalLimits;
}

/** One thread: the lengths of its screw and nut, and the turns from the assembled position to each of its ends. */
export interface Side extends Fitted {
  readonly screw: number;
  readonly nut: number;
  readonly from: number;
  readonly to: number;
  /** Turns from home to the middle. */
  readonly middle: number;
}

export interface FitState {
  /** Undefined where it is none that pages name. */
  readonly arrangement: Arrangement | undefined;
  readonly adjuster: Adjuster;
  readonly standing: Standing;
  readonly A: Side;
  readonly C: Side;
  /** Of a nested pair: the wall by limits, or why only its nominal size is known. */
  readonly wall: Wall | { readonly nominalOnly: string } | undefined;
}

interface Named {
  readonly arrangement: Arrangement;
}

/** The lengths of screws and nuts, and how they were put together. */
export interface FitNumbers {
  readonly threads: BothThreads;
  readonly values: Readonly<Record<'l_A' | 'b_A' | 'l_C' | 'b_C' | 'q_e', number>>;
  readonly choices: { readonly arrangement: Arrangement; readonly assembly: OptionOf<'assembly'> };
  /** Radius of the ball at the tip, where it is drawn with one. */
  readonly ball?: number;
}

/** `n` turns from where it was put together, as far as the stops let it. */
export const fitStateOf = ({ threads, values, choices, ball }: FitNumbers, n: number): Result<FitState & Named> => {
  const { l_A, b_A, l_C, b_C, q_e } = values;
  const made = adjusterOf({
    threads,
    values: { l_A, b_A, l_C, b_C, q_e },
    choices,
    ...(ball !== undefined && { ball }),
  });
  if (!made.ok) return made;
  const { arrangement } = choices;
  return good({ ...fitOf(made.value, made.value.C as Fitted, n, arrangement), arrangement });
};

/** Of an adjuster with two threads, whoever described it; one that is nested has a wall. */
export const fitOf = (
  adjuster: Adjuster,
  C: Fitted,
  n: number,
  arrangement: Arrangement | undefined = arrangementOf(adjuster),
): FitState => ({
  arrangement,
  adjuster,
  standing: standing(adjuster, n),
  A: sideOf(adjuster.A),
  C: sideOf(C),
  wall: arrangement === 'nested' ? wallOf(adjuster.A.thread, C.thread) : undefined,
});

const sideOf = (fitted: Fitted): Side => {
  const { joint, start, rate } = fitted;
  const [external, internal] =
    joint.lower.gender === 'external' ? [joint.lower, joint.upper] : [joint.upper, joint.lower];
  const length = (end: ThreadEnd) => end.to - end.from;
  // Zero, not minus zero: it is printed.
  const ends = [0 + (joint.from - start) / rate, 0 + (joint.to - start) / rate];
  return {
    ...fitted,
    screw: length(external),
    nut: length(internal),
    from: Math.min(...ends),
    to: Math.max(...ends),
    middle: fitted.turns / 2,
  };
};

const wallOf = (A: Thread, C: Thread): FitState['wall'] => {
  const outside = screwLimits(A);
  if (!outside.ok) return { nominalOnly: reasonOf(outside) };
  const inside = nutLimits(C);
  if (!inside.ok) return { nominalOnly: reasonOf(inside) };
  const wall = wallOfSleeve(outside.value.limits, inside.value.limits);
  return wall.ok
    ? { ...wall.value, outside: outside.value.limits, inside: inside.value.limits }
    : { nominalOnly: reasonOf(wall) };
};
