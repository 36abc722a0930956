/**
 * The parts every figure has besides its picture: the sentence that says what the picture shows and the table of
 * its numbers. Built the same way into the printed page and into the living one.
 */

import { WORDS } from '#words/figures/kit.ts';
import { DECIMAL_MARK, SEPARATOR } from '#words/language.ts';
import type { Numbers } from '../../assembly/numbers.ts';
import { escapeText } from '../../input/escape.ts';
import type { UnitView } from '../../input/format.ts';
import { toCsv } from '../../input/readings-table.ts';
import { reasonOf } from '../../words/reason.ts';
import type { Drawn, Figure, Table } from './figure.ts';
import { withSizes } from './svg.ts';

/**
 * The picture of a figure on a page. Hatchings and clips are found by id over the whole page, and a browser leaves out those of
 * a figure that is out of view, so each id carries the name of the figure's own set of numbers in front.
 */
export const pictureOf = (drawn: Drawn, set: string): string => withIds(drawn.draw(), set);
export const readingsOf = (drawn: Drawn, set: string): string => withIds(drawn.readings(), set);

const withIds = (html: string, set: string): string => withSizes(html).replace(/( id="|url\(#)/g, `$1${set}-`);

/** The picture before its script has come: what will slide is a picture still, and no stop of the Tab key. */
const unmounted = (html: string): string =>
  html.replace(/<[^>]* role="slider"[^>]*>/g, (tag) =>
    tag
      .replace(' role="slider" tabindex="0"', ' role="img"')
      .replace(/ aria-(?:orientation|roledescription|value\w+)="[^"]*"/g, ''),
  );

export interface FigureParts {
  readonly stage: string;
  readonly refusal: string;
  readonly says: string;
  /** What is read off and the table, folded. */
  readonly numbers: string;
}

/** `own`: what marks their language, as an attribute, where they stand in a chapter of another. */
export const figureParts = (figure: Figure, numbers: Numbers, view: UnitView, set: string, own = ''): FigureParts => {
  const at = figure.at(numbers, view);
  const drawn = at.ok ? at.value : undefined;
  const readings = drawn?.readings() ?? '';
  return {
    stage: `<div class="stage" data-stage>${drawn ? unmounted(pictureOf(drawn, set)) : ''}</div>`,
    refusal: `<p class="refusal"${own} data-refusal role="status">${at.ok ? '' : escapeText(reasonOf(at))}</p>`,
    says: `<p class="says"${own} data-says>${drawn ? escapeText(drawn.caption()) : ''}</p>`,
    numbers:
      `<details class="numbers-behind"${own}><summary>${figure.numbersName ?? WORDS.figure.numbersBehind}</summary>` +
      `<div class="readings" data-readings>${unmounted(withIds(readings, set))}</div>` +
      `<div data-table>${drawn ? tableHtml(drawn.table()) : ''}</div></details>`,
  };
};

export const tableHtml = (table: Table): string =>
  `<div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.figure.table}"><table><thead><tr>${table.head.map((h) => `<th scope="col">${escapeText(h)}</th>`).join('')}</tr></thead>` +
  `<tbody>${table.rows.map((r) => `<tr>${r.map((c) => `<td${NUMBER.test(c) ? ' class="number-cell"' : ''}>${escapeText(c)}</td>`).join('')}</tr>`).join('')}</tbody></table></div>`;

/** What is set to the right, so that digits stand under digits: a number with or without its sign and unit. */
const NUMBER = /^[+−-]?\d[\d.,\u202f\u00a0]*(?:[\u00a0 ]\S{1,6})?$/;

/** Comma-separated values by RFC 4180. */
export const tableCsv = (table: Table): string =>
  toCsv(table.head, table.rows, { separator: SEPARATOR, decimalMark: DECIMAL_MARK });
