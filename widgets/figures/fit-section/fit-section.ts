/**
 * Does it fit, how far does it go: the pair in section with the reader's own lengths, the engagement left on each thread over the turns
 * between the stops, and for a sleeve the wall between its threads, nominal and at the limits of size.
 */

import { type FitState, fitStateOf, type Wall, whyStopped } from '../../assembly/fit-state.ts';
import { good, type Result, said, standAt } from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import type { Frame } from '../kit/assembly-paths.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { type Columns, extents, namesAt, type Shapes, shapesOf } from '../kit/fit-shapes.ts';
import { knobSvg, mountKnob, updateKnob } from '../kit/knob.ts';
import { type LiveFigure, readoutHtml, updateReadout } from '../kit/readout.ts';
import { hatchings, px } from '../kit/svg.ts';
import { engagementPlot, updatePlot } from './engagement-plot.ts';
import { wallLens } from './wall-lens.ts';

const WIDTH = 400;
const HEIGHT = 440;
const AXIS = 118;
const COLUMNS: Columns = { A: 334, C: 374, width: 18 };
const FLATS = 6;
const MARGIN = 22;

const frameOf = (s: FitState): Frame => {
  const { top, bottom, half } = extents(s);
  const scale = Math.min((HEIGHT - 2 * MARGIN) / (top - bottom), (AXIS - 6) / half);
  return { scale, x: AXIS, y: MARGIN + top * scale + (HEIGHT - 2 * MARGIN - (top - bottom) * scale) / 2 };
};

interface State extends FitState {
  readonly frame: Frame;
  /** Turns asked for, which the stops may not let it reach. */
  readonly asked: number;
}

type Asked = NumbersOf<'A' | 'C', 'n' | 'l_A' | 'b_A' | 'l_C' | 'b_C' | 'q_e', 'arrangement' | 'assembly', never>;

const stateOf = (numbers: Asked): Result<State> => {
  const { n } = numbers.values;
  const fit = fitStateOf(numbers, n);
  if (!fit.ok) return fit;
  const frame = frameOf(fit.value);
  return frame.scale > 0 && Number.isFinite(frame.scale)
    ? good({ ...fit.value, frame, asked: n })
    : said('These lengths can’t be drawn to one scale: bring them nearer to each other.');
};

const size = (length: number, view: UnitView, digits = 3) => show(length, { shown: 'size', digits }, view);
const motion = (length: number, view: UnitView, digits = 3) => show(length, { shown: 'motion', digits }, view);
const signed = (z: number, view: UnitView): string => withSign(motion(z, view, 4));
/** Walls are compared with each other, so they keep hundredths of a millimetre. */
const wallSize = (t: number, view: UnitView) =>
  show(t, { shown: 'size', digits: Math.max(1, Math.floor(Math.log10(Math.abs(t) || 1)) + 3) }, view);
const turnsText = (n: number) => `${numeral(n, 3)} ${numeral(n, 3) === '1.00' ? 'turn' : 'turns'}`;
const hasLimits = (wall: FitState['wall']): wall is Wall => wall !== undefined && 'least' in wall;

const draw = (s: State, view: UnitView): string => {
  const { frame } = s;
  const p = shapesOf(s, frame, COLUMNS);
  const nested = s.arrangement === 'nested';
  const part = (key: 'base' | 'turned' | 'carried', cut: boolean) =>
    `<path class="part ${key}${cut ? '' : ' solid'}" data-shape="${key}" d="${p[key]}"${cut ? ` fill="url(#fit-${key})"` : ''}/>`;
  const bar = (key: 'A' | 'C') =>
    `<g class="bar-${key}" data-sym="l_${key}"><path class="nut" data-shape="nut${key}" d="${p[`nut${key}`]}"/><path class="engaged" data-shape="bar${key}" d="${p[`bar${key}`]}"/><text x="${COLUMNS[key]}" y="30" text-anchor="middle">${key}</text></g>`;
  return (
    `<div class="fit-view"><svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="Section to scale, ${s.arrangement}: ${s.A.thread.designation} in the base, ${s.C.thread.designation} to the carried part">${hatchings('fit')}` +
    `${part('base', true)}${nested ? part('turned', true) : ''}${part('carried', !nested)}${nested ? '' : part('turned', false)}` +
    `<path class="axis" d="M${AXIS} 4V${HEIGHT - 4}"/><g data-names>${names(s)}</g>` +
    `<text class="figure-note" x="${COLUMNS.A + 20}" y="14" text-anchor="middle">engaged</text>${bar('A')}${bar('C')}</svg></div>` +
    `<div class="fit-side">${engagementPlot(s, { size: (l) => show(Number(l.toPrecision(3)), { shown: 'size' }, short(view)), count: (n) => numeral(Number(n.toFixed(2))) })}` +
    `<div class="fit-row">${knobSvg(s.standing.n, 'hexagon', FLATS, 'Turned part, from above')}${lens(s, view)}</div></div>` +
    readoutHtml(readout(s, view))
  );
};

const lens = (s: FitState, view: UnitView): string =>
  hasLimits(s.wall)
    ? `<div class="fit-lens">${wallLens(s, s.wall, { nominal: wallSize(s.wall.nominal, short(view)), least: wallSize(s.wall.least, short(view)) })}<p class="lens-words">Wall: solid, from basic sizes; dashed, thinnest within limits.</p></div>`
    : '';

/** Two units do not fit inside a drawing. */
const short = (view: UnitView): UnitView => (view === 'both' ? 'metric' : view);

