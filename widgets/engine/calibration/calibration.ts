/**
 * Calibration against an indicator: from readings to a measured net lead and what goes with it.
 *
 * The model, fitted by least squares (least-squares.ts) with as many of its parts as the readings can tell:
 *   z = a + b n [+ g on the way down] [+ c cos 2πn + s sin 2πn]
 *   b   measured net lead, mm per turn, with its standard error and t-interval
 *   g   gap between the two directions at a common slope; lost motion = g sign b, positive where the part lags
 *   √(c² + s²)   amplitude of the part that comes once per turn
 * Beside it stand a straight line through everything (line-fit.ts), each direction’s own line, and the repeatability:
 *   s_r² = Σ (z − mean of its place and direction)²/Σ (readings there − 1)
 * Whether the measured lead agrees with the nominal one is told from the whole ± (signing.ts), of which that of the fit is a part.
 *
 * Source: Draper & Smith, Applied Regression Analysis, ch. 1, 2 and 14 (dummy variable; from memory). Checked on synthetic rigs of known truth.
 * Signs: n clockwise from above positive, z up positive; `up` = approached with n rising, `down` = with n falling.
 * Units: n in turns, z in mm.
 * Taken for granted: scatter independent from reading to reading. Drift with the warmth of a hand is not, and makes
 * the interval too narrow: read up and down alternately.
 */

import { at } from '../kernel/at.ts';
import { type Millimetres, mm, plain, type Turns, turns, UNITS, type Unit } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';
import { runToEnd, type Task } from '../kernel/task.ts';
import { leastSquares } from '../numerics/least-squares.ts';
import { type Interval, intervalAbout, type LineFit, lineFit, slopeInterval, studentT } from '../numerics/line-fit.ts';
import { correctedBy, type FittedModel, readSpans } from './fitted-model.ts';
import type { Direction, PositionUnit, ReadingRow } from './readings.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'lead-from-one-place': Record<string, never>;
    'slope-from-one-place': Record<string, never>;
    'nominal-lead': { readonly nominal: number };
    'reading-past-bounds': { readonly row: number; readonly turns: number; readonly reading: number };
    'too-few-for-slope': Record<string, never>;
    'gap-hidden-in-slope': Record<string, never>;
    'too-few-each-way': { readonly up: number; readonly down: number };
    'hysteresis-one-way': { readonly direction: Direction; readonly reason: Bad };
    'wave-not-told': Record<string, never>;
    'nothing-read-twice': Record<string, never>;
  }
}

const MEAN_TURNS = '(n_1 + n_2 + n_3)/3';
/** Places closer than this to each other, in turns, are one: no hand sets them apart, and a slope between them is noise. */
const apart = (n: number, m: number): boolean => Math.abs(n - m) >= 1e-6;

const onePlace = ({ n_1, n_2 }: { readonly n_1: number; readonly n_2: number }): Bad | undefined =>
  apart(n_1, n_2) ? undefined : bad('lead-from-one-place', {});

export const cosineErrorFace = relation({
  name: 'cosine-error-face',
  says: 'Cosine error of a plunger tilted against a flat face that moves square to itself: it reads too much.',
  takes: ['w', 'theta_i'],
  gives: { e_c: 'w*(1/cos(theta_i) - 1)' },
  source:
    'Geometry: the plunger slides along the leaning axis until it meets the moved face, w/cos θ; the same rule as for lever indicators.',
  // 1/cos θ − 1 = 2 sin²(θ/2)/cos θ, which keeps its digits at small angles.
  compute: ({ w, theta_i }) => ({ e_c: mm((w * 2 * Math.sin(theta_i / 2) ** 2) / Math.cos(theta_i)) }),
});

export const cosineErrorPoint = relation({
  name: 'cosine-error-point',
  says: 'Cosine error of a tilted indicator that follows one point of the part, such as a ball under a flat anvil: it reads too little.',
  takes: ['w', 'theta_i'],
  gives: { e_c: 'w*(cos(theta_i) - 1)' },
  source: 'Geometry: the motion projected on the gauge axis, w cos θ.',
  compute: ({ w, theta_i }) => ({ e_c: mm(-w * 2 * Math.sin(theta_i / 2) ** 2) }),
});

