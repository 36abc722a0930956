/** Blocks as HTML that reads and prints without script; the browser finds its places by the data attributes. */

import { GROUPS } from '#words/figures/groups.ts';
import { HOW_TO_READ, PREDICT_FIRST, predictionNumber, SHOW_ANSWER, WORKED_EXAMPLE } from '#words/page.ts';
import type { Input, Value } from '../assembly/numbers.ts';
import { runSteps, type Step, type StepOutcome } from '../assembly/steps.ts';
import { relationNamed, type SymbolName, symbolFact } from '../engine/index.ts';
import type { Group } from '../figures/kit/figure.ts';
import { figureParts } from '../figures/kit/figure-parts.ts';
import { groupState } from '../figures/kit/group-state.ts';
import { CHOICES } from '../input/choices.ts';
import { escapeText } from '../input/escape.ts';
import { formatOf, show, showInFormula } from '../input/format.ts';
import { reasonOf } from '../words/reason.ts';
import {
  asSet,
  type Declared,
  type Example,
  type FigureBlock,
  numbersAtStart,
  type Prediction,
  startScope,
  startValues,
} from './blocks.ts';
import { asNumbers, asSymbols, parseExpression, setExpression, setSymbol, typeset } from './expression.ts';

/** Sets inline Markdown that begins on this line of the chapter. */
export type Inline = (text: string, line: number) => string;

export const renderExample = (example: Example, declared: Declared, inline: Inline): string => {
  const outcomes = runSteps(example.steps, startScope(example.set, declared));
  const used = usedBy(example.steps);
  const inputs = asSet(example.set, declared).inputs.filter((i) => i.kind !== 'choice' && used(i.name));
  const steps = example.steps
    .map((step, i) => renderStep(step, i, outcomes[i], (text) => inline(text, example.lines[i] ?? 1)))
    .join('');
  return (
    `<section class="example" id="example-${example.id}" data-example="${example.id}" aria-labelledby="example-${example.id}-name">` +
    `<h3 id="example-${example.id}-name"><span class="tag">${WORKED_EXAMPLE}</span> ${escapeText(example.title)}</h3>` +
    `${renderInputs(example.set, inputs)}<ol class="steps">${steps}</ol></section>`
  );
};

/** Which of the reader's numbers the steps draw on: a quantity by its name, a thread by any of its symbols. */
const usedBy = (steps: readonly Step[]) => {
  const names = new Set<string>();
  for (const step of steps)
    for (const symbol of relationNamed(step.relation)?.takes ?? []) {
      const bound = step.bind[symbol] ?? symbol;
      if (typeof bound === 'string') names.add(bound);
    }
  return (input: string): boolean =>
    names.has(input) ||
    [...names].some((n) => (input === 'thread' ? /^(P|N|L|h|d|tpi|[dD]_2m(in|ax))$/.test(n) : n.endsWith(`_${input}`)));
};

/** The numbers of a block as a list of givens; the browser puts fields in its place. */
const renderInputs = (set: string, inputs: readonly Input[], as = '', idle: readonly string[] = []): string => {
  const values = startValues(inputs);
  const rows = inputs
    .filter(({ name }) => !idle.includes(name))
    .map(
      (input) =>
        `<div><dt>${escapeText(input.kind === 'choice' ? CHOICES[input.name].says : input.label)}</dt><dd>${escapeText(valueText(values.get(input.name), input.name))}</dd></div>`,
    );
  return `<div class="inputs${as}" data-inputs="${set}" data-names="${inputs.map((i) => i.name).join(' ')}"><dl>${rows.join('')}</dl></div>`;
};

const valueText = (value: Value | undefined, name: string): string =>
  typeof value === 'object'
    ? value.designation
    : typeof value === 'number'
      ? show(value, formatOf(symbolFact(name as SymbolName)), 'metric')
      : String(value ?? '');

