/**
 * All relations as one graph: symbols joined by the relations that take and give them. Which relations lead from what is known to what is
 * asked, and, where none gives it, which lead from it to something known, so that it can be found backwards (numerics/invert.ts).
 *
 * A relation of one thread stands for either thread of a pair as well: where the glossary has its symbols with the name of the thread
 * (L and L_A, d_3 and d_3A), `lead` also leads from P_A and N_A to L_A. A symbol is reached once, by the way with the fewest
 * relations, so a circle among them is never walked.
 */
import type { AnyRelation } from './relation.ts';
import { bad, good, type Result } from './result.ts';
import { isSymbol, type SymbolName } from './symbols.ts';

declare module './result.ts' {
  interface Refusals {
    /** `missing` are what the nearest relation would still take. */
    'no-way-to': {
      readonly symbol: SymbolName;
      readonly relation: string | undefined;
      readonly missing: readonly SymbolName[];
    };
  }
}

/** A relation and the symbols that stand in it for its own. */
export interface Call {
  readonly relation: AnyRelation;
  /** By the symbol of the relation, the one that stands for it here. */
  readonly names: Readonly<Partial<Record<SymbolName, SymbolName>>>;
}

/** The symbols by which this call takes what it takes, and gives what it gives. */
export const takenBy = ({ relation, names }: Call): readonly SymbolName[] => relation.takes.map((s) => names[s] ?? s);
export const givenBy = ({ relation, names }: Call): readonly SymbolName[] =>
  (Object.keys(relation.gives) as SymbolName[]).map((s) => names[s] ?? s);

const THREADS = ['A', 'C'] as const;

/** The symbol of one thread of a pair, where the glossary has it. */
const ofThread = (symbol: SymbolName, thread: (typeof THREADS)[number]): SymbolName | undefined =>
  [`${symbol}_${thread}`, `${symbol}${thread}`].find(isSymbol);

/** The relations as they are, and for each thread of a pair. */
export const callsOf = (relations: readonly AnyRelation[]): readonly Call[] => [
  ...relations.map((relation) => ({ relation, names: {} })),
  ...relations.flatMap((relation) =>
    THREADS.flatMap((thread): Call[] => {
      const own = [...relation.takes, ...(Object.keys(relation.gives) as SymbolName[])];
      const names = Object.fromEntries(
        own.flatMap((s) => [[s, ofThread(s, thread)]].filter(([, to]) => to !== undefined)),
      );
      const whole = Object.keys(relation.gives).every((s) => names[s] !== undefined);
      return whole && relation.takes.some((s) => names[s] !== undefined) ? [{ relation, names }] : [];
    }),
  ),
];

/** From what is known to every symbol that it leads to, the call by which it is reached with the fewest others. */
const reachedFrom = (calls: readonly Call[], known: ReadonlySet<string>): ReadonlyMap<string, Call> => {
  const cost = new Map<string, number>([...known].map((s) => [s, 0]));
  const by = new Map<string, Call>();
  for (let changed = true; changed; ) {
    changed = false;
    for (const call of calls) {
      let sum = 1;
      for (const s of takenBy(call)) sum += cost.get(s) ?? Number.POSITIVE_INFINITY;
      if (!Number.isFinite(sum)) continue;
      for (const s of givenBy(call)) {
        if (known.has(s) || !(sum < (cost.get(s) ?? Number.POSITIVE_INFINITY))) continue;
        cost.set(s, sum);
        by.set(s, call);
        changed = true;
      }
    }
  }
  return by;
};

/** The calls that lead to `wanted` from what is known, in the order in which they are worked; undefined where none do. */
export const chainTo = (
  calls: readonly Call[],
  known: ReadonlySet<string>,
  wanted: SymbolName,
): readonly Call[] | undefined => {
  if (known.has(wanted)) return [];
  const by = reachedFrom(calls, known);
  if (!by.has(wanted)) return undefined;
  const chain: Call[] = [];
  const visit = (symbol: string): void => {
    const call = by.get(symbol);
    if (!call || chain.includes(call)) return;
    for (const s of takenBy(call)) visit(s);
    chain.push(call);
  };
  visit(wanted);
  return chain;
};

/** Everything that a chain gives at these values, or why one of its relations has no answer. */
export const workChain = (
  chain: readonly Call[],
  known: Readonly<Record<string, number>>,
): Result<Readonly<Record<string, number>>> => {
  const values: Record<string, number> = { ...known };
  for (const call of chain) {
    const { relation, names } = call;
    const result = relation.of(Object.fromEntries(relation.takes.map((s) => [s, values[names[s] ?? s]])));
    if (!result.ok) return result;
    for (const [symbol, value] of Object.entries(result.value)) {
      const name = names[symbol as SymbolName] ?? symbol;
      // What the reader states rules over what a relation gives beside what it was asked for.
      if (!(name in known)) values[name] = value;
    }
  }
  return good(values);
};

export interface GraphWay {
  readonly chain: readonly Call[];
  /** The known symbol at the end of a way that is gone backwards; undefined where it is gone forwards. */
  readonly meets: SymbolName | undefined;
}

/** How to come to `wanted`: forwards where a chain gives it, or backwards from the known symbol that the shortest chain from it meets. */
export const wayTo = (calls: readonly Call[], known: readonly SymbolName[], wanted: SymbolName): Result<GraphWay> => {
  const all = new Set<string>(known);
  const forwards = chainTo(calls, all, wanted);
  if (forwards) return good({ chain: forwards, meets: undefined });
  const ways = known.flatMap((meets): GraphWay[] => {
    const rest = new Set<string>([...known.filter((s) => s !== meets), wanted]);
    const chain = chainTo(calls, rest, meets);
    return chain?.some((call) => takenBy(call).includes(wanted)) ? [{ chain, meets }] : [];
  });
  const [best] = ways.sort((a, b) => a.chain.length - b.chain.length);
  return best ? good(best) : nothingLeadsTo(calls, all, wanted);
};

/** The relation that lacks least, and what it lacks. */
const nothingLeadsTo = (calls: readonly Call[], known: ReadonlySet<string>, wanted: SymbolName): Result<never> => {
  const reached = new Set([...known, ...reachedFrom(calls, known).keys()]);
  const near = calls
    .filter((call) => givenBy(call).includes(wanted) || takenBy(call).includes(wanted))
    .map((call) => {
      const lacks = (givenBy(call).includes(wanted) ? takenBy(call) : [...takenBy(call), ...givenBy(call)]).filter(
        (s) => s !== wanted && !reached.has(s),
      );
      return { call, lacks };
    })
    .sort((a, b) => a.lacks.length - b.lacks.length)[0];
  return bad('no-way-to', { symbol: wanted, relation: near?.call.relation.name, missing: near?.lacks ?? [] }, wanted);
};