export const abbeError = relation({
  name: 'abbe-error',
  says: 'Abbe error: how much too much an indicator beside the axis reads when the part tilts while it moves.',
  takes: ['a_o', 'theta_c'],
  gives: { e_a: 'a_o*tan(theta_c)' },
  source: 'Geometry; Abbe’s principle: the scale belongs in line with the length measured (1890, from memory).',
  compute: ({ a_o, theta_c }) => ({ e_a: mm(a_o * Math.tan(theta_c)) }),
});

export const leadOff = relation({
  name: 'lead-off',
  says: 'How far one lead is off another, as a share of it; their senses do not count.',
  takes: ['Delta_m', 'Delta'],
  gives: { eps: 'abs(Delta_m)/abs(Delta) - 1' },
  source: 'Definition of a relative error, taken over sizes alone.',
  refuses: ({ Delta }) => (Math.abs(Delta) > 1e-6 ? undefined : bad('equal-leads-no-relative-error', {})),
  compute: ({ Delta_m, Delta }) => ({ eps: plain(Math.abs(Delta_m) / Math.abs(Delta) - 1) }),
});

export const twoReadingLead = relation({
  name: 'two-reading-lead',
  says: 'Net lead from two readings: the motion on the indicator, divided by the turns between them.',
  takes: ['n_1', 'z_1', 'n_2', 'z_2'],
  gives: { Delta_m: '(z_2 - z_1)/(n_2 - n_1)' },
  source: 'Definition of the lead: motion over turns; the line through two points.',
  refuses: onePlace,
  compute: ({ n_1, z_1, n_2, z_2 }) => ({ Delta_m: mm((z_2 - z_1) / (n_2 - n_1)) }),
});

export const twoReadingDoubt = relation({
  name: 'two-reading-doubt',
  says: 'How far a lead from two readings may be off, where each reading may be off by this much: both in the harmful direction.',
  takes: ['e_g', 'n_1', 'n_2'],
  gives: { U_2: '2*e_g/abs(n_2 - n_1)' },
  source: 'The line through two points, one moved up and the other down; worst case.',
  refuses: onePlace,
  compute: ({ e_g, n_1, n_2 }) => ({ U_2: mm((2 * e_g) / Math.abs(n_2 - n_1)) }),
});

export const threeReadingLead = relation({
  name: 'three-reading-lead',
  says: 'Net lead by the straight line with the smallest sum of squared distances from three readings.',
  takes: ['n_1', 'z_1', 'n_2', 'z_2', 'n_3', 'z_3'],
  gives: {
    Delta_m: `((n_1 - ${MEAN_TURNS})*z_1 + (n_2 - ${MEAN_TURNS})*z_2 + (n_3 - ${MEAN_TURNS})*z_3)/((n_1 - ${MEAN_TURNS})^2 + (n_2 - ${MEAN_TURNS})^2 + (n_3 - ${MEAN_TURNS})^2)`,
  },
  source: 'Draper & Smith, Applied Regression Analysis, ch. 1: b = Sxy/Sxx (from memory), here for three rows.',
  refuses: ({ n_1, n_2, n_3 }) =>
    apart(n_1, n_2) || apart(n_1, n_3) || apart(n_2, n_3) ? undefined : bad('slope-from-one-place', {}),
  compute: ({ n_1, z_1, n_2, z_2, n_3, z_3 }) => {
    const middle = (n_1 + n_2 + n_3) / 3;
    const [x, y, w] = [n_1 - middle, n_2 - middle, n_3 - middle];
    return { Delta_m: mm((x * z_1 + y * z_2 + w * z_3) / (x * x + y * y + w * w)) };
  },
});

/** One reading of the indicator: where the screw stood, what was read (mm), and how it was approached. */
export type GaugeReading = Pick<ReadingRow, 'turns' | 'reading' | 'direction'>;

export interface CalibrationPlan {
  /** Net lead by design, mm per turn, signed. */
  readonly nominal: number;
  /** Share of all such trials in which the interval is to cover the truth; 0.95 where left out. */
  readonly level?: number;
}

/** A part of the answer that the readings could tell, or why not. */
export type Determined<T> = ({ readonly determined: true } & T) | { readonly determined: false; readonly why: Bad };

