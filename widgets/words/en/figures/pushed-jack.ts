/** Words of the jack as built, pushed from the side. */
import type { GivingPart, JointName } from '../../../engine/index.ts';

export interface JointWords {
  readonly joint: JointName;
  readonly touches: 'everywhere' | 'in places' | 'both flanks' | 'pulled flank' | 'nowhere';
}

const NAMES: Readonly<Record<JointName, string>> = {
  ring: 'the base on its ring',
  A: 'thread A',
  C: 'thread C',
  guide: 'the guide',
  key: 'the key',
};

const TOUCHES: Readonly<Record<JointWords['touches'], string>> = {
  everywhere: 'touches everywhere',
  'in places': 'touches in places',
  'both flanks': 'leans, and touches on both flanks',
  'pulled flank': 'hangs on its pulled flank',
  nowhere: 'touches nowhere',
};

export const WORDS = {
  title: 'The jack as built, pushed from the side',
  elevation: (factor: string) =>
    `The jack as a solid at the last place, its lean and the path of its tip drawn ${factor} times too large`,
  plan: (factor: string) => `The path of the tip from above, drawn ${factor} times too large`,
  drawn: {
    lean: (factor: string) => `lean and path ${factor} times`,
    path: (factor: string) => `path from above, about ${factor} times`,
  },
  bar: (length: string) => length,
  panel: 'Height less that of the nominal net lead',
  legend: { pushed: 'pushed', quiet: 'without the push' },
  working: 'Working through the turns …',
  progress: 'Share of the turns worked',
  caption: (v: {
    readonly push: string;
    readonly height: string;
    readonly load: string;
    readonly turns: string;
    readonly moves: string;
    readonly round: string;
    readonly off: string;
    readonly joints: string;
  }) =>
    `Under ${v.load}, a push of ${v.push} at ${v.height} moves the tip sideways by ${v.moves}. Over ${v.turns} the tip goes round within ${v.round} and leaves the nominal height by up to ${v.off}; ${v.joints}.`,
  workingCaption: (turns: string) => `Working through ${turns}; the path follows.`,
  joint: ({ joint, touches }: JointWords) => `${NAMES[joint]} ${TOUCHES[touches]}`,
  jointName: (joint: JointName) => NAMES[joint],
  touches: (touches: JointWords['touches']) => TOUCHES[touches],
  readings: {
    moves: 'sideways by the push',
    round: 'width of the path',
    high: 'height off, at most',
    torque: 'torque of the hand, mean',
    lost: 'twist of the carried part',
    gauge: 'a gauge beside the axis, off by the lean',
    stiffness: (softest: GivingPart) => `stiffness under this load; the ${softest} gives most`,
    frequency: 'the load swings on it',
  },
  joints: {
    head: ['joint', 'along the axis', 'across it', 'touches'],
  },
  head: ['turns', 'sideways, along the push', 'sideways, across it', 'height off', 'tilt', 'torque'],
  noneYet: { head: ['turns'], rows: [['none yet'], ['none yet']] },
};
