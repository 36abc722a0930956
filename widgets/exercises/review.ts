/** Which exercise comes next in a mixed review. */
import type { Bank } from './bank.ts';
import type { Exercise } from './exercise.ts';

/**
 * Those that are due first; else among the exercises that have been solved least often. One of another chapter than the last, taken by a number
 * from 0 to 1. Mixing asks which idea fits, which a row of like exercises does not (Rohrer & Taylor 2007, from memory).
 */
export const bankOrder = (
  bank: Bank,
  solved: (id: string) => number,
  lastChapter: string,
  at: number,
  due: readonly string[] = [],
): { readonly slug: string; readonly title: string; readonly exercise: Exercise } => {
  const all = bank.chapters.flatMap(({ slug, title, exercises }) =>
    exercises.map((exercise) => ({ slug, title, exercise })),
  );
  const others = all.filter((e) => e.slug !== lastChapter);
  const rest = others.length > 0 ? others : all;
  const waiting = rest.filter((e) => due.includes(e.exercise.id));
  const from = waiting.length > 0 ? waiting : rest;
  const least = Math.min(...from.map((e) => solved(e.exercise.id)));
  const rarest = from.filter((e) => solved(e.exercise.id) === least);
  const chosen = rarest[Math.min(rarest.length - 1, Math.floor(at * rarest.length))];
  if (!chosen) throw new Error('The bank is empty.');
  return chosen;
};
