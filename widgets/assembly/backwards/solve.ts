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
import { readThread } from '../../input/designation.ts';
import { asWritten, type Input, scopeOf, writeValue } from '../numbers.ts';
import {
  type Asked,
  comesFrom,
  movedWith,
  pitchScope,
  reachedBy,
  reaching,
  resultOver,
  takesLimits,
  threadScope,
} from './reach.ts';

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
}

/** One input that may give way. */
export interface GivesWay {
  readonly input: Input;
  /** All that give the wish. */
  readonly answers: readonly Choice[];
  /** Where there are none: the nearest that can be had. */
  readonly nearest: readonly Choice[];
  /** What the result goes from and to as this input goes through its field. */
  readonly least: number | undefined;
  readonly most: number | undefined;
  /** The pitches at which a thread of one’s own would give it. */
  readonly pitches?: readonly number[];
}

const FIELD_DIGITS = 9;

/** Every input that may give way for this wish; those that can first. */
export const waysTo = (asked: Asked, wish: number): Result<readonly GivesWay[]> => {
  const inputs = reaching(asked).filter(({ kind }) => kind === 'quantity' || kind === 'thread');
  const step = asked.steps[asked.index];
  if (inputs.length === 0) return bad('result-fixed', { says: step ? symbolFact(step.as).says : '' });
  const ways = inputs.map((input) =>
    input.kind === 'thread' ? threadWay(asked, input, wish) : quantityWay(asked, input as Quantity, wish),
  );
  return good(ways.toSorted((a, b) => Number(b.answers.length > 0) - Number(a.answers.length > 0)));
};

type Quantity = Extract<Input, { kind: 'quantity' }>;
type ThreadInput = Extract<Input, { kind: 'thread' }>;

const digitsTo = (gives: number, wish: number): number => {
  const off = Math.abs(gives - wish) / (Math.abs(wish) || 1);
  return off === 0 ? FIELD_DIGITS : Math.max(0, Math.min(FIELD_DIGITS, Math.floor(-Math.log10(off))));
};

const quantityWay = (asked: Asked, input: Quantity, wish: number): GivesWay => {
  const moved = movedWith(asked, input.name);
  const { law: result, scope } = resultOver(asked, moved);
  const law = (x: number) => result({ ...scope, ...Object.fromEntries(moved.map((name) => [name, x])) });
  const fact = symbolFact(input.name);
  const about = asked.numbers.values[input.name];
  const found = invert(law, wish, {
    min: input.min,
    max: input.max,
    whole: fact.whole === true,
    ...(about === undefined ? {} : { about }),
  });
  const written = (x: number) => writeValue(input, x, 'metric');
  const choice = (x: number, to?: number): Choice[] => {
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
          },
        ];
  };
  const answers = found.answers.flatMap(({ x, to }) => choice(x, to));
  return {
    input,
    answers,
    nearest: answers.length > 0 || !found.nearest ? [] : choice(found.nearest.x),
    ...span(found),
  };
};

const span = ({ least, most }: Inversion) => ({ least, most });

/** How many stock threads are named where none gives the wish exactly. */
const NAMED = 3;
/** Stock threads from half as thick to twice as thick as the present one: a wish for a motion is none for another size of adjuster. */
const THICKNESS = 2;
const STOCK: readonly SeriesThread[] = [...METRIC_SERIES, ...UNIFIED_SERIES];
/** A stock thread answers where the result is the wish to so much of it. */
const SAME = 1e-9;

const threadWay = (asked: Asked, input: ThreadInput, wish: number): GivesWay => {
  const present = asked.numbers.threads[input.name];
  const { symbols } = reachedBy(asked.steps, asked.index);
  if (!present) return { input, answers: [], nearest: [], least: undefined, most: undefined };
  const own = [...symbols].filter((symbol) => comesFrom(input, symbol));
  const { law: result, scope } = resultOver(asked, own);
  const limits = takesLimits(new Set(own));
  const byHand = own.some((symbol) => symbol === 'h' || symbol.startsWith('h_'));
  const hands = byHand ? ([present.h, -present.h] as const) : ([present.h] as const);
  const known = new Map<string, number | undefined>();
  const found: (Choice & { readonly thread: Thread })[] = [];
  for (const row of STOCK) {
    if (row.d > present.d * THICKNESS || row.d * THICKNESS < present.d) continue;
    for (const h of hands) {
      const thread = stockThread(row, present, h as 1 | -1);
      if (!thread) continue;
      const part = limits ? scopeOf({ ...NONE, threads: { [input.name]: thread } }) : threadScope(input.name, thread);
      // Most results take the pitch of a thread and not its diameter, so many threads give the same.
      const key = own.map((symbol) => part[symbol]).join();
      if (!known.has(key)) known.set(key, result(withOnly(scope, own, part)));
      const gives = known.get(key);
      if (gives !== undefined) found.push({ thread, text: thread.designation, gives, digits: digitsTo(gives, wish) });
    }
  }
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
  const gives = found.map((choice) => choice.gives);
  const byPitch = own.some((symbol) => /^(P|L|tpi)/.test(symbol)) && !limits;
  const pitches = byPitch
    ? invert((P) => result({ ...scope, ...pitchScope(input.name, present, P) }), wish, {
        min: symbolFact('P').min,
        max: Math.min(symbolFact('P').max, symbolFact('L').max / present.N, present.d),
        about: present.P,
      }).answers.map(({ x }) => x)
    : [];
  return {
    input,
    answers: exact.slice(0, NAMED).map(plain),
    nearest: exact.length > 0 ? [] : unlike.slice(0, NAMED).map(plain),
    least: gives.length === 0 ? undefined : Math.min(...gives),
    most: gives.length === 0 ? undefined : Math.max(...gives),
    pitches,
  };
};

/** The scope with these symbols of a thread in it. */
const withOnly = (
  scope: Readonly<Record<string, number>>,
  symbols: readonly string[],
  part: Readonly<Record<string, number>>,
): Record<string, number> => {
  const changed = { ...scope };
  for (const symbol of symbols) {
    const value = part[symbol];
    if (value === undefined) delete changed[symbol];
    else changed[symbol] = value;
  }
  return changed;
};

const NONE = { threads: {}, values: {}, choices: {} } as const;

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
