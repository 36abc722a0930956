/**
 * The drunken thread: position against turns and, beside it, motion per turn at each point of the turn, for periodic
 * errors of both threads at phases of the reader's. Where the rate falls below nought the carried part runs back; where
 * it is below a tenth of the net lead it nearly stands. Both stretches are hatched, each its own way, and named.
 */

import { WORDS } from '#words/figures/drunken-thread.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import {
  at,
  backwardRun,
  type DrunkenPair,
  good,
  jointAmplitude,
  jointSlope,
  leastRate,
  localRate,
  mm,
  mostPeriodic,
  NEARLY_STANDS,
  netMotion,
  periodicError,
  type Result,
  type Stretch,
  slowStretches,
  type Thread,
  turns,
} from '../../engine/index.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { dropPath } from '../kit/plot-box.ts';
import {
  axisUnit,
  type Frame,
  HEIGHT,
  INSIDE,
  legendItem,
  legendKey,
  MARGIN,
  panelHtml,
  roundUp,
  WIDTH,
  xAt,
  yAt,
} from '../kit/plots/frame.ts';
import { moveMarks } from '../kit/plots/move.ts';
import { amount, type Row } from '../kit/readout.ts';
import { mountSliders, type Slider, sliderHtml, updateSlider } from '../kit/slider.ts';
import { hatching, type Point, polyline, px } from '../kit/svg.ts';

/** Turns shown; a whole turn says everything, two show that it comes again. */
const REACH = 2;
const SAMPLES = 160;
const DASH = '14 3 3 3';
/** No slider goes further, mm: the field does, where it is let. */
const LARGEST = 0.05;

const QUANTITIES = ['a_A', 'phi_A', 'a_C', 'phi_C', 'n'] as const;
type Quantity = (typeof QUANTITIES)[number];
type Given = NumbersOf<'A' | 'C', Quantity, never, never>;

interface State {
  readonly A: Thread;
  readonly C: Thread;
  readonly pair: DrunkenPair;
  readonly n: number;
  /** Both periodic errors together at their phases: amplitude and steepest slope. */
  readonly joint: number;
  readonly slope: number;
  readonly slowest: number;
  /** Amplitude at which the motion first stands still. */
  readonly most: number;
  readonly back: readonly Stretch[];
  readonly slow: readonly Stretch[];
  /** Run back in every turn, and for what share of it; nought where it never runs back. */
  readonly runBack: number;
  readonly share: number;
  /** Position and rate along the turns shown. */
  readonly samples: Samples;
  readonly frames: Frames;
}

const stateOf = (numbers: Given, view: UnitView): Result<State> => {
  const threads = pairOf(numbers);
  if (!threads.ok) return threads;
  const { A, C, Delta } = threads.value;
  const { a_A, a_C, phi_A, phi_C, n } = numbers.values;
  const pair = { Delta, a_A: mm(a_A), a_C: mm(a_C), phi_A: turns(phi_A), phi_C: turns(phi_C) };
  const back = slowStretches(pair, 0, REACH);
  const slow = slowStretches(pair, 0, REACH, NEARLY_STANDS);
  const joint = jointAmplitude.of(pair);
  if (!back.ok) return back;
  if (!slow.ok) return slow;
  if (!joint.ok) return joint;
  const slope = jointSlope.of(joint.value);
  const most = mostPeriodic.of({ Delta });
  if (!slope.ok) return slope;
  if (!most.ok) return most;
  const slowest = leastRate.of({ Delta, v_p: slope.value.v_p });
  if (!slowest.ok) return slowest;
  // Without any periodic error the relation has nothing to say, and nothing runs back.
  const run = backwardRun.of({ Delta, v_p: slope.value.v_p });
  const samples = { places: GRID.map((n) => placeAt({ pair }, n)), rates: GRID.map((n) => rateAt({ pair }, n)) };
  return good({
    A,
    C,
    pair,
    n,
    joint: joint.value.a_p,
    slope: slope.value.v_p,
    slowest: slowest.value.v_min,
    most: most.value.a_m,
    back: back.value,
    slow: slow.value,
    runBack: run.ok ? run.value.z_b : 0,
    share: run.ok ? run.value.q_b : 0,
    samples,
    frames: framesOf(samples, view),
  });
};

