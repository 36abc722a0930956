/**
 * One question for an answer that no known slip gives: first what the number itself tells (it is a result on the way, or a number of the
 * question, or off by a factor that has a name), else the first result on the way, which the reader can find alone.
 */
import { leadsByFactor, leadsFromGiven, leadsFromStep, leadsToStep, NAMED_FACTORS } from '#words/papers.ts';
import { relationNamed, type SymbolName, symbolFact, UNITS } from '../engine/index.ts';
import type { Item } from './exercise.ts';

/** Two numbers as near as this are taken for the same thought. */
const NEAR = 0.02;
const same = (a: number, b: number): boolean => b !== 0 && Math.abs(Math.abs(a / b) - 1) < NEAR;

/** Factors that only a formula with π in it can leave out. */
const OF_PI: readonly number[] = [Math.PI, 2 * Math.PI];
const hasPi = ({ steps }: Item['exercise']): boolean =>
  steps.some(({ relation, output }) => /\bpi\b/.test(relationNamed(relation)?.gives[output] ?? ''));

export const leadsOn = (item: Item, amount: number): string => {
  const { exercise, outcomes } = item;
  const { steps, unit } = exercise;
  const value = amount * UNITS[unit].factor;
  const says = (name: SymbolName) => symbolFact(name).says;
  // Units of another kind are no likeness: 3 turns is not 3 mm.
  const alike = (name: SymbolName) => symbolFact(name).unit === UNITS[unit].base;
  for (const [i, outcome] of outcomes.slice(0, -1).entries()) {
    const name = steps[i]?.as;
    if (outcome.ok && name !== undefined && alike(name) && same(value, outcome.value))
      return leadsFromStep(says(name), i + 1, steps.length);
  }
  for (const outcome of outcomes)
    if (outcome.ok)
      for (const [name, given] of Object.entries(outcome.inputs))
        if (alike(name as SymbolName) && unit !== '1' && same(value, given))
          return leadsFromGiven(says(name as SymbolName));
  const ratio = Math.abs(amount / item.amount);
  for (const [factor, what] of NAMED_FACTORS)
    if ((same(ratio, factor) || same(ratio, 1 / factor)) && (!OF_PI.includes(factor) || hasPi(exercise)))
      return leadsByFactor(what);
  const first = steps[0]?.as;
  return first === undefined || steps.length === 1
    ? leadsToStep(says(steps.at(-1)?.as ?? 'L'), true)
    : leadsToStep(says(first), false);
};
