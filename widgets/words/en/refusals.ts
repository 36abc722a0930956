/** The sentence of every refusal, by its code: what was read, what is allowed, how to mend it. */
import type { Bad } from '../../engine/index.ts';
import type { RefusalWords } from '../refusal-words.ts';
import { ADJUSTER } from './refusals/adjuster.ts';
import { FIGURES_A } from './refusals/figures-a.ts';
import { FIGURES_B } from './refusals/figures-b.ts';

const reason = ({ code, values }: Bad): string => (REFUSALS[code] as (values: unknown) => string)(values);

export const REFUSALS: RefusalWords = {
  said: ({ text }) => text,
  ...FIGURES_A,
  ...ADJUSTER(reason),
  ...FIGURES_B,
};
