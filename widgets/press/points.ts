/**
 * Points of the glossary's box at which expressions are compared, and values with their units. The points are a
 * fixed sequence, not random draws, so that a chapter that passes today passes tomorrow.
 */
import { type Unit, unit } from 'mathjs';
import { type SymbolName, symbolFact } from '../engine/index.ts';

export type Quantity = number | Unit;

/** The i-th admissible point: each symbol walks its range by the golden ratio from a start of its own. */
export const pointAt = (symbols: readonly SymbolName[], i: number): Record<string, number> =>
  Object.fromEntries(
    symbols.map((symbol, k) => [
      symbol,
      valueAt(symbol, (0.137 + 0.7548776662 * (i + 1) * (1 + 0.3247179572 * k)) % 1),
    ]),
  );

/** Ranges as wide as 0.3 to 400 are walked by ratio, so that small threads are met as often as large ones. */
const valueAt = (symbol: SymbolName, share: number): number => {
  const { min, max, whole, shown } = symbolFact(symbol);
  if (shown === 'sense') return share < 0.5 ? -1 : 1;
  const value = min > 0 ? min * (max / min) ** share : min + (max - min) * share;
  return whole ? Math.round(value) : value;
};

/** Lengths and forces carry their unit; angles, turns and ratios are pure numbers. */
export const withUnits = (values: Readonly<Record<string, number>>): Record<string, Quantity> => {
  const scope: Record<string, Quantity> = { deg: Math.PI / 180, mm: unit(1, 'mm') };
  for (const [name, value] of Object.entries(values)) {
    const base = symbolFact(name as SymbolName).unit;
    scope[name] = base === '1' || base === 'rad' || base === 'turn' ? value : unit(value, base);
  }
  return scope;
};

/** Whether two values have the same dimension and agree but for rounding. */
export const agree = (a: Quantity, b: Quantity): boolean => {
  if (typeof a === 'number' || typeof b === 'number')
    return typeof a === 'number' && typeof b === 'number' && near(a, b);
  return a.equalBase(b) && near(a.toSI().toNumber(), b.toSI().toNumber());
};

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-6);
