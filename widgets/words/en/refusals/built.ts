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

const LOCKS: typeof TIPS = {
  ring: 'under the base: push less',
  A: 'in thread A: grease it, or take a finer thread',
  C: 'in thread C: grease it, or take a finer thread',
  guide: 'in the guide: make it longer or smoother, or load it nearer the axis',
  key: 'at the key: make it smoother, or move the key further from the axis',
};

const UNSETTLED: typeof TIPS = {
  ring: 'under the base: make its ring wider, or push less',
  A: 'in thread A: give it more clearance or more engagement',
  C: 'in thread C: give it more clearance or more engagement',
  guide: 'in the guide: give it more clearance',
  key: 'at the key: move it further from the axis',
};

export const BUILT = {
  'built-no-clearance': ({ thread, clearance }) =>
    `Thread ${thread} has a clearance of ${say(1000 * clearance)} µm with its coat, so it does not go together: choose a thinner coat, or a larger nut.`,
  'built-lead-eats-clearance': ({ thread, deviation, play }) =>
    `Thread ${thread} is off its lead by ${say(1000 * deviation)} µm over the engagement, more than its play of ${say(1000 * play)} µm, so it does not screw in so far: engage less of it, or cut one part again.`,
  'built-number-outside': ({ what, value }) =>
    `The jack can’t be worked with ${what} = ${asRead(value)}: give a size or a force that a part can have.`,
  'built-without-lock': () =>
    'Nothing keeps the carried part from turning, so it goes round with the hand: give the lock a stiffness above 0.',
  'built-none-together': ({ count }) =>
    `None of ${count} assemblies drawn from these errors came to rest: make the errors smaller, or push less.`,
  'built-threads-overlap': ({ lower, upper }) =>
    `Thread A ends ${say(lower)} mm above the bench and thread C begins at ${say(upper)} mm, inside it, so the parts do not go together: put thread C higher, or engage less of one.`,
  'built-tip-inside': ({ tip, least }) =>
    `The tip at ${say(tip)} mm would stand inside thread C, which ends ${say(least)} mm above the bench: put the tip higher, or engage less of thread C.`,
  'built-lock-winds-up': ({ turns }) =>
    `After ${say(turns)} turns the springs of the lock are wound up by more than a radian, and the carried part goes round with the hand: make them stiffer, or put them further from the axis.`,
  'built-push-tips': ({ joint, turns }) => `After ${say(turns)} turns ${TIPS[joint]}.`,
  'built-does-not-settle': ({ joint, turns }) =>
    `After ${say(turns)} turns no place of rest was found. The forces are largest ${UNSETTLED[joint]}.`,
  'built-friction-locks': ({ joint, turns }) =>
    `After ${say(turns)} turns friction locks the jack, most of it ${LOCKS[joint]}.`,
} satisfies Partial<RefusalWords>;
