/**
 * How the solid is looked at: from far away, so that equal lengths look equal, some way round the axis and from a little above.
 * Heights z are in mm over the bottom of the base. A picture is wide and high in units of its own, y down.
 */
import type { Point } from '../svg.ts';

export type Vector = readonly [x: number, y: number, z: number];

export interface Look {
  /** Degrees round the axis, anticlockwise seen from above, from the front. */
  readonly round: number;
  /** Degrees from above. */
  readonly above: number;
}

/** The picture, and how far from its left side the axis stands. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly axis: number;
}

export interface Aim extends Look {
  readonly frame: Frame;
  /** Picture units per mm. */
  readonly scale: number;
  /** Height in mm that stands in the middle of the picture. */
  readonly middle: number;
}

/** Of one adjuster: the axis left of the middle, since its labels stand right. */
export const PICTURE: Frame = { width: 520, height: 520, axis: 215 };
const MARGIN = 16;
/** The picture has room for so many turns each way, where the stops let it. */
export const SEEN_TURNS = 6;

const inRadians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Directions on the picture: to the right, up, and towards the reader. */
export const directionsOf = ({ round, above }: Look): { right: Vector; up: Vector; near: Vector } => {
  const [sin, cos] = [Math.sin(inRadians(round)), Math.cos(inRadians(round))];
  const [low, high] = [Math.cos(inRadians(above)), Math.sin(inRadians(above))];
  return {
    right: [cos, sin, 0],
    up: [-sin * high, cos * high, low],
    near: [sin * low, -cos * low, high],
  };
};

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Room for what stands between two heights and reaches so far from the axis. */
export const aimAt = (look: Look, bottom: number, top: number, reach: number, frame = PICTURE): Aim => {
  const { up } = directionsOf(look);
  const tall = (top - bottom) * up[2] + 2 * reach * Math.hypot(up[0], up[1]);
  const scale = Math.min((frame.height - 2 * MARGIN) / tall, (frame.axis - MARGIN) / reach);
  return { ...look, frame, scale, middle: (bottom + top) / 2 };
};

export const onPicture = (aim: Aim, p: Vector): Point => {
  const { right, up } = directionsOf(aim);
  const { frame, scale } = aim;
  const from: Vector = [p[0], p[1], p[2] - aim.middle];
  return [frame.axis + dot(from, right) * scale, frame.height / 2 - dot(from, up) * scale];
};

/**
 * Heights of the middles of labels in a column, each as near to what it names as those above and below leave room for; `sizes` is how high each is. In
 * and out in the same units, in the order given; none leaves `from` to `to` while there is room for all.
 */
export const spread = (wanted: readonly number[], sizes: readonly number[], from: number, to: number): number[] => {
  const order = wanted.map((y, i) => ({ y, i, half: (sizes[i] as number) / 2 })).sort((a, b) => a.y - b.y || a.i - b.i);
  const placed: number[] = [];
  let floor = from;
  for (const { y, half } of order) {
    const middle = Math.max(y, floor + half);
    placed.push(middle);
    floor = middle + half;
  }
  let ceiling = to;
  for (let k = placed.length - 1; k >= 0; k--) {
    const { half } = order[k] as { half: number };
    placed[k] = Math.min(placed[k] as number, ceiling - half);
    ceiling = (placed[k] as number) - half;
  }
  const heights = wanted.map(() => 0);
  order.forEach(({ i }, k) => {
    heights[i] = placed[k] as number;
  });
  return heights;
};

/** More springs are drawn by nobody, and each is a call to the picture. */
const MOST_SPRINGS = 8;
/** At which angles springs stand in the solid, radians: off the plane that cuts it. */
export const springTurns = (count: number): readonly number[] =>
  Array.from({ length: Math.min(count, MOST_SPRINGS) }, (_, i) => Math.PI / 8 + (2 * Math.PI * i) / count);
