/**
 * Contact of a ball with its seat: Hertz's solution on a flat, in a vee, on two rollers, in a cone.
 *
 * Equations, E* the contact modulus, R the ball radius, F the force across the contact:
 *   ball on flat       a³ = 3FR/(4E*), δ = a²/R, p0 = 3F/(2πa²), dF/dδ = 2E*a
 *   ellipse, a ≥ b     curvatures A ≤ B across the patch (A + B = ½ Σ 1/R), B/A = (a/b)² (K − D)/D,
 *                      b³ = 3F E(m)/(2π (a/b) E* (A + B)), p0 = 3F/(2πab), δ = p0 b K(m)/E*, m = 1 − (b/a)²
 *   ring in a cone     line load w, b² = 4wR/(πE*), p0² = E* w/(πR); approach only estimated, see coneContact
 * Source: Johnson, Contact Mechanics (1985), §4.1–4.2 (from memory; the ellipse is also in handbook form, with E,
 * K and k = b/a, as “Contact Stresses”, table 9-4, of a design handbook that was read). First yield at
 * p0 = 1.60 Y for a round contact at ν = 0.3, Johnson §6.1; the tests find the same number from the stresses
 * on the axis. The same 1.60 Y is used for ellipse and ring, where first yield comes a little later: on the safe side.
 * Sign: forces press together, approach and sink positive. Units: N, mm, MPa, N/mm, rad.
 *
 * Valid while the patch is small against the ball (refused once a is half of R), smooth, without friction, and below
 * first yield: beyond it the elastic result no longer holds.
 */

import { megapascals, mm, newtons, newtonsPerMillimetre } from '../kernel/quantity.ts';
import { outOfBounds, relation } from '../kernel/relation.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';
import { completeElliptic } from '../numerics/elliptic.ts';
import { rootBetween } from '../numerics/invert.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'dent-out-of-range': { readonly load: number; readonly least: number; readonly most: number };
    'contact-too-wide': { readonly across: number; readonly radius: number };
    'vee-closed': Record<string, never>;
    'vee-flat': Record<string, never>;
    'relative-radii': { readonly Rx: number; readonly Ry: number };
    'contact-is-a-line': Record<string, never>;
    'contact-as-large-as-ball': Record<string, never>;
    'rollers-collide': { readonly radius: number; readonly spacing: number };
    'ball-falls-between-rollers': { readonly spacing: number; readonly most: number };
    'wedge-force-past-bounds': { readonly load: number; readonly across: number };
    'contacts-run-into-one': Record<string, never>;
    'cone-angle': Record<string, never>;
    'ring-too-broad': Record<string, never>;
  }
}

/** Peak pressure over yield strength at first yield. */
export const YIELD_FACTOR = 1.6;

const DEGREE = Math.PI / 180;

export const contactModulus = relation({
  name: 'contact-modulus',
  says: 'Contact modulus of two materials pressed together.',
  takes: ['E_1', 'nu_1', 'E_2', 'nu_2'],
  gives: { E_s: '1/((1 - nu_1^2)/E_1 + (1 - nu_2^2)/E_2)' },
  source: 'Hertz; Johnson, Contact Mechanics, §4.1.',
  compute: ({ E_1, nu_1, E_2, nu_2 }) => ({
    E_s: megapascals(1 / ((1 - nu_1 ** 2) / E_1 + (1 - nu_2 ** 2) / E_2)),
  }),
});

const tooWide = ({ F, R, E_s }: { readonly F: number; readonly R: number; readonly E_s: number }): Bad | undefined => {
  return patchTooWide(Math.cbrt((3 * F * R) / (4 * E_s)), R);
};

const patchTooWide = (a: number, R: number): Bad | undefined =>
  a <= R / 2 ? undefined : bad('contact-too-wide', { across: 2 * a, radius: R });

export const ballOnFlat = relation({
  name: 'ball-on-flat',
  says: 'Ball on a flat: radius of the contact, approach, peak pressure and stiffness.',
  takes: ['F', 'R', 'E_s'],
  gives: {
    a_c: '(3*F*R/(4*E_s))^(1/3)',
    delta: '(9*F^2/(16*R*E_s^2))^(1/3)',
    p_0: '(6*F*E_s^2/(pi^3*R^2))^(1/3)',
    k_c: '2*E_s*(3*F*R/(4*E_s))^(1/3)',
  },
  source: 'Hertz; Johnson, Contact Mechanics, §4.2, equations for a round contact.',
  refuses: tooWide,
  compute: ({ F, R, E_s }) => {
    const a = Math.cbrt((3 * F * R) / (4 * E_s));
    return {
      a_c: mm(a),
      delta: mm(a ** 2 / R),
      p_0: megapascals(Math.cbrt((6 * F * E_s ** 2) / (Math.PI ** 3 * R ** 2))),
      k_c: newtonsPerMillimetre(2 * E_s * a),
    };
  },
});

