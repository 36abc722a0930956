/**
 * What of an exercise a figure can show: its threads, or an adjuster made of them, and the numbers that have a field there. Of a drawer it is the
 * stack that a reader chose. A number without a field is told, since half of what was drawn must be seen.
 */
import { adjusterWords } from '../assembly/adjuster/from-numbers.ts';
import { type Input, mayBeNone, readInput } from '../assembly/numbers.ts';
import { symbolFact, type Thread } from '../engine/index.ts';
import { NO_PARTS } from '../input/texts.ts';
import type { Exercise } from './exercise.ts';

export interface Seen {
  /** By the name of its field the text of each. */
  readonly texts: ReadonlyMap<string, string>;
  /** What was drawn and has no field there, in words. */
  readonly without: readonly string[];
}

/** A screw in its block, where one thread is all there is. */
const screwWords = (thread: string): string => `base = tapped block ${thread}\nturned = screw ${thread}`;

export const onFigure = (
  { pools, drawer }: Exercise,
  picks: readonly number[],
  fields: readonly Input[],
  stack?: readonly string[],
): Seen | undefined => {
  if (drawer && !stack) return undefined;
  const given = [
    ...pools.map(({ input, options }, i) => ({ input, text: options[picks[i] ?? 0] ?? '', drawn: options.length > 1 })),
    ...(drawer?.inputs ?? []).map((input, i) => ({ input, text: stack?.[i] ?? '', drawn: true })),
  ];
  const texts = new Map<string, string>();
  const adjuster = fields.find(({ name }) => name === 'adjuster');
  const taken = new Set<string>();
  for (const { input, text } of given) {
    const field = fields.find(({ name }) => name === input.name);
    if (!field || !readInput(field, text, 'metric').ok) continue;
    texts.set(input.name, text);
    taken.add(input.name);
  }
  const threads = given.filter(({ input }) => input.kind === 'thread');
  const untaken = threads.filter(({ input }) => !taken.has(input.name));
  if (adjuster && untaken.length > 0) {
    // Parts rule over threads, so they are made of all of them.
    const words = partsOf(threads);
    if (words === undefined || !readInput(adjuster, words, 'metric').ok) return undefined;
    texts.set('adjuster', words);
    for (const { input } of threads) taken.add(input.name);
  } else if (adjuster && threads.length > 0 && mayBeNone(adjuster)) texts.set('adjuster', NO_PARTS);
  const drawn = given.filter((one) => one.drawn);
  const seen = drawn.filter(({ input }) => taken.has(input.name));
  if (seen.length === 0 || seen.length * 2 < drawn.length) return undefined;
  if (threads.some(({ input, drawn: was }) => was && !taken.has(input.name))) return undefined;
  return {
    texts,
    without: drawn.flatMap(({ input, text }) =>
      taken.has(input.name) || input.kind !== 'quantity' ? [] : [`${symbolFact(input.name).says}: ${text}`],
    ),
  };
};

const partsOf = (threads: readonly { readonly input: Input; readonly text: string }[]): string | undefined => {
  const read = (name: string): Thread | undefined => {
    const one = threads.find(({ input }) => input.name === name);
    const value = one && readInput(one.input, one.text, 'metric');
    return value?.ok && typeof value.value === 'object' ? value.value : undefined;
  };
  const [A, C, lone] = [read('A'), read('C'), read('thread') ?? read('A')];
  if (A && C) return adjusterWords({ threads: { A, C }, choices: { arrangement: 'in line' } });
  return lone && threads.length === 1 ? screwWords(lone.designation) : undefined;
};
