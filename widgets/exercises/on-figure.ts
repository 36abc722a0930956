/** Whether a figure can show the situation of an exercise: it takes every number that was drawn. */
import { type Input, readInput } from '../assembly/numbers.ts';
import type { Exercise } from './exercise.ts';

/** By the name of its field the text of each number, or undefined where the figure lacks one or its field would refuse it. */
export const onFigure = (
  { pools }: Exercise,
  picks: readonly number[],
  fields: readonly Input[],
): ReadonlyMap<string, string> | undefined => {
  const texts = new Map<string, string>();
  for (const [i, { input, options }] of pools.entries()) {
    const field = fields.find(({ name }) => name === input.name);
    const text = options[picks[i] ?? 0] ?? '';
    if (field && readInput(field, text, 'metric').ok) texts.set(input.name, text);
    // A number that is always the same is part of the question; one that was drawn must be seen.
    else if (options.length > 1) return undefined;
  }
  return texts.size > 0 ? texts : undefined;
};
