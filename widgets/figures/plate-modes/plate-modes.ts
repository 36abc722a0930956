/** How a plate on three feet swings: three plans, one a way, slowest first, each with the line about which it rocks and what moves up and down. */
import { WORDS } from '#words/figures/plate-modes.ts';
import { at, good, type PlateMode, plateModes, type Result } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { type NamedPlace, readFeet } from '../../input/levelling-table.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount } from '../kit/readout.ts';
import { type Point, px } from '../kit/svg.ts';

const QUANTITIES = ['W', 'x_g', 'y_g', 'k_j', 'w_x', 'w_y'] as const;

interface State {
  readonly feet: readonly NamedPlace[];
  readonly modes: readonly PlateMode[];
  readonly centre: { readonly x: number; readonly y: number };
  readonly wide: { readonly x: number; readonly y: number };
}

const stateOf = ({ values: v, texts }: NumbersOf<never, (typeof QUANTITIES)[number], never, 'feet'>): Result<State> => {
  const feet = readFeet(texts.feet);
  if (!feet.ok) return feet;
  const [centre, wide] = [
    { x: v.x_g, y: v.y_g },
    { x: v.w_x, y: v.w_y },
  ];
  const modes = plateModes({ feet: feet.value, weight: v.W, centre, wide, stiffness: v.k_j });
  return modes.ok ? good({ feet: feet.value, modes: modes.value, centre, wide }) : modes;
};

const SIZE = 200;
const EDGE = 16;
/** Above and below the plate: the mark of a foot that moves most stands out so far. */
const ROOM = 22;
/** A line about which the plate rocks ends so far beside it. */
const OVER = 14;

const boxOf = ({ feet, centre, wide }: State) => {
  const xs = [centre.x - wide.x / 2, centre.x + wide.x / 2, ...feet.map((f) => f.x)];
  const ys = [centre.y - wide.y / 2, centre.y + wide.y / 2, ...feet.map((f) => f.y)];
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = (SIZE - 2 * EDGE) / Math.max(right - left, high - low);
  const midX = (left + right) / 2;
  return {
    x: (x: number) => SIZE / 2 + scale * (x - midX),
    y: (y: number) => ROOM + scale * (high - y),
    high: scale * (high - low) + 2 * ROOM,
  };
};

/** Both ends of a line through `at` along the unit vector `way`, where it leaves the box about the place x, y that reaches so far to each side. */
const reachOf = (
  at: Point,
  way: Point,
  [x, y, wide, high]: readonly [x: number, y: number, wide: number, high: number],
): [Point, Point] => {
  const along = ([a, d, middle, half]: readonly [number, number, number, number]): [number, number] => {
    if (Math.abs(d) < 1e-9) return [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    const ends = [(middle - half - a) / d, (middle + half - a) / d] as const;
    return [Math.min(...ends), Math.max(...ends)];
  };
  const [l, r] = along([at[0], way[0], x, wide]);
  const [t, b] = along([at[1], way[1], y, high]);
  const place = (far: number): Point => [at[0] + far * way[0], at[1] + far * way[1]];
  return [place(Math.max(l, t)), place(Math.min(r, b))];
};

const HERE = 0.005;

const plan = (s: State, mode: PlateMode): string => {
  const box = boxOf(s);
  const [w, h] = [Math.abs(box.x(s.wide.x) - box.x(0)), Math.abs(box.y(s.wide.y) - box.y(0))];
  const { u, p, q } = mode.shape;
  const steep = Math.hypot(p, q);
  // The point of the line that is nearest to the centre, and the direction along it; of one that passes beside the plate nothing is drawn.
  const line =
    steep > 1e-12 && Math.abs(u) / steep < Math.hypot(s.wide.x, s.wide.y) / 2
      ? (() => {
          const [nx, ny] = [s.centre.x - (u * p) / steep ** 2, s.centre.y - (u * q) / steep ** 2];
          const [from, to] = reachOf(
            [box.x(nx), box.y(ny)],
            [-q / steep, -p / steep],
            [box.x(s.centre.x), box.y(s.centre.y), w / 2 + OVER, h / 2 + OVER],
          );
          return `<path class="rock-line" d="M${from.map(px).join(' ')}L${to.map(px).join(' ')}"/>`;
        })()
      : '';
  const feet = s.feet
    .map((foot, i) => {
      const [x, y, z] = [box.x(foot.x), box.y(foot.y), at(mode.feet, i)];
      const size = 4 + 8 * Math.abs(z);
      const mark =
        Math.abs(z) < HERE
          ? `<circle class="swing still" cx="${px(x)}" cy="${px(y)}" r="3"/>`
          : `<path class="swing ${z > 0 ? 'up' : 'down'}" d="M${px(x - size)} ${px(y + (z > 0 ? size : -size) * 0.7)}h${px(2 * size)}l${px(-size)} ${px((z > 0 ? -1 : 1) * 1.5 * size)}z"/>`;
      return mark;
    })
    .join('');
  return (
    `<svg class="swing-plan" viewBox="0 0 ${SIZE} ${px(box.high)}" role="img" aria-label="${WORDS.plan(WORDS.kinds[mode.kind], numeral(mode.frequency, 3))}">` +
    `<rect class="plate" x="${px(box.x(s.centre.x) - w / 2)}" y="${px(box.y(s.centre.y) - h / 2)}" width="${px(w)}" height="${px(h)}"/>` +
    `${line}<path class="centre" d="M${px(box.x(s.centre.x) - 5)} ${px(box.y(s.centre.y))}h10m-5 -5v10"/>${feet}</svg>`
  );
};

const hertz = (f: number): string => show(f, { shown: 'Hz', digits: 3 }, 'metric');

export const plateModesFigure = defineFigure({
  name: 'plate-modes',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  texts: ['feet'],
  chief: ['k_j', 'w_x', 'w_y'],
  setElsewhere: ['feet', 'W', 'x_g', 'y_g'],
  state: stateOf,
  draw: (s) =>
    `<div class="swing-plans">${s.modes
      .map(
        (mode) =>
          `<div>${plan(s, mode)}<p class="x-name">${WORDS.kinds[mode.kind]}, <b>${hertz(mode.frequency)}</b></p></div>`,
      )
      .join('')}</div>`,
  rows: (s) =>
    s.modes.map((mode, i) =>
      amount(`swing-${i + 1}`, WORDS.row(i + 1, WORDS.kinds[mode.kind]), mode.frequency, 'Hz', 3),
    ),
  caption: (s) => WORDS.caption(s.modes.map((mode) => ({ kind: mode.kind, frequency: hertz(mode.frequency) }))),
  table: (s, _view: UnitView) => ({
    head: [...WORDS.head, ...s.feet.map(({ name }) => WORDS.foot(escapeText(name)))],
    rows: s.modes.map((mode) => [
      WORDS.kinds[mode.kind],
      hertz(mode.frequency),
      ...mode.feet.map((z) => numeral(Number(z.toFixed(3)) + 0)),
    ]),
  }),
});
