/** Words of a batch of assemblies. */

interface Caption {
  readonly classes: string;
  /** What was drawn, as `drawn` or `sample` says it. */
  readonly drawn: string;
  readonly half: string;
  readonly halfTurns: string;
  readonly low: string;
  readonly lowTurns: string;
  readonly high: string;
  readonly highTurns: string;
  /** Assemblies that do not go together, where there are any. */
  readonly apart: string | undefined;
}

export const WORDS = {
  title: 'Play of a batch of assemblies',
  plot: 'How the play of the assemblies is spread',
  asClass: (thread: string, classes: string) => `${thread} as ${classes}`,
  pair: (A: string, C: string) => `${A} with ${C}`,
  places: {
    least: 'least that the limits allow',
    low: '5 %',
    middle: 'median',
    high: '95 %',
    most: 'most that the limits allow',
  },
  drawn: (count: string) => `${count} assemblies drawn`,
  sample: (count: string, whole: string) => `A first sample of ${count}; the batch of ${whole} has not been drawn yet`,
  above: (drawn: string, unit: string) =>
    `${drawn}. Above, the play in turns; below, in ${unit}; bars, share of the assemblies`,
  draw: (count: string) => `Draw ${count}`,
  stop: 'Stop',
  progress: 'Assemblies drawn',
  stopped: 'Stopped; the sample stays.',
  numbersChanged: 'Stopped, because the numbers changed.',
  drawnIn: (seconds: string, besideThePage: boolean) =>
    `Drawn in ${seconds} s, ${besideThePage ? 'beside the page' : 'in slices on the page'}.`,
  resultHead: (flats: boolean) => ['of the batch', 'play', flats ? 'flats' : 'steps', 'turns'],
  caption: (v: Caption) =>
    `${v.classes}. ${v.drawn}: half of the assemblies have less play than ${v.half}, which is ${v.halfTurns} turns. Nine in ten lie between ${v.low} and ${v.high}, ${v.lowTurns} to ${v.highTurns} turns.${
      v.apart === undefined ? '' : ` ${v.apart} of them do not go together, because of interference, and are left out.`
    }`,
  head: ['play', 'up to, or in steps', 'assemblies, or turns'],
  placeRow: (place: string, play: string) => `${place}: ${play}`,
  steps: (count: string) => `${count} steps`,
  turns: (count: string) => `${count} turns`,
};
