/** Random admissible points of the glossary's box. */
import fc from 'fast-check';
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
