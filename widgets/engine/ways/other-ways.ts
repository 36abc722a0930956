/**
 * Other ways to the same fine motion: plain fine screw, wedge, lever, ball lifted by squeezing three balls.
 *
 * Equations:
 *   plain screw   z = L n
 *   wedge         rise = travel · tan φ
 *   lever         output = input · b/a, b the short arm, a the long one
 *   three balls   centres of three balls of radius R at the corners of an equilateral triangle of side s carry a ball
 *                 of radius r: its centre stands h = √((r + R)² − s²/3) above theirs; with q = s/√3 the distance
 *                 of a centre from the axis, dh/dq = −q/h, so opening lowers it; q ≥ 2R/√3, where they touch
 * Source: geometry; the ball lift is checked in the tests against three spheres in space. Small angles of the
 * lever only. Sign: rise positive up; a spread that opens lowers. Units: mm, rad, turns.
 *
 * `sameMotion` sizes all five for one wanted motion with one drive screw, so that they compare on one page.
 * Its heights are those of the working parts alone, the same rule for each; it is a comparison, no design.
 */
import { mm, plain } from '../kernel/quantity.ts';
import { outOfBounds, relation } from '../kernel/relation.ts';
import { bad, good, type Result } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'balls-collide': { readonly radius: number; readonly spacing: number };
    'ball-falls-between-balls': { readonly spacing: number; readonly most: number };
    'wanted-size': {
      readonly what: 'resolution' | 'stroke' | 'height' | 'short arm' | 'seat' | 'engagement' | 'ball';
      readonly value: number;
      readonly most: number;
    };
    'hand-angle': { readonly angle: number };
    'price-of-way': { readonly way: string; readonly price: unknown };
    'pair-of-equal-leads': Record<string, never>;
  }
}

export const wedgeRise = relation({
  name: 'wedge-rise',
  says: 'Rise of a wedge pushed along its base.',
  takes: ['x_w', 'phi_w'],
  gives: { z: 'x_w*tan(phi_w)' },
  source: 'Geometry of an incline.',
  compute: ({ x_w, phi_w }) => ({ z: mm(x_w * Math.tan(phi_w)) }),
});

export const leverMotion = relation({
  name: 'lever-motion',
  says: 'Motion at the short arm of a lever, for small angles.',
  takes: ['z_l', 'b_l', 'a_l'],
  gives: { z: 'z_l*b_l/a_l' },
  source: 'Similar triangles; 0.5 % off the arc at 10° of swing.',
  compute: ({ z_l, b_l, a_l }) => ({ z: mm((z_l * b_l) / a_l) }),
});

const noLift = ({ r_t, R_t, s_t }: { readonly r_t: number; readonly R_t: number; readonly s_t: number }) => {
  if (!(s_t >= 2 * R_t * (1 - 1e-12))) return bad('balls-collide', { radius: R_t, spacing: s_t });
  const most = Math.sqrt(3) * (r_t + R_t);
  if (!(s_t < most * 0.999)) return bad('ball-falls-between-balls', { spacing: s_t, most });
  return undefined;
};

export const ballLift = relation({
  name: 'ball-lift',
  says: 'Height of a ball on three others, centre above centres, and how fast it falls as they spread from the axis.',
  takes: ['r_t', 'R_t', 's_t'],
  gives: {
    h_t: 'sqrt((r_t + R_t)^2 - s_t^2/3)',
    m_t: 's_t/sqrt(3)/sqrt((r_t + R_t)^2 - s_t^2/3)',
  },
  source: 'Tetrahedron of four centres; the derivative of its height by the spread q = s/√3.',
  refuses: noLift,
  compute: ({ r_t, R_t, s_t }) => {
    const h = Math.sqrt((r_t + R_t) ** 2 - s_t ** 2 / 3);
    return { h_t: mm(h), m_t: plain(s_t / Math.sqrt(3) / h) };
  },
});

export interface WantedMotion {
  /** Finest motion wanted for the finest repeatable angle of the hand, mm. */
  readonly resolution: number;
  /** Mm. */
  readonly stroke: number;
  /** Height that may be taken, mm. */
  readonly height: number;
  /** Finest repeatable angle of the hand, rad (common practice, no source: 1° to 2° on a small knob). */
  readonly hand: number;
}

