/**
 * The frame of a plot against turns: axes and grid drawn once by Plot, and the same scales as functions, so that
 * what moves on a drag lies in a drawing of its own on top and only has its attributes set.
 */

import * as Plot from '@observablehq/plot';
import { WORDS } from '#words/figures/kit.ts';
import { UNITS, type Unit } from '../../../engine/index.ts';
import { escapeText } from '../../../input/escape.ts';
import type { UnitView } from '../../../input/format.ts';
import { unitText } from '../../../input/format.ts';
import type { Inside } from '../plot-box.ts';
import { chartSvg, numberAxis } from './chart.ts';

export interface Frame {
  /** Turns at the left and right edge. */
  readonly x: readonly [number, number];
  /** Bottom and top, mm. */
  readonly y: readonly [number, number];
  /** The unit its y axis is written in. */
  readonly unit: Unit;
}

export const WIDTH = 400;
export const HEIGHT = 250;
export const MARGIN = { top: 22, right: 10, bottom: 26, left: 60 };

export const xAt = ({ x: [left, right] }: Frame, n: number): number =>
  MARGIN.left + ((n - left) / (right - left)) * (WIDTH - MARGIN.left - MARGIN.right);

export const yAt = ({ y: [bottom, top] }: Frame, z: number): number =>
  HEIGHT - MARGIN.bottom - ((z - bottom) / (top - bottom)) * (HEIGHT - MARGIN.top - MARGIN.bottom);

/** The unit in which values as large as this read best. */
export const axisUnit = (largest: number, view: UnitView): Unit => {
  if (view !== 'inch') return largest >= 1 ? 'mm' : 'µm';
  return largest >= 2.54 ? 'in' : largest >= 0.0254 ? 'thou' : largest >= 0.00254 ? 'tenths' : 'millionths';
};

/** How many of this unit a millimetre is. */
export const perMillimetre = (unit: Unit): number => 1 / UNITS[unit].factor;

const ROUND = [1, 1.5, 2, 3, 5, 7.5, 10];

/** The next round amount of this unit that is no smaller, in mm; a scale keeps still while values stay below it. */
export const roundUp = (value: number, unit: Unit): number => {
  const amount = value / UNITS[unit].factor;
  if (!(amount > 0)) return UNITS[unit].factor;
  const decade = 10 ** Math.floor(Math.log10(amount));
  const share = amount / decade;
  return (ROUND.find((r) => r >= share * (1 - 1e-9)) ?? 10) * decade * UNITS[unit].factor;
};

/** Frames drawn lately: a key or a drag mostly moves what lies on top and leaves the frame as it was. */
const known = new Map<string, string>();
const MOST_KNOWN = 30;

/** Frame, ticks and, where it is in sight, the line of nought. */
const frameSvg = (frame: Frame, title: string, ticks: number): string => {
  const key = JSON.stringify([frame, title, ticks]);
  const svg = known.get(key) ?? drawnFrame(frame, title, ticks);
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, svg);
  return svg;
};

const drawnFrame = (frame: Frame, title: string, ticks: number): string => {
  const factor = perMillimetre(frame.unit);
  const [bottom, top] = [frame.y[0] * factor, frame.y[1] * factor];
  return chartSvg({ width: WIDTH, height: HEIGHT, margin: MARGIN }, title, {
    x: numberAxis(...frame.x, ticks),
    y: numberAxis(bottom, top, 5),
    marks: bottom <= 0 && top >= 0 ? [Plot.ruleY([0], { className: 'zero' })] : [],
  });
};

/** A frame with its name, its unit and what lies on top of it. */
export const panelHtml = (frame: Frame, title: string, ticks: number, marks: string): string =>
  `<div class="panel"><p class="panel-name">${escapeText(WORDS.plot.inUnit(title, unitText(frame.unit)))}</p><div class="plot-box">${frameSvg(frame, title, ticks)}` +
  `<svg class="plot-marks" viewBox="0 0 ${WIDTH} ${HEIGHT}" aria-hidden="true">${marks}</svg></div><p class="x-name">${WORDS.plot.across}</p></div>`;

/** The inside of the frame. */
export const INSIDE: Inside = {
  left: MARGIN.left,
  right: WIDTH - MARGIN.right,
  top: MARGIN.top,
  floor: HEIGHT - MARGIN.bottom,
};

/** A key of the legend: a sample as it is drawn, and its words. */
export const legendKey = (sample: string, words: string, height = 10): string =>
  `<li><svg viewBox="0 0 34 ${height}" aria-hidden="true">${sample}</svg>${escapeText(words)}</li>`;

/** The key of a curve. */
export const legendItem = (className: string, dash: string | undefined, words: string): string =>
  legendKey(
    `<path class="curve ${className}" d="M1 5H33"${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}/>`,
    words,
  );
