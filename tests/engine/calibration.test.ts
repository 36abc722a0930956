/**
 * Calibration on synthetic rigs of known truth: lead, once-per-turn error, lost motion and noise are put in and have to
 * come out again within their uncertainty. The relations of this area stand with all the others in relations.test.ts.
 */

import { describe, expect, it } from 'vitest';
import { unitQuestionText } from '#words/calibration.ts';
import {
  abbeError,
  bad,
  type Calibration,
  type CalibrationPlan,
  calibrate,
  calibrationTable,
  cosineErrorFace,
  cosineErrorPoint,
  type GaugeReading,
  lineFit,
  mm,
  rad,
  threeReadingLead,
  turns,
  twoReadingDoubt,
  twoReadingLead,
  unitQuestions,
} from '../../widgets/engine/index.ts';
import { parseReadings, toCsv } from '../../widgets/input/readings-table.ts';
import norris from '../reference/nist-norris.json' with { type: 'json' };
import { howMany, inDeep } from '../support/deep.ts';
import { growth, IN_STEP } from '../support/growth.ts';
import { reasonIn, valueIn } from '../support/results.ts';
import { seeded } from '../support/seeded.ts';

interface Rig {
  readonly lead: number;
  readonly amplitude?: number;
  readonly crest?: number;
  /** Lost motion: on the way down the reading is this much higher for a positive lead. */
  readonly lost?: number;
  readonly noise?: number;
  readonly leadDown?: number;
}

/** Readings every sixth of a turn over `count` places, up and then down, `runs` times. */
const readingsOf = (
  rig: Rig,
  count = 19,
  runs = 1,
  directions: readonly ('up' | 'down')[] = ['up', 'down'],
  seed = 1,
) => {
  const { normal } = seeded(seed);
  const rows: GaugeReading[] = [];
  for (let run = 0; run < runs; run++)
    for (const direction of directions)
      for (let i = 0; i < count; i++) {
        const n = (direction === 'up' ? i : count - 1 - i) / 6;
        const lead = direction === 'down' ? (rig.leadDown ?? rig.lead) : rig.lead;
        const wave = (rig.amplitude ?? 0) * Math.cos(2 * Math.PI * (n - (rig.crest ?? 0)));
        const lag = direction === 'down' ? (rig.lost ?? 0) * Math.sign(rig.lead) : 0;
        rows.push({
          turns: turns(n),
          reading: mm(0.4 + lead * n + wave + lag + (rig.noise ?? 0) * normal()),
          direction,
        });
      }
  return rows;
};

/** Gauss and Jordan, without a thought for rounding. */
const inverted = (matrix: readonly (readonly number[])[]): readonly (readonly number[])[] => {
  const rows = matrix.map((row, i) => [...row, ...matrix.map((_, j) => (i === j ? 1 : 0))]);
  rows.forEach((pivot, k) => {
    const by = pivot[k] ?? 1;
    for (const [j, v] of pivot.entries()) pivot[j] = v / by;
    for (const row of rows) {
      const much = row[k] ?? 0;
      if (row !== pivot) for (const [j, v] of pivot.entries()) row[j] = (row[j] ?? 0) - much * v;
    }
  });
  return rows.map((row) => row.slice(matrix.length));
};

const PLAN: CalibrationPlan = { nominal: 0.0875 };
const foot = (rig: Partial<Rig> = {}, plan: Partial<CalibrationPlan> = {}): Calibration =>
  valueIn(calibrate(readingsOf({ lead: 0.0875, ...rig }), { ...PLAN, ...plan }));