export interface Workshop {
  /** Finest lead that can be had as a tap and die, mm. */
  readonly finestLead: number;
  /** Lead of the screw that drives wedge, lever and balls, mm. */
  readonly driveLead: number;
  /** Engagement to be kept in each thread, mm. */
  readonly engagement: number;
  /** Leads of the pair's threads, mm, both right hand. */
  readonly pair: { readonly A: number; readonly C: number };
  /** Short arm of the lever, seat length of the wedge, ball radius, mm. */
  readonly shortArm: number;
  readonly seat: number;
  readonly ball: number;
  /** Major diameter of the drive screw, mm: a wedge that it pushes is no lower. Nothing is added where it is left out. */
  readonly driveDiameter?: number;
  /** Price of each way, in one currency; a way without one is compared without. */
  readonly prices?: Partial<Record<WayName, number>>;
}

export type WayName = 'plain screw' | 'wedge' | 'lever' | 'squeezed balls' | 'differential screw';

export interface Way {
  readonly name: WayName;
  /** Motion of the tip per turn of the hand, mm. */
  readonly perTurn: number;
  /** Motion for the finest angle of the hand, mm. */
  readonly resolution: number;
  readonly stroke: number;
  /** Height taken along the motion, and length taken across it, mm. */
  readonly height: number;
  readonly length: number;
  /** Price, or undefined where none was given. */
  readonly price: number | undefined;
}

/** The five ways side by side for one wanted motion. A missing price is left out, never taken as nought. */
export const sameMotion = (wanted: WantedMotion, shop: Workshop): Result<readonly Way[]> => {
  for (const [what, value, most] of [
    ['resolution', wanted.resolution, 20],
    ['stroke', wanted.stroke, 1e4],
    ['height', wanted.height, 1e4],
    ['short arm', shop.shortArm, 1e4],
    ['seat', shop.seat, 1e3],
    ['engagement', shop.engagement, 500],
    ['ball', shop.ball, 500],
  ] as const)
    if (!(value > 0 && value <= most)) return bad('wanted-size', { what, value, most });
  // A tired hand is the reader’s business; only an angle that divides by nothing, or is none, is refused.
  if (!(wanted.hand > 0 && wanted.hand <= 4e3)) return bad('hand-angle', { angle: wanted.hand });
  const refusal =
    outOfBounds('L', shop.finestLead) ??
    outOfBounds('L', shop.driveLead) ??
    outOfBounds('L_A', shop.pair.A) ??
    outOfBounds('L_C', shop.pair.C);
  if (refusal) return refusal;
  for (const [name, price] of Object.entries(shop.prices ?? {}))
    if (!(typeof price === 'number' && price >= 0 && price <= 1e9)) return bad('price-of-way', { way: name, price });
  const turn = wanted.hand / (2 * Math.PI);
  /** The lead that the wanted resolution asks for. */
  const lead = wanted.resolution / turn;
  const ratio = lead / shop.driveLead;
  const S = wanted.stroke;
  const way = (name: WayName, perTurn: number, stroke: number, height: number, length: number): Way => ({
    name,
    perTurn,
    resolution: perTurn * turn,
    stroke,
    height,
    length,
    price: shop.prices?.[name],
  });

  const plainLead = Math.max(lead, shop.finestLead);
  const Delta = Math.abs(shop.pair.C - shop.pair.A);
  if (!(Delta > 1e-9)) return bad('pair-of-equal-leads', {});
  const taken = (S / Delta) * Math.max(shop.pair.A, shop.pair.C);
  // A ratio of one or more needs neither wedge nor lever; 45° and equal arms are the least reduction drawn.
  const slope = Math.min(ratio, 1);
  const balls = squeezed(shop.ball, S);
  return good([
    way('plain screw', plainLead, S, S + shop.engagement, 0),
    way(
      'wedge',
      shop.driveLead * slope,
      S,
      Math.max(S + shop.seat * slope, shop.driveDiameter ?? 0),
      S / slope + shop.seat,
    ),
    way('lever', shop.driveLead * slope, S, S / slope + shop.engagement, shop.shortArm / slope),
    way('squeezed balls', shop.driveLead * balls.steepest, balls.stroke, balls.height, balls.length),
    way('differential screw', Delta, S, taken + 2 * shop.engagement, 0),
  ]);
};

/** Four equal balls: the stroke asked, from touching outwards, or as much as keeps the height above half a radius. */
const squeezed = (R: number, wanted: number) => {
  const touching = (2 * R) / Math.sqrt(3);
  const top = Math.sqrt(4 * R * R - touching * touching);
  const stroke = Math.min(wanted, top - R / 2);
  const h = top - stroke;
  const spread = Math.sqrt(4 * R * R - h * h);
  return { stroke, height: top + 2 * R, length: 2 * (spread + R), steepest: spread / h };
};
