/**
 * The design sheet: one design on one printed page, drawing, numbers, error budget, checks, parts and cautions. What the
 * screen shows is what the printer prints.
 */

import { WORDS } from '#words/figures/design-sheet.ts';
import { partsStated } from '../../assembly/adjuster/stated.ts';
import { escapeText } from '../../input/escape.ts';
import { fixed, numeral, show, type UnitView } from '../../input/format.ts';
import type { PartsList } from '../../input/parts-list.ts';
import { wordsShown } from '../../input/typed-words.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure } from '../kit/figure.ts';
import type { Amount } from '../kit/readout.ts';
import { sheetPart } from '../kit/sheet.ts';
import { sumOf, type Term } from './budget.ts';
import { drawing } from './drawing.ts';
import { type Check, verdictOf } from './judge.ts';
import type { Line } from './lines.ts';
import { ruledBy, SHEET_CHOICES, SHEET_QUANTITIES } from './sheet-numbers.ts';
import { type Sheet, workSheet } from './work.ts';

const MOTION = { shown: 'motion', digits: 3 } as const;

const lineText = (line: Line, view: UnitView): string => {
  if ('words' in line) return line.words;
  const from = show(line.value.amount, line.value.format, view);
  return line.to === undefined ? from : WORDS.fromTo(from, show(line.to.amount, line.to.format, view));
};

/** Whether a line is one number. */
const isOne = (line: Line): line is Extract<Line, { value: unknown }> => 'value' in line && line.to === undefined;

/** The same whatever a turn is divided by: a step has another name under each head, with its count behind it. */
const keyOf = ({ name }: Line, { stepName }: Sheet): string =>
  name
    .replace(/ \(.*\)$/, '')
    .replace(`per ${stepName}`, 'per step')
    .replace(/[^\w]+/g, '-');

const amountsOf = (s: Sheet): Amount[] =>
  s.groups.flatMap((g) =>
    g.lines.filter(isOne).map((l): Amount => {
      const { amount: value, format } = l.value;
      return { key: keyOf(l, s), name: l.name, value, format, signed: false };
    }),
  );

const draw = (s: Sheet, view: UnitView): string => {
  const picture = s.fit.ok ? drawing(s.fit.value, s.called, s.fromParts, view) : s.fit;
  const groups = s.groups
    .filter((g) => g.lines.length > 0)
    .map(
      (g, i) =>
        `<section>${sheetPart(`group-${i}`, g.title, `<dl>${g.lines.map((l) => `<div><dt>${escapeText(l.name)}</dt><dd>${isOne(l) ? `<span data-result="${keyOf(l, s)}">${escapeText(lineText(l, view))}</span>` : escapeText(lineText(l, view))}</dd></div>`).join('')}</dl>`)}</section>`,
    )
    .join('');
  return (
    `<div class="sheet" role="group" aria-label="${WORDS.title}"><header><p class="sheet-title">${escapeText(WORDS.sheetTitle({ name: s.name, A: s.A.designation, C: s.C.designation, called: s.called }))}</p>` +
    `<p class="sheet-verdict">${verdictOf(s)}</p>${s.fromParts ? `<p class="sheet-source">${WORDS.fromParts}</p>` : ''}</header>` +
    `<div class="sheet-top"><div>${picture.ok ? picture.value : `<p class="refusal">${escapeText(reasonOf(picture))}</p>`}</div><div class="sheet-groups">${groups}</div></div>` +
    `<div class="sheet-low"><section>${sheetPart('budget', WORDS.budget.title, budgetTable(s, view))}</section>` +
    `<section>${sheetPart('checks', WORDS.checks.title, `<ul class="checks">${s.checks.map((c) => `<li class="${c.passed ? 'passed' : 'failed'}"><b>${markOf(c)}</b> ${escapeText(c.says(view))}</li>`).join('')}</ul>`)}</section>` +
    partsTable(s.parts) +
    `<section class="unjudged">${sheetPart('unjudged', WORDS.unjudged, `<ul>${s.unjudged.map((u) => `<li><a href="${u.at}">${escapeText(u.name)}</a>: ${escapeText(u.why(view))}</li>`).join('')}</ul>`)}</section>` +
    `<section class="sheet-notes">${sheetPart('cautions', WORDS.cautions.title, `<p>${WORDS.cautions.text}</p><ul>${WORDS.cautions.assumptions.map((a) => `<li>${escapeText(a)}</li>`).join('')}</ul>`)}</section></div></div>`
  );
};

const markOf = ({ passed }: Check): string => (passed ? WORDS.checks.passed : WORDS.checks.failed);
const columns = (names: readonly string[]): string => names.map((name) => `<th scope="col">${name}</th>`).join('');

/** The worst, the likely, and the worst of the whole stroke. */
const growingOf = ({ growing, independent, overAll }: Sheet['budget']): readonly Term[] => [
  ...growing,
  ...(independent ? [independent] : []),
  ...(overAll ? [overAll] : []),
];

