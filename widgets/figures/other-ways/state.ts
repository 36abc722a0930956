/** The reader’s numbers as the engine takes them: five ways for one wanted motion, under one load, with the reader’s prices. */

import {
  at,
  bad,
  CONTACT_MATERIALS,
  diameters,
  good,
  type LoadedScrew,
  type LoadedWay,
  mm,
  type Result,
  sameMotion,
  type Thread,
  type WantedMotion,
  type Way,
  type Workshop,
  waysUnderLoad,
} from '../../engine/index.ts';
import { readWayPrices } from '../../input/way-prices.ts';
import type { NumbersOf } from '../kit/figure.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'ways-unlike-hands': Record<never, never>;
  }
}

export const QUANTITIES = ['s_h', 'theta_h', 'S_w', 'H_w', 'F', 'mu', 'c', 't_b', 'b_l', 'R_t'] as const;
type Given = NumbersOf<'thread' | 'B' | 'A' | 'C', (typeof QUANTITIES)[number], never, 'prices'>;

export type WholeWay = Way & Omit<LoadedWay, 'name'>;

export interface WaysState {
  readonly ways: readonly WholeWay[];
  readonly wanted: WantedMotion;
  readonly shop: Workshop;
  readonly load: number;
  readonly threads: { readonly B: Thread; readonly D: Thread; readonly A: Thread; readonly C: Thread };
}

const screw = (thread: Thread, L: number = thread.L): LoadedScrew => {
  // A plain screw coarser than the finest thread is cut coarser on the same diameter.
  const { d2, d3 } = diameters(L === thread.L ? thread : { d: thread.d, P: mm(L) });
  return { h: thread.h, L, d: thread.d, d2, d3 };
};

export const waysState = ({ threads: { thread: D, B, A, C }, values, texts }: Given): Result<WaysState> => {
  if (A.h !== C.h) return bad('ways-unlike-hands', {});
  const { s_h, theta_h, S_w, H_w, F: load, mu, c, t_b: bar, b_l, R_t } = values;
  // A stroke down is as long as one up, and an angle back as fine as one forward.
  const wanted = { resolution: s_h, stroke: Math.abs(S_w), height: H_w, hand: Math.abs(theta_h) };
  const list = readWayPrices(texts.prices);
  if (!list.ok) return list;
  const shop: Workshop = {
    finestLead: B.L,
    driveLead: D.L,
    driveDiameter: D.d,
    engagement: bar,
    pair: { A: A.L, C: C.L },
    shortArm: b_l,
    seat: bar,
    ball: R_t,
    prices: list.value.prices,
  };
  const ways = sameMotion(wanted, shop);
  if (!ways.ok) return ways;
  const steel = at(CONTACT_MATERIALS, 0);
  const loaded = waysUnderLoad(ways.value, {
    load,
    mu,
    plain: screw(B, at(ways.value, 0).perTurn),
    drive: screw(D),
    A: screw(A),
    C: screw(C),
    bar,
    shortArm: shop.shortArm,
    ball: shop.ball,
    E: steel.E,
    nu: steel.nu,
    clearance: c,
  });
  if (!loaded.ok) return loaded;
  const whole = ways.value.map((way, i) => ({ ...way, ...at(loaded.value, i) }));
  return good({ ways: whole, wanted, shop, load, threads: { B, D, A, C } });
};
