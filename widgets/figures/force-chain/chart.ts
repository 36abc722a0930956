/** Force across one thread over the stroke: the band between least and most load, nought, the margin, and where it lets go. */
import { WORDS } from '#words/figures/force-chain.ts';
import type { ThreadName } from '../../engine/index.ts';
import { numeral } from '../../input/format.ts';
import { frameBox } from '../kit/plot-box.ts';
import { hatching, polygon, polyline, px } from '../kit/svg.ts';
import { roundTicks } from '../kit/ticks.ts';
import { forcesAt, places, type State } from './state.ts';

const WIDTH = 420;
const HEIGHT = 158;
const LEFT = 52;
const RIGHT = WIDTH - 14;
const TOP = 12;
const FLOOR = HEIGHT - 26;
const SAMPLES = 41;

export interface Axes {
  readonly turns: readonly [number, number];
  readonly least: number;
  readonly most: number;
}

/** Both threads on one scale, nought and a little of either side always in it. */
export const axesOf = (s: State): Axes => {
  const all = places(s, SAMPLES).flatMap((n) => [...forcesAt(s, 'A', n), ...forcesAt(s, 'C', n)]);
  const least = Math.min(0, ...all);
  const most = Math.max(0, ...all);
  const span = most - least || 1;
  const { from, to } = s.given;
  return {
    turns: from === to ? [from, from + 1] : [Math.min(from, to), Math.max(from, to)],
    least: Math.min(least - 0.08 * span, -0.22 * span),
    most: Math.max(most + 0.08 * span, 0.22 * span),
  };
};

const xOf = ({ turns: [a, b] }: Axes, n: number): number => LEFT + ((RIGHT - LEFT) * (n - a)) / (b - a);
const yOf = ({ least, most }: Axes, F: number): number => FLOOR - ((FLOOR - TOP) * (F - least)) / (most - least);

export const cursorPath = (axes: Axes, n: number): string => `M${px(xOf(axes, n))} ${TOP}V${FLOOR}`;

export const chartSvg = (s: State, thread: ThreadName, axes: Axes): string => {
  const at = places(s, SAMPLES);
  const x = (n: number) => xOf(axes, n);
  const y = (F: number) => yOf(axes, F);
  const low = at.map((n) => [x(n), y(forcesAt(s, thread, n)[0])] as const);
  const high = at.map((n) => [x(n), y(forcesAt(s, thread, n)[1])] as const);
  const { margin } = s.given;
  const v = s.verdict[thread];
  const marginAt = v.kind === 'lets go' ? margin : v.flank === 'pressed' ? margin : -margin;
  const inView = margin > 0 && marginAt > axes.least && marginAt < axes.most;
  const grid = roundTicks(axes.least, axes.most, 4)
    .map(
      (F) => `<text x="${LEFT - 11}" y="${px(y(F) + 4)}" text-anchor="end">${numeral(Number(F.toPrecision(6)))}</text>`,
    )
    .join('');
  const foot = roundTicks(axes.turns[0], axes.turns[1], 6)
    .map(
      (n) => `<text x="${px(x(n))}" y="${FLOOR + 18}" text-anchor="middle">${numeral(Number(n.toPrecision(6)))}</text>`,
    )
    .join('');
  const box = frameBox(
    { left: LEFT, right: RIGHT, top: TOP, floor: FLOOR },
    roundTicks(axes.turns[0], axes.turns[1], 6).map(x),
    roundTicks(axes.least, axes.most, 4).map(y),
  );
  const cross =
    v.kind === 'lets go' ? `<path class="let-go" d="M${px(x(v.n) - 6)} ${px(y(0) - 6)}l12 12m0 -12l-12 12"/>` : '';
  const key = thread === 'A' ? 'turned' : 'carried';
  return (
    `<svg class="chain-chart ${key}" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.chart.label(thread)}">` +
    `<defs>${hatching(`band-${thread}`, thread === 'A' ? 45 : -45, 9)}</defs>${grid}${foot}<path class="band" fill="url(#band-${thread})" d="${polygon([...low, ...[...high].reverse()])}"/>` +
    `<path class="least" data-least="${thread}" d="${polyline(low)}"/><path class="most" data-most="${thread}" d="${polyline(high)}"/>` +
    `${box}${inView ? `<path class="margin-line" d="M${LEFT} ${px(y(marginAt))}H${RIGHT}"/>` : ''}` +
    `<path class="nought" data-nought="${thread}" d="M${LEFT} ${px(y(0))}H${RIGHT}"/>` +
    `${cross}<path class="cursor-line" data-cursor d="${cursorPath(axes, s.n)}"/></svg>`
  );
};
