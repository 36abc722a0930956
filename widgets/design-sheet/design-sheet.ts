/**
 * The design sheet: one design on one printed page, drawing, numbers, error budget, checks, parts and cautions. What the
 * screen shows is what the printer prints.
 */
import { good, type Result, readPartsList } from '../engine/index.ts';
import type { Arrangement } from '../shared/assembly-layout.ts';
import { numeral, show, type UnitView } from '../shared/format.ts';
import type { Numbers } from '../shared/numbers.ts';
import { escapeText } from '../shared/svg.ts';
import type { Widget } from '../shared/widget.ts';
import { drawing } from './drawing.ts';
import { type Line, type Sheet, type Term, workSheet } from './work.ts';

const MOTION = { shown: 'motion', digits: 3 } as const;

const lineText = (line: Line, view: UnitView): string => {
  if (line.value === undefined) return line.words ?? '';
  const from = show(line.value.amount, line.value.dress, view);
  return line.to === undefined ? from : `${from} to ${show(line.to.amount, line.to.dress, view)}`;
};

const arrangementOf = (numbers: Numbers): Arrangement => (numbers.choices.arrangement ?? 'in line') as Arrangement;

const draw = (numbers: Numbers, view: UnitView): Result<string> => {
  const sheet = workSheet(numbers);
  if (!sheet.ok) return sheet;
  const s = sheet.value;
  const picture = drawing(s.A, s.C, arrangementOf(numbers), view);
  const failed = s.checks.filter((c) => !c.passed).length;
  const groups = s.groups
    .filter((g) => g.lines.length > 0)
    .map(
      (g) =>
        `<section><h3>${g.title}</h3><dl>${g.lines.map((l) => `<div><dt>${escapeText(l.name)}</dt><dd>${escapeText(lineText(l, view))}</dd></div>`).join('')}</dl></section>`,
    )
    .join('');
  return good(
    `<div class="sheet"><header><p class="sheet-title">${escapeText(s.A.designation)} with ${escapeText(s.C.designation)}, ${arrangementOf(numbers)}</p>` +
      `<p class="sheet-verdict">${failed === 0 ? `All ${s.checks.length} checks passed.` : `${failed} of ${s.checks.length} checks failed.`}</p></header>` +
      `<div class="sheet-top"><div>${picture.ok ? picture.value : `<p class="refusal">${escapeText(picture.reason)}</p>`}</div><div class="sheet-groups">${groups}</div></div>` +
      `<div class="sheet-low"><section><h3>Error budget</h3>${budgetTable(s, view)}</section>` +
      `<section><h3>Checks</h3><ul class="checks">${s.checks.map((c) => `<li class="${c.passed ? 'passed' : 'failed'}"><b>${c.passed ? 'passed' : 'failed'}</b> ${escapeText(c.says(view))}</li>`).join('')}</ul></section>` +
      `${partsTable(numbers)}<section class="sheet-notes"><h3>Cautions and assumptions</h3><p>Not lifting gear: block heavy work, keep hands and body out from under it, stay within the load stated by whoever supplied the hardware. Eye protection with springs and pressed balls. The shop’s rules, local codes and licensed practice come first.</p><ul>${s.assumptions.map((a) => `<li>${escapeText(a)}</li>`).join('')}</ul></section></div></div>`,
  );
};

/** Each term in µm, in steps and in turns; those that grow with travel apart from those that do not. */
const budgetTable = (s: Sheet, view: UnitView): string => {
  const row = ({ name, size }: Term) =>
    `<tr><td>${escapeText(name)}</td><td>${show(size, MOTION, view)}</td><td>${numeral(size / s.perStep, 3)}</td><td>${numeral(size / Math.abs(s.Delta), 3)}</td></tr>`;
  const total = s.budget.fixed.reduce((sum, t) => sum + t.size, 0);
  return (
    `<div class="table-scroll" tabindex="0" role="group" aria-label="Error budget"><table><thead><tr><th scope="col">term</th><th scope="col">motion</th><th scope="col">${s.stepName}s</th><th scope="col">turns</th></tr></thead><tbody>` +
    `${s.budget.seated ? '' : '<tr><td colspan="4">Play counts, since the threads are not seated throughout.</td></tr>'}${s.budget.fixed.map(row).join('')}${row({ name: 'together, if all add up', size: total })}` +
    `<tr><th colspan="4" scope="rowgroup">grows with travel</th></tr>${s.budget.growing.map(row).join('')}</tbody></table></div>`
  );
};

const partsTable = (numbers: Numbers): string => {
  const list = readPartsList(numbers.texts?.parts ?? '');
  if (!list.ok || list.value.parts.length === 0) return '';
  const money = (x: number) => x.toFixed(2);
  const rows = list.value.parts
    .map(
      (p) =>
        `<tr><td>${escapeText(p.name)}</td><td>${p.count}</td><td>${p.price === undefined ? 'no price' : money(p.price)}</td></tr>`,
    )
    .join('');
  return `<section><h3>Parts</h3><div class="table-scroll" tabindex="0" role="group" aria-label="Parts"><table><thead><tr><th scope="col">part</th><th scope="col">count</th><th scope="col">price of one</th></tr></thead><tbody>${rows}<tr><th scope="row">together</th><td></td><td>${money(list.value.total)}</td></tr></tbody></table></div></section>`;
};

export const designSheet: Widget = {
  name: 'design-sheet',
  title: 'Design sheet',
  threads: ['A', 'C'],
  quantities: [
    'k_d',
    'X_A',
    'X_C',
    'S_w',
    's_w',
    'theta_h',
    't_l',
    'eps_A',
    'eps_C',
    'a_A',
    'a_C',
    'F_lo',
    'F_hi',
    'W_c',
    'F_0',
    'k_s',
    'F_g',
    'mu',
    'r_h',
    'kappa',
    'R',
    'l',
    'Delta_T',
  ],
  choices: ['arrangement', 'divider', 'spring', 'action', 'attitude', 'seat', 'path'],
  texts: ['parts'],
  draw,
  says: (numbers, view) => {
    const sheet = workSheet(numbers);
    if (!sheet.ok) return sheet.reason;
    const s = sheet.value;
    const failed = s.checks.filter((c) => !c.passed);
    return `${s.A.designation} with ${s.C.designation}: ${show(s.Delta, MOTION, view)} a turn, ${show(s.perStep, MOTION, view)} a ${s.stepName}. ${failed[0] ? `${failed.length} of ${s.checks.length} checks failed; the first: ${failed[0].says(view)}` : `All ${s.checks.length} checks passed.`}`;
  },
  table: (numbers, view) => {
    const sheet = workSheet(numbers);
    if (!sheet.ok) return { head: [], rows: [] };
    return {
      head: ['group', 'quantity', 'value'],
      rows: [
        ...sheet.value.groups.flatMap((g) => g.lines.map((l) => [g.title, l.name, lineText(l, view)])),
        ...[...sheet.value.budget.fixed, ...sheet.value.budget.growing].map((t) => [
          'Error budget',
          t.name,
          show(t.size, MOTION, view),
        ]),
        ...sheet.value.checks.map((c) => ['Checks', c.passed ? 'passed' : 'failed', c.says(view)]),
      ],
    };
  },
  outline: (numbers, view) => JSON.stringify([numbers, view]),
};
