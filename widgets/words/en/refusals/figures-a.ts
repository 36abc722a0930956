/** Why a figure can’t be drawn, for the figures from ball-and-seat to hand-force. */
import { quoted } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const FIGURES_A = {
  'sheet-of-one-thread': ({ part }) =>
    `This sheet is for two threads in series, and the ${part} described is a plain screw with one: add a carried part with a second thread, or see its motion and stops in the figure of the parts.`,
  'design-that-moves-nothing': () =>
    'The two leads are equal, so this design does not move what it carries: choose threads whose leads differ.',
  'lengths-of-no-one-scale': () => 'These lengths can’t be drawn to one scale: make them less different.',
  'nothing-to-divide': () =>
    'The two leads are equal, so a turn does not move the carried part and there is nothing to divide: choose threads whose leads differ.',
  'step-of-nothing': () =>
    'The two leads are equal, so a step moves nothing and cannot be a measure: choose threads whose leads differ.',
  'holding-below-sliding': ({ holds, slides }) =>
    `The coefficient of friction at rest is ${holds}, below the ${slides} of sliding, so nothing sticks: give at least ${slides}.`,
  'file-too-long': ({ name, bytes, most }) =>
    `${quoted(name)} has ${bytes} bytes; at most ${most} are taken: leave some readings out.`,
  'file-unread': ({ name }) => `${quoted(name)} could not be read; choose it again, or paste the readings instead.`,
} satisfies Partial<RefusalWords>;
