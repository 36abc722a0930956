/**
 * The motion of a differential screw that is not perfect: play, flanks, friction, lead error, lock and gauge.
 *
 * Parts in series: base — thread A — turned part — thread C — carried part. z is positive up, away from the base, every
 * load towards it; n is turns of the turned part, clockwise seen from above; h is +1 for a right-hand thread.
 *
 * Where the threads would put the parts with play halved (ε relative lead error, a periodic amplitude, φ its phase
 * in turns, S(x) = sin 2π(x + φ) − sin 2πφ, so that all starts at nought):
 *   g_A = −h_A L_A (1 + ε_A) n + a_A S(n)          height of the turned part over the base
 *   g_C = +h_C L_C (1 + ε_C) n_r + a_C S(n_r)      height of the carried part over the turned part
 * n_r is the turning of the two parts against each other. The carried part takes a share f of every turn (lock slip),
 * and its lock gives way elastically by up to ψ before thread C starts to turn:
 *   n_r = (1 − f) n − m,   m ← max(−ψ/2π, min(ψ/2π, m + (1 − f) dn))   (a stop operator)
 *
 * Flanks. The parts stand where the flanks allow, j being the axial play of a thread (play.ts):
 *   z_t = g_A + q_A,         −j_A/2 ≤ q_A ≤ +j_A/2
 *   z_c = z_t + g_C + q_C,   −j_C/2 ≤ q_C ≤ +j_C/2
 * At −j/2 the upper part’s pressed flank touches, at +j/2 its pulled one (flanks.ts).
 * On the turned part act a steady load F_t and a drag D_t, on the carried part F_c and D_c. A load is weight, spring
 * or work, positive towards the base; a drag is dry friction against the base (slide of the lock, plunger of an indicator; grease for the turned
 * part) that holds the part where it is until more than D acts on it. At each step the parts go where
 *   F_t z_t + F_c z_c + D_t |z_t − z_t,before| + D_c |z_c − z_c,before|   is least within the flanks,
 * the step of a rate-independent system (J. J. Moreau's sweeping process; A. Mielke, T. Roubíček, Rate-Independent
 * Systems, 2015; both cited from memory). A move stops at every flank it meets, so a long move gives what many short
 * ones give, to a nanometre. What follows from it, each checked in the tests:
 *   - F_c beyond D_c seats thread C, F_t + F_c beyond D_t + D_c seats thread A; a seated thread loses no motion to play. Weight
 *     on the carried part seats both threads the same way; a spring between turned part and base seats A only.
 *   - no load, D_c ≥ D_t: the turned part is shoved across both plays before the carried part moves, so
 *     z_c is one play operator of half-width r = (j_A + j_C)/2 on u = g_A + g_C,
 *       z_c ← max(u − r, min(u + r, z_c)),    and reversal loses (j_A + j_C)/|Δ| turns.
 *   - no load, D_t > D_c (stiff grease in A, nothing on the tip): two operators one after the other. With like hands
 *     the reversed loop is |j_A − j_C| wide and the carried part first runs at the full lead of thread C; with
 *     unlike hands it is j_A + j_C again.
 * Without any load or drag nothing says where the parts are; a trace of drag on the carried part is then assumed.
 *
 * Stick-slip. Guide friction and the spring of the parts let the carried part lag behind z_c: it sticks until the lag
 * reaches `stick` (static friction over stiffness), then jumps until it is `slip` (kinetic over stiffness). Equal
 * values give a steady lag.
 * Gauge. Reads the carried part, set to nought at the settled start, plus normal noise of a stated deviation.
 *
 * Left out: speed and inertia (a jump is instantaneous), friction inside the threads other than through ψ, drag
 * between turned and carried part, elastic flanks (a flank is seated or not), tilt and radial float, wear, heat. Turning is
 * taken as free of axial drag in the threads themselves: a turning screw slides round, and hardly resists along.
 * Lengths mm, forces N, angles rad, rotation turns. Deterministic: the same settings, moves and seed give the same run.
 */
