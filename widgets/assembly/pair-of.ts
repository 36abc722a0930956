/** The two threads of a pair, as number sets name them, with their leads as relations take them and the net lead. */
import { good, type Millimetres, netLead, type Plain, plain, type Result, type Thread } from '../engine/index.ts';

export interface BothThreads {
  readonly A: Thread;
  readonly C: Thread;
}

/** Numbers that name the two threads of a pair. */
export interface WithPair {
  readonly threads: Readonly<Record<'A' | 'C', Thread>>;
}

export interface Pair extends BothThreads {
  readonly leads: {
    readonly h_A: Plain;
    readonly L_A: Millimetres;
    readonly h_C: Plain;
    readonly L_C: Millimetres;
  };
  readonly Delta: Millimetres;
}

export const pairOf = ({ threads: { A, C } }: WithPair): Result<Pair> => {
  const leads = { h_A: plain(A.h), L_A: A.L, h_C: plain(C.h), L_C: C.L };
  const net = netLead.of(leads);
  return net.ok ? good({ A, C, leads, Delta: net.value.Delta }) : net;
};
