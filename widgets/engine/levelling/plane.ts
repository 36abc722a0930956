/**
 * A plane through heights read at places: exactly through three, by least squares through more.
 *
 *   z = p + q x + r y          q = rise per length along x, r = along y
 *   tilt t = √(q² + r²)        steepest rise per length; angle atan t
 *   height of the fit at (x, y), standard deviation = σ √(1/N + dᵀ S⁻¹ d), d = (x − x̄, y − ȳ), S the scatter of the places
 *
 * Source: analytic geometry; least squares and its variance after Draper & Smith, Applied Regression Analysis, ch. 5
 * (from memory). Three points by barycentric weights are the check in the tests.
 * Signs: z positive up, away from the base; x and y as drawn in plan, seen from above.
 * Units: x, y, z in mm; q, r and tilt are pure numbers (mm per mm). 1 µm/m = 1e-6; 1″ = π/648000 rad.
 */

import { at } from '../kernel/at.ts';
import { type Millimetres, mm, type Plain, plain, type Radians, rad } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';
import { leastSquares } from '../numerics/least-squares.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'places-too-near': Record<string, never>;
    'places-in-line': Record<string, never>;
    'too-few-for-plane': { readonly count: number; readonly what: PlacesRead };
    'place-past-bounds': {
      readonly place: number;
      readonly what: PlacesRead;
      readonly axis: 'x' | 'y' | 'height';
      readonly value: number;
      readonly most: number;
    };
    'plane-of-a-line': { readonly count: number; readonly what: PlacesRead };
  }
}

/** What a plane is laid through. */
export type PlacesRead = 'points' | 'readings' | 'feet';

/** A place in plan, mm. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** A height read at a place, all mm. */
export interface Point extends Place {
  readonly z: number;
}

export interface Plane {
  /** Height at the origin. */
  readonly p: Millimetres;
  /** Rise per length along x. */
  readonly q: Plain;
  /** Rise per length along y. */
  readonly r: Plain;
}

export interface PlaneFit extends Plane {
  /** Height read less height of the plane, in the order of the points; all nought for three. */
  readonly residuals: readonly Millimetres[];
  /** Standard deviation of one reading about the plane; nought for three points, which leave nothing over to judge by. */
  readonly scatter: Millimetres;
  /** Readings less the three unknowns. */
  readonly freedom: number;
  /** Short spread of the places over their long spread: 1 for an even triangle, 0 for a line. */
  readonly roundness: Plain;
  /** Standard deviation of the plane's height at a place for readings of standard deviation 1: 0.58 at best for three. */
  readonly magnification: (place: Place) => Plain;
}

export interface Tilt {
  /** Steepest rise per length. */
  readonly slope: Plain;
  readonly micrometresPerMetre: number;
  readonly angle: Radians;
  readonly arcSeconds: number;
  /** Direction in which the plane rises, anticlockwise from x in plan, rad from −π to π; 0 for a level plane. */
  readonly uphill: Radians;
}

export const planeHeight = relation({
  name: 'plane-height',
  says: 'Height of a plane at a place.',
  takes: ['p_z', 'q_x', 'x_s', 'r_y', 'y_s'],
  gives: { z: 'p_z + q_x*x_s + r_y*y_s' },
  source: 'Analytic geometry: a plane is given by its height at the origin and its two slopes.',
  compute: ({ p_z, q_x, x_s, r_y, y_s }) => ({ z: mm(p_z + q_x * x_s + r_y * y_s) }),
});

export const planeTilt = relation({
  name: 'plane-tilt',
  says: 'Tilt of a plane: its steepest rise per length, and the angle of that.',
  takes: ['q_x', 'r_y'],
  gives: { t_p: 'sqrt(q_x^2 + r_y^2)', theta_p: 'atan(sqrt(q_x^2 + r_y^2))' },
  source: 'Analytic geometry: length of the gradient of a plane.',
  compute: ({ q_x, r_y }) => {
    const slope = Math.sqrt(q_x ** 2 + r_y ** 2);
    return { t_p: plain(slope), theta_p: rad(Math.atan(slope)) };
  },
});

export const planeRises = relation({
  name: 'plane-rises',
  says: 'The two rises of the plane through three heights.',
  takes: ['x_1', 'y_1', 'z_1', 'x_2', 'y_2', 'z_2', 'x_3', 'y_3', 'z_3'],
  gives: {
    q_x: '((z_2 - z_1)*(y_3 - y_1) - (z_3 - z_1)*(y_2 - y_1))/((x_2 - x_1)*(y_3 - y_1) - (x_3 - x_1)*(y_2 - y_1))',
    r_y: '((x_2 - x_1)*(z_3 - z_1) - (x_3 - x_1)*(z_2 - z_1))/((x_2 - x_1)*(y_3 - y_1) - (x_3 - x_1)*(y_2 - y_1))',
  },
  source: 'Analytic geometry: two equations for the two rises, from the differences of three heights.',
  refuses: (places) => inLine(places),
  compute: ({ x_1, y_1, z_1, x_2, y_2, z_2, x_3, y_3, z_3 }) => {
    const twice = twiceArea({ x_1, y_1, x_2, y_2, x_3, y_3 });
    return {
      q_x: plain(((z_2 - z_1) * (y_3 - y_1) - (z_3 - z_1) * (y_2 - y_1)) / twice),
      r_y: plain(((x_2 - x_1) * (z_3 - z_1) - (x_3 - x_1) * (z_2 - z_1)) / twice),
    };
  },
});

/** Places nearer than this tell no slope, mm. */
const NEAREST_PLACES = 1;

