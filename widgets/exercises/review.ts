/** Which exercise comes next in a mixed review. */
import type { Bank } from './bank.ts';
import type { Exercise } from './exercise.ts';

/**
 * Among the exercises that have been solved least often, one of another chapter than the last, taken by a number from 0 to
 * 1. Mixing asks which idea fits, which a row of like exercises does not (Rohrer & Taylor 2007, from memory).
 */
export const bankOrder = (
  bank: Bank,
  solved: (id: string) => number,
  lastChapter: string,
  at: number,
): { readonly slug: string; readonly title: string; readonly exercise: Exercise } => {
  const all = bank.chapters.flatMap(({ slug, title, exercises }) =>
    exercises.map((exercise) => ({ slug, title, exercise })),
  );
  const others = all.filter((e) => e.slug !== lastChapter);
  const from = others.length > 0 ? others : all;
  const least = Math.min(...from.map((e) => solved(e.exercise.id)));
  const rarest = from.filter((e) => solved(e.exercise.id) === least);
  const chosen = rarest[Math.min(rarest.length - 1, Math.floor(at * rarest.length))];
  if (!chosen) throw new Error('The bank is empty.');
  return chosen;
};
