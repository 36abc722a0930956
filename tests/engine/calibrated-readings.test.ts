/** What calibration makes of readings taken of known faults, and besides the fit: correction, units. */

import { describe, expect, it } from 'vitest';
import {
  calibrate,
  fittedCurve,
  mm,
  newtons,
  plain,
  type SimulatorSettings,
  threeReadingLead,
  turns,
  twoReadingDoubt,
  twoReadingLead,
  unitRemedies,
} from '../../widgets/engine/index.ts';
import { parseReadings, writeReadingsTable } from '../../widgets/input/readings-table.ts';
import { type PracticeRun, practiceReadings } from '../support/practice-readings.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const FOOT: SimulatorSettings = {
  A: { h: 1, L: mm(1.5), play: mm(0.04), leadError: plain(-0.0003) },
  C: { h: 1, L: mm(1.5875), play: mm(0.04), leadError: plain(0.0005) },
  loads: { turned: newtons(0), carried: newtons(20) },
  drags: { turned: newtons(0), carried: newtons(2) },
  seed: 13,
};
/** (1 + 0.0005) × 1.5875 − (1 − 0.0003) × 1.5, mm. */
const TRUE_LEAD = 0.08874375;
const RUN: PracticeRun = { out: turns(2), stepsPerTurn: 6, runs: 2 };
const fitted = (rig: SimulatorSettings, run = RUN) =>
  valueIn(calibrate(practiceReadings(rig, run), { nominal: 0.0875 }));

describe('practiceReadings', () => {
  it('reads every step of every run up and down, both ends from both sides', () => {
    const rows = practiceReadings(FOOT, RUN);
    expect(rows.length).toBe(2 * 2 * 13);
    expect(rows.slice(0, 13).map((r) => Math.round(r.turns * 6))).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(rows.slice(13, 26).map((r) => Math.round(r.turns * 6))).toEqual([12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1, 0]);
    expect(rows.map((r) => r.direction)).toEqual([
      ...Array(13).fill('up'),
      ...Array(13).fill('down'),
      ...Array(13).fill('up'),
      ...Array(13).fill('down'),
    ]);
    expect(rows[0]?.reading).toBe(0);
  });

  it('gives the fit the rig’s true lead, wander, lag and play back', () => {
    expect(Math.abs(fitted(FOOT).lead - TRUE_LEAD)).toBeLessThan(5e-5);
    const wandering = fitted({ ...FOOT, A: { ...FOOT.A, periodic: mm(0.002), phase: turns(0.1) } });
    expect(wandering.periodic.determined && Math.abs(wandering.periodic.amplitude - 0.002)).toBeLessThan(5e-5);
    // Seated flanks: only the lag to either side. Loose ones: the play of both threads.
    const lagging = fitted({ ...FOOT, stick: mm(0.001), slip: mm(0.001) });
    expect(lagging.hysteresis.determined && Math.abs(lagging.hysteresis.gap - 0.002)).toBeLessThan(5e-5);
    const loose = fitted({ ...FOOT, loads: { turned: newtons(0), carried: newtons(0) } });
    expect(loose.hysteresis.determined && Math.abs(loose.hysteresis.gap - 0.08)).toBeLessThan(5e-5);
  });

  it('reads to the division and no finer, the same for the same seed', () => {
    const noisy = { ...FOOT, noise: mm(0.0003) };
    const rows = practiceReadings(noisy, { ...RUN, division: mm(0.001) });
    for (const { reading } of rows) expect(Math.abs(reading * 1e3 - Math.round(reading * 1e3))).toBeLessThan(1e-9);
    expect(practiceReadings(noisy, RUN)).toEqual(practiceReadings(noisy, RUN));
    expect(practiceReadings({ ...noisy, seed: 14 }, RUN)).not.toEqual(practiceReadings(noisy, RUN));
  });
});

describe('writeReadingsTable', () => {
  it('writes what parseReadings reads back to the digit, in turns, flats and degrees, µm and thou', () => {
    const rows = practiceReadings({ ...FOOT, noise: mm(0.0003) }, RUN);
    for (const positionUnit of ['turns', 'steps', '°'] as const)
      for (const readingUnit of ['µm', 'thou'] as const) {
        const again = valueIn(parseReadings(writeReadingsTable(rows, { positionUnit, readingUnit })));
        expect([again.positionUnit, again.readingUnit]).toEqual([positionUnit, readingUnit]);
        for (const [i, row] of again.rows.entries()) {
          expect(Math.abs(row.turns - (rows[i]?.turns ?? 9))).toBeLessThan(1e-11);
          expect(Math.abs(row.reading - (rows[i]?.reading ?? 9))).toBeLessThan(1e-11);
          expect(row.direction).toBe(rows[i]?.direction);
        }
      }
  });
});

