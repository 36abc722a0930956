/**
 * Does it fit, how far does it go: the pair in section with the reader's own lengths, the engagement left on each thread over the turns
 * between the stops, and for a sleeve the wall between its threads, nominal and at the limits of size.
 */

import { WORDS as ADJUSTER } from '#words/adjuster.ts';
import { WORDS } from '#words/figures/fit-section.ts';
import { standing } from '../../assembly/adjuster/adjuster.ts';
import type { Arrangement } from '../../assembly/adjuster/from-numbers.ts';
import { type FitState, fitStateOf, type Wall } from '../../assembly/fit-state.ts';
import { bad, good, type Result } from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { extentsOf } from '../kit/adjuster-extras.ts';
import { type Frame, frameIn, namesAt, partsHtml, pictureOf, updateParts } from '../kit/adjuster-picture.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { knobSvg, mountKnob, updateKnob } from '../kit/knob.ts';
import { amount, type Row, signedAmount } from '../kit/readout.ts';
import { hatchings, polygon, px } from '../kit/svg.ts';
import { engagementPlot, updatePlot } from './engagement-plot.ts';
import { wallLens } from './wall-lens.ts';

const WIDTH = 400;
const HEIGHT = 440;
const AXIS = 118;
const COLUMNS = { A: 334, C: 374, width: 18 };
const FLATS = 6;
const MARGIN = 22;

const frameOf = (s: FitState): Frame => {
  // The lock is left out, so the parts alone take the room.
  const extents = extentsOf(s.adjuster);
  const frame = frameIn({ ...extents, left: extents.half }, HEIGHT - 2 * MARGIN, AXIS, AXIS - 6);
  return { ...frame, y: frame.y + MARGIN };
};

interface State extends FitState {
  readonly arrangement: Arrangement;
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
    : bad('lengths-of-no-one-scale', {});
};

const size = (length: number, view: UnitView, digits = 3) => show(length, { shown: 'size', digits }, view);
const motion = (length: number, view: UnitView, digits = 3) => show(length, { shown: 'motion', digits }, view);
const signed = (z: number, view: UnitView): string => withSign(motion(z, view, 4));
/** Walls are compared with each other, so they keep hundredths of a millimetre. */
const wallSize = (t: number, view: UnitView) =>
  show(t, { shown: 'size', digits: Math.max(1, Math.floor(Math.log10(Math.abs(t) || 1)) + 3) }, view);
const hasLimits = (wall: FitState['wall']): wall is Wall => wall !== undefined && 'least' in wall;

/** A column beside the section at its scale: the nut, and how much of it holds the screw. */
const columnOf = (s: State, key: 'A' | 'C'): { readonly nut: string; readonly engaged: string } => {
  const { joint } = s[key];
  const { at } = s.standing;
  const [below, above] = key === 'A' ? [at.base, at.turned] : [at.turned, at.carried];
  const [lower, upper] = [joint.lower, joint.upper].map((end, i) => ({
    from: end.from + (i === 0 ? below : above),
    to: end.to + (i === 0 ? below : above),
  })) as [{ from: number; to: number }, { from: number; to: number }];
  const nut = joint.lower.gender === 'internal' ? lower : upper;
  const from = Math.max(lower.from, upper.from);
  const bar = (z0: number, z1: number) =>
    polygon(
      [
        [-1, z0],
        [1, z0],
        [1, z1],
        [-1, z1],
      ].map(([x = 0, z = 0]) => [COLUMNS[key] + (x * COLUMNS.width) / 2, s.frame.y - z * s.frame.scale] as const),
    );
  return { nut: bar(nut.from, nut.to), engaged: bar(from, Math.max(from, Math.min(lower.to, upper.to))) };
};

const paint = (s: State) => ({ ...pictureOf(s.adjuster, s.standing, s.frame), guide: '' });

const draw = (s: State, view: UnitView): string => {
  const bar = (key: 'A' | 'C') => {
    const { nut, engaged } = columnOf(s, key);
    return `<g class="bar-${key}" data-sym="l_${key}"><path class="nut" data-shape="nut${key}" d="${nut}"/><path class="engaged" data-shape="bar${key}" d="${engaged}"/><text x="${COLUMNS[key]}" y="0" dy="2.15em" text-anchor="middle">${key}</text></g>`;
  };
  return (
    `<div class="fit-view"><svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.section.label({ arrangement: s.arrangement, A: s.A.thread.designation, C: s.C.thread.designation })}">${hatchings('fit')}` +
    `${partsHtml(paint(s), 'fit')}` +
    `<path class="axis" d="M${AXIS} 4V${HEIGHT - 4}"/><g data-names>${names(s)}</g>` +
    `<text class="figure-note" x="${COLUMNS.A + 20}" y="0" dy="1em" text-anchor="middle">${WORDS.section.engaged}</text>${bar('A')}${bar('C')}</svg></div>` +
    `<div class="fit-side">${engagementPlot(s, { size: (l) => show(Number(l.toPrecision(3)), { shown: 'size' }, short(view)), count: (n) => numeral(Number(n.toFixed(2))) })}` +
    `<div class="fit-row">${knobSvg(s.standing.n, 'hexagon', FLATS, WORDS.section.knob)}${lens(s, view)}</div></div>`
  );
};

