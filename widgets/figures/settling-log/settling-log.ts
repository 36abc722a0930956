/**
 * A log of the reader’s own readings after a setting, judged: whether the place settles, creeps, follows the warmth of the room, or stands still; and what is
 * yet to come by ten times the last time.
 */
import { WORDS } from '#words/figures/settling-log.ts';
import {
  good,
  judgeSettling,
  type Result,
  type SettlingFound,
  type SettlingReading,
  settledAt,
  spokenNumber,
} from '../../engine/index.ts';
import { show, type UnitView } from '../../input/format.ts';
import { readSettlingLog } from '../../input/settling-log.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { frameBox } from '../kit/plot-box.ts';
import { axisUnit, perMillimetre } from '../kit/plots/frame.ts';
import { amount, following, signedAmount } from '../kit/readout.ts';
import { type Point, polyline, px } from '../kit/svg.ts';
import { evenly, roundTicks } from '../kit/ticks.ts';

const QUANTITIES = ['t_0'] as const;

interface State {
  readonly rows: readonly SettlingReading[];
  readonly found: SettlingFound;
  readonly t_0: number;
  readonly last: number;
}

const stateOf = ({
  values: { t_0 },
  texts,
}: NumbersOf<never, (typeof QUANTITIES)[number], never, 'settled'>): Result<State> => {
  const rows = readSettlingLog(texts.settled);
  if (!rows.ok) return rows;
  const found = judgeSettling(rows.value, t_0);
  if (!found.ok) return found;
  return good({ rows: rows.value, found: found.value, t_0, last: Math.max(...rows.value.map(({ t }) => t)) });
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 2 }, view);
const time = (t: number): string => show(t, { shown: 'h', digits: 2 }, 'metric');

/** The reading as it would be at the mean temperature. */
const atMean = ({ found: { best, T_mean } }: State, { z, T }: SettlingReading): number =>
  best.heat && T !== undefined && T_mean !== undefined ? z - best.heat.perKelvin * (T - T_mean) : z;

const WIDTH = 640;
const HEIGHT = 280;
const LEFT = 60;
const RIGHT = WIDTH - 18;
const TOP = 18;
const FLOOR = HEIGHT - 40;

const TIMES: readonly (readonly [hours: number, name: string])[] = [
  [1 / 60, '1\u00a0min'],
  [1 / 6, '10\u00a0min'],
  [1, '1\u00a0h'],
  [10, '10\u00a0h'],
  [100, '100\u00a0h'],
  [1000, '1000\u00a0h'],
  [1e4, '10\u202f000\u00a0h'],
];

const frameOf = (s: State) => {
  const times = s.rows.map(({ t }) => t).filter((t) => t > 0);
  const [t1, t2] = [Math.min(...times) / 2, 10 * s.last];
  const law = (t: number) => settledAt(s.found.best, t, s.t_0);
  const values = [...s.rows.flatMap((row) => [row.z, atMean(s, row)]), law(t1), law(t2)];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = Math.max(0.1 * (high - low), 1e-4);
  const decades = Math.log10(t2 / t1);
  return {
    t1,
    t2,
    low: low - room,
    high: high + room,
    law,
    x: (t: number) => LEFT + ((RIGHT - LEFT) * Math.log10(Math.max(t, t1) / t1)) / decades,
    y: (z: number) => FLOOR - ((FLOOR - TOP) * (z - low + room)) / (high - low + 2 * room),
    at: (share: number) => t1 * 10 ** (share * decades),
  };
};

const draw = (s: State, view: UnitView): string => {
  const f = frameOf(s);
  const unit = axisUnit(Math.max(Math.abs(f.low), Math.abs(f.high)), view);
  const perUnit = 1 / perMillimetre(unit);
  const ticks = roundTicks(f.low / perUnit, f.high / perUnit, 5);
  const curve = (from: number, to: number) =>
    polyline(
      evenly(0, 1, 81)
        .map((share) => from * (to / from) ** share)
        .map((t): Point => [f.x(t), f.y(f.law(t))]),
    );
  const marks = s.rows
    .map((row) => {
      const [x, y, z] = [f.x(row.t), f.y(row.z), f.y(atMean(s, row))];
      return `<path class="log-raw" d="M${px(x - 4)} ${px(y)}h8m-4 -4v8"/><circle class="log-mark" cx="${px(x)}" cy="${px(z)}" r="4"/>`;
    })
    .join('');
  const named = TIMES.filter(([t]) => t >= f.t1 && t <= f.t2);
  return (
    `<p class="panel-name">${WORDS.panel(unit)}</p><svg class="log-chart" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing}">` +
    ticks
      .map(
        (z) =>
          `<text x="${LEFT - 8}" y="${px(f.y(z * perUnit) + 4)}" text-anchor="end">${spokenNumber(Number(z.toPrecision(4)).toString().replace('-', '−'))}</text>`,
      )
      .join('') +
    named
      .map(([t, name], i) =>
        i % 2 === 0 ? `<text x="${px(f.x(t))}" y="${FLOOR + 23}" text-anchor="middle">${name}</text>` : '',
      )
      .join('') +
    frameBox(
      { left: LEFT, right: RIGHT, top: TOP, floor: FLOOR },
      named.map(([t]) => f.x(t)),
      ticks.map((z) => f.y(z * perUnit)),
    ) +
    `<path class="log-law" data-shape="law" d="${curve(f.t1, s.last)}"/><path class="log-law guess" d="${curve(s.last, f.t2)}"/>${marks}</svg><p class="x-name">${WORDS.axis}</p>`
  );
};

const verdict = (s: State, view: UnitView): string => {
  const { best, rivals, toCome, digit } = s.found;
  return WORDS.verdict({
    kind: best.kind,
    rivals,
    amount: motion(Math.abs(best.amount), view),
    sinks: best.amount < 0,
    tau: time(best.tau),
    last: time(s.last),
    later: time(10 * s.last),
    toCome: Math.abs(toCome) < digit / 2 ? undefined : motion(Math.abs(toCome), view),
    heat: best.heat && {
      perKelvin: motion(Math.abs(best.heat.perKelvin), view),
      half: motion(best.heat.half, view),
      falls: best.heat.perKelvin < 0,
    },
  });
};

export const settlingLog = defineFigure({
  name: 'settling-log',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  texts: ['settled'],
  chief: ['settled'],
  groups: { law: ['t_0'] },
  state: stateOf,
  draw,
  rows: (s) => [
    following(signedAmount('toCome', WORDS.rows.toCome, s.found.toCome, 'motion', 2), 'log-creep'),
    amount('digit', WORDS.rows.digit, s.found.digit, 'motion', 2),
    following(amount('scatter', WORDS.rows.scatter, s.found.best.scatter, 'motion', 2), 'log-creep', 'warming'),
    ...(s.found.best.kind === 'still'
      ? []
      : [
          following(
            signedAmount('amount', WORDS.rows[s.found.best.kind], s.found.best.amount, 'motion', 2),
            'log-creep',
          ),
        ]),
    ...(s.found.best.heat
      ? [following(signedAmount('heat', WORDS.rows.heat, s.found.best.heat.perKelvin, 'motion', 2), 'thermal-growth')]
      : []),
  ],
  caption: verdict,
  table: (s, view) => ({
    head: WORDS.head,
    rows: s.rows.map((row) => [
      time(row.t),
      motion(row.z, view),
      motion(atMean(s, row), view),
      motion(settledAt(s.found.best, row.t, s.t_0), view),
    ]),
  }),
});
