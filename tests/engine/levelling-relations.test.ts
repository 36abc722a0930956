/** The relations and helpers behind three feet under a plate, each against a path of its own. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Aim,
  contactForces,
  couplingAt,
  edgeCorrection,
  edgeRises,
  type Foot,
  footCorrection,
  footLoads,
  heightAt,
  levelPlate,
  oneFootLift,
  planeRises,
  planeThrough,
  readingsAfter,
  weightOnFeet,
} from '../../widgets/engine/index.ts';
import { evenCoupling } from '../support/even-coupling.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const deg = Math.PI / 180;
/** Relations take branded numbers; here they are written as they come. */
const of = <T>(relation: { of: (inputs: never) => T }, inputs: Record<string, number>): T =>
  relation.of(inputs as never);
const PLACES = { x_1: 40, y_1: 20, x_2: 200, y_2: 20, x_3: 40, y_3: 160 };
const FEET = { x_1: 240, y_1: 0, x_2: 120, y_2: 180, x_3: 0, y_3: 0 };
const coordinate = fc.integer({ min: -500, max: 500 });
const triangle = fc
  .tuple(coordinate, coordinate, coordinate, coordinate, coordinate, coordinate)
  .filter(([a, b, c, d, e, f]) => Math.abs((c - a) * (f - b) - (e - a) * (d - b)) > 5000)
  .map(([x_1, y_1, x_2, y_2, x_3, y_3]) => ({ x_1, y_1, x_2, y_2, x_3, y_3 }));

describe('plane-rises', () => {
  it('is the fall over the distance where the readings stand square: −84/160 and 94/140 µm a mm', () => {
    const { q_x, r_y } = valueIn(of(planeRises, { ...PLACES, z_1: 0, z_2: -0.084, z_3: 0.094 }));
    expect(q_x).toBeCloseTo(-0.084 / 160, 15);
    expect(r_y).toBeCloseTo(0.094 / 140, 15);
  });
  it('agrees with the least-squares plane through the same three', () => {
    fc.assert(
      fc.property(triangle, coordinate, coordinate, coordinate, (t, a, b, c) => {
        const [z_1, z_2, z_3] = [a / 1000, b / 1000, c / 1000];
        const { q_x, r_y } = valueIn(of(planeRises, { ...t, z_1, z_2, z_3 }));
        const fit = valueIn(
          planeThrough([
            { x: t.x_1, y: t.y_1, z: z_1 },
            { x: t.x_2, y: t.y_2, z: z_2 },
            { x: t.x_3, y: t.y_3, z: z_3 },
          ]),
        );
        expect(q_x).toBeCloseTo(fit.q, 10);
        expect(r_y).toBeCloseTo(fit.r, 10);
      }),
    );
  });
  it('refuses places in a line and places on top of one another', () => {
    const line = { ...PLACES, x_3: 360, y_3: 20, z_1: 0, z_2: 0, z_3: 0 };
    expect(reasonIn(of(planeRises, line))).toBe(
      'The three places stand in a line, or so nearly that the tilt across it cannot be found: move one far off the line.',
    );
    expect(reasonIn(of(planeRises, { ...line, x_1: 5, x_2: 5.1, x_3: 5.2 }))).toBe(
      'The three places are less than 1 mm apart: set them as far apart as the part allows.',
    );
    expect(reasonIn(of(oneFootLift, { ...line, w: 1, x_s: 0, y_s: 0 }))).toMatch(/stand in a line/);
    expect(reasonIn(of(weightOnFeet, { ...line, W: 1, x_g: 0, y_g: 0 }))).toMatch(/stand in a line/);
  });
});

describe('foot-correction', () => {
  it('agrees with levelPlate at every foot, with foot A as the datum', () => {
    const feet: readonly Foot[] = [
      { name: 'A', x: 0, y: 0, Delta: 0.0875, k: 6 },
      { name: 'B', x: 240, y: 0, Delta: 0.0875, k: 6 },
      { name: 'C', x: 120, y: 180, Delta: 0.0875, k: 6 },
    ];
    const readings = [
      { x: 40, y: 20, z: 0 },
      { x: 200, y: 20, z: -0.084 },
      { x: 40, y: 160, z: 0.094 },
    ];
    const { plane, moves } = valueIn(levelPlate({ feet, readings, keep: { kind: 'foot', name: 'A' } }));
    for (const [i, foot] of feet.entries()) {
      const { w } = valueIn(
        of(footCorrection, { q_x: plane.q, r_y: plane.r, x_d: 0, y_d: 0, x_s: foot.x, y_s: foot.y }),
      );
      expect(w).toBeCloseTo(moves[i]?.correction ?? Number.NaN, 14);
    }
    expect(moves[1]?.correction).toBeCloseTo(0.126, 14);
  });
});

