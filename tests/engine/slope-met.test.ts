/** The pair as two slopes, against the published differential jack and against the pair's effort worked thread by thread. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  diameters,
  type EffortThread,
  effort,
  evenFriction,
  loadForTorque,
  loweringTorque,
  mm,
  newtonMillimetres,
  newtons,
  pairEffort,
  plain,
  plainEffort,
  rad,
  raisingTorque,
  slopeMetA,
  slopeMetC,
} from '../../widgets/engine/index.ts';
import { mechanicsRow } from '../support/mechanics.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const metric = (d: number, P: number, mu: number, h: 1 | -1 = 1): EffortThread => ({
  h,
  L: P,
  d2: diameters({ d: mm(d), P: mm(P) }).d2,
  mu,
});

const slopes = (A: EffortThread, C: EffortThread) => {
  const Delta = mm(C.h * C.L - A.h * A.L);
  return {
    zeta_A: valueIn(slopeMetA.of({ h_A: plain(A.h), Delta, L_A: mm(A.L), d_2A: mm(A.d2) })).zeta_A,
    zeta_C: valueIn(slopeMetC.of({ h_C: plain(C.h), Delta, L_C: mm(C.L), d_2C: mm(C.d2) })).zeta_C,
  };
};

const anyThread = fc
  .record({ d: fc.integer({ min: 3, max: 40 }), lead: fc.integer({ min: 3, max: 40 }), h: fc.constantFrom(1, -1) })
  .map(({ d, lead, h }): EffortThread => ({ h: h as 1 | -1, L: lead / 10, d2: d, mu: 0 }));

describe('the slopes a pair meets', () => {
  it('are uphill for the larger lead and downhill for the smaller, raising, with like hands', () => {
    const stop = slopes(metric(12, 1.5, 0), metric(8, 1.25, 0));
    expect(stop.zeta_A).toBeGreaterThan(0);
    expect(stop.zeta_C).toBeLessThan(0);
    const turned = slopes(metric(8, 1.25, 0), metric(12, 1.5, 0));
    expect(turned.zeta_A).toBe(stop.zeta_C);
    expect(turned.zeta_C).toBe(stop.zeta_A);
  });

  it('are both uphill with unlike hands, whichever of the two is left-hand', () => {
    for (const [a, c] of [
      [-1, 1],
      [1, -1],
    ] as const) {
      const { zeta_A, zeta_C } = slopes(metric(10, 1.5, 0, a), metric(8, 1.25, 0, c));
      expect(zeta_A).toBeGreaterThan(0);
      expect(zeta_C).toBeGreaterThan(0);
    }
  });

  it('refuse equal leads, for which there is no uphill', () => {
    expect(reasonIn(slopeMetA.of({ h_A: plain(1), Delta: mm(0), L_A: mm(1), d_2A: mm(9) }))).toContain(
      'leads are equal',
    );
    expect(reasonIn(slopeMetC.of({ h_C: plain(1), Delta: mm(0), L_C: mm(1), d_2C: mm(9) }))).toContain(
      'leads are equal',
    );
  });
});

describe('the torque from slopes', () => {
  it('is that of the published differential jack, per newton of load', () => {
    const row = mechanicsRow('a1-differential-jack-16-12');
    const mean = (pitch: number) => row.input('outside_diameter_mm') - pitch / 2;
    const [upper, lower] = [row.input('pitch_upper_mm'), row.input('pitch_lower_mm')];
    const d_2A = mm(mean(upper));
    const d_2C = mm(mean(lower));
    const Delta = mm(lower - upper);
    const { zeta_A } = valueIn(slopeMetA.of({ h_A: plain(1), Delta, L_A: mm(upper), d_2A }));
    const { zeta_C } = valueIn(slopeMetC.of({ h_C: plain(1), Delta, L_C: mm(lower), d_2C }));
    const rho = rad(Math.atan(row.input('mu')));
    const { M } = valueIn(effort.of({ F: newtons(1), d_2A, zeta_A, d_2C, zeta_C, rho }));
    const { value, within } = row.value('T_per_W');
    expect(Math.abs(M - value)).toBeLessThan(within);
  });

  it('agrees with the effort of the pair, both ways, for any two threads, hands and frictions', () => {
    fc.assert(
      fc.property(anyThread, anyThread, fc.integer({ min: 0, max: 60 }), (a, c, hundredths) => {
        const mu = hundredths / 100;
        const [A, C] = [
          { ...a, mu },
          { ...c, mu },
        ];
        const pair = pairEffort({ A, C, load: 150 });
        if (!pair.ok) return;
        const { zeta_A, zeta_C } = slopes(A, C);
        const rho = rad(Math.atan(mu / Math.cos(Math.PI / 6)));
        const F = newtons(150);
        const [d_2A, d_2C] = [mm(A.d2), mm(C.d2)];
        const whole = effort.of({ F, d_2A, zeta_A, d_2C, zeta_C, rho });
        if (!whole.ok) return;
        const { against, along } = pair.value;
        const size = Math.abs(against.A.torque) + Math.abs(against.C.torque);
        expect(Math.abs(whole.value.M - against.torque)).toBeLessThan(1e-9 * size);
        const up = valueIn(raisingTorque.of({ F, d_2: d_2A, rho, zeta: zeta_A })).M_r;
        expect(Math.abs(up - against.A.torque)).toBeLessThan(1e-9 * size);
        const down = loweringTorque.of({ F, d_2: d_2C, rho, zeta: zeta_C });
        if (down.ok) expect(Math.abs(down.value.M_l - along.C.torque)).toBeLessThan(1e-9 * size);
      }),
    );
  });

  it('gives the load of any torque from the torque of one load, as the engine’s effort does', () => {
    const { zeta_A, zeta_C } = slopes(metric(12, 1.5, 0.15), metric(8, 1.25, 0.15));
    const given = { d_2A: mm(11.0257), zeta_A, d_2C: mm(7.1881), zeta_C, rho: rad(0.1715) };
    const { M } = valueIn(effort.of({ F: newtons(200), ...given }));
    const M_h = newtonMillimetres(2000);
    const { F_w } = valueIn(loadForTorque.of({ F: newtons(200), M, M_h }));
    expect(valueIn(effort.of({ F: newtons(F_w), ...given })).M).toBeCloseTo(2000, 9);
    expect(reasonIn(loadForTorque.of({ F: newtons(200), M, M_h: newtonMillimetres(-1) }))).toContain('below zero');
    expect(valueIn(loadForTorque.of({ F: newtons(200), M, M_h: newtonMillimetres(0) })).F_w).toBe(0);
    expect(reasonIn(loadForTorque.of({ F: newtons(200), M: newtonMillimetres(0), M_h }))).toContain(
      'says nothing about other loads',
    );
  });

  it('refuses a thread that jams', () => {
    const given = { F: newtons(10), d_2: mm(8), rho: rad(0.8) };
    expect(reasonIn(raisingTorque.of({ ...given, zeta: rad(0.8) }))).toContain('the thread jams');
    expect(reasonIn(loweringTorque.of({ ...given, zeta: rad(-0.8) }))).toContain('the thread jams');
    expect(
      reasonIn(
        effort.of({ F: newtons(1), d_2A: mm(8), zeta_A: rad(0.8), d_2C: mm(8), zeta_C: rad(0.1), rho: rad(0.8) }),
      ),
    ).toContain('the thread jams');
    // Either thread of a pair, and one that runs down so steeply that it stands along the axis.
    const pair = { F: newtons(1), d_2A: mm(8), d_2C: mm(8), zeta_A: rad(0.1), zeta_C: rad(0.1) };
    expect(effort.of({ ...pair, rho: rad(0.8) }).ok).toBe(true);
    expect(reasonIn(effort.of({ ...pair, rho: rad(0.8), zeta_C: rad(0.8) }))).toContain('the thread jams');
    expect(reasonIn(effort.of({ ...pair, rho: rad(0), zeta_A: rad(-1.56) }))).toContain('the thread jams');
    expect(reasonIn(raisingTorque.of({ ...given, rho: rad(0), zeta: rad(-1.56) }))).toContain('the thread jams');
    expect(reasonIn(loweringTorque.of({ ...given, rho: rad(0), zeta: rad(1.56) }))).toContain('the thread jams');
    expect(raisingTorque.of({ ...given, zeta: rad(-1.5) }).ok).toBe(true);
    expect(loweringTorque.of({ ...given, zeta: rad(1.5) }).ok).toBe(true);
  });
});

describe('the friction at which pair and plain screw cost the same', () => {
  it('is where the two torques meet, the pair lighter below it and heavier above', () => {
    const [A, C] = [metric(12, 1.5, 0), metric(8, 1.25, 0)];
    const found = valueIn(evenFriction(A, C, C));
    expect(found.lighterWithout).toBe(true);
    const { mu } = found;
    if (mu === undefined) throw new Error('no crossing');
    const excess = (at: number) =>
      valueIn(pairEffort({ A: { ...A, mu: at }, C: { ...C, mu: at }, load: 200 })).against.torque -
      valueIn(plainEffort({ ...C, mu: at }, 200)).against;
    expect(Math.abs(excess(mu))).toBeLessThan(1e-9);
    expect(excess(mu * 0.9)).toBeLessThan(0);
    expect(excess(mu * 1.1)).toBeGreaterThan(0);
    // By small angles: d2A (t + l_A) = 2 d2C l_C with t = tan ρ, l = tan λ, so t = L_C·2/(π d2A) − L_A/(π d2A).
    const small = ((2 * 1.25 - 1.5) / (Math.PI * A.d2)) * Math.cos(Math.PI / 6);
    expect(Math.abs(mu / small - 1)).toBeLessThan(0.01);
  });

  it('does not exist where unlike hands make the pair heavier from the start', () => {
    const C = metric(8, 1.25, 0);
    expect(valueIn(evenFriction(metric(12, 1.5, 0, -1), C, C))).toEqual({ mu: undefined, lighterWithout: false });
  });

  it('is found where the pair starts heavier, against a plain screw so thick that its friction weighs more', () => {
    // By the formulas of effort.ts at µ = 0: F·2/2π for the pair, F·1/2π for the plain screw.
    const [A, C] = [metric(6, 1, 0, -1), metric(6, 1, 0)];
    const plainScrew = metric(100, 1, 0);
    const { mu, lighterWithout } = valueIn(evenFriction(A, C, plainScrew));
    expect(lighterWithout).toBe(false);
    if (mu === undefined) throw new Error('no crossing');
    const torques = (at: number) =>
      valueIn(pairEffort({ A: { ...A, mu: at }, C: { ...C, mu: at }, load: 1 })).against.torque -
      valueIn(plainEffort({ ...plainScrew, mu: at }, 1)).against;
    expect(Math.abs(torques(mu))).toBeLessThan(1e-9);
    expect(torques(mu / 2)).toBeGreaterThan(0);
  });

  it('is looked for below the friction at which a steep thread jams', () => {
    // Leads of 30 and 29 mm on a pitch diameter of 6 mm climb at 58° and 57°: they jam from a friction angle of 31°.
    const steep = (L: number): EffortThread => ({ h: 1, L, d2: 6, mu: 0 });
    const plainScrew = metric(8, 1.25, 0);
    expect(pairEffort({ A: { ...steep(30), mu: 1 }, C: { ...steep(29), mu: 1 }, load: 1 }).ok).toBe(false);
    const { mu, lighterWithout } = valueIn(evenFriction(steep(30), steep(29), plainScrew));
    expect(lighterWithout).toBe(true);
    expect(mu).toBeGreaterThan(0);
    expect(mu).toBeLessThan(0.1);
  });

  it('refuses equal leads', () => {
    const C = metric(8, 1.25, 0);
    expect(reasonIn(evenFriction(metric(10, 1.25, 0), C, C))).toContain('leads are equal');
  });
});
