/** The ladder of holes to scale, with the rung that takes the piece, and what its reading says of the printer. */
import { WORDS } from '#words/figures/ladder.ts';
import { plateMesh, plateOutlines } from '../../assembly/print/plate.ts';
import { LADDER_QUANTITIES, type PrinterRead, printerOf } from '../../assembly/print/printer-of.ts';
import { at, good, type Result } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { show, type UnitView, withSign } from '../../input/format.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount, signedAmount } from '../kit/readout.ts';
import { onSave, saveButtons, savePart } from '../kit/save-part.ts';
import { arrowheads, dimensionLine, type Point, polygon, px } from '../kit/svg.ts';

type Given = NumbersOf<never, (typeof LADDER_QUANTITIES)[number], never, never>;

const WIDTH = 620;
const HEIGHT = 150;
const SIDE = 70;

interface State extends PrinterRead {
  readonly values: Given['values'];
}

const stateOf = ({ values }: Given): Result<State> => {
  const read = printerOf(values);
  return read.ok ? good({ ...read.value, values }) : read;
};

const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 4 }, view);
const offset = (x: number, view: UnitView): string => withSign(show(x, { shown: 'size', digits: 2 }, view));

/** What the piece does in a rung. */
const fitOf = (i: number, taken: number): keyof typeof WORDS.fits =>
  i < taken ? 'tight' : i === taken ? 'goes' : 'loose';

const draw = (s: State, view: UnitView): string => {
  const { plate, rungs, across } = s.ladder;
  const long = Math.max(...plate.outline.map(([x]) => x));
  const scale = Math.min((WIDTH - SIDE - 8) / long, (HEIGHT - 62) / across);
  const place = ([x, y]: readonly [number, number]): Point => [SIDE + x * scale, 34 + (across - y) * scale];
  const [, foot] = place([0, 0]);
  const [, top] = place([0, across]);
  const taken = s.values.i_r - 1;
  const holes = plate.holes.map(
    (hole, i) => `<path class="coupon-rung ${fitOf(i, taken)}" d="${polygon(hole.map(place))}"/>`,
  );
  const shown = [...new Set([0, taken, rungs.length - 1])];
  const labels = shown.map((i) => {
    const rung = at(rungs, i);
    // The first and the last name keep to the ladder: on a phone they are wider than what is left beside it.
    const anchor = i === rungs.length - 1 ? 'end' : i === 0 && i === taken ? 'start' : 'middle';
    const [x] = place(anchor === 'end' ? [long, 0] : anchor === 'start' ? [0, 0] : rung.at);
    const y = i === taken ? top - 10 : foot + 18;
    return `<text class="rung-label${i === taken ? ' taken' : ''}" x="${px(x)}" y="${px(y)}" text-anchor="${anchor}">${escapeText(i === taken ? WORDS.takes(size(rung.width, view)) : size(rung.width, view))}</text>`;
  });
  return (
    `<div class="ladder-view"><svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing}">${arrowheads('ladder-head')}` +
    `<path class="part turned solid" d="${polygon(plate.outline.map(place))}"/>${holes.join('')}${labels.join('')}` +
    `<path class="extension" d="M${SIDE - 3} ${px(top)}H${SIDE - 26}M${SIDE - 3} ${px(foot)}H${SIDE - 26}"/>${dimensionLine([SIDE - 20, foot], [SIDE - 20, top], 'ladder-head')}` +
    `<text class="rung-label" transform="translate(${SIDE - 28} ${px((foot + top) / 2)}) rotate(-90)" text-anchor="middle">${size(across, view)}</text></svg>` +
    `<p class="acts">${WORDS.files} ${saveButtons('ladder', WORDS.save)}</p></div>`
  );
};

export const ladderFigure = defineFigure({
  name: 'ladder',
  title: WORDS.title,
  threads: [],
  quantities: LADDER_QUANTITIES,
  chief: ['w_n', 'i_r', 'w_p'],
  groups: { lengths: ['w_s'] },
  state: stateOf,
  draw,
  rows: ({ rung, printer }) => [
    amount('rung', WORDS.head[1], rung, 'size', 4),
    signedAmount('holes', WORDS.offsets.holes, printer.holes, 'size', 2),
    signedAmount('outsides', WORDS.offsets.outsides, printer.outsides, 'size', 2),
  ],
  caption: (s, view) =>
    WORDS.caption({
      rung: s.values.i_r,
      width: size(s.rung, view),
      piece: size(s.values.w_n, view),
      holes: offset(s.printer.holes, view),
      step: show(s.values.w_s, { shown: 'size', digits: 2 }, view),
      outsides: offset(s.printer.outsides, view),
    }),
  table: (s, view) => ({
    head: WORDS.head,
    rows: s.ladder.rungs.map(({ width }, i) => [
      String(i + 1),
      size(width, view),
      WORDS.fits[fitOf(i, s.values.i_r - 1)],
    ]),
  }),
  mount: (stage, context) =>
    onSave(stage, (kind) => {
      const state = stateOf(context.numbers());
      if (!state.ok) return;
      const { plate } = state.value.ladder;
      savePart(
        kind,
        {
          name: WORDS.name,
          called: [WORDS.name],
          mesh: () => plateMesh(plate),
          outlines: () => plateOutlines(plate, 'ladder'),
        },
        WORDS.check,
      );
    }),
});
