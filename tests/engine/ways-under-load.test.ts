/**
 * The five ways under a load: torque held against the work it does, stiffness against free bodies and a beam integrated
 * by hand, and the reader’s prices.
 */

import { describe, expect, it } from 'vitest';
import {
  ballLift,
  ballPush,
  feltAtTip,
  type LoadCase,
  leadForAngle,
  leverBending,
  leverPivot,
  leverPush,
  longArmFor,
  megapascals,
  mm,
  newtons,
  newtonsPerMillimetre,
  plain,
  pushBetweenBalls,
  rad,
  sameMotion,
  stepDown,
  type WayName,
  waysUnderLoad,
  wedgeFor,
  wedgePush,
} from '../../widgets/engine/index.ts';
import { bad } from '../../widgets/engine/kernel/result.ts';
import { readWayPrices } from '../../widgets/input/way-prices.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const screw = (d: number, P: number) => ({
  h: 1 as const,
  L: P,
  d,
  d2: d - 0.6495190528 * P,
  d3: d - 1.2268693219 * P,
});

const SHOP = {
  finestLead: 0.254,
  driveLead: 1,
  engagement: 8,
  pair: { A: 1.5, C: 1.5875 },
  shortArm: 5,
  seat: 8,
  ball: 5,
};
const WANTED = { resolution: 0.0004, stroke: 0.5, height: 40, hand: (1.5 * Math.PI) / 180 };
const CASE: LoadCase = {
  load: 50,
  mu: 0.15,
  plain: screw(6.35, 0.254),
  drive: screw(6, 1),
  A: screw(10, 1.5),
  C: screw(9.525, 1.5875),
  bar: 8,
  shortArm: 5,
  ball: 5,
  E: 210000,
  nu: 0.3,
  clearance: 0.1,
};

const ways = () => valueIn(sameMotion(WANTED, SHOP));
const under = (given: Partial<LoadCase> = {}) => valueIn(waysUnderLoad(ways(), { ...CASE, ...given }));
const named = (name: WayName, given: Partial<LoadCase> = {}) => {
  const found = under(given).find((w) => w.name === name);
  if (!found) throw new Error(name);
  return found;
};

describe('what turns each way', () => {
  it('is F times the motion a turn over 2π where nothing rubs, however the motion is made', () => {
    for (const [i, way] of ways().entries())
      expect(valueIn(under({ mu: 0 })[i]?.torque ?? bad('equal-leads-no-gain', {})), way.name).toBeCloseTo(
        (50 * way.perTurn) / (2 * Math.PI),
        9,
      );
  });

  it('is that with any drive screw, also one of M5×0.8', () => {
    const fine = valueIn(sameMotion(WANTED, { ...SHOP, driveLead: 0.8 }));
    const loaded = valueIn(waysUnderLoad(fine, { ...CASE, mu: 0, drive: screw(5, 0.8) }));
    for (const [i, way] of fine.entries())
      expect(valueIn(loaded[i]?.torque ?? bad('equal-leads-no-gain', {})), way.name).toBeCloseTo(
        (50 * way.perTurn) / (2 * Math.PI),
        9,
      );
  });

  it('has a wedge push found from two free bodies: follower on the slope and in its guide, wedge on the base', () => {
    for (const [slope, mu] of [
      [0.096, 0.15],
      [0.5, 0.05],
      [1, 0.3],
      [0.2, 0],
    ] as const) {
      // Unit vectors of the slope; N across it, µN along it down the slope on the follower, which rises.
      const c = 1 / Math.hypot(1, slope);
      const s = slope * c;
      // The guide takes the level part of the push, and rubs against the rise.
      const N = 50 / (c - mu * s - mu * (s + mu * c));
      const onWedge = N * s + mu * N * c;
      const base = N * c - mu * N * s;
      expect(base).toBeCloseTo(50 + mu * onWedge, 9);
      expect(
        valueIn(wedgePush.of({ F: newtons(50), phi_w: rad(Math.atan(slope)), mu: plain(mu) })).F_d,
        `${slope} ${mu}`,
      ).toBeCloseTo(onWedge + mu * base, 9);
    }
    expect(reasonIn(wedgePush.of({ F: newtons(50), phi_w: rad(Math.PI / 4), mu: plain(1) }))).toContain(
      'the wedge jams',
    );
  });

  it('is lightest for the lever and heaviest for the pair in the case of the chapter', () => {
    const torques = under().map((w) => valueIn(w.torque));
    // Worked by hand: M6×1, d2 5.3505, λ 3.405°, ρ 9.826° gives 0.6290 N·mm a newton of push.
    expect(torques[2]).toBeCloseTo(4.8 * 0.629, 2);
    expect(torques[4]).toBeGreaterThan(torques[0] ?? Number.NaN);
    expect(Math.min(...torques)).toBe(torques[2]);
    expect(Math.max(...torques)).toBe(torques[4]);
  });

  it('pushes balls and levers by moments and by equal work', () => {
    expect(valueIn(leverPush.of({ F: newtons(50), b_l: mm(5), a_l: mm(50) })).F_d).toBeCloseTo(5, 12);
    expect(valueIn(ballPush.of({ F: newtons(50), m_t: plain(0.7) })).F_d).toBeCloseTo(35, 12);
    const { h_t, m_t } = valueIn(ballLift.of({ r_t: mm(5), R_t: mm(5), s_t: mm(11) }));
    const { F_n } = valueIn(pushBetweenBalls.of({ F: newtons(60), r_t: mm(5), R_t: mm(5), h_t }));
    // Upright parts of three pushes carry the load; lying parts, once round, are what the spread must hold.
    expect(3 * F_n * (h_t / 10)).toBeCloseTo(60, 9);
    expect(3 * F_n * (11 / Math.sqrt(3) / 10)).toBeCloseTo(60 * m_t, 9);
  });
});