export interface OncePerTurn {
  /** Greatest departure from the line, mm. */
  readonly amplitude: Millimetres;
  /** Turn, from 0 to 1, at which it is greatest. */
  readonly crest: Turns;
  /** Standard error of the amplitude, for an amplitude well above it. */
  readonly error: Millimetres;
  /** Whether an amplitude this large is more than scatter would give at the level asked (F-test, 2 and ν). */
  readonly significant: boolean;
}

export interface Hysteresis {
  /** Down less up at a common slope, mm. */
  readonly gap: Millimetres;
  readonly interval: Interval;
  /** The gap with the sense of the motion: positive where the part lags behind the screw. */
  readonly lostMotion: Millimetres;
  /** The same in turns of the screw. */
  readonly lostTurns: Turns;
  readonly up: LineFit;
  readonly down: LineFit;
  /** Down less up by each direction’s own line, in the middle of the readings, mm. */
  readonly gapOwnSlopes: Millimetres;
  /** Slope down less slope up, mm per turn. */
  readonly slopeDifference: Millimetres;
  /** Whether the two slopes agree within their uncertainty: if not, the common slope describes neither. */
  readonly slopesAgree: boolean;
}

export interface Repeatability {
  /** Pooled standard deviation of readings at one place from one direction. */
  readonly deviation: Millimetres;
  /** Largest difference between such readings. */
  readonly widest: Millimetres;
  readonly freedom: number;
}

/** A place that was read, approached one way. */
export interface PlaceRead {
  readonly turns: Turns;
  readonly direction: Direction;
  /** How many readings stand behind it. */
  readonly readings: number;
  /** Travel from home by the nominal lead. */
  readonly nominal: Millimetres;
  /** Travel read, the mean at this place, from that at home; from the model’s where home was not read with the turns rising. */
  readonly measured: Millimetres;
  /** To be added to the nominal travel, by the model. */
  readonly correction: Millimetres;
}

export interface Calibration {
  readonly rows: readonly GaugeReading[];
  /** One straight line through everything. */
  readonly line: LineFit;
  readonly lineInterval: Interval;
  /** Measured net lead by the model with all parts that could be told. */
  readonly lead: Millimetres;
  readonly leadError: Millimetres;
  readonly leadInterval: Interval;
  /** Scatter about the model, and readings less unknowns. */
  readonly scatter: Millimetres;
  readonly freedom: number;
  /** Reading by the model, and reading less it, row by row. */
  readonly fitted: readonly Millimetres[];
  readonly residuals: readonly Millimetres[];
  readonly periodic: Determined<OncePerTurn>;
  readonly hysteresis: Determined<Hysteresis>;
  readonly repeatability: Determined<Repeatability>;
  /** The fit, to be asked at any place (correction.ts). */
  readonly model: FittedModel;
  readonly places: readonly PlaceRead[];
}

/** Everything the readings tell about the net lead; refuses too few, too odd, or constant readings. */
export const calibrate = (rows: readonly GaugeReading[], plan: CalibrationPlan): Result<Calibration> =>
  runToEnd(calibrateRun(rows, plan));

