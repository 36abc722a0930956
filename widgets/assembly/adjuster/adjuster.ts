/**
 * One adjuster: three parts, how they are joined, locked, preloaded and divided, and all that follows from it.
 *
 * Frame: z up along the axis from the bottom of the base; n turns of the turned part, clockwise seen from above plus; h = +1 for
 * a right-hand thread. With the lock holding, the turned part stands at u = u_0 − h_A L_A n over the base and the
 * carried part at v = v_0 + h_C L_C n over the turned one, so the carried part moves by Δ = h_C L_C − h_A L_A a turn. A lock that lets a share f
 * of the turning through gives (1 − f) h_C L_C in place of h_C L_C. Where there is no carried part, the tip sits on the turned part
 * and Δ = −h_A L_A: the plain screw, in the same frame.
 *
 * The range of n is what both joints and the gap between base and carried part allow. Lengths mm, n in turns.
 */
import { bad, good, type Result, type Thread } from '../../engine/index.ts';
import { ofPitch, threadOfJoint } from '../../input/designation-sides.ts';
import type { Divider } from '../../input/dividers.ts';
import { pairOf } from '../pair-of.ts';
import type { DrawnSpring } from './drawn-springs.ts';
import { type Bound, engagedAt, forbiddenOf, freeSpans, type Joint, jointOf, outOf, positionOut } from './joint.ts';
import { heightOf, massOf, type Part, type Role, type ThreadEnd } from './part.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'ends-do-not-meet': {
      readonly joint: 'A' | 'C';
      readonly lower: string;
      readonly upper: string;
      readonly because: 'threads' | 'gender';
      readonly lowerThread: string;
      readonly upperThread: string;
    };
    'assembled-outside': { readonly joint: 'A' | 'C'; readonly out: number; readonly most: number };
    'upper-thread-joins-nothing': { readonly part: string; readonly thread: string };
    'assembled-inside-another': { readonly lower: string; readonly upper: string; readonly ground: boolean };
    /** Why it stops at once, each way. */
    'no-turns-left': { readonly clockwise: Stop; readonly anticlockwise: Stop };
  }
}

export type Where = 'home' | 'middle' | { readonly turnsOut: number };

export type Lock =
  | { readonly kind: 'none' }
  /** Not stated: drawn as a post, and said to be assumed. */
  | { readonly kind: 'assumed' }
  | {
      readonly kind: 'key' | 'post';
      readonly radius: number;
      readonly clearance: number;
      /** As measured, N·mm a radian; undefined where not stated. */
      readonly stiffness?: number;
      /** Diameter of its post; undefined where not stated. */
      readonly thick?: number;
      /** The post is a steel rod, not printed. */
      readonly steel?: true;
      /** Young’s modulus of its print, MPa; undefined where not stated. */
      readonly modulus?: number;
    }
  | { readonly kind: 'springs' };

/** Springs that preload the threads, and lock the carried part where no key does. The force is that at assembly. */
export interface Springs {
  readonly count: number;
  readonly between: 'base and carried' | 'base and turned' | 'turned and carried';
  /** Distance from the axis, mm; undefined where not stated. */
  readonly radius: number | undefined;
  /** All together, N, when the adjuster is put together, n = 0; undefined where not stated. */
  readonly force: number | undefined;
  /** All together, N/mm; of drawn ones it follows from the drawing. */
  readonly rate: number | undefined;
  /** Share of the force that is lost for each tenfold time, 0 to 1; undefined where not stated. */
  readonly loss?: number | undefined;
  /** The drawing of one, where they are printed and it is stated. */
  readonly drawn?: DrawnSpring | undefined;
}

export type Tip = (
  | {
      readonly kind: 'ball';
      readonly diameter: number;
      readonly hexagon: number | undefined;
      readonly stands: number;
      /** The force that was read when it was pressed in, N. */
      readonly pressed?: number;
    }
  | { readonly kind: 'flat' | 'cone' | 'round'; readonly stands: number }
) & {
  /** How far it stands out is not stated. */
  readonly assumed?: true;
};

