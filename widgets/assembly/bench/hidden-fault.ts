/**
 * A jack on a bench with one hidden fault, from a seed: the fault and its size, and what the instruments of the bench then read. The same adjuster and
 * seed give the same fault and the same readings, on a page as on a lab sheet.
 *
 * The bench has an indicator along the axis over the tip, one across the axis at the tip, a gauge block, a clock, and a pencil line down the carried part. The
 * work is a weight, which can be taken off, and springs with it. The base is clamped. Heights come from the engine’s simulator, sideways readings from the jack as built, drift from the growth of the
 * parts, a leaning indicator from the cosine errors. The sizes are invented, each well over the scatter of the instruments. Lengths mm, forces N.
 */
import {
  bad,
  cosineErrorFace,
  cosineErrorPoint,
  diameters,
  EXACT,
  fillNormal,
  good,
  turns as inTurns,
  type Jack,
  type Move,
  megapascals,
  mm,
  newtons,
  plain,
  type RandomState,
  type Result,
  rad,
  randomState,
  runJack,
  simulate,
  threadStiffness,
  uniform,
} from '../../engine/index.ts';
import { type Adjuster, type Fitted, standing } from '../adjuster/adjuster.ts';
import { heightOf, reach } from '../adjuster/part.ts';
import { jointPlay } from '../adjuster/play.ts';
import { growthPerKelvin } from '../adjuster/warm-growth.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'bench-one-thread': Record<string, never>;
    'bench-no-play': { readonly thread: 'A' | 'C' };
    'bench-places': { readonly count: number; readonly most: number };
  }
}

export const FAULTS = [
  'lead error',
  'wave',
  'lean',
  'loose lock',
  'side push',
  'gauge off its axis',
  'warm hand',
  'worn flank',
] as const;
export type Fault = (typeof FAULTS)[number];

/** The size of the fault as a teacher measures it: a share of the net lead, mm, rad, N or K. */
export interface Hidden {
  readonly fault: Fault;
  readonly size: number;
}

export interface Bench {
  readonly adjuster: Adjuster;
  readonly seed: number;
  readonly hidden: Hidden;
  /** Axial play that a good jack of these pieces has. */
  readonly play: { readonly A: number; readonly C: number };
}

export interface BenchReading {
  readonly turns: number;
  readonly direction: 'up' | 'down';
  /** Of the indicator along the axis, set to nought at the first reading. */
  readonly height: number;
  /** Of the indicator across the axis at the tip, set to nought while nothing stood on it. */
  readonly side: number;
}

/** What is found without turning, and by looking. */
export interface Checks {
  /** A gauge block under the indicator: what it is, and what is read. */
  readonly block: { readonly is: number; readonly reads: number };
  /** How far the reading went by itself, after a hand had held the jack so long. */
  readonly drift: number;
  /** How far the pencil line on the carried part came round when the head was turned on and back, rad. */
  readonly line: number;
}

/** The work, and the friction of the slide that keeps the carried part where it is; minutes of waiting; the gauge block. */
const WEIGHT = 20;
const DRAG = 1;
export const WAITED = 10;
const BLOCK = 1;
/** Scatter of a reading along the axis and across it; both are read to a tenth of a micrometre and to a micrometre. */
export const SCATTER = { height: 2e-4, side: 1e-3 } as const;
const DIVISION = { height: 1e-4, side: 1e-3 } as const;
/** Each reading takes so long, and the parts warm with this time constant, minutes. */
const EACH = 0.5;
const WARMS = 8;
/** All lost motion is taken up by this many turns more. */
const BEYOND = 0.1;
const STEEL = 210_000;
const BEDS = 1e6;
/** The base is clamped to the bench, so nothing that the work does tips it: as if it were so wide, mm. */
const CLAMPED = 200;
const KEY = 1e5;

const between = (state: RandomState, from: number, to: number): number => from + (to - from) * uniform(state);
const either = (state: RandomState): 1 | -1 => (uniform(state) < 0.5 ? -1 : 1);
const rounded = (x: number, division: number): number => Math.round(x / division) * division + 0;

/** Of middling pieces: diametral clearance at the flanks and axial play. */
const middling = (fitted: Fitted): { readonly clearance: number; readonly play: number } | undefined => {
  const play = jointPlay(fitted);
  if (!play.ok || !play.value.most.ok) return undefined;
  const { least, most, clearance } = play.value;
  return {
    clearance: (Math.max(0, clearance.least) + clearance.most) / 2,
    play: (most.value + (least.ok ? least.value : 0)) / 2,
  };
};

/** Heights of the middles of the two engaged threads. */
const middleOf = (a: Adjuster, name: 'A' | 'C', { joint }: Fitted): number => {
  const { at, engaged } = standing(a, 0);
  const [below, above] = name === 'A' ? [0, at.turned] : [at.turned, at.carried];
  return Math.max(joint.lower.from + below, joint.upper.from + above) + engaged[name] / 2;
};

