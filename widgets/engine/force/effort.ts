/**
 * Effort: the torque that turns the part, thread by thread, and what the hand feels of it.
 *
 * Equation: for one thread under the axial load F, with lead angle λ at the pitch diameter d2 and friction angle
 * ρ, tan ρ = µ/cos β (β the half angle of the flanks: 30° for a 60° thread, 0° for a square one),
 *   climbing against the load  M = F d2/2 · tan(ρ + λ)
 *   yielding to the load       M = F d2/2 · tan(ρ − λ), negative where the load drives the thread by itself.
 * Source: block on an incline, wrapped round a cylinder; Khurmi & Gupta, A Textbook of Machine Design, ch. 17
 * (square threads, and µ/cos β for angular ones). In a pair the turned part carries the friction of both
 * threads; with like hands one climbs while the other yields, so the leads subtract and the frictions add.
 *
 * Sign convention: z up, n = +1 clockwise seen from above. A load is positive where it presses the carried part
 * towards the base. Thread A moves the turned part by −h_A L_A a turn, thread C moves the carried part off the
 * turned part by +h_C L_C; a thread climbs where that motion is against its load. A torque is positive in the
 * sense in which the part is turned.
 * Units: N, mm, N·mm, rad.
 *
 * How far the formula holds: the flank half angle is taken in the axial plane, where it is drawn; the exact
 * force balance has it in the plane across the helix, tan βn = tan β cos λ (tested by free bodies):
 *   lead angle   2°       4°       8°
 *   torque off   +0.01 %  +0.04 %  +0.14 %   (µ 0.15, climbing, 60° thread; nought for a square one)
 */
import { megapascals, mm, newtonMillimetres, newtons, plain, rad } from '../kernel/quantity.ts';
import { outOfBounds, relation } from '../kernel/relation.ts';
import { bad, good, type Result } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'thread-jams': Record<string, never>;
    'thread-along-axis': Record<string, never>;
    'torque-below-frictionless': { readonly torque: number; readonly frictionless: number };
    'no-thread-efficiency': Record<string, never>;
    'collar-without-ring': Record<string, never>;
    'nothing-sticks': Record<string, never>;
    'jump-of-turns': Record<string, never>;
    'effort-thread': { readonly thread: 'A' | 'C'; readonly reason: Bad };
    'effort-thread-jams': { readonly thread: 'A' | 'C' };
    'effort-load': { readonly load: number };
    'effort-without-load': Record<string, never>;
    'key-locks': { readonly radius: number };
    'effort-collar': { readonly torque: number };
    'effort-equal-leads': Record<string, never>;
    'springs-drive-part': Record<string, never>;
    'plain-screw-jams': Record<string, never>;
    'plain-screw-without-load': Record<string, never>;
  }
}

/** Beyond this slope a tangent stands for a wedge that has jammed, not for a screw. */
export const JAMMED = (89 * Math.PI) / 180;

export const frictionAngle = relation({
  name: 'friction-angle',
  says: 'Friction angle of a thread: the slope at which its flanks would just begin to slide.',
  takes: ['mu', 'beta_f'],
  gives: { rho: 'atan(mu/cos(beta_f))' },
  source:
    'Coulomb friction on flanks inclined by β: the flank force is 1/cos β larger than the axial one (Khurmi & Gupta, ch. 17).',
  compute: ({ mu, beta_f }) => ({ rho: rad(Math.atan(mu / Math.cos(beta_f))) }),
});

export const climbingTorque = relation({
  name: 'climbing-torque',
  says: 'Torque of one thread that runs uphill.',
  takes: ['F', 'd_2', 'rho', 'lambda'],
  gives: { M_up: 'F*d_2/2*tan(rho + lambda)' },
  source: 'Khurmi & Gupta, A Textbook of Machine Design, ch. 17: block on an incline round a cylinder.',
  refuses: ({ rho, lambda }) => (rho + lambda < JAMMED ? undefined : bad('thread-jams', {})),
  compute: ({ F, d_2, rho, lambda }) => ({ M_up: newtonMillimetres(((F * d_2) / 2) * Math.tan(rho + lambda)) }),
});

