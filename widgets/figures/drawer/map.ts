/** The map of a drawer: a step to the right, a stroke upwards, both by ratio; every stack with every divider, those that meet the wish, the best edge. */
import { WORDS } from '#words/figures/drawer.ts';
import type { Stack } from '../../assembly/drawer/stacks.ts';
import { type Choice, stepOf, type Wish } from '../../assembly/drawer/wish.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { frameBox } from '../kit/plot-box.ts';
import { polyline, px } from '../kit/svg.ts';

const WIDTH = 560;
const HEIGHT = 336;
const BOX = { left: 96, right: 14, top: 30, bottom: 54 };
/** A name on the narrowest page, and room beside it. */
const NAME_ACROSS = 88;
const [LEFT, RIGHT, TOP, BOTTOM] = [BOX.left, WIDTH - BOX.right, BOX.top, HEIGHT - BOX.bottom];

export interface Frame {
  readonly x: readonly [low: number, high: number];
  readonly y: readonly [low: number, high: number];
}

const room = (values: readonly number[]): readonly [number, number] => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return [low / 1.5, high * 1.5];
};

export const frameOf = (stacks: readonly Stack[], dividers: readonly number[]): Frame => {
  const [fewest, most] = [Math.min(...dividers), Math.max(...dividers)];
  let [least, greatest, short, long] = [Number.POSITIVE_INFINITY, 0, Number.POSITIVE_INFINITY, 0];
  for (const s of stacks) {
    least = Math.min(least, stepOf(s, most));
    greatest = Math.max(greatest, stepOf(s, fewest));
    short = Math.min(short, s.stroke);
    long = Math.max(long, s.stroke);
  }
  return { x: room([least, greatest]), y: room([Math.max(short, long / 1e4), long]) };
};

const share = (value: number, [low, high]: readonly [number, number]): number =>
  Math.min(1, Math.max(0, Math.log(Math.max(value, 1e-12) / low) / Math.log(high / low)));
const across = (f: Frame, step: number): number => LEFT + (RIGHT - LEFT) * share(step, f.x);
const up = (f: Frame, stroke: number): number => BOTTOM - (BOTTOM - TOP) * share(stroke, f.y);

export const placeOf = (f: Frame, { step, stack }: Choice): readonly [number, number] => [
  across(f, step),
  up(f, stack.stroke),
];

/** Places of dots, each once. */
const dots = (f: Frame, choices: Iterable<Choice>): string => {
  const seen = new Set<string>();
  for (const c of choices) {
    const [x, y] = placeOf(f, c);
    seen.add(`${Math.round(x * 2) / 2} ${Math.round(y * 2) / 2}`);
  }
  return [...seen].map((place) => `M${place}h0`).join('');
};

const everyChoice = function* (stacks: readonly Stack[], dividers: readonly number[]): Generator<Choice> {
  for (const stack of stacks)
    for (const divisions of dividers) yield { stack, divisions, step: stepOf(stack, divisions) };
};

/** Ones, twos and fives in the unit of the view. */
const ticks = ([low, high]: readonly [number, number], view: UnitView): number[] => {
  const unit = view === 'inch' ? 25.4 : 1;
  const found: number[] = [];
  for (let e = Math.floor(Math.log10(low / unit)); e <= Math.ceil(Math.log10(high / unit)); e++)
    for (const m of [1, 2, 5]) found.push(m * 10 ** e * unit);
  const within = found.filter((t) => t >= low && t <= high);
  return within.length <= 9 ? within : within.filter((t) => isDecade(t, view));
};
const isDecade = (value: number, view: UnitView): boolean => {
  const power = Math.log10(view === 'inch' ? value / 25.4 : value);
  return Math.abs(power - Math.round(power)) < 1e-6;
};
const label = (value: number, view: UnitView): string =>
  view === 'inch'
    ? value < 2.54 * 0.999
      ? `${numeral(value / 0.0254, 3)} thou`
      : `${numeral(value / 25.4, 3)} in`
    : show(value, { shown: 'motion', digits: 3 }, 'metric');

export const mapSvg = (
  f: Frame,
  stacks: readonly Stack[],
  dividers: readonly number[],
  wish: Wish,
  met: readonly Choice[],
  edge: readonly Choice[],
  ring: Choice | undefined,
  view: UnitView,
  stepAxis: string,
): string => {
  const text = (x: number, y: number, words: string, anchor: string, name = 'drawer-label') =>
    `<text class="${name}" x="${px(x)}" y="${px(y)}" text-anchor="${anchor}">${escapeText(words)}</text>`;
  const [stepTicks, strokeTicks] = [ticks(f.x, view), ticks(f.y, view)];
  // Powers of ten take their names first, the others where there is room.
  const named: number[] = [];
  for (const t of [...stepTicks].sort((a, b) => Number(isDecade(b, view)) - Number(isDecade(a, view))))
    if (named.every((other) => Math.abs(across(f, other) - across(f, t)) > NAME_ACROSS)) named.push(t);
  const xs = named
    .sort((a, b) => a - b)
    .map(
      (t) =>
        `<path class="drawer-grid" d="M${px(across(f, t))} ${TOP}V${BOTTOM}"/>${text(across(f, t), BOTTOM + 22, label(t, view), 'middle')}`,
    );
  const ys = strokeTicks.map(
    (t) =>
      `${isDecade(t, view) ? `<path class="drawer-grid" d="M${LEFT} ${px(up(f, t))}H${RIGHT}"/>` : ''}${text(LEFT - 7, up(f, t) + 4, label(t, view), 'end')}`,
  );
  const scales = frameBox(
    { left: LEFT, right: RIGHT, top: TOP, floor: BOTTOM },
    stepTicks.map((t) => across(f, t)),
    strokeTicks.map((t) => up(f, t)),
  );
  const [x, y] = [across(f, wish.step), up(f, wish.stroke)];
  // Towards the finer step and the longer stroke is better: from the last point of the edge it goes to the top of the sheet.
  const corners = edge.map((c) => placeOf(f, c));
  const stairs = corners.flatMap(([cx, cy], i) => {
    const next = corners[i + 1];
    return next ? [[cx, cy] as const, [next[0], cy] as const] : [[cx, cy] as const];
  });
  const [rx, ry] = ring ? placeOf(f, ring) : [0, 0];
  return (
    `<svg class="drawer-map" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.mapOf}">` +
    `<rect class="drawer-wish" x="${LEFT}" y="${TOP}" width="${px(Math.max(0, x - LEFT))}" height="${px(Math.max(0, y - TOP))}"/>` +
    `${xs.join('')}${ys.join('')}${scales}` +
    `<path class="drawer-limit" d="M${px(x)} ${TOP}V${px(y)}H${LEFT}"/>` +
    `<path class="drawer-all" d="${dots(f, everyChoice(stacks, dividers))}"/>` +
    `<path class="drawer-edge" d="${polyline(stairs)}"/>` +
    `<path class="drawer-met" d="${dots(f, met)}"/>` +
    `${ring ? `<circle class="drawer-ring" data-ring r="9" cx="${px(rx)}" cy="${px(ry)}"/>` : ''}` +
    `<text class="drawer-axis" x="4" y="0" dy="1em">${escapeText(WORDS.strokeAxis)}</text>${text(RIGHT, HEIGHT - 6, stepAxis, 'end', 'drawer-axis')}` +
    `<text class="drawer-named" x="${LEFT + 9}" y="${TOP + 6}" dy="1em">${escapeText(WORDS.wished)}</text></svg>`
  );
};
