/** A foot on its ring, pushed from the side: where the load meets the ground, against the core of the ring and its outside; and the same foot on a convex face. */
import { WORDS } from '#words/figures/foot-on-plane.ts';
import {
  convexRadius,
  convexRock,
  footSlides,
  good,
  lineOfLoad,
  mm,
  newtons,
  plain,
  type Result,
  ringFull,
  ringTips,
} from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { show, type UnitView } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount, type Row } from '../kit/readout.ts';
import { arrowheads, hatching, type Point, polygon, px } from '../kit/svg.ts';

const QUANTITIES = ['F', 'Q_y', 'y_b', 'R_o', 'R_i', 'mu', 's_c'] as const;
type Given = NumbersOf<never, (typeof QUANTITIES)[number], never, never>;

const WIDTH = 360;
const HEIGHT = 330;
const GROUND = HEIGHT - 46;

interface State {
  readonly values: Given['values'];
  readonly off: number;
  /** Off the axis up to where it presses all round. */
  readonly full: number;
  readonly tips: number;
  readonly slides: number;
  /** The same on a convex face, or why it has none. */
  readonly convex: Result<{ readonly radius: number; readonly lean: number; readonly aside: number }>;
  readonly verdict: keyof typeof WORDS.verdicts;
}

const stateOf = ({ values }: Given): Result<State> => {
  const [F, y_b, R_o, R_i] = [newtons(values.F), mm(values.y_b), mm(values.R_o), mm(values.R_i)];
  const [Q_y, mu] = [newtons(values.Q_y), plain(values.mu)];
  const off = lineOfLoad.of({ Q_y, y_b, F });
  if (!off.ok) return off;
  const full = ringFull.of({ F, R_o, R_i, y_b });
  if (!full.ok) return full;
  const tips = ringTips.of({ F, R_o, y_b });
  if (!tips.ok) return tips;
  const slides = footSlides.of({ F, mu });
  if (!slides.ok) return slides;
  const verdict =
    Q_y > tips.value.Q_tp && tips.value.Q_tp <= slides.value.Q_sl
      ? 'tips'
      : Q_y > slides.value.Q_sl
        ? 'slides'
        : Q_y > full.value.Q_b
          ? 'lifts'
          : 'stands';
  const radius = convexRadius.of({ R_o, s_c: mm(values.s_c) });
  const rock = radius.ok ? convexRock.of({ Q_y, F, ...radius.value, y_b }) : radius;
  return good({
    values,
    off: off.value.e_l,
    full: full.value.Q_b,
    tips: tips.value.Q_tp,
    slides: slides.value.Q_sl,
    convex:
      radius.ok && rock.ok
        ? good({ radius: radius.value.rho_h, lean: rock.value.psi_b, aside: rock.value.u_y })
        : rock.ok
          ? radius
          : rock,
    verdict,
  } as State);
};

const force = (x: number, view: UnitView): string => show(x, { shown: 'force', digits: 3 }, view);
const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 3 }, view);
const motion = (x: number, view: UnitView): string => show(x, { shown: 'motion', digits: 3 }, view);

