/**
 * Whether the drawn springs of an adjuster have their room: between what holds them, over the whole stroke; beside the parts and each other; under what stands on the tip and over
 * the ground. Every part is taken as round as its corners, since it may stand at any angle. mm.
 */
import { acrossOf } from '../../engine/index.ts';
import { coiledLength } from '../spring/coil-seen.ts';
import { reachOf } from '../spring/spring-plate.ts';
import { type Adjuster, partsOf, standing } from './adjuster.ts';
import { drawnStrain } from './drawn-springs.ts';
import { type Part, type Role, reach, widestStep } from './part.ts';
import {
  beyondSpring,
  joinedBySprings,
  springAt,
  springEnds,
  springGap,
  springHalf,
  springRadius,
  stretchAt,
} from './spring-place.ts';

export type SpringRoom =
  | {
      readonly fits: true;
      /** The least distance to anything beside, over or under them. */
      readonly clear: number;
      readonly least: number;
      readonly most: number;
      /** At the longest stretch; undefined for a coil. */
      readonly strain: number | undefined;
    }
  /** The folds alone are longer than the drawing leaves between the holds. */
  | { readonly fits: false; readonly why: 'folds'; readonly length: number; readonly room: number }
  | { readonly fits: false; readonly why: 'gap'; readonly is: number; readonly wanted: number }
  | { readonly fits: false; readonly why: 'slack'; readonly stretch: number; readonly n: number }
  | { readonly fits: false; readonly why: 'strain'; readonly strain: number; readonly limit: number }
  | { readonly fits: false; readonly why: 'part'; readonly part: Role; readonly by: number; readonly radius: number }
  | { readonly fits: false; readonly why: 'each other'; readonly width: number; readonly room: number }
  | { readonly fits: false; readonly why: 'above' | 'below'; readonly by: number };

/** What a strip may be strained by for months (engineering judgement, no source). */
const HELD = 0.005;
/** Sizes are written to a hundredth of a millimetre, which may strain a strip by so much more than it was designed for. */
const ROUNDED = 1.01;
/** Nearer than a printer’s line, holds are where they are drawn. */
const SAME = 0.1;

/** Undefined where no springs are drawn, or no force is stated from which their stretch would follow. */
export const springRoom = (a: Adjuster): SpringRoom | undefined => {
  const { springs } = a;
  const drawn = springs?.drawn;
  const parts = joinedBySprings(a);
  const gap = springGap(a);
  if (!springs || !drawn || !parts || springs.force === undefined) return undefined;
  const { form } = drawn;
  if (gap) {
    const between = drawn.length - stretchAt(a, 0);
    const reached = form.shape === 'coil' ? (between - coiledLength(form, 0)) / 2 : reachOf(form, between);
    if (!(reached >= 0)) return { fits: false, why: 'folds', length: drawn.length - 2 * reached, room: drawn.length };
    if (Math.abs(gap.is - gap.wanted) > SAME) return { fits: false, why: 'gap', ...gap };
  }
  const stretches = [a.anticlockwise.n, a.clockwise.n].map((n) => ({ n, stretch: stretchAt(a, n) }));
  const [least, most] = stretches.sort((p, q) => p.stretch - q.stretch) as [
    { n: number; stretch: number },
    { n: number; stretch: number },
  ];
  if (!(least.stretch > 0)) return { fits: false, why: 'slack', stretch: least.stretch, n: least.n };
  const strained = drawnStrain(drawn, most.stretch);
  const strain = strained?.ok ? strained.value : undefined;
  if (strain !== undefined && strain > HELD * ROUNDED) return { fits: false, why: 'strain', strain, limit: HELD };
  const beside = besideParts(a);
  if (beside && beside.by < 0) return { fits: false, why: 'part', ...beside };
  const neighbours = eachOther(a);
  if (neighbours && neighbours.room < neighbours.width) return { fits: false, why: 'each other', ...neighbours };
  const ends = overAndUnder(a);
  if (ends.above < 0) return { fits: false, why: 'above', by: -ends.above };
  if (ends.below < 0) return { fits: false, why: 'below', by: -ends.below };
  const clear = Math.min(
    beside?.by ?? Number.POSITIVE_INFINITY,
    neighbours ? neighbours.room - neighbours.width : Number.POSITIVE_INFINITY,
    ends.above,
    ends.below,
  );
  return { fits: true, clear, least: least.stretch, most: most.stretch, strain };
};

/** Over what heights the springs stand after n turns. */
const spanAt = (a: Adjuster, n: number): { readonly low: number; readonly high: number } => {
  const now = standing(a, n);
  const ends = springEnds(a, now);
  const form = a.springs?.drawn?.form;
  const beyond = form ? beyondSpring(form) : 0;
  const strap = form?.shape === 'strap' ? springAt(a, now) : undefined;
  // The post of a strap stands on its part.
  return { low: strap ? strap.z - beyond : (ends?.foot ?? 0) - beyond, high: (ends?.head ?? 0) + beyond };
};

/** The part that comes nearest to the springs from inside: how far off it stays, and how far its corners reach. */
const besideParts = (
  a: Adjuster,
): { readonly part: Role; readonly by: number; readonly radius: number } | undefined => {
  const form = a.springs?.drawn?.form;
  const radius = springRadius(a);
  const inner = form?.shape === 'strap' ? radius : radius - springHalf(a);
  const held: readonly Part[] = joinedBySprings(a) ?? [];
  let nearest: { part: Role; by: number; radius: number } | undefined;
  for (const n of [a.anticlockwise.n, 0, a.clockwise.n]) {
    const { at } = standing(a, n);
    const { low, high } = spanAt(a, n);
    for (const part of partsOf(a))
      for (const step of part.outer) {
        // Where they stand on its face they do not pass it.
        if (held.includes(part) && step === widestStep(part) && radius < reach(step)) continue;
        if (!(Math.min(high, at[part.role] + step.to) - Math.max(low, at[part.role] + step.from) > 1e-9)) continue;
        const by = inner - reach(step);
        if (!nearest || by < nearest.by) nearest = { part: part.role, by, radius: reach(step) };
      }
  }
  return nearest;
};

/** How wide one is round the axis, and what the next one leaves it; undefined where it has no neighbour. */
const eachOther = (a: Adjuster): { readonly width: number; readonly room: number } | undefined => {
  const { springs } = a;
  const form = springs?.drawn?.form;
  if (!springs || !form || springs.count < 2) return undefined;
  const strap = form.shape === 'strap';
  const width = strap ? (springs.drawn?.high ?? 0) : acrossOf(form);
  const inner = springRadius(a) - (strap ? 0 : springHalf(a));
  // Two stand on opposite sides of the axis.
  if (springs.count === 2) return inner > 0 ? undefined : { width, room: 0 };
  return { width, room: 2 * inner * Math.tan(Math.PI / springs.count) };
};

/** What is left under the plate that stands on the tip, where the springs reach under it, and over the ground. */
const overAndUnder = (a: Adjuster): { readonly above: number; readonly below: number } => {
  const ends = [a.anticlockwise.n, a.clockwise.n].map((n) => ({ now: standing(a, n), ...spanAt(a, n) }));
  // A strap has its foot on a post, which stands on its part.
  const strap = a.springs?.drawn?.form.shape === 'strap';
  return {
    above: Math.min(...ends.map(({ now, high }) => now.height - high)),
    below: Math.min(...ends.map(({ now, low }) => (strap ? (springEnds(a, now)?.foot ?? 0) : low))),
  };
};
