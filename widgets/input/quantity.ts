/** Numbers and quantities as people type them: each gives a value in base units, or one sentence. */
import {
  type BaseUnit,
  bad,
  good,
  type Hours,
  hours,
  outOfBounds,
  type Result,
  UNITS,
  type Unit,
  type UnitFact,
} from '../engine/index.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'number-too-long': { readonly text: string; readonly most: number };
    'number-empty': Readonly<Record<never, never>>;
    'not-a-number': { readonly text: string };
    'fraction-over-nought': { readonly text: string };
    'number-too-large': { readonly text: string };
    'quantity-too-long': { readonly text: string; readonly most: number };
    'quantity-too-large': { readonly text: string };
    'unit-unknown': { readonly unit: string; readonly takes: readonly Unit[] };
    'unit-of-other-kind': { readonly text: string; readonly unit: Unit; readonly takes: readonly Unit[] };
    'time-without-unit': { readonly text: string };
  }
}

/** One spelling for capitals, for the Greek letter mu, and for a ring or a raised o: some keyboards have those for the micro and the degree sign. */
const folded = (text: string): string =>
  text
    .toLowerCase()
    .replace('μ', 'µ')
    .replace(/^[º˚]$/, '°');

const spelt = new Map<string, Unit>();
for (const [unit, fact] of Object.entries(UNITS) as [Unit, UnitFact][])
  for (const s of fact.spellings) spelt.set(folded(s), unit);

export const unitNamed = (text: string): Unit | undefined => spelt.get(folded(text.trim()));

/** No field of this notebook needs a longer text; a longer one is a slip of the clipboard. */
export const LONGEST_TEXT = 60;

/**
 * Reads a number as people write it: `1.5`, `1,5`, `.375`, `-2`, `−2`, `1/4`, `1 1/2`, `1-1/2`, `-1/2`, `2e-3`.
 * A comma is a decimal mark. Returns the number, or a sentence.
 */
export const readNumber = (text: string): Result<number> => {
  if (!(text.length <= LONGEST_TEXT)) return bad('number-too-long', { text, most: LONGEST_TEXT });
  const t = text.trim().replace(/[−–]/g, '-').replace(',', '.');
  const fraction = /^([+-]?)(?:(\d{1,4})(?:\s+|-))?(\d{1,5})\/(\d{1,5})$/.exec(t);
  if (fraction) {
    const [, sign = '', whole = '0', top = '', bottom = ''] = fraction;
    const value = (sign === '-' ? -1 : 1) * (Number(whole) + Number(top) / Number(bottom));
    return Number.isFinite(value) ? good(value) : bad('fraction-over-nought', { text });
  }
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(t))
    return t === '' ? bad('number-empty', {}) : bad('not-a-number', { text });
  const value = Number(t);
  return Number.isFinite(value) ? good(value) : bad('number-too-large', { text });
};

/** A quantity as it was typed: its value in base units, the unit it was typed in, and how finely it was typed. */
export interface Reading {
  readonly value: number;
  readonly unit: Unit;
  /** Significant digits typed, for example 4 in `87.50`. */
  readonly digits: number;
  /** Half a unit of the last typed digit, in base units: how far another value may be off and still round to this. */
  readonly half: number;
}

/** Reads a quantity such as `87.50 µm`, `3,44 thou` or `30°`; `fallback` is the unit where none is typed. */
export const readQuantity = (text: string, base: BaseUnit, fallback: Unit): Result<Reading> => {
  if (!(text.length <= LONGEST_TEXT)) return bad('quantity-too-long', { text, most: LONGEST_TEXT });
  const split = /^\s*([+\-−–]?[\d.,]+(?:e[+-]?\d+)?(?:(?:\s+|-)?\d*\/\d+)?)\s*(.*)$/i.exec(text);
  const number = split?.[1] ?? text;
  const read = readNumber(number);
  if (!read.ok) return read;
  const typed = split?.[2] ?? '';
  const unit = typed === '' ? fallback : unitNamed(typed);
  const takes = (Object.keys(UNITS) as Unit[]).filter((u) => UNITS[u].base === base && u !== '1');
  if (unit === undefined) return bad('unit-unknown', { unit: typed, takes });
  if (UNITS[unit].base !== base) return bad('unit-of-other-kind', { text, unit, takes });
  const { digits, step } = fineness(number.includes('/') ? decimals(read.value) : number);
  const factor = UNITS[unit].factor;
  const [value, half] = [read.value * factor, (step * factor) / 2];
  // A number that was still one may be none in the base unit, and a nought with a vast exponent has no last digit.
  return Number.isFinite(value) && Number.isFinite(half)
    ? good({ value, unit, digits, half })
    : bad('quantity-too-large', { text });
};

/** A fraction is exact: it stands as typed to four digits, or to six where four do not hold it. */
const decimals = (fraction: number): string =>
  Number(fraction.toPrecision(4)) === Number(fraction.toPrecision(6))
    ? fraction.toPrecision(4)
    : fraction.toPrecision(6);

/** Significant digits and the step of the last digit of a typed decimal number. */
const fineness = (number: string): { digits: number; step: number } => {
  const [mantissa = '', exponent = '0'] = number
    .replace(/^[+\-−–]/, '')
    .replace(',', '.')
    .toLowerCase()
    .split('e');
  const decimals = mantissa.includes('.') ? mantissa.length - mantissa.indexOf('.') - 1 : 0;
  const digits = mantissa.replace('.', '').replace(/^0+/, '').length;
  return { digits: Math.max(1, digits), step: 10 ** (Number(exponent) - decimals) };
};

/** Reads a duration; a log law without its time unit is refused, for 24 h and 24 min differ by what the law is about. */
export const readTime = (text: string): Result<Hours> => {
  // What reads well with a unit put after it had none.
  if (readQuantity(`${text} h`, 'h', 'h').ok) return bad('time-without-unit', { text }, 't');
  const read = readQuantity(text, 'h', 'h');
  if (!read.ok) return read;
  const refusal = outOfBounds('t', read.value.value);
  return refusal ?? good(hours(read.value.value));
};
