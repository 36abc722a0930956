/**
 * A relation: one piece of physics, written once and read by widgets, worked examples, exercises and tests.
 *
 * It names the symbols it takes and gives (words, units and bounds stand in the glossary, symbols.ts), the
 * formula of each output in a plain algebraic spelling from which the typeset line is made and against which
 * `compute` is tested at random admissible points, and its source. `of` checks the inputs and gives a
 * result or a reason.
 */
import type { BaseUnits } from './quantity.ts';
import { type Bad, bad, good, type Result } from './result.ts';
import { type SYMBOLS, type SymbolName, symbolFact } from './symbols.ts';

declare module './result.ts' {
  interface Refusals {
    'symbol-missing': { readonly symbol: SymbolName };
    'symbol-not-a-number': { readonly symbol: SymbolName; readonly read: unknown };
    'symbol-not-a-hand': { readonly symbol: SymbolName; readonly read: number };
    'symbol-out-of-bounds': { readonly symbol: SymbolName; readonly read: number };
    'symbol-not-whole': { readonly symbol: SymbolName; readonly read: number };
    'output-without-bound': { readonly symbol: SymbolName };
  }
}

type ValueOf<S extends SymbolName> = BaseUnits[(typeof SYMBOLS)[S]['unit']];
export type Values<S extends SymbolName> = { readonly [K in S]: ValueOf<K> };

/** Nothing to say of names that the glossary has; of others, words that the compiler shows where they stand. */
type Known<S extends string> = [Exclude<S, SymbolName>] extends [never]
  ? unknown
  : `No symbol “${Exclude<S, SymbolName>}”: add it to widgets/engine/kernel/symbols.ts`;

interface Definition<I extends string, O extends string> {
  /** As a chapter names it: lower case, words joined by hyphens. */
  readonly name: string;
  /** One sentence in plain words. */
  readonly says: string;
  readonly takes: readonly I[];
  /** Each output with its formula over the inputs, or undefined where a table rules. */
  readonly gives: { readonly [K in O]: string | undefined };
  readonly source: string;
  /** Why these inputs, each within its bounds, have no answer together; undefined where they have one. */
  readonly refuses?: (inputs: Values<I & SymbolName>) => Bad | undefined;
  readonly compute: (inputs: Values<I & SymbolName>) => Values<O & SymbolName>;
}

export interface Relation<I extends SymbolName = SymbolName, O extends SymbolName = SymbolName> {
  readonly name: string;
  readonly says: string;
  readonly takes: readonly I[];
  readonly gives: { readonly [K in O]: string | undefined };
  readonly source: string;
  readonly of: (inputs: Values<I>) => Result<Values<O>>;
}

/** A relation whose symbols are only known at run time, as chapters and the command line use it. */
export interface AnyRelation {
  readonly name: string;
  readonly says: string;
  readonly takes: readonly SymbolName[];
  readonly gives: Readonly<Partial<Record<SymbolName, string | undefined>>>;
  readonly source: string;
  readonly of: (inputs: Readonly<Record<string, unknown>>) => Result<Readonly<Record<string, number>>>;
}

/*#__NO_SIDE_EFFECTS__*/
export const relation = <const I extends string, const O extends string>(
  definition: Definition<I, O> & { readonly takes: NoInfer<Known<I>>; readonly gives: NoInfer<Known<O>> },
): Relation<I & SymbolName, O & SymbolName> => ({
  name: definition.name,
  says: definition.says,
  takes: definition.takes as readonly (I & SymbolName)[],
  gives: definition.gives as Relation<I & SymbolName, O & SymbolName>['gives'],
  source: definition.source,
  of: (inputs) => {
    for (const symbol of definition.takes as readonly (I & SymbolName)[]) {
      const refusal = outOfBounds(symbol, inputs[symbol]);
      if (refusal) return refusal;
    }
    const refused = definition.refuses?.(inputs);
    if (refused !== undefined) return refused;
    const outputs = definition.compute(inputs);
    for (const [symbol, value] of Object.entries<number>(outputs))
      if (!Number.isFinite(value)) return bad('output-without-bound', { symbol: symbol as SymbolName });
    return good(outputs);
  },
});

/** The reason why `value` can't stand for `symbol`, or undefined where it can. */
export const outOfBounds = (symbol: SymbolName, value: unknown): Bad | undefined => {
  const fact = symbolFact(symbol);
  if (value === undefined) return bad('symbol-missing', { symbol }, symbol);
  if (!(typeof value === 'number' && Number.isFinite(value)))
    return bad('symbol-not-a-number', { symbol, read: value }, symbol);
  if (fact.shown === 'sense' && !(value === 1 || value === -1))
    return bad('symbol-not-a-hand', { symbol, read: value }, symbol);
  if (!(value >= fact.min && value <= fact.max)) return bad('symbol-out-of-bounds', { symbol, read: value }, symbol);
  if (fact.whole && !Number.isInteger(value)) return bad('symbol-not-whole', { symbol, read: value }, symbol);
  return undefined;
};
