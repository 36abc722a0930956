/**
 * A result asked backwards: for each of the reader’s numbers that reaches it, every value at which it becomes what is wished, or the
 * nearest that can be had. A field keeps nine digits, so what is found is written as its field writes it, and what is said
 * of it is what that writing gives.
 */
import {
  bad,
  good,
  type Inversion,
  invert,
  METRIC_SERIES,
  mm,
  type Result,
  type SeriesThread,
  symbolFact,
  type Thread,
  UNIFIED_SERIES,
} from '../../engine/index.ts';
import { CHOICES } from '../../input/choices.ts';
import { readThread } from '../../input/designation.ts';
import { asWritten, type Input, writeValue } from '../numbers.ts';
import type { ChoiceInput, Quantity, Question, ThreadInput } from './question.ts';
import { type SoldThing, soldAs } from './sold.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    /** No number of the reader’s leads to this result. */
    'result-fixed': { readonly says: string };
  }
}

/** One value that an input may take. */
export interface Choice {
  /** As its field takes it, in metric units. */
  readonly text: string;
  /** The result it gives. */
  readonly gives: number;
  /** Digits to which that is the wish, at most nine, since the field keeps no more. */
  readonly digits: number;
  /** Where every value from this one to here gives the wish. */
  readonly to?: string;
  /** For a quantity its value, so that it can be shown in the reader’s units. */
  readonly value?: number;
  /** What the thread beside it becomes. */
  readonly beside?: string;
  /** The name by which it, or the size that it gives, is bought. */
  readonly sold?: string;
}

/** One input that may give way, or two threads together. */
export interface GivesWay {
  readonly input: Input;
  /** The thread that gives way beside it. */
  readonly beside?: ThreadInput;
  /** All that give the wish. */
  readonly answers: readonly Choice[];
  /** Where there are none: the nearest that can be had. */
  readonly nearest: readonly Choice[];
  /** What the result goes from and to as this input goes through its field. */
  readonly least: number | undefined;
  readonly most: number | undefined;
  /** The pitches at which a thread of one’s own would give it. */
  readonly pitches?: readonly number[];
  /** The nearest that are sold, where it or the result is the size of something that is sold. */
  readonly stock?: { readonly thing: SoldThing; readonly choices: readonly Choice[] };
}

const FIELD_DIGITS = 9;

/**
 * What works out each input that may give way for this wish: one after the other, so that a page can draw between them. One that finds
 * nothing to offer gives nothing.
 */
export const seekers = (question: Question, wish: number): Result<readonly (() => GivesWay | undefined)[]> => {
  const inputs = question.inputs.filter(({ kind }) => kind !== 'text');
  if (inputs.length === 0) return bad('result-fixed', { says: question.says });
  const [first, second] = inputs.filter((input): input is ThreadInput => input.kind === 'thread');
  return good([
    ...inputs.map(
      (input) => () =>
        input.kind === 'thread'
          ? threadWay(question, input, wish)
          : input.kind === 'choice'
            ? choiceWay(question, input, wish)
            : quantityWay(question, input as Quantity, wish),
    ),
    ...(first && second ? [() => pairWay(question, first, second, wish)] : []),
  ]);
};

/** Every input that may give way for this wish; those that can first. */
export const waysTo = (question: Question, wish: number): Result<readonly GivesWay[]> => {
  const found = seekers(question, wish);
  return found.ok ? good(inOrder(found.value.flatMap((seek) => seek() ?? []))) : found;
};

const inOrder = (ways: readonly GivesWay[]): readonly GivesWay[] =>
  ways.toSorted((a, b) => Number(b.answers.length > 0) - Number(a.answers.length > 0));

const digitsTo = (gives: number, wish: number): number => {
  const off = Math.abs(gives - wish) / (Math.abs(wish) || 1);
  return off === 0 ? FIELD_DIGITS : Math.max(0, Math.min(FIELD_DIGITS, Math.floor(-Math.log10(off))));
};