export const firstYield = relation({
  name: 'first-yield',
  says: 'Load at which a flat begins to yield under a ball, below its surface; a dent that lasts comes later and grows slowly.',
  takes: ['R', 'Y', 'E_s'],
  gives: { F_y: 'pi^3*R^2*(1.6*Y)^3/(6*E_s^2)' },
  source: 'Johnson, Contact Mechanics, §6.1: first yield at a peak pressure of 1.60 Y for ν = 0.3 (from memory).',
  compute: ({ R, Y, E_s }) => ({ F_y: newtons((Math.PI ** 3 * R ** 2 * (YIELD_FACTOR * Y) ** 3) / (6 * E_s ** 2)) }),
});

/** Load and approach at first yield by Kogut and Etsion, and how many times that approach the load makes. */
const yieldedBy = ({ F, R, Y, E_s, nu_2 }: Readonly<Record<'F' | 'R' | 'Y' | 'E_s' | 'nu_2', number>>) => {
  const K = 0.454 + 0.41 * nu_2;
  const first = ((Math.PI * K * 2.8 * Y) / (2 * E_s)) ** 2 * R;
  const load = (4 / 3) * E_s * Math.sqrt(R) * first ** 1.5;
  const [low, high] = [(F / load / 1.03) ** (1 / 1.425), (F / load / 1.4) ** (1 / 1.263)];
  // The fits are stated to 6 times and from there on, but cross at 6.65: gone over where they cross, the approach neither stays nor falls as the load
  // grows. The first is a little late: just past first yield it gives less than the approach there, and nothing is left of that.
  return { first, load, times: Math.max(1, low, high) };
};
/** The fits end there: 110 times the approach at first yield. */
const MOST_YIELDED = 1.4 * 110 ** 1.263;

export const lastingDent = relation({
  name: 'lasting-dent',
  says: 'Dent that a ball leaves in a flat after a load beyond first yield; loads up to that one leave no more.',
  takes: ['F', 'R', 'Y', 'E_s', 'nu_2'],
  // By two fits that meet past six times the approach of first yield, which one line of algebra does not hold.
  gives: { z_y: undefined },
  source:
    'Load and approach: Kogut and Etsion, J. Appl. Mech. 69, 2002. What is left: Etsion, Kligerman and Kadin, Int. J. Solids Struct. 42, 2005. Both from memory.',
  refuses: ({ F, R, Y, E_s, nu_2 }) => {
    const { load } = yieldedBy({ F, R, Y, E_s, nu_2 });
    return F >= load && F <= load * MOST_YIELDED
      ? undefined
      : bad('dent-out-of-range', { load: F, least: load, most: load * MOST_YIELDED });
  },
  compute: (inputs) => {
    const { first, times } = yieldedBy(inputs);
    return { z_y: mm(first * times * (1 - times ** -0.28) * (1 - times ** -0.69)) };
  },
});

const noVee = ({ beta_v }: { readonly beta_v: number }): Bad | undefined => {
  if (!(beta_v >= DEGREE)) return bad('vee-closed', {});
  return beta_v <= 89 * DEGREE ? undefined : bad('vee-flat', {});
};

export const veeForce = relation({
  name: 'vee-force',
  says: 'Force across each of the two contacts of a ball in a vee.',
  takes: ['F', 'beta_v'],
  gives: { F_n: 'F/(2*sin(beta_v))' },
  source: 'Equilibrium, no friction; half angle from the middle plane of the vee.',
  refuses: noVee,
  compute: ({ F, beta_v }) => ({ F_n: newtons(F / (2 * Math.sin(beta_v))) }),
});

export const veeSink = relation({
  name: 'vee-sink',
  says: 'Sink of a ball in a vee from the approach at each flank.',
  takes: ['delta', 'beta_v'],
  gives: { delta_v: 'delta/sin(beta_v)' },
  source: 'Geometry: the approach is the part of the sink across the flank; twice F_n times δ is F times the sink.',
  refuses: noVee,
  compute: ({ delta, beta_v }) => ({ delta_v: mm(delta / Math.sin(beta_v)) }),
});

export interface Ellipse {
  /** Half axes of the patch, a ≥ b, mm. */
  readonly a: number;
  readonly b: number;
  readonly approach: number;
  readonly p0: number;
  /** dF/dδ, N/mm. */
  readonly stiffness: number;
}

/**
 * Elliptical contact, exact Hertz. `Rx` and `Ry` are the relative radii in the two principal planes, mm
 * (1/Rx the sum of the curvatures of both bodies there); F in N, E* in MPa. Equal radii give the round contact.
 */
