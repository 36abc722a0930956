/**
 * What lead errors of both threads make of the net lead: how far off the carried part is against turns, and the motion of
 * a turn. The two errors are set apart, or linked so that both threads have the same one. Bands show how far errors
 * of this size can lead when nothing is known of their signs.
 */

import { WORDS } from '#words/figures/lead-error.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import {
  gain,
  good,
  mm,
  netLeadError,
  netMotion,
  plain,
  positionError,
  type Result,
  rssLeadError,
  type Thread,
  trueNetLead,
  turns,
  worstLeadError,
} from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { dropPath } from '../kit/plot-box.ts';
import { axisUnit, type Frame, INSIDE, legendItem, panelHtml, roundUp, xAt, yAt } from '../kit/plots/frame.ts';
import { moveMarks } from '../kit/plots/move.ts';
import { amount, type Row, signedAmount } from '../kit/readout.ts';
import { mountSliders, type Slider, sliderHtml, updateSlider } from '../kit/slider.ts';
import { hatching, polygon, polyline, px } from '../kit/svg.ts';

const REACH = 4;
const DASH = { worst: '9 5', rss: '2 4', nominal: '14 3 3 3' };

const QUANTITIES = ['eps_A', 'eps_C', 'n'] as const;
type Quantity = (typeof QUANTITIES)[number];
type Given = NumbersOf<'A' | 'C', Quantity, 'errors', never>;

const SLIDERS: readonly Slider<Quantity>[] = [
  { name: 'eps_A', label: WORDS.sliders.eps_A, min: -0.005, max: 0.005, step: 0.0001 },
  { name: 'eps_C', label: WORDS.sliders.eps_C, min: -0.005, max: 0.005, step: 0.0001 },
  { name: 'n', label: WORDS.sliders.n, min: -REACH, max: REACH, step: 0.1 },
];

interface State {
  readonly A: Thread;
  readonly C: Thread;
  readonly linked: boolean;
  readonly epsA: number;
  readonly epsC: number;
  readonly n: number;
  readonly Delta: number;
  readonly gainA: number;
  readonly gainC: number;
  /** Relative error of the net lead: as it is, at worst, by root-sum-square. */
  readonly eps: number;
  readonly worst: number;
  readonly rss: number;
  /** True net lead. */
  readonly real: number;
  readonly frames: Frames;
}

const isLinked = (numbers: Given): boolean => numbers.choices.errors === 'the same error';

const stateOf = (numbers: Given, view: UnitView): Result<State> => {
  const threads = pairOf(numbers);
  if (!threads.ok) return threads;
  const { A, C, leads, Delta } = threads.value;
  const linked = isLinked(numbers);
  const eps_A = plain(numbers.values.eps_A);
  const eps_C = linked ? eps_A : plain(numbers.values.eps_C);
  const pair = { ...leads, eps_A, eps_C, Delta };
  const eps = netLeadError.of(pair);
  const worst = worstLeadError.of(pair);
  const rss = rssLeadError.of(pair);
  const gainA = gain.of({ L: A.L, Delta });
  const gainC = gain.of({ L: C.L, Delta });
  if (!eps.ok) return eps;
  if (!worst.ok) return worst;
  if (!rss.ok) return rss;
  if (!gainA.ok) return gainA;
  if (!gainC.ok) return gainC;
  const real = trueNetLead.of({ Delta, eps: eps.value.eps });
  if (!real.ok) return real;
  return good({
    A,
    C,
    linked,
    epsA: eps_A,
    epsC: eps_C,
    n: numbers.values.n,
    Delta,
    gainA: gainA.value.G,
    gainC: gainC.value.G,
    eps: eps.value.eps,
    worst: worst.value.eps_w,
    rss: rss.value.eps_r,
    real: real.value.Delta_e,
    frames: framesOf(Delta, worst.value.eps_w, view),
  });
};

const motionAt = (Delta: number, n: number): number => {
  const motion = netMotion.of({ n: turns(n), Delta: mm(Delta) });
  return motion.ok ? motion.value.z_c : 0;
};

/** How far off the carried part is after n turns with this error of the net lead. */
const offAt = ({ Delta }: Pick<State, 'Delta'>, n: number, eps: number): number => {
  const off = positionError.of({ z_c: mm(motionAt(Delta, n)), eps: plain(eps) });
  return off.ok ? off.value.e_z : 0;
};

