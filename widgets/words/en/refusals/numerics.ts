/** Why no line goes through readings, and what else the numbers’ own tools refuse. */
import { asRead, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const NUMERICS = {
  'places-unlike-readings': ({ places, readings }) =>
    `Read ${places} places and ${readings} readings; each place needs one reading: give as many of both.`,
  'rows-too-few': ({ rows }) =>
    `Read ${rows} ${rows === 1 ? 'reading' : 'readings'}; a line takes two and its uncertainty one more: give at least three, or better ten.`,
  'row-not-numbers': ({ row, x, y }) => `Row ${row} reads ${asRead(x)} and ${asRead(y)}; give two numbers.`,
  'places-all-alike': ({ rows, x }) =>
    `All ${rows} readings stand at ${say(x)}; a slope needs readings at two places at least.`,
  'readings-all-alike': ({ rows, y }) =>
    `All ${rows} readings are ${say(y)}, so nothing moved or nothing was read: check that the indicator touches and the lock holds.`,
  'level-not-a-share': ({ level }) =>
    `Read a level of ${asRead(level)}; give a share between 0 and 1, for example 0.95.`,
  'freedom-out-of-range': ({ freedom }) =>
    `Read ${asRead(freedom)} degrees of freedom; give a whole number from 1 to a million: there must be more readings than unknowns.`,
  'seed-out-of-range': ({ seed }) =>
    `Seed: read ${asRead(seed)}; give a whole number from 0 to ${Number.MAX_SAFE_INTEGER}.`,
} satisfies Partial<RefusalWords>;
