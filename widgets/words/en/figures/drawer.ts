/** Words of the figure that searches a drawer of parts. */

interface Facts {
  readonly name: string;
  readonly step: string;
  readonly divisions: number;
  readonly stroke: string;
  readonly height: string;
  readonly coarse: string;
  /** Empty where it has no lock. */
  readonly locks: string;
}
interface Counts {
  readonly stacks: string;
  readonly parts: string;
}
interface Turns {
  readonly stroke: string;
  readonly step: string;
  readonly steps: string;
  readonly divisions: number;
  readonly asked: string;
  readonly there: string;
  readonly thread: 'A' | 'C';
  readonly needed: string;
  readonly usable: string;
}

const factsText = ({ name, step, divisions, stroke, height }: Facts): string =>
  `${name}: ${divisions === 1 ? `${step} a turn` : `${step} a step at ${divisions} steps per turn`}, stroke ${stroke}, ${height} high`;

const COARSEST = 'Each takes the divider with the fewest steps per turn that is fine enough';

export const WORDS = {
  title: 'What your drawer can build',
  numbers: 'The best, to take',
  stopSearch: 'Stop the search',
  searchAgain: 'Search again',
  mapOf: 'Map of every adjuster that the drawer can build: step to the right, stroke upwards, with the best edge',
  strokeAxis: 'fine stroke',
  stepAxis: { 'a step': 'step', 'a flat': 'motion a flat', 'a turn': 'motion a turn' },
  wished: 'wished',
  key: {
    all: 'can be built; within “wished”, too high or too expensive',
    met: 'meets the wish',
    edge: 'best edge: no other is as fine and goes as far',
    ring: 'first in the list, or the row you point at',
  },
  wishes: { step: 'the step', stroke: 'the stroke', height: 'the height', price: 'the price' },
  noPrice: 'not stated',
  notKnown: 'not known',
  locks: (shift: string, stroke: string, gap: string | undefined) =>
    `Clipped on again a sixth of a turn further, the lock shifts the fine stroke by ${shift}; ${gap === undefined ? `that is no more than the ${stroke} of the fine stroke, so every height is reached` : `the fine stroke is ${stroke}, so ${gap} between two places of the lock are never reached`}.`,
  plainScrew: 'plain screw, all of it is its stroke',
  /** Kind, threads and their lengths. */
  short: (text: string) =>
    text.replace(/,\s*(?:body |head |neck |hexagon |width |height |price |coat |on the ground)[^,]*/gi, ''),
  /** For a sentence: kind and first thread only. */
  brief: (text: string) =>
    text.replace(/,\s*(?:\d|thread |body |head |hexagon |width |height |price |on the ground).*$/i, ''),
  onTop: ' + ',
  coarse: (range: string, lead: string, gap: string | undefined) =>
    `${range} at ${lead} a turn${gap === undefined ? ', no gap' : `; leaves gaps of ${gap}`}`,
  atSteps: (step: string, k: number) => (k === 1 ? `${step} a turn` : `${step} at ${k}`),
  take: (rank: number) => `Put number ${rank} together`,
  /** Before the name of the figure that shows it. */
  taken: (rank: number) => `Number ${rank} is put together. It stands in `,
  metList: (count: string, first: number | undefined, several: boolean) =>
    `${count} meet the wish${first === undefined ? '' : `; the first ${first}`}.${several ? ` ${COARSEST}` : ''}`,
  nearestList: 'None meets the wish. The nearest, and what each misses',
  listHead: (nothing: boolean) => [
    'base + turned part + carried part',
    'step, at steps per turn',
    'fine stroke',
    'coarse, with the lock let go',
    'height',
    'grows a kelvin',
    'price',
    ...(nothing ? ['misses'] : []),
  ],
  head: [
    'base',
    'turned part',
    'carried part',
    'step',
    'steps per turn',
    'fine stroke',
    'turns',
    'coarse range',
    'shift at one place of the lock',
    'gap left',
    'height at mid-range',
    'growth a kelvin',
    'price',
  ],
  /** Refusals, further rows of no known kind, and how many are not told. */
  leftOut: (wrong: readonly string[], alike: readonly string[], more: number) =>
    `Left out of the drawer: ${wrong.join(' ')}${alike.length > 0 ? ` So too: ${alike.join(', ')}.` : ''}${more > 0 ? ` And ${more} more.` : ''}`,
  found: (v: Counts & { readonly met: string; readonly first: Facts }) =>
    `${v.met} of ${v.stacks} adjusters that ${v.parts} parts can build meet the wish. First in the list is ${factsText(v.first)}. Coarse: ${v.first.coarse}.${v.first.locks === '' ? '' : ` ${v.first.locks}`}`,
  nothing: (
    v: Counts & {
      readonly turns: Turns | undefined;
      readonly ways: readonly { readonly wish: string; readonly to: string; readonly name: string }[];
      readonly nearest: Facts;
    },
  ) =>
    [
      `None of ${v.stacks} adjusters that ${v.parts} parts can build meets the wish.`,
      ...(v.turns ? [turnsText(v.turns)] : []),
      ...(v.ways.length > 0
        ? [
            `Give up one wish alone, and one is found: ${v.ways.map((w) => `${w.wish}, to ${w.to} (${w.name})`).join('; ')}.`,
          ]
        : ['No single wish is to blame: two or more must give way.']),
      `The nearest is ${factsText(v.nearest)}.`,
    ].join(' '),
} as const;

const turnsText = (t: Turns): string =>
  `A stroke of ${t.stroke} ${t.divisions === 1 ? `at ${t.step} a turn is at least ${t.asked} turns` : `in steps of ${t.step} is ${t.steps} steps, at least ${t.asked} turns at ${t.divisions} steps per turn`}. The one with the most turns has ${t.there}: they would use up ${t.needed} of its thread ${t.thread}, and it has ${t.usable} to spare.`;
