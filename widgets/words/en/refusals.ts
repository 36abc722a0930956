/** The sentence of every refusal, by its code: what was read, what is allowed, how to mend it. */
import type { RefusalWords } from '../refusal-words.ts';
import { FIGURES_A } from './refusals/figures-a.ts';

export const REFUSALS: RefusalWords = {
  ...FIGURES_A,
  said: ({ text }) => text,
};
