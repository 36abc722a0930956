/**
 * One number from others, in any order, over the graph of all relations: forwards where relations give it, or backwards from a known number
 * that they lead to. What is known is typed as in a field, with its ± where it has one: `A=M10x1.5`, `z_c=200 µm ± 2 µm`.
 */
import {
  bad,
  type Call,
  callsOf,
  chainTo,
  combined,
  coverageFactor,
  effectiveFreedom,
  givenBy,
  good,
  invert,
  isSymbol,
  type ManyLaw,
  RELATIONS,
  type Result,
  type SymbolName,
  slopesOf,
  symbolFact,
  takenBy,
  wayTo,
  workChain,
} from '../../engine/index.ts';
import { formatOf, show } from '../../input/format.ts';
import { doubtOf, type Spread } from '../../input/spread.ts';
import { showWithDoubt, trimmed } from '../../input/with-doubt.ts';
import { type Input, readField, scopeOf, type Value } from '../numbers.ts';
import { pitchScope } from './reach.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'ask-no-unknown': Readonly<Record<never, never>>;
    'ask-two-unknowns': { readonly names: readonly string[] };
    'ask-name-unknown': { readonly name: string };
    'ask-name-twice': { readonly name: string };
    'ask-known-asked': { readonly name: string };
    'knowns-contradict': {
      readonly symbol: SymbolName;
      readonly read: string;
      readonly gives: string;
      readonly relation: string;
    };
    'wish-out-of-reach': {
      readonly unknown: SymbolName;
      readonly met: SymbolName;
      readonly least: string;
      readonly most: string;
      readonly nearest: string;
      readonly gives: string;
    };
    'wish-without-law': { readonly unknown: SymbolName; readonly met: SymbolName };
  }
}

interface Known {
  readonly name: string;
  readonly input: Input;
  readonly value: Value;
  readonly spread: Spread | undefined;
}

/** One value of the number asked for. */
export interface Answered {
  readonly value: number;
  readonly text: string;
  /** Digits to which the relations give the known number again; undefined where they were gone forwards. */
  readonly digits?: number;
  readonly uncertainty?: {
    readonly standard: number;
    readonly expanded: number;
    readonly k: number;
    readonly text: string;
    /** Shares of the variance by what was known, the largest first. */
    readonly from: Readonly<Record<string, number>>;
  };
}

export interface Solved {
  readonly unknown: SymbolName;
  readonly unit: string;
  readonly answers: readonly Answered[];
  /** The known number at the end of a way that is gone backwards. */
  readonly backwardsFrom?: SymbolName;
  readonly chain: readonly {
    readonly relation: string;
    readonly says: string;
    readonly takes: readonly SymbolName[];
    readonly gives: readonly SymbolName[];
    readonly source: string;
  }[];
}

const THREAD_NAMES = ['A', 'C', 'thread'];

const inputNamed = (name: string): Input | undefined =>
  THREAD_NAMES.includes(name)
    ? { kind: 'thread', name, label: `thread ${name}`, start: '' }
    : isSymbol(name)
      ? {
          kind: 'quantity',
          name,
          label: symbolFact(name).says,
          start: '',
          min: symbolFact(name).min,
          max: symbolFact(name).max,
        }
      : undefined;

/** Reads `NAME=TEXT` for what is known and `NAME` or `NAME=?` for what is asked. */
const readAsked = (
  words: readonly string[],
): Result<{ readonly unknown: SymbolName; readonly known: readonly Known[] }> => {
  const unknown: string[] = [];
  const known: Known[] = [];
  for (const word of words) {
    const [, name = '', text = '?'] = /^\s*([^=\s]+)\s*(?:=\s*(.*))?$/s.exec(word) ?? [];
    const input = inputNamed(name);
    if (!input) return bad('ask-name-unknown', { name: name || word });
    if (text.trim() === '?') {
      if (input.kind !== 'quantity') return bad('ask-name-unknown', { name });
      unknown.push(name);
      continue;
    }
    if (known.some((other) => other.name === name)) return bad('ask-name-twice', { name });
    const read = readField(input, text, 'metric');
    if (!read.ok) return read;
    known.push({ name, input, value: read.value.value, spread: read.value.spread });
  }
  const [first, ...more] = [...new Set(unknown)];
  if (first === undefined) return bad('ask-no-unknown', {});
  if (more.length > 0) return bad('ask-two-unknowns', { names: [first, ...more] });
  if (known.some(({ name }) => name === first)) return bad('ask-known-asked', { name: first });
  return good({ unknown: first as SymbolName, known });
};

