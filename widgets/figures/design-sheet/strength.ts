/** What each thread carries before it strips or its core goes, against the most that is across it. */
import { LINES } from '#words/figures/design-sheet-lines.ts';
import { threadLoads } from '../../assembly/adjuster/thread-loads.ts';
import type { FitState } from '../../assembly/fit-state.ts';
import { megapascals, type Result } from '../../engine/index.ts';
import { show } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { AT, type Judge } from './judge.ts';
import { type Line, line } from './lines.ts';
import type { SheetNumbers } from './sheet-numbers.ts';

const FORCE = { shown: 'force', digits: 3 } as const;

/** `forces` across the threads under the most load; undefined where they are not known. */
export const strengthOf = (
  { values }: SheetNumbers,
  state: Result<FitState>,
  forces: { readonly A: number; readonly C: number } | undefined,
  { check, leave }: Judge,
): Line[] => {
  const unknown = (why: string): Line[] => {
    leave(LINES.strength.name, why, AT.strength);
    return [];
  };
  if (!state.ok) return unknown(reasonOf(state));
  const loads = threadLoads(state.value.adjuster, {
    tensile: megapascals(values.sigma_a),
    shear: megapascals(values.tau_a),
  });
  if (!loads.ok) return unknown(reasonOf(loads));
  if (!forces) return unknown(LINES.effort.forcesUnknown);
  return loads.value.map((l) => {
    const [carries, across] = [l[l.first], Math.abs(forces[l.joint])];
    check(across <= carries, (view) =>
      LINES.strength.check({
        thread: l.joint,
        first: l.first,
        found: show(across, FORCE, view),
        wanted: show(carries, FORCE, view),
      }),
    );
    return line(LINES.strength.carries(l.joint, l.first), carries, FORCE);
  });
};
