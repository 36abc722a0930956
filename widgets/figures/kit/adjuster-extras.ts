/**
 * What stands beside the parts of an adjuster and on them, for the flat drawing and the solid alike: the post that guides the carried part, stated
 * or assumed, the tip, the springs that are stated, at their radius, and the room that all of it takes. Lengths in mm, x from the axis, z from the
 * bottom of the base.
 */
import { type Adjuster, partsOf, type Standing, standing } from '../../assembly/adjuster/adjuster.ts';
import { heightOf, type Part, reach, type Step } from '../../assembly/adjuster/part.ts';
import type { Point } from '../../assembly/adjuster/surface.ts';

export const widestStep = (part: Part): Step =>
  part.outer.reduce((best, o) => (reach(o) > reach(best) + 1e-9 ? o : best));

const widest = (a: Adjuster): number => Math.max(...partsOf(a).flatMap((p) => p.outer.map(reach)));
const largest = (a: Adjuster): number => Math.max(a.A.thread.d, a.C?.thread.d ?? 0);

/** Both ends of the travel, or so many turns each way. */
const endsOf = (a: Adjuster, most: number): readonly Standing[] =>
  [Math.max(a.anticlockwise.n, -most), Math.min(a.clockwise.n, most)].map((n) => standing(a, n));

/** A round post on the base, left of the axis, and the arm of the carried part that slides along it. */
export interface Post {
  /** Of its middle: negative. */
  readonly x: number;
  readonly half: number;
  readonly top: number;
  /** In the frame of the carried part: from beyond the post to the side of its widest step; a post inside that goes through it and needs none. */
  readonly arm: { readonly from: number; readonly to: number; readonly low: number; readonly high: number } | undefined;
}

/** Undefined where the carried part is held by springs or by nothing. The post is as high as the carried part rises within so many turns. */
export const postOf = (a: Adjuster, most = Number.POSITIVE_INFINITY): Post | undefined => {
  const { lock, carried } = a;
  if (!carried || lock.kind === 'none' || lock.kind === 'springs') return undefined;
  const half = 0.12 * largest(a);
  const x = lock.kind === 'assumed' ? -widest(a) - 0.25 * largest(a) : -Math.max(lock.radius, half);
  const step = widestStep(carried);
  const inside = x + 1.25 * half >= -step.r;
  return {
    x,
    half,
    top: Math.max(...endsOf(a, most).map((s) => s.at.carried + heightOf(carried))),
    arm: inside
      ? undefined
      : {
          from: x - 2.2 * half,
          to: -step.r,
          low: step.from,
          high: step.from + Math.min(step.to - step.from, 0.45 * largest(a)),
        },
  };
};

const ROUND = 12;

/** The right half of the outline of the tip, from the axis to the axis, bottom to top; z over the top of its part. */
export const tipOf = (a: Adjuster): readonly Point[] => {
  const { tip } = a;
  if (!(tip.stands > 0)) return [];
  const arc = (r: number, high: number, middle: number, from: number): Point[] =>
    Array.from({ length: 2 * ROUND + 1 }, (_, i) => {
      const t = from + ((Math.PI / 2 - from) * i) / (2 * ROUND);
      const end = i === 2 * ROUND || (i === 0 && from < 0);
      return [end ? 0 : r * Math.cos(t), middle + high * Math.sin(t)];
    });
  if (tip.kind === 'ball') return arc(tip.diameter / 2, tip.diameter / 2, tip.stands - tip.diameter / 2, -Math.PI / 2);
  const half = 0.3 * largest(a);
  if (tip.kind === 'round') return [[0, 0], ...arc(half, tip.stands, 0, 0)];
  return tip.kind === 'cone'
    ? [
        [0, 0],
        [half, 0],
        [0, tip.stands],
      ]
    : [
        [0, 0],
        [half, 0],
        [half, tip.stands],
        [0, tip.stands],
      ];
};

export interface Extents {
  readonly bottom: number;
  readonly top: number;
  /** From the axis to the outside of the widest part, ball or spring. */
  readonly half: number;
  /** From the axis to the outside of the guide. */
  readonly left: number;
}

/** Room for every position between the stops, or within so many turns each way. */
export const extentsOf = (a: Adjuster, most = Number.POSITIVE_INFINITY): Extents => {
  const ends = endsOf(a, most);
  const { left, right } = reachesOf(a);
  const ball = a.tip.kind === 'ball' ? a.tip.diameter : 0;
  return {
    bottom: Math.min(0, ...ends.flatMap(({ at, height }) => [at.turned, at.carried, height - ball])),
    top: Math.max(...ends.flatMap((s) => [s.height, s.at.turned + heightOf(a.turned)])),
    half: right,
    left,
  };
};

