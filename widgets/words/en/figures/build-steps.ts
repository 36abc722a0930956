/** Words of the steps in which an adjuster is put together and checked. */
interface Step {
  readonly name: string;
  readonly text: string;
}

const PARTS = {
  'base and carried': 'base and carried part',
  'base and turned': 'base and turned part',
  'turned and carried': 'turned and carried part',
} as const;

const JOINED = { A: PARTS['base and turned'], C: PARTS['turned and carried'] } as const;

export const WORDS = {
  none: '–',
  range: (from: string, to: string) => `${from} to ${to}`,
  turns: (turns: string, whole: number, rest: string, step: string, steps: string) =>
    rest === '0'
      ? `${whole} ${whole === 1 ? 'turn' : 'turns'} (${steps} ${step}s)`
      : whole === 0
        ? `${turns} turns (${rest} ${step}s)`
        : `${turns} turns (${whole} whole and ${rest} ${step}s; ${steps} ${step}s in all)`,
  gauge: {
    name: (joint: string, thread: string) => `Gauge thread ${joint}, ${thread}.`,
    text: ({
      classes,
      measured,
      coat,
    }: {
      readonly classes: string;
      readonly measured: boolean;
      readonly coat: number;
    }) =>
      `${measured ? 'Its pitch diameters were measured: screw and nut run together by hand.' : `Class ${classes}: the go gauge runs on by hand, the not-go gauge does not.`} Measure the pitch diameter of the screw over three wires${coat > 0 ? ', here with the coat on' : ''}.`,
    free: 'This thread has no limits: measure it over wires and note it.',
    count: (screw: string, nut: string) => `screw ${screw}; nut ${nut}`,
  },
  ball: {
    name: 'Press the ball in.',
    press:
      'Square, in an arbor press, behind a shield. Read the force if the press shows it: the fit carries no more. Then measure how far the ball stands out.',
    loose: 'It is loose in this hexagon: glue it or use a sleeve.',
    set: 'Set it square, behind a shield. Then measure how far it stands out.',
    count: (ball: string, over: string, stands: string) =>
      `ball ${ball}, ${over} against the flats; to stand ${stands} out`,
    stands: (ball: string, stands: string) => `ball ${ball}, to stand ${stands} out`,
    caution: 'A hardened ball can shatter: eye protection, never a hammer.',
  },
  home: {
    name: (joint: string) => `Screw thread ${joint} home.`,
    text: (ground: boolean) =>
      ground
        ? 'Until its end stands on the ground. Lightly: do not wedge it.'
        : 'Until it stops. Lightly: do not wedge it.',
    none: 'It has no stop: screw it in until the length beside is engaged, and measure that.',
    count: (engaged: string, gap: string | undefined, joint: 'A' | 'C') =>
      `${engaged} engaged${gap === undefined ? '' : `; ${gap} still free between ${JOINED[joint]}`}`,
  },
  back: {
    name: (joint: string) => `Back thread ${joint} out.`,
    text: 'Count the turns, then check the gap between the faces of the two parts with a caliper.',
    unseen: 'Count the turns: no two faces of the parts meet that a caliper could stand between.',
    count: (turns: string, gap: string | undefined, joint: 'A' | 'C') =>
      gap === undefined ? turns : `${turns}; gap ${gap} between ${JOINED[joint]}`,
  },
  lock: {
    name: 'Put the lock on.',
    text: {
      key: 'The key goes into its slot without force. If it does not meet it, turn the carried part on to the next place.',
      post: 'The post goes into its slot without force. If it does not meet it, turn the carried part on to the next place.',
      springs: 'Clip it on where the carried part stands. Do not turn the carried part while clipping.',
      assumed:
        'Which lock it has is not stated. Fit it without force. If it does not meet, turn the carried part on to the next place.',
      none: 'There is none: hold the carried part by hand while you turn.',
    },
    count: (radius: string, clearance: string) => `bears at ${radius}; gap ${clearance}`,
  },
  stretch: {
    name: (count: number, between: keyof typeof PARTS) =>
      `Stretch ${count === 1 ? 'the spring' : `the ${count} springs`} between ${PARTS[between]}.`,
    text: 'All alike. Weigh the pull if you can.',
    count: (stretch: string, force: string) => `${stretch} longer than free; ${force} in all`,
    unstated: 'force and rate are not stated',
    caution: 'Eye protection: a spring that lets go flies.',
  },
  height: { name: 'Measure the height.', text: 'From the bottom of the base to the top of the tip, with a caliper.' },
  turn: {
    name: (clockwise: boolean) => `Turn ${clockwise ? 'clockwise' : 'anticlockwise'} and read.`,
    text: (stop: string) =>
      `Go if the reading lies within the limits. The stroke ends where ${stop}. Then turn back to the line and set zero again.`,
    count: (turns: string, go: string) => `${turns}: go ${go}`,
  },
  reverse: {
    name: 'Reverse and read.',
    text: 'Come to the scribed line from both sides and compare. A no-go here means that a flank is not seated: look for what rubs, and stretch the springs further.',
    count: (go: string, lock: string | undefined, play: string | undefined, windsUnknown: boolean) =>
      `go: ${go} at most${lock === undefined ? '' : `, of which the lock takes ${lock}`}${windsUnknown ? ', and as much more as the lock winds up. That is not known: state its post and material, or its stiffness, in its row' : ''}${play === undefined ? '' : `; the play of both threads alone is ${play} or more`}`,
  },
  plain: {
    clean: {
      name: 'Clean both threads.',
      text: 'Brush and solvent, no air line; take burrs off the first turn. Screws run by hand over their whole length. Then the grease you will use.',
    },
    stone: {
      name: 'Stone the base.',
      text: 'Rub its lower face flat on an oilstone, or turn it hollow to a ring at the rim: it must not rock on a surface plate. The head of a bought screw is often convex: turn it hollow.',
    },
    mark: {
      name: 'Mark.',
      text: 'Scribe one line over base, turned and carried part. From here on nothing has to be counted again.',
    },
    zero: {
      name: 'Set the indicator.',
      text: 'On the axis, square to the tip. Turn back a step beyond the line and come to it in the direction of the next step, twice. Then set zero.',
    },
  } satisfies Record<string, Step>,
};
