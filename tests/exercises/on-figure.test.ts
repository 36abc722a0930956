/** Exercises on the live figures of their chapters: at least half of them can be seen there, with what was drawn in its fields. */
import { describe, expect, it } from 'vitest';
import { readInput } from '../../widgets/assembly/numbers.ts';
import { drawItem } from '../../widgets/exercises/draw.ts';
import type { Exercise } from '../../widgets/exercises/exercise.ts';
import { onFigure } from '../../widgets/exercises/on-figure.ts';
import { CHAPTERS, press } from '../support/chapters.ts';

const CASES = CHAPTERS.flatMap(({ file, text }) => {
  const { html, model } = press(text, file);
  const shown = [...html.matchAll(/<figure[^>]*data-set="([^"]*)"/g)].map(([, set]) => set);
  const sets = model.sets.filter(({ id }) => shown.includes(id));
  return model.exercises.map((exercise) => ({ exercise, sets }));
});
const seenOf = (exercise: Exercise, fields: (typeof CASES)[number]['sets'][number]['inputs']) =>
  onFigure(exercise, drawItem(exercise, ['figure']).picks, fields, exercise.drawer?.stacks[1]);

describe('exercises on a figure of their page', () => {
  it('are half of all or more', () => {
    const seen = CASES.filter(({ exercise, sets }) => sets.some(({ inputs }) => seenOf(exercise, inputs)));
    expect(seen.length * 2).toBeGreaterThanOrEqual(CASES.length);
  });

  it('give each field a text that it takes, and tell what has none', () => {
    for (const { exercise, sets } of CASES)
      for (const { inputs } of sets) {
        const seen = seenOf(exercise, inputs);
        if (!seen) continue;
        for (const [name, text] of seen.texts) {
          const field = inputs.find((one) => one.name === name);
          expect(field && readInput(field, text, 'metric').ok, `${exercise.id}: ${name} = ${text}`).toBe(true);
        }
        for (const words of seen.without) expect(words, exercise.id).toMatch(/^\S.*: \S/);
      }
  });

  it('of a drawer wait for a stack to be chosen', () => {
    const drawer = CASES.find(({ exercise }) => exercise.id === 'stroke-drawer');
    const [picks, inputs] = [[0, 0, 0], drawer?.sets.flatMap((set) => set.inputs) ?? []];
    expect(drawer && onFigure(drawer.exercise, picks, inputs)).toBeUndefined();
  });
});