describe('what gives', () => {
  it('bends a lever as a beam integrated in small pieces does', () => {
    const [E, t, b, a, F] = [210000, 8, 5, 52, 100];
    const I = t ** 4 / 12;
    // Moment along a bar held at both ends with F at b; the give at b by the work of its bending, ∫M²/(2EI) = ½Fδ.
    let work = 0;
    const n = 20000;
    for (let i = 0; i < n; i++) {
      const x = ((i + 0.5) * a) / n;
      const M = x < b ? ((F * (a - b)) / a) * x : ((F * b) / a) * (a - x);
      work += ((M * M) / (2 * E * I)) * (a / n);
    }
    const { k_v } = valueIn(leverBending.of({ E_l: megapascals(E), t_b: mm(t), b_l: mm(b), a_l: mm(a) }));
    expect(k_v / (F ** 2 / (2 * work))).toBeCloseTo(1, 6);
    expect(reasonIn(leverBending.of({ E_l: megapascals(E), t_b: mm(t), b_l: mm(5), a_l: mm(5) }))).toContain(
      'short arm below the long one',
    );
  });

  it('rests on its pivot with what the screw does not carry, and moves the tip with the pivot by the way that is left to the screw', () => {
    // By hand: 50 N stands 5 mm from the pivot of a bar of 50 mm, so moments about the screw give 50·45/50 = 45 N; a pivot
    // that sinks by 1 µm turns the bar about its screw, and the load, 45 mm from there, sinks by 45/50 µm.
    const { F_v, m_v } = valueIn(leverPivot.of({ F: newtons(50), m_r: plain(5 / 50) }));
    expect(F_v).toBeCloseTo(45, 12);
    expect(m_v).toBeCloseTo(0.9, 12);
    expect(reasonIn(leverPivot.of({ F: newtons(50), m_r: plain(1.2) }))).toContain('at most 1');
  });

  it('is felt through a step-down by its square', () => {
    const tip = 0.1 * ((0.1 * 50) / 2000);
    expect(valueIn(feltAtTip.of({ k_1: newtonsPerMillimetre(2000), m_r: plain(0.1) })).k_t).toBeCloseTo(50 / tip, 6);
  });

  it('names the softest part: contacts of balls and pivot, shanks of screws', () => {
    const softest = under().map((w) => valueIn(w.chain).softest);
    expect(softest).toEqual([
      'its shank',
      'the wedge, squeezed',
      'its pivot',
      'where the balls touch each other',
      'the shank of thread C',
    ]);
    const stiff = under().map((w) => valueIn(w.chain).stiffness);
    // An engaged thread by VDI 2230 (from memory): 0.5 d on its core and 0.33 d on its whole.
    const thread = (d: number, d3: number) =>
      210_000 / ((0.5 * d) / (0.7854 * d3 ** 2) + (0.33 * d) / (0.7854 * d ** 2));
    // Shank of the plain screw by hand: 210000 × π/4 × 6.0384² / 8.5.
    expect((stiff[0] ?? 0) * (1 / 707500 + 1 / thread(6.35, 6.0384))).toBeCloseTo(1, 3);
    // The pair by hand: half of 25.0714 mm on each core, 8.1597 mm and 7.5773 mm, 876.0 and 755.4 N/µm.
    expect((stiff[4] ?? 0) * (1 / 405600 + 1 / thread(10, 8.1597) + 1 / thread(9.525, 7.5773))).toBeCloseTo(1, 3);
    // Of the drive, m² of its compliance: m is 0.096.
    const drive = valueIn(named('wedge').chain);
    expect((drive.shares.at(-1)?.share ?? 0) / drive.stiffness / (0.096 ** 2 / thread(6, 4.7731))).toBeCloseTo(1, 3);
    // The wedge squeezed, 8 mm square and 0.5 + 8 × 0.096 mm high: 210000 × 64/1.268.
    const wedge = valueIn(named('wedge').chain);
    expect(wedge.stiffness / (wedge.shares[0]?.share ?? Number.NaN) / 10599369).toBeCloseTo(1, 6);
    for (const way of under()) expect(valueIn(way.give) * valueIn(way.chain).stiffness).toBeCloseTo(50, 9);
  });

  it('lets balls and pivot give as far as their approach says under the whole load', () => {
    const E = 210000 / (2 * (1 - 0.3 ** 2));
    const approach = (N: number, R: number) => Math.cbrt((9 * N * N) / (16 * R * E * E));
    const part = (name: WayName, which: number): number => {
      const { stiffness, shares } = valueIn(named(name).chain);
      return stiffness / (shares[which]?.share ?? Number.NaN);
    };
    // The top ball comes down by the approach over the cosine; each of three carries F/(3 cos).
    const R = 5;
    const h = 2 * R * Math.sqrt(2 / 3) - 0.5;
    const cosine = h / (2 * R);
    const sink = (F: number) => approach(F / (3 * cosine), R / 2) / cosine;
    expect(part('squeezed balls', 0) / (50 / sink(50))).toBeCloseTo(1, 9);
    const stand = (F: number) => approach(F / 3, R);
    expect(part('squeezed balls', 1) / (50 / stand(50))).toBeCloseTo(1, 9);
    // The pivot carries what the screw does not, and the tip sees the same share of its give.
    const share = 1 - 0.096;
    const tip = (F: number) => share * approach(share * F, R);
    expect(part('lever', 0) / (50 / tip(50))).toBeCloseTo(1, 9);
  });

  it('gets stiffer with load only where balls touch', () => {
    const at = (name: WayName, load: number) => valueIn(named(name, { load }).chain).stiffness;
    for (const name of ['plain screw', 'wedge', 'differential screw'] as const)
      expect(at(name, 400)).toBeCloseTo(at(name, 50), 6);
    // Hertz alone goes as the cube root, 8 times the load, twice the stiffness; the drive screw, hardly stepped down, stays.
    const grown = at('squeezed balls', 400) / at('squeezed balls', 50);
    expect(grown).toBeGreaterThan(1.8);
    expect(grown).toBeLessThan(2);
    expect(at('lever', 400)).toBeGreaterThan(at('lever', 50));
  });
});

