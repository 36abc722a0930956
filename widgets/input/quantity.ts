/** Numbers and quantities as people type them: each gives a value in base units, or one sentence. */
import {
  type BaseUnit,
  good,
  type Hours,
  hours,
  outOfBounds,
  quoted,
  type Result,
  said,
  UNITS,
  type Unit,
  type UnitFact,
} from '../engine/index.ts';

/** One spelling for capitals and for the Greek letter mu, which some keyboards type for the micro sign. */
const folded = (text: string): string => text.toLowerCase().replace('μ', 'µ');

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
  if (!(text.length <= LONGEST_TEXT))
    return said(
      `Read ${quoted(text)}; a number is at most ${LONGEST_TEXT} characters: type it again, for example 1.5.`,
    );
  const t = text.trim().replace(/[−–]/g, '-').replace(',', '.');
  const fraction = /^([+-]?)(?:(\d{1,4})(?:\s+|-))?(\d{1,5})\/(\d{1,5})$/.exec(t);
  if (fraction) {
    const [, sign = '', whole = '0', top = '', bottom = ''] = fraction;
    const value = (sign === '-' ? -1 : 1) * (Number(whole) + Number(top) / Number(bottom));
    return Number.isFinite(value)
      ? good(value)
      : said(`Read ${quoted(text)}, a fraction over nought: write one like 3/8.`);
  }
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(t))
    return said(
      t === ''
        ? 'Nothing was typed; a number is needed, for example 1.5.'
        : `Read ${quoted(text)}, which is not a number: write one like 1.5, 1,5 or 3/8.`,
    );
  const value = Number(t);
  return Number.isFinite(value)
    ? good(value)
    : said(`Read ${quoted(text)}, which is too large a number to work with: type a smaller one.`);
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
  if (!(text.length <= LONGEST_TEXT))
    return said(
      `Read ${quoted(text)}; a quantity is at most ${LONGEST_TEXT} characters: type it again, for example 1.5 mm.`,
    );
  const split = /^\s*([+\-−–]?[\d.,]+(?:e[+-]?\d+)?(?:(?:\s+|-)?\d*\/\d+)?)\s*(.*)$/i.exec(text);
  const number = split?.[1] ?? text;
  const read = readNumber(number);
  if (!read.ok) return read;
  const typed = split?.[2] ?? '';
  const unit = typed === '' ? fallback : unitNamed(typed);
  const choices = (Object.keys(UNITS) as Unit[]).filter((u) => UNITS[u].base === base && u !== '1').join(', ');
  if (unit === undefined) return said(`Read ${quoted(typed)} as a unit, which is not one used here: use ${choices}.`);
  if (UNITS[unit].base !== base) return said(`Read ${quoted(text)}, in ${unit}; this takes ${choices}.`);
  const { digits, step } = fineness(number.includes('/') ? decimals(read.value) : number);
  const factor = UNITS[unit].factor;
  const [value, half] = [read.value * factor, (step * factor) / 2];
  // A number that was still one may be none in the base unit, and a nought with a vast exponent has no last digit.
  return Number.isFinite(value) && Number.isFinite(half)
    ? good({ value, unit, digits, half })
    : said(`Read ${quoted(text)}, which is too large to work with: type a smaller number.`);
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
  if (readQuantity(`${text} h`, 'h', 'h').ok)
    return said(
      `Read ${quoted(text)} without a unit of time, and the law needs one: write ${quoted(`${text} h`)}, min, s or d.`,
      't',
    );
  const read = readQuantity(text, 'h', 'h');
  if (!read.ok) return read;
  const refusal = outOfBounds('t', read.value.value);
  return refusal ?? good(hours(read.value.value));
};
