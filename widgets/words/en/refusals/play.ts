/** Refusals of the room of play: clearances, batches and the simulator. */
import { asRead, type Refusals, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

type Settings<K extends 'simulated-thread-range' | 'simulated-range'> = Readonly<
  Record<Refusals[K]['what'], readonly [name: string, unit: string]>
>;

const OF_A_THREAD: Settings<'simulated-thread-range'> = {
  lead: ['Lead', ' mm'],
  play: ['Axial play', ' mm'],
  'lead error': ['Relative lead error', ''],
  'periodic error': ['Periodic error', ' mm'],
  phase: ['Phase of the periodic error', ' turns'],
};

const OF_ALL: Settings<'simulated-range'> = {
  'load on turned': ['Load on the turned part', ' N'],
  'load on carried': ['Load on the carried part', ' N'],
  'drag on turned': ['Drag on the turned part', ' N'],
  'drag on carried': ['Drag on the carried part', ' N'],
  'lock slip': ['Lock slip, the share of the rotation that the carried part takes', ''],
  'wind-up': ['Wind-up of the lock', ' rad'],
  stick: ['Lost motion before slipping', ' mm'],
  slip: ['Lost motion after slipping, which can’t be more than before it', ' mm'],
  noise: ['Noise of the indicator', ' mm'],
};

interface Range {
  readonly value: number;
  readonly min: number;
  readonly max: number;
}
const outside = (name: string, { value, min, max }: Range, unit: string): string =>
  `${name}: read ${asRead(value)}; give a value from ${asRead(min)} to ${asRead(max)}${unit}.`;

export const PLAY_REFUSALS = {
  'thread-interference': ({ clearance, thread }) =>
    `${thread === undefined ? 'The thread' : `Thread ${thread}`} has a clearance of ${say(clearance)} mm, which is interference: the screw is larger than the nut and does not go in, so there is no play; give a clearance of 0 mm or more.`,
  'coat-over-clearance': ({ coat, clearance }) =>
    `A coat of ${say(1000 * coat)} µm takes ${say(4000 * coat)} µm of pitch diameter, more than the clearance of ${say(1000 * clearance)} µm, so the parts do not go together: give a thinner coat or more clearance.`,
  'lead-over-clearance': ({ deviation, clearance }) =>
    `A lead deviation of ${say(1000 * Math.abs(deviation))} µm takes ${say(1732.0508 * Math.abs(deviation), 4)} µm of pitch diameter, and the clearance is only ${say(1000 * clearance)} µm. The parts jam before they are screwed in so far: engage less of the thread or give more clearance.`,
  'screw-off-middle': ({ off, most }) =>
    `The screw stands ${say(off)} mm off the middle, more than its flanks allow: with this clearance they touch at ${say(most)} mm; give that or less.`,
  'tilt-no-small-angle': ({ tilt }) =>
    `With so much clearance over so short an engagement the angle would come out as ${say((tilt * 180) / Math.PI, 3)}°, which is not a small angle and not a fit: give less clearance or a longer engagement.`,
  'tilt-of-nought': () => 'A tilt of zero has no small-angle error: give an angle above 0°.',
  'play-never-taken-up': () =>
    'The two leads are equal, so no number of turns takes up the play: choose threads whose leads differ.',
  'push-without-lever': () =>
    'A push at the middle of the engagement has no lever to tip the screw: give a height above 0 mm.',
  'batch-of-threads': ({ count }) => `Read ${count} threads; a batch is of one thread or of the two of a pair.`,
  'batch-count': ({ count, most }) =>
    `Number of assemblies: read ${asRead(count)}; give a whole number from 1 to ${most}, more would change no figure that can be measured.`,
  'batch-capability': ({ Cp }) =>
    `Capability Cp: read ${asRead(Cp)}; give a value from 0.1 to 10, because the spread is the zone divided by 6 Cp and a capability of zero is a spread without bound.`,
  'batch-bars': ({ bars }) => `Bars of the histogram: read ${asRead(bars)}; give a whole number from 1 to 1000.`,
  'batch-share': ({ share }) =>
    `Share of the batch: read ${asRead(share)}; give a number from 0 to 1, for example 0.95.`,
  'batch-limit': ({ thread, value }) =>
    `Thread ${thread} of the batch: read ${asRead(value)} as a limit of pitch diameter; give a value from 0.1 mm to 400 mm.`,
  'batch-limits-crossed': ({ thread }) =>
    `Thread ${thread} of the batch: a lower limit of pitch diameter is above its upper limit; give the smaller value as the lower one.`,
  'batch-all-interfere': ({ thread, least }) =>
    `Thread ${thread} of the batch: every nut is smaller than every screw, which is interference throughout, so nothing goes together and there is no play; give an internal pitch diameter above ${least} mm.`,
  'simulated-hand': ({ thread, h }) =>
    `Hand of thread ${thread}: read ${asRead(h)}; it is 1 for a right-hand thread and −1 for a left-hand one.`,
  'simulated-negative-play': ({ thread, play }) =>
    `Axial play of thread ${thread}: read ${asRead(play)} mm; a negative play is interference, which does not turn at all: give 0 mm or more.`,
  'simulated-thread-range': ({ thread, what, ...range }) => {
    const [name, unit] = OF_A_THREAD[what];
    return outside(`${name} of thread ${thread}`, range, unit);
  },
  'simulated-range': ({ what, ...range }) => {
    const [name, unit] = OF_ALL[what];
    return outside(name, range, unit);
  },
  'too-many-moves': ({ count, most }) =>
    `Read ${count} moves; at most ${most} are run, already a thousand to each column of a plot: take coarser moves.`,
  'move-turns': ({ move, turns, most }) =>
    `Move ${move}: read ${asRead(turns)} turns; a move turns by a number from −${most} to ${most}.`,
  'move-load': ({ move, load, most }) =>
    `Move ${move}: read a load of ${asRead(load)} N; a load is a number from −${most} to ${most} N.`,
  'moves-too-long': ({ turns, most, pieces }) =>
    `Read moves of ${Math.round(turns)} turns in all; with a periodic error at most ${most} are run, because each turn is worked in ${pieces} pieces: take fewer turns.`,
} satisfies Partial<RefusalWords>;
