/** A plot as text, in the form all plots of the notebook share. */
import * as Plot from '@observablehq/plot';
import { numeral } from '../../../input/format.ts';
import { plotDocument } from './document.ts';

/** What a plot is drawn on, in pixels. */
export interface Paper {
  readonly width: number;
  readonly height: number;
  readonly margin: { readonly top: number; readonly right: number; readonly bottom: number; readonly left: number };
}

export const chartSvg = ({ width, height, margin }: Paper, title: string, parts: Plot.PlotOptions): string =>
  markup(
    Plot.plot({
      document: plotDocument(),
      width,
      height,
      marginTop: margin.top,
      marginRight: margin.right,
      marginBottom: margin.bottom,
      marginLeft: margin.left,
      className: 'chart',
      ariaLabel: title,
      ...parts,
    }),
  );

/** An axis of plain numbers, without a name: the panel says what it shows. */
export const numberAxis = (from: number, to: number, ticks: number): Plot.ScaleOptions => ({
  domain: [from, to],
  label: null,
  ticks,
  tickSize: 4,
  tickFormat: (value: number) => numeral(value),
});

/**
 * Plot names each group of its marks, where no role allows a name; the figure's own title says it better. The style sheet it
 * puts into each plot stands in the page's own, since the page lets no other count.
 */
const markup = (plot: Element): string =>
  plot.outerHTML
    .replace(/<style>[^<]*<\/style>/, '')
    .replace(/<g\b[^>]*>/g, (tag) => (tag.includes(' role=') ? tag : tag.replace(/ aria-label="[^"]*"/, '')));
