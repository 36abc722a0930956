/**
 * A simulated build: screws and nuts drawn from their tolerance zones and put together at random, and what play the
 * assemblies have. A small sample is drawn with the picture; the whole batch when the reader starts it.
 */

import * as Plot from '@observablehq/plot';
import { WORDS } from '#words/figures/play-batch.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import {
  at,
  type BatchLaw,
  bad,
  fitOfThread,
  good,
  type Millimetres,
  mm,
  type PitchZones,
  type PlayBatch,
  type PlayBatchSettings,
  type PlayFigures,
  plain,
  playBatch,
  playBatchRun,
  type Result,
  stepsLost,
  type Thread,
  type ThreadFit,
  turnsLost,
} from '../../engine/index.ts';
import type { OptionOf } from '../../input/choices.ts';
import { grouped, numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { chartSvg, numberAxis } from '../kit/plots/chart.ts';
import { axisUnit, perMillimetre } from '../kit/plots/frame.ts';
import { hatching } from '../kit/svg.ts';
import { roundTicks } from '../kit/ticks.ts';
import { lendWorkerScript, startBatch } from './run-batch.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'batch-of-equal-leads': Readonly<Record<never, never>>;
    'nothing-goes-together': Readonly<Record<never, never>>;
  }
}

/** Over the tallest bar, for the names of the places, two lines of letters on a phone. */
const HEADROOM = 1.55;
/** How high the name of the median stands, as a share of the frame: over the bars beside it, under the name of the last of the nine in ten. */
const NAMED = 0.72;
/** Nine in ten lie between the first and the last; the middle one is the median. */
const SHARES = [0.05, 0.5, 0.95];

/** Drawn with the picture, in a few milliseconds. */
export const SAMPLE = 20_000;

export interface Asked {
  readonly settings: PlayBatchSettings;
  readonly Delta: Millimetres;
  readonly k: number;
  readonly classes: string;
}

const zonesOf = ({ screw, nut }: ThreadFit): PitchZones => ({
  d2min: screw.pitch.min,
  d2max: screw.pitch.max,
  D2min: nut.pitch.min,
  D2max: nut.pitch.max,
});

/** The numbers a batch is asked for by. */
export interface BatchNumbers {
  readonly threads: Readonly<Record<'A' | 'C', Thread>>;
  readonly values: Readonly<Record<'n_a' | 'C_p' | 'n_s' | 'k', number>>;
  readonly choices: { readonly law: OptionOf<'law'> };
}

/** What the reader's numbers ask for, or why it can't be done. */
export const askedBy = (numbers: BatchNumbers): Result<Asked> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { A, C, Delta } = pair.value;
  const fitA = fitOfThread(A);
  if (!fitA.ok) return fitA;
  const fitC = fitOfThread(C);
  if (!fitC.ok) return fitC;
  if (Delta === 0) return bad('batch-of-equal-leads', {});
  const { n_a, n_s, C_p, k } = numbers.values;
  const settings = {
    threads: [zonesOf(fitA.value), zonesOf(fitC.value)],
    count: n_a,
    seed: n_s,
    law: lawOf(numbers.choices.law, C_p),
    shares: SHARES,
    bars: 60,
  };
  // The run is only made ready here, so that its refusal is known before anything is drawn.
  const ready = playBatchRun(settings);
  if (!ready.ok) return ready;
  const named = (thread: Thread, { classes, assumed }: ThreadFit) =>
    assumed ? WORDS.asClass(thread.designation, classes) : thread.designation;
  const classes = WORDS.pair(named(A, fitA.value), named(C, fitC.value));
  return good({ settings, Delta, k, classes });
};

const lawOf = (law: OptionOf<'law'>, Cp: number): BatchLaw =>
  law === 'uniform' ? { kind: 'uniform' } : { kind: 'normal', Cp, clipped: law === 'normal, gauged' };

/** Batches drawn whole on this page, by their settings; the last few. */
const finished = new Map<string, PlayBatch>();
const KEPT = 6;
const keyOf = (settings: PlayBatchSettings): string => JSON.stringify(settings);

let sampled: { key: string; batch: Result<PlayBatch> } | undefined;