/** The same in steps, each once through the readings or a few times. */
export function* calibrateRun(rows: readonly GaugeReading[], plan: CalibrationPlan): Task<Result<Calibration>> {
  const { nominal, level = 0.95 } = plan;
  if (!(Math.abs(nominal) > 0 && Math.abs(nominal) <= 120)) return bad('nominal-lead', { nominal });
  for (const [i, row] of rows.entries())
    if (!(Math.abs(row.turns) <= 1e6 && Math.abs(row.reading) <= 1e6))
      return bad('reading-past-bounds', { row: i + 1, turns: row.turns, reading: row.reading });
  const n = rows.map((row) => row.turns);
  const z = rows.map((row) => row.reading);
  yield;
  const line = lineFit(n, z);
  if (!line.ok) return line;
  const lineInterval = slopeInterval(line.value, level);
  if (!lineInterval.ok) return lineInterval;

  yield;
  const model = yield* fitModel(rows);
  yield;
  if (!model.ok) return model;
  const { fit, gapAt, waveAt, whyNoGap, slopeUnit } = model.value;
  const scatter = Math.sqrt(fit.sumOfSquares / fit.freedom);
  const errorOf = (i: number) => scatter * Math.sqrt(at(at(fit.inverse, i), i));
  const b = at(fit.coefficients, 1) / slopeUnit;
  const leadError = errorOf(1) / slopeUnit;
  const leadInterval = intervalAbout(b, leadError, fit.freedom, level);
  if (!leadInterval.ok) return leadInterval;

  const hysteresis: Determined<Hysteresis> =
    gapAt === undefined
      ? { determined: false, why: whyNoGap }
      : hysteresisOf(rows, at(fit.coefficients, gapAt), errorOf(gapAt), b, fit.freedom, level);
  yield;
  const places = groups(rows);
  yield;
  const repeatability = repeatabilityOf(places);
  yield;
  const asked: FittedModel = {
    ...readSpans(rows),
    coefficients: fit.coefficients,
    inverse: fit.inverse,
    gapAt,
    waveAt,
    slopeUnit,
    scatter,
    freedom: fit.freedom,
    nominal,
  };
  const fitted = z.map((v, i) => v - at(fit.residuals, i));
  const [first] = rows;
  // What the model reads at home, by any of its places.
  const origin = first === undefined ? 0 : at(fitted, 0) - correctedBy(asked, first.turns, first.direction).travel;
  const placesRead = placesOf(places, asked, origin);
  yield;
  return good({
    rows,
    line: line.value,
    lineInterval: lineInterval.value,
    lead: mm(b),
    leadError: mm(leadError),
    leadInterval: leadInterval.value,
    scatter: mm(scatter),
    freedom: fit.freedom,
    fitted: fitted.map(mm),
    residuals: fit.residuals.map(mm),
    periodic:
      waveAt === undefined
        ? { determined: false, why: bad('wave-not-told', {}) }
        : waveOf(fit.coefficients, fit.inverse, waveAt, scatter, fit.freedom, level, spanOf(z)),
    hysteresis,
    repeatability,
    model: asked,
    places: placesRead,
  });
}

/**
 * The fitted model between the readings, as a function of the turns for one direction: line, gap and once-per-turn
 * part. Undefined where nothing was read from that direction.
 */
export const fittedCurve = (c: Calibration, direction: Direction): ((n: number) => number) | undefined => {
  const first = c.rows.findIndex((row) => row.direction === direction);
  const row = c.rows[first];
  const { periodic, lead } = c;
  if (row === undefined) return undefined;
  const wave = (n: number) =>
    periodic.determined ? periodic.amplitude * Math.cos(2 * Math.PI * (n - Math.floor(n) - periodic.crest)) : 0;
  const level = at(c.fitted, first) - lead * row.turns - wave(row.turns);
  return (n) => level + lead * n + wave(n);
};

/** Units that would bring the slope to the nominal lead, other than those the readings were read in. */
export interface UnitRemedy {
  readonly readingUnit: Unit;
  readonly positionUnit: PositionUnit;
}

/** What the readings may have been, where the slope looks like a wrong unit; none where it does not. */
export const unitRemedies = (
  lead: number,
  nominal: number,
  read: UnitRemedy,
  stepsPerTurn: number,
): readonly UnitRemedy[] => {
  if (unitQuestions(Math.abs(lead), Math.abs(nominal)).length === 0) return [];
  const fits = (factor: number) => Math.abs(Math.abs((lead / nominal) * factor) - 1) <= 0.05;
  // The unit it was read in never fits: with that the slope is far off.
  const asReadings = READ_UNITS.filter((unit) => fits(UNITS[unit].factor / UNITS[read.readingUnit].factor)).map(
    (readingUnit) => ({ ...read, readingUnit }),
  );
  const asPositions = POSITION_UNITS.filter((unit) =>
    fits(perTurn(unit, stepsPerTurn) / perTurn(read.positionUnit, stepsPerTurn)),
  ).map((positionUnit) => ({ ...read, positionUnit }));
  return [...asReadings, ...asPositions];
};

/** Dividers that heads and knobs commonly have; common practice, no source. */
const USUAL_STEPS = [
  4, 6, 8, 10, 12, 20, 24, 25, 30, 36, 40, 50, 60, 72, 80, 90, 100, 120, 180, 200, 250, 300, 360, 500, 1000,
];

