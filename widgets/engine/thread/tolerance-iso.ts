/**
 * Tolerances of ISO metric threads: fundamental deviations and tolerance grades.
 *
 * Source: ISO 965-1, tables 1 (deviations), 3 (T_D1), 4 (T_d), 5 (T_D2) and 6 (T_d2) and the clause of formulas
 * behind them, read in public reproductions and not in the standard itself (see tests/reference/iso-tables.json). Position f for
 * pitches of 0.5 mm and above stands from memory alone.
 *   es_g = −EI_G = −(15 + 11 P)             T_d(6)  = 180 P^(2/3) − 3.15 P^(−1/2)
 *   es_f = −(30 + 11 P)                     T_D1(6) = 230 P^0.7 (P ≥ 1 mm), 433 P − 190 P^1.22 (P < 1 mm)
 *   es_e = −(50 + 11 P)                     T_d2(6) = 90 P^0.4 d^0.1, T_D2(6) = 1.32 T_d2(6)
 * in µm, with P in mm and d in mm the geometric mean of the ends of the diameter step. Deviations are signed: negative for a
 * smaller screw, positive for a larger hole; tolerances are positive.
 *
 * The tables rule. They follow the formulas through preferred numbers of R40, but not everywhere (T_d2 at M3×0.5, T_d at
 * P 4, T_D1 at P 2.5), so the columns of grade 6 are carried. Two rules then give every other column, and the
 * tests hold them against all 672 tabulated values: one grade is four R40 steps, and T_D2 is T_d2 of the same
 * grade and five steps up. Where a pair of diameter and pitch is not tabulated the formula of grade 6 is rounded to the nearest
 * R40 number, ties up, and `basis` says 'formula'; a national table may then differ by a step (DIN 13 gives M8×0.8 a T_d2 of 106 µm, the rule 100).
 */

import { at } from '../kernel/at.ts';
import { type Millimetres, mm } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'iso-diameter-outside': { readonly d: number };
    'iso-pitch-outside': { readonly pitch: number };
    'iso-position-too-fine': { readonly position: IsoPosition; readonly pitch: number; readonly finest: number };
    'iso-grade-missing': { readonly of: IsoDiameter; readonly grade: number; readonly grades: readonly string[] };
    'iso-grade-too-fine': {
      readonly of: IsoDiameter;
      readonly grade: number;
      readonly pitch: number;
      readonly finest: number;
    };
    'iso-place-blank': { readonly of: IsoDiameter; readonly grade: number; readonly pitch: number };
    'iso-class-unread': { readonly read: string };
    'diameter-step-falls': { readonly low: number; readonly high: number };
  }
}

/** Whether a value stands in the published table or comes from the standard's formula and rounding. */
export type Basis = 'table' | 'formula' | 'measured';

/** A whole number of micrometres and where it comes from. */
export interface Sourced {
  readonly µm: number;
  readonly basis: Basis;
}

export type IsoPosition = 'e' | 'f' | 'g' | 'h' | 'G' | 'H';
export type IsoDiameter = 'd' | 'd2' | 'D1' | 'D2';

/** Ends of the diameter steps of ISO 965-1, mm: each is over the lower end, up to and including the upper. */
const DIAMETER_STEPS = [0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355] as const;

const PITCHES = [
  0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 8,
] as const;

/** Table 1, size of the deviation in µm, one for each pitch; the shorter rows are blank for the finest pitches. */
const DEVIATIONS = {
  g: [17, 18, 18, 19, 19, 20, 20, 21, 22, 22, 24, 26, 28, 32, 34, 38, 42, 48, 53, 60, 63, 71, 75, 80, 100],
  f: [34, 34, 35, 36, 36, 38, 38, 38, 40, 42, 45, 48, 52, 58, 63, 70, 75, 80, 85, 90, 95, 118],
  e: [50, 53, 56, 56, 60, 60, 63, 67, 71, 71, 80, 85, 90, 95, 100, 106, 112, 118, 140],
} as const;
const CONSTANT = { g: 15, f: 30, e: 50 } as const;

/** Tables 3 and 4, grade 6, µm, one for each pitch. T_D1 has no grade 6 at 0.2 and 0.25 mm; the first two are what its finer grades step from. */
const CREST = {
  d: [
    56, 67, 75, 85, 95, 100, 106, 125, 140, 140, 150, 180, 212, 236, 265, 280, 335, 375, 425, 475, 500, 530, 560, 600,
    710,
  ],
  D1: [
    60, 71, 85, 100, 112, 125, 140, 160, 180, 190, 200, 236, 265, 300, 335, 375, 450, 500, 560, 600, 670, 710, 750, 800,
    1000,
  ],
} as const;

