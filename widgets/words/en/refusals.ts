/** The sentence of every refusal, by its code: what was read, what is allowed, how to mend it. */
import type { RefusalWords } from '../refusal-words.ts';
import { ASSEMBLY } from './refusals/assembly.ts';
import { CLIENT } from './refusals/client.ts';
import { DESIGNATION } from './refusals/designation.ts';
import { EXERCISES } from './refusals/exercises.ts';
import { INPUT } from './refusals/input.ts';
import { SITE } from './refusals/site.ts';
import { TYPED_TABLES } from './refusals/typed-tables.ts';

export const REFUSALS: RefusalWords = {
  ...ASSEMBLY,
  ...CLIENT,
  ...DESIGNATION,
  ...EXERCISES,
  ...INPUT,
  ...SITE,
  ...TYPED_TABLES,
  said: ({ text }) => text,
};
