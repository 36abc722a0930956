/**
 * The parts every figure has besides its picture: the sentence that says what the picture shows and the table of
 * its numbers. Built the same way into the printed page and into the living one.
 */
import type { UnitView } from './format.ts';
import type { Numbers } from './numbers.ts';
import { escapeText } from './svg.ts';
import type { Table, Widget } from './widget.ts';

export const figureParts = (widget: Widget, numbers: Numbers, view: UnitView): string => {
  const drawn = widget.draw(numbers, view);
  return (
    `<div class="stage" data-stage>${drawn.ok ? drawn.value : ''}</div>` +
    `<p class="refusal" data-refusal role="status">${drawn.ok ? '' : escapeText(drawn.reason)}</p>` +
    `<p class="says" data-says>${drawn.ok ? escapeText(widget.says(numbers, view)) : ''}</p>` +
    `<details class="numbers-behind"><summary>The numbers behind this figure</summary><div data-table>${drawn.ok ? tableHtml(widget.table(numbers, view)) : ''}</div></details>`
  );
};

export const tableHtml = (table: Table): string =>
  `<div class="table-scroll" tabindex="0" role="group" aria-label="Table"><table><thead><tr>${table.head.map((h) => `<th scope="col">${escapeText(h)}</th>`).join('')}</tr></thead>` +
  `<tbody>${table.rows.map((r) => `<tr>${r.map((c) => `<td>${escapeText(c)}</td>`).join('')}</tr>`).join('')}</tbody></table></div>`;

/** Comma-separated values by RFC 4180. */
export const tableCsv = (table: Table): string =>
  `${[table.head, ...table.rows]
    .map((row) => row.map((cell) => (/[",\r\n]/.test(cell) ? `"${cell.replace(/"/g, '""')}"` : cell)).join(','))
    .join('\r\n')}\r\n`;
