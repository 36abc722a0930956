/** What a pair can be refused for. */
export const FILTERS = ['motion', 'hand', 'wall', 'size', 'series', 'owned', 'stroke', 'load'] as const;
export type Filter = (typeof FILTERS)[number];
