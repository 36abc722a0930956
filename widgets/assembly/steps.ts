/**
 * Steps: calls of engine relations in a row, as worked examples, sentences and predictions use them. The build,
 * the tests and the browser all run them through `runSteps`, so there is one arithmetic for the printed and the
 * living page.
 */

import { type Bad, bad, relationNamed, type SymbolName } from '../engine/index.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'relation-unknown': { readonly relation: string };
    /** An input is the result of an earlier step that has none. */
    'step-waits': Readonly<Record<never, never>>;
    'output-not-given': { readonly relation: string; readonly output: string };
  }
}

export interface Step {
  readonly relation: string;
  /** Which output of the relation this step keeps. */
  readonly output: SymbolName;
  /** Inputs that are not simply found under their own name: a number, or the name of an earlier one. */
  readonly bind: Readonly<Partial<Record<SymbolName, number | string>>>;
  /** The name the result is kept under. */
  readonly as: SymbolName;
  /** Significant digits to print. */
  readonly digits: number;
  /** Why this step, true for any numbers. */
  readonly why?: string;
  /** What is to be seen in the chapter's own numbers: it leaves the page while the reader's stand in their place. */
  readonly remark?: string;
}

export type StepOutcome =
  | { readonly ok: true; readonly value: number; readonly inputs: Readonly<Record<string, number>> }
  | Bad;

/** Runs the steps in order; after one that has no result, those that need it say so. */
export const runSteps = (steps: readonly Step[], scope: Readonly<Record<string, number>>): StepOutcome[] => {
  const known: Record<string, number> = { ...scope };
  return steps.map((step) => {
    const outcome = runStep(step, known);
    if (outcome.ok) known[step.as] = outcome.value;
    else delete known[step.as];
    return outcome;
  });
};

const runStep = (step: Step, known: Readonly<Record<string, number>>): StepOutcome => {
  const relation = relationNamed(step.relation);
  if (!relation) return bad('relation-unknown', { relation: step.relation });
  const inputs: Record<string, number> = {};
  for (const symbol of relation.takes) {
    const bound = step.bind[symbol] ?? symbol;
    const value = typeof bound === 'number' ? bound : known[bound];
    if (value === undefined) return bad('step-waits', {});
    inputs[symbol] = value;
  }
  const result = relation.of(inputs);
  if (!result.ok) return result;
  const value = result.value[step.output];
  return value === undefined
    ? bad('output-not-given', { relation: step.relation, output: step.output })
    : { ok: true, value, inputs };
};
