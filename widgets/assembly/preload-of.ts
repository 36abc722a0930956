/** The preload case that a number set describes: spring, weights, load and guide, as chapters and the design sheet name them. */
import { bad, good, type Part, type PreloadCase, type PreloadSpring, type Result, withGuide } from '../engine/index.ts';
import { show } from '../input/format.ts';
import type { Numbers } from './numbers.ts';
import { bothThreads } from './pair-of.ts';

export type Attitude = 'upright' | 'on its side' | 'upside down';

const ENDS: Readonly<Record<string, readonly [lower: Part, upper: Part]>> = {
  'base and carried': ['base', 'carried'],
  'base and turned': ['base', 'turned'],
  'turned and carried': ['turned', 'carried'],
};
const ATTITUDES: Readonly<Record<Attitude, number>> = { upright: 1, 'on its side': 0, 'upside down': -1 };

export interface PreloadOf {
  /** As the engine judges it, the friction of the guide within the range of its load. */
  readonly given: PreloadCase;
  /** N, either way along the axis. */
  readonly friction: number;
  readonly spring: PreloadSpring | undefined;
  readonly attitude: Attitude;
}

/** `to` is the turns over which the adjuster is used, from nought. */
export const preloadOf = (numbers: Numbers, to: number): Result<PreloadOf> => {
  const both = bothThreads(numbers);
  if (!both.ok) return both;
  const { A, C } = both.value;
  const { choices } = numbers;
  const { F_0 = 0, k_s = 1, W_c = 0, W_t = 0, F_lo = 0, F_hi = 0, Q_s = 0, mu_g = 0, F_g = 0 } = numbers.values;
  const attitude = (Object.keys(ATTITUDES) as Attitude[]).find((a) => a === choices.attitude) ?? 'upright';
  const ends = ENDS[choices.spring ?? 'base and carried'];
  const spring: PreloadSpring | undefined = ends && {
    lower: ends[0],
    upper: ends[1],
    kind: choices.action === 'pushes' ? 'push' : 'pull',
    force: F_0,
    rate: k_s,
  };
  const newtons = (x: number): string => show(x, { shown: 'force', digits: 3 }, 'metric');
  if (!(F_lo <= F_hi))
    return bad(
      `The least load, ${newtons(F_lo)}, is above the most, ${newtons(F_hi)}: give the smaller first, and a pull away from the base with a minus.`,
    );
  const guided = withGuide(
    {
      h_A: A.h,
      L_A: A.L,
      h_C: C.h,
      L_C: C.L,
      springs: spring ? [spring] : [],
      weightTurned: W_t,
      weightCarried: W_c,
      attitude: ATTITUDES[attitude],
      load: { least: F_lo, most: F_hi },
      from: 0,
      to,
      margin: F_g,
    },
    { side: Q_s, mu: mu_g },
  );
  return guided.ok ? good({ ...guided.value, spring, attitude }) : guided;
};
