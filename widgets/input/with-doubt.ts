/** A value and its ± as metrology writes them: the ± with two significant digits, the value to the same last place (JCGM 100:2008, 7.2.6). */
import { fromBase, spokenNumber, UNITS, type Unit } from '../engine/index.ts';
import { lengthUnit, type NumberFormat, timeUnit, type UnitView, unitText } from './format.ts';

const NBSP = '\u00a0';

/** The unit in which both are written. */
const unitFor = (size: number, format: NumberFormat, view: UnitView): Unit => {
  const length = lengthUnit(size, format, view);
  if (length !== undefined) return length;
  const { shown } = format;
  if (shown === 'degrees') return '°';
  if (shown === 'percent') return '%';
  if (shown === 'turns' || shown === 'force') return shown === 'turns' ? 'turns' : 'N';
  if (shown === 'h') return timeUnit(size);
  return Object.hasOwn(UNITS, shown) ? (shown as Unit) : '1';
};

/** Two digits of U, and how many decimals they take. */
const twoDigits = (U: number): { readonly text: string; readonly decimals: number } => {
  const exponent = Math.floor(Math.log10(Number(U.toPrecision(2))));
  const decimals = 1 - exponent;
  return { text: rounded(U, decimals), decimals };
};

/** To so many decimals; tens and hundreds where there are fewer than none. */
const rounded = (x: number, decimals: number): string => {
  const size = Math.abs(x) * (1 + 1e-13);
  const text =
    decimals >= 0 ? size.toFixed(Math.min(12, decimals)) : String(Math.round(size * 10 ** decimals) / 10 ** decimals);
  const spoken = spokenNumber(text);
  return x < 0 && Number(text) !== 0 ? `−${spoken}` : spoken;
};

export const showWithDoubt = (value: number, U: number, format: NumberFormat, view: UnitView): string => {
  const unit = unitFor(Math.max(Math.abs(value), U), format, view);
  const doubt = twoDigits(fromBase(U, unit).amount);
  const amount = rounded(fromBase(value, unit).amount, doubt.decimals);
  if (unit === '1') return `${amount} ± ${doubt.text}`;
  return unit === '°' ? `${amount}° ± ${doubt.text}°` : `(${amount} ± ${doubt.text})${NBSP}${unitText(unit)}`;
};

/** A written number without the noughts at the end of its decimals. */
export const trimmed = (text: string): string => text.replace(/([.,]\d*?)0+(?!\d)/, '$1').replace(/[.,](?!\d)/, '');
