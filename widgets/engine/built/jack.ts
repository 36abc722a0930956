/**
 * The jack as built: base, turned and carried part with all their contacts, at rest at each angle of the turned part.
 *
 * Bodies: the base on the bench (it rises and tilts, the bench holds it sideways), the turned part (its rotation is given by the hand), the
 * carried part. All rigid but the shank of the turned part between its threads, a beam; else what gives is their contacts. z up from the bench, x and y across it; heights in mm above the bench.
 * Contacts, all of which only push, as even elastic beds cut into places:
 *   flanks of thread A and C, pressed and pulled, all round and along the engagement. With t = tan 30°, ζ the motion of the upper part along the
 *     axis past its screwing, ρ outward across it, c the clearance, e what both helices are off, a flank is closed by
 *     p = ∓(ζ + e) ± t ρ − c t/2           (upper sign: pressed flank; ρ reversed where the upper part is the nut)
 *   e: lead error along the thread, and a wave once a turn, of screw and of nut, each fixed to its own part
 *   guide of the carried part in the base: both ends of a bore with clearance
 *   key: two sides of a slot, or springs that resist a turn
 *   ring: base on the bench, between two radii
 *   springs from base to carried part along the axis, if any: they only pull along it
 *   ball at the tip, which sinks into its seat under the load (ball-on-flat)
 * Friction (coefficient µ) acts along one line at every place: round the helix in the threads, along the axis at guide and key. A run begins as if the
 * hand had been turning clockwise: all slides. From there each place keeps its friction: it sticks until its limit, then slides (pressed-bodies.ts), so
 * a hand that turns back first winds up what gives. Across that line nothing rubs.
 * The axes of the two threads of the turned part may lie apart, by an offset and an angle, which go round with it.
 * The shank, where one is given, parts the turned part in two halves, that of thread A with the hand and that of thread C, joined at the middle of the shank by what
 * a round beam gives: along E A/l, twisted G J/l, bent E I/l, sheared 12 E I/(l³(1 + φ)), φ = 12 E I/(0.9 G A l²) (Timoshenko; 0.9 for a round section, from memory).
 * Left out: bending of the other parts, heat, mass, play of the base on its bench, and that places of contact travel: they stand where they stand at the start.
 * Limits, each a test: forces add up (force-chain), springs over the stroke (spring-force), turns-lost, lead error, wave-through, wave-lean, tilt, lift-held, lift-free, ring-full,
 * wind-up, raising-torque, cantilever, series stiffness, ball-on-flat, key-rub. Source: derived here; statics.
 * Units: mm, N, N·mm, rad; turns clockwise seen from above.
 */
import { ballOnFlat } from '../contact/contact.ts';
import { megapascals, mm, newtons } from '../kernel/quantity.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import type { Task } from '../kernel/task.ts';
import { TAN30 } from '../thread/thread.ts';
import {
  ARM,
  type Bodies,
  type Held,
  type Rest,
  restHeld,
  restOf,
  slidesThroughout,
  spansOf,
  type Tie,
} from './pressed-bodies.ts';

export type JointName = 'ring' | 'A' | 'C' | 'guide' | 'key';

declare module '../kernel/result.ts' {
  interface Refusals {
    'built-no-clearance': { readonly thread: 'A' | 'C'; readonly clearance: number };
    'built-lead-eats-clearance': { readonly thread: 'A' | 'C'; readonly deviation: number; readonly play: number };
    'built-number-outside': { readonly what: string; readonly value: number };
    'built-without-lock': Record<string, never>;
    'built-push-tips': { readonly joint: JointName; readonly turns: number };
    'built-does-not-settle': { readonly joint: JointName; readonly turns: number };
    'built-lock-winds-up': { readonly turns: number };
    'built-friction-locks': { readonly joint: JointName; readonly turns: number };
  }
}

/** What one helix is off: relative lead error, and a wave to either side once a turn with its phase in turns. */
export interface Helix {
  readonly leadError: number;
  readonly wave: number;
  readonly phase: number;
}

export const EXACT: Helix = { leadError: 0, wave: 0, phase: 0 };

