/** Words of the axial section. */

/** Amounts are without their sign and already in the reader's units. */
interface Motion {
  readonly amount: string;
  /** +1 up, −1 down, 0 at rest. */
  readonly way: number;
}

interface Present {
  /** Turns clockwise, and as a text without their sign. */
  readonly n: number;
  readonly turns: string;
  readonly turned: Motion;
  readonly carried: Motion;
  readonly perTurn: Motion;
  readonly locked: boolean;
  readonly dial: string;
}

const PARTS = {
  base: 'base',
  turned: 'turned part',
  relative: 'carried on turned',
  carried: 'carried part',
} as const;

const upOrDown = (way: number): string => (way > 0 ? 'up' : 'down');

const went = ({ amount, way }: Motion): string => (way === 0 ? 'stays' : `goes ${upOrDown(way)} ${amount}`);

export const WORDS = {
  title: 'Axial section of two threads in series',
  drawing: (arrangement: string, A: string, C: string) =>
    `Axial section to scale, ${arrangement}: ${A} in the base, ${C} to the carried part`,
  knob: 'Turned part, from above',
  dial: 'Dial on the carried part',
  parts: PARTS,
  held: 'held',
  perTurn: 'net, per turn',
  caption: ({ turns, n, turned, carried, perTurn, locked, dial }: Present) => {
    const soFar =
      n === 0
        ? 'Not turned yet'
        : `${turns} ${Math.abs(n) === 1 ? 'turn' : 'turns'} ${n > 0 ? 'clockwise' : 'anticlockwise'}`;
    // What a turn moves is often just asked above; it stands among the readings, folded.
    const why = !locked
      ? ' (its lock gives way, so thread A alone moves it)'
      : perTurn.way === 0
        ? ' (the leads are equal, so it will never move)'
        : '';
    return `${soFar}: the turned part ${went(turned)}, the carried part ${went(carried)}${why}. The dial stands at ${dial}.`;
  },
  head: ['turns, clockwise', PARTS.turned, PARTS.relative, PARTS.carried],
};
