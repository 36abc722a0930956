/**
 * Exact net leads, against a general library's fractions (a path of its own: 25.4/tpi and the decimal as it is written), and against
 * differences worked by hand.
 */

import fc from 'fast-check';
import { type Fraction as Independent, fraction as independent, subtract } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  decimalFraction,
  fraction,
  fractionText,
  leadFraction,
  leastCommonMultiple,
  netLead,
  netLeadFraction,
  numberOf,
  plain,
  roundedFirst,
  roundingError,
  UNIFIED_SERIES,
} from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { valueIn } from '../support/results.ts';

const thread = (text: string) => valueIn(readThread(text));

/** Worked by hand over a common denominator; the lengths are those of common practice. */
const BY_HAND = [
  { A: 'M4x0.7', C: '8-36 UNF', text: '1/180', micrometres: 5.5556 }, // 127/180 − 126/180
  { A: 'M8x1.25', C: '5/16-18 UNC', text: '29/180', micrometres: 161.1111 }, // 254/180 − 225/180
  { A: '10-32 UNF', C: 'M5x0.8', text: '1/160', micrometres: 6.25 }, // 128/160 − 127/160
  { A: 'M10x1.5', C: '3/8-16 UNC', text: '7/80', micrometres: 87.5 }, // 127/80 − 120/80
  { A: 'M12x1.5', C: 'M8x1.25', text: '−1/4', micrometres: -250 },
  { A: 'M10x1.5 LH', C: 'M10x1.5', text: '3', micrometres: 3000 },
  { A: 'M10x1.5 LH', C: '3/8-16 UNC', text: '3 7/80', micrometres: 3087.5 },
  { A: '3/8-24', C: 'M6x1', text: '−7/120', micrometres: -58.3333 }, // 120/120 − 127/120
  { A: 'M10x1.5', C: 'M12x1.5', text: '0', micrometres: 0 },
  { A: '1/2-20', C: '3/4-10 LH', text: '−3 81/100', micrometres: -3810 },
  { A: 'M16xPh3P1.5', C: 'M8x1.25', text: '−1 3/4', micrometres: -1750 },
] as const;

describe('netLeadFraction', () => {
  for (const { A, C, text, micrometres } of BY_HAND)
    it(`${A} with ${C} is ${text} mm`, () => {
      const net = netLeadFraction(thread(A), thread(C));
      expect(fractionText(net)).toBe(text);
      expect(Math.abs(1000 * numberOf(net) - micrometres)).toBeLessThanOrEqual(0.00005);
    });

  it('agrees with a general library’s fractions for any metric and any inch pitch, either way round', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 600 }), fc.integer({ min: 1, max: 500 }), (hundredths, tpi) => {
        const P = hundredths / 100;
        const exact = subtract(
          independent(254, 10 * tpi) as Independent,
          independent(hundredths, 100) as Independent,
        ) as Independent;
        const metric = { P, N: 1, L: P, h: 1 } as unknown as Parameters<typeof netLeadFraction>[0];
        const inch = { P: 25.4 / tpi, tpi, N: 1, L: 25.4 / tpi, h: 1 } as unknown as typeof metric;
        const forth = netLeadFraction(metric, inch);
        expect(String(forth.top < 0n ? -forth.top : forth.top)).toBe(String(exact.n));
        expect(String(forth.bottom)).toBe(String(exact.d));
        expect(Math.sign(Number(forth.top))).toBe(Math.sign(Number(exact.s) * Number(exact.n)));
        const back = netLeadFraction(inch, metric);
        expect(back.top).toBe(-forth.top);
      }),
    );
  });

  it('agrees with the relation net-lead but for the rounding of binary numbers', () => {
    for (const { A, C } of BY_HAND) {
      const [a, c] = [thread(A), thread(C)];
      const { Delta } = valueIn(netLead.of({ h_A: plain(a.h), L_A: a.L, h_C: plain(c.h), L_C: c.L }));
      expect(Delta).toBeCloseTo(numberOf(netLeadFraction(a, c)), 12);
    }
  });
});

