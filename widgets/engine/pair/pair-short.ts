/**
 * Whether a motion and a stroke can be had together at all: a step fixes the net lead, Δ = s k (resolution.ts), and the net lead the
 * turns that a stroke takes, n = S/Δ, whichever the pair. Every turn uses up a whole lead of both threads (travel.ts), so that no
 * pair makes more turns than the thread with the most of them, q d/L. Where that is too few, no search can help.
 */

import { type Millimetres, mm, type Turns, turns } from '../kernel/quantity.ts';
import type { Thread } from '../thread/thread.ts';
import type { Catalogue } from './pair-catalogue.ts';
import type { Wish } from './pair-wish.ts';

export interface ShortOfThread {
  /** Steps in a turn of the divider that asks the fewest turns. */
  readonly k: number;
  /** Steps and turns that the stroke takes at the motion wanted. */
  readonly steps: number;
  readonly turns: Turns;
  /** Of the threads allowed the one with the most turns: what it would use up, what of it may be, and the turns in that. */
  readonly thread: Thread;
  readonly needed: Millimetres;
  readonly there: Millimetres;
  readonly turnsThere: Turns;
  /** The stroke that so many turns make at the motion wanted: no pair has more. */
  readonly reach: Millimetres;
}

/** The shortage, or undefined where thread alone does not forbid the wish. For a wish that searchPairs takes. */
export const shortOfThread = (c: Catalogue, w: Wish): ShortOfThread | undefined => {
  const most = mostTurns(c, w);
  if (most === undefined || !(w.leastStroke > 0)) return undefined;
  const k = Math.max(...w.dividers);
  const Delta = w.motion * k;
  if (!(w.leastStroke / (Delta * (1 + w.band)) > most.turnsThere * (1 + 1e-9))) return undefined;
  const n = w.leastStroke / Delta;
  return {
    ...most,
    k,
    steps: n * k,
    turns: turns(n),
    needed: mm(n * most.thread.L),
    reach: mm(most.turnsThere * Delta),
  };
};

/** What both threads of a pair must be, each by itself; so that the bound holds whatever the other is. */
const mostTurns = (c: Catalogue, w: Wish): Pick<ShortOfThread, 'thread' | 'there' | 'turnsThere'> | undefined => {
  let best: Pick<ShortOfThread, 'thread' | 'there' | 'turnsThere'> | undefined;
  for (const { thread, series, owned } of c.candidates) {
    const mine = owned.right || owned.left;
    const allowed = mine || w.series.some((name) => name === series);
    if (!(allowed && thread.d >= w.smallest - 1e-9 && thread.d <= w.largest + 1e-9)) continue;
    if (w.owned === 'both' && !mine) continue;
    const there = mm(w.usable * thread.d);
    const turnsThere = turns(there / thread.L);
    if (best === undefined || turnsThere > best.turnsThere) best = { thread, there, turnsThere };
  }
  return best;
};
