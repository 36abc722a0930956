/**
 * The kinds of part there are, each built from the sizes its maker stated; what was not stated gets a sensible proportion, which is
 * marked as assumed. Nuts and socket screws are as wide as bought ones by their standards (drawer/standard-parts). Other proportions are common practice, no source:
 * a nut 0.8 d high and 1.6 d across, a coupling nut 3 d, a socket head 1.5 d across and d high; a nut that is tapped for the purpose is 1.2 d deep, and a screw is as much longer as eight turns take.
 */
import { bad, classOfSide, diameters, good, type Result, SOCKETS, type Thread } from '../../engine/index.ts';
import { boughtWidth } from '../drawer/standard-parts.ts';
import { RUN_OUT } from './blind-hole.ts';
import {
  type MaterialName,
  type Part,
  pointOf,
  type Role,
  type RoundSize,
  type Size,
  type Step,
  type ThreadEnd,
} from './part.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'thread-longer-than-part': {
      readonly part: string;
      readonly thread: string;
      readonly length: number;
      readonly room: number;
    };
    'threads-break-through': {
      readonly part: string;
      readonly inside: string;
      readonly outside: string;
      readonly wall: number;
    };
    'threads-meet-inside': {
      readonly part: string;
      readonly lower: string;
      readonly upper: string;
      readonly over: number;
    };
    'hexagon-too-narrow': { readonly part: string; readonly width: number; readonly least: number };
    'part-wants-threads': { readonly part: string; readonly role: Role; readonly wanted: number; readonly got: number };
    'part-in-wrong-place': { readonly part: string; readonly role: Role; readonly instead: readonly string[] };
    'part-wants-genders': { readonly part: string };
    'part-size-unused': { readonly part: string; readonly size: SizeWord; readonly takes: readonly SizeWord[] };
    'limits-of-other-side': {
      readonly part: string;
      /** A class, or the letter of a measured diameter. */
      readonly written: string;
      readonly gender: ThreadEnd['gender'];
    };
  }
}

/** One thread as it stands in the line of a part. */
export interface StatedThread {
  readonly thread: Thread;
  readonly gender?: 'external' | 'internal' | undefined;
  readonly length?: number | undefined;
  readonly blind?: boolean | undefined;
}

/** Sizes by the names under which a line states them. */
export type SizeWord = 'height' | 'body' | 'head' | 'neck' | 'hexagon' | 'width';

/** What a line says of a part. */
export interface Stated {
  readonly role: Role;
  readonly kind: string;
  readonly threads: readonly StatedThread[];
  readonly height?: number;
  readonly body?: number;
  readonly head?: number;
  readonly neck?: number;
  readonly hexagon?: number;
  readonly width?: number;
  readonly grounded?: boolean;
  readonly material: MaterialName;
  /** mm on every surface. */
  readonly coat?: number;
  readonly price?: number;
  readonly count: number;
}

/** Turns each way for which an unstated screw leaves room. */
const ROOM = 4;
const screwLength = ({ thread, length }: StatedThread): number => length ?? 1.5 * thread.d + 2 * ROOM * thread.L;
const nutLength = ({ thread, length }: StatedThread): number => length ?? 1.2 * thread.d;

/** A part while it is put together: steps one on the other. */
interface Build {
  readonly outer: Step[];
  readonly bores: Step[];
  readonly sizes: Size[];
}

const top = (b: Build): number => b.outer.at(-1)?.to ?? 0;

const put = (b: Build, name: Step['name'], height: number, r: number, shape: Step['shape'] = 'round'): Step => {
  const step: Step = { name, from: top(b), to: top(b) + height, r, shape };
  b.outer.push(step);
  return step;
};

const screwOn = (b: Build, { thread }: StatedThread, length: number): ThreadEnd => {
  const from = top(b);
  b.outer.push({ name: 'thread', from, to: from + length, r: thread.d / 2, shape: 'round', thread });
  return { thread, gender: 'external', from, to: from + length };
};

const tapIn = (b: Build, { thread }: StatedThread, from: number, to: number): ThreadEnd => {
  b.bores.push({ name: 'thread', from, to, r: thread.d / 2, shape: 'round', thread });
  return { thread, gender: 'internal', from, to };
};

