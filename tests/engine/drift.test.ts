/** Drift: the coefficients against their sources, growth, warming and creep, and times with their unit. */

import { describe, expect, it } from 'vitest';
import {
  hours,
  kelvins,
  logCreep,
  mm,
  perKelvin,
  THERMAL_MATERIALS,
  thermalGrowth,
  thermalMaterial,
  warming,
} from '../../widgets/engine/index.ts';
import { readTime } from '../../widgets/input/quantity.ts';
import { mechanicsRow } from '../support/mechanics.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('the table of materials', () => {
  it('carries the published coefficients where one was read', () => {
    const row = mechanicsRow('h5-thermal');
    for (const name of ['steel', 'aluminium', 'brass', 'granite'] as const) {
      const range = row.fact(name) as [number, number];
      const { alpha } = valueIn(thermalMaterial(name));
      expect(alpha * 1e6, name).toBeGreaterThanOrEqual(range[0] - 1e-9);
      expect(alpha * 1e6, name).toBeLessThanOrEqual(range[1] + 1e-9);
    }
    expect(valueIn(thermalMaterial('silicon')).alpha * 1e6).toBeCloseTo(row.fact('silicon') as number, 9);
    expect(valueIn(thermalMaterial('printed PLA')).alpha * 1e6).toBeCloseTo(
      mechanicsRow('h6-thermal-pla').fact('alpha_1e-6_per_K') as number,
      9,
    );
  });

  it('says of each value where it comes from, and marks as read only what was', () => {
    for (const m of THERMAL_MATERIALS) {
      expect(m.source.length, m.name).toBeGreaterThan(5);
      expect(m.alpha, m.name).toBeGreaterThanOrEqual(m.range[0]);
      expect(m.alpha, m.name).toBeLessThanOrEqual(m.range[1]);
    }
    expect(THERMAL_MATERIALS.filter((m) => m.standing === 'source').map((m) => m.name)).toEqual([
      'steel',
      'aluminium',
      'silicon',
    ]);
    // Of these only the plastic creeps at room temperature.
    expect(THERMAL_MATERIALS.filter((m) => m.creeps).map((m) => m.name)).toEqual(['printed PLA']);
    expect(reasonIn(thermalMaterial('mithril'))).toContain('not in the table: use steel, aluminium, silicon, brass,');
  });
});

describe('the first moments', () => {
  it('of warming and creep go in proportion to the time, to the last digits', () => {
    const t = hours(1e-6);
    expect(valueIn(warming.of({ Delta_Tw: kelvins(1), t, tau_w: hours(1e5) })).Delta_T / 1e-11).toBeCloseTo(1, 10);
    expect((valueIn(logCreep.of({ c_d: mm(1), t, t_0: hours(1e5) })).z_d * Math.LN10) / 1e-11).toBeCloseTo(1, 10);
  });
});

describe('growth', () => {
  it('of a 40 mm steel jack is 0.46 µm a kelvin, half a flat of the Fine foot', () => {
    const { alpha } = valueIn(thermalMaterial('steel'));
    const { Delta_l } = valueIn(thermalGrowth.of({ alpha_T: perKelvin(alpha), l: mm(40), Delta_T: kelvins(1) }));
    expect((Delta_l * 1e3).toFixed(2)).toBe('0.46');
    // Fine foot, M4×0.7 with 8-36: 0.926 µm a flat.
    expect(Delta_l / (Math.abs(25.4 / 36 - 0.7) / 6)).toBeCloseTo(0.46 / 0.926, 3);
  });

  it('follows the warming, 63 % of the way after one warming time', () => {
    const at = (t: number) => valueIn(warming.of({ Delta_Tw: kelvins(5), t: hours(t), tau_w: hours(0.5) })).Delta_T;
    expect(at(0)).toBe(0);
    expect(at(0.5) / 5).toBeCloseTo(0.632, 3);
    expect(at(50)).toBeCloseTo(5, 12);
    // The slope is what is still missing over the warming time.
    expect((at(0.3 + 1e-6) - at(0.3 - 1e-6)) / 2e-6).toBeCloseTo((5 - at(0.3)) / 0.5, 5);
  });
});

describe('creep', () => {
  it('goes as far in each tenfold time as in the one before', () => {
    const at = (t: number) => valueIn(logCreep.of({ c_d: mm(0.004), t: hours(t), t_0: hours(1) })).z_d;
    expect(at(0)).toBe(0);
    expect(at(9)).toBeCloseTo(0.004, 15);
    expect(at(999)).toBeCloseTo(0.012, 15);
    expect(reasonIn(logCreep.of({ c_d: mm(0.004), t: hours(5), t_0: hours(0) }))).toContain('Starting time');
  });

  it('refuses a time without its unit and reads one with it', () => {
    for (const bare of ['24', '1.5', '1,5', '.5', '-3', '−3', '1e3', '1e-3', '2.5E12', '1 1/2', '90/60', '24.'])
      expect(reasonIn(readTime(bare))).toBe(
        `Read “${bare}” without a unit of time, and the law needs one: write “${bare} h”, min, s or d.`,
      );
    expect(reasonIn(readTime(' 24 '))).toContain('write “24 h”');
    expect(valueIn(readTime('24 h'))).toBe(24);
    expect(valueIn(readTime('90 min'))).toBeCloseTo(1.5, 12);
    expect(valueIn(readTime('2 days'))).toBe(48);
    expect(valueIn(readTime(' 1 1/2 h '))).toBe(1.5);
    expect(valueIn(readTime('1e2h'))).toBe(100);
    expect(valueIn(readTime('36 s'))).toBeCloseTo(0.01, 12);
    expect(reasonIn(readTime('24 mm'))).toContain('24 mm');
    expect(reasonIn(readTime('soon'))).toContain('not a number');
    expect(reasonIn(readTime('-3 h'))).toContain('Time');
  });
});
