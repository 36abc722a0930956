/**
 * Three feet under a plate: from readings to what each foot is to be turned.
 *
 * The part stands on three feet at (x_i, y_i). Heights are read at three places or more and a plane P is laid through
 * them (plane.ts). The plane wanted is p* + q* x + r* y, level unless told. Then at each foot
 *   correction   c_i = p* + q* x_i + r* y_i − P(x_i, y_i)     positive: this foot must raise the part
 *   turns        n_i = c_i/Δ_i                                positive: clockwise seen from above
 *   steps        m_i = n_i k_i, rounded to whole steps        flats of a hexagon: k = 6
 * The height p* is free. Either one foot stays untouched (c = 0 there) or the mean height over the feet stays.
 * After rounding the residual plane is the wanted one plus the plane through the leftovers c_i − m_i Δ_i/k_i, sign reversed.
 *
 * Loads on the feet: the weight W at (x_g, y_g) and three upright forces, moments about two axes:
 *   N_i = W λ_i,   λ_i the barycentric weights of (x_g, y_g) in the triangle of the feet; all must be positive.
 *
 * Source: analytic geometry and statics of a rigid body on three supports.
 * Valid for small tilts: a plate tilted by t shortens in plan by t²/2 of its length, so the correction is that share
 * off (5e-5 at 10 mm per metre, 5e-3 at 100 mm per metre, where tilts are refused); a second round takes it out.
 * Units: mm, N, turns; slopes pure numbers.
 */

import { at } from '../kernel/at.ts';
import { type Millimetres, mm, type Newtons, newtons, plain, type Turns, turns } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';
import {
  heightAt,
  inLine,
  type Place,
  type Plane,
  type PlaneFit,
  type Point,
  planeThrough,
  type Tilt,
  tiltOf,
  twiceArea,
} from './plane.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'net-lead-of-nought': Record<string, never>;
    'foot-lead': { readonly foot: string; readonly lead: number };
    'foot-steps': { readonly foot: string; readonly steps: number; readonly most: number };
    'no-such-foot': { readonly foot: string; readonly feet: readonly string[] };
    'slopes-wanted': { readonly q: number; readonly r: number; readonly most: number };
    'plate-too-steep': { readonly slope: number; readonly most: number };
    'steps-of-feet': { readonly steps: readonly number[]; readonly feet: number };
    'weight-on-feet': { readonly weight: number };
    'centre-of-gravity': { readonly x: number; readonly y: number };
    'feet-would-lift': { readonly x: number; readonly y: number; readonly lifting: readonly FootLoad[] };
    'feet-not-three': { readonly count: number };
    'feet-called-alike': { readonly names: readonly string[] };
  }
}

export const turnsFor = relation({
  name: 'turns-for',
  says: 'Turns for a wanted motion, with their sense.',
  takes: ['w', 'Delta'],
  gives: { n: 'w/Delta' },
  source: 'Inverse of net motion: n turns move the carried part by n times the net lead.',
  refuses: ({ Delta }) => (Math.abs(Delta) > 0 ? undefined : bad('net-lead-of-nought', {})),
  compute: ({ w, Delta }) => ({ n: turns(w / Delta) }),
});

export const footCorrection = relation({
  name: 'foot-correction',
  says: 'How far the part must move at a foot to be level, when another foot stays.',
  takes: ['q_x', 'x_d', 'x_s', 'r_y', 'y_d', 'y_s'],
  gives: { w: 'q_x*(x_d - x_s) + r_y*(y_d - y_s)' },
  source: 'Analytic geometry: height of the plane at the foot that stays, less its height at this foot.',
  compute: ({ q_x, x_d, x_s, r_y, y_d, y_s }) => ({ w: mm(q_x * (x_d - x_s) + r_y * (y_d - y_s)) }),
});

export const edgeCorrection = relation({
  name: 'edge-correction',
  says: 'How far the part must move at a foot to level the edge, when the other foot under it stays.',
  takes: ['q_x', 'x_d', 'x_s'],
  gives: { w: 'q_x*(x_d - x_s)' },
  source: 'Analytic geometry: height of the edge at the foot that stays, less its height at this foot.',
  compute: ({ q_x, x_d, x_s }) => ({ w: mm(q_x * (x_d - x_s)) }),
});