/** Steps per turn that would bring the slope to the nominal lead, where positions were counted in steps and the slope is far off; the nearest usual count within 3 %. */
export const stepsMeant = (
  lead: number,
  nominal: number,
  { positionUnit }: Pick<UnitRemedy, 'positionUnit'>,
  stepsPerTurn: number,
): number | undefined => {
  if (positionUnit !== 'steps' || Math.abs(Math.abs(lead / nominal) - 1) <= 0.05) return undefined;
  const meant = Math.abs((stepsPerTurn * nominal) / lead);
  return USUAL_STEPS.find((steps) => steps !== stepsPerTurn && Math.abs(meant / steps - 1) <= 0.03);
};

const READ_UNITS: readonly Unit[] = ['µm', 'mm', 'thou', 'in'];
const POSITION_UNITS: readonly PositionUnit[] = ['turns', 'steps', '°'];
const perTurn = (unit: PositionUnit, steps: number): number => (unit === 'turns' ? 1 : unit === 'steps' ? steps : 360);

/** What was imported as what, by the factor it puts on the slope. */
export type UnitSlip = (typeof SLIPS)[number]['slip'];

/** A question to put to the reader: whether a unit was taken for another, or the sense. */
export type UnitQuestion =
  | { readonly kind: 'unit'; readonly slip: UnitSlip; readonly ratio: number }
  | { readonly kind: 'sense' };

/**
 * Questions when the slope found is the nominal one times a factor that a wrong unit or count would give (within a
 * twentieth); none when it is not. Factors near one can’t be wrong units and are never questioned.
 */
export const unitQuestions = (lead: number, nominal: number): readonly UnitQuestion[] => {
  const ratio = lead / nominal;
  const size = Math.abs(ratio);
  const found = SLIPS.find(({ factor }) => Math.abs(size / factor - 1) <= 0.05);
  const questions: UnitQuestion[] = found === undefined ? [] : [{ kind: 'unit', slip: found.slip, ratio: size }];
  return ratio < 0 && (found !== undefined || Math.abs(size - 1) <= 0.05)
    ? [...questions, { kind: 'sense' }]
    : questions;
};

const SLIPS = [
  { factor: 1000, slip: 'µm as mm' },
  { factor: 1 / 1000, slip: 'mm as µm' },
  { factor: 25.4, slip: 'µm as thou' },
  { factor: 1 / 25.4, slip: 'thou as µm' },
  { factor: 1000 / 25.4, slip: 'thou as mm' },
  { factor: 25.4 / 1000, slip: 'mm as thou' },
  { factor: 6, slip: 'turns as flats' },
  { factor: 1 / 6, slip: 'flats as turns' },
] as const;

/** The calibration as a table of text and numbers, µm, ready for toCsv; parseReadings reads it back. */
export const calibrationTable = (
  calibration: Calibration,
): { readonly header: readonly string[]; readonly rows: readonly (readonly (string | number)[])[] } => ({
  header: ['turns', 'direction', 'reading (µm)', 'fitted (µm)', 'residual (µm)'],
  rows: calibration.rows.map((row, i) => [
    row.turns,
    row.direction,
    micrometres(row.reading),
    micrometres(at(calibration.fitted, i)),
    micrometres(at(calibration.residuals, i)),
  ]),
});

/** mm as µm, without the last two digits of rounding (87.50000000000001). */
const micrometres = (length: number): number => Number((length * 1e3).toPrecision(13));

/**
 * Share of a column that must be its own for a part of the model to be told: at three tenths the intervals are three
 * times as wide as they need be. Half a turn of a wave, say, is so like a slope that it would take the slope with it.
 */
const TELLS = 0.3;

interface Model {
  readonly fit: NonNullable<ReturnType<typeof leastSquares>>;
  readonly gapAt: number | undefined;
  readonly waveAt: number | undefined;
  readonly whyNoGap: Bad;
  /** Half the span of the turns: the slope column is scaled by it so that all columns are of one size. */
  readonly slopeUnit: number;
}

