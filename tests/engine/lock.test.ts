/** The lock: slack and wind-up, against points on a circle and the wind-up relation of the pair. */
import { describe, expect, it } from 'vitest';
import {
  lockError,
  lockSlop,
  lockSlopMotion,
  lockStiffness,
  lockWindUp,
  mm,
  newtonMillimetres,
  newtons,
  plain,
  rad,
  springsAtMost,
  stringStiffness,
  stringTorque,
  windUp,
} from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('slack of a key', () => {
  it('turns the carried part by arc over radius, within the error stated for a pin that moves through a chord', () => {
    // g/r and how far short, from the header of lock.ts
    const STATED = [
      [0.05, 0.0002],
      [0.1, 0.0005],
      [0.2, 0.0018],
      [0.5, 0.0107],
    ] as const;
    for (const [ratio, short] of STATED) {
      const { psi } = valueIn(lockSlop.of({ g_k: mm(ratio * 5), r_k: mm(5) }));
      const chord = 2 * Math.asin(ratio / 2);
      expect(psi).toBeLessThan(chord);
      expect(psi).toBeGreaterThan(chord * (1 - short));
    }
  });

  it('moves the tip by the lead of thread C, as wind-up does', () => {
    const { psi } = valueIn(lockSlop.of({ g_k: mm(0.05), r_k: mm(6) }));
    const byWindUp = valueIn(windUp.of({ h_C: plain(1), L_C: mm(1.25), psi })).z_c;
    expect(valueIn(lockSlopMotion.of({ L_C: mm(1.25), g_k: mm(0.05), r_k: mm(6) })).z_k).toBeCloseTo(byWindUp, 15);
    // 1° on M8×1.25 is 3.5 µm.
    expect((valueIn(windUp.of({ h_C: plain(1), L_C: mm(1.25), psi: rad(Math.PI / 180) })).z_c * 1e3).toFixed(1)).toBe(
      '3.5',
    );
  });

  it('refuses a gap above half the radius', () => {
    expect(reasonIn(lockSlop.of({ g_k: mm(3), r_k: mm(5) }))).toMatch(/3 mm at a radius of 5 mm.*half the radius/);
    expect(lockSlop.of({ g_k: mm(2.5), r_k: mm(5) }).ok).toBe(true);
    expect(reasonIn(lockSlopMotion.of({ L_C: mm(1.25), g_k: mm(3), r_k: mm(5) }))).toContain('holds nothing');
  });
});

describe('lockError', () => {
  const springy = {
    L_C: 1.25,
    h_C: 1,
    Delta: -0.25,
    clockwise: -160,
    anticlockwise: 80,
    kappa: 5000,
    gap: 0.02,
    radius: 8,
  } as const;

  it('adds the slack to the wind-up from one sense to the other', () => {
    const error = valueIn(lockError(springy));
    expect(error.swing).toBeCloseTo(240 / 5000 + 0.02 / 8, 12);
    expect(error.shift).toBeCloseTo((1.25 / (2 * Math.PI)) * error.swing, 12);
    expect(error.turns).toBeCloseTo(error.shift / 0.25, 12);
    expect(error.clockwise).toBeCloseTo((-1.25 * 160) / 5000 / (2 * Math.PI), 12);
    expect(error.anticlockwise).toBeCloseTo((1.25 * 80) / 5000 / (2 * Math.PI), 12);
  });

  it('changes sign with the hand of thread C', () => {
    const left = valueIn(lockError({ ...springy, h_C: -1 }));
    const right = valueIn(lockError(springy));
    expect(left.clockwise).toBeCloseTo(-right.clockwise, 15);
    expect(left.shift).toBeCloseTo(right.shift, 15);
  });

  it('swings by its gap alone where it is all but rigid', () => {
    const rigid = valueIn(lockError({ ...springy, kappa: 1e9 }));
    expect(rigid.swing).toBeCloseTo(0.02 / 8, 6);
    // 0.0025 rad on M8×1.25 is half a micrometre, and 0.7° of the hand at 0.25 mm a turn.
    expect(rigid.shift * 1e3).toBeCloseTo(0.497, 3);
    expect(rigid.turns * 360).toBeCloseTo(0.716, 2);
  });

  it('refuses each number out of bounds by its name', () => {
    for (const [wrong, field] of [
      [{ L_C: 0 }, 'L_C'],
      [{ h_C: 0 as 1 }, 'h_C'],
      [{ Delta: 121 }, 'Delta'],
      [{ kappa: 0 }, 'kappa'],
      [{ gap: -0.01 }, 'g_k'],
      [{ radius: 0 }, 'r_k'],
      [{ clockwise: Number.NaN }, 'M_L'],
      [{ anticlockwise: 1.01e7 }, 'M_L'],
    ] as const)
      expect(lockError({ ...springy, ...wrong }), field).toMatchObject({ ok: false, field });
    expect(reasonIn(lockError({ ...springy, clockwise: -16000 }))).toContain('more than half a turn');
  });

  it('leaves out the slack where the key is pressed to the same side both ways', () => {
    expect(valueIn(lockError({ ...springy, clockwise: 40 })).swing).toBeCloseTo(40 / 5000, 12);
  });

  it('refuses a lock that winds up by more than half a turn, equal leads and a missing stiffness', () => {
    expect(reasonIn(lockError({ ...springy, kappa: 10 }))).toContain('more than half a turn');
    expect(lockWindUp.of({ M_L: newtonMillimetres(-3.1), kappa: newtonMillimetres(1) }).ok).toBe(true);
    expect(lockWindUp.of({ M_L: newtonMillimetres(-3.2), kappa: newtonMillimetres(1) }).ok).toBe(false);
    expect(reasonIn(lockError({ ...springy, Delta: 0 }))).toContain('leads are equal');
    expect(reasonIn(lockError({ ...springy, kappa: 0 }))).toContain('Stiffness of the lock');
    expect(reasonIn(lockError({ ...springy, anticlockwise: Number.NaN }))).toContain('not a number');
    expect(valueIn(lockWindUp.of({ M_L: newtonMillimetres(-50), kappa: newtonMillimetres(1000) })).psi).toBe(-0.05);
  });
});

