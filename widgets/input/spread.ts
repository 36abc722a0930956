/**
 * The ± of a number, typed behind it:
 *
 *   1.500 mm ± 2 µm              limits: every value between them is as likely (+- and +/- stand for ±)
 *   30 N ± 10 %                  a share of the value
 *   30 N ± 2 N, k = 2            an uncertainty stated with its coverage factor, as on a certificate
 *   1.500 mm ± 2 µm, 10 readings the mean of so many readings, ± their standard deviation
 *   1.501; 1.499; 1.503 mm       the readings themselves, of which mean and standard deviation are taken
 *   M10×1.5-6g, M10×1.5-6H/6g    where a pitch diameter or its clearance is asked: the middle and the limits of the class
 */
import { READINGS } from '#words/language.ts';
import {
  type BaseUnit,
  bad,
  type Doubt,
  expanded,
  fitOfThread,
  flat,
  fromReadings,
  good,
  meanAndScatter,
  type Result,
  spokenNumber,
  UNITS,
  type Unit,
} from '../engine/index.ts';
import { readThread } from './designation.ts';
import { numeral } from './format.ts';
import { readNumber, readQuantity, unitNamed } from './quantity.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'spread-nought': { readonly text: string };
    'spread-without-value': { readonly text: string };
    'spread-tail-unread': { readonly text: string };
    'spread-few-readings': { readonly text: string };
    'class-without-limits': { readonly text: string };
  }
}

/** A ± as it was typed, in base units. */
export interface Spread {
  /** Half the width, the stated uncertainty, or the standard deviation of one reading. */
  readonly half: number;
  /** The same as a share of the value, where it was typed so; it then follows the value. */
  readonly share?: number;
  readonly k?: number;
  readonly readings?: number;
}

/** A value with its ±, in base units. */
export interface WithSpread {
  readonly value: number;
  readonly spread: Spread;
}

const SIGN = /±|\+\s*\/?\s*[-−–]/;

/** Whether a text states a ± by its sign. */
export const statesSpread = (text: string): boolean => SIGN.test(text);
/** Whether a text states a ±, by its sign or by several readings, so that it is read here. */
export const hasSpread = (text: string): boolean => statesSpread(text) || text.includes(';');

/** The text before the ± and after it. */
export const splitSpread = (text: string): readonly [string, string] => {
  const sign = SIGN.exec(text);
  return sign ? [text.slice(0, sign.index).trim(), text.slice(sign.index + sign[0].length).trim()] : [text.trim(), ''];
};

/** What stands behind a ±, for a value that is known. A share is no ± of a number that is itself one. */
export const readSpread = (tail: string, value: number, base: BaseUnit, fallback: Unit): Result<Spread> => {
  const [, size = '', rest = ''] = /^([^,()]*?(?:\d,\d[^,()]*?)?)\s*(?:[,(]\s*(.*?)\)?)?$/.exec(tail) ?? [];
  const share = /^(.*\d)\s*%$/.exec(size);
  let half: number;
  if (share && fallback !== '%') {
    const read = readNumber(share[1] ?? '');
    if (!read.ok) return read;
    half = Math.abs(value) * (read.value / 100);
  } else {
    const read = readQuantity(size, base, fallback);
    if (!read.ok) return read;
    half = read.value.value;
  }
  if (!Number.isFinite(half)) return bad('quantity-too-large', { text: tail });
  if (!(half > 0)) return bad('spread-nought', { text: tail });
  const shared = share && fallback !== '%' ? { share: half / Math.abs(value) } : {};
  if (rest === '') return good({ half, ...shared });
  const factor = /^k\s*=\s*(.*)$/i.exec(rest);
  const k = factor ? readNumber(factor[1] ?? '') : undefined;
  if (k?.ok && k.value > 0 && k.value < 100) return good({ half, ...shared, k: k.value });
  const readings =
    /^(?:(?:measured|mean of),?\s*)?(\d{1,6})\s+(?:readings?|Messwerte?n?|Messung(?:en)?|Ablesung(?:en)?)$/i.exec(rest);
  if (!readings) return bad('spread-tail-unread', { text: rest });
  const count = Number(readings[1]);
  return count >= 2 ? good({ half, readings: count }) : bad('spread-few-readings', { text: rest });
};