import { at } from '../kernel/at.ts';
import type { Millimetres, Newtons, Plain, Radians, Turns } from '../kernel/quantity.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';
import { fillNormal, randomState } from '../numerics/random.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'simulated-hand': { readonly thread: 'A' | 'C'; readonly h: number };
    'simulated-negative-play': { readonly thread: 'A' | 'C'; readonly play: number };
    'simulated-thread-range': {
      readonly thread: 'A' | 'C';
      readonly what: ThreadSetting;
      readonly value: number;
      readonly min: number;
      readonly max: number;
    };
    'simulated-range': {
      readonly what: PartSetting;
      readonly value: number;
      readonly min: number;
      readonly max: number;
    };
    'too-many-moves': { readonly count: number; readonly most: number };
    'move-turns': { readonly move: number; readonly turns: number; readonly most: number };
    'move-load': { readonly move: number; readonly load: number; readonly most: number };
    'moves-too-long': { readonly turns: number; readonly most: number; readonly pieces: number };
  }
}

/** What is set of each thread, and of the rest, within bounds. */
type ThreadSetting = 'lead' | 'play' | 'lead error' | 'periodic error' | 'phase';
type PartSetting =
  | 'load on turned'
  | 'load on carried'
  | 'drag on turned'
  | 'drag on carried'
  | 'lock slip'
  | 'wind-up'
  | 'stick'
  | 'slip'
  | 'noise';

/** One thread as the simulator sees it. Play of each comes from axial-play. */
export interface SimulatedThread {
  readonly h: 1 | -1;
  readonly L: Millimetres;
  /** Axial play j, flank to flank. */
  readonly play: Millimetres;
  /** Relative lead error ε, positive where the lead is long; left out: 0. */
  readonly leadError?: Plain;
  /** Amplitude a of the periodic error, as measured on the motion, and its phase; left out: 0. */
  readonly periodic?: Millimetres;
  readonly phase?: Turns;
}

/** Axial forces on the two moving parts: loads positive towards the base, drags without sign. */
export interface PartForces {
  readonly turned: Newtons;
  readonly carried: Newtons;
}

export interface SimulatorSettings {
  readonly A: SimulatedThread;
  readonly C: SimulatedThread;
  /** Steady loads at the start; a move may change them. */
  readonly loads: PartForces;
  readonly drags: PartForces;
  /** Share f of the rotation that the carried part takes, 0 … 1; left out: 0. */
  readonly lockSlip?: Plain;
  /** Wind-up ψ of the lock to either side; left out: 0. */
  readonly windUp?: Radians;
  /** Lag at which the carried part breaks away, and lag left after its jump; left out: 0. */
  readonly stick?: Millimetres;
  readonly slip?: Millimetres;
  /** Standard deviation of the gauge's noise; left out: 0. */
  readonly noise?: Millimetres;
  readonly seed?: number;
}

/** One thing done: the turned part is turned, or the loads are changed (a part left out keeps its load). */
export type Move =
  | { readonly kind: 'turn'; readonly turns: Turns }
  | { readonly kind: 'load'; readonly turned?: Newtons; readonly carried?: Newtons };

/** +1 where the pressed flank touches, −1 where the pulled one, 0 between; a thread without play has its sign from the force across it. */
export type Flank = -1 | 0 | 1;

/** State at the start (place 0) and after each move; all columns are one longer than the list of moves. */
export interface Motion {
  readonly n: Float64Array;
  /** Heights of the turned and of the carried part from where a perfect, playless screw would start. */
  readonly turned: Float64Array;
  readonly carried: Float64Array;
  readonly reading: Float64Array;
  /** Values are those of `Flank`. */
  readonly flankA: Int8Array;
  readonly flankC: Int8Array;
}

/** A plot a thousand pixels wide shows a thousand of them; a million runs in a second and fills 34 MB. */
export const MOST_MOVES = 1e6;
/** Where an error is periodic a turn is taken in this many pieces: the path between them is off by under a·0.0003. */
const PIECES = 128;
/** Pieces in all, so that a million long moves can't hold the page for minutes. */
const MOST_PIECES = 1e7;
const TRACE_OF_DRAG = 1e-9;
/** A gap narrower than this, in mm, counts as a flank touched. */
const TOUCHING = 1e-9;
/** Share of a drive on which the parts' motion is tried: large enough not to drown in rounding, too small to matter. */
const TRIAL = 1e-6;
/** Flanks met in one straight drive; there are four, and each may be met again once another has been. */
const MOST_MEETINGS = 16;
const TWO_PI = 2 * Math.PI;