/** Table 6, T_d2 of grade 6 in µm, by diameter step: pitch, tolerance, pitch, tolerance… */
const PITCH_DIAMETER = [
  [0.2, 48, 0.25, 53, 0.3, 56],
  [0.2, 50, 0.25, 56, 0.35, 63, 0.4, 67, 0.45, 71],
  [0.35, 67, 0.5, 75, 0.6, 85, 0.7, 90, 0.75, 90, 0.8, 95],
  [0.75, 100, 1, 112, 1.25, 118, 1.5, 132],
  [1, 118, 1.25, 132, 1.5, 140, 1.75, 150, 2, 160, 2.5, 170],
  [1, 125, 1.5, 150, 2, 170, 3, 200, 3.5, 212, 4, 224, 4.5, 236],
  [1.5, 160, 2, 180, 3, 212, 4, 236, 5, 250, 5.5, 265, 6, 280],
  [2, 190, 3, 224, 4, 250, 6, 300, 8, 335],
  [3, 250, 4, 280, 6, 315, 8, 355],
] as const;

/** Grades that exist, with the finest pitch for which each is tabulated. */
const GRADES: Readonly<Record<IsoDiameter, Readonly<Record<number, number>>>> = {
  d: { 4: 0.2, 6: 0.2, 8: 0.8 },
  d2: { 3: 0.2, 4: 0.2, 5: 0.2, 6: 0.2, 7: 0.35, 8: 0.8, 9: 0.8 },
  D1: { 4: 0.2, 5: 0.25, 6: 0.3, 7: 0.5, 8: 0.8 },
  D2: { 4: 0.2, 5: 0.25, 6: 0.3, 7: 0.5, 8: 0.8 },
};

const HUNDREDS = [
  100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315, 335, 355,
  375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950,
];
/** R40 of ISO 3 in whole µm as these tables use it, 24 to 1600. Below 100 the numbers are rounded ones: 24 for 23.6, 38 for 37.5. */
const R40: readonly number[] = [
  ...[24, 25, 26, 28, 30, 32, 34, 36, 38, 40, 42, 45, 48, 50, 53, 56, 60, 63, 67, 71, 75, 80, 85, 90, 95],
  ...HUNDREDS,
  ...HUNDREDS.slice(0, 9).map((x) => 10 * x),
];

/** The nearest R40 number, ties up. */
const preferred = (x: number): number =>
  R40.reduce((best, r) => (Math.abs(r - x) <= Math.abs(best - x) ? r : best), R40[0] ?? x);

const stepped = (from: number, steps: number): number => R40[R40.indexOf(from) + steps] ?? Number.NaN;

const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

const T_d2 = (P: number, dMean: number): number => 90 * P ** 0.4 * dMean ** 0.1;
const T_d = (P: number): number => 180 * P ** (2 / 3) - 3.15 / Math.sqrt(P);
const T_D1 = (P: number): number => (P < 1 ? 433 * P - 190 * P ** 1.22 : 230 * P ** 0.7);

/** The step a diameter falls in: over its lower end, up to and including its upper; below nought outside all. */
const stepIndex = (d: number): number => DIAMETER_STEPS.findIndex((end) => d <= end) - 1;

/** Why ISO 965-1 says nothing of this thread, or undefined where it does. */
export const outsideIso = (d: number, P: number): Bad | undefined => {
  if (!(stepIndex(d) >= 0)) return bad('iso-diameter-outside', { d });
  if (!(P >= 0.2 && P <= 8)) return bad('iso-pitch-outside', { pitch: P });
  return undefined;
};

/**
 * Fundamental deviation in signed µm: es of a screw (e, f, g, h; never positive) or EI of a nut (G, H; never negative).
 * For a pitch that is not tabulated the formula is rounded to the whole micrometre.
 */
export const isoDeviation = (position: IsoPosition, P: number): Result<Sourced> => {
  if (position === 'h' || position === 'H') return good({ µm: 0, basis: 'table' });
  const letter = position === 'G' ? 'g' : position;
  const sign = position === 'G' ? 1 : -1;
  const row = DEVIATIONS[letter];
  const finest = at(PITCHES, PITCHES.length - row.length);
  if (!(P >= finest)) return bad('iso-position-too-fine', { position, pitch: P, finest });
  const tabulated = row[PITCHES.findIndex((p) => same(p, P)) - PITCHES.length + row.length];
  return good(
    tabulated === undefined
      ? { µm: sign * Math.round(CONSTANT[letter] + 11 * P), basis: 'formula' }
      : { µm: sign * tabulated, basis: 'table' },
  );
};

/** Tolerance in µm of one diameter by grade, for basic diameter d and pitch P in mm. */
export const isoTolerance = (of: IsoDiameter, grade: number, d: number, P: number): Result<Sourced> => {
  const outside = outsideIso(d, P);
  if (outside !== undefined) return outside;
  const finest = GRADES[of][grade];
  if (finest === undefined) return bad('iso-grade-missing', { of, grade, grades: Object.keys(GRADES[of]) });
  const inStep = stepIndex(d);
  // The one blank of table 5 that the pitch alone does not explain.
  if (of === 'D2' && grade === 8 && inStep === 5 && same(P, 1)) return bad('iso-place-blank', { of, grade, pitch: P });
  if (!(P >= finest - 1e-9)) return bad('iso-grade-too-fine', { of, grade, pitch: P, finest });
  const six = of === 'd' || of === 'D1' ? crestSix(of, P) : pitchSix(inStep, P);
  // Table 4 prints 1180 at P 8, one step above what the rule of four steps to a grade gives.
  if (of === 'd' && grade === 8 && same(P, 8)) return good({ µm: 1180, basis: 'table' });
  return good({ µm: stepped(six.µm, 4 * (grade - 6) + (of === 'D2' ? 5 : 0)), basis: six.basis });
};

