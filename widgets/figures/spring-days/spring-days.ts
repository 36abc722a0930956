/**
 * A relaxing spring against the time it is to last: force on a scale of tenfold times, the force that must be left, and whether it
 * is at the end of its life. The loss is stated by the reader or fitted to two readings; none is given here.
 */

import { WORDS } from '#words/figures/spring-days.ts';
import {
  bad,
  fitRetention,
  good,
  hours,
  newtons,
  plain,
  type Result,
  retainedForce,
  timeToFall,
} from '../../engine/index.ts';
import { numeral, show } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { frameBox } from '../kit/plot-box.ts';
import { amount, signedAmount } from '../kit/readout.ts';
import type { Point } from '../kit/svg.ts';
import { polyline, px } from '../kit/svg.ts';
import { evenly, roundTicks } from '../kit/ticks.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'force-needed-below-nought': { readonly needed: string };
    'spring-too-weak-when-new': { readonly start: string; readonly needed: string };
  }
}

interface State {
  readonly F_0: number;
  readonly q_r: number;
  readonly t_0: number;
  /** Needed at the worst place, N. */
  readonly needed: number;
  /** End of life, h. */
  readonly life: number;
  /** Left at the end of life; nothing where the law has used the force up before. */
  readonly left: number;
  /** Hours until it has fallen to what is needed; undefined where it lasts. */
  readonly falls: number | undefined;
  readonly readings: readonly (readonly [t: number, F: number])[];
  readonly fitted: boolean;
}

const QUANTITIES = ['F_0', 'q_r', 't_r1', 'F_r1', 't_r2', 'F_r2', 't_0', 't', 'F_p'] as const;

const stateOf = ({
  values,
  choices,
}: NumbersOf<never, (typeof QUANTITIES)[number], 'retention', never>): Result<State> => {
  const { t_0, t: life, F_p: needed, t_r1, t_r2, F_r1, F_r2 } = values;
  const fitted = choices.retention === 'fitted to two readings';
  let { F_0, q_r } = values;
  if (fitted) {
    const fit = fitRetention({ t: t_r1, F: F_r1 }, { t: t_r2, F: F_r2 }, t_0);
    if (!fit.ok) return fit;
    ({ F_0, q_r } = fit.value);
  }
  if (!(needed >= 0)) return bad('force-needed-below-nought', { needed: force(needed) }, 'F_p');
  if (!(needed <= F_0)) return bad('spring-too-weak-when-new', { start: force(F_0), needed: force(needed) }, 'F_0');
  const law = { F_0, q_r, t_0 };
  const fall = timeToFall(law, needed);
  if (!fall.ok) return fall;
  return good({
    ...law,
    needed,
    life,
    left: forceAfter(law, life),
    falls: fall.value.kind === 'falls' ? fall.value.t : undefined,
    readings: fitted
      ? [
          [t_r1, F_r1],
          [t_r2, F_r2],
        ]
      : [],
    fitted,
  });
};

/** The law, and nought where it has used the force up. */
const forceAfter = ({ F_0, q_r, t_0 }: Pick<State, 'F_0' | 'q_r' | 't_0'>, t: number): number => {
  const left = retainedForce.of({ F_0: newtons(F_0), q_r: plain(q_r), t: hours(t), t_0: hours(t_0) });
  return left.ok ? left.value.F_t : 0;
};

const force = (F: number): string => show(F, { shown: 'force', digits: 3 }, 'metric');
const time = (t: number): string => show(t, { shown: 'h', digits: 3 }, 'metric');
const percent = (q: number): string => show(q, { shown: 'percent', digits: 3 }, 'metric');

const WIDTH = 640;
const HEIGHT = 280;
const LEFT = 60;
const RIGHT = WIDTH - 18;
const TOP = 26;
const FLOOR = HEIGHT - 40;

