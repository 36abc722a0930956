/** The sentence of every refusal, by its code: what was read, what is allowed, how to mend it. */
import type { RefusalWords } from '../refusal-words.ts';
import { DESIGNATION } from './refusals/designation.ts';
import { INPUT } from './refusals/input.ts';
import { TYPED_TABLES } from './refusals/typed-tables.ts';

export const REFUSALS: RefusalWords = {
  ...DESIGNATION,
  ...INPUT,
  ...TYPED_TABLES,
  said: ({ text }) => text,
};
