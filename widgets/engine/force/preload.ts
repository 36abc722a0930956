/**
 * Preload: what keeps each thread on one flank, over the whole stroke and under every load.
 *
 * Model: three parts on one axis, base, turned and carried. Thread A carries the force N_A between base and
 * turned part, thread C the force N_C between turned and carried part. With f the force of the springs on a
 * part, w its weight along the axis and W the outside load:
 *   N_C = W + w_C + f_C        N_A = N_C + w_T + f_T
 * Source: free bodies of the two moving parts; derived here. A spring's force follows the motion of its own two
 * ends: the base stands still, the turned part moves −h_A L_A n, the carried part Δ n.
 * Sign: every force, N, f, w and W, is positive towards the base; motions are positive away from it. N > 0 presses the upper
 * part of the thread on its pressed flank, N < 0 on its pulled one (flanks.ts). N = 0 counts as let go.
 * Units: N, mm, turns, N/mm, hours. Friction in the guide is not in the model: add it to the range of the load.
 *
 * Relaxation: at constant stretch F(t) = F0 (1 − q log10(1 + t/t0)), the usual log law of a material that
 * relaxes; the share q lost per tenfold time is stated by the reader or fitted from two readings. No
 * published share for printed springs was found that may be printed here.
 */

import { at } from '../kernel/at.ts';
import { hours, type Newtons, newtons, plain } from '../kernel/quantity.ts';
import { outOfBounds, relation } from '../kernel/relation.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { invert } from '../numerics/invert.ts';
import type { FlankName } from './flanks.ts';
import { tenfoldTimes } from './log-law.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'spring-slack': { readonly after: number };
    'faces-part': { readonly at: number; readonly load: number };
    'preload-gone': Record<string, never>;
    'no-such-spring': { readonly spring: number; readonly count: number };
    'second-reading-earlier': { readonly first: number; readonly second: number };
    'force-grew': { readonly first: number; readonly second: number };
    'nothing-to-relax': Record<string, never>;
    'relaxes-past-all': {
      readonly share: number;
      readonly t_0: number;
      readonly first: number;
      readonly second: number;
    };
    'preload-below-need': { readonly preload: number; readonly needed: number };
    'weight-of-part': { readonly part: 'turned' | 'carried'; readonly weight: number };
    'weight-along-axis': { readonly share: number };
    'outside-load': { readonly least: number; readonly most: number };
    'spring-on-one-part': { readonly spring: number; readonly part: Part };
    'spring-of-chain': { readonly spring: number; readonly reason: Bad };
  }
}

export const springForce = relation({
  name: 'spring-force',
  says: 'Force of a spring after its ends have moved: the force at the start plus the rate times the added stretch.',
  takes: ['F_0', 'k_s', 'u_s'],
  gives: { F_s: 'F_0 + k_s*u_s' },
  source: 'Hooke’s law, F = F0 + k u.',
  refuses: ({ F_0, k_s, u_s }) => (F_0 + k_s * u_s >= 0 ? undefined : bad('spring-slack', { after: F_0 / k_s })),
  compute: ({ F_0, k_s, u_s }) => ({ F_s: newtons(F_0 + k_s * u_s) }),
});

export const jointShare = relation({
  name: 'joint-share',
  says: 'How an outside load that pulls apart is shared: part stretches the spring or bolt, part unloads the seated faces.',
  takes: ['F_0', 'F_x', 'k_b', 'k_m'],
  gives: { F_b: 'F_0 + k_b/(k_b + k_m)*F_x', F_m: 'F_0 - k_m/(k_b + k_m)*F_x' },
  source: 'Preloaded joint as two springs side by side, before separation (usual bolted-joint diagram).',
  refuses: ({ F_0, F_x, k_b, k_m }) =>
    k_m * F_x <= F_0 * (k_b + k_m) ? undefined : bad('faces-part', { at: (F_0 * (k_b + k_m)) / k_m, load: F_x }),
  compute: ({ F_0, F_x, k_b, k_m }) => ({
    F_b: newtons(F_0 + (k_b / (k_b + k_m)) * F_x),
    F_m: newtons(F_0 - (k_m / (k_b + k_m)) * F_x),
  }),
});

export const retainedForce = relation({
  name: 'retained-force',
  says: 'Preload left after a time under constant stretch, by the log law.',
  takes: ['F_0', 'q_r', 't', 't_0'],
  gives: { F_t: 'F_0*(1 - q_r*log(1 + t/t_0)/log(10))' },
  source:
    'Logarithmic relaxation, the usual law for plastics well below softening; the share lost per tenfold time is the reader’s own.',
  refuses: ({ q_r, t, t_0 }) => (q_r * tenfoldTimes(t, t_0) <= 1 ? undefined : bad('preload-gone', {})),
  compute: ({ F_0, q_r, t, t_0 }) => ({ F_t: newtons(F_0 * (1 - q_r * tenfoldTimes(t, t_0))) }),
});

