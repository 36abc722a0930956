/**
 * Play of the two threads of a pair as the figures of this notebook share it: from the classes, at one end of the zones, in
 * their middle or at the other end, or from clearances as measured.
 */
import {
  axialPlayA,
  axialPlayC,
  clearanceOfPieces,
  fitOfThread,
  good,
  type Millimetres,
  mm,
  type Result,
  type Thread,
  turnsLost,
} from '../engine/index.ts';
import type { OptionOf } from '../input/choices.ts';
import { pairOf } from './pair-of.ts';

export interface ThreadPlay {
  readonly thread: Thread;
  /** Diametral clearance at the flanks. */
  readonly c: Millimetres;
  /** Axial play, flank to flank. */
  readonly j: Millimetres;
  /** Where the clearance comes from, in words. */
  readonly from: string;
}

export interface PairPlay {
  readonly A: ThreadPlay;
  readonly C: ThreadPlay;
  readonly Delta: Millimetres;
  /** Turns lost on reversal without preload. */
  readonly lost: number;
}

/** The numbers that play follows from. */
interface PlayNumbers {
  readonly threads: Readonly<Record<'A' | 'C', Thread>>;
  readonly values: Readonly<Record<'c_mA' | 'c_mC', number>>;
  readonly choices: { readonly pieces: OptionOf<'pieces'> };
}

export const pairPlay = (numbers: PlayNumbers): Result<PairPlay> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { A, C, Delta } = pair.value;
  const { pieces } = numbers.choices;
  const cA = clearance(A, pieces, numbers.values.c_mA);
  if (!cA.ok) return cA;
  const cC = clearance(C, pieces, numbers.values.c_mC);
  if (!cC.ok) return cC;
  const jA = axialPlayA.of({ c_A: cA.value.c });
  if (!jA.ok) return jA;
  const jC = axialPlayC.of({ c_C: cC.value.c });
  if (!jC.ok) return jC;
  const lost = turnsLost.of({ ...jA.value, ...jC.value, Delta });
  if (!lost.ok) return lost;
  return good({
    A: { thread: A, ...cA.value, j: jA.value.j_A },
    C: { thread: C, ...cC.value, j: jC.value.j_C },
    Delta,
    lost: lost.value.n_j,
  });
};

const clearance = (
  thread: Thread,
  pieces: OptionOf<'pieces'>,
  measured: number,
): Result<{ c: Millimetres; from: string }> => {
  if (pieces === 'as measured') return good({ c: mm(measured), from: 'as measured' });
  const fit = fitOfThread(thread);
  return fit.ok
    ? good({ c: clearanceOfPieces(fit.value, pieces), from: `${fit.value.classes}, ${pieces} pieces` })
    : fit;
};
