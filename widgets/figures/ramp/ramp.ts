/**
 * One screw: the helix on its cylinder and, beside it at the same scale, the helix unrolled to a ramp. Base of the ramp is
 * once round the pitch diameter, its height the lead. A point walks both as the screw is turned.
 */

import { WORDS } from '#words/figures/ramp.ts';
import {
  advance,
  diameters,
  good,
  leadAngle,
  onceRound,
  plain,
  type Result,
  rad,
  type Thread,
  turns,
  turnsFromAngle,
} from '../../engine/index.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { knobSvg, mountKnob, updateKnob } from '../kit/knob.ts';
import { type Row, signedAmount } from '../kit/readout.ts';
import { arrowheads, dimensionLine, type Point, polyline, px } from '../kit/svg.ts';
import { crestLines, opposite, threadEdge } from '../kit/thread-outline.ts';

const WIDTH = 640;
const HEIGHT = 262;
const STEPS = 12;
/** Beside and between cylinder and ramp, for letters that are large against the drawing on a phone. */
const ROOM = 262;

interface State {
  readonly thread: Thread;
  readonly theta: number;
  readonly n: number;
  readonly z: number;
  readonly d2: number;
  readonly round: number;
  readonly lambda: number;
}

/** Turns and motion of the screw at an angle. */
const motionAt = (thread: Thread, theta: number): Result<{ readonly n: number; readonly z: number }> => {
  const n = turnsFromAngle.of({ theta: rad(theta) });
  if (!n.ok) return n;
  const z = advance.of({ h: plain(thread.h), L: thread.L, n: n.value.n });
  return z.ok ? good({ n: n.value.n, z: z.value.z }) : z;
};

const stateOf = ({
  threads: { thread },
  values: { theta },
}: NumbersOf<'thread', 'theta', never, never>): Result<State> => {
  const motion = motionAt(thread, theta);
  if (!motion.ok) return motion;
  const { d2 } = diameters(thread);
  const round = onceRound.of({ d_2: d2 });
  const slope = leadAngle.of({ L: thread.L, d_2: d2 });
  if (!round.ok) return round;
  if (!slope.ok) return slope;
  return good({ thread, theta, ...motion.value, d2, round: round.value.C_2, lambda: slope.value.lambda });
};

interface Frame {
  readonly scale: number;
  readonly axis: number;
  readonly floor: number;
  readonly foot: number;
  readonly length: number;
}

/** Cylinder left, ramp right, one scale for both. */
const frameOf = (s: State): Frame => {
  const length = Math.max(2.2 * s.thread.L, 1.1 * s.thread.d);
  const scale = Math.min((WIDTH - ROOM) / (s.thread.d + s.round), (HEIGHT - 72) / length);
  const used = (s.thread.d + s.round) * scale;
  const left = (WIDTH - ROOM - used) / 2 + 10;
  return {
    scale,
    axis: left + (s.thread.d / 2) * scale,
    floor: HEIGHT - 46,
    foot: left + s.thread.d * scale + (s.thread.h === 1 ? 40 : 196),
    length,
  };
};

/**
 * Where a tooth of the nut stands on the screw, seen by the screw: turned clockwise, the screw sees the tooth walk round it
 * anticlockwise from its left edge, along the front first, and on the unrolled ramp from left to right.
 */
const walk = (s: State, f: Frame) => {
  const share = s.n - Math.floor(s.n);
  const height = (s.thread.h === 1 ? share : 1 - share) * s.thread.L * f.scale;
  const x = f.axis - (s.d2 / 2) * f.scale * Math.cos(2 * Math.PI * share);
  return {
    behind: share > 0.5,
    cylinder: [x, f.floor - height] as Point,
    ramp: [f.foot + share * s.round * f.scale, f.floor - height] as Point,
  };
};