const TIMES: readonly (readonly [hours: number, name: string])[] = [
  [1 / 3600, '1\u00a0s'],
  [1 / 60, '1\u00a0min'],
  [1, '1\u00a0h'],
  [24, '1\u00a0d'],
  [240, '10\u00a0d'],
  [2400, '100\u00a0d'],
  [24e3, '1000\u00a0d'],
  [24e4, '10\u202f000\u00a0d'],
  [24e5, '100\u202f000\u00a0d'],
];

/** Ends of the axis of time: a decade before the law starts, a decade past the end of life and the last reading. */
const spanOf = (s: State): readonly [number, number] => {
  const late = Math.max(s.life, s.t_0, ...s.readings.map(([t]) => t));
  const early = Math.min(s.t_0, ...s.readings.map(([t]) => t).filter((t) => t > 0), late);
  return [Math.max(early / 10, 1e-7), late * 10];
};

const frameOf = (s: State) => {
  const [t1, t2] = spanOf(s);
  const top = Math.max(s.F_0, ...s.readings.map(([, F]) => F)) * 1.12 || 1;
  const decades = Math.log10(t2 / t1);
  const x = (t: number) => LEFT + ((RIGHT - LEFT) * Math.log10(Math.max(t, t1) / t1)) / decades;
  const y = (F: number) => FLOOR - ((FLOOR - TOP) * F) / top;
  const at = (share: number) => t1 * 10 ** (share * decades);
  return { t1, t2, top, x, y, at };
};

/** Beyond ten times the last reading a fitted law is a guess; a stated one is as good as its statement. */
const surelyTo = (s: State): number => {
  const last = s.readings.at(-1)?.[0];
  return last === undefined ? Number.POSITIVE_INFINITY : 10 * last;
};

const lasts = (s: State): boolean => s.left >= s.needed;

const draw = (s: State): string => {
  const f = frameOf(s);
  const sure = surelyTo(s);
  const points = evenly(0, 1, 121).map((share) => f.at(share));
  const curve = (ts: readonly number[]) => polyline(ts.map((t): Point => [f.x(t), f.y(forceAfter(s, t))]));
  const edge = Math.min(Math.max(sure, f.t1), f.t2);
  const known = curve([...points.filter((t) => t < edge), edge]);
  const guess = edge < f.t2 ? curve([edge, ...points.filter((t) => t > edge)]) : '';
  const grid = roundTicks(0, f.top, 5)
    .map(
      (F) =>
        `<text x="${LEFT - 8}" y="${px(f.y(F) + 4)}" text-anchor="end">${numeral(Number(F.toPrecision(6)))}</text>`,
    )
    .join('');
  // Names of times keep apart, in the letters of a narrow screen too: one that would touch the name before it is left out.
  let taken = Number.NEGATIVE_INFINITY;
  const foot = TIMES.filter(([t]) => t >= f.t1 && t <= f.t2)
    .map(([t, name]) => {
      const at = f.x(t);
      const width = 12 * name.length;
      const atEnd = at + width / 2 > WIDTH;
      const left = atEnd ? at - width : at - width / 2;
      const named = left > taken;
      if (named) taken = left + width + 8;
      return `${named ? `<text x="${px(at)}" y="${FLOOR + 23}" text-anchor="${atEnd ? 'end' : 'middle'}">${name}</text>` : ''}`;
    })
    .join('');
  const box = frameBox(
    { left: LEFT, right: RIGHT, top: TOP, floor: FLOOR },
    TIMES.filter(([t]) => t >= f.t1 && t <= f.t2).map(([t]) => f.x(t)),
    roundTicks(0, f.top, 5).map(f.y),
  );
  const xEnd = f.x(s.life);
  const endLeft = xEnd > (LEFT + RIGHT) / 2;
  const needed = f.y(s.needed);
  const crossing =
    s.falls !== undefined && s.falls >= f.t1 && s.falls <= f.t2
      ? `<path class="let-go" data-falls d="M${px(f.x(s.falls) - 6)} ${px(needed - 6)}l12 12m0 -12l-12 12"/>`
      : '';
  const readings = s.readings
    .map(
      ([t, F]) =>
        `<rect class="reading" data-reading x="${px(f.x(t) - 4.5)}" y="${px(f.y(F) - 4.5)}" width="9" height="9"/>`,
    )
    .join('');
  return (
    `<p class="panel-name">${WORDS.panel}</p><svg class="days-chart" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing}">` +
    `${grid}${foot}${box}` +
    `<path class="needed" d="M${LEFT} ${px(needed)}H${RIGHT}"/><text class="needed-name clear" x="${LEFT + 6}" y="${px(needed)}" dy="${needed + 24 > FLOOR ? '-0.4em' : '1.2em'}">${WORDS.mustBeLeft}</text>` +
    `<path class="end-line" d="M${px(xEnd)} ${TOP}V${FLOOR}"/><path class="cursor-line" d="M${LEFT} ${px(f.y(s.left))}H${px(xEnd)}"/><text class="end-name clear" x="${px(endLeft ? xEnd - 7 : xEnd + 7)}" y="${TOP + 5}" dy="1em" text-anchor="${endLeft ? 'end' : 'start'}">${WORDS.endOfLife}</text>` +
    `<path class="days-curve" d="${known}"/>${guess === '' ? '' : `<path class="days-curve guess" d="${guess}"/>`}${readings}${crossing}` +
    `<circle class="end-mark" data-left cx="${px(xEnd)}" cy="${px(f.y(s.left))}" r="6"/></svg><p class="x-name">${WORDS.timeAxis}</p>` +
    `<p class="chain-verdict ${lasts(s) ? 'seated' : 'lets-go'}"><b class="verdict-mark" aria-hidden="true">${lasts(s) ? '✓' : '✕'}</b> ${WORDS.verdict(lasts(s), force(s.left), time(s.life), force(s.needed))}</p>`
  );
};

