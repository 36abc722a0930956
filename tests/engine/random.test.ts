/** The seeded generator against published output of its authors' programs, and its two laws against their moments. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fillNormal,
  fillUniform,
  nextWord,
  randomState,
  splitmix64,
  uniform,
} from '../../widgets/engine/numerics/random.ts';
import { reasonOf } from '../../widgets/words/reason.ts';

// Output of the authors' xoshiro128starstar.c (version 1.1) from state {1, 2, 3, 4}, as published in the tests of
// rand_xoshiro (rust-random/rngs, rand_xoshiro/src/xoshiro128starstar.rs).
const XOSHIRO = [11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804];

// Output of the authors' splitmix64.c from 1477776061723855037, as published in the tests of rand_xoshiro
// (rust-random/rngs, rand_xoshiro/src/splitmix64.rs), first ten of fifty.
const SPLITMIX = [
  1985237415132408290n,
  2979275885539914483n,
  13511426838097143398n,
  8488337342461049707n,
  15141737807933549159n,
  17093170987380407015n,
  16389528042912955399n,
  13177319091862933652n,
  10841969400225389492n,
  17094824097954834098n,
];

const made = (seed: number) => {
  const state = randomState(seed);
  if (!state.ok) throw new Error(reasonOf(state));
  return state.value;
};

describe('nextWord', () => {
  it('gives the published words of xoshiro128** 1.1', () => {
    const state = Int32Array.from([1, 2, 3, 4]);
    expect(XOSHIRO.map(() => nextWord(state))).toEqual(XOSHIRO);
  });
});

describe('splitmix64', () => {
  it('gives the published outputs', () => expect(splitmix64(1477776061723855037n, 10)).toEqual(SPLITMIX));
});

describe('randomState', () => {
  it('takes its words from two outputs of splitmix64, low half first', () => {
    for (const seed of [0, 1, 42, Number.MAX_SAFE_INTEGER]) {
      const [a, b] = splitmix64(BigInt(seed), 2);
      const words = [a & 0xffffffffn, a >> 32n, b & 0xffffffffn, b >> 32n].map(Number);
      expect([...made(seed)].map((w) => w >>> 0)).toEqual(words);
    }
  });

  it('gives the same numbers for the same seed and others for another', () => {
    fc.assert(
      fc.property(fc.maxSafeNat(), fc.maxSafeNat(), (a, b) => {
        const first = (seed: number) =>
          Array.from(
            { length: 4 },
            (
              (s) => () =>
                nextWord(s)
            )(made(seed)),
          );
        expect(first(a)).toEqual(first(a));
        if (a !== b) expect(first(a)).not.toEqual(first(b));
      }),
    );
  });

  it('refuses a seed that is no whole number from 0 to 2^53 − 1, in a sentence', () => {
    for (const seed of [-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])
      expect(randomState(seed)).toEqual({
        ok: false,
        code: 'seed-out-of-range',
        values: { seed },
      });
  });
});

const N = 400_000;
const mean = (x: Float64Array, f: (v: number) => number) => x.reduce((s, v) => s + f(v), 0) / x.length;

/** Largest distance between the sample's distribution function and `cdf` (Kolmogorov), times √N. */
const kolmogorov = (x: Float64Array, cdf: (v: number) => number) => {
  let worst = 0;
  x.toSorted().forEach((v, i) => {
    worst = Math.max(worst, Math.abs(cdf(v) - i / x.length), Math.abs(cdf(v) - (i + 1) / x.length));
  });
  return worst * Math.sqrt(x.length);
};

/** Standard normal distribution function by Simpson's rule on its density, independent of any random number. */
const normalCdf = (v: number) => {
  const steps = 200;
  const h = v / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) sum += (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2) * Math.exp((-h * h * i * i) / 2);
  return 0.5 + (sum * h) / 3 / Math.sqrt(2 * Math.PI);
};

describe('fillUniform', () => {
  const x = new Float64Array(N);
  fillUniform(made(2026), x);

  it('stays strictly between 0 and 1, half a step inside for the smallest word', () => {
    // The second word from {1, 2, 3, 4} is 0 (see XOSHIRO), the smallest there is.
    const state = Int32Array.from([1, 2, 3, 4]);
    uniform(state);
    expect(uniform(state)).toBe(2 ** -33);
    expect(x.every((v) => v > 0 && v < 1)).toBe(true);
  });

  it('draws the same numbers as uniform one at a time', () => {
    const state = made(2026);
    for (let i = 0; i < 100; i++) expect(uniform(state)).toBe(x[i]);
  });

  it('has mean 1/2, variance 1/12 and fourth central moment 1/80 within four standard errors', () => {
    expect(Math.abs(mean(x, (v) => v) - 1 / 2)).toBeLessThan(4 * Math.sqrt(1 / 12 / N));
    expect(Math.abs(mean(x, (v) => (v - 0.5) ** 2) - 1 / 12)).toBeLessThan(4 * Math.sqrt((1 / 80 - 1 / 144) / N));
    expect(Math.abs(mean(x, (v) => (v - 0.5) ** 4) - 1 / 80)).toBeLessThan(4 * Math.sqrt((1 / 2304 - 1 / 6400) / N));
  });

  it('follows the straight distribution function (Kolmogorov, 0.1 % point 1.95)', () =>
    expect(kolmogorov(x, (v) => v)).toBeLessThan(1.95));
});

describe('fillNormal', () => {
  const x = new Float64Array(N);
  fillNormal(made(7), x);

  it('has mean 0, variance 1, no skewness and fourth moment 3 within four standard errors', () => {
    expect(Math.abs(mean(x, (v) => v))).toBeLessThan(4 / Math.sqrt(N));
    expect(Math.abs(mean(x, (v) => v * v) - 1)).toBeLessThan(4 * Math.sqrt(2 / N));
    expect(Math.abs(mean(x, (v) => v ** 3))).toBeLessThan(4 * Math.sqrt(15 / N));
    expect(Math.abs(mean(x, (v) => v ** 4) - 3)).toBeLessThan(4 * Math.sqrt(96 / N));
  });

  it('follows the normal distribution function (Kolmogorov, 0.1 % point 1.95)', () =>
    expect(kolmogorov(x, normalCdf)).toBeLessThan(1.95));

  it('gives neighbours that have nothing to do with each other, though they come in pairs', () => {
    let sum = 0;
    for (let i = 0; i < N; i += 2) sum += (x[i] ?? 0) * (x[i + 1] ?? 0);
    expect(Math.abs(sum / (N / 2))).toBeLessThan(4 / Math.sqrt(N / 2));
  });

  it('with a limit stays within it and follows the law cut off there', () => {
    const limit = 1.2;
    const cut = new Float64Array(N);
    fillNormal(made(8), cut, limit);
    expect(cut.every((v) => Math.abs(v) <= limit)).toBe(true);
    const below = normalCdf(-limit);
    expect(kolmogorov(cut, (v) => (normalCdf(v) - below) / (1 - 2 * below))).toBeLessThan(1.95);
  });
});