export const oneFootLift = relation({
  name: 'one-foot-lift',
  says: 'How far a place of the part moves when the first foot moves and the two others stay.',
  takes: ['w', 'x_1', 'y_1', 'x_2', 'y_2', 'x_3', 'y_3', 'x_s', 'y_s'],
  gives: {
    z: 'w*((x_2 - x_s)*(y_3 - y_s) - (x_3 - x_s)*(y_2 - y_s))/((x_2 - x_1)*(y_3 - y_1) - (x_3 - x_1)*(y_2 - y_1))',
  },
  source:
    'Analytic geometry: the part turns about the line through the two other feet (barycentric weight of the place).',
  refuses: (places) => inLine(places),
  compute: ({ w, x_s, y_s, ...feet }) => ({
    z: mm((w * twiceArea({ ...feet, x_1: x_s, y_1: y_s })) / twiceArea(feet)),
  }),
});

export const weightOnFeet = relation({
  name: 'weight-on-feet',
  says: 'How three feet share a weight; a foot with less than zero would lift.',
  takes: ['W', 'x_g', 'y_g', 'x_1', 'y_1', 'x_2', 'y_2', 'x_3', 'y_3'],
  gives: {
    F_1: 'W*((x_2 - x_g)*(y_3 - y_g) - (x_3 - x_g)*(y_2 - y_g))/((x_2 - x_1)*(y_3 - y_1) - (x_3 - x_1)*(y_2 - y_1))',
    F_2: 'W*((x_3 - x_g)*(y_1 - y_g) - (x_1 - x_g)*(y_3 - y_g))/((x_2 - x_1)*(y_3 - y_1) - (x_3 - x_1)*(y_2 - y_1))',
    F_3: 'W*((x_1 - x_g)*(y_2 - y_g) - (x_2 - x_g)*(y_1 - y_g))/((x_2 - x_1)*(y_3 - y_1) - (x_3 - x_1)*(y_2 - y_1))',
  },
  source: 'Statics: upright forces and the moments about two axes in balance on three supports.',
  refuses: (places) => inLine(places),
  compute: ({ W, x_g, y_g, ...feet }) => {
    const whole = twiceArea(feet);
    return {
      F_1: newtons((W * twiceArea({ ...feet, x_1: x_g, y_1: y_g })) / whole),
      F_2: newtons((W * twiceArea({ ...feet, x_2: x_g, y_2: y_g })) / whole),
      F_3: newtons((W * twiceArea({ ...feet, x_3: x_g, y_3: y_g })) / whole),
    };
  },
});

/** A foot: where it stands, its net lead (mm per turn, signed) and the steps counted in one of its turns. */
export interface Foot extends Place {
  readonly name: string;
  readonly Delta: number;
  readonly k: number;
}

/** What stays: one foot, by its name, or the mean height over the three feet, lifted by `lift` mm where that is given. */
export type Kept = { readonly kind: 'foot'; readonly name: string } | { readonly kind: 'mean'; readonly lift?: number };

export interface LevellingJob {
  readonly feet: readonly Foot[];
  readonly readings: readonly Point[];
  readonly keep: Kept;
  /** Slopes wanted; level where left out. */
  readonly wanted?: { readonly q: number; readonly r: number };
}

export type Sense = 'clockwise' | 'anticlockwise' | 'none';

export interface FootMove {
  readonly name: string;
  /** How far the part must move here, up positive. */
  readonly correction: Millimetres;
  /** Clockwise seen from above positive. */
  readonly turns: Turns;
  /** The same in steps, before rounding. */
  readonly steps: number;
  readonly wholeSteps: number;
  /** Sense of the whole steps. */
  readonly sense: Sense;
  /** What the whole steps move. */
  readonly moved: Millimetres;
  /** What rounding leaves undone, correction less moved. */
  readonly left: Millimetres;
}

export interface Levelling {
  /** The plane through the readings. */
  readonly plane: PlaneFit;
  /** Its tilt against the plane wanted. */
  readonly tilt: Tilt;
  readonly moves: readonly FootMove[];
  /** The plane to be expected when the whole steps have been turned. */
  readonly after: Plane;
  /** Its tilt against the plane wanted. */
  readonly residualTilt: Tilt;
  /** What the next readings should be, at the same places. */
  readonly expected: readonly Point[];
}

/** A plate on feet is within this of level before anyone reads it to micrometres: beyond it a unit is wrong. */
const STEEPEST = 0.1;
/** Steps in one turn: anything up to a finely divided drum. */
const MOST_STEPS = 10_000;

