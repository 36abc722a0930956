/** What a typed answer is worth: right, the other way, a known slip, wrong, or not to be read. It never says the answer. */

import { NOT_NOUGHT, notFarOff, OTHER_WAY, rightAnswer, slipMade, tooFarOff } from '#words/papers.ts';
import { UNITS } from '../engine/index.ts';
import { readQuantity } from '../input/quantity.ts';
import { reasonOf } from '../words/reason.ts';
import { acceptedText, answerText, type Item } from './exercise.ts';
import { acceptedInterval, within } from './interval.ts';

export interface Verdict {
  readonly kind: 'right' | 'other way' | 'slip' | 'wrong' | 'unread';
  readonly says: string;
}

/** A bare number counts in the unit asked. */
export const judge = (item: Item, text: string): Verdict => {
  const { unit, digits } = item.exercise;
  const { base, factor } = UNITS[unit];
  const read = readQuantity(text, base, unit);
  if (!read.ok) return { kind: 'unread', says: reasonOf(read) };
  const amount = read.value.value / factor;
  if (within(amount, item.accepted)) return { kind: 'right', says: rightAnswer(answerText(item), acceptedText(item)) };
  if (within(-amount, item.accepted)) return { kind: 'other way', says: OTHER_WAY };
  const slip = nearest(amount, item) ?? nearest(-amount, item);
  if (slip !== undefined) return { kind: 'slip', says: slipMade(slip) };
  if (amount === 0) return { kind: 'wrong', says: NOT_NOUGHT };
  const large = Math.abs(amount) > Math.abs(item.amount);
  const near = Math.abs(Math.abs(amount / item.amount) - 1) < 0.1;
  return {
    kind: 'wrong',
    says: near ? notFarOff(large) : tooFarOff(large, amount * item.amount < 0),
  };

  function nearest(x: number, { slips }: Item): string | undefined {
    const fits = slips.filter((s) => s.amount !== 0 && within(x, acceptedInterval(s.amount, digits)));
    return fits.sort((a, b) => Math.abs(a.amount - x) - Math.abs(b.amount - x))[0]?.says;
  }
};