/** The push at the tip that begins to lift the carried part off one side of its thread, N: more tips it through its clearance. */
const tipping = (a: Adjuster): number => {
  const fitted = a.C ?? a.A;
  const arm = standing(a, 0).height - middleOf(a, 'C', fitted);
  return (WEIGHT * diameters(fitted.thread).d2) / 2 / Math.max(1, arm);
};

/** How large, each sense by chance: of what a size is follows from the fault. */
const sizeOf = (fault: Fault, a: Adjuster, play: Bench['play'], state: RandomState): number => {
  const net = Math.abs(a.Delta);
  switch (fault) {
    case 'lead error':
      return either(state) * between(state, 0.03, 0.06);
    case 'wave':
      return Math.max(0.003, net * between(state, 0.04, 0.08));
    case 'lean':
      return between(state, 0.004, 0.008);
    case 'loose lock':
      return between(state, 0.05, 0.1);
    case 'side push':
      return either(state) * between(state, 1.6, 2.4) * tipping(a);
    case 'gauge off its axis':
      return between(state, 0.26, 0.36);
    case 'warm hand':
      return between(state, 6, 10);
    case 'worn flank':
      return between(state, 1.5, 2.5) * Math.max(play.A, 0.05);
  }
};

/** `among`: the faults to draw from, where not all of them. */
export const benchOf = (adjuster: Adjuster, seed: number, among: readonly Fault[] = FAULTS): Result<Bench> => {
  if (!adjuster.C || !adjuster.carried) return bad('bench-one-thread', {});
  const [A, C] = [middling(adjuster.A)?.play, middling(adjuster.C)?.play];
  if (A === undefined || C === undefined) return bad('bench-no-play', { thread: A === undefined ? 'A' : 'C' });
  const state = randomState(seed);
  if (!state.ok) return state;
  // Of a jack that hardly grows, a warm hand shows nothing.
  const grows = Math.abs(growthPerKelvin(adjuster) ?? 0) * 6 > 8 * SCATTER.height;
  const drawn = among.filter((fault) => fault !== 'warm hand' || grows);
  const fault = drawn[Math.floor(uniform(state.value) * drawn.length)] ?? 'lead error';
  const play = { A, C };
  return good({ adjuster, seed, play, hidden: { fault, size: sizeOf(fault, adjuster, play, state.value) } });
};

/** Growth of the parts so many minutes after a warm hand took hold. */
const grown = ({ adjuster, hidden }: Bench, minutes: number): number =>
  hidden.fault === 'warm hand' ? (growthPerKelvin(adjuster) ?? 0) * hidden.size * (1 - Math.exp(-minutes / WARMS)) : 0;

/** A ball is followed as a point; a flat face is followed square to itself. */
const asRead = ({ adjuster, hidden }: Bench, w: number): number => {
  if (hidden.fault !== 'gauge off its axis') return w;
  const relation = adjuster.tip.kind === 'flat' ? cosineErrorFace : cosineErrorPoint;
  const error = relation.of({ w: mm(w), theta_i: rad(hidden.size) });
  return error.ok ? w + error.value.e_c : w;
};

/** The jack as built, for the faults that are seen across the axis. */
const jackOf = ({ adjuster: a, hidden: { fault, size } }: Bench): Result<Jack> => {
  const now = standing(a, 0);
  const threadOf = (name: 'A' | 'C', fitted: Fitted): Result<Jack['A']> => {
    const { joint, thread } = fitted;
    const { d2, d3 } = diameters(thread);
    const stiff = threadStiffness.of({ E_l: megapascals(STEEL), d: thread.d, d_3: d3 });
    if (!stiff.ok) return stiff;
    return good({
      h: thread.h,
      L: thread.L,
      d2,
      engaged: now.engaged[name],
      middle: middleOf(a, name, fitted),
      clearance: middling(fitted)?.clearance ?? 0,
      upper: joint.upper.gender === 'external' ? 'screw' : 'nut',
      through: 'screw',
      screw: EXACT,
      nut: EXACT,
      stiffness: stiff.value.k_e,
      mu: 0.12,
    });
  };
  const A = threadOf('A', a.A);
  if (!A.ok || !a.C || !a.carried) return A.ok ? bad('bench-one-thread', {}) : A;
  const C = threadOf('C', a.C);
  if (!C.ok) return C;
  return good({
    A: A.value,
    C: C.value,
    ring: { outer: CLAMPED, inner: 0, stiffness: BEDS },
    lock: {
      by: 'key',
      gap: 0.05,
      radius: 1.5 * Math.max(...a.carried.outer.map(reach)),
      height: C.value.middle,
      stiffness: KEY,
      mu: 0.12,
    },
    axes: { offset: 0, angle: fault === 'lean' ? size : 0, phase: 0 },
    tip: now.height,
    load: WEIGHT,
    beside: 0,
    push: fault === 'side push' ? size : 0,
    pushHeight: now.at.carried + heightOf(a.carried),
    weightTurned: 0,
    drag: 0,
  });
};

/** Readings; a paper has room for fewer. */
const MOST = 800;

