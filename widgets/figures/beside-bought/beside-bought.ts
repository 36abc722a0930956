/**
 * An adjuster beside the fine screw that one would otherwise buy, piece by piece and in threes, and what each of its threads carries, judged against
 * the load that is stated.
 */
import { WORDS } from '#words/figures/beside-bought.ts';
import { type Adjuster, standing } from '../../assembly/adjuster/adjuster.ts';
import { pressFitOf } from '../../assembly/adjuster/press-fit.ts';
import { readAdjuster } from '../../assembly/adjuster/text.ts';
import { MODES, type Mode, type ThreadLoads, threadLoads } from '../../assembly/adjuster/thread-loads.ts';
import { good, megapascals, mm, perAngle, type Result, rad, spokenNumber, type Thread } from '../../engine/index.ts';
import { stepName } from '../../input/dividers.ts';
import { escapeText } from '../../input/escape.ts';
import { fixed, numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { type Amount, amount, type Row } from '../kit/readout.ts';
import { px } from '../kit/svg.ts';

const QUANTITIES = ['p_b', 'S_w', 'theta_h', 'F', 'sigma_a', 'tau_a'] as const;
type Given = NumbersOf<'B', (typeof QUANTITIES)[number], never, 'adjuster'>;

/** Three feet carry a plate. */
const SET = 3;
const WIDTH = 440;
const ROW = 22;

interface State {
  readonly adjuster: Adjuster;
  readonly loads: readonly ThreadLoads[];
  readonly bought: Thread;
  readonly values: Given['values'];
  /** Motion for the angle of the hand, mm. */
  readonly byHand: { readonly own: number; readonly bought: number };
  /** Of a ball that was pressed in with a force that was read. */
  readonly press: number | undefined;
  /** The least of all. */
  readonly weakest: {
    readonly thread: { readonly joint: 'A' | 'C'; readonly what: Mode } | undefined;
    readonly carries: number;
  };
}

const stateOf = ({ threads, values, texts }: Given): Result<State> => {
  const read = readAdjuster(texts.adjuster);
  if (!read.ok) return read;
  const loads = threadLoads(read.value, { tensile: megapascals(values.sigma_a), shear: megapascals(values.tau_a) });
  if (!loads.ok) return loads;
  const [own, bought] = [read.value.Delta, threads.B.L].map((lead) =>
    perAngle.of({ Delta: mm(lead), theta: rad(values.theta_h) }),
  ) as [Result<{ s: number }>, Result<{ s: number }>];
  if (!own.ok) return own;
  if (!bought.ok) return bought;
  const fit = pressFitOf(read.value);
  const press = fit?.kind === 'holds' ? fit.force : undefined;
  const weakest = [
    ...loads.value.map((l) => ({ thread: { joint: l.joint, what: l.first }, carries: l[l.first] })),
    ...(press === undefined ? [] : [{ thread: undefined, carries: press }]),
  ].reduce((a, b) => (b.carries < a.carries ? b : a));
  return good({
    adjuster: read.value,
    loads: loads.value,
    bought: threads.B,
    values,
    byHand: { own: own.value.s, bought: bought.value.s },
    press,
    weakest,
  });
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 4 }, view);
const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 3 }, view);
const force = (x: number, view: UnitView): string => show(x, { shown: 'force', digits: 4 }, view);
const money = (price: number | undefined): string => (price === undefined ? WORDS.none : fixed(price, 2));

/** What is compared and worked out, in the order of the list. */
const motionsOf = ({
  adjuster: a,
  bought,
  byHand,
}: State): readonly { readonly name: string; readonly own: Amount; readonly bought: Amount }[] =>
  (
    [
      ['turn', WORDS.rows.perTurn, Math.abs(a.Delta), bought.L],
      [
        'step',
        WORDS.rows.perStep(stepName(a.divider), numeral(a.steps)),
        Math.abs(a.Delta) / a.steps,
        bought.L / a.steps,
      ],
      ['hand', WORDS.rows.byHand, byHand.own, byHand.bought],
    ] as const
  ).map(([key, name, own, other]) => ({
    name,
    own: amount(`own-${key}`, WORDS.ofOwn(name), own, 'motion', 4),
    bought: amount(`bought-${key}`, WORDS.ofBought(name), other, 'motion', 4),
  }));

/** What each thread and the fit of the ball carry. */
const carryRows = (s: State): readonly Row[] => [
  ...s.loads.flatMap((l) =>
    MODES.map((what) => amount(`${l.joint}-${what}`, WORDS.carries(l.joint, what), l[what], 'force', 4)),
  ),
  ...(s.press === undefined ? [] : [amount('press', WORDS.press, s.press, 'force', 4)]),
];

