/** The doubt of results against published examples, their digits kept. */
import { describe, expect, it } from 'vitest';
import {
  combined,
  coverageFactor,
  decimalsOf,
  effectiveFreedom,
  expanded,
  flat,
  fromReadings,
  meanAndScatter,
  sampled,
  slopesOf,
} from '../../widgets/engine/index.ts';

const bell = (u: number) => expanded(u, 1);
const sum = (xs: readonly number[]) => xs.reduce((total, x) => total + x, 0);

describe('JCGM 100:2008, annex H.1, the calibration of an end gauge (inputs and results as others’ published checks repeat them)', () => {
  // l = l_S + d − l_S (δα θ + α_S δθ); lengths in nm.
  const law = ([lS = 0, d = 0, da = 0, theta = 0, alpha = 0, dt = 0]: readonly number[]) =>
    lS + d - lS * (da * theta + alpha * dt);
  const INPUTS = [
    { x: 50_000_623, u: 25, freedom: 18 },
    { x: 215, u: 9.7, freedom: 25.6 },
    { x: 0, u: 0.58e-6, freedom: 50 },
    { x: -0.1, u: 0.41, freedom: Number.POSITIVE_INFINITY },
    { x: 11.5e-6, u: 1.2e-6, freedom: Number.POSITIVE_INFINITY },
    { x: 0, u: 0.029, freedom: 2 },
  ];
  const [xs, us] = [INPUTS.map(({ x }) => x), INPUTS.map(({ u }) => u)];
  const slopes = slopesOf(law, xs, us) ?? [];
  const u = combined(slopes, us);

  it('estimate 50.000 838 mm, u_c = 32 nm', () => {
    expect((law(xs) / 1e6).toFixed(6)).toBe('50.000838');
    expect(u).toBeCloseTo(31.7, 1);
    expect(Math.round(u)).toBe(32);
  });

  it('contributions 25, 9.7, 2.9, 0, 0 and 16.6 nm (table H.1)', () => {
    const parts = slopes.map((c, i) => Math.abs(c * (us[i] ?? 0)));
    for (const [i, part] of [25, 9.7, 2.9, 0, 0, 16.6].entries()) expect(parts[i], `${i}`).toBeCloseTo(part, 0);
    expect(parts[5]).toBeGreaterThan(16.55);
    expect(parts[5]).toBeLessThan(16.75);
  });

  it('16 degrees of freedom, k_99 = t_99(16) = 2.92, U_99 = 93 nm', () => {
    const freedom = effectiveFreedom(
      u,
      INPUTS.map((input, i) => ({ part: (slopes[i] ?? 0) * input.u, freedom: input.freedom })),
    );
    expect(Math.floor(freedom)).toBe(16);
    const k = coverageFactor(freedom, 0.99);
    expect(k).toBeCloseTo(2.92, 2);
    expect(Math.round(k * 32)).toBe(93);
  });

  it('the published terms of the second order raise it to 34 nm, which sampling finds and the first order does not', () => {
    const drawn = sampled(
      law,
      xs,
      INPUTS.map((input) => bell(input.u)),
      40_000,
    );
    expect(drawn?.u).toBeGreaterThan(33.2);
    expect(drawn?.u).toBeLessThan(34.8);
  });
});