/** The model with as many parts as can be told: both, else without the wave, else without the gap. */
function* fitModel(rows: readonly GaugeReading[]): Task<Result<Model>> {
  const n = rows.map((row) => row.turns);
  const z = rows.map((row) => row.reading);
  const { low, high } = extent(n);
  const slopeUnit = (high - low) / 2;
  // Every column but the first is centred: only what two of them have in common then makes them hard to tell apart,
  // not how many rows stand in each direction.
  const base = [n.map(() => 1), centred(n.map((v) => v / slopeUnit))];
  yield;
  const gapColumn = centred(rows.map((row) => (row.direction === 'down' ? 1 : 0)));
  // Whole turns are dropped first: sin 2πn of a large n would lose its digits.
  const phase = n.map((v) => 2 * Math.PI * (v - Math.floor(v)));
  yield;
  const waves = [centred(phase.map(Math.cos)), centred(phase.map(Math.sin))];
  // At whole or half turns sine or cosine is rounding alone, and rounding stands square to everything.
  const swings = waves.every((wave) => wave.reduce((sum, v) => sum + v * v, 0) > TELLS ** 2 * wave.length);
  const attempt = (columns: readonly (readonly number[])[]) => {
    const fit = leastSquares(columns, z);
    return fit !== undefined && fit.freedom >= 1 && fit.independence > TELLS ? fit : undefined;
  };
  yield;
  const [downs, ups] = [
    rows.filter((r) => r.direction === 'down').length,
    rows.filter((r) => r.direction === 'up').length,
  ];
  const enough = downs >= 3 && ups >= 3;
  // A model that tells everything tells the gap as well, for each column is judged by those before it: most tables need
  // this one fit only.
  const whole = enough && swings ? attempt([...base, gapColumn, ...waves]) : undefined;
  const withGap = whole ?? (enough ? attempt([...base, gapColumn]) : undefined);
  const whyNoGap = enough ? bad('gap-hidden-in-slope', {}) : bad('too-few-each-way', { up: ups, down: downs });
  const trunk = withGap === undefined ? base : [...base, gapColumn];
  const withWave = whole ?? (swings && withGap === undefined ? attempt([...trunk, ...waves]) : undefined);
  const fit = withWave ?? withGap ?? attempt(base);
  if (fit === undefined) return bad('too-few-for-slope', {});
  return good({
    fit,
    gapAt: withGap === undefined ? undefined : 2,
    waveAt: withWave === undefined ? undefined : trunk.length,
    whyNoGap,
    slopeUnit,
  });
}

const centred = (values: readonly number[]): readonly number[] => {
  const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
  return values.map((v) => v - mean);
};

const extent = (values: readonly number[]): { low: number; high: number } => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const v of values) {
    low = Math.min(low, v);
    high = Math.max(high, v);
  }
  return { low, high };
};

const spanOf = (values: readonly number[]): number => {
  const { low, high } = extent(values);
  return high - low;
};

const waveOf = (
  coefficients: readonly number[],
  inverse: readonly (readonly number[])[],
  column: number,
  scatter: number,
  freedom: number,
  level: number,
  span: number,
): Determined<OncePerTurn> => {
  const [c, s] = [at(coefficients, column), at(coefficients, column + 1)];
  const entry = (row: number, place: number) => at(at(inverse, row), place);
  const [cc, cs, ss] = [entry(column, column), entry(column, column + 1), entry(column + 1, column + 1)];
  const amplitude = Math.hypot(c, s);
  const [u, v] = amplitude > 0 ? [c / amplitude, s / amplitude] : [1, 0];
  const angle = Math.atan2(s, c) / (2 * Math.PI);
  // F of both coefficients together; with 2 and ν degrees of freedom its quantile is closed: ν/2 ((1 − level)^(−2/ν) − 1).
  const explained = (c * c * ss - 2 * c * s * cs + s * s * cc) / (cc * ss - cs * cs) / 2;
  const limit = (freedom / 2) * ((1 - level) ** (-2 / freedom) - 1);
  return {
    determined: true,
    amplitude: mm(amplitude),
    crest: turns(angle < 0 ? angle + 1 : angle),
    error: mm(scatter * Math.sqrt(u * u * cc + 2 * u * v * cs + v * v * ss)),
    // Readings without scatter leave a wave of rounding, which is none.
    significant: explained > limit * scatter * scatter && amplitude > 1e-9 * span,
  };
};

