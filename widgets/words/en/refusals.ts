/** The sentence of every refusal, by its code: what was read, what is allowed, how to mend it. */
import type { RefusalWords } from '../refusal-words.ts';
import { FORCE_REFUSALS } from './refusals/force.ts';
import { PLAY_REFUSALS } from './refusals/play.ts';

export const REFUSALS: RefusalWords = {
  said: ({ text }) => text,
  ...FORCE_REFUSALS,
  ...PLAY_REFUSALS,
};
