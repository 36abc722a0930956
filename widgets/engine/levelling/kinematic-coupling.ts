/**
 * Three balls in three vees: the six contact forces.
 *
 * The balls belong to the part above, the vees to the part below. A vee is a straight groove with two flat flanks,
 * lying level; its flanks stand at the half-angle α to the upright middle plane. Ball i has its centre at c_i, its
 * groove runs along g = (cos φ, sin φ, 0); across it lies t = (−sin φ, cos φ, 0). The flanks press the ball along
 *   u± = (± t cos α + ẑ sin α),   through the ball's centre, whatever its radius.
 * Frictionless equilibrium of the upper part under forces F_k at points a_k, six equations in six unknowns N:
 *   Σ N u + Σ F = 0,   Σ N (c × u) + Σ a × F = 0.
 * A vee can push and not pull: every N must be positive, else that flank opens.
 *
 * Source: statics of a rigid body; the arrangement is Maxwell’s (three vees), as treated in Slocum, Precision Machine
 * Design, ch. 7 (from memory). The tests compare with the closed form of the even arrangement and with virtual work.
 * Signs: z up; `left` is the flank whose push points to the left of the groove direction seen from above (u with +t).
 * Units: mm, N, rad. Friction, which in truth adds forces along the grooves, is left out.
 */

import { at } from '../kernel/at.ts';
import { type Newtons, newtons } from '../kernel/quantity.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { leastSquares } from '../numerics/least-squares.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'coupling-loose': Record<string, never>;
    'coupling-load': { readonly force: Vector; readonly at: Vector };
    'coupling-without-load': Record<string, never>;
    'balls-of-coupling': { readonly count: number };
    'ball-of-coupling': { readonly ball: string; readonly centre: Vector; readonly direction: number };
    'vee-of-coupling': { readonly ball: string; readonly halfAngle: number };
  }
}

export type Vector = readonly [number, number, number];

export interface BallInVee {
  readonly name: string;
  /** Centre of the ball, mm. */
  readonly centre: Vector;
  /** Direction of the groove in plan, anticlockwise from x, rad. */
  readonly direction: number;
  /** Half the angle between the flanks, rad; π/4 for a vee of 90°. */
  readonly halfAngle: number;
}

/** A force on the upper part, N, and a point on its line, mm. A weight is [0, 0, −W] at the centre of gravity. */
export interface Load {
  readonly force: Vector;
  readonly at: Vector;
}

export interface Contact {
  readonly ball: string;
  readonly flank: 'left' | 'right';
  /** Direction in which the flank pushes the ball, length 1. */
  readonly normal: Vector;
  readonly force: Newtons;
}

/** The least share of a constraint that must be its own: below it the coupling is loose in some motion. */
const LOOSE = 1e-6;

/**
 * The six contact forces that balance the loads, also where one of them would have to pull (negative): then that flank
 * opens, and the forces are those the coupling would need and does not have. Refuses a coupling that is loose in some motion.
 */
export const contactForces = (balls: readonly BallInVee[], loads: readonly Load[]): Result<readonly Contact[]> => {
  const contacts = contactsOf(balls);
  if (!contacts.ok) return contacts;
  for (const load of loads)
    if (![...load.force, ...load.at].every((v) => Math.abs(v) <= 1e7)) return bad('coupling-load', load);
  if (!loads.some(({ force }) => force.some((v) => v !== 0))) return bad('coupling-without-load', {});
  const mean = (axis: 0 | 1 | 2) => balls.reduce((s, ball) => s + ball.centre[axis], 0) / 3;
  const origin: Vector = [mean(0), mean(1), mean(2)];
  // Moments about the middle of the balls over their mean distance: all six equations then weigh alike.
  const reach = balls.reduce((s, ball) => s + Math.hypot(...minus(ball.centre, origin)), 0) / 3;
  const wrench = (force: Vector, place: Vector): number[] => [
    ...force,
    ...cross(minus(place, origin), force).map((v) => v / reach),
  ];
  const rows = loads.map((load) => wrench(load.force, load.at));
  const right = [0, 1, 2, 3, 4, 5].map((i) => -rows.reduce((s, row) => s + at(row, i), 0));
  const solved = leastSquares(
    contacts.value.map(({ normal, centre }) => wrench(normal, centre)),
    right,
  );
  if (!(solved !== undefined && solved.independence > LOOSE)) return bad('coupling-loose', {});
  return good(
    contacts.value.map(({ ball, flank, normal }, i) => ({
      ball,
      flank,
      normal,
      force: newtons(at(solved.coefficients, i)),
    })),
  );
};

/** The flanks that are not pressed. Rounding leaves some 1e-16 of the largest force where the truth is nought. */
export const openFlanks = (contacts: readonly Contact[]): readonly Contact[] => {
  const largest = Math.max(...contacts.map((c) => Math.abs(c.force)));
  return contacts.filter((c) => !(c.force > 1e-9 * largest));
};

const contactsOf = (
  balls: readonly BallInVee[],
): Result<readonly (Omit<Contact, 'force'> & { readonly centre: Vector })[]> => {
  if (!(balls.length === 3)) return bad('balls-of-coupling', { count: balls.length });
  for (const { name, centre, direction, halfAngle } of balls) {
    if (!(centre.every((v) => Math.abs(v) <= 1e5) && Math.abs(direction) <= 100))
      return bad('ball-of-coupling', { ball: name, centre, direction });
    if (!(halfAngle >= Math.PI / 36 && halfAngle <= (17 * Math.PI) / 36))
      return bad('vee-of-coupling', { ball: name, halfAngle });
  }
  return good(
    balls.flatMap(({ name, centre, direction, halfAngle }) =>
      (['left', 'right'] as const).map((flank) => {
        const across = (flank === 'left' ? 1 : -1) * Math.cos(halfAngle);
        const normal: Vector = [-Math.sin(direction) * across, Math.cos(direction) * across, Math.sin(halfAngle)];
        return { ball: name, flank, normal, centre };
      }),
    ),
  );
};

/** Grooves in plan: each along the bisector of its corner, so that they meet inside; all along x; or each across its bisector. */
export type Aim = 'to the middle' | 'all one way' | 'round the middle';

/**
 * Three balls at these places, at height nought, with the grooves aimed. The bisectors of the corners meet in the
 * middle of the circle that touches all three sides. Two balls in one place have no bisector; `contactForces` refuses them.
 */
export const couplingAt = (
  places: readonly { readonly name: string; readonly x: number; readonly y: number }[],
  halfAngle: number,
  aim: Aim,
): readonly BallInVee[] => {
  // Each corner weighs as much as the side opposite to it is long.
  const sides = places.map((_, i) => {
    const [a, b] = places.filter((_, j) => j !== i);
    return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
  });
  const round = sides.reduce((sum, side) => sum + side, 0);
  const middle = (axis: 'x' | 'y') => places.reduce((sum, place, i) => sum + place[axis] * at(sides, i), 0) / round;
  const [x, y] = [middle('x'), middle('y')];
  return places.map((place) => {
    const bisector = Math.atan2(place.y - y, place.x - x);
    const direction = aim === 'all one way' ? 0 : aim === 'to the middle' ? bisector : bisector + Math.PI / 2;
    return { name: place.name, centre: [place.x, place.y, 0], direction, halfAngle };
  });
};

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
