/**
 * What the hand does: the force at the rim of the knob or the end of the key, from above and to scale, and the
 * smallest motion it can make, which is the larger of what the hand can set again and of the jump when a thread that
 * sticks lets go.
 */

import { WORDS } from '#words/figures/hand-force.ts';
import { type EffortState, effortState, forceText, senseText, torqueText } from '../../assembly/effort-of.ts';
import {
  bad,
  good,
  handForce,
  mm,
  newtonMillimetres,
  perAngle,
  perStep,
  plain,
  type Result,
  rad,
  stepsFor,
  stickSlip,
  type TurningEffort,
} from '../../engine/index.ts';
import { type Divider, stepName, stepsOf } from '../../input/dividers.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount, type Row } from '../kit/readout.ts';
import { arrowheads, dimensionLine, px } from '../kit/svg.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'holding-below-sliding': { readonly holds: string; readonly slides: string };
  }
}

const SPAN = 96;
/** Corner of a hexagon over major diameter, as of a usual nut (M12: 18 mm across flats). */
const HEAD = 0.87;
const BAR = 638;

interface Way {
  readonly turning: TurningEffort;
  readonly starts: number;
  readonly keeps: number;
  readonly startForce: number;
  readonly keepForce: number;
  readonly jumpAngle: number;
  readonly jump: number;
}

interface State {
  readonly effort: EffortState;
  readonly stuck: EffortState;
  readonly divider: Divider;
  readonly radius: number;
  readonly theta: number;
  readonly flat: number;
  readonly hand: number;
  readonly handFlats: number;
  readonly jumpFlats: number;
  readonly raise: Way;
  readonly lower: Way;
}

const wayOf = (
  moving: TurningEffort,
  stuck: TurningEffort,
  Delta: number,
  radius: number,
  kappa: number,
): Result<Way> => {
  const keep = handForce.of({ M: newtonMillimetres(moving.torque), r_h: mm(radius) });
  if (!keep.ok) return keep;
  const start = handForce.of({ M: newtonMillimetres(stuck.torque), r_h: mm(radius) });
  if (!start.ok) return start;
  // Where the load drives the part there is no torque of the hand to build up, and nothing sticks.
  const jump = stickSlip.of({
    M_s: newtonMillimetres(Math.max(0, stuck.torque)),
    M_k: newtonMillimetres(Math.max(0, moving.torque)),
    kappa_d: newtonMillimetres(kappa),
    Delta: mm(Delta),
  });
  if (!jump.ok) return jump;
  return good({
    turning: moving,
    starts: stuck.torque,
    keeps: moving.torque,
    startForce: start.value.F_h,
    keepForce: keep.value.F_h,
    jumpAngle: jump.value.theta_j,
    jump: jump.value.s_j,
  });
};

const QUANTITIES = ['F', 'mu', 'mu_s', 'r_h', 'theta_h', 'kappa_d', 'k_d'] as const;

const stateOf = ({
  threads,
  values,
  choices: { divider },
}: NumbersOf<'A' | 'C', (typeof QUANTITIES)[number], 'divider', never>): Result<State> => {
  const { F, mu, mu_s, r_h, theta_h: theta, kappa_d, k_d } = values;
  // Here nothing rubs besides the threads.
  const effortWith = (friction: number) =>
    effortState({ threads, values: { F, mu: friction, d_b: 0, mu_g: 0, r_k: 1 }, choices: { rubs: 'nothing' } });
  const effort = effortWith(mu);
  if (!effort.ok) return effort;
  if (!(mu_s >= mu)) return bad('holding-below-sliding', { holds: numeral(mu_s), slides: numeral(mu) }, 'mu_s');
  const stuck = effortWith(mu_s);
  if (!stuck.ok) return stuck;
  const { pair } = effort.value;
  const Delta = mm(pair.Delta);
  const flat = perStep.of({ Delta, k: plain(stepsOf(divider, k_d)) });
  if (!flat.ok) return flat;
  const hand = perAngle.of({ Delta, theta: rad(theta) });
  if (!hand.ok) return hand;
  const raise = wayOf(pair.against, stuck.value.pair.against, pair.Delta, r_h, kappa_d);
  if (!raise.ok) return raise;
  const lower = wayOf(pair.along, stuck.value.pair.along, pair.Delta, r_h, kappa_d);
  if (!lower.ok) return lower;
  const { s } = flat.value;
  const handFlats = stepsFor.of({ w: mm(hand.value.s), s });
  if (!handFlats.ok) return handFlats;
  const jumpFlats = stepsFor.of({ w: mm(raise.value.jump), s });
  if (!jumpFlats.ok) return jumpFlats;
  return good({
    effort: effort.value,
    stuck: stuck.value,
    divider,
    radius: r_h,
    theta,
    flat: s,
    hand: hand.value.s,
    handFlats: handFlats.value.m,
    jumpFlats: jumpFlats.value.m,
    raise: raise.value,
    lower: lower.value,
  });
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 3 }, view);
const bold = (text: string): string => `<b>${text}</b>`;
const degrees = (a: number, view: UnitView): string => show(a, { shown: 'degrees', digits: 3 }, view);

