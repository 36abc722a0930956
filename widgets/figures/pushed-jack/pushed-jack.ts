/**
 * The jack as built, at rest at each place of its turning under its load and a push from the side: the parts as solids with their lean
 * and the path of the tip drawn too large, the path of the tip from above, and how far the height leaves that of the nominal net lead, with the push and without.
 */
import { type JointWords, WORDS } from '#words/figures/pushed-jack.ts';
import {
  heightsOff,
  idleOfJack,
  JACK_CHOICES,
  JACK_QUANTITIES,
  jackOf,
  pathOf,
  type Runs,
  reachOf,
  runsOf,
  whenRun,
} from '../../assembly/jack-of.ts';
import {
  at,
  gaugeOff,
  good,
  type Jack,
  type JointState,
  type Result,
  type Stand,
  type Thread,
  type WholeStiffness,
} from '../../engine/index.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { factorFor } from '../kit/factor.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { axisUnit, type Frame, legendItem, panelHtml, roundUp, xAt, yAt } from '../kit/plots/frame.ts';
import { amount, type Row } from '../kit/readout.ts';
import { type Point, polyline, px } from '../kit/svg.ts';

const QUANTITIES = [...JACK_QUANTITIES, 'n_o', 'a_o'] as const;
const CHOICES = [...JACK_CHOICES, 'turning'] as const;
type Given = NumbersOf<'A' | 'C', (typeof QUANTITIES)[number], (typeof CHOICES)[number], never>;

interface Done {
  readonly at: 'end';
  readonly key: string;
  readonly jack: Jack;
  readonly runs: Runs;
  readonly d: { readonly A: number; readonly C: number };
  readonly nested: boolean;
  readonly over: number;
  /** Sideways shift of the tip by the push at the start, width of the path, most that the height is off; mm. */
  readonly moves: number;
  readonly round: number;
  readonly off: number;
  /** Most that a gauge beside the axis, along the push, is off by the lean; mm. */
  readonly gauge: number;
  readonly whole: WholeStiffness | undefined;
}
type State = Done | { readonly at: 'work'; readonly key: string; readonly over: number };

const stateOf = (numbers: Given): Result<State> => {
  const jack = jackOf(numbers);
  if (!jack.ok) return jack;
  const over = numbers.values.n_o;
  const found = runsOf(jack.value, over, numbers.choices.turning === 'there and back');
  if (!found.ok) return found;
  if (found.value.at === 'work') return good({ at: 'work', key: found.value.key, over });
  const { runs } = found.value;
  return good({
    at: 'end',
    key: runs.key,
    jack: runs.jack,
    runs,
    d: { A: dOf(numbers.threads.A), C: dOf(numbers.threads.C) },
    nested: numbers.choices.arrangement === 'nested',
    over: runs.over,
    ...pathOf(runs),
    gauge: gaugeOff(runs.pushed, numbers.values.a_o),
    whole: runs.whole,
  });
};

const dOf = (thread: Thread): number => thread.d;

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 3 }, view);
const force = (F: number, view: UnitView): string => show(F, { shown: 'force', digits: 3 }, view);
const turnsText = (n: number): string => show(n, { shown: 'turns', digits: 3 }, 'metric');

const touchesOf = ({ pressed, pulled }: JointState): JointWords['touches'] =>
  pressed > 0 && pulled > 0
    ? 'both flanks'
    : pulled > 0
      ? 'pulled flank'
      : pressed === 1
        ? 'everywhere'
        : pressed > 0
          ? 'in places'
          : 'nowhere';

/** By how much lean and path are drawn too large. */
const leanOf = (s: Done): number => factorFor(Math.max(reachOf(s.runs.pushed), 1e-6), 0.16 * s.jack.tip);

const WIDE = 240;
const HIGH = 250;
const SIDE = 105;

/** Looked at from so far above, as the solid is. */
const [FLAT, UPRIGHT] = [Math.sin(Math.PI / 9), Math.cos(Math.PI / 9)];

/** Where an axis is at a height: across, and away from the reader, mm. */
type Axis = (z: number) => Point;

