/**
 * An item's answer as exports state it, in plain decimals: the correct value with one digit more than the edges, and the edges as
 * they are printed. An answer that stands on an edge is the same number there, so no program has to subtract to take it.
 */
import type { Item } from './exercise.ts';

export interface StatedAnswer {
  readonly value: string;
  readonly low: string;
  readonly high: string;
}

export const statedAnswer = ({ amount, accepted: { low, high, decimals } }: Item): StatedAnswer => ({
  value: amount.toFixed(decimals + 1),
  low: low.toFixed(decimals),
  high: high.toFixed(decimals),
});
