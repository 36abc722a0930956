/** What each thread and the fit of a pressed ball carry, against the most that is on them. */
import { LINES } from '#words/figures/design-sheet-lines.ts';
import type { Adjuster } from '../../assembly/adjuster/adjuster.ts';
import { pressFitOf } from '../../assembly/adjuster/press-fit.ts';
import { threadLoads } from '../../assembly/adjuster/thread-loads.ts';
import type { FitState } from '../../assembly/fit-state.ts';
import { megapascals, type Result } from '../../engine/index.ts';
import { show } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { AT, type Judge } from './judge.ts';
import { type Line, line } from './lines.ts';
import type { SheetNumbers } from './sheet-numbers.ts';

const FORCE = { shown: 'force', digits: 3 } as const;

/** `forces` across the threads and on the tip under the most load; undefined where they are not known. */
export const strengthOf = (
  { values }: SheetNumbers,
  state: Result<FitState>,
  forces: { readonly A: number; readonly C: number; readonly load: number } | undefined,
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
  const threads = loads.value.map((l) => {
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
  return [...threads, ...pressLines(state.value.adjuster, forces.load, { check, leave })];
};

const pressLines = (adjuster: Adjuster, load: number, { check, leave }: Pick<Judge, 'check' | 'leave'>): Line[] => {
  const fit = pressFitOf(adjuster);
  if (fit === undefined) return [];
  if (fit.kind !== 'holds') {
    leave(LINES.press.name, fit.kind === 'loose' ? LINES.press.loose : LINES.press.notRead, AT.press);
    return [];
  }
  check(load <= fit.force, (view) =>
    LINES.press.check({ found: show(load, FORCE, view), wanted: show(fit.force, FORCE, view) }),
  );
  return [line(LINES.press.carries, fit.force, FORCE)];
};
