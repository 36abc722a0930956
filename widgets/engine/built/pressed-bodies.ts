/**
 * Rigid bodies at rest that touch at places which can only push.
 *
 * Unknown: small motions q of the bodies from their nominal places, lengths in mm, rotations times the length ARM so that all are mm
 * and all forces are N. A place i of contact is closed by p_i = g_i + J_i·q and pushes with N_i = k_i max(0, p_i). Its force on the
 * bodies is −N_i F_i: F_i = J_i without friction, and J_i + µ s_i where the sense in which it slides, the row s_i, is known. At rest
 *   f − K q − Σ N_i F_i = 0
 * K holds the springs, and beside them HOLD on every freedom, so weak that nothing notices, which keeps a body that touches nothing in its place.
 * Method: Newton's on the piecewise linear forces. Without friction the forces come from an energy that is convex in q, so the places
 * that touch are the only ones there can be, and a step that lowers the energy always leads there. With friction they need not be, so
 * friction is brought in by degrees from that rest. A rest that is not found is said so; none is made up.
 * Source: contact by a stiff one-sided spring (penalty), semi-smooth Newton: any text on computational contact mechanics; the tests hold it to statics
 * worked by hand. Valid for small rotations (LARGEST), forces within 1e9 N/mm.
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

export interface Bodies {
  /** Freedoms that are sought; rows may have further columns, whose forces are read off. */
  readonly free: number;
  readonly columns: number;
  readonly places: number;
  /** places × columns. */
  readonly closing: Float64Array;
  /** places × columns: what sliding friction adds to the direction of the force. */
  readonly rubbing: Float64Array;
  /** The first column of each place that holds anything, and the one after the last; columns that are not sought are left out. */
  readonly from: Uint8Array;
  readonly to: Uint8Array;
  readonly stiffness: Float64Array;
  /** Springs on the freedoms, columns × columns or diagonal: here diagonal, N/mm. */
  readonly springs: Float64Array;
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
  /** Push at every place, N. */
  readonly push: Float64Array;
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

interface Work {
  readonly bodies: Bodies;
  readonly gap: Float64Array;
  /** Share of the friction that counts. */
  readonly rub: number;
}

/** Pushes at q, what is out of balance there, and its size. */
const balance = ({ bodies, gap, rub }: Work, q: Float64Array, push: Float64Array, off: Float64Array): number => {
  const { free, columns, places, closing, rubbing, from, to, stiffness, springs, load } = bodies;
  for (let j = 0; j < free; j++) off[j] = (load[j] as number) - ((springs[j] as number) + HOLD) * (q[j] as number);
  for (let i = 0; i < places; i++) {
    const at = i * columns;
    const [low, high] = [from[i] as number, to[i] as number];
    let p = gap[i] as number;
    for (let j = low; j < high; j++) p += (closing[at + j] as number) * (q[j] as number);
    const N = p > 0 ? (stiffness[i] as number) * p : 0;
    push[i] = N;
    if (N > 0)
      for (let j = low; j < high; j++)
        off[j] = (off[j] as number) - N * ((closing[at + j] as number) + rub * (rubbing[at + j] as number));
  }
  let sum = 0;
  for (let j = 0; j < free; j++) sum += (off[j] as number) ** 2;
  return Math.sqrt(sum);
};

/** How far along a step the energy is least, from none of it to all: its slope there is piecewise linear and only rises. */
const leastAlong = ({ bodies, gap }: Work, q: Float64Array, dq: Float64Array): number => {
  const { free, columns, places, closing, from, to, stiffness, springs, load } = bodies;
  let still = 0;
  let grows = 0;
  for (let j = 0; j < free; j++) {
    const k = (springs[j] as number) + HOLD;
    const d = dq[j] as number;
    still += (k * (q[j] as number) - (load[j] as number)) * d;
    grows += k * d * d;
  }
  const p = new Float64Array(places);
  const dp = new Float64Array(places);
  for (let i = 0; i < places; i++) {
    let [at, along] = [gap[i] as number, 0];
    for (let j = from[i] as number; j < (to[i] as number); j++) {
      const row = closing[i * columns + j] as number;
      at += row * (q[j] as number);
      along += row * (dq[j] as number);
    }
    p[i] = at;
    dp[i] = along;
  }
  const slope = (share: number): number => {
    let sum = still + share * grows;
    for (let i = 0; i < places; i++) {
      const closed = (p[i] as number) + share * (dp[i] as number);
      if (closed > 0) sum += (stiffness[i] as number) * closed * (dp[i] as number);
    }
    return sum;
  };
  if (slope(1) <= 0) return 1;
  let [low, high] = [0, 1];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (slope(middle) <= 0) low = middle;
    else high = middle;
  }
  return high;
};

