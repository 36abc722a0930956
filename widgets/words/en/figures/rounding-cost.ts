/** Words of what rounding first costs. */

export const WORDS = {
  title: 'What rounding first costs',
  exactly: (sum: string) => `Exactly: ${sum}`,
  bars: 'Bars of the net lead',
  drawing: (A: string, C: string) =>
    `Net lead of ${A} and ${C} when the leads are rounded first, against the exact one`,
  keptTo: 'leads kept to',
  give: 'net lead they give',
  offBy: 'off by',
  notRounded: 'not rounded',
  nothingLost: 'nothing lost',
  standsStill: 'stands still',
  caption: (exact: string, rounded: string, error: string) =>
    `The exact net lead is ${exact}; leads rounded to a thousandth of a millimetre give ${rounded} (${error}).`,
  head: ['decimals of a millimetre', 'leads', 'net lead', 'error'],
  exact: 'exact',
  none: 'none',
};
