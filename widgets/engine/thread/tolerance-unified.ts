/**
 * Tolerances of Unified inch threads: allowance and tolerances by class.
 *
 * Source: ASME B1.1, clause on limits of size, and ASME B1.30 on rounding, read in public reproductions; Machinery's Handbook,
 * 27th ed., Table 3. In inches, D basic major diameter, P = 1/tpi, LE length of engagement:
 *   T_d2(2A) = 0.0015 D^(1/3) + 0.0015 LE^(1/2) + 0.015 P^(2/3)
 *   1A 1.5, 3A 0.75, 1B 1.95, 2B 1.3, 3B 0.975 times T_d2(2A)
 *   allowance of 1A and 2A = 0.3 T_d2(2A), of 3A nought
 *   T_d = 0.060 P^(2/3) (2A, 3A), 0.090 P^(2/3) (1A)
 *   T_D1(1B, 2B) = 0.25 P − 0.4 P² from D = 0.25 up; below it 0.05 P^(2/3) + 0.03 P/D − 0.002, kept between 0.25 P − 0.4 P² and 0.394 P
 *   T_D1(3B) = 0.05 P^(2/3) + 0.03 P/D − 0.002, kept between 0.23 P − 1.5 P² (13 tpi and finer) or 0.12 P (coarser) and 0.394 P
 * LE = D for UNC, UNF and the 4, 6 and 8 thread series, 9 P for the rest. Each of the three terms of T_d2(2A) is rounded to six
 * decimals before they are added: the published tolerances that stand on an edge come out only so. Every basic size, tolerance
 * and allowance is rounded to 0.0001 in before they are added, halves up; the minor diameter of a nut of size #6 (0.138 in) and
 * larger is then rounded to 0.001 in, save the largest of class 3B. That rule gives all of the published
 * values in tests/reference but eight, which are carried as a table; of sizes not read, expect 0.0001 in either way.
 *
 * Whole ten-thousandths of an inch inside ("tenths"), so that sums are exact. Allowance and tolerances are positive.
 */
import { mm } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';
import type { Basis } from './tolerance-iso.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    /** In inches. */
    'unified-diameter-outside': { readonly D: number };
    'unified-pitch-outside': { readonly tpi: number; readonly finest: number };
    'unified-class-first-elsewhere': { readonly cls: UnifiedClass };
  }
}

export type UnifiedClass = '1A' | '2A' | '3A' | '1B' | '2B' | '3B';
export type UnifiedSeriesName = 'UNC' | 'UNF' | 'UNEF' | 'UN' | 'UNS';

/** A thread as ASME B1.1 sees it: inches, and the series that sets the length of engagement. */
export interface InchThread {
  readonly D: number;
  readonly tpi: number;
  readonly series: UnifiedSeriesName | undefined;
}

/** A whole number of ten-thousandths of an inch and where it comes from. */
export interface Tenths {
  readonly tenths: number;
  readonly basis: Basis;
}

const INCH = 25.4;
const CLASSES: readonly string[] = ['1A', '2A', '3A', '1B', '2B', '3B'];
const FACTOR: Readonly<Record<UnifiedClass, number>> = {
  '1A': 1.5,
  '2A': 1,
  '3A': 0.75,
  '1B': 1.95,
  '2B': 1.3,
  '3B': 0.975,
};

/** Published values which formula and rounding miss by a tenth, by diameter in tenths, tpi and series. */
const CARRIED: readonly {
  readonly D: number;
  readonly tpi: number;
  readonly series: UnifiedSeriesName;
  readonly allowance?: number;
  readonly pitch?: { readonly [C in UnifiedClass]?: number };
}[] = [
  { D: 6250, tpi: 11, series: 'UNC', allowance: 16 },
  { D: 9375, tpi: 12, series: 'UN', pitch: { '2A': 57, '3A': 41, '2B': 74 } },
  { D: 9375, tpi: 16, series: 'UN', pitch: { '2B': 65, '3B': 49 } },
  { D: 23750, tpi: 20, series: 'UN', pitch: { '2A': 51, '3B': 50 } },
];

