/** Words of an adjuster beside a bought fine screw. */
const WHAT = { screw: 'screw strips', nut: 'nut strips', core: 'core', body: 'wall of nut' } as const;
const FIRST = { screw: 'screw', nut: 'nut', core: 'core', body: 'wall round the nut' } as const;

export const WORDS = {
  title: 'Beside the screw you would otherwise buy',
  none: '–',
  ask: 'ask its maker',
  passes: 'passes',
  fails: 'fails',
  bars: 'What each thread and the fit of the ball carry, and the load',
  press: 'ball, press fit',
  load: (load: string) => `load ${load}`,
  carries: (joint: string, what: keyof typeof WHAT) => `thread ${joint}, ${WHAT[what]}`,
  carriesOver: (joint: string, thread: string, what: keyof typeof WHAT, engaged: string) =>
    `thread ${joint}, ${thread}: ${WHAT[what]}${what === 'core' || what === 'body' ? '' : `, over ${engaged}`}`,
  rows: {
    perTurn: 'motion a turn',
    perStep: (step: string, count: string) => `motion a ${step}, ${count} in a turn`,
    byHand: 'motion for the repeatable hand angle',
    stroke: 'stroke',
    height: 'height, at mid-range',
    piece: 'price of one',
    set: (count: number) => `price of a set of ${count}`,
  },
  ofOwn: (what: string) => `${what}, your adjuster`,
  ofBought: (what: string) => `${what}, the bought screw`,
  listHead: (thread: string) => ['what', 'your adjuster', `bought, ${thread}`],
  head: ['what', 'your adjuster', 'bought', 'judged'],
  caption: (v: {
    readonly finer: string;
    readonly farther: string;
    /** Undefined where it is the fit of the ball. */
    readonly thread: { readonly joint: string; readonly what: keyof typeof WHAT } | undefined;
    readonly carries: string;
    readonly load: string;
    readonly holds: boolean;
    readonly saved: { readonly own: string; readonly bought: string; readonly set: number } | undefined;
  }) =>
    `A turn of the adjuster moves ${v.finer} times less than a turn of the bought screw, which goes ${v.farther} times as far. ` +
    `What goes first is the ${v.thread === undefined ? 'press fit of the ball' : `${FIRST[v.thread.what]} of thread ${v.thread.joint}`}, at ${v.carries}: ${v.holds ? 'it holds' : 'it does not hold'} the load of ${v.load}.` +
    (v.saved === undefined
      ? ''
      : ` A set of ${v.saved.set} costs ${v.saved.own}, of the bought ones ${v.saved.bought}.`),
} as const;