/** Motion of a turn with this error of the net lead. */
const leadAt = (s: State, eps: number): number => {
  const real = trueNetLead.of({ Delta: mm(s.Delta), eps: plain(eps) });
  return real.ok ? real.value.Delta_e : s.Delta;
};

/** Errors too small to see get no scale of their own. */
const LEAST = 0.001;

interface Frames {
  readonly off: Frame;
  readonly rate: Frame;
}
type Panel = keyof Frames;

const framesOf = (Delta: number, worst: number, view: UnitView): Frames => {
  const seen = Math.max(worst, LEAST);
  const far = Math.abs(offAt({ Delta }, REACH, seen));
  const farUnit = axisUnit(far, view);
  const R = roundUp(far, farUnit);
  const wide = Math.abs(Delta) * seen;
  const rateUnit = axisUnit(Math.abs(Delta), view);
  const W = roundUp(wide, rateUnit);
  return {
    off: { x: [-REACH, REACH], y: [-R, R], unit: farUnit },
    rate: { x: [-REACH, REACH], y: [Delta - W, Delta + W], unit: rateUnit },
  };
};

const within = (n: number): number => Math.max(-REACH, Math.min(REACH, n));

type CurveName = 'worst' | 'rss' | 'nominal' | 'real' | 'cursor';
type Shapes = Readonly<Record<`${Panel}-${CurveName}`, string>>;

/** Every path and mark that the errors move, by the name it has in the drawing. */
const shapes = (s: State): Shapes => {
  const { off, rate } = s.frames;
  const points = dots(s);
  const at = (n: number, eps: number) => [xAt(off, n), yAt(off, offAt(s, n, eps))] as const;
  const bow = (eps: number) => polygon([at(-REACH, -eps), at(REACH, -eps), at(REACH, eps), at(-REACH, eps)]);
  const level = (v: number) => [[xAt(rate, -REACH), yAt(rate, v)] as const, [xAt(rate, REACH), yAt(rate, v)] as const];
  const band = (eps: number) => polygon([...level(leadAt(s, eps)), ...level(leadAt(s, -eps)).reverse()]);
  return {
    'off-worst': bow(s.worst),
    'off-rss': bow(s.rss),
    'off-nominal': polyline([at(-REACH, 0), at(REACH, 0)]),
    'off-real': polyline([at(-REACH, s.eps), at(REACH, s.eps)]),
    'rate-worst': band(s.worst),
    'rate-rss': band(s.rss),
    'rate-nominal': polyline(level(s.Delta)),
    'rate-real': polyline(level(s.real)),
    'off-cursor': dropPath(points.off, INSIDE),
    'rate-cursor': dropPath(points.rate, INSIDE),
  };
};

const dots = (s: State): Readonly<Record<Panel, readonly [number, number]>> => {
  const { off, rate } = s.frames;
  const n = within(s.n);
  return {
    off: [xAt(off, n), yAt(off, offAt(s, n, s.eps))],
    rate: [xAt(rate, n), yAt(rate, s.real)],
  };
};

const CURVES: readonly { key: CurveName; className: string; dash?: string; fill?: string }[] = [
  { key: 'worst', className: 'lead-band worst', dash: DASH.worst, fill: 'url(#lead-worst)' },
  { key: 'rss', className: 'lead-band rss', dash: DASH.rss, fill: 'url(#lead-rss)' },
  { key: 'nominal', className: 'curve base', dash: DASH.nominal },
  { key: 'real', className: 'curve carried' },
];

const HATCHES = `<defs>${hatching('lead-worst', -45, 9)}${hatching('lead-rss', 45, 9)}</defs>`;

const marks = (panel: Panel, s: State): string => {
  const d = shapes(s);
  const [x, y] = dots(s)[panel];
  const path = (key: CurveName, className: string, dash?: string, fill?: string) =>
    `<path class="${className}" data-shape="${panel}-${key}" d="${d[`${panel}-${key}`]}"${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}${fill === undefined ? '' : ` fill="${fill}"`}/>`;
  return `${panel === 'off' ? HATCHES : ''}${CURVES.map((c) => path(c.key, c.className, c.dash, c.fill)).join('')}${path('cursor', 'cursor-line')}<circle class="mark carried" data-dot="${panel}" r="5" cx="${px(x)}" cy="${px(y)}"/>`;
};