/** Inches to whole tenths, halves up; the small lift keeps a half from falling for a remainder of binary arithmetic. */
const tenths = (inches: number): number => Math.floor(inches * 1e4 + 0.5 + 1e-7);

const carried = ({ D, tpi, series }: InchThread) =>
  CARRIED.find((c) => c.D === tenths(D) && Math.abs(c.tpi - tpi) < 1e-9 && c.series === series);

type Terms = readonly [ofDiameter: number, ofEngagement: number, ofPitch: number];
const termsOfT2A = (D: number, LE: number, P: number): Terms => [
  0.0015 * Math.cbrt(D),
  0.0015 * Math.sqrt(LE),
  0.015 * P ** (2 / 3),
];
const sum = ([a, b, c]: Terms): number => a + b + c;
const millionths = (inches: number): number => Math.floor(inches * 1e6 + 0.5 + 1e-7);

/** The tolerance of class 2A as the tables reckon it, inches. */
const tabulatedT2A = (size: InchThread): number => {
  const [a, b, c] = termsOfT2A(size.D, unifiedEngagement(size), 1 / size.tpi);
  return sum([millionths(a), millionths(b), millionths(c)]) / 1e6;
};

/** Length of engagement on which the tables rest, inches. */
export const unifiedEngagement = ({ D, tpi, series }: InchThread): number => {
  const byDiameter = series === 'UNC' || series === 'UNF' || (series === 'UN' && [4, 6, 8].includes(tpi));
  return byDiameter ? D : 9 / tpi;
};

/** The series named in a designation, for example UNF in `8-36 UNF LH`; the rounded-root spellings UNRC, UNRF count as UNC, UNF. */
export const seriesInName = (designation: string): UnifiedSeriesName | undefined => {
  const letters = /\bUNR?(C|F|EF|S)?\b/i.exec(designation);
  return letters ? (`UN${(letters[1] ?? '').toUpperCase()}` as UnifiedSeriesName) : undefined;
};

export const isUnifiedClass = (cls: string): cls is UnifiedClass => CLASSES.includes(cls);

/** The tables end at 80; beyond 200 a nut's minor tolerance would vanish in its own rounding to 0.001 in. */
const FINEST = 200;
export const FINEST_TABULATED = 80;

/** Why ASME B1.1 has no such class for this thread, or undefined where it has. */
export const outsideUnified = ({ D, tpi, series }: InchThread, cls: UnifiedClass): Bad | undefined => {
  if (!(D >= 0.06 - 1e-9 && D <= 6 + 1e-9)) return bad('unified-diameter-outside', { D });
  if (!(tpi >= 4 - 1e-9 && tpi <= FINEST + 1e-9)) return bad('unified-pitch-outside', { tpi, finest: FINEST });
  if (cls.startsWith('1') && !((series === 'UNC' || series === 'UNF') && D >= 0.25 - 1e-9))
    return bad('unified-class-first-elsewhere', { cls });
  return undefined;
};

const unifiedAllowance = (size: InchThread, cls: UnifiedClass): Tenths => {
  if (!(cls === '1A' || cls === '2A')) return { tenths: 0, basis: 'formula' };
  const table = carried(size)?.allowance;
  return table === undefined
    ? { tenths: tenths(0.3 * tabulatedT2A(size)), basis: 'formula' }
    : { tenths: table, basis: 'table' };
};

/** Tolerance on the pitch diameter, screw or nut. */
const unifiedPitchTolerance = (size: InchThread, cls: UnifiedClass): Tenths => {
  const table = carried(size)?.pitch?.[cls];
  return table === undefined
    ? { tenths: tenths(FACTOR[cls] * tabulatedT2A(size)), basis: 'formula' }
    : { tenths: table, basis: 'table' };
};

