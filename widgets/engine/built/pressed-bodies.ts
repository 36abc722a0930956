/**
 * Rigid bodies at rest that touch at places which can only push, and rub.
 *
 * Unknown: small motions q of the bodies from their nominal places, lengths in mm, rotations times the length ARM so that all are mm
 * and all forces are N. A place i of contact is closed by p_i = g_i + J_i·q and pushes with N_i = k_i max(0, p_i). It rubs along one line, the
 * row s_i, with T_i. Its force on the bodies is −(N_i J_i + T_i s_i). At rest
 *   f − K q − Σ (N_i J_i + T_i s_i) = 0
 * K holds the springs, and beside them HOLD on every freedom, so weak that nothing notices, which keeps a body that touches nothing in its place.
 * Friction by Coulomb's law, in one of two ways:
 *   slides   T_i = ±µ_i N_i, the sense known beforehand
 *   held     T_i = T_0 + k_t (s_i·(q − q_0) + what the hand makes it slide), no further from nought than µ_i N_i: it sticks, then slides,
 *            from where it was before. k_t = 0.8 k_i, as of a pressed place pushed across it: 2 (1 − ν)/(2 − ν) at ν 0.3 (Mindlin 1949, from memory)
 * Method: Newton's on the piecewise linear forces. Without friction, and with friction whose limits are fixed, the forces come from an
 * energy that is convex in q, so the places that touch are the only ones there can be, and a step that lowers the energy always
 * leads there. Limits that follow the pushes have no such energy: they are tried at once, and else found in rounds of fixed ones. A rest that is not
 * found is said so; none is made up.
 * Source: contact by a stiff one-sided spring (penalty), semi-smooth Newton, friction by return to its limit: any text on computational contact
 * mechanics; the tests hold it to statics worked by hand. Valid for small rotations (LARGEST), forces within 1e9 N/mm.
 */

/** Length by which a rotation is multiplied, mm. */
export const ARM = 10;
/** Stiffness that holds what nothing else holds, N/mm. */
const HOLD = 1e-4;
const MOST_STEPS = 60;
/** Shortest share of a step that is tried with friction, and how often none may help. */
const SHORTEST = 1e-3;
const MOST_LEAPS = 12;
/** How far the balance of forces may be off, as a share of the largest load. */
const BALANCED = 1e-9;
/** Where no step betters it any more, this is near enough. */
const NEAR = 1e-6;

/** A spring with a row of columns: its stretch is the row times q; N/mm. */
export interface Tie {
  readonly row: Float64Array;
  readonly stiffness: number;
}

export interface Bodies {
  /** Freedoms that are sought; rows may have further columns, whose forces are read off. */
  readonly free: number;
  readonly columns: number;
  readonly places: number;
  /** places × columns. */
  readonly closing: Float64Array;
  /** places × columns: the line along which a place slides. */
  readonly line: Float64Array;
  /** Most friction per push, and the sense in which the place slides along its line where it slides, +1 or −1. */
  readonly rough: Float64Array;
  readonly sense: Float64Array;
  /** The first column of each place that holds anything, and the one after the last; columns that are not sought are left out. */
  readonly from: Uint8Array;
  readonly to: Uint8Array;
  readonly stiffness: Float64Array;
  /** Springs on the freedoms, columns × columns or diagonal: here diagonal, N/mm. */
  readonly springs: Float64Array;
  /** Springs that pull as well as they push, between two bodies. */
  readonly ties: readonly Tie[];
  readonly load: Float64Array;
}

/** Where each row holds anything: a place joins two bodies at most. */
export const spansOf = (
  rows: readonly Float64Array[],
  places: number,
  columns: number,
  free: number,
): Pick<Bodies, 'from' | 'to'> => {
  const from = new Uint8Array(places);
  const to = new Uint8Array(places);
  for (let i = 0; i < places; i++) {
    const held = (j: number) => rows.some((row) => row[i * columns + j] !== 0);
    let [low, high] = [0, free];
    while (low < free && !held(low)) low++;
    while (high > low && !held(high - 1)) high--;
    from[i] = low;
    to[i] = high;
  }
  return { from, to };
};

export interface Rest {
  readonly how: 'at rest' | 'locked' | 'none';
  readonly q: Float64Array;
  /** Push at every place, and friction along its line, N. */
  readonly push: Float64Array;
  readonly friction: Float64Array;
  /** Steps that it took. */
  readonly steps: number;
}

