/**
 * The reader's numbers: a set of named inputs that figures, worked examples and sentences share.
 *
 * An input is a thread (typed as a designation), a quantity (a symbol of the engine's glossary), a choice or a list typed as text.
 * Its text is what the reader typed; reading it gives a value or the sentence that says why not.
 */

import {
  bad,
  fitOfThread,
  good,
  isSymbol,
  keepsItsSense,
  outOfBounds,
  type Result,
  type SymbolName,
  symbolFact,
  type Thread,
  UNITS,
  type Unit,
} from '../engine/index.ts';
import { CHOICES, type ChoiceName, choiceSays, optionText } from '../input/choices.ts';
import { readThread } from '../input/designation.ts';
import { stepsOf } from '../input/dividers.ts';
import { formatOf, show, timeUnit, type UnitView } from '../input/format.ts';
import { readNumber, readQuantity, readTime } from '../input/quantity.ts';
import {
  hasSpread,
  readClassLimits,
  readSpread,
  readWithSpread,
  type Spread,
  splitSpread,
  spreadText,
} from '../input/spread.ts';
import { NO_PARTS, TEXTS, type TextName } from '../input/texts.ts';
import { trimmed } from '../input/with-doubt.ts';
import { describedAdjuster } from './adjuster/stated.ts';
import { tidyAdjuster } from './adjuster/text.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'option-unknown': { readonly text: string; readonly says: string; readonly options: readonly string[] };
    /** The bounds as the reader sees them. */
    'outside-field': {
      readonly text: string;
      readonly label: string;
      readonly least: string;
      readonly most: string;
    };
    'spread-past-value': { readonly text: string; readonly says: string; readonly most: string };
    'spread-past-range': { readonly text: string; readonly most: string };
    'spread-of-count': { readonly text: string; readonly says: string };
  }
}

export type Input =
  | { readonly kind: 'thread'; readonly name: string; readonly label: string; readonly start: string }
  | {
      readonly kind: 'quantity';
      readonly name: SymbolName;
      readonly label: string;
      readonly start: string;
      /** Bounds of this field in base units, no wider than those of the glossary. */
      readonly min: number;
      readonly max: number;
    }
  | { readonly kind: 'choice'; readonly name: ChoiceName; readonly label: string; readonly start: string }
  | { readonly kind: 'text'; readonly name: TextName; readonly label: string; readonly start: string };

export interface NumberSet {
  readonly id: string;
  readonly inputs: readonly Input[];
  /** Its numbers are what a reader measured, and are kept as readings are. */
  readonly measured?: true;
}

/** A value as read from its text. */
export type Value = Thread | number | string;

/** The good values of a set by kind and name; what a figure draws from. */
export interface Numbers {
  readonly threads: Readonly<Record<string, Thread>>;
  readonly values: Readonly<Partial<Record<SymbolName, number>>>;
  readonly choices: Readonly<Partial<Record<ChoiceName, string>>>;
  readonly texts?: Readonly<Partial<Record<TextName, string>>>;
}

/** The unit a bare number is taken in, which is also the one the field shows. */
export const fieldUnit = (name: SymbolName, view: UnitView): Unit => {
  const fact = symbolFact(name);
  if (fact.shown === 'degrees') return '°';
  if (fact.shown === 'percent') return '%';
  if (fact.shown === 'N/µm') return fact.shown;
  if (fact.unit === 'mm') {
    if (view === 'inch') return fact.shown === 'motion' ? 'thou' : 'in';
    return fact.shown === 'motion' ? 'µm' : 'mm';
  }
  return fact.unit === 'turn' ? 'turns' : fact.unit;
};

/** Reads one input as typed. A quantity outside the field's bounds is refused with the bounds. */
export const readInput = (input: Input, text: string, view: UnitView): Result<Value> => {
  if (input.kind === 'thread') return readThread(text);
  if (input.kind === 'text') {
    if (mayBeNone(input) && ['', NO_PARTS].includes(text.trim().toLowerCase())) return good(NO_PARTS);
    const read = TEXTS[input.name].read(text);
    if (!read.ok || input.name !== 'adjuster') return read;
    const adjuster = describedAdjuster(read.value);
    return adjuster.ok ? good(tidyAdjuster(read.value)) : adjuster;
  }
  if (input.kind === 'choice') {
    const { options } = CHOICES[input.name];
    return (options as readonly string[]).includes(text)
      ? good(text)
      : bad('option-unknown', {
          text,
          says: choiceSays(input.name),
          options: options.map((option) => optionText(input.name, option)),
        });
  }
  const fact = symbolFact(input.name);
  // 24 h and 24 min differ by what a law of time is about, so a duration has no unit to fall back on.
  const timed = fact.unit === 'h' ? readTime(text) : undefined;
  if (timed && !timed.ok) return timed;
  const read = readQuantity(text, fact.unit, fieldUnit(input.name, view));
  return read.ok ? withinField(input, read.value.value, text, view) : read;
};

