/** Words of the bench card. */
export const WORDS = {
  title: 'The order of work, on one card',
  drawing: 'Section to scale, put together',
  heading: (name: string) => `Bench card${name === '' ? '' : `: ${name}`}`,
  threads: (A: string, C: string | undefined, perTurn: string) =>
    `${C === undefined ? A : `${A} and ${C}`}; ${perTurn} a turn, clockwise`,
  cautions:
    'Not lifting gear. Block heavy work, keep hands and body out from under it, and stay within the load stated by whoever supplied the hardware. The shop’s rules, local codes and licensed practice come first.',
  signed: ['piece', 'date', 'put together by', 'checked by'],
  caption: (v: {
    readonly steps: number;
    readonly A: string;
    readonly C: string | undefined;
    readonly check:
      | { readonly turns: string; readonly clockwise: boolean; readonly from: string; readonly to: string }
      | undefined;
    readonly reverse: string;
    readonly windsUnknown: boolean;
  }) =>
    `${v.steps} steps. Thread A is backed out ${v.A} turns from home${v.C === undefined ? '' : `, thread C ${v.C}`}. ` +
    `${v.check === undefined ? 'There is no room for a whole step to either stop, so only the reversal is checked.' : `The indicator passes it if ${v.check.turns} ${String(v.check.turns) === '1' ? 'turn' : 'turns'} ${v.check.clockwise ? 'clockwise' : 'anticlockwise'} ${String(v.check.turns) === '1' ? 'reads' : 'read'} ${v.check.from} to ${v.check.to}.`} A reversal may differ by ${v.reverse}${v.windsUnknown ? ', and by the wind-up of the lock, whose stiffness is not known' : ''}.`,
  rows: {
    turn: 'carried part moves, a turn',
    from: (turns: string) => `after ${turns} turns it reads at least`,
    to: (turns: string) => `after ${turns} turns it reads at most`,
    reverse: 'a reversal may differ by',
  },
  parts: { prepare: 'Threads and faces', build: 'Put together', check: 'Check by the indicator' },
  done: (done: number, of: number) => `${done} of ${of} done`,
  tick: (name: string) => `${name.replace(/\.$/, '')}: done`,
  none: '–',
  head: ['step', 'what', 'how', 'count', 'caution'],
};
