/**
 * Each way from the side at mid-stroke, all five to one scale, millimetres up from the base. Hatched is fixed, tinted what
 * the hand turns, outlined in the other colour what moves the tip; a thread is the pair of thin lines at its root.
 */
import { diameters, type Thread } from '../engine/index.ts';
import { type Point, polygon, px } from '../shared/svg.ts';
import type { WaysState, WholeWay } from './state.ts';

/** Picture size in its own units. */
export const WIDTH = 240;
export const HEIGHT = 200;
const LEFT = 10;
const FLOOR = HEIGHT - 22;
/** Beyond this the picture is cut off, and says so. */
const WIDEST = 80;
const HIGHEST = 60;

export interface Frame {
  /** Units of the picture per millimetre. */
  readonly scale: number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
}

export const frameOf = ({ ways, wanted }: WaysState): Frame => {
  const wide = Math.min(WIDEST, Math.max(20, ...ways.map((w) => w.length + 14)));
  const high = Math.min(HIGHEST, Math.max(12, wanted.height, ...ways.map((w) => w.height + 4)));
  const scale = Math.min((WIDTH - 2 * LEFT) / wide, (FLOOR - 8) / high);
  return { scale, x: (mm) => LEFT + mm * scale, y: (mm) => FLOOR - mm * scale };
};

/** True where the way is larger than the picture. */
export const cutOff = (way: WholeWay, { scale }: Frame): boolean =>
  way.length * scale > WIDTH - LEFT || way.height * scale > FLOOR;

type Role = 'base' | 'turned' | 'carried';

const shape = (role: Role, points: readonly Point[], { x, y }: Frame): string =>
  `<path class="part ${role}"${role === 'base' ? ' fill="url(#other-ways-base)"' : ''} d="${polygon(points.map(([a, b]) => [x(a), y(b)]))}"/>`;

const box = (role: Role, left: number, right: number, bottom: number, top: number, f: Frame): string =>
  shape(
    role,
    [
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ],
    f,
  );

const line = (points: readonly Point[], { x, y }: Frame, name: string): string =>
  `<path class="${name}" d="${points.map(([a, b], i) => `${i === 0 ? 'M' : 'L'}${px(x(a))} ${px(y(b))}`).join('')}"/>`;

/** A screw upright about x, its thread shown by the lines of its root. */
const upright = (role: Role, thread: Thread, x: number, bottom: number, top: number, f: Frame): string => {
  const root = diameters(thread).d3 / 2;
  return (
    box(role, x - thread.d / 2, x + thread.d / 2, bottom, top, f) +
    [-root, root]
      .map((r) =>
        line(
          [
            [x + r, bottom],
            [x + r, top],
          ],
          f,
          `root ${role}`,
        ),
      )
      .join('')
  );
};

const lying = (thread: Thread, left: number, right: number, z: number, f: Frame): string => {
  const root = diameters(thread).d3 / 2;
  return (
    box('turned', left, right, z - thread.d / 2, z + thread.d / 2, f) +
    [-root, root]
      .map((r) =>
        line(
          [
            [left, z + r],
            [right, z + r],
          ],
          f,
          'root turned',
        ),
      )
      .join('')
  );
};

const round = (role: Role, cx: number, cz: number, r: number, { x, y, scale }: Frame): string =>
  `<circle class="part ${role}"${role === 'base' ? ' fill="url(#other-ways-base)"' : ''} cx="${px(x(cx))}" cy="${px(y(cz))}" r="${px(r * scale)}"/>`;

/** The place whose motion is wanted. */
const tip = (cx: number, cz: number, { x, y }: Frame): string =>
  `<path class="tip" d="M${px(x(cx))} ${px(y(cz))}m-6 -9l6 -8l6 8z"/>`;