type Quantity = Extract<Input, { kind: 'quantity' }>;

/** The value where it is within the bounds of glossary and field. */
const withinField = (input: Quantity, read: number, text: string, view: UnitView): Result<number> => {
  const value = ontoBound(input, read);
  const refusal = outOfBounds(input.name, value);
  if (refusal) return refusal;
  if (!(value >= input.min && value <= input.max)) {
    const format = formatOf(symbolFact(input.name));
    const [least, most] = [show(input.min, format, view), show(input.max, format, view)];
    return bad('outside-field', { text, label: input.label, least, most });
  }
  return good(value);
};

/** What a field holds: a value, and its ± where one is typed behind it. */
export interface Held {
  readonly value: Value;
  readonly spread?: Spread | undefined;
}

/** Reads one input as typed, with its ± where it has one. A thread’s ± is that of its pitch. */
export const readField = (input: Input, text: string, view: UnitView): Result<Held> => {
  if (input.kind === 'quantity') {
    const fact = symbolFact(input.name);
    const unit = fieldUnit(input.name, view);
    const stated =
      readClassLimits(input.name, text) ?? (hasSpread(text) ? readWithSpread(text, fact.unit, unit) : undefined);
    if (stated) {
      if (!stated.ok) return stated;
      if (fact.whole) return bad('spread-of-count', { text, says: fact.says });
      const timed = fact.unit === 'h' ? readTime(splitSpread(text)[0]) : undefined;
      if (timed && !timed.ok) return timed;
      const value = withinField(input, stated.value.value, text, view);
      if (!value.ok) return value;
      const most = Math.min(value.value - fact.min, fact.max - value.value);
      const { half } = stated.value.spread;
      const size = Math.abs(value.value);
      if (size > 0 && half > size && keepsItsSense(input.name))
        return bad('spread-past-value', { text, says: fact.says, most: trimmed(show(size, formatOf(fact, 3), view)) });
      if (!(half <= most)) return bad('spread-past-range', { text, most: show(most, formatOf(fact, 3), view) });
      return good({ value: value.value, spread: stated.value.spread });
    }
  }
  if (input.kind === 'thread' && hasSpread(text)) {
    const [before, behind] = splitSpread(text);
    const thread = readThread(before);
    if (!thread.ok) return thread;
    const spread = readSpread(behind, thread.value.P, 'mm', 'mm');
    if (!spread.ok) return spread;
    const most = thread.value.P / 20;
    if (!(spread.value.half <= most))
      return bad('spread-past-range', { text, most: show(most, { shown: 'motion', digits: 3 }, view) });
    return good({ value: thread.value, spread: spread.value });
  }
  const read = readInput(input, text, view);
  return read.ok ? good({ value: read.value }) : read;
};

/** The same written so that its field reads it back. */
export const writeField = (input: Input, { value, spread }: Held, view: UnitView): string =>
  writeValue(input, value, view) +
  (spread === undefined ? '' : spreadText(spread, input.kind === 'quantity' ? fieldUnit(input.name, view) : 'mm'));

/** Whether a field of parts may state none: one that begins so, and that of a design. */
export const mayBeNone = (input: Input): boolean =>
  input.name === 'adjuster' && ['', NO_PARTS].includes(input.start.toLowerCase());

/** A bound is written with nine digits like any value, and its own writing must not fall outside it. */
const ontoBound = ({ min, max }: Quantity, value: number): number =>
  [min, max].find((bound) => Math.abs(value - bound) <= 1e-8 * Math.abs(bound)) ?? value;

/**
 * A bare number with the unit it stands for in this view, so that it means the same in any other; other texts as
 * they are.
 */
