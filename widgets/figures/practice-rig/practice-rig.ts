/**
 * A rig to practise on: the shop’s pair with faults of your choosing under an indicator that never touches anything. What it
 * reads is the engine’s simulator, the same for the same seed; a button hands the readings to the calibration.
 */

import { WORDS } from '#words/figures/practice-rig.ts';
import { flankText } from '#words/force.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import {
  at,
  type FlankName,
  flankUnder,
  type GaugeReading,
  good,
  mm,
  netLeadError,
  newtons,
  plain,
  practiceReadings,
  type Result,
  trueNetLead,
  turns,
} from '../../engine/index.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { writeReadingsTable } from '../../input/readings-table.ts';
import { counted, motionText, signedMotion } from '../kit/calibration-words.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { axisUnit, type Frame, legendKey, panelHtml, xAt, yAt } from '../kit/plots/frame.ts';
import { amount, readoutHtml } from '../kit/readout.ts';
import type { Point } from '../kit/svg.ts';
import { polyline, px } from '../kit/svg.ts';

const QUANTITIES = [
  'k',
  'n_o',
  'N_r',
  'n_s',
  'eps_gA',
  'eps_gC',
  'a_A',
  'phi_A',
  'a_C',
  'phi_C',
  'j_A',
  'j_C',
  'Q_pc',
  'Q_f',
  'u_g',
  's_g',
] as const;
type Given = NumbersOf<'A' | 'C', (typeof QUANTITIES)[number], never, never>;

/** A reading is taken to no finer than this. */
const DIVISION = mm(1e-4);
const DRAWN_RUNS = 6;

interface Rig {
  readonly readings: readonly GaugeReading[];
  readonly runs: number;
  readonly seed: number;
  readonly nominal: number;
  /** Net lead with the rig’s own lead errors. */
  readonly truth: number;
  /** The flank on which the force on the carried part holds both threads, where it beats the friction. */
  readonly flank: FlankName | undefined;
}

let last: { readonly key: string; readonly readings: Result<readonly GaugeReading[]> } | undefined;

/** The last readings are kept, since numbers that the rig shares a set with change while it does not. */
const kept = (key: string, read: () => Result<readonly GaugeReading[]>): Result<readonly GaugeReading[]> => {
  if (last?.key !== key) last = { key, readings: read() };
  return last.readings;
};

const keyOf = ({ threads: { A, C }, values }: Given): string =>
  JSON.stringify([A.designation, A.P, C.designation, C.P, ...QUANTITIES.map((name) => values[name])]);

const rigOf = (numbers: Given): Result<Rig> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { A, C, leads, Delta } = pair.value;
  const { values } = numbers;
  const { eps_gA, eps_gC, a_A, a_C, phi_A, phi_C, j_A, j_C } = values;
  const { Q_pc, Q_f, u_g, s_g, n_s, n_o, N_r, k } = values;
  const error = netLeadError.of({ ...leads, eps_A: plain(eps_gA), eps_C: plain(eps_gC), Delta });
  if (!error.ok) return error;
  const truth = trueNetLead.of({ Delta, eps: error.value.eps });
  if (!truth.ok) return truth;
  const readings = kept(keyOf(numbers), () =>
    practiceReadings(
      {
        A: { h: A.h, L: A.L, play: mm(j_A), leadError: plain(eps_gA), periodic: mm(a_A), phase: turns(phi_A) },
        C: { h: C.h, L: C.L, play: mm(j_C), leadError: plain(eps_gC), periodic: mm(a_C), phase: turns(phi_C) },
        loads: { turned: newtons(0), carried: newtons(Q_pc) },
        drags: { turned: newtons(0), carried: newtons(Q_f) },
        stick: mm(u_g),
        slip: mm(u_g),
        noise: mm(s_g),
        seed: n_s,
      },
      { out: turns(n_o), stepsPerTurn: k, runs: N_r, division: DIVISION },
    ),
  );
  if (!readings.ok) return readings;
  return good({
    readings: readings.value,
    runs: N_r,
    seed: n_s,
    nominal: Delta,
    truth: truth.value.Delta_e,
    flank: Math.abs(Q_pc) > Q_f ? flankUnder(Q_pc) : undefined,
  });
};

/** Nothing acts on the turned part, so both threads have the same force across them. */
const flanksText = ({ flank }: Rig): string =>
  flank === undefined
    ? WORDS.loose
    : WORDS.touching((['A', 'C'] as const).map((thread) => ({ thread, flank: flankText(thread, flank) })));