export interface BuiltThread {
  readonly h: 1 | -1;
  readonly L: number;
  readonly d2: number;
  /** Engaged, and the height of its middle. */
  readonly engaged: number;
  readonly middle: number;
  /** Of the pitch diameters, with any coat, across both sides. */
  readonly clearance: number;
  readonly upper: 'screw' | 'nut';
  /** Which part passes right through the engagement; the other is engaged along its whole length. */
  readonly through: 'screw' | 'nut';
  readonly screw: Helix;
  readonly nut: Helix;
  /** Along the axis, all flanks of one side together, N/mm. */
  readonly stiffness: number;
  readonly mu: number;
}

export interface Jack {
  readonly A: BuiltThread;
  readonly C: BuiltThread;
  readonly ring?: { readonly outer: number; readonly inner: number; readonly stiffness: number } | undefined;
  readonly guide?:
    | {
        readonly length: number;
        readonly middle: number;
        /** On the diameter. */
        readonly clearance: number;
        readonly radius: number;
        readonly stiffness: number;
        readonly mu: number;
      }
    | undefined;
  /** A key on one side of the axis, in the plane y = 0, or springs. */
  readonly lock:
    | {
        readonly by: 'key';
        readonly gap: number;
        readonly radius: number;
        readonly height: number;
        readonly stiffness: number;
        readonly mu: number;
      }
    | { readonly by: 'springs'; readonly kappa: number };
  /** How the axis of thread C lies to that of thread A on the turned part; the azimuth of both at the start, in turns. */
  readonly axes: { readonly offset: number; readonly angle: number; readonly phase: number };
  /** Of the turned part between its threads, as thick as its core, mm, and Young's and shear modulus, MPa; without one it is rigid. */
  readonly shank?:
    | {
        readonly length: number;
        readonly middle: number;
        readonly diameter: number;
        readonly E: number;
        readonly G: number;
      }
    | undefined;
  readonly tip: number;
  /** The ball at the tip on its seat: radius, and contact modulus in MPa; without one the tip does not sink. */
  readonly ball?: { readonly radius: number; readonly modulus: number } | undefined;
  /** Towards the base on the tip, beside the axis by `beside` along x. */
  readonly load: number;
  readonly beside: number;
  /** Along x, at its height. */
  readonly push: number;
  readonly pushHeight: number;
  /** From base to carried part along the axis: their pull at the start, N, and their rate, N/mm. */
  readonly springs?: { readonly force: number; readonly rate: number } | undefined;
  readonly weightTurned: number;
  /** Along the axis, which holds the carried part back whichever way it goes. */
  readonly drag: number;
}

/** Freedoms: base rise and tilts; turned part across, up, tilts; carried part all six; the upper half of a turned part that gives, all six. */
interface Body {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly rx: number;
  readonly ry: number;
  readonly rz: number;
}
const BASE: Body = { x: -1, y: -1, z: 0, rx: 1, ry: 2, rz: -1 };
const CARRIED: Body = { x: 8, y: 9, z: 10, rx: 11, ry: 12, rz: 13 };

interface Freedoms {
  readonly free: number;
  /** The rotation of the hand, which is given, has the last column. */
  readonly hand: number;
  readonly turned: Body;
  /** The half of the turned part that has thread C: the same where it is rigid. */
  readonly upper: Body;
}
const freedomsOf = ({ shank }: Jack): Freedoms => {
  const free = shank ? 20 : 14;
  const turned = { x: 3, y: 4, z: 5, rx: 6, ry: 7, rz: free };
  return { free, hand: free, turned, upper: shank ? { x: 14, y: 15, z: 16, rx: 17, ry: 18, rz: 19 } : turned };
};
type Vector = readonly [number, number, number];

const TURN = 2 * Math.PI;
/** Places round a thread, the guide and the ring; a multiple of four, so that one lies on each side of every axis. */
const ROUND = 24;
/** Places along an engagement and their shares: Simpson’s, which are exact for a lean. */
const ALONG: readonly (readonly [number, number])[] = [
  [-0.5, 1 / 6],
  [0, 2 / 3],
  [0.5, 1 / 6],
];
/** Nothing that is a thread or a guide tilts so far, rad, or leaves its place so far, mm. */
const LARGEST = 0.2;