export const withUnit = (input: Input, text: string, view: UnitView): string =>
  input.kind === 'quantity' && symbolFact(input.name).unit === 'mm' && readNumber(text).ok
    ? `${text.trim()} ${fieldUnit(input.name, view)}`
    : text;

/** Days, minutes or seconds where they make a round number, hours otherwise. */
const roundTimeUnit = (value: number): Unit => {
  const unit = timeUnit(value);
  const amount = value / UNITS[unit].factor;
  return Math.abs(amount - Number(amount.toPrecision(4))) <= 1e-9 * Math.abs(amount) ? unit : 'h';
};

/** A quantity written so that it reads back as itself, with its unit. */
export const writeQuantity = (name: SymbolName, value: number, view: UnitView): string => {
  const unit = symbolFact(name).unit === 'h' ? roundTimeUnit(value) : fieldUnit(name, view);
  const amount = Number((value / UNITS[unit].factor).toPrecision(9));
  const number = String(amount).replace(/^-/, '−');
  return unit === '1' || unit === 'turns' ? number : unit === '°' ? `${number}°` : `${number} ${unit}`;
};

/** Any value written so that its input reads it back as itself. */
export const writeValue = (input: Input, value: Value, view: UnitView): string =>
  input.kind === 'quantity'
    ? writeQuantity(input.name, value as number, view)
    : typeof value === 'object'
      ? value.designation
      : String(value);

/**
 * The value that its own writing gives back: nine digits of a quantity, and a thread in which nothing is supposed any more since
 * it is written out. Whatever a page shows is worked from this, so an address that carries the writing carries the page.
 */
export const asWritten = (input: Input, value: Value): Value => {
  if (input.kind !== 'quantity' && input.kind !== 'thread') return value;
  const read = readInput(input, writeValue(input, value, 'metric'), 'metric');
  return read.ok ? read.value : value;
};

/** Sorts good values by kind for the figures. */
export const gather = (set: NumberSet, values: ReadonlyMap<string, Value>): Numbers => {
  const threads: Record<string, Thread> = {};
  const quantities: Partial<Record<SymbolName, number>> = {};
  const choices: Partial<Record<ChoiceName, string>> = {};
  const texts: Partial<Record<TextName, string>> = {};
  for (const input of set.inputs) {
    const value = values.get(input.name);
    if (value === undefined) continue;
    if (input.kind === 'thread') threads[input.name] = value as Thread;
    else if (input.kind === 'quantity') quantities[input.name] = value as number;
    else if (input.kind === 'text') texts[input.name] = value as string;
    else choices[input.name] = value as string;
  }
  return { threads, values: quantities, choices, texts };
};

/**
 * Every number that steps may name: the quantities, and of each thread what the glossary has a symbol for: a thread
 * called A gives P_A, N_A, L_A, h_A …, the one called thread gives P, N, L, h, d, tpi. The limits of its pitch diameters by
 * its class, or by the everyday one where none is written, are d_2min_A, d_2max_A, D_2min_A and D_2max_A. What a turn is divided by gives k.
 */
export const scopeOf = (numbers: Numbers): Record<string, number> => {
  const scope: Record<string, number> = { ...numbers.values };
  for (const [name, thread] of Object.entries(numbers.threads)) {
    const suffix = name === 'thread' ? '' : `_${name}`;
    const { d, P, N, L, h, tpi } = thread;
    for (const [symbol, value] of Object.entries({ d, P, N, L, h, tpi }))
      if (value !== undefined && isSymbol(symbol + suffix)) scope[symbol + suffix] = value;
    for (const [symbol, value] of pitchLimits(thread)) if (isSymbol(symbol + suffix)) scope[symbol + suffix] = value;
  }
  const { divider } = numbers.choices;
  if (divider !== undefined) scope.k ??= stepsOf(divider, scope.k_d ?? 1);
  return scope;
};

const pitchLimits = (thread: Thread): readonly (readonly [string, number])[] => {
  const fit = fitOfThread(thread);
  return fit.ok
    ? [
        ['d_2min', fit.value.screw.pitch.min],
        ['d_2max', fit.value.screw.pitch.max],
        ['D_2min', fit.value.nut.pitch.min],
        ['D_2max', fit.value.nut.pitch.max],
      ]
    : [];
};
