/** The words of the lines, checks and terms that the design sheet is worked to. */
type Thread = 'A' | 'C';
/** What was found, and what was asked for. */
interface Asked {
  readonly found: string;
  readonly wanted: string;
}

const FIRST = {
  screw: 'screw, stripped',
  nut: 'nut, stripped',
  core: 'core, torn',
  body: 'wall round the nut, torn',
} as const;

export const LINES = {
  motion: {
    perTurn: 'per turn, clockwise',
    perStep: (step: string, inATurn: string) => `per ${step} (${inATurn} a turn)`,
    hand: 'motion of the repeatable hand angle',
    stepCheck: (v: Asked & { readonly step: string }) =>
      `One ${v.step} moves ${v.found}; ${v.wanted} or less was wanted.`,
  },

  travel: {
    usable: (thread: Thread) => `usable length of thread ${thread}`,
    turns: 'turns between the stops',
    stroke: 'stroke',
    wanted: 'wanted stroke',
    strokeCheck: (v: Asked) => `The threads give a stroke of ${v.found}; ${v.wanted} was wanted.`,
    stopsClockwise: 'stops it clockwise',
    stopsAnticlockwise: 'stops it anticlockwise',
    mark: (thread: Thread) => `mark: back ${thread} out from home`,
    eaten: 'thread used per unit of stroke',
  },

  height: {
    name: 'height',
    noParts: 'the heights of the parts are not stated: write the parts, a row each',
    closed: 'closed height',
    middle: 'height in the middle of the stroke',
    open: 'open height',
    ground: 'what the base stands on',
    hangs: (by: string) =>
      `in its stroke the turned part comes out of the base and reaches ${by} below it. Stand the base over a hole, or write “on the ground” in its row: then the ground is a stop`,
    check: (v: Asked) => `In the middle of its stroke it is ${v.found} high; ${v.wanted} or less was wanted.`,
  },

  fit: {
    wall: 'wall of the sleeve',
    wallRange: 'wall of the sleeve, least to most',
    wallCheck: (v: Asked) => `The wall of the sleeve is ${v.found} at its thinnest; at least ${v.wanted} was wanted.`,
    refusedBefore: 'the pair is refused before',
    play: 'play',
    playTerm: 'play, on reversal',
    playOf: (thread: Thread, classes: string) => `play of thread ${thread}, ${classes}`,
    binds: 'At the tight end of the limits the threads bind.',
    lost: 'lost on reversal without preload, at most',
    lostText: (v: { readonly turns: string; readonly steps: string; readonly step: string }) =>
      `${v.turns}, ${v.steps} ${v.step}s`,
  },

  preload: {
    preload: 'preload',
    atStart: 'force of the spring at the start of the stroke',
    rate: 'rate of the spring',
    springForce: 'force of the spring over the stroke',
    spring: 'spring',
    none: 'none',
    thread: (thread: Thread) => `thread ${thread}`,
    touching: {
      seated: (flank: string) => `the ${flank} touches`,
      'short of margin': (flank: string) => `the ${flank} touches, short of margin`,
      'lets go': 'opens',
    },
  },

  afterYear: {
    name: 'preload after a year',
    why: 'the share that the spring loses is not asked for; state the parts, with it in the row of the springs',
    notInRow:
      'the row of the springs does not say what they lose: write it there, as in “loses 8 %” for each tenfold time',
    check: (verdict: string) => `After a year: ${verdict}`,
    force: (loss: string) => `force of the spring after a year, losing ${loss} for each tenfold time`,
  },

  effort: {
    effort: 'effort',
    forcesUnknown: 'not computed, since the forces on the threads are not known',
    bySelf: 'whether the load turns the part by itself',
    selfLocking: 'The load can’t turn the part by itself.',
    notSelfLocking: 'The load turns the part by itself: it needs a brake or more friction.',
    against: 'torque against the load',
    along: 'torque with the load',
    rim: 'force of the hand at the rim',
    rimUnlimited: (force: string) => `${force}, and no limit to it is asked for`,
    lock: 'torque the lock must hold',
    kappa: 'stiffness of the lock, torque a radian',
    stiffnessUnknown: {
      post: 'not known: write post and material in the row of the lock, as in “steel post 8 mm, modulus 2000 MPa”, that of the arm; or a measured stiffness',
      springs: 'not known: it follows from the drawing, force and radius of springs between base and carried part',
      none: 'not known: no lock is stated in its row',
    },
    windUp: 'wind-up of the lock',
    windUpTurning: 'wind-up of the lock, turning round',
    /** Worked out at the start of the stroke, where the chapter on effort has it. */
    windUpTerm: 'wind-up of the lock, on reversal under most load',
  },

  tip: {
    contact: 'contact at the tip',
    tip: 'the tip',
    sinks: 'the tip sinks in by',
    sinkTerm: 'sink of the tip, from least to most load',
    pressure: 'peak pressure',
    yields: 'begins to yield at',
    yieldCheck: (v: { readonly seat: string; readonly yields: string; readonly carries: string }) =>
      `A ball of this size on ${v.seat} begins to yield at ${v.yields}; it carries ${v.carries}.`,
    pastYield: 'past first yield the elastic numbers do not hold',
    warmth: 'warmth',
    growthUnknown: 'growth by warmth',
    grows: 'grows with that warmth',
    thatIs: 'that is',
    creeps: (material: string) =>
      `Parts in the path of the load are ${material}, which creeps under load. Let metal carry; use printed parts only to guide and to lock.`,
    noCreep: (materials: readonly string[]) =>
      `No printed plastic is in the path of the load: it is stated as ${materials.join(', ')}.`,
  },

  errors: {
    lead: 'lead error over the wanted stroke, worst case',
    leadIndependent: 'the same, root-sum-square',
    /** Of all that the threads give, which may be more than is wanted. */
    leadWhole: 'lead error over the whole stroke, worst case',
    beyond: 'the stroke beyond the wanted one',
    beyondText: (v: Asked & { readonly stroke: string; readonly whole: string }) =>
      `errors are judged over the wanted stroke of ${v.stroke}; at the end of the whole ${v.whole} the sum is ${v.found}, and ${v.wanted} or less was wanted`,
    hand: 'setting of a hand',
    periodic: 'periodic error, both threads, crest to trough',
    notMeasured: 'not measured',
    stalls: 'whether the motion stalls',
    periodicUnknown: 'the periodic errors are not measured',
    neverStalls: (slowest: string) => `The motion never stalls: at its slowest it still makes ${slowest} a turn.`,
    doesStall:
      'The periodic errors are steeper than the net lead: in part of every turn the motion stalls or runs back.',
    together: 'sum at the far end of the wanted stroke, worst case',
    togetherKnown: 'sum at the far end of the wanted stroke, worst case, of those that have a number',
    /** `term` as the budget names it. */
    termCheck: (v: Asked & { readonly term: string }) =>
      `${v.term.charAt(0).toUpperCase()}${v.term.slice(1)}: ${v.found}; ${v.wanted} or less was wanted.`,
    sumUnjudged: (v: Asked & { readonly missing: number }) =>
      `${v.found} of ${v.wanted} wanted, without ${v.missing === 1 ? 'the term that has' : `the ${v.missing} terms that have`} no number`,
  },

  strength: {
    name: 'strength of cores and threads',
    carries: (thread: Thread, first: keyof typeof FIRST) => `thread ${thread} carries, by its ${FIRST[first]}`,
    check: (v: Asked & { readonly thread: Thread; readonly first: keyof typeof FIRST }) =>
      `Across thread ${v.thread} there are ${v.found} at most; at its weakest (${FIRST[v.first]}) it carries ${v.wanted}.`,
  },

  press: {
    name: 'press fit of the ball',
    carries: 'the ball stays where it was pressed, up to',
    check: (v: Asked) =>
      `The ball carries ${v.found} at most; it was pressed in with ${v.wanted}, and goes no further under less.`,
    notRead: 'the force that pressed it in is not stated: write it in the row of the tip, as in “pressed with 2000 N”',
    loose: 'the ball is loose in its hexagon, so glue or a sleeve must hold it',
  },

  key: {
    name: 'clearance of the key in its slot',
    term: 'clearance of the key, on reversal',
    notStated: 'it is not stated: write it in the row of the lock, as in “key at 12 mm, clearance 0.1 mm”',
    notCrossed: 'not crossed, the torque presses the key to one side both ways',
  },

  /** What no field of the sheet asks for. */
  notLookedAt: {
    sideLoad: { name: 'side load, and friction of the guide', why: 'they are not asked for' },
    float: { name: 'sideways play of the tip', why: 'height of the tip is not asked for' },
    jerks: {
      name: 'jerks as it starts to move (stick-slip)',
      why: 'static friction and twist of the hand are not asked for',
    },
    collar: { name: 'friction of a collar or the tip', why: 'only the threads are taken to have friction' },
    stiffness: {
      name: 'stiffness of threads, screws and base',
      why: 'cores and moduli in the path are not asked for',
    },
    otherSeats: { name: 'ball in a vee, a cone or on rollers', why: 'the seat is taken as a flat' },
    axes: { name: 'axes of the two threads out of line', why: 'offset and angle are not asked for' },
    plating: { name: 'plating', why: 'classes hold before coating, and no coat is asked for' },
    drills: { name: 'tap drills', why: 'share of full thread is not asked for' },
  },
};