export const downhillTorque = relation({
  name: 'downhill-torque',
  says: 'Torque of one thread that runs downhill, negative where the load alone drives it.',
  takes: ['F', 'd_2', 'rho', 'lambda'],
  gives: { M_down: 'F*d_2/2*tan(rho - lambda)' },
  source: 'Khurmi & Gupta, A Textbook of Machine Design, ch. 17: block on an incline round a cylinder.',
  refuses: ({ rho, lambda }) => (lambda - rho < JAMMED ? undefined : bad('thread-along-axis', {})),
  compute: ({ F, d_2, rho, lambda }) => ({ M_down: newtonMillimetres(((F * d_2) / 2) * Math.tan(rho - lambda)) }),
});

export const pairTorque = relation({
  name: 'pair-torque',
  says: 'Torque at the turned part: the torques of its two threads together, each with its sign.',
  takes: ['M_A', 'M_C'],
  gives: { M: 'M_A + M_C' },
  source: 'Free body of the turned part; Khurmi & Gupta, ch. 17, differential screw: T = T1 − T2 with T2 negative.',
  compute: ({ M_A, M_C }) => ({ M: newtonMillimetres(M_A + M_C) }),
});

export const frictionlessTorque = relation({
  name: 'frictionless-torque',
  says: 'Torque without friction: the work of the load over one turn.',
  takes: ['F', 'Delta'],
  gives: { M_free: 'F*abs(Delta)/(2*pi)' },
  source: 'Virtual work: 2π times the torque is load times net lead.',
  compute: ({ F, Delta }) => ({ M_free: newtonMillimetres((F * Math.abs(Delta)) / (2 * Math.PI)) }),
});

export const efficiency = relation({
  name: 'efficiency',
  says: 'Efficiency: the share of the work of the hand that reaches the load.',
  takes: ['F', 'Delta', 'M'],
  gives: { eta: 'F*abs(Delta)/(2*pi*M)' },
  source: 'Definition: work on the load over work of the torque, per turn.',
  refuses: ({ F, Delta, M }) => {
    const frictionless = (F * Math.abs(Delta)) / (2 * Math.PI);
    return M > 0 && frictionless <= M * (1 + 1e-12)
      ? undefined
      : bad('torque-below-frictionless', { torque: M, frictionless });
  },
  compute: ({ F, Delta, M }) => ({ eta: plain((F * Math.abs(Delta)) / (2 * Math.PI * M)) }),
});

export const threadEfficiency = relation({
  name: 'thread-efficiency',
  says: 'Efficiency of one thread that runs uphill.',
  takes: ['lambda', 'rho'],
  gives: { eta: 'tan(lambda)/tan(lambda + rho)' },
  source: 'Housner & Hudson, problem 3 on the screw: at most one half for a thread that holds by itself.',
  refuses: ({ lambda, rho }) => (lambda > 0 && lambda + rho < JAMMED ? undefined : bad('no-thread-efficiency', {})),
  compute: ({ lambda, rho }) => ({ eta: plain(Math.tan(lambda) / Math.tan(lambda + rho)) }),
});

export const collarTorque = relation({
  name: 'collar-torque',
  says: 'Torque lost under a collar or a tip that turns on its seat.',
  takes: ['mu_b', 'F', 'd_b'],
  gives: { M_b: 'mu_b*F*d_b/2' },
  source: 'Coulomb friction at the mean diameter; Khurmi & Gupta, ch. 17, collar friction with uniform wear.',
  compute: ({ mu_b, F, d_b }) => ({ M_b: newtonMillimetres((mu_b * F * d_b) / 2) }),
});