/** The radius of the springs: as stated, or just outside all parts. */
export const springRadius = (a: Adjuster): number => a.springs?.radius ?? widest(a) + 0.3 * largest(a);

/** Half the width of a coil. */
const coilOf = (a: Adjuster): number => 0.13 * largest(a);

/** How far all this and the tip reach from the axis. */
export const reachesOf = (a: Adjuster): { readonly left: number; readonly right: number } => {
  const ball = a.tip.kind === 'ball' ? a.tip.diameter / 2 : 0;
  const springs = a.springs ? springRadius(a) + coilOf(a) : 0;
  const half = Math.max(widest(a), ball, springs);
  const post = postOf(a);
  return { left: post ? Math.max(half, -post.x + 2.2 * post.half) : half, right: half };
};

/** The post and the arm in section. */
export const guideOf = (a: Adjuster, s: Standing): readonly (readonly Point[])[] => {
  const post = postOf(a);
  if (!post) return [];
  const { x, half, top, arm } = post;
  const rectangle = (x0: number, x1: number, z0: number, z1: number): Point[] => [
    [x0, z0],
    [x1, z0],
    [x1, z1],
    [x0, z1],
  ];
  const at = s.at.carried;
  return [
    rectangle(x - half, x + half, 0, top),
    ...(arm
      ? [
          rectangle(x + 1.25 * half, arm.to, at + arm.low, at + arm.high),
          rectangle(arm.from, x - 1.25 * half, at + arm.low, at + arm.high),
        ]
      : []),
  ];
};

const COILS = 7;

/** The two parts that springs join. */
const joined = (a: Adjuster): readonly [Part, Part] | undefined => {
  const { springs } = a;
  if (!springs) return undefined;
  const [lower, upper] = (
    {
      'base and carried': [a.base, a.carried],
      'base and turned': [a.base, a.turned],
      'turned and carried': [a.turned, a.carried],
    } as const
  )[springs.between];
  return lower && upper ? [lower, upper] : undefined;
};

/** Heights of the two ends of the springs over the bottom of the base, where the parts stand so. */
export const springEnds = (a: Adjuster, s: Pick<Standing, 'at'>): { foot: number; head: number } | undefined => {
  const parts = joined(a);
  if (!parts) return undefined;
  const radius = springRadius(a);
  return { foot: holdOf(parts[0], s, radius, 'above').z, head: holdOf(parts[1], s, radius, 'below').z };
};

/** Each spring as a line: the arm that holds its foot, the coils seen from the side, the arm that holds its head. */
export const springsOf = (a: Adjuster, s: Standing): readonly (readonly Point[])[] => {
  const { springs } = a;
  const parts = joined(a);
  if (!springs || !parts) return [];
  const [lower, upper] = parts;
  const [radius, half] = [springRadius(a), coilOf(a)];
  const [foot, head] = [holdOf(lower, s, radius, 'above'), holdOf(upper, s, radius, 'below')];
  return placesOf(springs.count).map((share) => {
    const x = radius * share;
    const length = head.z - foot.z;
    const coils = Array.from({ length: 2 * COILS + 1 }, (_, i): Point => {
      const z = foot.z + length * (0.12 + (0.76 * i) / (2 * COILS));
      return [x + (i % 2 === 0 ? -half : half), z];
    });
    const side = Math.sign(share) || 1;
    return [[side * foot.edge, foot.z], [x, foot.z], ...coils, [x, head.z], [side * head.edge, head.z]] as Point[];
  });
};

/** Where springs round the axis appear from the front, as shares of their radius; those behind one another once. */
const placesOf = (count: number): readonly number[] => [
  ...new Set(Array.from({ length: count }, (_, i) => Number(Math.cos((2 * Math.PI * i) / count).toFixed(6)))),
];

/** A part holds a spring at the face of its widest step where that is wide enough, else on an arm from its side. */
const holdOf = (
  part: Part,
  { at }: Pick<Standing, 'at'>,
  radius: number,
  face: 'above' | 'below',
): { readonly z: number; readonly edge: number } => {
  const step = widestStep(part);
  const base = at[part.role];
  if (radius < reach(step)) return { z: base + (face === 'above' ? step.to : step.from), edge: radius };
  const z = base + (step.from + step.to) / 2;
  // From inside the side of a prism, which hides it, since a flat stands nearer than a corner.
  return { z: Math.min(base + heightOf(part), z), edge: step.r };
};
