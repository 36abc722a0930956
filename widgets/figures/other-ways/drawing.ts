/**
 * Each way from the side at mid-stroke, over the column of its numbers, all five to one scale. Hatched is fixed, middle and warm what the hand
 * turns or drives, dark and cool what moves the tip; a thread is shown by the thin lines of its root.
 */
import { WORDS } from '#words/figures/other-ways.ts';
import { at, diameters, type Thread } from '../../engine/index.ts';
import type { Point } from '../kit/svg.ts';
import { polygon, polyline, px } from '../kit/svg.ts';
import type { WaysState, WholeWay } from './state.ts';

/** All five together are as wide as this, in units of the picture. */
const TOGETHER = 680;
/** Millimetres beside each way. */
const AIR = 4;
const BELOW = 22;
const LEAST_SHARE = 0.52;

export interface Frame {
  /** Units of the picture per millimetre. */
  readonly scale: number;
  /** Millimetres that each column is wide and all are high. */
  readonly widths: readonly number[];
  readonly high: number;
}

/** What a way takes across, drive screw and base with it, mm. */
const across = (way: WholeWay, { threads: { B, D, A, C } }: WaysState): number => {
  switch (way.name) {
    case 'plain screw':
      return B.d + 2 * WALL;
    case 'wedge':
      return way.length + 2 * D.d;
    case 'lever':
      return PIVOT + way.length + D.d / 2 + WALL;
    case 'squeezed balls':
      return way.length;
    case 'differential screw':
      return Math.max(A.d, C.d) + 2 * WALL;
  }
};

const WALL = 4;
const PIVOT = 5;
/** Room for the mark of the tip, mm. */
const MARK = 6;

const topOf = (way: WholeWay, { shop }: WaysState): number =>
  way.name === 'wedge' ? way.height + shop.seat / 2 : way.height;

export const frameOf = (s: WaysState): Frame => {
  const tallest = Math.max(...s.ways.map((way) => topOf(way, s))) + MARK;
  // One that runs out of all proportion is cut off rather than shrink the rest; the roof is shown where it is near.
  const roof = s.wanted.height + 2;
  const high = Math.min(Math.max(60, roof), roof <= 2 * tallest ? Math.max(tallest, roof) : tallest);
  const drawn = s.ways.map((way) => Math.min(across(way, s), Math.max(70, 1.2 * high)) + 2 * AIR);
  // A column holds its numbers too, so none is narrower than a share of the widest.
  const widths = drawn.map((wide) => Math.max(wide, LEAST_SHARE * Math.max(...drawn)));
  return { scale: TOGETHER / widths.reduce((a, b) => a + b, 0), widths, high };
};

/** True where the way is larger than the picture. */
export const cutOff = (way: WholeWay, s: WaysState, { widths, high }: Frame): boolean =>
  across(way, s) > at(widths, s.ways.indexOf(way)) - AIR || topOf(way, s) > high;

/** Draws in millimetres, x from the left of the way and z up from the base. */
interface Pen {
  readonly at: (x: number, z: number) => Point;
  readonly scale: number;
}

type Role = 'base' | 'turned' | 'carried';

const filled = (role: Role): string => (role === 'base' ? ' fill="url(#other-ways-base)"' : '');

const shape = (role: Role, points: readonly Point[], pen: Pen): string =>
  `<path class="part ${role}"${filled(role)} d="${polygon(points.map(([x, z]) => pen.at(x, z)))}"/>`;

const box = (role: Role, left: number, right: number, bottom: number, top: number, pen: Pen): string =>
  shape(
    role,
    [
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ],
    pen,
  );

const rootLine = (from: Point, to: Point, pen: Pen): string =>
  `<path class="root" d="${polyline([pen.at(...from), pen.at(...to)])}"/>`;

/** A screw upright about x, its thread shown by the lines of its root. */
const upright = (thread: Thread, x: number, bottom: number, top: number, pen: Pen): string =>
  box('turned', x - thread.d / 2, x + thread.d / 2, bottom, top, pen) +
  [-1, 1]
    .map((side) => x + (side * diameters(thread).d3) / 2)
    .map((root) => rootLine([root, bottom], [root, top], pen))
    .join('');

const lying = (thread: Thread, left: number, right: number, z: number, pen: Pen): string =>
  box('turned', left, right, z - thread.d / 2, z + thread.d / 2, pen) +
  [-1, 1]
    .map((side) => z + (side * diameters(thread).d3) / 2)
    .map((root) => rootLine([left, root], [right, root], pen))
    .join('');

const ball = (role: Role, x: number, z: number, r: number, pen: Pen): string => {
  const [cx, cy] = pen.at(x, z);
  return `<circle class="part ${role}"${filled(role)} cx="${px(cx)}" cy="${px(cy)}" r="${px(r * pen.scale)}"/>`;
};