/** Of the material under a blind thread, what its drill may take. */
const FLOOR_LEFT = 0.9;

/**
 * The hole of a blind thread goes on beyond its last full turn, as far as the run-out of the tap asks for and the material under it allows, and ends in the cone of the drill. Its thread is as
 * long as it is stated, and a screw is home at its end: nothing wider than the drill goes further.
 */
const runOutOf = (b: Build, { thread }: StatedThread, at: number, point: 'up' | 'down', room: number): void => {
  const r = diameters(thread).d1 / 2;
  const cone = Math.abs(pointOf({ point, r }));
  const long = Math.min(RUN_OUT * thread.P, FLOOR_LEFT * room - cone);
  if (!(long > 1e-6)) return;
  const [from, to] = point === 'up' ? [at, at + long] : [at - long, at];
  b.bores.push({ name: 'bore', from, to, r, shape: 'round', point });
};

const drillIn = (b: Build, name: 'bore' | 'relief', from: number, to: number, r: number): void => {
  if (!(to > from + 1e-9)) return;
  b.bores.push({ name, from, to, r, shape: 'round' });
  noteRound(b, name, { from, to, r });
};

/** A round step whose diameter no line can state. */
const turn = (b: Build, name: 'body' | 'collar' | 'neck', height: number, r: number): void =>
  noteRound(b, `${name} diameter`, put(b, name, height, r));

const noteRound = (b: Build, name: RoundSize, { from, to, r }: Pick<Step, 'from' | 'to' | 'r'>): void => {
  b.sizes.push({ name, value: 2 * r, stated: false, over: { from, to } });
};

const note = (b: Build, name: Size['name'], value: number, stated: boolean, from?: number): void => {
  b.sizes.push(from === undefined ? { name, value, stated } : { name, value, stated, from, to: from + value });
};

interface Ends {
  readonly below?: ThreadEnd | undefined;
  readonly above?: ThreadEnd | undefined;
}
type Builder = (s: Stated, b: Build) => Result<Ends & { readonly grounded?: boolean }>;

const first = (s: Stated): StatedThread => s.threads[0] as StatedThread;
const second = (s: Stated): StatedThread => s.threads[1] as StatedThread;
const largest = (s: Stated): number => Math.max(...s.threads.map((t) => t.thread.d));

/** Half across flats of a hexagon, stated or assumed. */
const flats = (s: Stated, b: Build, assumed: number): number => {
  const width = s.hexagon ?? s.width ?? 2 * assumed;
  note(b, 'hexagon', width, (s.hexagon ?? s.width) !== undefined);
  return width / 2;
};

/** Diameter of a round step, stated as its width or assumed. */
const across = (s: Stated, b: Build, assumed: number): number => {
  const diameter = s.width ?? assumed;
  note(b, 'diameter', diameter, s.width !== undefined);
  return diameter;
};

/** Whether a thread is longer than the room for it; a blind one must leave a floor. */
const tooDeep = (depth: number, room: number, blind: boolean | undefined): boolean =>
  depth > room + (blind ? -1e-9 : 1e-9);

const halfBought = (kind: string, { d }: Thread): number | undefined => {
  const width = boughtWidth(kind, d);
  return width === undefined ? undefined : width / 2;
};

/** Blocks and nuts of the base, the thread open upwards. */
const blockBase =
  (shape: 'square' | 'hexagon', assumed: (d: number) => number, grounded: boolean): Builder =>
  (s, b) => {
    const t = first(s);
    const depth = t.length ?? (t.blind ? nutLength(t) : undefined);
    // A blind thread ends on a floor.
    const floor = t.blind ? 0.3 * t.thread.d : 0;
    const height = s.height ?? (depth === undefined ? assumed(t.thread.d) : depth + floor);
    const thread = Math.min(depth ?? height, height);
    if (depth !== undefined && tooDeep(depth, height, t.blind))
      return bad('thread-longer-than-part', {
        part: s.kind,
        thread: t.thread.designation,
        length: depth,
        room: height,
      });
    if (shape === 'square') {
      const width = s.width ?? 2.7 * t.thread.d;
      note(b, 'width', width, s.width !== undefined);
      put(b, 'block', height, width / 2, 'square');
    } else put(b, 'hexagon', height, flats(s, b, halfBought(s.kind, t.thread) ?? 0.8 * t.thread.d), 'hexagon');
    const above = tapIn(b, t, height - thread, height);
    const stated = s.height !== undefined || t.length !== undefined;
    // Tapped right through, its height is the length of its thread.
    note(b, 'thread A', thread, thread < height - 1e-9 ? t.length !== undefined : stated, height - thread);
    if (thread < height - 1e-9) note(b, 'height', height, s.height !== undefined, 0);
    if (!t.blind) drillIn(b, 'relief', 0, height - thread, 0.53 * t.thread.d);
    else runOutOf(b, t, above.from, 'down', above.from);
    return good({ above, grounded: s.grounded ?? grounded });
  };

