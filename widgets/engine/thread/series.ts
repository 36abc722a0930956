/**
 * The standard thread series: which pitches the standards give to which diameters.
 *
 * Metric: ISO 261 table 2, first and second choice, M1.6 to M36. Read in reproductions of ISO 261 and ISO 262: every
 * coarse pitch but that of M4.5, and the fine pitches M8×1, M10×1.25, M10×1, M12×1.5, M12×1.25, M14×1.5, M16×1.5,
 * M18×2, M18×1.5, M20×2, M20×1.5, M22×2, M22×1.5, M24×2, M27×2, M30×2, M33×2, M36×3. From memory: M4.5×0.75, the other
 * fine pitches and the column of choice. The bracketed 3 mm pitches of M30 and M33, "avoid where possible", are in.
 * Unified: ASME B1.1 series table, UNC, UNF and UNEF, #0 to 1½ in, read in a gauge maker's reproduction; the ranges
 * of the constant-pitch series UN are from memory.
 * Number sizes: D = 0.060 + 0.013 n in (ASME B1.1, read in a reproduction). Pitch of an inch thread: 25.4/tpi mm.
 * d and P in mm; D in inches.
 */
import { type Millimetres, mm } from '../kernel/quantity.ts';

const INCH = 25.4;

/** d, choice, coarse pitch, fine pitches in falling order; mm. */
const METRIC: readonly (readonly [d: number, choice: 1 | 2, coarse: number, ...fine: number[]])[] = [
  [1.6, 1, 0.35, 0.2],
  [1.8, 2, 0.35, 0.2],
  [2, 1, 0.4, 0.25],
  [2.2, 2, 0.45, 0.25],
  [2.5, 1, 0.45, 0.35],
  [3, 1, 0.5, 0.35],
  [3.5, 2, 0.6, 0.35],
  [4, 1, 0.7, 0.5],
  [4.5, 2, 0.75, 0.5],
  [5, 1, 0.8, 0.5],
  [6, 1, 1, 0.75],
  [7, 2, 1, 0.75],
  [8, 1, 1.25, 1, 0.75],
  [10, 1, 1.5, 1.25, 1, 0.75],
  [12, 1, 1.75, 1.5, 1.25, 1],
  [14, 2, 2, 1.5, 1.25, 1],
  [16, 1, 2, 1.5, 1],
  [18, 2, 2.5, 2, 1.5, 1],
  [20, 1, 2.5, 2, 1.5, 1],
  [22, 2, 2.5, 2, 1.5, 1],
  [24, 1, 3, 2, 1.5, 1],
  [27, 2, 3, 2, 1.5, 1],
  [30, 1, 3.5, 3, 2, 1.5, 1],
  [33, 2, 3.5, 3, 2, 1.5],
  [36, 1, 4, 3, 2, 1.5],
];

/** Size as written, then threads per inch in UNC, UNF and UNEF; 0 where the series has no such size. */
const UNIFIED: readonly (readonly [label: string, unc: number, unf: number, unef: number])[] = [
  ['#0', 0, 80, 0],
  ['#1', 64, 72, 0],
  ['#2', 56, 64, 0],
  ['#3', 48, 56, 0],
  ['#4', 40, 48, 0],
  ['#5', 40, 44, 0],
  ['#6', 32, 40, 0],
  ['#8', 32, 36, 0],
  ['#10', 24, 32, 0],
  ['#12', 24, 28, 32],
  ['1/4', 20, 28, 32],
  ['5/16', 18, 24, 32],
  ['3/8', 16, 24, 32],
  ['7/16', 14, 20, 28],
  ['1/2', 13, 20, 28],
  ['9/16', 12, 18, 24],
  ['5/8', 11, 18, 24],
  ['11/16', 0, 0, 24],
  ['3/4', 10, 16, 20],
  ['13/16', 0, 0, 20],
  ['7/8', 9, 14, 20],
  ['15/16', 0, 0, 20],
  ['1', 8, 12, 20],
  ['1-1/16', 0, 0, 18],
  ['1-1/8', 7, 12, 18],
  ['1-3/16', 0, 0, 18],
  ['1-1/4', 7, 12, 18],
  ['1-5/16', 0, 0, 18],
  ['1-3/8', 6, 12, 18],
  ['1-7/16', 0, 0, 18],
  ['1-1/2', 6, 12, 18],
];

/** Constant-pitch series UN: tpi, least and greatest diameter in inches (ASME B1.1, from memory), as far as 1½ in. */
const CONSTANT_PITCH: readonly (readonly [tpi: number, least: number, most: number])[] = [
  [6, 1.375, 1.5],
  [8, 1, 1.5],
  [12, 0.5625, 1.5],
  [16, 0.375, 1.5],
  [20, 0.25, 1.5],
  [28, 0.25, 1.5],
  [32, 0.25, 1],
];

export type UnifiedSeries = 'UNC' | 'UNF' | 'UNEF';