const hysteresisOf = (
  rows: readonly GaugeReading[],
  gap: number,
  error: number,
  lead: number,
  freedom: number,
  level: number,
): Determined<Hysteresis> => {
  const of = (direction: Direction) => {
    const own = rows.filter((row) => row.direction === direction);
    return lineFit(
      own.map((row) => row.turns),
      own.map((row) => row.reading),
    );
  };
  const [up, down] = [of('up'), of('down')];
  if (!up.ok) return { determined: false, why: bad('hysteresis-one-way', { direction: 'up', reason: up }) };
  if (!down.ok) return { determined: false, why: bad('hysteresis-one-way', { direction: 'down', reason: down }) };
  const interval = intervalAbout(gap, error, freedom, level);
  const both = up.value.freedom + down.value.freedom;
  const t = studentT(level, both);
  if (!interval.ok) return { determined: false, why: interval };
  if (!t.ok) return { determined: false, why: t };
  const { low, high } = extent(rows.map((row) => row.turns));
  const middle = (low + high) / 2;
  const heightOf = (fit: LineFit) => fit.intercept + fit.slope * middle;
  const slopeDifference = down.value.slope - up.value.slope;
  // One scatter for both directions: the pooled residual variance, as the common-slope model has it.
  const pooled = (up.value.sumOfSquares + down.value.sumOfSquares) / both;
  const spread = Math.sqrt(pooled / up.value.spread + pooled / down.value.spread);
  const lostMotion = gap * Math.sign(lead);
  return {
    determined: true,
    gap: mm(gap),
    interval: interval.value,
    lostMotion: mm(lostMotion),
    lostTurns: turns(lead === 0 ? 0 : lostMotion / Math.abs(lead)),
    up: up.value,
    down: down.value,
    gapOwnSlopes: mm(heightOf(down.value) - heightOf(up.value)),
    slopeDifference: mm(slopeDifference),
    slopesAgree: Math.abs(slopeDifference) <= t.value * spread + 1e-12 * Math.abs(lead),
  };
};

/** Readings at one place from one direction; places within a millionth of a turn are one. */
const groups = (rows: readonly GaugeReading[]): readonly (readonly GaugeReading[])[] => {
  const found = new Map<number, GaugeReading[]>();
  for (const row of rows) {
    // Even for up, odd for down.
    const key = 2 * Math.round(row.turns * 1e6) + (row.direction === 'down' ? 1 : 0);
    const group = found.get(key);
    if (group === undefined) found.set(key, [row]);
    else group.push(row);
  }
  return [...found.values()];
};

const meanReading = (group: readonly GaugeReading[]): number =>
  group.reduce((sum, row) => sum + row.reading, 0) / group.length;

const repeatabilityOf = (places: readonly (readonly GaugeReading[])[]): Determined<Repeatability> => {
  let [squares, freedom, widest] = [0, 0, 0];
  for (const group of places) {
    if (group.length < 2) continue;
    const mean = meanReading(group);
    for (const row of group) squares += (row.reading - mean) ** 2;
    freedom += group.length - 1;
    widest = Math.max(widest, spanOf(group.map((row) => row.reading)));
  }
  return freedom >= 1
    ? { determined: true, deviation: mm(Math.sqrt(squares / freedom)), widest: mm(widest), freedom }
    : { determined: false, why: bad('nothing-read-twice', {}) };
};

const placesOf = (
  places: readonly (readonly GaugeReading[])[],
  model: FittedModel,
  modelAtHome: number,
): readonly PlaceRead[] => {
  const order = (direction: Direction) => (direction === 'up' ? 0 : 1);
  const home = places.find(([row]) => row?.direction === 'up' && !apart(row.turns, model.home));
  const origin = home === undefined ? modelAtHome : meanReading(home);
  // Plain loops: a logger’s table has a hundred thousand places.
  const table: PlaceRead[] = [];
  for (const group of places) {
    const [row] = group;
    if (row === undefined) continue;
    const { nominal, correction } = correctedBy(model, row.turns, row.direction);
    table.push({
      turns: row.turns,
      direction: row.direction,
      readings: group.length,
      nominal,
      measured: mm(meanReading(group) - origin),
      correction,
    });
  }
  return table.sort((a, b) => order(a.direction) - order(b.direction) || a.turns - b.turns);
};
