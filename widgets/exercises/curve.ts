/**
 * A curve that is predicted: its axes, the points a reader sets over them, the engine's curve, and what is said of the two. All numbers are in the
 * units of the axes.
 */
import { UNIT_WORDS } from '#words/language.ts';
import {
  CURVE_BENDS,
  CURVE_RIGHT,
  CURVE_STARTS,
  CURVE_STRAIGHT,
  curveAmount,
  curveAsked,
  curveOff,
  curveTrend,
} from '#words/papers.ts';
import { UNITS, type Unit } from '../engine/index.ts';
import { frameBox, type Inside } from '../figures/kit/plot-box.ts';
import { polyline, px } from '../figures/kit/svg.ts';
import { escapeText } from '../input/escape.ts';
import { lengthUnit, numeral, type UnitView, unitText } from '../input/format.ts';

export interface Axis {
  readonly says: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
}

export interface Curve {
  readonly across: Axis;
  readonly up: Axis;
  /** Across, the places at which the reader sets a point, and what stands there. */
  readonly places: readonly number[];
  readonly right: readonly number[];
  /** The same curve in small steps, to be drawn. */
  readonly fine: readonly (readonly [x: number, y: number])[];
  readonly slips: readonly { readonly at: readonly number[]; readonly says: string }[];
}

/** The axis in the reader’s units, and by how much its numbers grow. Only lengths have another unit. */
const axisIn = (axis: Axis, view: UnitView): readonly [Axis, number] => {
  const own = UNITS[axis.unit as Unit];
  if (view !== 'inch' || own?.base !== 'mm') return [axis, 1];
  const far = Math.max(Math.abs(axis.from), Math.abs(axis.to)) * own.factor;
  const unit = lengthUnit(far, { shown: 'motion' }, view) ?? 'in';
  const by = own.factor / UNITS[unit].factor;
  return [{ ...axis, unit, from: axis.from * by, to: axis.to * by }, by];
};

/** The same curve on axes in the reader’s units; where both are shown, the metric ones lead. */
export const curveIn = (curve: Curve, view: UnitView): Curve => {
  const [[across, x], [up, y]] = [axisIn(curve.across, view), axisIn(curve.up, view)];
  if (x === 1 && y === 1) return curve;
  return {
    across,
    up,
    places: curve.places.map((one) => one * x),
    right: curve.right.map((one) => one * y),
    fine: curve.fine.map(([at, one]) => [at * x, one * y]),
    slips: curve.slips.map(({ at, says }) => ({ at: at.map((one) => one * y), says })),
  };
};

export const CURVE_WIDTH = 400;
const HEIGHT = 256;
const INSIDE: Inside = { left: 62, right: 374, top: 28, floor: 206 };

/** Between round numbers, about so many of them. */
const MARKS = 5;
const ROUND = [1, 2, 2.5, 5, 10];
const marksOf = ({ from, to }: Axis): number[] => {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const rough = (high - low) / MARKS;
  const decade = 10 ** Math.floor(Math.log10(rough));
  const step = decade * (ROUND.find((r) => r * decade >= rough * (1 - 1e-9)) ?? 10);
  const first = Math.ceil(low / step - 1e-9);
  return Array.from({ length: Math.floor(high / step + 1e-9) - first + 1 }, (_, i) => (first + i) * step);
};

export const curveX = ({ across: { from, to } }: Curve, x: number): number =>
  INSIDE.left + ((x - from) / (to - from)) * (INSIDE.right - INSIDE.left);
export const curveY = ({ up: { from, to } }: Curve, y: number): number =>
  INSIDE.floor - ((y - from) / (to - from)) * (INSIDE.floor - INSIDE.top);
/** The value at a height of the picture, held within the axis. */
export const valueAt = ({ up: { from, to } }: Curve, y: number): number =>
  from + Math.min(1, Math.max(0, (INSIDE.floor - y) / (INSIDE.floor - INSIDE.top))) * (to - from);

