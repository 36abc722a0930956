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
  sampling,
  slopesOf,
  type Task,
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
  readonly shape: Doubt['shape'];
  /** Of the result over this input. */
  readonly slope: number;
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
}

/** What sampling found where the first order may not hold. */
export interface Drawn {
  readonly low: number;
  readonly high: number;
  readonly differs: boolean;
  /** The share of draws without a result. */
  readonly lost: number;
  readonly count: number;
}

/** So much off a straight line, of U, and the law is said to bend. */
const BENDS = 0.05;
/** From this share of u² on limits without a middle rule the shape. */
const RULES = 0.7;
/** Draws of a law that is quick; one that is slow is given a quarter. */
export const DRAWS = 8000;
export const FEW_DRAWS = 2000;
/** So far apart, of U, and the two are said to differ: three times what eight thousand draws leave open; fewer leave more. */
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

/** To the first order; undefined where none of its numbers has a ±, or it has no value. */
export const doubtIn = (
  question: Question,
  spreadOf: (name: string) => Spread | undefined,
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
  const ranked = variables
    .map(
      ({ input, doubt }, i): Part => ({
        input,
        part: parts[i]?.part ?? 0,
        share: (parts[i]?.part ?? 0) ** 2 / u ** 2,
        shape: doubt.shape,
        slope: slopes[i] ?? 0,
      }),
    )
    .sort((a, b) => b.share - a.share);
  return {
    value,
    u,
    k,
    freedom,
    U: k * u,
    parts: ranked,
    halved: k * u * Math.sqrt(1 - 0.75 * (ranked[0]?.share ?? 0)),
  };
};

/**
 * What draws say where the first order may not hold; undefined where it holds. They take some thousand times as long as it does, so a
 * page asks for them in slices, and only where somebody looks.
 */
export function* drawsIn(
  question: Question,
  spreadOf: (name: string) => Spread | undefined,
  { value, U, parts }: ResultDoubt,
  count: number,
): Task<Drawn | undefined> {
  const { variables, xs, law } = variablesOf(question, spreadOf);
  const doubts = variables.map(({ doubt }) => doubt);
  const slopes = variables.map(({ input }) => parts.find((part) => part.input === input)?.slope ?? 0);
  const ruled = parts.some(({ shape, share }) => shape === 'flat' && share > RULES);
  if (!ruled && !bends(law, xs, doubts, slopes, value, U)) return undefined;
  const draws = yield* sampling(law, xs, doubts, count);
  if (!draws) return undefined;
  const { low, high, lost } = draws;
  const apart = DIFFERS * U * Math.sqrt(DRAWS / count);
  const differs = lost > 0 || Math.abs(low - (value - U)) > apart || Math.abs(high - (value + U)) > apart;
  return { low, high, lost, count, differs };
}

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
