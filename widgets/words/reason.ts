/** From a refusal to the sentence that a reader reads. */
import { REFUSALS } from '#words/refusals.ts';
import type { Bad } from '../engine/index.ts';

/** One sentence: what was read, what is allowed, how to mend it. */
export const reasonOf = ({ code, values }: Bad): string => (REFUSALS[code] as (values: unknown) => string)(values);
