/**
 * The corrections of a calibration with how far they may be off, step by step, on both ways.
 *
 *   u² of the fit = s² xᵀ (XᵀX)⁻¹ x, x the row of the model at the place less that at home (fitted-model.ts)
 *
 * At home, approached with the turns rising, the correction is nought and nothing is left open. What no fit sees counts as a bound at every
 * other place, as it does for the lead (signing.ts): q |t|, |t| (1/cos θ − 1), a tan θ_c, e_d and √2 e_rp.
 * The expanded uncertainty is that of about 95 %. What the model does not follow, such as a bend, is in its scatter s and no more.
 * Source: JCGM 100:2008, 5.2 and H.3 (corrections from a fitted line). Units: n in turns, z in mm.
 */
import { at } from '../kernel/at.ts';
import { type Millimetres, mm, type Turns, turns } from '../kernel/quantity.ts';
import { good, type Result } from '../kernel/result.ts';
import { flat } from '../numerics/propagate.ts';
import { correctedBy, type FittedModel, rowLessHome } from './fitted-model.ts';
import type { Direction } from './readings.ts';
import { expandedOf, type SetUp, setUpBounds } from './set-up.ts';

/** How far the correction at a place may be off, mm, at about 95 %. */
export const correctionDoubt = (m: FittedModel, n: number, direction: Direction, setUp: SetUp): Result<Millimetres> => {
  const row = rowLessHome(m, n, direction);
  const variance = row.reduce(
    (sum, x, i) => sum + row.reduce((inner, y, j) => inner + x * y * at(at(m.inverse, i), j), 0),
    0,
  );
  if (row.every((x) => x === 0)) return good(mm(0));
  const bounds = setUpBounds(correctedBy(m, n, direction).travel, 1, setUp);
  if (!bounds.ok) return bounds;
  return good(
    mm(
      expandedOf([
        { u: m.scatter * Math.sqrt(Math.max(0, variance)), freedom: m.freedom },
        ...bounds.value.map(([, half]) => flat(half)),
      ]).U,
    ),
  );
};

/** The correction on one way with its expanded uncertainty. */
export interface CorrectionWay {
  readonly correction: Millimetres;
  readonly U: Millimetres;
}

export interface CorrectionStep {
  /** Steps and turns from home. */
  readonly steps: number;
  readonly turns: Turns;
  readonly nominal: Millimetres;
  /** Undefined where that way was not read so far, or its lost motion can’t be told. */
  readonly up: CorrectionWay | undefined;
  readonly down: CorrectionWay | undefined;
}

/** Places within a millionth of a turn are one. */
const SAME = 1e-6;

/**
 * The ways whose corrections stand for themselves: both where the gap between them is told, or where one alone was read; else the
 * one that home is counted on.
 */
export const waysTold = (m: FittedModel): readonly Direction[] =>
  (['up', 'down'] as const).filter(
    (way) => m.read[way] !== undefined && (m.gapAt !== undefined || way === 'up' || m.read.up === undefined),
  );

/**
 * A row for every step from home over all that was read, and for its two ends; where these are more than `most`, for every second,
 * third … step, as `every` says.
 */
export const correctionsBySteps = (
  m: FittedModel,
  stepsPerTurn: number,
  setUp: SetUp,
  most: number,
): Result<{ readonly rows: readonly CorrectionStep[]; readonly every: number }> => {
  const spans = [m.read.up, m.read.down].flatMap((read) => (read === undefined ? [] : [read]));
  const low = Math.min(...spans.map(([from]) => from)) - m.home;
  const high = Math.max(...spans.map(([, to]) => to)) - m.home;
  const every = Math.max(1, Math.ceil(((high - low) * stepsPerTurn) / Math.max(1, most - 3)));
  const first = Math.ceil(((low - SAME) * stepsPerTurn) / every);
  const last = Math.floor(((high + SAME) * stepsPerTurn) / every);
  const places = new Set<number>();
  for (let i = first; i <= last; i++) places.add((i * every) / stepsPerTurn);
  for (const end of [low, high]) if (![...places].some((n) => Math.abs(n - end) <= SAME)) places.add(end);
  const told = waysTold(m);
  const rows: CorrectionStep[] = [];
  for (const from of [...places].sort((a, b) => a - b)) {
    const n = m.home + from;
    const ways: Partial<Record<Direction, CorrectionWay>> = {};
    for (const way of told) {
      const read = m.read[way];
      if (read === undefined || !(n >= read[0] - SAME && n <= read[1] + SAME)) continue;
      const U = correctionDoubt(m, n, way, setUp);
      if (!U.ok) return U;
      ways[way] = { correction: correctedBy(m, n, way).correction, U: U.value };
    }
    rows.push({
      steps: from * stepsPerTurn,
      turns: turns(n),
      nominal: mm(from * m.nominal),
      up: ways.up,
      down: ways.down,
    });
  }
  return good({ rows, every });
};

/** The table as text and numbers, µm, ready for toCsv; an empty cell where a way was not read. */
export const correctionTable = (
  rows: readonly CorrectionStep[],
): { readonly header: readonly string[]; readonly rows: readonly (readonly (string | number)[])[] } => ({
  header: [
    'steps from home',
    'turns',
    'nominal (µm)',
    'correction up (µm)',
    'expanded uncertainty up (µm)',
    'correction down (µm)',
    'expanded uncertainty down (µm)',
  ],
  rows: rows.map((row) => [
    Number(row.steps.toPrecision(9)),
    Number(row.turns.toPrecision(9)),
    micrometres(row.nominal),
    ...[row.up, row.down].flatMap((way): readonly (string | number)[] =>
      way === undefined ? ['', ''] : [micrometres(way.correction), micrometres(way.U)],
    ),
  ]),
});

/** mm as µm, to a millionth of one: no more is in any reading. */
const micrometres = (length: number): number => Number((length * 1e3).toFixed(6));
