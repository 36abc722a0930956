/** The sentence of every refusal, by its code: what was read, what is allowed, how to mend it. */
import type { RefusalWords } from '../refusal-words.ts';
import { FIGURES_B } from './refusals/figures-b.ts';

export const REFUSALS: RefusalWords = {
  said: ({ text }) => text,
  ...FIGURES_B,
};
