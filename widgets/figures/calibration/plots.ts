/**
 * The two plots of a calibration: readings with the fitted line, and what each reading is off that line. However many
 * readings there are, no more points are drawn than can be told apart: of those that fall in one narrow column from one
 * direction, the lowest and the highest.
 */
import { WORDS } from '#words/figures/calibration.ts';
import { at, type Calibration, type Direction, fittedCurve } from '../../engine/index.ts';
import type { UnitView } from '../../input/format.ts';
import { axisUnit, type Frame, panelHtml, xAt, yAt } from '../kit/plots/frame.ts';
import type { Point } from '../kit/svg.ts';
import { polyline, px } from '../kit/svg.ts';
import { extent } from '../kit/ticks.ts';

const DIRECTIONS: readonly Direction[] = ['up', 'down'];
/** Columns in which points are told apart. */
export const COLUMNS = 160;
const CURVE_POINTS = 240;

/** Of the points in each of `columns` columns the lowest and the highest, by their places in the list, in the order they came. */
export const extremes = (
  xs: readonly number[],
  ys: readonly number[],
  [low, high]: readonly [number, number],
  columns: number,
): readonly number[] => {
  if (xs.length <= 2 * columns) return [...xs.keys()];
  const least: number[] = new Array(columns).fill(-1);
  const most: number[] = new Array(columns).fill(-1);
  // Of no point yet, which any other beats.
  const y = (i: number): number => (i < 0 ? Number.NaN : at(ys, i));
  for (let i = 0; i < xs.length; i++) {
    const across = ((at(xs, i) - low) / (high - low)) * columns;
    const column = Math.min(columns - 1, Math.max(0, Math.floor(across)));
    if (!(y(i) >= y(at(least, column)))) least[column] = i;
    if (!(y(i) <= y(at(most, column)))) most[column] = i;
  }
  return [...new Set([...least, ...most])].filter((i) => i >= 0).sort((i, j) => i - j);
};

/** The readings from one direction, each a list of its own: there may be a hundred thousand, which are drawn in one go. */
interface Column {
  readonly turns: number[];
  readonly reading: number[];
  /** Off the straight line. */
  readonly off: number[];
}

const byDirection = ({ rows, line }: Calibration): Record<Direction, Column> => {
  const found: Record<Direction, Column> = {
    up: { turns: [], reading: [], off: [] },
    down: { turns: [], reading: [], off: [] },
  };
  for (const { turns, reading, direction } of rows) {
    const column = found[direction];
    column.turns.push(turns);
    column.reading.push(reading);
    column.off.push(reading - line.intercept - line.slope * turns);
  }
  return found;
};

export interface Cloud {
  readonly frames: { readonly readings: Frame; readonly residuals: Frame };
  readonly marks: { readonly readings: string; readonly residuals: string };
  /** Points drawn, of how many. */
  readonly drawn: number;
}

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
const markSize = (readings: number): number => (readings > 2 * COLUMNS ? 2 : 4);

export const cloudOf = (c: Calibration, view: UnitView): Cloud => {
  const { rows, line } = c;
  const columns = byDirection(c);
  const of = (kind: keyof Column): [number, number] =>
    extent(
      DIRECTIONS.map((direction) => columns[direction][kind]).flatMap((all) => (all.length > 0 ? extent(all) : [])),
    );
  const span = of('turns');
  const x = roomy(span, 1e-6);
  const z = roomy(of('reading'), 1e-6);
  const e = roomy(extent([0, ...of('off')]), 1e-5);
  const frame = (y: [number, number]): Frame => ({
    x,
    y,
    unit: axisUnit(Math.max(Math.abs(y[0]), Math.abs(y[1])), view),
  });
  const frames = { readings: frame(z), residuals: frame(e) };
  const points = (kind: 'reading' | 'off', f: Frame): { svg: string; count: number } => {
    const drawn = DIRECTIONS.map((direction) => {
      const { turns, [kind]: values } = columns[direction];
      const marks = extremes(turns, values, x, COLUMNS).map((i) =>
        marker(direction, [xAt(f, at(turns, i)), yAt(f, at(values, i))], markSize(rows.length)),
      );
      return { svg: `<path class="reading ${direction}" d="${marks.join('')}"/>`, count: marks.length };
    });
    return { svg: drawn.map((d) => d.svg).join(''), count: drawn.reduce((sum, d) => sum + d.count, 0) };
  };
  const [left, right] = span;
  const curve = (height: (n: number) => number, f: Frame): string =>
    polyline(
      Array.from({ length: CURVE_POINTS + 1 }, (_, i): Point => {
        const n = left + ((right - left) * i) / CURVE_POINTS;
        return [xAt(f, n), yAt(f, Math.max(f.y[0], Math.min(f.y[1], height(n))))];
      }),
    );
  const models = DIRECTIONS.map((direction) => {
    const fitted = fittedCurve(c, direction);
    return fitted === undefined
      ? ''
      : `<path class="curve model ${direction}" d="${curve((n) => fitted(n) - line.intercept - line.slope * n, frames.residuals)}"/>`;
  }).join('');
  const straight = [left, right].map(
    (n): Point => [xAt(frames.readings, n), yAt(frames.readings, line.intercept + line.slope * n)],
  );
  const readings = points('reading', frames.readings);
  return {
    frames,
    marks: {
      readings: `<path class="curve fit" d="${polyline(straight)}"/>${readings.svg}`,
      residuals: `${models}${points('off', frames.residuals).svg}`,
    },
    drawn: readings.count,
  };
};

export const plotsHtml = (cloud: Cloud): string =>
  panelHtml(cloud.frames.readings, WORDS.panels.readings, 6, cloud.marks.readings) +
  panelHtml(cloud.frames.residuals, WORDS.panels.residuals, 6, cloud.marks.residuals);
