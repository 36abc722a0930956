/** The force chain as the figure needs it: the case the engine judges, its verdict, and the forces at one place. */

import { flankText, PART_WORDS } from '#words/force.ts';
import { type Attitude, type PreloadNumbers, preloadOf } from '../../assembly/preload-of.ts';
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
      return `Thread ${thread}: the ${flankText(thread, v.flank)} touches over the whole stroke, with ${newtons(v.least)} or more.`;
    case 'short of margin':
      return `Thread ${thread}: the ${flankText(thread, v.flank)} touches over the whole stroke, but only ${newtons(v.least)} is left where ${newtons(s.given.margin)} is asked.`;
    case 'lets go':
      return `Thread ${thread} lets go at ${turnsText(v.n)}, the carried part at ${motionText(v.z_c, view)}, under ${signedNewtons(v.load)}.`;
  }
};

/** What the spring does over the stroke. */
export const springText = (s: State, view: UnitView): string => {
  const range = s.verdict.springs[0];
  if (!s.spring || !range) return 'No spring: the threads are left to the weight and the load.';
  const parted = endsPart(s);
  const motion = show(Math.abs(parted), { shown: 'motion', digits: 3 }, view);
  const ends =
    parted === 0
      ? 'its ends keep their distance'
      : `its ends ${parted > 0 ? 'part' : 'come nearer'} by ${motion} over the stroke`;
  const slack = range.slackFrom === undefined ? '' : `, slack from ${turnsText(range.slackFrom)} on`;
  return `Between ${PART_WORDS[s.spring.lower]} and ${PART_WORDS[s.spring.upper]}: ${ends}, so its force goes from ${newtons(springForceAt(s, s.given.from))} to ${newtons(springForceAt(s, s.given.to))}${slack}.`;
};

/** The least force at the start, and what no force of this spring can do. */
export const leastText = (s: State): string => {
  if (!s.spring || !s.least) return '';
  const { force, governs, unreached } = s.least;
  const has = s.spring.force;
  const by =
    governs.thread === undefined
      ? 'so as not to go slack'
      : `set by thread ${governs.thread} at ${turnsText(governs.n)} under ${signedNewtons(governs.load)}`;
  const alone =
    unreached.length === 0
      ? ''
      : `Whatever its force, this spring does nothing for thread ${unreached.join(' and ')}: only weight and load act there. `;
  const reached = (['A', 'C'] as const).filter((t) => !unreached.includes(t));
  const forWhom = unreached.length === 0 ? 'both threads need' : `thread ${reached.join(' and ')} needs`;
  if (force === 0) return `${alone}For the rest ${forWhom} no force of it at the start.`;
  const enough =
    has >= force * (1 - 1e-12) ? `${newtons(has)} is enough` : `${newtons(has)} is below that: more preload`;
  return `${alone}At the start ${forWhom} ${newtons(force)} of it, ${by}; ${enough}.`;
};

export const frictionText = (s: State): string =>
  s.friction > 0 ? `Friction of the guide, ${numeral(s.friction, 3)}\u00a0N either way, is counted in the loads.` : '';
