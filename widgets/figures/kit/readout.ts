/** The figures that stand beside a picture, each under its name; those with a key follow the reader’s hand. */
import { escapeText } from '../../input/escape.ts';

export type LiveFigure = readonly [key: string, name: string, value: string];
export type FixedFigure = readonly [name: string, value: string];

export const readoutHtml = (figures: readonly (LiveFigure | FixedFigure)[]): string =>
  `<dl class="readout">${figures.map(rowHtml).join('')}</dl>`;

const rowHtml = (figure: LiveFigure | FixedFigure): string => {
  if (figure.length === 2) return `<div><dt>${escapeText(figure[0])}</dt><dd>${escapeText(figure[1])}</dd></div>`;
  const [key, name, value] = figure;
  return `<div class="${key}"><dt>${escapeText(name)}</dt><dd data-read="${key}">${escapeText(value)}</dd></div>`;
};