describe('JCGM 100:2008, annex H.2, resistance and reactance measured together (readings from memory; correlations −0.3553, 0.8576, −0.6451 as published checks repeat them; results from memory)', () => {
  const V = [5.007, 4.994, 5.005, 4.99, 4.999];
  const I = [19.663, 19.639, 19.64, 19.685, 19.678];
  const PHI = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
  const means = [V, I, PHI].map((readings) => meanAndScatter(readings));
  const xs = means.map(({ mean }) => mean);
  const us = means.map(({ scatter }) => scatter / Math.sqrt(5));
  const r = (a: readonly number[], b: readonly number[]) => {
    const [p, q] = [meanAndScatter(a), meanAndScatter(b)];
    return a.reduce((total, x, i) => total + (x - p.mean) * ((b[i] ?? 0) - q.mean), 0) / 4 / p.scatter / q.scatter;
  };
  const all = [V, I, PHI];
  const correlation = (i: number, j: number) => r(all[i] ?? [], all[j] ?? []);

  it('means 4.9990 V, 19.6610 mA, 1.044 46 rad and their u 0.0032, 0.0095, 0.000 75 (table H.2)', () => {
    expect(xs.map((x, i) => x.toFixed([4, 4, 5][i]))).toEqual(['4.9990', '19.6610', '1.04446']);
    expect(us.map((x, i) => x.toFixed([4, 4, 5][i]))).toEqual(['0.0032', '0.0095', '0.00075']);
  });

  it('correlations −0.36, 0.86 and −0.65 (table H.2)', () => {
    const all = [correlation(0, 1), correlation(0, 2), correlation(1, 2)];
    expect(all.map((x) => x.toFixed(2))).toEqual(['-0.36', '0.86', '-0.65']);
    expect(all.map((x) => x.toFixed(4))).toEqual(['-0.3553', '0.8576', '-0.6451']);
  });

  it.each([
    ['R', 127.732, 0.071, (v: number, i: number, phi: number) => (v / i) * 1e3 * Math.cos(phi)],
    ['X', 219.847, 0.295, (v: number, i: number, phi: number) => (v / i) * 1e3 * Math.sin(phi)],
    ['Z', 254.26, 0.236, (v: number, i: number) => (v / i) * 1e3],
  ] as const)('%s = %f Ω, u_c = %f Ω (table H.3)', (_, value, u, law) => {
    const of = ([v = 0, i = 0, phi = 0]: readonly number[]) => law(v, i, phi);
    expect(of(xs)).toBeCloseTo(value, 3);
    // A unit of the last digit: of X the readings give 0.2956, which the table has cut.
    expect(Math.abs(combined(slopesOf(of, xs, us) ?? [], us, correlation) - u)).toBeLessThan(1e-3);
  });
});

describe('JCGM 101:2008, clause 9.2, a sum of four (from memory)', () => {
  const four = [0, 0, 0, 0];

  it('9.2.3, four rectangular ones of u = 1: u = 2.00, 95 % within ±3.88 and not the ±3.92 of the first order', () => {
    const drawn = sampled(
      sum,
      four,
      four.map(() => flat(Math.sqrt(3))),
      200_000,
      1,
      0.95,
    );
    expect(drawn?.u).toBeCloseTo(2, 1);
    expect(drawn?.high).toBeGreaterThan(3.86);
    expect(drawn?.high).toBeLessThan(3.9);
    expect(drawn?.low).toBeLessThan(-3.86);
  });

  it('9.2.4, one of them ten times as wide: 95 % within ±17.0, where the first order says ±19.9', () => {
    const doubts = [...[1, 2, 3].map(() => flat(Math.sqrt(3))), flat(10 * Math.sqrt(3))];
    const drawn = sampled(sum, four, doubts, 200_000, 1, 0.95);
    expect(drawn?.high).toBeGreaterThan(16.9);
    expect(drawn?.high).toBeLessThan(17.1);
    expect(
      1.96 *
        combined(
          [1, 1, 1, 1],
          doubts.map(({ u }) => u),
        ),
    ).toBeCloseTo(19.9, 1);
  });

  it('the same seed draws the same', () => {
    const doubts = four.map(() => bell(1));
    expect(sampled(sum, four, doubts, 500)).toEqual(sampled(sum, four, doubts, 500));
  });
});

