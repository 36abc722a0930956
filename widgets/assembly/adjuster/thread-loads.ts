/**
 * What each thread of an adjuster carries: its screw and its nut before they strip, over the least engagement that is kept, at the limits of their class where
 * it has any; the core of the screw with what is bored through it; and what stands round the nut, which is the body of an adapter, taken as a ring no wider than its flats.
 */
import {
  coreLoad,
  diameters,
  fitOfThread,
  good,
  type Megapascals,
  mm,
  type Result,
  stripNut,
  stripScrew,
} from '../../engine/index.ts';
import { type Adjuster, type Fitted, partsOf } from './adjuster.ts';
import type { Part, ThreadEnd } from './part.ts';

export interface ThreadLoads {
  readonly joint: 'A' | 'C';
  readonly thread: string;
  readonly engaged: number;
  readonly screw: number;
  readonly nut: number;
  readonly core: number;
  readonly body: number;
  /** Which of them goes first. */
  readonly first: Mode;
}

export const MODES = ['screw', 'nut', 'core', 'body'] as const;
export type Mode = (typeof MODES)[number];

const boreIn = (part: Part, end: ThreadEnd): number =>
  2 * Math.max(0, ...part.bores.filter((b) => b.from < end.to - 1e-9 && b.to > end.from + 1e-9).map((b) => b.r));

/** The least diameter of a part along its nut; of a threaded step its core. */
const thinnestRound = (part: Part, end: ThreadEnd): number =>
  2 *
  Math.min(
    ...part.outer
      .filter((o) => o.from < end.to - 1e-9 && o.to > end.from + 1e-9)
      .map((o) => (o.thread ? diameters(o.thread).d3 / 2 : o.r)),
  );

export const threadLoads = (
  a: Adjuster,
  { tensile, shear }: { readonly tensile: Megapascals; readonly shear: Megapascals },
): Result<readonly ThreadLoads[]> => {
  const found: ThreadLoads[] = [];
  const joints: readonly (readonly ['A' | 'C', Fitted])[] = a.C
    ? [
        ['A', a.A],
        ['C', a.C],
      ]
    : [['A', a.A]];
  for (const [joint, { joint: j, thread }] of joints) {
    const basic = diameters(thread);
    const fit = fitOfThread(thread);
    // Where a class leaves a diameter open, or there is none, the basic one.
    const worst = fit.ok
      ? {
          d_1: fit.value.nut.minor.max ?? basic.d1,
          d_2: fit.value.screw.pitch.min,
          d: fit.value.screw.major.min,
          D_2: fit.value.nut.pitch.max,
        }
      : { d_1: basic.d1, d_2: basic.d2, d: thread.d, D_2: basic.d2 };
    const end = j.lower.gender === 'external' ? j.lower : j.upper;
    const part = partsOf(a).find((p) => p.below === end || p.above === end);
    const engaged = mm(j.kept);
    const screw = stripScrew.of({ tau_a: shear, d_1: mm(worst.d_1), d_2: mm(worst.d_2), P: thread.P, l_e: engaged });
    if (!screw.ok) return screw;
    const nut = stripNut.of({ tau_a: shear, d: mm(worst.d), D_2: mm(worst.D_2), P: thread.P, l_e: engaged });
    if (!nut.ok) return nut;
    const core = coreLoad.of({ sigma_a: tensile, d_3: mm(basic.d3), d_o: mm(part ? boreIn(part, end) : 0) });
    if (!core.ok) return core;
    const nutEnd = j.lower.gender === 'external' ? j.upper : j.lower;
    const nutPart = partsOf(a).find((p) => p.below === nutEnd || p.above === nutEnd);
    const round = nutPart ? thinnestRound(nutPart, nutEnd) : thread.d;
    const body = coreLoad.of({ sigma_a: tensile, d_3: mm(round), d_o: thread.d });
    if (!body.ok) return body;
    const loads = { screw: screw.value.F_st, nut: nut.value.F_sn, core: core.value.F_a, body: body.value.F_a };
    const first = MODES.reduce((x, y) => (loads[y] < loads[x] ? y : x));
    found.push({ joint, thread: thread.designation, engaged, ...loads, first });
  }
  return good(found);
};
