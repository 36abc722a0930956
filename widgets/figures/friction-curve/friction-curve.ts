/**
 * Torque against friction, for the pair and for a plain screw of thread C. At no friction each is the work of the load and
 * nothing else, so there the finer is the lighter; with the friction of real threads it is not. Friction is set by
 * dragging the mark, or with the arrow keys on it.
 */

import * as Plot from '@observablehq/plot';
import { WORDS } from '#words/figures/friction-curve.ts';
import {
  type EffortNumbers,
  type EffortState,
  effortState,
  effortThread,
  torqueText,
} from '../../assembly/effort-of.ts';
import { evenFriction, good, type Result } from '../../engine/index.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { dropPath, endLabels, type Inside } from '../kit/plot-box.ts';
import { chartSvg, numberAxis } from '../kit/plots/chart.ts';
import { legendItem, legendKey } from '../kit/plots/frame.ts';
import { mountPull } from '../kit/pull.ts';
import { amount } from '../kit/readout.ts';
import { px } from '../kit/svg.ts';

const WIDTH = 560;
const HEIGHT = 320;
const MARGIN = { top: 14, right: 22, bottom: 38, left: 62 };
/** Friction shown: what threads have between grease and rust, and all of it where the reader goes beyond. */
const NEAR = 0.4;
const SAMPLES = 48;
/** One press of an arrow, and of one with Shift. */
const NUDGE = 0.01;
const STRIDE = 0.1;

/** Lowering runs so near to raising that its name would stand on one of the two; it is in the legend. */
const LOWERING = '8 4';

interface Curve {
  readonly key: 'raise' | 'lower' | 'plain';
  readonly name: string;
  readonly dash?: string;
  readonly of: (s: EffortState) => number;
}

const curvesOf = ({ A, C }: EffortState): readonly Curve[] => [
  { key: 'raise', name: WORDS.curves.raise(A.designation, C.designation), of: (s) => s.pair.against.torque },
  { key: 'lower', name: WORDS.curves.lower, dash: LOWERING, of: (s) => s.pair.along.torque },
  { key: 'plain', name: WORDS.curves.plain(C.designation), dash: '2 4', of: (s) => s.plain.against },
];

interface Picture {
  readonly state: EffortState;
  readonly curves: readonly Curve[];
  /** Friction at the right edge, and torque at the lower and upper one. */
  readonly most: number;
  readonly low: number;
  readonly high: number;
  readonly points: readonly { readonly mu: number; readonly state: EffortState }[];
  /** Without friction; nothing where the pair is refused there. */
  readonly free: EffortState | undefined;
  /** The friction at which the pair costs as much as thread C alone, if it is in the picture, and what both cost there. */
  readonly even: { readonly mu: number; readonly torque: number | undefined } | undefined;
  readonly lighterWithout: boolean;
  /** The frictions of the table. */
  readonly listed: readonly EffortState[];
}

const reach = (mu: number): number => (mu <= NEAR ? NEAR : 1);

const pictureOf = (numbers: EffortNumbers): Result<Picture> => {
  const now = effortState(numbers);
  if (!now.ok) return now;
  const state = now.value;
  const most = reach(state.mu);
  const stateAt = (mu: number): EffortState | undefined => {
    const there = effortState(numbers, mu);
    return there.ok ? there.value : undefined;
  };
  const points: { mu: number; state: EffortState }[] = [];
  for (let i = 0; i <= SAMPLES; i++) {
    const mu = (most * i) / SAMPLES;
    const there = stateAt(mu);
    // A steep thread jams before friction gets so far; the curve ends there.
    if (!there) break;
    points.push({ mu, state: there });
  }
  const curves = curvesOf(state);
  const torques = points.flatMap((p) => curves.map((c) => c.of(p.state)));
  const even = evenFriction(effortThread(state.A, 0), effortThread(state.C, 0), effortThread(state.C, 0));
  if (!even.ok) return even;
  // Without a collar or tip only: those are no part of the comparison of threads.
  const bare = numbers.choices.rubs === 'nothing';
  const { mu } = even.value;
  const evenAt = bare && mu !== undefined && mu <= most ? mu : undefined;
  return good({
    state,
    curves,
    most,
    low: Math.min(0, ...torques),
    high: Math.max(...torques) * 1.14,
    points,
    free: points[0]?.state,
    even: evenAt === undefined ? undefined : { mu: evenAt, torque: stateAt(evenAt)?.plain.against },
    lighterWithout: even.value.lighterWithout,
    listed: PLACES.flatMap((place) => stateAt(place) ?? []),
  });
};
const PLACES = [0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.6, 0.8];

