/**
 * What the solid shows: the adjuster after n turns, whether its lock holds and what torque it then takes, which of its flanks carry, and the
 * play of its threads.
 */
import {
  type Adjuster,
  type Fitted,
  type LockState,
  type Standing,
  springForce,
  standing,
} from '../../assembly/adjuster/adjuster.ts';
import { type Aside, asideOf, type Carrying, carryingOf } from '../../assembly/adjuster/carrying.ts';
import { jointPlay } from '../../assembly/adjuster/play.ts';
import { readAdjuster } from '../../assembly/adjuster/text.ts';
import { effortThread } from '../../assembly/effort-of.ts';
import { good, mm, newtons, pairEffort, plain, type Result, springsAtMost } from '../../engine/index.ts';
import type { NumbersOf } from '../kit/figure.ts';

export interface State {
  readonly adjuster: Adjuster;
  readonly standing: Standing;
  readonly locked: boolean;
  readonly carrying: Carrying;
  /** Push on the tip, N, from the right as it is seen, and what it makes of the threads. */
  readonly push: number;
  readonly aside: { readonly A: Aside | undefined; readonly C: Aside | undefined };
  /** Torque that thread C hands to the carried part as it is turned on under the load, N·mm, plus anticlockwise; where a lock takes one. */
  readonly handed: number | undefined;
  /** The most torque that its springs can resist, N·mm, where they are the lock: all their pull across the radius at which they stand. */
  readonly springsHold: number | undefined;
  /** Axial play of middling pieces, mm; undefined where they have none that is known. */
  readonly play: { readonly A: number | undefined; readonly C: number | undefined };
  /** Whether the lenses are wanted. */
  readonly lens: boolean;
  readonly asked: number;
}

type Asked = NumbersOf<never, 'n' | 'F' | 'mu' | 'Q_y', 'lock' | 'lens' | 'pull', 'adjuster'>;

export const stateOf = ({ values, texts, choices }: Asked): Result<State> => {
  const read = readAdjuster(texts.adjuster);
  if (!read.ok) return read;
  const adjuster = read.value;
  const locked = choices.lock === 'holds';
  const share: LockState = { share: locked ? 0 : 1 };
  const now = standing(adjuster, values.n, share);
  const load = choices.pull === 'pulls up' ? -values.F : values.F;
  const carrying = carryingOf(adjuster, now.n, load);
  const aside = (name: 'A' | 'C') => asideOf(adjuster, now, carrying, values.Q_y, name);
  return good({
    adjuster,
    standing: now,
    locked,
    carrying,
    push: values.Q_y,
    aside: { A: aside('A'), C: aside('C') },
    springsHold: springsHold(adjuster, now.n),
    handed:
      locked && adjuster.lock.kind !== 'none'
        ? handedOf(adjuster, carrying, { F: load, mu: values.mu }, now.n)
        : undefined,
    play: { A: playOf(adjuster.A), C: adjuster.C && playOf(adjuster.C) },
    lens: choices.lens !== 'away',
    asked: values.n,
  });
};

/** However they lean, springs can’t hold their part with more than their whole pull, across the radius at which they stand. */
const springsHold = (adjuster: Adjuster, n: number): number | undefined => {
  const pull = springForce(adjuster, n);
  const { radius, count } = adjuster.springs ?? {};
  if (adjuster.lock.kind !== 'springs' || pull === undefined || radius === undefined || count === undefined)
    return undefined;
  const most = springsAtMost.of({ N_f: plain(count), F_s: newtons(pull / count), r_k: mm(radius) });
  return most.ok ? most.value.M_L : undefined;
};

/** Turned on the way it has been turned: clockwise until it was turned back beyond home. */
const handedOf = (
  { A, C }: Adjuster,
  { force }: Carrying,
  { F, mu }: Readonly<Record<'F' | 'mu', number>>,
  n: number,
): number | undefined => {
  if (!C || F === 0) return undefined;
  const effort = pairEffort({
    A: effortThread(A.thread, mu),
    C: effortThread(C.thread, mu),
    load: F,
    onThread: force,
  });
  if (!effort.ok) return undefined;
  const { against, along } = effort.value;
  return (against.sense === (n < 0 ? -1 : 1) ? against : along).handed;
};

/** Where the tightest pieces do not go together, half of what the loosest have. */
const playOf = (fitted: Fitted): number | undefined => {
  const play = jointPlay(fitted);
  if (!play.ok || !play.value.most.ok) return undefined;
  const { least, most } = play.value;
  return (most.value + (least.ok ? least.value : 0)) / 2;
};
