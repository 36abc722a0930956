/**
 * Size and pitch of a Unified designation (`3/8-16`, `#10-32 UNF`, `1¼-7`) or of a free one (`12 mm x 1.1 mm`,
 * `6.35 mm x 40 tpi`). A length for a pitch, or millimetres for a diameter, makes it free. D in inches, d and P in mm.
 */

import {
  bareWholeRead,
  beyondUnifiedSeries,
  outsideUnifiedSeries,
  readWithoutUnit,
  roundedRoot,
  roundedSizeTaken,
  seriesTpiTaken,
} from '#words/designation.ts';
import {
  bad,
  coarsePitch,
  good,
  inchesToMillimetres,
  LAST_NUMBER_SIZE,
  LAST_UNIFIED_SIZE,
  mm,
  numberSize,
  type Result,
  standardPitches,
  UNIFIED_SIZES,
  type UnifiedSeries,
  type UnifiedSize,
  unifiedSeries,
  unifiedSize,
} from '../engine/index.ts';
import { type Basic, leavesCore, NUMBER } from './designation-limits.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'not-a-thread': { readonly text: string };
    'inch-rest-unread': { readonly text: string };
    'inch-fraction-odd': { readonly text: string };
    'number-size-and-length': { readonly text: string };
    'number-size-beyond': { readonly text: string };
    'number-size-or-inches': {
      readonly text: string;
      readonly n: number;
      /** Threads per inch of either. */
      readonly asNumber: number;
      readonly asInches: number;
      readonly series: string;
    };
    'inches-without-unit': {
      readonly text: string;
      /** As typed, and its number. */
      readonly size: string;
      readonly n: number;
      readonly most: number;
    };
    'series-with-free-thread': { readonly text: string; readonly series: string };
    'diameter-without-pitch': { readonly text: string };
    'not-in-series': {
      readonly text: string;
      readonly series: string;
      readonly label: string;
      readonly size: UnifiedSize | undefined;
    };
    'size-without-tpi': {
      readonly text: string;
      /** How it could be written in full, in inches and, where it could be that, as a metric thread. */
      readonly inch: string;
      readonly metric: string | undefined;
    };
  }
}

const AMOUNT = `(?:\\d{1,3}[ -]\\d{1,4}/\\d{1,4}|\\d{1,4}/\\d{1,4}|${NUMBER})`;
const SIZE = `(?:[dø⌀][ =:]*)?(#)?(${AMOUNT}) ?(mm|in)?`;
const PITCH = `([ x-] ?p?|p)[ =:]*(-?${AMOUNT}) ?(mm|in|tpi)?`;
const WHOLE = new RegExp(`^${SIZE}(?:${PITCH})?[ -]?(unr?(?:c|f|ef|s)?|n(?:c|f|ef))?$`, 'i');
const BEGINS_WITH_SIZE = new RegExp(`^${SIZE}(?![a-z])`, 'i');

/** The parts of a designation as they were typed. */
interface Typed {
  readonly numbered: boolean;
  readonly size: string;
  readonly unit: string | undefined;
  /** What joins size and pitch: a cross is the metric habit, a hyphen the inch one. */
  readonly join: string;
  readonly pitch: string | undefined;
  readonly pitchUnit: string | undefined;
  readonly series: string | undefined;
}

/** Reads what is left when class, starts and hand are off; `text` is what was typed. */
export const readInchOrFree = (core: string, text: string): Result<Basic> => {
  const [all, hash, size = '', unit, join = '', pitch, pitchUnit, series] = WHOLE.exec(core.toLowerCase()) ?? [];
  if (all === undefined)
    return BEGINS_WITH_SIZE.test(core) ? bad('inch-rest-unread', { text }) : bad('not-a-thread', { text });
  if ([size, pitch].some((amount) => amount?.includes('/') && !Number.isInteger(64 * amountOf(amount))))
    return bad('inch-fraction-odd', { text });
  const t: Typed = { numbered: hash !== undefined, size, unit, join, pitch, pitchUnit, series: series?.toUpperCase() };
  if (!t.numbered) return isFree(t) ? readFree(t, text) : readUnified(t, text);
  return t.unit === 'mm' || t.pitchUnit === 'mm' || t.pitchUnit === 'in'
    ? bad('number-size-and-length', { text })
    : readUnified(t, text);
};

/** The number in `1.5`, `3/8`, `1-1/4`, `1 1/4` or `-2`. */
const amountOf = (amount: string): number => {
  if (amount.startsWith('-')) return -amountOf(amount.slice(1));
  const [fraction = '', whole = '0'] = amount.split(/[ -]/).reverse();
  const [top = '', bottom = '1'] = fraction.split('/');
  return Number(whole) + Number(top) / Number(bottom);
};

