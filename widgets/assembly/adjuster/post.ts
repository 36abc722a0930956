/** The post beside an adjuster that keeps its carried part from turning, stated or assumed, the foot that holds it, and the arm of the carried part on it. mm. */
import { type Adjuster, partsOf, type Standing, standing } from './adjuster.ts';
import { heightOf, reach, type Step, widestStep } from './part.ts';

const reachOfAll = (parts: readonly { readonly outer: readonly Step[] }[]): number =>
  Math.max(...parts.flatMap((p) => p.outer.map(reach)));
const largest = (a: Adjuster): number => Math.max(a.A.thread.d, a.C?.thread.d ?? 0);

/** Both ends of the travel, or so many turns each way. */
export const travelEnds = (a: Adjuster, most: number): readonly Standing[] =>
  [Math.max(a.anticlockwise.n, -most), Math.min(a.clockwise.n, most)].map((n) => standing(a, n));

/** Wall of the arm round the post. */
export const ARM_WALL = 3;
/** Wall of the plate that holds the post, round the base and round the post (common practice, no source). */
export const FOOT_WALL = 5;
/** Height of the plate that holds the post beside the base, where the base is as high. */
const FOOT = 8;
/** Room between post and parts that pass it, at least. */
const PASSES = 0.3;

/** A round post on the base or beside it, left of the axis, and the arm of the carried part that slides along it. */
export interface Post {
  /** Of its middle: negative. */
  readonly x: number;
  readonly half: number;
  /** Of the base’s face that it stands on; nought beside the base. */
  readonly low: number;
  readonly top: number;
  /** The plate that holds it, on the ground round the lowest step of a base that does not reach under it. */
  readonly foot: { readonly round: Step; readonly high: number } | undefined;
  /** From what holds it to the middle of the arm, where the carried part stands highest. */
  readonly free: number;
  /** In the frame of the carried part: from beyond the post to the side of its widest step; a post inside that goes through it and needs none. */
  readonly arm: { readonly from: number; readonly to: number; readonly low: number; readonly high: number } | undefined;
}

/** As thick as its row says, or as there is room for up to 0.6 of the larger thread; of a tenth of a millimetre. */
const halfOf = (a: Adjuster): number => {
  const { lock, carried, turned } = a;
  const slight = 0.12 * largest(a);
  if (lock.kind !== 'key' && lock.kind !== 'post') return slight;
  if (lock.thick !== undefined) return lock.thick / 2;
  const room = lock.radius - reachOfAll(carried ? [turned, carried] : [turned]) - PASSES;
  return Math.max(slight, Math.floor(20 * Math.min(room, 0.3 * largest(a))) / 20);
};

/** Undefined where the carried part is held by springs or by nothing. The post is as high as the carried part rises within so many turns. */
export const postOf = (a: Adjuster, most = Number.POSITIVE_INFINITY): Post | undefined => {
  const { lock, carried, base } = a;
  if (!carried || lock.kind === 'none' || lock.kind === 'springs') return undefined;
  const half = halfOf(a);
  const x = lock.kind === 'assumed' ? -reachOfAll(partsOf(a)) - 0.25 * largest(a) : -Math.max(lock.radius, half);
  const step = widestStep(carried);
  const inside = x + 1.25 * half >= -step.r;
  const near = -x - half;
  const low = Math.max(0, ...base.outer.filter((o) => reach(o) > near).map((o) => o.to));
  const round = base.outer.find((o) => o.from <= 1e-9);
  const foot = lock.kind !== 'assumed' && low === 0 && round ? { round, high: Math.min(FOOT, round.to) } : undefined;
  const arm = inside
    ? undefined
    : {
        from: x - 2.2 * half,
        to: -step.r,
        low: step.from,
        high: step.from + Math.min(step.to - step.from, 0.45 * largest(a)),
      };
  const highest = Math.max(...travelEnds(a, most).map((s) => s.at.carried));
  const meets = arm ? (arm.low + arm.high) / 2 : step.from;
  return {
    x,
    half,
    low,
    top: highest + heightOf(carried),
    foot,
    free: Math.max(1, highest + meets - (foot?.high ?? low)),
    arm,
  };
};