export const collarMeanDiameter = relation({
  name: 'collar-mean-diameter',
  says: 'Mean diameter of a flat collar or tip that is pressed evenly all over: further out than halfway between its edges.',
  takes: ['d_bo', 'd_bi'],
  // Divided out, so that a ring of no width has an answer too.
  gives: { d_b: '2*(d_bo^2 + d_bo*d_bi + d_bi^2)/(3*(d_bo + d_bi))' },
  source:
    'Friction of an even pressure, summed over the ring: 2/3 (R³ − r³)/(R² − r²) is the mean radius (handbooks on collar friction and disc clutches, from memory).',
  refuses: ({ d_bo, d_bi }) => (d_bo > 0 && d_bi <= d_bo ? undefined : bad('collar-without-ring', {})),
  compute: ({ d_bo, d_bi }) => ({ d_b: mm((2 * (d_bo * d_bo + d_bo * d_bi + d_bi * d_bi)) / (3 * (d_bo + d_bi))) }),
});

export const handForce = relation({
  name: 'hand-force',
  says: 'Force of the hand at the rim of the knob or the end of the key.',
  takes: ['M', 'r_h'],
  gives: { F_h: 'M/r_h' },
  source: 'Moment of a force: torque over radius.',
  compute: ({ M, r_h }) => ({ F_h: newtons(M / r_h) }),
});

export const nutFactorTorque = relation({
  name: 'nut-factor-torque',
  says: 'Tightening torque of a bolt by the nut factor, for comparison with the two-thread sum.',
  takes: ['K_n', 'd', 'F'],
  gives: { M: 'K_n*d*F' },
  source: 'Speck, Mechanical Fastening, Joining, and Assembly, ch. 3: T = K D F.',
  compute: ({ K_n, d, F }) => ({ M: newtonMillimetres(K_n * d * F) }),
});

export const coreShear = relation({
  name: 'core-shear',
  says: 'Greatest shear stress in the core of a screw under a load along it and a torque about it.',
  takes: ['F', 'M', 'd_3'],
  gives: { tau_c: 'sqrt((2*F/(pi*d_3^2))^2 + (16*M/(pi*d_3^3))^2)' },
  source: 'Greatest shear of direct stress 4F/(πd²) and torsion 16M/(πd³); Khurmi & Gupta, ch. 17, Example 17.17.',
  compute: ({ F, M, d_3 }) => ({
    tau_c: megapascals(Math.hypot((2 * F) / (Math.PI * d_3 ** 2), (16 * M) / (Math.PI * d_3 ** 3))),
  }),
});

export const stickSlip = relation({
  name: 'stick-slip',
  says: 'Stick-slip: the largest jump when a springy hand and key start a thread that sticks.',
  takes: ['M_s', 'M_k', 'kappa_d', 'Delta'],
  gives: { theta_j: '2*(M_s - M_k)/kappa_d', s_j: '2*(M_s - M_k)/kappa_d*(abs(Delta)/(360*deg))' },
  source:
    'A slider drawn by a spring, no damping: it runs on until the spring is as far below the running force as it was above; derived here, an upper bound.',
  refuses: ({ M_s, M_k, kappa_d }) => {
    if (!(M_s >= M_k)) return bad('nothing-sticks', {});
    return (2 * (M_s - M_k)) / kappa_d <= 1e6 ? undefined : bad('jump-of-turns', {});
  },
  compute: ({ M_s, M_k, kappa_d, Delta }) => {
    const jump = (2 * (M_s - M_k)) / kappa_d;
    return { theta_j: rad(jump), s_j: mm((jump * Math.abs(Delta)) / (2 * Math.PI)) };
  },
});

/** What the effort needs to know of a thread. */
export interface EffortThread {
  /** +1 right hand, −1 left hand. */
  readonly h: 1 | -1;
  /** Lead, mm. */
  readonly L: number;
  /** Pitch diameter, mm. */
  readonly d2: number;
  /** Coefficient of friction, 0 to 1. */
  readonly mu: number;
  /** Half angle of the flanks, rad; 30° where nothing is said, 0 for a square thread. */
  readonly beta?: number;
}

export interface ThreadEffort {
  /** True where the thread climbs against its load, false where it yields to it. */
  readonly climbs: boolean;
  /** Torque in the sense of turning, N·mm. */
  readonly torque: number;
  /** The part of it without friction, ±F L/2π, N·mm. */
  readonly lead: number;
  /** The part of it that is friction, never negative, N·mm. */
  readonly friction: number;
}

