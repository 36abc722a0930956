/** Clip, cap and post to one scale as they are drawn for the printer, with what the clip is strained by and the pushes that put it on and take it off; and their files. */
import { WORDS } from '#words/figures/printed-parts.ts';
import { type Part, reach } from '../../assembly/adjuster/part.ts';
import { meshOf } from '../../assembly/adjuster/solid.ts';
import { sectionOf } from '../../assembly/adjuster/surface.ts';
import { stripCoupon } from '../../assembly/print/coupons.ts';
import { hexagon, type Plate, plateMesh, plateOutlines } from '../../assembly/print/plate.ts';
import { PRINTED_QUANTITIES, type PrintedParts, printedPartsOf } from '../../assembly/print/printed-parts.ts';
import { good, REPEATED, type Result } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount, type Row } from '../kit/readout.ts';
import { onSave, type SavedPart, saveButtons, savePart } from '../kit/save-part.ts';
import { hatchings, type Point, polygon, px } from '../kit/svg.ts';

type Given = NumbersOf<never, (typeof PRINTED_QUANTITIES)[number], never, never>;

const WIDTH = 600;
const HEIGHT = 300;
const GAP = 26;
const FOOT = 31;

interface State extends PrintedParts {
  readonly values: Given['values'];
}

const stateOf = ({ values }: Given): Result<State> => {
  const made = printedPartsOf(values);
  return made.ok ? good({ ...made.value, values }) : made;
};

const NO_THREAD = { crests: { below: 0, above: 0 } };
const sectionPoints = (part: Part) => sectionOf(part, 0, NO_THREAD);
const highOf = (part: Part): number => part.outer.at(-1)?.to ?? 0;
const wideOf = (part: Part): number => 2 * Math.max(...part.outer.map(reach));

const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 3 }, view);
const force = (x: number, view: UnitView): string => show(x, { shown: 'force', digits: 3 }, view);
const percent = (x: number): string => `${numeral(100 * x, 2)} %`;

/** Cap and post, as far as they come out. */
const standingParts = (s: State): readonly (readonly [key: 'cap' | 'post', part: Part, id: string])[] => [
  ...(s.cap.ok ? [['cap', s.cap.value, 'carried'] as const] : []),
  ...(s.post.ok ? [['post', s.post.value, 'base'] as const] : []),
];

const picture = (s: State): string => {
  const xs = s.clip.outline.map(([x]) => x);
  const ys = s.clip.outline.map(([, y]) => y);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const stood = standingParts(s);
  const wide = right - left + stood.reduce((sum, [, part]) => sum + wideOf(part), 0);
  const scale = Math.min(
    (WIDTH - (stood.length + 2) * GAP) / wide,
    (HEIGHT - FOOT - 14) / Math.max(high - low, ...stood.map(([, part]) => highOf(part))),
  );
  // What width is left stands between them.
  const gap = (WIDTH - wide * scale) / (stood.length + 2);
  const floor = HEIGHT - FOOT;
  const plan = ([x, y]: readonly [number, number]): Point => [gap + (x - left) * scale, floor - (y - low) * scale];
  const name = (words: string, x: number) =>
    `<text class="part-name" x="${px(x)}" y="${HEIGHT - 10}" text-anchor="middle">${words}</text>`;
  let edge = 2 * gap + (right - left) * scale;
  const others = stood.map(([key, part, id]) => {
    const middle = edge + (wideOf(part) * scale) / 2;
    edge += wideOf(part) * scale + gap;
    const outline = sectionPoints(part)
      .map((o) => polygon(o.map(([x, z]): Point => [middle + x * scale, floor - z * scale])))
      .join('');
    return `<path class="part ${id}" fill="url(#printed-parts-${id})" d="${outline}"/><path class="axis" d="M${px(middle)} ${px(floor - highOf(part) * scale - 6)}V${floor + 5}"/>${name(WORDS[key], middle)}`;
  });
  return (
    `<svg class="printed-parts-view" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing}">${hatchings('printed-parts')}` +
    `<path class="part turned solid" d="${polygon(s.clip.outline.map(plan))}"/><path class="held-hexagon" d="${polygon(hexagon(s.grip).map(plan))}"/>` +
    `${name(WORDS.clip, plan([(left + right) / 2, 0])[0])}${others.join('')}</svg>${refusedHtml(s)}`
  );
};