const screwBase: Builder = (s, b) => {
  const t = first(s);
  const plate = s.height ?? 0.6 * t.thread.d;
  const width = s.width ?? 2.7 * t.thread.d;
  put(b, 'plate', plate, width / 2, 'square');
  note(b, 'plate', plate, s.height !== undefined, 0);
  note(b, 'width', width, s.width !== undefined);
  const from = top(b);
  const above = screwOn(b, t, screwLength(t));
  note(b, 'thread A', above.to - from, t.length !== undefined, from);
  return good({ above, grounded: s.grounded ?? true });
};

const stud: Builder = (s, b) => {
  const [a, c] = [first(s), second(s)];
  const D = largest(s);
  const below = screwOn(b, a, screwLength(a));
  note(b, 'thread A', below.to, a.length !== undefined, 0);
  const body = s.body ?? s.head ?? 0.6 * D;
  note(b, 'body', body, (s.body ?? s.head) !== undefined, top(b));
  put(b, 'hexagon', body, flats(s, b, 0.85 * D), 'hexagon');
  const from = top(b);
  const above = screwOn(b, c, screwLength(c));
  note(b, 'thread C', above.to - from, c.length !== undefined, from);
  return good({ below, above });
};

const sleeve: Builder = (s, b) => {
  const [a, c] = [first(s), second(s)];
  const [lengthA, lengthC] = [screwLength(a), nutLength(c)];
  const head = s.head ?? s.body ?? 0.6 * a.thread.d;
  const core = diameters(a.thread).d3 / 2;
  const below = lengthC - lengthA - head;
  if (below > 1e-9) turn(b, 'body', below, core);
  const end = screwOn(b, a, lengthA);
  note(b, 'thread A', lengthA, a.length !== undefined, end.from);
  note(b, 'head', head, (s.head ?? s.body) !== undefined, top(b));
  put(b, 'head', head, flats(s, b, 0.95 * a.thread.d), 'hexagon');
  const height = top(b);
  const above = tapIn(b, c, height - lengthC, height);
  note(b, 'thread C', lengthC, c.length !== undefined, height - lengthC);
  if (!c.blind) drillIn(b, 'relief', 0, height - lengthC, c.thread.d / 2 + 0.15 * (core - c.thread.d / 2));
  return good({ below: end, above });
};

/** One screw with both threads; the carried nut runs between the collar and the head. */
const spindle: Builder = (s, b) => {
  const [a, c] = [first(s), second(s)];
  const D = largest(s);
  const below = screwOn(b, a, screwLength(a));
  note(b, 'thread A', below.to, a.length !== undefined, 0);
  note(b, 'collar', 0.25 * D, false, top(b));
  turn(b, 'collar', 0.25 * D, 0.75 * D);
  const neck = s.neck ?? 1.3 * c.thread.d;
  note(b, 'neck', neck, s.neck !== undefined, top(b));
  turn(b, 'neck', neck, Math.min(diameters(a.thread).d1, diameters(c.thread).d1) / 2);
  const from = top(b);
  const above = screwOn(b, c, screwLength(c));
  note(b, 'thread C', above.to - from, c.length !== undefined, from);
  const head = s.head ?? 0.6 * D;
  note(b, 'head', head, s.head !== undefined, top(b));
  put(b, 'head', head, flats(s, b, 0.95 * D), 'hexagon');
  return good({ below, above });
};

