/** The words of the flanks under a load. */
type Thread = 'A' | 'C';

/** How the two parts of a thread are called, lower one first. */
const PARTS: Readonly<Record<Thread, readonly [still: string, moving: string]>> = {
  A: ['base', 'turned part'],
  C: ['turned part', 'carried part'],
};

export const WORDS = {
  title: 'Flanks of two threads under a load',
  /** Which flank of a thread touches. */
  touches: (flank: string) => `the ${flank} touches`,
  neither: 'neither flank has to touch',

  panel: (thread: Thread, designation: string) =>
    `Thread ${thread}, ${designation}: ${PARTS[thread][1]} on ${PARTS[thread][0]}`,
  panelLabel: (thread: Thread) => `Thread ${thread}, section to scale and both flanks of one ridge magnified`,
  lens: {
    /** Two lines: the flank, and the part whose flank it is. */
    name: {
      pressed: (thread: Thread) => ['pressed flank', PARTS[thread][1]],
      pulled: (thread: Thread) => ['pulled flank', PARTS[thread][1]],
    },
    open: 'open by',
    closed: 'touches',
  },
  track: {
    title: 'Height of the carried part against the force on it, in N, towards the base is plus',
    label: 'Force on the carried part, towards the base is plus',
    changes: (thread: Thread) => `${thread} changes`,
    text: (v: { readonly force: string; readonly A: string; readonly C: string }) =>
      `${v.force}; thread A: ${v.A}; thread C: ${v.C}`,
  },
  readout: {
    across: { A: 'across thread A', C: 'across thread C' },
    forceAndFlank: (force: string, touching: string) => `${force}, ${touching}`,
    carried: 'carried part, from the middle',
    play: (thread: string) => `play of thread ${thread}`,
    magnify: 'lenses magnify the sections',
    times: (count: string) => `${count} times`,
  },

  caption: (v: {
    readonly A: { readonly force: string; readonly touching: string };
    readonly C: { readonly force: string; readonly touching: string };
    /** Undefined where the carried part stands in the middle of its play. */
    readonly off: { readonly motion: string; readonly above: boolean } | undefined;
    readonly all: string;
    /** The forces at which the threads change sides; undefined where both do at nought. */
    readonly changes: { readonly A: string; readonly C: string } | undefined;
  }) => {
    const where =
      v.off === undefined
        ? 'in the middle of its play'
        : `${v.off.motion} ${v.off.above ? 'above' : 'below'} the middle of its play`;
    const order =
      v.changes === undefined
        ? 'both threads change flanks together as the force goes through zero'
        : `C changes flanks at ${v.changes.C} and A at ${v.changes.A}`;
    return `With ${v.C.force} across thread C ${v.C.touching}; with ${v.A.force} across thread A ${v.A.touching}. The carried part is ${where}. Dragged from end to end the force moves it ${v.all}, and ${order}.`;
  },
  table: {
    head: ['what', 'first', 'second', 'third'],
    thread: (v: {
      readonly thread: Thread;
      readonly designation: string;
      readonly from: string;
      readonly clearance: string;
      readonly play: string;
      readonly float: string;
    }) => [
      `thread ${v.thread}, ${v.designation}, ${v.from}`,
      `clearance ${v.clearance}`,
      `axial play ${v.play}`,
      `radial play ${v.float}`,
    ],
    step: (v: {
      readonly from: string;
      readonly to: string;
      readonly A: string;
      readonly C: string;
      readonly carried: string;
    }) => [`force ${v.from} to ${v.to}`, `A: ${v.A}`, `C: ${v.C}`, `carried part at ${v.carried}`],
  },
};
