/**
 * A part of an adjuster: what it is outside and what is bored in it, step by step along the axis.
 *
 * A part stands in its own frame: z from its lower end up, mm, as it is fitted in an upright adjuster. Its outside is a stack of
 * steps without gaps; its bores are steps too, each from one z to another. A step may carry a thread. Everything else
 * about a part (its section, its solid, what it strikes, its volume) follows from these steps, so no two of these can differ.
 */
import { diameters, type Thread } from '../../engine/index.ts';

export type Role = 'base' | 'turned' | 'carried';

/** Which step of a part this is; the words for it stand in the table of words. */
export type StepName =
  | 'thread'
  | 'body'
  | 'hexagon'
  | 'head'
  | 'collar'
  | 'neck'
  | 'block'
  | 'plate'
  | 'cap'
  | 'bore'
  | 'relief';

export interface Step {
  readonly name: StepName;
  readonly from: number;
  readonly to: number;
  /** Radius of a round step, half across flats of a prism, major radius of a thread. */
  readonly r: number;
  readonly shape: 'round' | 'hexagon' | 'square';
  readonly thread?: Thread;
  /** A drilled hole that ends blind, in the cone of its drill: up at its upper end, down at its lower. */
  readonly point?: 'up' | 'down';
}

/** A drill of 118° (the usual point, from memory): its cone is so high by the radius of its hole. */
const POINT = 1 / Math.tan((59 * Math.PI) / 180);
export const pointOf = ({ point, r }: Pick<Step, 'point' | 'r'>): number =>
  point === undefined ? 0 : (point === 'up' ? 1 : -1) * POINT * r;

/** A thread of a part, as the joint with its neighbour reads it. */
export interface ThreadEnd {
  readonly thread: Thread;
  readonly gender: 'external' | 'internal';
  readonly from: number;
  readonly to: number;
}

/** A size of a part by name, and whether its maker stated it: what was assumed is drawn, and told as assumed. Every step of a part has its own. */
export interface Size {
  readonly name:
    | 'thread A'
    | 'thread C'
    | 'height'
    | 'body'
    | 'head'
    | 'hexagon'
    | 'width'
    | 'diameter'
    | 'plate'
    | 'collar'
    | 'neck'
    | RoundSize;
  readonly value: number;
  readonly stated: boolean;
  /** Along the axis, in the frame of the part; left out for widths. */
  readonly from?: number;
  readonly to?: number;
  /** Of a diameter that is not that of the whole part: from where to where it goes. */
  readonly over?: { readonly from: number; readonly to: number };
}

/** Diameters of steps and bores that follow from a thread or are common, and so are never stated. */
export type RoundSize = 'body diameter' | 'collar diameter' | 'neck diameter' | 'bore' | 'relief';

export interface Part {
  readonly role: Role;
  /** As its maker names it, such as `coupling nut`. */
  readonly kind: string;
  readonly outer: readonly Step[];
  readonly bores: readonly Step[];
  /** The thread shared with the part below it. The base has none. */
  readonly below: ThreadEnd | undefined;
  /** The thread shared with the part above it. The carried part has none. */
  readonly above: ThreadEnd | undefined;
  readonly sizes: readonly Size[];
  /** Hexagon socket in its top, by the standard of its kind: across flats and deep, mm. It is no bore: nothing is joined in it. */
  readonly socket?: { readonly flats: number; readonly depth: number };
  /** Whether it stands on the ground, which then is a stop for all that hangs below it. */
  readonly grounded: boolean;
  readonly material: MaterialName;
  /** Thickness of the coat on all its surfaces, mm; nought where there is none. */
  readonly coat: number;
  readonly price: number | undefined;
  readonly count: number;
}

/** Density, g/cm³, from memory and rounded: they serve the mass of a part on a sheet. */
export const DENSITIES = { steel: 7.85, brass: 8.5, aluminium: 2.7, bronze: 8.8, plastic: 1.24 } as const;
export type MaterialName = keyof typeof DENSITIES;

export const heightOf = (part: Part): number => part.outer.at(-1)?.to ?? 0;

/** Whether a bore comes out at its top. */
export const isOpenAbove = (part: Part): boolean => part.bores.some((b) => Math.abs(b.to - heightOf(part)) < 1e-9);

/** Corner over flat of a prism. */
const CORNER = { round: 1, hexagon: 2 / Math.sqrt(3), square: Math.SQRT2 } as const;

/** Radius of the circle round a step. */
export const reach = (step: Step): number => step.r * CORNER[step.shape];

export const widestStep = (part: Part): Step =>
  part.outer.reduce((best, o) => (reach(o) > reach(best) + 1e-9 ? o : best));

/** A ring of material with square edges, as one part strikes another. */
export interface Ring {
  readonly inner: number;
  readonly outer: number;
  readonly from: number;
  readonly to: number;
  readonly name: StepName;
}

/**
 * The part as rings, bottom to top. A thread is taken at its major diameter on screw and nut, so that a screw passes through its
 * nut and strikes all that is narrower.
 */
export const ringsOf = (part: Part): Ring[] => {
  const cuts = [...new Set([...part.outer, ...part.bores].flatMap((s) => [s.from, s.to]))].sort((a, b) => a - b);
  const rings: Ring[] = [];
  for (let i = 0; i + 1 < cuts.length; i++) {
    const [from, to] = [cuts[i] as number, cuts[i + 1] as number];
    const within = (s: Step) => s.from <= from + 1e-9 && s.to >= to - 1e-9;
    const outside = part.outer.find(within);
    if (!outside) continue;
    const bored = part.bores.filter(within);
    const inner = Math.max(0, ...bored.map((s) => s.r));
    rings.push({ inner, outer: reach(outside), from, to, name: outside.name });
  }
  return rings;
};

/** Area of the section of a step across the axis, mm². A thread by its profile, which every section across it cuts alike. */
const areaOf = (step: Step): number => {
  if (step.thread) return threadArea(step.thread);
  if (step.shape === 'hexagon') return 2 * Math.sqrt(3) * step.r ** 2;
  return step.shape === 'square' ? 4 * step.r ** 2 : Math.PI * step.r ** 2;
};

/** Mean of π r² over one pitch of the basic profile: crest flat P/8, flanks of 5/16 P each, root flat P/4. */
const threadArea = (thread: Thread): number => {
  const [R, r] = [thread.d / 2, diameters(thread).d1 / 2];
  return Math.PI * (R ** 2 / 8 + r ** 2 / 4 + (5 / 8) * ((R ** 2 + R * r + r ** 2) / 3));
};

/** Volume in mm³; what of a bore lies outside the part counts for nothing. */
export const volumeOf = (part: Part): number =>
  part.outer.reduce((sum, s) => sum + areaOf(s) * (s.to - s.from), 0) -
  part.bores.reduce((sum, s) => sum + areaOf(s) * (s.to - s.from + Math.abs(pointOf(s)) / 3), 0) -
  (part.socket ? (Math.sqrt(3) / 2) * part.socket.flats ** 2 * part.socket.depth : 0);

/** Mass in grams. */
export const massOf = (part: Part): number => (volumeOf(part) * DENSITIES[part.material]) / 1000;
