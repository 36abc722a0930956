/** Other ways: the ball lift against three spheres in space, and the five ways side by side. */
import { describe, expect, it } from 'vitest';
import {
  ballLift,
  leverMotion,
  mm,
  rad,
  sameMotion,
  type WantedMotion,
  type Workshop,
  wedgeRise,
} from '../../widgets/engine/index.ts';
import { asRead } from '../../widgets/engine/kernel/say.ts';
import { reasonIn, valueIn } from '../support/results.ts';

type Point = readonly [number, number, number];
const apart = (p: Point, q: Point): number => Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);

/** Drops a ball on three by walking: moves the point until it is r + R from each centre, no formula of height used. */
const dropped = (r: number, R: number, s: number): Point => {
  const centres: Point[] = [0, 1, 2].map((i) => {
    const angle = 0.3 + (i * 2 * Math.PI) / 3;
    const q = s / (2 * Math.sin(Math.PI / 3));
    return [q * Math.cos(angle), q * Math.sin(angle), 0];
  });
  for (const [i, c] of centres.entries()) expect(apart(c, centres[(i + 1) % 3] ?? c)).toBeCloseTo(s, 9);
  let p: Point = [0.2 * r, -0.1 * r, r + R];
  for (let step = 0; step < 20000; step++)
    for (const c of centres) {
      const d = apart(p, c);
      const k = (r + R) / d;
      // Slide towards the sphere about this centre, half the way, so that the three pulls settle.
      p = [
        p[0] + 0.5 * (c[0] + (p[0] - c[0]) * k - p[0]),
        p[1] + 0.5 * (c[1] + (p[1] - c[1]) * k - p[1]),
        p[2] + 0.5 * (c[2] + (p[2] - c[2]) * k - p[2]),
      ];
    }
  for (const c of centres) expect(apart(p, c)).toBeCloseTo(r + R, 9);
  return p;
};

describe('a ball on three others', () => {
  // r on top, R beneath, s between the centres
  const CASES = [
    [5, 5, 10],
    [5, 5, 13],
    [8, 4, 9],
    [3, 6, 13],
  ] as const;

  it.each(CASES)('of r %f on R %f spaced %f stands where three spheres meet', (r, R, s) => {
    const { h_t } = valueIn(ballLift.of({ r_t: mm(r), R_t: mm(R), s_t: mm(s) }));
    const place = dropped(r, R, s);
    expect(h_t).toBeCloseTo(place[2], 8);
    expect(Math.hypot(place[0], place[1])).toBeLessThan(1e-6);
  });

  it('falls as the balls spread from the axis, by q/h', () => {
    const at = (s: number) => valueIn(ballLift.of({ r_t: mm(8), R_t: mm(4), s_t: mm(s) }));
    const ds = 1e-5;
    const dq = ds / Math.sqrt(3);
    expect((at(11 - ds).h_t - at(11 + ds).h_t) / (2 * dq)).toBeCloseTo(at(11).m_t, 6);
  });

  it('is a regular tetrahedron for equal balls that touch: 0.8165 of the edge, 0.707 mm per mm of spread', () => {
    const { h_t, m_t } = valueIn(ballLift.of({ r_t: mm(5), R_t: mm(5), s_t: mm(10) }));
    expect(h_t / 10).toBeCloseTo(Math.sqrt(2 / 3), 12);
    expect(m_t).toBeCloseTo(Math.SQRT1_2, 12);
  });

  it('is refused where the balls would overlap or the top one falls through', () => {
    expect(reasonIn(ballLift.of({ r_t: mm(5), R_t: mm(5), s_t: mm(9) }))).toContain(
      'give at least 10 mm, where they touch',
    );
    expect(reasonIn(ballLift.of({ r_t: mm(5), R_t: mm(5), s_t: mm(17.4) }))).toContain('falls through');
    // Just short of falling through, √3·10 = 17.32 mm, the height is as good as none: kept off by a thousandth.
    expect(ballLift.of({ r_t: mm(5), R_t: mm(5), s_t: mm(17.31) }).ok).toBe(false);
    expect(ballLift.of({ r_t: mm(5), R_t: mm(5), s_t: mm(17.29) }).ok).toBe(true);
  });
});