/** Adds to a row what a motion of the body gives at a point along a direction. */
const addTo = (row: Float64Array, at: number, body: Body, [x, y, z]: Vector, [dx, dy, dz]: Vector, sign: number) => {
  const put = (column: number, value: number) => {
    if (column >= 0) row[at + column] = (row[at + column] as number) + sign * value;
  };
  put(body.x, dx);
  put(body.y, dy);
  put(body.z, dz);
  put(body.rx, (y * dz - z * dy) / ARM);
  put(body.ry, (z * dx - x * dz) / ARM);
  put(body.rz, (x * dy - y * dx) / ARM);
};

/** One place of contact, as it is laid out before the run. */
interface Place {
  readonly joint: JointName;
  readonly flank: 'pressed' | 'pulled' | undefined;
  readonly round: number;
  readonly along: number;
  readonly point: Vector;
  readonly direction: Vector;
  readonly stiffness: number;
  /** Closed by this before anything is off. */
  readonly rest: number;
}

interface Layout extends Freedoms {
  readonly places: readonly Place[];
  /** For turning clockwise and anticlockwise. */
  readonly forward: Bodies;
  readonly back: Bodies;
  readonly rubs: boolean;
  /** How far a turn clockwise slides each place along its line, mm. */
  readonly glide: Float64Array;
}

const netLead = ({ A, C }: Jack): number => C.h * C.L - A.h * A.L;

