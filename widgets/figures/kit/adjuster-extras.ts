/**
 * What stands beside the parts of an adjuster and on them, for the flat drawing and the solid alike: the post that guides the carried part, stated
 * or assumed, the tip, the springs that are stated, at their radius, and the room that all of it takes. Lengths in mm, x from the axis, z from the
 * bottom of the base.
 */
import { type Adjuster, partsOf, type Standing, standing } from '../../assembly/adjuster/adjuster.ts';
import { heightOf, reach } from '../../assembly/adjuster/part.ts';
import { FOOT_WALL, postOf, travelEnds } from '../../assembly/adjuster/post.ts';
import {
  beyondSpring,
  type SpringEnds,
  springAngles,
  springAt,
  springEnds,
  springHalf,
  springRadius,
  springReach,
  stretchAt,
} from '../../assembly/adjuster/spring-place.ts';
import type { Point } from '../../assembly/adjuster/surface.ts';
import { coilLines } from '../../assembly/spring/coil-seen.ts';
import { springPlate } from '../../assembly/spring/spring-plate.ts';
import { type SeenLine, seenPlate } from '../../assembly/spring/spring-seen.ts';
import { acrossOf, type CoilForm, freeLength } from '../../engine/index.ts';

const widest = (a: Adjuster): number => Math.max(...partsOf(a).flatMap((p) => p.outer.map(reach)));
const largest = (a: Adjuster): number => Math.max(a.A.thread.d, a.C?.thread.d ?? 0);

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
  const ends = travelEnds(a, most);
  const { left, right } = reachesOf(a);
  const ball = a.tip.kind === 'ball' ? a.tip.diameter : 0;
  return {
    bottom: Math.min(0, ...ends.flatMap(({ at, height }) => [at.turned, at.carried, height - ball])),
    top: Math.max(...ends.flatMap((s) => [s.height, s.at.turned + heightOf(a.turned)])),
    half: right,
    left,
  };
};

/** How far all this and the tip reach from the axis. */
export const reachesOf = (a: Adjuster): { readonly left: number; readonly right: number } => {
  const ball = a.tip.kind === 'ball' ? a.tip.diameter / 2 : 0;
  const springs = a.springs ? springReach(a) : 0;
  const half = Math.max(widest(a), ball, springs);
  const post = postOf(a);
  return {
    left: post ? Math.max(half, -post.x + post.half + (post.foot ? FOOT_WALL : 1.2 * post.half)) : half,
    right: half,
  };
};

/** The post, the arm and the plate that holds the post in section: the post first. */
export const guideOf = (a: Adjuster, s: Standing): readonly (readonly Point[])[] => {
  const post = postOf(a);
  if (!post) return [];
  const { x, half, low, top, arm, foot } = post;
  const rectangle = (x0: number, x1: number, z0: number, z1: number): Point[] => [
    [x0, z0],
    [x1, z0],
    [x1, z1],
    [x0, z1],
  ];
  const at = s.at.carried;
  return [
    rectangle(x - half, x + half, low, top),
    ...(arm
      ? [
          rectangle(x + 1.25 * half, arm.to, at + arm.low, at + arm.high),
          rectangle(arm.from, x - 1.25 * half, at + arm.low, at + arm.high),
        ]
      : []),
    ...(foot
      ? [
          rectangle(x + half, -foot.round.r, 0, foot.high),
          rectangle(x - half - FOOT_WALL, x - half, 0, foot.high),
          rectangle(foot.round.r, reach(foot.round) + FOOT_WALL, 0, foot.high),
        ]
      : []),
  ];
};

const COILS = 7;

/**
 * The springs as lines, seen from the front: those that are drawn by their shape, with a line for the arm that holds each end; others by the simplified sign of a
 * spring, coils from the side between such arms.
 */
export const springsOf = (a: Adjuster, s: Standing): readonly (readonly Point[])[] => {
  const { springs } = a;
  const ends = springEnds(a, s);
  if (!springs || !ends) return [];
  const form = springs.drawn?.form;
  if (form?.shape === 'coil') return coilsSeen(a, form, stretchAt(a, s.n), ends);
  return springs.drawn ? flatSeen(a, s, ends) : signsOf(a, ends);
};

