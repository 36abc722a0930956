/** Steps as one would call them across the context. */
import { numeral } from '../../input/format.ts';

export const stepWord = (k: number, count: number): string =>
  `${k === 4 || k === 6 ? 'flat' : k === 12 ? 'point' : 'division'}${Math.abs(count) === 1 ? '' : 's'}`;

/** Whole steps with their sense. */
export const turnText = (steps: number, k: number): string =>
  steps === 0
    ? 'leave it'
    : `${numeral(Math.abs(steps))} ${stepWord(k, steps)} ${steps > 0 ? 'clockwise' : 'anticlockwise'}`;