const quantityWay = (question: Question, input: Quantity, wish: number): GivesWay => {
  const law = question.ofQuantity(input);
  const fact = symbolFact(input.name);
  const about = question.numbers.values[input.name];
  const found = invert(law, wish, {
    min: input.min,
    max: input.max,
    whole: fact.whole === true,
    ...(about === undefined ? {} : { about }),
  });
  const written = (x: number) => writeValue(input, x, 'metric');
  const choice = (x: number, to?: number, sold?: string): Choice[] => {
    const value = asWritten(input, x) as number;
    const gives = law(value);
    return gives === undefined
      ? []
      : [
          {
            text: written(x),
            gives,
            digits: digitsTo(gives, wish),
            value,
            ...(to === undefined ? {} : { to: written(to) }),
            ...(sold === undefined ? {} : { sold }),
          },
        ];
  };
  const answers = found.answers.flatMap(({ x, to }) => choice(x, to));
  const within = (x: number) => x >= input.min && x <= input.max;
  /** A hair beside nought, where a law ends there, is nought, or a millionth of the range where it has no value at nought. */
  const tidy = (x: number): number => {
    const range = input.max - input.min;
    if (x === 0 || Math.abs(x) > 1e-9 * range) return x;
    return [0, 1e-6 * range, -1e-6 * range].find((near) => within(near) && law(near) !== undefined) ?? x;
  };
  const nearest =
    answers.length > 0 || !found.nearest
      ? []
      : nearestOf(
          besideOf(tidy(found.nearest.x))
            .filter(within)
            .flatMap((x) => choice(x)),
          wish,
          1,
        );
  /** Sizes of what gives way, near what it would have to be; or what makes the result a size that is sold. */
  const stock = (): GivesWay['stock'] => {
    const own = soldAs(input.name);
    if (own)
      return {
        thing: own.thing,
        choices: [...answers, ...nearest]
          .flatMap(({ value }) => own.near(value ?? wish))
          .filter(({ size }) => within(size))
          .flatMap(({ size, name }) => choice(size, undefined, name)),
      };
    const { sold } = question;
    if (!sold || fact.whole) return undefined;
    const sizes = sold.near(wish).flatMap(({ size, name }) => {
      const [answer] = invert(law, size, { min: input.min, max: input.max }).answers;
      return answer ? choice(answer.x, undefined, name) : [];
    });
    return sizes.length === 0 ? undefined : { thing: sold.thing, choices: sizes };
  };
  const sold = found.least === found.most ? undefined : stock();
  return {
    input,
    answers,
    nearest,
    ...span(found),
    ...(sold ? { stock: { ...sold, choices: nearestOf(unlikeOf(sold.choices), wish, 2) } } : {}),
  };
};

/** A place and those a hair beside it: at a jump of the law nine digits may fall on the wrong side. */
const besideOf = (x: number): readonly number[] => [x, x * (1 - 1e-8), x * (1 + 1e-8)];

const unlikeOf = (choices: readonly Choice[]): readonly Choice[] =>
  choices.filter(({ text }, i) => choices.findIndex((other) => other.text === text) === i);

const nearestOf = (choices: readonly Choice[], wish: number, count: number): readonly Choice[] =>
  choices.toSorted((a, b) => Math.abs(a.gives - wish) - Math.abs(b.gives - wish)).slice(0, count);

/** What else may be picked; nothing where no other gives another result. */
const choiceWay = ({ numbers, ofChoice }: Question, input: ChoiceInput, wish: number): GivesWay | undefined => {
  const law = ofChoice(input);
  const present = numbers.choices[input.name];
  const now = present === undefined ? undefined : law(present);
  const found = CHOICES[input.name].options.flatMap((text): Choice[] => {
    const gives = text === present ? undefined : law(text);
    return gives === undefined || gives === now ? [] : [{ text, gives, digits: digitsTo(gives, wish) }];
  });
  if (found.length === 0) return undefined;
  const answers = found.filter(({ gives }) => Math.abs(gives - wish) <= SAME * Math.abs(wish));
  return {
    input,
    answers,
    nearest: answers.length > 0 ? [] : nearestOf(found, wish, NAMED),
    ...spanOf([...found.map(({ gives }) => gives), ...(now === undefined ? [] : [now])]),
  };
};

