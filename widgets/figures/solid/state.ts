/** What the solid shows: the adjuster after n turns, whether its lock holds, and which of its flanks carry. */
import { type Adjuster, type LockState, type Standing, standing } from '../../assembly/adjuster/adjuster.ts';
import { type Carrying, carryingOf } from '../../assembly/adjuster/carrying.ts';
import { readAdjuster } from '../../assembly/adjuster/text.ts';
import { good, type Result } from '../../engine/index.ts';
import type { NumbersOf } from '../kit/figure.ts';

export interface State {
  readonly adjuster: Adjuster;
  readonly standing: Standing;
  readonly locked: boolean;
  readonly carrying: Carrying;
  readonly asked: number;
}

export const stateOf = ({ values, texts, choices }: NumbersOf<never, 'n' | 'F', 'lock', 'adjuster'>): Result<State> => {
  const read = readAdjuster(texts.adjuster);
  if (!read.ok) return read;
  const locked = choices.lock === 'holds';
  const share: LockState = { share: locked ? 0 : 1 };
  const now = standing(read.value, values.n, share);
  return good({
    adjuster: read.value,
    standing: now,
    locked,
    carrying: carryingOf(read.value, now.n, values.F),
    asked: values.n,
  });
};