/** Solves A x = b in place, A dense and row by row; false where it can’t be. */
export const solveDense = (A: Float64Array, b: Float64Array, size: number): boolean => {
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column + 1; row < size; row++)
      if (Math.abs(A[row * size + column] as number) > Math.abs(A[pivot * size + column] as number)) pivot = row;
    const top = A[pivot * size + column] as number;
    if (!(Math.abs(top) > 1e-14)) return false;
    if (pivot !== column) {
      for (let k = column; k < size; k++) {
        const kept = A[column * size + k] as number;
        A[column * size + k] = A[pivot * size + k] as number;
        A[pivot * size + k] = kept;
      }
      const kept = b[column] as number;
      b[column] = b[pivot] as number;
      b[pivot] = kept;
    }
    for (let row = column + 1; row < size; row++) {
      const factor = (A[row * size + column] as number) / top;
      if (factor === 0) continue;
      for (let k = column + 1; k < size; k++)
        A[row * size + k] = (A[row * size + k] as number) - factor * (A[column * size + k] as number);
      b[row] = (b[row] as number) - factor * (b[column] as number);
    }
  }
  for (let row = size - 1; row >= 0; row--) {
    let sum = b[row] as number;
    for (let k = row + 1; k < size; k++) sum -= (A[row * size + k] as number) * (b[k] as number);
    b[row] = sum / (A[row * size + row] as number);
  }
  return true;
};

/** What a run remembers of the rest before: where the bodies were, the friction at each place, and how far the hand has slid each since, mm. */
export interface Held {
  readonly q: Float64Array;
  readonly friction: Float64Array;
  readonly glide: Float64Array;
}

/** A place pushed across itself gives so much less than one pressed. */
const ACROSS = 0.8;

/** Friction that slides, that is fixed, or that is held from before, its limits by the pushes or fixed. */
type Law =
  | { readonly by: 'none' | 'slides' }
  | { readonly by: 'fixed'; readonly friction: Float64Array }
  | { readonly by: 'held'; readonly held: Held; readonly limits: Float64Array | undefined };

interface Work {
  readonly bodies: Bodies;
  readonly gap: Float64Array;
  readonly law: Law;
}

/** Where a trial of the solver stands: pushes, friction, which places slide (0 where they stick), what is out of balance. */
interface Trial {
  readonly push: Float64Array;
  readonly friction: Float64Array;
  readonly slips: Float64Array;
  readonly off: Float64Array;
}

const trialOf = ({ places, free }: Bodies): Trial => ({
  push: new Float64Array(places),
  friction: new Float64Array(places),
  slips: new Float64Array(places),
  off: new Float64Array(free),
});

/** Friction that a place would have if it only stuck. */
const stuck = ({ columns, line, from, to, stiffness }: Bodies, held: Held, q: Float64Array, i: number): number => {
  const at = i * columns;
  let slid = held.glide[i] as number;
  for (let j = from[i] as number; j < (to[i] as number); j++)
    slid += (line[at + j] as number) * ((q[j] as number) - (held.q[j] as number));
  return (held.friction[i] as number) + ACROSS * (stiffness[i] as number) * slid;
};

/** A row times the freedoms that are sought. */
const along = (row: Float64Array, q: Float64Array, free: number): number => {
  let sum = 0;
  for (let j = 0; j < free; j++) sum += (row[j] as number) * (q[j] as number);
  return sum;
};

/** Pushes and friction at q and what is out of balance there; its size. */
const balance = ({ bodies, gap, law }: Work, q: Float64Array, { push, friction, slips, off }: Trial): number => {
  const { free, columns, places, closing, line, rough, sense, from, to, stiffness, springs, ties, load } = bodies;
  for (let j = 0; j < free; j++) off[j] = (load[j] as number) - ((springs[j] as number) + HOLD) * (q[j] as number);
  for (const { row, stiffness: k } of ties) {
    const T = k * along(row, q, free);
    for (let j = 0; j < free; j++) off[j] = (off[j] as number) - T * (row[j] as number);
  }
  for (let i = 0; i < places; i++) {
    const at = i * columns;
    const [low, high] = [from[i] as number, to[i] as number];
    let p = gap[i] as number;
    for (let j = low; j < high; j++) p += (closing[at + j] as number) * (q[j] as number);
    const N = p > 0 ? (stiffness[i] as number) * p : 0;
    push[i] = N;
    let T = 0;
    let slip = 0;
    if (law.by === 'slides') {
      slip = sense[i] as number;
      T = (rough[i] as number) * slip * N;
    } else if (law.by === 'fixed') T = law.friction[i] as number;
    else if (law.by === 'held') {
      const limit = law.limits ? (law.limits[i] as number) : (rough[i] as number) * N;
      if (limit > 0) {
        const trial = stuck(bodies, law.held, q, i);
        slip = trial >= limit ? 1 : trial <= -limit ? -1 : 0;
        T = slip === 0 ? trial : slip * limit;
      } else slip = 1;
    }
    friction[i] = T;
    slips[i] = slip;
    if (N > 0) for (let j = low; j < high; j++) off[j] = (off[j] as number) - N * (closing[at + j] as number);
    if (T !== 0) for (let j = low; j < high; j++) off[j] = (off[j] as number) - T * (line[at + j] as number);
  }
  let sum = 0;
  for (let j = 0; j < free; j++) sum += (off[j] as number) ** 2;
  return Math.sqrt(sum);
};

