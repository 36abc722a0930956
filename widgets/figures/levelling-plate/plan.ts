/**
 * The plan of the plate, to scale: feet, readings, weight, and the plane as lines of equal height. y is up the page. The
 * step between the lines is set by the first round, so that a plate that comes level loses its lines.
 */

import { WORDS } from '#words/figures/levelling-plate.ts';
import { at, heightAt, type Place, type Plane } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { show, type UnitView } from '../../input/format.ts';
import { orderedSteps, orderLabel, orderText } from '../kit/levelling/order.ts';
import type { PlateState } from '../kit/levelling/rounds.ts';
import { arrowheads, type Point as Pixel, polygon, px } from '../kit/svg.ts';
import { roundStep } from '../kit/ticks.ts';

export const WIDTH = 640;
export const HEIGHT = 460;
const MARGIN = 58;

/** The part of the plan that is drawn, mm, and pixels for a millimetre. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  readonly scale: number;
}

export const frameOf = (s: PlateState): Frame => {
  const places: readonly Place[] = [...s.feet, ...s.now.readings, s.centre];
  const xs = places.map((p) => p.x);
  const ys = places.map((p) => p.y);
  const size = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys), 1);
  // Rounded outward, so that a point that is moved a little does not stir the whole drawing.
  const step = roundStep(size / 20);
  // Room on the plate for a foot, its arrow and its name.
  const out = (v: number) => Math.ceil((v + 0.13 * size) / step) * step;
  const [left, right, bottom, top] = [
    -out(-Math.min(...xs)),
    out(Math.max(...xs)),
    -out(-Math.min(...ys)),
    out(Math.max(...ys)),
  ];
  return {
    left,
    right,
    bottom,
    top,
    scale: Math.min((WIDTH - 2 * MARGIN) / (right - left), (HEIGHT - 2 * MARGIN) / (top - bottom)),
  };
};

export const pixelOf = (f: Frame, { x, y }: Place): Pixel => [
  WIDTH / 2 + (x - (f.left + f.right) / 2) * f.scale,
  HEIGHT / 2 - (y - (f.bottom + f.top) / 2) * f.scale,
];

export const placeAt = (f: Frame, [px, py]: Pixel): Place => ({
  x: (px - WIDTH / 2) / f.scale + (f.left + f.right) / 2,
  y: (HEIGHT / 2 - py) / f.scale + (f.bottom + f.top) / 2,
});

/** Something on the plan that can be moved. */
export interface Handle {
  readonly key: string;
  readonly kind: 'foot' | 'reading' | 'weight';
  readonly index: number;
  readonly place: Place;
  readonly says: string;
  /** What stands under it; over a reading in the lower half, where a foot may be near. */
  readonly label: string;
  readonly mark: string;
}

export const handlesOf = (s: PlateState, view: UnitView): readonly Handle[] => [
  ...s.now.readings.map((point, index): Handle => {
    const read = show(point.z, { shown: 'motion', digits: 3 }, view === 'both' ? 'metric' : view);
    return {
      key: `reading-${index}`,
      kind: 'reading',
      index,
      place: point,
      says: WORDS.reading(WORDS.readingName(index), read),
      label: read,
      mark: `<path class="mark" d="M-8 -8H8V8H-8Z"/><text class="number" y="4.5" text-anchor="middle">${WORDS.readingName(index)}</text>`,
    };
  }),
  {
    key: 'weight',
    kind: 'weight',
    index: 0,
    place: s.centre,
    says: WORDS.centre,
    label: WORDS.weight,
    mark: '<circle class="mark" r="9"/><path class="quarters" d="M0 0V-9A9 9 0 0 1 9 0ZM0 0V9A9 9 0 0 1 -9 0Z"/>',
  },
  ...s.now.levelling.moves.map((move, index): Handle => {
    const place = at(s.feet, index);
    return {
      key: `foot-${move.name}`,
      kind: 'foot',
      index,
      place,
      says: WORDS.foot(move.name, orderText(s.now, index, s.k)),
      label: orderLabel(s.now, index, s.k),
      mark: `<circle class="mark" r="14"/><text class="number" y="5" text-anchor="middle">${move.name}</text><path class="arrow strong sense" marker-end="url(#plate-turn)" d="${senseArrow(orderedSteps(s.now, index))}"/>`,
    };
  }),
];

/** An arrow round the foot, the way it is turned. */
const senseArrow = (steps: number): string => {
  if (steps === 0) return '';
  const side = steps > 0 ? 1 : -1;
  const end = (degrees: number, r: number) => {
    const a = (side * degrees * Math.PI) / 180;
    return `${px(r * Math.sin(a))} ${px(-r * Math.cos(a))}`;
  };
  return `M${end(-80, 20)}A20 20 0 0 ${side > 0 ? 1 : 0} ${end(70, 20)}`;
};

/** How far under its mark the name of a handle stands, px. */
const UNDER: Readonly<Record<Handle['kind'], number>> = { foot: 30, reading: 22, weight: 32 };

export const handleSvg = (f: Frame, handle: Handle, view: UnitView): string => {
  const [x, y] = pixelOf(f, handle.place);
  return (
    `<g class="handle at-${handle.kind}" role="slider" tabindex="0" aria-roledescription="${WORDS.movable}" data-handle="${handle.key}" data-key="${handle.key}" aria-label="${escapeText(handle.says)}" aria-valuemin="-10000" aria-valuemax="10000" aria-valuenow="${px(handle.place.x)}" aria-valuetext="${escapeText(placeText(handle.place, view))}" transform="translate(${px(x)} ${px(y)})">` +
    `<circle class="reach" r="30"/><g data-mark>${handle.mark}</g><text class="under" data-under style="--under:${UNDER[handle.kind] * (handle.kind === 'reading' && handle.place.y < (f.bottom + f.top) / 2 ? -1 : 1)}px" dy="0.35em" text-anchor="middle">${escapeText(handle.label)}</text></g>`
  );
};

