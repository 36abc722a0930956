/**
 * Random numbers from a seed: the same seed gives the same numbers in every browser, for ever.
 *
 * Generator: xoshiro128** 1.1 (D. Blackman, S. Vigna, “Scrambled linear pseudorandom number generators”, ACM
 * Trans. Math. Software 47(4), 2021): 32-bit words, period 2^128 − 1. Seeding: splitmix64 (G. Steele, D. Lea,
 * C. Flood, OOPSLA 2014), which its authors advise for it; four 32-bit words from two outputs, low half first.
 * Both are checked in the tests against published output of the authors' C programs.
 *
 * Uniform: u = (k + ½)/2^32, k = 0 … 2^32 − 1, so 0 < u < 1 strictly, mean ½ exactly, step 2.3e-10.
 * Normal: polar method (G. Marsaglia, T. Bray, SIAM Review 6, 1964; Knuth, TAOCP vol. 2, 3.4.1, algorithm P).
 * With 32-bit uniforms no value lies further out than 9.4 standard deviations (s ≥ 2^−63); 1e7 draws reach about 5.3.
 *
 * Not for secrets: the numbers can be foretold from a few of them.
 */
import { bad, good, type Result } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'seed-out-of-range': { readonly seed: number };
  }
}

/** The generator's memory: four 32-bit words, changed by every draw. Make one per run and keep it there. */
export type RandomState = Int32Array;

const WORD = 2 ** -32;

/** A fresh generator for a whole seed from 0 to 2^53 − 1. */
export const randomState = (seed: number): Result<RandomState> => {
  if (!(Number.isSafeInteger(seed) && seed >= 0)) return bad('seed-out-of-range', { seed });
  const [first, second] = splitmix64(BigInt(seed), 2);
  return good(Int32Array.from([first, first >> 32n, second, second >> 32n], (w) => Number(BigInt.asIntN(32, w))));
};

/** The first `count` outputs of splitmix64, at least two, as unsigned 64-bit integers. */
export const splitmix64 = (seed: bigint, count: number): [bigint, bigint, ...bigint[]] => {
  const output = (i: number): bigint => {
    let z = BigInt.asUintN(64, seed + BigInt(i) * 0x9e3779b97f4a7c15n);
    z = BigInt.asUintN(64, (z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n);
    z = BigInt.asUintN(64, (z ^ (z >> 27n)) * 0x94d049bb133111ebn);
    return z ^ (z >> 31n);
  };
  return [output(1), output(2), ...Array.from({ length: Math.max(0, count - 2) }, (_, i) => output(i + 3))];
};

/** The next word, 0 … 2^32 − 1. */
export const nextWord = (state: RandomState): number => {
  // Indices 0 … 3 always exist; the fallbacks are for the compiler and cost nothing.
  const s0 = state[0] ?? 0;
  const s1 = state[1] ?? 0;
  const s2 = (state[2] ?? 0) ^ s0;
  const s3 = (state[3] ?? 0) ^ s1;
  const five = Math.imul(s1, 5);
  state[0] = s0 ^ s3;
  state[1] = s1 ^ s2;
  state[2] = s2 ^ (s1 << 9);
  state[3] = (s3 << 11) | (s3 >>> 21);
  return Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
};

/** A number strictly between 0 and 1. */
export const uniform = (state: RandomState): number => (nextWord(state) + 0.5) * WORD;

/** Fills `out` with uniform numbers strictly between 0 and 1. */
export const fillUniform = (state: RandomState, out: Float64Array): void => {
  for (let i = 0; i < out.length; i++) out[i] = (nextWord(state) + 0.5) * WORD;
};

/**
 * Fills `out` with standard normal numbers; with a `limit`, those beyond ±limit are thrown away and drawn
 * again, which leaves the normal law cut off there (truncated), not piled up at the edges.
 */
export const fillNormal = (state: RandomState, out: Float64Array, limit = Number.POSITIVE_INFINITY): void => {
  let i = 0;
  while (i < out.length) {
    const u = (nextWord(state) + 0.5) * (2 * WORD) - 1;
    const v = (nextWord(state) + 0.5) * (2 * WORD) - 1;
    const s = u * u + v * v;
    // s can't be 0: u and v lie half a step off the origin.
    if (s >= 1) continue;
    const scale = Math.sqrt((-2 * Math.log(s)) / s);
    const a = u * scale;
    const b = v * scale;
    if (Math.abs(a) <= limit) out[i++] = a;
    if (i < out.length && Math.abs(b) <= limit) out[i++] = b;
  }
};
