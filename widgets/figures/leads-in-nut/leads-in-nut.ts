/** Five turns of a screw in a nut of another lead, pressed to one side: which end of the engagement carries, and how much play is left at the other. */
import { WORDS } from '#words/figures/leads-in-nut.ts';
import { axialPlay, good, mm, playAfterLead, type Result } from '../../engine/index.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount } from '../kit/readout.ts';
import { arrowheads, hatchings, type Point, polygon, polyline, px } from '../kit/svg.ts';

const QUANTITIES = ['c', 'delta_L', 'F_o'] as const;

interface State {
  readonly bare: number;
  readonly left: number;
  readonly deviation: number;
  /** The load presses towards the base; the base is drawn on the right. */
  readonly toBase: boolean;
  /** Its size, N. */
  readonly load: number;
  /** Of each turn, the first furthest from the base: gaps of the flank that the load presses, and of the other one. */
  readonly gaps: readonly { readonly pressed: number; readonly other: number }[];
  /** The turn that carries all. */
  readonly carries: number | undefined;
}

const TURNS = 5;

const stateOf = ({ values }: NumbersOf<never, (typeof QUANTITIES)[number], never, never>): Result<State> => {
  const c = mm(values.c);
  const bare = axialPlay.of({ c });
  if (!bare.ok) return bare;
  const left = playAfterLead.of({ c, delta_L: mm(values.delta_L) });
  if (!left.ok) return left;
  const toBase = values.F_o >= 0;
  // A screw of longer lead stands out at both ends, and touches first at the end to which it is pressed.
  const lastCarries = values.delta_L > 0 === toBase;
  const most = Math.abs(values.delta_L);
  const gaps = Array.from({ length: TURNS }, (_, i) => {
    const share = i / (TURNS - 1);
    const pressed = most * (lastCarries ? 1 - share : share);
    return { pressed, other: bare.value.j - pressed };
  });
  return good({
    bare: bare.value.j,
    left: left.value.j,
    deviation: values.delta_L,
    toBase,
    load: Math.abs(values.F_o),
    gaps,
    carries: values.delta_L === 0 ? undefined : lastCarries ? TURNS - 1 : 0,
  });
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 3 }, view);

const WIDTH = 640;
const HEIGHT = 200;
const MIDDLE = 92;
const FLANK = 30;
const PITCH = 122;
const FIRST = 76;
const GROOVE = 64;
/** The play of a true pair is drawn so wide. */
const PLAY = 34;
const SLOPE = Math.tan(Math.PI / 6);

const draw = (s: State, view: UnitView): string => {
  const perMm = s.bare > 0 ? PLAY / s.bare : 0;
  const flank = (x: number, side: 1 | -1, out: number): Point => [x - side * out * SLOPE, MIDDLE - out];
  const centres = s.gaps.map((_, i) => FIRST + PITCH * i);
  const groove = centres.flatMap((x) => [
    flank(x - GROOVE / 2, -1, -FLANK),
    flank(x - GROOVE / 2, -1, FLANK),
    flank(x + GROOVE / 2, 1, FLANK),
    flank(x + GROOVE / 2, 1, -FLANK),
  ]);
  const nut = polygon([[8, 12], [8, MIDDLE + FLANK], ...groove, [WIDTH - 8, MIDDLE + FLANK], [WIDTH - 8, 12]]);
  const edges = s.gaps.map(({ pressed, other }, i) => {
    const [l, r] = s.toBase ? [other, pressed] : [pressed, other];
    const x = centres[i] ?? 0;
    return { left: x - GROOVE / 2 + l * perMm, right: x + GROOVE / 2 - r * perMm };
  });
  const root = MIDDLE + FLANK + 10;
  const ridges = edges.flatMap(({ left, right }) => [
    flank(left, -1, -FLANK - 10),
    flank(left, -1, 20),
    flank(right, 1, 20),
    flank(right, 1, -FLANK - 10),
  ]);
  const screw = polygon([[8, HEIGHT - 34], [8, root], ...ridges, [WIDTH - 8, root], [WIDTH - 8, HEIGHT - 34]]);
  const touching = s.gaps
    .flatMap(({ pressed }, i) => {
      if (pressed > 1e-9) return [];
      const x = s.toBase ? (centres[i] ?? 0) + GROOVE / 2 : (centres[i] ?? 0) - GROOVE / 2;
      const side = s.toBase ? 1 : -1;
      return [`<path class="meets" d="${polyline([flank(x, side, -FLANK), flank(x, side, 20)])}"/>`];
    })
    .join('');
  const head = 'leads-head';
  const [from, to] = s.toBase ? [WIDTH / 2 - 50, WIDTH / 2 + 50] : [WIDTH / 2 + 50, WIDTH / 2 - 50];
  return (
    `<div class="leads-in-nut-view"><svg class="leads-picture" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing}">${hatchings('leads')}${arrowheads(head)}` +
    `<path class="part base" fill="url(#leads-base)" d="${nut}"/><path class="part solid turned" d="${screw}"/>${touching}` +
    `<path class="arrow" marker-end="url(#${head})" d="M${px(from)} ${HEIGHT - 51}H${px(to)}"/><text x="${px(Math.max(from, to) + 8)}" y="${HEIGHT - 51}" dy="0.35em">${show(s.load, { shown: 'force', digits: 3 }, view)}</text>` +
    `<text class="name" x="8" y="${HEIGHT - 12}">${WORDS.far}</text><text class="name" x="${WIDTH - 8}" y="${HEIGHT - 12}" text-anchor="end">${WORDS.near}</text></svg>` +
    `<p class="x-name">${WORDS.magnified(motion(s.bare, view))}</p></div>`
  );
};

export const leadsInNut = defineFigure({
  name: 'leads-in-nut',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  chief: ['delta_L', 'F_o', 'c'],
  state: stateOf,
  draw,
  rows: (s) => [
    amount('bare', WORDS.rows.bare, s.bare, 'motion', 4),
    amount('left', WORDS.rows.left, s.left, 'motion', 4),
  ],
  caption: (s, view) =>
    WORDS.caption({
      deviation: motion(Math.abs(s.deviation), view),
      longer: s.deviation > 0,
      carries: s.carries === undefined ? 'all' : s.carries === 0 ? 'far' : 'near',
      bare: motion(s.bare, view),
      left: motion(s.left, view),
    }),
  table: (s, view) => ({
    head: WORDS.head,
    rows: s.gaps.map(({ pressed, other }, i) => [numeral(i + 1), motion(pressed, view), motion(other, view)]),
  }),
});
