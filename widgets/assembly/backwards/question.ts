/**
 * A result that is asked: the reader’s numbers that may lead to it, and the result as a function of each, of two threads, or of several.
 * Worked examples and figures ask the same way: an example through its steps, of which only those are worked again that a number
 * reaches, a figure through its state.
 */
import { isSymbol, type ManyLaw, symbolFact, type Thread } from '../../engine/index.ts';
import { ofPitch } from '../../input/designation-sides.ts';
import { followersOf } from '../linked.ts';
import { type Input, type Numbers, scopeOf } from '../numbers.ts';
import {
  type Asked,
  comesFrom,
  movedWith,
  pitchScope,
  reachedBy,
  reaching,
  resultOf,
  resultOver,
  scopeIn,
  takesLimits,
  threadScope,
} from './reach.ts';
import { type Sold, soldAs } from './sold.ts';

export type Quantity = Extract<Input, { kind: 'quantity' }>;
export type ThreadInput = Extract<Input, { kind: 'thread' }>;
export type ChoiceInput = Extract<Input, { kind: 'choice' }>;

type Found = number | undefined;

/** The result as a function of a thread. */
export interface ThreadLaw {
  /** Whether its hand can matter. */
  readonly byHand: boolean;
  /** Whether a pitch of the reader’s own can be told: not where the limits of a class lead to the result. */
  readonly byPitch: boolean;
  readonly at: (thread: Thread) => Found;
  readonly atPitch: (P: number) => Found;
}

export interface Question {
  readonly numbers: Numbers;
  /** The result, in the words of the glossary or of the figure. */
  readonly says: string;
  /** Where the result is the size of something that is sold in sizes of its own. */
  readonly sold?: Sold | undefined;
  /** Those that may lead to it. */
  readonly inputs: readonly Input[];
  readonly ofQuantity: (input: Quantity) => (x: number) => Found;
  readonly ofThread: (input: ThreadInput) => ThreadLaw;
  readonly ofChoice: (input: ChoiceInput) => (option: string) => Found;
  readonly ofThreads: (first: ThreadInput, second: ThreadInput) => (first: Thread, second: Thread) => Found;
  /** Several at once: quantities by their values, threads by their pitches. */
  readonly ofSeveral: (inputs: readonly Input[]) => ManyLaw;
}

/** The value of an input that has a ±: a quantity’s own, a thread’s pitch. */
export const sizeOf = ({ threads, values }: Numbers, { name }: Input): number =>
  threads[name]?.P ?? (values as Readonly<Record<string, number>>)[name] ?? 0;

/** A result of an example. */
export const ofExample = (asked: Asked): Question => {
  const { numbers, steps, index } = asked;
  const { threads } = numbers;
  const { symbols } = reachedBy(steps, index);
  const ownOf = (input: Input) => [...symbols].filter((symbol) => comesFrom(input, symbol));
  const partOf = (name: string, thread: Thread, limits: boolean) =>
    limits ? scopeOf({ ...NONE, threads: { [name]: thread } }) : threadScope(name, thread);
  const step = steps[index];
  return {
    numbers,
    says: step ? symbolFact(step.as).says : '',
    sold: step && soldAs(step.as),
    inputs: reaching(asked),
    ofQuantity: (input) => {
      const moved = movedWith(asked, input.name);
      const { law, scope } = resultOver(asked, moved);
      return (x) => law({ ...scope, ...Object.fromEntries(moved.map((name) => [name, x])) });
    },
    ofThread: (input) => {
      const own = ownOf(input);
      const { law, scope } = resultOver(asked, own);
      const limits = takesLimits(new Set(own));
      const known = new Map<string, Found>();
      const present = threads[input.name];
      return {
        byHand: own.some((symbol) => symbol === 'h' || symbol.startsWith('h_')),
        byPitch: own.some((symbol) => /^(P|L|tpi)/.test(symbol)) && !limits,
        at: (thread) => {
          const part = partOf(input.name, thread, limits);
          // Most results take the pitch of a thread and not its diameter, so many threads give the same.
          const key = own.map((symbol) => part[symbol]).join();
          if (!known.has(key)) known.set(key, law(withOnly(scope, own, part)));
          return known.get(key);
        },
        atPitch: (P) => (present ? law({ ...scope, ...pitchScope(input.name, present, P) }) : undefined),
      };
    },
    ofChoice: ({ name }) => {
      const { law, scope } = resultOver(asked, ['k']);
      return (option) => {
        const { k } = scopeOf({ threads: {}, values: numbers.values, choices: { [name]: option } });
        return law({ ...scope, ...(k === undefined ? {} : { k }) });
      };
    },
    ofThreads: (a, b) => {
      const [ownA, ownB] = [ownOf(a), ownOf(b)];
      const { law, scope } = resultOver(asked, [...ownA, ...ownB]);
      const limits = takesLimits(new Set([...ownA, ...ownB]));
      return (A, B) => law(withOnly(withOnly(scope, ownA, partOf(a.name, A, limits)), ownB, partOf(b.name, B, limits)));
    },
    ofSeveral: (inputs) => {
      const result = resultOf(asked);
      const scope = scopeIn(asked);
      const names = inputs.map((input) => (input.kind === 'quantity' ? movedWith(asked, input.name) : []));
      return (at) => {
        const moved = { ...scope };
        for (const [i, { kind, name }] of inputs.entries()) {
          const x = at[i] ?? 0;
          const thread = threads[name];
          if (kind === 'thread' && thread) Object.assign(moved, pitchScope(name, thread, x));
          else for (const own of names[i] ?? []) moved[own] = x;
        }
        return result(moved);
      };
    },
  };
};

