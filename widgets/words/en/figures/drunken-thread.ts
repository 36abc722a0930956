/** The words of the drunken thread. */
interface Stretch {
  readonly from: string;
  /** With its unit. */
  readonly to: string;
}
const along = ({ from, to }: Stretch) => `from ${from} to ${to}`;

const DOES = { 'runs back': 'runs back', 'nearly stands': 'nearly stands', 'moves on': 'moves on' };
type Does = keyof typeof DOES;

export const WORDS = {
  title: 'Periodic errors: position and rate',
  does: DOES,
  sliders: {
    a_A: 'Amplitude of thread A',
    a_C: 'Amplitude of thread C',
    phi_C: 'Phase of thread C',
    n: 'Turns',
  },
  legend: {
    carried: 'carried part',
    nominal: 'without periodic error',
    back: 'runs back; stands still at both edges',
    slow: (share: string) => `nearly stands, below ${share} of the net lead`,
  },
  panels: { place: 'Position', rate: 'Rate: motion per turn, at each place' },
  readout: {
    nominal: 'net lead',
    slope: 'steepest slope of both waves, a turn',
    slowest: 'rate at the slowest place, along the net motion',
    here: 'rate here, a turn',
    hereText: (motion: string, does: Does) => `${motion}: ${DOES[does]}`,
    run: 'run back in every turn',
  },
  /** What the errors do to the motion. */
  verdict: {
    back: (v: { readonly motion: string; readonly share: string; readonly first: Stretch }) =>
      `more than the net lead, so the carried part runs back ${v.motion} over ${v.share} of every turn, first ${along(v.first)}, and stands still at both ends of that stretch`,
    slow: (v: { readonly first: Stretch; readonly slowest: string }) =>
      `just short of the net lead, so it nearly stands, first ${along(v.first)}, down to ${v.slowest} a turn`,
    never: (slowest: string) => `so it never stands still: at the slowest place its rate is ${slowest} a turn`,
  },
  caption: (v: {
    readonly A: string;
    readonly C: string;
    readonly perTurn: string;
    readonly errorA: string;
    readonly errorC: string;
    readonly together: string;
    readonly slope: string;
    readonly verdict: string;
    readonly here: { readonly turns: string; readonly place: string; readonly rate: string; readonly does: Does };
  }) =>
    `${v.A} with ${v.C}, ${v.perTurn} a turn, with periodic errors of amplitude ${v.errorA} and ${v.errorC}: at their phases together ${v.together}, which changes the rate by up to ${v.slope} a turn, ${v.verdict}. ` +
    `At ${v.here.turns} it is at ${v.here.place} and its rate is ${v.here.rate} a turn: it ${DOES[v.here.does]}.`,
  head: ['turns, clockwise', 'without error', 'periodic error', 'position', 'rate, a turn', 'it'],
};