const layout = (jack: Jack, around: number): Layout => {
  const places: Place[] = [];
  const freedoms = freedomsOf(jack);
  const { free, turned, upper: half } = freedoms;
  const columns = free + 1;
  // Room for every joint: two threads of two flanks, both ends of a guide, a key and three circles.
  const room = columns * (4 * ALONG.length * around + 2 * around + 2 + 3 * around);
  const closing = new Float64Array(room);
  const line = new Float64Array(room);
  const rough: number[] = [];
  const glides: number[] = [];
  const lay = (
    place: Place,
    upper: Body,
    lower: Body | undefined,
    rub?: { readonly mu: number; readonly along: Vector; readonly glide: number },
  ) => {
    const row = places.length * columns;
    addTo(closing, row, upper, place.point, place.direction, 1);
    if (lower) addTo(closing, row, lower, place.point, place.direction, -1);
    if (rub && rub.mu > 0) {
      addTo(line, row, upper, place.point, rub.along, 1);
      if (lower) addTo(line, row, lower, place.point, rub.along, -1);
    }
    rough.push(rub ? rub.mu * Math.hypot(...place.direction) : 0);
    glides.push(rub?.glide ?? 0);
    places.push(place);
  };
  const round = Array.from({ length: around }, (_, i) => (TURN * i) / around);

  const thread = (joint: 'A' | 'C', of: BuiltThread, upper: Body, lower: Body) => {
    const r = of.d2 / 2;
    const slope = of.L / (TURN * r);
    const across = of.upper === 'screw' ? TAN30 : -TAN30;
    const cos = 1 / Math.hypot(1, slope);
    // Clockwise, the turned part slides backwards round thread A, and the carried part forwards over thread C.
    const glide = (joint === 'A' ? -1 : 1) * Math.hypot(TURN * r, of.L);
    for (const flank of ['pressed', 'pulled'] as const)
      for (const [part, share] of ALONG)
        for (const phi of round) {
          const [c, s] = [Math.cos(phi), Math.sin(phi)];
          const side = flank === 'pressed' ? 1 : -1;
          const turn = side * of.h * slope;
          lay(
            {
              joint,
              flank,
              round: phi,
              along: part * of.engaged,
              point: [r * c, r * s, of.middle + part * of.engaged],
              direction: [across * c - turn * s, across * s + turn * c, -side],
              stiffness: (of.stiffness * share) / around,
              rest: (-of.clearance * TAN30) / 2,
            },
            upper,
            lower,
            { mu: of.mu, along: [-s * cos, c * cos, of.h * slope * cos], glide },
          );
        }
  };
  thread('A', jack.A, turned, BASE);
  thread('C', jack.C, CARRIED, half);

  const up = netLead(jack);
  const { guide, lock, ring } = jack;
  if (guide)
    for (const part of guide.length > 0 ? [-0.5, 0.5] : [0])
      for (const phi of round) {
        const [c, s] = [Math.cos(phi), Math.sin(phi)];
        lay(
          {
            joint: 'guide',
            flank: undefined,
            round: phi,
            along: part * guide.length,
            point: [guide.radius * c, guide.radius * s, guide.middle + part * guide.length],
            direction: [c, s, 0],
            stiffness: guide.stiffness / around,
            rest: -guide.clearance / 2,
          },
          CARRIED,
          BASE,
          { mu: guide.mu, along: [0, 0, 1], glide: up },
        );
      }
  if (lock.by === 'key')
    for (const side of [1, -1])
      lay(
        {
          joint: 'key',
          flank: undefined,
          round: 0,
          along: side,
          point: [lock.radius, 0, lock.height],
          direction: [0, side, 0],
          stiffness: lock.stiffness,
          rest: -lock.gap / 2,
        },
        CARRIED,
        BASE,
        { mu: lock.mu, along: [0, 0, 1], glide: up },
      );
  if (ring) {
    // Three circles between the radii, their shares by the area that each stands for: exact for rise and tilt together.
    const circles = annulus(ring.outer, ring.inner);
    for (const { radius, share } of circles)
      for (const phi of round)
        lay(
          {
            joint: 'ring',
            flank: undefined,
            round: phi,
            along: radius,
            point: [radius * Math.cos(phi), radius * Math.sin(phi), 0],
            direction: [0, 0, -1],
            stiffness: (ring.stiffness * share) / around,
            rest: 0,
          },
          BASE,
          undefined,
        );
  }

  const springs = new Float64Array(columns);
  if (!ring) for (const j of [BASE.z, BASE.rx, BASE.ry]) springs[j] = FIXED;
  if (lock.by === 'springs') springs[CARRIED.rz] = lock.kappa / ARM ** 2;
  const stiffness = Float64Array.from(places, (place) => place.stiffness);
  const spans = spansOf([closing, line], places.length, columns, free);
  const glide = Float64Array.from(glides);
  const side = (sense: 1 | -1): Bodies => ({
    free,
    columns,
    places: places.length,
    ...spans,
    closing,
    line,
    rough: Float64Array.from(rough),
    sense: glide.map((g) => Math.sign(g) * sense),
    stiffness,
    springs,
    ties: tiesOf(jack, freedoms),
    load: loadsOf(jack, sense * Math.sign(up), freedoms),
  });
  return { ...freedoms, places, forward: side(1), back: side(-1), rubs: rough.some((mu) => mu > 0), glide };
};

/** What a round beam gives to either half about its middle, where its six motions do not bear on each other. */
const tiesOf = ({ shank, springs }: Jack, { free, turned, upper }: Freedoms): readonly Tie[] => {
  const pull: Tie[] = [];
  if (springs) {
    const row = new Float64Array(free + 1);
    [row[CARRIED.z], row[BASE.z]] = [1, -1];
    pull.push({ row, stiffness: springs.rate });
  }
  if (!shank) return pull;
  const { length: l, middle, diameter: d, E, G } = shank;
  const [area, I] = [(Math.PI * d ** 2) / 4, (Math.PI * d ** 4) / 64];
  const sheared = (12 * E * I) / (0.9 * G * area * l ** 2);
  const tie = (stiffness: number, motion: Vector | undefined, rotation?: 'rx' | 'ry' | 'rz'): Tie => {
    const row = new Float64Array(free + 1);
    if (motion) {
      addTo(row, 0, upper, [0, 0, middle], motion, 1);
      addTo(row, 0, turned, [0, 0, middle], motion, -1);
    }
    if (rotation) {
      row[upper[rotation]] = 1 / ARM;
      row[turned[rotation]] = -1 / ARM;
    }
    return { row, stiffness };
  };
  const across = (12 * E * I) / (l ** 3 * (1 + sheared));
  return [
    ...pull,
    tie(across, [1, 0, 0]),
    tie(across, [0, 1, 0]),
    tie((E * area) / l, [0, 0, 1]),
    tie((E * I) / l, undefined, 'rx'),
    tie((E * I) / l, undefined, 'ry'),
    tie((2 * G * I) / l, undefined, 'rz'),
  ];
};

