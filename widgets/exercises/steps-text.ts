/** The worked steps of an item as plain lines, for keys and for exports. */

import type { Step, StepOutcome } from '../assembly/steps.ts';
import { relationNamed, type SymbolName, symbolFact } from '../engine/index.ts';
import { formatOf, show, showInFormula } from '../input/format.ts';
import type { Item } from './exercise.ts';

const linesOf = new WeakMap<Item, readonly string[]>();

export const stepLines = (item: Item): readonly string[] => {
  const known = linesOf.get(item) ?? item.exercise.steps.map((step, i) => stepLine(step, item.outcomes[i]));
  linesOf.set(item, known);
  return known;
};

const stepLine = (step: Step, outcome: StepOutcome | undefined): string => {
  const relation = relationNamed(step.relation);
  if (!relation || !outcome?.ok) return '';
  const why = (step.why ?? relation.says).replace(/\{\{!?\s*(.*?)\s*\}\}/g, '$1').replace(/[*$`]/g, '');
  const formula = relation.gives[step.output];
  const result = show(outcome.value, formatOf(symbolFact(step.as), step.digits), 'metric');
  if (formula === undefined) return `${why} ${plainName(step.as)} = ${result}`;
  const named = (symbol: string) => {
    const bound = step.bind[symbol as SymbolName];
    return plainName(typeof bound === 'string' ? bound : symbol);
  };
  const number = (symbol: string) =>
    showInFormula(outcome.inputs[symbol] ?? 0, formatOf(symbolFact(symbol as SymbolName)), 'metric');
  const write = (fill: (symbol: string) => string) =>
    formula
      .replace(/[A-Za-z_]\w*/g, (word) => (relation.takes.includes(word as SymbolName) ? fill(word) : word))
      .replace(/(\d)\*deg\b/g, '$1°')
      .replace(/(\d)\*mm\b/g, '$1\u00a0mm')
      .replace(/^-|(?<=\()-/g, '−')
      .replace(/\bpi\b/g, 'π')
      .replace(/\*/g, ' × ')
      .replace(/ - /g, ' − ');
  return `${why} ${plainName(step.as)} = ${write(named)} = ${write(number)} = ${result}`;
};

const GREEK: Readonly<Record<string, string>> = {
  Delta: 'Δ',
  theta: 'θ',
  lambda: 'λ',
  delta: 'δ',
  alpha: 'α',
  beta: 'β',
  eps: 'ε',
  psi: 'ψ',
  sigma: 'σ',
  mu: 'µ',
  rho: 'ρ',
  zeta: 'ζ',
  eta: 'η',
  tau: 'τ',
};

/** A symbol in plain spelling: Delta as Δ, d_2 as d2. */
const plainName = (symbol: string): string => {
  const [head = '', ...tail] = symbol.split('_');
  return `${GREEK[head] ?? head}${tail.join('')}`;
};
