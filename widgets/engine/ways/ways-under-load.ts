/**
 * The five ways of other-ways.ts under a load: what turns them, and what gives.
 *
 * Equations, F the load against the motion at the tip, m the motion of the tip per motion of the drive screw:
 *   wedge    F_d = F tan(φ + 2ρ), tan ρ = µ: friction on the slope, under the base and in the guide that keeps the follower upright
 *   lever    F_d = F b/a, the pivot without friction
 *   balls    F_d = F m, m of the ball lift; the balls taken to roll, so this is the least
 *   torque   of the screw that makes the motion, by effort.ts, under F_d or, where it carries the load itself, under F
 * Stiffness at the tip, parts in series (stiffness.ts):
 *   where the tip moves m times as far as a part, the part carries m F and the tip gives m times what the part gives: k_t = k/m²
 *   bar of a lever, square of side t, pivot at one end, load at b, screw at a: bending gives F b² (a − b)²/(3 E I a),
 *     I = t⁴/12, so k = E t⁴ a/(4 b² (a − b)²)
 *   balls    each of the three contacts beneath the top ball carries F_n = F (r + R)/(3 h); its give is felt by (r + R)/h
 *   where balls press, load over approach, not its slope: the ways are compared by how far they give under the whole load, and the slope of
 *     Hertz's law is half as steep again
 *   engaged threads   by thread-stiffness: one under a plain screw, that of a drive by m², both of a pair
 * Play at the tip, lost where the load changes its side: of each engagement (play.ts), by m of a drive, both of a pair.
 * Source: block on an incline (Khurmi & Gupta, ch. 17); Hooke’s law and the beam on two supports (elementary
 * strength of materials); Hertz (contact.ts). Left out: guides, seats and the contact at the tip, so the stiffness is the most that can be had, and play of
 * pivot and guide. It is a comparison and no promise. Units: mm, N, N·mm, N/mm, MPa, rad.
 */
import { ballOnFlat, contactModulus } from '../contact/contact.ts';
import { type Chain, type StiffPart, seriesStiffness, shankStiffness, threadStiffness } from '../contact/stiffness.ts';
import { type EffortThread, JAMMED, pairEffort, plainEffort } from '../force/effort.ts';
import { megapascals, mm, newtons, newtonsPerMillimetre, plain, rad } from '../kernel/quantity.ts';
import { outOfBounds, relation } from '../kernel/relation.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { axialPlay } from '../play/play.ts';
import { ballLift, type Way, type WayName } from './other-ways.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'wedge-jams': Record<string, never>;
    'height-of-top-ball': Record<string, never>;
    'nothing-bends': Record<string, never>;
    'load-past-screw': Record<string, never>;
    'ways-without-load': Record<string, never>;
  }
}

export const wedgePush = relation({
  name: 'wedge-push',
  says: 'Push that drives a wedge under its load, with friction on the slope, under the base and in the guide of what it lifts.',
  takes: ['F', 'phi_w', 'mu'],
  gives: { F_d: 'F*tan(phi_w + 2*atan(mu))' },
  source:
    'Block on an incline, Khurmi & Gupta, A Textbook of Machine Design, ch. 17; friction of base and guide added.',
  refuses: ({ phi_w, mu }) => (phi_w + 2 * Math.atan(mu) < JAMMED ? undefined : bad('wedge-jams', {})),
  compute: ({ F, phi_w, mu }) => ({ F_d: newtons(F * Math.tan(phi_w + 2 * Math.atan(mu))) }),
});

export const leverPush = relation({
  name: 'lever-push',
  says: 'Force at the long arm of a lever that holds the load at the short one.',
  takes: ['F', 'b_l', 'a_l'],
  gives: { F_d: 'F*b_l/a_l' },
  source: 'Moments about the pivot, its friction left out.',
  compute: ({ F, b_l, a_l }) => ({ F_d: newtons((F * b_l) / a_l) }),
});