/** What each foot is to be turned; refuses bad places, equal leads, readings in a line and tilts no plate has. */
export const levelPlate = (job: LevellingJob): Result<Levelling> => {
  const { feet, readings, keep } = job;
  const triangle = feetPlane(feet, [0, 0, 0]);
  if (!triangle.ok) return triangle;
  for (const foot of feet) {
    if (!(Math.abs(foot.Delta) > 0 && Math.abs(foot.Delta) <= 120))
      return bad('foot-lead', { foot: foot.name, lead: foot.Delta });
    if (!(Number.isInteger(foot.k) && foot.k >= 1 && foot.k <= MOST_STEPS))
      return bad('foot-steps', { foot: foot.name, steps: foot.k, most: MOST_STEPS });
  }
  const kept = keep.kind === 'foot' ? feet.find((foot) => foot.name === keep.name) : undefined;
  if (keep.kind === 'foot' && kept === undefined)
    return bad('no-such-foot', { foot: keep.name, feet: feet.map((f) => f.name) });
  const fit = planeThrough(readings, 'readings');
  if (!fit.ok) return fit;
  const plane = fit.value;
  const { q: wantedQ, r: wantedR } = job.wanted ?? { q: 0, r: 0 };
  if (!(Math.hypot(wantedQ, wantedR) <= STEEPEST))
    return bad('slopes-wanted', { q: wantedQ, r: wantedR, most: STEEPEST });
  const tilt = tiltOf({ q: plain(plane.q - wantedQ), r: plain(plane.r - wantedR) });
  if (!(tilt.slope <= STEEPEST)) return bad('plate-too-steep', { slope: tilt.slope, most: STEEPEST });
  // Lack against a wanted plane of height nought at the origin; only its differences count until the height is settled.
  const lacks = feet.map((foot) => wantedQ * foot.x + wantedR * foot.y - heightAt(plane, foot));
  const height =
    kept === undefined
      ? lacks.reduce((sum, c) => sum + c, 0) / lacks.length - (keep.kind === 'mean' ? (keep.lift ?? 0) : 0)
      : at(lacks, feet.indexOf(kept));
  const moves = feet.map((foot, i) => moveOf(foot, at(lacks, i) - height));
  const moved = feetPlane(
    feet,
    moves.map((move) => move.moved),
  );
  if (!moved.ok) return moved;
  // From what is left over, and not as the plane read and the plane moved, whose sum is dust where nothing is left.
  const left = feetPlane(
    feet,
    moves.map((move) => -move.left),
  );
  if (!left.ok) return left;
  const after = sum({ p: mm(-height), q: plain(wantedQ), r: plain(wantedR) }, left.value);
  return good({
    plane,
    tilt,
    moves,
    after,
    residualTilt: tiltOf({ q: plain(after.q - wantedQ), r: plain(after.r - wantedR) }),
    expected: readings.map((point) => ({ x: point.x, y: point.y, z: point.z + heightAt(moved.value, point) })),
  });
};

export interface FootCheck {
  readonly name: string;
  /** What the steps turned should have moved. */
  readonly expected: Millimetres;
  /** What the new readings say was moved. */
  readonly found: Millimetres;
  /** found less expected: lead error, lost motion, or a slip of counting. */
  readonly extra: Millimetres;
}

/**
 * The next round: what is still to turn after new readings, and whether each foot did what its steps say.
 *
 * `turned` holds the steps really turned, clockwise positive, in the order of the feet. The indicator must have kept
 * its zero between the rounds; a lost zero shows as the same extra at all three feet.
 */
export const nextRound = (
  job: LevellingJob,
  turned: readonly number[],
  readings: readonly Point[],
): Result<{ readonly levelling: Levelling; readonly checks: readonly FootCheck[] }> => {
  const refusal = oddSteps(job.feet, turned);
  if (refusal) return refusal;
  const before = levelPlate(job);
  if (!before.ok) return before;
  const now = levelPlate({ ...job, readings });
  if (!now.ok) return now;
  const checks = job.feet.map((foot, i) => {
    const expected = (at(turned, i) * foot.Delta) / foot.k;
    const found = heightAt(now.value.plane, foot) - heightAt(before.value.plane, foot);
    return { name: foot.name, expected: mm(expected), found: mm(found), extra: mm(found - expected) };
  });
  return good({ levelling: now.value, checks });
};

