/** The quantile of drawn values, against its definition, a published one, and by drawing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantileOfSorted, quantiles, randomState, uniform } from '../../widgets/engine/index.ts';
import { valueIn } from '../support/results.ts';

describe('quantiles', () => {
  it('are none of no values, nor for a share that is none', () => {
    expect(() => quantiles(new Float64Array(0), [0.5])).toThrow('no values');
    for (const share of [-0.1, 1.1, Number.NaN])
      expect(() => quantiles(Float64Array.of(1, 2), [share])).toThrow(`share ${share} is not from 0 to 1`);
  });

  it('of twelve gauges at nine tenths is 95.1981', () => {
    // NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2, Percentiles (from memory).
    const gauges = [
      95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.061, 95.1591, 95.1195, 95.1065, 95.0925, 95.199, 95.1682,
    ];
    expect(quantiles(Float64Array.from(gauges), [0.9])[0]?.value).toBeCloseTo(95.1981, 4);
    expect(
      quantileOfSorted(
        gauges.toSorted((a, b) => a - b),
        0.9,
      ),
    ).toBeCloseTo(95.1981, 4);
  });

  it('leave the share below them that they are asked for, however few were drawn', () => {
    // Of the uniform law on 0 … 1 the value is the share below it.
    const state = valueIn(randomState(7));
    for (const [n, share] of [
      [5, 0.5],
      [19, 0.95],
      [40, 0.9],
    ] as const) {
      let sum = 0;
      const trials = 4000;
      for (let i = 0; i < trials; i++)
        sum += quantileOfSorted(
          Array.from({ length: n }, () => uniform(state)).sort((a, b) => a - b),
          share,
        );
      // Four standard errors of a mean of trials, each within half of the whole.
      expect(Math.abs(sum / trials - share)).toBeLessThan(
        (4 * Math.sqrt((share * (1 - share)) / n)) / Math.sqrt(trials),
      );
    }
  });

  it('are the largest value where too few were drawn to leave so much below', () => {
    expect(quantileOfSorted([1, 2, 3], 0.95)).toBe(3);
    expect(quantileOfSorted([1, 2, 3], 0.01)).toBe(1);
  });

  it('agree with sorting, for any values, shares in any order, ties and long lists', () => {
    const check = (values: number[], shares: number[]) => {
      const sorted = values.toSorted((a, b) => a - b);
      const found = quantiles(Float64Array.from(values), shares);
      expect(found.map((q) => q.share)).toEqual(shares);
      for (const { share, value } of found) {
        const h = Math.min(sorted.length - 1, Math.max(0, (sorted.length + 1) * share - 1));
        const low = sorted[Math.floor(h)] ?? 0;
        const high = sorted[Math.ceil(h)] ?? 0;
        expect(value).toBeCloseTo(low + (h - Math.floor(h)) * (high - low), 9);
      }
    };
    const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 5 });
    fc.assert(fc.property(fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 60 }), shares, check));
    // Long enough for the sampling step, in orders that a plain pivot dislikes.
    const long = [
      (i: number) => i,
      (i: number) => -i,
      (i: number) => i % 7,
      (i: number) => Math.abs(i - 2500),
      (i: number) => (i * 7919) % 5003,
      () => 1,
    ];
    for (const f of long)
      check(
        Array.from({ length: 5000 }, (_, i) => f(i)),
        [0.95, 0, 0.5, 0.05, 1, 0.5],
      );
  });
});