export interface TurningEffort {
  /** +1 clockwise seen from above, −1 anticlockwise. */
  readonly sense: 1 | -1;
  readonly A: ThreadEffort;
  readonly C: ThreadEffort;
  readonly collar: number;
  /** What the rub of the key adds to the torque of both threads, N·mm. */
  readonly key: number;
  /** Torque of the hand, in the sense of turning, N·mm; negative where the load turns the part by itself. */
  readonly torque: number;
  /** Torque handed to the carried part, which its lock must hold; positive anticlockwise seen from above, N·mm. */
  readonly handed: number;
}

/** A key that loads its thread so many times over locks, for all that can be told of its friction. */
const MOST_GROWTH = 50;

export interface PairEffort {
  /** Net lead, mm a turn. */
  readonly Delta: number;
  /** Moving the carried part against the load. */
  readonly against: TurningEffort;
  /** Moving it with the load. */
  readonly along: TurningEffort;
  /** F |Δ|/2π, N·mm. */
  readonly frictionless: number;
  /** Work on the load over work of the hand, moving against the load. */
  readonly efficiency: number;
  /** True where the load can't turn the part by itself. */
  readonly selfLocking: boolean;
}

export interface EffortCase {
  readonly A: EffortThread;
  readonly C: EffortThread;
  /** Load on the carried part, N; positive towards the base. */
  readonly load: number;
  /** Axial force on each thread where it is not the load alone (weight, springs), N; positive where it presses together. */
  readonly onThread?: { readonly A: number; readonly C: number };
  /** Friction where the turned part itself runs on a collar, N·mm; nought where nothing is said. */
  readonly collar?: number;
  /** What keeps the carried part from turning rubs along the axis, by the torque of thread C over its radius (key-rub). */
  readonly key?: { readonly mu: number; readonly radius: number };
}

/**
 * Torque at the turned part of a pair, both ways. The carried part does not turn, so its tip rubs on nothing: a
 * collar counts only where the turned part itself runs on one. Refuses leads that leave no motion.
 */
export const pairEffort = (given: EffortCase): Result<PairEffort> => {
  for (const [name, thread] of [
    ['A', given.A],
    ['C', given.C],
  ] as const) {
    const refusal =
      outOfBounds('mu', thread.mu) ??
      outOfBounds('L', thread.L) ??
      outOfBounds('d_2', thread.d2) ??
      outOfBounds('h', thread.h) ??
      outOfBounds('beta_f', thread.beta ?? Math.PI / 6);
    if (refusal) return bad('effort-thread', { thread: name, reason: refusal }, refusal.field);
    const { rho, lambda } = angles(thread);
    if (!(rho + lambda < JAMMED)) return bad('effort-thread-jams', { thread: name });
  }
  const { A, C, load, onThread = { A: load, C: load }, collar = 0 } = given;
  for (const force of [load, onThread.A, onThread.C])
    if (!(Math.abs(force) <= 1e5)) return bad('effort-load', { load: force }, 'F');
  if (!(Math.abs(load) > 0)) return bad('effort-without-load', {}, 'F');
  const wrongKey = given.key && (outOfBounds('mu_g', given.key.mu) ?? outOfBounds('r_k', given.key.radius));
  if (wrongKey) return wrongKey;
  if (!(collar >= 0 && collar <= 1e7)) return bad('effort-collar', { torque: collar }, 'M_b');
  const Delta = C.h * C.L - A.h * A.L;
  if (!(Math.abs(Delta) > 1e-9)) return bad('effort-equal-leads', {});
  // The load points down where positive; turning by `sense` lifts the carried part where sense·Δ > 0.
  const againstSense: 1 | -1 = Math.sign(Delta) * Math.sign(load) > 0 ? 1 : -1;
  const turning = (sense: 1 | -1): TurningEffort | undefined => {
    const a = threadEffort(A, onThread.A, -A.h * sense);
    const c = threadEffort(C, onThread.C, C.h * sense);
    // The key rubs against the motion, and so loads thread C by a share of the torque that this force makes there: F′ = F + s q |F′|.
    const q = given.key && onThread.C !== 0 ? (given.key.mu * Math.abs(c.torque / onThread.C)) / given.key.radius : 0;
    const rises = Math.sign(Delta) * sense * Math.sign(onThread.C);
    const grown = 1 / (1 - rises * q);
    if (!(grown > 0 && grown <= MOST_GROWTH)) return undefined;
    const more = onThread.C * (grown - 1);
    const rub = threadEffort(A, onThread.A + more, -A.h * sense).torque - a.torque + (grown - 1) * c.torque;
    return {
      sense,
      A: a,
      C: c,
      collar,
      key: rub,
      torque: a.torque + c.torque + collar + rub,
      handed: -sense * grown * c.torque + 0,
    };
  };
  const against = turning(againstSense);
  const along = turning(againstSense === 1 ? -1 : 1);
  if (!against || !along) return bad('key-locks', { radius: given.key?.radius ?? 0 }, 'r_k');
  const frictionless = (Math.abs(load) * Math.abs(Delta)) / (2 * Math.PI);
  if (!(against.torque > 0)) return bad('springs-drive-part', {});
  return good({
    Delta,
    against,
    along,
    frictionless,
    efficiency: frictionless / against.torque,
    selfLocking: along.torque > 0,
  });
};