export const renderStep = (
  step: Step,
  index: number,
  outcome: StepOutcome | undefined,
  inline: (text: string) => string,
): string => {
  const relation = relationNamed(step.relation);
  if (!relation || !outcome) return '';
  const expression = relation.gives[step.output];
  const name = (symbol: string): string => {
    const bound = step.bind[symbol as SymbolName];
    return typeof bound === 'string' ? bound : symbol;
  };
  const format = formatOf(symbolFact(step.as), step.digits);
  const inputs = outcome.ok ? outcome.inputs : {};
  const fill = (symbol: string): string =>
    showInFormula(inputs[symbol] ?? 0, formatOf(symbolFact(symbol as SymbolName)), 'metric');
  const algebra =
    expression === undefined
      ? ''
      : `<div class="formula">${typeset(setSymbol(step.as), setExpression(parseExpression(expression), asSymbols(name)))}</div>` +
        `<div class="in-numbers">${typeset(undefined, setExpression(parseExpression(expression), asNumbers(fill)))}</div>`;
  const result = outcome.ok
    ? `<span class="equals">=</span> <span class="value">${show(outcome.value, format, 'metric')}</span>`
    : escapeText(reasonOf(outcome));
  return (
    `<li data-step="${index}"><p class="why">${reasonHtml(step, relation.says, inline)}</p>${algebra}` +
    `<div class="result" data-sym="${step.as}" data-result>${result}</div></li>`
  );
};

/** Why a step is taken. A remark without a reason has the relation's own sentence ready to take its place. */
const reasonHtml = ({ why, remark }: Step, says: string, inline: (text: string) => string): string => {
  if (remark === undefined) return why === undefined ? escapeText(says) : inline(why);
  const own = `<span data-own>${inline(remark)}</span>`;
  return why === undefined ? `${own}<span data-instead hidden>${escapeText(says)}</span>` : `${inline(why)} ${own}`;
};

/**
 * A figure, from top to bottom: the picture with its chief fields, the foot (the sentence, then a quiet line of what can be asked for
 * besides), and every other field, folded in groups.
 */
export const renderFigure = (
  { figure, set }: FigureBlock,
  declared: Declared,
  caption: { readonly says: string; readonly more: string },
): string => {
  const all = asSet(set, declared).inputs;
  const numbers = numbersAtStart(set, declared);
  const idle = figure.idle(numbers);
  const fields = (names: readonly string[], as: string): string => renderInputs(set, pick(names, all), as, idle);
  const parts = figureParts(figure, numbers, 'metric', set);
  const more =
    caption.more === '' ? '' : `<details class="how"><summary>${HOW_TO_READ}</summary><p>${caption.more}</p></details>`;
  const groups = figure.groups
    .map((group) => renderGroup(group, pick(group.names, all), idle, fields(group.names, '')))
    .join('');
  return (
    `<figure class="live ${figure.name}" data-figure="${figure.name}" data-set="${set}" data-idle="${idle.join(' ')}" aria-label="${escapeText(figure.title)}">` +
    `<div class="bench">${parts.stage}${figure.chief.length === 0 ? '' : fields(figure.chief, ' chief')}</div>` +
    `<div class="foot">${parts.refusal}${parts.says}<div class="foot-line"><p class="caption">${caption.says}</p>${more}${parts.numbers}</div></div>` +
    `${groups === '' ? '' : `<div class="groups">${groups}</div>`}</figure>`
  );
};

const pick = (names: readonly string[], inputs: readonly Input[]): Input[] =>
  names.flatMap((name) => inputs.find((input) => input.name === name) ?? []);

const renderGroup = (
  { name, names }: Group,
  inputs: readonly Input[],
  idle: readonly string[],
  fields: string,
): string => {
  const values = startValues(inputs);
  const held = inputs
    .filter((input) => !idle.includes(input.name))
    .map((input) => [input, values.get(input.name) ?? ''] as const);
  const hidden = names.every((one) => idle.includes(one)) ? ' hidden' : '';
  return (
    `<details class="group" data-group="${name}"${hidden}><summary><span class="group-name">${GROUPS[name]}</span> ` +
    `<span class="group-state" data-state>${escapeText(groupState(held, 'metric'))}</span></summary>${fields}</details>`
  );
};

export const renderPrediction = (prediction: Prediction, index: number, question: string, reveal: string): string => {
  const format = formatOf(symbolFact(prediction.output), prediction.digits);
  const answer = `<span class="q" data-value="${prediction.answer}" data-shown="${format.shown}" data-digits="${format.digits ?? ''}">${show(prediction.answer, format, 'metric')}</span>`;
  return (
    `<section class="predict" data-predict="${index}" aria-label="${predictionNumber(index + 1)}"><p class="box-name">${PREDICT_FIRST}</p><p class="question">${question}</p>` +
    `<div class="attempt"></div><details class="reveal"><summary>${SHOW_ANSWER}</summary><p>${answer}. ${reveal}</p></details></section>`
  );
};
