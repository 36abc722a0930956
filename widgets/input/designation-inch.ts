/**
 * Size and pitch of a Unified designation (`3/8-16`, `#10-32 UNF`, `1¼-7`) or of a free one (`12 mm x 1.1 mm`,
 * `6.35 mm x 40 tpi`). A length for a pitch, or millimetres for a diameter, makes it free. D in inches, d and P in mm.
 */

import {
  coarsePitch,
  good,
  inchesToMillimetres,
  LAST_NUMBER_SIZE,
  LAST_UNIFIED_SIZE,
  listed,
  mm,
  numberSize,
  type Result,
  said,
  standardPitches,
  UNIFIED_SIZES,
  type UnifiedSeries,
  type UnifiedSize,
  unifiedSeries,
  unifiedSize,
} from '../engine/index.ts';
import { reasonOf } from '../words/reason.ts';
import { type Basic, EXAMPLES, leavesCore, NUMBER } from './designation-limits.ts';

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

/** Reads what is left when class, starts and hand are off; `typed` is the quotation a refusal begins with. */
export const readInchOrFree = (core: string, typed: string): Result<Basic> => {
  const [all, hash, size = '', unit, join = '', pitch, pitchUnit, series] = WHOLE.exec(core.toLowerCase()) ?? [];
  if (all === undefined)
    return BEGINS_WITH_SIZE.test(core)
      ? said(
          `Read ${typed}; after the size comes one pitch or number of threads per inch, then only series, class, starts or hand: write it like 3/8-16 UNC-2A LH.`,
        )
      : said(`Read ${typed}, which is not a thread designation: write one like ${EXAMPLES}.`);
  if ([size, pitch].some((amount) => amount?.includes('/') && !Number.isInteger(64 * amountOf(amount))))
    return said(
      `Read ${typed}; inch fractions are halves to sixty-fourths: write one like 3/8, or a decimal like 0.375.`,
    );
  const t: Typed = { numbered: hash !== undefined, size, unit, join, pitch, pitchUnit, series: series?.toUpperCase() };
  if (!t.numbered) return isFree(t) ? readFree(t, typed) : readUnified(t, typed);
  return t.unit === 'mm' || t.pitchUnit === 'mm' || t.pitchUnit === 'in'
    ? said(`Read ${typed}; a number size goes with threads per inch: write it like #10-32.`)
    : readUnified(t, typed);
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

const readFree = (t: Typed, typed: string): Result<Basic> => {
  if (t.series !== undefined)
    return said(
      `Read ${typed}; the series ${t.series} goes with an inch size and threads per inch: write it like 3/8-16 UNC.`,
    );
  if (t.pitch === undefined) return said(`Read ${typed}, a diameter without a pitch: write both, like 12 mm × 1.1 mm.`);
  const unit = t.unit ?? (t.pitchUnit === 'in' ? 'in' : 'mm');
  const pitchUnit = t.pitchUnit ?? unit;
  const [size, pitch] = [amountOf(t.size), amountOf(t.pitch)];
  const d = unit === 'in' ? inchesToMillimetres(size) : mm(size);
  const P = pitchUnit === 'tpi' ? mm(25.4 / pitch) : pitchUnit === 'in' ? inchesToMillimetres(pitch) : mm(pitch);
  const name = `${size} ${unit} × ${pitch} ${pitchUnit}`;
  const standard = standardPitches(d).includes(P) ? `; the standard thread is written M${d}×${P}` : '';
  return good({
    kind: 'free',
    d,
    P,
    ...(pitchUnit === 'tpi' && { tpi: pitch }),
    spell: spelt(name),
    notes: (t.unit ?? t.pitchUnit) === undefined ? [`No unit was written, so it was read as ${name}${standard}.`] : [],
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

const readUnified = (t: Typed, typed: string): Result<Basic> => {
  // ASME B1.1: UNR threads are screws with a rounded root; diameters and pitches are those of UN.
  const rounded = t.series?.startsWith('UNR') === true;
  const named = rounded ? t.series?.replace('UNR', 'UN') : (OLD_NAMES[t.series ?? ''] ?? t.series);
  const sized = readSize(t, isSeries(named) ? named : undefined);
  if (!sized.ok) return said(`Read ${typed}; ${reasonOf(sized)}.`);
  const { D, label, notes } = sized.value;
  const size = unifiedSize(D);
  const implied = isSeries(named) ? size?.tpi[named] : undefined;
  const tpi = t.pitch === undefined ? implied : amountOf(t.pitch);
  if (isSeries(named) && (tpi === undefined || (D <= LAST_UNIFIED_SIZE && implied !== tpi)))
    return said(
      `Read ${typed}, which is not in ${named}: ${size ? offer(size) : `${label} is not one of its sizes, so leave ${named} out and write the threads per inch`}.`,
    );
  if (tpi === undefined)
    return said(
      `Read ${typed}, a size without threads per inch: write them too, like ${example(t, sized.value, size)}.`,
    );
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
      ...(rounded
        ? [`${t.series} was read as ${named}: the sizes are the same, and only the rounded root of the screw is added.`]
        : []),
      ...(t.pitch === undefined ? [`No threads per inch were written, so those of ${named} were taken, ${tpi}.`] : []),
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

/** The diameter; the reason is a clause, not yet a sentence. */
const readSize = (t: Typed, named: UnifiedSeries | undefined): Result<Inches> => {
  const n = amountOf(t.size);
  const bareWhole = t.unit === undefined && /^\d{1,2}$/.test(t.size);
  if (t.numbered)
    return /^(?:\d|1[0-2])$/.test(t.size)
      ? good(numbered(n))
      : said(
          `number sizes run from #0 to #${LAST_NUMBER_SIZE}: write the diameter of another in inches, like 0.242-20`,
        );
  if (bareWhole && n <= LAST_NUMBER_SIZE) return readBareWhole(n, t.pitch, named);
  if (t.unit === undefined && !(n <= MOST_BARE_INCHES))
    return said(
      `without a unit that would be ${t.size} in, and above ${MOST_BARE_INCHES} in the unit has to be written: write M${n} or ${n} mm × 1.1 mm for millimetres, ${n} in-12 for inches`,
    );
  const meant = /^\d+\.\d{3}$/.test(String(n)) ? UNIFIED_SIZES.find((s) => Math.abs(s.D - n) < 0.00051) : undefined;
  if (meant === undefined || meant.D === n) return good(inInches(n));
  return good({ ...meant, notes: [`${n} in was taken as the rounded size ${meant.label}, ${meant.D} in.`] });
};

/** `10` in `10-32`, `1` in `1-8`: the note says how it was read where no series decides. */
const readBareWhole = (n: number, pitch: string | undefined, named: UnifiedSeries | undefined): Result<Inches> => {
  const [asNumber, asInches] = [unifiedSize(numberSize(n)), unifiedSize(n)];
  if (pitch === undefined) {
    const [a, b] = named ? [asNumber?.tpi[named], asInches?.tpi[named]] : [];
    if (a !== undefined && b !== undefined)
      return said(`#${n}-${a} and ${n}-${b} both stand in ${named}: write one of the two`);
    return good(b === undefined ? numbered(n) : inInches(n));
  }
  const tpi = amountOf(pitch);
  const number = isNumberSize(n, tpi);
  const read = number ? numbered(n) : inInches(n);
  const otherFits = leavesCore(number ? n : numberSize(n), 1 / tpi);
  if (unifiedSeries(read.D, tpi) || !otherFits) return good(read);
  const [this_, other] = number ? [`the number size #${n}`, `${n} in`] : [`${n} in`, `#${n}`];
  return good({ ...read, notes: [`“${n}” was read as ${this_}; for the other reading write ${other}-${pitch}.`] });
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

const offers = (size: UnifiedSize): string =>
  listed(Object.entries(size.tpi).map(([series, tpi]) => `${tpi} (${series})`));

const offer = (size: UnifiedSize): string => `${size.label} has ${offers(size)} threads per inch, write one of these`;

const example = (t: Typed, { D, label }: Inches, size: UnifiedSize | undefined): string => {
  const tpi = Object.values(size?.tpi ?? {})[0] ?? 20;
  const inch = `${unmistakable(D, label, tpi)}-${tpi}`;
  const n = mm(Number(t.size));
  return t.numbered || t.unit !== undefined || coarsePitch(n) === undefined
    ? inch
    : `${inch}, or M${n} for a metric thread`;
};

const outsideSeries = (D: number, name: string, member: 'UN' | undefined): string => {
  if (D > LAST_UNIFIED_SIZE)
    return `The Unified series held here end at 1-1/2 in, so ${name} was not compared with them.`;
  const first = `${name} is not in the series UNC, UNF or UNEF${member ? ' but in the constant-pitch series UN' : ''}`;
  const size = unifiedSize(D);
  if (size) return `${first}: for ${size.label} they have ${offers(size)}.`;
  const near = [UNIFIED_SIZES.findLast((s) => s.D < D), UNIFIED_SIZES.find((s) => s.D > D)];
  return `${first}, whose nearest sizes are ${listed(near.flatMap((s) => (s ? [s.label] : [])))}.`;
};
