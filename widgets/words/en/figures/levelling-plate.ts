/** Words of the plan of a plate on three feet. */

/** What was worked out for three feet whose threads do not reach, each amount as a text. */
interface TooFar {
  readonly rises: string;
  readonly sinks: string;
  readonly asked: string;
  readonly askedTurns: string;
  readonly there: string;
  readonly thereTurns: string;
  readonly missingTurns: string;
  /** Steps in a turn. */
  readonly k: number;
}

interface Shared {
  /** The foot that was to stay, or nothing where the mean height was. */
  readonly keptFoot: string | undefined;
  /** The foot that would run out. */
  readonly short: string;
  readonly raised: boolean;
  readonly by: string;
}

interface Leaning {
  readonly round: number;
  readonly tilt: string;
  /** The eighth of the plan towards which it rises, from the right and round to the left. */
  readonly eighth: number;
  /** How far the readings keep to one plane, where there are enough of them to tell. */
  readonly flat: { readonly readings: number; readonly within: string } | undefined;
}

/** A step of the head as one would call it across the workshop. */
const stepWord = (k: number, count: number): string =>
  `${k === 4 || k === 6 ? 'flat' : k === 12 ? 'point' : 'division'}${Math.abs(count) === 1 ? '' : 's'}`;

const stepsWord = (k: number): string => stepWord(k, 2);

const EIGHTHS = ['right', 'top right', 'top', 'top left', 'left', 'bottom left', 'bottom', 'bottom right'] as const;

export const WORDS = {
  title: 'Plan of a plate on three feet',
  plan: 'Plan of the plate to scale, seen from above',
  movable: 'movable point',
  place: (x: string, y: string) => `x ${x}, y ${y}`,

  /** Readings have small letters, since the feet are numbered. */
  readingName: (index: number) => String.fromCharCode(97 + index),
  reading: (name: string, height: string) => `Reading ${name}, ${height}`,
  centre: 'Centre of gravity',
  weight: 'weight',
  foot: (name: string, order: string) => `Foot ${name}, ${order}`,
  picked: (what: string) => `${what}: tap its new place, or tap it again to leave it.`,

  places: {
    write: 'Write where the feet stand into their passports',
    full: 'The passports are full: take their oldest rows out.',
    written:
      'Written into the passports, dated today. The rounds are counted into the places, so they begin again with the last readings.',
  },

  equallyHigh: 'equally high; dashed: below zero; ',
  lineEvery: (height: string) => `a line every ${height}`,
  wayItRises: 'direction in which it rises',

  turnThem: 'Turn them',
  roundBack: 'One round back',

  leans: (round: number, tilt: string) => `Round ${round}: tilt ${tilt}`,
  whatToTurn: 'What to turn',
  turnHead: (k: number) => ['foot', 'must move', 'turns', 'has turns', stepsWord(k), 'turn'],
  shouldBeLeft: (tilt: string, k: number) => `Then ${tilt} should be left, from rounding to whole ${stepsWord(k)}.`,
  plusIsClockwise: 'Plus is clockwise, seen from above.',
  measuredFoot: (foot: string, lead: string, day: string) => `foot ${foot} ${lead} (${day})`,
  /** Feet with a passport are not turned by the lead of their threads. */
  measured: (feet: readonly string[]) => `Turned by the net lead that was measured: ${feet.join(', ')} a turn.`,
  placedFoot: (foot: string, turns: string, day: string) => `foot ${foot} ${turns} (${day})`,
  /** Feet with a place in their passport do not stand where the field says. */
  placed: (feet: readonly string[]) => `Counted from where the passport left it: ${feet.join(', ')}.`,
  fromParts: (turns: string) =>
    `Net lead, steps and the ${turns} turns between the stops are those of the parts of a foot; the fields of threads and lengths do not count.`,
  done: {
    level: 'Nothing left to turn: no foot is half a step off.',
    'to and fro': 'No more to gain: the next step would only undo the last one.',
  },
  carries: (feet: readonly { readonly name: string; readonly load: string }[]) =>
    `No foot lifts: ${feet.map(({ name, load }) => `foot ${name} carries ${load}`).join(', ')}.`,

  /** What one foot is to be turned: steps without their sign. */
  order: (steps: string, count: number, k: number) =>
    count === 0 ? 'leave it' : `${steps} ${stepWord(k, count)} ${count > 0 ? 'clockwise' : 'anticlockwise'}`,
  orderLabel: (steps: string, count: number, k: number) => (count === 0 ? 'stays' : `${steps} ${stepWord(k, count)}`),
  tooFar: 'too far',
  wait: 'wait',
  range: (low: string, high: string) => `${low} to ${high}`,

  roundByRound: 'Round by round',
  roundsHead: ['round', 'tilt read', 'turn feet 1, 2, 3'],
  notWithin: 'not within the threads',

  shared: ({ keptFoot, short, raised, by }: Shared) =>
    `${keptFoot === undefined ? 'With the mean height kept' : `With foot ${keptFoot} left as it is`}, foot ${short} would run out of thread. ` +
    `So the whole plate is also ${raised ? 'raised' : 'lowered'} by ${by}, and all three feet share the turning.`,
  notEnoughTurns: ({ rises, sinks, asked, askedTurns, there, thereTurns, missingTurns, k }: TooFar) =>
    `The feet do not have enough turns for this: foot ${rises} must rise ${asked} against foot ${sinks}, which is ${askedTurns}; ` +
    `from where they stand the two can move ${there} against each other in whole ${stepsWord(k)}, which is ${thereTurns}. ` +
    `No height of the plate works; ${missingTurns} are missing. Turn no foot yet. ` +
    'Bring the plate roughly level first, with packing under the low foot or with the feet in coarse mode; then read again.',

  leaning: ({ round, tilt, eighth, flat }: Leaning) =>
    `Round ${round}: the plate has a tilt of ${tilt}, rising to the ${EIGHTHS[eighth] ?? ''}${
      flat === undefined ? '' : `, with the ${flat.readings} readings within ${flat.within} of one plane`
    }.`,
  orders: (feet: readonly { readonly name: string; readonly order: string }[], tilt: string) =>
    `${feet.map(({ name, order }, i) => `${i === 0 ? 'Foot' : 'foot'} ${name}: ${order}`).join('; ')}; then ${tilt} should be left.`,
  movedLess: (feet: readonly { readonly name: string; readonly extra: string }[]) =>
    `Moved minus asked, since the round before: ${feet.map(({ name, extra }) => `foot ${name} ${extra}`).join(', ')}.`,
  noFootLifts: 'No foot lifts.',

  head: (k: number) => [
    'round',
    'what',
    'place',
    'reads, or must move',
    'reading minus plane, or left by rounding',
    'turns',
    'turns it has',
    stepsWord(k),
    'turn',
    'carries',
  ],
  rows: {
    tilt: 'tilt, in millionths (µm/m)',
    turns: (foot: string) => `foot ${foot}, turns`,
    carries: (foot: string) => `foot ${foot} carries`,
  },
  readingRow: (name: string) => `reading ${name}`,
  footRow: (name: string) => `foot ${name}`,
};
