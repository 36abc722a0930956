/** What a picture is read by, as a list of names and values beside it. */
import { escapeText } from '../../input/escape.ts';

export const factsHtml = (rows: readonly (readonly [name: string, value: string])[]): string =>
  `<dl class="facts">${rows.map(([name, value]) => `<div><dt>${escapeText(name)}</dt><dd>${escapeText(value)}</dd></div>`).join('')}</dl>`;
