/** Play of one thread and of two, by moving drawn profiles until they touch and against published limits of size. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bad } from '../../widgets/engine/index.ts';
import { mm, newtons, plain, rad, turns } from '../../widgets/engine/index.ts';
import {
  axialPlay,
  axialPlayA,
  axialPlayC,
  flankForces,
  motionAfterReversal,
  offCentrePlay,
  pinTilt,
  pitchClearance,
  playAfterCoat,
  radialFloat,
  smallAngle,
  stepsLost,
  tilt,
  tipFloat,
  turnsLost,
} from '../../widgets/engine/play/play.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import limits from '../reference/thread-limits.json' with { type: 'json' };
import { reasonIn } from '../support/results.ts';

const value = <T>(result: { ok: true; value: T } | Bad): T => {
  if (!result.ok) throw new Error(reasonOf(result));
  return result.value;
};

const play = (c: number) => value(axialPlay.of({ c: mm(c) })).j;

/** Basic 60° profile of ISO 68-1 as a chain of corners over one pitch: [along the axis, radius], ridge at nought. */
const profile = (P: number, pitchRadius: number): [number, number][] => {
  const H = (Math.sqrt(3) / 2) * P;
  const crest = pitchRadius + (3 / 8) * H;
  const root = pitchRadius - H / 4;
  return [
    [-P / 2, root],
    [(-3 / 8) * P, root],
    [-P / 16, crest],
    [P / 16, crest],
    [(3 / 8) * P, root],
    [P / 2, root],
  ];
};

const radiusAt = (corners: [number, number][], z: number, P: number): number => {
  const x = z - P * Math.round(z / P);
  for (let i = 1; i < corners.length; i++) {
    const [z0, r0] = corners[i - 1] ?? [0, 0];
    const [z1, r1] = corners[i] ?? [0, 0];
    if (x <= z1) return r0 + ((r1 - r0) * (x - z0)) / (z1 - z0);
  }
  return Number.NaN;
};

const bisect = (free: (x: number) => boolean, most: number): number => {
  let low = 0;
  let high = most;
  for (let i = 0; i < 60; i++) {
    const mid = (low + high) / 2;
    if (free(mid)) low = mid;
    else high = mid;
  }
  return low;
};

describe('axial-play', () => {
  it('is the distance a drawn 60° profile travels in its nut from one flank to the other', () => {
    for (const [P, c] of [
      [1.5, 0.032],
      [1.5, 0.344],
      [0.7, 0.1],
      [25.4 / 16, 0.29],
    ] as const) {
      const screw = profile(P, 4);
      const nut = profile(P, 4 + c / 2);
      // Straight pieces touch first at a corner of one or the other.
      const free = (shift: number) =>
        screw.every(([z, r]) => radiusAt(nut, z + shift, P) >= r) &&
        nut.every(([z, r]) => radiusAt(screw, z - shift, P) <= r);
      const up = bisect(free, P / 4);
      const down = bisect((s) => free(-s), P / 4);
      expect(up + down, `P ${P}, c ${c}`).toBeCloseTo(play(c), 9);
    }
  });

  it('is 0.057735 mm for a clearance of 0.1 mm', () => {
    // Derived value, common practice; kept for its digits.
    expect(Math.abs(play(0.1) - 0.057735)).toBeLessThan(0.5e-6);
  });

  it('of threads A and C is the same relation under their own names', () => {
    expect(value(axialPlayA.of({ c_A: mm(0.2) })).j_A).toBe(play(0.2));
    expect(value(axialPlayC.of({ c_C: mm(0.2) })).j_C).toBe(play(0.2));
  });

  it('is nought for a nut that fits exactly', () => expect(play(0)).toBe(0));
});

describe('interference', () => {
  it('is refused and called by its name wherever a clearance is taken', () => {
    const c = mm(-0.01);
    const l_e = mm(10);
    const said =
      'has a clearance of −0.01 mm, which is interference: the screw is larger than the nut and does not go in, so there is no play; give a clearance of 0 mm or more.';
    for (const [result, who] of [
      [axialPlay.of({ c }), 'The thread'],
      [radialFloat.of({ c }), 'The thread'],
      [tilt.of({ c, l_e, d: mm(10) }), 'The thread'],
      [pinTilt.of({ c, l_e }), 'The thread'],
      [axialPlayA.of({ c_A: c }), 'Thread A'],
      [axialPlayC.of({ c_C: c }), 'Thread C'],
      [pitchClearance.of({ D_2: mm(9), d_2: mm(9.01) }), 'The thread'],
    ] as const) {
      expect(result.ok).toBe(false);
      if (!result.ok) expect(reasonOf(result)).toBe(`${who} ${said}`);
    }
  });
});