const spanOf = (all: readonly number[]) => ({
  least: all.length === 0 ? undefined : Math.min(...all),
  most: all.length === 0 ? undefined : Math.max(...all),
});

const span = ({ least, most }: Inversion) => ({ least, most });

/** How many stock threads are named where none gives the wish exactly. */
const NAMED = 3;
/** Stock threads from half as thick to twice as thick as the present one: a wish for a motion is none for another size of adjuster. */
const THICKNESS = 2;
const STOCK: readonly SeriesThread[] = [...METRIC_SERIES, ...UNIFIED_SERIES];
/** A stock thread answers where the result is the wish to so much of it. */
const SAME = 1e-9;

/** So many, from end to end of a list: where all of them give what is there already, the number does not come from this thread. */
const PROBED = 8;
const spread = <T>(all: readonly T[]): readonly T[] =>
  all.filter((_, i) => all.length <= PROBED || i % Math.ceil(all.length / PROBED) === 0);

/** Stock threads of about the size of a present one, with its starts. */
const stockFor = (present: Thread, hands: readonly (1 | -1)[]): Thread[] =>
  STOCK.filter((row) => row.d <= present.d * THICKNESS && row.d * THICKNESS >= present.d).flatMap((row) =>
    hands.flatMap((h) => stockThread(row, present, h) ?? []),
  );

const threadWay = (question: Question, input: ThreadInput, wish: number): GivesWay => {
  const present = question.numbers.threads[input.name];
  if (!present) return { input, answers: [], nearest: [], least: undefined, most: undefined };
  const { byHand, byPitch, at, atPitch } = question.ofThread(input);
  const stock = stockFor(present, byHand ? [present.h, present.h === 1 ? -1 : 1] : [present.h]);
  const now = at(present);
  if (now !== undefined && spread(stock).every((thread) => at(thread) === now))
    return { input, answers: [], nearest: [], least: now, most: now };
  const byLead = ofOneLead(stock, at);
  const found = stock.flatMap((thread): (Choice & { readonly thread: Thread })[] => {
    // What stands there is no way to another result.
    if (thread.designation === present.designation) return [];
    const gives = byLead(thread);
    return gives === undefined ? [] : [{ thread, text: thread.designation, gives, digits: digitsTo(gives, wish) }];
  });
  // By how near they come; of equals, the hand and then the size that is there already.
  const off = ({ gives }: Choice) => Math.round((Math.abs(gives - wish) / (Math.abs(wish) || 1)) * 1e9);
  found.sort(
    (a, b) =>
      off(a) - off(b) ||
      Math.abs(a.thread.h - present.h) - Math.abs(b.thread.h - present.h) ||
      Math.abs(a.thread.d - present.d) - Math.abs(b.thread.d - present.d),
  );
  const plain = ({ thread: _, ...choice }: (typeof found)[number]): Choice => choice;
  const unlike = found.filter((choice, i) => i === 0 || found[i - 1]?.gives !== choice.gives);
  const exact = found.filter(({ gives }) => Math.abs(gives - wish) <= SAME * Math.abs(wish));
  /** The first that are named, each asked by itself. */
  const sure = (choices: typeof found): typeof found => {
    const named: typeof found = [];
    for (const choice of choices) {
      if (named.length === NAMED) break;
      if (at(choice.thread) === choice.gives) named.push(choice);
    }
    return named;
  };
  const pitches = byPitch
    ? invert(atPitch, wish, {
        min: symbolFact('P').min,
        max: Math.min(symbolFact('P').max, symbolFact('L').max / present.N, present.d),
        about: present.P,
      }).answers.map(({ x }) => x)
    : [];
  return {
    input,
    answers: sure(exact).map(plain),
    nearest: exact.length > 0 ? [] : sure(unlike).map(plain),
    ...spanOf(found.map(({ gives }) => gives)),
    pitches,
  };
};

