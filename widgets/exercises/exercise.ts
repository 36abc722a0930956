/**
 * An exercise: pools of stock sizes, a question with places for them, the steps of the answer and the slips that are
 * known. `itemAt` makes one item of it; the press, the page, the papers and the tests all get their items here.
 */

import {
  ASK_OFFERED,
  ask,
  type Fault,
  fromTo,
  INCHES_FOR_MILLIMETRES,
  LOOK_AT_PREFIX,
  LOOK_AT_UNIT,
  lettered,
  MILLIMETRES_FOR_INCHES,
  ORDER_DECIDES,
  othersGive,
  POINT_MOVED,
  showThat,
  signDecides,
  stackGives,
  TENTHS_OF_THOU,
  tenTimes,
  tenth,
  thousandTimes,
  thousandth,
} from '#words/papers.ts';
import { gather, type Input, readInput, scopeOf, type Value } from '../assembly/numbers.ts';
import { runSteps, type Step, type StepOutcome } from '../assembly/steps.ts';
import {
  bad,
  good,
  type Result,
  type SymbolName,
  spokenNumber,
  symbolFact,
  toBase,
  UNITS,
  type Unit,
} from '../engine/index.ts';
import { fixed, numeral, unitText } from '../input/format.ts';
import { acceptedInterval, halfDigit, type Interval, within } from './interval.ts';
import { tableDecided, tableOf, verdictsOf } from './lab-table.ts';
import {
  APART,
  choiceOf,
  flankOf,
  type Kind,
  LETTERS,
  type Offered,
  orderOf,
  shuffled,
  signOf,
  taken,
  wayOf,
  waysToTake,
  wrongLineOf,
} from './offered.ts';
import { type Picture, pictureOf, type Ruled } from './picture.ts';
import { evaluateSlip } from './slip-formula.ts';
import { stepLine, wrongStepLine } from './step-line.ts';

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
  /** In an exercise of a wrong line: the result that the formula takes the place of. */
  readonly at?: SymbolName;
}

/** Lines of work in the one order in which they can be done, of an adjuster that is named. */
export interface Sequence {
  readonly name: string;
  readonly lines: readonly string[];
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
  readonly kind?: Kind;
  /** Of a wrong line, the formula of each step: pages carry relations without theirs. */
  readonly formulas?: readonly string[];
  readonly picture?: Picture;
  /** What its picture is ruled in, where that is not millimetres. */
  readonly ruled?: Ruled;
  /** What is put in order, and how many lines of it at a time. */
  readonly order?: { readonly of: readonly Sequence[]; readonly lines: number };
  /** The stacks of a drawer, each the texts of these inputs; one is to be chosen. */
  readonly drawer?: { readonly inputs: readonly Input[]; readonly stacks: readonly (readonly string[])[] };
  /** What may be found in a table of readings. */
  readonly faults?: readonly Fault[];
  /** The same asked the other way round: which pool is to be found from the answer; see forms.ts. */
  readonly backwards?: Backwards;
  /** The language of its words, where that is not the edition’s. */
  readonly lang?: string;
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
  /** Of every kind but a number. */
  readonly offered?: Offered;
  /** The picture as SVG. */
  readonly picture?: string;
  /** What settles which answer is right, where the worked steps alone do not say it. */
  readonly decides?: string;
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
    texts[input.name] = spokenNumber(
      typeof value.value === 'object' ? value.value.designation : option.replace(/^-/, '−'),
    );
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
  const { steps, unit, digits, kind } = exercise;
  if (kind === 'order') return orderItem(exercise, picks);
  if (exercise.drawer) return stackItem(exercise, exercise.drawer, picks);
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
  const bySign = kind === 'way' || kind === 'flank';
  // Nobody types the last result of a wrong line or of a table.
  const typed = !bySign && kind !== 'wrong-line' && kind !== 'table';
  const asked = typed ? askable(last.value, unit, digits) : good(last.value / factor);
  if (!asked.ok) return asked;
  const amount = asked.value;
  const accepted = !typed ? { low: amount, high: amount, decimals: digits } : acceptedInterval(amount, digits);
  found.answer = last.value;
  const slips: KnownSlip[] = [];
  for (const [rule, { way, says, at }] of exercise.slips.entries()) {
    if (at !== undefined) continue;
    const value = slipValue(way, found);
    if (value === undefined) continue;
    const wrong = value / factor;
    // A sign has no interval: a slip that comes to the same one says nothing, and is left out.
    if (bySign ? Math.sign(wrong) === Math.sign(amount) : tooNear(wrong, accepted, digits)) {
      if (bySign) continue;
      return bad('slip-gives-answer', { says });
    }
    slips.push({ amount: wrong, says: filled(says, texts), rule });
  }
  if (typed) slips.push(...slipsOfAny(amount, unit));
  const item: Item = {
    exercise,
    picks,
    question: filled(exercise.question, texts),
    hint: filled(exercise.hint, texts),
    outcomes,
    amount,
    accepted,
    slips,
    ...(exercise.picture && { picture: pictureOf(exercise.picture, scope, exercise.ruled) }),
    ...(kind === 'table' && {
      picture: tableOf(last.value, faultAt(exercise, picks), [exercise.id, picks.join(',')]),
    }),
  };
  const offered = offeredBy(item, scope, texts);
  if (offered === undefined) return good(item);
  if (!offered.ok) return offered;
  const chosen = { ...item, offered: offered.value };
  const decides = decidedBy(chosen, last.value);
  return good(decides === undefined ? chosen : { ...chosen, decides });
};

