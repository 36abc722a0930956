/** Random admissible points of the glossary's box, and the same point with units for a general expression library. */
import fc from 'fast-check';
import { unit as withUnit } from 'mathjs';
import { type SymbolName, symbolFact } from '../../widgets/engine/index.ts';

/** Arbitrary values for these symbols, each within its bounds; lengths in mm, angles in rad, turns in turns. */
export const admissible = (symbols: readonly SymbolName[]): fc.Arbitrary<Record<string, number>> =>
  fc.record(Object.fromEntries(symbols.map((s) => [s, within(s)])));

const within = (symbol: SymbolName): fc.Arbitrary<number> => {
  const { min, max, whole, shown } = symbolFact(symbol);
  if (shown === 'sense') return fc.constantFrom(1, -1);
  if (whole) return fc.integer({ min, max });
  // A grid, not raw doubles: subnormal lengths test the processor, not the physics.
  return fc.integer({ min: 0, max: 1e7 }).map((i) => min + ((max - min) * i) / 1e7);
};

/** Angles, turns and ratios are pure numbers here; lengths and forces carry their unit. */
export const withUnits = (values: Readonly<Record<string, number>>): Record<string, unknown> => {
  const scope: Record<string, unknown> = { deg: Math.PI / 180, mm: withUnit(1, 'mm') };
  for (const [symbol, value] of Object.entries(values)) {
    const { unit } = symbolFact(symbol as SymbolName);
    scope[symbol] = unit === 'mm' || unit === 'N' ? withUnit(value, unit) : value;
  }
  return scope;
};