/** Groups of stock threads of one lead that are tried with their thinnest and their thickest. */
const TRIED = 4;

/**
 * The law of a thread, asked once for all stock threads of one lead and hand where their size is seen to change nothing: most results take a lead and no
 * diameter.
 */
const ofOneLead = (
  stock: readonly Thread[],
  at: (thread: Thread) => number | undefined,
): ((thread: Thread) => number | undefined) => {
  const lead = ({ P, N, h }: Thread): number => P * N * h;
  const groups = new Map<number, Thread[]>();
  for (const thread of stock) groups.set(lead(thread), [...(groups.get(lead(thread)) ?? []), thread]);
  const several = [...groups.values()].filter((group) => group.length > 1).slice(0, TRIED);
  if (several.some((group) => at(group[0] as Thread) !== at(group.at(-1) as Thread))) return at;
  const known = new Map<number, number | undefined>();
  return (thread) => {
    const key = lead(thread);
    if (!known.has(key)) known.set(key, at(thread));
    return known.get(key);
  };
};

/**
 * The pairs of stock threads that come nearest, of about the present sizes and with the present hands, the thicker staying the thicker.
 * Of threads with one pitch that which is nearest in size to the present one stands for the others.
 */
const pairWay = (question: Question, input: ThreadInput, beside: ThreadInput, wish: number): GivesWay | undefined => {
  const { threads } = question.numbers;
  const [A, C] = [threads[input.name], threads[beside.name]];
  if (!A || !C) return undefined;
  const law = question.ofThreads(input, beside);
  const [ofA, ofC] = [onePerPitch(A), onePerPitch(C)];
  // Where one of them alone changes nothing the other is the way.
  const now = law(A, C);
  const still = (laws: readonly (number | undefined)[]) => now !== undefined && laws.every((y) => y === now);
  if (still(spread(ofA).map((a) => law(a, C))) || still(spread(ofC).map((c) => law(A, c)))) return undefined;
  const found: Choice[] = [];
  for (const a of ofA)
    for (const c of ofC) {
      // One of them staying is the way of the other alone.
      if (a.d > c.d !== A.d > C.d || a.designation === A.designation || c.designation === C.designation) continue;
      const gives = law(a, c);
      if (gives !== undefined)
        found.push({ text: a.designation, beside: c.designation, gives, digits: digitsTo(gives, wish) });
    }
  if (found.length === 0) return undefined;
  const exact = found.filter(({ gives }) => Math.abs(gives - wish) <= SAME * Math.abs(wish));
  return {
    input,
    beside,
    answers: exact.slice(0, NAMED),
    nearest: exact.length > 0 ? [] : nearestOf(found, wish, NAMED),
    ...spanOf(found.map(({ gives }) => gives)),
  };
};

const onePerPitch = (present: Thread): readonly Thread[] => {
  const byPitch = new Map<number, Thread>();
  for (const thread of stockFor(present, [present.h])) {
    const other = byPitch.get(thread.P);
    if (!other || Math.abs(thread.d - present.d) < Math.abs(other.d - present.d)) byPitch.set(thread.P, thread);
  }
  return [...byPitch.values()];
};

/** A stock thread with the starts of the present one; undefined where it can’t have them. */
const stockThread = (row: SeriesThread, { N, toleranceClass }: Thread, h: 1 | -1): Thread | undefined => {
  const extras = `${N === 1 ? '' : ` ${N} starts`}${h === 1 ? '' : ' LH'}`;
  const kept = toleranceClass === undefined ? '' : `-${toleranceClass}`;
  const key = `${row.designation}${kept}${extras}`;
  if (!STOCK_READ.has(key)) {
    const read = [`${row.designation}${kept}${extras}`, `${row.designation}${extras}`]
      .map((text) => readThread(text))
      .find(({ ok }) => ok);
    STOCK_READ.set(key, read?.ok ? { ...read.value, P: mm(row.P), L: mm(row.P * N) } : undefined);
  }
  return STOCK_READ.get(key);
};
const STOCK_READ = new Map<string, Thread | undefined>();
