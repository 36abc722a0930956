/**
 * The order of work in which an adjuster is put together, and what the indicator must show then, step by step with its counts.
 *
 * Both threads are screwed home and backed out to where the parts were described; the lock goes on where the carried part then stands. A reading after n turns is
 * n times the net lead, and may be off by the stated lead errors, by what the hand sets twice, and by the indicator read twice. A reversal may be
 * off by the last two, by the clearance of the key and by the wind-up of the lock under the springs; without preload it shows the play of both threads besides, of which the
 * least is told, by class or as measured, with coats on.
 */
import {
  ballInterference,
  diameters,
  good,
  lockSlopMotion,
  lockWindUp,
  mm,
  newtonMillimetres,
  pairEffort,
  perAngle,
  plain,
  positionError,
  type Result,
  rad,
  type Thread,
  windUp,
  worstLeadError,
} from '../../engine/index.ts';
import { type Adjuster, type Fitted, type Lock, type Springs, type Stop, springForce, standing } from './adjuster.ts';
import { type Bound, engagedAt, gapAt, positionOut } from './joint.ts';
import { lockStiffnessOf } from './lock-stiffness.ts';
import type { Part } from './part.ts';
import { jointPlay } from './play.ts';

type Letter = 'A' | 'C';
export interface Limits {
  readonly min: number;
  readonly max: number;
}

export type BuildStep =
  | {
      readonly do: 'gauge';
      readonly joint: Letter;
      readonly thread: string;
      /** Pitch diameters by class or as measured, coats on; undefined where the designation has no limits. */
      readonly limits:
        | {
            readonly classes: string;
            readonly screw: Limits;
            readonly nut: Limits;
            readonly coat: number;
            readonly measured: boolean;
          }
        | undefined;
    }
  | { readonly do: 'clean' | 'stone' | 'mark' | 'zero' }
  | {
      readonly do: 'ball';
      readonly diameter: number;
      readonly hexagon: number;
      readonly interference: number;
      readonly stands: number;
    }
  | { readonly do: 'ball-set'; readonly diameter: number; readonly stands: number }
  | {
      readonly do: 'home';
      readonly joint: Letter;
      readonly at: Bound | undefined;
      readonly engaged: number;
      /** What stands free between the two parts even so, mm; undefined where no two faces meet. */
      readonly gap: number | undefined;
    }
  | {
      readonly do: 'back';
      readonly joint: Letter;
      readonly turns: number;
      readonly steps: number;
      /** Between the faces of the two parts, mm; undefined where none meet. */
      readonly gap: number | undefined;
    }
  | { readonly do: 'lock'; readonly lock: Lock }
  | { readonly do: 'stretch'; readonly springs: Springs; readonly stretch: number | undefined }
  | { readonly do: 'height'; readonly height: number }
  | { readonly do: 'turn'; readonly turns: number; readonly go: Limits; readonly stop: Stop }
  | {
      readonly do: 'reverse';
      readonly go: number;
      readonly lock: number;
      readonly play: number | undefined;
      /** Whether the lock winds up as well, by what is not known. */
      readonly windsUnknown: boolean;
    };

/**
 * What bounds a reading: relative lead errors, the angle a hand sets again (rad), one reading of the indicator (mm), friction of the threads.
 */
export interface Bench {
  readonly eps_A: number;
  readonly eps_C: number;
  readonly theta_h: number;
  readonly e_g: number;
  readonly mu: number;
}