/** A base that stands on no ring is part of the bench. */
const FIXED = 1e9;

/** Circles that stand for a ring: they keep its area and its second moment, and one lies at the outer edge. */
const annulus = (outer: number, inner: number): readonly { readonly radius: number; readonly share: number }[] => {
  // Share of the outer circle, so that outer²·s + inner²·m + middle²·(1 − s − m) is the mean of r² over the ring, as (outer² + inner²)/2.
  const middle = Math.sqrt((outer ** 2 + inner ** 2) / 2);
  return [
    { radius: outer, share: 1 / 6 },
    { radius: middle, share: 2 / 3 },
    { radius: inner, share: 1 / 6 },
  ];
};

const loadsOf = (jack: Jack, motion: number, { free, turned }: Freedoms): Float64Array => {
  const load = new Float64Array(free + 1);
  addTo(load, 0, CARRIED, [jack.beside, 0, jack.tip], [0, 0, -1], jack.load);
  addTo(load, 0, CARRIED, [0, 0, jack.pushHeight], [1, 0, 0], jack.push);
  addTo(load, 0, CARRIED, [0, 0, 0], [0, 0, -1], jack.drag * motion);
  addTo(load, 0, turned, [0, 0, 0], [0, 0, -1], jack.weightTurned);
  return load;
};

/** How far a helix is off at this place, along the axis: its lead error over the length past the start, and its wave. */
const off = (helix: Helix, length: number, angle: number): number =>
  helix.leadError * length + (helix.wave === 0 ? 0 : helix.wave * Math.cos(angle - TURN * helix.phase));

/** What screw and nut of a thread are off at a place, screw less nut, after n turns of the turned part. */
const apart = (of: BuiltThread, place: Place, screwAngle: number, nutAngle: number, advance: number): number => {
  const { along } = place;
  // The part that passes right through shows ever new thread at the place; the other keeps its own.
  const screwLength = of.through === 'screw' ? along - advance : along;
  const nutLength = of.through === 'screw' ? along : along + advance;
  return off(of.screw, screwLength, place.round - screwAngle) - off(of.nut, nutLength, place.round - nutAngle);
};

/** How each place is closed after n turns, before anything gives. */
const gapsAt = (jack: Jack, { places }: Layout, n: number): Float64Array => {
  const { A, C, axes } = jack;
  const hand = -TURN * n;
  const azimuth = hand + TURN * axes.phase;
  const [ex, ey] = [axes.offset * Math.cos(azimuth), axes.offset * Math.sin(azimuth)];
  return Float64Array.from(places, (place) => {
    if (place.flank === undefined) return place.rest;
    const of = place.joint === 'A' ? A : C;
    const turned = place.joint === 'A' ? of.upper : of.upper === 'screw' ? 'nut' : 'screw';
    const [screwAngle, nutAngle] = turned === 'screw' ? [hand, 0] : [0, hand];
    // How far the screw has gone through its nut.
    const advance = turned === 'screw' ? -of.h * of.L * n : of.h * of.L * n;
    const e = apart(of, place, screwAngle, nutAngle, advance);
    const lifts = of.upper === 'screw' ? e : -e;
    const side = place.flank === 'pressed' ? 1 : -1;
    let gap = place.rest - side * lifts;
    if (place.joint === 'C') {
      // Thread C of the turned part stands beside its place and leans: seen from there, the carried part is off the other way.
      const lean = axes.angle * (place.point[2] - A.middle);
      const [dx, dy, dz] = place.direction;
      const [c, s] = [Math.cos(azimuth), Math.sin(azimuth)];
      const [sx, sy] = [ex + lean * c, ey + lean * s];
      const sz = -axes.angle * (place.point[0] * c + place.point[1] * s);
      gap -= dx * sx + dy * sy + dz * sz;
    }
    return gap;
  });
};

