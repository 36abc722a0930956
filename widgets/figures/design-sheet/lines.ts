/** One line of the sheet, and how its numbers are dressed. */
import type { NumberFormat } from '../../input/format.ts';

interface Dressed {
  readonly amount: number;
  readonly format: NumberFormat;
}

/** What the sheet says of one thing: a value or a range and how it is dressed, or words, such as why there is no value. */
export type Line =
  | { readonly name: string; readonly value: Dressed; readonly to?: Dressed }
  | { readonly name: string; readonly words: string };

export const MOTION: NumberFormat = { shown: 'motion', digits: 4 };
export const TURNS: NumberFormat = { shown: 'turns', digits: 3 };
export const SIZE: NumberFormat = { shown: 'size', digits: 4 };
/** Of the whole adjuster, fine enough to tell the ends of a short stroke. */
export const HEIGHT: NumberFormat = { shown: 'size', digits: 5 };
export const line = (name: string, amount: number, format: NumberFormat): Line => ({ name, value: { amount, format } });
export const range = (name: string, from: number, to: number, format: NumberFormat): Line => ({
  name,
  value: { amount: from, format },
  to: { amount: to, format },
});
export const words = (name: string, text: string): Line => ({ name, words: text });