const offeredBy = (
  { exercise, picks, amount, slips, outcomes }: Item,
  scope: Readonly<Record<string, number>>,
  texts: Readonly<Record<string, string>>,
): Result<Offered> | undefined => {
  const { kind, steps } = exercise;
  const last = steps.at(-1);
  const found = last === undefined ? '' : symbolFact(last.as).says;
  const words = [exercise.id, picks.join(',')];
  switch (kind) {
    case 'choice':
      return choiceOf(amount, slips, (x) => withUnit(x, exercise), words);
    case 'way':
      return good(wayOf(amount, slips, found));
    case 'flank':
      return good(flankOf(amount, slips, found));
    case 'wrong-line':
      return wrongLines(exercise, picks.at(-1) ?? 0, outcomes, scope, texts);
    case 'table':
      return good(verdictsOf(exercise.faults ?? [], faultAt(exercise, picks)));
    default:
      return undefined;
  }
};

const decidedBy = (
  { exercise, picks, amount, offered }: Item & { readonly offered: Offered },
  last: number,
): string | undefined => {
  const means = offered.options[LETTERS.indexOf(offered.right)]?.text ?? '';
  if (exercise.kind === 'way' || exercise.kind === 'flank') return signDecides([1, -1, 0][signOf(amount)] ?? 0, means);
  return exercise.kind === 'table'
    ? tableDecided(last, faultAt(exercise, picks), [exercise.id, picks.join(',')])
    : undefined;
};

/** The worked lines with one slip made in them; what comes after it is worked on from there. */
const wrongLines = (
  { steps, slips, formulas = [] }: Exercise,
  slip: number,
  right: readonly StepOutcome[],
  scope: Readonly<Record<string, number>>,
  texts: Readonly<Record<string, string>>,
): Result<Offered> => {
  const { way, at, says } = slips[slip] ?? { way: '', at: undefined, says: '' };
  const place = steps.findIndex((s) => s.as === at);
  const step = steps[place];
  if (step === undefined || typeof way !== 'string') return bad('no-answering-step', {});
  const known: Record<string, number> = { ...scope };
  for (const [i, outcome] of right.entries()) {
    const name = steps[i]?.as;
    if (outcome.ok && name !== undefined && i <= place) known[name] = outcome.value;
  }
  const wrong = evaluateSlip(way, known);
  if (!wrong.ok) return wrong;
  const held = right[place];
  if (!held?.ok || Math.abs(wrong.value - held.value) <= 0.03 * Math.abs(held.value))
    return bad('slip-gives-answer', { says: filled(says, texts) });
  known[step.as] = wrong.value;
  const after = runSteps(steps.slice(place + 1), known);
  for (const [i, outcome] of after.entries())
    if (!outcome.ok) return bad('step-without-result', { step: place + i + 2, why: outcome });
  const lines = steps.map((one, i) =>
    i === place
      ? wrongStepLine(one, way, known, wrong.value)
      : stepLine({ ...one, why: '' }, i < place ? right[i] : after[i - place - 1], formulas[i]),
  );
  return good(wrongLineOf(lines, place));
};

