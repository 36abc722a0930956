/** Readings made by each law, with warmth and scatter, judged; no published table of a settling foot was found. */
import { describe, expect, it } from 'vitest';
import { fillNormal, judgeSettling, randomState, type SettlingReading, settledAt } from '../../widgets/engine/index.ts';
import { readSettlingLog } from '../../widgets/input/settling-log.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const TIMES = [0.03, 0.08, 0.25, 0.5, 1, 2, 4, 8, 12, 24, 30, 48, 72, 96, 120, 168];
const T_0 = 1 / 60;

/** Readings by a law of time, with so much a kelvin of a room that swings by a kelvin a day, and scatter. */
const made = (law: (t: number) => number, perKelvin = 0, scatter = 0.00005, seed = 3): SettlingReading[] => {
  const noise = new Float64Array(TIMES.length);
  fillNormal(valueIn(randomState(seed)), noise);
  return TIMES.map((t, i) => {
    const T = 20 + Math.sin((2 * Math.PI * t) / 24 + 1);
    return { t, z: law(t) + perKelvin * (T - 20) + scatter * (noise[i] ?? 0), T };
  });
};
const judged = (rows: readonly SettlingReading[]) => valueIn(judgeSettling(rows, T_0));
const settles = (t: number) => 0.01 - 0.002 * (1 - Math.exp(-t / 3));
const creeps = (t: number) => -0.0008 * Math.log10(1 + t / T_0);

