/** The words of one turn divided into steps. */
const here = (v: { readonly count: string; readonly one: boolean; readonly step: string; readonly motion: string }) =>
  `turned ${v.count} ${v.step}${v.one ? '' : 's'}: ${v.motion}`;

export const WORDS = {
  title: 'One turn divided into steps',
  pair: (A: string, C: string) => `${A} with ${C}`,
  knob: 'Head of the turned part, from above',
  label: (steps: number) => `The net lead of one turn laid out in ${steps} steps`,
  oneTurn: (v: { readonly count: string; readonly step: string; readonly motion: string }) =>
    `one turn, ${v.count} ${v.step}s: ${v.motion}`,
  oneStep: (step: string, motion: string) => `one ${step}: ${motion}`,
  hand: (angle: string, motion: string) => `a hand that repeats to ${angle}: ${motion}`,
  here,
  caption: (v: {
    readonly pair: string;
    readonly perTurn: string;
    readonly step: string;
    readonly steps: number;
    readonly perStep: string;
    readonly here: string;
    /** Undefined where the hand is taken to be exact. */
    readonly hand: { readonly angle: string; readonly motion: string; readonly fine: boolean } | undefined;
  }) => {
    const hand =
      v.hand === undefined
        ? ''
        : v.hand.fine
          ? ` A hand that repeats to ${v.hand.angle} sets it within ${v.hand.motion}, well inside one ${v.step}.`
          : ` A hand that repeats to ${v.hand.angle} sets it within ${v.hand.motion}, so finer divisions than this can be read but not set.`;
    return `${v.pair}: ${v.perTurn} a turn, one ${v.step} of ${v.steps} is ${v.perStep}; here ${v.here}.${hand}`;
  },
  rows: {
    step: (step: string) => `motion of one ${step}`,
    hand: 'smallest motion of the hand',
    motion: 'carried part',
    perTurn: 'net lead',
  },
  head: ['divided by', 'steps a turn', 'motion per step'],
  dividers: {
    square: 'square',
    hexagon: 'hexagon',
    'twelve points': 'twelve points',
    knob: (divisions: number) => `knob, ${divisions} divisions`,
  },
};