describe('tilt and pin-tilt', () => {
  it('is no small angle where much clearance meets little thread, and is refused there', () => {
    const [c, l_e] = [mm(1), mm(1)];
    expect(reasonIn(pinTilt.of({ c, l_e }))).toContain('come out as 57.3°, which is not a small angle');
    expect(reasonIn(tilt.of({ c, l_e, d: mm(0.5) }))).toContain('come out as 30.7°');
    expect(tilt.of({ c, l_e, d: mm(1) }).ok).toBe(true);
    // Half a radian is the most: a clearance of 1 mm over 2 mm.
    expect(value(pinTilt.of({ c, l_e: mm(2) })).tau).toBe(0.5);
  });
});

describe('play from published limits of size', () => {
  // tests/reference/thread-limits.json, recalled from the published tables (from memory).
  const iso = limits.iso.rows;
  const unified = limits.unified.rows;
  const range = (r: { d2min: number; d2max: number; D2min: number; D2max: number }, unit: number) =>
    [
      [r.D2min, r.d2max],
      [r.D2max, r.d2min],
    ].map(([D = 0, d = 0]) => play(value(pitchClearance.of({ D_2: mm(D * unit), d_2: mm(d * unit) })).c));
  const both = (a: number[], b: number[]) => [0, 1].map((i) => (a[i] ?? 0) + (b[i] ?? 0));
  const inMicrons = (x: number[]) => x.map((v) => Math.round(v * 1e4) / 10);

  // Worked by hand from the rows: (D2min − d2max)·0.57735 and (D2max − d2min)·0.57735.
  it('M10×1.5 6g/6H spans 18.5 to 198.6 µm', () => expect(inMicrons(range(iso['M10x1.5'], 1))).toEqual([18.5, 198.6]));
  it('3/8-16 2A/2B spans 19.1 to 167.2 µm', () =>
    expect(inMicrons(range(unified['3/8-16'], 25.4))).toEqual([19.1, 167.2]));
  it('M8×1.25 6g/6H spans 16.2 to 176.7 µm', () => expect(inMicrons(range(iso['M8x1.25'], 1))).toEqual([16.2, 176.7]));

  it('M10×1.5 with 3/8-16 loses 0.43 to 4.18 turns of 87.5 µm, 37.5 to 365.8 µm in all', () => {
    const total = both(range(iso['M10x1.5'], 1), range(unified['3/8-16'], 25.4));
    expect(inMicrons(total)).toEqual([37.5, 365.8]);
    const lost = total.map((j) => value(turnsLost.of({ j_A: mm(j), j_C: mm(0), Delta: mm(0.0875) })).n_j);
    expect(lost.map((n) => Math.round(n * 100) / 100)).toEqual([0.43, 4.18]);
  });

  it('M4×0.7 with 8-36 loses 4.4 to 42.9 turns of 5.556 µm', () => {
    const total = both(range(iso['M4x0.7'], 1), range(unified['8-36'], 25.4));
    const Delta = mm(25.4 / 36 - 0.7);
    const lost = total.map((j) => value(turnsLost.of({ j_A: mm(0), j_C: mm(j), Delta })).n_j);
    expect(lost.map((n) => Math.round(n * 10) / 10)).toEqual([4.4, 42.9]);
  });
});

describe('radial-float', () => {
  it('is the distance a drawn profile travels sideways, both sides together', () => {
    const P = 1.5;
    const c = 0.1;
    const screw = profile(P, 4);
    const nut = profile(P, 4 + c / 2);
    const free = (shift: number) => screw.every(([z, r]) => radiusAt(nut, z, P) >= r + shift - 1e-12);
    expect(2 * bisect(free, 1)).toBeCloseTo(value(radialFloat.of({ c: mm(c) })).r_f, 9);
  });
});

/**
 * Tilts a sampled 60° screw thread about the middle of its engagement until a point of it enters the nut: the
 * whole geometry in space, with no small-angle argument. Ridge half-width P/4 at the pitch radius.
 */
