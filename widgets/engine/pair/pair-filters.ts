/** What a pair can be refused for, and how each is called on the page. */
export const FILTERS = ['motion', 'hand', 'wall', 'size', 'series', 'owned', 'stroke', 'load'] as const;
export type Filter = (typeof FILTERS)[number];

export const FILTER_WORDS: Readonly<Record<Filter, string>> = {
  motion: 'the motion wanted',
  hand: 'the hands',
  wall: 'the wall of the sleeve',
  size: 'the range of diameters',
  series: 'the series you would buy from',
  owned: 'what you own',
  stroke: 'the least stroke',
  load: 'the load',
};