describe('fraction', () => {
  it('reduces, and keeps its sign on top', () => {
    expect(fraction(6n, -8n)).toEqual({ top: -3n, bottom: 4n });
    expect(fraction(0n, -7n)).toEqual({ top: 0n, bottom: 1n });
    expect(() => fraction(1n, 0n)).toThrow('over nought');
  });

  it('reads a number as the decimal it was written as', () => {
    for (const [x, text] of [
      [0.35, '7/20'],
      [1.25, '1 1/4'],
      [25.4 * 0.05, '1 27/100'], // 1.2699999999999998 in binary
      [1e-7, '1/10000000'],
      [3e21, '3000000000000000000000'],
      [-0.7, '−7/10'],
      [0, '0'],
    ] as const)
      expect(fractionText(decimalFraction(x)), String(x)).toBe(text);
  });

  it('gives the nearest binary number, for small fractions and for huge ones', () => {
    expect(numberOf(fraction(1n, 180n))).toBe(1 / 180);
    expect(numberOf(fraction(-(10n ** 40n), 3n * 10n ** 40n))).toBeCloseTo(-1 / 3, 15);
    // In lowest terms and past what a double holds: a third and five, but for what lies below its digits.
    for (const power of [20n, 400n]) {
      expect(numberOf(fraction(10n ** power + 1n, 3n * 10n ** power))).toBe(1 / 3);
      expect(numberOf(fraction(-(5n * 10n ** power) - 1n, 10n ** power))).toBe(-5);
      expect(numberOf(fraction(1n, 10n ** power))).toBeCloseTo(0, 15);
    }
    expect(numberOf(fraction(10n ** 20n + 1n, 7n))).toBe(1e20 / 7);
  });

  it('has a least common multiple of denominators', () => {
    expect([leastCommonMultiple(180n, 80n), leastCommonMultiple(5n, 7n), leastCommonMultiple(6n, 3n)]).toEqual([
      720n,
      35n,
      6n,
    ]);
  });
});

describe('leadFraction', () => {
  it('is 127 over five times the threads per inch', () => {
    for (const { tpi = 1, P, designation } of UNIFIED_SERIES) {
      const { top, bottom } = leadFraction({ P, N: 1, tpi });
      expect(top * BigInt(5 * tpi), designation).toBe(127n * bottom);
    }
  });

  it('counts starts, and takes a broken number of threads per inch', () => {
    expect(fractionText(leadFraction(thread('1/4-20 2 starts')))).toBe('2 27/50');
    expect(fractionText(leadFraction(thread('1/4-11.5')))).toBe('2 24/115'); // 25.4/11.5 = 254/115
  });
});

describe('roundedFirst', () => {
  /** COURSE: 0.706 for 25.4/36 is 8 % too much. Worked by hand: 0.71 − 0.70 is 10 µm, 80 % too much; 0.7 − 0.7 stands still. */
  for (const [decimals, micrometres, error] of [
    [1, 0, -1],
    [2, 10, 0.8],
    [3, 6, 0.08],
    [4, 5.6, 0.008],
    [5, 5.56, 0.0008],
  ] as const)
    it(`of the Fine foot to ${decimals} decimals moves ${micrometres} µm a turn`, () => {
      const [A, C] = [thread('M4x0.7'), thread('8-36 UNF')];
      const rounded = roundedFirst(A, C, decimals);
      expect(1000 * rounded.Delta).toBeCloseTo(micrometres, 10);
      expect(rounded.error).toBeCloseTo(error, 12);
      const { eps } = valueIn(roundingError.of({ Delta_r: rounded.Delta, Delta: netLeadOf(A, C) }));
      expect(eps).toBeCloseTo(error, 10);
    });

  it('rounds a half away from nought, and loses nothing where the leads are short decimals', () => {
    expect(roundedFirst(thread('M10x1.5'), thread('3/8-16 UNC'), 3)).toMatchObject({ L_C: 1.588 }); // 1.5875
    expect(roundedFirst(thread('M10x1.5'), thread('3/8-16 UNC'), 4).error).toBe(0);
    expect(roundedFirst(thread('M12x1.5'), thread('M10x1.5'), 4).error).toBeUndefined();
  });
});

const netLeadOf = (a: ReturnType<typeof thread>, c: ReturnType<typeof thread>) =>
  valueIn(netLead.of({ h_A: plain(a.h), L_A: a.L, h_C: plain(c.h), L_C: c.L })).Delta;