type Waves = Pick<State, 'pair'>;

const errorAt = (s: Waves, n: number): number => {
  const error = periodicError.of({ n: turns(n), ...s.pair });
  return error.ok ? error.value.e_p : 0;
};
const nominalAt = (s: Waves, n: number): number => {
  const motion = netMotion.of({ n: turns(n), Delta: s.pair.Delta });
  return motion.ok ? motion.value.z_c : 0;
};
const placeAt = (s: Waves, n: number): number => nominalAt(s, n) + errorAt(s, n);
const rateAt = (s: Waves, n: number): number => {
  const rate = localRate.of({ n: turns(n), ...s.pair });
  return rate.ok ? rate.value.v_n : 0;
};

const GRID = Array.from({ length: SAMPLES + 1 }, (_, i) => (REACH * i) / SAMPLES);

/** A scale that holds these values and nought, in round amounts, so that it keeps still while they change a little. */
const scaleFor = (values: readonly number[], unit: Frame['unit']): readonly [number, number] => {
  const [low, high] = [Math.min(0, ...values), Math.max(0, ...values)];
  const R = roundUp(Math.max(-low, high), unit);
  const shallow = 0.3 * R;
  return [low < -shallow ? -R : low < 0 || high < shallow ? -shallow : 0, high > shallow ? R : high > 0 ? shallow : 0];
};

interface Samples {
  readonly places: readonly number[];
  readonly rates: readonly number[];
}

interface Frames {
  readonly place: Frame;
  readonly rate: Frame;
}

const framesOf = ({ places, rates }: Samples, view: UnitView): Frames => {
  const placeUnit = axisUnit(Math.max(...places.map(Math.abs)), view);
  const rateUnit = axisUnit(Math.max(...rates.map(Math.abs)), view);
  return {
    place: { x: [0, REACH], y: scaleFor(places, placeUnit), unit: placeUnit },
    rate: { x: [0, REACH], y: scaleFor(rates, rateUnit), unit: rateUnit },
  };
};

const within = (n: number): number => Math.max(0, Math.min(REACH, n));

const zone = (frame: Frame, stretches: readonly Stretch[]): string =>
  stretches
    .map(
      ({ from, to }) =>
        `M${px(xAt(frame, from))} ${MARGIN.top}H${px(xAt(frame, to))}V${HEIGHT - MARGIN.bottom}H${px(xAt(frame, from))}Z`,
    )
    .join('');

type Panel = keyof Frames;
type CurveName = 'slow' | 'back' | 'nominal' | 'real' | 'cursor';
type Shapes = Readonly<Record<`${Panel}-${CurveName}`, string>>;

/** Every path of the drawing that the reader's numbers move, by the name it has there. */
const shapes = (s: State): Shapes => {
  const { frames: both, samples } = s;
  const { places, rates } = samples;
  const points = dots(s);
  const curve = (frame: Frame, values: readonly number[]): string =>
    polyline(GRID.map((n, i): Point => [xAt(frame, n), yAt(frame, at(values, i))]));
  const ends = (frame: Frame, height: (n: number) => number): string =>
    polyline([0, REACH].map((n): Point => [xAt(frame, n), yAt(frame, height(n))]));
  return {
    'place-slow': zone(both.place, s.slow),
    'place-back': zone(both.place, s.back),
    'place-nominal': ends(both.place, (n) => nominalAt(s, n)),
    'place-real': curve(both.place, places),
    'place-cursor': dropPath(points.place, INSIDE),
    'rate-slow': zone(both.rate, s.slow),
    'rate-back': zone(both.rate, s.back),
    'rate-nominal': ends(both.rate, () => s.pair.Delta),
    'rate-real': curve(both.rate, rates),
    'rate-cursor': dropPath(points.rate, INSIDE),
  };
};

const dots = (s: State): Readonly<Record<Panel, Point>> => {
  const { place, rate } = s.frames;
  const n = within(s.n);
  return {
    place: [xAt(place, n), yAt(place, placeAt(s, n))],
    rate: [xAt(rate, n), yAt(rate, rateAt(s, n))],
  };
};

/** As many stretches as can lie in the turns shown, cut ones at both ends included. */
const MOST_WORDS = REACH + 1;
const HALF_WORD = 40;