export const leverPivot = relation({
  name: 'lever-pivot',
  says: 'What the pivot of a lever carries while the load stands between pivot and screw, and how much of its giving way the tip feels.',
  takes: ['F', 'm_r'],
  gives: { F_v: 'F*(1 - m_r)', m_v: '1 - m_r' },
  source: 'Moments about the screw; the tip moves with the pivot by what is left of the way to the screw.',
  refuses: ({ m_r }) => (m_r <= 1 ? undefined : bad('load-past-screw', {})),
  compute: ({ F, m_r }) => ({ F_v: newtons(F * (1 - m_r)), m_v: plain(1 - m_r) }),
});

export const ballPush = relation({
  name: 'ball-push',
  says: 'Pushes on three balls towards their middle, taken together, that hold the ball on top, by equal work.',
  takes: ['F', 'm_t'],
  gives: { F_d: 'F*m_t' },
  source: 'Equal work: what the load falls, times the load, is what the push gives way, times the push; no friction.',
  compute: ({ F, m_t }) => ({ F_d: newtons(F * m_t) }),
});

export const pushBetweenBalls = relation({
  name: 'push-between-balls',
  says: 'Force across each of the three contacts under a ball that lies on three others.',
  takes: ['F', 'r_t', 'R_t', 'h_t'],
  gives: { F_n: 'F*(r_t + R_t)/(3*h_t)' },
  source: 'Equilibrium of the top ball: three equal pushes along the lines of centres carry the load; no friction.',
  refuses: ({ r_t, R_t, h_t }) =>
    h_t > 1e-6 && h_t <= (r_t + R_t) * (1 + 1e-9) ? undefined : bad('height-of-top-ball', {}),
  compute: ({ F, r_t, R_t, h_t }) => ({ F_n: newtons((F * (r_t + R_t)) / (3 * h_t)) }),
});

export const feltAtTip = relation({
  name: 'felt-at-tip',
  says: 'Stiffness of a part as the tip feels it, through a step-down of the motion.',
  takes: ['k_1', 'm_r'],
  gives: { k_t: 'k_1/m_r^2' },
  source: 'The part carries the share m of the force and the tip moves the share m of its give.',
  compute: ({ k_1, m_r }) => ({ k_t: newtonsPerMillimetre(k_1 / m_r ** 2) }),
});

export const leverBending = relation({
  name: 'lever-bending',
  says: 'Stiffness at the short arm of a lever against bending: a square bar, its pivot at one end, its screw at the other.',
  takes: ['E_l', 't_b', 'b_l', 'a_l'],
  gives: { k_v: 'E_l*t_b^4*a_l/(4*b_l^2*(a_l - b_l)^2)' },
  source: 'Beam on two supports with the load between, F b²(a − b)²/(3EIa), I = t⁴/12: strength of materials.',
  refuses: ({ b_l, a_l }) => (b_l < a_l * (1 - 1e-6) ? undefined : bad('nothing-bends', {})),
  compute: ({ E_l, t_b, b_l, a_l }) => ({
    k_v: newtonsPerMillimetre((E_l * t_b ** 4 * a_l) / (4 * b_l ** 2 * (a_l - b_l) ** 2)),
  }),
});

/** A thread as effort and stiffness need it; diameters and lead in mm. */
export interface LoadedScrew {
  readonly h: 1 | -1;
  readonly L: number;
  readonly d: number;
  readonly d2: number;
  readonly d3: number;
}

export interface LoadCase {
  /** Against the motion at the tip, N. */
  readonly load: number;
  readonly mu: number;
  /** The plain fine screw; its lead is that of the way. */
  readonly plain: LoadedScrew;
  readonly drive: LoadedScrew;
  readonly A: LoadedScrew;
  readonly C: LoadedScrew;
  /** Side of blocks and bars, which are square, mm. */
  readonly bar: number;
  readonly shortArm: number;
  /** Radius of the balls, and of the one a lever pivots on, mm. */
  readonly ball: number;
  /** Pitch-diameter clearance of every engagement, mm. */
  readonly clearance: number;
  /** Young’s modulus, MPa, and Poisson's ratio of every part. */
  readonly E: number;
  readonly nu: number;
}