export const ellipticalContact = (F: number, Rx: number, Ry: number, E_s: number): Result<Ellipse> => {
  const refusal = outOfBounds('F', F) ?? outOfBounds('E_s', E_s);
  if (refusal) return refusal;
  if (!(Rx > 0 && Ry > 0 && Rx <= 1e6 && Ry <= 1e6)) return bad('relative-radii', { Rx, Ry });
  if (!(Math.max(Rx, Ry) / Math.min(Rx, Ry) <= 1e6)) return bad('contact-is-a-line', {});
  const patch = hertz(F, Rx, Ry, E_s);
  return patch.a <= Math.max(Rx, Ry) ? good(patch) : bad('contact-as-large-as-ball', {});
};

/** The equations alone, for whatever load. */
const hertz = (F: number, Rx: number, Ry: number, E_s: number): Ellipse => {
  if (F === 0) return { a: 0, b: 0, approach: 0, p0: 0, stiffness: 0 };
  const A = 1 / (2 * Math.max(Rx, Ry));
  const B = 1 / (2 * Math.min(Rx, Ry));
  const axes = axisRatio(B / A);
  const { K, E } = completeElliptic(1 / axes ** 2);
  const b = Math.cbrt((3 * F * E) / (2 * Math.PI * axes * E_s * (A + B)));
  const a = axes * b;
  const p0 = (3 * F) / (2 * Math.PI * a * b);
  const approach = (p0 * b * K) / E_s;
  // Approach goes with F^(2/3), so dF/dδ = 3F/2δ.
  return { a, b, approach, p0, stiffness: (1.5 * F) / approach };
};

/** a/b from B/A, which grows with it; a/b lies between 1 and B/A. */
const axisRatio = (ratio: number): number => {
  const over = (logarithm: number): number => {
    const axes = Math.exp(logarithm);
    const { D, B } = completeElliptic(1 / axes ** 2);
    return (axes ** 2 * B) / D - ratio;
  };
  return Math.exp(rootBetween(over, 0, Math.log(ratio)) ?? 0);
};

export type Seat =
  | { readonly kind: 'flat' }
  /** Half angle from the middle plane, rad. */
  | { readonly kind: 'vee'; readonly halfAngle: number }
  /** Two equal parallel rollers: their radius and the distance between their centres, mm. */
  | { readonly kind: 'rollers'; readonly radius: number; readonly spacing: number }
  /** Half angle from the axis, rad. */
  | { readonly kind: 'cone'; readonly halfAngle: number };

export interface SeatContact {
  /** One for a flat, two for vee and rollers; a cone touches all round and has none to count. */
  readonly places: number;
  /** Force across each place, N; in a cone the force per millimetre of ring, N/mm. */
  readonly across: number;
  /** Half width of the patch, mm: its radius, its short half axis, or half the width of the ring. */
  readonly halfWidth: number;
  readonly halfLength: number;
  readonly p0: number;
  /** How far the ball sinks along the load, mm. */
  readonly sink: number;
  /** Stiffness along the load, N/mm. */
  readonly stiffness: number;
  /** Load at first yield, N. */
  readonly yieldLoad: number;
  readonly state: 'elastic' | 'past first yield';
  /** True where the sink is an estimate and no exact result. */
  readonly estimate: boolean;
}

/** A ball of radius R pressed by F into its seat; Y is the yield strength of whichever part yields first, MPa. */
export const seatContact = (
  seat: Seat,
  given: { readonly F: number; readonly R: number; readonly E_s: number; readonly Y: number },
): Result<SeatContact> => {
  const { F, R, E_s, Y } = given;
  const refusal = outOfBounds('F', F) ?? outOfBounds('R', R) ?? outOfBounds('E_s', E_s) ?? outOfBounds('Y', Y);
  if (refusal) return refusal;
  switch (seat.kind) {
    case 'flat':
      return pointSeat({ ...given, places: 1, slope: Math.PI / 2, Rx: R });
    case 'vee': {
      const wrong = outOfBounds('beta_v', seat.halfAngle);
      if (wrong) return wrong;
      const refused = noVee({ beta_v: seat.halfAngle });
      return refused ?? pointSeat({ ...given, places: 2, slope: seat.halfAngle, Rx: R });
    }
    case 'rollers': {
      const wrong = outOfBounds('R_c', seat.radius) ?? outOfBounds('e_r', seat.spacing);
      if (wrong) return wrong;
      if (!(seat.spacing >= 2 * seat.radius))
        return bad('rollers-collide', { radius: seat.radius, spacing: seat.spacing });
      const sine = seat.spacing / (2 * (R + seat.radius));
      if (!(sine <= Math.cos(DEGREE)))
        return bad('ball-falls-between-rollers', { spacing: seat.spacing, most: 2 * (R + seat.radius) });
      return pointSeat({
        ...given,
        places: 2,
        slope: Math.acos(sine),
        Rx: 1 / (1 / R + 1 / seat.radius),
      });
    }
    case 'cone':
      return coneContact(seat.halfAngle, given);
  }
};

