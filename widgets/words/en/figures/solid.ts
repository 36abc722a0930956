/** Words of the figure that shows an adjuster as a solid. */

type Way = 'up' | 'down' | 'nowhere';
const PARTS = { base: 'base', turned: 'turned part', carried: 'carried part' } as const;
const moved = (part: string, by: string, way: Way): string =>
  way === 'nowhere' ? `The ${part} stands where it stood` : `The ${part} has gone ${way} ${by}`;

/** Which flanks carry, in as few words as it takes, said so that it is understood before the chapter on flanks. */
const FACES = { pressed: 'faces the base', pulled: 'faces away from the base' } as const;
/** A plain screw has one thread, so it needs no letter. */
const carries = (
  list: readonly { readonly thread: 'A' | 'C'; readonly flank: 'pressed' | 'pulled' }[],
  plain: boolean,
): string => {
  const [first, second] = list;
  if (!first) return '';
  if (second && first.flank === second.flank)
    return `Both threads carry on the ${first.flank} flank, the side of the ridge that ${FACES[first.flank]}.`;
  return list
    .map(
      ({ thread, flank }) =>
        `${plain ? 'The thread' : `Thread ${thread}`} carries on its ${flank} flank, the side of the ridge that ${FACES[flank]}.`,
    )
    .join(' ');
};

type Aside = { readonly thread: 'A' | 'C'; readonly aside: 'all round' | 'lifted' | 'tipped' };
const ASIDE = {
  'all round': ['carries', 'carry', 'all round'],
  lifted: ['lifts', 'lift', 'on the right'],
  tipped: ['tips', 'tip', 'over, and on the right the other flank stops it'],
} as const;
const pushed = (push: string, list: readonly Aside[]): string => {
  const [first, second] = list;
  if (!first) return '';
  const alike = second?.aside === first.aside;
  const said = alike
    ? `both threads ${ASIDE[first.aside][1]} ${ASIDE[first.aside][2].replace('stops it', 'stops them')}`
    : list.map(({ thread, aside: a }) => `thread ${thread} ${ASIDE[a][0]} ${ASIDE[a][2]}`).join('; ');
  return `Pushed by ${push} from the right, with no guide, ${said}.`;
};

type Lock = 'none' | 'assumed' | 'key' | 'post' | 'springs';
const LOCKS: Readonly<Record<Lock, string>> = {
  none: 'lock',
  assumed: 'post',
  post: 'post',
  key: 'key',
  springs: 'springs',
};

const held = (by: Lock, springs: { readonly most: string; readonly enough: boolean } | undefined): string => {
  if (!springs) return `the ${LOCKS[by]} ${by === 'springs' ? 'must hold' : 'holds'} it`;
  return springs.enough
    ? `the springs must hold it, and all their pull across their radius is ${springs.most}`
    : `these springs can’t hold it, since all their pull across their radius is only ${springs.most}. Give it a post or a key`;
};

export const WORDS = {
  title: 'The adjuster as a solid',
  drawing: (name: string) =>
    `${name === '' ? 'The adjuster' : `The adjuster ${name}`} seen from the side and a little from above; turn it with the knob`,
  parts: PARTS,
  motion: (by: string, way: Way) => (way === 'nowhere' ? '' : `${way === 'up' ? '▲' : '▼'} ${by}`),
  knob: 'Turned part, from above',
  sliders: { round: 'look round', above: 'look from above', cut: 'cut open', apart: 'pull apart' },
  steps: {
    begin: 'Put it together',
    first: (count: number) => `The parts, not joined yet. ${count} steps put them together.`,
    of: (step: number, count: number) => `${step} of ${count}:`,
    count: (count: string) => (count === '–' ? '' : `Count: ${count}.`),
    back: 'Step back',
    on: 'Next step',
    whole: 'Show it whole',
  },
  /** Under a lens: which thread, how many times larger than the picture, and its gap along the axis. */
  lens: {
    name: (thread: 'A' | 'C', times: string) => `thread ${thread}, × ${times}`,
    gap: (gap: string) => `gap ${gap}`,
    both: (gap: string) => `free, ${gap}`,
    lifted: (gap: string) => `lifted, ${gap}`,
    tipped: (gap: string) => `tipped, ${gap}`,
  },
  torque: { by: (lock: Lock) => `${LOCKS[lock]} ${lock === 'springs' ? 'hold' : 'holds'}` },
  degrees: (count: string) => `${count}°`,
  whole: 'whole',
  together: 'together',
  share: (count: string) => `${count} %`,
  caption: (v: {
    readonly stopped: { readonly asked: string; readonly why: string } | undefined;
    readonly turns: string;
    readonly clockwise: boolean;
    readonly turned: string;
    readonly turnedWay: Way;
    readonly carried: string | undefined;
    readonly carriedWay: Way;
    readonly locked: boolean;
    readonly carries: readonly { readonly thread: 'A' | 'C'; readonly flank: 'pressed' | 'pulled' }[];
    /** Pushed from the side, and what that makes of the threads. */
    readonly push: string | undefined;
    readonly aside: readonly Aside[];
    readonly handed:
      | {
          readonly by: Lock;
          readonly torque: string;
          readonly springs: { readonly most: string; readonly enough: boolean } | undefined;
        }
      | undefined;
  }) =>
    [
      v.stopped && `It does not go to ${v.stopped.asked} turns: ${v.stopped.why}.`,
      v.turns === '0'
        ? 'At 0 turns the scribed line runs straight over all parts.'
        : `${v.turns === '1' ? 'One turn' : `${v.turns} turns`} ${v.clockwise ? 'clockwise' : 'anticlockwise'}.`,
      v.turns !== '0' &&
        `${moved(PARTS.turned, v.turned, v.turnedWay)}${v.carried === undefined ? '' : `, and ${moved(PARTS.carried, v.carried, v.carriedWay).replace('The', 'the')}`}.`,
      !v.locked && v.carried !== undefined && 'The lock is off, so the carried part goes round with the turned part.',
      carries(v.carries, v.carried === undefined),
      v.push !== undefined && pushed(v.push, v.aside),
      v.handed &&
        `As you turn on, thread C pushes the carried part round with ${v.handed.torque}: ${held(v.handed.by, v.handed.springs)}.`,
    ]
      .filter(Boolean)
      .join(' '),
  rows: {
    turned: 'turned part moves',
    carried: 'carried part moves',
    height: 'tip over the base',
    play: (thread: 'A' | 'C') => `axial play of thread ${thread}`,
    handed: 'torque that the lock takes',
  },
  head: (carries: boolean) => [
    'turns, clockwise',
    'turned part',
    ...(carries ? ['carried part'] : []),
    'tip over the base',
  ],
} as const;
