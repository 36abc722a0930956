/** One item of an exercise, drawn from a seed. */
import { draws, type Exercise, type Item, itemAt, picksAt, sizesOf } from './exercise.ts';
import { pick, stateOf } from './seed.ts';

const TRIES = 200;

/**
 * The item that these words give, for ever. Options that make no item are drawn again from the same stream; so are
 * those in `used`, by their picks joined with commas, while others can be had.
 */
export const drawItem = (exercise: Exercise, words: readonly string[], used: ReadonlySet<string> = new Set()): Item => {
  const state = stateOf(words);
  let spare: Item | undefined;
  for (let i = 0; i < TRIES; i++) {
    const picks = sizesOf(exercise).map((size) => pick(state, size));
    const item = itemAt(exercise, picks);
    if (!item.ok) continue;
    if (!used.has(picks.join(','))) return item.value;
    spare ??= item.value;
  }
  // Nearly every draw is refused only where the press has refused the exercise already.
  for (let i = 0; spare === undefined && i < draws(exercise); i++) {
    const item = itemAt(exercise, picksAt(exercise, i));
    if (item.ok) spare = item.value;
  }
  if (!spare) throw new Error(`The exercise “${exercise.id}” has no item.`);
  return spare;
};
