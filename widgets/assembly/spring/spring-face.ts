/** A spring seen on its own plane, from its lower hold up: what its figure, its drawing and the picture of an adjuster show of it. mm. */
import { acrossOf, type SpringForm } from '../../engine/index.ts';
import { coilLines } from './coil-seen.ts';
import { reachOf, springPlate } from './spring-plate.ts';
import type { SeenLine } from './spring-seen.ts';

export interface SpringFace {
  /** Outlines to fill, holes among them; and lines. */
  readonly closed: readonly SeenLine[];
  readonly open: readonly SeenLine[];
  /** From hold to hold. */
  readonly between: number;
}

/** `between`: from hold to hold while nothing pulls it; a strap has none. */
export const springFace = (form: SpringForm, between: number, stretch: number): SpringFace => {
  const now = form.shape === 'strap' ? stretch : between + stretch;
  if (form.shape === 'coil') return { closed: [], open: coilLines(form, stretch, now), between: now };
  const { outline, holes } = springPlate({ form, high: 1, stretch, reach: Math.max(0, reachOf(form, between)) });
  // A strap is seen about the middle of its length, its higher end to the left.
  const aside = form.shape === 'strap' ? acrossOf(form) / 2 : 0;
  return {
    closed: [outline, ...holes].map((ring) => ring.map(([x, y]) => [x - aside, y] as const)),
    open: [],
    between: now,
  };
};
