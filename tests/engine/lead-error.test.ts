/** Lead errors of a pair: published factors, the course's worked case, and what equal errors do. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bad } from '../../widgets/engine/index.ts';
import { mm, netLead, plain, rad } from '../../widgets/engine/index.ts';
import {
  diameterEquivalent,
  leastRate,
  netLeadError,
  periodicSlope,
  rssLeadError,
  worstLeadError,
} from '../../widgets/engine/pair/lead-error.ts';
import { reasonOf } from '../../widgets/words/reason.ts';

const value = <T>(result: { ok: true; value: T } | Bad): T => {
  if (!result.ok) throw new Error(reasonOf(result));
  return result.value;
};

describe('diameter-equivalent', () => {
  // factor: pitch-diameter equivalent of a lead deviation of 1; half: half a unit of its last digit.
  const FACTORS = [
    // Screw thread measurement lecture slides: 1.92 for a 55° thread.
    { flank: 27.5, factor: 1.92, half: 0.005 },
    // ISO and H28, from memory: 1.732 for a 60° thread.
    { flank: 30, factor: 1.732, half: 0.0005 },
  ];
  for (const { flank, factor, half } of FACTORS)
    it(`is ${factor} times the deviation at a flank angle of ${flank}°, whichever way it goes`, () => {
      const beta_f = rad((flank * Math.PI) / 180);
      for (const delta of [0.01, -0.01]) {
        const { d_e } = value(diameterEquivalent.of({ delta_L: mm(delta), beta_f }));
        expect(Math.abs(d_e / 0.01 - factor)).toBeLessThan(half);
      }
    });

  it('is 0.01732 mm for 0.01 mm on a 60° thread', () => {
    const { d_e } = value(diameterEquivalent.of({ delta_L: mm(0.01), beta_f: rad(Math.PI / 6) }));
    expect(Math.abs(d_e - 0.01732)).toBeLessThan(0.5e-5);
  });
});

const hand = fc.constantFrom(1 as const, -1 as const);
const lead = fc.integer({ min: 200, max: 5000 }).map((i) => i / 1000);
const error = fc.integer({ min: -5000, max: 5000 }).map((i) => i / 1e6);
const pair = fc
  .record({ h_A: hand, h_C: hand, L_A: lead, L_C: lead, eps_A: error, eps_C: error })
  .map(({ h_A, h_C, L_A, L_C, eps_A, eps_C }) => ({
    h_A: plain(h_A),
    h_C: plain(h_C),
    L_A: mm(L_A),
    L_C: mm(L_C),
    eps_A: plain(eps_A),
    eps_C: plain(eps_C),
    Delta: mm(h_C * L_C - h_A * L_A),
  }))
  .filter(({ Delta }) => Math.abs(Delta) > 1e-3);

describe('net-lead-error', () => {
  it('is what the net lead of the true leads differs by', () => {
    fc.assert(
      fc.property(pair, (p) => {
        const real = value(netLead.of({ ...p, L_A: mm(p.L_A * (1 + p.eps_A)), L_C: mm(p.L_C * (1 + p.eps_C)) })).Delta;
        expect(value(netLeadError.of(p)).eps).toBeCloseTo((real - p.Delta) / p.Delta, 9);
      }),
    );
  });

  it('is the common error where both threads have the same, not magnified', () => {
    fc.assert(
      fc.property(pair, (p) => {
        expect(value(netLeadError.of({ ...p, eps_C: p.eps_A })).eps).toBeCloseTo(p.eps_A, 9);
      }),
    );
  });

  it('of one thread alone is its error times its gain', () => {
    // M10×1.5 with 3/8-16: gain of A 1.5/0.0875 = 17.14.
    const p = { h_A: plain(1), h_C: plain(1), L_A: mm(1.5), L_C: mm(1.5875), eps_C: plain(0), Delta: mm(0.0875) };
    expect(value(netLeadError.of({ ...p, eps_A: plain(0.001) })).eps).toBeCloseTo(-0.01714, 5);
  });
});

describe('worst-lead-error and rss-lead-error', () => {
  it('the worst is the largest over both signs of both errors', () => {
    fc.assert(
      fc.property(pair, (p) => {
        const all = [1, -1].flatMap((a) =>
          [1, -1].map((c) =>
            Math.abs(value(netLeadError.of({ ...p, eps_A: plain(a * p.eps_A), eps_C: plain(c * p.eps_C) })).eps),
          ),
        );
        expect(value(worstLeadError.of(p)).eps_w).toBeCloseTo(Math.max(...all), 9);
      }),
    );
  });

  it('the root-sum-square is the root mean square over both signs of both errors, and never above the worst', () => {
    fc.assert(
      fc.property(pair, (p) => {
        let squares = 0;
        for (const a of [1, -1])
          for (const c of [1, -1])
            squares += value(netLeadError.of({ ...p, eps_A: plain(a * p.eps_A), eps_C: plain(c * p.eps_C) })).eps ** 2;
        const { eps_r } = value(rssLeadError.of(p));
        expect(eps_r).toBeCloseTo(Math.sqrt(squares / 4), 9);
        expect(eps_r).toBeLessThanOrEqual(value(worstLeadError.of(p)).eps_w + 1e-12);
      }),
    );
  });

  it('±0.1 % on both threads of M10×1.5 with 3/8-16 gives 2.5 % root-sum-square and 3.5 % at worst', () => {
    const p = { L_A: mm(1.5), L_C: mm(1.5875), eps_A: plain(0.001), eps_C: plain(-0.001), Delta: mm(0.0875) };
    expect(Math.abs(value(rssLeadError.of(p)).eps_r - 0.025)).toBeLessThan(0.0005);
    // (1.5 + 1.5875)/0.0875 = 35.29 by hand.
    expect(value(worstLeadError.of(p)).eps_w).toBeCloseTo(0.03529, 5);
  });

  it('refuse a net lead of nought', () => {
    const p = { h_A: plain(1), h_C: plain(1), L_A: mm(1), L_C: mm(1), eps_A: plain(0), eps_C: plain(0), Delta: mm(0) };
    for (const r of [netLeadError, worstLeadError, rssLeadError])
      expect(r.of(p)).toEqual({ ok: false, code: 'equal-leads-no-relative-error', values: {} });
  });
});

describe('periodic-slope and least-rate', () => {
  it('are the steepest and slowest of a finely sampled motion with both errors in phase', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        fc.double({ min: 0.005, max: 1, noNaN: true }),
        (a, c, Delta) => {
          const z = (n: number) => Delta * n + (a + c) * Math.sin(2 * Math.PI * n);
          const step = 1e-4;
          let slowest = Number.POSITIVE_INFINITY;
          for (let n = 0; n < 1; n += 1e-3) slowest = Math.min(slowest, (z(n + step / 2) - z(n - step / 2)) / step);
          const { v_p } = value(periodicSlope.of({ a_A: mm(a), a_C: mm(c) }));
          expect(value(leastRate.of({ Delta: mm(Delta), v_p })).v_min).toBeCloseTo(slowest, 4);
          expect(value(leastRate.of({ Delta: mm(-Delta), v_p })).v_min).toBeCloseTo(slowest, 4);
        },
      ),
      { numRuns: 30 },
    );
  });
});
