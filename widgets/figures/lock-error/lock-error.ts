/**
 * What the lock lets through: a plan of the key in its slot, and what its gap and its give move the tip by, measured in steps of
 * the head. Thread C hands the carried part its whole torque, and the tip moves by the whole lead of thread C.
 */

import { WORDS } from '#words/figures/lock-error.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import {
  diameters,
  good,
  type LockError,
  lockError,
  lockSlop,
  lockSlopMotion,
  mm,
  pairEffort,
  perStep,
  plain,
  type Result,
  type Thread,
} from '../../engine/index.ts';
import { dividerOf, stepName } from '../../input/dividers.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount } from '../kit/readout.ts';
import { arrowheads, px } from '../kit/svg.ts';
import { roundTicks } from '../kit/ticks.ts';

interface State {
  readonly A: Thread;
  readonly C: Thread;
  readonly F: number;
  readonly kappa: number;
  readonly gap: number;
  readonly radius: number;
  /** Torque handed to the carried part, turning clockwise and anticlockwise, positive anticlockwise, N·mm. */
  readonly clockwise: number;
  readonly anticlockwise: number;
  readonly Delta: number;
  /** Steps in a turn of the head, and the motion of one, mm. */
  readonly k: number;
  readonly perStep: number;
  readonly error: LockError;
  /** Motion of the tip by slack, by wind-up, and both as reversal shows them, mm. */
  readonly slack: number;
  readonly slackAngle: number;
  readonly wind: number;
  readonly crosses: boolean;
}

const QUANTITIES = ['F', 'mu', 'g_k', 'r_k', 'kappa', 'k'] as const;

const stateOf = (numbers: NumbersOf<'A' | 'C', (typeof QUANTITIES)[number], never, never>): Result<State> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { A, C, Delta } = pair.value;
  const { F, mu, g_k, r_k, kappa, k } = numbers.values;
  const effort = pairEffort({
    A: { h: A.h, L: A.L, d2: diameters(A).d2, mu },
    C: { h: C.h, L: C.L, d2: diameters(C).d2, mu },
    load: F,
  });
  if (!effort.ok) return effort;
  const { against, along } = effort.value;
  const [cw, acw] = against.sense === 1 ? [against, along] : [along, against];
  const step = perStep.of({ Delta, k: plain(k) });
  if (!step.ok) return step;
  const given = { L_C: C.L, h_C: C.h, Delta, clockwise: cw.handed, anticlockwise: acw.handed, kappa, radius: r_k };
  const error = lockError({ ...given, gap: g_k });
  if (!error.ok) return error;
  // The same lock without a gap is its give alone.
  const stiff = lockError({ ...given, gap: 0 });
  if (!stiff.ok) return stiff;
  const motion = lockSlopMotion.of({ L_C: C.L, g_k: mm(g_k), r_k: mm(r_k) });
  if (!motion.ok) return motion;
  const angle = lockSlop.of({ g_k: mm(g_k), r_k: mm(r_k) });
  if (!angle.ok) return angle;
  const crosses = cw.handed * acw.handed < 0;
  return good({
    A,
    C,
    F,
    kappa,
    gap: g_k,
    radius: r_k,
    clockwise: cw.handed,
    anticlockwise: acw.handed,
    Delta,
    k,
    perStep: step.value.s,
    error: error.value,
    slack: crosses ? motion.value.z_k : 0,
    slackAngle: angle.value.psi,
    wind: stiff.value.shift,
    crosses,
  });
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 3 }, view);
const stepOf = (s: State): string => stepName(dividerOf(s.k));
const inSteps = (s: State, z: number): string => WORDS.steps(numeral(z / s.perStep, 3), stepOf(s));
const both = (s: State, z: number, view: UnitView): string => `${motion(z, view)}, ${inSteps(s, z)}`;
const torque = (M: number): string => show(M, { shown: 'N·mm', digits: 3 }, 'metric');
const angleText = (psi: number): string => show(psi, { shown: 'degrees', digits: 3 }, 'metric');