const faultAt = ({ faults = [] }: Exercise, picks: readonly number[]): Fault => faults[picks.at(-2) ?? 0] ?? 'sound';

/** How many stacks are laid out to choose from. */
const LAID_OUT = 4;

const withOne = new WeakMap<Exercise, Map<string, Exercise>>();
/** The exercise as it would be with this stack alone, the same one whenever it is asked for, so that its items are made once. */
const withStack = (
  exercise: Exercise,
  inputs: readonly Input[],
  stacks: readonly (readonly string[])[],
  place: number,
): Exercise => {
  const known = keptIn(withOne, exercise);
  const before = known.get(`${place}`);
  if (before) return before;
  const pools = inputs.map((input, i) => ({ input, options: [stacks[place]?.[i] ?? ''] }));
  const { kind: _kind, drawer: _drawer, ...one } = exercise;
  const of: Exercise = { ...one, pools: [...exercise.pools, ...pools] };
  known.set(`${place}`, of);
  return of;
};

/** One stack of the drawer is the answer, three others stand beside it; what is wanted is what the right one gives. */
const stackItem = (
  exercise: Exercise,
  { inputs, stacks }: NonNullable<Exercise['drawer']>,
  picks: readonly number[],
): Result<Item> => {
  const [at = 0, taking = 0] = picks.slice(-2);
  const rest = stacks.map((_, i) => i).filter((i) => i !== at);
  const laid = [at, ...taken(rest.length, LAID_OUT - 1, taking).map((i) => rest[i] ?? 0)];
  const items: { readonly name: string; readonly item: Item; readonly place: number }[] = [];
  for (const place of laid) {
    const of = withStack(exercise, inputs, stacks, place);
    const own = [...picks.slice(0, -2), ...inputs.map(() => 0)];
    const item = itemAt(of, own);
    const numbers = readPicks(of, own);
    if (!item.ok) return item;
    if (!numbers.ok) return numbers;
    const { texts } = numbers.value;
    items.push({ name: inputs.map(({ name }) => texts[name] ?? '').join(' + '), item: item.value, place });
  }
  const [right, ...others] = items;
  if (!right) return bad('no-answering-step', {});
  const { amount } = right.item;
  const near = (x: number) => Math.abs(x - amount) <= APART * Math.abs(amount);
  if (others.some(({ item }) => near(item.amount))) return bad('too-few-to-choose', {});
  const wanted = { wanted: withUnit(amount, exercise) };
  const order = shuffled(items.length, ['options', exercise.id, picks.join(',')]);
  return good({
    ...right.item,
    exercise,
    picks,
    question: filled(right.item.question, wanted),
    hint: filled(right.item.hint, wanted),
    slips: [],
    decides: othersGive(order.filter((i) => i > 0).map((i) => withUnit(items[i]?.item.amount ?? amount, exercise))),
    offered: {
      options: order.map((i) => {
        const one = items[i] ?? right;
        const thought = one.item.slips.find((s) => s.rule !== undefined && near(s.amount))?.says;
        return {
          text: one.name,
          lies: one.place,
          says: one === right ? '' : (thought ?? stackGives(withUnit(one.item.amount, exercise))),
        };
      }),
      right: LETTERS[order.indexOf(0)] ?? '',
    },
  });
};

