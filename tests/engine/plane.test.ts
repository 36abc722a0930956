import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightAt, type Point, planeThrough, tiltOf } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';
import { seeded } from '../support/seeded.ts';

/** Exact fractions, worked by hand: z = 3/10 − x/300 + y/2700; z(60, 30) = 1/9. */
const RATIONAL: readonly Point[] = [
  { x: 0, y: 0, z: 3 / 10 },
  { x: 120, y: 0, z: -1 / 10 },
  { x: 40, y: 90, z: 1 / 5 },
];

/** Barycentric weights by areas: a path to the height that knows nothing of slopes. */
const barycentric = ([a, b, c]: readonly [Point, Point, Point], x: number, y: number): number => {
  const area = (p: { x: number; y: number }, q: { x: number; y: number }, r: { x: number; y: number }) =>
    (q.x - p.x) * (r.y - p.y) - (r.x - p.x) * (q.y - p.y);
  const g = { x, y };
  return (a.z * area(g, b, c) + b.z * area(a, g, c) + c.z * area(a, b, g)) / area(a, b, c);
};

describe('planeThrough', () => {
  it('goes exactly through three points (fractions −1/300, 1/2700, 3/10, 1/9)', () => {
    const plane = valueIn(planeThrough(RATIONAL));
    expect(Math.abs(plane.q * -300 - 1)).toBeLessThan(1e-13);
    expect(Math.abs(plane.r * 2700 - 1)).toBeLessThan(1e-12);
    expect(Math.abs(plane.p - 0.3)).toBeLessThan(1e-15);
    expect(Math.abs(heightAt(plane, { x: 60, y: 30 }) * 9 - 1)).toBeLessThan(1e-13);
    expect(plane.freedom).toBe(0);
    expect(plane.scatter).toBe(0);
    expect(plane.residuals).toEqual([0, 0, 0]);
  });

  it('agrees with barycentric weights anywhere in and out of random triangles', () => {
    const coordinate = fc.integer({ min: -5000, max: 5000 }).map((v) => v / 10);
    const point = fc.record({ x: coordinate, y: coordinate, z: coordinate.map((v) => v / 1000) });
    fc.assert(
      fc.property(fc.tuple(point, point, point), coordinate, coordinate, (three, x, y) => {
        const plane = planeThrough(three);
        if (!plane.ok || plane.value.roundness < 0.01) return;
        expect(Math.abs(heightAt(plane.value, { x, y }) - barycentric(three, x, y))).toBeLessThan(1e-8);
      }),
    );
  });

  it('gives the least-squares plane of a square with one high corner (worked by hand)', () => {
    // Corners ±1, heights 0 0 0 4: mean 1, slopes Σxz/Σx² = 4/4 = 1; residuals ±1, so the scatter is √(4/1) = 2.
    const plane = valueIn(
      planeThrough([
        { x: -1, y: -1, z: 0 },
        { x: 1, y: -1, z: 0 },
        { x: -1, y: 1, z: 0 },
        { x: 1, y: 1, z: 4 },
      ]),
    );
    expect([plane.p, plane.q, plane.r].map((v) => Number(v.toFixed(12)))).toEqual([1, 1, 1]);
    expect(plane.residuals.map((v) => Number(v.toFixed(12)))).toEqual([1, -1, -1, 1]);
    expect(plane.scatter).toBeCloseTo(2, 12);
    expect(plane.freedom).toBe(1);
    expect(plane.roundness).toBeCloseTo(1, 12);
  });

  it('keeps the slope when the places lie far from the origin or along one axis', () => {
    for (const [dx, dy] of [
      [0, 0],
      [9e4, -9e4],
    ] as const)
      for (const squeeze of [1, 0.01]) {
        const points = RATIONAL.map(({ x, y }) => ({ x: x * squeeze + dx, y: y + dy }));
        const plane = valueIn(planeThrough(points.map((p) => ({ ...p, z: 0.002 * (p.x - dx) - 0.001 * (p.y - dy) }))));
        expect(plane.q).toBeCloseTo(0.002, 10);
        expect(plane.r).toBeCloseTo(-0.001, 10);
      }
  });

  it('magnifies readings by 0.577 in the middle of three, by 1 at each, and as scatter shows in 20 000 trials', () => {
    const plane = valueIn(planeThrough(RATIONAL));
    expect(plane.magnification({ x: 160 / 3, y: 30 })).toBeCloseTo(Math.sqrt(1 / 3), 12);
    for (const place of RATIONAL) expect(plane.magnification(place)).toBeCloseTo(1, 12);
    const far = { x: 300, y: -50 };
    const { normal } = seeded(3);
    let squares = 0;
    for (let i = 0; i < 20_000; i++) {
      const noisy = valueIn(planeThrough(RATIONAL.map((p) => ({ ...p, z: normal() }))));
      squares += heightAt(noisy, far) ** 2;
    }
    expect(Math.sqrt(squares / 20_000) / plane.magnification(far)).toBeCloseTo(1, 1);
  });

  it('refuses points in a line with a sentence', () => {
    const line = [0, 1, 2, 3].map((t) => ({ x: 10 + 30 * t, y: 5 + 20 * t, z: t / 100 }));
    for (const points of [line.slice(0, 3), line])
      expect(reasonIn(planeThrough(points, 'readings'))).toBe(
        `The ${points.length} readings stand in a line, or so nearly that the tilt across it can’t be told: move one well off the line.`,
      );
  });

  it('refuses points as good as in a line, and takes those a little further off', () => {
    const bent = (y: number) =>
      planeThrough([
        { x: 0, y: 0, z: 0 },
        { x: 200, y: 0, z: 0.1 },
        { x: 100, y, z: 0.2 },
      ]);
    expect(bent(0.1).ok).toBe(false);
    expect(bent(1).ok).toBe(true);
  });

  it('judges a slanting near-line like an upright one, and knows how round a right triangle is', () => {
    const slanted = (off: number) =>
      planeThrough([
        { x: 0, y: 0, z: 0 },
        { x: 160, y: 120, z: 0.1 },
        { x: 80 - 0.6 * off, y: 60 + 0.8 * off, z: 0.2 },
      ]);
    expect(slanted(0.1).ok).toBe(false);
    expect(slanted(1).ok).toBe(true);
    // Corners (0,0), (1,0), (0,1): scatter ((2, −1), (−1, 2))/3, eigenvalues 1 and 1/3.
    const right = [
      { x: 0, y: 0, z: 0 },
      { x: 1, y: 0, z: 0 },
      { x: 0, y: 1, z: 0 },
    ];
    expect(valueIn(planeThrough(right)).roundness).toBeCloseTo(Math.sqrt(1 / 3), 12);
  });

  it('refuses three times the same place, and two of three alike', () => {
    const [a, b] = [
      { x: 1, y: 2, z: 3 },
      { x: 7, y: 9, z: 4 },
    ];
    expect(planeThrough([a, a, a]).ok).toBe(false);
    expect(planeThrough([a, b, b]).ok).toBe(false);
  });

  it('refuses too few points and numbers that are none', () => {
    expect(reasonIn(planeThrough(RATIONAL.slice(0, 2), 'readings'))).toBe(
      'Read 2 readings; a plane needs three that are not in a line: add 1 more.',
    );
    expect(reasonIn(planeThrough([]))).toBe('Read 0 points; a plane needs three that are not in a line: add 3 more.');
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY, 1e6])
      expect(reasonIn(planeThrough([...RATIONAL.slice(0, 2), { x: 1, y: wrong, z: 0 }]))).toBe(
        `Number 3 of the points has y ${wrong}; give a number of millimetres from −100000 to 100000.`,
      );
  });
});