const amountsOf = ({ nominal, truth }: Rig) => [
  amount('nominal', WORDS.nominal, nominal, 'motion', 4),
  amount('truth', WORDS.truth, truth, 'motion', 4),
];

const draw = (rig: Rig, view: UnitView): string => {
  const { readings, nominal, runs } = rig;
  const off = readings.map((row) => row.reading - nominal * row.turns);
  const [low, high] = [Math.min(0, ...off), Math.max(0, ...off)];
  const room = Math.max(0.08 * (high - low), 2e-4);
  const far = Math.max(...readings.map((row) => row.turns));
  const frame: Frame = {
    x: [-0.04 * far, 1.04 * far],
    y: [low - room, high + room],
    unit: axisUnit(Math.max(high, -low), view),
  };
  const perRun = readings.length / runs;
  const paths: string[] = [];
  for (let run = 0; run < Math.min(DRAWN_RUNS, runs); run++)
    for (const direction of ['up', 'down'] as const) {
      const points = readings
        .slice(run * perRun, (run + 1) * perRun)
        .flatMap((row, i): Point[] =>
          row.direction === direction ? [[xAt(frame, row.turns), yAt(frame, at(off, run * perRun + i))]] : [],
        );
      const marks = points.map(([x, y]) =>
        direction === 'up' ? `M${px(x)} ${px(y - 4)}l4 7h-8Z` : `M${px(x)} ${px(y + 4)}l4 -7h-8Z`,
      );
      paths.push(
        `<path class="curve rig ${direction}" d="${polyline(points)}"/><path class="reading ${direction}" d="${marks.join('')}"/>`,
      );
    }
  const item = (sample: string, words: string) => legendKey(sample, words, 12);
  return (
    `<ul class="legend">${item('<path class="curve rig up" d="M1 6H33"/><path class="reading up" d="M17 2l4 7h-8Z"/>', WORDS.up)}${item('<path class="curve rig down" d="M1 6H33"/><path class="reading down" d="M17 10l4 -7h-8Z"/>', WORDS.down)}</ul>` +
    `<div class="rig-plot">${panelHtml(frame, WORDS.panel, 6, paths.join(''))}</div>` +
    `<div class="rig-side">${readoutHtml(
      [[WORDS.readings, counted(readings.length)], ...amountsOf(rig), [WORDS.flanks, flanksText(rig)]],
      view,
    )}` +
    `<p class="acts"><button type="button" data-act="take" data-key="act-take">${WORDS.take}</button><button type="button" class="plain" data-act="again" data-key="act-again">${WORDS.again}</button></p><p class="line" role="status" data-taken></p></div>`
  );
};

const caption = ({ readings, nominal, truth, seed }: Rig, view: UnitView): string => {
  const off = readings.map((row) => row.reading - nominal * row.turns);
  return WORDS.caption({
    count: counted(readings.length),
    seed: counted(seed),
    lowest: signedMotion(Math.min(...off), view),
    highest: signedMotion(Math.max(...off), view),
    truth: motionText(truth, view),
  });
};

export const practiceRig = defineFigure({
  name: 'practice-rig',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  chief: ['eps_gA', 'eps_gC', 's_g'],
  groups: {
    threads: ['A', 'C', 'k'],
    readings: ['n_o', 'N_r', 'n_s'],
    phases: ['a_A', 'phi_A', 'a_C', 'phi_C'],
    play: ['j_A', 'j_C', 'Q_pc'],
    guide: ['Q_f', 'u_g'],
  },
  idle: ({ values }) => [
    ...(values.a_A === 0 ? (['phi_A'] as const) : []),
    ...(values.a_C === 0 ? (['phi_C'] as const) : []),
  ],
  state: rigOf,
  draw,
  printed: amountsOf,
  caption,
  table: ({ readings }, view) => ({
    head: WORDS.head,
    rows: readings.map((row) => [
      numeral(row.turns),
      WORDS.directions[row.direction],
      show(row.reading, { shown: 'motion' }, view),
    ]),
  }),
  mount: (stage, context) => {
    stage.addEventListener('click', (event) => {
      const button = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-act]') : null;
      if (!button) return;
      const rig = rigOf(context.numbers());
      if (button.dataset.act === 'again') context.set('n_s', (context.numbers().values.n_s + 1) % 1e9);
      else if (rig.ok) {
        const rounded = rig.value.readings.map((row) => ({ ...row, turns: turns(Number(row.turns.toFixed(4))) }));
        context.type('runs', writeReadingsTable(rounded));
        const taken = stage.querySelector('[data-taken]');
        if (taken) taken.textContent = WORDS.taken(rig.value.readings.length);
      }
    });
  },
});
