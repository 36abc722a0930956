/**
 * A screw that waves once a turn, on its nut that waves too: both flanks once round, unrolled; how high it stands as it is turned; and where its tip goes
 * if it is free to tilt, or free to go sideways.
 */
import { WORDS } from '#words/figures/waves-in-nut.ts';
import {
  diameters,
  good,
  mm,
  type Result,
  tipFloat,
  turns,
  waveAllRound,
  waveLean,
  waveShift,
  waveThrough,
} from '../../engine/index.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { axisUnit, type Frame, legendItem, panelHtml, roundUp, xAt, yAt } from '../kit/plots/frame.ts';
import { amount } from '../kit/readout.ts';
import { type Point, polyline, px } from '../kit/svg.ts';

const QUANTITIES = ['a_s', 'a_n', 'n', 'y'] as const;

interface State {
  readonly a_s: number;
  readonly a_n: number;
  readonly n: number;
  readonly stands: number;
  readonly through: number;
  readonly lean: number;
  readonly tip: number;
  readonly shift: number;
}

const stateOf = ({
  threads: { thread },
  values,
}: NumbersOf<'thread', (typeof QUANTITIES)[number], never, never>): Result<State> => {
  const [a_s, a_n] = [mm(values.a_s), mm(values.a_n)];
  const stands = waveAllRound.of({ a_s, a_n, n: turns(values.n) });
  if (!stands.ok) return stands;
  const through = waveThrough.of({ a_s, a_n });
  if (!through.ok) return through;
  const lean = waveLean.of({ a_s, d_2: mm(diameters(thread).d2) });
  if (!lean.ok) return lean;
  const tip = tipFloat.of({ ...lean.value, y: mm(values.y) });
  if (!tip.ok) return tip;
  const shift = waveShift.of({ a_s });
  if (!shift.ok) return shift;
  return good({
    a_s,
    a_n,
    n: values.n,
    stands: stands.value.z_w,
    through: through.value.a_w,
    lean: lean.value.tau,
    tip: tip.value.y_t,
    shift: shift.value.x_a,
  });
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 3 }, view);
const heightAt = ({ a_s, a_n }: State, n: number): number => {
  const found = waveAllRound.of({ a_s: mm(a_s), a_n: mm(a_n), n: turns(n) });
  return found.ok ? found.value.z_w : 0;
};

const ROUND = 72;
const WIDE = 400;
const HIGH = 200;

const unrolled = (s: State): string => {
  const angle = 2 * Math.PI * s.n;
  const nut = (phi: number) => s.a_n * Math.cos(phi);
  const screw = (phi: number) => s.stands + s.a_s * Math.cos(phi - angle);
  const most = Math.max(2 * (s.a_s + s.a_n), 1e-9);
  const scale = (HIGH - 60) / most;
  const x = (phi: number) => 10 + ((WIDE - 20) * phi) / (2 * Math.PI);
  const y = (z: number) => HIGH - 40 - (z + s.a_n) * scale;
  const line = (of: (phi: number) => number): Point[] =>
    Array.from({ length: ROUND + 1 }, (_, i) => {
      const phi = (2 * Math.PI * i) / ROUND;
      return [x(phi), y(of(phi))];
    });
  // The screw is lowest over the nut where the difference of both waves is highest.
  const touch = Math.atan2(-s.a_s * Math.sin(angle), s.a_n - s.a_s * Math.cos(angle));
  const at = (touch + 2 * Math.PI) % (2 * Math.PI);
  const body = polyline(line(nut));
  return (
    `<svg class="wave-round" viewBox="0 0 ${WIDE} ${HIGH}" role="img" aria-label="${WORDS.unrolled}">` +
    `<path class="part solid base" d="${body}L${WIDE - 10} ${HIGH - 12}H10Z"/><path class="curve turned" d="${polyline(line(screw))}"/>` +
    `<circle class="mark turned" r="5" cx="${px(x(at))}" cy="${px(y(nut(at)))}"/></svg>`
  );
};