const lens = (s: FitState, view: UnitView): string =>
  hasLimits(s.wall)
    ? `<div class="fit-lens">${wallLens(s, s.wall, { nominal: wallSize(s.wall.nominal, short(view)), least: wallSize(s.wall.least, short(view)) })}<p class="lens-words">${WORDS.lens.key}</p></div>`
    : '';

/** Two units do not fit inside a drawing. */
const short = (view: UnitView): UnitView => (view === 'both' ? 'metric' : view);

const names = (s: State): string =>
  namesAt(s.adjuster, s.standing)
    .map(
      ([key, [x, z]]) =>
        `<text class="part-name ${key}" x="${px(s.frame.x + x * s.frame.scale + 8)}" y="${px(s.frame.y - z * s.frame.scale + 4)}">${WORDS.section.parts[key]}</text>`,
    )
    .join('');

const readout = (s: FitState): Row[] => {
  const { engaged, left, motion: z } = s.standing;
  return [
    amount('turned', WORDS.readout.engaged('A'), engaged.A, 'size', 3),
    amount('carried', WORDS.readout.engaged('C'), engaged.C, 'size', 3),
    [
      WORDS.readout.inDiameters,
      WORDS.readout.both(numeral(engaged.A / s.A.thread.d, 2), numeral(engaged.C / s.C.thread.d, 2)),
    ],
    amount('clockwise', WORDS.readout.clockwise, left.clockwise, 'plain', 3),
    amount('anticlockwise', WORDS.readout.anticlockwise, left.anticlockwise, 'plain', 3),
    signedAmount('perTurn', WORDS.readout.carried, z.carried, 'motion', 4),
    amount('stroke', WORDS.readout.stroke, s.adjuster.stroke, 'motion', 3),
    ['markA', WORDS.readout.mark('A'), WORDS.turns(numeral(s.A.middle, 3))],
    ['markC', WORDS.readout.mark('C'), WORDS.turns(numeral(s.C.middle, 3))],
  ];
};

const caption = (s: State, view: UnitView): string => {
  const { adjuster, standing: now } = s;
  const { clockwise, anticlockwise, best } = adjuster;
  const says = WORDS.caption({
    stopped: now.stopped === undefined ? undefined : { asked: numeral(s.asked), why: ADJUSTER.stop(now.stopped) },
    clockwise: { turns: numeral(clockwise.n, 3), why: ADJUSTER.stop(clockwise) },
    anticlockwise: { turns: numeral(-anticlockwise.n, 3), why: ADJUSTER.stop(anticlockwise) },
    range: adjuster.turns < 1e-9 ? 'none' : adjuster.turns > best.turns - 1e-9 ? 'all' : 'part',
    has: { turns: numeral(adjuster.turns, 3), stroke: motion(adjuster.stroke, view) },
    best: { turns: numeral(best.turns, 3), stroke: motion(best.stroke, view), thread: best.limiting },
    idle: adjuster.Delta === 0,
  });
  const wall = wallWords(s, view);
  return wall === undefined ? says : `${says} ${wall}`;
};

const wallWords = ({ wall }: FitState, view: UnitView): string | undefined => {
  if (wall === undefined) return undefined;
  if (!hasLimits(wall)) return WORDS.wallUnknown(wall.nominalOnly);
  const { nominal, least, most, outside, inside } = wall;
  return WORDS.wall({
    nominal: wallSize(nominal, view),
    least: wallSize(least, view),
    most: wallSize(most, view),
    outside: outside.cls,
    inside: inside.cls,
    always: least > 0,
  });
};

/** Places of the table: every eighth of the travel, and where it was put together. */
const places = (s: FitState): readonly number[] => {
  const { anticlockwise, turns } = s.adjuster;
  const eighths = Array.from({ length: 9 }, (_, i) => anticlockwise.n + (turns * i) / 8);
  return turns < 1e-9 ? [0] : eighths;
};

export const fitSection = defineFigure({
  name: 'fit-section',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['n', 'l_A', 'b_A', 'l_C', 'b_C', 'q_e'],
  choices: ['arrangement', 'assembly'],
  chief: ['n'],
  groups: {
    threads: ['A', 'C'],
    arrangement: ['arrangement', 'assembly'],
    lengths: ['l_A', 'b_A', 'l_C', 'b_C', 'q_e'],
  },
  state: stateOf,
  draw,
  caption,
  rows: readout,
  table: (s, view) => {
    const rows = places(s).map((n) => {
      const { engaged, motion: z } = standing(s.adjuster, n);
      return [numeral(n, 3), size(engaged.A, view, 4), size(engaged.C, view, 4), signed(z.carried, view)];
    });
    const { wall } = s;
    const walls = hasLimits(wall)
      ? [
          [WORDS.rows.wall, wallSize(wall.nominal, view), '', ''],
          [WORDS.rows.wallLimits, wallSize(wall.least, view), wallSize(wall.most, view), ''],
        ]
      : [];
    return {
      head: WORDS.head,
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
  update: (stage, s) => {
    updateParts(stage, paint(s));
    for (const key of ['A', 'C'] as const) {
      const { nut, engaged } = columnOf(s, key);
      stage.querySelector(`[data-shape="nut${key}"]`)?.setAttribute('d', nut);
      stage.querySelector(`[data-shape="bar${key}"]`)?.setAttribute('d', engaged);
    }
    const labels = stage.querySelector('[data-names]');
    if (labels) labels.innerHTML = names(s);
    updatePlot(stage, s);
    updateKnob(stage, s.standing.n);
  },
});
