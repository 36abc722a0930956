/** Periodic errors of a pair turned: against the simulator, finite differences and a search over fine samples. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  backwardRun,
  type DrunkenPair,
  jointAmplitude,
  jointSlope,
  leastRate,
  localRate,
  mm,
  mostPeriodic,
  NEARLY_STANDS,
  netMotion,
  newtons,
  periodicError,
  periodicSlope,
  positionError,
  simulate,
  slowStretches,
  trueNetLead,
  turns,
  waveAllRound,
  waveLean,
  waveThrough,
} from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const micrometres = (max: number) => fc.integer({ min: 0, max }).map((i) => mm(i / 1e4));
const phase = fc.integer({ min: -100, max: 100 }).map((i) => turns(i / 100));
const lead = fc.integer({ min: 20, max: 2000 }).map((i) => i / 1e4);
const pair: fc.Arbitrary<DrunkenPair> = fc
  .record({
    size: lead,
    sense: fc.constantFrom(1, -1),
    a_A: micrometres(150),
    phi_A: phase,
    a_C: micrometres(150),
    phi_C: phase,
  })
  .map(({ size, sense, ...rest }) => ({ ...rest, Delta: mm(sense * size) }));
const anyTurns = fc.integer({ min: -3000, max: 3000 }).map((i) => turns(i / 1000));

const motionAt = (p: DrunkenPair, n: number): number =>
  valueIn(netMotion.of({ n: turns(n), Delta: p.Delta })).z_c + valueIn(periodicError.of({ n: turns(n), ...p })).e_p;
const rateAt = (p: DrunkenPair, n: number): number => valueIn(localRate.of({ n: turns(n), ...p })).v_n;

describe('periodic-error and local-rate', () => {
  it('with the net motion, are where the simulator puts a seated pair, at any turn and phase, either sense', () => {
    fc.assert(
      fc.property(pair, anyTurns, (p, n) => {
        const none = mm(0);
        const run = simulate(
          {
            A: { h: 1, L: mm(1), play: none, periodic: p.a_A, phase: p.phi_A },
            C: { h: 1, L: mm(1 + p.Delta), play: none, periodic: p.a_C, phase: p.phi_C },
            loads: { turned: newtons(0), carried: newtons(20) },
            drags: { turned: newtons(0), carried: newtons(0) },
          },
          [{ kind: 'turn', turns: n }],
        );
        expect(valueIn(run).carried[1]).toBeCloseTo(motionAt(p, n), 9);
      }),
    );
  });

  it('the rate is the slope of the motion', () => {
    fc.assert(
      fc.property(pair, anyTurns, (p, n) => {
        const step = 1e-5;
        expect(rateAt(p, n)).toBeCloseTo((motionAt(p, n + step) - motionAt(p, n - step)) / (2 * step), 6);
      }),
    );
  });

  it('come back after every whole turn', () => {
    fc.assert(
      fc.property(pair, anyTurns, (p, n) => {
        expect(motionAt(p, n + 1) - motionAt(p, n)).toBeCloseTo(p.Delta, 9);
        expect(rateAt(p, n + 1)).toBeCloseTo(rateAt(p, n), 9);
      }),
    );
  });

  it('M10×1.5 with 3/8-16, 4 and 3 µm in phase: a quarter turn adds 7 µm, the start runs at 131.5 µm a turn', () => {
    // By hand: 87.5 + 2π·7 = 131.48; a quarter turn on, the sines stand at 4 + 3.
    const p = { Delta: mm(0.0875), a_A: mm(0.004), phi_A: turns(0), a_C: mm(0.003), phi_C: turns(0) };
    expect(valueIn(periodicError.of({ n: turns(0.25), ...p })).e_p).toBeCloseTo(0.007, 9);
    expect(rateAt(p, 0)).toBeCloseTo(0.13148, 5);
    expect(rateAt(p, 0.25)).toBeCloseTo(0.0875, 9);
  });
});

describe('joint-amplitude, joint-slope and most-periodic', () => {
  it('the joint slope is the most by which the rate leaves the net lead, and never above the slope at the worst phase', () => {
    fc.assert(
      fc.property(pair, (p) => {
        const { a_p } = valueIn(jointAmplitude.of(p));
        const { v_p } = valueIn(jointSlope.of({ a_p }));
        let most = 0;
        for (let n = 0; n < 1; n += 1 / 720) most = Math.max(most, Math.abs(rateAt(p, n) - p.Delta));
        expect(most).toBeLessThanOrEqual(v_p + 1e-12);
        expect(most).toBeGreaterThanOrEqual(v_p * (1 - 1e-5));
        expect(v_p).toBeLessThanOrEqual(valueIn(periodicSlope.of(p)).v_p + 1e-12);
      }),
      { numRuns: 50 },
    );
  });

  it('in phase the amplitudes add, half a turn apart they subtract, a quarter apart they add as the sides of a right angle', () => {
    const at = (phi: number) =>
      valueIn(jointAmplitude.of({ a_A: mm(0.004), a_C: mm(0.003), phi_A: turns(0.2), phi_C: turns(0.2 + phi) })).a_p;
    expect(at(0)).toBeCloseTo(0.007, 12);
    expect(at(0.5)).toBeCloseTo(0.001, 12);
    expect(at(0.25)).toBeCloseTo(0.005, 12);
  });

  it('the largest periodic error without standing still leaves a slowest rate of nought', () => {
    fc.assert(
      fc.property(pair, ({ Delta }) => {
        const { a_m } = valueIn(mostPeriodic.of({ Delta }));
        const { v_p } = valueIn(jointSlope.of({ a_p: a_m }));
        expect(valueIn(leastRate.of({ Delta, v_p })).v_min).toBeCloseTo(0, 12);
      }),
    );
  });
});

describe('backward-run and slowStretches', () => {
  it('one stretch of every turn runs backwards where the joint slope beats the net lead, and none where it does not', () => {
    fc.assert(
      fc.property(pair, (p) => {
        const { v_p } = valueIn(jointSlope.of(valueIn(jointAmplitude.of(p))));
        const found = valueIn(slowStretches(p, -2, 2));
        if (!(v_p > Math.abs(p.Delta))) expect(found).toEqual([]);
        else {
          const whole = found.filter((s) => s.from > -2 && s.to < 2);
          expect(whole.length).toBeGreaterThanOrEqual(3);
          const { z_b, q_b } = valueIn(backwardRun.of({ Delta: p.Delta, v_p }));
          for (const { from, to } of whole) {
            expect(to - from).toBeCloseTo(q_b, 9);
            expect(Math.abs(rateAt(p, from)) + Math.abs(rateAt(p, to))).toBeLessThan(1e-9);
            const back = (motionAt(p, from) - motionAt(p, to)) * Math.sign(p.Delta);
            expect(back).toBeCloseTo(z_b, 9);
          }
        }
      }),
    );
  });

  it('are exactly where the rate, along the net motion, is below the share of the net lead', () => {
    fc.assert(
      fc.property(pair, fc.constantFrom(0, NEARLY_STANDS, 0.7), (p, share) => {
        const found = valueIn(slowStretches(p, -1.3, 1.1, share));
        for (let n = -1.3; n <= 1.1; n += 0.00317) {
          const along = rateAt(p, n) * Math.sign(p.Delta) - share * Math.abs(p.Delta);
          if (Math.abs(along) < 1e-7) continue;
          expect(
            found.some((s) => s.from <= n && n <= s.to),
            `at ${n}`,
          ).toBe(along < 0);
        }
        for (const s of found) expect(s.from >= -1.3 && s.to <= 1.1).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('there is none in no turning at all, in the middle of a backward run too', () => {
    const p = { Delta: mm(0.05), a_A: mm(0.02), phi_A: turns(0), a_C: mm(0), phi_C: turns(0) };
    const [run] = valueIn(slowStretches(p, 0, 1));
    const middle = ((run?.from ?? Number.NaN) + (run?.to ?? Number.NaN)) / 2;
    expect(rateAt(p, middle)).toBeLessThan(0);
    expect(valueIn(slowStretches(p, middle, middle))).toEqual([]);
  });

  it('the Fine foot with half a micrometre on each thread runs back 75 nm over 15.5 % of every turn', () => {
    // M4×0.7 with 8-36: Δ = 25.4/36 − 0.7 = 1/180 mm. By hand: 2π = 6.2832 µm against 5.5556, arccos(0.88419) = 0.4860;
    // 0.4860/π = 15.5 %; (√(6.2832² − 5.5556²) − 5.5556 × 0.4860)/π = (2.9350 − 2.7002)/π = 0.0747 µm.
    const { z_b, q_b } = valueIn(backwardRun.of({ Delta: mm(1 / 180), v_p: mm(0.002 * Math.PI) }));
    expect(q_b).toBeCloseTo(0.155, 3);
    expect(z_b * 1000).toBeCloseTo(0.0747, 4);
  });

  it('just past standing still is as small as its series says, and never below nought', () => {
    for (const past of [1e-14, 1e-12, 1e-9, 1e-6, 1e-4]) {
      const Delta = mm(0.5);
      const v_p = mm(Delta * (1 + past));
      const half = Math.sqrt(2 * (v_p / Delta - 1));
      const { z_b, q_b } = valueIn(backwardRun.of({ Delta, v_p }));
      expect(z_b / ((Delta * half ** 3) / (3 * Math.PI)), `past by ${past}`).toBeCloseTo(1, 3);
      expect(q_b / (half / Math.PI), `past by ${past}`).toBeCloseTo(1, 3);
    }
    expect(valueIn(backwardRun.of({ Delta: mm(0), v_p: mm(1e-200) })).q_b).toBe(0.5);
    // Half the backward stretch as an angle, where the difference still has all its digits but four or five.
    for (const half of [0.03, 0.049, 0.051]) {
      const v_p = mm(0.5 / Math.cos(half));
      const { z_b } = valueIn(backwardRun.of({ Delta: mm(0.5), v_p }));
      expect(z_b / ((v_p * (Math.sin(half) - half * Math.cos(half))) / Math.PI), `${half}`).toBeCloseTo(1, 9);
    }
  });

  it('refuse a pair without net lead, turns the wrong way round, and a backward run without any periodic error', () => {
    const p = { Delta: mm(0), a_A: mm(0.001), phi_A: turns(0), a_C: mm(0), phi_C: turns(0) };
    expect(reasonIn(slowStretches(p, 0, 1))).toBe(
      'The two leads are equal, so there is no motion to be slower than: choose threads whose leads differ.',
    );
    expect(reasonIn(slowStretches({ ...p, Delta: mm(0.1) }, 1, 0))).toBe(
      'Read turns from 1 to 0 and a share of 0; give the smaller number of turns first and a share from 0 to below 1.',
    );
    expect(reasonIn(slowStretches({ ...p, Delta: mm(0.1) }, 0, Number.NaN))).toContain('which is not a number');
    for (const share of [1, -0.01, Number.NaN])
      expect(reasonIn(slowStretches({ ...p, Delta: mm(0.1) }, 0, 1, share)), `${share}`).toContain('from 0 to below 1');
    for (const [wrong, from, to, field] of [
      [{ Delta: mm(121) }, 0, 1, 'Delta'],
      [{ Delta: mm(1) }, -601, 1, 'n'],
      [{ Delta: mm(1) }, 0, 601, 'n'],
      [{ Delta: mm(1), a_C: mm(0.6) }, 0, 1, 'a_C'],
    ] as const)
      expect(slowStretches({ ...p, ...wrong }, from, to)).toMatchObject({ ok: false, field });
    expect(valueIn(slowStretches({ ...p, Delta: mm(0.001) }, 1, 1))).toEqual([]);
    // A rate that only touches nought, at one point of each turn, runs back nowhere: 2π · 1/2π mm of slope against 1 mm.
    const touching = { ...p, Delta: mm(1), a_A: mm(1 / (2 * Math.PI)) };
    expect(valueIn(slowStretches(touching, 0, 3))).toEqual([]);
    expect(valueIn(slowStretches(touching, 0, 3, 1e-9))).toHaveLength(3);
    expect(reasonIn(backwardRun.of({ Delta: mm(0.1), v_p: mm(0) }))).toBe(
      'Without a periodic error nothing runs back: give at least one thread an amplitude of more than zero.',
    );
  });
});

describe('true-net-lead and position-error', () => {
  it('agree: the motion of the true net lead differs from the nominal one by the position error', () => {
    fc.assert(
      fc.property(pair, anyTurns, fc.integer({ min: -500, max: 500 }), (p, n, i) => {
        const eps = (i / 1000) as Parameters<typeof trueNetLead.of>[0]['eps'];
        const { Delta_e } = valueIn(trueNetLead.of({ Delta: p.Delta, eps }));
        const { z_c } = valueIn(netMotion.of({ n, Delta: p.Delta }));
        const real = valueIn(netMotion.of({ n, Delta: Delta_e })).z_c;
        expect(valueIn(positionError.of({ z_c, eps })).e_z).toBeCloseTo(real - z_c, 9);
      }),
    );
  });
});

describe('a wave of the helix', () => {
  /** RenderedChapter together, the gap is closed where it is least: the screw stands at the highest point of nut less screw. */
  const stands = (a_s: number, a_n: number, n: number): number => {
    let most = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < 3600; i++) {
      const at = (2 * Math.PI * i) / 3600;
      most = Math.max(most, a_n * Math.cos(at) - a_s * Math.cos(at - 2 * Math.PI * n));
    }
    return most;
  };

  it('lifts a screw engaged all round to where a search round the thread puts it', () => {
    fc.assert(
      fc.property(micrometres(150), micrometres(150), anyTurns, (a_s, a_n, n) => {
        const { z_w } = valueIn(waveAllRound.of({ n, a_s, a_n }));
        expect(Math.abs(z_w - stands(a_s, a_n, n))).toBeLessThan(1e-6 * (a_s + a_n) + 1e-15);
      }),
      { numRuns: 30 },
    );
  });

  it('comes through by half of the way from the highest to the lowest place: nothing in a true nut, all of it in its like', () => {
    for (const [a_s, a_n, through] of [
      [0.5, 0, 0],
      [0.5, 0.1, 0.1],
      [0.1, 0.5, 0.1],
      [0.5, 0.5, 0.5],
    ] as const) {
      const places = Array.from({ length: 101 }, (_, i) => stands(a_s / 1e3, a_n / 1e3, i / 100));
      const half = (Math.max(...places) - Math.min(...places)) / 2;
      const { a_w } = valueIn(waveThrough.of({ a_s: mm(a_s / 1e3), a_n: mm(a_n / 1e3) }));
      expect(a_w * 1e3).toBeCloseTo(through, 12);
      expect(a_w).toBeCloseTo(half, 9);
    }
  });

  it('is a lean where the screw may tilt: no gap is left anywhere round a true nut, and nothing rises', () => {
    const [a_s, d_2] = [mm(0.0005), mm(3.545)];
    const { tau } = valueIn(waveLean.of({ a_s, d_2 }));
    for (let i = 0; i < 12; i++) {
      const at = (2 * Math.PI * i) / 12;
      // Height of the leaning pitch circle less the wave of the helix on it.
      expect(Math.tan(tau) * (d_2 / 2) * Math.cos(at) - a_s * Math.cos(at)).toBeCloseTo(0, 15);
    }
    // 20 mm up the tip goes round at 5.6 µm, eleven times the wave.
    expect(tau * 20e3).toBeCloseTo(5.64, 2);
  });
});