const x = (p: Picture, mu: number): number => MARGIN.left + (mu / p.most) * (WIDTH - MARGIN.left - MARGIN.right);
const y = (p: Picture, torque: number): number =>
  HEIGHT - MARGIN.bottom - ((torque - p.low) / (p.high - p.low)) * (HEIGHT - MARGIN.top - MARGIN.bottom);

const plotOf = (p: Picture, title: string): string =>
  chartSvg({ width: WIDTH, height: HEIGHT, margin: MARGIN }, title, {
    x: numberAxis(0, p.most, 5),
    y: numberAxis(p.low, p.high, 5),
    marks: [
      Plot.ruleY([0], { className: 'zero', ariaHidden: 'true' }),
      ...p.curves.map((c) =>
        Plot.line(
          p.points.map((point) => ({ mu: point.mu, torque: c.of(point.state) })),
          {
            x: 'mu',
            y: 'torque',
            className: `curve ${c.key}`,
            ariaHidden: 'true',
            ...(c.dash ? { strokeDasharray: c.dash } : {}),
          },
        ),
      ),
    ],
  });

const draw = (p: Picture, view: UnitView): string => {
  const { free } = p;
  const limits = free
    ? `<circle class="limit raise" cx="${px(x(p, 0))}" cy="${px(y(p, free.pair.against.torque))}" r="5"/><circle class="limit plain" cx="${px(x(p, 0))}" cy="${px(y(p, free.plain.against))}" r="5"/>`
    : '';
  const [even, evenKey] =
    p.even?.torque === undefined
      ? ['', '']
      : [
          `<circle class="even" cx="${px(x(p, p.even.mu))}" cy="${px(y(p, p.even.torque))}" r="7"/>`,
          legendKey('<circle class="even" cx="17" cy="8" r="6"/>', WORDS.even(numeral(p.even.mu, 2)), 16),
        ];
  return (
    `<ul class="legend">${legendKey('<circle class="limit raise" cx="17" cy="7" r="5"/>', WORDS.noFriction(free ? torqueText(free.pair.against.torque, view) : '', free ? torqueText(free.plain.against, view) : ''), 14)}` +
    `${evenKey}${legendItem('lower', LOWERING, WORDS.curves.lower)}</ul>` +
    `<div class="panel"><p class="panel-name">${WORDS.panel}</p><div class="plot-box">${plotOf(p, WORDS.title)}` +
    `<svg class="plot-marks friction-marks" role="group" aria-label="${WORDS.marks}" viewBox="0 0 ${WIDTH} ${HEIGHT}" data-plane>${names(p)}${limits}${even}` +
    `<path class="cursor-line" data-cursor d="${cursorPath(p)}"/>${p.curves.map((c) => `<circle class="mark ${c.key}" data-mark="${c.key}" r="5" cx="${px(x(p, p.state.mu))}" cy="${px(y(p, c.of(p.state)))}"/>`).join('')}` +
    `<g class="handle" data-handle data-key="mu" role="slider" tabindex="0" aria-label="${WORDS.handle}" aria-valuemin="0" aria-valuemax="1" aria-valuenow="${px(p.state.mu)}" aria-valuetext="${handleText(p.state, view)}" transform="translate(${px(x(p, p.state.mu))} ${HEIGHT - MARGIN.bottom})"><rect class="target" x="-28" y="-24" width="56" height="56"/><path class="grip" d="M0 -10l9 10v10h-18v-10z"/></g></svg></div>` +
    `<p class="x-name">${WORDS.across}</p></div>`
  );
};

const INSIDE: Inside = {
  left: MARGIN.left,
  right: WIDTH - MARGIN.right,
  top: MARGIN.top,
  floor: HEIGHT - MARGIN.bottom,
};

const cursorPath = (p: Picture): string =>
  p.curves.map((c) => dropPath([x(p, p.state.mu), y(p, c.of(p.state))], INSIDE)).join('');

/** Each curve by its name where it ends; one that jams before the edge ends there. */
const names = (p: Picture): string => {
  const last = p.points.at(-1);
  return last === undefined
    ? ''
    : endLabels(
        p.curves
          .filter(({ key }) => key !== 'lower')
          .map((c) => ({ className: c.key, words: c.name, y: y(p, c.of(last.state)) })),
        INSIDE,
      );
};

const handleText = (s: EffortState, view: UnitView): string =>
  WORDS.handleText(numeral(s.mu), torqueText(s.pair.against.torque, view));

