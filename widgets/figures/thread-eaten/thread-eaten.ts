/**
 * Why fine means short: a wanted stroke as a bar, and under it, at the same scale, the length of each thread that the stroke
 * uses up, against the length the reader has.
 */

import { WORDS } from '#words/figures/thread-eaten.ts';
import { partsStated } from '../../assembly/adjuster/stated.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import { bad, gain, good, mm, type Result, stroke, threadEaten, turnsAvailable } from '../../engine/index.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount } from '../kit/readout.ts';
import { px } from '../kit/svg.ts';

const WIDTH = 640;
const SPAN = 638;

interface Bar {
  readonly name: string;
  readonly kind: 'turned' | 'carried';
  readonly have: number;
  readonly uses: number;
  readonly gain: number;
  readonly symbol: string;
}

interface State {
  readonly wanted: number;
  readonly stroke: number;
  readonly turns: number;
  readonly limiting: string;
  readonly bars: readonly [Bar, Bar];
  /** As the stated parts stop it, which may be before a thread runs out. */
  readonly stated: { readonly turns: number; readonly stroke: number } | undefined;
}

type Given = NumbersOf<'A' | 'C', 'S_w' | 'X_A' | 'X_C', never, 'adjuster'>;
type Lengths = Pick<Given, 'threads'> & { readonly values: Readonly<Record<'S_w' | 'X_A' | 'X_C', number>> };

/** Parts that are stated rule over threads and lengths. */
const stateOf = (numbers: Given): Result<State> => {
  const parts = partsStated(numbers.texts.adjuster);
  if (!parts) return eatenOf(numbers, undefined);
  if (!parts.ok) return parts;
  const { A, C, turned, turns, stroke } = parts.value;
  if (!C) return bad('sheet-of-one-thread', { part: turned.kind });
  const values = { S_w: numbers.values.S_w, X_A: A.usable, X_C: C.usable };
  return eatenOf({ threads: { A: A.thread, C: C.thread }, values }, { turns, stroke });
};

const eatenOf = (numbers: Lengths, stated: State['stated']): Result<State> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { A, C, Delta } = pair.value;
  const { S_w, X_A, X_C } = numbers.values;
  const ga = gain.of({ L: A.L, Delta });
  const gc = gain.of({ L: C.L, Delta });
  if (!ga.ok) return ga;
  if (!gc.ok) return gc;
  const n = turnsAvailable.of({ X_A: mm(X_A), L_A: A.L, X_C: mm(X_C), L_C: C.L });
  if (!n.ok) return n;
  const S = stroke.of({ n_max: n.value.n_max, Delta });
  const usesA = threadEaten.of({ w: mm(S_w), G: ga.value.G });
  const usesC = threadEaten.of({ w: mm(S_w), G: gc.value.G });
  if (!S.ok) return S;
  if (!usesA.ok) return usesA;
  if (!usesC.ok) return usesC;
  return good({
    stated,
    wanted: S_w,
    stroke: S.value.S,
    turns: n.value.n_max,
    limiting: X_A / A.L <= X_C / C.L ? 'A' : 'C',
    bars: [
      {
        name: WORDS.thread('A', A.designation),
        kind: 'turned',
        have: X_A,
        uses: usesA.value.X,
        gain: ga.value.G,
        symbol: 'X_A',
      },
      {
        name: WORDS.thread('C', C.designation),
        kind: 'carried',
        have: X_C,
        uses: usesC.value.X,
        gain: gc.value.G,
        symbol: 'X_C',
      },
    ],
  });
};

const bold = (text: string): string => `<b>${text}</b>`;

const draw = (s: State, view: UnitView): string => {
  const longest = Math.max(s.wanted, ...s.bars.flatMap((b) => [b.have, b.uses]), 1e-6);
  const x = (length: number) => (SPAN * length) / longest;
  const size = (v: number) => show(v, { shown: 'size', digits: 3 }, view);
  const bar = (kind: string, symbol: string, text: string, uses: number, have: number | undefined): string =>
    `<p class="line" data-sym="${symbol}">${text}</p><svg class="eaten ${kind}" viewBox="0 0 ${WIDTH} 24" preserveAspectRatio="none" aria-hidden="true">` +
    `${have === undefined ? '' : `<rect class="have" x="1" y="1" width="${px(x(have))}" height="22"/>`}<rect class="uses${have !== undefined && uses > have ? ' over' : ''}" x="1" y="6" width="${px(Math.max(1.5, x(uses)))}" height="12"/></svg>`;
  const rows = s.bars.map((b) =>
    bar(b.kind, b.symbol, WORDS.uses(b.name, bold(size(b.uses)), size(b.have), b.uses > b.have), b.uses, b.have),
  );
  const wanted = WORDS.wanted(bold(show(s.wanted, { shown: 'motion', digits: 3 }, view)));
  return `<div class="eaten-view" role="img" aria-label="${WORDS.drawing}">${bar('wanted', 'S_w', wanted, s.wanted, undefined)}${rows.join('')}</div>`;
};

export const threadEatenFigure = defineFigure({
  name: 'thread-eaten',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['S_w', 'X_A', 'X_C'],
  texts: ['adjuster'],
  chief: ['S_w', 'A', 'C'],
  groups: { lengths: ['X_A', 'X_C'], parts: ['adjuster'] },
  state: stateOf,
  draw,
  rows: (s) => [
    ...s.bars.map((bar) => amount(bar.symbol, WORDS.used(bar.name), bar.uses, 'size', 4)),
    amount('stroke', WORDS.stroke, (s.stated ?? s).stroke, 'motion', 3),
    amount('turns', WORDS.turns, (s.stated ?? s).turns, 'turns', 3),
    ...s.bars.map((bar) => amount(`G-${bar.symbol}`, WORDS.gain(bar.name), bar.gain, 'plain', 4)),
  ],
  caption: (s, view) => {
    const [a, c] = s.bars;
    return WORDS.caption({
      gainA: numeral(a.gain, 3),
      gainC: numeral(c.gain, 3),
      limiting: s.limiting,
      turns: numeral(s.turns, 3),
      stroke: show(s.stroke, { shown: 'motion', digits: 3 }, view),
      enough: (s.stated?.stroke ?? s.stroke) >= s.wanted,
      stated: s.stated && {
        turns: numeral(s.stated.turns, 3),
        stroke: show(s.stated.stroke, { shown: 'motion', digits: 3 }, view),
      },
    });
  },
  table: (s, view) => ({
    head: WORDS.head,
    rows: s.bars.map((b) => [
      b.name,
      show(b.have, { shown: 'size', digits: 4 }, view),
      show(b.uses, { shown: 'size', digits: 4 }, view),
      numeral(b.gain, 4),
    ]),
  }),
});
