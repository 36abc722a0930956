/** Words of a relaxing spring. */

interface Caption {
  readonly fitted: boolean;
  readonly start: string;
  readonly loss: string;
  readonly life: string;
  readonly left: string;
  readonly needed: string;
  /** When it has fallen to what is needed: after a time, from the start, or not within what the law tells. */
  readonly falls: { readonly after: string } | 'from the start' | 'never';
  /** Whether the end of life is beyond what the readings can tell. */
  readonly guess: boolean;
}

export const WORDS = {
  title: 'Force of a relaxing spring against time',
  panel: 'Force of the spring, in newtons',
  drawing: 'Force of the spring against time, each step of the scale ten times the one before',
  mustBeLeft: 'must be left',
  endOfLife: 'end of life',
  timeAxis: 'time under constant stretch',
  verdict: (enough: boolean, left: string, life: string, needed: string) =>
    `${enough ? 'enough' : 'not enough'}: ${left} is left after ${life}, and ${needed} must be left.`,
  caption: ({ fitted, start, loss, life, left, needed, falls, guess }: Caption) => {
    const fallen =
      falls === 'never'
        ? 'it does not fall to that within a hundred years'
        : falls === 'from the start'
          ? 'it has no more than that from the start'
          : `it has fallen to that after ${falls.after}`;
    return (
      `${fitted ? 'Fitted to two readings' : 'As stated'}: ${start} at the start, ${loss} of it lost per tenfold time. ` +
      `After ${life}, ${left} is left, and ${needed} must be left; ${fallen}.` +
      (guess ? ' That is beyond ten times the last reading, so it is a guess: read again later.' : '')
    );
  },
  head: ['time', 'force left', 'over what must be left'] as const,
  rows: {
    left: 'force left at the end of life',
    falls: 'time until no more is left than must be',
    loss: 'lost for each tenfold time',
  },
};
