/** The side push that lifts a pressed flank, against a ring of springs solved for its balance by brute force. */
import { describe, expect, it } from 'vitest';
import { liftFree, liftFreeNut, liftHeld, mm, newtons } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const given = (F: number, d_2: number, l_e: number, y: number) => ({
  F: newtons(F),
  d_2: mm(d_2),
  l_e: mm(l_e),
  y: mm(y),
});
const held = (...v: [number, number, number, number]) => valueIn(liftHeld.of(given(...v))).Q_lh;
const free = (...v: [number, number, number, number]) => valueIn(liftFree.of(given(...v))).Q_lf;

const ROUND = 240;
const ALONG = 81;

/**
 * A nut that rests on points of a helix flank, alike in stiffness. It is shifted along by 1, across by v and leant by θ about its
 * middle; each point then moves along its own normal, (−sin 30° outwards, cos 30° up), and pushes back in proportion. Returned are the
 * forces and the moment it makes and the least push of a point.
 */
const ring = (r: number, l: number, v: number, theta: number) => {
  const [sin, cos] = [Math.sin(Math.PI / 6), Math.cos(Math.PI / 6)];
  const sum = { axial: 0, side: 0, moment: 0, least: Number.POSITIVE_INFINITY };
  for (let i = 0; i < ROUND; i++)
    for (let j = 0; j < ALONG; j++) {
      const phi = (2 * Math.PI * i) / ROUND;
      const z = -l / 2 + (l * j) / (ALONG - 1);
      const weight = j === 0 || j === ALONG - 1 ? 0.5 : 1;
      const y = r * Math.sin(phi);
      // Lean about the x axis, right-handed: a point at (y, z) moves by −θ z in y and +θ y in z.
      const moves = { y: v - theta * z, z: -1 + theta * y };
      const normal = { y: -sin * Math.sin(phi), z: cos };
      // The flank closes where the point moves against its normal.
      const push = -(moves.y * normal.y + moves.z * normal.z);
      sum.least = Math.min(sum.least, push);
      sum.axial += weight * push * normal.z;
      sum.side += weight * push * normal.y;
      sum.moment += weight * push * (y * normal.z - z * normal.y);
    }
  return sum;
};

/** The push, in shares of the axial force, at which the first point lifts, found by making it larger step by step. */
const searched = (r: number, l: number, y: number, guided: boolean): number => {
  // Everything is linear in v and θ: a push Q/F at the height y asks for the side force and the moment.
  const still = ring(r, l, 0, 0);
  const [dv, dt] = [ring(r, l, 1e-3, 0), ring(r, l, 0, 1e-3)];
  const slope = (key: 'side' | 'moment', d: typeof dv) => (d[key] - still[key]) / 1e-3;
  const solve = (Q: number): [number, number] => {
    // A push +Q in y at the height y has the moment −Q y about x and is balanced by the flanks.
    const [side, moment] = [-Q * still.axial, Q * y * still.axial];
    if (guided) return [0, moment / slope('moment', dt)];
    const [a, b, c, d] = [slope('side', dv), slope('side', dt), slope('moment', dv), slope('moment', dt)];
    const det = a * d - b * c;
    return [(side * d - b * moment) / det, (a * moment - c * side) / det];
  };
  let [low, high] = [0, 10];
  for (let i = 0; i < 40; i++) {
    const Q = (low + high) / 2;
    if (ring(r, l, ...solve(Q)).least > 0) low = Q;
    else high = Q;
  }
  return low;
};

describe('the side push that lifts a pressed flank', () => {
  const CASES = [
    [8.494, 10, 15],
    [8.494, 10, 40],
    [3.7, 4, 20],
    [20, 3, 8],
  ] as const;

  it.each(CASES)(
    'pitch diameter %s, engaged %s, at %s mm: as a ring of points, held at the thread and not',
    (d, l, y) => {
      // The sum of 81 rows by the trapezoid rule has l²/12 too large by one in 6400 parts or so.
      expect(held(1, d, l, y) / searched(d / 2, l, y, true)).toBeCloseTo(1, 3);
      expect(free(1, d, l, y) / searched(d / 2, l, y, false)).toBeCloseTo(1, 3);
    },
  );

  it('is that of a narrow ring, F r/2y, where the engagement is short and the push is held', () => {
    expect(held(50, 8, 0.1, 20) / ((50 * 4) / 2 / 20)).toBeCloseTo(1, 1);
  });

  it('is borne by the flanks of a short engagement only where its line meets their normals, at the height r/tan 30°', () => {
    const height = 4 * Math.sqrt(3);
    expect(free(50, 8, 0.1, height)).toBeCloseTo((50 * Math.tan(Math.PI / 6)) / 2, 9);
    expect(free(50, 8, 0.1, height + 5)).toBeLessThan(0.1);
  });

  it('is in proportion to the force across the thread, and none without one', () => {
    expect(held(20, 8.494, 10, 15) / held(50, 8.494, 10, 15)).toBeCloseTo(0.4, 12);
    expect(free(0, 8.494, 10, 15)).toBe(0);
  });

  it('refuses a push without a lever where the thread only has to keep the screw from tipping', () => {
    expect(reasonIn(liftHeld.of(given(50, 8, 10, 0)))).toContain('no lever');
  });

  it('lifts a nut that stands on its screw sooner than a screw in its nut, as sums by hand say', () => {
    const nut = (...v: [number, number, number, number]) => valueIn(liftFreeNut.of(given(...v))).Q_lf;
    // |2Q/(F t)| + 12 Q (y + r/t)/(F t l) = 1 with t = tan 30°: 1/(0.06928 + 1.9673), 1/(0.06928 + 0.9295), 1/(0.17321 + 6.0287).
    expect(nut(50, 8.494, 10, 40)).toBeCloseTo(0.491, 3);
    expect(nut(50, 8.494, 10, 15)).toBeCloseTo(1.001, 3);
    expect(nut(20, 3.7, 4, 20)).toBeCloseTo(0.161, 3);
  });
});
