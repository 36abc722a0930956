/**
 * What a blind thread leaves: room beyond its last full turn for the tap to run out in, and the wall between its drilled hole and the outside. Lengths in mm.
 *
 * Four pitches of run-out are usual for a plug tap (from memory). A wall thinner than a pitch of the thread bulges or breaks out under the tap (common practice, no source).
 */
import { diameters } from '../../engine/index.ts';
import { heightOf, type Part, pointOf, type Step, type ThreadEnd } from './part.ts';

/** Turns of a tap’s lead and of what it runs out in, in a blind hole with room for it (usual for a plug tap, from memory; ISO 4755 and DIN 76-1 have it by pitch, which could not be read). */
export const RUN_OUT = 4;

export interface BlindHole {
  /** Plain hole beyond the thread, without the cone of its drill. */
  readonly runOut: number;
  readonly usual: number;
  /** Least distance from the drilled hole beyond the thread to the outside of the part. */
  readonly wall: number;
  readonly leastWall: number;
}

type Spot = readonly [r: number, z: number];

/** Undefined for a screw, and for a thread that is open at both ends. */
export const blindHoleOf = (part: Part, end: ThreadEnd): BlindHole | undefined => {
  if (end.gender === 'external') return undefined;
  const high = heightOf(part);
  const meets = (z: number) => part.bores.find((b) => b.thread !== end.thread && (near(b.to, z) || near(b.from, z)));
  // Closed where neither the outside nor an open bore goes on.
  const closed = (z: number) => {
    if (near(z, 0) || near(z, high)) return false;
    const next = meets(z);
    return next === undefined || next.point !== undefined;
  };
  const at = [end.from, end.to].find(closed);
  if (at === undefined) return undefined;
  const P = end.thread.P;
  const r = diameters(end.thread).d1 / 2;
  const drilled = meets(at);
  const far = drilled ? (near(drilled.to, at) ? drilled.from : drilled.to) : at;
  const hole: Spot[] = [
    [r, at],
    [r, far],
    [0, far + (drilled ? pointOf(drilled) : 0)],
  ];
  return { runOut: Math.abs(far - at), usual: RUN_OUT * P, wall: apart(hole, outlineOf(part)), leastWall: P };
};

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

/** Of a screw what its thread leaves whole. */
const coreOf = ({ thread, r }: Step): number => (thread ? diameters(thread).d3 / 2 : r);

/** From the axis below to the axis above, the socket of a screw left out. */
const outlineOf = (part: Part): Spot[] => [
  [0, 0],
  ...part.outer.flatMap((s): Spot[] => [
    [coreOf(s), s.from],
    [coreOf(s), s.to],
  ]),
  [0, heightOf(part)],
];

const toSide = ([r, z]: Spot, [a, b]: readonly [Spot, Spot]): number => {
  const [u, v] = [b[0] - a[0], b[1] - a[1]];
  const long = u * u + v * v;
  const t = long > 0 ? Math.max(0, Math.min(1, ((r - a[0]) * u + (z - a[1]) * v) / long)) : 0;
  return Math.hypot(r - a[0] - t * u, z - a[1] - t * v);
};

/** Of two lines that do not cross, the least distance is from a corner of one to a side of the other. */
const apart = (one: readonly Spot[], other: readonly Spot[]): number => {
  const sides = (line: readonly Spot[]) => line.slice(1).map((b, i) => [line[i] as Spot, b] as const);
  const from = (corners: readonly Spot[], line: readonly Spot[]) =>
    corners.flatMap((corner) => sides(line).map((side) => toSide(corner, side)));
  return Math.min(...from(one, other), ...from(other, one));
};
