/** What a table of refusals must have: a sentence for every code, made from the values of that code. */
import type { Bad, RefusalCode, Refusals } from '../engine/index.ts';

/** The sentence of a refusal that stands behind another; handed in, since the tables can’t know who gathers them. */
export type Behind = (why: Bad) => string;

export type RefusalWords<K extends RefusalCode = RefusalCode> = {
  readonly [P in K]: (values: Refusals[P], behind: Behind) => string;
};