/** A result that is worked from all numbers of a set at once, as a figure’s are. */
export const ofNumbers = (
  numbers: Numbers,
  inputs: readonly Input[],
  says: string,
  at: (numbers: Numbers) => Found,
): Question => {
  const { threads } = numbers;
  const withThread = (from: Numbers, name: string, thread: Thread): Numbers => ({
    ...from,
    threads: { ...from.threads, [name]: thread },
  });
  const withPitch = (from: Numbers, name: string, P: number): Numbers => {
    const present = from.threads[name];
    return present ? withThread(from, name, ofPitch(present, P)) : from;
  };
  const moved = (name: string): readonly string[] => [
    name,
    ...followersOf(name, (choice) => numbers.choices[choice]).map(({ follower }) => follower),
  ];
  const withValue = (from: Numbers, name: string, x: number): Numbers => ({
    ...from,
    values: { ...from.values, ...Object.fromEntries(moved(name).map((own) => [own, x])) },
  });
  return {
    numbers,
    says,
    inputs,
    ofQuantity:
      ({ name }) =>
      (x) =>
        at(withValue(numbers, name, x)),
    ofThread: ({ name }) => {
      const bare = threads[name]?.toleranceClass === undefined && threads[name]?.measured === undefined;
      return {
        byHand: true,
        byPitch: bare,
        at: (thread) => at(withThread(numbers, name, thread)),
        atPitch: (P) => at(withPitch(numbers, name, P)),
      };
    },
    ofChoice:
      ({ name }) =>
      (option) =>
        at({ ...numbers, choices: { ...numbers.choices, [name]: option } }),
    ofThreads: (a, b) => (A, B) => at(withThread(withThread(numbers, a.name, A), b.name, B)),
    ofSeveral: (several) => (xs) =>
      at(
        several.reduce(
          (from, { kind, name }, i) =>
            kind === 'thread'
              ? withPitch(from, name, xs[i] ?? 0)
              : isSymbol(name)
                ? withValue(from, name, xs[i] ?? 0)
                : from,
          numbers,
        ),
      ),
  };
};

const NONE = { threads: {}, values: {}, choices: {} } as const;

/** The scope with these symbols of a thread in it. */
const withOnly = (
  scope: Readonly<Record<string, number>>,
  symbols: readonly string[],
  part: Readonly<Record<string, number>>,
): Record<string, number> => {
  const changed = { ...scope };
  for (const symbol of symbols) {
    const value = part[symbol];
    if (value === undefined) delete changed[symbol];
    else changed[symbol] = value;
  }
  return changed;
};
