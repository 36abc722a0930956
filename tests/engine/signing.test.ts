/** The law of propagation against its published examples, and the whole ± of a lead against sums by hand. */
import { describe, expect, it } from 'vitest';
import { combined, ofBound, randomState, type Signing, signLead, uniform } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('the law of propagation', () => {
  it('gives the 32 nm of the end gauge of JCGM 100:2008, example H.1 (from memory)', () => {
    // Standard, comparison, difference of expansion and of temperature: 25, 9.7, 2.9 and 16.6 nm.
    const { u, ranked } = combined([
      { name: 'comparison', u: 9.7 },
      { name: 'standard', u: 25 },
      { name: 'expansion', u: 2.9 },
      { name: 'temperature', u: 16.6 },
    ]);
    expect(Math.round(u)).toBe(32);
    expect(ranked.map((p) => p.name)).toEqual(['standard', 'temperature', 'comparison', 'expansion']);
  });

  it('gives 2.0 for four rectangular inputs, where sampling gives 3.88 to each side and it 3.92 (JCGM 101:2008, 9.2.3, from memory)', () => {
    const parts = [1, 2, 3, 4].map((i) => ({ name: `X${i}`, u: ofBound(Math.sqrt(3)) }));
    const { u } = combined(parts);
    expect(u).toBeCloseTo(2, 12);
    const state = valueIn(randomState(7));
    const sums = Array.from({ length: 40_000 }, () =>
      parts.reduce((sum) => sum + Math.sqrt(3) * (2 * uniform(state) - 1), 0),
    ).sort((a, b) => a - b);
    expect(sums[39_000]).toBeCloseTo(3.88, 0);
    expect(1.96 * u).toBeCloseTo(3.92, 2);
  });
});

const given = (over: Partial<Signing> = {}): Signing => ({
  lead: 0.088716,
  fit: 0.000089,
  turns: 2,
  q_g: 0,
  theta_i: 0,
  a_o: 0,
  theta_c: 0,
  e_d: 0,
  e_rp: 0,
  nominal: 0.0875,
  tolerance: 0.0031,
  matters: 0.003,
  ...over,
});
const U = (over: Partial<Signing>) => valueIn(signLead(given({ fit: 0, ...over }))).whole.U;

describe('the whole ± of a measured lead', () => {
  it('takes each part by itself, a turn', () => {
    const rectangular = 2 / Math.sqrt(3);
    expect(U({ q_g: 0.01 })).toBeCloseTo(rectangular * 0.00088716, 12);
    expect(U({ theta_i: 0.1 })).toBeCloseTo(rectangular * 0.088716 * (1 / Math.cos(0.1) - 1), 12);
    expect(U({ a_o: 15, theta_c: 1e-4 })).toBeCloseTo(rectangular * 0.00075, 9);
    expect(U({ e_d: 0.001 })).toBeCloseTo(rectangular * 0.0005, 12);
    expect(U({ e_rp: 0.001 })).toBeCloseTo((rectangular * Math.SQRT2 * 0.001) / 2, 12);
  });

  it('agrees, differs, or can’t be told', () => {
    expect(valueIn(signLead(given())).verdict).toBe('agrees');
    expect(valueIn(signLead(given({ q_g: 0.05 }))).verdict).toBe('not to be told');
    expect(valueIn(signLead(given({ tolerance: 0 }))).verdict).toBe('differs');
    // A gauge so poor that it covers the difference excuses nothing: it is not told.
    expect(valueIn(signLead(given({ tolerance: 0, q_g: 0.05 }))).verdict).toBe('not to be told');
  });

  it('refuses what no set-up has', () => {
    expect(reasonIn(signLead(given({ q_g: Number.NaN })))).toContain('Scale error');
    expect(reasonIn(signLead(given({ theta_i: 2 })))).toContain('ngle');
  });
});
