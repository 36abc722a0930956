/**
 * The loop of reversal: what an indicator on the carried part reads against turns, out and back, once with nothing but friction
 * on the carried part and once under a load that keeps its sign. Both loops stand there whole; the reader's own turning is
 * drawn over them as it is done.
 */

import * as Plot from '@observablehq/plot';
import { WORDS } from '#words/figures/reversal-loop.ts';
import { type PairPlay, pairPlay } from '../../assembly/pair-play.ts';
import { at, bad, good, plain, type Result, stepsLost, turns } from '../../engine/index.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { knobSvg, mountKnob, updateKnob } from '../kit/knob.ts';
import { chartSvg, numberAxis } from '../kit/plots/chart.ts';
import { axisUnit, legendItem, legendKey, perMillimetre } from '../kit/plots/frame.ts';
import { amount, type Row } from '../kit/readout.ts';
import { arrowheads, type Point, polyline, px } from '../kit/svg.ts';
import { joined, type Trace, traceThrough } from './runs.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'loop-loses-too-much': { readonly turns: string };
  }
}

const WIDTH = 430;
const HEIGHT = 310;
const MARGIN = { top: 34, right: 12, bottom: 26, left: 58 };
const FLATS = 6;
/** Reversals a trail may have before it starts afresh, so that a frame stays short. */
const MOST_REVERSALS = 60;
const TRAIL_PIECES = 64;
/** Time a button takes from one end to the other, ms. */
const ACROSS = 2000;

type Case = 'loose' | 'loaded';
const CASES: readonly Case[] = ['loose', 'loaded'];

interface State {
  readonly play: PairPlay;
  readonly out: number;
  readonly n: number;
  readonly load: number;
  readonly friction: number;
  readonly loops: Readonly<Record<Case, Trace>>;
  /** At the start of the loops. */
  readonly start: Readonly<Record<Case, Trace>>;
  /** The play in flats of the head. */
  readonly flatsLost: number;
  /** What the loops, and a trail that is laid under them, depend on. */
  readonly key: string;
}

const forcesOf = (s: { readonly load: number; readonly friction: number }, which: Case) => ({
  load: which === 'loaded' ? s.load : 0,
  friction: s.friction,
});

/** Both cases through these stations, which a trail has more of than a loop. */
const tracesThrough = (
  s: Pick<State, 'play' | 'load' | 'friction'>,
  stations: readonly number[],
  pieces?: number,
): Result<Record<Case, Trace>> => {
  const loose = traceThrough(s.play, forcesOf(s, 'loose'), stations, pieces);
  if (!loose.ok) return loose;
  const loaded = traceThrough(s.play, forcesOf(s, 'loaded'), stations, pieces);
  return loaded.ok ? good({ loose: loose.value, loaded: loaded.value }) : loaded;
};
const MOST_LOST = 590;

/** Axis over the readings of both loops, with a little room. */
const axisOf = (s: State, view: UnitView) => {
  const all = CASES.flatMap((c) => s.loops[c].reading);
  const [low, high] = [Math.min(0, ...all), Math.max(0, ...all)];
  const room = Math.max((high - low) * 0.2, 1e-6);
  const unit = axisUnit(Math.max(high, -low), view);
  return { low: low - room, high: high + room, unit, factor: perMillimetre(unit) };
};
type Axis = ReturnType<typeof axisOf>;

const x = (n: number, out: number): number => MARGIN.left + (n / out) * (WIDTH - MARGIN.left - MARGIN.right);
const y = (z: number, a: Axis): number =>
  MARGIN.top + (1 - (z - a.low) / (a.high - a.low)) * (HEIGHT - MARGIN.top - MARGIN.bottom);

const line = (trace: Trace, s: State, a: Axis): string =>
  polyline(trace.n.map((n, i): Point => [x(n, s.out), y(at(trace.reading, i), a)]));

const axes = (s: State, a: Axis): string =>
  chartSvg({ width: WIDTH, height: HEIGHT, margin: MARGIN }, WORDS.plot, {
    x: numberAxis(0, s.out, 8),
    y: numberAxis(a.low * a.factor, a.high * a.factor, 6),
    marks: [Plot.ruleY([0], { className: 'zero' })],
  });

/** The turns lost as a dimension from the reversal, as far as the paper goes, with their number. */
const lostMark = (s: State, a: Axis): string => {
  const from = x(s.out, s.out);
  const to = x(Math.max(0, s.out - s.play.lost), s.out);
  const top = Math.sign(s.play.Delta);
  const at = y(Math.max(...s.loops.loose.reading.map((z) => z * top)) * top, a) - 11 * top;
  const ends = s.play.lost <= s.out ? `M${px(to)} ${px(at - 5)}v10` : '';
  // Between its ends there is room for heads and number, or else both stand left of it.
  const wide = from - to > 24;
  const words = WORDS.lostOnReversal(numeral(s.play.lost, 3));
  return (
    `<path class="arrow" d="M${px(from)} ${px(at - 5)}v10${ends}"/><path class="arrow lost" d="M${px(from)} ${px(at)}H${px(to)}"${wide ? ` marker-start="url(#loop-head)"${s.play.lost <= s.out ? ' marker-end="url(#loop-head)"' : ''}` : ''}/>` +
    `<text class="value clear" x="${px(Math.max(MARGIN.left + 8, (from + to) / 2))}" y="${px(at + (top > 0 ? -6 : 20))}" text-anchor="${(from + to) / 2 > (2 * MARGIN.left + WIDTH) / 3 ? 'end' : 'start'}">${words}</text>`
  );
};

