/**
 * How numbers are written on a page: which unit, how many digits, which minus.
 *
 * The reader's unit view rules every length: `metric` (mm and µm), `inch` (inch, thou, tenths, millionths) or
 * `both`. A length that is a size is written in mm or inch; a length that is a motion takes the unit an indicator
 * would show. Digits are significant digits, so a number keeps its fineness when the unit changes.
 */
import { SENSE, UNIT_WORDS } from '#words/language.ts';
import { type BaseUnit, fromBase, type SymbolFact, spokenNumber, type Unit } from '../engine/index.ts';

export type UnitView = 'metric' | 'inch' | 'both';
export const UNIT_VIEWS: readonly UnitView[] = ['metric', 'inch', 'both'];

/** Units that are written as the engine holds them. */
type Named = Exclude<BaseUnit, 'mm' | 'rad' | 'turn' | 'N' | '1'>;
type Shown = NonNullable<SymbolFact['shown']> | 'plain' | 'turns' | 'force' | Named;

const SHOWN: Readonly<Record<BaseUnit, Shown>> = {
  mm: 'size',
  rad: 'degrees',
  turn: 'turns',
  N: 'force',
  N·mm: 'N·mm',
  MPa: 'MPa',
  'N/mm': 'N/mm',
  K: 'K',
  '1/K': '1/K',
  h: 'h',
  Hz: 'Hz',
  '1': 'plain',
};

/** How a value in this base unit is written where the glossary says no more. */
export const shownIn = (unit: BaseUnit): Shown => SHOWN[unit];

/** How a value is to be written: its kind, and significant digits (trailing noughts kept only when stated). */
export interface NumberFormat {
  readonly shown: Shown;
  readonly digits?: number;
}

export const formatOf = (fact: SymbolFact, digits?: number): NumberFormat => {
  const shown = fact.shown ?? shownIn(fact.unit);
  return digits === undefined ? { shown } : { shown, digits };
};

const NBSP = '\u00a0';
const PLAIN_DIGITS = 5;

/** A number alone, with a true minus and the decimal mark of the language, never in exponent form. */
export const numeral = (value: number, digits?: number): string => {
  // Decimal halves such as 1.5875 sit a hair under in binary; the nudge lets them round up as on paper.
  const size = Math.abs(value) * (1 + 1e-13);
  if (!Number.isFinite(value)) return '?';
  const wanted = digits ?? PLAIN_DIGITS;
  let text: string;
  if (size === 0) text = '0';
  else {
    const rounded = Number(size.toPrecision(wanted));
    const decimals = Math.max(0, wanted - 1 - Math.floor(Math.log10(rounded)));
    // toFixed turns to exponents at 1e21; whole numbers of that size are written out.
    text = rounded < 1e21 ? rounded.toFixed(Math.min(decimals, 12)) : BigInt(rounded).toString();
    // Smaller than anything an axis or a gauge can show.
    if (Number(text) === 0) text = '0';
    if (digits === undefined && text.includes('.')) text = text.replace(/0+$/, '').replace(/\.$/, '');
  }
  const spoken = spokenNumber(text);
  return value < 0 && Number(text) !== 0 ? `−${spoken}` : spoken;
};

/** A number that code has written with so many decimals, as a reader reads it. */
export const fixed = (value: number, decimals: number): string =>
  spokenNumber(value.toFixed(decimals).replace('-', '−'));

/** A unit as it is written behind a number: its sign, or its name where it has none. */
export const unitText = (unit: Unit): string =>
  Object.hasOwn(UNIT_WORDS, unit) ? UNIT_WORDS[unit as keyof typeof UNIT_WORDS] : unit;

/** A whole number in groups of three digits. */
export const grouped = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, '\u202f');

const inUnit = (value: number, unit: Unit, digits?: number): string =>
  `${numeral(fromBase(value, unit).amount, digits)}${unit === '°' ? '' : NBSP}${unitText(unit)}`;

const metricUnit = (value: number, shown: Shown): Unit =>
  shown === 'size' || Math.abs(value) >= 0.99995 ? 'mm' : 'µm';

const inchUnit = (value: number, shown: Shown): Unit => {
  const inches = Math.abs(value) / 25.4;
  if (shown === 'size' || inches >= 0.0999995) return 'in';
  if (inches >= 0.000999995 || inches === 0) return 'thou';
  return inches >= 0.0000999995 ? 'tenths' : 'millionths';
};

/** Hours say little of half a minute or of a year. */
export const timeUnit = (value: number): Unit => {
  const size = Math.abs(value);
  if (size >= 72) return 'd';
  return size >= 1 || size === 0 ? 'h' : size >= 1 / 60 ? 'min' : 's';
};

/** The unit in which a length of this kind is written, metric where both are shown; undefined for what is no length. */
export const lengthUnit = (value: number, { shown }: NumberFormat, view: UnitView): Unit | undefined =>
  shown !== 'size' && shown !== 'motion'
    ? undefined
    : view === 'inch'
      ? inchUnit(value, shown)
      : metricUnit(value, shown);

/** The value with its unit, as the reader has chosen to see lengths. */
export const show = (value: number, format: NumberFormat, view: UnitView): string => {
  const { shown, digits } = format;
  switch (shown) {
    case 'size':
    case 'motion': {
      const metric = () => inUnit(value, metricUnit(value, shown), digits);
      const inch = () => inUnit(value, inchUnit(value, shown), digits);
      return view === 'metric' ? metric() : view === 'inch' ? inch() : `${metric()} (${inch()})`;
    }
    case 'degrees':
      return inUnit(value, '°', digits);
    case 'percent':
      return inUnit(value, '%', digits);
    case 'sense':
      return value > 0 ? SENSE.right : SENSE.left;
    case 'turns': {
      const n = numeral(value, digits);
      return `${n}${NBSP}${n === '1' || n === '−1' ? UNIT_WORDS.turn : UNIT_WORDS.turns}`;
    }
    case 'force':
      return inUnit(value, 'N', digits);
    case 'h':
      return inUnit(value, timeUnit(value), digits);
    case 'plain':
      return numeral(value, digits);
    default:
      return inUnit(value, shown, digits);
  }
};

/** The same text with its sign even where it is positive; nought has none. */
export const withSign = (text: string): string => (text.startsWith('−') || !/[1-9]/.test(text) ? text : `+${text}`);

/** The value as it stands inside a formula: hands as ±1, turns without their word, negatives in brackets. */
export const showInFormula = (value: number, format: NumberFormat, view: UnitView): string => {
  if (format.shown === 'sense') return value > 0 ? '(+1)' : '(−1)';
  // Two units in brackets inside a formula can't be read; mm leads there.
  const text =
    format.shown === 'turns' ? numeral(value, format.digits) : show(value, format, view === 'both' ? 'metric' : view);
  return text.startsWith('−') ? `(${text})` : text;
};
