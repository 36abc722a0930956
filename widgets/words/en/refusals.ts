/** The sentence of every refusal, by its code: what was read, what is allowed, how to mend it. */
import type { RefusalWords } from '../refusal-words.ts';

export const REFUSALS: RefusalWords = {
  said: ({ text }) => text,
};