const draw = (s: State, view: UnitView): string => {
  const { R_o, R_i, y_b, F, Q_y } = s.values;
  const reach = 2.2 * R_o;
  const scale = Math.min((GROUND - 60) / y_b, (WIDTH - 40) / (2 * reach));
  const x0 = WIDTH / 2;
  const at = (x: number, z: number): Point => [x0 + x * scale, GROUND - z * scale];
  const body = 0.55 * R_o;
  const foot = Math.min(0.9 * R_o, 0.4 * y_b);
  const [tipX, tipY] = at(0, y_b);
  const landed = Math.max(-reach, Math.min(reach, s.off));
  const share = s.off === 0 ? 1 : landed / s.off;
  const [endX, endY] = at(landed, y_b * (1 - share));
  const inner = R_i > 0 ? `M${at(-R_i, 0).map(px).join(' ')}v-5H${px(at(R_i, 0)[0])}v5` : '';
  const core = (R_o ** 2 + R_i ** 2) / (4 * R_o);
  const tick = (x: number, words: string, down: number): string =>
    `<path class="foot-tick" d="M${at(x, 0).map(px).join(' ')}v${12 + down}"/><text x="${px(at(x, 0)[0])}" y="${GROUND + 25 + down}" text-anchor="middle">${escapeText(words)}</text>`;
  return (
    `<svg class="foot-on-plane-view" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing}"><defs>${hatching('foot-ground', 45, 5, 'ground base')}</defs>${arrowheads('foot-head', 'strong')}` +
    `<path class="part turned solid" d="${polygon([at(-R_o, 0), at(R_o, 0), at(R_o, foot), at(body, foot), at(body, y_b), at(-body, y_b), at(-body, foot), at(-R_o, foot)])}"/><path class="foot-hollow" d="${inner}"/>` +
    `<rect class="foot-ground" fill="url(#foot-ground)" x="0" y="${GROUND}" width="${WIDTH}" height="8"/>` +
    `<path class="foot-core" d="M${at(-core, 0).map(px).join(' ')}H${px(at(core, 0)[0])}"/>` +
    `<path class="axis" d="M${x0} 14V${GROUND + 6}"/>` +
    `<path class="arrow strong" marker-end="url(#foot-head)" d="M${px(tipX)} ${px(tipY - 46)}V${px(tipY - 2)}"/><text class="value" x="${px(tipX + 8)}" y="${px(tipY - 30)}">${force(F, view)}</text>` +
    `${Q_y > 0 ? `<path class="arrow strong" marker-end="url(#foot-head)" d="M${px(tipX - 70)} ${px(tipY)}H${px(tipX - 2)}"/><text class="value" x="${px(tipX - 76)}" y="${px(tipY - 8)}">${force(Q_y, view)}</text>` : ''}` +
    `<path class="arrow foot-load ${s.verdict}" marker-end="url(#foot-head)" d="M${px(tipX)} ${px(tipY)}L${px(endX)} ${px(endY)}"/>` +
    `${tick(-core, WORDS.core, 0)}${tick(R_o, WORDS.rim, 0)}</svg>`
  );
};

const facts = (s: State): Row[] => [
  amount('off', WORDS.facts.off, s.off, 'size', 3),
  amount('full', WORDS.facts.full, s.full, 'force', 3),
  amount('tips', WORDS.facts.tips, s.tips, 'force', 3),
  amount('slides', WORDS.facts.slides, s.slides, 'force', 3),
  s.convex.ok
    ? amount('convex', WORDS.facts.convex, s.convex.value.aside, 'motion', 3)
    : [WORDS.facts.convex, reasonOf(s.convex)],
];

export const footOnPlane = defineFigure({
  name: 'foot-on-plane',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  chief: ['Q_y', 'F', 's_c'],
  groups: { base: ['R_o', 'R_i', 'y_b'], friction: ['mu'] },
  state: stateOf,
  draw,
  rows: facts,
  caption: (s, view) =>
    WORDS.caption({
      push: force(s.values.Q_y, view),
      off: size(s.off, view),
      verdict: s.verdict,
      convex: s.convex.ok ? motion(s.convex.value.aside, view) : undefined,
      proud: motion(s.values.s_c, view),
    }),
  table: (s, view) => ({
    head: WORDS.head,
    rows: [
      [WORDS.facts.full, force(s.full, view)],
      [WORDS.facts.tips, force(s.tips, view)],
      [WORDS.facts.slides, force(s.slides, view)],
      [WORDS.facts.off, size(s.off, view)],
      ...(s.convex.ok
        ? [
            [WORDS.facts.radius, size(s.convex.value.radius, view)],
            [WORDS.facts.convex, motion(s.convex.value.aside, view)],
          ]
        : []),
    ],
  }),
});
