/**
 * Every adjuster that can be built from a drawer: each turned part on each base whose thread it shares, with each carried part that
 * shares its other thread, or none. One is put together at mid-range by `assemble` like any other; what can't be is no stack.
 *
 * Coarse and fine are one design. Fine, the lock holds: net lead a turn, the stroke between the stops. Coarse, the lock is let go and the
 * carried part turns with the turned one: a lead of thread A a turn. A lock that clips on a hexagon goes back every sixth of a turn. From one
 * place to the next the window of fine motion shifts by a sixth of the lead of that thread which does not end the fine motion: where thread C
 * ends it, letting go keeps C where it is and moves A by L_A/6. Where that is more than the stroke, heights are left that neither reaches.
 */

import { bad, good, type Result } from '../../engine/index.ts';
import { dividerOf } from '../../input/dividers.ts';
import { type Adjuster, assemble, standing } from '../adjuster/adjuster.ts';
import { forbiddenOf, freeSpans } from '../adjuster/joint.ts';
import type { ThreadEnd } from '../adjuster/part.ts';
import { tipUnstated } from '../adjuster/text.ts';
import { growthPerKelvin } from '../adjuster/warm-growth.ts';
import { type Drawer, type Placed, readDrawer, threadKey } from './read-drawer.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'drawer-of-too-many-stacks': { readonly stacks: number; readonly most: number };
    'drawer-without-stack': { readonly tried: number; readonly threads: readonly string[] };
    /** No part has two threads of different leads, so nothing can move by their difference; `like` are the threads of one that is wanted. */
    'drawer-without-two-threads': { readonly like: readonly [outside: string, inside: string] };
  }
}

export interface Stack {
  readonly base: Placed;
  readonly turned: Placed;
  /** Undefined for a plain screw. */
  readonly carried: Placed | undefined;
  /** Net lead with its sign, mm a turn. */
  readonly Delta: number;
  /** Fine motion between the stops, mm. */
  readonly stroke: number;
  readonly turns: number;
  readonly limiting: 'A' | 'C';
  readonly leads: { readonly A: number; readonly C: number | undefined };
  readonly usable: { readonly A: number; readonly C: number | undefined };
  /** At mid-range, mm. */
  readonly height: number;
  readonly price: number | undefined;
  /** Of its tip, mm a kelvin of warming; undefined where a material is not in the table. */
  readonly growth: number | undefined;
  readonly coarse: {
    /** With the lock let go, mm in all. */
    readonly range: number;
    /** Shift of the fine window from one place of the lock to the next, mm; undefined for a plain screw, which has no lock. */
    readonly index: number | undefined;
    /** Height left unreached between two places, mm; 0 where the fine windows meet. */
    readonly gap: number;
  };
}

export interface Stacks {
  readonly drawer: Drawer;
  readonly stacks: readonly Stack[];
  /** Combinations of matching threads that were looked at. */
  readonly tried: number;
}

/** More than this is no drawer but a shop: it would take a minute. */
const MOST_STACKS = 40_000;
const PLACES = 6;

/** The words of the rows of a stack, as an adjuster is described. */
export const rowsOfStack = (
  { base, turned, carried }: Stack,
  divisions: number,
  kept: number,
  /** Step wanted, mm. */
  wanted: number,
): string => {
  const divider = dividerOf(divisions);
  return [
    `base = ${base.text}`,
    `turned = ${turned.text}`,
    ...(carried ? [`carried = ${carried.text}`] : []),
    `divider = ${divider === 'knob' ? `knob ${divisions}` : divider}`,
    `wanted = ${Number((1000 * wanted).toPrecision(9))} µm`,
    `keep = ${Number(kept.toPrecision(6))} diameters`,
  ].join('\n');
};

const grouped = (placed: readonly Placed[], end: 'above' | 'below'): Map<string, Placed[]> => {
  const groups = new Map<string, Placed[]>();
  for (const p of placed) {
    const thread = p.part[end];
    if (!thread) continue;
    const key = threadKey(thread, 'own');
    const group = groups.get(key);
    if (group) group.push(p);
    else groups.set(key, [p]);
  }
  return groups;
};

/** More of a row than the drawer holds. */
const tooMany = (parts: readonly (Placed | undefined)[]): boolean =>
  parts.some((p) => p !== undefined && parts.filter((q) => q?.row === p.row).length > p.count);