const DRAWN: Readonly<Record<WholeWay['name'], (way: WholeWay, s: WaysState, f: Frame) => string>> = {
  'plain screw': (way, { shop, threads: { B } }, f) => {
    const x = B.d / 2 + 5;
    const up = way.stroke / 2;
    return (
      box('base', 0, 2 * x, 0, shop.engagement, f) +
      upright('turned', B, x, up, shop.engagement + up, f) +
      tip(x, shop.engagement + up, f)
    );
  },
  wedge: (way, { shop, threads: { D } }, f) => {
    const rise = (at: number) => (way.height * at) / way.length;
    const mid = (way.length - shop.seat) / 2;
    const thick = Math.max(3, shop.seat / 2);
    const top = rise(mid + shop.seat) + thick;
    return (
      lying(D, way.length, way.length + 12, Math.max(D.d / 2, way.height / 2), f) +
      shape(
        'turned',
        [
          [0, 0],
          [way.length, 0],
          [way.length, way.height],
        ],
        f,
      ) +
      shape(
        'carried',
        [
          [mid, rise(mid)],
          [mid + shop.seat, rise(mid + shop.seat)],
          [mid + shop.seat, top],
          [mid, top],
        ],
        f,
      ) +
      tip(mid + shop.seat / 2, top, f)
    );
  },
  lever: (way, { shop, threads: { D } }, f) => {
    const travel = way.height - shop.engagement;
    // The screw goes through the end of the bar and stands on the base.
    const under = travel / 2;
    const r = Math.max(1, Math.min(2, shop.engagement / 4));
    return (
      upright('turned', D, way.length + 4, 0, way.height, f) +
      box('carried', 0, way.length + 4 + D.d / 2 + 2, under, under + shop.engagement, f) +
      line(
        [
          [way.length + 4, 0],
          [way.length + 4, way.height],
        ],
        f,
        'axis',
      ) +
      shape(
        'base',
        [
          [1, 0],
          [7, 0],
          [4 + r, under],
          [4 - r, under],
        ],
        f,
      ) +
      round('base', 4, under, r, f) +
      tip(4 + shop.shortArm, under + shop.engagement, f)
    );
  },
  'squeezed balls': (way, { shop: { ball: R } }, f) => {
    const x = way.length / 2;
    const spread = x - R;
    // Seen from the side with one ball in front of the plane of the other two: their places in this view.
    const places = [90, 210, 330].map((deg) => spread * Math.cos((deg * Math.PI) / 180));
    const centre = R + Math.sqrt(Math.max(0, 4 * R * R - spread * spread));
    return (
      places.map((p) => round('turned', x + p, R, R, f)).join('') +
      round('carried', x, centre, R, f) +
      tip(x, centre + R, f)
    );
  },
  'differential screw': (way, { threads: { A, C } }, f) => {
    const widest = Math.max(A.d, C.d);
    const x = widest / 2 + 5;
    const half = way.height / 2;
    const nut = Math.min(half, half / 2 + 1);
    return (
      box('base', 0, 2 * x, 0, nut, f) +
      upright('turned', A, x, nut / 3, half, f) +
      upright('turned', C, x, half, way.height - nut / 3, f) +
      [-1, 1]
        .map((side) => {
          const inner = x + (side * C.d) / 2;
          const outer = x + side * (widest / 2 + 4);
          return box('carried', Math.min(inner, outer), Math.max(inner, outer), way.height - nut, way.height, f);
        })
        .join('') +
      box('carried', x - C.d / 2, x + C.d / 2, way.height - nut / 3, way.height, f) +
      tip(x, way.height, f)
    );
  },
};

export const drawingOf = (way: WholeWay, s: WaysState, f: Frame): string => {
  const roof = f.y(s.wanted.height);
  const bar = 10 * f.scale;
  return (
    `<svg class="way" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${way.name}, from the side, to scale">` +
    `<path class="ground" d="M0 ${FLOOR}H${WIDTH}"/>` +
    (roof > 0 ? `<path class="roof" d="M0 ${px(roof)}H${WIDTH}"/>` : '') +
    `${DRAWN[way.name](way, s, f)}` +
    `<path class="measure" d="M${LEFT} ${HEIGHT - 12}v8M${LEFT} ${HEIGHT - 8}h${px(bar)}M${px(LEFT + bar)} ${HEIGHT - 12}v8"/></svg>`
  );
};