export interface Description {
  readonly name: string;
  readonly base: Part;
  readonly turned: Part;
  /** Undefined for a plain screw, whose tip is on the turned part. */
  readonly carried: Part | undefined;
  readonly divider: Divider;
  /** Marks of a knob; only a knob has them. */
  readonly divisions: number | undefined;
  readonly lock: Lock;
  readonly springs: Springs | undefined;
  readonly tip: Tip;
  /** The step that is wanted of it, at most, mm; undefined where not stated. */
  readonly wantedStep?: number | undefined;
  /** Engagement kept on each thread, counted in its major diameter. */
  readonly keptDiameters: number;
  readonly assembled: { readonly A: Where; readonly C: Where };
  /** The pitch of a thread, mm, where it is not that of its designation: moved within its ±, or one that is asked for. */
  readonly pitches?: Readonly<Partial<Record<'A' | 'C', number>>>;
}

export interface Stop {
  /** Turns clockwise from the assembled position. */
  readonly n: number;
  /** The joint that ends there, or the two parts that meet though no thread joins them. */
  readonly at: 'A' | 'C' | 'base and carried';
  readonly bound: Bound;
}

/** A joint and where it stood when the adjuster was put together. */
export interface Fitted {
  readonly joint: Joint;
  /** The thread, with the classes or measured limits that its two ends state. */
  readonly thread: Thread;
  /** Coats that its limits leave out, mm: those of the parts, but for an end whose pitch diameter was measured, which has its coat on. */
  readonly coat: { readonly screw: number; readonly nut: number };
  /** Position at n = 0. */
  readonly start: number;
  /** Change of position a turn clockwise. */
  readonly rate: number;
  /** Usable length, mm, and the turns it is good for. */
  readonly usable: number;
  readonly turns: number;
  /** Turns from home to the assembled position. */
  readonly mark: number;
}

export interface Adjuster extends Description {
  readonly A: Fitted;
  readonly C: Fitted | undefined;
  /** Net lead, with its sign: plus where clockwise raises the carried part. */
  readonly Delta: number;
  readonly anticlockwise: Stop;
  readonly clockwise: Stop;
  /** Turns between the stops as assembled, and what they move. */
  readonly turns: number;
  readonly stroke: number;
  /** The most a good assembly gives: the marks in the middle of each travel. */
  readonly best: { readonly turns: number; readonly stroke: number; readonly limiting: 'A' | 'C' };
  /** Steps in a turn of the turned part. */
  readonly steps: number;
  readonly mass: number;
  /** Of all parts, where every one has a price. */
  readonly price: number | undefined;
}

const STEPS = { hexagon: 6, square: 4, 'twelve points': 12 } as const;

export const assemble = (d: Description): Result<Adjuster> => {
  if (!d.carried && d.turned.above)
    return bad(
      'upper-thread-joins-nothing',
      { part: d.turned.kind, thread: d.turned.above.thread.designation },
      'carried',
    );
  const A = fitted(d.base, d.turned, 'A', d);
  if (!A.ok) return A;
  const C = d.carried ? fitted(d.turned, d.carried, 'C', d) : undefined;
  if (C && !C.ok) return C;
  const [a, c] = [A.value, C?.value];
  const pair = c && pairOf({ threads: { A: a.thread, C: c.thread } });
  if (pair && !pair.ok) return pair;
  const Delta = pair?.value.Delta ?? a.rate;
  const range = rangeOf(d, a, c, Delta);
  if (!range.ok) return range;
  const { anticlockwise, clockwise } = range.value;
  const turns = clockwise.n - anticlockwise.n;
  const limiting = c && c.turns < a.turns ? 'C' : 'A';
  const most = Math.min(a.turns, c?.turns ?? Number.POSITIVE_INFINITY);
  const parts = partsOf(d);
  const prices = parts.map((p) => (p.price === undefined ? undefined : p.price * p.count));
  return good({
    ...d,
    A: a,
    C: c,
    Delta,
    anticlockwise,
    clockwise,
    turns,
    stroke: turns * Math.abs(Delta),
    best: { turns: most, stroke: most * Math.abs(Delta), limiting },
    steps: d.divider === 'knob' ? (d.divisions ?? 1) : STEPS[d.divider],
    mass: parts.reduce((sum, p) => sum + massOf(p) * p.count, 0),
    price: prices.some((p) => p === undefined) ? undefined : prices.reduce<number>((sum, p) => sum + (p ?? 0), 0),
  });
};

