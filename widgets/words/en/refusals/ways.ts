/** Refusals of the room of the other ways to the same motion. */
import { asRead, type Refusals, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const SIZES: Readonly<Record<Refusals['wanted-size']['what'], string>> = {
  resolution: 'Resolution',
  stroke: 'Stroke',
  height: 'Height',
  'short arm': 'Short arm',
  seat: 'Seat of the wedge',
  engagement: 'Engagement',
  ball: 'Radius of the balls',
};

export const WAYS_REFUSALS = {
  'hand-angle-of-nought': () => 'The repeatable hand angle is above 0°: give one such as 1.5°.',
  'balls-collide': ({ radius, spacing }) =>
    `Balls of ${say(radius)} mm radius can’t have their centres ${say(spacing)} mm apart: give at least ${say(2 * radius)} mm, where they touch.`,
  'ball-falls-between-balls': ({ spacing, most }) =>
    `The ball falls through between balls ${say(spacing)} mm apart: keep them below ${say(most)} mm.`,
  'wanted-size': ({ what, value, most }) =>
    `${SIZES[what]}: read ${asRead(value)} mm; give a value above 0 mm and up to ${most} mm.`,
  'hand-angle': ({ angle }) =>
    `Repeatable hand angle: read ${say((angle * 180) / Math.PI)}°; give one above 0°, such as 1.5°.`,
  'price-of-way': ({ way, price }) =>
    `Price of the ${way}: read ${asRead(price)}; give a number from 0, or leave it out.`,
  'pair-of-equal-leads': () =>
    'The two leads of the pair are equal, so it moves nothing: choose threads whose leads differ.',
  'wedge-jams': () =>
    'The slope and twice the friction angle together reach a right angle, so the wedge jams and no push drives it: take a flatter slope or less friction.',
  'height-of-top-ball': () =>
    'The top centre stands above the others, and no higher than both radii together: give a height between the two.',
  'nothing-bends': () =>
    'The load is over the screw or beyond it, so no part of this bar bends between them: give a short arm below the long one.',
  'load-past-screw': () =>
    'The load is beyond the screw, where it would lift the bar off its pivot: give a motion of the tip that is no larger than that of the drive, at most 1.',
  'ways-without-load': () =>
    'Load along the axis: read 0 N, and without a load there is no effort to compare: give one such as 50 N.',
} satisfies Partial<RefusalWords>;
