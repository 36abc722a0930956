/** One line of the sheet, and how its numbers are dressed. */
import type { NumberFormat } from '../../input/format.ts';

/** What the sheet says of one thing: a value and how it is dressed, words, or why there is no value. */
export interface Line {
  readonly name: string;
  readonly value?: { readonly amount: number; readonly format: NumberFormat };
  readonly to?: { readonly amount: number; readonly format: NumberFormat };
  readonly words?: string;
}

export const MOTION: NumberFormat = { shown: 'motion', digits: 4 };
export const TURNS: NumberFormat = { shown: 'turns', digits: 3 };
export const SIZE: NumberFormat = { shown: 'size', digits: 4 };
export const line = (name: string, amount: number, format: NumberFormat): Line => ({ name, value: { amount, format } });
export const range = (name: string, from: number, to: number, format: NumberFormat): Line => ({
  name,
  value: { amount: from, format },
  to: { amount: to, format },
});
export const words = (name: string, text: string): Line => ({ name, words: text });
