/**
 * The two plots of a calibration: readings with the fitted line, and what each reading is off that line. However many
 * readings there are, no more points are drawn than can be told apart: of those that fall in one narrow column from one
 * direction, the lowest and the highest.
 */
import { type Calibration, type Direction, fittedCurve } from '../engine/index.ts';
import { axisUnit, type Frame, panelHtml, xAt, yAt } from '../plots/frame.ts';
import type { UnitView } from '../shared/format.ts';
import { type Point, polyline, px } from '../shared/svg.ts';

const DIRECTIONS: readonly Direction[] = ['up', 'down'];
/** Columns in which points are told apart. */
export const COLUMNS = 160;
const CURVE_POINTS = 240;

/** Of the points in each of `columns` columns the lowest and the highest, in the order they came. */
export const thinned = (points: readonly Point[], low: number, high: number, columns: number): readonly Point[] => {
  if (points.length <= 2 * columns) return points;
  const least: (number | undefined)[] = [];
  const most: (number | undefined)[] = [];
  const at = (i: number): Point => points[i] ?? [0, 0];
  for (const [i, [x, y]] of points.entries()) {
    const column = Math.min(columns - 1, Math.max(0, Math.floor(((x - low) / (high - low)) * columns)));
    const [a, b] = [least[column], most[column]];
    if (a === undefined || y < at(a)[1]) least[column] = i;
    if (b === undefined || y > at(b)[1]) most[column] = i;
  }
  return [...new Set([...least, ...most])]
    .filter((i): i is number => i !== undefined)
    .sort((a, b) => a - b)
    .map(at);
};

export interface Cloud {
  readonly frames: { readonly readings: Frame; readonly residuals: Frame };
  readonly marks: { readonly readings: string; readonly residuals: string };
  /** Points drawn, of how many. */
  readonly drawn: number;
}

const extent = (values: Iterable<number>): [number, number] => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const v of values) {
    if (v < low) low = v;
    if (v > high) high = v;
  }
  return [low, high];
};

const roomy = ([low, high]: [number, number], least: number): [number, number] => {
  const room = Math.max(0.07 * (high - low), least);
  return [low - room, high + room];
};

/** A triangle that points the way the screw was turned, up filled and down open; small where there are many. */
const marker = (direction: Direction, [x, y]: Point, size: number): string =>
  direction === 'up'
    ? `M${px(x)} ${px(y - size)}l${size} ${1.75 * size}h${-2 * size}Z`
    : `M${px(x)} ${px(y + size)}l${size} ${-1.75 * size}h${-2 * size}Z`;
/** Half the width of a mark, in px of the drawing. */
export const markSize = (readings: number): number => (readings > 2 * COLUMNS ? 2 : 4);

export const cloudOf = (c: Calibration, view: UnitView): Cloud => {
  const { rows, line } = c;
  const x = roomy(extent(rows.map((r) => r.turns)), 1e-6);
  const off = rows.map((r) => r.reading - line.intercept - line.slope * r.turns);
  const z = roomy(extent(rows.map((r) => r.reading)), 1e-6);
  const e = roomy(extent([0, ...extent(off)]), 1e-5);
  const frame = (y: [number, number]): Frame => ({
    x,
    y,
    unit: axisUnit(Math.max(Math.abs(y[0]), Math.abs(y[1])), view),
  });
  const frames = { readings: frame(z), residuals: frame(e) };
  let drawn = 0;
  const points = (values: readonly number[], f: Frame): string =>
    DIRECTIONS.map((direction) => {
      const all: Point[] = [];
      for (const [i, row] of rows.entries())
        if (row.direction === direction) all.push([xAt(f, row.turns), yAt(f, values[i] ?? 0)]);
      const kept = thinned(all, xAt(f, x[0]), xAt(f, x[1]), COLUMNS);
      drawn += kept.length;
      return `<path class="reading ${direction}" d="${kept.map((p) => marker(direction, p, markSize(rows.length))).join('')}"/>`;
    }).join('');
  const [left, right] = extent(rows.map((r) => r.turns));
  const curve = (of: (n: number) => number, f: Frame): string =>
    polyline(
      Array.from({ length: CURVE_POINTS + 1 }, (_, i): Point => {
        const n = left + ((right - left) * i) / CURVE_POINTS;
        return [xAt(f, n), yAt(f, Math.max(f.y[0], Math.min(f.y[1], of(n))))];
      }),
    );
  const models = DIRECTIONS.map((direction) => {
    const at = fittedCurve(c, direction);
    return at === undefined
      ? ''
      : `<path class="curve model ${direction}" d="${curve((n) => at(n) - line.intercept - line.slope * n, frames.residuals)}"/>`;
  }).join('');
  const readings = rows.map((r) => r.reading);
  const straight = [left, right].map(
    (n): Point => [xAt(frames.readings, n), yAt(frames.readings, line.intercept + line.slope * n)],
  );
  const first = points(readings, frames.readings);
  const drawnOnce = drawn;
  return {
    frames,
    marks: {
      readings: `<path class="curve fit" d="${polyline(straight)}"/>${first}`,
      residuals: `${models}${points(off, frames.residuals)}`,
    },
    drawn: drawnOnce,
  };
};

export const plotsHtml = (cloud: Cloud): string =>
  panelHtml(cloud.frames.readings, 'Indicator', 6, cloud.marks.readings) +
  panelHtml(cloud.frames.residuals, 'Off the straight line', 6, cloud.marks.residuals);
