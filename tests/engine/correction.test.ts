/** Corrections by the fit: on rigs of known truth, by hand, and against the published calibration of a thermometer. */

import { describe, expect, it } from 'vitest';
import {
  type Calibration,
  calibrate,
  correctedBy,
  correctionAt,
  correctionDoubt,
  correctionsBySteps,
  correctionTable,
  type Direction,
  type GaugeReading,
  mm,
  type SetUp,
  signLead,
  turns,
  waysTold,
} from '../../widgets/engine/index.ts';
import { parseReadings, toCsv } from '../../widgets/input/readings-table.ts';
import { howMany } from '../support/deep.ts';
import { reasonIn, valueIn } from '../support/results.ts';
import { seeded } from '../support/seeded.ts';

const EXACT: SetUp = { q_g: 0, theta_i: 0, a_o: 0, theta_c: 0, e_d: 0, e_rp: 0 };
const STATED: SetUp = { q_g: 0.005, theta_i: 0.035, a_o: 1, theta_c: 1.7e-4, e_d: 5e-4, e_rp: 2e-4 };

const TRUTH = { lead: 0.0885, lost: 0.012, wave: 0.003, crest: 0.2 };
/** The motion from home by the truth, home being turn 0 on the way up. */
const truly = (n: number, way: Direction): number => {
  const wave = (v: number) => TRUTH.wave * Math.cos(2 * Math.PI * (v - TRUTH.crest));
  return TRUTH.lead * n + wave(n) - wave(0) + (way === 'down' ? TRUTH.lost : 0);
};
const rigRows = (from: number, to: number, noise: () => number = () => 0): GaugeReading[] =>
  (['up', 'down'] as const).flatMap((direction) =>
    Array.from({ length: Math.round((to - from) * 6) + 1 }, (_, i) => {
      const n = from + i / 6;
      return { turns: turns(n), reading: mm(0.4 + truly(n, direction) + noise()), direction };
    }),
  );
const rig = (from = 0, to = 2, noise?: () => number): Calibration =>
  valueIn(calibrate(rigRows(from, to, noise), { nominal: 0.0875 }));

describe('corrections by the fit', () => {
  it('are what was put in, on both ways, at any place between', () => {
    for (const { model } of [rig(), rig(-1, 2)])
      for (const way of ['up', 'down'] as const)
        for (const n of [0, 1 / 6, 0.41, 1, 1.9]) {
          const { nominal, correction, travel } = valueIn(correctionAt(model, n, way));
          expect(nominal).toBeCloseTo(0.0875 * n, 12);
          expect(travel).toBeCloseTo(truly(n, way), 10);
          expect(correction).toBeCloseTo(truly(n, way) - 0.0875 * n, 10);
        }
  });

  it('differ between the ways by the lost motion, which is why both are stated', () => {
    const { model } = rig();
    for (const n of [0, 0.5, 1.25])
      expect(correctedBy(model, n, 'down').correction - correctedBy(model, n, 'up').correction).toBeCloseTo(
        TRUTH.lost,
        10,
      );
  });

  it('refuse a place beyond the readings and a way that was not read', () => {
    const { model } = valueIn(
      calibrate(
        rigRows(0, 2).filter((r) => r.direction === 'up'),
        { nominal: 0.0875 },
      ),
    );
    expect(reasonIn(correctionAt(model, 2.1))).toMatch(/^2\.1 turns lie outside the readings, which go from 0 to 2;/);
    expect(reasonIn(correctionAt(model, Number.NaN))).toMatch(/outside the readings/);
    expect(reasonIn(correctionAt(model, 1, 'down'))).toMatch(/^No reading was taken on the way down/);
  });
});

