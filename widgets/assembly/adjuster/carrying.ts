/**
 * Which flanks of an adjuster carry, standing upright: the forces across its two threads from the load on its tip, the weights of its
 * parts and its springs, by the engine’s rule. Plus presses the upper part of a thread towards the base. Forces in N.
 */
import {
  diameters,
  type FlankName,
  FREE_FALL,
  flankUnder,
  liftFree,
  liftFreeNut,
  mm,
  newtons,
  threadForces,
  tipsOver,
} from '../../engine/index.ts';
import type { Adjuster, Fitted, Standing } from './adjuster.ts';
import { massOf } from './part.ts';

/** Weight of a gram, N. */
const WEIGHT = FREE_FALL * 1e-6;
const ENDS = {
  'base and carried': ['base', 'carried'],
  'base and turned': ['base', 'turned'],
  'turned and carried': ['turned', 'carried'],
} as const;

export interface Carrying {
  readonly force: { readonly A: number; readonly C: number };
  readonly flank: { readonly A: FlankName | undefined; readonly C: FlankName | undefined };
}

/** `load` on the tip, N, plus down. */
export const carryingOf = (a: Adjuster, n: number, load: number): Carrying => {
  const { springs, A, C } = a;
  const force = threadForces(
    {
      h_A: A.thread.h,
      L_A: A.thread.L,
      h_C: C?.thread.h ?? 1,
      L_C: C?.thread.L ?? 0,
      springs:
        springs?.force === undefined
          ? []
          : [
              {
                lower: ENDS[springs.between][0],
                upper: ENDS[springs.between][1],
                kind: 'pull',
                force: springs.force,
                rate: springs.rate ?? 0,
              },
            ],
      weightTurned: massOf(a.turned) * WEIGHT,
      weightCarried: a.carried ? massOf(a.carried) * WEIGHT : 0,
      attitude: 1,
      load: { least: load, most: load },
      from: n,
      to: n,
      margin: 0,
    },
    n,
    load,
  );
  return { force, flank: { A: flankUnder(force.A), C: C && flankUnder(force.C) } };
};

/** What a push from the side at the tip makes of a thread that an axial force presses on one flank. */
export type Aside = 'all round' | 'lifted' | 'tipped';

/** Middle of what is engaged of a joint, heights over the bottom of the base, mm. */
export const middleOf = ({ lower, upper }: Fitted['joint'], lowerAt: number, upperAt: number): number =>
  (Math.max(lower.from + lowerAt, upper.from + upperAt) + Math.min(lower.to + lowerAt, upper.to + upperAt)) / 2;

/**
 * Past the push that lifts a flank it stands open on the side that is pushed; past the one that tips the part over, the other flank stops it there. No guide
 * takes the push. `push` in N, at the tip. Undefined where no force presses the thread, or nothing is engaged.
 */
export const asideOf = (
  a: Adjuster,
  now: Standing,
  { force }: Carrying,
  push: number,
  name: 'A' | 'C',
): Aside | undefined => {
  const fitted = a[name];
  const engaged = now.engaged[name];
  if (!fitted || flankUnder(force[name]) === undefined || !(engaged > 0)) return undefined;
  const [lower, upper] = name === 'A' ? [now.at.base, now.at.turned] : [now.at.turned, now.at.carried];
  const y = now.height - middleOf(fitted.joint, lower, upper);
  const given = {
    F: newtons(Math.abs(force[name])),
    d_2: diameters(fitted.thread).d2,
    l_e: mm(engaged),
    y: mm(y),
  };
  const lifts = (fitted.joint.upper.gender === 'external' ? liftFree : liftFreeNut).of(given);
  const tips = tipsOver.of(given);
  if (!lifts.ok || !tips.ok) return undefined;
  return push >= tips.value.Q_o ? 'tipped' : push >= lifts.value.Q_lf ? 'lifted' : 'all round';
};