describe('leads from few readings', () => {
  it('two-reading-lead and its doubt: 28.2 µm in a third of a turn is 84.6 µm a turn, 3 µm each in a sixth is 36 µm', () => {
    const two = { n_1: turns(0), z_1: mm(-0.0001), n_2: turns(1 / 3), z_2: mm(0.0281) };
    expect(valueIn(twoReadingLead.of(two)).Delta_m).toBeCloseTo(0.0846, 10);
    expect(valueIn(twoReadingDoubt.of({ e_g: mm(0.003), n_1: turns(1 / 6), n_2: turns(0) })).U_2).toBeCloseTo(
      0.036,
      10,
    );
    expect(reasonIn(twoReadingLead.of({ ...two, n_2: turns(0) }))).toMatch(/^Both readings stand at the same turns/);
    expect(reasonIn(twoReadingDoubt.of({ e_g: mm(0.003), n_1: turns(1), n_2: turns(1) }))).toMatch(/^Both readings/);
  });

  it('three-reading-lead is the slope of calibrate for the same three', () => {
    const three = [
      [0, 0.1],
      [0.5, 0.2],
      [2, 0.9],
    ] as const;
    const rows = three.map(([n, z]) => ({ turns: turns(n), reading: mm(z), direction: 'up' as const }));
    const { line } = valueIn(calibrate(rows, { nominal: 0.4 }));
    const [a, b, c] = three;
    const slope = valueIn(
      threeReadingLead.of({
        n_1: turns(a[0]),
        z_1: mm(a[1]),
        n_2: turns(b[0]),
        z_2: mm(b[1]),
        n_3: turns(c[0]),
        z_3: mm(c[1]),
      }),
    ).Delta_m;
    expect(slope).toBeCloseTo(line.slope, 12);
  });
});

describe('fittedCurve', () => {
  it('passes through the fitted value of every row, in both directions', () => {
    const c = fitted({
      ...FOOT,
      A: { ...FOOT.A, periodic: mm(0.002) },
      stick: mm(0.001),
      slip: mm(0.001),
      noise: mm(2e-4),
    });
    for (const direction of ['up', 'down'] as const) {
      const at = fittedCurve(c, direction);
      for (const [i, row] of c.rows.entries())
        if (row.direction === direction) expect(at?.(row.turns)).toBeCloseTo(c.fitted[i] ?? 9, 10);
    }
  });

  it('has no curve for a direction that was not read', () => {
    const up = practiceReadings(FOOT, RUN).filter((r) => r.direction === 'up');
    expect(fittedCurve(valueIn(calibrate(up, { nominal: 0.0875 })), 'down')).toBeUndefined();
  });
});

describe('unitRemedies', () => {
  const read = { readingUnit: 'µm', positionUnit: 'turns' } as const;
  it('names the unit that would bring the slope to the nominal lead', () => {
    expect(unitRemedies(0.0875e-3, 0.0875, read, 6)).toEqual([{ ...read, readingUnit: 'mm' }]);
    expect(unitRemedies(0.0875 / 25.4, 0.0875, read, 6)).toEqual([{ ...read, readingUnit: 'thou' }]);
    expect(unitRemedies(87.5, 0.0875, { ...read, readingUnit: 'mm' }, 6)).toEqual([read]);
    expect(unitRemedies(0.0875 / 6, 0.0875, read, 6)).toEqual([{ ...read, positionUnit: 'steps' }]);
    expect(unitRemedies(0.0875 * 6, 0.0875, { ...read, positionUnit: 'steps' }, 6)).toEqual([read]);
  });
  it('names none where the slope is what it should be, or far from any slip', () => {
    expect(unitRemedies(0.0887, 0.0875, read, 6)).toEqual([]);
    expect(unitRemedies(0.2, 0.0875, read, 6)).toEqual([]);
    // A head of 360 steps: steps and degrees are one.
    expect(unitRemedies(0.0875, 0.0875, { ...read, positionUnit: 'steps' }, 360)).toEqual([]);
  });
});
