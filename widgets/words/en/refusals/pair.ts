/** Why two threads make no pair, no motion or no travel, and why a wish for a pair contradicts itself. */
import { asRead, type Refusals, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const WISHES: Readonly<
  Record<Refusals['wish-below-nought']['what'], { readonly name: string; readonly unit: string }>
> = {
  leastWall: { name: 'least wall', unit: 'mm' },
  leastStroke: { name: 'stroke', unit: 'mm' },
  load: { name: 'load', unit: 'N' },
};

export const PAIR = {
  'equal-leads-no-gain': () =>
    'The two leads are equal, so turning does not move the carried part, and there is nothing to divide by: choose threads whose leads differ.',
  'equal-leads-no-relative-error': () =>
    'The two leads are equal, so there is no net lead to compare the error with: choose threads whose leads differ.',
  'equal-leads-nothing-slower': () =>
    'The two leads are equal, so there is no motion to be slower than: choose threads whose leads differ.',
  'no-periodic-error': () =>
    'Without a periodic error nothing runs back: give at least one thread an amplitude of more than zero.',
  'stretch-unread': ({ from, to, share }) =>
    `Read turns from ${asRead(from)} to ${asRead(to)} and a share of ${asRead(share)}; give the smaller number of turns first and a share from 0 to below 1.`,
  'division-without-motion': () => 'The motion per division must be more than zero: give one such as 0.001 mm.',
  'step-without-motion': () =>
    'The motion per step must be more than zero: give it without a sign, for threads whose leads differ.',

  'thread-all-kept': ({ length, kept }) =>
    `A thread ${say(length)} mm long can’t keep ${say(kept)} mm engaged and still move: make it longer, or keep less.`,

  'root-leaves-nothing': ({ pitch, d_2 }) =>
    `A pitch of ${say(pitch)} mm leaves nothing under a pitch diameter of ${say(d_2)} mm: take a finer pitch.`,
  'sleeve-without-wall': ({ inside, outside, wall, beyond }) =>
    `${inside} does not go inside ${outside}: the wall between the threads would be ${wall < 0 ? '−' : ''}${Math.abs(wall).toFixed(2)} mm; nested, thread A needs to be larger than ${(Math.ceil(10 * beyond) / 10).toFixed(1)} mm at this pitch, or choose in line.`,

  'wish-without-divider': () => 'Read no divider; give the steps per turn of one at least, for example 6.',
  'wish-motion-outside': ({ perTurn }) =>
    `Read ${say(perTurn)} mm as the wanted net lead; give more than zero and at most 200 mm.`,
  'wish-band-outside': ({ band }) =>
    `Read ${say(band)} as the share a pair may be off; give 0 to 100, for example 0.1 for a tenth either way.`,
  'wish-sizes-crossed': ({ smallest, largest }) =>
    `Read a smallest diameter of ${say(smallest)} mm and a largest of ${say(largest)} mm, and nothing lies between them: exchange the two.`,
  'wish-below-nought': ({ what, value }) =>
    `Read ${say(value)} ${WISHES[what].unit} as the ${WISHES[what].name}; give zero or more.`,
  'wish-usable-outside': ({ diameters }) =>
    `Read ${say(diameters)} diameters of usable thread; give more than zero, for example 1.`,
  'wish-stress-outside': ({ stress }) =>
    `Read ${say(stress)} MPa as the stress allowed; give more than zero, for example 100.`,
} satisfies Partial<RefusalWords>;