describe('tiltOf', () => {
  it('says a rise of 10 µm per metre as 2.0626 arc seconds', () => {
    // 1 rad = 206264.806″ (published constant).
    const tilt = tiltOf(valueIn(planeThrough(RATIONAL.map((p) => ({ ...p, z: p.x * 1e-5 })))));
    expect(tilt.micrometresPerMetre).toBeCloseTo(10, 9);
    expect(tilt.arcSeconds).toBeCloseTo(2.06264806, 7);
    expect(tilt.uphill).toBeCloseTo(0, 9);
  });

  it('takes both slopes together and says where it rises', () => {
    const tilt = tiltOf({ q: -3e-5, r: 4e-5 } as Parameters<typeof tiltOf>[0]);
    expect(tilt.micrometresPerMetre).toBeCloseTo(50, 9);
    expect((tilt.uphill * 180) / Math.PI).toBeCloseTo(126.8699, 4);
  });

  it('is the angle, not the slope, when steep: 45° for a rise of one in one', () => {
    expect(tiltOf({ q: 1, r: 0 } as Parameters<typeof tiltOf>[0]).arcSeconds).toBeCloseTo(162000, 6);
  });

  it('gives no direction to a level plane', () => {
    expect(tiltOf({ q: 0, r: -0 } as Parameters<typeof tiltOf>[0])).toMatchObject({
      slope: 0,
      arcSeconds: 0,
      uphill: 0,
    });
  });
});
