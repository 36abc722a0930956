/** Words of the loop of reversal. */

type Case = 'loose' | 'loaded';

interface Caption {
  /** Width of the loop with friction alone. */
  readonly wide: string;
  readonly lost: string;
  readonly flats: string;
  readonly out: string;
  /** Whether the carried part follows before the end of the turns shown. */
  readonly follows: boolean;
  readonly load: string;
  /** Width of the loop under the load, or nothing where out and back lie on one line. */
  readonly loadedWide: string | undefined;
}

const CASES: Readonly<Record<Case, string>> = { loose: 'friction alone', loaded: 'with the load' };

const reading = (which: Case): string => `reading, ${CASES[which]}`;

const flank = (touches: number): string => (touches === 0 ? 'between' : touches > 0 ? 'pressed' : 'pulled');

export const WORDS = {
  title: 'Reading against turns, out and back',
  plot: 'Reading against turns',
  cases: CASES,
  yourTurning: 'your turning',
  panel: (unit: string) => `Reading on the carried part, in ${unit}`,
  loops: 'The two loops and your turning',
  turnsClockwise: 'turns, clockwise',
  knob: 'Turned part, from above',
  back: 'Turn back',
  out: 'Turn out',
  clear: 'Clear your turning',
  turns: 'turns',
  lostOnReversal: (turns: string) => `${turns} turns lost`,
  reading,
  touching: 'flank that touches',
  /** Flanks by the sign of their force: above nought pressed, below it pulled. */
  flanks: (A: number, C: number) => `A ${flank(A)}, C ${flank(C)}`,
  lost: 'lost on reversal',
  lostTurns: (turns: string) => `${turns} turns`,
  inFlats: 'the same in flats',
  caption: ({ wide, lost, flats, out, follows, load, loadedWide }: Caption) => {
    const when = follows
      ? `after ${lost} turns (${flats} flats)`
      : `not at all within these ${out} turns, since it would take ${lost}`;
    const loaded =
      loadedWide === undefined
        ? 'out and back lie on one line and nothing is lost to play'
        : `the load does not overcome the friction, and the loop is ${loadedWide} wide`;
    return `With friction alone the loop is up to ${wide} wide, and on reversal the carried part follows ${when}. With ${load} on it, ${loaded}.`;
  },
  head: ['way', 'turns, clockwise', reading('loose'), reading('loaded')],
  ways: { out: 'out', back: 'back', again: 'out again' },
};
