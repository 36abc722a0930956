/** Refusals of the figures from lead-error to vee-coupling. */
import type { RefusalWords } from '../../refusal-words.ts';

export const FIGURES_B = {
  'round-readings': ({ round, given, places }) =>
    `Round ${round} has ${given} ${given === 1 ? 'reading' : 'readings'} for ${places} places; give one for each place, in the same order, or take that row away.`,
  'turns-beyond-drawing': ({ read, most }) => `Read ${read} turns; the drawing has room for ${most} each way.`,
  'ways-unlike-hands': () =>
    'The two threads of the pair are of opposite hands, so their leads add and the motion is coarse: give both the same hand.',
  'loop-loses-too-much': ({ turns }) =>
    `This pair would lose ${turns} turns on reversal, more than the figure can follow; take threads whose leads differ by more.`,
  'nothing-to-round': ({ A, C }) =>
    `${A} and ${C} have the same lead to the last digit, so there is nothing to round: choose threads whose leads differ.`,
  'batch-of-equal-leads': () =>
    'The two leads are equal, so no number of turns takes up the play: choose threads whose leads differ.',
  'nothing-goes-together': () =>
    'Nothing drawn goes together: every screw had a nut smaller than itself. Choose classes with more clearance.',
  'force-needed-below-nought': ({ needed }) => `Read ${needed} as the force that must be left; give zero or more.`,
  'spring-too-weak-when-new': ({ start, needed }) =>
    `The spring starts with ${start}, below the ${needed} that must be left, so the flanks are not seated even when it is new: give a stronger spring.`,
  'part-without-weight': () =>
    'The part has no weight here, so nothing presses the balls into their vees: give one above 0 N.',
} satisfies Partial<RefusalWords>;