/** Tolerance on the crest: major diameter of a screw, minor diameter of a nut. */
const unifiedCrestTolerance = ({ D, tpi }: InchThread, cls: UnifiedClass): Tenths => {
  const P = 1 / tpi;
  if (cls.endsWith('A')) return { tenths: tenths((cls === '1A' ? 0.09 : 0.06) * P ** (2 / 3)), basis: 'formula' };
  const full = 0.05 * P ** (2 / 3) + (0.03 * P) / D - 0.002;
  const plain = 0.25 * P - 0.4 * P * P;
  const least = cls === '3B' ? (tpi >= 13 - 1e-9 ? 0.23 * P - 1.5 * P * P : 0.12 * P) : plain;
  const inches = cls !== '3B' && D >= 0.25 - 1e-9 ? plain : Math.min(Math.max(full, least), 0.394 * P);
  return { tenths: tenths(inches), basis: 'formula' };
};

/** Limits in whole tenths. `basis` belongs to the diameter as a whole: 'table' where one of its parts was carried. */
export interface UnifiedLimits {
  readonly allowance: Tenths;
  readonly crest: { readonly min: number; readonly max: number; readonly tolerance: number; readonly basis: Basis };
  readonly pitch: { readonly min: number; readonly max: number; readonly tolerance: number; readonly basis: Basis };
}

/** Limits of size of a Unified thread: the crest is the major diameter of a screw and the minor diameter of a nut. */
export const unifiedLimits = (size: InchThread, cls: UnifiedClass): Result<UnifiedLimits> => {
  const outside = outsideUnified(size, cls);
  if (outside !== undefined) return outside;
  const { D, tpi } = size;
  const allowance = unifiedAllowance(size, cls);
  const crest = unifiedCrestTolerance(size, cls);
  const pitch = unifiedPitchTolerance(size, cls);
  const d2 = tenths(D - 0.64951905 / tpi);
  const either = (...parts: readonly Tenths[]): Basis => (parts.some((p) => p.basis === 'table') ? 'table' : 'formula');
  if (cls.endsWith('A')) {
    const [dMax, d2Max] = [tenths(D) - allowance.tenths, d2 - allowance.tenths];
    return good({
      allowance,
      crest: { min: dMax - crest.tenths, max: dMax, tolerance: crest.tenths, basis: either(allowance, crest) },
      pitch: { min: d2Max - pitch.tenths, max: d2Max, tolerance: pitch.tenths, basis: either(allowance, pitch) },
    });
  }
  const d1 = tenths(D - 1.08253175 / tpi);
  const coarse = D >= 0.138 - 1e-9 ? 10 : 1;
  const round = (x: number, to: number) => Math.floor(x / to + 0.5) * to;
  const D1 = { min: round(d1, coarse), max: round(d1 + crest.tenths, cls === '3B' ? 1 : coarse) };
  return good({
    allowance,
    crest: { ...D1, tolerance: D1.max - D1.min, basis: crest.basis },
    pitch: { min: d2, max: d2 + pitch.tenths, tolerance: pitch.tenths, basis: pitch.basis },
  });
};

export const unifiedPitchToleranceRule = relation({
  name: 'unified-pitch-tolerance',
  says: 'Tolerance of class 2A on the pitch diameter of a Unified screw, before rounding.',
  takes: ['d', 'L_e', 'P'],
  gives: {
    T_2A: '25.4*mm*(0.0015*(d/(25.4*mm))^(1/3) + 0.0015*sqrt(L_e/(25.4*mm)) + 0.015*(P/(25.4*mm))^(2/3))',
  },
  source: 'ASME B1.1, pitch-diameter tolerances, all classes (read in reproduction); written there in inches.',
  compute: ({ d, L_e, P }) => ({ T_2A: mm(INCH * sum(termsOfT2A(d / INCH, L_e / INCH, P / INCH))) }),
});

export const unifiedAllowanceRule = relation({
  name: 'unified-allowance',
  says: 'Allowance of classes 1A and 2A: how far below basic size the largest screw stays.',
  takes: ['T_2A'],
  gives: { A_2A: '0.3*T_2A' },
  source: 'ASME B1.1, allowances (read in reproduction).',
  compute: ({ T_2A: tolerance }) => ({ A_2A: mm(0.3 * tolerance) }),
});
