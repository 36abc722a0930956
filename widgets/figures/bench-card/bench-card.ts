/** The bench card: one adjuster put together and checked, step by step, on one printed page. */
import { WORDS as ADJUSTER } from '#words/adjuster.ts';
import { WORDS } from '#words/figures/bench-card.ts';
import { type Adjuster, standing } from '../../assembly/adjuster/adjuster.ts';
import { type BuildStep, buildOrder, type Limits } from '../../assembly/adjuster/build-order.ts';
import { readAdjuster } from '../../assembly/adjuster/text.ts';
import { bad, good, type Result } from '../../engine/index.ts';
import { stepName } from '../../input/dividers.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { extentsOf, type Frame, frameIn, partsHtml, pictureOf } from '../kit/adjuster-picture.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { hatchings } from '../kit/svg.ts';

const QUANTITIES = ['eps_A', 'eps_C', 'theta_h', 'e_g'] as const;
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

const size = (x: number, view: UnitView, digits = 4): string => show(x, { shown: 'size', digits }, view);
const motion = (x: number, view: UnitView): string => show(x, { shown: 'motion', digits: 4 }, view);
const signed = (x: number, view: UnitView): string => withSign(motion(x, view));
const range = ({ min, max }: Limits, write: (x: number) => string): string => WORDS.range(write(min), write(max));
const diameters = (l: Limits, view: UnitView): string => range(l, (x) => show(x, { shown: 'size', digits: 5 }, view));

/** What a step says: its name, what to do, its count, and the danger in it. */
interface Said {
  readonly name: string;
  readonly text: string;
  readonly count: string;
  readonly caution?: string;
}

const turnsText = (turns: number, steps: number, { adjuster }: State): string => {
  const whole = Math.floor(turns + 1e-9);
  const rest = (turns - whole) * adjuster.steps;
  return WORDS.turns(
    numeral(turns, 4),
    whole,
    numeral(Math.abs(rest) < 5e-4 ? 0 : rest, 3),
    stepName(adjuster.divider),
    numeral(Number(steps.toPrecision(4))),
  );
};

const said = (step: BuildStep, s: State, view: UnitView): Said => {
  const { adjuster } = s;
  switch (step.do) {
    case 'gauge':
      return {
        name: WORDS.gauge.name(step.joint, step.thread),
        text: step.limits ? WORDS.gauge.text(step.limits.classes) : WORDS.gauge.free,
        count: step.limits
          ? WORDS.gauge.count(diameters(step.limits.screw, view), diameters(step.limits.nut, view))
          : WORDS.none,
      };
    case 'ball':
      return {
        name: WORDS.ball.name,
        text: step.interference > 0 ? WORDS.ball.press : WORDS.ball.loose,
        count: WORDS.ball.count(size(step.diameter, view), signed(step.interference, view), size(step.stands, view)),
        ...(step.interference > 0 && { caution: WORDS.ball.caution }),
      };
    case 'ball-set':
      return {
        name: WORDS.ball.name,
        text: WORDS.ball.set,
        count: WORDS.ball.stands(size(step.diameter, view), size(step.stands, view)),
        caution: WORDS.ball.caution,
      };
    case 'home':
      return {
        name: WORDS.home.name(step.joint),
        text: step.at?.kind === 'contact' ? WORDS.home.text(step.at.lower === 'ground') : WORDS.home.none,
        count: WORDS.home.count(size(step.engaged, view)),
      };
    case 'back':
      return {
        name: WORDS.back.name(step.joint),
        text: WORDS.back.text,
        count: WORDS.back.count(turnsText(step.turns, step.steps, s), size(step.gap, view)),
      };
    case 'lock':
      return {
        name: WORDS.lock.name,
        text: WORDS.lock.text[step.lock.kind],
        count:
          step.lock.kind === 'key' || step.lock.kind === 'post'
            ? WORDS.lock.count(size(step.lock.radius, view), motion(step.lock.clearance, view))
            : WORDS.none,
      };
    case 'stretch': {
      const { count, between, force } = step.springs;
      return {
        name: WORDS.stretch.name(count, between),
        text: WORDS.stretch.text,
        count:
          step.stretch === undefined || force === undefined
            ? WORDS.stretch.unstated
            : WORDS.stretch.count(size(step.stretch, view), show(force, { shown: 'force', digits: 3 }, view)),
        caution: WORDS.stretch.caution,
      };
    }
    case 'height':
      return { name: WORDS.height.name, text: WORDS.height.text, count: size(step.height, view) };
    case 'turn':
      return {
        name: WORDS.turn.name(step.turns > 0),
        text: WORDS.turn.text(ADJUSTER.stop(step.stop)),
        count: WORDS.turn.count(
          turnsText(Math.abs(step.turns), Math.abs(step.turns) * adjuster.steps, s),
          range(step.go, (x) => signed(x, view)),
        ),
      };
    case 'reverse':
      return {
        name: WORDS.reverse.name,
        text: WORDS.reverse.text,
        count: WORDS.reverse.count(
          motion(step.go, view),
          step.play === undefined ? undefined : motion(step.play, view),
        ),
      };
    default:
      return { ...WORDS.plain[step.do], count: WORDS.none };
  }
};

const draw = (s: State, view: UnitView): string => {
  const { adjuster } = s;
  const items = s.steps.map((step) => {
    const { name, text, count, caution } = said(step, s, view);
    return (
      `<li><div class="card-do"><b>${escapeText(name)}</b> ${escapeText(text)}${caution === undefined ? '' : ` <strong class="card-caution">${escapeText(caution)}</strong>`}</div>` +
      `${count === WORDS.none ? '' : `<div class="card-count">${escapeText(count)}</div>`}<span class="card-tick" aria-hidden="true"></span></li>`
    );
  });
  return (
    `<div class="sheet bench-card-view"><header><p class="sheet-title">${escapeText(WORDS.heading(adjuster.name))}</p><p class="sheet-verdict">${escapeText(WORDS.threads(adjuster.A.thread.designation, adjuster.C?.thread.designation, signed(adjuster.Delta, view)))}</p></header>` +
    `<div class="card-body"><ol class="card-steps">${items.join('')}</ol>` +
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeText(WORDS.drawing)}">${hatchings('bench-card')}${partsHtml(pictureOf(adjuster, standing(adjuster, 0), s.frame), 'bench-card')}<path class="axis" d="M${WIDTH / 2} 2V${HEIGHT - 2}"/></svg></div>` +
    `<section class="sheet-notes"><p>${WORDS.cautions}</p></section><p class="signed">${WORDS.signed.map((who) => `<span>${who}</span>`).join('')}</p></div>`
  );
};

export const benchCard = defineFigure({
  name: 'bench-card',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  texts: ['adjuster'],
  state: stateOf,
  draw,
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
      const { name, text, count, caution } = said(step, s, view);
      return [`${i + 1}`, name, text, count, caution ?? WORDS.none];
    }),
  }),
});