export type Part = 'base' | 'turned' | 'carried';
export type ThreadName = 'A' | 'C';

export interface PreloadSpring {
  /** The part that holds the spring's lower end, and the part that holds its upper end. */
  readonly lower: Part;
  readonly upper: Part;
  /** A push spring drives its ends apart, a pull spring draws them together. */
  readonly kind: 'push' | 'pull';
  /** Force at n = 0, N, never negative. */
  readonly force: number;
  /** N/mm. */
  readonly rate: number;
}

export interface PreloadCase {
  readonly h_A: 1 | -1;
  readonly L_A: number;
  readonly h_C: 1 | -1;
  readonly L_C: number;
  readonly springs: readonly PreloadSpring[];
  /** Weights, N. */
  readonly weightTurned: number;
  readonly weightCarried: number;
  /** Share of the weight along the axis: 1 upright, 0 lying on its side, −1 upside down. */
  readonly attitude: number;
  /** Outside load on the carried part, N, positive towards the base: from `least` to `most`. */
  readonly load: { readonly least: number; readonly most: number };
  /** Turns over which it is used, clockwise positive. */
  readonly from: number;
  readonly to: number;
  /** Force that must be left on the flank at the worst place, N. */
  readonly margin: number;
}

export interface ForceRange {
  /** Least and most force on the seated flank, N. */
  readonly least: number;
  readonly most: number;
}

export type ThreadVerdict =
  | ({ readonly kind: 'seated' | 'short of margin'; readonly flank: FlankName } & ForceRange)
  | {
      readonly kind: 'lets go';
      /** Turns, carried part's place in mm, and load in N at which the flank lets go. */
      readonly n: number;
      readonly z_c: number;
      readonly load: number;
    };

export interface PreloadVerdict {
  readonly A: ThreadVerdict;
  readonly C: ThreadVerdict;
  /** For each spring its least and most force over the stroke, N, and where it goes slack, if it does. */
  readonly springs: readonly (ForceRange & { readonly slackFrom?: number })[];
}

/** Axial motion of a part after n turns, mm, positive up. */
export const partMotion = (part: Part, n: number, pair: Pick<PreloadCase, 'h_A' | 'L_A' | 'h_C' | 'L_C'>): number => {
  const sunk = pair.h_A * pair.L_A;
  const perTurn = part === 'base' ? 0 : part === 'turned' ? -sunk : pair.h_C * pair.L_C - sunk;
  // A part that has not moved is at 0, never at −0.
  return perTurn * n + 0;
};

/** Force of a spring after n turns, N; a slack spring has none. */
export const springAt = (
  spring: PreloadSpring,
  n: number,
  pair: Pick<PreloadCase, 'h_A' | 'L_A' | 'h_C' | 'L_C'>,
): number => Math.max(0, spring.force + spring.rate * stretch(spring, n, pair));

/** Axial forces on the two threads after n turns under an outside load, N; plus presses the upper part towards the base. */
export const threadForces = (given: PreloadCase, n: number, load: number): { A: number; C: number } => {
  let onTurned = 0;
  let onCarried = 0;
  for (const spring of given.springs) {
    const F = springAt(spring, n, given);
    onTurned += F * towardsBaseOn('turned', spring);
    onCarried += F * towardsBaseOn('carried', spring);
  }
  const C = load + given.weightCarried * given.attitude + onCarried;
  return { C, A: C + given.weightTurned * given.attitude + onTurned };
};

/** Whether each thread stays seated with the margin, over the whole travel and the whole range of load. */
export const preloadVerdict = (given: PreloadCase): Result<PreloadVerdict> => {
  const refusal = checked(given);
  if (refusal) return refusal;
  return good({
    A: threadVerdict('A', given),
    C: threadVerdict('C', given),
    springs: given.springs.map((spring) => {
      const ends = [springAt(spring, given.from, given), springAt(spring, given.to, given)];
      const slack = slackTurns(spring, given);
      const range = { least: Math.min(...ends), most: Math.max(...ends) };
      return slack === undefined ? range : { ...range, slackFrom: slack };
    }),
  });
};

export interface LeastPreload {
  /** Force at n = 0 that the chosen spring needs, N. */
  readonly force: number;
  /** The thread, the turns and the load that set it; no thread where the spring itself must not go slack. */
  readonly governs: { readonly thread: ThreadName | undefined; readonly n: number; readonly load: number };
  /** Threads this spring can't seat, whatever its force. */
  readonly unreached: readonly ThreadName[];
}