export interface JointState {
  readonly joint: JointName;
  /** Along the axis on the upper part, towards the base is plus: what the joint carries, N. */
  readonly axial: number;
  /** Across the axis, N. */
  readonly across: number;
  /** Shares of the places that touch: of a thread its pressed and its pulled flank, else all of them and none. */
  readonly pressed: number;
  readonly pulled: number;
}

export interface Stand {
  readonly n: number;
  /** The tip: across, across, off the motion of the nominal net lead (all mm), then tilts and rotation, rad. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** The turned part where the axis of thread A crosses the bench, and its tilt, as seen along y. */
  readonly turnedX: number;
  readonly turnedTilt: number;
  readonly tiltX: number;
  readonly tiltY: number;
  readonly twist: number;
  /** The hand must give it, in the sense in which it turns, N·mm. */
  readonly torque: number;
  readonly joints: readonly JointState[];
}

const JOINTS: readonly JointName[] = ['ring', 'A', 'C', 'guide', 'key'];

const standOf = (
  jack: Jack,
  { places, turned, hand: handColumn }: Layout,
  bodies: Bodies,
  rest: Rest,
  n: number,
  sense: 1 | -1,
  sink: number,
): Stand => {
  const { q, push, friction } = rest;
  const at = (column: number) => q[column] as number;
  const [rx, ry] = [at(CARRIED.rx) / ARM, at(CARRIED.ry) / ARM];
  let hand = 0;
  for (const { row, stiffness } of bodies.ties) {
    const given = row.reduce((sum, x, j) => sum + x * (q[j] ?? 0), 0);
    hand += stiffness * given * (row[handColumn] as number) * ARM;
  }
  const sums = new Map(JOINTS.map((joint) => [joint, { x: 0, y: 0, z: 0, pressed: 0, pulled: 0, a: 0, b: 0 }]));
  for (const [i, place] of places.entries()) {
    const sum = sums.get(place.joint);
    if (!sum) continue;
    const N = push[i] as number;
    const row = i * bodies.columns;
    const force = (column: number) =>
      N * (bodies.closing[row + column] as number) + (friction[i] as number) * (bodies.line[row + column] as number);
    hand += force(handColumn) * ARM;
    // The upper part of a joint is the one whose columns hold the direction with its own sign.
    const upper = place.joint === 'A' ? turned : place.joint === 'ring' ? undefined : CARRIED;
    sum.x -= upper ? force(upper.x) : 0;
    sum.y -= upper ? force(upper.y) : 0;
    sum.z -= force(upper ? upper.z : BASE.z);
    if (place.flank === 'pulled') {
      sum.b += 1;
      if (N > 0) sum.pulled += 1;
    } else {
      sum.a += 1;
      if (N > 0) sum.pressed += 1;
    }
  }
  return {
    n,
    x: at(CARRIED.x) + ry * jack.tip,
    y: at(CARRIED.y) - rx * jack.tip,
    z: at(CARRIED.z) - sink,
    turnedX: at(turned.x),
    turnedTilt: at(turned.ry) / ARM,
    tiltX: rx,
    tiltY: ry,
    twist: at(CARRIED.rz) / ARM,
    torque: -hand * sense,
    joints: JOINTS.flatMap((joint) => {
      const sum = sums.get(joint);
      if (!sum || sum.a === 0) return [];
      return [
        {
          joint,
          axial: sum.z,
          across: Math.hypot(sum.x, sum.y),
          pressed: sum.pressed / sum.a,
          pulled: sum.b === 0 ? 0 : sum.pulled / sum.b,
        },
      ];
    }),
  };
};

/** Where the bodies have come so far apart that something tips, the joint at which they did. */
const tipped = (q: Float64Array, { turned, upper }: Freedoms): JointName | undefined => {
  const tilt = (body: Body, under?: Body) =>
    Math.hypot(
      (q[body.rx] as number) - (under ? (q[under.rx] as number) : 0),
      (q[body.ry] as number) - (under ? (q[under.ry] as number) : 0),
    ) / ARM;
  const tilts: readonly (readonly [JointName, number])[] = [
    ['ring', tilt(BASE)],
    ['A', tilt(turned, BASE)],
    ['C', tilt(CARRIED, upper)],
  ];
  const worst = tilts.reduce((a, b) => (b[1] > a[1] ? b : a));
  return worst[1] > LARGEST ? worst[0] : undefined;
};