const newton = (work: Work, start: Float64Array): Rest => {
  const { bodies, rub } = work;
  const { free, columns, places, closing, rubbing, from, to, stiffness, springs, load } = bodies;
  let q = Float64Array.from(start);
  const push = new Float64Array(places);
  const off = new Float64Array(free);
  const A = new Float64Array(free * free);
  let leaps = 0;
  let largest = 1e-3;
  for (let j = 0; j < free; j++) largest = Math.max(largest, Math.abs(load[j] as number));
  for (let step = 0; step < MOST_STEPS; step++) {
    const size = balance(work, q, push, off);
    if (size <= BALANCED * largest) return { how: 'at rest', q, push, steps: step };
    A.fill(0);
    for (let j = 0; j < free; j++) A[j * free + j] = (springs[j] as number) + HOLD;
    for (let i = 0; i < places; i++) {
      if (!((push[i] as number) > 0)) continue;
      const at = i * columns;
      const k = stiffness[i] as number;
      const [low, high] = [from[i] as number, to[i] as number];
      for (let row = low; row < high; row++) {
        const force = k * ((closing[at + row] as number) + rub * (rubbing[at + row] as number));
        if (force === 0) continue;
        for (let column = low; column < high; column++) {
          const closed = closing[at + column] as number;
          if (closed !== 0) A[row * free + column] = (A[row * free + column] as number) + force * closed;
        }
      }
    }
    const dq = Float64Array.from(off);
    if (!solveDense(A, dq, free)) return { how: 'none', q, push, steps: step };
    if (rub === 0) {
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
      if (balance(work, next, push, off) < size) break;
    }
    if (share <= SHORTEST) {
      leaps++;
      if (size <= 1e-6 * largest || leaps > MOST_LEAPS) {
        balance(work, q, push, off);
        return { how: size <= 1e-6 * largest ? 'at rest' : 'none', q, push, steps: step };
      }
      next = q.map((x, j) => x + (dq[j] as number));
    }
    q = next;
  }
  const how = balance(work, q, push, off) <= 1e-6 * largest ? 'at rest' : 'none';
  return { how, q, push, steps: MOST_STEPS };
};

/** Rounds in which friction is worked from the pushes of the round before, where Newton's step does not find them together. */
const MOST_ROUNDS = 60;

/** What friction of these pushes does, as a load. */
const rubbed = (bodies: Bodies, push: Float64Array): Bodies => {
  const { columns, places, rubbing } = bodies;
  const load = Float64Array.from(bodies.load);
  for (let i = 0; i < places; i++) {
    const N = push[i] as number;
    if (N > 0)
      for (let j = 0; j < columns; j++) load[j] = (load[j] as number) - N * (rubbing[i * columns + j] as number);
  }
  return { ...bodies, load };
};

/**
 * The rest of the bodies at these gaps (plus where they are pressed together), sought from a start near it: `none` without friction
 * either, `locked` where only friction keeps it from being found. What was reached last is given all the same: it tells what ran away.
 */
export const restOf = (bodies: Bodies, gap: Float64Array, start: Float64Array, rubs: boolean): Rest => {
  if (rubs) {
    const atOnce = newton({ bodies, gap, rub: 1 }, start);
    if (atOnce.how === 'at rest') return atOnce;
  }
  let rest = newton({ bodies, gap, rub: 0 }, start);
  if (!rubs || rest.how === 'none') return rest;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = rest.push;
    rest = newton({ bodies: rubbed(bodies, before), gap, rub: 0 }, rest.q);
    if (rest.how === 'none') break;
    let [change, largest] = [0, 0];
    for (const [i, N] of rest.push.entries()) {
      change = Math.max(change, Math.abs(N - (before[i] as number)));
      largest = Math.max(largest, N);
    }
    if (change <= 1e-7 * largest) return rest;
  }
  return { ...rest, how: 'locked' };
};
