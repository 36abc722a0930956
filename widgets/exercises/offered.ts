/**
 * The kinds of exercise that offer answers or lines in place of a field: what they offer and which is right. All of it is made from the one
 * definition (the worked answer and its known slips), so there is no second truth to keep. An answer is written in letters, `b`, or
 * `cadb` for an order, on paper and on the page.
 */
import { FLANKS, flankAsked, LINE_HOLDS, OTHER_WAY, orderLeads, WAYS, wayAsked } from '#words/papers.ts';
import { bad, good, type Result } from '../engine/index.ts';
import { pick, stateOf } from './seed.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'too-few-to-choose': Readonly<Record<never, never>>;
  }
}

/** What is done to answer; where an exercise has no kind, a number is typed. */
export type Kind = 'choice' | 'way' | 'flank' | 'wrong-line' | 'order' | 'stack' | 'table';

/** One of the answers offered, or one of the lines shown. */
export interface Option {
  readonly text: string;
  /** To the reader who takes it though it is wrong: what was probably thought, or a question that leads on. */
  readonly says: string;
  /** Of a stack, where it lies in its drawer. */
  readonly lies?: number;
}

export interface Offered {
  readonly options: readonly Option[];
  /** The letters of the right answer, or of the right order. */
  readonly right: string;
}

interface Wrong {
  readonly amount: number;
  readonly says: string;
}

export const LETTERS = 'abcdefgh';
const letter = (at: number): string => LETTERS[at] ?? '';

/** The places of a row of this length, shuffled by these words, for ever the same. */
export const shuffled = (length: number, words: readonly string[]): number[] => {
  const places = Array.from({ length }, (_, i) => i);
  const state = stateOf(words);
  for (let i = length - 1; i > 0; i--) {
    const j = pick(state, i + 1);
    [places[i], places[j]] = [places[j] ?? 0, places[i] ?? 0];
  }
  return places;
};

const MOST_OFFERED = 4;
const FEWEST_OFFERED = 3;
/** Two amounts nearer than this can’t be told apart by an idea. */
export const APART = 0.03;

/** The right amount among its slips; those that fit any answer, and the other way, fill up. */
export const choiceOf = (
  amount: number,
  slips: readonly Wrong[],
  write: (x: number) => string,
  words: readonly string[],
): Result<Offered> => {
  const offered: { amount: number; says: string }[] = [{ amount, says: '' }];
  const apart = (x: number, y: number) => Math.abs(x - y) > APART * Math.max(Math.abs(x), Math.abs(y));
  for (const wrong of [...slips, { amount: -amount, says: OTHER_WAY }]) {
    if (offered.length >= MOST_OFFERED) break;
    // A sign that no answer of its kind has would give the wrong one away.
    if (wrong.amount === 0 || (wrong.says === OTHER_WAY && amount > 0 && slips.every((s) => s.amount > 0))) continue;
    if (offered.every((o) => apart(o.amount, wrong.amount) && write(o.amount) !== write(wrong.amount)))
      offered.push(wrong);
  }
  if (offered.length < FEWEST_OFFERED) return bad('too-few-to-choose', {});
  const order = shuffled(offered.length, ['options', ...words]);
  return good({
    options: order.map((at) => ({ text: write(offered[at]?.amount ?? 0), says: offered[at]?.says ?? '' })),
    right: letter(order.indexOf(0)),
  });
};

/** Plus, minus or nought, under its words: always these three, in this order. */
export const signOf = (x: number): number => (Math.abs(x) < 1e-12 ? 2 : x > 0 ? 0 : 1);
const bySign = (
  value: number,
  slips: readonly Wrong[],
  words: readonly string[],
  leads: (said: string) => string,
): Offered => {
  const right = signOf(value);
  return {
    options: words.map((text, at) => ({
      text,
      says: at === right ? '' : (slips.find((s) => signOf(s.amount) === at)?.says ?? leads(text)),
    })),
    right: letter(right),
  };
};
/** `found` says what the last step gives, in words. */
export const wayOf = (value: number, slips: readonly Wrong[], found: string): Offered =>
  bySign(value, slips, WAYS, () => wayAsked(found));
export const flankOf = (value: number, slips: readonly Wrong[], found: string): Offered =>
  bySign(value, slips, FLANKS, () => flankAsked(found));

/** Worked lines of which one is wrong. */
export const wrongLineOf = (lines: readonly string[], at: number): Offered => ({
  options: lines.map((text, i) => ({ text, says: i === at ? '' : LINE_HOLDS(i < at) })),
  right: letter(at),
});

/** How many ways there are to take so many lines out of a row. */
export const waysToTake = (of: number, lines: number): number => {
  let ways = 1;
  for (let i = 0; i < lines; i++) ways = (ways * (of - i)) / (i + 1);
  return Math.round(ways);
};

/** The taking with this index: places in rising order. */
export const taken = (of: number, lines: number, index: number): number[] => {
  const places: number[] = [];
  let rest = index;
  for (let place = 0; places.length < lines && place < of; place++) {
    const ways = waysToTake(of - place - 1, lines - places.length - 1);
    if (rest < ways) places.push(place);
    else rest -= ways;
  }
  return places;
};

/** Some lines of a row, shown out of order. */
export const orderOf = (row: readonly string[], lines: number, index: number, words: readonly string[]): Offered => {
  const right = taken(row.length, lines, index).map((place) => row[place] ?? '');
  let shown = shuffled(lines, ['order', ...words]);
  // By chance in order already: turned round.
  if (shown.every((place, i) => place === i)) shown = shown.toReversed();
  return {
    options: shown.map((place) => ({ text: right[place] ?? '', says: '' })),
    right: right.map((_, place) => letter(shown.indexOf(place))).join(''),
  };
};

/** To an order that is wrong: the first pair of neighbours that stand the wrong way round. */
export const orderSays = ({ options, right }: Offered, typed: string): string => {
  for (let i = 0; i + 1 < typed.length; i++) {
    const [first, then] = [typed[i] ?? '', typed[i + 1] ?? ''];
    if (right.indexOf(first) > right.indexOf(then)) return orderLeads(textOf(options, first), textOf(options, then));
  }
  return '';
};
const textOf = (options: readonly Option[], at: string): string => options[LETTERS.indexOf(at)]?.text ?? '';
