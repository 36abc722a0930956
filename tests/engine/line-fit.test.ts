import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineFit, slopeInterval, studentT } from '../../widgets/engine/index.ts';
import norris from '../reference/nist-norris.json' with { type: 'json' };
import { EIGHT_DIGITS, EIGHT_DIGITS_TAIL, ONE_TAIL, SCIPY, THREE_DECIMALS } from '../reference/student-t.ts';
import { inDeep } from '../support/deep.ts';
import { growth, IN_STEP } from '../support/growth.ts';
import { reasonIn, valueIn } from '../support/results.ts';
import { seeded } from '../support/seeded.ts';

/** Right digits: −log10 of the relative error. */
const digits = (found: number, certified: number): number =>
  found === certified ? 17 : -Math.log10(Math.abs(found - certified) / Math.abs(certified));

describe('lineFit', () => {
  const fit = valueIn(lineFit(norris.x, norris.y));

  for (const name of [
    'intercept',
    'slope',
    'interceptError',
    'slopeError',
    'scatter',
    'rSquared',
    'sumOfSquares',
  ] as const)
    it(`gives the certified ${name} of NIST StRD Norris to 13 digits`, () => {
      expect(digits(fit[name], norris.certified[name])).toBeGreaterThan(13);
    });

  it('has 34 degrees of freedom and residuals without mean or trend on Norris', () => {
    expect(fit.freedom).toBe(34);
    expect(fit.rows).toBe(36);
    expect(Math.abs(fit.residuals.reduce((a, e) => a + e, 0))).toBeLessThan(1e-10);
    expect(Math.abs(fit.residuals.reduce((a, e, i) => a + e * (norris.x[i] ?? 0), 0))).toBeLessThan(1e-7);
  });

  it('keeps 12 digits of the slope when all readings sit far from nought', () => {
    // Offsets that are exact in binary, so that the data stay the certified ones: eighths are.
    const x = [0, 1, 2, 3, 4, 5, 7].map((v) => v / 8);
    const y = [0, 3, 4, 9, 13, 14, 19].map((v) => v / 8);
    const near = valueIn(lineFit(x, y));
    const far = valueIn(
      lineFit(
        x.map((v) => v + 2 ** 30),
        y.map((v) => v - 2 ** 32),
      ),
    );
    expect(digits(far.slope, near.slope)).toBeGreaterThan(12);
    expect(digits(far.slopeError, near.slopeError)).toBeGreaterThan(12);
    expect(digits(far.rSquared, near.rSquared)).toBeGreaterThan(12);
    // So far out that the mean itself is not exact: an eighth is sixteen steps of the last place there.
    const farther = valueIn(
      lineFit(
        x.map((v) => v + 2 ** 45),
        y.map((v) => v - 2 ** 45),
      ),
    );
    expect(digits(farther.slope, near.slope)).toBeGreaterThan(12);
    expect(digits(farther.slopeError, near.slopeError)).toBeGreaterThan(12);
  });

  it('agrees with exact fractions to the last place, in the intercept to a sixth of the last place of the readings', () => {
    const { uniform } = seeded(17);
    const ROWS = 400;
    for (let trial = 0; trial < 20; trial++) {
      // Whole numbers from ten to twenty million on a line that passes close to the origin, so that ȳ − b x̄ nearly cancels.
      const x = Array.from({ length: ROWS }, () => Math.round(1e7 * (1 + uniform())));
      const y = x.map((v) => Math.round(0.7 * v));
      const sum = (term: (x: bigint, y: bigint) => bigint) =>
        x.reduce((total, v, i) => total + term(BigInt(v), BigInt(y[i] ?? 0)), 0n);
      const [n, Sx, Sy] = [BigInt(ROWS), sum((v) => v), sum((_, w) => w)];
      const [Sxx, Sxy] = [sum((v) => v * v), sum((v, w) => v * w)];
      const below = n * Sxx - Sx * Sx;
      const exact = (above: bigint) => Number((above * 10n ** 30n) / below) / 1e30;
      const found = valueIn(lineFit(x, y));
      expect(Math.abs(found.slope / exact(n * Sxy - Sx * Sy) - 1)).toBeLessThan(3e-16);
      expect(Math.abs(found.intercept - exact(Sy * Sxx - Sx * Sxy))).toBeLessThan(2 ** -29 / 6);
      expect(Math.abs((found.spread * ROWS) / Number(below) - 1)).toBeLessThan(5e-16);
    }
  });

  it('finds a line that was put in exactly, with no scatter', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: 1, max: 1000 }), (a, b) => {
        const found = valueIn(
          lineFit(
            [0, 1, 2, 5],
            [0, 1, 2, 5].map((x) => a + b * x),
          ),
        );
        expect(found.slope).toBeCloseTo(b, 9);
        expect(found.intercept).toBeCloseTo(a, 9);
        expect(found.scatter).toBeLessThan(1e-9);
      }),
    );
  });

  it('does not care for the order of the rows', () => {
    const turned = valueIn(lineFit([...norris.x].reverse(), [...norris.y].reverse()));
    expect(digits(turned.slope, fit.slope)).toBeGreaterThan(14);
    expect(digits(turned.interceptError, fit.interceptError)).toBeGreaterThan(14);
  });

  it('refuses two readings', () => {
    expect(lineFit([0, 1], [0, 2])).toEqual({ ok: false, code: 'rows-too-few', values: { rows: 2 } });
  });

  it('takes three, and says one reading in the singular', () => {
    // 0, 1, 3 at 0, 1, 2: slope 3/2, residuals 1/6, −1/3, 1/6, so Σe² = 1/6 with one degree of freedom.
    const found = valueIn(lineFit([0, 1, 2], [0, 1, 3]));
    expect(found).toMatchObject({
      rows: 3,
      freedom: 1,
      slope: expect.closeTo(1.5, 12),
      intercept: expect.closeTo(-1 / 6, 12),
    });
    expect(found.sumOfSquares).toBeCloseTo(1 / 6, 12);
    expect(found.slopeError).toBeCloseTo(Math.sqrt(1 / 6 / 2), 12);
    expect(found.interceptError).toBeCloseTo(Math.sqrt((1 / 6) * (1 / 3 + 1 / 2)), 12);
    expect(found.rSquared).toBeCloseTo(1 - 1 / 6 / (14 / 3), 12);
    expect(reasonIn(lineFit([0], [0]))).toContain('Read 1 reading; a line takes two');
  });

  it('refuses readings all at one place', () => {
    expect(lineFit([2, 2, 2], [0, 1, 2])).toEqual({ ok: false, code: 'places-all-alike', values: { rows: 3, x: 2 } });
  });

  it('refuses constant readings, also when their mean is not exact', () => {
    for (const value of [12.5, 0.1, 0])
      expect(lineFit([0, 1, 2, 3, 4, 5, 6], Array(7).fill(value))).toEqual({
        ok: false,
        code: 'readings-all-alike',
        values: { rows: 7, y: value },
      });
  });

  it('takes readings that differ by rounding alone for constant ones', () => {
    expect(lineFit([0, 1, 2, 3], [0.3, 0.1 + 0.2, 0.3, 0.3])).toMatchObject({ code: 'readings-all-alike' });
    expect(lineFit([0.3, 0.1 + 0.2, 0.3, 0.3], [0, 1, 2, 3])).toMatchObject({ code: 'places-all-alike' });
    const last = 1e6 * (1 + Number.EPSILON);
    expect(lineFit([0, 1, 2, 3], [1e6, last, 1e6, 1e6])).toMatchObject({ code: 'readings-all-alike' });
  });

  it('refuses unlike lengths and numbers that are none', () => {
    expect(lineFit([0, 1, 2], [0, 1])).toEqual({
      ok: false,
      code: 'places-unlike-readings',
      values: { places: 3, readings: 2 },
    });
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY, 1e200])
      expect(lineFit([0, 1, wrong], [0, 1, 2])).toEqual({
        ok: false,
        code: 'row-not-numbers',
        values: { row: 3, x: wrong, y: 2 },
      });
    expect(reasonIn(lineFit([0, 1, 2], [0, -1e200, 2]))).toBe(
      'Row 2 reads 1 and less than −1000000000000; give two numbers.',
    );
    expect(lineFit([-1e100, 0, 1e100], [1e100, 0, -2e99]).ok).toBe(true);
  });

  it('takes ten times as long for ten times the rows, 100 000 of them', inDeep, () => {
    const { normal } = seeded(5);
    const x = Array.from({ length: 100_000 }, (_, i) => i / 1000);
    const y = x.map((v) => 0.0875 * v + 1e-3 * normal());
    const interval = valueIn(slopeInterval(valueIn(lineFit(x, y))));
    expect(growth((size) => lineFit(x.slice(0, size), y.slice(0, size)), 10_000)).toBeLessThan(IN_STEP);
    expect(interval.low).toBeLessThan(0.0875);
    expect(interval.high).toBeGreaterThan(0.0875);
  });
});

