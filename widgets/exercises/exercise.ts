/**
 * An exercise: pools of stock sizes, a question with places for them, the steps of the answer and the slips that are
 * known. `itemAt` makes one item of it; the press, the page, the papers and the tests all get their items here.
 */

import {
  ask,
  fromTo,
  INCHES_FOR_MILLIMETRES,
  LOOK_AT_PREFIX,
  LOOK_AT_UNIT,
  MILLIMETRES_FOR_INCHES,
  POINT_MOVED,
  TENTHS_OF_THOU,
  tenTimes,
  tenth,
  thousandTimes,
  thousandth,
} from '#words/papers.ts';
import { gather, type Input, readInput, scopeOf, type Value } from '../assembly/numbers.ts';
import { runSteps, type Step, type StepOutcome } from '../assembly/steps.ts';
import { bad, good, type Result, toBase, UNITS, type Unit } from '../engine/index.ts';
import { numeral } from '../input/format.ts';
import { acceptedInterval, halfDigit, type Interval, within } from './interval.ts';
import { evaluateSlip } from './slip-formula.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'step-without-result': { readonly step: number; readonly why: Bad };
    'no-answering-step': Readonly<Record<never, never>>;
    'answer-nought': Readonly<Record<never, never>>;
    /** Nobody asks for so small or so large a number; the amount as it is printed. */
    'answer-of-odd-size': {
      readonly amount: string;
      readonly unit: string;
      readonly least: number;
      readonly most: number;
    };
    'slip-gives-answer': { readonly says: string };
  }
}

/** One number of the question and the texts it may be drawn from. */
export interface Pool {
  readonly input: Input;
  readonly options: readonly string[];
}

export interface SlipRule {
  /** Steps in the wrong way, or a formula. */
  readonly way: readonly Step[] | string;
  readonly says: string;
}

export interface Exercise {
  readonly id: string;
  readonly title: string;
  readonly pools: readonly Pool[];
  /** Plain text with places such as {A}. */
  readonly question: string;
  readonly steps: readonly Step[];
  readonly unit: Unit;
  /** Significant digits asked. */
  readonly digits: number;
  readonly slips: readonly SlipRule[];
  readonly hint: string;
  /** The same asked the other way round: which pool is to be found from the answer; see forms.ts. */
  readonly backwards?: Backwards;
  /** The answer is told, and the way to it asked. */
  readonly shows?: true;
  /** How a form of another exercise makes its items; none of what an author writes has it. */
  readonly asItem?: (picks: readonly number[]) => Result<Item>;
}

export interface Backwards {
  readonly name: string;
  readonly unit: Unit;
  readonly digits: number;
  /** Plain text with places, {answer} among them. */
  readonly question: string;
}

export interface KnownSlip {
  /** In the unit asked. */
  readonly amount: number;
  readonly says: string;
  /** Which of the exercise’s slips it is; undefined for one that fits any answer. */
  readonly rule?: number;
}

export interface Item {
  readonly exercise: Exercise;
  /** Which option of each pool. */
  readonly picks: readonly number[];
  readonly question: string;
  readonly hint: string;
  readonly outcomes: readonly StepOutcome[];
  /** The answer in the unit asked, not rounded. */
  readonly amount: number;
  readonly accepted: Interval;
  readonly slips: readonly KnownSlip[];
}

/** Answers smaller or larger than this, in the unit asked, are badly asked: nobody types 0.00004. */
const LEAST = 0.01;
const MOST = 1e6;

interface AnySlip {
  /** Of the wrong value to the right one. */
  readonly factor: number;
  readonly says: string;
}

const tenfold = (why: string): readonly AnySlip[] => [
  { factor: 10, says: tenTimes(why) },
  { factor: 0.1, says: tenth(why) },
];
const anyLength = (ten: string, thousand: string): readonly AnySlip[] => [
  ...tenfold(ten),
  { factor: 25.4, says: INCHES_FOR_MILLIMETRES },
  { factor: 1 / 25.4, says: MILLIMETRES_FOR_INCHES },
  { factor: 1000, says: thousandTimes(thousand) },
  { factor: 1e-3, says: thousandth(thousand) },
];

/** Slips that fit any answer, in the words of the unit asked: millimetres know no tenths of a thou, and inches no prefix. */
const anySlips = (unit: Unit): readonly AnySlip[] => {
  if (UNITS[unit].base !== 'mm') return tenfold(POINT_MOVED);
  if (unit === 'mm' || unit === 'µm') return anyLength(POINT_MOVED, LOOK_AT_PREFIX);
  const tenths = unit === 'thou' || unit === 'tenths';
  return anyLength(tenths ? TENTHS_OF_THOU : POINT_MOVED, LOOK_AT_UNIT);
};

const read = new WeakMap<Exercise, Map<string, Result<Value>>>();
const made = new WeakMap<Exercise, Map<string, Result<Item>>>();
const keptIn = <V>(store: WeakMap<Exercise, Map<string, V>>, exercise: Exercise): Map<string, V> => {
  const known = store.get(exercise) ?? new Map<string, V>();
  store.set(exercise, known);
  return known;
};

/** The item with these options, or the sentence that says why they make none. The same options always make the same item. */
export const itemAt = (exercise: Exercise, picks: readonly number[]): Result<Item> => {
  const known = keptIn(made, exercise);
  const key = picks.join(',');
  const item = known.get(key) ?? exercise.asItem?.(picks) ?? makeItem(exercise, picks);
  known.set(key, item);
  return item;
};

