/** The words of the force chain. */
type Thread = 'A' | 'C';
type Part = 'base' | 'turned' | 'carried';

const NAMES: Readonly<Record<Part, string>> = {
  base: 'the base',
  turned: 'the turned part',
  carried: 'the carried part',
};

export const WORDS = {
  title: 'Force chain through the two threads',
  slider: 'place in the stroke',
  place: (v: { readonly turns: string; readonly carried: string; readonly spring: string | undefined }) =>
    `${v.turns}, carried part ${v.carried}, spring ${v.spring ?? 'none'}`,
  range: (least: string, most: string) => `${least} to ${most}`,
  /** Beside the lens: the force there, and which flank touches, or none that does so for sure. */
  here: (forces: string, flank: { readonly name: string; readonly pressed: boolean } | undefined) =>
    `here ${forces}: ${flank === undefined ? '✕ changes flank with the load' : `${flank.pressed ? '▼' : '▲'} the ${flank.name} touches`}`,
  panel: (thread: Thread) => `Force across thread ${thread}, in newtons`,
  across: 'turns, clockwise',
  legend: {
    loads: 'most and least load',
    nought: 'zero: above it the pressed flank carries',
    margin: 'margin to keep',
  },
  head: [
    'turns, clockwise',
    'carried part',
    'spring',
    'thread A, least load',
    'thread A, most load',
    'thread C, least load',
    'thread C, most load',
  ],
  chart: {
    label: (thread: Thread) => `Force across thread ${thread} in newtons against turns`,
  },
  section: {
    label: (v: {
      readonly A: string;
      readonly C: string;
      readonly spring: { readonly kind: 'pull' | 'push'; readonly lower: Part; readonly upper: Part } | undefined;
    }) =>
      `Section of the three parts in line, ${v.A} below and ${v.C} above${v.spring ? `, with a spring that ${v.spring.kind}s between ${v.spring.lower} and ${v.spring.upper} part` : ''}`,
    /** Two lines each. */
    weight: (force: string): readonly [string, string] => ['weight', force],
    load: (force: string): readonly [string, string] => ['load', force],
    loads: (least: string, most: string): readonly [string, string] => [`load ${least}`, `to ${most}`],
    parts: { base: 'base', turned: 'turned', carried: 'carried' },
  },

  caption: (A: string, C: string, spring: string) => `${A} ${C} ${spring}`,
  verdict: {
    seated: (v: { readonly thread: Thread; readonly flank: string; readonly least: string }) =>
      `Thread ${v.thread}: the ${v.flank} touches over the whole stroke, with ${v.least} or more.`,
    'short of margin': (v: {
      readonly thread: Thread;
      readonly flank: string;
      readonly least: string;
      readonly margin: string;
    }) =>
      `Thread ${v.thread}: the ${v.flank} touches over the whole stroke, but only ${v.least} is left of the ${v.margin} to keep.`,
    'lets go': (v: {
      readonly thread: Thread;
      readonly turns: string;
      readonly carried: string;
      readonly load: string;
    }) => `Thread ${v.thread}: the flanks open at ${v.turns}, the carried part at ${v.carried}, under ${v.load}.`,
  },
  rows: {
    carried: 'carried part, here',
    spring: 'spring, here',
    least: (thread: Thread) => `thread ${thread} here, least load`,
    most: (thread: Thread) => `thread ${thread} here, most load`,
    needed: 'spring needed at the start',
  },
  noSpring: 'No spring: only weight and load act on the threads.',
  spring: (v: {
    readonly lower: Part;
    readonly upper: Part;
    /** How its ends move over the stroke. */
    readonly ends: 'keep' | 'part' | 'near';
    readonly motion: string;
    readonly from: string;
    readonly to: string;
    /** Turns from which it is slack. */
    readonly slack: string | undefined;
  }) => {
    const ends =
      v.ends === 'keep'
        ? 'its ends keep their distance'
        : `its ends ${v.ends === 'part' ? 'move apart' : 'come nearer'} by ${v.motion} over the stroke`;
    const slack = v.slack === undefined ? '' : `, without force from ${v.slack} on`;
    return `Between ${NAMES[v.lower]} and ${NAMES[v.upper]}: ${ends}, so its force goes from ${v.from} to ${v.to}${slack}.`;
  },
  /** The least force of the spring at the start, and what no force of it can do. */
  least: (v: {
    readonly unreached: readonly Thread[];
    /** Undefined where no force is needed. */
    readonly need:
      | {
          readonly force: string;
          /** The thread that sets it and where; undefined where the spring must only not go slack. */
          readonly by: { readonly thread: Thread; readonly turns: string; readonly load: string } | undefined;
          readonly has: string;
          readonly enough: boolean;
        }
      | undefined;
  }) => {
    const { unreached, need } = v;
    const alone =
      unreached.length === 0
        ? ''
        : `This spring, however strong, does nothing for thread ${unreached.join(' and ')}: only weight and load act there. `;
    const reached = (['A', 'C'] as const).filter((t) => !unreached.includes(t));
    const forWhom = unreached.length === 0 ? 'both threads need' : `thread ${reached.join(' and ')} needs`;
    if (need === undefined) return `${alone}At the start ${forWhom} no force from it.`;
    const by =
      need.by === undefined
        ? 'to keep some pull'
        : `set by thread ${need.by.thread} at ${need.by.turns} under ${need.by.load}`;
    const enough = need.enough ? `${need.has} is enough` : `${need.has} is below that: more preload`;
    return `${alone}At the start ${forWhom} ${need.force} from it, ${by}; ${enough}.`;
  },
  friction: (force: string) => `Friction of the guide, ${force} either way, is counted in the loads.`,
};
