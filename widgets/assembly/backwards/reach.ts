/**
 * The steps of an example as a graph: which of its numbers reach a result, by which steps, and the result as a function of them.
 *
 * A step that keeps its result under a name that stands already rules from there on, as in `runSteps`, so the graph goes back from a
 * step to the last one before it that gives the name, and to the reader’s numbers where none does.
 */
import { relationNamed, type SymbolName, type Thread } from '../../engine/index.ts';
import { followersOf } from '../linked.ts';
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
const takenNames = (step: Step): readonly string[] =>
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
  // The divisions of a knob are the steps of a turn; other heads have their own count.
  if (input.kind === 'quantity') return input.name === symbol || (input.name === 'k_d' && symbol === 'k');
  if (input.kind === 'choice') return input.name === 'divider' && symbol === 'k';
  if (input.kind !== 'thread') return false;
  if (input.name === 'thread') return OF_THREAD.test(symbol);
  const suffix = `_${input.name}`;
  return symbol.endsWith(suffix) && OF_THREAD.test(symbol.slice(0, -suffix.length));
};

/** The reader’s numbers on which the result depends. */
export const reaching = ({ set, numbers, steps, index }: Asked): readonly Input[] => {
  const { symbols } = reachedBy(steps, index);
  return set.inputs.filter(
    (input) =>
      [...symbols].some((symbol) => comesFrom(input, symbol)) &&
      !(input.name === 'k_d' && numbers.choices.divider !== 'knob'),
  );
};

/** The symbols that change with a quantity: itself, and what follows it under a choice. */
export const movedWith = ({ numbers: { choices } }: Asked, name: SymbolName): readonly string[] => [
  name,
  ...followersOf(name, (choice) => choices[choice]).map(({ follower }) => follower),
  ...(name === 'k_d' && choices.divider === 'knob' ? ['k'] : []),
];

/** The result in a scope of the reader’s numbers; undefined where it has none. */
export type InScope = (scope: Readonly<Record<string, number>>) => number | undefined;

export const resultOf = ({ steps, index }: Asked): InScope => {
  const needed = reachedBy(steps, index).steps.flatMap((i) => steps[i] ?? []);
  return (scope) => lastOf(needed, scope);
};

const lastOf = (steps: readonly Step[], scope: Readonly<Record<string, number>>): number | undefined => {
  const last = runSteps(steps, scope).at(-1);
  return last?.ok ? last.value : undefined;
};

/**
 * The same where only these symbols change: the steps that they do not reach are worked once. Gives the scope in which to ask it as
 * well. A step that has no result, or one whose name stands among the numbers too, is worked every time.
 */
export const resultOver = (
  asked: Asked,
  changing: readonly string[],
): { readonly law: InScope; readonly scope: Record<string, number> } => {
  const { steps, index } = asked;
  const reached = reachedBy(steps, index);
  const scope = scopeIn(asked);
  const moved = new Set<number>();
  const rest: Step[] = [];
  for (const i of reached.steps) {
    const step = steps[i];
    if (!step) continue;
    const moves = takenNames(step).some((name) => {
      const giver = giverOf(steps, i, name);
      return giver >= 0 ? moved.has(giver) : changing.includes(name);
    });
    const twice = reached.symbols.has(step.as) || reached.steps.some((j) => j !== i && steps[j]?.as === step.as);
    const value = moves || twice || i === index ? undefined : lastOf([step], scope);
    if (value === undefined) {
      moved.add(i);
      rest.push(step);
    } else scope[step.as] = value;
  }
  return { law: (at) => lastOf(rest, at), scope };
};

/** Of the reader’s numbers those that lead to the result, as steps name them: few, since a law is asked a thousand times. */
export const scopeIn = ({ numbers, steps, index }: Asked): Record<string, number> => {
  const all = scopeOf(numbers);
  const scope: Record<string, number> = {};
  for (const symbol of reachedBy(steps, index).symbols) {
    const value = all[symbol];
    if (value !== undefined) scope[symbol] = value;
  }
  return scope;
};

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