/** Works through the drawer; gives the share done on the way. `kept` is the engagement kept on each thread, in diameters. */
export function* searchDrawer(text: string, kept: number): Generator<number, Result<Stacks>, void> {
  const reading = readDrawer(text);
  let read = reading.next();
  while (!read.done) {
    yield 0;
    read = reading.next();
  }
  if (!read.value.ok) return read.value;
  const drawer = read.value.value;
  const bases = grouped(drawer.placed.base, 'above');
  const carrieds = grouped(drawer.placed.carried, 'below');
  const jobs = drawer.placed.turned.flatMap((turned) => {
    const { below, above } = turned.part;
    const under = below ? (bases.get(threadKey(below, 'mate')) ?? []) : [];
    const over: readonly (Placed | undefined)[] = above ? (carrieds.get(threadKey(above, 'mate')) ?? []) : [undefined];
    return under.length * over.length > 0 ? [{ turned, under, over }] : [];
  });
  const tried = jobs.reduce((sum, { under, over }) => sum + under.length * over.length, 0);
  if (!(tried <= MOST_STACKS)) return bad('drawer-of-too-many-stacks', { stacks: tried, most: MOST_STACKS });
  const stacks: Stack[] = [];
  let done = 0;
  for (const { turned, under, over } of jobs)
    for (const base of under)
      for (const carried of over) {
        done++;
        const stack = tooMany([base, turned, carried]) ? undefined : stackOf(base, turned, carried, kept);
        if (stack) stacks.push(stack);
        yield done / tried;
      }
  if (stacks.length === 0) {
    // A row that can't be used may be what is missing.
    const [unused] = drawer.wrong;
    if (unused) return unused;
    if (!drawer.placed.turned.some(({ part }) => leadsApart(part.below, part.above)))
      return bad('drawer-without-two-threads', { like: wantedAdapter(drawer) });
    const threads = new Set(drawer.placed.turned.flatMap(({ part: { below, above } }) => [below, above]));
    const named = [...threads].flatMap((end) => (end ? [end.thread.designation] : []));
    return bad('drawer-without-stack', { tried, threads: [...new Set(named)].slice(0, 6) });
  }
  return good({ drawer, stacks, tried });
}

const leadsApart = (a: ThreadEnd | undefined, b: ThreadEnd | undefined): boolean =>
  a !== undefined && b !== undefined && Math.abs(a.thread.h * a.thread.L - b.thread.h * b.thread.L) > 1e-9;

/** The threads of an adapter that would join a nut and a screw of the drawer with the finest net lead; of the shop's own where none would. */
const wantedAdapter = ({ placed }: Drawer): readonly [string, string] => {
  let finest = Number.POSITIVE_INFINITY;
  let like: readonly [string, string] = ['3/8-16 UNC', 'M10×1.5'];
  for (const {
    part: { above: nut },
  } of placed.base)
    for (const {
      part: { below: screw },
    } of placed.carried) {
      if (nut?.gender !== 'internal' || screw?.gender !== 'external' || !leadsApart(nut, screw)) continue;
      const net = Math.abs(nut.thread.h * nut.thread.L - screw.thread.h * screw.thread.L);
      if (net >= finest) continue;
      finest = net;
      like = [nut.thread.designation, screw.thread.designation];
    }
  return like;
};

const stackOf = (base: Placed, turned: Placed, carried: Placed | undefined, kept: number): Stack | undefined => {
  const { thread } = turned.part.above ?? {};
  const built = assemble({
    name: '',
    base: base.part,
    turned: turned.part,
    carried: carried?.part,
    divider: 'hexagon',
    divisions: undefined,
    lock: carried ? { kind: 'springs' } : { kind: 'none' },
    springs: undefined,
    tip: tipUnstated((carried ?? turned).part),
    keptDiameters: kept,
    assembled: { A: 'middle', C: 'middle' },
  });
  // Equal leads move nothing.
  if (!built.ok || !(Math.abs(built.value.Delta) > 1e-9 && built.value.stroke > 0)) return undefined;
  const a = built.value;
  return {
    base,
    turned,
    carried,
    Delta: a.Delta,
    stroke: a.stroke,
    turns: a.turns,
    limiting: a.best.limiting,
    leads: { A: a.A.thread.L, C: thread?.L },
    usable: { A: a.A.usable, C: a.C?.usable },
    height: standing(a, 0).height,
    price: a.price,
    growth: growthPerKelvin(a),
    coarse: coarseOf(a),
  };
};

const coarseOf = (a: Adjuster): Stack['coarse'] => {
  const { A, C } = a;
  if (!C || !a.carried) return { range: a.stroke, index: undefined, gap: 0 };
  // Thread C stands still at its mark; what base and carried part leave of the way of thread A.
  const span = { ...A.joint, from: A.joint.from + C.start, to: A.joint.to + C.start };
  const w = A.start + C.start;
  const free = freeSpans(span, forbiddenOf(a.base, a.carried)).find((s) => w >= s.from - 1e-9 && w <= s.to + 1e-9);
  const range = free ? free.to - free.from : 0;
  const index = (a.best.limiting === 'C' ? A.thread.L : C.thread.L) / PLACES;
  return { range, index, gap: Math.max(0, index - a.stroke) };
};
