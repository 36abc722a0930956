/**
 * How far a pair goes: engagement left on each thread, the end stops, and where to put them together.
 *
 * Each thread has a screw of threaded length l that ends at a shoulder and a nut of length b whose face meets the shoulder when
 * the thread is home. Backed out by u from there, the engaged length is min(b, l − u). Thread runs from home, u = 0, until
 * the least engagement the maker accepts is left, u = X = l − kept. (Common practice, no source: keep about one diameter for steel
 * in steel under load, half of it for a light adjuster.)
 *
 * Sign convention: n turns clockwise seen from above, h = +1 right hand, base below. The screw of thread A enters the
 * base from above, so u_A = u_A0 − h_A L_A n. Thread C opens upwards where the carried part stands above its shoulder (in line,
 * nested: opens = +1) and closes where the shoulder is above the carried nut (one spindle, two nuts: opens = −1):
 * u_C = u_C0 + opens · h_C L_C n. Kinematics as in differential.ts. Lengths mm, n in turns.
 */

import { type Millimetres, mm, plain, turns } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import type { Thread } from '../thread/thread.ts';
import { netLead } from './differential.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'thread-all-kept': { readonly length: number; readonly kept: number };
    /** `thread` as the reader knows it. */
    'joint-without-length': { readonly thread: string };
    'nut-shorter-than-kept': { readonly thread: string; readonly kept: number; readonly nut: number };
    'screw-all-kept': { readonly thread: string; readonly kept: number; readonly screw: number };
    'joint-outside-its-run': { readonly thread: string; readonly out: number; readonly most: number };
  }
}

export const usableThread = relation({
  name: 'usable-thread',
  says: 'Length of a thread that may be used up: its screw less the engagement kept, counted in diameters.',
  takes: ['l_s', 'q_e', 'd'],
  gives: { X: 'l_s - q_e*d' },
  source: 'Geometry; what to keep is common practice, no source: one diameter for steel in steel under load.',
  refuses: ({ l_s, q_e, d }) => (l_s > q_e * d ? undefined : bad('thread-all-kept', { length: l_s, kept: q_e * d })),
  compute: ({ l_s, q_e, d }) => ({ X: mm(l_s - q_e * d) }),
});

export const engagementLeft = relation({
  name: 'engagement-left',
  says: 'Engaged length of a thread that is backed out from home: never more than the nut, never less than nothing.',
  takes: ['b_s', 'l_s', 'u'],
  gives: { l_e: 'max(0*mm, min(b_s, l_s - u))' },
  source: 'Geometry: overlap of screw and nut.',
  compute: ({ b_s, l_s, u }) => ({ l_e: mm(Math.max(0, Math.min(b_s, l_s - u))) }),
});

export const midMark = relation({
  name: 'mid-mark',
  says: 'Turns to back a thread out from home to the middle of its usable length.',
  takes: ['X', 'L'],
  gives: { n_b: 'X/(2*L)' },
  source: 'Geometry: half the usable length over the lead.',
  compute: ({ X, L }) => ({ n_b: turns(X / (2 * L)) }),
});

/** One thread of a pair as built: lengths of screw and nut, the engagement kept, how far it was backed out at assembly. */
export interface Joint {
  readonly thread: Thread;
  readonly screw: Millimetres;
  readonly nut: Millimetres;
  readonly kept: Millimetres;
  readonly out: Millimetres;
}

export type End = 'home' | 'least engagement';

/** Where one thread stops, in turns clockwise from the assembled position; `from` is nought or negative, `to` nought or positive. */
export interface Run {
  readonly usable: Millimetres;
  /** Turns from one end of the thread to the other. */
  readonly turns: number;
  /** How far it backs out per turn clockwise; negative where clockwise screws it in. */
  readonly rate: Millimetres;
  readonly from: number;
  readonly to: number;
  readonly atFrom: End;
  readonly atTo: End;
}

/** The thread that stops the pair at one end, and why. */
export interface Stop {
  readonly n: number;
  readonly thread: 'A' | 'C';
  readonly end: End;
}

export interface Travel {
  readonly A: Run;
  readonly C: Run;
  readonly anticlockwise: Stop;
  readonly clockwise: Stop;
  /** Turns between the stops as assembled. */
  readonly turns: number;
  readonly stroke: Millimetres;
  /** What the same threads give when put together at the middle of both; the shorter run rules. */
  readonly best: { readonly turns: number; readonly stroke: Millimetres; readonly limiting: 'A' | 'C' };
  readonly perTurn: Millimetres;
}

/** Length of a thread that may be used up, or the reason why there is none. `name` as the reader knows it. */
const usableOf = (joint: Omit<Joint, 'out'>, name: string): Result<Millimetres> => {
  const { screw, nut, kept } = joint;
  if (!(Number.isFinite(screw) && Number.isFinite(nut) && screw > 0 && nut > 0))
    return bad('joint-without-length', { thread: name });
  if (!(kept >= 0 && kept <= nut)) return bad('nut-shorter-than-kept', { thread: name, kept, nut });
  if (!(kept < screw)) return bad('screw-all-kept', { thread: name, kept, screw });
  return good(mm(screw - kept));
};