/** A quantity with its ±. */
export const readWithSpread = (text: string, base: BaseUnit, fallback: Unit): Result<WithSpread> => {
  if (!SIGN.test(text)) return readReadings(text, base, fallback);
  const [before, behind] = splitSpread(text);
  if (before === '') return bad('spread-without-value', { text });
  const value = readQuantity(before, base, fallback);
  if (!value.ok) return value;
  const spread = readSpread(behind, value.value.value, base, value.value.unit);
  return spread.ok ? good({ value: value.value.value, spread: spread.value }) : spread;
};

/** Readings with semicolons between; one unit behind the last counts for those that have none. */
const readReadings = (text: string, base: BaseUnit, fallback: Unit): Result<WithSpread> => {
  const parts = text.split(';').map((part) => part.trim());
  const [, typed = ''] = /[\d.]\s*([^\d\s.,;].*)$/.exec(parts.at(-1) ?? '') ?? [];
  const unit = (typed === '' ? undefined : unitNamed(typed)) ?? fallback;
  const values: number[] = [];
  for (const part of parts) {
    const read = readQuantity(part, base, unit);
    if (!read.ok) return read;
    values.push(read.value.value);
  }
  if (values.length < 2) return bad('spread-few-readings', { text });
  const { mean, scatter } = meanAndScatter(values);
  if (!(Number.isFinite(mean) && Number.isFinite(scatter))) return bad('quantity-too-large', { text });
  return scatter > 0
    ? good({ value: mean, spread: { half: scatter, readings: values.length } })
    : bad('spread-nought', { text });
};

/** Symbols whose limits a class gives, by which of a thread’s sides. */
const OF_CLASS: Readonly<Record<string, 'screw' | 'nut' | 'both'>> = {
  d_2: 'screw',
  d_2A: 'screw',
  d_2C: 'screw',
  D_2: 'nut',
  c: 'both',
  c_A: 'both',
  c_C: 'both',
};

/** The middle and the limits that a designation with its class gives a pitch diameter or a clearance; undefined for any other text. */
export const readClassLimits = (symbol: string, text: string): Result<WithSpread> | undefined => {
  const side = OF_CLASS[symbol];
  if (side === undefined || !/[a-z#×/-]/i.test(text)) return undefined;
  const thread = readThread(text);
  if (!thread.ok) return undefined;
  const fit = thread.value.toleranceClass === undefined ? undefined : fitOfThread(thread.value);
  if (!fit?.ok) return fit ?? bad('class-without-limits', { text });
  const { screw, nut } = fit.value;
  const [low, high] =
    side === 'screw'
      ? [screw.pitch.min, screw.pitch.max]
      : side === 'nut'
        ? [nut.pitch.min, nut.pitch.max]
        : [nut.pitch.min - screw.pitch.max, nut.pitch.max - screw.pitch.min];
  return good({ value: (low + high) / 2, spread: { half: (high - low) / 2 } });
};

/** Its standard uncertainty, degrees of freedom and law. */
export const doubtOf = ({ half, k, readings }: Spread): Doubt =>
  readings !== undefined ? fromReadings(half, readings) : k !== undefined ? expanded(half, k) : flat(half);

/** As links and files have it, whatever the language of the page. */
const pointed = (text: string): string => text.replace(',', '.');

/** A number as a field shows it, in the language of the page. */
export const inField = (text: string): string => spokenNumber(text).replace(/(\d) readings$/, `$1 ${READINGS}`);

/** A ± as its field writes it and reads it again; `unit` is that of the value before it. */
export const spreadText = (spread: Spread, unit: Unit): string => {
  const { half, share, k, readings } = spread;
  const small: Partial<Record<Unit, Unit>> = { mm: 'µm', in: 'thou' };
  const shown = share !== undefined ? '%' : half / UNITS[unit].factor < 0.1 ? (small[unit] ?? unit) : unit;
  const amount = share !== undefined ? share * 100 : half / UNITS[shown].factor;
  const number = pointed(numeral(amount, 9))
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
  const size = shown === '1' || shown === 'turns' ? number : shown === '°' ? `${number}°` : `${number} ${shown}`;
  const behind =
    readings !== undefined ? `, ${readings} readings` : k !== undefined ? `, k = ${pointed(numeral(k))}` : '';
  return ` ± ${size}${behind}`;
};