// Plan, from above: the angle is drawn at most 16° either side, so that it can be seen.
const R = 78;
const SEEN = 16;
const planSvg = (s: State): string => {
  const slot = 0.34;
  const swing = s.error.swing;
  const share = swing > 0 ? (s.crosses ? s.slackAngle / swing : 0) : 0;
  const key = 11;
  const open = key + 16 * (s.crosses && share > 0 ? Math.max(0.25, share) : 0);
  const ray = (degrees: number, r: number): string => {
    const a = ((degrees - 90) * Math.PI) / 180;
    return `${px(r * Math.cos(a))} ${px(r * Math.sin(a))}`;
  };
  return (
    `<svg class="lock-plan" viewBox="-120 -136 240 236" role="img" aria-label="${WORDS.plan}">${arrowheads('lock-head')}` +
    `<path class="part base" d="M-60 -130H-${open}V-${R + 4}H-60ZM60 -130H${open}V-${R + 4}H60Z"/>` +
    `<circle class="part carried solid" r="${R}"/><path class="part carried solid" d="M-${key} -${R - 3}V-122H${key}V-${R - 3}"/>` +
    `<circle class="part turned solid" r="${R * slot}"/><path class="swing-line" d="M0 0L${ray(-SEEN, R - 8)}M0 0L${ray(SEEN, R - 8)}"/>` +
    `<path class="arrow swing-arc" marker-start="url(#lock-head)" marker-end="url(#lock-head)" d="M${ray(-SEEN, R - 22)}A${R - 22} ${R - 22} 0 0 1 ${ray(SEEN, R - 22)}"/>` +
    `<text x="0" y="${R + 17}" text-anchor="middle">${WORDS.swings(angleText(swing))}</text><text class="figure-note" x="66" y="-112">${WORDS.base}</text></svg>`
  );
};

const WIDTH = 640;
const LEFT = 4;
const RIGHT = 620;

const bold = (text: string): string => `<b>${text}</b>`;

const draw = (s: State, view: UnitView): string => {
  const total = s.error.shift;
  // The ruler is a whole step at least, so that a small error looks small.
  const most = Math.max(1, total / s.perStep);
  const x = (z: number) => LEFT + ((RIGHT - LEFT) * z) / s.perStep / most;
  const bar = (kind: string, from: number, length: number, words: string) =>
    `<p class="line">${words}</p><svg class="lock-bar ${kind}" viewBox="0 0 ${WIDTH} 20" preserveAspectRatio="none" aria-hidden="true"><rect data-bar="${kind}" x="${px(x(from))}" y="3" width="${px(Math.max(1.5, x(length) - LEFT))}" height="14"/></svg>`;
  const ruler = roundTicks(0, most, 8)
    .map(
      (f) =>
        `<path class="tick" d="M${px(x(f * s.perStep))} 2v8"/><text x="${px(x(f * s.perStep))}" y="26" text-anchor="${f === 0 ? 'start' : 'middle'}">${numeral(Number(f.toPrecision(6)))}</text>`,
    )
    .join('');
  const slackWords = s.crosses ? WORDS.slack(bold(both(s, s.slack, view))) : WORDS.notCrossed(bold);
  return (
    `<div class="lock-side">${planSvg(s)}</div><div class="lock-view">` +
    `<p class="line">${WORDS.torques(bold(torque(Math.abs(s.clockwise))), bold(torque(Math.abs(s.anticlockwise))))}</p>` +
    bar('slack', 0, s.slack, slackWords) +
    bar('wind', s.slack, s.wind, WORDS.wind(bold(both(s, s.wind, view)))) +
    bar('all', 0, total, WORDS.lost(bold(both(s, total, view)))) +
    `<svg class="lock-ruler" viewBox="0 0 ${WIDTH} 36" role="img" aria-label="${WORDS.ruler(stepOf(s))}"><path class="tick" d="M${LEFT} 2H${RIGHT}"/>${ruler}</svg>` +
    `<p class="x-name">${WORDS.stepsEach(motion(s.perStep, view), stepOf(s))}</p></div>`
  );
};

export const lockErrorFigure = defineFigure({
  name: 'lock-error',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  chief: ['g_k', 'kappa', 'F'],
  groups: { threads: ['A', 'C'], lock: ['r_k'], head: ['k'], friction: ['mu'] },
  decidedBy: ['F', 'g_k', 'r_k', 'kappa', 'k'],
  state: stateOf,
  draw,
  rows: (s) => [
    amount('lost', WORDS.rows.lost, s.error.shift, 'motion', 3),
    amount('gap', WORDS.rows.gap, s.slack, 'motion', 3),
    amount('wind', WORDS.windUp, s.wind, 'motion', 3),
    amount('swing', WORDS.swing, s.error.swing, 'degrees', 3),
  ],
  caption: (s, view) =>
    WORDS.caption({
      A: s.A.designation,
      C: s.C.designation,
      force: show(s.F, { shown: 'force', digits: 3 }, view),
      swing: angleText(s.error.swing),
      slack: s.crosses ? motion(s.slack, view) : undefined,
      wind: motion(s.wind, view),
      all: both(s, s.error.shift, view),
      perStep: motion(s.perStep, view),
    }),
  table: (s, view) => {
    const row = (name: string, M: string, z: number) => [name, M, motion(z, view), inSteps(s, z)];
    return {
      head: WORDS.head(stepOf(s)),
      rows: [
        row(WORDS.rows.clockwise, torque(s.clockwise), s.error.clockwise),
        row(WORDS.rows.anticlockwise, torque(s.anticlockwise), s.error.anticlockwise),
        row(WORDS.rows.gap, '–', s.slack),
        row(WORDS.rows.lost, '–', s.error.shift),
      ],
    };
  },
});
