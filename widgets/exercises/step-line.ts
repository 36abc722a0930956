/** One worked step as a plain line. */
import type { Step, StepOutcome } from '../assembly/steps.ts';
import { relationNamed, type SymbolName, symbolFact } from '../engine/index.ts';
import { formatOf, show, showInFormula } from '../input/format.ts';

export const stepLine = (step: Step, outcome: StepOutcome | undefined, given?: string): string => {
  const relation = relationNamed(step.relation);
  if (!relation || !outcome?.ok) return '';
  const why = (step.why ?? relation.says).replace(/\{\{!?\s*(.*?)\s*\}\}/g, '$1').replace(/[*$`]/g, '');
  const formula = given ?? relation.gives[step.output];
  const result = show(outcome.value, formatOf(symbolFact(step.as), step.digits), 'metric');
  if (formula === undefined) return `${why} ${plainName(step.as)} = ${result}`.trim();
  const named = (symbol: string) => {
    const bound = step.bind[symbol as SymbolName];
    return plainName(typeof bound === 'string' ? bound : symbol);
  };
  const number = (symbol: string) =>
    showInFormula(outcome.inputs[symbol] ?? 0, formatOf(symbolFact(symbol as SymbolName)), 'metric');
  const write = (fill: (symbol: string) => string) =>
    plainFormula(formula, (word) => relation.takes.includes(word as SymbolName), fill);
  return `${why} ${plainName(step.as)} = ${write(named)} = ${write(number)} = ${result}`.trim();
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
  return `${plainName(step.as)} = ${write(plainName)} = ${write(number)} = ${result}`;
};

/** A formula in plain letters, its quantities written by `fill`. */
const plainFormula = (formula: string, takes: (word: string) => boolean, fill: (symbol: string) => string): string =>
  formula
    .replace(/([A-Za-z_]\w*)(\^?)/g, (_, word: string, hat: string) => {
      const text = takes(word) ? fill(word) : word;
      // A quantity with its unit is raised as a whole.
      return hat !== '' && /\s/.test(text) ? `(${text})^` : `${text}${hat}`;
    })
    .replace(/(\d)\*deg\b/g, '$1°')
    .replace(/(\d)\*mm\b/g, '$1\u00a0mm')
    .replace(/^-|(?<=\()-/g, '−')
    .replace(/\bpi\b/g, 'π')
    .replace(/\*/g, ' × ')
    .replace(/ - /g, ' − ');

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
  kappa: 'κ',
  phi: 'φ',
};

/** A symbol in plain spelling: Delta as Δ, d_2 as d2. */
const plainName = (symbol: string): string => {
  const [head = '', ...tail] = symbol.split('_');
  return `${GREEK[head] ?? head}${tail.join('')}`;
};
