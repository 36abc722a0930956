/** Words of the map of all pairs and of the list under it. */
import { listed } from '../../../engine/index.ts';

/** A pair as a sentence tells it, each amount as a text. */
interface Facts {
  readonly pair: string;
  readonly aTurn: string;
  readonly step: string;
  readonly off: string;
  readonly stroke: string;
  readonly gain: string;
}

interface ShortOfThread {
  readonly stroke: string;
  readonly step: string;
  readonly steps: string;
  readonly turns: string;
  /** Steps in a turn. */
  readonly k: number;
  readonly needed: string;
  readonly thread: string;
  readonly there: string;
  readonly turnsThere: string;
  readonly reach: string;
}

interface Found {
  readonly hits: string;
  readonly pairs: string;
  readonly band: string;
  /** Motion a turn; and the step with the dividers, where there are several. */
  readonly aTurn: string;
  readonly step: string;
  readonly dividers: readonly number[];
  readonly best: Facts & { readonly k: number; readonly grade: string };
}

const factsText = ({ pair, aTurn, step, off, stroke, gain }: Facts): string =>
  `${pair}: ${aTurn} a turn, ${step} a step (${off}), stroke ${stroke}, gain ${gain}`;

const COLUMNS = {
  exactly: 'exactly',
  off: 'off the wanted motion',
  gain: 'gain',
  stroke: 'stroke',
  judgement: 'judgement',
};

export const WORDS = {
  /** The fold in the foot. */
  numbers: 'The pairs found, and all numbers',
  title: 'Map of all pairs',
  mapOf: (axes: string) => `Map of every pair of threads: ${axes}, with lines of equal motion`,
  leadAgainstLead: 'shorter lead against longer lead',
  againstMotion: (what: string) => `${what} against net lead`,

  longerLead: (unit: string) => `longer lead, ${unit}`,
  shorterLead: (unit: string) => `shorter lead, ${unit}`,
  upAxis: {
    gain: () => 'gain, of the longer lead',
    stroke: (unit: string) => `stroke, ${unit}`,
    size: (unit: string) => `larger diameter, ${unit}`,
  },
  motionPerTurn: 'net lead',
  wanted: (motion: string) => `wanted: ${motion}`,
  leastStroke: (stroke: string) => `least stroke: ${stroke}`,

  grains: 'one pair or many',
  passes: 'passes',
  ring: 'first in the list, or the row you point at',

  onTheMark: 'on the mark',
  with: 'with',
  openIn: 'Open in the figures',
  atSteps: (step: string, k: number) => `${step} at ${k}`,
  noNest: 'does not nest',
  tooThin: (wall: string) => `${wall}, too thin`,
  listHead: (severalDividers: boolean) => [
    'pair, A with C',
    'a turn',
    COLUMNS.exactly,
    ...(severalDividers ? ['a step, at steps per turn'] : []),
    COLUMNS.off,
    COLUMNS.gain,
    COLUMNS.stroke,
    'wall if nested',
    COLUMNS.judgement,
  ],
  pass: (hits: string, pairs: string, listedFirst: number | undefined) =>
    `${hits} of ${pairs} pairs pass${listedFirst === undefined ? '' : `; the first ${listedFirst}`}`,
  nonePasses: (several: boolean) => `No pair passes. The nearest${several ? ', and what each misses' : ' one outside'}`,

  fromParts: 'Parts that you have or can buy need no taps:',
  toDrawer: 'what your drawer can build',

  found: ({ hits, pairs, band, aTurn, step, dividers, best }: Found) => {
    const several = dividers.length > 1;
    const wanted = several ? `${step} a step with ${listed(dividers.map(String))} steps per turn` : `${aTurn} a turn`;
    const bestStep = several ? `, ${best.step} a step at ${best.k} in a turn` : '';
    return `${hits} of ${pairs} pairs pass within ${band} % of ${wanted}; first in the list is ${best.pair}, ${best.aTurn} a turn${bestStep} (${best.off}), gain ${best.gain}, ${best.grade}.`;
  },

  /** What is said where no pair passes, sentence by sentence. */
  nothing: (sentences: readonly string[]) => `No pair passes. ${sentences.join(' ')}`,
  excludesMost: (filter: string, excluded: string, pairs: string) =>
    `The limit that excludes most is ${filter}: ${excluded} of ${pairs} pairs.`,
  shortOfThread: (s: ShortOfThread) =>
    `No pair can: a stroke of ${s.stroke} in steps of ${s.step} is ${s.steps} steps, ${s.turns} turns at ${s.k} steps per turn, with any pair. ` +
    `Each turn uses a whole lead of both threads. Of the threads allowed, ${s.thread} has the most turns: it would need ${s.needed}, and its usable length is ${s.there}, ${s.turnsThere} turns. ` +
    `At that step no pair has more stroke than ${s.reach}.`,
  nearest: (
    facts: Facts,
    outside: { readonly filter: string; readonly to: string } | undefined,
    alsoFails: readonly string[],
  ) =>
    `The nearest pair outside it is ${factsText(facts)}${outside === undefined ? '' : `, ${outside.filter} ${outside.to}`}${
      alsoFails.length > 0 ? `; it also fails ${listed(alsoFails)}` : ''
    }.`,
  noWall: 'none',
  aStep: (motion: string) => `${motion} a step`,
  /** A wish that could give way, to what, and which pair would then pass. */
  giveWay: (filter: string, to: string | undefined, pair: string, stroke: string | undefined) =>
    `${filter}${to === undefined ? '' : `, to ${to}`} (${pair}${stroke === undefined ? '' : `, stroke ${stroke}`})`,
  dividerGivesWay: (k: number, pair: string) => `the divider, to ${k} steps per turn (${pair})`,
  couldGiveWay: (ways: readonly string[], instead: boolean) =>
    `What you could change${instead ? ' instead' : ''}, each alone: ${ways.join('; ')}.`,
  anyStroke: (facts: Facts) => `Without a least stroke, the nearest step is that of ${factsText(facts)}.`,
  longWay:
    'For a long way, let the carried part turn with the turned part. Then only thread A moves it, a whole lead a turn. Use the pair for the last part.',

  head: (step: boolean, severalDividers: boolean) => [
    'thread A',
    'thread C',
    'shown',
    'net lead',
    `${COLUMNS.exactly}, mm`,
    ...(step ? ['per step'] : []),
    ...(severalDividers ? ['steps per turn'] : []),
    COLUMNS.off,
    COLUMNS.gain,
    COLUMNS.stroke,
    'larger diameter',
    'wall, basic',
    'wall, at the limits',
    'core carries',
    'pitches rounded to 0.001 mm first',
    'error of that',
    COLUMNS.judgement,
  ],
};
