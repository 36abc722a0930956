/** Words of the jack as a solid, with the path of its tip over it. */

export const WORDS = {
  title: 'The jack as a solid, with the path of its tip',
  drawing: 'The jack from the side and a little from above, and over it the path of its tip, drawn too large',
  knob: 'Turned part, from above',
  sliders: { round: 'look round', above: 'look from above', cut: 'cut open' },
  degrees: (count: string) => `${count}°`,
  legend: { pushed: 'path of the tip', quiet: 'without the push', nominal: 'nominal straight line' },
  turns: (count: string) => `${count} ${count === '1' ? 'turn' : 'turns'}`,
  push: (force: string) => `push ${force}`,
  factor: {
    across: (times: string) => `× ${times} across`,
    along: (times: string) => `× ${times} along`,
  },
  working: (share: string) => `The path is worked out: ${share} % done.`,
  workingCaption: (turns: string) => `Working through ${turns}; the jack turns already, and the path follows.`,
  caption: (v: {
    readonly push: string | undefined;
    readonly moves: string;
    readonly over: string;
    readonly round: string;
    readonly n: string;
    readonly aside: string;
    readonly off: string;
    readonly way: 'high' | 'low' | 'level';
    /** Whether the run goes back again. */
    readonly back: boolean;
    readonly across: string;
    readonly along: string;
    /** What was asked, where the run is shorter. */
    readonly beyond: string | undefined;
    /** Where the parts as drawn stop. */
    readonly stopped: string | undefined;
  }) =>
    [
      v.beyond && `The run does not reach ${v.beyond}, so it stands at ${v.n}.`,
      v.push
        ? `A push of ${v.push} moves the tip sideways by ${v.moves}, and over ${v.over} its path is ${v.round} wide.`
        : `Nothing pushes from the side, and over ${v.over} the path of the tip is ${v.round} wide.`,
      `After ${v.n}${v.back ? ' on the way out' : ''} the tip is ${v.aside} beside the axis and ${v.way === 'level' ? 'at its nominal height' : `${v.off} too ${v.way}`}.`,
      `The path is drawn ${v.across} times too large across the axis and ${v.along} times along it.`,
      v.stopped && `The parts as drawn have no more than ${v.stopped}.`,
    ]
      .filter(Boolean)
      .join(' '),
  rows: {
    moves: 'sideways by the push',
    round: 'width of the path',
    along: 'now along the push',
    across: 'now across it',
    off: 'now off the nominal height',
  },
  head: ['turns', 'sideways, along the push', 'sideways, across it', 'height off'],
  noneYet: { head: ['turns'], rows: [['none yet'], ['none yet']] },
};