export type Assembled = 'home' | 'middle';

/** A joint from what a maker states: lengths, the diameters of engagement kept, and where it stood when it was put together. */
export const jointOf = (
  thread: Thread,
  screw: Millimetres,
  nut: Millimetres,
  keptDiameters: number,
  assembled: Assembled,
  name: string,
): Result<Joint> => {
  const kept = mm(keptDiameters * thread.d);
  const usable = usableOf({ thread, screw, nut, kept }, name);
  if (!usable.ok) return usable;
  return good({ thread, screw, nut, kept, out: mm(assembled === 'home' ? 0 : usable.value / 2) });
};

/** Stops, turns and stroke of a pair as assembled. `opens` is +1 where clockwise with a right-hand thread backs thread C out. */
export const travelOfPair = (A: Joint, C: Joint, opens: 1 | -1): Result<Travel> => {
  const a = runOf(A, -A.thread.h * A.thread.L, 'A');
  if (!a.ok) return a;
  const c = runOf(C, opens * C.thread.h * C.thread.L, 'C');
  if (!c.ok) return c;
  const delta = netLead.of({ h_C: plain(C.thread.h), L_C: C.thread.L, h_A: plain(A.thread.h), L_A: A.thread.L });
  if (!delta.ok) return delta;
  const [runA, runC] = [a.value, c.value];
  const aFirst = runA.to <= runC.to;
  const aLast = runA.from >= runC.from;
  const clockwise: Stop = aFirst
    ? { n: runA.to, thread: 'A', end: runA.atTo }
    : { n: runC.to, thread: 'C', end: runC.atTo };
  const anticlockwise: Stop = aLast
    ? { n: runA.from, thread: 'A', end: runA.atFrom }
    : { n: runC.from, thread: 'C', end: runC.atFrom };
  const perTurn = delta.value.Delta;
  const between = clockwise.n - anticlockwise.n;
  const most = Math.min(runA.turns, runC.turns);
  return good({
    A: runA,
    C: runC,
    anticlockwise,
    clockwise,
    turns: between,
    stroke: mm(between * Math.abs(perTurn)),
    best: {
      turns: most,
      stroke: mm(most * Math.abs(perTurn)),
      limiting: runA.turns <= runC.turns ? 'A' : 'C',
    },
    perTurn,
  });
};

const runOf = (joint: Joint, rate: number, name: 'A' | 'C'): Result<Run> => {
  const usable = usableOf(joint, name);
  if (!usable.ok) return usable;
  const X = usable.value;
  const { out } = joint;
  if (!(out >= 0 && out <= X * (1 + 1e-12))) return bad('joint-outside-its-run', { thread: name, out, most: X });
  const [back, forth] = [out / Math.abs(rate), Math.max(0, X - out) / Math.abs(rate)];
  const opening = rate > 0;
  return good({
    usable: X,
    turns: X / Math.abs(rate),
    rate: mm(rate),
    // Nought, not minus nought: it is printed.
    from: 0 - (opening ? back : forth),
    to: opening ? forth : back,
    atFrom: opening ? 'home' : 'least engagement',
    atTo: opening ? 'least engagement' : 'home',
  });
};

/** A pair after n turns clockwise from the assembled position. */
export interface PairStanding {
  /** Where it stands: n, or the stop that came before it. */
  readonly n: number;
  /** The stop that kept it from going to n; undefined where none did. */
  readonly stopped: Stop | undefined;
  readonly engaged: { readonly A: Millimetres; readonly C: Millimetres };
  readonly out: { readonly A: Millimetres; readonly C: Millimetres };
  /** Turns left to either stop. */
  readonly left: { readonly clockwise: number; readonly anticlockwise: number };
  /** Motion of the carried part since assembly. */
  readonly motion: Millimetres;
}

/** A field keeps a millionth of a turn; nearer than this to a stop is at it. */
const AT_STOP = 1e-5;

export const standAt = (A: Joint, C: Joint, travel: Travel, wanted: number): PairStanding => {
  const { clockwise, anticlockwise } = travel;
  const n = Math.min(clockwise.n, Math.max(anticlockwise.n, wanted));
  const out = { A: outAt(A, travel.A, n), C: outAt(C, travel.C, n) };
  return {
    n,
    stopped:
      wanted > clockwise.n + AT_STOP ? clockwise : wanted < anticlockwise.n - AT_STOP ? anticlockwise : undefined,
    engaged: { A: engagedAt(A, travel.A, n), C: engagedAt(C, travel.C, n) },
    out,
    left: { clockwise: clockwise.n - n, anticlockwise: n - anticlockwise.n },
    motion: mm(n * travel.perTurn),
  };
};

/** How far a thread stands out from home after n turns clockwise. */
export const outAt = (joint: Joint, run: Run, n: number): Millimetres => mm(joint.out + run.rate * n);

/** Engaged length of a thread after n turns clockwise. */
export const engagedAt = (joint: Joint, run: Run, n: number): Millimetres =>
  mm(Math.max(0, Math.min(joint.nut, joint.screw - outAt(joint, run, n))));
