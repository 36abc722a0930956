/** Refusals of the figures from lead-error to vee-coupling. */
import type { RefusalWords } from '../../refusal-words.ts';

export const FIGURES_B = {
  'round-readings': ({ round, given, places }) =>
    `Round ${round} has ${given} ${given === 1 ? 'reading' : 'readings'} for ${places} places; give one for each place, in the same order, or take that row away.`,
  'turns-beyond-drawing': ({ read, most }) => `Read ${read} turns; the drawing has room for ${most} each way.`,
  'ways-unlike-hands': () =>
    'The two threads of the pair are of unlike hands, so their leads add and the motion is coarse: give both the same hand.',
} satisfies Partial<RefusalWords>;