interface PointSeat {
  readonly F: number;
  readonly R: number;
  readonly E_s: number;
  readonly Y: number;
  readonly places: 1 | 2;
  /** Angle between the load and the plane of each contact, rad; a right angle for a flat. */
  readonly slope: number;
  /** Relative radius across the roller; along it the ball alone counts. */
  readonly Rx: number;
}

const pointSeat = ({ F, R, E_s, Y, places, slope, Rx }: PointSeat): Result<SeatContact> => {
  const across = F / (places * Math.sin(slope));
  if (!(across <= 1e5)) return bad('wedge-force-past-bounds', { load: F, across });
  const { a, b, approach, p0, stiffness } = hertz(across, Rx, R, E_s);
  const wide = patchTooWide(a, R);
  if (wide !== undefined) return wide;
  if (places === 2 && !(a < R * Math.cos(slope))) return bad('contacts-run-into-one', {});
  // Peak pressure goes with the cube root of the force, so that of one newton tells it, however small the ball.
  const yieldLoad = places * Math.sin(slope) * ((YIELD_FACTOR * Y) / hertz(1, Rx, R, E_s).p0) ** 3;
  return good({
    places,
    across,
    halfWidth: b,
    halfLength: a,
    p0,
    sink: approach / Math.sin(slope),
    stiffness: stiffness * places * Math.sin(slope) ** 2,
    yieldLoad,
    estimate: false,
    state: stateUnder(F, yieldLoad),
  });
};

/**
 * Ring of contact in a cone: a line contact of length 2πR cos γ. Width and pressure are those of a roller of the
 * ball's radius. A line contact has no approach of its own; the ring is closed, so it has one: each surface is
 * taken as a half space under a ring load, u = w/(πE*) · (2 ln(16 r/b) + 1) with r = R cos γ, the potential of a
 * ring with an elliptical spread over the width 2b. Approximate: the surfaces are no half spaces; derived here.
 */
const coneContact = (
  halfAngle: number,
  { F, R, E_s, Y }: { readonly F: number; readonly R: number; readonly E_s: number; readonly Y: number },
): Result<SeatContact> => {
  if (!(halfAngle >= DEGREE && halfAngle <= 89 * DEGREE)) return bad('cone-angle', {});
  const ring = R * Math.cos(halfAngle);
  const w = F / (2 * Math.PI * ring * Math.sin(halfAngle));
  const b = Math.sqrt((4 * w * R) / (Math.PI * E_s));
  if (!(b <= ring / 2)) return bad('ring-too-broad', {});
  const yieldLine = (Math.PI * R * (YIELD_FACTOR * Y) ** 2) / E_s;
  const yieldLoad = yieldLine * 2 * Math.PI * ring * Math.sin(halfAngle);
  const log = b > 0 ? 2 * Math.log((16 * ring) / b) : 0;
  const approach = (w / (Math.PI * E_s)) * (log + 1);
  return good({
    places: 0,
    across: w,
    halfWidth: b,
    halfLength: Math.PI * ring,
    p0: Math.sqrt((w * E_s) / (Math.PI * R)),
    sink: approach / Math.sin(halfAngle),
    stiffness: b > 0 ? (2 * Math.PI * ring * Math.sin(halfAngle) ** 2 * Math.PI * E_s) / log : 0,
    yieldLoad,
    estimate: true,
    state: stateUnder(F, yieldLoad),
  });
};

const stateUnder = (F: number, yieldLoad: number): SeatContact['state'] =>
  F <= yieldLoad ? 'elastic' : 'past first yield';

export interface ContactMaterial {
  readonly name: string;
  /** Young's modulus and yield strength, MPa. */
  readonly E: number;
  readonly nu: number;
  readonly Y: number;
  readonly standing: 'from memory';
}

/** Usual round values, all from memory; the yield strength above all depends on the temper and the batch. */
export const CONTACT_MATERIALS: readonly ContactMaterial[] = [
  { name: 'hardened ball steel', E: 210e3, nu: 0.3, Y: 2000, standing: 'from memory' },
  { name: 'mild steel', E: 210e3, nu: 0.3, Y: 250, standing: 'from memory' },
  { name: 'aluminium 6061-T6', E: 69e3, nu: 0.33, Y: 276, standing: 'from memory' },
  { name: 'aluminium 1100-O, soft', E: 69e3, nu: 0.33, Y: 35, standing: 'from memory' },
  { name: 'brass, half hard', E: 100e3, nu: 0.34, Y: 250, standing: 'from memory' },
];
