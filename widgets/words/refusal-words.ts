/** What a table of refusals must have: a sentence for every code, made from the values of that code. */
import type { RefusalCode, Refusals } from '../engine/index.ts';

export type RefusalWords<K extends RefusalCode = RefusalCode> = { readonly [P in K]: (values: Refusals[P]) => string };
