/** Where a number comes from: the steps that lead to it, the last first, each with what it took and from where. */
import type { SymbolName } from '../../engine/index.ts';
import { relationNamed } from '../../engine/index.ts';
import { scopeOf } from '../numbers.ts';
import { runSteps, type Step } from '../steps.ts';
import { type Asked, comesFrom, reachedBy } from './reach.ts';

export interface Link {
  readonly index: number;
  readonly step: Step;
  readonly value: number | undefined;
  readonly takes: readonly {
    /** The symbol it goes by in the example. */
    readonly name: SymbolName;
    readonly value: number;
    /** The reader’s number it comes from, the step that gives it, or neither where the example states it. */
    readonly input?: string;
    readonly step?: number;
  }[];
}

export const chainOf = (asked: Asked): readonly Link[] => {
  const { steps, index, set } = asked;
  const outcomes = runSteps(steps, scopeOf(asked.numbers));
  return reachedBy(steps, index)
    .steps.toReversed()
    .flatMap((i): Link[] => {
      const [step, outcome] = [steps[i], outcomes[i]];
      if (!step || !outcome) return [];
      const takes = (relationNamed(step.relation)?.takes ?? []).flatMap((symbol) => {
        const bound = step.bind[symbol] ?? symbol;
        const value = outcome.ok ? outcome.inputs[symbol] : undefined;
        if (value === undefined) return [];
        if (typeof bound === 'number') return [{ name: symbol, value }];
        const giver = steps.slice(0, i).findLastIndex((before) => before.as === bound);
        const from = set.inputs.find((input) => comesFrom(input, bound));
        return [
          {
            name: bound as SymbolName,
            value,
            ...(giver >= 0 ? { step: giver } : from ? { input: from.name } : {}),
          },
        ];
      });
      return [{ index: i, step, value: outcome.ok ? outcome.value : undefined, takes }];
    });
};