const crestSix = (of: 'd' | 'D1', P: number): Sourced => {
  const tabulated = CREST[of][PITCHES.findIndex((p) => same(p, P))];
  return tabulated === undefined
    ? { µm: preferred(of === 'd' ? T_d(P) : T_D1(P)), basis: 'formula' }
    : { µm: tabulated, basis: 'table' };
};

const pitchSix = (step: number, P: number): Sourced => {
  const row: readonly number[] = at(PITCH_DIAMETER, step);
  const tabulated = row.find((_, i) => i % 2 === 1 && same(at(row, i - 1), P));
  if (tabulated !== undefined) return { µm: tabulated, basis: 'table' };
  const mean = Math.sqrt(at(DIAMETER_STEPS, step) * at(DIAMETER_STEPS, step + 1));
  return { µm: preferred(T_d2(P, mean)), basis: 'formula' };
};

/** A class such as `6g` or `5g6g` taken apart: the pitch diameter first, then the crest. */
export interface IsoClass {
  readonly side: 'external' | 'internal';
  readonly pitch: { readonly grade: number; readonly position: IsoPosition };
  readonly crest: { readonly grade: number; readonly position: IsoPosition };
}

/** Reads a class of ISO 965-1. One pair of grade and letter serves both diameters. */
export const readIsoClass = (cls: string): Result<IsoClass> => {
  const parts = /^(\d+)([A-Za-z])(?:(\d+)([A-Za-z]))?$/.exec(cls.trim());
  const [, pitchGrade = '', pitchLetter = '', crestGrade = pitchGrade, crestLetter = pitchLetter] = parts ?? [];
  const letters = pitchLetter + crestLetter;
  const side = /^[efgh]{2}$/.test(letters) ? 'external' : /^[GH]{2}$/.test(letters) ? 'internal' : undefined;
  if (side === undefined) return bad('iso-class-unread', { read: cls });
  return good({
    side,
    pitch: { grade: Number(pitchGrade), position: pitchLetter as IsoPosition },
    crest: { grade: Number(crestGrade), position: crestLetter as IsoPosition },
  });
};

const fromMicrometres = (x: number): Millimetres => mm(x / 1000);

export const diameterStepMean = relation({
  name: 'diameter-step-mean',
  says: 'Diameter that stands for a whole step of ISO 965-1: the geometric mean of its two ends.',
  takes: ['d_lo', 'd_hi'],
  gives: { d_s: 'sqrt(d_lo*d_hi)' },
  source: 'ISO 965-1, formulas behind the tables (read in reproduction).',
  refuses: ({ d_lo, d_hi }) => (d_lo < d_hi ? undefined : bad('diameter-step-falls', { low: d_lo, high: d_hi })),
  compute: ({ d_lo, d_hi }) => ({ d_s: mm(Math.sqrt(d_lo * d_hi)) }),
});

export const isoPitchTolerance = relation({
  name: 'iso-pitch-tolerance',
  says: 'Tolerance of grade 6 on the pitch diameter of a metric screw, before rounding to preferred numbers.',
  takes: ['P', 'd_s'],
  gives: { T_d2: '0.09*mm*(P/mm)^0.4*(d_s/mm)^0.1' },
  source: 'ISO 965-1, formulas behind table 6 (read in reproduction); the table rules where it differs.',
  compute: ({ P, d_s }) => ({ T_d2: fromMicrometres(T_d2(P, d_s)) }),
});

export const isoNutPitchTolerance = relation({
  name: 'iso-nut-pitch-tolerance',
  says: 'Tolerance of grade 6 on the pitch diameter of a metric nut, before rounding: about a third more than that of the screw.',
  takes: ['T_d2'],
  gives: { T_D2: '1.32*T_d2' },
  source: 'ISO 965-1, formulas behind table 5; Machinery’s Handbook, 27th ed., p. 1797 (grade ratios).',
  compute: ({ T_d2: screw }) => ({ T_D2: mm(1.32 * screw) }),
});

export const isoDeviationG = relation({
  name: 'iso-deviation-g',
  says: 'Upper deviation of position g before rounding: how far below basic size the largest screw stays.',
  takes: ['P'],
  gives: { es_g: '-(0.015*mm + 0.011*P)' },
  source: 'ISO 965-1, formulas behind table 1 (read in reproduction); the table rules where it differs.',
  compute: ({ P }) => ({ es_g: fromMicrometres(-(15 + 11 * P)) }),
});