export const buildOrder = (a: Adjuster, bench: Bench): Result<readonly BuildStep[]> => {
  const joints = jointsOf(a);
  const checks = checksOf(a, bench);
  if (!checks.ok) return checks;
  const ball = ballOf(a);
  if (!ball.ok) return ball;
  return good([
    ...joints.map(({ joint, fitted }): BuildStep => {
      const play = jointPlay(fitted);
      return {
        do: 'gauge',
        joint,
        thread: fitted.thread.designation,
        limits: play.ok
          ? {
              classes: play.value.limits,
              screw: play.value.screw,
              nut: play.value.nut,
              coat: play.value.coat,
              measured: play.value.measured,
            }
          : undefined,
      };
    }),
    { do: 'clean' },
    { do: 'stone' },
    ...ball.value,
    ...joints.flatMap((one): BuildStep[] => [home(one), back(one, a.steps)]),
    { do: 'mark' },
    ...(a.C ? [{ do: 'lock', lock: a.lock } as const] : []),
    ...(a.springs ? [{ do: 'stretch', springs: a.springs, stretch: stretchOf(a.springs) } as const] : []),
    { do: 'height', height: standing(a, 0).height },
    { do: 'zero' },
    ...checks.value,
  ]);
};

interface Screwed {
  readonly joint: Letter;
  readonly fitted: Fitted;
  readonly lower: Part;
  readonly upper: Part;
}

const jointsOf = ({ base, turned, carried, A, C }: Adjuster): readonly Screwed[] => [
  { joint: 'A', fitted: A, lower: base, upper: turned },
  ...(C && carried ? [{ joint: 'C', fitted: C, lower: turned, upper: carried } as const] : []),
];

const home = ({ joint, fitted: { joint: j }, lower, upper }: Screwed): BuildStep => ({
  do: 'home',
  joint,
  at: j.home === undefined ? undefined : j.home === 'to' ? j.atTo : j.atFrom,
  engaged: engagedAt(j, positionOut(j, 0)),
  gap: gapAt(lower, upper, j, positionOut(j, 0)),
});

const back = ({ joint, fitted, lower, upper }: Screwed, steps: number): BuildStep => ({
  do: 'back',
  joint,
  turns: fitted.mark,
  steps: fitted.mark * steps,
  gap: gapAt(lower, upper, fitted.joint, fitted.start),
});

/** All springs are stretched alike, by their force together over their rate together. */
const stretchOf = ({ force, rate }: Springs): number | undefined =>
  force === undefined || rate === undefined || !(rate > 0) ? undefined : force / rate;

const ballOf = ({ tip }: Adjuster): Result<readonly BuildStep[]> => {
  if (tip.kind !== 'ball') return good([]);
  const { diameter, hexagon, stands } = tip;
  if (hexagon === undefined) return good([{ do: 'ball-set', diameter, stands }]);
  const over = ballInterference.of({ D_b: mm(diameter), s_f: mm(hexagon) });
  return over.ok ? good([{ do: 'ball', diameter, hexagon, interference: over.value.I_b, stands }]) : over;
};

/** Nearly to the stop, in whole turns where there is one, else in whole steps; short of it, so that nothing is wound into it. */
const turnsTo = (stop: Stop, steps: number): number => {
  const most = 0.9 * Math.abs(stop.n);
  const whole = most >= 1 ? Math.floor(most) : Math.floor(most * steps) / steps;
  return Math.sign(stop.n) * whole;
};

const checksOf = (a: Adjuster, bench: Bench): Result<readonly BuildStep[]> => {
  const { eps_A, eps_C, theta_h, e_g } = bench;
  const { Delta, A, C } = a;
  const hand = perAngle.of({ Delta: mm(Delta), theta: rad(theta_h) });
  if (!hand.ok) return hand;
  const twice = 2 * (hand.value.s + e_g);
  const steps: BuildStep[] = [];
  for (const stop of [a.clockwise, a.anticlockwise]) {
    const turns = turnsTo(stop, a.steps);
    if (turns === 0) continue;
    // A plain screw has its one lead; equal leads move nothing that could be read.
    let share = Math.abs(eps_A);
    if (C) {
      const worst = worstLeadError.of({
        L_A: A.thread.L,
        eps_A: plain(eps_A),
        L_C: C.thread.L,
        eps_C: plain(eps_C),
        Delta: mm(Delta),
      });
      if (!worst.ok) return worst;
      share = worst.value.eps_w;
    }
    const nominal = turns * Delta;
    const off = positionError.of({ z_c: mm(nominal), eps: plain(share) });
    if (!off.ok) return off;
    const room = Math.abs(off.value.e_z) + twice;
    steps.push({ do: 'turn', turns, go: { min: nominal - room, max: nominal + room }, stop });
  }
  const lock = lockMotion(a, bench);
  if (!lock.ok) return lock;
  steps.push({
    do: 'reverse',
    go: twice + lock.value.motion,
    lock: lock.value.motion,
    play: leastPlay(a),
    windsUnknown: lock.value.windsUnknown,
  });
  return good(steps);
};