const SIDE = 100;

const plan = (s: State, view: UnitView): string => {
  const far = Math.max(s.tip, s.shift, 1e-9);
  const scale = 74 / far;
  const angle = 2 * Math.PI * s.n;
  const unit = axisUnit(far, view);
  const bar = roundUp(far / 2, unit);
  const dot = (r: number) =>
    `<circle class="mark carried" r="3.5" cx="${px(r * scale * Math.cos(angle))}" cy="${px(-r * scale * Math.sin(angle))}"/>`;
  return (
    `<svg class="wave-tip" viewBox="-${SIDE} -${SIDE} ${2 * SIDE} ${2 * SIDE + 24}" role="img" aria-label="${WORDS.plan}">` +
    `<path class="axis" d="M-${SIDE - 6} 0H${SIDE - 6}M0 -${SIDE - 6}V${SIDE - 6}"/>` +
    `<circle class="curve carried" data-circle="tip" r="${px(s.tip * scale)}"/><circle class="curve base" data-circle="shift" stroke-dasharray="6 4" r="${px(s.shift * scale)}"/>${dot(s.tip)}${dot(s.shift)}` +
    `<path class="scale-bar" data-bar="${px(bar * scale)}" d="M-${SIDE - 8} ${SIDE + 10}h${px(bar * scale)}m0 -4v8m${px(-bar * scale)} 0v-8"/><text x="${px(bar * scale - SIDE + 16)}" y="${SIDE + 15}">${motion(bar, view)}</text></svg>`
  );
};

const draw = (s: State, view: UnitView): string => {
  const unit = axisUnit(Math.max(s.a_s + s.a_n, 1e-6), view);
  const frame: Frame = { x: [0, 1], y: [0, roundUp(Math.max(s.a_s + s.a_n, 1e-6), unit)], unit };
  const curve = polyline(
    Array.from({ length: ROUND + 1 }, (_, i): Point => [xAt(frame, i / ROUND), yAt(frame, heightAt(s, i / ROUND))]),
  );
  const here = s.n - Math.floor(s.n);
  return (
    `<div class="waves-in-nut-view"><div class="of-round">${unrolled(s)}<p class="x-name">${WORDS.round}</p></div>` +
    panelHtml(
      frame,
      WORDS.panel,
      5,
      `<path class="curve turned" data-shape="stands" d="${curve}"/><circle class="mark turned" r="5" cx="${px(xAt(frame, here))}" cy="${px(yAt(frame, s.stands))}"/>`,
    ) +
    `<div class="of-tip">${plan(s, view)}<ul class="legend">${legendItem('carried', undefined, WORDS.tilts)}${legendItem('base', '6 4', WORDS.goes)}</ul></div></div>`
  );
};

export const wavesInNut = defineFigure({
  name: 'waves-in-nut',
  title: WORDS.title,
  threads: ['thread'],
  quantities: QUANTITIES,
  chief: ['n', 'a_s', 'a_n'],
  groups: { lengths: ['thread', 'y'] },
  state: stateOf,
  draw,
  rows: (s) => [
    amount('stands', WORDS.rows.stands, s.stands, 'motion', 3),
    amount('through', WORDS.rows.through, s.through, 'motion', 3),
    amount('lean', WORDS.rows.lean, s.lean, 'degrees', 3),
    amount('tip', WORDS.rows.tip, s.tip, 'motion', 3),
    amount('shift', WORDS.rows.shift, s.shift, 'motion', 3),
  ],
  caption: (s, view) =>
    WORDS.caption({
      through: motion(s.through, view),
      tip: motion(s.tip, view),
      shift: motion(s.shift, view),
    }),
  table: (s, view) => ({
    head: WORDS.head,
    rows: [0, 0.25, 0.5, 0.75, 1].map((n) => [numeral(n), motion(heightAt(s, n), view)]),
  }),
});