describe('studentT', () => {
  for (const [freedom, ...row] of THREE_DECIMALS)
    it(`gives the published three decimals at ${freedom} degrees of freedom`, () => {
      row.forEach((t, i) => {
        const level = 1 - 2 * (ONE_TAIL[i] ?? 0);
        expect(Math.abs(valueIn(studentT(level, freedom)) - Number(t)), `tail ${ONE_TAIL[i]}`).toBeLessThan(0.0005001);
      });
    });

  for (const [freedom, ...row] of EIGHT_DIGITS)
    it(`gives the published eight digits at ${freedom} degrees of freedom`, () => {
      row.forEach((t, i) => {
        const level = 1 - 2 * (EIGHT_DIGITS_TAIL[i] ?? 0);
        const half = 0.5001 * 10 ** -(t.length - 1 - t.indexOf('.'));
        expect(Math.abs(valueIn(studentT(level, freedom)) - Number(t)), `tail ${EIGHT_DIGITS_TAIL[i]}`).toBeLessThan(
          half,
        );
      });
    });

  it('agrees with another library to twelve digits, odd and even, few and many', () => {
    // scipy.stats.t.ppf((1 + level)/2, freedom), run once for this table.
    for (const [level, freedom, t] of SCIPY) expect(digits(valueIn(studentT(level, freedom)), t)).toBeGreaterThan(11.5);
  });

  it('is the tangent at one degree of freedom and algebraic at two (closed forms)', () => {
    for (const level of [0.01, 0.5, 0.9, 0.95, 0.999]) {
      expect(digits(valueIn(studentT(level, 1)), Math.tan((Math.PI / 2) * level))).toBeGreaterThan(11);
      expect(digits(valueIn(studentT(level, 2)), level * Math.sqrt(2 / (1 - level * level)))).toBeGreaterThan(11);
    }
  });

  it('nears the normal 1.959964 (six decimals) for many degrees of freedom', () => {
    expect(valueIn(studentT(0.95, 1_000_000))).toBeCloseTo(1.959964 + 2.37e-6, 6);
    expect(valueIn(studentT(0.95, 999_999))).toBeCloseTo(1.959964 + 2.37e-6, 6);
  });

  it('falls with the degrees of freedom and rises with the level, odd and even alike', () => {
    for (let v = 1; v < 60; v++) {
      expect(valueIn(studentT(0.95, v + 1))).toBeLessThan(valueIn(studentT(0.95, v)));
      expect(valueIn(studentT(0.9, v))).toBeLessThan(valueIn(studentT(0.95, v)));
    }
  });

  it('refuses levels and degrees of freedom that mean nothing', () => {
    for (const level of [0, 1, -0.5, 95, Number.NaN])
      expect(studentT(level, 5)).toEqual({ ok: false, code: 'level-not-a-share', values: { level } });
    for (const freedom of [0, -1, 2.5, 1e7, Number.NaN])
      expect(studentT(0.95, freedom)).toEqual({ ok: false, code: 'freedom-out-of-range', values: { freedom } });
  });
});

