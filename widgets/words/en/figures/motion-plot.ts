/** Words of position against turns. */

interface Caption {
  /** Turns either way that the plot reaches. */
  readonly reach: number;
  readonly turned: string;
  readonly relative: string;
  readonly carried: string;
  /** Where the reader has turned to, and what the carried part is at there. */
  readonly turns: string;
  readonly here: string;
}

export const WORDS = {
  title: 'Position against turns',
  curves: { relative: 'carried on turned', turned: 'turned part', carried: 'carried part' },
  allThree: 'All three motions',
  carriedAlone: 'The carried part alone',
  panel: (name: string, unit: string) => `${name}, in ${unit}`,
  turns: 'turns, clockwise',
  caption: ({ reach, turned, relative, carried, turns, here }: Caption) =>
    `Three straight lines through zero. Over ${reach} turns the turned part moves ${turned}, the carried part on it ${relative}, and the carried part itself only ${carried}. At ${turns} it is at ${here}.`,
};
