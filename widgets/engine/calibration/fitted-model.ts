/**
 * The fitted model of a calibration (calibration.ts), asked at any place: the motion from home, and what is to be added to the
 * nominal one, by the way the place is approached.
 *
 *   t(n, way) = b (n − n_0) [+ g on the way down] [+ c (cos 2πn − cos 2πn_0) + s (sin 2πn − sin 2πn_0)]
 *   correction = t − Δ (n − n_0)
 *
 * Home n_0, approached with the turns rising, is turn 0 where the readings reach over it, else the least turn read.
 * Source: the model of calibration.ts. Units: n in turns, z in mm.
 */
import { at } from '../kernel/at.ts';
import { type Millimetres, mm } from '../kernel/quantity.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import type { Direction, ReadingRow } from './readings.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'no-readings-that-way': { readonly direction: Direction };
    'outside-readings': { readonly turns: number; readonly from: number; readonly to: number };
  }
}

/** What the fit of a calibration came to, enough to ask it at any place. */
export interface FittedModel {
  /** Of 1, turns by `slopeUnit`, then the gap and the wave where they could be told. */
  readonly coefficients: readonly number[];
  /** (XᵀX)⁻¹ of them. */
  readonly inverse: readonly (readonly number[])[];
  /** Column of the gap, and the first of the two of the wave. */
  readonly gapAt: number | undefined;
  readonly waveAt: number | undefined;
  readonly slopeUnit: number;
  /** Standard deviation of one reading about the model, mm, and its degrees of freedom. */
  readonly scatter: number;
  readonly freedom: number;
  /** Where the count of the turns begins. */
  readonly home: number;
  /** Net lead by design, mm a turn. */
  readonly nominal: number;
  /** The turns read on each way, from least to most. */
  readonly read: Readonly<Record<Direction, readonly [number, number] | undefined>>;
}

export interface Corrected {
  /** Travel by the nominal lead from home. */
  readonly nominal: Millimetres;
  /** To be added to it. */
  readonly correction: Millimetres;
  /** Travel by the model from home, approached with the turns rising. */
  readonly travel: Millimetres;
}

/** The row of the model at the place, less that at home. */
export const rowLessHome = (m: FittedModel, n: number, direction: Direction): readonly number[] => {
  const row = m.coefficients.map(() => 0);
  row[1] = (n - m.home) / m.slopeUnit;
  if (m.gapAt !== undefined && direction === 'down') row[m.gapAt] = 1;
  if (m.waveAt !== undefined) {
    // Whole turns are dropped first: the sine of a large number would lose its digits.
    const angle = (v: number) => 2 * Math.PI * (v - Math.floor(v));
    row[m.waveAt] = Math.cos(angle(n)) - Math.cos(angle(m.home));
    row[m.waveAt + 1] = Math.sin(angle(n)) - Math.sin(angle(m.home));
  }
  return row;
};

/** The model at a place, read over or not. */
export const correctedBy = (m: FittedModel, n: number, direction: Direction): Corrected => {
  const travel = rowLessHome(m, n, direction).reduce((sum, x, i) => sum + x * at(m.coefficients, i), 0);
  const nominal = (n - m.home) * m.nominal;
  return { nominal: mm(nominal), correction: mm(travel - nominal), travel: mm(travel) };
};

/** The correction at a place, approached so; no further than it was read. */
export const correctionAt = (m: FittedModel, n: number, direction: Direction = 'up'): Result<Corrected> => {
  const read = m.read[direction];
  if (read === undefined) return bad('no-readings-that-way', { direction });
  const [from, to] = read;
  return n >= from && n <= to ? good(correctedBy(m, n, direction)) : bad('outside-readings', { turns: n, from, to });
};

/** The least and the most turn of each way, and home among them. */
export const readSpans = (
  rows: readonly Pick<ReadingRow, 'turns' | 'direction'>[],
): Pick<FittedModel, 'read' | 'home'> => {
  const read: Record<Direction, [number, number] | undefined> = { up: undefined, down: undefined };
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { turns: n, direction } of rows) {
    const span = read[direction];
    read[direction] = span === undefined ? [n, n] : [Math.min(span[0], n), Math.max(span[1], n)];
    [low, high] = [Math.min(low, n), Math.max(high, n)];
  }
  return { read, home: low <= 0 && high >= 0 ? 0 : low };
};