/** A sample of the batch, for as long as the whole of it has not been drawn. */
const sampleOf = (settings: PlayBatchSettings, key: string): Result<PlayBatch> => {
  if (sampled?.key !== key)
    sampled = { key, batch: playBatch({ ...settings, count: Math.min(SAMPLE, settings.count) }) };
  return sampled.batch;
};

/** A play, and what it costs on reversal. */
interface Lost {
  readonly play: number;
  readonly turns: number;
  readonly steps: number;
}

/** The plays that are listed, in rising order. */
const PLACES = ['least', 'low', 'middle', 'high', 'most'] as const;
type Place = (typeof PLACES)[number];

interface State {
  readonly asked: Asked;
  /** Of the settings, by which a batch is known. */
  readonly key: string;
  /** Whether the whole batch has been drawn, not a sample of it. */
  readonly whole: boolean;
  readonly batch: PlayBatch;
  readonly drawn: PlayFigures;
  readonly lost: Readonly<Record<Place, Lost>>;
}

const stateOf = (numbers: BatchNumbers): Result<State> => {
  const asked = askedBy(numbers);
  if (!asked.ok) return asked;
  const { settings } = asked.value;
  const key = keyOf(settings);
  const whole = finished.get(key);
  const batch = whole ? good(whole) : sampleOf(settings, key);
  if (!batch.ok) return batch;
  const { drawn } = batch.value;
  if (!drawn) return bad('nothing-goes-together', {});
  const lost = lostAt(batch.value.limits, drawn, asked.value);
  return lost.ok
    ? good({ asked: asked.value, key, whole: whole !== undefined, batch: batch.value, drawn, lost: lost.value })
    : lost;
};

const lostAt = (limits: PlayBatch['limits'], { quantiles }: PlayFigures, asked: Asked): Result<State['lost']> => {
  const share = (i: number) => lostBy(at(quantiles, i).play, asked);
  const [least, most] = [lostBy(limits.least, asked), lostBy(limits.most, asked)];
  const [low, middle, high] = [share(0), share(1), share(2)];
  if (!least.ok) return least;
  if (!low.ok) return low;
  if (!middle.ok) return middle;
  if (!high.ok) return high;
  if (!most.ok) return most;
  return good({ least: least.value, low: low.value, middle: middle.value, high: high.value, most: most.value });
};

/** Play as turns and steps lost; two threads' play summed goes in as one. */
const lostBy = (play: Millimetres, { Delta, k }: Asked): Result<Lost> => {
  const lost = turnsLost.of({ j_A: play, j_C: mm(0), Delta });
  if (!lost.ok) return lost;
  const steps = stepsLost.of({ n_j: lost.value.n_j, k: plain(k) });
  return steps.ok ? good({ play, turns: lost.value.n_j, steps: steps.value.m_j }) : steps;
};

const WIDTH = 640;
const HEIGHT = 300;
const MARGIN = { top: 44, right: 16, bottom: 36, left: 62 };

