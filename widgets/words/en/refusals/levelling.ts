/** Refusals of the room of levelling: planes, feet and the coupling of three balls. */
import { asRead, listed, type Refusals, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const ONE: Readonly<Record<Refusals['too-few-for-plane']['what'], string>> = {
  points: 'point',
  readings: 'reading',
  feet: 'feet',
};

const numbers = (values: readonly number[]): string => values.map(asRead).join(', ');

export const LEVELLING_REFUSALS = {
  'net-lead-of-nought': () =>
    'The net lead is zero, so no number of turns moves the carried part: choose threads whose leads differ.',
  'places-too-near': () => 'The three places are less than 1 mm apart: set them as far apart as the part allows.',
  'places-in-line': () =>
    'The three places stand in a line, or so nearly that the tilt across it cannot be found: move one far off the line.',
  'too-few-for-plane': ({ count, what }) =>
    `Read ${count} ${count === 1 ? ONE[what] : what}; a plane needs three that are not in a line: add ${say(3 - count)} more.`,
  'place-past-bounds': ({ place, what, axis, value, most }) =>
    `Number ${place} of the ${what} has ${axis} ${asRead(value)}; give a number of millimetres from −${most} to ${most}.`,
  'plane-of-a-line': ({ count, what }) =>
    `The ${count} ${what} stand in a line, or so nearly that the tilt across it cannot be found: move one far off the line.`,
  'foot-lead': ({ foot, lead }) =>
    `Foot ${foot} has a net lead of ${asRead(lead)} mm a turn; it must differ from zero and be within 120 mm: choose threads whose leads differ.`,
  'foot-steps': ({ foot, steps, most }) =>
    `Foot ${foot} has ${asRead(steps)} steps per turn; give a whole number from 1 to ${most}, such as 6 for the flats of a hexagon.`,
  'no-such-foot': ({ foot, feet }) =>
    `There is no foot called ${foot} to keep; choose one of ${listed(feet)}, or keep the mean height.`,
  'slopes-wanted': ({ q, r, most }) =>
    `The slopes wanted are ${asRead(q)} along x and ${asRead(r)} along y; together they may be ${most} at most, which is 100 mm per metre.`,
  'plate-too-steep': ({ slope, most }) =>
    `The readings give a tilt of ${say(slope * 1e3, 3)} mm per metre; a plate on feet can have ${most * 1e3} at most: check whether you typed them in another unit.`,
  'steps-of-feet': ({ steps, feet }) =>
    `Read steps ${numbers(steps)} for ${feet} feet; give one number of steps for each foot, 0 where it was left alone.`,
  'weight-on-feet': ({ weight }) => `Read a weight of ${asRead(weight)} N; give one above zero and up to 10000000 N.`,
  'centre-of-gravity': ({ x, y }) =>
    `Read a centre of gravity at (${asRead(x)}, ${asRead(y)}); give two numbers of millimetres within 100000.`,
  'feet-would-lift': ({ x, y, lifting }) =>
    `With the weight at (${say(x)}, ${say(y)}) mm ${lifting.length === 1 ? 'foot' : 'feet'} ${listed(lifting.map((f) => f.name))} would lift, since ${listed(lifting.map((f) => `${say(f.load)} N`))} would be needed there: move the weight inside the triangle of the feet, or the feet outward.`,
  'feet-not-three': ({ count }) => `Read ${count} feet; a plate is levelled on exactly three: give three.`,
  'feet-called-alike': ({ names }) => `Two feet have the same name (${listed(names)}); give each a name of its own.`,
  'foot-past-its-travel': ({ foot, stands, most }) =>
    `Foot ${foot} stands ${stands === undefined ? 'nowhere' : `${say(stands)} turns`} from the middle of its stroke, and its threads give ${say(most)} turns either way: put it back within them, or give it longer threads.`,
  'turns-left-of-feet': ({ rooms, feet }) =>
    `Read turns left of ${rooms.map((r) => `${asRead(r.clockwise)} and ${asRead(r.anticlockwise)}`).join(', ')} for ${feet} feet; give each foot two counts that are not below zero.`,
  'coupling-loose': () =>
    'The part can still move a little with all six flanks touching, so the grooves do not hold it: point the grooves towards a common middle, with the balls far apart.',
  'coupling-load': ({ force, at }) =>
    `Read a load of (${numbers(force)}) N at (${numbers(at)}) mm; give numbers within 10000000.`,
  'coupling-without-load': () => 'No load was given; give at least the weight of the part and where it acts.',
  'balls-of-coupling': ({ count }) =>
    `Read ${count} balls; this coupling has exactly three, each in its vee: give three.`,
  'ball-of-coupling': ({ ball, centre, direction }) =>
    `Ball ${ball} stands at (${numbers(centre)}) mm with its groove along ${asRead(direction)} rad; give numbers of millimetres within 100000 and an angle within a few turns.`,
  'vee-of-coupling': ({ ball, halfAngle }) =>
    `The vee at ball ${ball} has a half-angle of ${say((halfAngle * 180) / Math.PI)}°; give one from 5° to 85°, such as 45°.`,
  'plate-weightless': () => 'A plate that weighs nothing does not swing: give its weight, with what stands on it.',
  'plate-foot-lifts': ({ foot, force }) =>
    `Foot ${foot} would have to carry ${say(force)} N, so it lifts and the plate has no rest to swing about: move the weight inside the feet.`,
} satisfies Partial<RefusalWords>;