const names = (s: State): string =>
  Object.entries(namesAt(s))
    .map(
      ([key, [x, z]]) =>
        `<text class="part-name ${key}" x="${px(s.frame.x + x * s.frame.scale + 8)}" y="${px(s.frame.y - z * s.frame.scale + 4)}">${key === 'base' ? 'base' : `${key} part`}</text>`,
    )
    .join('');

const readout = (s: FitState, view: UnitView): LiveFigure[] => {
  const { engaged, left, motion: z } = s.standing;
  const diameters = (length: number, d: number) => `${size(length, view)}, ${numeral(length / d, 2)} d`;
  return [
    ['turned', 'engaged, thread A', diameters(engaged.A, s.A.thread.d)],
    ['carried', 'engaged, thread C', diameters(engaged.C, s.C.thread.d)],
    ['clockwise', 'turns left, clockwise', numeral(left.clockwise, 3)],
    ['anticlockwise', 'turns left, anticlockwise', numeral(left.anticlockwise, 3)],
    ['perTurn', 'carried part, from assembly', signed(z, view)],
    ['markA', 'mark: back A out from home', turnsText(s.mark.A)],
    ['markC', 'mark: back C out from home', turnsText(s.mark.C)],
  ];
};

const caption = (s: State, view: UnitView): string => {
  const { travel, standing } = s;
  const { clockwise, anticlockwise, best } = travel;
  const stopped =
    standing.stopped === undefined
      ? ''
      : `It will not go to ${numeral(s.asked)} turns: ${whyStopped(standing.stopped)}. `;
  const all = `${turnsText(best.turns)} and ${motion(best.stroke, view)} of stroke, set by thread ${best.limiting}`;
  const range =
    travel.turns < 1e-9
      ? `Put together so, it can’t turn at all: clockwise ${whyStopped(clockwise)}, anticlockwise ${whyStopped(anticlockwise)}; at mid-range the same threads give ${all}.`
      : `Clockwise ${turnsText(clockwise.n)}, until ${whyStopped(clockwise)}; anticlockwise ${turnsText(-anticlockwise.n)}, until ${whyStopped(anticlockwise)}: ${
          travel.turns > best.turns - 1e-9
            ? all
            : `${turnsText(travel.turns)} and ${motion(travel.stroke, view)} of stroke, where put together at mid-range it would be ${all}`
        }.`;
  const idle = travel.perTurn === 0 ? ' The leads are equal, so the carried part stands still.' : '';
  return `${stopped}${range}${idle}${wallWords(s, view)}`;
};

const wallWords = (s: FitState, view: UnitView): string => {
  if (s.wall === undefined) return '';
  if (!hasLimits(s.wall)) return ` The wall at the limits is not known: ${s.wall.nominalOnly}`;
  const { nominal, least, most, outside, inside } = s.wall;
  const classes = `${outside.cls} outside and ${inside.cls} inside`;
  return least > 0
    ? ` The wall is ${wallSize(nominal, view)} from basic sizes, and with ${classes} between ${wallSize(least, view)} and ${wallSize(most, view)}.`
    : ` The wall is ${wallSize(nominal, view)} from basic sizes, but with ${classes} it may come to ${wallSize(least, view)}: some parts within limits have no wall at all.`;
};

/** Places of the table: every eighth of the travel, and where it was put together. */
const places = (s: FitState): readonly number[] => {
  const { anticlockwise, turns } = s.travel;
  const eighths = Array.from({ length: 9 }, (_, i) => anticlockwise.n + (turns * i) / 8);
  return turns < 1e-9 ? [0] : eighths;
};

export const fitSection = defineFigure({
  name: 'fit-section',
  title: 'Section, engagement and end stops',
  threads: ['A', 'C'],
  quantities: ['n', 'l_A', 'b_A', 'l_C', 'b_C', 'q_e'],
  choices: ['arrangement', 'assembly'],
  state: stateOf,
  draw,
  caption,
  table: (s, view) => {
    const rows = places(s).map((n) => {
      const { engaged, motion: z } = standAt(s.A, s.C, s.travel, n);
      return [numeral(n, 3), size(engaged.A, view, 4), size(engaged.C, view, 4), signed(z, view)];
    });
    const { wall } = s;
    const walls = hasLimits(wall)
      ? [
          ['wall, basic sizes', wallSize(wall.nominal, view), '', ''],
          ['wall, least and most within limits', wallSize(wall.least, view), wallSize(wall.most, view), ''],
        ]
      : [];
    return {
      head: ['turns, clockwise', 'engaged, thread A', 'engaged, thread C', 'carried part'],
      rows: [...rows, ...walls],
    };
  },
  renderKey: (_, { threads, choices, values: { n: _n, ...rest } }) => [threads, choices, rest],
  mount: (stage, context) =>
    mountKnob(stage, {
      read: () => {
        const numbers = context.numbers();
        const state = fitStateOf(numbers, numbers.values.n);
        return state.ok ? state.value.standing.n : 0;
      },
      // The hand feels the stop: nothing is written beyond it.
      write: (n) => {
        const state = fitStateOf(context.numbers(), n);
        if (state.ok) context.set('n', state.value.standing.n);
      },
      steps: () => FLATS,
    }),
  update: (stage, s, view) => {
    for (const [key, d] of Object.entries(shapesOf(s, s.frame, COLUMNS) satisfies Shapes))
      stage.querySelector(`[data-shape="${key}"]`)?.setAttribute('d', d);
    const labels = stage.querySelector('[data-names]');
    if (labels) labels.innerHTML = names(s);
    updatePlot(stage, s);
    updateKnob(stage, s.standing.n);
    updateReadout(stage, readout(s, view));
  },
});
