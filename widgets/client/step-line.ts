/** Worked steps that the press has typeset: only the numbers in them change. */

import type { Step, StepOutcome } from '../assembly/steps.ts';
import { type SymbolName, symbolFact } from '../engine/index.ts';
import { formatOf, show, showInFormula, type UnitView } from '../input/format.ts';
import { aroundPoint } from '../page/around-point.ts';
import { reasonOf } from '../words/reason.ts';
import { all, make, setText } from './dom.ts';

/** Writes what came out into each line of an example or of a worked answer, or why nothing did. */
export const writeSteps = (
  lines: readonly HTMLElement[],
  steps: readonly Step[],
  outcomes: readonly StepOutcome[],
  view: UnitView,
): void => {
  for (const [i, line] of lines.entries()) {
    const [step, outcome] = [steps[i], outcomes[i]];
    if (step && outcome) writeStep(line, step, outcome, view);
  }
};

/** Into the parts that stand there, where they are as many. */
const writeAroundPoint = (result: Element, parts: readonly string[]): void => {
  const there = result.children;
  if (there.length === parts.length && [...result.childNodes].every((node) => node instanceof HTMLSpanElement))
    for (const [i, part] of parts.entries()) setText(there[i], part);
  else result.replaceChildren(...parts.map((part) => make('span', {}, part)));
};

const writeStep = (line: HTMLElement, step: Step, outcome: StepOutcome, view: UnitView): void => {
  line.classList.toggle('refused', !outcome.ok);
  const result = line.querySelector('[data-result]');
  if (!outcome.ok) {
    result?.replaceChildren(reasonOf(outcome));
    return;
  }
  for (const slot of all(line, '[data-slot]')) {
    const symbol = slot.dataset.slot as SymbolName;
    setText(slot, showInFormula(outcome.inputs[symbol] ?? 0, formatOf(symbolFact(symbol)), view));
  }
  const text = `= ${show(outcome.value, formatOf(symbolFact(step.as), step.digits), view)}`;
  if (result && result.textContent !== text) writeAroundPoint(result, aroundPoint(text));
};
