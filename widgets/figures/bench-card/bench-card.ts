/** The bench card: one adjuster put together and checked, step by step, on one printed page. */
import { WORDS } from '#words/figures/bench-card.ts';
import { type Adjuster, standing } from '../../assembly/adjuster/adjuster.ts';
import { type BuildStep, buildOrder } from '../../assembly/adjuster/build-order.ts';
import { readAdjuster } from '../../assembly/adjuster/text.ts';
import { bad, good, type Result } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { extentsOf } from '../kit/adjuster-extras.ts';
import { type Frame, frameIn, partsHtml, pictureOf } from '../kit/adjuster-picture.ts';
import { stepSaid } from '../kit/build-steps.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount, following, type Row, signedAmount } from '../kit/readout.ts';
import { hatchings } from '../kit/svg.ts';

const QUANTITIES = ['eps_A', 'eps_C', 'theta_h', 'e_g', 'mu', 'kappa'] as const;
type Given = NumbersOf<never, (typeof QUANTITIES)[number], never, 'adjuster'>;

const WIDTH = 220;
const HEIGHT = 330;

interface State {
  readonly adjuster: Adjuster;
  readonly steps: readonly BuildStep[];
  readonly frame: Frame;
}

const stateOf = ({ values, texts }: Given): Result<State> => {
  const read = readAdjuster(texts.adjuster);
  if (!read.ok) return read;
  const steps = buildOrder(read.value, values);
  if (!steps.ok) return steps;
  const frame = frameIn(extentsOf(read.value), HEIGHT - 16, WIDTH / 2, WIDTH / 2 - 6);
  return frame.scale > 0 && Number.isFinite(frame.scale)
    ? good({ adjuster: read.value, steps: steps.value, frame: { ...frame, y: frame.y + 8 } })
    : bad('lengths-of-no-one-scale', {});
};

const motion = (x: number, view: UnitView): string => show(x, { shown: 'motion', digits: 4 }, view);
const signed = (x: number, view: UnitView): string => withSign(motion(x, view));

const draw = (s: State, view: UnitView): string => {
  const { adjuster } = s;
  const items = s.steps.map((step) => {
    const { name, text, count, caution } = stepSaid(step, s.adjuster, view);
    return (
      `<li><div class="card-do"><b>${escapeText(name)}</b> ${escapeText(text)}${caution === undefined ? '' : ` <strong class="card-caution">${escapeText(caution)}</strong>`}</div>` +
      `${count === WORDS.none ? '' : `<div class="card-count">${escapeText(count)}</div>`}<span class="card-tick" aria-hidden="true"></span></li>`
    );
  });
  return (
    `<div class="sheet bench-card-view" tabindex="0" role="group" aria-label="${WORDS.title}"><header><p class="sheet-title">${escapeText(WORDS.heading(adjuster.name))}</p><p class="sheet-verdict">${escapeText(WORDS.threads(adjuster.A.thread.designation, adjuster.C?.thread.designation, signed(adjuster.Delta, view)))}</p></header>` +
    `<div class="card-body"><ol class="card-steps">${items.join('')}</ol>` +
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeText(WORDS.drawing)}">${hatchings('bench-card')}${partsHtml(pictureOf(adjuster, standing(adjuster, 0), s.frame), 'bench-card')}<path class="axis" d="M${WIDTH / 2} 2V${HEIGHT - 2}"/></svg></div>` +
    `<section class="sheet-notes"><p>${WORDS.cautions}</p></section><p class="card-signed">${WORDS.signed.map((who) => `<span>${who}</span>`).join('')}</p></div>`
  );
};

/** What the indicator is held to. */
const rows = ({ adjuster, steps }: State): readonly Row[] => [
  signedAmount('turn', WORDS.rows.turn, adjuster.Delta, 'motion', 4),
  ...steps
    .filter((step) => step.do === 'turn')
    .slice(0, 1)
    .flatMap(({ turns, go }) => {
      const count = withSign(numeral(Number(turns.toPrecision(4))));
      return [
        signedAmount('from', WORDS.rows.from(count), go.min, 'motion', 4),
        signedAmount('to', WORDS.rows.to(count), go.max, 'motion', 4),
      ].map((one) => following(one, 'position-error', 'worst-lead-error', 'per-angle', 'net-lead'));
    }),
  ...steps
    .filter((step) => step.do === 'reverse')
    .map(({ go }) =>
      following(amount('reverse', WORDS.rows.reverse, go, 'motion', 4), 'per-angle', 'lock-slop-motion', 'wind-up'),
    ),
];

export const benchCard = defineFigure({
  name: 'bench-card',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  texts: ['adjuster'],
  chief: ['adjuster', 'e_g'],
  groups: { errors: ['eps_A', 'eps_C'], head: ['theta_h'], friction: ['mu'], lock: ['kappa'] },
  state: stateOf,
  draw,
  rows,
  caption: (s, view) => {
    const { A, C } = s.adjuster;
    const turn = s.steps.find((step) => step.do === 'turn');
    const reverse = s.steps.find((step) => step.do === 'reverse');
    return WORDS.caption({
      steps: s.steps.length,
      A: numeral(A.mark, 4),
      C: C && numeral(C.mark, 4),
      check: turn && {
        turns: numeral(Number(Math.abs(turn.turns).toPrecision(4))),
        clockwise: turn.turns > 0,
        from: signed(turn.go.min, view),
        to: signed(turn.go.max, view),
      },
      reverse: motion(reverse?.go ?? 0, view),
    });
  },
  table: (s, view) => ({
    head: WORDS.head,
    rows: s.steps.map((step, i) => {
      const { name, text, count, caution } = stepSaid(step, s.adjuster, view);
      return [`${i + 1}`, name, text, count, caution ?? WORDS.none];
    }),
  }),
});