/** Most that a gauge beside the axis by this much, along the push, is off by the lean of its part since the start of a run, mm (Abbe). */
export const gaugeOff = (run: readonly Stand[], offset: number): number => {
  const first = run[0]?.tiltY ?? 0;
  // Tilted about y, the side along x goes down.
  return run.reduce((most, { tiltY }) => Math.max(most, Math.abs((tiltY - first) * offset)), 0);
};

const refusalOf = (jack: Jack): ReturnType<typeof bad> | undefined => {
  for (const name of ['A', 'C'] as const) {
    const of = jack[name];
    if (!(of.clearance >= 0)) return bad('built-no-clearance', { thread: name, clearance: of.clearance });
    for (const [what, value, most] of [
      ['engaged', of.engaged, 500],
      ['d2', of.d2, 400],
      ['L', of.L, 60],
      ['stiffness', of.stiffness, 1e9],
    ] as const)
      if (!(value > 0 && value <= most)) return bad('built-number-outside', { what, value });
    const deviation = Math.abs(of.screw.leadError - of.nut.leadError) * of.engaged;
    const play = of.clearance * TAN30;
    if (!(deviation <= play)) return bad('built-lead-eats-clearance', { thread: name, deviation, play });
  }
  if (jack.lock.by === 'springs' && !(jack.lock.kappa > 0)) return bad('built-without-lock', {});
  for (const [what, value] of [
    ['load', jack.load],
    ['springs', jack.springs?.force ?? 0],
    ['push', jack.push],
    ['pushHeight', jack.pushHeight],
    ['tip', jack.tip],
    ['drag', jack.drag],
    ['shank length', jack.shank?.length ?? 0],
  ] as const)
    if (!(Math.abs(value) <= 1e5)) return bad('built-number-outside', { what, value });
  return undefined;
};

/** Where the pressed flanks begin to touch, and the base has sunk as it will: near enough to the rest for Newton’s steps. */
const seated = (jack: Jack, { free, turned, upper }: Freedoms): Float64Array => {
  const { A, C, ring, lock, shank } = jack;
  const load = jack.load + (jack.springs?.force ?? 0);
  const start = new Float64Array(free);
  const sign = load < 0 ? -1 : 1;
  const base = ring ? -load / ring.stiffness : 0;
  start[BASE.z] = base;
  start[turned.z] = base - sign * ((A.clearance * TAN30) / 2) - load / A.stiffness;
  if (shank)
    start[upper.z] =
      (start[turned.z] as number) - (load * shank.length) / (shank.E * (Math.PI / 4) * shank.diameter ** 2);
  start[CARRIED.z] = (start[upper.z] as number) - sign * ((C.clearance * TAN30) / 2) - load / C.stiffness;
  // Raised, thread C drags the carried part clockwise until its key bears.
  if (lock.by === 'key') start[CARRIED.rz] = (-lock.gap / 2 / lock.radius) * ARM;
  return start;
};