describe('play at the tip', () => {
  it('is that of one engagement, of two in a pair, and a share of one where the drive is stepped down', () => {
    const j = 0.1 * Math.tan(Math.PI / 6);
    const of = (name: WayName) => named(name).play / j;
    expect(['plain screw', 'differential screw', 'wedge', 'lever'].map((name) => of(name as WayName))).toEqual(
      [1, 2, 0.096, 0.096].map((share) => expect.closeTo(share, 9)),
    );
    expect(reasonIn(waysUnderLoad(ways(), { ...CASE, clearance: -0.01 }))).not.toBe('');
  });
});

describe('waysUnderLoad', () => {
  it('refuses no load, and lets four ways stand where one has no answer', () => {
    expect(reasonIn(waysUnderLoad(ways(), { ...CASE, load: 0 }))).toContain('no effort to compare');
    for (const [wrong, field] of [
      [{ load: 1.01e5 }, 'F'],
      [{ mu: 1.01 }, 'mu'],
      [{ bar: 0 }, 't_b'],
      [{ shortArm: 0 }, 'b_l'],
      [{ ball: 0 }, 'R'],
      [{ E: 0 }, 'E_l'],
      [{ nu: 0.51 }, 'nu_1'],
    ] as const)
      expect(waysUnderLoad(ways(), { ...CASE, ...wrong }), field).toMatchObject({ ok: false, field });
    const steep = valueIn(sameMotion({ ...WANTED, resolution: 0.01 }, SHOP));
    const loaded = valueIn(waysUnderLoad(steep, { ...CASE, mu: 1 }));
    expect(loaded.filter((w) => w.torque.ok).map((w) => w.name)).not.toContain('wedge');
    expect(loaded.filter((w) => w.torque.ok).length).toBeGreaterThanOrEqual(3);
  });
});

