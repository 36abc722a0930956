/** Refusals of the room of forces: effort, preload and lock. */
import { asRead, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';
import { PART_WORDS } from '../force.ts';

export const FORCE_REFUSALS = {
  'thread-jams': () =>
    'Lead angle and friction angle together reach a right angle, so the thread jams and no torque turns it: take a finer lead or less friction.',
  'thread-along-axis': () => 'The thread stands almost along the axis, so its torque has no bound: take a finer lead.',
  'torque-below-frictionless': ({ torque, frictionless }) =>
    `A torque of ${say(torque)} N·mm is not above the frictionless ${say(frictionless)} N·mm, so there is no efficiency to state: use the torque that moves the load against itself.`,
  'no-thread-efficiency': () =>
    'A thread needs a lead angle above zero and, with the friction angle, below a right angle: give one such as 3°.',
  'collar-without-ring': () =>
    'A ring needs an outer diameter above zero and an inner one no larger: give, for example, 9 mm and 0 mm for a flat tip.',
  'nothing-sticks': () =>
    'The torque that starts it is below the torque that keeps it turning, so nothing sticks: give a starting torque at least as large.',
  'jump-of-turns': () =>
    'Such a jump would be thousands of turns: give a stiffer hand and key or torques that differ less.',
  'effort-thread': ({ thread, reason }, reasonOf) => `Thread ${thread}: ${reasonOf(reason)}`,
  'effort-thread-jams': ({ thread }) =>
    `Thread ${thread}: lead angle and friction angle together reach a right angle, so it jams: take a finer lead or less friction.`,
  'effort-load': ({ load }) => `Load along the axis: read ${asRead(load)}; give a value from −100000 N to 100000 N.`,
  'effort-without-load': () =>
    'Load along the axis: read 0 N, and with no load there is no effort to share out: give one such as 50 N.',
  'effort-collar': ({ torque }) =>
    `Torque under the collar or tip: read ${asRead(torque)}; give a value from 0 to 10000000 N·mm.`,
  'key-locks': ({ radius }) =>
    `A key ${say(radius)} mm from the axis rubs so hard that it holds the carried part whatever the hand does: move it further out, or make it smoother.`,
  'effort-equal-leads': () =>
    'The two leads are equal, so the carried part stands still and no turning moves the load: choose threads whose leads differ.',
  'springs-drive-part': () =>
    'The springs alone drive the part against its load: give the forces on the threads that the load leaves.',
  'plain-screw-jams': () =>
    'Lead angle and friction angle together reach a right angle, so the thread jams: take a finer lead or less friction.',
  'plain-screw-without-load': () =>
    'Load along the axis: read 0 N, and with no load there is no effort: give one such as 50 N.',
  'no-uphill': () =>
    'The two leads are equal, so no turning lifts the load and there is no uphill: choose threads whose leads differ.',
  'slope-jams': () =>
    'Slope and friction angle together reach a right angle, so the thread jams and no torque turns it: take a finer lead or less friction.',
  'load-without-torque': () =>
    'A load that takes no torque to raise says nothing about other loads: give a load and the torque above zero that raises it.',
  'torque-of-lowering': () => 'The torque is below zero, which lowers and does not push: give the torque of raising.',
  'no-spring-needed': ({ force }) =>
    `Weight and load alone seat the threads here (${say(force)} N needed from a spring), so no spring is needed.`,
  'preload-gone-in-life': () =>
    'By this law nothing of the preload would be left: ask for a shorter life or a smaller loss.',
  'stretch-alone-does': () =>
    'The stretch over the stroke alone gives more than is needed, so the spring may start without force: take a softer one.',
  'lock-gap': ({ gap, radius }) =>
    `A clearance of ${say(gap)} mm at a radius of ${say(radius)} mm holds nothing: keep it to half the radius at the most.`,
  'spring-without-pull': () =>
    'A spring without pull holds nothing by its pull: give the force with which it is stretched, above 0 N.',
  'lock-winds-up': () =>
    'The lock would wind up by more than half a turn, which is no lock: give a stiffer one or less torque.',
  'lock-equal-leads': () =>
    'The two leads are equal, so no turning corrects what the lock does: choose threads whose leads differ.',
  'spring-slack': ({ after }) =>
    `The spring would have to push where it can only pull: it has no force left after ${say(after)} mm, so give it more force at the start.`,
  'faces-part': ({ at, load }) =>
    `The faces separate at ${say(at)} N, below the load of ${say(load)} N: give more preload or less load.`,
  'preload-gone': () =>
    'By this law nothing of the preload would be left: ask for a shorter time or give a smaller share lost.',
  'no-such-spring': ({ spring, count }) => `Read spring ${spring} of ${count}: name one that is there.`,
  'second-reading-earlier': ({ first, second }) =>
    `The second reading, at ${say(second)} h, is not later than the first, at ${say(first)} h: give two readings at different times, the earlier first.`,
  'force-grew': ({ first, second }) =>
    `The force grew from ${say(first)} N to ${say(second)} N, and a relaxing spring only loses: check which reading came first.`,
  'nothing-to-relax': () => 'Both readings are 0 N, so there is nothing to relax: give readings of a loaded spring.',
  'relaxes-past-all': ({ share, t_0, first, second }) =>
    `Through these readings the law would lose ${say(100 * share, 3)} % per tenfold time, more than the 100 % there is. Its starting time of ${say(t_0)} h is too late for readings at ${say(first)} h and ${say(second)} h: give an earlier one, or check the readings.`,
  'preload-below-need': ({ preload, needed }) =>
    `A preload of ${say(preload)} N is below the ${say(needed)} N needed from the start: give a stronger spring.`,
  'weight-of-part': ({ part, weight }) =>
    `Weight of ${PART_WORDS[part]}: read ${asRead(weight)}; give a value from 0 N to 100000 N.`,
  'weight-along-axis': ({ share }) =>
    `Share of the weight along the axis: read ${asRead(share)}; it is 1 upright, 0 on its side, −1 upside down.`,
  'outside-load': ({ least, most }) =>
    `Outside load: read from ${asRead(least)} to ${asRead(most)}; give the least first, both from −100000 N to 100000 N, positive towards the base.`,
  'spring-on-one-part': ({ spring, part }) =>
    `Spring ${spring} has both ends on ${PART_WORDS[part]}, so it presses nothing: name two different parts.`,
  'spring-of-chain': ({ spring, reason }, reasonOf) => `Spring ${spring}: ${reasonOf(reason)}`,
} satisfies Partial<RefusalWords>;