describe('calibrate', () => {
  it('gives back what was put in when there is no noise: lead, wave with its crest, lost motion', () => {
    const found = foot({ lead: 0.088, amplitude: 0.003, crest: 0.7, lost: 0.012 });
    expect(found.lead).toBeCloseTo(0.088, 12);
    expect(found.scatter).toBeLessThan(1e-12);
    if (!found.periodic.determined || !found.hysteresis.determined) throw new Error('not told');
    expect(found.periodic.amplitude).toBeCloseTo(0.003, 12);
    expect(found.periodic.crest).toBeCloseTo(0.7, 10);
    expect(found.periodic.significant).toBe(true);
    expect(found.hysteresis.gap).toBeCloseTo(0.012, 12);
    expect(found.hysteresis.lostMotion).toBeCloseTo(0.012, 12);
    expect(found.hysteresis.lostTurns).toBeCloseTo(0.012 / 0.088, 10);
    expect(found.hysteresis.slopesAgree).toBe(true);
  });

  it('counts lost motion positive for a lagging part whichever way clockwise moves it', () => {
    const down = valueIn(calibrate(readingsOf({ lead: -0.0875, lost: 0.012 }), { nominal: -0.0875 }));
    if (!down.hysteresis.determined) throw new Error('not told');
    expect(down.lead).toBeCloseTo(-0.0875, 12);
    expect(down.hysteresis.gap).toBeCloseTo(-0.012, 12);
    expect(down.hysteresis.lostMotion).toBeCloseTo(0.012, 12);
    expect(down.hysteresis.lostTurns).toBeCloseTo(0.012 / 0.0875, 10);
  });

  it('finds no wave and no gap where none was put in', () => {
    const found = foot();
    if (!found.periodic.determined || !found.hysteresis.determined) throw new Error('not told');
    expect(found.periodic.amplitude).toBeLessThan(1e-12);
    expect(found.periodic.significant).toBe(false);
    expect(Math.abs(found.hysteresis.gap)).toBeLessThan(1e-12);
  });

  it('makes no wave and no difference of slopes out of rounding', () => {
    for (let i = 1; i <= 200; i++) {
      const found = foot({ lead: 0.08 + i * 1e-4, lost: 0.001 * i });
      if (!found.periodic.determined || !found.hysteresis.determined) throw new Error('not told');
      expect(found.periodic.significant, `lead ${i}`).toBe(false);
      expect(found.hysteresis.slopesAgree, `lead ${i}`).toBe(true);
      const long = foot({ lead: 1e4 * (1 + i / 7), lost: i });
      if (!long.periodic.determined || !long.hysteresis.determined) throw new Error('not told');
      expect([long.periodic.significant, long.hysteresis.slopesAgree], `long ${i}`).toEqual([false, true]);
    }
  });

  it('tells the gap from few readings on one way among many on the other', () => {
    const ups = readingsOf({ lead: 0.0875 }, 600, 1, ['up']);
    const downs = readingsOf({ lead: 0.0875, lost: 0.01 }, 600, 1, ['down']).filter((_, i) => i % 200 === 0);
    for (const rows of [
      [...ups, ...downs],
      [...ups, ...downs].map((r): GaugeReading => ({ ...r, direction: r.direction === 'up' ? 'down' : 'up' })),
    ]) {
      const { hysteresis } = valueIn(calibrate(rows, PLAN));
      expect(hysteresis.determined && Math.abs(hysteresis.gap)).toBeCloseTo(0.01, 12);
    }
  });

  it('tells no gap where the two ways stand at different stretches', () => {
    const ups = readingsOf({ lead: 0.0875 }, 7, 1, ['up']);
    const downs = ups.map(
      (r): GaugeReading => ({ turns: turns(r.turns + 9), reading: mm(r.reading + 0.8), direction: 'down' }),
    );
    expect(valueIn(calibrate([...ups, ...downs], PLAN)).hysteresis).toMatchObject({
      determined: false,
      why: bad('gap-hidden-in-slope', {}),
    });
  });

  it('is the plain straight line when nothing else can be told, on certified data: Norris one way', () => {
    // Places as ppb are no turns; every second row is dropped of its fraction so that no phase is left.
    const rows = norris.x.map(
      (x, i): GaugeReading => ({
        turns: turns(Math.round(x)),
        reading: mm(norris.y[i] ?? 0),
        direction: 'up',
      }),
    );
    const found = valueIn(calibrate(rows, { nominal: 1 }));
    const line = valueIn(
      lineFit(
        rows.map((r) => r.turns),
        rows.map((r) => r.reading),
      ),
    );
    expect(found.periodic.determined).toBe(false);
    expect(found.lead).toBeCloseTo(line.slope, 12);
    expect(found.leadError).toBeCloseTo(line.slopeError, 12);
    expect(found.leadInterval.high).toBeCloseTo(found.lineInterval.high, 12);
    expect(found.scatter).toBeCloseTo(line.scatter, 10);
  });

  it('takes the wave out of the slope: over a turn and a half the plain line is wrong, the model is not', () => {
    const rows = readingsOf({ lead: 0.0875, amplitude: 0.01 }, 10, 1, ['up']);
    const found = valueIn(calibrate(rows, PLAN));
    expect(found.lead).toBeCloseTo(0.0875, 12);
    expect(Math.abs(found.line.slope - 0.0875)).toBeGreaterThan(0.002);
  });

  it('shows a gap that changes along the way as two slopes that do not agree', () => {
    const found = foot({ lead: 0.0875, leadDown: 0.0885, lost: 0.01, noise: 1e-4 });
    if (!found.hysteresis.determined) throw new Error('not told');
    expect(found.hysteresis.slopesAgree).toBe(false);
    expect(found.hysteresis.slopeDifference).toBeCloseTo(0.001, 4);
    // In the middle, 1.5 turns: 10 µm + 1.5 · 1 µm.
    expect(found.hysteresis.gapOwnSlopes).toBeCloseTo(0.0115, 3);
    expect(found.hysteresis.up.slope).toBeCloseTo(0.0875, 3);
    expect(found.hysteresis.down.slope).toBeCloseTo(0.0885, 3);
  });

  it('finds repeatability from places read again: 2 µm put in, five runs', () => {
    const rows = readingsOf({ lead: 0.0875, amplitude: 0.005, lost: 0.02, noise: 0.002 }, 19, 5);
    const { repeatability } = valueIn(calibrate(rows, PLAN));
    if (!repeatability.determined) throw new Error('not told');
    // 19 places, 2 directions, 4 free each: 152; standard deviation of the answer 6 %.
    expect(repeatability.freedom).toBe(152);
    expect(Math.abs(repeatability.deviation / 0.002 - 1)).toBeLessThan(0.2);
    expect(repeatability.widest).toBeGreaterThan(0.006);
  });

  it('gives repeatability by hand: 1, 3 and 2, 2, 5 at two places are √(8/3) and 3', () => {
    const row = (n: number, z: number): GaugeReading => ({ turns: turns(n), reading: mm(z), direction: 'up' });
    const { repeatability } = valueIn(
      calibrate([row(0, 1), row(0, 3), row(1, 2), row(1, 2), row(1, 5)], { nominal: 1 }),
    );
    expect(repeatability).toMatchObject({ determined: true, freedom: 3, widest: 3 });
    if (repeatability.determined) expect(repeatability.deviation).toBeCloseTo(Math.sqrt(8 / 3), 12);
    const once = valueIn(calibrate([row(0, 1), row(0, 3), row(1, 2), row(2, 3)], { nominal: 1 }));
    expect(once.repeatability).toEqual({ determined: true, deviation: Math.SQRT2, widest: 2, freedom: 1 });
  });

  it('says in a sentence what can’t be told', () => {
    const whole = [0, 1, 2, 3, 4].map(
      (n): GaugeReading => ({
        turns: turns(n),
        reading: mm(0.0875 * n + 0.001 * (n % 2)),
        direction: 'up',
      }),
    );
    const found = valueIn(calibrate(whole, PLAN));
    expect(found.periodic).toEqual({
      determined: false,
      why: bad('wave-not-told', {}),
    });
    expect(found.hysteresis).toEqual({
      determined: false,
      why: bad('too-few-each-way', { up: 5, down: 0 }),
    });
    expect(found.repeatability).toEqual({
      determined: false,
      why: bad('nothing-read-twice', {}),
    });
    const back = [2, 1].map((n): GaugeReading => ({ turns: turns(n), reading: mm(0.09 * n), direction: 'down' }));
    expect(valueIn(calibrate([...whole, ...back], PLAN)).hysteresis).toMatchObject({
      why: bad('too-few-each-way', { up: 5, down: 2 }),
    });
    const other = [...whole, ...back].map(
      (r): GaugeReading => ({ ...r, direction: r.direction === 'up' ? 'down' : 'up' }),
    );
    expect(valueIn(calibrate(other, PLAN)).hysteresis).toMatchObject({
      why: bad('too-few-each-way', { up: 2, down: 5 }),
    });
    // Half turns but for the rounding of a spreadsheet: the sine is not there, and rounding must not stand in for it.
    const rounded = [0, 0.5, 1, 1.5 - 2e-16, 2, 2.5 + 5e-16, 3 - 4e-16, 3.5, 4, 4.5 + 9e-16].map((n, i) => ({
      turns: turns(n),
      reading: mm(0.0875 * n + 0.001 * (i % 3)),
      direction: 'up' as const,
    }));
    expect(valueIn(calibrate(rounded, PLAN)).periodic.determined).toBe(false);
    // At half turns the sine is nought but for rounding: it must not be taken for a part that can be told.
    const halves = whole.map((r) => ({ ...r, turns: turns(r.turns / 2) }));
    expect(valueIn(calibrate(halves, PLAN)).periodic.determined).toBe(false);
  });

  it('tells no wave from four readings, which leave nothing over to judge by', () => {
    const rows = [0, 1, 2, 4].map(
      (i): GaugeReading => ({
        turns: turns(i / 3),
        reading: mm(0.03 * i + 0.001 * (i % 2)),
        direction: 'up',
      }),
    );
    const found = valueIn(calibrate(rows, PLAN));
    expect(found.periodic.determined).toBe(false);
    expect(found.freedom).toBe(2);
  });

  it('tells no wave from half a turn', () => {
    const rows = Array.from(
      { length: 20 },
      (_, i): GaugeReading => ({
        turns: turns(i / 40),
        reading: mm((0.0875 * i) / 40),
        direction: 'up',
      }),
    );
    expect(valueIn(calibrate(rows, PLAN)).periodic.determined).toBe(false);
  });

  it('gives every place read the mean there, the nominal travel and the correction by the fit', () => {
    const rows = readingsOf({ lead: 0.09, lost: 0.012 }, 7, 2);
    const { places } = valueIn(calibrate(rows, PLAN));
    expect(places).toHaveLength(14);
    expect(places[0]).toMatchObject({ turns: 0, direction: 'up', readings: 2, correction: 0 });
    expect(places[6]?.turns).toBe(1);
    expect(places[6]?.nominal).toBeCloseTo(0.0875, 12);
    expect(places[6]?.correction).toBeCloseTo(0.0025, 12);
    expect(places[7]).toMatchObject({ turns: 0, direction: 'down' });
    expect(places[7]?.correction).toBeCloseTo(0.012, 12);
    // Without scatter the fit goes through the readings.
    for (const row of places) expect(row.nominal + row.correction).toBeCloseTo(row.measured, 12);
  });

  it('counts from the first place where the readings do not reach over turn 0', () => {
    const rows = readingsOf({ lead: 0.09 }, 7, 1, ['up']).map((r) => ({ ...r, turns: turns(r.turns + 4) }));
    const { places } = valueIn(calibrate(rows, PLAN));
    expect(places[6]?.nominal).toBeCloseTo(0.0875, 12);
    expect(places[6]?.correction).toBeCloseTo(0.0025, 12);
  });

  it('covers lead, gap and the absence of a wave as promised in many seeded rigs', () => {
    const truth = { lead: 0.0881, lost: 0.015 };
    const trials = howMany(1500, 10_000);
    let [lead, gap, wave, alike] = [0, 0, 0, 0];
    const { normal } = seeded(7);
    const still = readingsOf(truth, 13);
    for (let i = 0; i < trials; i++) {
      const rows = still.map((row) => ({ ...row, reading: mm(row.reading + 0.002 * normal()) }));
      const found = valueIn(calibrate(rows, PLAN));
      if (found.leadInterval.low <= truth.lead && truth.lead <= found.leadInterval.high) lead++;
      if (!found.hysteresis.determined || !found.periodic.determined) throw new Error('not told');
      const { low, high } = found.hysteresis.interval;
      if (low <= truth.lost && truth.lost <= high) gap++;
      if (!found.periodic.significant) wave++;
      if (found.hysteresis.slopesAgree) alike++;
    }
    for (const count of [lead, gap, wave, alike])
      expect(Math.abs(count / trials - 0.95)).toBeLessThan(3.5 * Math.sqrt((0.95 * 0.05) / trials));
  }, 60_000);

  it('calls a wave of mere noise significant in 5 % of many rigs read at uneven places', () => {
    const { normal } = seeded(23);
    const places = [0, 0.1, 0.2, 0.3, 0.45, 0.9, 1.05, 1.1, 1.2, 1.3, 2.15, 2.2];
    let false_ = 0;
    const trials = howMany(1500, 5000);
    for (let i = 0; i < trials; i++) {
      const rows = places.map(
        (n): GaugeReading => ({
          turns: turns(n),
          reading: mm(0.0875 * n + 0.002 * normal()),
          direction: 'up',
        }),
      );
      const { periodic } = valueIn(calibrate(rows, PLAN));
      if (!periodic.determined) throw new Error('not told');
      if (periodic.significant) false_++;
    }
    expect(Math.abs(false_ / trials - 0.05)).toBeLessThan(3.5 * Math.sqrt((0.95 * 0.05) / trials));
  }, 60_000);

  it('judges a wave at uneven places as the normal equations and the F table do', () => {
    const places = [0, 0.1, 0.2, 0.3, 0.45, 0.9, 1.05, 1.1, 1.2, 1.3, 2.15, 2.2];
    const noise = [3, -1, 4, -1, -5, 9, -2, 6, -5, 3, -5, -8].map((v) => v * 5e-4);
    const columns = [
      (_: number) => 1,
      (n: number) => n,
      ...[Math.cos, Math.sin].map((f) => (n: number) => f(2 * Math.PI * n)),
    ];
    const inverse = inverted(columns.map((f) => columns.map((g) => places.reduce((sum, n) => sum + f(n) * g(n), 0))));
    const seen = new Set<boolean>();
    for (let k = 0; k < 360; k++) {
      const z = places.map(
        (n, i) => 0.0875 * n + 4e-4 * (k / 12) * Math.cos(2 * Math.PI * (n - k / 12)) + (noise[i] ?? 0),
      );
      const against = columns.map((f) => places.reduce((sum, n, i) => sum + f(n) * (z[i] ?? 0), 0));
      const found = inverse.map((row) => row.reduce((sum, v, j) => sum + v * (against[j] ?? 0), 0));
      const left = places.map((n, i) => (z[i] ?? 0) - columns.reduce((sum, f, j) => sum + (found[j] ?? 0) * f(n), 0));
      const variance = left.reduce((sum, e) => sum + e * e, 0) / 8;
      const [, , c = 0, s = 0] = found;
      const [[cc = 0, cs = 0] = [], [, ss = 0] = []] = inverse.slice(2).map((row) => row.slice(2));
      const { periodic } = valueIn(
        calibrate(
          places.map((n, i) => ({ turns: turns(n), reading: mm(z[i] ?? 0), direction: 'up' as const })),
          PLAN,
        ),
      );
      if (!periodic.determined) throw new Error('not told');
      expect(periodic.amplitude).toBeCloseTo(Math.hypot(c, s), 12);
      expect(periodic.amplitude * Math.cos(2 * Math.PI * periodic.crest)).toBeCloseTo(c, 12);
      expect(periodic.amplitude * Math.sin(2 * Math.PI * periodic.crest)).toBeCloseTo(s, 12);
      expect(periodic.crest).toBeGreaterThanOrEqual(0);
      expect(periodic.crest).toBeLessThan(1);
      // The error of √(c² + s²) along its own slope, (c, s)/√(c² + s²).
      expect(periodic.error).toBeCloseTo(
        Math.sqrt((variance * (c * c * cc + 2 * c * s * cs + s * s * ss)) / (c * c + s * s)),
        12,
      );
      const [[a = 0, b = 0] = [], [, d = 0] = []] = inverted([
        [cc, cs],
        [cs, ss],
      ]);
      // F(2, 8) at 95 %: 4.459, half a unit of the last digit either way (from memory of the tables).
      const F = (c * c * a + 2 * c * s * b + s * s * d) / 2 / variance;
      if (Math.abs(F - 4.459) > 5e-4) expect(periodic.significant, `F = ${F}`).toBe(F > 4.459);
      seen.add(periodic.significant);
    }
    expect(seen.size).toBe(2);
  });

  it('tells two slopes apart as Student’s t of their difference does, each way with its own stretch', () => {
    const [up, down] = [
      [0, 0.5, 1, 1.5, 2, 2.5, 3],
      [1, 1.25, 1.5, 2],
    ];
    const noise = [2, -1, -3, 1, 2, 3, -2].map((v) => v * 1e-3);
    const seen = new Set<boolean>();
    for (let k = -6; k <= 6; k++) {
      const [ups, downs] = [
        up.map((n, i) => [n, 0.0875 * n + (noise[i] ?? 0)] as const),
        down.map((n, i) => [n, 0.01 + (0.0875 + 0.003 * k) * n - (noise[i] ?? 0)] as const),
      ];
      const line = (rows: readonly (readonly [number, number])[]) => {
        const [x, y] = [0, 1].map((j) => rows.reduce((sum, row) => sum + (row[j] ?? 0), 0) / rows.length) as [
          number,
          number,
        ];
        const Sxx = rows.reduce((sum, [n]) => sum + (n - x) ** 2, 0);
        const slope = rows.reduce((sum, [n, z]) => sum + (n - x) * (z - y), 0) / Sxx;
        return { slope, Sxx, rest: rows.reduce((sum, [n, z]) => sum + (z - y - slope * (n - x)) ** 2, 0) };
      };
      const [a, b] = [line(ups), line(downs)];
      const error = Math.sqrt(((a.rest + b.rest) / 7) * (1 / a.Sxx + 1 / b.Sxx));
      const readings = [...ups.map((r) => [...r, 'up'] as const), ...downs.map((r) => [...r, 'down'] as const)];
      const { hysteresis } = valueIn(
        calibrate(
          readings.map(([n, z, direction]) => ({ turns: turns(n), reading: mm(z), direction })),
          PLAN,
        ),
      );
      if (!hysteresis.determined) throw new Error('not told');
      expect(hysteresis.slopeDifference).toBeCloseTo(b.slope - a.slope, 12);
      // t at 95 % with 7 + 4 − 4 degrees of freedom: 2.365, as in reference/student-t.ts.
      const agree = Math.abs(b.slope - a.slope) <= 2.365 * error;
      expect(hysteresis.slopesAgree, `${k}`).toBe(agree);
      seen.add(agree);
    }
    expect(seen.size).toBe(2);
  });

  it('says lost motion in turns as nought where the carried part has no lead at all', () => {
    const rows = (['up', 'down'] as const).flatMap((direction) =>
      [1, 2, 1].map((z, i) => ({ turns: turns(i - 1), reading: mm(direction === 'up' ? z : z + 1), direction })),
    );
    const found = valueIn(calibrate(rows, PLAN));
    expect(found.lead).toBe(0);
    expect(found.hysteresis).toMatchObject({ determined: true, lostMotion: 0, lostTurns: 0 });
  });

  it('tells no hysteresis where one way was read at one place only, and says which', () => {
    const over = readingsOf({ lead: 0.0875, noise: 1e-3 }, 19, 1, ['up']);
    const there = [0.4, 0.401, 0.4].map(
      (z): GaugeReading => ({ turns: turns(1.5), reading: mm(z), direction: 'down' }),
    );
    for (const [way, rows] of [
      ['down', [...over, ...there]],
      ['up', [...over, ...there].map((r): GaugeReading => ({ ...r, direction: r.direction === 'up' ? 'down' : 'up' }))],
    ] as const)
      expect(valueIn(calibrate(rows, PLAN)).hysteresis).toMatchObject({
        determined: false,
        why: { code: 'hysteresis-one-way', values: { direction: way } },
      });
  });

  it('tells gap and wave each by itself where the readings allow only one of them', () => {
    const parts = (rows: readonly GaugeReading[]) => {
      const { hysteresis, periodic } = valueIn(calibrate(rows, PLAN));
      return [hysteresis.determined, periodic.determined];
    };
    const sixths = readingsOf({ lead: 0.0875, lost: 0.01, noise: 1e-3 });
    expect(parts(sixths)).toEqual([true, true]);
    expect(parts(sixths.slice(0, 21))).toEqual([false, true]);
    expect(valueIn(calibrate(sixths.slice(0, 21), PLAN)).hysteresis).toMatchObject({
      why: bad('too-few-each-way', { up: 19, down: 2 }),
    });
    const halves = sixths.filter((r) => Number.isInteger(2 * r.turns));
    expect(parts(halves)).toEqual([true, false]);
    // A fiftieth of a turn either side of every half: the sine is there, and far too small to be told.
    expect(parts(halves.map((r, i) => ({ ...r, turns: turns(r.turns + (i % 4 < 2 ? 0.02 : -0.02)) })))).toEqual([
      true,
      false,
    ]);
  });

  it('states an error of the amplitude that 2000 seeded rigs bear out', () => {
    const { normal } = seeded(17);
    const still = readingsOf({ lead: 0.0875, amplitude: 0.02, crest: 0.1 }, 13);
    let [sum, squares, stated] = [0, 0, 0];
    for (let i = 0; i < 2000; i++) {
      const found = valueIn(
        calibrate(
          still.map((r) => ({ ...r, reading: mm(r.reading + 0.002 * normal()) })),
          PLAN,
        ),
      );
      if (!found.periodic.determined) throw new Error('not told');
      sum += found.periodic.amplitude;
      squares += (found.periodic.amplitude - 0.02) ** 2;
      stated += found.periodic.error;
    }
    expect(sum / 2000).toBeCloseTo(0.02, 4);
    expect(Math.sqrt(squares / 2000) / (stated / 2000)).toBeCloseTo(1, 1);
  }, 60_000);

  it('refuses two readings, constant readings, readings at one place, and numbers that are none', () => {
    const rows = readingsOf({ lead: 0.0875 }, 5, 1, ['up']);
    expect(reasonIn(calibrate(rows.slice(0, 2), PLAN))).toBe(
      'Read 2 readings; a line takes two and its uncertainty one more: give at least three, or better ten.',
    );
    expect(
      reasonIn(
        calibrate(
          rows.map((r) => ({ ...r, reading: mm(1.1) })),
          PLAN,
        ),
      ),
    ).toMatch(/^All 5 readings are 1\.1, so nothing moved/);
    expect(
      reasonIn(
        calibrate(
          rows.map((r) => ({ ...r, turns: turns(1) })),
          PLAN,
        ),
      ),
    ).toBe('All 5 readings stand at 1; a slope needs readings at two places at least.');
    expect(
      reasonIn(
        calibrate(
          rows.map((r) => ({ ...r, reading: mm(Number.NaN) })),
          PLAN,
        ),
      ),
    ).toBe('Row 1 reads 0 turns and NaN mm; give two numbers within a million, and check the units.');
  });

  it('refuses a nominal lead of nought and a level that is none', () => {
    const rows = readingsOf({ lead: 0.0875 });
    expect(reasonIn(calibrate(rows, { nominal: 0 }))).toBe(
      'Read a nominal net lead of 0 mm a turn; give one other than zero and within 120 mm.',
    );
    expect(reasonIn(calibrate(rows, { ...PLAN, level: 95 }))).toMatch(/^Read a level of 95; give a share/);
    for (const nominal of [120, -120]) {
      expect(calibrate(rows, { nominal }).ok, `${nominal}`).toBe(true);
      expect(reasonIn(calibrate(rows, { nominal: 1.01 * nominal }))).toContain('within 120 mm');
    }
    const far = (n: number, z: number) =>
      calibrate([...rows, { turns: turns(n), reading: mm(z), direction: 'up' }], { nominal: 1 });
    for (const [n, z] of [
      [1e6, 1e6],
      [-1e6, -1e6],
    ] as const) {
      expect(far(n, z).ok, `${n}`).toBe(true);
      expect(reasonIn(far(1.01 * n, z))).toContain('within a million');
      expect(reasonIn(far(n, 1.01 * z))).toContain('within a million');
    }
  });

  it('takes three readings, which leave one over to judge by, and no wave', () => {
    // 0, 1, 3 at 0, 1/3, 2/3 of a turn: slope 9/2 a turn, Σe² = 1/6.
    const rows = [0, 1, 3].map((z, i): GaugeReading => ({ turns: turns(i / 3), reading: mm(z), direction: 'up' }));
    const found = valueIn(calibrate(rows, { nominal: 4.5 }));
    expect(found).toMatchObject({ freedom: 1, lead: expect.closeTo(4.5, 12), periodic: { determined: false } });
    expect(found.scatter).toBeCloseTo(Math.sqrt(1 / 6), 12);
    expect(found.leadError).toBeCloseTo(3 * Math.sqrt(1 / 12), 12);
  });

  it('finds the same wherever turns are counted from, half a million turns off too', () => {
    // Eighths of a turn, so that every place is exact.
    const rows = (['up', 'down'] as const).flatMap((direction) =>
      Array.from({ length: 25 }, (_, i): GaugeReading => {
        const n = i / 8;
        const wave = 0.004 * Math.cos(2 * Math.PI * (n - 0.3)) + 0.0005 * ((i * 7) % 5);
        return { turns: turns(n), reading: mm(0.0875 * n + wave + (direction === 'down' ? 0.01 : 0)), direction };
      }),
    );
    const here = valueIn(calibrate(rows, PLAN));
    if (!here.periodic.determined || !here.hysteresis.determined) throw new Error('not told');
    for (const from of [-1.5, 2 ** 19, -(2 ** 19) - 1.5]) {
      const there = valueIn(
        calibrate(
          rows.map((r) => ({ ...r, turns: turns(r.turns + from) })),
          PLAN,
        ),
      );
      if (!there.periodic.determined || !there.hysteresis.determined) throw new Error('not told');
      expect(there.lead).toBeCloseTo(here.lead, 12);
      expect(there.leadError).toBeCloseTo(here.leadError, 12);
      expect(there.hysteresis.gap).toBeCloseTo(here.hysteresis.gap, 12);
      expect(there.periodic.amplitude).toBeCloseTo(here.periodic.amplitude, 12);
      expect(there.periodic.crest).toBeCloseTo((here.periodic.crest + 1 + (from % 1)) % 1, 10);
    }
  });

  it('takes ten times as long for ten times the rows, 100 000 of them', inDeep, () => {
    const rows = readingsOf({ lead: 0.0875, amplitude: 0.002, lost: 0.01, noise: 0.001 }, 1000, 50);
    const found = valueIn(calibrate(rows, PLAN));
    expect(growth((size) => calibrate(rows.slice(0, size), PLAN), rows.length / 10)).toBeLessThan(IN_STEP);
    expect(found.lead).toBeCloseTo(0.0875, 6);
  });

  it('exports readings that come back the same', () => {
    const found = foot({ amplitude: 0.003, lost: 0.01, noise: 1e-3 });
    const { header, rows } = calibrationTable(found);
    const table = valueIn(parseReadings(toCsv(header, rows)));
    expect(table.notes).toEqual(['Left out: “fitted (µm)” and “residual (µm)”.']);
    table.rows.forEach((row, i) => {
      expect(row.turns).toBe(found.rows[i]?.turns);
      expect(row.reading).toBeCloseTo(found.rows[i]?.reading ?? 0, 13);
      expect(row.direction).toBe(found.rows[i]?.direction);
    });
    rows.forEach((row) => {
      expect(Number(row[3]) + Number(row[4])).toBeCloseTo(Number(row[2]), 9);
    });
  });
});