/** Runs the moves from n = 0 with every play halved, settled under the loads. */
export const simulate = (settings: SimulatorSettings, moves: readonly Move[]): Result<Motion> => {
  const refused = refusedSettings(settings) ?? refusedMoves(settings, moves);
  if (refused !== undefined) return refused;
  const { A, C, lockSlip: f = 0, stick = 0, slip = 0, noise = 0 } = settings;
  const random = randomState(settings.seed ?? 0);
  if (!random.ok) return random;

  const length = moves.length + 1;
  const n = new Float64Array(length);
  const turned = new Float64Array(length);
  const carried = new Float64Array(length);
  const reading = new Float64Array(length);
  const flankA = new Int8Array(length);
  const flankC = new Int8Array(length);
  if (noise > 0) fillNormal(random.value, reading);

  const rA = A.play / 2;
  const rC = C.play / 2;
  const turnedAt = driveOf(A, -A.h);
  const carriedAt = driveOf(C, C.h);
  const windMost = (settings.windUp ?? 0) / TWO_PI;
  const wavy = isWavy(settings);
  const parts: Placing = { turned: 0, carried: 0 };
  const trial: Placing = { turned: 0, carried: 0 };
  const forces: MutableForces = {
    loadTurned: settings.loads.turned,
    loadCarried: settings.loads.carried,
    dragTurned: settings.drags.turned,
    dragCarried: settings.drags.carried,
  };
  const flanks: FlankWindow = { lowA: -rA, highA: rA, lowC: -rC, highC: rC };
  let now = 0;
  let relative = 0;
  let wound = 0;
  let gA = 0;
  let gC = 0;
  // The carried part with its lag; z_c itself is parts.carried.
  let shown = 0;
  let zero = 0;

  const setFlanks = (atA: number, atC: number) => {
    flanks.lowA = atA - rA;
    flanks.highA = atA + rA;
    flanks.lowC = atC - rC;
    flanks.highC = atC + rC;
  };

  const place = (nextA: number, nextC: number) => {
    gA = nextA;
    gC = nextC;
    setFlanks(gA, gC);
    settleFlanks(parts, flanks, forces);
    shown = parts.carried - lagAfter(parts.carried - shown, stick, slip);
  };

  /**
   * Share of a straight drive (dA, dC) after which a flank that now stands off is met; 1 or more where none is. How the
   * parts move until then is found by trying a very small share of it.
   */
  const shareToMeeting = (dA: number, dC: number): number => {
    const gapHighA = gA + rA - parts.turned;
    const gapLowA = parts.turned - gA + rA;
    const gapLowC = parts.carried - parts.turned - gC + rC;
    const gapHighC = gC + rC - parts.carried + parts.turned;
    // No part moves further than both drives together, so a gap wider than this can't close.
    const reach = 2 * (Math.abs(dA) + Math.abs(dC));
    if (!(within(gapHighA, reach) || within(gapLowA, reach) || within(gapLowC, reach) || within(gapHighC, reach)))
      return 1;
    trial.turned = parts.turned;
    trial.carried = parts.carried;
    setFlanks(gA + TRIAL * dA, gC + TRIAL * dC);
    settleFlanks(trial, flanks, forces);
    const vT = (trial.turned - parts.turned) / TRIAL;
    const vC = (trial.carried - parts.carried) / TRIAL;
    return Math.min(
      shareToClose(gapHighA, dA - vT),
      shareToClose(gapLowA, vT - dA),
      shareToClose(gapLowC, vC - vT - dC),
      shareToClose(gapHighC, dC - vC + vT),
    );
  };

  /** Moves both drives straight to their new values, stopping wherever a flank is met: there a part may turn back. */
  const drive = (nextA: number, nextC: number) => {
    for (let met = 0; met < MOST_MEETINGS; met++) {
      const share = shareToMeeting(nextA - gA, nextC - gC);
      if (!(share < 1)) break;
      place(gA + share * (nextA - gA), gC + share * (nextC - gC));
    }
    place(nextA, nextC);
  };

  const turn = (dn: number, winding: boolean) => {
    if (dn === 0) return;
    const pieces = wavy ? Math.ceil(Math.abs(dn) * PIECES) : 1;
    const n0 = now;
    const r0 = relative;
    const dr = winding ? 0 : (1 - f) * dn;
    for (let i = 1; i <= pieces; i++) {
      now = n0 + (dn * i) / pieces;
      relative = r0 + (dr * i) / pieces;
      drive(turnedAt(now), carriedAt(relative));
    }
  };

  const record = (i: number) => {
    n[i] = now;
    turned[i] = parts.turned;
    carried[i] = shown;
    reading[i] = shown - zero + noise * at(reading, i);
    flankA[i] = flankOf(parts.turned - gA, rA, forces.loadTurned + forces.loadCarried);
    flankC[i] = flankOf(parts.carried - parts.turned - gC, rC, forces.loadCarried);
  };

  place(0, 0);
  shown = parts.carried;
  zero = shown;
  record(0);
  for (const [i, move] of moves.entries()) {
    if (move.kind === 'load') {
      forces.loadTurned = move.turned ?? forces.loadTurned;
      forces.loadCarried = move.carried ?? forces.loadCarried;
      place(gA, gC);
    } else {
      const target = now + move.turns;
      const wanted = (1 - f) * move.turns;
      const winds = Math.max(-windMost - wound, Math.min(windMost - wound, wanted));
      wound += winds;
      const windTurns = wanted === 0 ? 0 : move.turns * (winds / wanted);
      turn(windTurns, true);
      turn(target - now, false);
    }
    record(i + 1);
  }
  return good({ n, turned, carried, reading, flankA, flankC });
};