const draw = (s: State, view: UnitView): string => {
  const f = frameOf(s);
  const place = ([x, z]: readonly [number, number]): Point => [f.axis + x * f.scale, f.floor - z * f.scale];
  // The crest starts at the left edge, where the tooth does.
  const crest = (s.thread.h * s.thread.L) / 2;
  const right = threadEdge(s.thread, crest, 0, f.length).map(place);
  const left = threadEdge(s.thread, opposite(s.thread, crest), 0, f.length)
    .map(([x, z]) => [-x, z] as const)
    .map(place);
  const crests = crestLines(s.thread, crest, 0, f.length)
    .map((l) => polyline(l.map(place)))
    .join('');
  const toe = s.thread.h === 1 ? f.foot : f.foot + s.round * f.scale;
  const heel = s.thread.h === 1 ? f.foot + s.round * f.scale : f.foot;
  const peak = f.floor - s.thread.L * f.scale;
  const w = walk(s, f);
  const starts = Array.from({ length: s.thread.N - 1 }, (_, i) => {
    const dz = (i + 1) * s.thread.P * f.scale;
    return `<path class="ramp-line other" d="M${px(toe)} ${px(f.floor - dz)}L${px(heel)} ${px(peak - dz)}"/>`;
  }).join('');
  const size = (value: number) => show(value, { shown: 'size', digits: 4 }, view);
  const top = f.floor - f.length * f.scale - 14;
  return (
    `<svg class="ramp-view" viewBox="0 ${px(top)} ${WIDTH} ${px(HEIGHT - top)}" role="img" aria-label="${WORDS.drawing(s.thread.designation)}">${arrowheads('ramp-head')}` +
    `<path class="part turned solid" d="${polyline(right)}${polyline([...left].reverse()).replace('M', 'L')}Z"/><path class="crests" d="${crests}"/>` +
    `<path class="axis" d="M${px(f.axis)} ${px(top + 2)}V${HEIGHT - 4}"/>` +
    `${starts}<path class="ramp-fill" d="M${px(toe)} ${px(f.floor)}L${px(heel)} ${px(f.floor)}L${px(heel)} ${px(peak)}Z"/>` +
    `<path class="ramp-line" d="M${px(toe)} ${px(f.floor)}L${px(heel)} ${px(peak)}"/>` +
    `<g class="dimension" data-sym="C_2"><path class="arrow" d="M${px(f.foot)} ${f.floor + 4}v12M${px(f.foot + s.round * f.scale)} ${f.floor + 4}v12"/>${dimensionLine([f.foot, f.floor + 11], [f.foot + s.round * f.scale, f.floor + 11], 'ramp-head')}<text x="${px(f.foot + (s.round * f.scale) / 2)}" y="${f.floor + 13}" dy="1em" text-anchor="middle">${WORDS.onceRound(size(s.round))}</text></g>` +
    `<g class="dimension" data-sym="L">${leadMark(heel, f, s, size(s.thread.L))}</g>` +
    `<text data-sym="lambda" x="${px((toe + heel) / 2)}" y="${px(Math.min(peak, f.floor - 14) - 12 - (s.thread.N - 1) * s.thread.P * f.scale)}" text-anchor="middle">${WORDS.leadAngle(`${numeral((s.lambda * 180) / Math.PI, 3)}°`)}</text>` +
    `<path class="join" data-join d="${joinPath(w)}"/><circle class="walker" data-walk="cylinder" r="6" cx="${px(w.cylinder[0])}" cy="${px(w.cylinder[1])}"/><circle class="walker" data-walk="ramp" r="6" cx="${px(w.ramp[0])}" cy="${px(w.ramp[1])}"/></svg>` +
    `<div class="ramp-side">${knobSvg(s.n, 'knob', STEPS, WORDS.knob)}</div>`
  );
};

const leadMark = (heel: number, f: Frame, s: State, text: string): string => {
  const right = s.thread.h === 1;
  const x = heel + (right ? 12 : -12);
  const peak = f.floor - s.thread.L * f.scale;
  // Both unit systems at once take two lines, and so does a language with a long word for it.
  const lines = WORDS.lead(text).split(/\n| (?=\()/);
  const at = px(x + (right ? 8 : -8));
  const spans = lines.map((t, i) => `<tspan x="${at}" dy="${i === 0 ? 0 : '1.2em'}">${t}</tspan>`).join('');
  return `<path class="arrow" d="M${px(x - 6)} ${f.floor}h12M${px(x - 6)} ${px(peak)}h12"/>${dimensionLine([x, f.floor], [x, peak], 'ramp-head')}<text y="${px((f.floor + peak) / 2 + 5 - (lines.length - 1) * 9)}" text-anchor="${right ? 'start' : 'end'}">${spans}</text>`;
};

const joinPath = (w: ReturnType<typeof walk>): string => `M${px(w.cylinder[0])} ${px(w.cylinder[1])}H${px(w.ramp[0])}`;

const readout = (s: State): Row[] => [
  ['angle', WORDS.readout.angle, show(s.theta, { shown: 'degrees' }, 'metric')],
  ['turned', WORDS.readout.turns, numeral(s.n)],
  signedAmount('carried', WORDS.readout.motion, s.z, 'motion', 4),
];

export const ramp = defineFigure({
  name: 'ramp',
  title: WORDS.title,
  threads: ['thread'],
  quantities: ['theta'],
  chief: ['theta', 'thread'],
  state: stateOf,
  draw,
  rows: readout,
  caption: ({ thread, theta, z }, view) => {
    const size = (v: number) => show(v, { shown: 'size' }, view);
    return WORDS.caption({
      thread: thread.designation,
      rightHand: thread.h === 1,
      starts: thread.N,
      pitch: size(thread.P),
      lead: size(thread.L),
      angle: show(theta, { shown: 'degrees' }, view),
      motion: show(Math.abs(z), { shown: 'motion', digits: 4 }, view),
      way: Math.sign(z),
    });
  },
  table: ({ thread }, view) => {
    const rows = [1, 5, 15, 30, 60, 90, 180, 360].map((degrees) => {
      const at = motionAt(thread, (degrees * Math.PI) / 180);
      return at.ok
        ? [`${degrees}°`, numeral(at.value.n), show(at.value.z, { shown: 'motion', digits: 4 }, view)]
        : [`${degrees}°`, '', reasonOf(at)];
    });
    return { head: WORDS.head, rows };
  },
  renderKey: ({ thread }) => thread,
  mount: (stage, context) =>
    mountKnob(stage, {
      read: () => context.numbers().values.theta / (2 * Math.PI),
      write: (n) => context.set('theta', turns(n) * 2 * Math.PI),
      steps: () => STEPS,
    }),
  update: (stage, s) => {
    const w = walk(s, frameOf(s));
    for (const key of ['cylinder', 'ramp'] as const) {
      const dot = stage.querySelector(`[data-walk="${key}"]`);
      dot?.setAttribute('cx', px(w[key][0]));
      dot?.setAttribute('cy', px(w[key][1]));
      if (key === 'cylinder') dot?.classList.toggle('behind', w.behind);
    }
    stage.querySelector('[data-join]')?.setAttribute('d', joinPath(w));
    updateKnob(stage, s.n);
  },
});
