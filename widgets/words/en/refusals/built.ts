/** Refusals of the jack as built: parts that do not go together, what tips, what locks, what can’t be solved. */
import { asRead, type Refusals, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const TIPS: Readonly<Record<Refusals['built-push-tips']['joint'], string>> = {
  ring: 'the base tips on its ring: make the ring wider, or lower the push',
  A: 'the turned part tips in thread A: engage more thread, or lower the push',
  C: 'the carried part tips in thread C: engage more thread, or give it a guide',
  guide: 'the carried part tips in its guide: make the guide longer',
  key: 'the carried part turns out of its key: make the key stiffer',
};

export const BUILT = {
  'built-no-clearance': ({ thread, clearance }) =>
    `Thread ${thread} has a clearance of ${say(1000 * clearance)} µm with its coat, so it does not go together: choose a thinner coat, or a larger nut.`,
  'built-lead-eats-clearance': ({ thread, deviation, play }) =>
    `Thread ${thread} is off its lead by ${say(1000 * deviation)} µm over the engagement, more than its play of ${say(1000 * play)} µm, so it does not screw in so far: engage less of it, or cut one part again.`,
  'built-number-outside': ({ what, value }) =>
    `The jack can’t be worked with ${what} = ${asRead(value)}: give a size or a force that a part can have.`,
  'jack-upside-down': () => 'The heights go upwards from thread A to thread C to the tip: give them in that order.',
  'built-without-lock': () =>
    'Nothing keeps the carried part from turning, so it goes round with the hand: give the lock a stiffness above 0.',
  'built-none-together': ({ count }) =>
    `None of ${count} assemblies drawn from these errors came to rest: make the errors smaller, or push less.`,
  'built-push-tips': ({ joint, turns }) => `After ${say(turns)} turns ${TIPS[joint]}.`,
  'built-does-not-settle': ({ turns }) =>
    `After ${say(turns)} turns no place of rest was found: the parts may be far too soft or too stiff for one another. Change the part that was changed last.`,
  'built-friction-locks': ({ turns }) =>
    `After ${say(turns)} turns friction alone could hold the parts, so where they stand is not known: make the guide longer or its friction smaller.`,
} satisfies Partial<RefusalWords>;