/** Which way round the loop of friction alone goes: an arrow on its way out and one on its way back. */
const waysRound = (s: State, a: Axis): string => {
  const { n, reading } = s.loops.loose;
  const third = (n.length - 1) / 3;
  return [0.72, 1.72]
    .map((share) => {
      const [from, to] = [share * third - 1, share * third + 1].map((i) => {
        const k = Math.min(n.length - 1, Math.max(0, Math.round(i)));
        return [x(n[k] ?? 0, s.out), y(reading[k] ?? 0, a)] as const;
      }) as [Point, Point];
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
      const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
      const end: Point = [from[0] + 22 * ux, from[1] + 22 * uy];
      // Beside the line, on the inside of the loop, which lies clockwise of the way it is gone where the net lead is plus.
      const [ox, oy] = [-uy * -9 * Math.sign(s.play.Delta), ux * -9 * Math.sign(s.play.Delta)];
      return `<path class="arrow strong way-round" d="M${px(from[0] + ox)} ${px(from[1] + oy)}L${px(end[0] + ox)} ${px(end[1] + oy)}" marker-end="url(#loop-head)"/>`;
    })
    .join('');
};

/** Turns done on a stage so far, by the stage; it goes with the page. */
const trails = new WeakMap<HTMLElement, { key: string; stations: readonly number[] }>();

/** Where a state stands after the turning that led to it. */
const turned = new WeakMap<State, Readonly<Record<Case, Trace>>>();

const readout = (s: State, now: Readonly<Record<Case, Trace>>, view: UnitView): Row[] => {
  const motion = (z: number) => withSign(show(z, { shown: 'motion', digits: 4 }, view));
  const rows = CASES.flatMap((c): Row[] => [
    [`${c}-reading`, WORDS.reading(c), motion(now[c].end)],
    [`${c}-flanks`, WORDS.touching, WORDS.flanks(now[c].flankA, now[c].flankC)],
  ]);
  return [['turns', WORDS.turns, numeral(s.n, 4)], ...rows];
};

const legend = (): string =>
  `<ul class="legend">${legendItem('loose', undefined, WORDS.cases.loose)}${legendItem('loaded', undefined, WORDS.cases.loaded)}${legendKey('<path class="trail" d="M1 5H33"/>', WORDS.yourTurning)}</ul>`;