export const partsOf = (d: Description): readonly Part[] =>
  d.carried ? [d.base, d.turned, d.carried] : [d.base, d.turned];

const fitted = (lower: Part, upper: Part, name: 'A' | 'C', d: Description): Result<Fitted> => {
  const [x, y] = [lower.above, upper.below];
  const meet = (because: 'threads' | 'gender') =>
    bad('ends-do-not-meet', {
      joint: name,
      lower: lower.kind,
      upper: upper.kind,
      because,
      lowerThread: x?.thread.designation ?? '',
      upperThread: y?.thread.designation ?? '',
    });
  if (!x || !y || x.gender === y.gender) return meet('gender');
  const t = y.thread;
  const own = (thread: Thread): Thread => ofPitch(thread, d.pitches?.[name] ?? thread.P);
  const s = own(x.thread);
  if (Math.abs(s.d - t.d) > 1e-6 || Math.abs(x.thread.P - t.P) > 1e-9 || s.N !== t.N || s.h !== t.h)
    return meet('threads');
  const joint = jointOf(lower, upper, name, d.keptDiameters * s.d);
  if (!joint.ok) return joint;
  const usable = joint.value.to - joint.value.from;
  const where = d.assembled[name];
  const out = where === 'home' ? 0 : where === 'middle' ? usable / 2 : where.turnsOut * s.L;
  if (!(out >= 0 && out <= usable + 1e-9)) return bad('assembled-outside', { joint: name, out, most: usable });
  return good({
    joint: joint.value,
    thread: own(threadOf(x, y)),
    coat:
      x.gender === 'external'
        ? { screw: coatOn(lower, x), nut: coatOn(upper, y) }
        : { screw: coatOn(upper, y), nut: coatOn(lower, x) },
    start: positionOut(joint.value, out),
    rate: (name === 'A' ? -1 : 1) * s.h * s.L,
    usable,
    turns: usable / s.L,
    mark: out / s.L,
  });
};

const states = ({ toleranceClass, measured }: Thread): boolean =>
  toleranceClass !== undefined || measured !== undefined;

const threadOf = (x: ThreadEnd, y: ThreadEnd): Thread => {
  if (!states(x.thread) && !states(y.thread)) return x.thread;
  const [nut, screw] = x.gender === 'internal' ? [x, y] : [y, x];
  return threadOfJoint(nut.thread, screw.thread);
};

const coatOn = (part: Part, { thread }: ThreadEnd): number => (thread.measured === undefined ? part.coat : 0);

interface Range {
  readonly anticlockwise: Stop;
  readonly clockwise: Stop;
}

/** Where n ends each way: the first of the two threads, or base and carried part if they meet before. */
const rangeOf = (d: Description, A: Fitted, C: Fitted | undefined, Delta: number): Result<Range> => {
  const ends = [endsOf(A, 'A'), ...(C ? [endsOf(C, 'C')] : [])];
  if (d.carried && C) {
    const blocks = forbiddenOf(d.base, d.carried);
    const w = A.start + C.start;
    const inside = blocks.find((f) => w > f.from + 1e-9 && w < f.to - 1e-9);
    if (inside) {
      const ground = inside.above.kind === 'contact' && inside.above.lower === 'ground';
      return bad('assembled-inside-another', { lower: d.base.kind, upper: d.carried.kind, ground });
    }
    // Equal leads never bring the two together.
    if (Delta !== 0) {
      const never: Bound = { kind: 'least engagement' };
      const all = { from: -1e9, to: 1e9, atFrom: never, atTo: never };
      const free = freeSpans(all, blocks).find((s) => w >= s.from - 1e-9 && w <= s.to + 1e-9) ?? all;
      ends.push(endsOf({ joint: free, start: w, rate: Delta }, 'base and carried'));
    }
  }
  const first = (pick: 'anticlockwise' | 'clockwise', better: (a: number, b: number) => boolean): Stop =>
    ends.map((e) => e[pick]).reduce((best, s) => (better(s.n, best.n) ? s : best));
  return good({
    anticlockwise: first('anticlockwise', (a, b) => a > b),
    clockwise: first('clockwise', (a, b) => a < b),
  });
};

