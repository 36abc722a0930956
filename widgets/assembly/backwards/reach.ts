/**
 * The steps of an example as a graph: which of its numbers reach a result, by which steps, and the result as a function of them.
 *
 * A step that keeps its result under a name that stands already rules from there on, as in `runSteps`, so the graph goes back from a
 * step to the last one before it that gives the name, and to the reader’s numbers where none does.
 */
import { relationNamed, type Thread } from '../../engine/index.ts';
import { type Input, type NumberSet, type Numbers, scopeOf } from '../numbers.ts';
import { runSteps, type Step } from '../steps.ts';

/** One result of an example with the reader’s numbers as they stand. */
export interface Asked {
  readonly set: NumberSet;
  readonly numbers: Numbers;
  readonly steps: readonly Step[];
  /** Which step gives the result. */
  readonly index: number;
}

/** The symbol by which each of a relation’s inputs is known in the example; a number is bound to no symbol. */
export const takenNames = (step: Step): readonly string[] =>
  (relationNamed(step.relation)?.takes ?? []).flatMap((symbol) => {
    const bound = step.bind[symbol] ?? symbol;
    return typeof bound === 'string' ? [bound] : [];
  });

/** The last step before `index` that gives a name. */
const giverOf = (steps: readonly Step[], index: number, name: string): number =>
  steps.slice(0, index).findLastIndex((step) => step.as === name);

export interface Reached {
  /** The steps that lead to the result, itself the last, in their order. */
  readonly steps: readonly number[];
  /** The symbols that come from the reader’s numbers. */
  readonly symbols: ReadonlySet<string>;
}

export const reachedBy = (steps: readonly Step[], index: number): Reached => {
  const found = new Set<number>();
  const symbols = new Set<string>();
  const visit = (i: number): void => {
    const step = steps[i];
    if (!step || found.has(i)) return;
    found.add(i);
    for (const name of takenNames(step)) {
      const giver = giverOf(steps, i, name);
      if (giver >= 0) visit(giver);
      else symbols.add(name);
    }
  };
  visit(index);
  return { steps: [...found].sort((a, b) => a - b), symbols };
};

const OF_THREAD = /^(P|N|L|h|d|tpi|[dD]_2m(?:in|ax))$/;

/** Whether a symbol comes from this input: a quantity by its name, a thread by any of its symbols. */
export const comesFrom = (input: Input, symbol: string): boolean => {
  if (input.kind === 'quantity') return input.name === symbol;
  if (input.kind !== 'thread') return false;
  if (input.name === 'thread') return OF_THREAD.test(symbol);
  const suffix = `_${input.name}`;
  return symbol.endsWith(suffix) && OF_THREAD.test(symbol.slice(0, -suffix.length));
};

/** The reader’s numbers on which the result depends. */
export const reaching = ({ set, steps, index }: Asked): readonly Input[] => {
  const { symbols } = reachedBy(steps, index);
  return set.inputs.filter((input) => [...symbols].some((symbol) => comesFrom(input, symbol)));
};

/** The result in a scope of the reader’s numbers; undefined where it has none. */
export type InScope = (scope: Readonly<Record<string, number>>) => number | undefined;

export const resultOf = ({ steps, index }: Asked): InScope => {
  const needed = reachedBy(steps, index).steps.flatMap((i) => steps[i] ?? []);
  return (scope) => {
    const last = runSteps(needed, scope).at(-1);
    return last?.ok ? last.value : undefined;
  };
};

/** The reader’s numbers as steps name them. */
export const scopeIn = ({ numbers }: Asked): Record<string, number> => scopeOf(numbers);

/** What a thread gives to a scope besides the limits of its class, which take longer. */
export const threadScope = (name: string, { d, P, N, L, h, tpi }: Thread): Record<string, number> => {
  const suffix = name === 'thread' ? '' : `_${name}`;
  return Object.fromEntries(
    Object.entries({ d, P, N, L, h, tpi }).flatMap(([symbol, value]) =>
      value === undefined ? [] : [[symbol + suffix, value]],
    ),
  );
};

/** The same thread with another pitch, its starts and its hand kept. */
export const pitchScope = (name: string, thread: Thread, P: number): Record<string, number> => {
  const suffix = name === 'thread' ? '' : `_${name}`;
  return {
    [`P${suffix}`]: P,
    [`L${suffix}`]: P * thread.N,
    ...(thread.tpi === undefined ? {} : { [`tpi${suffix}`]: 25.4 / P }),
  };
};

/** Whether the limits of a thread’s class lead to the result. */
export const takesLimits = (symbols: ReadonlySet<string>): boolean => [...symbols].some((s) => /_2m(in|ax)/.test(s));
