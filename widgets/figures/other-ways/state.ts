/** The reader’s numbers as the engine takes them: five ways for one wanted motion, under one load, with the reader’s prices. */

import type { Numbers } from '../../assembly/numbers.ts';
import {
  bad,
  CONTACT_MATERIALS,
  diameters,
  good,
  type LoadedScrew,
  type LoadedWay,
  type Result,
  sameMotion,
  type Thread,
  type WantedMotion,
  type Way,
  type Workshop,
  waysUnderLoad,
} from '../../engine/index.ts';
import { readWayPrices } from '../../input/way-prices.ts';

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
  const { d2, d3 } = diameters(L === thread.L ? thread : { d: thread.d, P: L as Thread['P'] });
  return { h: thread.h, L, d2, d3 };
};

export const waysState = (numbers: Numbers): Result<WaysState> => {
  const { thread: D, B, A, C } = numbers.threads;
  if (!B || !D || !A || !C)
    return bad('This figure needs a fine thread, a drive thread and the two threads of a pair.');
  if (A.h !== C.h)
    return bad(
      'The two threads of the pair are of unlike hands, so their leads add and the motion is coarse: give both the same hand.',
    );
  const v = numbers.values;
  // A stroke down is as long as one up, and an angle back as fine as one forward.
  const wanted = {
    resolution: v.s_h ?? 0,
    stroke: Math.abs(v.S_w ?? 0),
    height: v.H_w ?? 0,
    hand: Math.abs(v.theta_h ?? 0),
  };
  const list = readWayPrices(numbers.texts?.prices ?? '');
  if (!list.ok) return list;
  const bar = v.t_b ?? 0;
  const shop: Workshop = {
    finestLead: B.L,
    driveLead: D.L,
    driveDiameter: D.d,
    engagement: bar,
    pair: { A: A.L, C: C.L },
    shortArm: v.b_l ?? 0,
    seat: bar,
    ball: v.R_t ?? 0,
    prices: list.value.prices,
  };
  const ways = sameMotion(wanted, shop);
  if (!ways.ok) return ways;
  const steel = CONTACT_MATERIALS[0];
  if (!steel) return bad('There is no table of materials.');
  const load = v.F ?? 0;
  const [plain] = ways.value;
  const loaded = waysUnderLoad(ways.value, {
    load,
    mu: v.mu ?? 0,
    plain: screw(B, plain?.perTurn),
    drive: screw(D),
    A: screw(A),
    C: screw(C),
    bar,
    shortArm: shop.shortArm,
    ball: shop.ball,
    E: steel.E,
    nu: steel.nu,
  });
  if (!loaded.ok) return loaded;
  const whole = ways.value.flatMap((way) => {
    const under = loaded.value.find(({ name }) => name === way.name);
    return under ? [{ ...way, ...under }] : [];
  });
  return good({ ways: whole, wanted, shop, load, threads: { B, D, A, C } });
};
