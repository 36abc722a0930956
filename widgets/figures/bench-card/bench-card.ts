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
import { sheetPart } from '../kit/sheet.ts';
import { hatchings } from '../kit/svg.ts';

const QUANTITIES = ['eps_A', 'eps_C', 'theta_h', 'e_g', 'mu'] as const;
type Given = NumbersOf<never, (typeof QUANTITIES)[number], never, 'adjuster' | 'ticked'>;

const WIDTH = 220;
const HEIGHT = 330;

/** Each step under a name of its own, which it keeps while others come and go; and whether it is done. */
interface Named {
  readonly step: BuildStep;
  readonly key: string;
  readonly done: boolean;
}

interface State {
  readonly adjuster: Adjuster;
  readonly steps: readonly BuildStep[];
  readonly named: readonly Named[];
  readonly frame: Frame;
}

const stateOf = ({ values, texts }: Given): Result<State> => {
  const read = readAdjuster(texts.adjuster);
  if (!read.ok) return read;
  const steps = buildOrder(read.value, values);
  if (!steps.ok) return steps;
  const ticked = tickedIn(texts.ticked);
  const named = steps.value.map((step, i): Named => {
    const name = nameOf(step);
    const before = steps.value.slice(0, i).filter((one) => nameOf(one) === name).length;
    const key = before === 0 ? name : `${name} ${before + 1}`;
    return { step, key, done: ticked.includes(key) };
  });
  const frame = frameIn(extentsOf(read.value), HEIGHT - 16, WIDTH / 2, WIDTH / 2 - 6);
  return frame.scale > 0 && Number.isFinite(frame.scale)
    ? good({ adjuster: read.value, steps: steps.value, named, frame: { ...frame, y: frame.y + 8 } })
    : bad('lengths-of-no-one-scale', {});
};

const nameOf = (step: BuildStep): string => ('joint' in step ? `${step.do} ${step.joint}` : step.do);
const tickedIn = (text: string): readonly string[] => text.split(/[;\n]/).map((one) => one.trim());

/** The order of work in three parts. */
const PARTS = {
  prepare: ['gauge', 'clean', 'stone', 'ball', 'ball-set'],
  build: ['home', 'back', 'mark', 'lock', 'stretch'],
  check: ['height', 'zero', 'turn', 'reverse'],
} as const satisfies Record<string, readonly BuildStep['do'][]>;
type PartName = keyof typeof PARTS;
const PART_NAMES = Object.keys(PARTS) as PartName[];
const within = (part: PartName, { step }: Named): boolean => PARTS[part].some((one) => one === step.do);
const doneIn = (named: readonly Named[]): string => WORDS.done(named.filter(({ done }) => done).length, named.length);

const motion = (x: number, view: UnitView): string => show(x, { shown: 'motion', digits: 4 }, view);
const signed = (x: number, view: UnitView): string => withSign(motion(x, view));

const draw = (s: State, view: UnitView): string => {
  const { adjuster } = s;
  const item = ({ step, key, done }: Named) => {
    const { name, text, count, caution } = stepSaid(step, s.adjuster, view);
    return (
      `<li><div class="card-do"><b>${escapeText(name)}</b> ${escapeText(text)}${caution === undefined ? '' : ` <strong class="card-caution">${escapeText(caution)}</strong>`}</div>` +
      `${count === WORDS.none ? '' : `<div class="card-count">${escapeText(count)}</div>`}<label class="card-tick"><input type="checkbox" data-step="${key}" data-key="tick-${key}" aria-label="${escapeText(WORDS.tick(name))}"${done ? ' checked' : ''}/></label></li>`
    );
  };
  const parts = PART_NAMES.map((part) => {
    const named = s.named.filter((one) => within(part, one));
    const first = s.named.findIndex((one) => within(part, one)) + 1;
    return named.length === 0
      ? ''
      : sheetPart(
          part,
          `${WORDS.parts[part]} <span class="card-done" data-done="${part}">${doneIn(named)}</span>`,
          `<ol class="card-steps" start="${first}">${named.map(item).join('')}</ol>`,
        );
  });
  return (
    `<div class="sheet bench-card-view" role="group" aria-label="${WORDS.title}"><header><p class="sheet-title">${escapeText(WORDS.heading(adjuster.name))}</p><p class="sheet-verdict">${escapeText(WORDS.threads(adjuster.A.thread.designation, adjuster.C?.thread.designation, signed(adjuster.Delta, view)))}</p></header>` +
    `<div class="card-body"><div>${parts.join('')}</div>` +
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeText(WORDS.drawing)}">${hatchings('bench-card')}${partsHtml(pictureOf(adjuster, standing(adjuster, 0), s.frame), 'bench-card')}<path class="axis" d="M${WIDTH / 2} 2V${HEIGHT - 2}"/></svg></div>` +
    `<section class="sheet-notes"><p>${WORDS.cautions}</p></section><p class="card-signed">${WORDS.signed.map((who) => `<span>${who}</span>`).join('')}</p></div>`
  );
};

const update = (stage: HTMLElement, { named }: State): void => {
  for (const { key, done } of named) {
    const box = stage.querySelector<HTMLInputElement>(`[data-step="${key}"]`);
    if (box) box.checked = done;
  }
  for (const part of PART_NAMES) {
    const place = stage.querySelector(`[data-done="${part}"]`);
    if (place) place.textContent = doneIn(named.filter((one) => within(part, one)));
  }
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
  texts: ['adjuster', 'ticked'],
  chief: ['adjuster', 'e_g'],
  groups: { errors: ['eps_A', 'eps_C'], head: ['theta_h'], friction: ['mu'], done: ['ticked'] },
  state: stateOf,
  draw,
  update,
  renderKey: (_, { texts: { ticked: _ticked, ...texts }, values }) => [texts, values],
  mount: (stage, context) => {
    stage.addEventListener('change', ({ target }) => {
      if (!(target instanceof HTMLInputElement) || target.dataset.step === undefined) return;
      const { step } = target.dataset;
      const others = tickedIn(context.numbers().texts.ticked).filter((one) => one !== '' && one !== step);
      context.type('ticked', [...others, ...(target.checked ? [step] : [])].join('; '));
    });
  },
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
      windsUnknown: reverse?.windsUnknown ?? false,
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
