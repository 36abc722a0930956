/** The whole ± of a lead against sums by hand; the law of propagation has its published examples in propagate.test.ts. */
import { describe, expect, it } from 'vitest';
import { type Signing, signLead } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const given = (over: Partial<Signing> = {}): Signing => ({
  lead: 0.088716,
  fit: 0.0000444,
  freedom: 47,
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
const U = (over: Partial<Signing>) =>
  valueIn(signLead(given({ fit: 0, freedom: Number.POSITIVE_INFINITY, ...over }))).U;

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

  it('differs just beyond the ± and the stated lead error together, above the nominal and below it', () => {
    for (const side of [1, -1]) {
      const judged = (share: number) => {
        const { U } = valueIn(signLead(given({ q_g: 0.005, tolerance: 0.0002 })));
        // The scale error is a share of the lead found, which stays.
        const nominal = 0.088716 - side * share * (U + 0.0002);
        return valueIn(signLead(given({ q_g: 0.005, tolerance: 0.0002, nominal })));
      };
      expect(judged(0.999).verdict).toBe('agrees');
      expect(judged(1.001).verdict).toBe('differs');
      expect(Math.sign(judged(1).difference)).toBe(side);
    }
  });

  it('refuses what no set-up has', () => {
    expect(reasonIn(signLead(given({ q_g: Number.NaN })))).toContain('Scale error');
    expect(reasonIn(signLead(given({ theta_i: 2 })))).toContain('ngle');
  });
});
