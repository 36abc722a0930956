/**
 * One turn divided: the head from above with its flats, points or divisions, and the net lead laid out as that many steps
 * on a scale of µm and thou, with the smallest motion a hand can set again marked beside it.
 */

import { WORDS } from '#words/figures/divided-turn.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import {
  bad,
  good,
  type Millimetres,
  netMotion,
  perAngle,
  perStep,
  plain,
  type Result,
  rad,
  turns,
} from '../../engine/index.ts';
import { type Divider, stepName, stepsOf } from '../../input/dividers.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { knobSvg, mountKnob, updateKnob } from '../kit/knob.ts';
import { amount, signedAmount } from '../kit/readout.ts';
import { px } from '../kit/svg.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'nothing-to-divide': Readonly<Record<never, never>>;
  }
}

const WIDTH = 640;
const HEIGHT = 86;
const LEFT = 14;
const RIGHT = 626;
const LINE = 54;

interface State {
  readonly names: string;
  readonly n: number;
  readonly k: number;
  readonly divider: Divider;
  readonly theta: number;
  readonly Delta: Millimetres;
  readonly step: number;
  readonly hand: number;
  readonly motion: number;
}

type Asked = NumbersOf<'A' | 'C', 'n' | 'k_d' | 'theta_h', 'divider', never>;

const stateOf = (numbers: Asked): Result<State> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { A, C, Delta } = pair.value;
  const { n, theta_h: theta } = numbers.values;
  const { divider } = numbers.choices;
  const k = stepsIn(numbers);
  if (Delta === 0) return bad('nothing-to-divide', {});
  const step = perStep.of({ Delta, k: plain(k) });
  const hand = perAngle.of({ Delta, theta: rad(theta) });
  const motion = netMotion.of({ Delta, n: turns(n) });
  if (!step.ok) return step;
  if (!hand.ok) return hand;
  if (!motion.ok) return motion;
  return good({
    names: WORDS.pair(A.designation, C.designation),
    n,
    k,
    divider,
    theta,
    Delta,
    step: step.value.s,
    hand: hand.value.s,
    motion: motion.value.z_c,
  });
};

const stepsIn = ({ choices, values }: Asked): number => stepsOf(choices.divider, values.k_d);

const at = (s: State, motion: number): number => LEFT + ((RIGHT - LEFT) * motion) / Math.abs(s.Delta);

const draw = (s: State, view: UnitView): string => {
  const shown = s.k <= 120 ? s.k : 0;
  const steps = Array.from({ length: shown + 1 }, (_, i) => {
    const long = s.k <= 12 || i % 5 === 0;
    return `<path class="rung${long ? ' long' : ''}" d="M${px(at(s, i * s.step))} ${LINE - (long ? 22 : 14)}V${LINE}"/>`;
  }).join('');
  const labels =
    s.k <= 12
      ? Array.from(
          { length: s.k + 1 },
          (_, i) =>
            `<text class="count" x="${px(at(s, i * s.step))}" y="${LINE - 28}" text-anchor="middle">${i}</text>`,
        ).join('')
      : '';
  const handWidth = Math.max(1.5, at(s, s.hand) - LEFT);
  const step = stepName(s.divider);
  const bold = (z: number) => `<b>${motionText(z, view)}</b>`;
  return (
    `<div class="divided-side">${knobSvg(s.n, s.divider, s.k, WORDS.knob)}</div>` +
    `<div class="divided-view"><p class="line">${WORDS.oneTurn({ count: numeral(s.k), step, motion: bold(Math.abs(s.Delta)) })}</p>` +
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.label(s.k)}">` +
    `<path class="bar" data-sym="Delta" d="M${LEFT} ${LINE}H${RIGHT}"/>${steps}${labels}` +
    `<path class="one" data-sym="s" d="M${LEFT} ${LINE + 9}H${px(at(s, s.step))}"/><rect class="hand-band" data-sym="theta_h" x="${LEFT}" y="${LINE + 17}" width="${px(handWidth)}" height="12"/>` +
    `<path class="cursor" data-cursor d="${cursor(s)}"/></svg>` +
    `<ul class="keys"><li data-sym="s" data-told><span class="stroke-sample one-key"></span>${WORDS.oneStep(step, bold(s.step))}</li>` +
    `<li data-sym="theta_h"><span class="stroke-sample hand-key"></span>${WORDS.hand(show(s.theta, { shown: 'degrees' }, view), bold(s.hand))}</li>` +
    `<li><span class="stroke-sample cursor-key"></span><span data-here>${here(s, view)}</span></li></ul></div>`
  );
};

const motionText = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 4 }, view);

const cursor = (s: State): string => {
  const share = s.n - Math.floor(s.n);
  const x = at(s, share * Math.abs(s.Delta));
  return `M${px(x)} ${LINE}l-7 13h14z`;
};

const here = (s: State, view: UnitView): string => {
  const steps = s.n * s.k;
  return WORDS.here({
    count: numeral(steps),
    one: Math.abs(steps) === 1,
    step: stepName(s.divider),
    motion: withSign(motionText(s.motion, view)),
  });
};

export const dividedTurn = defineFigure({
  name: 'divided-turn',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['n', 'k_d', 'theta_h'],
  choices: ['divider'],
  chief: ['n', 'divider', 'k_d'],
  groups: { threads: ['A', 'C'], hand: ['theta_h'] },
  idle: ({ choices }) => (choices.divider === 'knob' ? [] : ['k_d']),
  state: stateOf,
  draw,
  rows: (s) => [
    amount('step', WORDS.rows.step(stepName(s.divider)), s.step, 'motion', 4),
    amount('hand', WORDS.rows.hand, s.hand, 'motion', 4),
    signedAmount('carried', WORDS.rows.motion, s.motion, 'motion', 4),
    signedAmount('perTurn', WORDS.rows.perTurn, s.Delta, 'motion', 4),
  ],
  caption: (s, view) => {
    const ratio = s.hand / s.step;
    return WORDS.caption({
      pair: s.names,
      perTurn: motionText(Math.abs(s.Delta), view),
      step: stepName(s.divider),
      steps: s.k,
      perStep: motionText(s.step, view),
      here: here(s, view),
      hand:
        ratio <= 0
          ? undefined
          : { angle: show(s.theta, { shown: 'degrees' }, view), motion: motionText(s.hand, view), fine: ratio < 0.5 },
    });
  },
  table: ({ Delta }, view) => {
    const rows = (
      [
        [WORDS.dividers.square, 4],
        [WORDS.dividers.hexagon, 6],
        [WORDS.dividers['twelve points'], 12],
        [WORDS.dividers.knob(25), 25],
        [WORDS.dividers.knob(50), 50],
        [WORDS.dividers.knob(100), 100],
      ] as const
    ).map(([name, k]) => {
      const step = perStep.of({ Delta, k: plain(k) });
      if (!step.ok) return [name, numeral(k), ''];
      return [name, numeral(k), show(step.value.s, { shown: 'motion', digits: 4 }, view === 'inch' ? 'inch' : 'both')];
    });
    return { head: WORDS.head, rows };
  },
  renderKey: (_, { threads, choices, values }) => [threads, choices, values.k_d, values.theta_h],
  mount: (stage, context) =>
    mountKnob(stage, {
      read: () => context.numbers().values.n,
      write: (n) => context.set('n', n),
      steps: () => stepsIn(context.numbers()),
    }),
  update: (stage, s, view) => {
    updateKnob(stage, s.n);
    stage.querySelector('[data-cursor]')?.setAttribute('d', cursor(s));
    const place = stage.querySelector('[data-here]');
    if (place) place.textContent = here(s, view);
  },
});
