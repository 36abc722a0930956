/**
 * A plot as text, with the face all plots of the notebook share: a full frame, ticks inward from all four sides, numbers outside, no grid.
 */
import * as Plot from '@observablehq/plot';
import { numeral } from '../../../input/format.ts';
import { plotDocument } from './document.ts';

/** What a plot is drawn on, in pixels. */
export interface Paper {
  readonly width: number;
  readonly height: number;
  readonly margin: { readonly top: number; readonly right: number; readonly bottom: number; readonly left: number };
}

/** Length of a tick, towards the inside. */
const TICK = -5;

/** Numbers under the frame stand this much farther off, clear of the lowest one at its side. */
const LOWER = 3;

/** Numbers below and at the left, and ticks without numbers at the far sides. An axis asked for by hand takes the place of all that Plot would add. */
const sides = ({ x, y }: Plot.PlotOptions, bare: readonly ('top' | 'right')[]) => {
  const silent = { label: null, text: null, tickSize: TICK };
  const told = (axis: Plot.ScaleOptions, farther = 0) => ({
    label: null,
    ticks: axis.ticks,
    tickSize: TICK,
    tickPadding: (axis.tickPadding ?? 3) + farther,
    tickFormat: axis.tickFormat,
  });
  return [
    ...(x === undefined ? [] : [Plot.axisX(told(x, LOWER) as Plot.AxisXOptions)]),
    ...(y === undefined ? [] : [Plot.axisY(told(y) as Plot.AxisYOptions)]),
    ...(bare.includes('top') && x
      ? [Plot.axisX({ ...silent, anchor: 'top', ticks: x.ticks } as Plot.AxisXOptions)]
      : []),
    ...(bare.includes('right') && y
      ? [Plot.axisY({ ...silent, anchor: 'right', ticks: y.ticks } as Plot.AxisYOptions)]
      : []),
  ];
};

/** `bare` are the far sides that repeat the ticks without numbers. */
export const chartSvg = (
  { width, height, margin }: Paper,
  title: string,
  { marks = [], ...parts }: Plot.PlotOptions,
  bare: readonly ('top' | 'right')[] = ['top', 'right'],
): string =>
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
      marks: [...marks, ...sides(parts, bare), Plot.frame({ className: 'frame', ariaHidden: 'true' })],
    }),
  );

/** An axis of plain numbers, without a name: the panel says what it shows. */
export const numberAxis = (from: number, to: number, ticks: number): Plot.ScaleOptions => ({
  domain: [from, to],
  label: null,
  ticks,
  tickSize: TICK,
  tickPadding: 6 - TICK,
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