const refusedHtml = (s: State): string =>
  (['cap', 'post'] as const)
    .flatMap((key) => {
      const part = s[key];
      return part.ok ? [] : [`<p class="refusal">${escapeText(WORDS.refused(WORDS[key], reasonOf(part)))}</p>`];
    })
    .join('');

const facts = (s: State, view: UnitView): Row[] => {
  const { arm, printer, values, capStrain } = s;
  return [
    amount('strain', WORDS.facts.strain, arm.strain, 'percent', 3),
    [WORDS.facts.allowed, percent(values.eps_m)],
    amount('least', WORDS.facts.least, arm.least, 'size', 3),
    amount('on', WORDS.facts.on, arm.on, 'force', 3),
    arm.off === undefined ? [WORDS.facts.off, WORDS.never] : amount('off', WORDS.facts.off, arm.off, 'force', 3),
    amount('cap', WORDS.facts.cap, capStrain, 'percent', 3),
    [WORDS.facts.offsets, WORDS.offsets(withSign(size(printer.holes, view)), withSign(size(-printer.outsides, view)))],
  ];
};

/** Each with its box, in millimetres. */
const partsOf = (s: State): Readonly<Record<string, SavedPart & { readonly box: readonly number[] }>> => {
  const plate = (name: string, p: Plate): SavedPart & { readonly box: readonly number[] } => {
    const spans = [0, 1].map((k) => {
      const along = p.outline.map((c) => c[k] as number);
      return Math.max(...along) - Math.min(...along);
    });
    return {
      name,
      called: [name],
      mesh: () => plateMesh(p),
      outlines: () => plateOutlines(p, name),
      box: [...spans, p.height],
    };
  };
  const turned = (name: string, part: Part) => ({
    name,
    called: [name],
    mesh: () => meshOf(part, NO_THREAD),
    outlines: () => sectionPoints(part).map((points) => ({ layer: name, points, closed: true })),
    box: [wideOf(part), wideOf(part), highOf(part)],
  });
  return {
    clip: plate(WORDS.clip, s.clip),
    ...Object.fromEntries(standingParts(s).map(([key, part]) => [key, turned(WORDS[key], part)])),
    coupon: plate(WORDS.coupon, stripCoupon(60, 2, 10)),
  };
};

const readings = (s: State, view: UnitView): string => {
  const rows = Object.entries(partsOf(s)).map(
    ([key, { name, box }]) =>
      `<tr><th scope="row">${name}</th><td>${escapeText(box.map((x) => size(x, view)).join(' × '))}</td><td>${saveButtons(key, (kind) => WORDS.save(name, kind))}</td></tr>`,
  );
  return `<div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.files}"><table><thead><tr>${WORDS.listHead.map((h) => `<th scope="col">${h}</th>`).join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></div><p class="figure-words">${WORDS.note}</p>`;
};

export const printedParts = defineFigure({
  name: 'printed-parts',
  title: WORDS.title,
  threads: [],
  quantities: PRINTED_QUANTITIES,
  setElsewhere: ['w_n', 'w_s', 'i_r', 'w_p'],
  chief: ['t_a', 'l_a', 'y_a'],
  groups: {
    clip: ['c_n', 'alpha_a', 'b_a', 'r_k', 't_f', 'b_f'],
    plastic: ['E_f', 'eps_m', 'mu_f', 'w_l'],
    cap: ['D_k', 'b_k', 'w_o', 'c_o', 'l_o', 'd_o'],
  },
  state: stateOf,
  draw: picture,
  rows: facts,
  readings,
  numbersName: WORDS.files,
  caption: (s, view) => {
    const { arm, values } = s;
    return WORDS.caption({
      strain: percent(arm.strain),
      allowed: percent(values.eps_m),
      again: percent(values.eps_m * REPEATED),
      verdict: arm.strain > values.eps_m ? 'over' : arm.strain > values.eps_m * REPEATED ? 'once' : 'again',
      on: force(arm.on, view),
      off: arm.off === undefined ? undefined : force(arm.off, view),
    });
  },
  table: (s, view) => ({
    head: WORDS.head,
    rows: Object.values(partsOf(s)).map(({ name, box }) => [name, ...box.map((x) => size(x, view))]),
  }),
  mount: (stage, context) => {
    const figure = stage.closest('figure') ?? stage;
    onSave(figure, (kind, of) => {
      const state = stateOf(context.numbers());
      const part = state.ok ? partsOf(state.value)[of] : undefined;
      if (part) savePart(kind, part, WORDS.check);
    });
  },
});
