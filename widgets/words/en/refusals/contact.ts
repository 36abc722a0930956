/** Refusals of the room of contact: balls in seats, chains of parts, materials. */
import { asRead, quoted, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const CONTACT_REFUSALS = {
  'core-over-thread': ({ core, d }) =>
    `The core of ${say(core)} mm is thicker than the thread of ${say(d)} mm: give a core below it.`,
  'nothing-swings': () => 'Without a weight nothing swings: give a weight above 0 N.',
  'dent-out-of-range': ({ load, least, most }) =>
    `The formulas for a dent hold from ${say(least, 3)} N to ${say(most, 3)} N for this ball and metal, read ${say(load, 3)} N: take a load between them.`,
  'contact-too-wide': ({ across, radius }) =>
    `The contact would be ${say(across)} mm across on a ball of ${say(radius)} mm radius, far beyond the theory of small contacts: take less load or a larger ball.`,
  'vee-closed': () => 'A closed vee lets no ball in: give a half angle from 1° to 89°, 45° for a right-angled vee.',
  'vee-flat': () => 'A vee opened to 180° is a flat, with one contact and not two: use the ball on a flat.',
  'relative-radii': ({ Rx, Ry }) =>
    `Relative radii: read ${asRead(Rx)} mm and ${asRead(Ry)} mm; give both above 0 and up to 1000000 mm: a groove must be wider than the ball.`,
  'contact-is-a-line': () =>
    'One radius is over a million times the other, which is a line, not an ellipse: use the contact of a ring or a roller.',
  'contact-as-large-as-ball': () =>
    'The contact would be as large as the ball, far beyond the theory of small contacts: take less load.',
  'rollers-collide': ({ radius, spacing }) =>
    `Rollers of ${say(radius)} mm radius can’t lie ${say(spacing)} mm apart, they would run into each other: give at least ${say(2 * radius)} mm.`,
  'ball-falls-between-rollers': ({ spacing, most }) =>
    `The ball falls through between rollers ${say(spacing)} mm apart: keep them below ${say(most)} mm.`,
  'wedge-force-past-bounds': ({ load, across }) =>
    `The wedge turns ${say(load)} N into ${say(across)} N at each contact, past 100000 N: take less load or a wider vee.`,
  'contacts-run-into-one': () =>
    'The two contacts run into one, so they can’t be taken one by one: take less load or a narrower seat.',
  'cone-angle': () =>
    'A cone needs a half angle from 1° to 89° between its side and its axis: give one such as 45°; one of 90° is a flat.',
  'ring-too-broad': () =>
    'The ring of contact would be as broad as its own radius, beyond the theory of small contacts: take less load.',
  'no-such-material': ({ read, known }) => `Read ${quoted(read)}, which is not in the table: use ${known.join(', ')}.`,
  'chain-of-no-part': () => 'No part was named: give at least one with its stiffness, for example shank 50000 N/mm.',
  'part-stiffness': ({ part, stiffness }) =>
    `Stiffness of ${part}: read ${asRead(stiffness)}; give a value above 0 and up to 1000000000000 N/mm.`,
} satisfies Partial<RefusalWords>;
