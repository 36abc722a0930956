/** Refusals of the room of calibration, and why a part of its answer can’t be told. */
import { asRead, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const CALIBRATION_REFUSALS = {
  'lead-from-one-place': () =>
    'Both readings stand at the same turns; a lead needs two places, so read a turn further.',
  'slope-from-one-place': () =>
    'All three readings stand at the same turns; a slope needs two places at least, so read a turn further.',
  'nominal-lead': ({ nominal }) =>
    `Read a nominal net lead of ${asRead(nominal)} mm a turn; give one other than zero and within 120 mm.`,
  'reading-past-bounds': ({ row, turns, reading }) =>
    `Row ${row} reads ${asRead(turns)} turns and ${asRead(reading)} mm; give two numbers within a million, and check the units.`,
  'too-few-for-slope': () =>
    'The readings are too few or too close together for a slope with its uncertainty: spread them over the stroke, three at least.',
  'gap-hidden-in-slope': () =>
    'Hysteresis cannot be found: the readings of the two directions stand at different places, so hysteresis and slope cannot be separated; read both over the same stretch.',
  'too-few-each-way': ({ up, down }) =>
    `Hysteresis cannot be found: there are ${up} readings on the way up and ${down} on the way down; take three at least of each.`,
  'hysteresis-one-way': ({ direction, reason }, behind) =>
    `Hysteresis cannot be found on the way ${direction}. ${behind(reason)}`,
  'wave-not-told': () =>
    'The periodic error cannot be found: the readings do not spread over the turn, or are too few; read at six places of a turn or more, over two turns.',
  'nothing-read-twice': () =>
    'Repeatability cannot be found: no place was read twice from the same direction; run up and down again.',
  'no-readings-that-way': ({ direction }) =>
    `No reading was taken on the way ${direction}, so there is no correction for it; run that way too.`,
  'outside-readings': ({ turns, from, to }) =>
    `${say(turns)} turns lie outside the readings, which go from ${say(from)} to ${say(to)}; nothing is known there, so stay within them or read further.`,
} satisfies Partial<RefusalWords>;