/** The axes alone, in what is laid on them as marks: printed, they wait for a pencil. */
export const curveSvg = (curve: Curve, marks = ''): string => {
  const { across, up, places } = curve;
  const [xs, ys] = [marksOf(across), marksOf(up)];
  const { left, floor, right } = INSIDE;
  const text = (x: number, y: number, words: string, anchor: string) =>
    `<text x="${px(x)}" y="${px(y)}" text-anchor="${anchor}">${words}</text>`;
  const zero =
    ys.includes(0) && up.from < 0 ? `<path class="zero" d="M${left} ${px(curveY(curve, 0))}H${right}"/>` : '';
  const columns = places.map((x) => `M${px(curveX(curve, x))} ${INSIDE.top}V${floor}`).join('');
  return (
    `<svg class="curve-picture" viewBox="0 0 ${CURVE_WIDTH} ${HEIGHT}" role="group" aria-label="${escapeText(curveAsked(up.says, across.says))}"><path class="columns" d="${columns}"/>${zero}` +
    `${frameBox(
      INSIDE,
      xs.map((x) => curveX(curve, x)),
      ys.map((y) => curveY(curve, y)),
    )}` +
    `${xs.map((x) => text(curveX(curve, x), floor + 20, numeral(x), 'middle')).join('')}${ys.map((y) => text(left - 8, curveY(curve, y) + 5, numeral(y), 'end')).join('')}` +
    `${text((left + right) / 2, HEIGHT - 8, escapeText(axisName(across)), 'middle')}${text(2, 16, escapeText(axisName(up)), 'start')}${marks}</svg>`
  );
};

/** The chief words of a symbol, and its unit where they do not tell it. */
const axisName = ({ says, unit }: Axis): string => {
  const [chief = says] = says.split(',');
  return unit === '1' || chief === unit ? chief : `${chief}, ${unitText(unit as Unit)}`;
};

/** Of points one after the other, for a path. */
export const curvePath = (curve: Curve, points: readonly (readonly [number, number])[]): string =>
  polyline(points.map(([x, y]) => [curveX(curve, x), curveY(curve, y)]));

export const withAxisUnit = (value: number, { unit }: Axis): string => {
  const amount = numeral(Number(value.toPrecision(3)));
  const one = unit === 'turns' && /^−?1$/.test(amount);
  return unit === '1' ? amount : `${amount}\u00a0${one ? UNIT_WORDS.turn : unitText(unit as Unit)}`;
};

/** As near as a hand draws, as shares of the axis: the idea counts. */
const NEAR = 0.1;
/** A curve that leaves its chord by less is straight to the eye, and by more is bent. */
const STRAIGHT = 0.04;
const BENT = 0.08;

const mean = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0) / xs.length;

export const judgeCurve = (
  curve: Curve,
  made: readonly number[],
): { readonly right: boolean; readonly says: string } => {
  const { up, across, places, right, slips } = curve;
  const span = Math.abs(up.to - up.from);
  const off = (other: readonly number[]) => made.map((y, i) => Math.abs(y - (other[i] ?? 0)) / span);
  const wrong = off(right);
  const most = Math.max(...wrong);
  if (most <= NEAR) return { right: true, says: CURVE_RIGHT };
  const at = wrong.indexOf(most);
  const told = curveOff(
    withAxisUnit(places[at] ?? 0, across),
    withAxisUnit(made[at] ?? 0, up),
    withAxisUnit(right[at] ?? 0, up),
  );
  const thought = slips
    .map(({ at: way, says }) => ({ says, far: mean(off(way)) }))
    .filter(({ far }) => far <= NEAR && far < mean(wrong))
    .sort((a, b) => a.far - b.far)[0];
  return { right: false, says: `${told} ${thought?.says ?? leads()}` };

  /** Where no slip fits, one question about the shape. */
  function leads(): string {
    const rises = (ys: readonly number[]) => {
      const whole = ((ys.at(-1) ?? 0) - (ys[0] ?? 0)) / span;
      return Math.abs(whole) < NEAR ? 0 : Math.sign(whole);
    };
    const bow = (ys: readonly number[]) => {
      const [first, last] = [ys[0] ?? 0, ys.at(-1) ?? 0];
      return Math.max(...ys.map((y, i) => Math.abs(y - first - ((last - first) * i) / (ys.length - 1)))) / span;
    };
    if (rises(made) !== rises(right)) return curveTrend(rises(right));
    if (bow(right) > BENT && bow(made) < STRAIGHT) return CURVE_BENDS;
    if (bow(right) < STRAIGHT && bow(made) > BENT) return CURVE_STRAIGHT;
    return (wrong[0] ?? 0) > NEAR ? CURVE_STARTS : curveAmount(withAxisUnit(places[at] ?? 0, across));
  }
};
