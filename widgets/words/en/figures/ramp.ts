/** Words of one screw and its ramp. */

interface Caption {
  readonly thread: string;
  readonly rightHand: boolean;
  readonly starts: number;
  readonly pitch: string;
  readonly lead: string;
  readonly angle: string;
  /** How far the screw has moved, without its sign; and +1 up, −1 down, 0 not at all. */
  readonly motion: string;
  readonly way: number;
}

const COLUMNS = { angle: 'angle, clockwise', turns: 'turns', motion: 'motion of the screw' } as const;

export const WORDS = {
  title: 'One screw and its ramp',
  drawing: (thread: string) => `Thread ${thread} and its helix unrolled to a ramp, to one scale`,
  onceRound: (length: string) => `once round: ${length}`,
  lead: (length: string) => `lead ${length}`,
  leadAngle: (angle: string) => `lead angle ${angle}`,
  knob: 'Screw head, from above',
  readout: COLUMNS,
  caption: ({ thread, rightHand, starts, pitch, lead, angle, motion, way }: Caption) => {
    const cut = starts === 1 ? `pitch and lead ${lead}` : `${starts} starts of pitch ${pitch}, lead ${lead}`;
    const moved = way === 0 ? 'has not moved' : `moves ${way < 0 ? 'down' : 'up'} ${motion} through its nut`;
    return `${thread}, ${rightHand ? 'right' : 'left'} hand, ${cut}: turned ${angle} clockwise the screw ${moved}.`;
  },
  head: [COLUMNS.angle, COLUMNS.turns, COLUMNS.motion],
};