const picture = (s: State, view: UnitView): string => {
  const { from, to, counts } = s.drawn.histogram;
  const factor = perMillimetre(axisUnit(to, view));
  // Zones of no width still need some paper.
  const [low, high] = to > from ? [from, to] : [from * 0.99, to * 1.01 + 1e-6];
  const share = (c: number) => (100 * c) / s.batch.together;
  const tallest = Math.max(...[...counts].map(share));
  const bar = (high - low) / counts.length;
  const bars = [...counts].map((c, i) => ({
    x1: (low + i * bar) * factor,
    x2: (low + (i + 1) * bar) * factor,
    y: share(c),
  }));
  const perTurn = Math.abs(s.asked.Delta) * factor;
  const turnsAt = roundTicks((low * factor) / perTurn, (high * factor) / perTurn, 6).map((t) => t * perTurn);
  const { low: l5, middle: l50, high: l95 } = s.lost;
  const [q5, q50, q95] = [l5.play * factor, l50.play * factor, l95.play * factor];
  const named = NAMED * tallest * HEADROOM;
  return `<svg class="hatches" width="0" height="0" aria-hidden="true"><defs>${hatching('batch-spread', 45, 6)}</defs></svg>${chartSvg(
    { width: WIDTH, height: HEIGHT, margin: MARGIN },
    WORDS.plot,
    {
      x: numberAxis(low * factor, high * factor, 7),
      y: { ...numberAxis(0, tallest * HEADROOM, 4), tickFormat: (v: number) => `${numeral(v)} %` },
      marks: [
        Plot.rectY([{ x1: q5, x2: q95, y: tallest * HEADROOM }], {
          x1: 'x1',
          x2: 'x2',
          y: 'y',
          className: 'spread',
          fill: 'url(#batch-spread)',
        }),
        Plot.rectY(bars, { x1: 'x1', x2: 'x2', y: 'y', className: 'bars', insetLeft: 0.5, insetRight: 0.5 }),
        Plot.axisX(turnsAt, {
          anchor: 'top',
          tickSize: -5,
          tickPadding: 11,
          label: null,
          tickFormat: (v: number) => numeral(v / perTurn, v === 0 ? undefined : 4).replace(/[.,]?0+$/, ''),
        }),
        Plot.ruleY([0], { className: 'zero' }),
        Plot.ruleX([q5, q95], { className: 'edge', strokeDasharray: '5 4' }),
        Plot.ruleX([q50], { className: 'median' }),
        // Three rows' worth of words in two, so that a narrow spread does not set them on top of each other.
        Plot.text([{ x: q5, text: WORDS.places.low }], {
          x: 'x',
          text: 'text',
          frameAnchor: 'top',
          dy: 9,
          dx: -5,
          textAnchor: 'end',
          className: 'edge-name',
        }),
        Plot.text([{ x: q95, text: WORDS.places.high }], {
          x: 'x',
          text: 'text',
          frameAnchor: 'top',
          dy: 9,
          dx: 5,
          textAnchor: 'start',
          className: 'edge-name',
        }),
        // On a phone the band is narrower than this word: it stands beside it, on a leader from its line.
        Plot.ruleY([{ x1: q50, x2: q95, y: named }], { x1: 'x1', x2: 'x2', y: 'y', className: 'to-median' }),
        Plot.text([{ x: q95, y: named, text: WORDS.places.middle }], {
          x: 'x',
          y: 'y',
          text: 'text',
          dx: 5,
          textAnchor: 'start',
          className: 'edge-name',
        }),
      ],
    },
    ['right'],
  )}`;
};

const rowsOf = (s: State, view: UnitView): [name: string, play: string, steps: string, turns: string][] =>
  PLACES.map((place) => {
    const { play, turns, steps } = s.lost[place];
    return [
      WORDS.places[place],
      show(play, { shown: 'motion', digits: 4 }, view),
      numeral(steps, 3),
      numeral(turns, 3),
    ];
  });
const headOf = (s: State): string[] => WORDS.resultHead(s.asked.k === 6);

const resultTable = (s: State, view: UnitView): string =>
  `<table class="batch-result"><thead><tr>${headOf(s)
    .map((h) => `<th scope="col">${h}</th>`)
    .join('')}</tr></thead><tbody>${rowsOf(s, view)
    .map(([name, ...cells]) => `<tr><th scope="row">${name}</th>${cells.map((c) => `<td>${c}</td>`).join('')}</tr>`)
    .join('')}</tbody></table>`;

const drawnWords = (s: State): string =>
  s.batch.count === s.asked.settings.count
    ? WORDS.drawn(grouped(s.batch.count))
    : WORDS.sample(grouped(s.batch.count), grouped(s.asked.settings.count));

const runs = new WeakMap<HTMLElement, { readonly key: string; readonly stop: () => void }>();

/** Shows start or stop and progress, as the stage's run stands. */
const showControls = (stage: HTMLElement, share: number | undefined, words?: string): void => {
  const part = <E extends HTMLElement>(name: string) => stage.querySelector<E>(`[data-batch="${name}"]`);
  const [controls, start, stop] = [part('controls'), part('start'), part('stop')];
  const bar = part<HTMLProgressElement>('progress');
  if (controls) controls.hidden = false;
  const running = share !== undefined;
  const held = document.activeElement === start || document.activeElement === stop;
  if (start) start.hidden = running;
  if (stop) stop.hidden = !running;
  // Whoever pressed one button finds the other under the same finger.
  if (held) (running ? stop : start)?.focus();
  if (bar) {
    bar.hidden = !running;
    bar.value = share ?? 0;
    bar.setAttribute('aria-valuetext', `${Math.round(100 * (share ?? 0))} %`);
  }
  const told = part('told');
  if (told && words !== undefined && told.textContent !== words) told.textContent = words;
};