const solid = (s: Done): string => {
  const { jack } = s;
  const { A, C, guide } = jack;
  const last = at(s.runs.pushed, s.runs.pushed.length - 1);
  const wide = Math.max(s.d.A, s.d.C) * (s.nested ? 0.75 : 0.95);
  const foot = wide + 3;
  const scale = (HIGH - 44) / (jack.tip * UPRIGHT + foot * FLAT);
  const lean = leanOf(s);
  const place = (x: number, away: number, z: number): Point => [
    WIDE / 2 + x * scale,
    HIGH - 16 - (foot * FLAT + z * UPRIGHT + away * FLAT) * scale,
  ];
  /** A round body from one height to another about an axis that leans: its outline, and the edge of its top. */
  const round = (part: string, half: number, low: number, high: number, axis: Axis): string => {
    const [rx, ry] = [half * scale, half * FLAT * scale];
    const end = (z: number) => {
      const [x, away] = axis(z);
      const [cx, cy] = place(lean * x, lean * away, z);
      return { left: `${px(cx - rx)} ${px(cy)}`, right: `${px(cx + rx)} ${px(cy)}` };
    };
    const [foot, top] = [end(low), end(high)];
    const arc = `A${px(rx)} ${px(ry)} 0 0 0 `;
    return (
      `<path class="part solid ${part}" d="M${top.left}L${foot.left}${arc}${foot.right}L${top.right}${arc}${top.left}Z"/>` +
      `<path class="edge" d="M${top.left}${arc}${top.right}"/>`
    );
  };
  const still: Axis = () => [0, 0];
  const turned: Axis = (z) => [last.turnedX + last.turnedTilt * z, 0];
  const carried: Axis = (z) => [last.x - last.tiltY * (jack.tip - z), last.y + last.tiltX * (jack.tip - z)];
  const top = A.middle + A.engaged / 2;
  const capLow = C.middle - C.engaged / 2;
  const parts = s.nested
    ? round('turned', s.d.A / 2, top, C.middle + C.engaged / 2, turned) +
      round('carried', s.d.C / 2, C.middle + C.engaged / 2, jack.tip, carried)
    : round('turned', s.d.A / 2, top, Math.max(top, capLow), turned) +
      round('carried', wide, capLow, jack.tip, carried);
  const rails = guide
    ? [-1, 1]
        .map((side) => {
          const [near, far] = [side * (wide + 1), side * (wide + 5)].map((x) => place(x, 0, 0)[0]) as [number, number];
          const [low, high] = [-1, 1].map((end) => place(0, 0, guide.middle + (end * guide.length) / 2)[1]) as [
            number,
            number,
          ];
          return `<path class="part guide" d="M${px(near)} ${px(low)}H${px(far)}V${px(high)}H${px(near)}Z"/>`;
        })
        .join('')
    : '';
  const risen = heightsOff(s.runs.pushed);
  const path = polyline(s.runs.pushed.map((p, i) => place(lean * p.x, lean * p.y, jack.tip + lean * at(risen, i))));
  const [endX, endY] = place(lean * last.x, lean * last.y, jack.tip + lean * at(risen, s.runs.pushed.length - 1));
  return (
    `<svg class="jack-side" viewBox="0 0 ${WIDE} ${HIGH}" role="img" aria-label="${WORDS.elevation(numeral(lean))}">` +
    `${round('base', foot, 0, top, still)}<path class="axis" d="M${WIDE / 2} ${HIGH - 4}V4"/>${rails}${parts}` +
    `<path class="tip-path" d="${path}"/><circle class="mark tip-now" r="3" cx="${px(endX)}" cy="${px(endY)}"/></svg>`
  );
};

/** A round length that is a good part of the plan. */
const barOf = (factor: number, view: UnitView): { readonly length: number; readonly words: string } => {
  const unit = axisUnit(60 / factor, view);
  const length = roundUp(40 / factor, unit);
  return { length, words: show(length, { shown: 'motion' }, view) };
};

