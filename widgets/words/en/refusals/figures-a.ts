/** Why a figure can’t be drawn, for the figures from ball-and-seat to hand-force. */
import type { RefusalWords } from '../../refusal-words.ts';

export const FIGURES_A = {
  'design-that-moves-nothing': () =>
    'The two leads are equal, so this design does not move what it carries: choose threads whose leads differ.',
  'lengths-of-no-one-scale': () => 'These lengths can’t be drawn to one scale: bring them nearer to each other.',
} satisfies Partial<RefusalWords>;
