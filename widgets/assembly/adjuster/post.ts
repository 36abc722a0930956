/** The post beside an adjuster that keeps its carried part from turning, stated or assumed, and the arm of that part on it. mm. */
import { type Adjuster, partsOf, type Standing, standing } from './adjuster.ts';
import { heightOf, reach, widestStep } from './part.ts';

const widest = (a: Adjuster): number => Math.max(...partsOf(a).flatMap((p) => p.outer.map(reach)));
const largest = (a: Adjuster): number => Math.max(a.A.thread.d, a.C?.thread.d ?? 0);

/** Both ends of the travel, or so many turns each way. */
export const travelEnds = (a: Adjuster, most: number): readonly Standing[] =>
  [Math.max(a.anticlockwise.n, -most), Math.min(a.clockwise.n, most)].map((n) => standing(a, n));

/** A round post on the base, left of the axis, and the arm of the carried part that slides along it. */
export interface Post {
  /** Of its middle: negative. */
  readonly x: number;
  readonly half: number;
  readonly top: number;
  /** In the frame of the carried part: from beyond the post to the side of its widest step; a post inside that goes through it and needs none. */
  readonly arm: { readonly from: number; readonly to: number; readonly low: number; readonly high: number } | undefined;
}

/** Undefined where the carried part is held by springs or by nothing. The post is as high as the carried part rises within so many turns. */
export const postOf = (a: Adjuster, most = Number.POSITIVE_INFINITY): Post | undefined => {
  const { lock, carried } = a;
  if (!carried || lock.kind === 'none' || lock.kind === 'springs') return undefined;
  const half = 0.12 * largest(a);
  const x = lock.kind === 'assumed' ? -widest(a) - 0.25 * largest(a) : -Math.max(lock.radius, half);
  const step = widestStep(carried);
  const inside = x + 1.25 * half >= -step.r;
  return {
    x,
    half,
    top: Math.max(...travelEnds(a, most).map((s) => s.at.carried + heightOf(carried))),
    arm: inside
      ? undefined
      : {
          from: x - 2.2 * half,
          to: -step.r,
          low: step.from,
          high: step.from + Math.min(step.to - step.from, 0.45 * largest(a)),
        },
  };
};
