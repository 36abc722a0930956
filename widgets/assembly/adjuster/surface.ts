/**
 * The skin of a part, seen in one half plane through its axis: the one generator of sections for drawings and of solids for
 * screen and files.
 *
 * At an angle θ, anticlockwise seen from above, the skin is a line of points (r, z) that goes up the outside and down the inside, mm in the frame of
 * the part. The count of points is the same at every θ, so neighbouring lines make a net. Threads have the basic profile of ISO 68-1: crest flat P/8 at the major
 * diameter, root flat P/4 at the basic minor diameter, flanks of 30°; a ridge stands at z = crest + h L θ/2π. Screw and nut are drawn from the same
 * profile, so that they fit without play; what play there is, a figure adds.
 */
import { diameters, type Thread } from '../../engine/index.ts';
import type { Adjuster } from './adjuster.ts';
import { heightOf, type Part, pointOf, type Role, type Step } from './part.ts';

export type Point = readonly [r: number, z: number];

/** Where the ridges of the two threads of a part stand at θ = 0, in its frame. */
export interface Crests {
  readonly below: number;
  readonly above: number;
}

/**
 * Ridges that fit into their grooves: those of the base and of the upper thread of the turned part are taken as they come, the others follow from
 * where the adjuster was put together. Since screw and nut then turn and rise together, they fit at every n.
 */
export const crestsOf = ({ A, C }: Pick<Adjuster, 'A' | 'C'>): Readonly<Record<Role, Crests>> => ({
  base: { below: 0, above: 0 },
  turned: { below: -A.start, above: 0 },
  carried: { below: -(C?.start ?? 0), above: 0 },
});

/** Where the ridges of a threaded step of a part stand: a sleeve may have both its threads between the same heights. */
export const crestOf = ({ below }: Part, { thread, from }: Step, crests: Crests): number =>
  below?.thread === thread && below?.from === from ? crests.below : crests.above;

/** Corners of one ridge, in pitches from the middle of its crest. */
const CORNERS = [-6 / 16, -1 / 16, 1 / 16, 6 / 16];

/** Radius of the profile at z, where the middle of a crest stands at `crest`. */
const radiusAt = (thread: Pick<Thread, 'd' | 'P'>, minor: number, crest: number, z: number): number => {
  const major = thread.d / 2;
  const u = Math.abs((z - crest) / thread.P - Math.round((z - crest) / thread.P)) * 16;
  return u <= 1 ? major : u >= 6 ? minor : major + ((minor - major) * (u - 1)) / 5;
};

/** The edge of a thread at θ, bottom to top; what lies beyond its ends is drawn in to them, so that the count stays the same. */
const threadEdge = (
  thread: Pick<Thread, 'd' | 'P' | 'L' | 'h'>,
  crest: number,
  from: number,
  to: number,
  theta: number,
): Point[] => {
  const { P, L, h } = thread;
  const minor = diameters(thread).d1 / 2;
  const [low, high] = [Math.min(0, h * L), Math.max(0, h * L)];
  const here = crest + (h * L * theta) / (2 * Math.PI);
  const points: Point[] = [[radiusAt(thread, minor, here, from), from]];
  for (let k = Math.floor((from - crest - high) / P) - 1; k <= Math.ceil((to - crest - low) / P) + 1; k++)
    for (const corner of CORNERS) {
      const z = Math.min(to, Math.max(from, here + (k + corner) * P));
      points.push([radiusAt(thread, minor, here, z), z]);
    }
  points.push([radiusAt(thread, minor, here, to), to]);
  return points;
};

/** Distance from the axis of the side of a prism at θ; one corner of a hexagon stands at 30°, of a square at 45°. */
const prismAt = (half: number, sides: number, theta: number): number => {
  const sector = (2 * Math.PI) / sides;
  return half / Math.cos(theta - sector * Math.round(theta / sector));
};