/** The word over each stretch: where, and what. Empty places stand ready for stretches to come. */
const words = (s: State): { x: number; text: string }[] => {
  const named = s.back.length > 0 ? s.back : s.slow;
  const text = WORDS.does[s.back.length > 0 ? 'runs back' : 'nearly stands'];
  const frame: Frame = { x: [0, REACH], y: [0, 1], unit: 'mm' };
  return Array.from({ length: MOST_WORDS }, (_, i) => {
    const stretch = named[i];
    if (!stretch) return { x: MARGIN.left, text: '' };
    const middle = xAt(frame, (stretch.from + stretch.to) / 2);
    return { x: Math.max(MARGIN.left + HALF_WORD, Math.min(WIDTH - MARGIN.right - HALF_WORD, middle)), text };
  });
};

const CURVES: readonly { key: CurveName; className: string; dash?: string; fill?: string }[] = [
  { key: 'slow', className: 'rate-zone slow', fill: 'url(#drunken-slow)' },
  { key: 'back', className: 'rate-zone back', fill: 'url(#drunken-back)' },
  { key: 'nominal', className: 'curve base', dash: DASH },
  { key: 'real', className: 'curve carried' },
  { key: 'cursor', className: 'cursor-line' },
];

const HATCHES = `<defs>${hatching('drunken-slow', -45, 8)}${hatching('drunken-back', 45, 4)}</defs>`;

const marks = (panel: Panel, s: State, d: Shapes): string => {
  const [x, y] = dots(s)[panel];
  const paths = CURVES.map(
    ({ key, className, dash, fill }) =>
      `<path class="${className}" data-shape="${panel}-${key}" d="${d[`${panel}-${key}`]}"${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}${fill === undefined ? '' : ` fill="${fill}"`}/>`,
  ).join('');
  const named = words(s)
    .map(
      (w, i) =>
        `<text class="zone-word" data-word="${panel}-${i}" x="${px(w.x)}" y="${MARGIN.top - 8}" text-anchor="middle">${w.text}</text>`,
    )
    .join('');
  return `${panel === 'place' ? HATCHES : ''}${paths}${named}<circle class="mark carried" data-dot="${panel}" r="5" cx="${px(x)}" cy="${px(y)}"/>`;
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 4 }, view);
/** An amplitude as it was typed, without noughts at its end. */
const given = (z: number, view: UnitView): string => show(z, { shown: 'motion' }, view);
const percent = (x: number): string => show(x, { shown: 'percent', digits: 3 }, 'metric');
const turnsText = (n: number): string => show(n, { shown: 'turns', digits: 3 }, 'metric');

const slidersOf = (s: State): readonly Slider<Quantity>[] => {
  const max = Math.min(LARGEST, roundUp(2 * s.most, 'µm'));
  const amplitude = (name: 'a_A' | 'a_C'): Slider<Quantity> => ({
    name,
    label: WORDS.sliders[name],
    min: 0,
    max,
    step: max / 100,
  });
  return [
    amplitude('a_A'),
    amplitude('a_C'),
    // How the waves lie to each other is what counts; the other phase has its field.
    { name: 'phi_C', label: WORDS.sliders.phi_C, min: -0.5, max: 0.5, step: 0.05 },
    { name: 'n', label: WORDS.sliders.n, min: 0, max: REACH, step: 0.02 },
  ];
};
const sliderValue = (s: State, name: Quantity): number => (name === 'n' ? s.n : s.pair[name]);
const sliderText = (s: State, name: Quantity, view: UnitView): string =>
  name.startsWith('a_') ? given(sliderValue(s, name), view) : show(sliderValue(s, name), { shown: 'turns' }, view);

/** What the carried part does at this rate, seen along the net motion. */
const does = (s: State, rate: number): keyof typeof WORDS.does => {
  const along = rate * Math.sign(s.pair.Delta);
  return along < 0 ? 'runs back' : along < NEARLY_STANDS * Math.abs(s.pair.Delta) ? 'nearly stands' : 'moves on';
};