/** How far along a step the energy is least, from none of it to all: its slope there is piecewise linear and only rises. */
const leastAlong = ({ bodies, gap, law }: Work, q: Float64Array, dq: Float64Array): number => {
  const { free, columns, places, closing, line, from, to, stiffness, springs, ties, load } = bodies;
  const limits = law.by === 'held' ? law.limits : undefined;
  let still = 0;
  let grows = 0;
  for (let j = 0; j < free; j++) {
    const k = (springs[j] as number) + HOLD;
    const d = dq[j] as number;
    still += (k * (q[j] as number) - (load[j] as number)) * d;
    grows += k * d * d;
  }
  for (const { row, stiffness: k } of ties) {
    const d = along(row, dq, free);
    still += k * along(row, q, free) * d;
    grows += k * d * d;
  }
  const p = new Float64Array(places);
  const dp = new Float64Array(places);
  const T = new Float64Array(limits ? places : 0);
  const slid = new Float64Array(places);
  for (let i = 0; i < places; i++) {
    let [at, closes, slides] = [gap[i] as number, 0, 0];
    for (let j = from[i] as number; j < (to[i] as number); j++) {
      const row = closing[i * columns + j] as number;
      at += row * (q[j] as number);
      closes += row * (dq[j] as number);
      slides += (line[i * columns + j] as number) * (dq[j] as number);
    }
    p[i] = at;
    dp[i] = closes;
    slid[i] = slides;
    if (law.by === 'fixed') still += (law.friction[i] as number) * slides;
    if (law.by === 'held' && limits && (limits[i] as number) > 0) T[i] = stuck(bodies, law.held, q, i);
  }
  let rises = 0;
  const slope = (share: number): number => {
    let sum = still + share * grows;
    rises = grows;
    for (let i = 0; i < places; i++) {
      const k = stiffness[i] as number;
      const along = dp[i] as number;
      const closed = (p[i] as number) + share * along;
      if (closed > 0) {
        sum += k * closed * along;
        rises += k * along * along;
      }
      const limit = limits ? (limits[i] as number) : 0;
      if (limit > 0) {
        const slides = slid[i] as number;
        const trial = (T[i] as number) + share * ACROSS * k * slides;
        sum += Math.max(-limit, Math.min(limit, trial)) * slides;
        if (Math.abs(trial) < limit) rises += ACROSS * k * slides * slides;
      }
    }
    return sum;
  };
  if (slope(1) <= 0) return 1;
  // Straight lines joined: Newton's step ends on the root of its own piece, and a halving takes its place where it would leave the bracket.
  let [low, high, share] = [0, 1, 1];
  for (let step = 0; step < 60 && high - low > 1e-15; step++) {
    const sum = slope(share);
    if (sum <= 0) low = share;
    else high = share;
    const next = share - sum / rises;
    if (Math.abs(next - share) <= 1e-15) break;
    share = next > low && next < high ? next : (low + high) / 2;
  }
  return share;
};

/** How the forces change with q, row by row. */
const stiffnessAt = ({ bodies, law }: Work, { push, slips }: Trial, A: Float64Array): void => {
  const { free, columns, places, closing, line, rough, from, to, stiffness, springs, ties } = bodies;
  const follows = law.by === 'slides' || (law.by === 'held' && !law.limits);
  A.fill(0);
  for (let j = 0; j < free; j++) A[j * free + j] = (springs[j] as number) + HOLD;
  for (const { row, stiffness: k } of ties)
    for (let i = 0; i < free; i++) {
      const x = k * (row[i] as number);
      if (x !== 0)
        for (let j = 0; j < free; j++) A[i * free + j] = (A[i * free + j] as number) + x * (row[j] as number);
    }
  for (let i = 0; i < places; i++) {
    const touches = (push[i] as number) > 0;
    const sticks = law.by === 'held' && slips[i] === 0;
    if (!touches && !sticks) continue;
    const at = i * columns;
    const k = stiffness[i] as number;
    const rub = follows && touches ? (rough[i] as number) * (slips[i] as number) : 0;
    const [low, high] = [from[i] as number, to[i] as number];
    for (let row = low; row < high; row++) {
      const normal = touches ? k * ((closing[at + row] as number) + rub * (line[at + row] as number)) : 0;
      const across = sticks ? ACROSS * k * (line[at + row] as number) : 0;
      if (normal === 0 && across === 0) continue;
      for (let column = low; column < high; column++)
        A[row * free + column] =
          (A[row * free + column] as number) +
          normal * (closing[at + column] as number) +
          across * (line[at + column] as number);
    }
  }
};