/** The edge of one thread in a section, between two heights, with the middle of a crest at `crest`. */
export const ridgeEdge = (thread: Pick<Thread, 'd' | 'P'>, crest: number, from: number, to: number): readonly Point[] =>
  withoutRepeats(threadEdge({ ...thread, L: thread.P, h: 1 }, crest, from, to, 0));

export interface SkinOptions {
  readonly crests: Crests;
  /** Draws threads as plain cylinders of their major diameter: ridges too fine to see are thousands of points. */
  readonly plain?: (thread: Thread) => boolean;
}

const stepEdge = (step: Step, theta: number, { crests, plain }: SkinOptions, part: Part): Point[] => {
  if (step.thread && !plain?.(step.thread)) {
    return threadEdge(step.thread, crestOf(part, step, crests), step.from, step.to, theta);
  }
  const r = step.shape === 'round' ? step.r : prismAt(step.r, step.shape === 'hexagon' ? 6 : 4, theta);
  return [
    [r, step.from],
    [r, step.to],
  ];
};

const isAt = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

/** Bores that open at the bottom, at the top, or at both. */
const boresOf = (
  part: Part,
): { readonly through: boolean; readonly bottom: readonly Step[]; readonly top: readonly Step[] } => {
  const rising = [...part.bores].sort((a, b) => a.from - b.from);
  const bottom: Step[] = [];
  for (const bore of rising) if (isAt(bore.from, bottom.at(-1)?.to ?? 0)) bottom.push(bore);
  if (isAt(bottom.at(-1)?.to ?? 0, heightOf(part))) return { through: true, bottom, top: [] };
  return { through: false, bottom, top: rising.filter((bore) => !bottom.includes(bore)) };
};

export interface Skin {
  /** Whether a bore goes right through: the line then closes on itself, else it begins and ends on the axis. */
  readonly through: boolean;
  readonly points: readonly Point[];
}

/** Down the sides of a hexagon socket. */
const socketAt = (part: Part, theta: number): readonly Point[] => {
  if (!part.socket) return [];
  const { flats, depth } = part.socket;
  const r = prismAt(flats / 2, 6, theta);
  return [
    [r, heightOf(part)],
    [r, heightOf(part) - depth],
  ];
};

export const skinAt = (part: Part, theta: number, options: SkinOptions): Skin => {
  const edge = (step: Step) => stepEdge(step, theta, options, part);
  const outside = part.outer.flatMap(edge);
  const { through, bottom, top } = boresOf(part);
  const downwards = (steps: readonly Step[]) => steps.flatMap(edge).reverse();
  if (through) return { through, points: [...outside, ...downwards(bottom)] };
  const [low, high] = [bottom.at(-1), top[0]];
  return {
    through,
    points: [
      [0, low ? low.to + pointOf(low) : 0],
      ...downwards(bottom),
      ...outside,
      ...downwards(top),
      ...socketAt(part, theta),
      [0, high ? high.from + pointOf(high) : heightOf(part) - (part.socket?.depth ?? 0)],
    ],
  };
};

/** The section of a part through its axis as closed outlines (x, z): one where it is solid on the axis, two where it is bored through. */
export const sectionOf = (
  { socket: _, ...part }: Part,
  turned: number,
  options: SkinOptions,
): readonly (readonly Point[])[] => {
  // A screw is not cut along its axis, so its socket is seen by no section.
  const right = skinAt(part, -turned, options);
  const left = skinAt(part, Math.PI - turned, options).points.map(([r, z]): Point => [-r, z]);
  return (right.through ? [right.points, left] : [[...right.points, ...[...left].reverse()]]).map(withoutRepeats);
};

/** A thread is drawn in to its ends with many points in one place, which only a net of triangles needs. */
const withoutRepeats = (points: readonly Point[]): readonly Point[] =>
  points.filter(([r, z], i) => {
    const [r0, z0] = points[i - 1] ?? [Number.NaN, 0];
    return !(Math.abs(r - r0) < 1e-9 && Math.abs(z - z0) < 1e-9);
  });