/** The place whose motion is wanted. */
const tip = (x: number, z: number, pen: Pen): string => {
  const [cx, cy] = pen.at(x, z);
  return `<path class="tip" d="M${px(cx)} ${px(cy - 3)}m-5 0l5 -10l5 10z"/>`;
};

const DRAWN: Readonly<Record<WholeWay['name'], (way: WholeWay, s: WaysState, pen: Pen) => string>> = {
  'plain screw': (way, { shop, threads: { B } }, pen) => {
    const x = B.d / 2 + WALL;
    const up = way.stroke / 2;
    return (
      box('base', 0, 2 * x, 0, shop.engagement, pen) +
      upright(B, x, up, shop.engagement + up, pen) +
      tip(x, shop.engagement + up, pen)
    );
  },
  wedge: (way, { shop, threads: { D } }, pen) => {
    const rise = (way.stroke / (way.length - shop.seat)) * way.length;
    const at = (x: number) => way.height - rise + (rise * x) / way.length;
    const left = (way.length - shop.seat) / 2;
    const right = left + shop.seat;
    const top = at(right) + shop.seat / 2;
    const slope: Point[] = [
      [0, 0],
      [way.length, 0],
      [way.length, way.height],
      [0, at(0)],
    ];
    const rider: Point[] = [
      [left, at(left)],
      [right, at(right)],
      [right, top],
      [left, top],
    ];
    // A nut in the base for the drive, and a guide either side of the rider, which may not go along.
    const gap = 0.4;
    const post = 1.6;
    const guide = (x: number) => box('base', x, x + post, at(x + post) + gap, top + 1, pen);
    return (
      box('base', way.length + 0.7 * D.d, way.length + 1.5 * D.d, 0, way.height / 2 + D.d, pen) +
      lying(D, way.length, way.length + 2 * D.d, way.height / 2, pen) +
      shape('turned', slope, pen) +
      guide(left - gap - post) +
      guide(right + gap) +
      shape('carried', rider, pen) +
      tip((left + right) / 2, top, pen)
    );
  },
  lever: (way, { shop, threads: { D } }, pen) => {
    // The screw goes through the end of the bar and stands on the base.
    const under = (way.height - shop.engagement) / 2;
    const end = PIVOT + way.length;
    return (
      shape(
        'base',
        [
          [PIVOT - 3, 0],
          [PIVOT + 3, 0],
          [PIVOT, under],
        ],
        pen,
      ) +
      box('carried', 0, end + D.d / 2 + WALL, under, under + shop.engagement, pen) +
      upright(D, end, 0, way.height, pen) +
      tip(PIVOT + shop.shortArm, under + shop.engagement, pen)
    );
  },
  'squeezed balls': (way, { shop: { ball: R } }, pen) => {
    // Half of the stroke down from where they touch: the spread follows from the lines of centres, 2R long.
    const centre = way.height - R - way.stroke / 2;
    const x = way.length / 2;
    const spread = Math.sqrt(Math.max(0, 4 * R * R - (centre - R) ** 2));
    return (
      [90, 210, 330]
        .map((deg) => x + spread * Math.cos((deg * Math.PI) / 180))
        .map((place) => ball('turned', place, R, R, pen))
        .join('') +
      ball('carried', x, centre, R, pen) +
      tip(x, centre + R, pen)
    );
  },
  'differential screw': (way, { threads: { A, C } }, pen) => {
    const widest = Math.max(A.d, C.d);
    const x = widest / 2 + WALL;
    const half = way.height / 2;
    const nut = (2 * half) / 3;
    const foot = nut / 3;
    return (
      box('base', 0, 2 * x, 0, nut, pen) +
      box('carried', 0, 2 * x, way.height - nut, way.height, pen) +
      upright(A, x, foot, half, pen) +
      upright(C, x, half, way.height - foot, pen) +
      tip(x, way.height, pen)
    );
  },
};

/** One picture, as wide as its column, so that all keep one scale. */
export const drawingOf = (way: WholeWay, s: WaysState, { scale, widths, high }: Frame): string => {
  const wide = at(widths, s.ways.indexOf(way));
  const floor = (high + 1) * scale;
  const [width, height] = [wide * scale, floor + BELOW];
  // In the middle of its column, or from its left where it is cut off.
  const left = Math.max(AIR, (wide - across(way, s)) / 2);
  const pen: Pen = { at: (x, z) => [(left + x) * scale, floor - z * scale], scale };
  const roof =
    s.wanted.height <= high ? `<path class="roof" d="M0 ${px(floor - s.wanted.height * scale)}H${px(width)}"/>` : '';
  return (
    `<svg class="way" viewBox="0 0 ${px(width)} ${px(height)}" role="img" aria-label="${WORDS.drawing(WORDS.way(way.name))}">` +
    `<path class="ground" d="M0 ${px(floor)}H${px(width)}"/>${roof}${DRAWN[way.name](way, s, pen)}` +
    `<path class="measure" d="M${px(left * scale)} ${px(floor + 7)}v10m0 -5h${px(10 * scale)}m0 -5v10"/></svg>`
  );
};