const plan = (s: Done, view: UnitView): string => {
  const all = [...s.runs.pushed, ...s.runs.quiet];
  const far = Math.max(...all.map((p) => Math.hypot(p.x, p.y)), 1e-7);
  const factor = 80 / far;
  const curve = (run: readonly Stand[]) => polyline(run.map((p): Point => [p.x * factor, -p.y * factor]));
  const first = at(s.runs.pushed, 0);
  const bar = barOf(factor, view);
  return (
    `<svg class="jack-plan" viewBox="-${SIDE} -${SIDE} ${2 * SIDE} ${2 * SIDE + 25}" role="img" aria-label="${WORDS.plan(magnified(s))}">` +
    `<path class="axis" d="M-${SIDE - 5} 0H${SIDE - 5}M0 -${SIDE - 5}V${SIDE - 5}"/>` +
    `<path class="curve base" stroke-dasharray="7 4" data-path="quiet" d="${curve(s.runs.quiet)}"/><path class="curve carried" data-path="pushed" d="${curve(s.runs.pushed)}"/>` +
    `<circle class="mark carried" r="3" cx="${px(first.x * factor)}" cy="${px(-first.y * factor)}"/>` +
    `<path class="scale-bar" data-bar="${px(bar.length * factor)}" d="M-${SIDE - 8} ${SIDE + 12}h${px(bar.length * factor)}m0 -4v8m${px(-bar.length * factor)} 0v-8"/><text x="${px(bar.length * factor - SIDE + 16)}" y="${SIDE + 16}">${WORDS.bar(bar.words)}</text></svg>`
  );
};

/** A unit of the plan is about a millimetre on paper, at a quarter of its width. */
const magnified = (s: Done): string => {
  const far = Math.max(...[...s.runs.pushed, ...s.runs.quiet].map((p) => Math.hypot(p.x, p.y)), 1e-7);
  return numeral(Number((20 / far).toPrecision(2)));
};

const DASH = '7 4';

const frameOf = (s: Done, view: UnitView): Frame => {
  const values = [...heightsOff(s.runs.pushed), ...heightsOff(s.runs.quiet)];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const unit = axisUnit(Math.max(high, -low, 1e-6), view);
  const shallow = 0.1 * roundUp(Math.max(high, -low, 1e-6), unit);
  return {
    x: [0, s.over],
    y: [low < -shallow ? -roundUp(-low, unit) : -shallow, high > shallow ? roundUp(high, unit) : shallow],
    unit,
  };
};

const draw = (s: State, view: UnitView): string => {
  if (s.at === 'work')
    return `<p class="line" role="status">${WORDS.working}</p><svg viewBox="0 0 400 20" aria-hidden="true" data-working><rect class="jack-share" data-share="0" x="0" y="4" width="0" height="12"/><rect class="jack-whole" x="0" y="4" width="400" height="12"/></svg>`;
  const frame = frameOf(s, view);
  const curve = (run: readonly Stand[]) =>
    polyline(heightsOff(run).map((z, i): Point => [xAt(frame, at(run, i).n), yAt(frame, z)]));
  const leanFactor = numeral(leanOf(s));
  return (
    `<div class="pushed-jack-view"><div class="jack-pictures"><div>${solid(s)}<p class="x-name">${WORDS.drawn.lean(leanFactor)}</p></div><div>${plan(s, view)}<p class="x-name">${WORDS.drawn.path(magnified(s))}</p></div></div>` +
    `<div class="jack-height"><ul class="legend">${legendItem('carried', undefined, WORDS.legend.pushed)}${legendItem('base', DASH, WORDS.legend.quiet)}</ul>` +
    panelHtml(
      frame,
      WORDS.panel,
      5,
      `<path class="curve base" data-shape="quiet" stroke-dasharray="${DASH}" d="${curve(s.runs.quiet)}"/><path class="curve carried" data-shape="pushed" d="${curve(s.runs.pushed)}"/>`,
    ) +
    '</div></div>'
  );
};

/** The joints at the place of the run where most of them lift. */
const worstJoints = (run: readonly Stand[]): readonly JointState[] => {
  const first = at(run, 0);
  return first.joints.map((joint, i) =>
    run.reduce((worst: JointState, stand) => {
      const here = at(stand.joints, i);
      return here.pressed - here.pulled < worst.pressed - worst.pulled ? here : worst;
    }, joint),
  );
};

