/** Words of the plot of lead errors. */

/** A lead error as its sentence takes it: how much without its sign, and which way. */
interface LeadError {
  readonly size: string;
  /** Longer than the nominal lead is above nought. */
  readonly error: number;
}

interface Caption {
  readonly A: string;
  readonly C: string;
  /** Whether both threads have the error of thread A. */
  readonly linked: boolean;
  readonly errorA: LeadError;
  readonly errorC: LeadError;
  readonly real: string;
  readonly meant: string;
  readonly share: string;
  readonly turns: string;
  readonly off: string;
  readonly worst: string;
  readonly rss: string;
  readonly gainA: string;
  readonly gainC: string;
}

const errorWords = ({ size, error }: LeadError): string =>
  error === 0 ? 'without lead error' : `${size} ${error > 0 ? 'long' : 'short'}`;

const ifIndependent = (words: string, linked: boolean): string =>
  linked ? `${words}, if they were independent` : words;

export const WORDS = {
  title: 'Lead errors of both threads and the net lead',
  sliders: { eps_A: 'Lead error of thread A', eps_C: 'Lead error of thread C', n: 'Turns' },
  thisPair: 'this pair',
  nominal: 'nominal',
  worst: (linked: boolean) => ifIndependent('worst case', linked),
  rss: (linked: boolean) => ifIndependent('root-sum-square', linked),
  offPanel: 'How far off the carried part is',
  ratePanel: 'Motion of a turn',
  readout: {
    nominal: 'nominal net lead',
    real: 'net lead with the errors',
    eps: 'error of the net lead',
    off: 'off after the turns',
  },
  caption: (v: Caption) => {
    const errors = v.linked
      ? `both threads ${errorWords(v.errorA)}, by the same share`
      : `thread A ${errorWords(v.errorA)}, thread C ${errorWords(v.errorC)}`;
    const bands = v.linked
      ? `The same error on both is not multiplied; independent errors of that size could make ${v.worst}`
      : `Errors of that size either way come to ${v.worst} at worst and ${v.rss} by root-sum-square (gains ${v.gainA} and ${v.gainC})`;
    return `${v.A} with ${v.C}, ${errors}: a turn moves ${v.real} instead of ${v.meant}, ${v.share}; after ${v.turns} the carried part is off by ${v.off}. ${bands}.`;
  },
  head: ['turns, clockwise', 'nominal', 'with the errors', 'off by', 'worst case ±', 'root-sum-square ±'],
};