describe('unitQuestions', () => {
  it.each([
    [1000, 'µm imported as mm'],
    [1 / 1000, 'mm imported as µm'],
    [25.4, 'µm imported as thou'],
    [1 / 25.4, 'thou imported as µm'],
    [39.37, 'thou imported as mm'],
    [0.0254, 'mm imported as thou'],
    [6, 'whole turns imported as flats'],
    [1 / 6, 'flats imported as whole turns'],
  ])('asks at %f times the nominal lead whether it was %s', (factor, words) => {
    for (const off of [0.96, 1, 1.04])
      expect(unitQuestions(0.25 * factor * off, 0.25).map(unitQuestionText)[0]).toContain(words);
    expect(unitQuestions(0.25 * factor * 1.07, 0.25)).toEqual([]);
  });

  it('asks about the sense when only the sign is wrong', () => {
    expect(unitQuestions(-0.25, 0.25)).toEqual([{ kind: 'sense' }]);
    expect(unitQuestions(-250, 0.25)).toEqual([{ kind: 'unit', slip: 'µm as mm', ratio: 1000 }, { kind: 'sense' }]);
  });

  it('asks nothing about a lead that is merely off', () => {
    for (const factor of [0.5, 0.9, 1, 1.1, 2, 3, 100]) expect(unitQuestions(0.25 * factor, 0.25)).toEqual([]);
    for (const factor of [-0.5, -0.9, -1.1, -2, -100]) expect(unitQuestions(0.25 * factor, 0.25)).toEqual([]);
  });
});