const tiltUntilTouch = (P: number, d: number, c: number, length: number): number => {
  const d2 = d - ((3 * Math.sqrt(3)) / 8) * P;
  const inner = d / 2 - ((5 / 8) * Math.sqrt(3) * P) / 2;
  const slope = 1 / Math.sqrt(3);
  const last = (Math.PI * length) / P;
  const points: [number, number, number][] = [];
  for (let theta = -last; theta <= last; theta += Math.PI / 180)
    for (const r of [inner, d / 2])
      for (const side of [-1, 1]) {
        const z = (P * theta) / (2 * Math.PI) + side * (P / 4 - (r - d2 / 2) * slope);
        points.push([r * Math.cos(theta), r * Math.sin(theta), z]);
      }
  const free = (phi: number) =>
    points.every(([x, y, z]) => {
      const X = x * Math.cos(phi) + z * Math.sin(phi);
      const Z = z * Math.cos(phi) - x * Math.sin(phi);
      const away = Z - (P * Math.atan2(y, X)) / (2 * Math.PI);
      const half = P / 4 - (Math.hypot(X, y) - d2 / 2 - c / 2) * slope;
      return Math.abs(away - P * Math.round(away / P)) <= half;
    });
  return bisect(free, 0.1);
};

describe('tilt', () => {
  it('is where a sampled thread tilted in space meets its nut, to a pitch of engaged length', () => {
    for (const [P, d, c, length] of [
      [1.5, 10, 0.05, 10],
      [1.5, 10, 0.05, 30],
      [0.7, 4, 0.03, 4],
      [1.25, 8, 0.1, 5],
    ] as const) {
      const touched = tiltUntilTouch(P, d, c, length);
      const at = (l: number) => value(tilt.of({ c: mm(c), l_e: mm(l), d: mm(d) })).tau;
      expect(touched, `M${d}×${P}`).toBeGreaterThan(at(length + P));
      expect(touched, `M${d}×${P}`).toBeLessThan(at(length - P));
    }
  });

  it('is below that of a plain pin, 2.7 times for one diameter of engagement, and comes to it for a long one', () => {
    const c = mm(0.1);
    const ratio = (l: number) =>
      value(pinTilt.of({ c, l_e: mm(l) })).tau / value(tilt.of({ c, l_e: mm(l), d: mm(1) })).tau;
    expect(ratio(1)).toBeCloseTo(1 + Math.sqrt(3), 12);
    expect(ratio(500)).toBeCloseTo(1, 2);
  });

  it('of a very short engagement is the play across the diameter, j/d', () => {
    const c = mm(0.1);
    expect(value(tilt.of({ c, l_e: mm(0.1), d: mm(400) })).tau / (play(0.1) / 400)).toBeCloseTo(1, 3);
  });

  it('moves the tip by tilt times height', () =>
    expect(value(tipFloat.of({ tau: rad(0.004), y: mm(25) })).y_t).toBeCloseTo(0.1, 12));
});

describe('turns-lost and steps-lost', () => {
  it('do not depend on the sense of the net lead and count flats', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.001, max: 3, noNaN: true }),
        (j, D) => {
          const lost = (Delta: number) => value(turnsLost.of({ j_A: mm(j), j_C: mm(j / 2), Delta: mm(Delta) })).n_j;
          expect(lost(D)).toBe(lost(-D));
          expect(lost(D) * D).toBeCloseTo(1.5 * j, 12);
        },
      ),
    );
    expect(value(stepsLost.of({ n_j: turns(4.18), k: plain(6) })).m_j).toBeCloseTo(25.08, 12);
  });

  it('refuse a net lead of nought', () => {
    const refused = turnsLost.of({ j_A: mm(0.1), j_C: mm(0.1), Delta: mm(0) });
    expect(refused).toEqual({ ok: false, code: 'play-never-taken-up', values: {} });
  });
});

describe('motion-after-reversal', () => {
  // By hand: 0.4 turns lost, then 0.6 turns of 90 µm, to either side; within what is lost nothing moves.
  for (const [n, z] of [
    [1, 0.054],
    [-1, -0.054],
    [0.4, 0],
    [-0.3, 0],
    [0, 0],
  ] as const)
    it(`is ${z} mm after ${n} turns`, () =>
      expect(value(motionAfterReversal.of({ n: turns(n), n_j: turns(0.4), Delta: mm(0.09) })).z_c).toBeCloseTo(z, 12));
});