export const playBatchFigure = defineFigure({
  name: 'play-batch',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['n_a', 'C_p', 'n_s', 'k'],
  choices: ['law'],
  chief: ['law', 'C_p'],
  groups: { threads: ['A', 'C'], batch: ['n_a', 'n_s'], steps: ['k'] },
  idle: ({ choices }) => (choices.law === 'uniform' ? ['C_p'] : []),
  state: stateOf,
  draw: (s, view) => {
    const unit = axisUnit(s.drawn.histogram.to, view);
    return (
      `<p class="panel-name" data-batch="drawn">${WORDS.above(drawnWords(s), unit)}</p>` +
      `<div class="plot-box">${picture(s, view)}</div>` +
      `<div class="batch-controls" data-batch="controls" hidden><button type="button" data-batch="start" data-key="start">${WORDS.draw(grouped(s.asked.settings.count))}</button><button type="button" data-batch="stop" data-key="stop" hidden>${WORDS.stop}</button><progress data-batch="progress" max="1" value="0" aria-label="${WORDS.progress}" hidden></progress><p data-batch="told" role="status"></p></div>`
    );
  },
  readings: resultTable,
  caption: (s, view) => {
    const motion = ({ play }: Lost) => show(play, { shown: 'motion', digits: 3 }, view);
    const { low, middle, high } = s.lost;
    const turned = ({ turns }: Lost) => numeral(turns, 3);
    const left = s.batch.interfering;
    return WORDS.caption({
      classes: s.asked.classes,
      drawn: drawnWords(s),
      half: motion(middle),
      halfTurns: turned(middle),
      low: motion(low),
      lowTurns: turned(low),
      high: motion(high),
      highTurns: turned(high),
      apart: left === 0 ? undefined : grouped(left),
    });
  },
  table: (s, view) => {
    const { from, to, counts } = s.drawn.histogram;
    const bar = (to - from) / counts.length;
    const motion = (z: number) => show(z, { shown: 'motion', digits: 4 }, view);
    return {
      head: WORDS.head,
      rows: [
        ...rowsOf(s, view).map(([name, play, steps, turned]) => [
          WORDS.placeRow(name, play),
          WORDS.steps(steps),
          WORDS.turns(turned),
        ]),
        ...[...counts].map((c, i) => [motion(from + i * bar), motion(from + (i + 1) * bar), String(c)]),
      ],
    };
  },
  renderKey: (s) => [s.asked, s.whole],
  mount: (stage, context) => {
    const stopRun = () => {
      runs.get(stage)?.stop();
      runs.delete(stage);
    };
    stage.addEventListener('click', (event) => {
      const button = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-batch]') : null;
      if (button?.dataset.batch === 'stop') {
        stopRun();
        showControls(stage, undefined, WORDS.stopped);
      }
      if (button?.dataset.batch !== 'start') return;
      const asked = askedBy(context.numbers());
      if (!asked.ok) return;
      stopRun();
      const key = keyOf(asked.value.settings);
      const begun = performance.now();
      showControls(stage, 0, '');
      const stop = startBatch(asked.value.settings, {
        progress: (share) => showControls(stage, share),
        refused: (reason) => {
          runs.delete(stage);
          showControls(stage, undefined, reason);
        },
        done: (batch, where) => {
          runs.delete(stage);
          finished.delete(key);
          finished.set(key, batch);
          for (const old of [...finished.keys()].slice(0, -KEPT)) finished.delete(old);
          context.redraw();
          showControls(
            stage,
            undefined,
            WORDS.drawnIn(numeral((performance.now() - begun) / 1000, 2), where === 'worker'),
          );
        },
      });
      runs.set(stage, { key, stop });
    });
  },
  update: (stage, s) => {
    const run = runs.get(stage);
    if (run && s.key !== run.key) {
      run.stop();
      runs.delete(stage);
      showControls(stage, undefined, WORDS.numbersChanged);
    } else showControls(stage, run ? (stage.querySelector('progress')?.value ?? 0) : undefined);
  },
  worker: { file: 'play-batch/worker', lend: lendWorkerScript },
});
