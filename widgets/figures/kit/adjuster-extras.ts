/**
 * What stands beside the parts of an adjuster: the post that guides the carried part, stated or assumed, and the springs that are stated, at
 * their radius. Outlines in mm, x from the axis, z from the bottom of the base.
 */
import { type Adjuster, partsOf, type Standing } from '../../assembly/adjuster/adjuster.ts';
import { heightOf, type Part, reach, type Step } from '../../assembly/adjuster/part.ts';
import type { Point } from '../../assembly/adjuster/surface.ts';

export const widestStep = (part: Part): Step =>
  part.outer.reduce((best, o) => (reach(o) > reach(best) + 1e-9 ? o : best));

const widest = (a: Adjuster): number => Math.max(...partsOf(a).flatMap((p) => p.outer.map(reach)));
const largest = (a: Adjuster): number => Math.max(a.A.thread.d, a.C?.thread.d ?? 0);

/** Where the post stands, and half its width; undefined where the carried part is held by springs or by nothing. */
const postOf = (a: Adjuster): { readonly x: number; readonly half: number } | undefined => {
  const { lock } = a;
  if (!a.carried || lock.kind === 'none' || lock.kind === 'springs') return undefined;
  const half = 0.12 * largest(a);
  return { x: lock.kind === 'assumed' ? -widest(a) - 0.25 * largest(a) : -Math.max(lock.radius, half), half };
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

/** A post that stands on the base beside it, and an arm of the carried part that slides along it. */
export const guideOf = (a: Adjuster, s: Standing, top: number): readonly (readonly Point[])[] => {
  const post = postOf(a);
  if (!post || !a.carried) return [];
  const { x, half } = post;
  const rectangle = (x0: number, x1: number, z0: number, z1: number): Point[] => [
    [x0, z0],
    [x1, z0],
    [x1, z1],
    [x0, z1],
  ];
  const step = widestStep(a.carried);
  const at = s.at.carried + step.from;
  const arm = Math.min(step.to - step.from, 0.45 * largest(a));
  return [
    rectangle(x - half, x + half, 0, top),
    // A post inside the part goes through it and needs no arm.
    ...(x + 1.25 * half < -step.r ? [rectangle(x + 1.25 * half, -step.r, at, at + arm)] : []),
    rectangle(x - 2.2 * half, x - 1.25 * half, at, at + arm),
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