/**
 * What the lock lets the tip move by on reversal, mm: the clearance of its key, and its wind-up both ways under what the springs press thread C with; the
 * work is off. Where no stiffness of the lock is known, its wind-up is left out, and that is told. A key that its torque holds to one side of the slot never crosses it.
 */
const lockMotion = (
  a: Adjuster,
  { mu }: Bench,
): Result<{ readonly motion: number; readonly windsUnknown: boolean }> => {
  const { lock, springs, Delta, A, C } = a;
  if (!C || lock.kind === 'none' || Delta === 0) return good({ motion: 0, windsUnknown: false });
  const handed = handedBy(springForce(a, 0) ?? 0, springs?.between, A.thread, C.thread, mu);
  if (!handed.ok) return handed;
  const [up, down] = handed.value;
  const torque = Math.abs(up - down);
  const kappa = lockStiffnessOf(a);
  const windsUnknown = kappa === undefined && torque > 0;
  const both = kappa === undefined ? good(0) : woundBy(torque, kappa, C.thread);
  if (!both.ok) return both;
  const total = (motion: number) => ({ motion, windsUnknown });
  if ((lock.kind !== 'key' && lock.kind !== 'post') || up * down > 0) return good(total(both.value));
  const loose = lockSlopMotion.of({ L_C: C.thread.L, g_k: mm(lock.clearance), r_k: mm(lock.radius) });
  return loose.ok ? good(total(both.value + loose.value.z_k)) : loose;
};

/** What the tip moves by while a lock of this stiffness winds up under this torque. */
const woundBy = (torque: number, kappa: number, C: Thread): Result<number> => {
  const angle = lockWindUp.of({ M_L: newtonMillimetres(torque), kappa: newtonMillimetres(kappa) });
  if (!angle.ok) return angle;
  const wound = windUp.of({ h_C: plain(C.h), L_C: C.L, psi: angle.value.psi });
  return wound.ok ? good(Math.abs(wound.value.z_c)) : wound;
};

/** Torques that thread C hands the lock, turning either way, under a spring of this force. */
const handedBy = (
  force: number,
  between: Springs['between'] | undefined,
  A: Thread,
  C: Thread,
  mu: number,
): Result<readonly [number, number]> => {
  // Springs between base and turned part leave thread C without force.
  if (!(Math.abs(force) > 0) || between === 'base and turned') return good([0, 0]);
  const side = (thread: Thread) => ({ h: thread.h, L: thread.L, d2: diameters(thread).d2, mu });
  const effort = pairEffort({
    A: side(A),
    C: side(C),
    load: force,
    ...(between === 'turned and carried' && { onThread: { A: 0, C: force } }),
  });
  return effort.ok ? good([effort.value.against.handed, effort.value.along.handed]) : effort;
};

/** Play of both threads, the tightest pieces with their coats on; undefined where a thread has none that is known. */
const leastPlay = ({ A, C }: Adjuster): number | undefined => {
  let sum = 0;
  for (const fitted of C ? [A, C] : [A]) {
    const play = jointPlay(fitted);
    if (!play.ok || !play.value.least.ok) return undefined;
    sum += play.value.least.value;
  }
  return sum;
};