describe('stretched springs as the lock', () => {
  const F = 30;
  const r = 15;
  const l = 30;
  /** The work that a steady pull F does as its two ends, at the same radius, part by a turn: F times the change of length, in points of space. */
  const work = (psi: number) => {
    const [low, high] = [
      [r, 0, 0],
      [r * Math.cos(psi), r * Math.sin(psi), l],
    ] as const;
    return F * Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
  };
  const torque = (psi_f: number) =>
    valueIn(stringTorque.of({ N_f: plain(2), F_s: newtons(F / 2), r_k: mm(r), l_f: mm(l), psi_f: rad(psi_f) })).M_L;
  const small = () => {
    const { k_g } = valueIn(stringStiffness.of({ N_f: plain(2), F_s: newtons(F / 2), l_f: mm(l) }));
    return valueIn(lockStiffness.of({ k_g, r_k: mm(r) })).kappa;
  };

  it('resist by the slope of that work, at any angle up to half a turn', () => {
    const e = 1e-5;
    for (const psi of [-3, -0.5, 0.01, 0.37, 1, 2, 3.1])
      expect(torque(psi)).toBeCloseTo((work(psi + e) - work(psi - e)) / (2 * e), 4);
    expect(torque(0)).toBe(0);
  });

  it('are F r²/l a radian for a small turn, and short of it by the shares stated in lock.ts', () => {
    expect(small()).toBe(225);
    expect(torque(1e-4) / 1e-4).toBeCloseTo(225, 4);
    const deg = Math.PI / 180;
    // r/l = 0.5; the header of lock.ts states these.
    for (const [degrees, short] of [
      [5, 0.002],
      [10, 0.009],
      [20, 0.035],
      [40, 0.13],
    ] as const)
      expect(Math.abs(1 - torque(degrees * deg) / (small() * degrees * deg) - short)).toBeLessThan(0.0012);
  });

  it('hold at most their whole pull across their radius, and come near it where they are short', () => {
    const { M_L: most } = valueIn(springsAtMost.of({ N_f: plain(2), F_s: newtons(F / 2), r_k: mm(r) }));
    expect(most).toBe(F * r);
    for (const psi of [0.1, 0.5, 1, 1.5, 2, 3]) expect(Math.abs(torque(psi))).toBeLessThan(most);
    const short = valueIn(
      stringTorque.of({ N_f: plain(2), F_s: newtons(F / 2), r_k: mm(r), l_f: mm(0.1), psi_f: rad(0.1) }),
    ).M_L;
    expect(short / most).toBeGreaterThan(0.99);
  });

  it('hold nothing without a pull', () => {
    expect(reasonIn(stringStiffness.of({ N_f: plain(2), F_s: newtons(0), l_f: mm(l) }))).toContain('above 0 N');
    expect(
      reasonIn(stringTorque.of({ N_f: plain(2), F_s: newtons(-1), r_k: mm(r), l_f: mm(l), psi_f: rad(0.1) })),
    ).toContain('above 0 N');
  });
});