export const edgeRises = relation({
  name: 'edge-rises',
  says: 'How much an edge rises per length, from two heights along it.',
  takes: ['x_1', 'z_1', 'x_2', 'z_2'],
  gives: { q_x: '(z_2 - z_1)/(x_2 - x_1)' },
  source: 'Analytic geometry: the slope of a line through two points.',
  refuses: ({ x_1, x_2 }) => (Math.abs(x_2 - x_1) >= NEAREST_PLACES ? undefined : bad('places-too-near', {})),
  compute: ({ x_1, z_1, x_2, z_2 }) => ({ q_x: plain((z_2 - z_1) / (x_2 - x_1)) }),
});

/** Three places as relations name them, mm. */
export interface Triangle {
  readonly x_1: number;
  readonly y_1: number;
  readonly x_2: number;
  readonly y_2: number;
  readonly x_3: number;
  readonly y_3: number;
}

/** Twice the area of the triangle, positive where its corners go round anticlockwise. */
export const twiceArea = ({ x_1, y_1, x_2, y_2, x_3, y_3 }: Triangle): number =>
  (x_2 - x_1) * (y_3 - y_1) - (x_3 - x_1) * (y_2 - y_1);

/** Why three places span no triangle to work with; undefined where they do. Its width is held to LEAST_ROUNDNESS of its length. */
export const inLine = (t: Triangle): Bad | undefined => {
  const longest = Math.max(
    Math.hypot(t.x_2 - t.x_1, t.y_2 - t.y_1),
    Math.hypot(t.x_3 - t.x_2, t.y_3 - t.y_2),
    Math.hypot(t.x_1 - t.x_3, t.y_1 - t.y_3),
  );
  if (!(longest >= NEAREST_PLACES)) return bad('places-too-near', {});
  return Math.abs(twiceArea(t)) >= LEAST_ROUNDNESS * longest ** 2 ? undefined : bad('places-in-line', {});
};

/**
 * Places whose short spread is below a thousandth of the long one stand in a line for all practical purposes: an
 * error of a micrometre in a reading would become a millimetre as far off the line as the line is long.
 */
const LEAST_ROUNDNESS = 1e-3;

/** Greatest coordinate or height taken, mm: a hundred metres, beyond any plate. */
const FARTHEST = 1e5;

/** Fits the plane; refuses fewer than three points, points in a line, and numbers that are none. */
export const planeThrough = (points: readonly Point[], what: PlacesRead = 'points'): Result<PlaneFit> => {
  if (!(points.length >= 3)) return bad('too-few-for-plane', { count: points.length, what });
  for (const [i, point] of points.entries())
    for (const [axis, value] of [
      ['x', point.x],
      ['y', point.y],
      ['height', point.z],
    ] as const)
      if (!(Math.abs(value) <= FARTHEST))
        return bad('place-past-bounds', { place: i + 1, what, axis, value, most: FARTHEST });
  const n = points.length;
  const mean = (of: (point: Point) => number) => {
    const rough = points.reduce((sum, point) => sum + of(point), 0) / n;
    // The second pass takes out what rounding left of the first.
    return rough + points.reduce((sum, point) => sum + (of(point) - rough), 0) / n;
  };
  const [x0, y0, z0] = [mean((c) => c.x), mean((c) => c.y), mean((c) => c.z)];
  const dx = points.map((c) => c.x - x0);
  const dy = points.map((c) => c.y - y0);
  const round = roundness(dx, dy);
  const fit = leastSquares(
    [dx, dy],
    points.map((c) => c.z - z0),
  );
  if (!(round >= LEAST_ROUNDNESS) || fit === undefined) return bad('plane-of-a-line', { count: n, what });
  const [q = 0, r = 0] = fit.coefficients;
  const [[S11 = 0, S12 = 0] = [], [, S22 = 0] = []] = fit.inverse;
  const freedom = n - 3;
  return good({
    p: mm(z0 - q * x0 - r * y0),
    q: plain(q),
    r: plain(r),
    residuals: freedom === 0 ? points.map(() => mm(0)) : fit.residuals.map(mm),
    scatter: mm(freedom === 0 ? 0 : Math.sqrt(fit.sumOfSquares / freedom)),
    freedom,
    roundness: plain(round),
    magnification: ({ x, y }) => {
      const [u, v] = [x - x0, y - y0];
      return plain(Math.sqrt(1 / n + u * u * S11 + 2 * u * v * S12 + v * v * S22));
    },
  });
};

/** Height of the plane at a place. */
export const heightAt = (plane: Plane, { x, y }: Place): Millimetres => mm(plane.p + plane.q * x + plane.r * y);

/** The tilt of a plane in the words of the trade. */
export const tiltOf = ({ q, r }: Pick<Plane, 'q' | 'r'>): Tilt => {
  const slope = Math.hypot(q, r);
  const angle = Math.atan(slope);
  return {
    slope: plain(slope),
    micrometresPerMetre: slope * 1e6,
    angle: rad(angle),
    arcSeconds: (angle * 648000) / Math.PI,
    uphill: rad(slope === 0 ? 0 : Math.atan2(r, q)),
  };
};

/** √(least over greatest eigenvalue) of the scatter of centred places. */
const roundness = (dx: readonly number[], dy: readonly number[]): number => {
  const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, v, i) => sum + v * at(b, i), 0);
  const [xx, xy, yy] = [dot(dx, dx), dot(dx, dy), dot(dy, dy)];
  const greatest = (xx + yy + Math.hypot(xx - yy, 2 * xy)) / 2;
  if (!(greatest > 0)) return 0;
  // The least one from the determinant: the difference of two near-equal numbers would be rounding alone.
  return Math.sqrt(Math.max(0, (xx * yy - xy * xy) / greatest) / greatest);
};
