import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightAt, inLine, type Point, planeThrough, tiltOf, twiceArea } from '../../widgets/engine/index.ts';
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
    const SQUARE = [
      { x: -1, y: -1, z: 0 },
      { x: 1, y: -1, z: 0 },
      { x: -1, y: 1, z: 0 },
      { x: 1, y: 1, z: 4 },
    ];
    const plane = valueIn(planeThrough(SQUARE));
    expect([plane.p, plane.q, plane.r].map((v) => Number(v.toFixed(12)))).toEqual([1, 1, 1]);
    expect(plane.residuals.map((v) => Number(v.toFixed(12)))).toEqual([1, -1, -1, 1]);
    expect(plane.scatter).toBeCloseTo(2, 12);
    expect(plane.freedom).toBe(1);
    expect(plane.roundness).toBeCloseTo(1, 12);
    // A fifth reading on the plane in the middle leaves the same residuals among two degrees of freedom: √(4/2).
    const five = valueIn(planeThrough([...SQUARE, { x: 0, y: 0, z: 1 }]));
    expect([five.scatter, five.freedom]).toEqual([expect.closeTo(Math.SQRT2, 12), 2]);
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

  it('magnifies readings anywhere by the root of the squares of their barycentric weights', () => {
    const plane = valueIn(planeThrough(RATIONAL));
    for (const [x, y] of [
      [300, -50],
      [-40, 10],
      [60, 200],
    ] as const) {
      const weights = [0, 1, 2].map((i) => {
        const [a, b, c] = RATIONAL.map((point, k) => ({ ...point, z: k === i ? 1 : 0 })) as [Point, Point, Point];
        return barycentric([a, b, c], x, y);
      });
      expect(plane.magnification({ x, y })).toBeCloseTo(Math.hypot(...weights), 10);
    }
  });

  it('refuses points in a line with a sentence', () => {
    const line = [0, 1, 2, 3].map((t) => ({ x: 10 + 30 * t, y: 5 + 20 * t, z: t / 100 }));
    for (const points of [line.slice(0, 3), line])
      expect(reasonIn(planeThrough(points, 'readings'))).toBe(
        `The ${points.length} readings stand in a line, or so nearly that the tilt across it cannot be found: move one far off the line.`,
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
    expect(reasonIn(planeThrough(RATIONAL.slice(0, 1), 'readings'))).toBe(
      'Read 1 reading; a plane needs three that are not in a line: add 2 more.',
    );
    expect(reasonIn(planeThrough([]))).toBe('Read 0 points; a plane needs three that are not in a line: add 3 more.');
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY, 1e6])
      expect(reasonIn(planeThrough([...RATIONAL.slice(0, 2), { x: 1, y: wrong, z: 0 }]))).toBe(
        `Number 3 of the points has y ${wrong}; give a number of millimetres from −100000 to 100000.`,
      );
    const [a, b] = RATIONAL as [Point, Point];
    expect(reasonIn(planeThrough([a, b, { x: -100001, y: 50, z: 0 }]))).toContain('has x −100001');
    expect(reasonIn(planeThrough([a, b, { x: 1, y: 50, z: 100001 }]))).toContain('has height 100001');
    const farthest = [
      { x: -1e5, y: 1e5, z: 1e5 },
      { x: 1e5, y: -1e5, z: -1e5 },
      { x: 1e5, y: 1e5, z: 0 },
    ];
    expect(planeThrough(farthest).ok).toBe(true);
  });
});

describe('a triangle of places', () => {
  const CORNERS = [
    [0, 0],
    [120, 0],
    [40, 90],
  ] as const;
  const triangle = (corners: readonly (readonly [number, number])[]) => {
    const [[x_1 = 0, y_1 = 0] = [], [x_2 = 0, y_2 = 0] = [], [x_3 = 0, y_3 = 0] = []] = corners;
    return { x_1, y_1, x_2, y_2, x_3, y_3 };
  };
  /** The same corners begun at each, so that each side is in turn the first. */
  const begun = (corners: readonly (readonly [number, number])[]) =>
    [0, 1, 2].map((k) => triangle([...corners.slice(k), ...corners.slice(0, k)]));

  it('has twice its area with the sign of its sense, wherever it begins', () => {
    for (const t of begun(CORNERS)) expect(twiceArea(t)).toBe(120 * 90);
    for (const t of begun(CORNERS.toReversed())) expect(twiceArea(t)).toBe(-120 * 90);
    for (const t of begun(CORNERS.map(([x, y]) => [x - 70, y + 30]))) expect(twiceArea(t)).toBe(120 * 90);
  });

  it('is none below a millimetre, nor below a thousandth of its length in width', () => {
    const flat = (long: number, wide: number) =>
      begun([
        [5, 7],
        [5 + long, 7],
        [5 + long / 2, 7 + wide],
      ]).map(inLine);
    expect(flat(1, 0.5)).toEqual([undefined, undefined, undefined]);
    for (const refusal of flat(0.99, 0.5)) expect(refusal).toMatchObject({ code: 'places-too-near' });
    expect(flat(1000, 1)).toEqual([undefined, undefined, undefined]);
    for (const wide of [0.99, -0.99, 0])
      for (const refusal of flat(1000, wide)) expect(refusal, `${wide}`).toMatchObject({ code: 'places-in-line' });
    expect(inLine(triangle(CORNERS.toReversed()))).toBeUndefined();
    expect(
      inLine(
        triangle([
          [0, 0],
          [Number.NaN, 0],
          [0, 1],
        ]),
      ),
    ).toBeDefined();
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
