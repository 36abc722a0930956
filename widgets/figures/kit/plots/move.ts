/** Moves what lies on a plot to where the reader’s numbers put it; it only sets attributes. */
import type { Point } from '../svg.ts';
import { px } from '../svg.ts';

/** Paths by the name they have in `data-shape`, dots by theirs in `data-dot`. */
export const moveMarks = (
  stage: HTMLElement,
  shapes: Readonly<Record<string, string>>,
  dots: Readonly<Record<string, Point>>,
): void => {
  for (const [key, d] of Object.entries(shapes)) stage.querySelector(`[data-shape="${key}"]`)?.setAttribute('d', d);
  for (const [key, [x, y]] of Object.entries(dots)) {
    const dot = stage.querySelector(`[data-dot="${key}"]`);
    dot?.setAttribute('cx', px(x));
    dot?.setAttribute('cy', px(y));
  }
};
