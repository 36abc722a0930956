/** Words of the figure that shows one adjuster from its parts. */

interface Stops {
  readonly clockwise: { readonly turns: string; readonly why: string };
  readonly anticlockwise: { readonly turns: string; readonly why: string };
}

const PARTS = { base: 'base', turned: 'turned part', carried: 'carried part' } as const;

export const WORDS = {
  title: 'Your adjuster, from its parts',
  drawing: (name: string) => `Section to scale${name === '' ? '' : ` of ${name}`}, cut through the axis`,
  knob: 'Turned part, from above',
  springFace: 'spring, on its flat side',
  parts: PARTS,
  /** How a reader finds the part again in the list. */
  kind: (role: keyof typeof PARTS, kind: string) => `${PARTS[role]}: ${kind}`,
  list: {
    head: ['part', 'height', 'mass', 'price'],
    none: 'not stated',
  },
  sizes: {
    'thread A': 'thread A',
    'thread C': 'thread C',
    height: 'height',
    body: 'body',
    head: 'head',
    hexagon: 'across flats',
    width: 'width',
    diameter: 'diameter',
    plate: 'thickness of the plate',
    collar: 'collar',
    neck: 'neck',
    'body diameter': 'diameter of the body',
    'collar diameter': 'diameter of the collar',
    'neck diameter': 'diameter of the neck',
    bore: 'bore',
    relief: 'relief',
  },
  readout: {
    perTurn: 'net lead, clockwise',
    perStep: (step: string, count: string) => `per ${step} (${count} a turn)`,
    stroke: 'stroke between the stops',
    engagedA: 'engaged, thread A',
    engagedC: 'engaged, thread C',
    height: 'height now',
    left: 'turns left: clockwise, anticlockwise',
    markA: 'mark: back A out from home',
    markC: 'mark: back C out from home',
    mass: 'mass of all parts',
    price: 'price of all parts',
    springs: 'force of the springs now',
    play: (joint: 'A' | 'C', limits: string) => `play of thread ${joint}${limits === '' ? '' : `, ${limits}`}`,
    limits: (limits: string, coat: string) => `${limits}${coat === '' ? '' : `, coat ${coat} in all`}`,
    range: (least: string, most: string) => `${least} to ${most}`,
    binds: (most: string) => `the tightest pieces bind; up to ${most}`,
    neverGoes: 'the pieces do not go together',
    lost: 'lost on reversal without preload, at most',
  },
  turns: (count: string) => `${count} turns`,
  both: (a: string, b: string) => `${a} and ${b}`,
  assumed: (sizes: readonly string[]) =>
    sizes.length === 0 ? 'Every size is stated.' : `Drawn with what you did not state: ${sizes.join('; ')}.`,
  assumedPost: (thick: string, radius: string) =>
    `a post ${thick} thick, ${radius} from the axis, that keeps the carried part from turning`,
  assumedThickness: (lock: 'key' | 'post', thick: string) => `${lock} ${thick} thick`,
  assumedTip: (stands: string) => `tip ${stands} high`,
  over: (size: string, length: string) => `${size} over ${length}`,
  assumedSprings: (radius: string) => `springs at ${radius} from the axis`,
  size: (part: string, name: string, value: string) => `${part}, ${name} ${value}`,
  plain: 'plain screw: the tip sits on the turned part',
  caption: (
    v: Stops & {
      readonly stopped: { readonly asked: string; readonly why: string } | undefined;
      readonly perTurn: string;
      readonly stroke: string;
      readonly height: string;
      readonly turns: string;
    },
  ) =>
    `${v.stopped === undefined ? '' : `It does not go to ${v.stopped.asked} turns: ${v.stopped.why}. `}A turn clockwise moves the tip by ${v.perTurn}. It goes ${v.clockwise.turns} turns clockwise, until ${v.clockwise.why}, and ${v.anticlockwise.turns} turns anticlockwise, until ${v.anticlockwise.why}: ${v.stroke} of stroke. Its tip is ${v.height} above the bottom of the base.`,
  head: ['turns, clockwise', 'engaged, thread A', 'engaged, thread C', 'tip over the base'],
} as const;