describe('a lever with equal arms', () => {
  it('is its drive screw alone: nothing bends and nothing rests on the pivot', () => {
    // 10 µm for 1.5° is 2.4 mm a turn, more than the drive screw’s 1 mm.
    const coarse = valueIn(sameMotion({ ...WANTED, resolution: 0.01 }, SHOP));
    const lever = valueIn(waysUnderLoad(coarse, CASE)).find((w) => w.name === 'lever');
    const chain = valueIn(lever?.chain ?? bad('equal-leads-no-gain', {}));
    expect(chain.shares.map(({ name }) => name)).toEqual(['the drive screw', 'the thread of the drive']);
    // Its height is 0.5 + 8 mm on a core of 6 − 1.22687 mm.
    expect(
      chain.stiffness / (chain.shares[0]?.share ?? 0) / ((210000 * Math.PI * 4.7731306781 ** 2) / 4 / 8.5),
    ).toBeCloseTo(1, 9);
    expect(valueIn(lever?.push ?? bad('equal-leads-no-gain', {}))).toBeCloseTo(50, 12);
  });
});

describe('push between balls', () => {
  it('is a third of the load each where the ball stands on top, and has no answer below or above', () => {
    const at = (h_t: number) => pushBetweenBalls.of({ F: newtons(60), r_t: mm(5), R_t: mm(5), h_t: mm(h_t) });
    expect(valueIn(at(10)).F_n).toBeCloseTo(20, 12);
    for (const h of [0, 1e-6, 10.001]) expect(reasonIn(at(h)), `${h}`).toContain('stands above the others');
  });
});

describe('from the motion wanted to wedge and lever', () => {
  it('goes by proportion: 0.4 µm for 1.5° is 96 µm a turn, 1 in 10.4 of an M6×1', () => {
    const { Delta_w } = valueIn(leadForAngle.of({ s_h: mm(0.0004), theta_h: rad((1.5 * Math.PI) / 180) }));
    expect(Delta_w).toBeCloseTo(0.096, 12);
    const { m_r } = valueIn(stepDown.of({ Delta_w, L: mm(1) }));
    expect(Math.tan(valueIn(wedgeFor.of({ m_r })).phi_w)).toBeCloseTo(0.096, 12);
    expect(valueIn(longArmFor.of({ b_l: mm(5), m_r })).a_l).toBeCloseTo(52.083, 3);
    expect(reasonIn(leadForAngle.of({ s_h: mm(0.0004), theta_h: rad(0) }))).toContain('above 0°');
  });
});

describe('readWayPrices', () => {
  it('adds rows of one way, and keeps what has no price apart from what costs nothing', () => {
    const read = valueIn(readWayPrices('Plain screw: 1 × 46; wedge: 2 × 9; wedge: 3; lever: 0\nsqueezed balls'));
    expect(read.prices).toEqual({ 'plain screw': 46, wedge: 21, lever: 0 });
    expect(read.missing).toEqual(['squeezed balls', 'differential screw']);
    expect(read.unknown).toEqual([]);
  });

  it('takes half a price as none, names what it doesn’t know, and refuses what is no price', () => {
    const read = valueIn(readWayPrices('wedge: 2 × 9; wedge; gear: 1 × 5'));
    expect(read.missing).toContain('wedge');
    expect(read.unknown).toEqual(['gear']);
    expect(valueIn(readWayPrices('')).missing.length).toBe(5);
    expect(reasonIn(readWayPrices('wedge: -3'))).toContain('“wedge”: read a price of');
    expect(reasonIn(readWayPrices('wedge: cheap'))).toContain('“wedge”:');
  });
});
