/** The sentence of every refusal, by its code: what was read, what is allowed, how to mend it. */
import type { RefusalWords } from '../refusal-words.ts';
import { KERNEL } from './refusals/kernel.ts';
import { NUMERICS } from './refusals/numerics.ts';
import { PAIR } from './refusals/pair.ts';
import { THREAD } from './refusals/thread.ts';

export const REFUSALS: RefusalWords = {
  said: ({ text }) => text,
  ...KERNEL,
  ...NUMERICS,
  ...PAIR,
  ...THREAD,
};