const endsOf = (
  { joint, start, rate }: { joint: Pick<Joint, 'from' | 'to' | 'atFrom' | 'atTo'>; start: number; rate: number },
  at: Stop['at'],
): Range => {
  // Zero, not minus zero: it is printed.
  const low: Stop = { n: 0 + (joint.from - start) / rate, at, bound: joint.atFrom };
  const high: Stop = { n: 0 + (joint.to - start) / rate, at, bound: joint.atTo };
  return rate > 0 ? { anticlockwise: low, clockwise: high } : { anticlockwise: high, clockwise: low };
};

/** What a lock does: holds, or lets a share of the turning through to the carried part. */
export interface LockState {
  readonly share: number;
}
const HOLDS: LockState = { share: 0 };

/** An adjuster after n turns clockwise from the assembled position. */
export interface Standing {
  /** n, or the stop that came before it. */
  readonly n: number;
  readonly stopped: Stop | undefined;
  /** Height of the lower end of each part over the bottom of the base. */
  readonly at: Readonly<Record<Role, number>>;
  /** Motion of each part since assembly. */
  readonly motion: { readonly turned: number; readonly carried: number };
  readonly engaged: { readonly A: number; readonly C: number };
  /** How far each thread stands out of home. */
  readonly out: { readonly A: number; readonly C: number };
  readonly left: { readonly clockwise: number; readonly anticlockwise: number };
  /** From the bottom of the base to the top of the tip. */
  readonly height: number;
}

/** A field keeps a millionth of a turn; nearer than this to a stop is at it. */
const AT_STOP = 1e-5;

/** With the lock giving, joints still bound the motion: then thread C turns by its share less. */
export const standing = (adjuster: Adjuster, wanted: number, lock: LockState = HOLDS): Standing => {
  const { A, C, anticlockwise, clockwise } = adjuster;
  const n = Math.min(clockwise.n, Math.max(anticlockwise.n, wanted));
  const u = A.start + A.rate * n;
  const v = C ? C.start + C.rate * (1 - lock.share) * n : 0;
  const carried = adjuster.carried ? u + v : u;
  const top = adjuster.carried ?? adjuster.turned;
  return {
    n,
    stopped:
      wanted > clockwise.n + AT_STOP ? clockwise : wanted < anticlockwise.n - AT_STOP ? anticlockwise : undefined,
    at: { base: 0, turned: u, carried },
    // Zero, not minus zero: it is printed.
    motion: { turned: 0 + A.rate * n, carried: 0 + (carried - (A.start + (C?.start ?? 0))) },
    engaged: { A: engagedAt(A.joint, u), C: C ? engagedAt(C.joint, v) : 0 },
    out: { A: outOf(A.joint, u), C: C ? outOf(C.joint, v) : 0 },
    left: { clockwise: clockwise.n - n, anticlockwise: n - anticlockwise.n },
    height: carried + heightOf(top) + adjuster.tip.stands,
  };
};

/** How far a part reaches below the bottom of the base, at most over the stroke, mm; 0 where none does. There a flat ground would be met first. */
export const hangsBelow = (adjuster: Adjuster): number =>
  Math.max(
    0,
    ...[adjuster.anticlockwise.n, adjuster.clockwise.n].map((n) => {
      const { turned, carried } = standing(adjuster, n).at;
      return -Math.min(turned, carried);
    }),
  );

/**
 * Force of the springs after n turns, N, all together and pulling their two parts together: what was set at assembly, and the rate times how far their ends
 * have gone apart since. Undefined where force or rate is not stated.
 */
export const springForce = ({ springs, A, C, Delta }: Adjuster, n: number): number | undefined => {
  if (springs?.force === undefined || springs.rate === undefined) return undefined;
  const perTurn = { 'base and carried': Delta, 'base and turned': A.rate, 'turned and carried': C?.rate ?? 0 };
  return springs.force + springs.rate * perTurn[springs.between] * n;
};