export const springDays = defineFigure({
  name: 'spring-days',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  choices: ['retention'],
  chief: ['retention', 'F_0', 'q_r'],
  groups: { readings: ['t_r1', 'F_r1', 't_r2', 'F_r2'], law: ['t_0'], need: ['t', 'F_p'] },
  idle: ({ choices }) => (choices.retention === 'stated' ? ['t_r1', 'F_r1', 't_r2', 'F_r2'] : ['F_0', 'q_r']),
  decidedBy: ['F_0', 'q_r', 'F_p'],
  state: stateOf,
  draw,
  rows: (s) => [
    amount('left', WORDS.rows.left, s.left, 'force', 3),
    signedAmount('over', WORDS.head[2], s.left - s.needed, 'force', 3),
    ...(s.falls === undefined ? [] : [amount('falls', WORDS.rows.falls, s.falls, 'h', 3)]),
    amount('loss', WORDS.rows.loss, s.q_r, 'percent', 3),
  ],
  caption: (s) =>
    WORDS.caption({
      fitted: s.fitted,
      start: force(s.F_0),
      loss: percent(s.q_r),
      life: time(s.life),
      left: force(s.left),
      needed: force(s.needed),
      falls: s.falls === undefined ? 'never' : s.falls === 0 ? 'from the start' : { after: time(s.falls) },
      guess: s.life > surelyTo(s),
    }),
  table: (s) => {
    const times = [
      ...TIMES.map(([t]) => t).filter((t) => t >= s.t_0 / 10 && t <= 10 * Math.max(s.life, s.t_0)),
      s.life,
      ...(s.falls === undefined ? [] : [s.falls]),
    ];
    return {
      head: WORDS.head,
      rows: [...new Set(times)]
        .sort((a, b) => a - b)
        .map((t) => {
          const F = forceAfter(s, t);
          return [time(t), force(F), force(F - s.needed)];
        }),
    };
  },
});
