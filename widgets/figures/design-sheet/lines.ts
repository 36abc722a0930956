/** One line of the sheet, and how its numbers are dressed. */
import type { Dress } from '../../input/format.ts';

/** What the sheet says of one thing: a value and how it is dressed, words, or why there is no value. */
export interface Line {
  readonly name: string;
  readonly value?: { readonly amount: number; readonly dress: Dress };
  readonly to?: { readonly amount: number; readonly dress: Dress };
  readonly words?: string;
}

export const MOTION: Dress = { shown: 'motion', digits: 4 };
export const TURNS: Dress = { shown: 'turns', digits: 3 };
export const SIZE: Dress = { shown: 'size', digits: 4 };
export const line = (name: string, amount: number, dress: Dress): Line => ({ name, value: { amount, dress } });
export const range = (name: string, from: number, to: number, dress: Dress): Line => ({
  name,
  value: { amount: from, dress },
  to: { amount: to, dress },
});
export const words = (name: string, text: string): Line => ({ name, words: text });