/** The symbols that a known number gives, at a value of it: a thread’s is its pitch. */
const symbolsAt = ({ input, name, value }: Known, x: number): Readonly<Record<string, number>> => {
  if (input.kind !== 'thread' || typeof value !== 'object') return { [name]: x };
  const own = scopeOf({ threads: { [name]: value }, values: {}, choices: {} });
  return x === value.P ? own : { ...own, ...pitchScope(name, value, x) };
};
const numberOf = ({ value }: Known): number => (typeof value === 'object' ? value.P : Number(value));

export const solveAsked = (words: readonly string[]): Result<Solved> => {
  const read = readAsked(words);
  if (!read.ok) return read;
  const { unknown, known } = read.value;
  const calls = callsOf(RELATIONS);
  const scopeAt = (xs: readonly number[]) =>
    Object.assign({}, ...known.map((k, i) => symbolsAt(k, xs[i] ?? 0))) as Record<string, number>;
  const xs = known.map(numberOf);
  const scope = scopeAt(xs);
  const contradicted = contradiction(calls, known, scope);
  if (contradicted) return contradicted;
  const symbols = Object.keys(scope).filter((s): s is SymbolName => isSymbol(s) && s !== unknown);
  const way = wayTo(calls, symbols, unknown);
  if (!way.ok) return way;
  const { chain, meets } = way.value;
  const fact = symbolFact(unknown);
  const told = {
    unknown,
    unit: fact.unit,
    chain: chain.map((call) => ({
      relation: call.relation.name,
      says: call.relation.says,
      takes: takenBy(call),
      gives: givenBy(call),
      source: call.relation.source,
    })),
  };
  const answered = (value: number, slopes: readonly number[] | undefined, digits?: number): Answered => ({
    value,
    text: trimmed(show(value, formatOf(fact, 6), 'metric')),
    ...(digits === undefined ? {} : { digits }),
    ...uncertaintyOf(known, slopes, value, unknown),
  });
  const us = known.map(({ spread }) => (spread ? doubtOf(spread).u : 0));
  if (meets === undefined) {
    const law: ManyLaw = (at) => {
      const worked = workChain(chain, without(scopeAt(at), unknown));
      return worked.ok ? worked.value[unknown] : undefined;
    };
    const worked = workChain(chain, without(scope, unknown));
    if (!worked.ok) return worked;
    const value = worked.value[unknown];
    if (value === undefined) return bad('ask-name-unknown', { name: unknown });
    return good({ ...told, answers: [answered(value, slopesOf(law, xs, us))] });
  }
  const met = (at: readonly number[], x: number): number | undefined => {
    const worked = workChain(chain, { ...without(scopeAt(at), meets), [unknown]: x });
    return worked.ok ? worked.value[meets] : undefined;
  };
  const wish = scope[meets] ?? 0;
  const { answers, nearest, least, most } = invert((x) => met(xs, x), wish, {
    min: fact.min,
    max: fact.max,
    whole: fact.whole === true,
  });
  if (answers.length === 0) {
    if (!nearest || least === undefined || most === undefined) return bad('wish-without-law', { unknown, met: meets });
    const shown = (y: number) => trimmed(show(y, formatOf(symbolFact(meets), 6), 'metric'));
    return bad('wish-out-of-reach', {
      unknown,
      met: meets,
      least: shown(least),
      most: shown(most),
      nearest: trimmed(show(nearest.x, formatOf(fact, 6), 'metric')),
      gives: shown(nearest.y),
    });
  }
  return good({
    ...told,
    backwardsFrom: meets,
    answers: answers.map(({ x, digits }) => answered(x, backwardSlopes(met, xs, us, x, known, meets), digits)),
  });
};