/** The least force at n = 0 with which spring number `which` leaves the margin on every thread it reaches. */
export const leastPreload = (given: PreloadCase, which = 0): Result<LeastPreload> => {
  const refusal = checked(given);
  if (refusal) return refusal;
  const spring = given.springs[which];
  if (!spring) return bad('no-such-spring', { spring: which + 1, count: given.springs.length });
  const others: PreloadCase = { ...given, springs: given.springs.filter((_, i) => i !== which) };
  const reach = {
    C: towardsBaseOn('carried', spring),
    A: towardsBaseOn('carried', spring) + towardsBaseOn('turned', spring),
  };
  // The spring is also kept from going slack anywhere, hence the floor of nought.
  let force = 0;
  let governs: LeastPreload['governs'] = { thread: undefined, n: given.from, load: given.load.most };
  for (const n of corners(given)) {
    const added = spring.rate * stretch(spring, n, given);
    if (-added > force) {
      force = -added;
      governs = { thread: undefined, n, load: given.load.most };
    }
    for (const thread of ['A', 'C'] as const) {
      const way = reach[thread];
      if (way === 0) continue;
      for (const load of [given.load.least, given.load.most]) {
        const needed = given.margin - way * threadForces(others, n, load)[thread] - added;
        if (needed > force) {
          force = needed;
          governs = { thread, n, load };
        }
      }
    }
  }
  const unreached = (['A', 'C'] as const).filter((thread) => reach[thread] === 0);
  return good({ force, governs, unreached });
};

/** The share lost per tenfold time and the starting force, fitted through two readings of a relaxing spring. */
export const fitRetention = (
  first: { readonly t: number; readonly F: number },
  second: { readonly t: number; readonly F: number },
  t_0: number,
): Result<{ F_0: Newtons; q_r: number }> => {
  const refusal =
    outOfBounds('t', first.t) ??
    outOfBounds('t', second.t) ??
    outOfBounds('t_0', t_0) ??
    outOfBounds('F_t', first.F) ??
    outOfBounds('F_t', second.F);
  if (refusal) return refusal;
  if (!(second.t > first.t)) return bad('second-reading-earlier', { first: first.t, second: second.t });
  if (!(second.F <= first.F)) return bad('force-grew', { first: first.F, second: second.F });
  const gone = tenfoldTimes(first.t, t_0);
  const slope = (first.F - second.F) / (tenfoldTimes(second.t, t_0) - gone);
  const F_0 = first.F + slope * gone;
  if (!(F_0 > 0)) return bad('nothing-to-relax', {});
  const q_r = slope / F_0;
  // Long before the starting time the law is a straight line in time, and no tenfold time lies between the readings to tell the share
  // from. An earlier starting time always ends at 100 % or less: q = 1 / (F1/(F1 − F2) (D2 − D1) + D1), and D1 grows without bound.
  if (!(q_r <= 1)) return bad('relaxes-past-all', { share: q_r, t_0, first: first.t, second: second.t }, 't_0');
  return good({ F_0: newtons(F_0), q_r });
};

/** Hours until the preload has fallen to what is needed; nothing where it never does within a hundred years. */
export const timeToFall = (
  law: { readonly F_0: number; readonly q_r: number; readonly t_0: number },
  needed: number,
): Result<{ kind: 'lasts' } | { kind: 'falls'; t: number }> => {
  const refusal =
    outOfBounds('F_0', law.F_0) ??
    outOfBounds('q_r', law.q_r) ??
    outOfBounds('t_0', law.t_0) ??
    outOfBounds('F_t', needed);
  if (refusal) return refusal;
  if (!(needed <= law.F_0)) return bad('preload-below-need', { preload: law.F_0, needed });
  if (law.q_r === 0) return good({ kind: 'lasts' });
  const left = (t: number): number | undefined => {
    const retained = retainedForce.of({ F_0: newtons(law.F_0), q_r: plain(law.q_r), t: hours(t), t_0: hours(law.t_0) });
    return retained.ok ? retained.value.F_t : undefined;
  };
  const [first] = invert(left, needed, { min: 0, max: HUNDRED_YEARS }).answers;
  return good(first ? { kind: 'falls', t: first.x } : { kind: 'lasts' });
};

/** A spring as it is after relaxing: force and rate both down to the share that is left. */
export const relaxed = (spring: PreloadSpring, share: number): PreloadSpring => ({
  ...spring,
  force: spring.force * share,
  rate: spring.rate * share,
});

