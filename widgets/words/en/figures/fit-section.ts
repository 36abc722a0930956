/** The words of the section with the engagement left on each thread. */
type Thread = 'A' | 'C';

const turns = (count: string) => `${count} ${count === '1.00' ? 'turn' : 'turns'}`;
const setBy = (v: { readonly turns: string; readonly stroke: string; readonly thread: Thread }) =>
  `${turns(v.turns)} and ${v.stroke} of stroke, set by thread ${v.thread}`;

export const WORDS = {
  title: 'Section, engagement and end stops',
  head: ['turns, clockwise', 'engaged, thread A', 'engaged, thread C', 'carried part'],
  rows: { wall: 'wall, basic sizes', wallLimits: 'wall, least and most within limits' },
  turns,

  section: {
    label: (v: { readonly arrangement: string; readonly A: string; readonly C: string }) =>
      `Section to scale, ${v.arrangement}: ${v.A} in the base, ${v.C} to the carried part`,
    parts: { base: 'base', turned: 'turned part', carried: 'carried part' },
    engaged: 'engaged',
    knob: 'Turned part, from above',
  },
  lens: {
    label: 'Wall of the sleeve, magnified: thread A at the right, thread C at the left',
    key: 'Wall: solid, from basic sizes; dashed, thinnest within limits.',
  },
  plot: {
    label: 'Engagement left on thread A and thread C against turns, with both end stops',
    engaged: (most: string) => `length of engagement, ${most} at most`,
    across: 'turns clockwise from where it was assembled (▲)',
    key: 'dotted: to keep; hatched: turns of the pair',
  },
  readout: {
    engaged: (thread: Thread) => `engaged, thread ${thread}`,
    inDiameters: 'in diameters, A and C',
    both: (a: string, c: string) => `${a} and ${c}`,
    stroke: 'stroke',
    clockwise: 'turns left, clockwise',
    anticlockwise: 'turns left, anticlockwise',
    carried: 'carried part, from assembly',
    mark: (thread: Thread) => `mark: back ${thread} out from home`,
  },

  caption: (v: {
    /** Turns that were asked for and not reached, and why. */
    readonly stopped: { readonly asked: string; readonly why: string } | undefined;
    readonly clockwise: { readonly turns: string; readonly why: string };
    readonly anticlockwise: { readonly turns: string; readonly why: string };
    readonly range: 'none' | 'all' | 'part';
    readonly has: { readonly turns: string; readonly stroke: string };
    /** At mid-range. */
    readonly best: { readonly turns: string; readonly stroke: string; readonly thread: Thread };
    readonly idle: boolean;
  }) => {
    const stopped = v.stopped === undefined ? '' : `It does not go to ${v.stopped.asked} turns: ${v.stopped.why}. `;
    const range =
      v.range === 'none'
        ? `Assembled like this, it can’t turn at all: clockwise ${v.clockwise.why}, anticlockwise ${v.anticlockwise.why}; at mid-range the same threads give ${setBy(v.best)}.`
        : `Clockwise ${turns(v.clockwise.turns)}, until ${v.clockwise.why}; anticlockwise ${turns(v.anticlockwise.turns)}, until ${v.anticlockwise.why}: ${
            v.range === 'all'
              ? setBy(v.best)
              : `${turns(v.has.turns)} and ${v.has.stroke} of stroke; assembled at mid-range it would be ${setBy(v.best)}`
          }.`;
    return `${stopped}${range}${v.idle ? ' The leads are equal, so the carried part stands still.' : ''}`;
  },
  wallUnknown: (why: string) => `The wall at the limits is not known: ${why}`,
  wall: (v: {
    readonly nominal: string;
    readonly least: string;
    readonly most: string;
    readonly outside: string;
    readonly inside: string;
    /** Whether all parts within limits have a wall. */
    readonly always: boolean;
  }) => {
    const classes = `${v.outside} outside and ${v.inside} inside`;
    return v.always
      ? `The wall is ${v.nominal} from basic sizes, and with ${classes} between ${v.least} and ${v.most}.`
      : `The wall is ${v.nominal} from basic sizes, but with ${classes} it may be only ${v.least}: some parts within limits have no wall at all.`;
  },
};
