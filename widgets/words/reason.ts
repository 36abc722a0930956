/** From a refusal to the sentence that a reader reads. */
import { REFUSALS } from '#words/refusals.ts';
import type { Bad } from '../engine/index.ts';
import type { Behind } from './refusal-words.ts';

/** One sentence: what was read, what is allowed, how to mend it. */
export const reasonOf = ({ code, values }: Bad): string =>
  (REFUSALS[code] as (values: unknown, behind: Behind) => string)(values, reasonOf);
