/** The sentence of every refusal, by its code: what was read, what is allowed, how to mend it. */
import type { Bad } from '../../engine/index.ts';
import type { RefusalWords } from '../refusal-words.ts';
import { ADJUSTER } from './refusals/adjuster.ts';

const reason = ({ code, values }: Bad): string => (REFUSALS[code] as (values: unknown) => string)(values);

export const REFUSALS: RefusalWords = {
  said: ({ text }) => text,
  ...ADJUSTER(reason),
};