/** End to end: a screw at one end, a nut at the other, in a body; the first thread is the lower one. */
const adapter: Builder = (s, b) => {
  const [a, c] = [first(s), second(s)];
  const D = largest(s);
  const genderA = a.gender ?? (c.gender === 'external' ? 'internal' : 'external');
  const genderC = c.gender ?? (genderA === 'external' ? 'internal' : 'external');
  if (genderA === genderC) return bad('part-wants-genders', { part: s.kind });
  const [screw, nut] = genderA === 'external' ? [a, c] : [c, a];
  // A blind thread is used up as its screw goes in, so it needs the room that a through one has for nothing.
  const [length, depth] = [screwLength(screw), nut.blind ? screwLength(nut) : nutLength(nut)];
  const body = s.body ?? Math.max(1.2 * D, nut.blind ? depth + 0.3 * nut.thread.d : depth);
  if (tooDeep(depth, body + length, nut.blind))
    return bad('thread-longer-than-part', {
      part: s.kind,
      thread: nut.thread.designation,
      length: depth,
      room: body + length,
    });
  const drill = Math.min(diameters(nut.thread).d1, 0.7 * diameters(screw.thread).d3) / 2;
  const names = genderA === 'external' ? (['thread A', 'thread C'] as const) : (['thread C', 'thread A'] as const);
  if (genderA === 'external') {
    const below = screwOn(b, screw, length);
    note(b, names[0], length, screw.length !== undefined, 0);
    note(b, 'body', body, s.body !== undefined, top(b));
    put(b, 'body', body, flats(s, b, 0.85 * D), 'hexagon');
    const above = tapIn(b, nut, top(b) - depth, top(b));
    note(b, names[1], depth, nut.length !== undefined, above.from);
    if (!nut.blind) drillIn(b, 'bore', 0, above.from, drill);
    else runOutOf(b, nut, above.from, 'down', above.from - length);
    return good({ below, above });
  }
  put(b, 'body', body, flats(s, b, 0.85 * D), 'hexagon');
  note(b, 'body', body, s.body !== undefined, 0);
  const below = tapIn(b, nut, 0, depth);
  note(b, names[1], depth, nut.length !== undefined, 0);
  const above = screwOn(b, screw, length);
  note(b, names[0], length, screw.length !== undefined, above.from);
  if (!nut.blind) drillIn(b, 'bore', depth, top(b), drill);
  else runOutOf(b, nut, depth, 'up', body - depth);
  return good({ below, above });
};

/** A nut turned over two screws, one from below and one from above. */
const doubleNut: Builder = (s, b) => {
  const [a, c] = [first(s), second(s)];
  const [lower, upper] = [nutLength(a), nutLength(c)];
  const height = s.height ?? s.body ?? lower + upper;
  if (tooDeep(lower + upper, height, a.blind ?? c.blind))
    return bad('threads-meet-inside', {
      part: s.kind,
      lower: a.thread.designation,
      upper: c.thread.designation,
      over: lower + upper - height,
    });
  put(b, 'hexagon', height, flats(s, b, 0.85 * largest(s)), 'hexagon');
  note(b, 'height', height, (s.height ?? s.body) !== undefined, 0);
  const below = tapIn(b, a, 0, lower);
  const above = tapIn(b, c, height - upper, height);
  note(b, 'thread A', lower, a.length !== undefined, 0);
  note(b, 'thread C', upper, c.length !== undefined, height - upper);
  if (!a.blind && !c.blind)
    drillIn(b, 'bore', lower, height - upper, Math.min(diameters(a.thread).d1, diameters(c.thread).d1) / 2);
  return good({ below, above });
};

const plainScrew: Builder = (s, b) => {
  const a = first(s);
  const below = screwOn(b, a, screwLength(a));
  note(b, 'thread A', below.to, a.length !== undefined, 0);
  const head = s.head ?? 0.6 * a.thread.d;
  note(b, 'head', head, s.head !== undefined, top(b));
  put(b, 'head', head, flats(s, b, 0.85 * a.thread.d), 'hexagon');
  return good({ below });
};

