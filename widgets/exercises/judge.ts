/**
 * What an answer is worth: right, the other way, a known slip, wrong, or not to be read. It never says the answer; where no slip fits it asks
 * one question that leads on.
 */

import {
  chooseOne,
  eachOnce,
  NOT_NOUGHT,
  notFarOff,
  OTHER_WAY,
  rightAnswer,
  slipMade,
  tooFarOff,
} from '#words/papers.ts';
import { UNITS } from '../engine/index.ts';
import { readQuantity } from '../input/quantity.ts';
import { reasonOf } from '../words/reason.ts';
import { asCounted } from './as-counted.ts';
import { acceptedText, answerText, type Item } from './exercise.ts';
import { acceptedInterval, within } from './interval.ts';
import { leadsOn } from './leads-on.ts';
import { looselyWritten } from './loosely.ts';
import { LETTERS, type Offered, type Option, orderSays } from './offered.ts';

export interface Verdict {
  readonly kind: 'right' | 'other way' | 'slip' | 'wrong' | 'unread';
  readonly says: string;
}

/** A bare number counts in the unit asked; what is chosen or put in order is given by its letters. */
export const judge = (item: Item, text: string): Verdict =>
  item.offered ? judgeOffered(item, item.offered, text) : judgeNumber(item, text);

const judgeOffered = (item: Item, offered: Offered, text: string): Verdict => {
  const { options, right } = offered;
  const letters = LETTERS.slice(0, options.length);
  const order = right.length > 1;
  const typed =
    (order ? undefined : letterOf(options, text)) ??
    text
      .slice(0, 60)
      .toLowerCase()
      .replace(/[\s,.;)]/g, '');
  const readable = order
    ? typed.length === letters.length && [...letters].every((one) => typed.includes(one))
    : typed.length === 1 && letters.includes(typed);
  if (!readable) {
    const list = [...letters].join(', ');
    return { kind: 'unread', says: order ? eachOnce(list) : chooseOne(list) };
  }
  if (typed === right)
    return { kind: 'right', says: [rightAnswer(answerText(item), ''), item.decides ?? ''].join(' ').trim() };
  const says = order ? orderSays(offered, typed) : (options[letters.indexOf(typed)]?.says ?? '');
  return { kind: item.slips.some((s) => s.says === says) ? 'slip' : 'wrong', says: slipMade(says) };
};

/** The letter of the one option whose words these are. */
const letterOf = (options: readonly Option[], text: string): string | undefined => {
  const typed = looselyWritten(text.slice(0, 200));
  const [at, another] = options.flatMap((one, i) => (looselyWritten(one.text) === typed ? [i] : []));
  return at === undefined || another !== undefined ? undefined : LETTERS[at];
};

const judgeNumber = (item: Item, text: string): Verdict => {
  const { unit, digits } = item.exercise;
  const { base, factor } = UNITS[unit];
  const read = readQuantity(asCounted(item, text), base, unit);
  if (!read.ok) return { kind: 'unread', says: reasonOf(read) };
  const amount = read.value.value / factor;
  if (within(amount, item.accepted)) return { kind: 'right', says: rightAnswer(answerText(item), acceptedText(item)) };
  if (within(-amount, item.accepted)) return { kind: 'other way', says: OTHER_WAY };
  const slip = nearest(amount, item) ?? nearest(-amount, item);
  if (slip !== undefined) return { kind: 'slip', says: slipMade(slip) };
  const question = leadsOn(item, amount);
  if (amount === 0) return { kind: 'wrong', says: `${NOT_NOUGHT} ${question}` };
  const large = Math.abs(amount) > Math.abs(item.amount);
  const near = Math.abs(Math.abs(amount / item.amount) - 1) < 0.1;
  return {
    kind: 'wrong',
    says: near ? notFarOff(large) : `${tooFarOff(large, amount * item.amount < 0)} ${question}`,
  };

  function nearest(x: number, { slips }: Item): string | undefined {
    const fits = slips.filter((s) => s.amount !== 0 && within(x, acceptedInterval(s.amount, digits)));
    return fits.sort((a, b) => Math.abs(a.amount - x) - Math.abs(b.amount - x))[0]?.says;
  }
};