describe('edge-rises and edge-correction', () => {
  it('lift the far foot by the fall over the readings, stretched to the feet: 60 µm in 160 mm is 112.5 µm in 300 mm', () => {
    const { q_x } = valueIn(of(edgeRises, { x_1: 0, z_1: 0, x_2: 160, z_2: 0.06 }));
    expect(valueIn(of(edgeCorrection, { q_x, x_d: 0, x_s: 300 })).w).toBeCloseTo(-0.1125, 15);
    expect(reasonIn(of(edgeRises, { x_1: 0, z_1: 0, x_2: 0.2, z_2: 0.06 }))).toMatch(/less than 1 mm apart/);
  });
});

describe('one-foot-lift', () => {
  it('is the whole lift at its foot, nought on the line of the others, half on the middle line, minus beyond', () => {
    const lift = (x_s: number, y_s: number) => valueIn(of(oneFootLift, { ...FEET, w: 0.1, x_s, y_s })).z;
    expect(lift(240, 0)).toBeCloseTo(0.1, 15);
    expect(lift(120, 0)).toBeCloseTo(0.05, 15);
    expect(lift(60, 90)).toBeCloseTo(0, 15);
    // By hand: y = 180 c, x = 240 b + 120 c at (40, 160) give b = (40 − 320/3)/240 = −5/18.
    expect(lift(40, 160)).toBeCloseTo((-0.1 * 5) / 18, 15);
  });
  it('is the plane that is w at the first foot and nought at the others', () => {
    fc.assert(
      fc.property(triangle, coordinate, coordinate, (t, x_s, y_s) => {
        const { z } = valueIn(of(oneFootLift, { ...t, w: 0.25, x_s, y_s }));
        const plane = valueIn(
          planeThrough([
            { x: t.x_1, y: t.y_1, z: 0.25 },
            { x: t.x_2, y: t.y_2, z: 0 },
            { x: t.x_3, y: t.y_3, z: 0 },
          ]),
        );
        expect(z).toBeCloseTo(heightAt(plane, { x: x_s, y: y_s }), 9);
      }),
    );
  });
});

describe('weight-on-feet', () => {
  it('balances force and moments, and agrees with footLoads inside the triangle', () => {
    fc.assert(
      fc.property(triangle, coordinate, coordinate, (t, x_g, y_g) => {
        const { F_1, F_2, F_3 } = valueIn(of(weightOnFeet, { ...t, W: 60, x_g, y_g }));
        expect(F_1 + F_2 + F_3).toBeCloseTo(60, 7);
        expect(F_1 * t.x_1 + F_2 * t.x_2 + F_3 * t.x_3).toBeCloseTo(60 * x_g, 4);
        expect(F_1 * t.y_1 + F_2 * t.y_2 + F_3 * t.y_3).toBeCloseTo(60 * y_g, 4);
        const loads = footLoads(
          [
            { name: 'A', x: t.x_1, y: t.y_1 },
            { name: 'B', x: t.x_2, y: t.y_2 },
            { name: 'C', x: t.x_3, y: t.y_3 },
          ],
          60,
          { x: x_g, y: y_g },
        );
        if (loads.ok) expect(loads.value.map((f) => f.load)).toEqual([F_1, F_2, F_3].map((F) => expect.closeTo(F, 7)));
        else expect(Math.min(F_1, F_2, F_3)).toBeLessThanOrEqual(1e-9);
      }),
    );
  });
});