describe('slopeInterval', () => {
  it('is the slope of Norris ± 2.0322 of its standard errors at 34 degrees of freedom', () => {
    const fit = valueIn(lineFit(norris.x, norris.y));
    const { low, high, half } = valueIn(slopeInterval(fit));
    // t(0.975, 34) = 2.0322 from memory.
    expect(half / norris.certified.slopeError).toBeCloseTo(2.0322, 4);
    expect((low + high) / 2).toBeCloseTo(norris.certified.slope, 12);
  });

  it('has no interval for a share that is none', () => {
    expect(slopeInterval(valueIn(lineFit(norris.x, norris.y)), 95)).toMatchObject({ values: { level: 95 } });
  });

  it('covers the true slope in 95 % of 10 000 seeded rigs, and in 80 % when asked', () => {
    const { normal } = seeded(20261125);
    const x = [0, 1, 2, 3, 4, 5, 6, 7];
    let [at95, at80] = [0, 0];
    const trials = 10_000;
    for (let i = 0; i < trials; i++) {
      const fit = valueIn(
        lineFit(
          x,
          x.map((v) => 0.3 + 0.0875 * v + 0.002 * normal()),
        ),
      );
      const wide = valueIn(slopeInterval(fit));
      const narrow = valueIn(slopeInterval(fit, 0.8));
      if (wide.low <= 0.0875 && 0.0875 <= wide.high) at95++;
      if (narrow.low <= 0.0875 && 0.0875 <= narrow.high) at80++;
    }
    // Three and a half standard deviations of a count of 10 000.
    expect(Math.abs(at95 / trials - 0.95)).toBeLessThan(3.5 * Math.sqrt((0.95 * 0.05) / trials));
    expect(Math.abs(at80 / trials - 0.8)).toBeLessThan(3.5 * Math.sqrt((0.8 * 0.2) / trials));
  });
});
