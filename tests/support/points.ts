/** Random admissible points of the glossary's box, and the same point with units for a general expression library. */
import fc from 'fast-check';
import { unit as withUnit } from 'mathjs';
import { type BaseUnit, type SymbolName, symbolFact } from '../../widgets/engine/index.ts';

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
  '1/K': '1/K',
  h: 'h',
  '1': undefined,
};

/** What an evaluated formula is in the symbol's base unit; a formula of another dimension throws or is no number. */
export const inBase = (evaluated: { toNumber?(unit: string): number }, unit: BaseUnit): unknown => {
  const spelling = SPELT[unit];
  return spelling === undefined ? evaluated : evaluated.toNumber?.(spelling);
};

/** Angles, turns and ratios are pure numbers here; lengths, forces and the rest carry their unit. */
export const withUnits = (values: Readonly<Record<string, number>>): Record<string, unknown> => {
  const scope: Record<string, unknown> = { deg: Math.PI / 180, mm: withUnit(1, 'mm') };
  for (const [symbol, value] of Object.entries(values)) {
    const { unit } = symbolFact(symbol as SymbolName);
    const spelling = SPELT[unit];
    scope[symbol] = spelling === undefined ? value : withUnit(value, spelling);
  }
  return scope;
};