describe('JCGM 101:2008, clause 9.3, a weight of 100 g against a reference in air (inputs and results from memory)', () => {
  // δm = (m_R + δm_R) (1 + (ρ_a − ρ_a0) (1/ρ_W − 1/ρ_R)) − 100 000 mg, densities in kg/m³.
  const law = ([mR = 0, dR = 0, air = 0, W = 1, R = 1]: readonly number[]) =>
    (mR + dR) * (1 + (air - 1.2) * (1 / W - 1 / R)) - 100_000;
  const xs = [100_000, 1.234, 1.2, 8000, 8000];
  const doubts = [bell(0.05), bell(0.02), flat(0.1), flat(1000), flat(50)];
  const us = doubts.map(({ u }) => u);

  it('the first order sees nothing of the air: 1.2340 mg, u = 0.0539 mg', () => {
    expect(law(xs)).toBeCloseTo(1.234, 4);
    expect(combined(slopesOf(law, xs, us) ?? [], us)).toBeCloseTo(0.0539, 4);
  });

  it('sampling does: u = 0.0754 mg, 95 % from 1.0834 mg to 1.3825 mg', () => {
    const drawn = sampled(law, xs, doubts, 100_000, 1, 0.95);
    expect(drawn?.u).toBeCloseTo(0.0754, 3);
    expect(Math.abs((drawn?.low ?? 0) - 1.0834)).toBeLessThan(0.003);
    expect(Math.abs((drawn?.high ?? 0) - 1.3825)).toBeLessThan(0.003);
  });
});

describe('NIST StRD, univariate summary statistics (made by the rule that the sets state: mean and standard deviation are exact by construction)', () => {
  const wave = (first: number, low: number, high: number) => [
    first,
    ...Array.from({ length: 500 }, () => [low, high]).flat(),
  ];
  it.each([
    ['NumAcc1', [10_000_001, 10_000_003, 10_000_002], 10_000_002, 1],
    ['NumAcc2', wave(1.2, 1.1, 1.3), 1.2, 0.1],
    ['NumAcc3', wave(1_000_000.2, 1_000_000.1, 1_000_000.3), 1_000_000.2, 0.1],
    ['NumAcc4', wave(10_000_000.2, 10_000_000.1, 10_000_000.3), 10_000_000.2, 0.1],
  ] as const)('%s: mean and standard deviation', (_, readings, mean, scatter) => {
    const found = meanAndScatter(readings);
    expect(found.mean).toBeCloseTo(mean, 8);
    // The last sets lose digits where a decimal is read into a double, before any arithmetic.
    expect(Math.abs(found.scatter / scatter - 1)).toBeLessThan(1e-7);
  });
});

describe('coverage', () => {
  it('k = 2.00 without bound, and from Student’s t for few readings (JCGM 100, table G.2, 95.45 %: 4.53, 2.87, 2.28, 2.13)', () => {
    expect(coverageFactor(Number.POSITIVE_INFINITY)).toBeCloseTo(2, 3);
    for (const [freedom, k] of [
      [2, 4.53],
      [4, 2.87],
      [10, 2.28],
      [20, 2.13],
    ] as const)
      expect(coverageFactor(freedom), `${freedom}`).toBeCloseTo(k, 2);
  });

  it('an uncertainty has two digits, and decimals follow it', () => {
    for (const [U, decimals] of [
      [0.0123, 3],
      [0.0996, 2],
      [1.24, 1],
      [12.4, 0],
      [996, -1 - 1],
    ] as const)
      expect(decimalsOf(U), `${U}`).toBe(decimals);
  });

  it('the mean of readings has u = s/√n and one degree less than readings', () => {
    expect(fromReadings(3, 9)).toEqual({ u: 1, freedom: 8, shape: 'bell' });
  });
});

describe('slopes', () => {
  it('are none where the law has no value at the place itself, though it has beside it', () => {
    expect(slopesOf(([x = 0]) => (x === 1 ? undefined : x), [1], [0.1])).toBeUndefined();
    expect(slopesOf(([x = 0]) => (x === 2 ? undefined : x), [1], [0.1])).toEqual([expect.closeTo(1, 6)]);
  });
});