const newton = (work: Work, start: Float64Array): Rest => {
  const { bodies, law } = work;
  const { free, load } = bodies;
  const convex = law.by === 'none' || law.by === 'fixed' || (law.by === 'held' && law.limits !== undefined);
  let q = Float64Array.from(start);
  const trial = trialOf(bodies);
  const { push, friction, off } = trial;
  const A = new Float64Array(free * free);
  let leaps = 0;
  let largest = 1e-3;
  for (let j = 0; j < free; j++) largest = Math.max(largest, Math.abs(load[j] as number));
  for (let step = 0; step < MOST_STEPS; step++) {
    const size = balance(work, q, trial);
    if (size <= BALANCED * largest) return { how: 'at rest', q, push, friction, steps: step };
    stiffnessAt(work, trial, A);
    const dq = Float64Array.from(off);
    if (!solveDense(A, dq, free)) return { how: 'none', q, push, friction, steps: step };
    if (convex) {
      const share = leastAlong(work, q, dq);
      q = q.map((x, j) => x + share * (dq[j] as number));
      continue;
    }
    // No energy with friction: a whole step where it betters the balance, else a shorter one. Where none does, the places that touch must
    // change first: a whole step all the same, a few times.
    let share = 1;
    let next = q;
    for (; share > SHORTEST; share /= 2) {
      next = q.map((x, j) => x + share * (dq[j] as number));
      if (balance(work, next, trial) < size) break;
    }
    if (share <= SHORTEST) {
      leaps++;
      if (size <= NEAR * largest || leaps > MOST_LEAPS) {
        balance(work, q, trial);
        return { how: size <= NEAR * largest ? 'at rest' : 'none', q, push, friction, steps: step };
      }
      next = q.map((x, j) => x + (dq[j] as number));
    }
    q = next;
  }
  const how = balance(work, q, trial) <= NEAR * largest ? 'at rest' : 'none';
  return { how, q, push, friction, steps: MOST_STEPS };
};

/** Rounds in which friction is worked from the pushes of the round before, where Newton's step does not find them together. */
const MOST_ROUNDS = 60;

/** In rounds, each with the friction, or its limits, of the pushes of the round before. */
const inRounds = (bodies: Bodies, gap: Float64Array, start: Float64Array, lawOf: (push: Float64Array) => Law): Rest => {
  let rest = newton({ bodies, gap, law: { by: 'none' } }, start);
  for (let round = 0; round < MOST_ROUNDS && rest.how !== 'none'; round++) {
    const before = rest.push;
    rest = newton({ bodies, gap, law: lawOf(before) }, rest.q);
    let [change, largest] = [0, 0];
    for (const [i, N] of rest.push.entries()) {
      change = Math.max(change, Math.abs(N - (before[i] as number)));
      largest = Math.max(largest, N);
    }
    if (rest.how !== 'none' && change <= 1e-7 * largest) return rest;
  }
  return rest.how === 'none' ? rest : { ...rest, how: 'locked' };
};

/**
 * The rest of the bodies at these gaps (plus where they are pressed together), sought from a start near it, every place sliding in its
 * sense: `none` without friction either, `locked` where only friction keeps it from being found. What was reached last is given all the
 * same: it tells what ran away.
 */
export const restOf = (bodies: Bodies, gap: Float64Array, start: Float64Array, rubs: boolean): Rest => {
  if (!rubs) return newton({ bodies, gap, law: { by: 'none' } }, start);
  const atOnce = newton({ bodies, gap, law: { by: 'slides' } }, start);
  if (atOnce.how === 'at rest') return atOnce;
  return inRounds(bodies, gap, start, (push) => ({
    by: 'fixed',
    friction: push.map((N, i) => N * (bodies.rough[i] as number) * (bodies.sense[i] as number)),
  }));
};

/** Whether every place that touches has slid so far, since what is held, that it slides as this rest takes it to. */
export const slidesThroughout = (bodies: Bodies, held: Held, { q, push }: Rest): boolean =>
  push.every((N, i) => {
    const limit = (bodies.rough[i] as number) * N;
    return limit === 0 || stuck(bodies, held, q, i) * (bodies.sense[i] as number) >= limit * (1 - 1e-9);
  });

/** The rest with friction that sticks until it slides, from what is held. */
export const restHeld = (bodies: Bodies, gap: Float64Array, start: Float64Array, held: Held): Rest => {
  for (const from of [start, held.q]) {
    const atOnce = newton({ bodies, gap, law: { by: 'held', held, limits: undefined } }, from);
    if (atOnce.how === 'at rest') return atOnce;
  }
  return inRounds(bodies, gap, held.q, (push) => ({
    by: 'held',
    held,
    limits: push.map((N, i) => N * (bodies.rough[i] as number)),
  }));
};