/** One thread of a standard series. */
export interface SeriesThread {
  /** In the house form, for example `M10×1.5`, `3/8-16 UNC`, `#10-32 UNF`. */
  readonly designation: string;
  /** Major diameter. */
  readonly d: Millimetres;
  /** Pitch. */
  readonly P: Millimetres;
  readonly tpi?: number;
  readonly series: 'coarse' | 'fine' | UnifiedSeries;
  /** First or second choice of ISO 261. */
  readonly choice?: 1 | 2;
}

/** A diameter of the Unified series with the threads per inch that UNC, UNF and UNEF give it. */
export interface UnifiedSize {
  /** `#10`, `3/8`, `1-1/4`. */
  readonly label: string;
  /** Major diameter in inches. */
  readonly D: number;
  readonly tpi: { readonly [S in UnifiedSeries]?: number };
}

/** The highest number size; beyond it sizes are fractions of an inch. */
export const LAST_NUMBER_SIZE = 12;

/** Inches to millimetres, without the remainder of binary arithmetic: 3/8 in is 9.525 mm, not 9.524999999999999. */
export const inchesToMillimetres = (D: number): Millimetres => mm(Number((D * INCH).toPrecision(15)));

/** Major diameter, in inches, of the number size n (0 to 12): 0.060 + 0.013 n, in whole thousandths so that it is exact. */
export const numberSize = (n: number): number => (60 + 13 * n) / 1000;

/** Inches in a label such as `#10`, `3/8`, `1` or `1-1/4`. */
const inches = (label: string): number => {
  if (label.startsWith('#')) return numberSize(Number(label.slice(1)));
  const [fraction = '', whole = '0'] = label.split('-').reverse();
  const [top = '', bottom = '1'] = fraction.split('/');
  return Number(whole) + Number(top) / Number(bottom);
};

/** Every size of the Unified series, in rising order. */
export const UNIFIED_SIZES: readonly UnifiedSize[] = UNIFIED.map(([label, unc, unf, unef]) => ({
  label,
  D: inches(label),
  tpi: { ...(unc && { UNC: unc }), ...(unf && { UNF: unf }), ...(unef && { UNEF: unef }) },
}));

/** The greatest diameter of the Unified series held here, in inches. */
export const LAST_UNIFIED_SIZE = 1.5;

/** Every metric diameter of the series, in rising order. */
export const METRIC_SIZES: readonly Millimetres[] = METRIC.map(([d]) => mm(d));

/** ISO 261, one row a thread: by rising diameter, the coarse pitch first, then the fine ones in falling order. */
export const METRIC_SERIES: readonly SeriesThread[] = METRIC.flatMap(([d, choice, ...pitches]) =>
  pitches.map((P, i) => ({
    designation: `M${d}×${P}`,
    d: mm(d),
    P: mm(P),
    series: i === 0 ? ('coarse' as const) : ('fine' as const),
    choice,
  })),
);

/** ASME B1.1, one row a thread: by rising diameter, UNC before UNF before UNEF. */
export const UNIFIED_SERIES: readonly SeriesThread[] = UNIFIED_SIZES.flatMap(({ label, D, tpi }) =>
  (Object.entries(tpi) as [UnifiedSeries, number][]).map(([series, n]) => ({
    designation: `${label}-${n} ${series}`,
    d: inchesToMillimetres(D),
    P: mm(INCH / n),
    tpi: n,
    series,
  })),
);

/** Diameters nearer than this are the same size: a nanometre, far below any typed digit. */
const SAME = 1e-6;

/** The standard pitches of a metric diameter, coarse first; none where it is not in the series. */
export const standardPitches = (d: Millimetres): readonly Millimetres[] =>
  METRIC_SERIES.filter((row) => Math.abs(row.d - d) < SAME).map((row) => row.P);

/** The pitch that `M10` alone implies, or undefined where the diameter is not in the series. */
export const coarsePitch = (d: Millimetres): Millimetres | undefined => standardPitches(d)[0];

/** The size of the Unified series with this major diameter in inches, or undefined. */
export const unifiedSize = (D: number): UnifiedSize | undefined =>
  UNIFIED_SIZES.find((size) => Math.abs(size.D - D) < SAME);

/** The series a Unified thread belongs to: UNC, UNF, UNEF, else the constant-pitch UN, else undefined. D in inches. */
export const unifiedSeries = (D: number, tpi: number): UnifiedSeries | 'UN' | undefined => {
  const size = unifiedSize(D);
  if (size === undefined) return undefined;
  for (const [series, n] of Object.entries(size.tpi) as [UnifiedSeries, number][]) if (n === tpi) return series;
  return CONSTANT_PITCH.some(([n, least, most]) => n === tpi && D >= least && D <= most) ? 'UN' : undefined;
};

export const SERIES_NAMES = ['coarse', 'fine', 'UNC', 'UNF', 'UNEF'] as const;

export type SeriesName = (typeof SERIES_NAMES)[number];