const cap: Builder = (s, b) => {
  const t = first(s);
  const depth = nutLength(t);
  const roof = 0.25 * t.thread.d;
  const relief = t.blind ? 0 : Math.max(8 * t.thread.L, depth) + 0.1 * t.thread.d;
  const height = s.height ?? depth + relief + roof;
  if (depth > height - 1e-9)
    return bad('thread-longer-than-part', { part: s.kind, thread: t.thread.designation, length: depth, room: height });
  put(b, 'cap', height, across(s, b, 1.8 * t.thread.d) / 2);
  note(b, 'height', height, s.height !== undefined, 0);
  const below = tapIn(b, t, 0, depth);
  note(b, 'thread C', depth, t.length !== undefined, 0);
  if (!t.blind)
    drillIn(
      b,
      'relief',
      depth,
      Math.min(depth + relief, height - Math.min(roof, (height - depth) / 2)),
      0.53 * t.thread.d,
    );
  else runOutOf(b, t, depth, 'up', height - depth);
  return good({ below });
};

const carriedNut: Builder = (s, b) => {
  const t = first(s);
  const height = s.height ?? t.length ?? (s.kind === 'coupling nut' ? 3 : 1.2) * t.thread.d;
  if (t.length !== undefined && tooDeep(t.length, height, false))
    return bad('thread-longer-than-part', {
      part: s.kind,
      thread: t.thread.designation,
      length: t.length,
      room: height,
    });
  put(b, 'hexagon', height, flats(s, b, halfBought(s.kind, t.thread) ?? 0.95 * t.thread.d), 'hexagon');
  note(b, 'thread C', height, (s.height ?? t.length) !== undefined, 0);
  return good({ below: tapIn(b, t, 0, height) });
};

/** A screw with its head up; the head may hold a ball. */
const carriedScrew =
  (r: number, height: number, shape: 'round' | 'hexagon'): Builder =>
  (s, b) => {
    const t = first(s);
    const below = screwOn(b, t, screwLength(t));
    note(b, 'thread C', below.to, t.length !== undefined, 0);
    const head = s.head ?? height * t.thread.d;
    note(b, 'head', head, s.head !== undefined, top(b));
    put(
      b,
      'head',
      head,
      shape === 'hexagon'
        ? flats(s, b, r * t.thread.d)
        : across(s, b, boughtWidth(s.kind, t.thread.d) ?? 2 * r * t.thread.d) / 2,
      shape,
    );
    return good({ below });
  };

interface Kind {
  readonly threads: number;
  /** The sizes it has, besides the lengths of its threads. */
  readonly takes: readonly SizeWord[];
  readonly build: Builder;
}

const HEX = ['hexagon', 'width'] as const;

export const KINDS: Readonly<Record<Role, Readonly<Record<string, Kind>>>> = {
  base: {
    'tapped block': { threads: 1, takes: ['height', 'width'], build: blockBase('square', (d) => 1.2 * d, false) },
    'coupling nut': { threads: 1, takes: ['height', ...HEX], build: blockBase('hexagon', (d) => 3 * d, true) },
    nut: { threads: 1, takes: ['height', ...HEX], build: blockBase('hexagon', (d) => 0.8 * d, false) },
    screw: { threads: 1, takes: ['height', 'width'], build: screwBase },
    stud: { threads: 1, takes: ['height', 'width'], build: screwBase },
  },
  turned: {
    stud: { threads: 2, takes: ['body', 'head', ...HEX], build: stud },
    sleeve: { threads: 2, takes: ['head', 'body', ...HEX], build: sleeve },
    spindle: { threads: 2, takes: ['neck', 'head', ...HEX], build: spindle },
    adapter: { threads: 2, takes: ['body', ...HEX], build: adapter },
    'coupling nut': { threads: 2, takes: ['height', 'body', ...HEX], build: doubleNut },
    'double nut': { threads: 2, takes: ['height', 'body', ...HEX], build: doubleNut },
    screw: { threads: 1, takes: ['head', ...HEX], build: plainScrew },
  },
  carried: {
    cap: { threads: 1, takes: ['height', 'width'], build: cap },
    nut: { threads: 1, takes: ['height', ...HEX], build: carriedNut },
    'coupling nut': { threads: 1, takes: ['height', ...HEX], build: carriedNut },
    'socket screw': { threads: 1, takes: ['head', 'width'], build: carriedScrew(0.75, 1, 'round') },
    'flange screw': { threads: 1, takes: ['head', ...HEX], build: carriedScrew(0.95, 0.6, 'hexagon') },
    screw: { threads: 1, takes: ['head', ...HEX], build: carriedScrew(0.85, 0.65, 'hexagon') },
    spindle: { threads: 1, takes: ['head', 'width'], build: carriedScrew(0.72, 0.4, 'round') },
  },
};