export const placeText = ({ x, y }: Place, view: UnitView): string => {
  const size = (v: number) => show(v, { shown: 'size' }, view === 'inch' ? 'inch' : 'metric');
  return WORDS.place(size(x), size(y));
};

/** Everything behind the handles. */
export const groundSvg = (s: PlateState, f: Frame, view: UnitView): string => {
  const pixel = (place: Place) => pixelOf(f, place);
  return (
    `<path class="plate" d="${polygon(cornersOf(f).map(pixel))}"/>${levelLines(s, f, view)}` +
    `<path class="triangle" d="${polygon(s.feet.map(pixel))}"/>${arrowheads('plate-head')}${arrowheads('plate-turn', 'still')}${arrow(s)}${scaleBar(f, view)}`
  );
};

/** Lines of equal height, each named where it leaves the plate. */
const levelLines = (s: PlateState, f: Frame, view: UnitView): string => {
  const step = lineStep(s, f, view);
  const { plane } = s.now.levelling;
  const ends = cornersOf(f).map((place) => heightAt(plane, place));
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const lines: string[] = [];
  for (let i = Math.ceil(low / step); i <= Math.floor(high / step) && lines.length < 40; i++) {
    const crossing = levelLine(plane, i * step, f);
    if (crossing === undefined) continue;
    const [a, b] = [pixelOf(f, crossing[0]), pixelOf(f, crossing[1])];
    const [x, y] = a[1] < b[1] ? a : b;
    // Outside the edge at which the line leaves: over the top, or beside it.
    const [, top] = pixelOf(f, { x: f.left, y: f.top });
    const [left] = pixelOf(f, { x: f.left, y: f.top });
    const over = Math.abs(y - top) < 0.5;
    const label = show(i * step, { shown: 'motion', digits: 3 }, view === 'both' ? 'metric' : view).replace(
      /\.0+(?=\D)/,
      '',
    );
    lines.push(
      `<path class="level${i < 0 ? ' below' : i === 0 ? ' at-nought' : ''}" d="M${px(a[0])} ${px(a[1])}L${px(b[0])} ${px(b[1])}"/>` +
        `<text class="level-name" x="${px(over ? x : x < left + 1 ? x - 5 : x + 5)}" y="${px(over ? y - 6 : y + 4)}" text-anchor="${over ? 'middle' : x < left + 1 ? 'end' : 'start'}">${label}</text>`,
    );
  }
  return lines.join('');
};

const cornersOf = (f: Frame): readonly Place[] => [
  { x: f.left, y: f.bottom },
  { x: f.right, y: f.bottom },
  { x: f.right, y: f.top },
  { x: f.left, y: f.top },
];

/** Height between two lines: about nine of them over the plate as it was first read. */
export const lineStep = (s: PlateState, f: Frame, view: UnitView): number => {
  const heights = cornersOf(f).map((place) => heightAt(s.first.levelling.plane, place));
  const range = Math.max(...heights) - Math.min(...heights);
  const unit = view === 'inch' ? 2.54e-3 : 1e-3;
  return roundStep(Math.max(range / 9 / unit, 0.1)) * unit;
};

/** Where a line of equal height meets the edge of the plate. */
const levelLine = ({ p, q, r }: Plane, z: number, f: Frame): readonly [Place, Place] | undefined => {
  const met: Place[] = [];
  for (const x of [f.left, f.right]) {
    const y = (z - p - q * x) / r;
    if (y >= f.bottom && y <= f.top) met.push({ x, y });
  }
  for (const y of [f.bottom, f.top]) {
    const x = (z - p - r * y) / q;
    if (x > f.left && x < f.right) met.push({ x, y });
  }
  const [a, b] = met;
  return a && b ? [a, b] : undefined;
};

/** The longest arrow of rise. */
const RISE = 62;

/** The way the plate rises, as long as the tilt is against that of the first round, in the corner below the plate where nothing else stands. */
const arrow = (s: PlateState): string => {
  const { uphill, slope } = s.now.levelling.tilt;
  const before = s.first.levelling.tilt.slope;
  const length = before > 0 ? RISE * Math.min(1, slope / before) : 0;
  const [x, y] = [WIDTH - 40, HEIGHT - 34];
  if (!(length >= 12)) return `<circle class="rise none" cx="${x}" cy="${y}" r="4"/>`;
  return `<path class="arrow strong rise" transform="translate(${x} ${y}) rotate(${px((-uphill * 180) / Math.PI)})" d="M${px(-length / 2)} 0L${px(length / 2)} 0" marker-end="url(#plate-head)"/>`;
};

const scaleBar = (f: Frame, view: UnitView): string => {
  const unit = view === 'inch' ? 25.4 : 1;
  const length = roundStep((f.right - f.left) / 8 / unit) * unit;
  const [x, y] = [16, HEIGHT - 10];
  return `<path class="bar" d="M${x} ${y - 5}v5h${px(length * f.scale)}v-5"/><text class="bar-name" x="${x + 4}" y="${y - 6}">${show(length, { shown: 'size' }, view === 'inch' ? 'inch' : 'metric')}</text>`;
};
