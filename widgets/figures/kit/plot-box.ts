/**
 * What all plots share, by whichever means they are drawn: a full frame with ticks inward from all four sides, lines called by their names at
 * their ends, and the reader’s point let down on both axes.
 */
import { escapeText } from '../../input/escape.ts';
import { type Point, px } from './svg.ts';

/** The inside of a frame, in picture units. */
export interface Inside {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly floor: number;
}

const TICK = 5;

/** A frame with ticks at these places across and up. */
export const frameBox = (
  { left, right, top, floor }: Inside,
  across: readonly number[],
  up: readonly number[],
): string => {
  const ticks = [
    ...across.map((x) => `M${px(x)} ${floor}v${-TICK}M${px(x)} ${top}v${TICK}`),
    ...up.map((y) => `M${left} ${px(y)}h${TICK}M${right} ${px(y)}h${-TICK}`),
  ].join('');
  return `<path class="ticks" d="${ticks}"/><rect class="frame" x="${left}" y="${top}" width="${right - left}" height="${floor - top}"/>`;
};

/** From a point over to the left axis and down to the one below. */
export const dropPath = ([x, y]: Point, { left, floor }: Pick<Inside, 'left' | 'floor'>): string =>
  `M${px(left)} ${px(y)}H${px(x)}V${px(floor)}`;

/** What a line is called, and the height of its end. */
export interface EndLabel {
  readonly className: string;
  readonly words: string;
  readonly y: number;
}

/** A line of letters on the narrowest page, as a share of the width of the frame there. */
const LINE = 0.052;

/** Rising places moved apart to at least `apart`, kept between two ends. */
export const spaced = (places: readonly number[], apart: number, low: number, high: number): number[] => {
  const out = [...places];
  for (let i = 0; i < out.length; i++) out[i] = Math.max(out[i] ?? 0, i === 0 ? low : (out[i - 1] ?? 0) + apart);
  for (let i = out.length - 1; i >= 0; i--)
    out[i] = Math.min(out[i] ?? 0, i === out.length - 1 ? high : (out[i + 1] ?? 0) - apart);
  return out;
};

/** Names of lines inside the frame at their right ends, above the line and apart from each other. */
export const endLabels = (labels: readonly EndLabel[], { left, right, top, floor }: Inside): string => {
  const line = LINE * (right - left);
  const sorted = [...labels].sort((a, b) => a.y - b.y);
  const places = spaced(
    sorted.map(({ y }) => y - 6),
    line,
    top + line,
    floor - 8,
  );
  return sorted
    .map(
      ({ className, words }, i) =>
        `<text class="line-name clear ${className}" x="${px(right - 9)}" y="${px(places[i] ?? 0)}" text-anchor="end">${escapeText(words)}</text>`,
    )
    .join('');
};