const coilsSeen = (
  a: Adjuster,
  form: CoilForm,
  stretch: number,
  { foot, head, edges }: SpringEnds,
): readonly (readonly Point[])[] =>
  placesOf(a.springs?.count ?? 0).flatMap((share) => {
    const x = springRadius(a) * share;
    const side = Math.sign(share) || 1;
    const arm = (edge: number, height: number): Point[] => [
      [side * edge, height],
      [x, height],
    ];
    return [
      arm(edges.foot, foot),
      ...coilLines(form, stretch, head - foot).map((line) => line.map(([u, v]): Point => [x + u, foot + v])),
      arm(edges.head, head),
    ];
  });

const signsOf = (a: Adjuster, { foot, head, edges }: SpringEnds): readonly (readonly Point[])[] => {
  const [radius, half] = [springRadius(a), springHalf(a)];
  return placesOf(a.springs?.count ?? 0).map((share) => {
    const x = radius * share;
    const coils = Array.from({ length: 2 * COILS + 1 }, (_, i): Point => {
      const z = foot + (head - foot) * (0.12 + (0.76 * i) / (2 * COILS));
      return [x + (i % 2 === 0 ? -half : half), z];
    });
    const side = Math.sign(share) || 1;
    return [[side * edges.foot, foot], [x, foot], ...coils, [x, head], [side * edges.head, head]] as Point[];
  });
};

/** Of an arc a quarter, in so small a picture. */
const PIECES = 2;

const looks = new WeakMap<object, readonly (readonly SeenLine[])[]>();
/** Of the springs of an adjuster as it was put together, one at each angle, from their foot; they are stretched by a hundredth at most, so a frame of a drag lengthens these. */
const looksOf = (a: Adjuster): readonly (readonly SeenLine[])[] => {
  const key = a.springs?.drawn;
  const flat = springAt(a, standing(a, 0));
  if (!key || !flat) return [];
  const known = looks.get(a);
  if (known) return known;
  const plate = springPlate(flat.drawn, PIECES);
  // A strap lies along the radius, others across it.
  const turned = key.form.shape === 'strap' ? 0 : Math.PI / 2;
  const found = springAngles(a.springs?.count ?? 0).map((angle) => seenPlate(plate, angle + turned));
  looks.set(a, found);
  return found;
};

const flatSeen = (a: Adjuster, s: Standing, { foot, head, edges }: SpringEnds): readonly (readonly Point[])[] => {
  const [now, first] = [springAt(a, s), springAt(a, standing(a, 0))];
  if (!now || !first) return [];
  const { drawn, z, post } = now;
  const radius = springRadius(a);
  const strap = drawn.form.shape === 'strap' ? drawn.form : undefined;
  const long = ({ drawn: d }: typeof now): number => (strap ? d.stretch : freeLength(d.form) + 2 * d.reach + d.stretch);
  const longer = long(first) > 0 ? long(now) / long(first) : 1;
  const angles = springAngles(a.springs?.count ?? 0);
  return looksOf(a).flatMap((look, i): readonly (readonly Point[])[] => {
    const angle = angles[i] ?? 0;
    const x = radius * Math.cos(angle);
    const lines = look.map((line) => line.map(([u, v]): Point => [x + u, z + v * longer]));
    const side = Math.sign(Number(x.toFixed(6))) || 1;
    const arm = (edge: number, height: number): Point[] => [
      [side * edge, height],
      [x, height],
    ];
    if (!strap || !post) return [...lines, arm(edges.foot, foot), arm(edges.head, head)];
    const half = beyondSpring(strap);
    const out = Math.cos(angle);
    const [near, far] = [x + (acrossOf(strap) - 2 * half) * out, x + acrossOf(strap) * out];
    return [
      ...lines,
      arm(edges.head, head),
      [
        [near, post.to - half],
        [near, post.from],
        [far, post.from],
        [far, post.to - half],
      ],
      [
        [side * edges.foot, post.from],
        [near, post.from],
      ],
    ];
  });
};

/** Where springs round the axis appear from the front, as shares of their radius; those behind one another once. */
const placesOf = (count: number): readonly number[] => [
  ...new Set(springAngles(count).map((angle) => Number(Math.cos(angle).toFixed(6)))),
];