export interface LoadedWay {
  readonly name: WayName;
  /** Along the screw that makes the motion, N; of a pair, along both. */
  readonly push: Result<number>;
  /** That turns it against the load, N·mm. */
  readonly torque: Result<number>;
  readonly chain: Result<Chain>;
  /** What the tip gives under the load, mm. */
  readonly give: Result<number>;
  /** What the tip moves by the play of the threads where the load changes its side, mm. */
  readonly play: number;
}

/** Torque and stiffness of each way of `sameMotion`, at full stroke. One that has no answer says why; the others stand. */
export const waysUnderLoad = (ways: readonly Way[], given: LoadCase): Result<readonly LoadedWay[]> => {
  const refusal =
    outOfBounds('F', given.load) ??
    outOfBounds('mu', given.mu) ??
    outOfBounds('t_b', given.bar) ??
    outOfBounds('b_l', given.shortArm) ??
    outOfBounds('R', given.ball) ??
    outOfBounds('E_l', given.E) ??
    outOfBounds('nu_1', given.nu);
  if (refusal) return refusal;
  const play = axialPlay.of({ c: mm(given.clearance) });
  if (!play.ok) return play;
  if (!(given.load > 0)) return bad('ways-without-load', {}, 'F');
  return good(
    ways.map((way) => {
      const loaded = LOADED[way.name](way, given);
      const share =
        way.name === 'plain screw' ? 1 : way.name === 'differential screw' ? 2 : way.perTurn / given.drive.L;
      return {
        name: way.name,
        ...loaded,
        play: share * play.value.j,
        give: one(loaded.chain, ({ stiffness }) => given.load / stiffness),
      };
    }),
  );
};

type Loaded = Omit<LoadedWay, 'name' | 'give' | 'play'>;

const LOADED: Readonly<Record<WayName, (way: Way, given: LoadCase) => Loaded>> = {
  'plain screw': (way, given) => ({
    push: good(given.load),
    torque: turning({ ...given.plain, L: way.perTurn }, given.load, given.mu),
    chain: inSeries([
      ['its shank', shank(given.plain.d3, way.height, given)],
      ['its thread', engaged(given.plain, given)],
    ]),
  }),
  wedge: (way, given) => {
    const slope = way.perTurn / given.drive.L;
    const push = one(
      wedgePush.of({ F: newtons(given.load), phi_w: rad(Math.atan(slope)), mu: plain(given.mu) }),
      ({ F_d }) => F_d,
    );
    return {
      push,
      torque: turningBy(push, given),
      chain: inSeries([
        ['the wedge, squeezed', good((given.E * given.bar ** 2) / way.height)],
        ['the drive screw', felt(shank(given.drive.d3, way.length, given), slope)],
        ['the thread of the drive', felt(engaged(given.drive, given), slope)],
      ]),
    };
  },
  lever: (way, given) => {
    const slope = way.perTurn / given.drive.L;
    const arms = { b_l: mm(given.shortArm), a_l: mm(way.length) };
    const push = one(leverPush.of({ F: newtons(given.load), ...arms }), ({ F_d }) => F_d);
    // With equal arms the load stands over the screw: the bar neither bends nor rests on its pivot.
    const stepped = slope < 1 - 1e-6;
    const pivot = leverPivot.of({ F: newtons(given.load), m_r: plain(slope) });
    if (!pivot.ok) return { push, torque: turningBy(push, given), chain: pivot };
    const { F_v, m_v } = pivot.value;
    return {
      push,
      torque: turningBy(push, given),
      chain: inSeries([
        ...(stepped
          ? ([
              ['its pivot', felt(pressed(F_v, given.ball, given), m_v)],
              [
                'the bar, bent',
                one(leverBending.of({ E_l: megapascals(given.E), t_b: mm(given.bar), ...arms }), ({ k_v }) => k_v),
              ],
            ] as const)
          : []),
        ['the drive screw', felt(shank(given.drive.d3, way.height, given), slope)],
        ['the thread of the drive', felt(engaged(given.drive, given), slope)],
      ]),
    };
  },
  'squeezed balls': (way, given) => {
    const m = way.perTurn / given.drive.L;
    const push = one(ballPush.of({ F: newtons(given.load), m_t: plain(m) }), ({ F_d }) => F_d);
    return {
      push,
      torque: turningBy(push, given),
      chain: inSeries([
        ['where the balls touch each other', betweenBalls(way, given)],
        ['where they stand', one(pressed(given.load / 3, given.ball, given), (k) => 3 * k)],
        ['the drive screw', felt(shank(given.drive.d3, way.length, given), m)],
        ['the thread of the drive', felt(engaged(given.drive, given), m)],
      ]),
    };
  },
  'differential screw': (way, given) => ({
    push: good(given.load),
    torque: one(
      pairEffort({ A: rubbing(given.A, given.mu), C: rubbing(given.C, given.mu), load: given.load }),
      ({ against }) => against.torque,
    ),
    chain: inSeries([
      ['the shank of thread A', shank(given.A.d3, way.height / 2, given)],
      ['the shank of thread C', shank(given.C.d3, way.height / 2, given)],
      ['thread A', engaged(given.A, given)],
      ['thread C', engaged(given.C, given)],
    ]),
  }),
};

