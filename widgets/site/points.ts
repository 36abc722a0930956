/**
 * Points of the glossary's box at which expressions are compared, and values with their units. The points are a
 * fixed sequence, not random draws, so that a chapter that passes today passes tomorrow.
 */
import { type Unit, unit } from 'mathjs';
import { type BaseUnit, FREE_FALL, type SymbolName, symbolFact } from '../engine/index.ts';

export type Quantity = number | Unit;

/**
 * The i-th admissible point: each symbol walks its range by the square root of a prime of its own (Richtmyer’s sequence).
 * Walks that were multiples of one another would only ever meet points with a pattern, such as three places in a line.
 */
export const pointAt = (symbols: readonly SymbolName[], i: number): Record<string, number> =>
  Object.fromEntries(
    symbols.map((symbol, k) => [symbol, valueAt(symbol, (0.137 + (i + 1) * Math.sqrt(primeAt(k))) % 1)]),
  );

/** The primes in order, found as they are asked for; a formula has a few dozen symbols at most. */
const primes: number[] = [];
const primeAt = (k: number): number => {
  for (let n = (primes.at(-1) ?? 1) + 1; primes.length <= k; n++) if (primes.every((p) => n % p > 0)) primes.push(n);
  return primes[k] ?? 2;
};

/** Ranges as wide as 0.3 to 400 are walked by ratio, so that small threads are met as often as large ones. */
const valueAt = (symbol: SymbolName, share: number): number => {
  const { min, max, whole, shown } = symbolFact(symbol);
  if (shown === 'sense') return share < 0.5 ? -1 : 1;
  const value = min > 0 ? min * (max / min) ** share : min + (max - min) * share;
  return whole ? Math.round(value) : value;
};

/** How the expression library spells a base unit; angles, turns and ratios are pure numbers there. */
const SPELT: Record<BaseUnit, string | undefined> = {
  mm: 'mm',
  rad: undefined,
  turn: undefined,
  N: 'N',
  N·mm: 'N mm',
  MPa: 'MPa',
  'N/mm': 'N/mm',
  K: 'K',
  '1/K': 'K^-1',
  h: 'h',
  Hz: 'Hz',
  '1': undefined,
};

/** Lengths, forces and the rest carry their unit; angles, turns and ratios are pure numbers. */
export const withUnits = (values: Readonly<Record<string, number>>): Record<string, Quantity> => {
  const scope: Record<string, Quantity> = {
    deg: Math.PI / 180,
    mm: unit(1, 'mm'),
    g_n: unit(FREE_FALL, 'mm/s^2'),
  };
  for (const [name, value] of Object.entries(values)) {
    const spelling = SPELT[symbolFact(name as SymbolName).unit];
    scope[name] = spelling === undefined ? value : unit(value, spelling);
  }
  return scope;
};

/** The same as pure numbers, which are evaluated ten times as fast: the base units are of one system, so numbers agree where quantities do. */
export const withoutUnits = (values: Readonly<Record<string, number>>): Record<string, Quantity> => ({
  deg: Math.PI / 180,
  mm: 1,
  g_n: FREE_FALL,
  ...values,
});

/** What an evaluated formula is in a base unit; one of another dimension throws, or is no number. */
export const inBase = (evaluated: Quantity, base: BaseUnit): unknown => {
  const spelling = SPELT[base];
  return spelling === undefined ? evaluated : typeof evaluated === 'number' ? undefined : evaluated.toNumber(spelling);
};

/** Whether two values have the same dimension and agree but for rounding. */
export const agree = (a: Quantity, b: Quantity): boolean => {
  if (typeof a === 'number' || typeof b === 'number')
    return typeof a === 'number' && typeof b === 'number' && near(a, b);
  return a.equalBase(b) && near(a.toSI().toNumber(), b.toSI().toNumber());
};

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-6);