/** The head, lever and forces from above, to scale of the radius. */
const plan = (s: State, view: UnitView): string => {
  const d = s.effort.A.d;
  const scale = SPAN / Math.max(s.radius, d);
  const R = s.radius * scale;
  const corner = Math.min(HEAD * d * scale, SPAN);
  const up = s.raise.turning.sense === -1;
  const knob = s.divider === 'knob';
  const sides = s.divider === 'square' ? 4 : s.divider === 'hexagon' ? 6 : 12;
  const head = knob
    ? `<circle class="head" r="${px(R)}"/><circle class="thread-circle" r="${px((d / 2) * scale)}"/>`
    : `<path class="lever" d="M0 0H${px(R)}"/><path class="head" d="M${Array.from({ length: sides }, (_, i) => {
        const a = (2 * Math.PI * i) / sides;
        return `${px(corner * Math.cos(a))} ${px(corner * Math.sin(a))}`;
      }).join('L')}Z"/><circle class="thread-circle" r="${px((d / 2) * scale)}"/>`;
  const tip = up ? -64 : 64;
  const arrow = `<path class="arrow strong force" marker-end="url(#hand-head)" d="M${px(R)} 0V${tip}"/>`;
  const radius = `<path class="arrow" d="M0 ${up ? 4 : -24}v20M${px(R)} ${up ? 4 : -24}v20"/>${dimensionLine([0, up ? 18 : -18], [R, up ? 18 : -18], 'hand-head')}`;
  const text = `<text x="${px(R + 4)}" y="${up ? -74 : 86}" text-anchor="end">${forceText(s.raise.keepForce, view)}</text><text x="${px(R - 8)}" y="${up ? 37 : -27}" text-anchor="end">${show(s.radius, { shown: 'size', digits: 3 }, view === 'both' ? 'metric' : view)}</text>`;
  const label = WORDS.plan({
    force: forceText(s.raise.keepForce, view),
    radius: show(s.radius, { shown: 'size', digits: 3 }, view),
    sense: senseText(s.raise.turning.sense),
  });
  return `<svg class="plan" viewBox="-112 -100 224 200" role="img" aria-label="${label}">${arrowheads('hand-head', 'strong')}${head}${radius}${arrow}<circle class="hub" r="3"/>${text}</svg>`;
};

const bars = (s: State, view: UnitView): string => {
  const longest = Math.max(s.flat, s.hand, s.raise.jump, 1e-9);
  const bar = (kind: string, symbol: string, text: string, length: number): string =>
    `<p class="line" data-sym="${symbol}">${text}</p><svg class="eaten ${kind}" viewBox="0 0 640 16" preserveAspectRatio="none" aria-hidden="true"><rect class="uses" x="1" y="2" width="${px(Math.max(1.5, (BAR * length) / longest))}" height="12"/></svg>`;
  const step = stepName(s.divider);
  const hand = WORDS.bars.hand({
    angle: degrees(s.theta, view),
    motion: bold(motion(s.hand, view)),
    share: numeral(s.handFlats, 2),
    step,
  });
  const jump = WORDS.bars.jump({
    angle: degrees(s.raise.jumpAngle, view),
    motion: bold(motion(s.raise.jump, view)),
    share: numeral(s.jumpFlats, 2),
    step,
  });
  return (
    `<div class="hand-bars">${bar('wanted', 's', WORDS.bars.step(step, bold(motion(s.flat, view))), s.flat)}` +
    `${bar('carried', 'theta_h', hand, s.hand)}` +
    `${bar('turned', 's_j', jump, s.raise.jump)}</div>`
  );
};

const draw = (s: State, view: UnitView): string =>
  `<div class="hand-plan">${plan(s, view)}<p class="line">${WORDS.forces(bold(forceText(s.raise.startForce, view)), `<b data-sym="F_h">${forceText(s.raise.keepForce, view)}</b>`)}</p></div>${bars(s, view)}`;

export const handForceFigure = defineFigure({
  name: 'hand-force',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: ['divider'],
  chief: ['mu', 'mu_s', 'kappa_d'],
  groups: { threads: ['A', 'C'], load: ['F'], hand: ['r_h', 'theta_h'], head: ['divider', 'k_d'] },
  idle: ({ choices }) => (choices.divider === 'knob' ? [] : ['k_d']),
  state: stateOf,
  draw,
  rows: (s) => [
    ...(['raise', 'lower'] as const).flatMap((way): Row[] => {
      const { turning, startForce, keepForce, jump } = s[way];
      const name = (way === 'raise' ? WORDS.raising : WORDS.lowering)(senseText(turning.sense));
      return [
        amount(`${way}-start`, WORDS.toStart(name), startForce, 'force', 4),
        amount(`${way}-keep`, WORDS.toKeep(name), keepForce, 'force', 4),
        amount(`${way}-jump`, WORDS.jump(name), jump, 'motion', 4),
      ];
    }),
    amount('hand', WORDS.byHand, s.hand, 'motion', 4),
    amount('flat', WORDS.perStep(stepName(s.divider)), s.flat, 'motion', 4),
  ],
  caption: (s, view) =>
    WORDS.caption({
      radius: show(s.radius, { shown: 'size', digits: 3 }, view),
      keep: forceText(s.raise.keepForce, view),
      start: forceText(s.raise.startForce, view),
      lower:
        s.lower.keeps > 0
          ? { force: forceText(s.lower.keepForce, view), holds: false }
          : { force: forceText(-s.lower.keepForce, view), holds: true },
      hand: motion(s.hand, view),
      jump: motion(s.raise.jump, view),
      decides: s.raise.jump > s.hand ? 'jump' : s.raise.jump > 0 ? 'hand' : 'hand alone',
    }),
  table: (s, view) => {
    const row = (named: (sense: string) => string, way: Way): string[] => [
      named(senseText(way.turning.sense)),
      torqueText(way.starts, view),
      torqueText(way.keeps, view),
      forceText(way.startForce, view),
      forceText(way.keepForce, view),
      degrees(way.jumpAngle, view),
      motion(way.jump, view),
    ];
    return {
      head: WORDS.head,
      rows: [row(WORDS.raising, s.raise), row(WORDS.lowering, s.lower)],
    };
  },
});