const one = <T>(result: Result<T>, pick: (value: T) => number): Result<number> =>
  result.ok ? good(pick(result.value)) : result;

const rubbing = ({ h, L, d2 }: LoadedScrew, mu: number): EffortThread => ({ h, L, d2, mu });

const turning = (screw: LoadedScrew, load: number, mu: number): Result<number> =>
  one(plainEffort(rubbing(screw, mu), load), ({ against }) => against);

const turningBy = (push: Result<number>, given: LoadCase): Result<number> =>
  push.ok ? turning(given.drive, push.value, given.mu) : push;

const shank = (d3: number, length: number, { E }: LoadCase): Result<number> =>
  one(shankStiffness.of({ E_l: megapascals(E), d_3: mm(d3), l: mm(length) }), ({ k_l }) => k_l);

const engaged = ({ d, d3 }: LoadedScrew, { E }: LoadCase): Result<number> =>
  one(threadStiffness.of({ E_l: megapascals(E), d: mm(d), d_3: mm(d3) }), ({ k_e }) => k_e);

const felt = (stiffness: Result<number>, share: number): Result<number> =>
  stiffness.ok
    ? one(feltAtTip.of({ k_1: newtonsPerMillimetre(stiffness.value), m_r: plain(share) }), ({ k_t }) => k_t)
    : stiffness;

/** A ball of radius R pressed on a flat of the same material: force over approach, N/mm. */
const pressed = (force: number, R: number, { E, nu }: LoadCase): Result<number> => {
  const modulus = contactModulus.of({
    E_1: megapascals(E),
    E_2: megapascals(E),
    nu_1: plain(nu),
    nu_2: plain(nu),
  });
  return modulus.ok
    ? one(ballOnFlat.of({ F: newtons(force), R: mm(R), E_s: modulus.value.E_s }), ({ delta }) => force / delta)
    : modulus;
};

/** The three contacts beneath the top ball along the load; two equal balls touch like one of half the radius on a flat. */
const betweenBalls = (way: Way, given: LoadCase): Result<number> => {
  const spread = way.length / 2 - given.ball;
  const r = mm(given.ball);
  const lift = ballLift.of({ r_t: r, R_t: r, s_t: mm(Math.sqrt(3) * spread) });
  if (!lift.ok) return lift;
  const { h_t } = lift.value;
  const push = pushBetweenBalls.of({ F: newtons(given.load), r_t: r, R_t: r, h_t });
  if (!push.ok) return push;
  const cosine = h_t / (2 * given.ball);
  return one(pressed(push.value.F_n, given.ball / 2, given), (k) => 3 * k * cosine ** 2);
};

const inSeries = (parts: readonly (readonly [string, Result<number>])[]): Result<Chain> => {
  const known: StiffPart[] = [];
  for (const [name, stiffness] of parts) {
    if (!stiffness.ok) return stiffness;
    known.push({ name, stiffness: stiffness.value });
  }
  return seriesStiffness(known);
};