/** Name, of the adjuster, of the bought screw. */
const compared = (s: State, view: UnitView): readonly (readonly [string, string, string])[] => {
  const { adjuster: a, values } = s;
  const boughtPrice = values.p_b > 0 ? values.p_b : undefined;
  return [
    ...motionsOf(s).map(
      ({ name, own, bought }) => [name, motion(own.value, view), motion(bought.value, view)] as const,
    ),
    [WORDS.rows.stroke, motion(a.stroke, view), motion(values.S_w, view)],
    [WORDS.rows.height, size(standing(a, 0).height, view), WORDS.ask],
    [WORDS.rows.piece, money(a.price), money(boughtPrice)],
    [WORDS.rows.set(SET), money(a.price && SET * a.price), money(boughtPrice && SET * boughtPrice)],
  ];
};

const judged = (load: number, carries: number): string => (load <= carries ? WORDS.passes : WORDS.fails);

/** What each thread carries as bars to one scale, with the load across them; a load is compared by ratio, since a core carries much more. */
const bars = (s: State, view: UnitView): string => {
  const rows = [
    ...s.loads.flatMap((l) => MODES.map((what) => ({ name: WORDS.carries(l.joint, what), value: l[what] }))),
    ...(s.press === undefined ? [] : [{ name: WORDS.press, value: s.press }]),
  ];
  const most = Math.max(s.values.F, ...rows.map((r) => r.value)) * 1.02;
  const [left, right] = [170, WIDTH - 72];
  const x = (value: number) => left + ((right - left) * value) / most;
  const height = 40 + rows.length * ROW;
  const drawn = rows.map((r, i) => {
    const y = 38 + i * ROW;
    return `<text class="bought-label" x="${left - 8}" y="${y + 11.5}" text-anchor="end">${r.name}</text><rect class="${r.value >= s.values.F ? 'bought-passes' : 'bought-fails'}" x="${left}" y="${y}" width="${px(Math.max(1, x(r.value) - left))}" height="14"/><text class="bought-label" x="${px(x(r.value) + 6)}" y="${y + 11.5}">${force(r.value, view)}</text>`;
  });
  return `<svg class="bought-bars" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="${WORDS.bars}">${drawn.join('')}<path class="bought-load" d="M${px(x(s.values.F))} 35V${height}"/><text class="bought-label" x="${px(x(s.values.F))}" y="0" dy="1em" text-anchor="middle">${WORDS.load(force(s.values.F, view))}</text></svg>`;
};

const draw = (s: State, view: UnitView): string => {
  const asked = motionsOf(s);
  const cell = (text: string, of: Amount | undefined) =>
    of ? `<td><span data-result="${of.key}">${escapeText(text)}</span></td>` : `<td>${escapeText(text)}</td>`;
  const rows = compared(s, view).map(
    ([name, own, bought], i) =>
      `<tr><th scope="row">${escapeText(name)}</th>${cell(own, asked[i]?.own)}${cell(bought, asked[i]?.bought)}</tr>`,
  );
  return (
    `<div class="beside-bought-view"><div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.title}"><table><thead><tr>${WORDS.listHead(
      escapeText(spokenNumber(s.bought.designation)),
    )
      .map((h) => `<th scope="col">${h}</th>`)
      .join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></div>` +
    `<div class="bought-box" tabindex="0" role="group" aria-label="${WORDS.bars}">${bars(s, view)}</div></div>`
  );
};

export const besideBought = defineFigure({
  name: 'beside-bought',
  title: WORDS.title,
  threads: ['B'],
  quantities: QUANTITIES,
  texts: ['adjuster'],
  chief: ['B', 'p_b', 'F'],
  setElsewhere: ['adjuster'],
  groups: { wanted: ['S_w'], load: ['sigma_a', 'tau_a'], hand: ['theta_h'] },
  state: stateOf,
  draw,
  rows: carryRows,
  printed: (s) => motionsOf(s).flatMap(({ own, bought }) => [own, bought]),
  caption: (s, view) => {
    const { weakest, values, adjuster, bought } = s;
    return WORDS.caption({
      finer: numeral(bought.L / Math.abs(adjuster.Delta), 3),
      farther: numeral(values.S_w / adjuster.stroke, 3),
      thread: weakest.thread,
      carries: force(weakest.carries, view),
      load: force(values.F, view),
      holds: values.F <= weakest.carries,
      saved:
        adjuster.price === undefined || !(values.p_b > 0)
          ? undefined
          : { own: (SET * adjuster.price).toFixed(2), bought: (SET * values.p_b).toFixed(2), set: SET },
    });
  },
  table: (s, view) => ({
    head: WORDS.head,
    rows: [
      ...compared(s, view).map(([name, own, bought]) => [name, own, bought, WORDS.none]),
      ...s.loads.flatMap((l) =>
        MODES.map((what) => [
          WORDS.carriesOver(l.joint, l.thread, what, size(l.engaged, view)),
          show(l[what], { shown: 'force', digits: 6 }, view),
          WORDS.none,
          judged(s.values.F, l[what]),
        ]),
      ),
      ...(s.press === undefined
        ? []
        : [[WORDS.press, show(s.press, { shown: 'force', digits: 6 }, view), WORDS.none, judged(s.values.F, s.press)]]),
    ],
  }),
});
