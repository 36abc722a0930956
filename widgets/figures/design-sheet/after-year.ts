/** Whether the springs still seat both threads when they have been stretched for a year, by the share that their row says they lose. */

import { LINES } from '#words/figures/design-sheet-lines.ts';
import { threadVerdictText } from '#words/force.ts';
import type { Adjuster } from '../../assembly/adjuster/adjuster.ts';
import { FIRST_READING, YEAR } from '../../assembly/spring/year.ts';
import { hours, newtons, plain, preloadVerdict, retainedForce } from '../../engine/index.ts';
import { show } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { AT, type Judge } from './judge.ts';
import { type Line, range } from './lines.ts';
import { preloadOfSheet, type SheetNumbers } from './sheet-numbers.ts';

/**
 * The force at the start of the stroke is what is left of it; the rate stays that of a quick stretch, since what is stretched anew has had no time
 * to relax. Without a stated loss it is not judged.
 */
export const afterYear = (
  numbers: SheetNumbers,
  used: number,
  stated: Adjuster | undefined,
  { check, leave }: Judge,
): readonly Line[] => {
  if (numbers.choices.spring === 'no parts') return [];
  const loss = stated?.springs?.loss;
  const { name, why, notInRow } = LINES.afterYear;
  if (loss === undefined) {
    leave(name, stated ? notInRow : why, AT.years);
    return [];
  }
  const failed = (reason: string): readonly Line[] => {
    check(false, () => LINES.afterYear.check(reason));
    return [];
  };
  const left = retainedForce.of({
    F_0: newtons(numbers.values.F_0),
    q_r: plain(loss),
    t: hours(YEAR),
    t_0: hours(FIRST_READING),
  });
  if (!left.ok) return failed(reasonOf(left));
  const preload = preloadOfSheet({ ...numbers, values: { ...numbers.values, F_0: left.value.F_t } }, used);
  if (!preload.ok) return failed(reasonOf(preload));
  const verdict = preloadVerdict(preload.value.given);
  if (!verdict.ok) return failed(reasonOf(verdict));
  for (const thread of ['A', 'C'] as const) {
    const found = verdict.value[thread];
    check(found.kind === 'seated', () =>
      LINES.afterYear.check(threadVerdictText(thread, found, preload.value.given.margin)),
    );
  }
  const [spring] = verdict.value.springs;
  return spring
    ? [
        range(LINES.afterYear.force(show(loss, { shown: 'percent', digits: 3 }, 'metric')), spring.least, spring.most, {
          shown: 'force',
          digits: 3,
        }),
      ]
    : [];
};
