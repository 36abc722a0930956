/** Random admissible points of the glossary's box. */
import fc from 'fast-check';
import { type SymbolName, symbolFact } from '../../widgets/engine/index.ts';

/** Arbitrary values for these symbols, each within its bounds; lengths in mm, angles in rad, turns in turns. */
export const admissible = (symbols: readonly SymbolName[]): fc.Arbitrary<Record<string, number>> =>
  fc.record(Object.fromEntries(symbols.map((s) => [s, within(s)])));

/** The same box where it is hardest: at its bounds, at nought of either sign, and by ratio down to a billionth of its width. */
export const anywhere = (symbols: readonly SymbolName[]): fc.Arbitrary<Record<string, number>> =>
  fc.record(Object.fromEntries(symbols.map((s) => [s, anywhereWithin(s)])));

const anywhereWithin = (symbol: SymbolName): fc.Arbitrary<number> => {
  const { min, max, whole } = symbolFact(symbol);
  const least = min > 0 ? min : 1e-9 * max;
  const byRatio = fc
    .tuple(fc.constantFrom(1, -1), fc.integer({ min: 0, max: 1e6 }))
    .map(([sign, i]) => sign * least * (max / least) ** (i / 1e6))
    .map((x) => Math.min(max, Math.max(min, whole ? Math.round(x) : x)));
  return fc.oneof(
    fc.constantFrom(min, max, ...(min <= 0 && max >= 0 && symbolFact(symbol).shown !== 'sense' ? [0, -0] : [])),
    { weight: 2, arbitrary: symbolFact(symbol).shown === 'sense' ? fc.constantFrom(1, -1) : byRatio },
  );
};

/** Every corner of the box: each symbol at one of its bounds. */
export const corners = (symbols: readonly SymbolName[]): Record<string, number>[] =>
  symbols.reduce<Record<string, number>[]>(
    (some, s) => some.flatMap((c) => [symbolFact(s).min, symbolFact(s).max].map((bound) => ({ ...c, [s]: bound }))),
    [{}],
  );

const within = (symbol: SymbolName): fc.Arbitrary<number> => {
  const { min, max, whole, shown } = symbolFact(symbol);
  if (shown === 'sense') return fc.constantFrom(1, -1);
  if (whole) return fc.integer({ min, max });
  // A grid, not raw doubles: subnormal lengths test the processor, not the physics.
  return fc.integer({ min: 0, max: 1e7 }).map((i) => min + ((max - min) * i) / 1e7);
};