// Free threads.

const isFree = (t: Typed): boolean =>
  t.unit === 'mm' || t.pitchUnit === 'mm' || t.pitchUnit === 'in' || t.join.includes('p') || isBareMillimetres(t);

/** `10 x 1.5` can't be meant in inches: no unit or fraction, a pitch of a few, joined by a cross or not whole, and it leaves a core. */
const isBareMillimetres = ({ size, unit, join, pitch, pitchUnit, series }: Typed): boolean => {
  if (pitch === undefined || (unit ?? pitchUnit ?? series) !== undefined || `${size}${pitch}`.includes('/'))
    return false;
  const [d, P] = [Number(size), Number(pitch)];
  return P > 0 && P <= 6 && (join.includes('x') || !Number.isInteger(P)) && leavesCore(d, P);
};

const readFree = (t: Typed, text: string): Result<Basic> => {
  if (t.series !== undefined) return bad('series-with-free-thread', { text, series: t.series });
  if (t.pitch === undefined) return bad('diameter-without-pitch', { text });
  const unit = t.unit ?? (t.pitchUnit === 'in' ? 'in' : 'mm');
  const pitchUnit = t.pitchUnit ?? unit;
  const [size, pitch] = [amountOf(t.size), amountOf(t.pitch)];
  const d = unit === 'in' ? inchesToMillimetres(size) : mm(size);
  const P = pitchUnit === 'tpi' ? mm(25.4 / pitch) : pitchUnit === 'in' ? inchesToMillimetres(pitch) : mm(pitch);
  const name = `${size} ${unit} × ${pitch} ${pitchUnit}`;
  const standard = standardPitches(d).includes(P) ? `M${d}×${P}` : undefined;
  return good({
    kind: 'free',
    d,
    P,
    ...(pitchUnit === 'tpi' && { tpi: pitch }),
    spell: spelt(name),
    notes: (t.unit ?? t.pitchUnit) === undefined ? [readWithoutUnit(name, standard)] : [],
  });
};

const spelt =
  (name: string): Basic['spell'] =>
  (N, toleranceClass) =>
    `${name}${toleranceClass}${N === 1 ? '' : ` ${N}-start`}`;

// Unified threads.

/** American National, before 1949, has the same basic sizes (from memory). */
const OLD_NAMES: Readonly<Record<string, string>> = { NC: 'UNC', NF: 'UNF', NEF: 'UNEF' };
const isSeries = (word: string | undefined): word is UnifiedSeries =>
  word === 'UNC' || word === 'UNF' || word === 'UNEF';

const readUnified = (t: Typed, text: string): Result<Basic> => {
  // ASME B1.1: UNR threads are screws with a rounded root; diameters and pitches are those of UN.
  const rounded = t.series?.startsWith('UNR') === true;
  const named = rounded ? t.series?.replace('UNR', 'UN') : (OLD_NAMES[t.series ?? ''] ?? t.series);
  const sized = readSize(t, isSeries(named) ? named : undefined, text);
  if (!sized.ok) return sized;
  const { D, label, notes } = sized.value;
  const size = unifiedSize(D);
  const implied = isSeries(named) ? size?.tpi[named] : undefined;
  const tpi = t.pitch === undefined ? implied : amountOf(t.pitch);
  if (isSeries(named) && (tpi === undefined || (D <= LAST_UNIFIED_SIZE && implied !== tpi)))
    return bad('not-in-series', { text, series: named, label, size });
  if (tpi === undefined) return bad('size-without-tpi', { text, ...examples(t, sized.value, size) });
  const member = unifiedSeries(D, tpi);
  const series = member ?? (D <= LAST_UNIFIED_SIZE ? 'UNS' : named);
  const name = `${unmistakable(D, label, tpi)}-${tpi}${series === undefined ? '' : ` ${series}`}`;
  return good({
    kind: 'unified',
    d: inchesToMillimetres(D),
    P: mm(25.4 / tpi),
    tpi,
    spell: spelt(name),
    notes: [
      ...notes,
      ...(rounded ? [roundedRoot(`${t.series}`, `${named}`)] : []),
      ...(t.pitch === undefined ? [seriesTpiTaken(`${named}`, tpi)] : []),
      ...(isSeries(member) ? [] : [outsideSeries(D, `${label}-${tpi}`, member)]),
    ],
  });
};

interface Inches {
  readonly D: number;
  /** `#10`, `3/8`, `0.3`. */
  readonly label: string;
  readonly notes: readonly string[];
}

/** Above this, inches have to be written as such: `20-16` is more likely a slip than a 20-inch thread. */
const MOST_BARE_INCHES = 6;