const orderItem = (exercise: Exercise, picks: readonly number[]): Result<Item> => {
  const { order, question, hint } = exercise;
  const [at = 0, taking = 0] = picks;
  const sequence = order?.of[at];
  if (!order || !sequence) return bad('no-answering-step', {});
  const texts = { adjuster: sequence.name };
  return good({
    exercise,
    picks,
    question: filled(question, texts),
    hint: filled(hint, texts),
    outcomes: [],
    amount: 0,
    accepted: { low: 0, high: 0, decimals: 0 },
    slips: [],
    decides: ORDER_DECIDES,
    offered: orderOf(sequence.lines, order.lines, taking, [exercise.id, picks.join(',')]),
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

/**
 * How many ways there are to pick each part of an item: the options of each pool, and in a wrong line which slip is made; in an order whose
 * it is, and which lines of it; in a drawer the stack that fits, and which others lie beside it; in a table its fault and its scatter.
 */
export const sizesOf = ({ pools, slips, kind, order, drawer, faults = [] }: Exercise): readonly number[] => {
  if (order) return [order.of.length, Math.min(...order.of.map(({ lines }) => waysToTake(lines.length, order.lines)))];
  const drawn = pools.map((p) => p.options.length);
  if (drawer) return [...drawn, drawer.stacks.length, waysToTake(drawer.stacks.length - 1, LAID_OUT - 1)];
  if (kind === 'table') return [...drawn, faults.length, TABLES];
  return kind === 'wrong-line' ? [...drawn, slips.length] : drawn;
};

/** Tables of readings there are of one fault, each with its own scatter. */
const TABLES = 40;

/** How many items there are at most. */
export const draws = (exercise: Exercise): number => sizesOf(exercise).reduce((n, size) => n * size, 1);

/** The options of the i-th item, the last pool running fastest. */
export const picksAt = (exercise: Exercise, index: number): number[] => {
  let rest = index;
  return sizesOf(exercise)
    .toReversed()
    .map((size) => {
      const at = rest % size;
      rest = Math.floor(rest / size);
      return at;
    })
    .reverse();
};

const unitAfter = (unit: Unit): string => (unit === '1' ? '' : unit === '°' ? unit : `\u00a0${unitText(unit)}`);

const withUnit = (amount: number, { digits, unit }: Exercise): string => `${numeral(amount, digits)}${unitAfter(unit)}`;

/** The answer as a key prints it: rounded to the digits asked, with its unit; or its letters, with what is offered there. */
export const answerText = ({ amount, exercise, offered }: Item): string => {
  if (!offered) return withUnit(amount, exercise);
  const { right, options } = offered;
  return right.length > 1 ? [...right].join(' ') : lettered(right, options[LETTERS.indexOf(right)]?.text ?? '');
};

/** What a paper asks for after the question. */
export const askText = (item: Item): string => {
  const { exercise } = item;
  if (exercise.shows) return showThat(answerText(item));
  return exercise.kind ? ASK_OFFERED[exercise.kind] : ask(exercise.unit, exercise.digits);
};

/** Between which amounts an answer counts; nothing where it is chosen. */
export const acceptedText = ({ accepted, exercise }: Item): string => {
  if (exercise.kind !== undefined) return '';
  const edge = (x: number) => fixed(x, accepted.decimals);
  return `${fromTo(edge(accepted.low), edge(accepted.high))}${unitAfter(exercise.unit)}`;
};

/** The unit in words for the question; a plain number has none, and what is chosen needs none. */
export const askedUnit = ({ exercise: { unit, kind } }: Item): string =>
  unit === '1' || kind !== undefined ? '' : unitText(unit);

/** The slip that was made in the wrong line, as a key says it. */
export const slipShown = ({ exercise, picks }: Item): string =>
  exercise.kind === 'wrong-line' ? (exercise.slips[picks.at(-1) ?? 0]?.says ?? '') : '';
