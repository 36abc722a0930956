/** What the bench shows: the reader’s jack with a fault from a seed, and its readings over one turn up and down. */
import { type Adjuster, type Standing, standing } from '../../assembly/adjuster/adjuster.ts';
import { adjusterOf } from '../../assembly/adjuster/from-numbers.ts';
import { partsStated } from '../../assembly/adjuster/stated.ts';
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

type Read = Pick<State, 'adjuster' | 'bench' | 'loaded' | 'free' | 'checks'>;
let last: { readonly key: string; readonly read: Result<Read> } | undefined;

export type Given = NumbersOf<'A' | 'C', 'n_h' | 'n_s', never, 'adjuster' | 'runs'>;

/** Of the ball at the tip of a jack that is stated by its pair alone, mm. */
const BALL = 3.175;

/** The jack as built takes a while where it leans, so the last bench is kept while its head is turned. */
const benchRead = ({ threads: { A, C }, values, texts }: Given): Result<Read> => {
  const key = JSON.stringify([A.designation, C.designation, texts.adjuster, values.n_s]);
  if (last?.key !== key) {
    const jack =
      partsStated(texts.adjuster) ?? adjusterOf({ threads: { A, C }, choices: { arrangement: 'in line' }, ball: BALL });
    last = { key, read: jack.ok ? workedOut(jack.value, values.n_s) : jack };
  }
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
    ? good({ adjuster, bench: bench.value, loaded: loaded.value, free: free.value, checks: checks.value })
    : checks;
};

export const stateOf = (given: Given): Result<State> => {
  const read = benchRead(given);
  if (!read.ok) return read;
  const n = Math.min(1, Math.max(0, given.values.n_h));
  return good({
    ...read.value,
    standing: standing(read.value.adjuster, n),
    n,
    place: Math.round(n * PER_TURN),
  });
};

/** The reading at a place, come from one side. */
export const readingAt = (rows: readonly BenchReading[], place: number, direction: 'up' | 'down'): BenchReading =>
  rows[direction === 'up' ? place : 2 * PER_TURN + 1 - place] ?? (rows[0] as BenchReading);