const readout = (s: State, view: UnitView): Row[] => [
  amount('nominal', WORDS.readout.nominal, s.pair.Delta, 'motion', 4),
  amount('slope', WORDS.readout.slope, s.slope, 'motion', 4),
  amount('slowest', WORDS.readout.slowest, s.slowest, 'motion', 4),
  ['here', WORDS.readout.here, WORDS.readout.hereText(motion(rateAt(s, s.n), view), does(s, rateAt(s, s.n)))],
  amount('run', WORDS.readout.run, s.runBack, 'motion', 4),
];

const draw = (s: State, view: UnitView): string => {
  const d = shapes(s);
  const key = (kind: string, words: string): string =>
    legendKey(
      `<rect class="rate-zone ${kind}" fill="url(#drunken-${kind})" x="1" y="1" width="32" height="12"/>`,
      words,
      14,
    );
  return (
    `<div class="sliders">${slidersOf(s)
      .map((x) => sliderHtml(x, sliderValue(s, x.name), sliderText(s, x.name, view)))
      .join('')}</div>` +
    `<ul class="legend">${legendItem('carried', undefined, WORDS.legend.carried)}${legendItem('base', DASH, WORDS.legend.nominal)}${key('back', WORDS.legend.back)}${key('slow', WORDS.legend.slow(show(NEARLY_STANDS, { shown: 'percent' }, 'metric')))}</ul>` +
    panelHtml(s.frames.place, WORDS.panels.place, 5, marks('place', s, d)) +
    panelHtml(s.frames.rate, WORDS.panels.rate, 5, marks('rate', s, d))
  );
};

const stretchText = ({ from, to }: Stretch) => ({ from: numeral(from, 3), to: turnsText(to) });

const verdict = (s: State, view: UnitView): string => {
  const [back] = s.back;
  const [slow] = s.slow;
  if (back)
    return WORDS.verdict.back({
      motion: motion(s.runBack, view),
      share: percent(s.share),
      first: stretchText(back),
    });
  const slowest = motion(s.slowest, view);
  return slow ? WORDS.verdict.slow({ first: stretchText(slow), slowest }) : WORDS.verdict.never(slowest);
};

export const drunkenThread = defineFigure({
  name: 'drunken-thread',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  chief: ['a_A', 'a_C'],
  groups: { threads: ['A', 'C'], phases: ['phi_A', 'phi_C'], turns: ['n'] },
  state: stateOf,
  draw,
  rows: readout,
  caption: (s, view) =>
    WORDS.caption({
      A: s.A.designation,
      C: s.C.designation,
      perTurn: motion(s.pair.Delta, view),
      errorA: given(s.pair.a_A, view),
      errorC: given(s.pair.a_C, view),
      together: motion(s.joint, view),
      slope: motion(s.slope, view),
      verdict: verdict(s, view),
      here: {
        turns: show(s.n, { shown: 'turns' }, view),
        place: motion(placeAt(s, s.n), view),
        rate: motion(rateAt(s, s.n), view),
        does: does(s, rateAt(s, s.n)),
      },
    }),
  table: (s, view) => ({
    head: WORDS.head,
    rows: Array.from({ length: 10 * REACH + 1 }, (_, i) => {
      const n = i / 10;
      const rate = rateAt(s, n);
      return [
        numeral(n),
        motion(nominalAt(s, n), view),
        motion(errorAt(s, n), view),
        motion(placeAt(s, n), view),
        motion(rate, view),
        WORDS.does[does(s, rate)],
      ];
    }),
  }),
  renderKey: (s, { threads }) => [threads, s.frames],
  mount: (stage, context) =>
    mountSliders(stage, {
      sliders: () => {
        const state = stateOf(context.numbers(), context.view());
        return state.ok ? slidersOf(state.value) : [];
      },
      read: (name) => context.numbers().values[name],
      write: context.set,
    }),
  update: (stage, s, view) => {
    moveMarks(stage, shapes(s), dots(s));
    for (const [i, w] of words(s).entries())
      for (const panel of ['place', 'rate']) {
        const place = stage.querySelector(`[data-word="${panel}-${i}"]`);
        place?.setAttribute('x', px(w.x));
        if (place && place.textContent !== w.text) place.textContent = w.text;
      }
    for (const x of slidersOf(s)) updateSlider(stage, x, sliderValue(s, x.name), sliderText(s, x.name, view));
  },
});
