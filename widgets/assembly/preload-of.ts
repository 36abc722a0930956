/** The preload case that a number set describes: spring, weights, load and guide, as chapters and the design sheet name them. */
import {
  bad,
  good,
  type Part,
  type PreloadCase,
  type PreloadSpring,
  type Result,
  type Thread,
  withGuide,
} from '../engine/index.ts';
import type { OptionOf } from '../input/choices.ts';
import { show } from '../input/format.ts';
import { ATTITUDES, type Attitude } from './attitude.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    /** Forces as the reader sees them. */
    'least-load-above-most': { readonly least: string; readonly most: string };
  }
}

const ENDS: Readonly<Record<OptionOf<'spring'>, readonly [lower: Part, upper: Part] | undefined>> = {
  'base and carried': ['base', 'carried'],
  'base and turned': ['base', 'turned'],
  'turned and carried': ['turned', 'carried'],
  'no parts': undefined,
};

export interface PreloadOf {
  /** As the engine judges it, the friction of the guide within the range of its load. */
  readonly given: PreloadCase;
  /** N, either way along the axis. */
  readonly friction: number;
  readonly spring: PreloadSpring | undefined;
  readonly attitude: Attitude;
}

/** The numbers that name a preload case. */
export interface PreloadNumbers {
  readonly threads: Readonly<Record<'A' | 'C', Thread>>;
  readonly values: Readonly<
    Record<'F_0' | 'k_s' | 'W_c' | 'W_t' | 'F_lo' | 'F_hi' | 'Q_s' | 'mu_g' | 'F_g' | 'M_L' | 'r_k', number>
  >;
  readonly choices: { readonly [K in 'spring' | 'action' | 'attitude']: OptionOf<K> };
}

/** `to` is the turns over which the adjuster is used, from zero. */
export const preloadOf = (numbers: PreloadNumbers, to: number): Result<PreloadOf> => {
  const { A, C } = numbers.threads;
  const { choices } = numbers;
  const { F_0, k_s, W_c, W_t, F_lo, F_hi, Q_s, mu_g, F_g, M_L, r_k } = numbers.values;
  const { attitude } = choices;
  const ends = ENDS[choices.spring];
  const spring: PreloadSpring | undefined = ends && {
    lower: ends[0],
    upper: ends[1],
    kind: choices.action === 'pushes' ? 'push' : 'pull',
    force: F_0,
    rate: k_s,
  };
  const newtons = (x: number): string => show(x, { shown: 'force', digits: 3 }, 'metric');
  if (!(F_lo <= F_hi)) return bad('least-load-above-most', { least: newtons(F_lo), most: newtons(F_hi) });
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
    // The key holds its torque by a push across the axis, which rubs as any other side force (key-rub).
    { side: Q_s + Math.abs(M_L) / r_k, mu: mu_g },
  );
  return guided.ok ? good({ ...guided.value, spring, attitude }) : guided;
};