/**
 * What the indicator reads when these steps have been turned, clockwise positive, in the order of the feet. The net lead
 * of each foot is the true one here, so that feet which do not quite move as designated can be tried.
 */
export const readingsAfter = (
  feet: readonly Foot[],
  steps: readonly number[],
  readings: readonly Point[],
): Result<readonly Point[]> => {
  const refusal = oddSteps(feet, steps);
  if (refusal) return refusal;
  const moved = feetPlane(
    feet,
    feet.map((foot, i) => (at(steps, i) * foot.Delta) / foot.k),
  );
  if (!moved.ok) return moved;
  return good(readings.map((point) => ({ ...point, z: point.z + heightAt(moved.value, point) })));
};

const oddSteps = (feet: readonly Foot[], steps: readonly number[]): Bad | undefined =>
  steps.length === feet.length && steps.every((m) => Math.abs(m) <= 1e6)
    ? undefined
    : bad('steps-of-feet', { steps, feet: feet.length });

export interface FootLoad {
  readonly name: string;
  readonly load: Newtons;
}

/** Loads on the three feet from a weight in N acting at a place; refuses where a foot would not be pressed down. */
export const footLoads = (
  feet: readonly (Place & { readonly name: string })[],
  weight: number,
  centre: Place,
): Result<readonly FootLoad[]> => {
  const triangle = feetPlane(feet, [0, 0, 0]);
  if (!triangle.ok) return triangle;
  if (!(weight > 0 && weight <= 1e7)) return bad('weight-on-feet', { weight });
  if (!(Math.abs(centre.x) <= 1e5 && Math.abs(centre.y) <= 1e5))
    return bad('centre-of-gravity', { x: centre.x, y: centre.y });
  const loads: FootLoad[] = [];
  for (const [i, foot] of feet.entries()) {
    // The barycentric weight of foot i is the plane that is 1 at that foot and 0 at the two others.
    const share = feetPlane(
      feet,
      feet.map((_, j) => (i === j ? 1 : 0)),
    );
    if (!share.ok) return share;
    loads.push({ name: foot.name, load: newtons(weight * heightAt(share.value, centre)) });
  }
  // Rounding leaves some 1e-17 of the weight where the truth is nought.
  const dust = 1e-12 * weight;
  const lifting = loads
    .filter(({ load }) => !(load > dust))
    .map(({ name, load }) => ({ name, load: Math.abs(load) > dust ? load : newtons(0) }));
  if (lifting.length > 0) return bad('feet-would-lift', { x: centre.x, y: centre.y, lifting });
  return good(loads);
};

const moveOf = (foot: Foot, correction: number): FootMove => {
  const n = correction / foot.Delta;
  const steps = n * foot.k;
  // By the amount, so that mirrored hands round alike at a half; adding nought turns −0 into 0.
  const wholeSteps = Math.sign(steps) * Math.round(Math.abs(steps)) + 0;
  const moved = (wholeSteps * foot.Delta) / foot.k;
  return {
    name: foot.name,
    correction: mm(correction),
    turns: turns(n),
    steps,
    wholeSteps,
    sense: wholeSteps > 0 ? 'clockwise' : wholeSteps < 0 ? 'anticlockwise' : 'none',
    moved: mm(moved + 0),
    left: mm(leftOf(correction, moved, foot)),
  };
};

/** What rounding leaves; the rest of a subtraction of binary fractions is nothing, and would be shown as a micrometre of many noughts. */
const leftOf = (correction: number, moved: number, { Delta, k }: Foot): number => {
  const left = correction - moved;
  return Math.abs(left) < (1e-9 * Math.abs(Delta)) / k ? 0 : left;
};

/** The plane that has these heights at the three feet. */
const feetPlane = (
  feet: readonly (Place & { readonly name: string })[],
  heights: readonly number[],
): Result<PlaneFit> => {
  if (!(feet.length === 3)) return bad('feet-not-three', { count: feet.length });
  if (!(new Set(feet.map((foot) => foot.name)).size === 3))
    return bad('feet-called-alike', { names: feet.map((foot) => foot.name) });
  return planeThrough(
    feet.map((foot, i) => ({ x: foot.x, y: foot.y, z: at(heights, i) })),
    'feet',
  );
};

const sum = (a: Plane, b: Plane): Plane => ({ p: mm(a.p + b.p), q: plain(a.q + b.q), r: plain(a.r + b.r) });