const HUNDRED_YEARS = 100 * 365.25 * 24;

/** What n turns add to the spring's loading, mm: a push spring is loaded by its ends nearing, a pull spring by parting. */
const stretch = (spring: PreloadSpring, n: number, pair: Pick<PreloadCase, 'h_A' | 'L_A' | 'h_C' | 'L_C'>): number => {
  const parted = partMotion(spring.upper, n, pair) - partMotion(spring.lower, n, pair);
  return spring.kind === 'pull' ? parted : -parted;
};

/** +1 where the spring drives this part towards the base, −1 where away from it, 0 where it does not touch it. */
const towardsBaseOn = (part: Part, spring: PreloadSpring): number => {
  const way = spring.kind === 'pull' ? 1 : -1;
  return part === spring.upper ? way : part === spring.lower ? -way : 0;
};

/** Turns within the travel at which a spring runs slack, or undefined. */
const slackTurns = (spring: PreloadSpring, given: PreloadCase): number | undefined => {
  const perTurn = spring.rate * stretch(spring, 1, given);
  if (spring.force + perTurn * given.from <= 0) return given.from;
  if (spring.force + perTurn * given.to > 0) return undefined;
  return -spring.force / perTurn;
};

/** The forces are straight lines in n between these turns. */
const corners = (given: PreloadCase): readonly number[] => [
  given.from,
  ...given.springs
    .map((spring) => -spring.force / (spring.rate * stretch(spring, 1, given)))
    .filter((n) => n > Math.min(given.from, given.to) && n < Math.max(given.from, given.to))
    .sort((a, b) => (given.from < given.to ? a - b : b - a)),
  given.to,
];

const threadVerdict = (thread: ThreadName, given: PreloadCase): ThreadVerdict => {
  const { least, most } = given.load;
  const turns = corners(given);
  const bare = turns.map((n) => threadForces(given, n, 0)[thread]);
  const low = Math.min(...bare) + least;
  const high = Math.max(...bare) + most;
  if (low > 0 || high < 0) {
    const flank: FlankName = low > 0 ? 'pressed' : 'pulled';
    const range = low > 0 ? { least: low, most: high } : { least: -high, most: -low };
    return { kind: range.least >= given.margin ? 'seated' : 'short of margin', flank, ...range };
  }
  const { n, load } = firstLetGo(turns, bare, least, most);
  return { kind: 'lets go', n, z_c: partMotion('carried', n, given), load };
};

/**
 * The first turns along the travel at which some load of the range leaves no force on the flank. The force is
 * bare(n) + load, so that happens where bare(n) enters the band from −most to −least.
 */
const firstLetGo = (
  turns: readonly number[],
  bare: readonly number[],
  least: number,
  most: number,
): { n: number; load: number } => {
  const place = (i: number) => ({ n: at(turns, i), force: at(bare, i) });
  const start = place(0);
  if (start.force >= -most && start.force <= -least) return { n: start.n, load: -start.force + 0 };
  // The band is entered by the edge on the side where the travel starts.
  const load = start.force > -least ? least : most;
  const i = bare.findIndex((force) => (force + load) * (start.force + load) <= 0);
  const [before, after] = [place(i - 1), place(i)];
  return { n: before.n - ((after.n - before.n) * (before.force + load)) / (after.force - before.force), load };
};

const checked = (given: PreloadCase) => {
  const refusal =
    outOfBounds('h_A', given.h_A) ??
    outOfBounds('L_A', given.L_A) ??
    outOfBounds('h_C', given.h_C) ??
    outOfBounds('L_C', given.L_C) ??
    outOfBounds('n', given.from) ??
    outOfBounds('n', given.to) ??
    outOfBounds('F', given.margin);
  if (refusal) return refusal;
  for (const [part, weight] of [
    ['turned', given.weightTurned],
    ['carried', given.weightCarried],
  ] as const)
    if (!(weight >= 0 && weight <= 1e5)) return bad('weight-of-part', { part, weight });
  if (!(given.attitude >= -1 && given.attitude <= 1)) return bad('weight-along-axis', { share: given.attitude });
  const { least, most } = given.load;
  if (!(least >= -1e5 && most <= 1e5 && least <= most)) return bad('outside-load', { least, most });
  for (const [i, spring] of given.springs.entries()) {
    if (spring.lower === spring.upper) return bad('spring-on-one-part', { spring: i + 1, part: spring.lower });
    const wrong = outOfBounds('F_0', spring.force) ?? outOfBounds('k_s', spring.rate);
    if (wrong) return bad('spring-of-chain', { spring: i + 1, reason: wrong }, wrong.field);
  }
  return undefined;
};