/** `count` equal moves that make up `turns`. */
export const equalTurns = (turns: Turns, count: number): Move[] =>
  Array.from({ length: count }, () => ({ kind: 'turn', turns: (turns / count) as Turns }));

/** Heights of the parts; the simulator moves them in place. */
export interface Placing {
  turned: number;
  carried: number;
}

/** Where thread A lets the turned part be, and thread C the carried part above the turned part. */
interface FlankWindow {
  lowA: number;
  highA: number;
  lowC: number;
  highC: number;
}

interface MutableForces {
  loadTurned: number;
  loadCarried: number;
  dragTurned: number;
  dragCarried: number;
}

/**
 * Moves the parts within the flanks to where loads and drags leave them: the least of
 * F_t z_t + F_c z_c + D_t |z_t − before| + D_c |z_c − before|. For each z_t the best z_c is known, and what
 * is left is convex in z_t with straight pieces, so it is walked downhill from kink to kink. The choice is made on
 * slopes, which are plain sums of the forces, and on which side of a kink z_t lies; rounding decides nothing.
 */
export const settleFlanks = (parts: Placing, flanks: FlankWindow, forces: MutableForces): void => {
  const { lowA, highA, lowC, highC } = flanks;
  const { loadTurned, loadCarried, dragTurned } = forces;
  const dragCarried = forces.dragCarried + TRACE_OF_DRAG;
  const before = parts.turned;
  const rest = parts.carried;
  const up = loadCarried < -dragCarried;
  const down = loadCarried > dragCarried;
  // Above `lifts` thread C lifts the carried part off its place, below `lowers` it draws it down.
  const lifts = rest - lowC;
  const lowers = rest - highC;
  const pastRest = up ? lowers : lifts;
  let z = Math.max(lowA, Math.min(highA, before));

  for (let kinks = 0; kinks < 4; kinks++) {
    let slopeUp = (z >= before ? dragTurned : -dragTurned) + loadTurned;
    if (up || down || z >= lifts) slopeUp += (z >= pastRest ? dragCarried : -dragCarried) + loadCarried;
    else if (z < lowers) slopeUp += -dragCarried + loadCarried;
    if (slopeUp < 0 && z < highA) {
      z = nextKink(z, highA, lifts, lowers, 1);
      continue;
    }
    let slopeDown = (z > before ? dragTurned : -dragTurned) + loadTurned;
    if (up || down || z > lifts) slopeDown += (z > pastRest ? dragCarried : -dragCarried) + loadCarried;
    else if (z <= lowers) slopeDown += -dragCarried + loadCarried;
    if (!(slopeDown > 0 && z > lowA)) break;
    z = nextKink(z, lowA, lifts, lowers, -1);
  }
  parts.turned = z;
  parts.carried = up ? z + highC : down ? z + lowC : Math.max(z + lowC, Math.min(z + highC, rest));
};

/** The nearest of the kinks of thread C beyond z in this sense, or the end. That where thread A rested is behind from the start. */
const nextKink = (z: number, end: number, k1: number, k2: number, sense: 1 | -1): number => {
  let next = end;
  if ((k1 - z) * sense > 0 && (next - k1) * sense > 0) next = k1;
  if ((k2 - z) * sense > 0 && (next - k2) * sense > 0) next = k2;
  return next;
};

/** Whether an open gap is narrow enough to be closed by this much motion. */
const within = (gap: number, reach: number): boolean => gap > TOUCHING && gap < reach;

