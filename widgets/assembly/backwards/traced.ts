/**
 * Which relations a piece of work asks, with what they took and gave: where a number of a figure comes from. Each relation is listened to
 * for as long as the work takes and no longer, so nothing is slower when nobody asks.
 */
import { type AnyRelation, RELATIONS, type SymbolName } from '../../engine/index.ts';
import { type NumberSet, type Numbers, scopeOf } from '../numbers.ts';
import { comesFrom } from './reach.ts';

export interface Called {
  readonly relation: AnyRelation;
  readonly inputs: Readonly<Record<string, number>>;
  readonly outputs: Readonly<Record<string, number>>;
}

export const traced = <T>(work: () => T): { readonly result: T; readonly calls: readonly Called[] } => {
  const calls: Called[] = [];
  const heard = RELATIONS as readonly { of: AnyRelation['of'] }[];
  const own = heard.map(({ of }) => of);
  for (const relation of RELATIONS) {
    const { of } = relation;
    (relation as { of: AnyRelation['of'] }).of = (inputs) => {
      const given = of(inputs);
      if (given.ok) calls.push({ relation, inputs: inputs as Called['inputs'], outputs: given.value });
      return given;
    };
  }
  try {
    return { result: work(), calls };
  } finally {
    for (const [i, relation] of heard.entries()) relation.of = own[i] ?? relation.of;
  }
};

export interface TracedLink {
  readonly relation: AnyRelation;
  /** Its outputs that lead on. */
  readonly gives: readonly { readonly name: SymbolName; readonly value: number }[];
  readonly takes: readonly {
    readonly name: SymbolName;
    readonly value: number;
    /** The reader’s number it is. */
    readonly input?: string;
    /** Whether another link gives it. */
    readonly worked?: true;
  }[];
}

/** More is no answer to read. */
const MOST_LINKS = 12;

/**
 * The links that lead to a value, the last first: the relation that gave just this number, those that gave what it took, and so on. Where
 * no relation gave it, as where the figure takes the largest of several, all that were asked, each once.
 */
export const linksTo = (
  calls: readonly Called[],
  value: number,
  set: NumberSet,
  numbers: Numbers,
): readonly TracedLink[] => {
  const scope = Object.entries(scopeOf(numbers));
  const readers = (symbol: string, x: number): string | undefined => {
    const from = scope.find(([name, y]) => y === x && (name === symbol || name.startsWith(`${symbol}_`)))?.[0];
    return from === undefined ? undefined : set.inputs.find((input) => comesFrom(input, from))?.name;
  };
  const giving = (x: number) =>
    x === 0
      ? -1
      : calls.findLastIndex(({ outputs }) => Object.values(outputs).some((y) => Math.abs(y) === Math.abs(x)));
  const reached = new Set<number>();
  const visit = (i: number): void => {
    const call = calls[i];
    if (!call || reached.has(i)) return;
    reached.add(i);
    for (const symbol of call.relation.takes) {
      const x = call.inputs[symbol];
      if (x !== undefined && readers(symbol, x) === undefined) visit(giving(x));
    }
  };
  visit(giving(value));
  const once = new Map(calls.map(({ relation }, i) => [relation.name, i]));
  const links = reached.size > 0 ? [...reached].sort((a, b) => b - a) : [...once.values()].reverse();
  return links.slice(0, MOST_LINKS).flatMap((i): TracedLink[] => {
    const call = calls[i];
    if (!call) return [];
    const { relation, inputs, outputs } = call;
    return [
      {
        relation,
        gives: (Object.entries(outputs) as [SymbolName, number][]).map(([name, x]) => ({ name, value: x })),
        takes: relation.takes.flatMap((name) => {
          const x = inputs[name];
          if (x === undefined) return [];
          const input = readers(name, x);
          return [
            {
              name,
              value: x,
              ...(input !== undefined ? { input } : reached.has(giving(x)) ? { worked: true as const } : {}),
            },
          ];
        }),
      },
    ];
  });
};
