/** One worked step as a plain line. */
import type { Step, StepOutcome } from '../assembly/steps.ts';
import { relationNamed, type SymbolName, symbolFact } from '../engine/index.ts';
import { formatOf, show, showInFormula } from '../input/format.ts';
import { plainFormula, plainSign } from './plain-formula.ts';

export const stepLine = (step: Step, outcome: StepOutcome | undefined, given?: string): string => {
  const relation = relationNamed(step.relation);
  if (!relation || !outcome?.ok) return '';
  const why = (step.why ?? relation.says).replace(/\{\{!?\s*(.*?)\s*\}\}/g, '$1').replace(/[*$`]/g, '');
  const formula = given ?? relation.gives[step.output];
  const result = show(outcome.value, formatOf(symbolFact(step.as), step.digits), 'metric');
  if (formula === undefined) return `${why} ${plainSign(step.as)} = ${result}`.trim();
  const named = (symbol: string) => {
    const bound = step.bind[symbol as SymbolName];
    return plainSign(typeof bound === 'string' ? bound : symbol);
  };
  const number = (symbol: string) =>
    showInFormula(outcome.inputs[symbol] ?? 0, formatOf(symbolFact(symbol as SymbolName)), 'metric');
  const write = (fill: (symbol: string) => string) =>
    plainFormula(formula, (word) => relation.takes.includes(word as SymbolName), fill);
  return `${why} ${plainSign(step.as)} = ${write(named)} = ${write(number)} = ${result}`.trim();
};

/** A line that has this formula, in the engine’s units, in place of the right one. */
export const wrongStepLine = (
  step: Step,
  formula: string,
  known: Readonly<Record<string, number>>,
  value: number,
): string => {
  const write = (fill: (name: string) => string) => plainFormula(formula, (word) => Object.hasOwn(known, word), fill);
  const number = (name: string) => showInFormula(known[name] ?? 0, formatOf(symbolFact(name as SymbolName)), 'metric');
  const result = show(value, formatOf(symbolFact(step.as), step.digits), 'metric');
  return `${plainSign(step.as)} = ${write(plainSign)} = ${write(number)} = ${result}`;
};
