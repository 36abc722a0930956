/** What a typed answer is worth: right, the other way, a known slip, wrong, or not to be read. It never says the answer. */

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
  if (within(amount, item.accepted))
    return { kind: 'right', says: `Right: ${answerText(item)}. Accepted: ${acceptedText(item)}.` };
  if (within(-amount, item.accepted))
    return { kind: 'other way', says: 'The right amount, but the other way: look at the sign.' };
  const slip = nearest(amount, item) ?? nearest(-amount, item);
  if (slip !== undefined) return { kind: 'slip', says: `Not yet. ${slip}` };
  if (amount === 0) return { kind: 'wrong', says: 'Not yet: it is not nought.' };
  const large = Math.abs(amount) > Math.abs(item.amount);
  const near = Math.abs(Math.abs(amount / item.amount) - 1) < 0.1;
  return {
    kind: 'wrong',
    says: near
      ? `Not yet, though not far off: a little too ${large ? 'large' : 'small'}. Was something rounded on the way?`
      : `Not yet: too ${large ? 'large' : 'small'}${amount * item.amount < 0 ? ' an amount, and the other way' : ''}.`,
  };

  function nearest(x: number, { slips }: Item): string | undefined {
    const fits = slips.filter((s) => s.amount !== 0 && within(x, acceptedInterval(s.amount, digits)));
    return fits.sort((a, b) => Math.abs(a.amount - x) - Math.abs(b.amount - x))[0]?.says;
  }
};