/** Each term in µm, in steps and in turns; those that grow with travel apart from those that do not. */
const budgetTable = ({ budget, perStep, stepName, Delta }: Sheet, view: UnitView): string => {
  const row = ({ name, size }: Term) =>
    `<tr><td>${escapeText(name)}</td><td>${show(size, MOTION, view)}</td><td>${numeral(size / perStep, 3)}</td><td>${numeral(size / Math.abs(Delta), 3)}</td></tr>`;
  const heading = (text: string) => `<tr><th colspan="4" scope="rowgroup">${text}</th></tr>`;
  return (
    `<div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.budget.title}"><table><thead><tr>${columns(WORDS.budget.head(stepName))}</tr></thead><tbody>` +
    `${budget.seated ? '' : `<tr><td colspan="4">${WORDS.budget.playCounts}</td></tr>`}${budget.fixed.map(row).join('')}` +
    `${heading(WORDS.budget.growing)}${growingOf(budget).map(row).join('')}` +
    `${heading(WORDS.budget.whole)}${row(sumOf(budget))}</tbody></table></div>`
  );
};

/** A sum that leaves parts out says so where it stands, since nothing else of the field is printed. */
const together = ({ parts, unpriced }: PartsList): string => {
  const priced = parts.length - unpriced.length;
  if (unpriced.length === 0 || priced === 0) return WORDS.parts.together;
  return WORDS.parts.togetherOf({ priced, lines: parts.length, unpriced: unpriced.length });
};

const termsOf = ({ budget }: Sheet): readonly Term[] => [...budget.fixed, ...growingOf(budget), sumOf(budget)];

/** Three feet carry a plate. */
const SET = 3;

const partsTable = (list: PartsList | undefined): string => {
  if (list === undefined || list.parts.length === 0) return '';
  const money = (x: number) => fixed(x, 2);
  const priced = list.unpriced.length < list.parts.length;
  const rows = list.parts
    .map(
      (p) =>
        `<tr><td>${escapeText(wordsShown('parts', p.name))}</td><td>${p.count}</td><td>${p.price === undefined ? WORDS.parts.noPrice : money(p.price)}</td><td>${p.price === undefined ? '' : money(p.count * p.price)}</td></tr>`,
    )
    .join('');
  return `<section>${sheetPart('parts', WORDS.parts.title, `<div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.parts.title}"><table><thead><tr>${columns(WORDS.parts.head)}</tr></thead><tbody>${rows}<tr><th scope="row">${together(list)}</th><td></td><td></td><td>${priced ? money(list.total) : WORDS.parts.noPrice}</td></tr>${priced ? `<tr><th scope="row">${WORDS.parts.set(SET)}</th><td></td><td></td><td>${money(SET * list.total)}</td></tr>` : ''}</tbody></table></div>`)}</section>`;
};

/** Without parts no height is known, and the fields of threads and lengths rule. */
const ruling = (text: string) => {
  const parts = partsStated(text);
  return parts === undefined ? (['H_w'] as const) : parts.ok ? ruledBy(parts.value) : [];
};

export const designSheet = defineFigure({
  name: 'design-sheet',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: SHEET_QUANTITIES,
  choices: SHEET_CHOICES,
  texts: ['parts', 'adjuster'],
  chief: ['A', 'C', 's_w'],
  groups: {
    arrangement: ['arrangement', 't_l', 'assembly'],
    lengths: ['l_A', 'b_A', 'l_C', 'b_C', 'q_e'],
    wanted: ['S_w', 'e_w', 'H_w'],
    head: ['divider', 'k_d', 'theta_h', 'r_h'],
    errors: ['eps_A', 'eps_C', 'periodic', 'a_A', 'a_C'],
    load: ['attitude', 'W_c', 'F_lo', 'F_hi', 'sigma_a', 'tau_a'],
    spring: ['spring', 'action', 'F_0', 'k_s', 'F_g'],
    lock: ['kappa', 'mu'],
    tip: ['R', 'seat'],
    path: ['path', 'l', 'Delta_T'],
    parts: ['adjuster', 'parts'],
  },
  idle: ({ choices, texts }) => [
    ...ruling(texts.adjuster),
    ...(choices.arrangement === 'nested' ? [] : (['t_l'] as const)),
    ...(choices.divider === 'knob' ? [] : (['k_d'] as const)),
    ...(choices.periodic === 'measured' ? [] : (['a_A', 'a_C'] as const)),
    ...(choices.spring === 'no parts' ? (['action', 'F_0', 'k_s'] as const) : []),
  ],
  decidedBy: ['S_w', 's_w', 'e_w', 'H_w', 'F_lo', 'F_hi', 'W_c', 'F_g'],
  state: workSheet,
  draw,
  printed: amountsOf,
  caption: (s, view) => {
    const failed = s.checks.find((c) => !c.passed);
    return WORDS.caption({
      A: s.A.designation,
      C: s.C.designation,
      perTurn: show(s.Delta, MOTION, view),
      perStep: show(s.perStep, MOTION, view),
      step: s.stepName,
      verdict: verdictOf(s),
      failed: failed?.says(view),
    });
  },
  table: (s, view) => ({
    head: WORDS.head,
    rows: [
      ...s.groups.flatMap((g) => g.lines.map((l) => [g.title, l.name, lineText(l, view)])),
      ...termsOf(s).map((t) => [WORDS.budget.title, t.name, show(t.size, MOTION, view)]),
      ...s.checks.map((c) => [WORDS.checks.title, markOf(c), c.says(view)]),
      ...s.unjudged.map((u) => [WORDS.unjudged, u.name, u.why(view)]),
    ],
  }),
});