describe('a lead from two or three readings', () => {
  const at = (n_1: number, n_2: number, n_3: number) =>
    threeReadingLead.of({ n_1: turns(n_1), z_1: mm(3), n_2: turns(n_2), z_2: mm(2), n_3: turns(n_3), z_3: mm(7) });

  it('is motion over turns, in doubt by both readings: 175 µm from turn 1 to turn 3, each read to 1 µm', () => {
    const places = { n_1: turns(1), n_2: turns(3) };
    expect(valueIn(twoReadingLead.of({ ...places, z_1: mm(0.5), z_2: mm(0.675) })).Delta_m).toBeCloseTo(0.0875, 12);
    expect(valueIn(twoReadingDoubt.of({ ...places, e_g: mm(0.001) })).U_2).toBeCloseTo(0.001, 12);
  });

  it('takes any two of three places alike, and refuses all alike', () => {
    // The two at one place count with their mean: (7 − 2.5)/1, (2 − 5)/1, (4.5 − 3)/1.
    expect(valueIn(at(1, 1, 2)).Delta_m).toBeCloseTo(4.5, 12);
    expect(valueIn(at(1, 2, 1)).Delta_m).toBeCloseTo(-3, 12);
    expect(valueIn(at(1, 2, 2)).Delta_m).toBeCloseTo(1.5, 12);
    expect(reasonIn(at(7, 7, 7))).toContain('All three readings stand at the same turns');
  });
});

describe('errors of the set-up', () => {
  it('reads 1.5 % too much against a face and 1.5 % too little on a point at 10° (cos 10° = 0.98481)', () => {
    const theta_i = rad((10 * Math.PI) / 180);
    expect(valueIn(cosineErrorFace.of({ w: mm(1), theta_i })).e_c).toBeCloseTo(1 / 0.984807753 - 1, 8);
    expect(valueIn(cosineErrorPoint.of({ w: mm(1), theta_i })).e_c).toBeCloseTo(0.984807753 - 1, 8);
  });

  it('keeps the digits of a small leaning: half the square of the angle', () => {
    const theta_i = rad(1e-6);
    expect(valueIn(cosineErrorFace.of({ w: mm(1), theta_i })).e_c / 5e-13).toBeCloseTo(1, 9);
  });

  it('reads 0.97 µm wrong 20 mm beside the axis for a tilt of 10″', () => {
    const theta_c = rad((10 * Math.PI) / 648000);
    expect(valueIn(abbeError.of({ a_o: mm(20), theta_c })).e_a * 1e3).toBeCloseTo(0.9696, 4);
  });
});
