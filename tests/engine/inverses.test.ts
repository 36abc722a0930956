/**
 * Relations that are another one solved for one of its inputs. Each stays because a chapter gives it to its reader as a formula of their own, with the
 * reason beside it, and each is held against finding the same number from that other relation. Whatever else is asked backwards is found so
 * (numerics/invert.ts), and has no relation.
 */
import { describe, expect, it } from 'vitest';
import { type Bounds, invert, type Law, relationNamed, type SymbolName } from '../../widgets/engine/index.ts';
import { pointAt } from '../../widgets/site/points.ts';
import { howMany } from '../support/deep.ts';

type Point = Readonly<Record<string, number>>;

/** The output of a relation there, by the name of the relation; undefined where it refuses. */
const of = (name: string, output: string, inputs: Point): number | undefined => {
  const result = relationNamed(name)?.of(inputs);
  return result?.ok ? (result.value as Point)[output] : undefined;
};
const part = (p: Point, name: string): number => p[name] ?? Number.NaN;

interface Inverse {
  readonly relation: string;
  readonly gives: SymbolName;
  /** The relation that it solves, and what that is to give. */
  readonly solves: string;
  readonly law: (p: Point) => Law;
  readonly wish: (p: Point) => number | undefined;
  readonly bounds: (p: Point, y: number) => Bounds;
  readonly because: string;
}

/** Wide about the answer, so that it is found and not told. */
const about = (_: Point, y: number): Bounds => ({ min: Math.min(y / 50, y * 50, 0), max: Math.max(y / 50, y * 50, 0) });
const either = (_: Point, y: number): Bounds => ({ min: -20 * Math.abs(y) - 1, max: 20 * Math.abs(y) + 1 });

const INVERSES: readonly Inverse[] = [
  {
    relation: 'share-of-thread',
    gives: 'q_t',
    solves: 'tap-drill',
    law: (p) => (q_t) => of('tap-drill', 'd_t', { ...p, q_t }),
    wish: (p) => p.d_t,
    bounds: () => ({ min: 0, max: 1.2 }),
    because: 'what a drill at hand leaves of the thread is judged in the chapter on classes, as its own formula',
  },
  {
    relation: 'pitch-diameter-over-wires',
    gives: 'd_2',
    solves: 'over-wires',
    law: (p) => (d_2) => of('over-wires', 'M_w', { ...p, d_2 }),
    wish: (p) => p.M_w,
    bounds: about,
    because: 'who measures over wires reads M and wants the pitch diameter: the formula of every chart',
  },
  {
    relation: 'turns-for',
    gives: 'n',
    solves: 'net-motion',
    law: (p) => (n) => of('net-motion', 'z_c', { ...p, n }),
    wish: (p) => p.w,
    bounds: either,
    because: 'derived in the chapter on three feet, with its sense, and turned by at every foot',
  },
  {
    relation: 'wanted-net-lead',
    gives: 'Delta_w',
    solves: 'per-step',
    law: (p) => (Delta) => of('per-step', 's', { ...p, Delta }),
    wish: (p) => p.s_w,
    bounds: about,
    because: 'derived where a pair is looked for: what the net lead has to be',
  },
  {
    relation: 'lead-for-angle',
    gives: 'Delta_w',
    solves: 'per-angle',
    law: (p) => (Delta) => of('per-angle', 's', { Delta, theta: part(p, 'theta_h') }),
    wish: (p) => p.s_h,
    bounds: about,
    because: 'derived where one asks whether a pair is needed at all',
  },
  {
    relation: 'long-arm-for',
    gives: 'a_l',
    solves: 'lever-motion',
    law: (p) => (a_l) => of('lever-motion', 'z', { ...p, z_l: 1, a_l }),
    wish: (p) => p.m_r,
    bounds: about,
    because: 'the size of a lever is what the chapter on other ways is asked for',
  },
  {
    relation: 'wedge-for',
    gives: 'phi_w',
    solves: 'wedge-rise',
    law: () => (phi_w) => of('wedge-rise', 'z', { x_w: 1, phi_w }),
    wish: (p) => p.m_r,
    bounds: () => ({ min: 0, max: Math.PI / 3 }),
    because: 'the angle of a wedge is what the chapter on other ways is asked for',
  },
  {
    relation: 'friction-read',
    gives: 'mu',
    solves: 'friction-angle and raising-torque',
    law: (p) => (mu) =>
      of('raising-torque', 'M_r', {
        ...p,
        rho: of('friction-angle', 'rho', { mu, beta_f: Math.PI / 6 }) ?? Number.NaN,
        zeta: of('lead-angle', 'lambda', p) ?? Number.NaN,
      }),
    wish: (p) => p.M_r,
    bounds: () => ({ min: 0, max: 1 }),
    because: 'a friction of one’s own is read off a torque by it, in the chapter on the tip',
  },
  {
    relation: 'preload-for-life',
    gives: 'F_0',
    solves: 'spring-force and retained-force',
    law: (p) => (F_0) =>
      of('retained-force', 'F_t', { ...p, F_0: of('spring-force', 'F_s', { ...p, F_0 }) ?? Number.NaN }),
    wish: (p) => p.F_p,
    bounds: () => ({ min: 0, max: 1e5 }),
    because: 'derived in the chapter on how strong a spring must be',
  },
  {
    relation: 'hole-offset',
    gives: 'o_h',
    solves: 'drawn-hole',
    law: (p) => (o_h) => of('drawn-hole', 'w_d', { ...p, c_n: 0, o_h }),
    wish: (p) => p.w_d,
    bounds: either,
    because: 'the printer’s own offset is read off its ladder by it',
  },
  {
    relation: 'outside-offset',
    gives: 'o_u',
    solves: 'drawn-outside',
    law: (p) => (o_u) => of('drawn-outside', 'w_d', { w_n: part(p, 'w_p'), c_n: 0, o_u }),
    wish: (p) => p.w_d,
    bounds: either,
    because: 'the printer’s own offset is read off a caliper by it',
  },
  {
    relation: 'snap-arm',
    gives: 'l_a',
    solves: 'snap-strain',
    law: (p) => (l_a) => of('snap-strain', 'eps_f', { ...p, l_a }),
    wish: (p) => p.eps_m,
    bounds: about,
    because: 'a clip is drawn by its arm, so the chapter on parts that hold gives the least',
  },
  {
    relation: 'thickest-coat',
    gives: 't_zm',
    solves: 'play-after-coat',
    law: (p) => (t_z) => of('play-after-coat', 'j', { ...p, t_z }),
    wish: () => 0,
    bounds: () => ({ min: 0, max: 0.5 }),
    because: 'what a plater is told: the chapter on play gives it as its own',
  },
  {
    relation: 'most-periodic',
    gives: 'a_m',
    solves: 'joint-slope and least-rate',
    law: (p) => (a_p) => of('least-rate', 'v_min', { ...p, v_p: of('joint-slope', 'v_p', { a_p }) ?? Number.NaN }),
    wish: () => 0,
    bounds: () => ({ min: 0, max: 1 }),
    because: 'how much wave a pair bears is what the chapter on periodic error ends in',
  },
  {
    relation: 'two-reading-lead',
    gives: 'Delta_m',
    solves: 'net-motion',
    law: (p) => (Delta) => of('net-motion', 'z_c', { n: part(p, 'n_2') - part(p, 'n_1'), Delta }),
    wish: (p) => part(p, 'z_2') - part(p, 'z_1'),
    bounds: either,
    because: 'the first formula of calibration: a lead from two readings',
  },
  {
    relation: 'rounding-error',
    gives: 'eps',
    solves: 'true-net-lead',
    law: (p) => (eps) => of('true-net-lead', 'Delta_e', { ...p, eps }),
    wish: (p) => p.Delta_r,
    bounds: either,
    because: 'the chapter on rounding asks for the share that is lost',
  },
];

