/**
 * What moves though nobody turns, on one chart: the tip sinking in, the shank shortening, the room and the hand warming, and
 * creep, each in µm and in steps of the pair. None of them is divided by the gain.
 */

import { WORDS } from '#words/figures/drift-bars.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import { tipOf } from '../../assembly/tip.ts';
import {
  at,
  bad,
  ballOnFlat,
  CONTACT_MATERIALS,
  good,
  hours,
  kelvins,
  logCreep,
  megapascals,
  mm,
  newtons,
  perKelvin,
  perStep,
  plain,
  type Result,
  shankStiffness,
  thermalGrowth,
  thermalMaterial,
  warming,
} from '../../engine/index.ts';
import { stepName, stepsOf } from '../../input/dividers.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount } from '../kit/readout.ts';
import { px } from '../kit/svg.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'step-of-nothing': Readonly<Record<never, never>>;
  }
}

const QUANTITIES = ['k_d', 'F', 'R', 'l', 'd_3', 'Delta_T', 'Delta_Tw', 't', 'tau_w', 'c_d', 't_0'] as const;
type Given = NumbersOf<'A' | 'C', (typeof QUANTITIES)[number], 'divider' | 'seat' | 'path', never>;

interface Bar {
  readonly name: string;
  /** mm, never negative. */
  readonly size: number;
}

interface State {
  readonly pair: string;
  readonly step: number;
  readonly stepName: string;
  readonly bars: readonly Bar[];
}

const stateOf = (numbers: Given): Result<State> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { A, C, Delta } = pair.value;
  const { k_d, F, R, l, d_3, Delta_T, Delta_Tw, t, tau_w, c_d, t_0 } = numbers.values;
  if (Delta === 0) return bad('step-of-nothing', {});
  const { divider } = numbers.choices;
  const step = perStep.of({ Delta, k: plain(stepsOf(divider, k_d)) });
  const tip = tipOf(numbers);
  const path = thermalMaterial(numbers.choices.path);
  if (!step.ok) return step;
  if (!tip.ok) return tip;
  if (!path.ok) return path;
  const sink = ballOnFlat.of({ F: newtons(F), R: mm(R), E_s: megapascals(tip.value.E_s) });
  const steel = at(CONTACT_MATERIALS, 0);
  const shank = shankStiffness.of({ E_l: megapascals(steel.E), d_3: mm(d_3), l: mm(l) });
  const room = thermalGrowth.of({ alpha_T: perKelvin(path.value.alpha), l: mm(l), Delta_T: kelvins(Delta_T) });
  const hand = warming.of({ Delta_Tw: kelvins(Delta_Tw), t: hours(t), tau_w: hours(tau_w) });
  const held = hand.ok
    ? thermalGrowth.of({ alpha_T: perKelvin(path.value.alpha), l: mm(l), Delta_T: hand.value.Delta_T })
    : hand;
  const creep = logCreep.of({ c_d: mm(c_d), t: hours(t), t_0: hours(t_0) });
  if (!sink.ok) return sink;
  if (!shank.ok) return shank;
  if (!room.ok) return room;
  if (!held.ok) return held;
  if (!creep.ok) return creep;
  return good({
    pair: WORDS.pair(A.designation, C.designation),
    step: step.value.s,
    stepName: stepName(divider),
    bars: [
      { name: WORDS.bars.tip, size: sink.value.delta },
      { name: WORDS.bars.shank, size: F / shank.value.k_l },
      { name: WORDS.bars.room(path.value.name), size: Math.abs(room.value.Delta_l) },
      { name: WORDS.bars.hand(path.value.name), size: Math.abs(held.value.Delta_l) },
      { name: WORDS.bars.creep, size: Math.abs(creep.value.z_d) },
    ],
  });
};

const motion = (v: number, view: UnitView) => show(v, { shown: 'motion', digits: 3 }, view);

const draw = (s: State, view: UnitView): string => {
  const longest = Math.max(s.step, ...s.bars.map((b) => b.size));
  const width = (v: number) => px(Math.max(v > 0 ? 1.5 : 0, (638 * v) / longest));
  const bold = (size: number) => `<b>${motion(size, view)}</b>`;
  const bar = (kind: string, text: string, size: number) =>
    `<p class="line">${text}</p><svg class="drift ${kind}" viewBox="0 0 640 16" preserveAspectRatio="none" aria-hidden="true"><rect x="1" y="2" width="${width(size)}" height="12"/></svg>`;
  return (
    `<div class="drift-view" role="img" aria-label="${WORDS.label}">` +
    `${bar('one', WORDS.oneStep({ step: s.stepName, pair: escapeText(s.pair), motion: bold(s.step) }), s.step)}` +
    s.bars
      .map((b) =>
        bar(
          'moves',
          WORDS.bar({
            name: escapeText(b.name),
            motion: bold(b.size),
            steps: numeral(b.size / s.step, 2),
            step: s.stepName,
          }),
          b.size,
        ),
      )
      .join('') +
    `</div>`
  );
};

export const driftBars = defineFigure({
  name: 'drift-bars',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: ['divider', 'seat', 'path'],
  chief: ['A', 'C', 'Delta_T'],
  groups: {
    warmth: ['Delta_Tw', 'tau_w', 't'],
    tip: ['F', 'R', 'seat'],
    path: ['path', 'l', 'd_3'],
    head: ['divider', 'k_d'],
    creep: ['c_d', 't_0'],
  },
  idle: ({ choices, values }) => [
    ...(choices.divider === 'knob' ? [] : (['k_d'] as const)),
    ...(values.c_d === 0 ? (['t_0'] as const) : []),
    ...(values.Delta_Tw === 0 ? (['tau_w'] as const) : []),
  ],
  state: stateOf,
  draw,
  rows: (s) => [
    amount('step', WORDS.step(s.stepName), s.step, 'motion', 3),
    ...s.bars.map(({ name, size }, i) => amount(`bar-${i}`, name, size, 'motion', 3)),
  ],
  caption: (s, view) => {
    const most = s.bars.reduce((a, b) => (b.size > a.size ? b : a));
    return WORDS.caption({
      step: s.stepName,
      perStep: motion(s.step, view),
      largest: most.name,
      motion: motion(most.size, view),
      steps: numeral(most.size / s.step, 2),
    });
  },
  table: (s, view) => ({
    head: WORDS.head(s.stepName),
    rows: s.bars.map((b) => [b.name, motion(b.size, view), numeral(b.size / s.step, 3)]),
  }),
});