describe('a log of readings', () => {
  it('tells settling from creep, with how much and how fast', () => {
    for (const seed of [1, 2, 3, 4]) {
      const s = judged(made(settles, 0, 0.00005, seed));
      expect([s.best.kind, s.rivals]).toEqual(['settling', []]);
      expect(s.best.amount / -0.002).toBeCloseTo(1, 1);
      expect(s.best.tau / 3).toBeGreaterThan(0.8);
      expect(s.best.tau / 3).toBeLessThan(1.25);
      expect(Math.abs(s.toCome)).toBeLessThan(0.0001);
      const c = judged(made(creeps, 0, 0.00005, seed));
      expect([c.best.kind, c.rivals]).toEqual(['creeping', []]);
      expect(c.best.amount / -0.0008).toBeCloseTo(1, 1);
      // By ten times the time, as much again as in each tenfold time before.
      expect(c.toCome / -0.0008).toBeCloseTo(1, 1);
    }
  });

  it('takes the warmth of the room out, and says how much a kelvin is', () => {
    for (const law of [settles, creeps, () => 0]) {
      const { best } = judged(made(law, 0.0005));
      expect(best.kind).toBe(law === settles ? 'settling' : law === creeps ? 'creeping' : 'still');
      const { perKelvin, half } = best.heat ?? { perKelvin: 0, half: 0 };
      expect(Math.abs(perKelvin - 0.0005)).toBeLessThan(1.5 * half);
    }
    expect(judged(made(settles)).best.heat).toBeUndefined();
  });

  it('finds nothing in what stands still, and never takes a last digit for motion', () => {
    const still = judged(TIMES.map((t, i) => ({ t, z: i % 3 === 0 ? 0.0001 : 0 })));
    expect([still.best.kind, still.best.heat]).toEqual(['still', undefined]);
    expect(still.toCome === 0 || still.rivals.length > 0).toBe(true);
    expect(judged(TIMES.map((t) => ({ t, z: 0.003 }))).best.kind).toBe('still');
  });

  it('takes the last digit of the readings for their least scatter and their least motion, a finer one for less', () => {
    // The same steps of a digit, read in tenths and in whole micrometres: what is motion at one is nothing at the other.
    const steps = [0, -1, -2, -3, -3, -4, -4, -4, -4, -4, -4, -4, -4, -4, -4, -4];
    const log = (unit: number, end: string) =>
      TIMES.map((t, i) => `${t} h; ${((steps[i] ?? 0) * unit).toFixed(end.length)}`).join('|');
    const tenths = judged(valueIn(readSettlingLog(log(0.1, '1'))));
    expect([tenths.best.kind, tenths.digit]).toEqual(['settling', expect.closeTo(1e-4, 12)]);
    const coarse = judged(valueIn(readSettlingLog(TIMES.map((t, i) => `${t} h; ${i < 1 ? 0 : -1}`).join('|'))));
    expect(coarse.digit).toBeCloseTo(1e-3, 12);
    // One reading a digit higher than all later ones is what rounding does, and no law.
    expect(coarse.best.kind).toBe('still');
    // Rounded to a digit d, a reading has a standard uncertainty of 0.29 d (JCGM 100:2008, F.2.2.1).
    const flat = (digits: number) =>
      judged(
        valueIn(readSettlingLog(TIMES.map((t, i) => `${t} h; ${(i % 5 === 0 ? 0.1 : 0).toFixed(digits)}`).join('|'))),
      );
    expect(flat(1).best.kind).toBe('still');
    expect(flat(1).best.scatter).toBeGreaterThan(0.28e-4);
  });

  it('counts its unknowns as Hurvich & Tsai do (AICc, from memory)', () => {
    // Scatter that no law of time explains: a and the scatter are its two unknowns.
    const rows = TIMES.map((t, i) => ({ t, z: [0, 0.002, -0.002, 0][i % 4] ?? 0, half: 0.00005 }));
    const { best } = judged(rows);
    const n = TIMES.length;
    const squares = best.scatter ** 2 * (n - 1);
    expect(best.kind).toBe('still');
    expect(best.AICc).toBeCloseTo(n * Math.log(squares / n) + 2 * 2 + (2 * 2 * 3) / (n - 2 - 1), 9);
  });

  it('takes warmth for nothing that stays within the last digit of its thermometer', () => {
    const rows = (T: (i: number) => string) =>
      judged(valueIn(readSettlingLog(TIMES.map((t, i) => `${t} h; ${(i % 2) * 0.5}; ${T(i)}`).join('|'))));
    expect(rows((i) => (i % 2 === 0 ? '20' : '21')).best.heat).toBeUndefined();
    expect(rows((i) => (i % 2 === 0 ? '20.0' : '21.0')).best.heat?.perKelvin).toBeCloseTo(0.0005, 6);
  });

  it('can’t tell two laws apart where warmth was not read, and says so', () => {
    // The invented log of the chapter, its temperatures left out.
    const log =
      '2 min; 0|5 min; -0.3|15 min; -0.6|30 min; -0.9|1; -0.9|2; -0.8|4; -0.6|8; -0.7|24; -1.2|30; -0.8|48; -1.2';
    const { best, rivals } = judged(valueIn(readSettlingLog(log)));
    expect([best.kind, ...rivals].sort()).toEqual(['creeping', 'settling']);
  });

  it('answers a shift of the indicator, its sign and its unit of length alike', () => {
    const rows = made(settles);
    const base = judged(rows).best;
    const moved = judged(rows.map((row) => ({ ...row, z: row.z + 1 }))).best;
    const mirrored = judged(rows.map((row) => ({ ...row, z: -row.z }))).best;
    expect([moved.kind, mirrored.kind]).toEqual([base.kind, base.kind]);
    expect(moved.amount).toBeCloseTo(base.amount, 9);
    expect(mirrored.amount).toBeCloseTo(-base.amount, 12);
    expect(settledAt(base, 0, T_0)).toBeCloseTo(base.a, 12);
  });

  it('refuses too few readings, one time only and numbers of no reading', () => {
    const rows = made(settles);
    expect(reasonIn(judgeSettling(rows.slice(0, 5), T_0))).toContain('at least 6');
    expect(
      reasonIn(
        judgeSettling(
          rows.map((row) => ({ ...row, t: 1 })),
          T_0,
        ),
      ),
    ).toContain('read again later');
    expect(
      reasonIn(
        judgeSettling(
          rows.map((row) => ({ ...row, z: Number.NaN })),
          T_0,
        ),
      ),
    ).toContain('Row 1');
    expect(
      reasonIn(
        judgeSettling(
          rows.map((row) => ({ ...row, t: -1 })),
          T_0,
        ),
      ),
    ).toContain('before the setting');
  });
});

describe('readSettlingLog', () => {
  it('reads rows in any order, with units or without', () => {
    const rows = valueIn(readSettlingLog('1 d; -1,2 µm; 20.6 °C | 30 min; -0.5; 20'));
    expect(rows).toEqual([
      { t: 0.5, z: expect.closeTo(-0.0005, 12), half: 0.00005, T: 20, halfT: 0.5 },
      { t: 24, z: expect.closeTo(-0.0012, 12), half: 0.00005, T: 20.6, halfT: 0.05 },
    ]);
    expect(valueIn(readSettlingLog('2; 1\n3; 2'))).toEqual([
      { t: 2, z: 0.001, half: 0.0005 },
      { t: 3, z: 0.002, half: 0.0005 },
    ]);
  });

  it('refuses what it can’t read, by its row', () => {
    expect(reasonIn(readSettlingLog('1 h; 2\n5'))).toContain('Row 2');
    expect(reasonIn(readSettlingLog('soon; 2'))).toContain('time');
    expect(reasonIn(readSettlingLog('1 h; 2; warm'))).toContain('temperature');
    expect(reasonIn(readSettlingLog('1 h; 2; 20 | 2 h; 2'))).toContain('in every row');
  });
});
