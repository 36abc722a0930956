/**
 * A joint: two parts that share a thread, and how far the one may move along the other.
 *
 * The position t of the upper part is the height of its lower end over that of the lower part, mm. Three things bound t:
 * the thread must keep the engagement asked for; rings of the two parts may not enter each other; and both are plain
 * interval arithmetic. A home, a shoulder, the bottom of a blind thread, the ground and two screws that meet are therefore
 * not told apart here: each is a pair of rings that touch, and is named by them.
 */
import { bad, good, type Result } from '../../engine/index.ts';
import { type Part, type Ring, ringsOf, type StepName, type ThreadEnd } from './part.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'joint-too-short': {
      readonly joint: 'A' | 'C';
      readonly kept: number;
      readonly length: number;
      readonly gender: 'external' | 'internal';
    };
    'joint-without-room': { readonly joint: 'A' | 'C'; readonly part: string; readonly ground: boolean };
  }
}

/** What ends a motion: a thread with only its least engagement left, or two surfaces that touch. */
export type Bound =
  | { readonly kind: 'least engagement' }
  | { readonly kind: 'contact'; readonly lower: StepName | 'ground'; readonly upper: StepName };

export interface Span {
  readonly from: number;
  readonly to: number;
  readonly atFrom: Bound;
  readonly atTo: Bound;
}

export interface Joint extends Span {
  readonly lower: ThreadEnd;
  readonly upper: ThreadEnd;
  /** Engagement kept, mm. */
  readonly kept: number;
  /** Where it is screwed home: the end that is a contact; of two, the one with the longer engagement. Undefined where both run out. */
  readonly home: 'from' | 'to' | undefined;
}

const RUN_OUT: Bound = { kind: 'least engagement' };
/** Lengths closer than this are the same: a millionth of what a caliper reads. */
const SAME = 1e-9;

/** Positions of the upper part at which a ring of it is inside a ring of the lower one; undefined where they pass each other. */
interface Forbidden {
  readonly from: number;
  readonly to: number;
  readonly below: Bound;
  readonly above: Bound;
}

/** The ground as a ring under a part that stands on it: deep enough for any part that hangs into it. */
const GROUND = { inner: 0, outer: 1e6, from: -1e6, to: 0 } as const;

export const forbiddenOf = (lower: Part, upper: Part): Forbidden[] => {
  const blocks: Forbidden[] = [];
  const rings = ringsOf(lower);
  for (const u of ringsOf(upper)) {
    for (const l of rings) if (strike(l, u)) blocks.push(blockOf(l, u, l.name));
    if (lower.role === 'base' && lower.grounded) blocks.push(blockOf(GROUND, u, 'ground'));
  }
  return blocks;
};

const strike = (a: Ring, b: Ring): boolean => Math.min(a.outer, b.outer) - Math.max(a.inner, b.inner) > 1e-6;

const blockOf = (l: Omit<Ring, 'name'>, u: Ring, name: StepName | 'ground'): Forbidden => {
  const contact: Bound = { kind: 'contact', lower: name, upper: u.name };
  return { from: l.from - u.to, to: l.to - u.from, below: contact, above: contact };
};

/** The free stretches of a span once what is forbidden is taken out, in rising order. */
export const freeSpans = (span: Span, forbidden: readonly Forbidden[]): Span[] => {
  const spans: Span[] = [];
  let { from, atFrom } = span;
  for (const f of [...forbidden].sort((a, b) => a.from - b.from)) {
    if (f.to <= from + SAME) continue;
    if (f.from >= span.to - SAME) break;
    if (f.from > from + SAME) spans.push({ from, to: f.from, atFrom, atTo: f.below });
    from = f.to;
    atFrom = f.above;
  }
  if (from < span.to - SAME) spans.push({ from, to: span.to, atFrom, atTo: span.atTo });
  return spans;
};

/** Engaged length at a position. */
export const engagedAt = ({ lower, upper }: Pick<Joint, 'lower' | 'upper'>, t: number): number =>
  Math.max(0, Math.min(lower.to, upper.to + t) - Math.max(lower.from, upper.from + t));

/** The joint of two parts, or why nothing is left of it. `kept` in mm. */
export const jointOf = (lower: Part, upper: Part, name: 'A' | 'C', kept: number): Result<Joint> => {
  const [x, y] = [lower.above, upper.below];
  if (!x || !y) throw new Error('A joint of parts without threads.');
  // A nut may be engaged to its last thread; a screw that is has nothing to travel.
  for (const end of [x, y])
    if (!(end.to - end.from > kept - (end.gender === 'internal' ? SAME : -SAME)))
      return bad('joint-too-short', { joint: name, kept, length: end.to - end.from, gender: end.gender });
  const window: Span = { from: x.from + kept - y.to, to: x.to - kept - y.from, atFrom: RUN_OUT, atTo: RUN_OUT };
  const forbidden = forbiddenOf(lower, upper);
  const free = freeSpans(window, forbidden);
  const longest = free.reduce<Span | undefined>(
    (best, s) => (best === undefined || s.to - s.from > best.to - best.from + SAME ? s : best),
    undefined,
  );
  if (!longest) {
    const ground = forbidden.some((f) => f.above.kind === 'contact' && f.above.lower === 'ground' && f.to >= window.to);
    return bad('joint-without-room', { joint: name, part: upper.kind, ground });
  }
  return good({ ...longest, lower: x, upper: y, kept, home: homeOf(longest, x, y) });
};

const homeOf = (span: Span, lower: ThreadEnd, upper: ThreadEnd): Joint['home'] => {
  const [below, above] = [span.atFrom.kind === 'contact', span.atTo.kind === 'contact'];
  if (below && above)
    return engagedAt({ lower, upper }, span.to) > engagedAt({ lower, upper }, span.from) + SAME ? 'to' : 'from';
  return below ? 'from' : above ? 'to' : undefined;
};

/** How far a joint stands out of home at a position, mm; from its lower end where it has no home. */
export const outOf = (joint: Joint, t: number): number => (joint.home === 'to' ? joint.to - t : t - joint.from);

/** The position that stands so far out of home. */
export const positionOut = (joint: Joint, out: number): number =>
  joint.home === 'to' ? joint.to - out : joint.from + out;

/**
 * The gap that is measured between the two parts of a joint at a position, mm: the least distance of two faces that would meet on the way home, outside the thread. Where the
 * end of a screw meets the bottom of its hole first, some of it is left at home. Undefined where no two faces meet outside.
 */
export const gapAt = (lower: Part, upper: Part, joint: Joint, t: number): number | undefined => {
  const up = joint.home === 'to';
  // Of the screw only what lies beyond its thread counts, on the side that closes: the rest is in the nut.
  const seen = ({ from, to }: Ring, end: ThreadEnd, above: boolean): boolean =>
    end.gender === 'internal' || (above ? from >= end.to - SAME : to <= end.from + SAME);
  const [ls, us] = [
    ringsOf(lower).filter((r) => seen(r, joint.lower, up)),
    ringsOf(upper).filter((r) => seen(r, joint.upper, !up)),
  ];
  const gaps = ls.flatMap((l) =>
    us.filter((u) => strike(l, u)).map((u) => (up ? l.from - (u.to + t) : u.from + t - l.to)),
  );
  const free = gaps.filter((gap) => gap >= -SAME);
  return free.length === 0 ? undefined : Math.max(0, Math.min(...free));
};
