/** The force chain as the figure needs it: the case the engine judges, its verdict, and the forces at one place. */

import { WORDS } from '#words/figures/force-chain.ts';
import { flankText } from '#words/force.ts';
import type { Attitude } from '../../assembly/attitude.ts';
import { type PreloadNumbers, preloadOf } from '../../assembly/preload-of.ts';
import {
  type FlankName,
  flankUnder,
  good,
  type LeastPreload,
  leastPreload,
  type PreloadCase,
  type PreloadSpring,
  type PreloadVerdict,
  partMotion,
  preloadVerdict,
  type Result,
  springAt,
  type Thread,
  type ThreadName,
  type ThreadVerdict,
  threadForces,
} from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { evenly } from '../kit/ticks.ts';

export interface State {
  readonly A: Thread;
  readonly C: Thread;
  /** As the engine judges it, the friction of the guide within the range of its load. */
  readonly given: PreloadCase;
  /** N, either way along the axis. */
  readonly friction: number;
  readonly spring: PreloadSpring | undefined;
  readonly verdict: PreloadVerdict;
  readonly least: LeastPreload | undefined;
  readonly attitude: Attitude;
  /** The place looked at, within the stroke. */
  readonly n: number;
}

/** The numbers that the figure reads: the preload case, the stroke in turns and the place looked at. */
type ChainNumbers = PreloadNumbers & { readonly values: Readonly<Record<'n_w' | 'n', number>> };

export const stateOf = (numbers: ChainNumbers): Result<State> => {
  const { A, C } = numbers.threads;
  const { n_w, n } = numbers.values;
  const preload = preloadOf(numbers, n_w);
  if (!preload.ok) return preload;
  const { given, spring } = preload.value;
  const verdict = preloadVerdict(given);
  if (!verdict.ok) return verdict;
  const least = spring ? leastPreload(given) : undefined;
  if (least && !least.ok) return least;
  return good({
    ...preload.value,
    A,
    C,
    verdict: verdict.value,
    least: least?.value,
    n: Math.max(Math.min(0, n_w), Math.min(Math.max(0, n_w), n)),
  });
};

/** Force across a thread at a place, under the least and under the most load. */
export const forcesAt = (s: State, thread: ThreadName, n: number): readonly [least: number, most: number] => [
  threadForces(s.given, n, s.given.load.least)[thread],
  threadForces(s.given, n, s.given.load.most)[thread],
];

/** Which flanks carry at a place, whatever the load within its range. */
export type Seat = FlankName | 'neither for sure';
export const seatAt = (s: State, thread: ThreadName, n: number): Seat => {
  const [least, most] = forcesAt(s, thread, n);
  const [one, other] = [flankUnder(least), flankUnder(most)];
  return one !== undefined && one === other ? one : 'neither for sure';
};

/** Turns at which the forces are worth working out: evenly over the stroke, and where the spring goes slack. */
export const places = (s: State, count: number): readonly number[] => {
  const { from, to } = s.given;
  const slack = s.verdict.springs[0]?.slackFrom;
  const even = evenly(from, to, count);
  return slack === undefined ? even : [...even, slack].sort((a, b) => (to >= from ? a - b : b - a));
};

/** How far the two ends of the spring part over the stroke, mm. */
const endsPart = (s: State): number =>
  s.spring ? partMotion(s.spring.upper, s.given.to, s.given) - partMotion(s.spring.lower, s.given.to, s.given) : 0;

export const springForceAt = (s: State, n: number): number => (s.spring ? springAt(s.spring, n, s.given) : 0);

export const newtons = (x: number): string => show(x, { shown: 'force', digits: 3 }, 'metric');
export const signedNewtons = (x: number): string => withSign(newtons(x));
export const turnsText = (n: number): string => show(Number(n.toPrecision(3)), { shown: 'turns' }, 'metric');
export const motionText = (z: number, view: UnitView): string =>
  withSign(show(z, { shown: 'motion', digits: 3 }, view));

export const MARKS: Readonly<Record<ThreadVerdict['kind'], string>> = {
  seated: '✓',
  'short of margin': '!',
  'lets go': '✕',
};

/** The verdict on a thread in words, in the reader's units. */
export const verdictText = (s: State, thread: ThreadName, view: UnitView): string => {
  const v = s.verdict[thread];
  switch (v.kind) {
    case 'seated':
      return WORDS.verdict.seated({ thread, flank: flankText(thread, v.flank), least: newtons(v.least) });
    case 'short of margin':
      return WORDS.verdict['short of margin']({
        thread,
        flank: flankText(thread, v.flank),
        least: newtons(v.least),
        margin: newtons(s.given.margin),
      });
    case 'lets go':
      return WORDS.verdict['lets go']({
        thread,
        turns: turnsText(v.n),
        carried: motionText(v.z_c, view),
        load: signedNewtons(v.load),
      });
  }
};

/** What the spring does over the stroke. */
export const springText = (s: State, view: UnitView): string => {
  const range = s.verdict.springs[0];
  if (!s.spring || !range) return WORDS.noSpring;
  const parted = endsPart(s);
  return WORDS.spring({
    lower: s.spring.lower,
    upper: s.spring.upper,
    ends: parted === 0 ? 'keep' : parted > 0 ? 'part' : 'near',
    motion: show(Math.abs(parted), { shown: 'motion', digits: 3 }, view),
    from: newtons(springForceAt(s, s.given.from)),
    to: newtons(springForceAt(s, s.given.to)),
    slack: range.slackFrom === undefined ? undefined : turnsText(range.slackFrom),
  });
};

/**
 * The least force at the start, and what no force of this spring can do. The engine's own sentence says which thread is out of
 * reach; here it is told with the force.
 */
export const leastText = (s: State): string => {
  if (!s.spring || !s.least) return '';
  const { force, governs, unreached } = s.least;
  const has = s.spring.force;
  return WORDS.least({
    unreached,
    need:
      force === 0
        ? undefined
        : {
            force: newtons(force),
            by:
              governs.thread === undefined
                ? undefined
                : { thread: governs.thread, turns: turnsText(governs.n), load: signedNewtons(governs.load) },
            has: newtons(has),
            enough: has >= force * (1 - 1e-12),
          },
  });
};

export const frictionText = (s: State): string =>
  s.friction > 0 ? WORDS.friction(`${numeral(s.friction, 3)}\u00a0N`) : '';