describe('readingsAfter', () => {
  const feet = (share = 0): readonly Foot[] =>
    [
      { name: 'A', x: 0, y: 0 },
      { name: 'B', x: 120, y: 0 },
      { name: 'C', x: 40, y: 90 },
    ].map((place) => ({ ...place, Delta: 0.0875 * (1 + share), k: 6 }));
  const readings = [
    { x: 0, y: 0, z: 0.1 },
    { x: 120, y: 0, z: 0.02 },
    { x: 40, y: 90, z: -0.03 },
    { x: 80, y: 45, z: 0.01 },
  ];
  it('is what levelPlate expects, when the feet move as designated', () => {
    const { moves, expected } = valueIn(levelPlate({ feet: feet(), readings, keep: { kind: 'mean' } }));
    const after = valueIn(
      readingsAfter(
        feet(),
        moves.map((m) => m.wholeSteps),
        readings,
      ),
    );
    after.forEach((p, i) => {
      expect(p.z).toBeCloseTo(expected[i]?.z ?? Number.NaN, 14);
    });
  });
  it('moves a reading over a foot by that foot alone, its true lead and its flats', () => {
    const after = valueIn(readingsAfter(feet(0.08), [0, 3, -2], readings));
    expect(after.map((p, i) => p.z - (readings[i]?.z ?? 0))).toEqual([
      expect.closeTo(0, 14),
      expect.closeTo((3 * 0.0875 * 1.08) / 6, 14),
      expect.closeTo((-2 * 0.0875 * 1.08) / 6, 14),
      // Half way between B and C.
      expect.closeTo((0.5 * 0.0875 * 1.08) / 6, 14),
    ]);
  });
  it('refuses steps that do not match the feet', () => {
    expect(reasonIn(readingsAfter(feet(), [1], readings))).toBe(
      'Read steps 1 for 3 feet; give one number of steps for each foot, 0 where it was left alone.',
    );
    for (const wrong of [Number.NaN, 1_000_001, -1_000_001])
      expect(reasonIn(readingsAfter(feet(), [1, wrong, 0], readings))).toContain('Read steps 1, ');
    expect(readingsAfter(feet(), [1e6, -1e6, 0], readings).ok).toBe(true);
    expect(reasonIn(readingsAfter(feet().slice(1), [1, 0], readings))).toContain('Read 2 feet');
  });
});

describe('couplingAt', () => {
  const even = evenCoupling(80, 45 * deg);
  const places = even.map((b) => ({ name: b.name, x: b.centre[0], y: b.centre[1] }));
  it('is the even coupling at the corners of an even triangle', () => {
    const balls = couplingAt(places, 45 * deg, 'to the middle');
    balls.forEach((ball, i) => {
      const turn = (ball.direction - (even[i]?.direction ?? 0)) / (2 * Math.PI);
      expect(turn).toBeCloseTo(Math.round(turn), 10);
      expect(ball.centre).toEqual(even[i]?.centre);
    });
  });
  it('lets all grooves lie along x where they go one way, and square to those to the middle where they go round it', () => {
    const directions = (aim: Aim) => couplingAt(places, 45 * deg, aim).map((b) => b.direction);
    expect(directions('all one way')).toEqual([0, 0, 0]);
    const inward = directions('to the middle');
    expect(directions('round the middle').map((d, i) => Math.cos(d - (inward[i] ?? 0)))).toEqual(
      places.map(() => expect.closeTo(0, 12)),
    );
  });
  it('halves every corner of an uneven triangle', () => {
    const uneven = [
      { name: 'A', x: 0, y: 0 },
      { name: 'B', x: 240, y: 0 },
      { name: 'C', x: 120, y: 180 },
    ];
    const balls = couplingAt(uneven, 45 * deg, 'to the middle');
    for (const [i, at] of uneven.entries()) {
      const [p, q] = uneven.filter((_, j) => j !== i);
      if (!p || !q) throw new Error('three');
      const inward = (balls[i]?.direction ?? 0) + Math.PI;
      const to = (o: { x: number; y: number }) => Math.cos(Math.atan2(o.y - at.y, o.x - at.x) - inward);
      expect(to(p)).toBeCloseTo(to(q), 12);
    }
  });
  it('is loose with the grooves all one way or round the middle', () => {
    for (const aim of ['all one way', 'round the middle'] as const)
      expect(
        reasonIn(contactForces(couplingAt(places, 45 * deg, aim), [{ force: [0, 0, -9], at: [0, 0, 0] }])),
      ).toMatch(/^The part can still move a little/);
  });
});
