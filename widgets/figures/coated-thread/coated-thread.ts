/** One ridge of a screw in the groove of its nut, pressed to one flank: the coat on the ridge, and the play that is left beside it. */
import { WORDS } from '#words/figures/coated-thread.ts';
import { axialPlay, good, mm, playAfterCoat, type Result, thickestCoat } from '../../engine/index.ts';
import { show, type UnitView } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount } from '../kit/readout.ts';
import { arrowheads, dimensionLine, hatchings, type Point, polygon, polyline, px } from '../kit/svg.ts';

const QUANTITIES = ['c', 't_z'] as const;

interface State {
  readonly t_z: number;
  readonly bare: number;
  readonly left: number;
  readonly most: number;
  readonly c: number;
}

const stateOf = ({ values }: NumbersOf<never, (typeof QUANTITIES)[number], never, never>): Result<State> => {
  const [c, t_z] = [mm(values.c), mm(values.t_z)];
  const bare = axialPlay.of({ c });
  if (!bare.ok) return bare;
  const left = playAfterCoat.of({ c, t_z });
  if (!left.ok) return left;
  const most = thickestCoat.of({ c });
  if (!most.ok) return most;
  return good({ t_z, bare: bare.value.j, left: left.value.j, most: most.value.t_zm, c });
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 3 }, view);

const WIDTH = 600;
const HEIGHT = 250;
/** Where the flanks of the nut cross the pitch line, the pitch line, and how far the flanks go to both sides of it. */
const LEFT = 200;
const RIGHT = 440;
const MIDDLE = 130;
const FLANK = 84;
/** The bare play is drawn so wide; coat and play have one scale. */
const PLAY = 90;
/** How far under the pitch line the size of the coat stands. */
const LOW = 84;
const SLOPE = Math.tan(Math.PI / 6);

const draw = (s: State, view: UnitView): string => {
  const perMm = s.bare > 0 ? PLAY / s.bare : 0;
  const gap = s.left * perMm;
  // A layer on a flank of 30° is wider along the axis than it is thick.
  const layer = (s.t_z * perMm) / Math.cos(Math.PI / 6);
  /** A place on a flank: where it crosses the pitch line, which side of the ridge, and how far outward. */
  const at = (x: number, side: 1 | -1, out: number): Point => [x - side * out * SLOPE, MIDDLE - out];
  const nut = polygon([
    [8, 12],
    [WIDTH - 8, 12],
    [WIDTH - 8, MIDDLE + FLANK],
    at(RIGHT, 1, -FLANK),
    at(RIGHT, 1, FLANK),
    at(LEFT, -1, FLANK),
    at(LEFT, -1, -FLANK),
    [8, MIDDLE + FLANK],
  ]);
  const ridge = (left: number, right: number, crest: number) =>
    polygon([at(left, -1, -FLANK - 26), at(left, -1, crest), at(right, 1, crest), at(right, 1, -FLANK - 26)]);
  const [left, right] = [LEFT + gap, RIGHT];
  // The size of the coat stands in the ridge, where there is room, on a leader to the coat.
  const inCoat = left + layer / 2 - LOW * SLOPE;
  const head = 'coated-head';
  return (
    `<div class="coated-thread-view"><svg class="coat-picture" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing}">${hatchings('coat')}${arrowheads(head)}` +
    `<path class="part base" fill="url(#coat-base)" d="${nut}"/>` +
    `<path class="coat" d="${ridge(left, right, 62 + Math.min(layer, 12))}"/><path class="part solid turned" d="${ridge(left + layer, right - layer, 62)}"/>` +
    `<path class="meets" d="${polyline([at(RIGHT, 1, -FLANK), at(RIGHT, 1, 62)])}"/>` +
    `${gap > 0.5 ? dimensionLine([LEFT, MIDDLE], [LEFT + gap, MIDDLE], head) : ''}` +
    `<text class="value clear" x="${px(LEFT - 34)}" y="${MIDDLE + 5}" text-anchor="end">${WORDS.left(motion(s.left, view))}</text>` +
    `<path class="leader" marker-end="url(#${head})" d="M${px(inCoat + layer / 2 + 24)} ${MIDDLE + LOW}H${px(inCoat)}"/>` +
    `<text class="value" x="${px(inCoat + layer / 2 + 30)}" y="${MIDDLE + LOW}" dy="0.35em">${WORDS.coat(motion(s.t_z, view))}</text></svg></div>`
  );
};

export const coatedThread = defineFigure({
  name: 'coated-thread',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  chief: ['t_z', 'c'],
  state: stateOf,
  draw,
  rows: (s) => [
    amount('bare', WORDS.rows.bare, s.bare, 'motion', 4),
    amount('left', WORDS.rows.left, s.left, 'motion', 4),
    amount('most', WORDS.rows.most, s.most, 'motion', 3),
  ],
  caption: (s, view) =>
    WORDS.caption({
      coat: motion(s.t_z, view),
      bare: motion(s.bare, view),
      left: motion(s.left, view),
      most: motion(s.most, view),
    }),
  table: (s, view) => ({
    head: WORDS.head,
    rows: [0, 0.25, 0.5, 0.75, 1].flatMap((share) => {
      const left = playAfterCoat.of({ c: mm(s.c), t_z: mm(share * s.most) });
      return left.ok ? [[motion(share * s.most, view), motion(left.value.j, view)]] : [];
    }),
  }),
});
