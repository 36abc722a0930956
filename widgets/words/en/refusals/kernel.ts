/** Why a number can’t stand for a symbol, and why a relation has no answer. */
import { asRead, listed, type SymbolFact, type SymbolName, symbolFact } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const sentence = (symbol: SymbolName): string => {
  const { says } = symbolFact(symbol);
  return says.charAt(0).toUpperCase() + says.slice(1);
};

/** A bound in the unit a reader thinks in: angles in degrees, everything else as the engine holds it. */
const inUnit = (value: number, fact: SymbolFact): string => {
  const text = (x: number) => asRead(Number(x.toPrecision(6)));
  // The largest numbers would grow past all numbers on the way to degrees.
  const degrees = Math.min(Number.MAX_VALUE, Math.max(-Number.MAX_VALUE, value * (180 / Math.PI)));
  if (fact.unit === 'rad') return `${text(degrees)}°`;
  if (fact.unit === 'turn') return `${text(value)} turns`;
  return `${text(value)}${fact.unit === '1' ? '' : ` ${fact.unit}`}`;
};

const allowed = (symbol: SymbolName): string => {
  const fact = symbolFact(symbol);
  return `from ${inUnit(fact.min, fact)} to ${inUnit(fact.max, fact)}${fact.because === undefined ? '' : `, because ${fact.because}`}`;
};

export const KERNEL = {
  'symbol-missing': ({ symbol }) => `${sentence(symbol)} is missing: give a number ${allowed(symbol)}.`,
  'symbol-not-a-number': ({ symbol, read }) =>
    `${sentence(symbol)}: read ${asRead(read)}, which is not a number; give one ${allowed(symbol)}.`,
  'symbol-not-a-hand': ({ symbol, read }) =>
    `${sentence(symbol)}: read ${asRead(read)}; it is 1 for a right-hand thread and −1 for a left-hand one.`,
  'symbol-out-of-bounds': ({ symbol, read }) =>
    `${sentence(symbol)}: read ${inUnit(read, symbolFact(symbol))}; give a value ${allowed(symbol)}.`,
  'symbol-not-whole': ({ symbol, read }) =>
    `${sentence(symbol)}: read ${asRead(read)}; only whole numbers count here, give one ${allowed(symbol)}.`,
  'output-without-bound': ({ symbol }) =>
    `${sentence(symbol)} comes out without bound for these values: bring them nearer to those of a real thread.`,
  'no-way-to': ({ symbol, relation, missing }) =>
    relation === undefined
      ? `${sentence(symbol)} is in no relation: ask for another symbol, npm run ask lists them.`
      : `Nothing leads to ${symbol} (${symbolFact(symbol).says}) from what is known; ${relation} comes nearest and still takes ${listed(missing.map((m) => `${m} (${symbolFact(m).says})`))}: give ${missing.length === 1 ? 'it' : 'them, but for one'}.`,
} satisfies Partial<RefusalWords>;