const percent = (x: number, digits = 3): string => withSign(show(x, { shown: 'percent', digits }, 'metric'));
const eitherWay = (x: number): string => `±${show(x, { shown: 'percent', digits: 3 }, 'metric')}`;
/** An error as it was typed, without noughts at its end. */
const given = (x: number): string => withSign(show(x, { shown: 'percent' }, 'metric'));
const motion = (z: number, view: UnitView, digits = 4): string => show(z, { shown: 'motion', digits }, view);
const signed = (z: number, view: UnitView): string => withSign(motion(z, view, 3));

const readout = (s: State): Row[] => [
  amount('nominal', WORDS.readout.nominal, s.Delta, 'motion', 4),
  amount('real', WORDS.readout.real, s.real, 'motion', 4),
  signedAmount('eps', WORDS.readout.eps, s.eps, 'percent', 3),
  signedAmount('off', WORDS.readout.off, offAt(s, s.n, s.eps), 'motion', 3),
  ['worst', WORDS.worst(s.linked), eitherWay(s.worst)],
  ['rss', WORDS.rss(s.linked), eitherWay(s.rss)],
];

const sliderText = (s: State, name: Quantity, view: UnitView): string =>
  name === 'n' ? show(s.n, { shown: 'turns' }, view) : given(name === 'eps_A' ? s.epsA : s.epsC);
const sliderValue = (s: State, name: Quantity): number => (name === 'n' ? s.n : name === 'eps_A' ? s.epsA : s.epsC);

const draw = (s: State, view: UnitView): string => {
  const { off, rate } = s.frames;
  return (
    `<div class="sliders">${SLIDERS.map((x) => sliderHtml(x, sliderValue(s, x.name), sliderText(s, x.name, view))).join('')}</div>` +
    `<ul class="legend">${legendItem('carried', undefined, WORDS.thisPair)}${legendItem('base', DASH.nominal, WORDS.nominal)}${legendItem('worst', DASH.worst, WORDS.worst(s.linked))}${legendItem('rss', DASH.rss, WORDS.rss(s.linked))}</ul>` +
    panelHtml(off, WORDS.offPanel, 9, marks('off', s)) +
    panelHtml(rate, WORDS.ratePanel, 9, marks('rate', s))
  );
};

const leadError = (error: number) => ({ error, size: show(Math.abs(error), { shown: 'percent' }, 'metric') });

const caption = (s: State, view: UnitView): string =>
  WORDS.caption({
    A: s.A.designation,
    C: s.C.designation,
    linked: s.linked,
    errorA: leadError(s.epsA),
    errorC: leadError(s.epsC),
    real: motion(s.real, view),
    meant: motion(s.Delta, view),
    share: percent(s.eps),
    turns: show(s.n, { shown: 'turns' }, view),
    off: signed(offAt(s, s.n, s.eps), view),
    worst: eitherWay(s.worst),
    rss: eitherWay(s.rss),
    gainA: numeral(s.gainA, 4),
    gainC: numeral(s.gainC, 4),
  });

export const leadErrorFigure = defineFigure({
  name: 'lead-error',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: ['errors'],
  chief: ['eps_A', 'eps_C', 'errors'],
  groups: { threads: ['A', 'C'], turns: ['n'] },
  state: stateOf,
  draw,
  caption,
  rows: readout,
  table: (s, view) => ({
    head: WORDS.head,
    rows: Array.from({ length: 2 * REACH + 1 }, (_, i) => {
      const n = i - REACH;
      const size = (eps: number) => motion(Math.abs(offAt(s, n, eps)), view, 3);
      return [
        numeral(n),
        motion(motionAt(s.Delta, n), view),
        motion(motionAt(s.real, n), view),
        signed(offAt(s, n, s.eps), view),
        size(s.worst),
        size(s.rss),
      ];
    }),
  }),
  renderKey: (s, { threads, choices }) => [threads, choices.errors, s.frames],
  mount: (stage, context) => {
    mountSliders(stage, {
      sliders: () => SLIDERS,
      read: (name) => context.numbers().values[name],
      write: context.set,
    });
  },
  update: (stage, s, view) => {
    moveMarks(stage, shapes(s), dots(s));
    for (const x of SLIDERS) updateSlider(stage, x, sliderValue(s, x.name), sliderText(s, x.name, view));
  },
});
