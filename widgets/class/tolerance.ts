/**
 * An item's answer as exports state it: the correct value and how far below and above it an answer may lie, as decimals
 * that are exact in themselves. The tolerances reach half a unit beyond the last digit of the printed edges, so that a program that
 * subtracts in binary still takes an answer that stands on an edge.
 */
import type { Item } from './exercise.ts';

export interface StatedAnswer {
  readonly value: string;
  readonly below: string;
  readonly above: string;
}

export const statedAnswer = ({ amount, accepted }: Item): StatedAnswer => {
  const places = accepted.decimals + 1;
  const scale = 10 ** places;
  const whole = (x: number) => Math.round(x * scale);
  const centre = whole(amount);
  const decimal = (n: number) => (n / scale).toFixed(places);
  return {
    value: decimal(centre),
    below: decimal(centre - whole(accepted.low) + 5),
    above: decimal(whole(accepted.high) - centre + 5),
  };
};
