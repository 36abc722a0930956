/**
 * Where the springs of an adjuster stand: at which radius, where their two parts hold them, and, where their drawing is stated, how far they are stretched. mm, z from the bottom
 * of the base, x and y from the axis.
 *
 * A part holds a spring at the face of its widest step where that is wide enough, else by an arm or a clip at its side, anywhere up that step: where the length of the spring is
 * drawn, the holds stand so far apart as it asks for, as far as both steps allow. A strap lies across: its inner block is held by the upper part, its outer one stands on a post.
 */
import { acrossOf, type SpringForm, STRAP_BLOCK } from '../../engine/index.ts';
import { beyondHold, type Drawn, type FlatForm, reachOf } from '../spring/spring-plate.ts';
import { type Adjuster, partsOf, type Standing, springForce, standing } from './adjuster.ts';
import { heightOf, type Part, reach, widestStep } from './part.ts';

const widest = (a: Adjuster): number => Math.max(...partsOf(a).flatMap((p) => p.outer.map(reach)));
const largest = (a: Adjuster): number => Math.max(a.A.thread.d, a.C?.thread.d ?? 0);

/** The radius of the springs: as stated, or just outside all parts. */
export const springRadius = (a: Adjuster): number => a.springs?.radius ?? widest(a) + 0.3 * largest(a);

/** Half of what a spring takes along a radius: the printed height of a flat one, half the coil of another. */
export const springHalf = (a: Adjuster): number => {
  const drawn = a.springs?.drawn;
  if (!drawn) return 0.13 * largest(a);
  return (drawn.form.shape === 'coil' ? acrossOf(drawn.form) : drawn.high) / 2;
};

/** How far springs reach from the axis. */
export const springReach = (a: Adjuster): number => {
  const form = a.springs?.drawn?.form;
  return springRadius(a) + (form?.shape === 'strap' ? acrossOf(form) : springHalf(a));
};

/** The two parts that springs join. */
export const joinedBySprings = (a: Adjuster): readonly [Part, Part] | undefined => {
  const { springs } = a;
  if (!springs) return undefined;
  const [lower, upper] = (
    {
      'base and carried': [a.base, a.carried],
      'base and turned': [a.base, a.turned],
      'turned and carried': [a.turned, a.carried],
    } as const
  )[springs.between];
  return lower && upper ? [lower, upper] : undefined;
};

interface Hold {
  /** In the frame of its part, and from where to where it may stand. */
  readonly z: number;
  readonly from: number;
  readonly to: number;
  /** Distance from the axis at which its arm begins; the radius itself where it is a face. */
  readonly edge: number;
}

const holdOn = (part: Part, radius: number, face: 'above' | 'below'): Hold => {
  const step = widestStep(part);
  if (radius < reach(step)) {
    const z = face === 'above' ? step.to : step.from;
    return { z, from: z, to: z, edge: radius };
  }
  const to = Math.min(heightOf(part), step.to);
  // From inside the side of a prism, which hides it, since a flat stands nearer than a corner.
  return { z: Math.min(heightOf(part), (step.from + step.to) / 2), from: step.from, to, edge: step.r };
};

/** Stretch of one drawn spring after n turns: its force over its rate. Nought where no force is stated. */
export const stretchAt = (a: Adjuster, n: number): number => {
  const force = springForce(a, n);
  return force === undefined || !a.springs?.rate ? 0 : force / a.springs.rate;
};

interface Holds {
  readonly lower: Hold;
  readonly upper: Hold;
  readonly lowerPart: Part;
  readonly upperPart: Part;
}

const holdsOf = (a: Adjuster): Holds | undefined => {
  const parts = joinedBySprings(a);
  if (!parts) return undefined;
  const [lowerPart, upperPart] = parts;
  const radius = springRadius(a);
  const [lower, upper] = [holdOn(lowerPart, radius, 'above'), holdOn(upperPart, radius, 'below')];
  const drawn = a.springs?.drawn;
  // The foot of a strap is a post, as high as it asks for.
  if (!drawn || drawn.form.shape === 'strap') return { lower, upper, lowerPart, upperPart };
  const { at } = standing(a, 0);
  const gap = at[upperPart.role] + upper.z - at[lowerPart.role] - lower.z;
  const more = drawn.length - gap;
  const [down, up] = more > 0 ? [lower.z - lower.from, upper.to - upper.z] : [lower.to - lower.z, upper.z - upper.from];
  const room = down + up;
  const taken = Math.min(Math.abs(more), room);
  const share = (of: number) => (room > 0 ? (Math.sign(more) * taken * of) / room : 0);
  return {
    lower: { ...lower, z: lower.z - share(down) },
    upper: { ...upper, z: upper.z + share(up) },
    lowerPart,
    upperPart,
  };
};

/** Heights of the two ends of the springs, and where the arms that hold them begin, where the parts stand so. */
export interface SpringEnds {
  readonly foot: number;
  readonly head: number;
  readonly edges: { readonly foot: number; readonly head: number };
}

export const springEnds = (a: Adjuster, { at }: Pick<Standing, 'at'>): SpringEnds | undefined => {
  const holds = holdsOf(a);
  if (!holds) return undefined;
  const { lower, upper, lowerPart, upperPart } = holds;
  return {
    foot: at[lowerPart.role] + lower.z,
    head: at[upperPart.role] + upper.z,
    edges: { foot: lower.edge, head: upper.edge },
  };
};

/** A drawn flat spring as it stands after n turns. */
export interface StandingSpring {
  readonly drawn: Drawn;
  /** Height of y = 0 of its plate. */
  readonly z: number;
  /** Of the foot of the post that a strap ends on, and of its head. */
  readonly post: { readonly from: number; readonly to: number } | undefined;
}

export const flatFormOf = (form: SpringForm | undefined): FlatForm | undefined =>
  form && form.shape !== 'coil' ? form : undefined;

export const springAt = (a: Adjuster, s: Pick<Standing, 'at' | 'n'>): StandingSpring | undefined => {
  const drawn = a.springs?.drawn;
  const form = flatFormOf(drawn?.form);
  const ends = springEnds(a, s);
  if (!drawn || !form || !ends) return undefined;
  const { high, length } = drawn;
  const stretch = stretchAt(a, s.n);
  if (form.shape === 'strap') {
    const z = ends.head - stretch;
    return { drawn: { form, high, stretch, reach: 0 }, z, post: { from: ends.foot, to: z } };
  }
  const reached = reachOf(form, length - stretchAt(a, 0));
  return {
    drawn: { form, high, stretch, reach: Math.max(0, reached) },
    z: ends.foot + Math.min(0, reached),
    post: undefined,
  };
};

/** Between the two holds when the adjuster is put together: as they stand, and as the drawing asks for; a strap asks for none. */
export const springGap = (a: Adjuster): { readonly is: number; readonly wanted: number } | undefined => {
  const drawn = a.springs?.drawn;
  const ends = springEnds(a, standing(a, 0));
  return drawn && drawn.form.shape !== 'strap' && ends
    ? { is: ends.head - ends.foot, wanted: drawn.length }
    : undefined;
};

/** Angles round the axis at which springs stand, anticlockwise from the right. */
export const springAngles = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => (2 * Math.PI * i) / count);

/** How far a spring stands beyond its upper and its lower hold, and beside the middle of a strap. */
export const beyondSpring = (form: SpringForm): number =>
  form.shape === 'coil' ? form.t : form.shape === 'strap' ? Math.max(STRAP_BLOCK, 3 * form.t) / 2 : beyondHold(form);