/** The numbers that these options give, as steps name them, and as the question prints them. */
export const readPicks = (
  exercise: Exercise,
  picks: readonly number[],
): Result<{ readonly scope: Record<string, number>; readonly texts: Readonly<Record<string, string>> }> => {
  const { pools } = exercise;
  const values = new Map<string, Value>();
  const texts: Record<string, string> = {};
  const readings = keptIn(read, exercise);
  for (const [i, { input, options }] of pools.entries()) {
    const option = options[picks[i] ?? 0] ?? '';
    const key = `${i} ${option}`;
    const value = readings.get(key) ?? readInput(input, option, 'metric');
    readings.set(key, value);
    if (!value.ok) return value;
    values.set(input.name, value.value);
    texts[input.name] = typeof value.value === 'object' ? value.value.designation : option.replace(/^-/, '−');
  }
  return good({ scope: scopeOf(gather({ id: exercise.id, inputs: pools.map((p) => p.input) }, values)), texts });
};

/** The amount where it is one that can be asked for, in the unit asked. */
export const askable = (value: number, unit: Unit, digits: number): Result<number> => {
  const amount = value / toBase({ amount: 1, unit });
  if (Math.abs(amount) >= LEAST && Math.abs(amount) <= MOST) return good(amount);
  return Math.abs(value) < 1e-12
    ? bad('answer-nought', {})
    : bad('answer-of-odd-size', { amount: numeral(amount, digits), unit, least: LEAST, most: MOST });
};

/** The slips that fit any answer. */
export const slipsOfAny = (amount: number, unit: Unit): readonly KnownSlip[] =>
  anySlips(unit).map(({ factor, says }) => ({ amount: amount * factor, says }));

const makeItem = (exercise: Exercise, picks: readonly number[]): Result<Item> => {
  const { steps, unit, digits } = exercise;
  const numbers = readPicks(exercise, picks);
  if (!numbers.ok) return numbers;
  const { scope, texts } = numbers.value;
  const outcomes = runSteps(steps, scope);
  const found: Record<string, number> = { ...scope };
  for (const [i, outcome] of outcomes.entries()) {
    if (!outcome.ok) return bad('step-without-result', { step: i + 1, why: outcome });
    const name = steps[i]?.as;
    if (name !== undefined) found[name] = outcome.value;
  }
  const last = outcomes.at(-1);
  if (!last?.ok) return bad('no-answering-step', {});
  const factor = toBase({ amount: 1, unit });
  const asked = askable(last.value, unit, digits);
  if (!asked.ok) return asked;
  const amount = asked.value;
  const accepted = acceptedInterval(amount, digits);
  found.answer = last.value;
  const slips: KnownSlip[] = [];
  for (const [rule, { way, says }] of exercise.slips.entries()) {
    const value = slipValue(way, found);
    if (value === undefined) continue;
    const wrong = value / factor;
    if (tooNear(wrong, accepted, digits)) return bad('slip-gives-answer', { says });
    slips.push({ amount: wrong, says: filled(says, texts), rule });
  }
  slips.push(...slipsOfAny(amount, unit));
  return good({
    exercise,
    picks,
    question: filled(exercise.question, texts),
    hint: filled(exercise.hint, texts),
    outcomes,
    amount,
    accepted,
    slips,
  });
};

/** What a slip comes to, or undefined where it has no value with these numbers. */
const slipValue = (way: SlipRule['way'], found: Readonly<Record<string, number>>): number | undefined => {
  const outcome = typeof way === 'string' ? evaluateSlip(way, found) : runSteps(way, found).at(-1);
  return outcome?.ok ? outcome.value : undefined;
};

/** Whether a slip, or what it rounds to when written with the digits asked, is accepted. */
const tooNear = (wrong: number, accepted: Interval, digits: number): boolean => {
  const half = halfDigit(wrong, digits);
  return within(wrong, { ...accepted, low: accepted.low - half, high: accepted.high + half });
};

export const filled = (text: string, texts: Readonly<Record<string, string>>): string =>
  text.replace(/\{(\w+)\}/g, (place, name: string) => texts[name] ?? place);

/** How many items there are at most: the product of the pools. */
export const draws = (exercise: Exercise): number => exercise.pools.reduce((n, p) => n * p.options.length, 1);

/** The options of the i-th item, the last pool running fastest. */
export const picksAt = (exercise: Exercise, index: number): number[] => {
  let rest = index;
  return exercise.pools
    .toReversed()
    .map(({ options }) => {
      const at = rest % options.length;
      rest = Math.floor(rest / options.length);
      return at;
    })
    .reverse();
};

const unitAfter = (unit: Unit): string => (unit === '1' ? '' : unit === '°' ? unit : `\u00a0${unit}`);

/** The unit in words for the question; a plain number has none. */
export const askedUnit = (item: Item): string => (item.exercise.unit === '1' ? '' : item.exercise.unit);

/** The answer as a key prints it: rounded to the digits asked, with its unit. */
export const answerText = (item: Item): string =>
  `${numeral(item.amount, item.exercise.digits)}${unitAfter(item.exercise.unit)}`;

/** What a paper asks for after the question. */
export const askText = ({ exercise }: Item): string => (exercise.shows ? '' : ask(exercise.unit, exercise.digits));

export const acceptedText = ({ accepted, exercise }: Item): string => {
  const edge = (x: number) => x.toFixed(accepted.decimals).replace('-', '−');
  return `${fromTo(edge(accepted.low), edge(accepted.high))}${unitAfter(exercise.unit)}`;
};