const without = (scope: Readonly<Record<string, number>>, name: string): Record<string, number> => {
  const { [name]: _, ...rest } = scope;
  return rest;
};

/** dx/dk of an answer: what keeps f(k, x) at the known number, by the slopes of f. */
const backwardSlopes = (
  met: (at: readonly number[], x: number) => number | undefined,
  xs: readonly number[],
  us: readonly number[],
  x: number,
  known: readonly Known[],
  meets: string,
): readonly number[] | undefined => {
  const law: ManyLaw = (all) => met(all.slice(0, -1), all.at(-1) ?? 0);
  const slopes = slopesOf(law, [...xs, x], [...us, 1e-6 * (Math.abs(x) || 1)]);
  const own = slopes?.at(-1);
  if (!slopes || own === undefined || own === 0) return undefined;
  return known.map(({ name }, i) => ((name === meets ? 1 : 0) - (slopes[i] ?? 0)) / own);
};

const uncertaintyOf = (
  known: readonly Known[],
  slopes: readonly number[] | undefined,
  value: number,
  unknown: SymbolName,
): Pick<Answered, 'uncertainty'> | Readonly<Record<never, never>> => {
  const doubts = known.map(({ spread }) => (spread ? doubtOf(spread) : undefined));
  const us = doubts.map((doubt) => doubt?.u ?? 0);
  const u = slopes ? combined(slopes, us) : 0;
  if (!slopes || !(u > 0)) return {};
  const parts = slopes.map((slope, i) => ({
    part: slope * (us[i] ?? 0),
    freedom: doubts[i]?.freedom ?? Number.POSITIVE_INFINITY,
  }));
  const k = coverageFactor(effectiveFreedom(u, parts));
  const shares = known
    .map(({ name }, i) => [name, ((parts[i]?.part ?? 0) / u) ** 2] as const)
    .filter(([, share]) => share > 0)
    .sort((a, b) => b[1] - a[1]);
  return {
    uncertainty: {
      standard: u,
      expanded: k * u,
      k,
      text: showWithDoubt(value, k * u, formatOf(symbolFact(unknown)), 'metric'),
      from: Object.fromEntries(shares),
    },
  };
};

/** So far apart two known numbers are not the same, as a share; a ± allows as much again. */
const APART = 1e-6;

/** The first known number that the others give otherwise, by every relation that gives it from them. */
const contradiction = (calls: readonly Call[], known: readonly Known[], scope: Readonly<Record<string, number>>) => {
  for (const { name, input, spread } of known) {
    if (input.kind !== 'quantity' || !isSymbol(name)) continue;
    const rest = without(scope, name);
    const read = scope[name] ?? 0;
    let first: { readonly gives: number; readonly relation: string } | undefined;
    let agrees = false;
    for (const call of calls.filter((c) => givenBy(c).includes(name))) {
      const chain = chainTo(
        [...calls.filter((c) => !givenBy(c).includes(name)), call],
        new Set(Object.keys(rest)),
        name,
      );
      const worked = chain && workChain(chain, rest);
      const gives = worked?.ok ? worked.value[name] : undefined;
      if (gives === undefined) continue;
      first ??= { gives, relation: call.relation.name };
      agrees ||= Math.abs(gives - read) <= APART * Math.max(Math.abs(gives), Math.abs(read)) + 2 * (spread?.half ?? 0);
    }
    if (!first || agrees) continue;
    const shown = (value: number) => trimmed(show(value, formatOf(symbolFact(name), 6), 'metric'));
    return bad('knowns-contradict', {
      symbol: name,
      read: shown(read),
      gives: shown(first.gives),
      relation: first.relation,
    });
  }
  return undefined;
};
