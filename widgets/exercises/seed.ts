/**
 * From words to random numbers: the same words give the same numbers in every browser, for ever.
 *
 * The parts (class code, student code, item, bank version) are joined by line feeds, which none of them may hold, and
 * hashed as UTF-8 by FNV-1a, 64 bits (G. Fowler, L. C. Noll, K.-P. Vo; offset basis cbf29ce484222325, prime 100000001b3;
 * IETF draft-eastlake-fnv). The hash is folded to 53 bits by exclusive or, as its authors advise for other widths, and seeds
 * the engine's generator (splitmix64 into xoshiro128** 1.1, random.ts). Not for secrets: whoever has the bank can work the numbers out.
 */

import { type RandomState, randomState, uniform } from '../engine/index.ts';
import { reasonOf } from '../words/reason.ts';

const BASIS = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;

export const fnv1a64 = (text: string): bigint => {
  let hash = BASIS;
  for (const byte of new TextEncoder().encode(text)) hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * PRIME);
  return hash;
};

export const stateOf = (parts: readonly string[]): RandomState => {
  const hash = fnv1a64(parts.join('\n'));
  const state = randomState(Number((hash >> 53n) ^ BigInt.asUintN(53, hash)));
  if (!state.ok) throw new Error(reasonOf(state));
  return state.value;
};

/** A whole number from 0 up to, not including, `count`. */
export const pick = (state: RandomState, count: number): number => Math.floor(uniform(state) * count);