/**
 * Up through these places and down again, so many times over, with the work on or off: from nought, rising, in turns. Each way is begun beyond its
 * first place, so that its flanks are seated.
 */
export const readingsOf = (
  bench: Bench,
  places: readonly number[],
  weighted: boolean,
  runs = 1,
): Result<readonly BenchReading[]> => {
  const { adjuster: a, seed, play } = bench;
  const { fault, size } = bench.hidden;
  if (!a.C) return bad('bench-one-thread', {});
  if (!(places.length >= 2 && 2 * places.length * runs <= MOST && runs >= 1))
    return bad('bench-places', { count: places.length, most: MOST / 2 });
  const sized = (which: Fault): number => (fault === which ? size : 0);
  const windUp = sized('loose lock');
  const worn = sized('worn flank');
  const net = Math.abs(a.Delta);
  const over = BEYOND + windUp / Math.PI + (weighted ? 0 : (play.A + play.C + worn) / net);
  const down = [...places].reverse();
  const moves: Move[] = [];
  /** Where each move ends, and which of them are read. */
  const path: number[] = [];
  const stands: number[] = [];
  let at = 0;
  const go = (to: number) => {
    moves.push({ kind: 'turn', turns: inTurns(to - at) });
    path.push(to);
    at = to;
  };
  for (const way of [places, down]) {
    const [first = 0, second = 0] = way;
    go(first - Math.sign(second - first) * over);
    for (const place of way) {
      go(place);
      stands.push(path.length - 1);
    }
  }
  const motion = simulate(
    {
      A: {
        h: a.A.thread.h,
        L: a.A.thread.L,
        play: mm(play.A + worn),
        // The lead of A alone puts the net lead off by this share, with its sign: what A takes more, the net lead has less.
        leadError: plain((-sized('lead error') * a.Delta) / (a.A.thread.h * a.A.thread.L)),
        periodic: mm(sized('wave')),
      },
      C: { h: a.C.thread.h, L: a.C.thread.L, play: mm(play.C) },
      loads: { turned: newtons(0), carried: newtons(weighted ? WEIGHT : 0) },
      drags: { turned: newtons(0), carried: newtons(DRAG) },
      windUp: rad(windUp),
    },
    moves,
  );
  if (!motion.ok) return motion;
  const both = [...places, ...down];
  // What leans or is pushed lies the other way only once it has been turned back, so the turns beyond count here too.
  const aside = asideOf(bench, path, weighted);
  if (!aside.ok) return aside;
  const state = randomState(2 * seed + (weighted ? 1 : 0));
  if (!state.ok) return state;
  const count = both.length * runs;
  const noise = new Float64Array(2 * count);
  fillNormal(state.value, noise);
  // Another run goes over the same flanks; only the clock has gone on.
  const heights = Array.from({ length: count }, (_, i) => {
    const k = i % both.length;
    const stand = stands[k] as number;
    const z = (motion.value.carried[stand + 1] as number) + (aside.value[stand]?.z ?? 0);
    return asRead(bench, z + grown(bench, EACH * i));
  });
  return good(
    heights.map((height, i) => ({
      turns: both[i % both.length] as number,
      direction: i % both.length < places.length ? 'up' : 'down',
      height: rounded(
        height - (heights[0] as number) + (i === 0 ? 0 : SCATTER.height * (noise[2 * i] as number)),
        DIVISION.height,
      ),
      side: rounded(
        (aside.value[stands[i % both.length] as number]?.x ?? 0) + SCATTER.side * (noise[2 * i + 1] as number),
        DIVISION.side,
      ),
    })),
  );
};

/** Net lead that the jack really has, mm a turn. */
export const leadOf = ({ adjuster, hidden }: Bench): number =>
  adjuster.Delta * (1 + (hidden.fault === 'lead error' ? hidden.size : 0));

/** What the tip does across the axis, and off the motion of the net lead along it, at these turns one after the other. */
const asideOf = (
  bench: Bench,
  turns: readonly number[],
  weighted: boolean,
): Result<readonly { readonly x: number; readonly z: number }[]> => {
  const { fault } = bench.hidden;
  // A push belongs to the work, so it goes when the work is taken off.
  if (!(fault === 'lean' || (fault === 'side push' && weighted))) return good([]);
  const jack = jackOf(bench);
  return jack.ok ? runJack(jack.value, turns) : jack;
};

export const checksOf = (bench: Bench): Result<Checks> => {
  const { hidden, seed } = bench;
  const state = randomState(2 * seed);
  if (!state.ok) return state;
  const noise = new Float64Array(2);
  fillNormal(state.value, noise);
  const read = (x: number, i: number) => rounded(x + SCATTER.height * (noise[i] as number), DIVISION.height);
  return good({
    block: { is: BLOCK, reads: read(asRead(bench, BLOCK), 0) },
    drift: read(grown(bench, WAITED), 1),
    line: hidden.fault === 'loose lock' ? 2 * hidden.size : 0,
  });
};