describe('off-centre-play', () => {
  it('is what a drawn profile keeps when it is pushed towards one side', () => {
    // The near side decides: there the screw stands e further out. The far side has more room, and is drawn besides.
    for (const [P, c, e] of [
      [1.5, 0.032, 0.004],
      [1.5, 0.344, 0.1],
      [0.7, 0.1, 0.05],
    ] as const) {
      const nut = profile(P, 4 + c / 2);
      const sides = [profile(P, 4 + e), profile(P, 4 - e)];
      const free = (shift: number) =>
        sides.every(
          (screw) =>
            screw.every(([z, r]) => radiusAt(nut, z + shift, P) >= r - 1e-12) &&
            nut.every(([z, r]) => radiusAt(screw, z - shift, P) <= r + 1e-12),
        );
      const travel = bisect(free, P / 4) + bisect((s) => free(-s), P / 4);
      expect(travel, `P ${P}, c ${c}, e ${e}`).toBeCloseTo(value(offCentrePlay.of({ c: mm(c), e_s: mm(e) })).j, 9);
    }
  });

  it('is the whole play in the middle and none at half the clearance, and no further', () => {
    expect(value(offCentrePlay.of({ c: mm(0.1), e_s: mm(0) })).j).toBe(play(0.1));
    expect(value(offCentrePlay.of({ c: mm(0.1), e_s: mm(0.05) })).j).toBe(0);
    expect(offCentrePlay.of({ c: mm(0.1), e_s: mm(0.06) })).toEqual({
      ok: false,
      code: 'screw-off-middle',
      values: { off: 0.06, most: 0.05 },
    });
  });
});

describe('small-angle', () => {
  it('is τ²/3 for small tilts: 0.0102 % at 1°, 0.255 % at 5°', () => {
    const at = (degrees: number) => value(smallAngle.of({ tau: rad((degrees * Math.PI) / 180) })).eps_t;
    // tan 1° = 0.01745506, tan 5° = 0.08748866 (any table of tangents), over π/180 and π/36.
    expect(Math.abs(at(1) - (0.01745506 / (Math.PI / 180) - 1))).toBeLessThan(5e-9 / 0.0174);
    expect(Math.abs(at(5) - (0.08748866 / (Math.PI / 36) - 1))).toBeLessThan(5e-9 / 0.087);
    // The series takes over without a step.
    expect(at(0.0572957) / at(0.0572959)).toBeCloseTo(1, 4);
    // tan 28° = 0.53170943, far past where two terms of the series would do.
    expect(Math.abs(at(28) - (0.53170943 / ((28 * Math.PI) / 180) - 1))).toBeLessThan(1e-8 / 0.4887);
    // At 0.9 mrad τ²/3 is 2.7e-7 and 2τ⁴/15 adds 8.748e-14; at a microradian nothing but τ²/3 is left.
    const small = (tau: number) => value(smallAngle.of({ tau: rad(tau) })).eps_t;
    expect(small(9e-4) / 2.7000008748e-7).toBeCloseTo(1, 10);
    expect(small(1e-6) / (1e-12 / 3)).toBeCloseTo(1, 10);
    expect(reasonIn(smallAngle.of({ tau: rad(0) }))).toContain('give an angle above 0°');
  });
});

describe('flank-forces', () => {
  it('hands the force on the carried part through C to A, where that on the turned part joins it', () =>
    expect(value(flankForces.of({ Q_pt: newtons(5), Q_pc: newtons(-8) }))).toEqual({ F_A: -3, F_C: -8 }));
});

describe('play-after-coat', () => {
  it('is the play of the coated diameters: a coat along the normal of a flank moves a drawn profile out by 2t', () => {
    // A line that leans by 30° from square to the axis, offset by t along its normal, crosses the pitch line t/sin 30° further out.
    for (const t of [0, 0.003, 0.008]) {
      const lean = Math.PI / 6;
      const out = t * Math.sin(lean) + (t * Math.cos(lean)) / Math.tan(lean);
      const { c } = value(pitchClearance.of({ D_2: mm(9.058), d_2: mm(9.026 + 2 * out) }));
      expect(value(playAfterCoat.of({ c: mm(0.032), t_z: mm(t) })).j).toBeCloseTo(value(axialPlay.of({ c })).j, 12);
    }
  });

  it('has used up an allowance of 32 µm at 8 µm, and refuses more as parts that do not go together', () => {
    expect(value(playAfterCoat.of({ c: mm(0.032), t_z: mm(0.008) })).j).toBe(0);
    expect(reasonIn(playAfterCoat.of({ c: mm(0.032), t_z: mm(0.01) }))).toBe(
      'A coat of 10 µm takes 40 µm of pitch diameter, more than the clearance of 32 µm, so the parts do not go together: give a thinner coat or more clearance.',
    );
  });
});
