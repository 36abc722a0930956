/**
 * The reading on the carried part against turns, out and back, with and without a load that keeps its sign, from the
 * notebook's one simulator. Before the start the pair has been turned up to nought from below, so that the flanks bear as they do
 * on the way out.
 */

import type { PairPlay } from '../../assembly/pair-play.ts';
import { at, equalTurns, type Flank, good, newtons, type Result, simulate, turns } from '../../engine/index.ts';

export interface Trace {
  readonly n: readonly number[];
  readonly reading: readonly number[];
  /** Reading and flanks at the end. */
  readonly end: number;
  readonly flankA: Flank;
  readonly flankC: Flank;
}

/** Moves to a straight run: enough that a corner where the flanks meet is drawn within a two-hundredth of the run. */
const PIECES = 96;

/** The trace through these stations, in turns, the first being nought; `pieces` moves between two. */
export const traceThrough = (
  play: PairPlay,
  forces: { readonly load: number; readonly friction: number },
  stations: readonly number[],
  pieces = PIECES,
): Result<Trace> => {
  const { A, C, lost } = play;
  const wayIn = Math.min(600, lost + 1);
  const moves = [
    ...equalTurns(turns(-wayIn), 1),
    ...equalTurns(turns(wayIn), 1),
    ...stations.slice(1).flatMap((n, i) => equalTurns(turns(n - at(stations, i)), pieces)),
  ];
  const run = simulate(
    {
      A: { h: A.thread.h, L: A.thread.L, play: A.j },
      C: { h: C.thread.h, L: C.thread.L, play: C.j },
      loads: { turned: newtons(0), carried: newtons(forces.load) },
      drags: { turned: newtons(0), carried: newtons(forces.friction) },
    },
    moves,
  );
  if (!run.ok) return run;
  const { n, carried, flankA, flankC } = run.value;
  const zero = at(carried, 2);
  const last = n.length - 1;
  return good({
    n: [...n.subarray(2)],
    reading: [...carried.subarray(2)].map((z) => z - zero),
    end: at(carried, last) - zero,
    flankA: at(flankA, last) as Flank,
    flankC: at(flankC, last) as Flank,
  });
};

/** Stations with every run between two reversals joined to one. */
export const joined = (stations: readonly number[], next: number): readonly number[] => {
  const [before, last] = [stations.at(-2), at(stations, stations.length - 1)];
  if (next === last) return stations;
  const goesOn = before !== undefined && Math.sign(last - before) === Math.sign(next - last);
  return goesOn ? [...stations.slice(0, -1), next] : [...stations, next];
};