export const reversalLoop = defineFigure({
  name: 'reversal-loop',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['n_o', 'n', 'Q_pc', 'Q_f', 'c_mA', 'c_mC'],
  setElsewhere: ['c_mA', 'c_mC'],
  choices: ['pieces'],
  chief: ['n', 'n_o', 'Q_pc'],
  groups: { threads: ['A', 'C'], pieces: ['pieces'], friction: ['Q_f'] },
  state: (numbers): Result<State> => {
    const play = pairPlay(numbers);
    if (!play.ok) return play;
    const { n, ...rest } = numbers.values;
    const { n_o: out, Q_pc: load, Q_f: friction } = rest;
    const { lost } = play.value;
    if (!(lost <= MOST_LOST)) return bad('loop-loses-too-much', { turns: numeral(lost, 3) });
    const given = { play: play.value, load, friction };
    const loops = tracesThrough(given, [0, out, 0, out]);
    if (!loops.ok) return loops;
    const start = tracesThrough(given, [0], 1);
    if (!start.ok) return start;
    const flats = stepsLost.of({ n_j: turns(lost), k: plain(FLATS) });
    if (!flats.ok) return flats;
    return good({
      ...given,
      out,
      n: Math.max(0, Math.min(out, n)),
      loops: loops.value,
      start: start.value,
      flatsLost: flats.value.m_j,
      key: JSON.stringify([numbers.threads, rest, numbers.choices]),
    });
  },
  draw: (s, view) => {
    const a = axisOf(s, view);
    return (
      `${legend()}<div class="panel"><p class="panel-name">${WORDS.panel(a.unit)}</p><div class="plot-box">${axes(s, a)}` +
      `<svg class="plot-marks" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.loops}">` +
      `<path class="trail" data-trail="loose"/><path class="trail" data-trail="loaded"/>` +
      `<path class="curve loose" data-loop="loose" d="${line(s.loops.loose, s, a)}"/><path class="curve loaded" data-loop="loaded" d="${line(s.loops.loaded, s, a)}"/>` +
      `${arrowheads('loop-head', 'strong')}${waysRound(s, a)}${lostMark(s, a)}` +
      `<circle class="mark loose" data-dot="loose" r="5" cx="${px(x(0, s.out))}" cy="${px(y(0, a))}"/><rect class="mark loaded" data-dot="loaded" width="9" height="9" x="${px(x(0, s.out) - 4.5)}" y="${px(y(0, a) - 4.5)}"/></svg></div>` +
      `<p class="x-name">${WORDS.turnsClockwise}</p></div>` +
      `<div class="loop-side">${knobSvg(s.n, 'hexagon', FLATS, WORDS.knob)}<p class="turners"><button type="button" data-go="back" data-key="back">${WORDS.back}</button><button type="button" data-go="out" data-key="out">${WORDS.out}</button><button type="button" class="plain" data-go="clear" data-key="clear">${WORDS.clear}</button></p></div>`
    );
  },
  rows: (s, view) => [
    ...readout(s, turned.get(s) ?? s.start, view),
    amount('lost', WORDS.lost, s.play.lost, 'turns', 3),
    amount('flats', WORDS.inFlats, s.flatsLost, 'plain', 3),
  ],
  caption: (s, view) => {
    const width = (c: Case) => {
      // Between the way out and the way back, half way along.
      const { n, reading } = s.loops[c];
      const half = Math.round((n.length - 1) / 6);
      return Math.abs(at(reading, half) - at(reading, (n.length - 1) / 1.5 - half));
    };
    const motion = (z: number) => show(z, { shown: 'motion', digits: 3 }, view);
    return WORDS.caption({
      wide: motion(s.play.A.j + s.play.C.j),
      lost: numeral(s.play.lost, 3),
      flats: numeral(s.flatsLost, 3),
      out: numeral(s.out),
      follows: s.play.lost < s.out,
      load: withSign(show(s.load, { shown: 'force' }, view)),
      loadedWide: width('loaded') < 1e-9 ? undefined : motion(width('loaded')),
    });
  },
  table: (s, view) => {
    const motion = (z: number) => show(z, { shown: 'motion', digits: 4 }, view);
    const size = s.loops.loose.n.length;
    const rows = Array.from({ length: 25 }, (_, i) => Math.round(((size - 1) * i) / 24));
    return {
      head: WORDS.head,
      rows: rows.map((i) => [
        i * 3 < size ? WORDS.ways.out : i * 3 <= 2 * size ? WORDS.ways.back : WORDS.ways.again,
        numeral(at(s.loops.loose.n, i), 4),
        motion(at(s.loops.loose.reading, i)),
        motion(at(s.loops.loaded.reading, i)),
      ]),
    };
  },
  renderKey: (s) => s.key,
  mount: (stage, context) => {
    const out = () => context.numbers().values.n_o;
    const read = () => Math.max(0, Math.min(out(), context.numbers().values.n));
    const write = (n: number) => context.set('n', Math.round(Math.max(0, Math.min(out(), n)) * 1e4) / 1e4);
    let running = 0;
    mountKnob(stage, {
      read,
      // A hand on the knob stops it; one that passes over the picture does not.
      write: (n) => {
        cancelAnimationFrame(running);
        write(n);
      },
      steps: () => FLATS,
    });
    /** Turns towards the end, a frame at a time; at once where motion is not wanted. */
    const run = (target: number) => {
      cancelAnimationFrame(running);
      if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
        write(target);
        return;
      }
      let last = performance.now();
      const step = (time: number) => {
        // A frame that came late may not jump far: the eye is to follow.
        const reach = (out() * Math.min(50, Math.max(0, time - last))) / ACROSS;
        last = time;
        const left = target - read();
        if (Math.abs(left) <= reach) {
          write(target);
          return;
        }
        write(read() + Math.sign(left) * reach);
        running = requestAnimationFrame(step);
      };
      running = requestAnimationFrame(step);
    };
    stage.addEventListener('click', (event) => {
      const button = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-go]') : null;
      if (button?.dataset.go === 'out') run(out());
      if (button?.dataset.go === 'back') run(0);
      if (button?.dataset.go === 'clear') {
        trails.delete(stage);
        cancelAnimationFrame(running);
        write(0);
        context.redraw();
      }
    });
  },
  update: (stage, s, view) => {
    const a = axisOf(s, view);
    const { key } = s;
    let trail = trails.get(stage);
    if (trail?.key !== key || trail.stations.length > MOST_REVERSALS) trail = { key, stations: [0] };
    trail = { key, stations: joined(trail.stations, s.n) };
    trails.set(stage, trail);
    const now = tracesThrough(s, trail.stations, TRAIL_PIECES);
    if (!now.ok) return;
    for (const c of CASES) {
      const trace = now.value[c];
      stage.querySelector(`[data-trail="${c}"]`)?.setAttribute('d', trace.n.length > 1 ? line(trace, s, a) : '');
      const [cx, cy] = [x(s.n, s.out), y(trace.end, a)];
      const dot = stage.querySelector(`[data-dot="${c}"]`);
      if (c === 'loose') {
        dot?.setAttribute('cx', px(cx));
        dot?.setAttribute('cy', px(cy));
      } else {
        dot?.setAttribute('x', px(cx - 4.5));
        dot?.setAttribute('y', px(cy - 4.5));
      }
    }
    updateKnob(stage, s.n);
    turned.set(s, now.value);
  },
});