const SIZE_WORDS = ['height', 'body', 'head', 'neck', 'hexagon', 'width'] as const;

export const partOf = (stated: Stated): Result<Part> => {
  const kind = KINDS[stated.role][stated.kind];
  if (!kind)
    return bad('part-in-wrong-place', {
      part: stated.kind,
      role: stated.role,
      instead: Object.keys(KINDS[stated.role]),
    });
  if (stated.threads.length !== kind.threads)
    return bad('part-wants-threads', {
      part: stated.kind,
      role: stated.role,
      wanted: kind.threads,
      got: stated.threads.length,
    });
  const unused = SIZE_WORDS.find((size) => stated[size] !== undefined && !kind.takes.includes(size));
  if (unused !== undefined) return bad('part-size-unused', { part: stated.kind, size: unused, takes: kind.takes });
  const build: Build = { outer: [], bores: [], sizes: [] };
  const ends = kind.build(stated, build);
  if (!ends.ok) return ends;
  const { below, above, grounded } = ends.value;
  const part: Part = {
    role: stated.role,
    kind: stated.kind,
    ...build,
    below,
    above,
    grounded: grounded ?? false,
    material: stated.material,
    coat: stated.coat ?? 0,
    price: stated.price,
    count: stated.count,
  };
  const socket = stated.kind === 'socket screw' ? socketOf(part, build) : undefined;
  const refused = thinnest(part) ?? ofOtherSide(part);
  return refused ?? good(socket ? { ...part, socket } : part);
};

/** The hexagon socket of a screw of ISO 4762, middling across its flats, where the table has its size and its head is higher. */
const socketOf = ({ below }: Part, { outer }: Build): Part['socket'] => {
  const size = SOCKETS.find(({ screw }) => screw === `M${below?.thread.d}`);
  const head = outer.at(-1);
  return size && head && head.to - head.from > size.depth
    ? { flats: (size.flats[0] + size.flats[1]) / 2, depth: size.depth }
    : undefined;
};

/** An end has the limits of its own side; those of the other belong to the part that it joins. */
const ofOtherSide = (part: Part) => {
  for (const end of [part.below, part.above]) {
    if (end === undefined) continue;
    const { thread, gender } = end;
    const other = gender === 'external' ? 'internal' : 'external';
    const cls = classOfSide(thread, other);
    const measured = other === 'external' ? thread.measured?.screw : thread.measured?.nut;
    const written = cls ?? (measured && (other === 'external' ? 'd2' : 'D2'));
    if (written !== undefined) return bad('limits-of-other-side', { part: part.kind, written, gender });
  }
  return undefined;
};

/** A bore that leaves no wall, or a thread wider than the hexagon it is cut in. */
const thinnest = (part: Part) => {
  // Thread through thread first, since that is what a reader must change.
  for (const bore of part.bores)
    for (const step of [...part.outer].sort(
      (a, b) => Number(b.thread !== undefined) - Number(a.thread !== undefined),
    )) {
      if (!(Math.min(step.to, bore.to) - Math.max(step.from, bore.from) > 1e-9)) continue;
      const outside = step.thread ? diameters(step.thread).d3 / 2 : step.r;
      const wall = outside - bore.r;
      if (wall > 1e-9) continue;
      return step.thread && bore.thread
        ? bad('threads-break-through', {
            part: part.kind,
            inside: bore.thread.designation,
            outside: step.thread.designation,
            wall,
          })
        : bad('hexagon-too-narrow', { part: part.kind, width: 2 * step.r, least: 2 * bore.r });
    }
  return undefined;
};
