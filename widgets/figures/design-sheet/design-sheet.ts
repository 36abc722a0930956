/**
 * The design sheet: one design on one printed page, drawing, numbers, error budget, checks, parts and cautions. What the
 * screen shows is what the printer prints.
 */

import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import type { PartsList } from '../../input/parts-list.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure } from '../kit/figure.ts';
import { sumOf, type Term } from './budget.ts';
import { drawing } from './drawing.ts';
import { verdictOf } from './judge.ts';
import type { Line } from './lines.ts';
import { SHEET_CHOICES, SHEET_QUANTITIES } from './sheet-numbers.ts';
import { type Sheet, workSheet } from './work.ts';

const MOTION = { shown: 'motion', digits: 3 } as const;

const lineText = (line: Line, view: UnitView): string => {
  if ('words' in line) return line.words;
  const from = show(line.value.amount, line.value.format, view);
  return line.to === undefined ? from : `${from} to ${show(line.to.amount, line.to.format, view)}`;
};

const draw = (s: Sheet, view: UnitView): string => {
  const picture = s.fit.ok ? drawing(s.fit.value, s.ball, view) : s.fit;
  const groups = s.groups
    .filter((g) => g.lines.length > 0)
    .map(
      (g) =>
        `<section><h3>${g.title}</h3><dl>${g.lines.map((l) => `<div><dt>${escapeText(l.name)}</dt><dd>${escapeText(lineText(l, view))}</dd></div>`).join('')}</dl></section>`,
    )
    .join('');
  return (
    `<div class="sheet"><header><p class="sheet-title">${escapeText(s.A.designation)} with ${escapeText(s.C.designation)}, ${s.arrangement}</p>` +
    `<p class="sheet-verdict">${verdictOf(s)}</p></header>` +
    `<div class="sheet-top"><div>${picture.ok ? picture.value : `<p class="refusal">${escapeText(reasonOf(picture))}</p>`}</div><div class="sheet-groups">${groups}</div></div>` +
    `<div class="sheet-low"><section><h3>Error budget</h3>${budgetTable(s, view)}</section>` +
    `<section><h3>Checks</h3><ul class="checks">${s.checks.map((c) => `<li class="${c.passed ? 'passed' : 'failed'}"><b>${c.passed ? 'passed' : 'failed'}</b> ${escapeText(c.says(view))}</li>`).join('')}</ul></section>` +
    partsTable(s.parts) +
    `<section class="unjudged"><h3>Not judged</h3><ul>${s.unjudged.map((u) => `<li><a href="${u.at}">${escapeText(u.name)}</a>: ${escapeText(u.why(view))}</li>`).join('')}</ul></section>` +
    `<section class="sheet-notes"><h3>Cautions and assumptions</h3><p>Not lifting gear: block heavy work, keep hands and body out from under it, stay within the load stated by whoever supplied the hardware. Eye protection with springs and pressed balls. The shop’s rules, local codes and licensed practice come first.</p><ul>${s.assumptions.map((a) => `<li>${escapeText(a)}</li>`).join('')}</ul></section></div></div>`
  );
};

/** Each term in µm, in steps and in turns; those that grow with travel apart from those that do not. */
const budgetTable = ({ budget, perStep, stepName, Delta }: Sheet, view: UnitView): string => {
  const row = ({ name, size }: Term) =>
    `<tr><td>${escapeText(name)}</td><td>${show(size, MOTION, view)}</td><td>${numeral(size / perStep, 3)}</td><td>${numeral(size / Math.abs(Delta), 3)}</td></tr>`;
  const heading = (text: string) => `<tr><th colspan="4" scope="rowgroup">${text}</th></tr>`;
  return (
    `<div class="table-scroll" tabindex="0" role="group" aria-label="Error budget"><table><thead><tr><th scope="col">term</th><th scope="col">motion</th><th scope="col">${stepName}s</th><th scope="col">turns</th></tr></thead><tbody>` +
    `${budget.seated ? '' : '<tr><td colspan="4">Play counts, since the threads are not seated throughout.</td></tr>'}${budget.fixed.map(row).join('')}` +
    `${heading('grows with travel')}${[...budget.growing, ...(budget.independent ? [budget.independent] : [])].map(row).join('')}` +
    `${heading('all of it')}${row(sumOf(budget))}</tbody></table></div>`
  );
};

/** A sum that leaves parts out says so where it stands, since nothing else of the field is printed. */
const together = ({ parts, unpriced }: PartsList): string => {
  const priced = parts.length - unpriced.length;
  if (unpriced.length === 0 || priced === 0) return 'together';
  return `together, ${priced} of ${parts.length} lines; ${unpriced.length} ${unpriced.length === 1 ? 'has' : 'have'} no price`;
};

const termsOf = ({ budget }: Sheet): readonly Term[] => [
  ...budget.fixed,
  ...budget.growing,
  ...(budget.independent ? [budget.independent] : []),
  sumOf(budget),
];

const partsTable = (list: PartsList | undefined): string => {
  if (list === undefined || list.parts.length === 0) return '';
  const money = (x: number) => x.toFixed(2);
  const rows = list.parts
    .map(
      (p) =>
        `<tr><td>${escapeText(p.name)}</td><td>${p.count}</td><td>${p.price === undefined ? 'no price' : money(p.price)}</td></tr>`,
    )
    .join('');
  return `<section><h3>Parts</h3><div class="table-scroll" tabindex="0" role="group" aria-label="Parts"><table><thead><tr><th scope="col">part</th><th scope="col">count</th><th scope="col">price of one</th></tr></thead><tbody>${rows}<tr><th scope="row">${together(list)}</th><td></td><td>${list.unpriced.length < list.parts.length ? money(list.total) : 'no price'}</td></tr></tbody></table></div></section>`;
};

export const designSheet = defineFigure({
  name: 'design-sheet',
  title: 'Design sheet',
  threads: ['A', 'C'],
  quantities: SHEET_QUANTITIES,
  choices: SHEET_CHOICES,
  texts: ['parts'],
  state: workSheet,
  draw,
  caption: (s, view) => {
    const failed = s.checks.find((c) => !c.passed);
    return `${s.A.designation} with ${s.C.designation}: ${show(s.Delta, MOTION, view)} a turn, ${show(s.perStep, MOTION, view)} a ${s.stepName}. ${verdictOf(s)}${failed ? ` The first that failed: ${failed.says(view)}` : ''}`;
  },
  table: (s, view) => ({
    head: ['group', 'quantity', 'value'],
    rows: [
      ...s.groups.flatMap((g) => g.lines.map((l) => [g.title, l.name, lineText(l, view)])),
      ...termsOf(s).map((t) => ['Error budget', t.name, show(t.size, MOTION, view)]),
      ...s.checks.map((c) => ['Checks', c.passed ? 'passed' : 'failed', c.says(view)]),
      ...s.unjudged.map((u) => ['Not judged', u.name, u.why(view)]),
    ],
  }),
});