export interface PlainEffort {
  /** Torque that moves the load against itself, and with itself, collar included, N·mm. */
  readonly against: number;
  readonly along: number;
  /** Under the tip or collar, N·mm. */
  readonly rubbing: number;
  /** The thread alone, both ways. */
  readonly up: ThreadEffort;
  readonly down: ThreadEffort;
  readonly efficiency: number;
  readonly selfLocking: boolean;
}

/** A plain screw for comparison: one thread, its turned part pressing on the load; torques N·mm. */
export const plainEffort = (thread: EffortThread, load: number, collar = 0): Result<PlainEffort> => {
  const refusal =
    outOfBounds('mu', thread.mu) ??
    outOfBounds('L', thread.L) ??
    outOfBounds('d_2', thread.d2) ??
    outOfBounds('beta_f', thread.beta ?? Math.PI / 6) ??
    outOfBounds('F', load) ??
    outOfBounds('M_b', collar);
  if (refusal) return refusal;
  const { rho, lambda } = angles(thread);
  if (!(load > 0)) return bad('plain-screw-without-load', {});
  if (!(rho + lambda < JAMMED)) return bad('plain-screw-jams', {});
  const up = threadEffort(thread, load, 1);
  const down = threadEffort(thread, load, -1);
  const against = up.torque + collar;
  const along = down.torque + collar;
  return good({
    against,
    along,
    rubbing: collar,
    up,
    down,
    efficiency: (load * thread.L) / (2 * Math.PI * against),
    selfLocking: along > 0,
  });
};

const angles = ({ mu, L, d2, beta = Math.PI / 6 }: EffortThread) => ({
  rho: Math.atan(mu / Math.cos(beta)),
  lambda: Math.atan(L / (Math.PI * d2)),
});

/**
 * @param force axial force, positive towards the base
 * @param lift sense in which the turning moves the upper part, +1 up
 */
const threadEffort = (thread: EffortThread, force: number, lift: number): ThreadEffort => {
  const { rho, lambda } = angles(thread);
  const climbs = lift * force > 0;
  const arm = (Math.abs(force) * thread.d2) / 2;
  const torque = arm * Math.tan(climbs ? rho + lambda : rho - lambda);
  const lead = (climbs ? 1 : -1) * arm * Math.tan(lambda);
  // Written out, not torque − lead: at µ = 0 the difference would leave a remainder of rounding.
  const friction = (arm * Math.sin(rho)) / (Math.cos(climbs ? rho + lambda : rho - lambda) * Math.cos(lambda));
  return { climbs, torque, lead, friction };
};
