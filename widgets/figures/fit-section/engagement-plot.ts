/**
 * Engagement left on each thread against turns: two lines, each over the turns its own thread allows, what must be kept of each,
 * and between the stops the turns that the pair has. Sideways turns clockwise, upwards engaged length.
 */

import { WORDS as ADJUSTER } from '#words/adjuster.ts';
import { WORDS } from '#words/figures/fit-section.ts';
import type { Stop } from '../../assembly/adjuster/adjuster.ts';
import { engagedAt } from '../../assembly/adjuster/joint.ts';
import type { FitState, Side } from '../../assembly/fit-state.ts';
import { at } from '../../engine/index.ts';
import { dropPath, frameBox } from '../kit/plot-box.ts';
import { hatching, type Point, polyline, px } from '../kit/svg.ts';
import { roundTicks } from '../kit/ticks.ts';

const WIDTH = 440;
const HEIGHT = 250;
const LEFT = 48;
const RIGHT = 22;
const TOP = 70;
const FLOOR = 224;

interface Scales {
  readonly x: (n: number) => number;
  readonly y: (length: number) => number;
  readonly low: number;
  readonly high: number;
  readonly tallest: number;
}

const scalesOf = (s: FitState): Scales => {
  const { A, C } = s;
  const low = Math.min(A.from, C.from);
  const high = Math.max(A.to, C.to);
  const margin = 0.06 * Math.max(high - low, 1e-6);
  const tallest = Math.max(Math.min(s.A.nut, s.A.screw), Math.min(s.C.nut, s.C.screw));
  const span = high - low + 2 * margin;
  return {
    low,
    high,
    tallest,
    x: (n) => LEFT + ((WIDTH - LEFT - RIGHT) * (n - low + margin)) / span,
    y: (length) => FLOOR - ((FLOOR - TOP - 26) * length) / tallest,
  };
};

/** Ends of the run, and the bends where an end of the screw passes an end of its nut. */
const lineOf = ({ joint, start, rate, from, to }: Side): readonly (readonly [n: number, engaged: number])[] => {
  const { lower, upper } = joint;
  const bends = [lower.to - upper.to, lower.from - upper.from]
    .map((t) => (t - start) / rate)
    .filter((n) => n > from && n < to)
    .sort((a, b) => a - b);
  return [from, ...bends, to].map((n) => [n, engagedAt(joint, start + rate * n)] as const);
};

/** How lengths and turns are written inside the plot. */
export interface PlotFormat {
  readonly size: (length: number) => string;
  readonly count: (n: number) => string;
}

export const engagementPlot = (s: FitState, format: PlotFormat): string => {
  const scales = scalesOf(s);
  const { x, y, tallest } = scales;
  const { anticlockwise, clockwise } = s.adjuster;
  const line = (key: 'A' | 'C') => {
    const points = lineOf(s[key]);
    const drawn = points.map(([n, e]): Point => [x(n), y(e)]);
    const end = at(drawn, key === 'A' ? drawn.length - 1 : 0);
    return `<g class="run ${key}"><path class="kept" d="M${px(x(s[key].from))} ${px(y(s[key].joint.kept))}H${px(x(s[key].to))}"/><path class="engaged" d="${polyline(drawn)}"/><text x="${px(end[0] + (key === 'A' ? 4 : -4))}" y="${px(end[1] - 6)}" text-anchor="${key === 'A' ? 'start' : 'end'}">${key}</text></g>`;
  };
  const stop = (end: Stop, row: number, anchor: 'start' | 'end') =>
    `<path class="stop" d="M${px(x(end.n))} ${TOP - 4}V${FLOOR}"/><text class="stop-name" x="${px(clampText(x(end.n)))}" y="${row}" text-anchor="${anchor}">${ADJUSTER.stopMark(end, format.count(end.n))}</text>`;
  const ends = roundTicks(scales.low, scales.high, 5);
  return (
    `<svg class="engagement" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.plot.label}">` +
    `<defs>${hatching('fit-free', 45, 9)}</defs><rect class="free" fill="url(#fit-free)" x="${px(x(anticlockwise.n))}" y="${TOP}" width="${px(Math.max(1, x(clockwise.n) - x(anticlockwise.n)))}" height="${FLOOR - TOP}"/>` +
    frameBox({ left: LEFT, right: WIDTH - RIGHT, top: TOP, floor: FLOOR }, ends.map(x), [y(tallest), y(tallest / 2)]) +
    `<text class="figure-note" x="${LEFT}" y="15">${WORDS.plot.engaged(format.size(tallest))}</text>` +
    ends
      .map(
        (n) =>
          `<text class="tick-name" x="${px(x(n))}" y="${FLOOR + 19}" text-anchor="middle">${format.count(n)}</text>`,
      )
      .join('') +
    [tallest, tallest / 2]
      .map(
        (length) =>
          `<text class="tick-name" x="${LEFT - 8}" y="${px(y(length) + 4)}" text-anchor="end">${format.size(length).replace(/\s.*$/, '')}</text>`,
      )
      .join('') +
    `${line('A')}${line('C')}` +
    `${stop(anticlockwise, 37, x(anticlockwise.n) > WIDTH / 2 ? 'end' : 'start')}${stop(clockwise, 59, x(clockwise.n) < WIDTH / 2 ? 'start' : 'end')}` +
    `<path class="assembled" d="M${px(x(0))} ${FLOOR - 1}l-6 -9h12z"/>` +
    `<g data-cursor>${cursor(s, scales)}</g>` +
    `</svg><p class="x-name">${WORDS.plot.across}<br>${WORDS.plot.key}</p>`
  );
};

const clampText = (x: number): number => Math.min(WIDTH - RIGHT, Math.max(LEFT, x));

const cursor = (s: FitState, { x, y }: Scales): string => {
  const { n, engaged } = s.standing;
  const place = px(x(n));
  const drop = (length: number) => dropPath([x(n), y(length)], { left: LEFT, floor: FLOOR });
  return (
    `<path class="cursor-line" d="${drop(engaged.A)}${drop(engaged.C)}"/>` +
    `<circle class="dot A" cx="${place}" cy="${px(y(engaged.A))}" r="5"/><rect class="dot C" x="${px(x(n) - 4.5)}" y="${px(y(engaged.C) - 4.5)}" width="9" height="9"/>`
  );
};

export const updatePlot = (stage: HTMLElement, s: FitState): void => {
  const place = stage.querySelector('[data-cursor]');
  if (place) place.innerHTML = cursor(s, scalesOf(s));
};