const shareToClose = (gap: number, rate: number): number =>
  gap > TOUCHING && rate < 0 ? gap / -rate : Number.POSITIVE_INFINITY;

/** Lag left when the part has crept to `lag` from within ±stick: whole jumps of stick − slip are taken off. */
const lagAfter = (lag: number, stick: number, slip: number): number => {
  const over = Math.abs(lag) - stick;
  if (!(over > 0)) return lag;
  const left = stick > slip ? stick + over - Math.ceil(over / (stick - slip)) * (stick - slip) : stick;
  return Math.sign(lag) * left;
};

const flankOf = (q: number, r: number, force: number): number => {
  if (r <= TOUCHING) return Math.sign(force);
  if (q <= TOUCHING - r) return 1;
  return q >= r - TOUCHING ? -1 : 0;
};

/** Height against turns of one thread with its errors, nought at nought. */
const driveOf = (
  { L, leadError = 0 as Plain, periodic = 0 as Millimetres, phase = 0 as Turns }: SimulatedThread,
  sense: number,
) => {
  const slope = sense * L * (1 + leadError);
  const start = Math.sin(TWO_PI * phase);
  return periodic > 0
    ? (n: number) => slope * n + periodic * (Math.sin(TWO_PI * (n + phase)) - start)
    : (n: number) => slope * n;
};

const isWavy = ({ A, C }: SimulatorSettings): boolean => (A.periodic ?? 0) > 0 || (C.periodic ?? 0) > 0;

const refusedSettings = (s: SimulatorSettings): Bad | undefined => {
  const threads = [
    ['A', s.A],
    ['C', s.C],
  ] as const;
  for (const [thread, t] of threads) {
    if (!(t.h === 1 || t.h === -1)) return bad('simulated-hand', { thread, h: t.h });
    if (t.play < 0) return bad('simulated-negative-play', { thread, play: t.play });
  }
  for (const [thread, t] of threads)
    for (const [what, value, min, max] of [
      ['lead', t.L, 0.05, 60],
      ['play', t.play, 0, 3],
      ['lead error', t.leadError ?? 0, -0.05, 0.05],
      ['periodic error', t.periodic ?? 0, 0, 0.5],
      ['phase', t.phase ?? 0, -600, 600],
    ] as const)
      if (!(value >= min && value <= max)) return bad('simulated-thread-range', { thread, what, value, min, max });
  for (const [what, value, min, max] of [
    ['load on turned', s.loads.turned, -MOST_LOAD, MOST_LOAD],
    ['load on carried', s.loads.carried, -MOST_LOAD, MOST_LOAD],
    ['drag on turned', s.drags.turned, 0, MOST_LOAD],
    ['drag on carried', s.drags.carried, 0, MOST_LOAD],
    ['lock slip', s.lockSlip ?? 0, 0, 1],
    ['wind-up', s.windUp ?? 0, 0, Math.PI],
    ['stick', s.stick ?? 0, 0, 1],
    ['slip', s.slip ?? 0, 0, s.stick ?? 0],
    ['noise', s.noise ?? 0, 0, 1],
  ] as const)
    if (!(value >= min && value <= max)) return bad('simulated-range', { what, value, min, max });
  return undefined;
};

const MOST_LOAD = 1e5;
const MOST_TURNS = 600;

const refusedMoves = (settings: SimulatorSettings, moves: readonly Move[]): Bad | undefined => {
  if (!(moves.length <= MOST_MOVES)) return bad('too-many-moves', { count: moves.length, most: MOST_MOVES });
  let travelled = 0;
  for (const [i, move] of moves.entries()) {
    if (move.kind === 'turn') {
      if (!(Math.abs(move.turns) <= MOST_TURNS))
        return bad('move-turns', { move: i + 1, turns: move.turns, most: MOST_TURNS });
      travelled += Math.abs(move.turns);
    } else
      for (const load of [move.turned, move.carried])
        if (!(load === undefined || Math.abs(load) <= MOST_LOAD))
          return bad('move-load', { move: i + 1, load, most: MOST_LOAD });
  }
  if (isWavy(settings) && !(travelled * PIECES + moves.length <= MOST_PIECES))
    return bad('moves-too-long', {
      turns: travelled,
      most: Math.floor((MOST_PIECES - moves.length) / PIECES),
      pieces: PIECES,
    });
  return undefined;
};
