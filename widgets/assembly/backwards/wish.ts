/** A result as a reader wishes it: one exact number. What is known to be more than that is refused with what to do instead. */
import { type BaseUnit, bad, good, type Result, type Unit } from '../../engine/index.ts';
import { readQuantity } from '../../input/quantity.ts';
import { statesSpread } from '../../input/spread.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'wish-with-spread': { readonly text: string };
    'wish-of-several': { readonly text: string };
    'wish-open': { readonly text: string };
  }
}

/** Two wishes in one, and a second number that is left open. */
const SEVERAL = /;|&|\band\b|\d\s*,\s+\S/i;

export const readWish = (text: string, base: BaseUnit, unit: Unit): Result<number> => {
  if (/^\s*(?:[^\d]*=)?\s*\?\s*$/.test(text)) return bad('wish-open', { text });
  if (SEVERAL.test(text)) return bad('wish-of-several', { text });
  if (statesSpread(text)) return bad('wish-with-spread', { text });
  const read = readQuantity(text, base, unit);
  return read.ok ? good(read.value.value) : read;
};