/** A point that both relations take is rare for some: so many are tried. */
const TRIED = 4000;

describe('a relation that is another solved', () => {
  for (const inverse of INVERSES)
    it(`${inverse.relation} is ${inverse.solves} for ${inverse.gives}: ${inverse.because}`, () => {
      const { takes } = relationNamed(inverse.relation) ?? { takes: [] };
      const wanted = howMany(5, 300);
      let checked = 0;
      for (let i = 0; i < TRIED && checked < wanted; i++) {
        const p = pointAt(takes, i);
        const y = of(inverse.relation, inverse.gives, p);
        const wish = inverse.wish(p);
        if (y === undefined || y === 0 || wish === undefined) continue;
        const law = inverse.law(p);
        // Not all that the one takes does the other: a torque may ask for more friction than there is.
        if (law(y) === undefined) continue;
        const bounds = inverse.bounds(p, y);
        if (y < bounds.min || y > bounds.max) continue;
        checked++;
        const { answers } = invert(law, wish, bounds);
        const off = Math.min(...answers.map(({ x }) => Math.abs(x - y)));
        expect(off, `${JSON.stringify(p)}: ${y}`).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(y), 1e-6));
      }
      expect(checked).toBeGreaterThan(3);
    });

  it('counts divisions as per-step divides a turn: for a division that goes into it, both give the count', () => {
    for (const k of [6, 12, 50, 100, 360]) {
      const v = 0.0875 / k;
      const { answers } = invert((x) => of('per-step', 's', { Delta: 0.0875, k: x }), v, {
        min: 1,
        max: 10_000,
        whole: true,
      });
      expect(answers.map(({ x }) => x)).toEqual([k]);
      expect(of('divisions-for', 'm', { Delta: 0.0875, v })).toBeCloseTo(k, 9);
    }
  });
});
