/** Words of what the lock lets through. */

interface Caption {
  readonly A: string;
  readonly C: string;
  readonly force: string;
  readonly swing: string;
  /** What the gap lets through, or nothing where the torque presses the key to the same side both ways. */
  readonly slack: string | undefined;
  readonly wind: string;
  readonly all: string;
  readonly perStep: string;
}

export const WORDS = {
  title: 'Motion that the lock allows',
  plan: 'The carried part from above with its key in a slot of the base; the swing is drawn much too large',
  base: 'base',
  swings: (angle: string) => `swings ${angle}`,
  steps: (count: string, step: string) => `${count} ${step}${count === '1.00' ? '' : 's'}`,
  torques: (clockwise: string, anticlockwise: string) =>
    `torque on the lock: ${clockwise} turning clockwise, ${anticlockwise} turning anticlockwise`,
  slack: (much: string) => `clearance of the key: ${much}`,
  notCrossed: (mark: (words: string) => string) =>
    `clearance of the key: ${mark('not crossed')}, the torque presses the key to the same side both ways`,
  wind: (much: string) => `wind-up of the lock: ${much}`,
  lost: (much: string) => `lost on reversal: ${much}`,
  ruler: (step: string) => `Ruler in ${step}s of the head`,
  stepsEach: (motion: string, step: string) => `${step}s of the head, ${motion} each`,
  caption: ({ A, C, force, swing, slack, wind, all, perStep }: Caption) =>
    `${A} with ${C} under ${force}: on reversal the carried part swings ${swing}; ${
      slack === undefined ? 'the key never crosses its clearance' : `the clearance of the key allows ${slack}`
    }, its wind-up ${wind}, together ${all} of ${perStep}.`,
  windUp: 'wind-up, both ways together',
  swing: 'swing of the carried part',
  head: (step: string) => ['cause', 'torque, anticlockwise is plus', 'motion of the tip', `in ${step}s`],
  rows: {
    clockwise: 'wind-up turning clockwise',
    anticlockwise: 'wind-up turning anticlockwise',
    gap: 'clearance of the key, side to side',
    lost: 'lost on reversal',
  },
};
