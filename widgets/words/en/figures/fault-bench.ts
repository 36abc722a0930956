/** Words of the jack on a bench with a hidden fault. */
export const WORDS = {
  title: 'Your jack on the bench, with a hidden fault',
  drawing: (name: string) =>
    `${name === '' ? 'The jack' : `The jack ${name}`} on the bench, an indicator over its tip and one beside it`,
  knob: 'Head of the jack, from above',
  along: 'along',
  across: 'across',
  build: {
    first: (count: number) => `Your jack in parts. ${count} steps put it together.`,
    of: (step: number, count: number) => `${step} of ${count}:`,
    count: (count: string) => (count === '–' ? '' : `Count: ${count}.`),
    on: 'Next step',
    all: 'All steps',
    done: 'It stands together, its pencil line straight. Set the work on it.',
  },
  work: {
    on: 'Set the work on it',
    off: 'Take the work off',
    is: (on: boolean) => (on ? 'The work is on.' : 'The work is off.'),
  },
  read: 'Note this reading',
  readAll: 'Read one turn up and down',
  take: 'Take these readings over',
  taken: (count: number) => `Taken over: ${count} readings stand in the calibration’s field.`,
  /** Said beside the buttons, of what was done last. */
  told: {
    reading: (
      when: { readonly at: string; readonly direction: string; readonly work: boolean },
      read: { readonly along: string; readonly across: string },
    ) =>
      `Noted at ${when.at}, turning ${when.direction}, work ${when.work ? 'on' : 'off'}: along ${read.along}, across ${read.across}.`,
    turn: (count: number, work: boolean) =>
      `${count} readings with the work ${work ? 'on' : 'off'} stand in the plot and in the table.`,
    check: (row: { readonly seen: string; readonly here: string; readonly good: string; readonly within: string }) =>
      `${row.seen.charAt(0).toUpperCase()}${row.seen.slice(1)}: ${row.here}; a good jack: ${row.good}, give or take ${row.within}.`,
  },
  checks: {
    block: 'Gauge block under the indicator',
    drift: 'Hands off, and wait',
    line: 'Look at the pencil line',
  },
  diagnosis: 'The fault is',
  choose: 'choose',
  answer: 'Say so',
  next: 'Another jack',
  right: (key: string) => `Yes. ${key} What differs from a good jack is marked.`,
  wrong: (why: string, look: string) => `Not that. ${why} ${look}`,
  notHere: 'Here it is not so.',
  plot: 'Indicator minus the nominal motion',
  legend: { up: 'turning up', down: 'turning down', off: 'hollow: the work is off' },
  evidence: {
    count: (count: number) => `What was seen, beside a good jack: ${count}`,
    head: ['seen', 'here', 'a good jack', 'a sign only if off by more than'],
    lead: 'one turn up',
    wave: 'quarters, off a straight line',
    back: 'back at the start',
    loop: 'down against up, work on',
    free: 'down against up, work off',
    swing: 'swing across, one turn',
    aside: 'stands aside by',
    block: 'gauge block',
    drift: (minutes: number) => `after ${minutes} minutes, hands off`,
    line: 'pencil line, turned back',
    differs: 'differs',
  },
  none: 'none',
  caption: (v: { readonly seed: string; readonly turns: string; readonly nominal: string }) =>
    `Jack ${v.seed}, turned up by ${v.turns}: a jack without fault has moved ${v.nominal} along its axis and nothing across it. What this one shows is on its two indicators.`,
  turns: (count: string) => (count === '1' ? '1 turn' : `${count} turns`),
  head: ['turns', 'direction', 'along, work on', 'across, work on', 'along, work off'],
  directions: { up: 'up', down: 'down' },
  reads: 'reads',
};