/** The jack at rest at each of these turns, one after the other; each is turned to from the one before. Yields the share done. */
export function* jackRun(
  jack: Jack,
  turns: readonly number[],
  around: number = ROUND,
): Generator<number, Result<readonly Stand[]>, void> {
  const refusal = refusalOf(jack);
  if (refusal) return refusal;
  const sink = sinkOf(jack);
  if (!sink.ok) return sink;
  const laid = layout(jack, around);
  const stands: Stand[] = [];
  const seat = seated(jack, laid);
  let start = seat;
  let last: { readonly n: number; readonly rest: Rest } | undefined;
  let sense: 1 | -1 = 1;
  for (const [i, n] of turns.entries()) {
    if (last && n !== last.n) sense = n > last.n ? 1 : -1;
    const bodies = pulledAt(jack, sense === 1 ? laid.forward : laid.back, n, seat);
    const gap = gapsAt(jack, laid, n);
    let rest = restOf(bodies, gap, start, laid.rubs);
    // What slides is found first: where it can’t, friction locks. Then whether each place has slid far enough to do so.
    if (last && laid.rubs && rest.how === 'at rest') {
      const by = n - last.n;
      const held: Held = {
        q: last.rest.q,
        friction: last.rest.friction,
        glide: laid.glide.map((perTurn) => perTurn * by),
      };
      if (!slidesThroughout(bodies, held, rest)) {
        rest = restHeld(bodies, gap, rest.q, held);
        // All could slide, so nothing locks: what is held was not found.
        if (rest.how === 'locked') rest = { ...rest, how: 'none' };
      }
    }
    const joint = rest.how === 'locked' ? undefined : tipped(rest.q, laid);
    if (rest.how === 'locked' || (joint && standsSmooth(laid, bodies, gap, start)))
      return bad('built-friction-locks', { joint: mostIn(laid, rest.friction), turns: n });
    if (joint) return bad('built-push-tips', { joint, turns: n });
    // A lock that is wound up so far is none, and past it nothing here is meant to hold.
    const wound = Math.max(...[last?.rest, rest].map((r) => Math.abs((r?.q[CARRIED.rz] ?? 0) / ARM)));
    if (jack.lock.by === 'springs' && wound > 1) return bad('built-lock-winds-up', { turns: n });
    if (rest.how === 'none') return bad('built-does-not-settle', { joint: mostIn(laid, rest.push), turns: n });
    // Where the last two places lead to, if the steps are even.
    const before = last?.rest.q;
    start = before ? rest.q.map((x, j) => 2 * x - (before[j] as number)) : rest.q;
    last = { n, rest };
    stands.push(standOf(jack, laid, bodies, rest, n, sense, sink.value));
    yield (i + 1) / turns.length;
  }
  return good(stands);
}

/** Whether it would stand there if nothing rubbed: then friction is what keeps it from standing. */
const standsSmooth = (laid: Layout, bodies: Bodies, gap: Float64Array, start: Float64Array): boolean => {
  if (!laid.rubs) return false;
  const smooth = restOf(bodies, gap, start, false);
  return smooth.how === 'at rest' && tipped(smooth.q, laid) === undefined;
};

/**
 * The same with what its springs pull there: what they pull at the start, seated as told, and their rate times the nominal motion. What the carried part
 * leaves that by is the tie's.
 */
const pulledAt = (jack: Jack, bodies: Bodies, n: number, from: Float64Array): Bodies => {
  if (!jack.springs) return bodies;
  const { force, rate } = jack.springs;
  const seat = (from[CARRIED.z] as number) - (from[BASE.z] as number);
  const pull = force + rate * (netLead(jack) * n - seat);
  const load = Float64Array.from(bodies.load);
  load[CARRIED.z] = (load[CARRIED.z] as number) - pull;
  load[BASE.z] = (load[BASE.z] as number) + pull;
  return { ...bodies, load };
};

/** The joint in which the sum of these forces is largest. */
const mostIn = ({ places }: Layout, forces: Float64Array): JointName => {
  const sum = (joint: JointName) =>
    places.reduce((total, place, i) => total + (place.joint === joint ? Math.abs(forces[i] as number) : 0), 0);
  return JOINTS.reduce((most, joint) => (sum(joint) > sum(most) ? joint : most));
};

/** How far the ball of the tip sinks into its seat under the load, mm; a load that lifts does not press it. */
const sinkOf = ({ ball, load }: Jack): Result<number> => {
  if (!ball || !(load > 0)) return good(0);
  const sunk = ballOnFlat.of({ F: newtons(load), R: mm(ball.radius), E_s: megapascals(ball.modulus) });
  return sunk.ok ? good(sunk.value.delta) : sunk;
};

/** The run in one go. */
export const runJack = (jack: Jack, turns: readonly number[]): Result<readonly Stand[]> => {
  const run = jackRun(jack, turns);
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
};

/** The engine’s long work, for whoever drives it by slices. */
export type JackTask = Task<Result<readonly Stand[]>>;