describe('how far a correction may be off', () => {
  // JCGM 100:2008, H.3, table H.6: thermometer readings t and corrections b, fitted by b = y_1 + y_2 (t − 20 °C).
  // Published: s(y_2) = 0.00067, s = 0.0035 °C; from memory.
  it('has the slope and the scatter of the published thermometer', () => {
    const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
    const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
    // Of b, without a wave: read as a line alone, by turns a hundred times as long so that no wave can be told from whole turns.
    const rows = t.map(
      (v, i): GaugeReading => ({
        turns: turns(Math.round(v * 1000)),
        reading: mm(b[i] ?? 0),
        direction: 'up',
      }),
    );
    const { model } = valueIn(calibrate(rows, { nominal: 0.001 }));
    expect(model.waveAt).toBeUndefined();
    expect(model.scatter).toBeCloseTo(0.0035, 4);
    // Between two places 1 °C apart only the slope is open: U = k s(y_2), k = 2.32 for 9 degrees of freedom (JCGM 100, table G.2, 95.45 %).
    const U = valueIn(correctionDoubt(model, model.home + 1000, 'up', EXACT));
    expect(U / 2.32).toBeCloseTo(0.00067, 5);
    expect(correctedBy(model, model.home + 1000, 'up').travel).toBeCloseTo(0.00218, 5);
  });

  it('covers the truth as often as it says, on both ways', () => {
    const { normal } = seeded(11);
    const trials = howMany(1200, 8000);
    const asked = [
      [0, 'down'],
      [0.5, 'up'],
      [5 / 3, 'down'],
      [2, 'up'],
    ] as const;
    const held = asked.map(() => 0);
    for (let i = 0; i < trials; i++) {
      const { model } = rig(0, 2, () => 0.001 * normal());
      for (const [j, [n, way]] of asked.entries()) {
        const off = correctedBy(model, n, way).travel - truly(n, way);
        if (Math.abs(off) <= valueIn(correctionDoubt(model, n, way, EXACT))) held[j] = (held[j] ?? 0) + 1;
      }
    }
    for (const count of held)
      expect(Math.abs(count / trials - 0.9545)).toBeLessThan(3.5 * Math.sqrt((0.9545 * 0.0455) / trials));
  }, 60_000);

  it('over whole turns is the turns times the whole ± of the lead', () => {
    const { normal } = seeded(5);
    const c = rig(0, 2, () => 3e-4 * normal());
    const signed = valueIn(
      signLead({
        ...STATED,
        lead: c.lead,
        fit: c.leadError,
        freedom: c.freedom,
        turns: 2,
        nominal: 0.0875,
        tolerance: 0,
        matters: 0.003,
      }),
    );
    expect(valueIn(correctionDoubt(c.model, 2, 'up', STATED))).toBeCloseTo(2 * signed.U, 9);
  });

  it('is nought at home only', () => {
    const { model } = rig();
    expect(valueIn(correctionDoubt(model, 0, 'up', STATED))).toBe(0);
    expect(valueIn(correctionDoubt(model, 0, 'down', STATED))).toBeGreaterThan(0.5e-3);
  });
});

describe('the correction table', () => {
  const table = (c: Calibration, k = 6, most = 144) => valueIn(correctionsBySteps(c.model, k, EXACT, most));

  it('has a row for every step from home, both ways', () => {
    const { rows, every } = table(rig());
    expect(every).toBe(1);
    expect(rows.map((row) => Math.round(row.steps))).toEqual(Array.from({ length: 13 }, (_, i) => i));
    for (const row of rows)
      for (const way of ['up', 'down'] as const)
        expect(row[way]?.correction).toBeCloseTo(truly(row.turns, way) - 0.0875 * row.turns, 9);
    expect(table(rig(), 12).rows).toHaveLength(25);
    expect(table(rig(-1, 2)).rows[0]).toMatchObject({ steps: -6, turns: -1 });
  });

  it('keeps both ends where they stand between steps', () => {
    const steps = table(rig(), 5).rows.map((row) => Number(row.steps.toFixed(6)));
    expect(steps).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(table(rig(0, 7 / 6), 4).rows.map((row) => Number(row.steps.toFixed(4)))).toEqual([0, 1, 2, 3, 4, 4.6667]);
  });

  it('leaves steps out where they are more than fit, and says how many', () => {
    for (const k of [100, 1000, 997]) {
      const { rows, every } = table(rig(), k, 50);
      expect(rows.length).toBeLessThanOrEqual(50);
      expect(every).toBe(Math.ceil((2 * k) / 47));
      expect([rows[0]?.turns, rows.at(-1)?.turns]).toEqual([0, 2]);
    }
  });

  it('says nothing of a way that was not read, or whose lost motion can’t be told', () => {
    const up = valueIn(
      calibrate(
        rigRows(0, 2).filter((r) => r.direction === 'up'),
        { nominal: 0.0875 },
      ),
    );
    expect(table(up).rows.every((row) => row.up !== undefined && row.down === undefined)).toBe(true);
    const few = rigRows(0, 2).filter((r) => r.direction === 'up' || r.turns > 1.7);
    const one = valueIn(calibrate([...few.slice(0, 14)], { nominal: 0.0875 }));
    expect(one.hysteresis.determined).toBe(false);
    expect(waysTold(one.model)).toEqual(['up']);
    const down = valueIn(
      calibrate(
        rigRows(0, 2).filter((r) => r.direction === 'down'),
        { nominal: 0.0875 },
      ),
    );
    expect(waysTold(down.model)).toEqual(['down']);
  });

  it('goes to a file with an empty cell where nothing is known', () => {
    const up = valueIn(
      calibrate(
        rigRows(0, 2).filter((r) => r.direction === 'up'),
        { nominal: 0.0875 },
      ),
    );
    const { header, rows } = correctionTable(table(up).rows);
    expect(header).toHaveLength(7);
    expect(rows[6]?.slice(0, 3)).toEqual([6, 1, 87.5]);
    expect(rows[6]?.[3]).toBeCloseTo(1, 5);
    expect(rows[6]?.slice(5)).toEqual(['', '']);
    // The nominal column is read back as readings of the screw as drawn.
    expect(
      valueIn(
        parseReadings(
          toCsv(
            ['turns', 'reading (µm)'],
            rows.map((r) => [r[1] ?? '', r[2] ?? '']),
          ),
        ),
      ).rows,
    ).toHaveLength(13);
  });
});
