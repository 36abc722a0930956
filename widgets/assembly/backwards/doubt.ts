/**
 * The ± of a result from the ± of the reader’s numbers: to the first order, every number being one variable however often it enters; and
 * by sampling where that may not hold, because the law bends within the ±, a bound is near, or limits without a middle make nearly all of it.
 */
import {
  combined,
  coverageFactor,
  type Doubt,
  effectiveFreedom,
  type ManyLaw,
  sampled,
  slopesOf,
} from '../../engine/index.ts';
import { doubtOf, type Spread } from '../../input/spread.ts';
import type { Input } from '../numbers.ts';
import { type Question, sizeOf } from './question.ts';

export interface Part {
  readonly input: Input;
  /** What the doubt of this input makes of the result by itself, one standard uncertainty, with its sign. */
  readonly part: number;
  /** Of u², all parts together being one. */
  readonly share: number;
}

export interface ResultDoubt {
  readonly value: number;
  /** Standard uncertainty. */
  readonly u: number;
  readonly k: number;
  readonly freedom: number;
  /** k u. */
  readonly U: number;
  /** The largest first. */
  readonly parts: readonly Part[];
  /** U if the ± of the first part were half. */
  readonly halved: number;
  /** Whether the first order may not hold here. */
  readonly mayFail: boolean;
  /** What sampling found where the first order may not hold. */
  readonly drawn?: { readonly low: number; readonly high: number; readonly differs: boolean; readonly lost: number };
}

/** So much off a straight line, of U, and the law is said to bend. */
const BENDS = 0.05;
/** From this share of u² on limits without a middle rule the shape. */
const RULES = 0.7;
const DRAWS = 8000;
/** So far apart, of U, and the two are said to differ: three times what eight thousand draws leave open. */
const DIFFERS = 0.1;

/** The numbers with a ± that reach a result, and the result as a function of them. */
const variablesOf = (question: Question, spreadOf: (name: string) => Spread | undefined) => {
  const variables = question.inputs.flatMap((input) => {
    const spread = spreadOf(input.name);
    return spread ? [{ input, doubt: doubtOf(spread) }] : [];
  });
  const inputs = variables.map(({ input }) => input);
  const law = question.ofSeveral(inputs);
  return { variables, xs: inputs.map((input) => sizeOf(question.numbers, input)), law };
};

/**
 * Undefined where none of its numbers has a ±, or it has no value. Sampling takes some hundred times as long as the first order; a
 * page that draws first asks without it, and again with it where `mayFail` says so.
 */
export const doubtIn = (
  question: Question,
  spreadOf: (name: string) => Spread | undefined,
  draw = true,
): ResultDoubt | undefined => {
  const { variables, xs, law } = variablesOf(question, spreadOf);
  if (variables.length === 0) return undefined;
  const value = law(xs);
  const doubts = variables.map(({ doubt }) => doubt);
  const us = doubts.map(({ u }) => u);
  const slopes = slopesOf(law, xs, us);
  if (value === undefined || !slopes) return undefined;
  const u = combined(slopes, us);
  if (!(u > 0)) return undefined;
  const parts = slopes.map((c, i) => ({
    part: c * (us[i] ?? 0),
    freedom: doubts[i]?.freedom ?? Number.POSITIVE_INFINITY,
  }));
  const freedom = effectiveFreedom(u, parts);
  const k = coverageFactor(freedom);
  const U = k * u;
  const ranked = variables
    .map(({ input }, i): Part => ({ input, part: parts[i]?.part ?? 0, share: (parts[i]?.part ?? 0) ** 2 / u ** 2 }))
    .sort((a, b) => b.share - a.share);
  const first = ranked[0]?.share ?? 0;
  const mayFail =
    bends(law, xs, doubts, slopes, value, U) ||
    doubts.some(({ shape }, i) => shape === 'flat' && ((parts[i]?.part ?? 0) / u) ** 2 > RULES);
  const draws = mayFail && draw ? sampled(law, xs, doubts, DRAWS) : undefined;
  return {
    value,
    u,
    k,
    freedom,
    U,
    parts: ranked,
    halved: k * u * Math.sqrt(1 - 0.75 * first),
    mayFail,
    ...(draws
      ? {
          drawn: {
            low: draws.low,
            high: draws.high,
            lost: draws.lost,
            differs:
              draws.lost > 0 ||
              Math.abs(draws.low - (value - U)) > DIFFERS * U ||
              Math.abs(draws.high - (value + U)) > DIFFERS * U,
          },
        }
      : {}),
  };
};

/** Whether the law leaves its tangent within the ± of any input, or has no value there. */
const bends = (
  law: ManyLaw,
  xs: readonly number[],
  doubts: readonly Doubt[],
  slopes: readonly number[],
  value: number,
  U: number,
): boolean =>
  doubts.some(({ u, shape }, i) =>
    [-1, 1].some((sign) => {
      const by = sign * u * (shape === 'flat' ? Math.sqrt(3) : 2);
      const y = law(xs.map((x, j) => (j === i ? x + by : x)));
      return y === undefined || Math.abs(y - value - (slopes[i] ?? 0) * by) > BENDS * U;
    }),
  );
