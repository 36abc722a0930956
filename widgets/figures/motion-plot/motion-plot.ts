/**
 * Position against turns: the two large motions that almost cancel, and the small one they leave, which needs a scale of
 * its own. The curves are drawn once for a pair; turning only moves the marks.
 */

import * as Plot from '@observablehq/plot';
import { WORDS } from '#words/figures/motion-plot.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import { good, type Thread, type Unit } from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { dropPath, endLabels, type Inside } from '../kit/plot-box.ts';
import { chartSvg, numberAxis } from '../kit/plots/chart.ts';
import { axisUnit, perMillimetre } from '../kit/plots/frame.ts';
import { signedAmount } from '../kit/readout.ts';
import { px } from '../kit/svg.ts';

const REACH = 4;
/** The scale over the largest motion: over and under the ends of the lines stand their names. */
const ROOM = 1.25;
const WIDTH = 400;
const HEIGHT = 250;

interface State {
  readonly A: Thread;
  readonly C: Thread;
  readonly n: number;
  readonly Delta: number;
}

interface Curve {
  readonly key: 'turned' | 'relative' | 'carried';
  readonly slope: number;
  readonly dash?: string;
}

const curves = (s: State): Curve[] => [
  { key: 'relative', slope: s.C.h * s.C.L, dash: '2 4' },
  { key: 'turned', slope: -s.A.h * s.A.L, dash: '8 4' },
  { key: 'carried', slope: s.Delta },
];

const axes = (s: State, view: UnitView) => {
  const all = Math.max(...curves(s).map((c) => Math.abs(c.slope))) * REACH;
  const net = Math.max(Math.abs(s.Delta) * REACH, 1e-6);
  return { wide: { reach: all, unit: axisUnit(all, view) }, near: { reach: net, unit: axisUnit(net, view) } };
};

const MARGIN = { top: 14, right: 10, bottom: 26, left: 56 };
const INSIDE: Inside = {
  left: MARGIN.left,
  right: WIDTH - MARGIN.right,
  top: MARGIN.top,
  floor: HEIGHT - MARGIN.bottom,
};
const x = (n: number) => MARGIN.left + ((n + REACH) / (2 * REACH)) * (WIDTH - MARGIN.left - MARGIN.right);
const y = (z: number, reach: number) =>
  MARGIN.top + ((1 - z / reach / ROOM) / 2) * (HEIGHT - MARGIN.top - MARGIN.bottom);

const plotOf = (shown: readonly Curve[], { reach, unit }: { reach: number; unit: Unit }, title: string): string => {
  const factor = perMillimetre(unit);
  const limit = reach * factor * ROOM;
  const ends = [-REACH, REACH];
  return chartSvg({ width: WIDTH, height: HEIGHT, margin: MARGIN }, title, {
    x: numberAxis(-REACH, REACH, 9),
    y: numberAxis(-limit, limit, 5),
    marks: [
      Plot.ruleY([0], { className: 'zero' }),
      ...shown.map((c) =>
        Plot.line(
          ends.map((n) => ({ n, z: n * c.slope * factor })),
          {
            x: 'n',
            y: 'z',
            className: `curve ${c.key}`,
            ...(c.dash ? { strokeDasharray: c.dash } : {}),
          },
        ),
      ),
    ],
  });
};

const draw = (s: State, view: UnitView): string => {
  const { wide, near } = axes(s, view);
  const panel = (key: 'wide' | 'near', shown: readonly Curve[], axis: typeof wide, title: string) =>
    `<div class="panel"><p class="panel-name">${WORDS.panel(title, axis.unit)}</p><div class="plot-box">${plotOf(shown, axis, title)}` +
    `<svg class="plot-marks" viewBox="0 0 ${WIDTH} ${HEIGHT}" aria-hidden="true">${names(shown, axis.reach)}<path class="cursor-line" data-cursor="${key}" d="${cursorPath(shown, s.n, axis.reach)}"/>${shown.map((c) => mark(key, c, s.n, axis.reach)).join('')}</svg></div>` +
    `<p class="x-name">${WORDS.turns}</p></div>`;
  return `${panel('wide', curves(s), wide, WORDS.allThree)}${panel('near', curves(s).slice(2), near, WORDS.carriedAlone)}`;
};

const names = (shown: readonly Curve[], reach: number): string =>
  endLabels(
    shown.map(({ key, slope }) => ({
      className: key,
      words: WORDS.curves[key],
      y: y(REACH * slope, reach),
      falls: slope < 0,
    })),
    INSIDE,
  );

/** Each point let down on both axes. */
const cursorPath = (shown: readonly Curve[], n: number, reach: number): string =>
  shown.map((c) => dropPath([x(clamp(n)), y(clamp(n) * c.slope, reach)], INSIDE)).join('');
const clamp = (n: number): number => Math.max(-REACH, Math.min(REACH, n));
const mark = (panel: string, c: Curve, n: number, reach: number): string =>
  `<circle class="mark ${c.key}" data-mark="${panel}-${c.key}" r="5" cx="${px(x(clamp(n)))}" cy="${px(y(clamp(n) * c.slope, reach))}"/>`;

export const motionPlot = defineFigure({
  name: 'motion-plot',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['n'],
  chief: ['n'],
  groups: { threads: ['A', 'C'] },
  state: (numbers) => {
    const pair = pairOf(numbers);
    return pair.ok ? good<State>({ ...pair.value, n: numbers.values.n }) : pair;
  },
  draw,
  rows: (s) => curves(s).map(({ key, slope }) => signedAmount(key, WORDS.curves[key], slope * s.n, 'motion', 4)),
  caption: ({ A, C, n, Delta }, view) => {
    const motion = (z: number) => withSign(show(z, { shown: 'motion', digits: 4 }, view));
    return WORDS.caption({
      reach: REACH,
      turned: motion(-A.h * A.L * REACH),
      relative: motion(C.h * C.L * REACH),
      carried: motion(Delta * REACH),
      turns: show(n, { shown: 'turns' }, view),
      here: motion(Delta * n),
    });
  },
  table: (s, view) => {
    const list = curves(s);
    return {
      head: [WORDS.turns, ...list.map((c) => WORDS.curves[c.key])],
      rows: Array.from({ length: 2 * REACH + 1 }, (_, i) => [
        numeral(i - REACH),
        ...list.map((c) => show((i - REACH) * c.slope, { shown: 'motion', digits: 4 }, view)),
      ]),
    };
  },
  renderKey: (_, { threads }) => threads,
  update: (stage, s, view) => {
    const both = axes(s, view);
    for (const key of ['wide', 'near'] as const) {
      stage
        .querySelector(`[data-cursor="${key}"]`)
        ?.setAttribute('d', cursorPath(key === 'wide' ? curves(s) : curves(s).slice(2), s.n, both[key].reach));
      for (const c of curves(s)) {
        const dot = stage.querySelector(`[data-mark="${key}-${c.key}"]`);
        dot?.setAttribute('cx', px(x(clamp(s.n))));
        dot?.setAttribute('cy', px(y(clamp(s.n) * c.slope, both[key].reach)));
      }
    }
  },
});
