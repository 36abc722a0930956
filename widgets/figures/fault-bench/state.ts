/** What the bench shows: the reader’s jack with a fault from a seed, and its readings over one turn up and down. */
import { type Adjuster, type Standing, standing } from '../../assembly/adjuster/adjuster.ts';
import { readAdjuster } from '../../assembly/adjuster/text.ts';
import {
  type Bench,
  type BenchReading,
  benchOf,
  type Checks,
  checksOf,
  readingsOf,
} from '../../assembly/bench/hidden-fault.ts';
import { good, type Result } from '../../engine/index.ts';
import type { NumbersOf } from '../kit/figure.ts';

/** Places in a turn that are read. */
export const PER_TURN = 4;
const PLACES = Array.from({ length: PER_TURN + 1 }, (_, i) => i / PER_TURN);

export interface State {
  readonly adjuster: Adjuster;
  readonly bench: Bench;
  readonly standing: Standing;
  readonly loaded: readonly BenchReading[];
  readonly free: readonly BenchReading[];
  readonly checks: Checks;
  /** Of the head now, and the place that is nearest. */
  readonly n: number;
  readonly place: number;
}

type Read = Pick<State, 'bench' | 'loaded' | 'free' | 'checks'>;
let last: { readonly adjuster: Adjuster; readonly seed: number; readonly read: Result<Read> } | undefined;

/** The jack as built takes a while where it leans, so the last bench is kept while its head is turned. */
const benchRead = (adjuster: Adjuster, seed: number): Result<Read> => {
  if (last?.adjuster !== adjuster || last.seed !== seed) last = { adjuster, seed, read: workedOut(adjuster, seed) };
  return last.read;
};

const workedOut = (adjuster: Adjuster, seed: number): Result<Read> => {
  const bench = benchOf(adjuster, seed);
  if (!bench.ok) return bench;
  const loaded = readingsOf(bench.value, PLACES, true);
  if (!loaded.ok) return loaded;
  const free = readingsOf(bench.value, PLACES, false);
  if (!free.ok) return free;
  const checks = checksOf(bench.value);
  return checks.ok
    ? good({ bench: bench.value, loaded: loaded.value, free: free.value, checks: checks.value })
    : checks;
};

export const stateOf = ({ values, texts }: NumbersOf<never, 'n' | 'n_s', never, 'adjuster'>): Result<State> => {
  const adjuster = readAdjuster(texts.adjuster);
  if (!adjuster.ok) return adjuster;
  const read = benchRead(adjuster.value, values.n_s);
  if (!read.ok) return read;
  const n = Math.min(1, Math.max(0, values.n));
  return good({
    ...read.value,
    adjuster: adjuster.value,
    standing: standing(adjuster.value, n),
    n,
    place: Math.round(n * PER_TURN),
  });
};

/** The reading at a place, come from one side. */
export const readingAt = (rows: readonly BenchReading[], place: number, direction: 'up' | 'down'): BenchReading =>
  rows[direction === 'up' ? place : 2 * PER_TURN + 1 - place] ?? (rows[0] as BenchReading);