const readSize = (t: Typed, named: UnifiedSeries | undefined, text: string): Result<Inches> => {
  const n = amountOf(t.size);
  const bareWhole = t.unit === undefined && /^\d{1,2}$/.test(t.size);
  if (t.numbered) return /^(?:\d|1[0-2])$/.test(t.size) ? good(numbered(n)) : bad('number-size-beyond', { text });
  if (bareWhole && n <= LAST_NUMBER_SIZE) return readBareWhole(n, t.pitch, named, text);
  if (t.unit === undefined && !(n <= MOST_BARE_INCHES))
    return bad('inches-without-unit', { text, size: t.size, n, most: MOST_BARE_INCHES });
  const meant = /^\d+\.\d{3}$/.test(String(n)) ? UNIFIED_SIZES.find((s) => Math.abs(s.D - n) < 0.00051) : undefined;
  if (meant === undefined || meant.D === n) return good(inInches(n));
  return good({ ...meant, notes: [roundedSizeTaken(n, meant.label, meant.D)] });
};

/** `10` in `10-32`, `1` in `1-8`: the note says how it was read where no series decides. */
const readBareWhole = (
  n: number,
  pitch: string | undefined,
  named: UnifiedSeries | undefined,
  text: string,
): Result<Inches> => {
  const [asNumber, asInches] = [unifiedSize(numberSize(n)), unifiedSize(n)];
  if (pitch === undefined) {
    const [a, b] = named ? [asNumber?.tpi[named], asInches?.tpi[named]] : [];
    if (a !== undefined && b !== undefined)
      return bad('number-size-or-inches', { text, n, asNumber: a, asInches: b, series: `${named}` });
    return good(b === undefined ? numbered(n) : inInches(n));
  }
  const tpi = amountOf(pitch);
  const number = isNumberSize(n, tpi);
  const read = number ? numbered(n) : inInches(n);
  const otherFits = leavesCore(number ? n : numberSize(n), 1 / tpi);
  if (unifiedSeries(read.D, tpi) || !otherFits) return good(read);
  return good({ ...read, notes: [bareWholeRead(n, number, pitch)] });
};

/**
 * Whether a bare whole number is a number size (`10-32`, `1-72`) or inches (`1-8`): the one that is standard; where
 * neither is, 24 threads per inch and finer go with a number size, coarser ones with inches.
 */
const isNumberSize = (n: number, tpi: number): boolean => {
  if (n < 1 || n > MOST_BARE_INCHES) return n <= LAST_NUMBER_SIZE;
  const [asNumber, asInches] = [unifiedSeries(numberSize(n), tpi), unifiedSeries(n, tpi)];
  if ((asNumber === undefined) !== (asInches === undefined)) return asNumber !== undefined;
  return tpi >= 24 && leavesCore(numberSize(n), 1 / tpi);
};

const numbered = (n: number): Inches => ({ D: numberSize(n), label: `#${n}`, notes: [] });

/** Written as the series write it, else as a fraction down to sixty-fourths, else as a decimal. */
const inInches = (D: number): Inches => {
  const size = unifiedSize(D);
  if (size) return { ...size, notes: [] };
  for (let n = 0; n <= LAST_NUMBER_SIZE; n++) if (numberSize(n) === D) return numbered(n);
  const whole = Math.floor(D);
  const bottom = [2, 4, 8, 16, 32, 64].find((b) => Number.isInteger(D * b));
  if (bottom === undefined || whole === D) return { D, label: `${D}`, notes: [] };
  return { D, label: `${whole === 0 ? '' : `${whole}-`}${(D - whole) * bottom}/${bottom}`, notes: [] };
};

/** The label, with its unit where without one it would be read back as a number size or as millimetres. */
const unmistakable = (D: number, label: string, tpi: number): string => {
  const mistakable = /^\d+$/.test(label) && isNumberSize(D, tpi);
  return mistakable || D > (label.includes('/') ? MOST_BARE_INCHES : LAST_UNIFIED_SIZE) ? `${label} in` : label;
};

/** How a size could be written in full: in inches, and as a metric thread where it could be one. */
const examples = (
  t: Typed,
  { D, label }: Inches,
  size: UnifiedSize | undefined,
): { readonly inch: string; readonly metric: string | undefined } => {
  const tpi = Object.values(size?.tpi ?? {})[0] ?? 20;
  const n = mm(Number(t.size));
  const inchOnly = t.numbered || t.unit !== undefined || coarsePitch(n) === undefined;
  return { inch: `${unmistakable(D, label, tpi)}-${tpi}`, metric: inchOnly ? undefined : `M${n}` };
};

const outsideSeries = (D: number, name: string, member: 'UN' | undefined): string =>
  D > LAST_UNIFIED_SIZE
    ? beyondUnifiedSeries(name)
    : outsideUnifiedSeries(D, name, member !== undefined, unifiedSize(D));