const rows = (s: State): Row[] => {
  if (s.at === 'work') return [];
  const torque = s.runs.pushed.reduce((sum, p) => sum + p.torque, 0) / s.runs.pushed.length;
  const twist = Math.max(...s.runs.pushed.map((p) => Math.abs(p.twist)));
  return [
    amount('moves', WORDS.readings.moves, s.moves, 'motion', 3),
    amount('round', WORDS.readings.round, s.round, 'motion', 3),
    amount('high', WORDS.readings.high, s.off, 'motion', 3),
    amount('torque', WORDS.readings.torque, torque, 'N·mm', 3),
    amount('lost', WORDS.readings.lost, twist, 'degrees', 3),
    amount('gauge', WORDS.readings.gauge, s.gauge, 'motion', 3),
    ...(s.whole
      ? [
          amount('stiffness', WORDS.readings.stiffness(s.whole.softest), s.whole.solved, 'N/µm', 3),
          amount('frequency', WORDS.readings.frequency, s.whole.frequency, 'Hz', 3),
        ]
      : []),
  ];
};

const readings = (s: State, view: UnitView): string => {
  if (s.at === 'work') return '';
  const rows = worstJoints(s.runs.pushed)
    .map(
      (j) =>
        `<tr><th scope="row">${WORDS.jointName(j.joint)}</th><td>${force(Number(j.axial.toFixed(3)), view)}</td><td>${force(Number(j.across.toFixed(3)), view)}</td><td>${WORDS.touches(touchesOf(j))}</td></tr>`,
    )
    .join('');
  return `<div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.joints.head[0]}"><table><thead><tr>${WORDS.joints.head.map((h) => `<th scope="col">${h}</th>`).join('')}</tr></thead><tbody>${rows}</tbody></table></div>`;
};

export const pushedJack = defineFigure({
  name: 'pushed-jack',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: CHOICES,
  chief: ['Q_y', 'y_b', 'F'],
  groups: {
    threads: ['A', 'C', 'arrangement'],
    lengths: ['l_eA', 'l_eC', 'H_A', 'H_C', 'H_t', 'R_o', 'R_i'],
    pieces: ['c_mA', 'c_mC', 't_z', 'e_o', 'alpha_o'],
    errors: ['eps_A', 'eps_nA', 'longer_A', 'eps_C', 'eps_nC', 'longer_C', 'a_s', 'a_n'],
    guide: ['guided', 'l_g', 'c_g', 'H_g'],
    spring: ['F_0', 'k_s'],
    lock: ['keeper', 'g_k', 'r_k', 'kappa'],
    friction: ['mu', 'mu_g'],
    tip: ['R', 'a_o'],
    turns: ['turning', 'n_o'],
  },
  idle: idleOfJack,
  state: stateOf,
  draw,
  rows,
  readings,
  caption: (s, view) => {
    if (s.at === 'work') return WORDS.workingCaption(turnsText(s.over));
    return WORDS.caption({
      push: force(s.jack.push, view),
      height: show(s.jack.pushHeight, { shown: 'size', digits: 3 }, view),
      load: force(s.jack.load, view),
      turns: turnsText(s.over),
      moves: motion(s.moves, view),
      round: motion(s.round, view),
      off: motion(s.off, view),
      joints: worstJoints(s.runs.pushed)
        .filter(({ joint }) => joint === 'A' || joint === 'C')
        .map((j) => WORDS.joint({ joint: j.joint, touches: touchesOf(j) }))
        .join(', '),
    });
  },
  table: (s, view) => {
    if (s.at === 'work') return WORDS.noneYet;
    const z = heightsOff(s.runs.pushed);
    const every = Math.max(1, Math.round(s.runs.pushed.length / 24));
    return {
      head: WORDS.head,
      rows: s.runs.pushed.flatMap((p, i) =>
        i % every === 0
          ? [
              [
                numeral(Number(p.n.toFixed(4))),
                motion(p.x, view),
                motion(p.y, view),
                motion(at(z, i), view),
                show(Math.hypot(p.tiltX, p.tiltY), { shown: 'degrees', digits: 3 }, 'metric'),
                show(p.torque, { shown: 'N·mm', digits: 3 }, 'metric'),
              ],
            ]
          : [],
      ),
    };
  },
  renderKey: (s) => [s.at, s.key],
  mount: (stage, context) =>
    whenRun(stage, {
      redraw: context.redraw,
      progress: (share) => stage.querySelector('.jack-share')?.setAttribute('width', px(400 * share)),
    }),
});