export const frictionCurve = defineFigure({
  name: 'friction-curve',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['F', 'mu', 'd_b', 'mu_g', 'r_k'],
  choices: ['rubs'],
  setElsewhere: ['d_b', 'mu_g', 'r_k', 'rubs'],
  chief: ['mu', 'F'],
  groups: { threads: ['A', 'C'] },
  state: pictureOf,
  draw,
  rows: ({ state, even }) => [
    amount('raise', WORDS.head[1], state.pair.against.torque, 'N·mm', 4),
    amount('lower', WORDS.head[2], state.pair.along.torque, 'N·mm', 4),
    amount('alone', WORDS.head[3], state.plain.against, 'N·mm', 4),
    amount('efficiency', WORDS.head[4], state.pair.efficiency, 'percent', 3),
    ...(even === undefined ? [] : [amount('even', WORDS.evenAt, even.mu, 'plain', 2)]),
  ],
  caption: ({ state: s, even, lighterWithout }, view) =>
    WORDS.caption({
      frictionless: torqueText(s.pair.frictionless, view),
      C: s.C.designation,
      even: even === undefined ? undefined : numeral(even.mu, 2),
      lighterBelow: lighterWithout,
      friction: numeral(s.mu),
      pair: torqueText(s.pair.against.torque, view),
      alone: torqueText(s.plain.against, view),
    }),
  table: ({ listed }, view) => ({
    head: WORDS.head,
    rows: listed.map(({ mu, pair, plain }) => [
      numeral(mu),
      torqueText(pair.against.torque, view),
      torqueText(pair.along.torque, view),
      torqueText(plain.against, view),
      show(pair.efficiency, { shown: 'percent', digits: 3 }, view),
    ]),
  }),
  // Friction moves the marks only, unless the picture has to reach farther.
  renderKey: ({ most }, { threads, values: { mu: _, ...others }, choices }) => [threads, others, choices, most],
  mount: (stage, context) => {
    const plane = () => stage.querySelector<SVGSVGElement>('[data-plane]');
    const frictionAt = (event: PointerEvent): number | undefined => {
      const box = plane()?.getBoundingClientRect();
      if (!box || box.width === 0) return undefined;
      const at = ((event.clientX - box.left) / box.width) * WIDTH;
      const share = (at - MARGIN.left) / (WIDTH - MARGIN.left - MARGIN.right);
      const most = reach(friction());
      // To a hundredth of the picture, so that a dragged value can be read out.
      return Math.min(most, Math.max(0, Math.round(share * most * 200) / 200));
    };
    const friction = () => context.numbers().values.mu;
    mountPull(stage, ({ target }) => {
      if (!(target instanceof Element && target.closest('[data-plane]'))) return undefined;
      const was = friction();
      return {
        control: stage.querySelector<SVGElement>('[data-handle]'),
        move: (event) => {
          const mu = frictionAt(event);
          if (mu !== undefined) context.set('mu', mu);
        },
        undo: () => {
          if (friction() !== was) context.set('mu', was);
        },
      };
    });
    stage.addEventListener('keydown', (event) => {
      if (!(event.target instanceof Element) || !event.target.closest('[data-handle]')) return;
      const step = event.shiftKey ? STRIDE : NUDGE;
      const mu = friction();
      const next =
        event.key === 'ArrowRight' || event.key === 'ArrowUp'
          ? mu + step
          : event.key === 'ArrowLeft' || event.key === 'ArrowDown'
            ? mu - step
            : event.key === 'PageUp'
              ? mu + STRIDE
              : event.key === 'PageDown'
                ? mu - STRIDE
                : event.key === 'Home'
                  ? 0
                  : event.key === 'End'
                    ? 1
                    : undefined;
      if (next === undefined) return;
      event.preventDefault();
      context.set('mu', Math.min(1, Math.max(0, next)));
    });
  },
  update: (stage, p, view) => {
    stage.querySelector('[data-cursor]')?.setAttribute('d', cursorPath(p));
    for (const c of p.curves) {
      const mark = stage.querySelector(`[data-mark="${c.key}"]`);
      mark?.setAttribute('cx', px(x(p, p.state.mu)));
      mark?.setAttribute('cy', px(y(p, c.of(p.state))));
    }
    const handle = stage.querySelector('[data-handle]');
    handle?.setAttribute('transform', `translate(${px(x(p, p.state.mu))} ${HEIGHT - MARGIN.bottom})`);
    handle?.setAttribute('aria-valuenow', px(p.state.mu));
    handle?.setAttribute('aria-valuetext', handleText(p.state, view));
  },
});