describe('wedge and lever', () => {
  it('rise by the slope and move by the arms', () => {
    expect(valueIn(wedgeRise.of({ x_w: mm(50), phi_w: rad(Math.atan(1 / 50)) })).z).toBeCloseTo(1, 12);
    expect(valueIn(leverMotion.of({ z_l: mm(1), b_l: mm(5), a_l: mm(50) })).z).toBeCloseTo(0.1, 12);
    // The header's 0.5 % at 10°: the sine of the swing against the arc.
    const swing = (10 * Math.PI) / 180;
    expect(1 - Math.sin(swing) / swing).toBeGreaterThan(0.0045);
    expect(1 - Math.sin(swing) / swing).toBeLessThan(0.0055);
  });
});

describe('sameMotion', () => {
  const wanted: WantedMotion = { resolution: 0.0005, stroke: 0.5, height: 40, hand: (2 * Math.PI) / 180 };
  const shop: Workshop = {
    finestLead: 0.25,
    driveLead: 0.5,
    engagement: 8,
    pair: { A: 1.5, C: 25.4 / 16 },
    shortArm: 5,
    seat: 10,
    ball: 5,
    prices: { 'plain screw': 40, 'differential screw': 9 },
  };
  const named = (ways: ReturnType<typeof sameMotion>, name: string) => {
    const found = valueIn(ways).find((w) => w.name === name);
    if (!found) throw new Error(name);
    return found;
  };

  it('sets five ways side by side for the same resolution and stroke', () => {
    const ways = sameMotion(wanted, shop);
    expect(valueIn(ways).map((w) => w.name)).toEqual([
      'plain screw',
      'wedge',
      'lever',
      'squeezed balls',
      'differential screw',
    ]);
    // 0.5 µm for 2° is 90 µm a turn: finer than any tap here, within reach of the Foot's 87.5 µm.
    expect(named(ways, 'plain screw').resolution).toBeCloseTo(0.25 / 180, 12);
    expect(named(ways, 'differential screw').perTurn).toBeCloseTo(0.0875, 12);
    expect(named(ways, 'wedge').resolution).toBeCloseTo(0.0005, 12);
    expect(named(ways, 'lever').resolution).toBeCloseTo(0.0005, 12);
  });

  it('reckons length and height by each way’s own geometry', () => {
    const ways = sameMotion(wanted, shop);
    const slope = 0.09 / 0.5;
    expect(named(ways, 'wedge').length).toBeCloseTo(0.5 / slope + 10, 9);
    expect(named(ways, 'wedge').height).toBeCloseTo(0.5 + 10 * slope, 9);
    // Pushed by a screw of 6 mm it is no lower than that.
    expect(named(sameMotion(wanted, { ...shop, driveDiameter: 6 }), 'wedge').height).toBe(6);
    expect(named(sameMotion(wanted, { ...shop, driveDiameter: 1 }), 'wedge').height).toBeCloseTo(0.5 + 10 * slope, 9);
    expect(named(ways, 'lever').length).toBeCloseTo(5 / slope, 9);
    expect(named(ways, 'lever').height).toBeCloseTo(0.5 / slope + 8, 9);
    expect(named(ways, 'plain screw').height).toBeCloseTo(8.5, 12);
    expect(named(ways, 'differential screw').height).toBeCloseTo((0.5 / 0.0875) * 1.5875 + 16, 9);
    // The balls, by the ball lift itself: down by the stroke from where they touch.
    const balls = named(ways, 'squeezed balls');
    const spread = balls.length / 2 - 5;
    const { h_t, m_t } = valueIn(ballLift.of({ r_t: mm(5), R_t: mm(5), s_t: mm(spread * Math.sqrt(3)) }));
    expect(valueIn(ballLift.of({ r_t: mm(5), R_t: mm(5), s_t: mm(10) })).h_t - h_t).toBeCloseTo(0.5, 9);
    expect(balls.perTurn).toBeCloseTo(0.5 * m_t, 9);
    expect(balls.height).toBeCloseTo(10 * Math.sqrt(2 / 3) + 10, 9);
  });

  it('leaves out a price that is missing and never takes it as nought', () => {
    const ways = sameMotion(wanted, shop);
    expect(named(ways, 'wedge').price).toBeUndefined();
    expect(named(ways, 'plain screw').price).toBe(40);
    const { prices: _, ...unpriced } = shop;
    for (const way of valueIn(sameMotion(wanted, unpriced))) expect(way.price).toBeUndefined();
    expect(reasonIn(sameMotion(wanted, { ...shop, prices: { wedge: -1 } }))).toContain('Price of the wedge: read −1');
  });

  it('gives of a stroke as much as the balls can', () => {
    expect(named(sameMotion({ ...wanted, stroke: 20 }, shop), 'squeezed balls').stroke).toBeCloseTo(5.66, 2);
  });

  it('draws no wedge steeper than 45° nor a lever longer on the short side, where no reduction is asked', () => {
    // 0.5 µm asked of a drive whose lead is 0.05 mm: 90 µm a turn is more than it gives.
    const ways = sameMotion(wanted, { ...shop, driveLead: 0.05 });
    expect(named(ways, 'wedge')).toMatchObject({ perTurn: 0.05, length: 10.5, height: 10.5 });
    expect(named(ways, 'lever')).toMatchObject({ perTurn: 0.05, length: 5, height: 8.5 });
  });

  it('takes the finest tap there is where that just does', () => {
    // 0.25 mm a turn, the finest tap there is, is 1.389 µm for 2°.
    const just = sameMotion({ ...wanted, resolution: 0.25 / 180 }, shop);
    expect(named(just, 'plain screw')).toMatchObject({ perTurn: expect.closeTo(0.25, 12) });
  });

  it('names what is out of bounds, and takes the bounds', () => {
    const WANTS = { resolution: [20, 'Resolution'], stroke: [1e4, 'Stroke'], height: [1e4, 'Height'] } as const;
    for (const [field, [most, says]] of Object.entries(WANTS)) {
      for (const value of [0, -1, most * 1.01, Number.NaN])
        expect(reasonIn(sameMotion({ ...wanted, [field]: value }, shop))).toBe(
          `${says}: read ${asRead(value)} mm; give a value above 0 mm and up to ${most} mm.`,
        );
      expect(sameMotion({ ...wanted, [field]: most }, shop).ok, field).toBe(true);
    }
    const SHOP = {
      shortArm: [1e4, 'Short arm'],
      seat: [1e3, 'Seat of the wedge'],
      engagement: [500, 'Engagement'],
      ball: [500, 'Radius of the balls'],
    } as const;
    for (const [field, [most, says]] of Object.entries(SHOP)) {
      for (const value of [0, most * 1.01])
        expect(reasonIn(sameMotion(wanted, { ...shop, [field]: value }))).toContain(
          `${says}: read ${asRead(value)} mm`,
        );
      expect(sameMotion(wanted, { ...shop, [field]: most }).ok, field).toBe(true);
    }
    for (const [wrong, field] of [
      [{ finestLead: 0 }, 'L'],
      [{ driveLead: 61 }, 'L'],
      [{ pair: { A: 0, C: 1 } }, 'L_A'],
      [{ pair: { A: 1, C: 61 } }, 'L_C'],
    ] as const)
      expect(sameMotion(wanted, { ...shop, ...wrong }), field).toMatchObject({ ok: false, field });
    expect(reasonIn(sameMotion({ ...wanted, hand: -0.1 }, shop))).toContain('read −5.73°');
    for (const hand of [0, -0.1, 4001]) expect(sameMotion({ ...wanted, hand }, shop).ok, `${hand}`).toBe(false);
    for (const wedge of [0, 1e9]) expect(sameMotion(wanted, { ...shop, prices: { wedge } }).ok, `${wedge}`).toBe(true);
    for (const wedge of [1.01e9, Number.NaN])
      expect(reasonIn(sameMotion(wanted, { ...shop, prices: { wedge } }))).toContain('Price of the wedge');
  });

  it('refuses a pair without a difference and nonsense wants', () => {
    expect(reasonIn(sameMotion(wanted, { ...shop, pair: { A: 1.5, C: 1.5 } }))).toContain('moves nothing');
    expect(reasonIn(sameMotion({ ...wanted, resolution: 0 }, shop))).toContain('Resolution: read 0 mm');
    expect(reasonIn(sameMotion({ ...wanted, hand: Number.NaN }, shop))).toContain('Repeatable hand angle: read NaN');
    expect(reasonIn(sameMotion({ ...wanted, stroke: Number.POSITIVE_INFINITY }, shop))).toContain('Stroke');
  });
});
