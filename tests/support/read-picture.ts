/** Reads a drawn plot as an eye does: its scales from the ticks and their words, its curves and bars from their places. */
import { UNITS } from '../../widgets/engine/index.ts';
import { pointsOf } from './figures.ts';

/** A number as it is printed, in base units, with half a unit of its last digit. */
export interface Printed {
  readonly value: number;
  readonly within: number;
}

const NUMBER = /[−+-]?\d(?:[\d.\u202f]*\d)?(?:e[−+-]?\d+)?/;

export const printed = (text: string, unit?: string): Printed => {
  const found = NUMBER.exec(text);
  if (!found) throw new Error(`no number in “${text}”`);
  const digits = found[0].replace(/\u202f/g, '').replace('−', '-');
  const word = unit ?? /^\s*(\S+)/.exec(text.slice(found.index + found[0].length).replace(/\u00a0/g, ' '))?.[1] ?? '1';
  const factor = Object.hasOwn(UNITS, word) ? UNITS[word as keyof typeof UNITS].factor : 1;
  return {
    value: Number(digits) * factor,
    within: 0.5001 * 10 ** -(digits.split('.')[1]?.length ?? 0) * factor,
  };
};

const numeric = (text: string): boolean => /^[−-]?[\d.\u202f]+(?: %)?$/.test(text.replace(/\u00a0/g, ' ').trim());

/** From a place on the drawing to a value: straight through the first and the last tick. */
export interface Scale {
  readonly at: (place: number) => number;
  /** The value of a tenth of a pixel and more: what a drawing rounded to hundredths can be off. */
  readonly pixel: number;
}

const scaleOf = (ticks: readonly { place: number; value: number }[], what: string): Scale => {
  const sorted = [...ticks].sort((a, b) => a.place - b.place);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (!first || !last || first.place === last.place) throw new Error(`${what}: ${ticks.length} ticks make no scale`);
  const rate = (last.value - first.value) / (last.place - first.place);
  return { at: (place) => first.value + (place - first.place) * rate, pixel: Math.abs(rate) };
};

/** The scales of a chart of the plot library; x bare, y in the unit its panel names. */
const chartScales = (chart: Element, unit: string): { x: Scale; y: Scale } => {
  const ticks = (axis: 'x' | 'y') =>
    [...chart.querySelectorAll('text')]
      .filter((t) => (t.getAttribute('y') === '0.32em') === (axis === 'y') && numeric(t.textContent ?? ''))
      .map((t) => {
        const [, x, y] = /translate\(([-\d.e]+),\s*([-\d.e]+)\)/.exec(t.getAttribute('transform') ?? '') ?? [];
        return {
          place: Number(axis === 'x' ? x : y),
          value: printed(t.textContent ?? '', axis === 'x' ? '1' : unit).value,
        };
      });
  return { x: scaleOf(ticks('x'), 'x'), y: scaleOf(ticks('y'), 'y') };
};

/** The panel of a figure with this name, its charts’ scales and the drawing on top. */
export const panel = (document: Document, index: number): { box: Element; x: Scale; y: Scale } => {
  const box = document.querySelectorAll('.panel')[index];
  const chart = box?.querySelector('svg.chart');
  if (!box || !chart) throw new Error(`no panel ${index}`);
  const unit = /, in (\S+)$/.exec(box.querySelector('.panel-name')?.textContent ?? '')?.[1] ?? '1';
  return { box, ...chartScales(chart, unit) };
};

/** Scales of a drawing of ours: numbers at the left of their lines, and under their ticks. */
export const drawnScales = (
  svg: Element,
  unit = '1',
  axes: readonly ('x' | 'y')[] = ['x', 'y'],
): { x: Scale; y: Scale } => {
  const all = [...svg.querySelectorAll('text')].filter((t) => numeric(t.textContent ?? ''));
  const scale = (axis: 'x' | 'y'): Scale =>
    scaleOf(
      all
        .filter((t) => t.getAttribute('text-anchor') === (axis === 'x' ? 'middle' : 'end'))
        .map((t) => ({
          // Letters stand four pixels under the line they name.
          place: Number(t.getAttribute(axis)) - (axis === 'y' ? 4 : 0),
          value: printed(t.textContent ?? '', axis === 'x' ? '1' : unit).value,
        })),
      axis,
    );
  const y = scale('y');
  return { y, x: axes.includes('x') ? scale('x') : y };
};

/** The height of a curve at a place, straight between its points. */
export const heightOf = (d: string | null | undefined, x: number): number => {
  const points = pointsOf(d);
  for (let i = 1; i < points.length; i++) {
    const [[x0, y0], [x1, y1]] = [points[i - 1] ?? [0, 0], points[i] ?? [0, 0]];
    if (x >= Math.min(x0, x1) - 0.02 && x <= Math.max(x0, x1) + 0.02)
      return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  throw new Error(`the curve is not drawn at ${x}`);
};
