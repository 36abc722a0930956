/**
 * What moves though nobody turns, on one chart: the tip sinking in, the shank shortening, the room and the hand warming, and
 * creep, each in µm and in steps of the pair. None of them is divided by the gain.
 */

import { pairOf } from '../../assembly/pair-of.ts';
import { tipOf } from '../../assembly/tip.ts';
import {
  at,
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
  said,
  shankStiffness,
  thermalGrowth,
  thermalMaterial,
  warming,
} from '../../engine/index.ts';
import { stepName, stepsOf } from '../../input/dividers.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { px } from '../kit/svg.ts';

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
  if (Delta === 0)
    return said('The two leads are equal, so a step is nothing to measure by: choose threads whose leads differ.');
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
    pair: `${A.designation} with ${C.designation}`,
    step: step.value.s,
    stepName: stepName(divider),
    bars: [
      { name: 'the tip sinks in', size: sink.value.delta },
      { name: 'a steel shank shortens', size: F / shank.value.k_l },
      { name: `the room changes, ${path.value.name}`, size: Math.abs(room.value.Delta_l) },
      { name: `a warm hand, ${path.value.name}`, size: Math.abs(held.value.Delta_l) },
      { name: 'a printed part creeps', size: Math.abs(creep.value.z_d) },
    ],
  });
};

const motion = (v: number, view: UnitView) => show(v, { shown: 'motion', digits: 3 }, view);

const draw = (s: State, view: UnitView): string => {
  const longest = Math.max(s.step, ...s.bars.map((b) => b.size));
  const width = (v: number) => px(Math.max(v > 0 ? 1.5 : 0, (638 * v) / longest));
  const bar = (kind: string, text: string, size: number) =>
    `<p class="line">${text}</p><svg class="drift ${kind}" viewBox="0 0 640 16" preserveAspectRatio="none" aria-hidden="true"><rect x="1" y="2" width="${width(size)}" height="12"/></svg>`;
  return (
    `<div class="drift-view" role="img" aria-label="What moves though nobody turns, beside one step of the pair">` +
    `${bar('one', `one ${s.stepName} of ${escapeText(s.pair)}: <b>${motion(s.step, view)}</b>`, s.step)}` +
    s.bars
      .map((b) =>
        bar(
          'moves',
          `${escapeText(b.name)}: <b>${motion(b.size, view)}</b>, ${numeral(b.size / s.step, 2)} ${s.stepName}s`,
          b.size,
        ),
      )
      .join('') +
    `</div>`
  );
};

export const driftBars = defineFigure({
  name: 'drift-bars',
  title: 'What moves though nobody turns',
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: ['divider', 'seat', 'path'],
  state: stateOf,
  draw,
  caption: (s, view) => {
    const most = s.bars.reduce((a, b) => (b.size > a.size ? b : a));
    return `Beside one ${s.stepName} of ${motion(s.step, view)}, the largest is this: ${most.name}, ${motion(most.size, view)}, which is ${numeral(most.size / s.step, 2)} ${s.stepName}s.`;
  },
  table: (s, view) => ({
    head: ['what moves', 'motion', `${s.stepName}s`],
    rows: s.bars.map((b) => [b.name, motion(b.size, view), numeral(b.size / s.step, 3)]),
  }),
});
