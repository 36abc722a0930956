/** Blocks as HTML that reads and prints without script; the browser finds its places by the data attributes. */

import { GROUPS } from '#words/figures/groups.ts';
import {
  CALCULATION,
  COVERED_UNTIL_PREDICTED,
  GIVEN_ABOVE,
  HOW_TO_READ,
  PREDICT_FIRST,
  predictionNumber,
  SHOW_ANSWER,
  workedIn,
} from '#words/page.ts';
import type { Input, Value } from '../assembly/numbers.ts';
import { runSteps, type Step, type StepOutcome } from '../assembly/steps.ts';
import { relationNamed, type SymbolName, spokenNumber, symbolFact } from '../engine/index.ts';
import { curveSvg } from '../exercises/curve.ts';
import type { Group } from '../figures/kit/figure.ts';
import { figureParts } from '../figures/kit/figure-parts.ts';
import { groupState } from '../figures/kit/group-state.ts';
import { choiceSays, optionText } from '../input/choices.ts';
import { escapeText } from '../input/escape.ts';
import { formatOf, show, showInFormula } from '../input/format.ts';
import { wordsShown } from '../input/typed-words.ts';
import { aroundPoint } from '../page/around-point.ts';
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
import { type Asked, saysNumber } from './giving-away.ts';
import { lettersWide } from './mathml.ts';
import type { Label } from './numbering.ts';
import { OWN, ownWords } from './own-words.ts';
import type { Inline } from './passage.ts';

/** The examples in which a page has worked a step before, by relation and result. */
export type WorkedBefore = Map<string, { readonly set: string; readonly says: string; readonly id: string }>;

export const renderExample = (
  example: Example,
  declared: Declared,
  inline: Inline,
  label: Label,
  before: WorkedBefore,
  shownAbove: boolean,
): string => {
  const outcomes = runSteps(example.steps, startScope(example.set, declared));
  const used = usedBy(example.steps);
  const inputs = asSet(example.set, declared).inputs.filter((i) => i.kind !== 'choice' && used(i.name));
  const steps = example.steps
    .map((step, i) => {
      const key = `${step.relation} ${step.as}`;
      const known = before.get(key);
      // What an example arrives at is worked in full, and so is what is remarked on for other numbers than before.
      const again = known && i < example.steps.length - 1 && (step.remark === undefined || known.set === example.set);
      if (!known) before.set(key, { set: example.set, says: label.says, id: label.id });
      return renderStep(step, i, outcomes[i], (text) => inline(text, example.lines[i] ?? 1), again ? known : undefined);
    })
    .join('');
  const fields = renderInputs(example.set, inputs);
  // Numbers that stand above already are there to be looked up, not to be passed again.
  const givens = shownAbove
    ? `<details class="givens"><summary${OWN}>${GIVEN_ABOVE}</summary>${fields}</details>`
    : fields;
  const heads = CALCULATION.map((word) => `<span>${word}</span>`).join('');
  return (
    `<section class="example" id="${label.id}" data-example="${example.id}"${example.blank === undefined ? '' : ` data-blank="${Math.min(example.blank, example.steps.length)}"`} aria-labelledby="${label.id}-name">` +
    `<h3 id="${label.id}-name"><span class="tag">${label.says}</span> ${escapeText(example.title)}</h3>` +
    `${givens}<div class="calculation"><p class="heads" aria-hidden="true"${OWN}>${heads}</p><ol class="steps">${steps}</ol></div></section>`
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
        `<div><dt>${escapeText(input.kind === 'choice' ? choiceSays(input.name) : input.label)}</dt><dd>${escapeText(valueText(values.get(input.name), input))}</dd></div>`,
    );
  return `<div class="inputs${as}"${OWN} data-inputs="${set}" data-names="${inputs.map((i) => i.name).join(' ')}"><dl>${rows.join('')}</dl></div>`;
};

const valueText = (value: Value | undefined, { kind, name }: Input): string =>
  typeof value === 'object'
    ? spokenNumber(wordsShown('thread', value.designation))
    : typeof value === 'number'
      ? show(value, formatOf(symbolFact(name as SymbolName)), 'metric')
      : kind === 'choice'
        ? optionText(name, String(value ?? ''))
        : wordsShown(name, String(value ?? ''));

/** Letters that the columns hold; a line with more takes both together, formula above numbers. */
const LONG = { formula: 25, numbers: 30 };

/** The formula of a step in the signs under which the example knows its quantities. */
export const stepFormula = (step: Step): string => {
  const expression = relationNamed(step.relation)?.gives[step.output];
  const name = (symbol: string): string => {
    const bound = step.bind[symbol as SymbolName];
    return typeof bound === 'string' ? bound : symbol;
  };
  return expression === undefined
    ? ''
    : typeset(setSymbol(step.as), setExpression(parseExpression(expression), asSymbols(name)));
};

/** `again` is the example in which the same was worked before: then one line stands for the step, and opens. */
export const renderStep = (
  step: Step,
  index: number,
  outcome: StepOutcome | undefined,
  inline: (text: string) => string,
  again?: { readonly says: string; readonly id: string },
): string => {
  const relation = relationNamed(step.relation);
  if (!relation || !outcome) return '';
  const expression = relation.gives[step.output];
  const format = formatOf(symbolFact(step.as), step.digits);
  const inputs = outcome.ok ? outcome.inputs : {};
  const fill = (symbol: string): string =>
    showInFormula(inputs[symbol] ?? 0, formatOf(symbolFact(symbol as SymbolName)), 'metric');
  const formula = stepFormula(step);
  const numbers =
    expression === undefined ? '' : typeset(undefined, setExpression(parseExpression(expression), asNumbers(fill)));
  const algebra =
    expression === undefined ? '' : `<div class="formula">${formula}</div><div class="in-numbers">${numbers}</div>`;
  const result = outcome.ok ? resultHtml(show(outcome.value, format, 'metric')) : escapeText(reasonOf(outcome));
  const why = `<p class="why">${reasonHtml(step, relation.says, inline)}</p>`;
  const marks = [
    ...(again ? ['again'] : []),
    ...(lettersWide(formula) > LONG.formula || lettersWide(numbers) > LONG.numbers ? ['long'] : []),
  ].join(' ');
  const [short = ''] = symbolFact(step.as).says.split(',');
  return `<li data-step="${index}"${marks === '' ? '' : ` class="${marks}"`}>${
    again
      ? `<details class="again"><summary${OWN}>${escapeText(short.charAt(0).toUpperCase() + short.slice(1))}, ${typeset(setSymbol(step.as))}<span class="worked-in">: ${workedIn(again.says)}</span></summary>${why}${algebra}</details>`
      : `${why}${algebra}`
  }<div class="result" data-sym="${step.as}" data-result>${result}</div></li>`;
};

/** A result in two parts, so that results under one another stand on their decimal points. */
const resultHtml = (text: string): string => {
  const [whole, rest] = aroundPoint(`= ${text}`);
  return `<span>${escapeText(whole)}</span><span>${escapeText(rest)}</span>`;
};

/** Why a step is taken. A remark without a reason has the relation's own sentence ready to take its place. */
const reasonHtml = ({ why, remark }: Step, says: string, inline: (text: string) => string): string => {
  if (remark === undefined) return why === undefined ? ownWords(escapeText(says)) : inline(why);
  const own = `<span data-own>${inline(remark)}</span>`;
  return why === undefined
    ? `${own}<span data-instead hidden${OWN}>${escapeText(says)}</span>`
    : `${inline(why)} ${own}`;
};

/**
 * A figure, from top to bottom: the picture with its chief fields, the foot (the sentence, then a quiet line of what can be asked for
 * besides), and every other field, folded in groups.
 */
export const renderFigure = (
  { figure, set }: FigureBlock,
  declared: Declared,
  caption: { readonly says: string; readonly more: string },
  label: Label,
  asked?: Asked,
): string => {
  const all = asSet(set, declared).inputs;
  const numbers = numbersAtStart(set, declared);
  const idle = figure.idle(numbers);
  const fields = (names: readonly string[], as: string): string => renderInputs(set, pick(names, all), as, idle);
  const parts = figureParts(figure, numbers, 'metric', set, OWN);
  const waits = asked && saysNumber(parts.stage + parts.says, asked.right) ? asked.index : undefined;
  const more =
    caption.more === ''
      ? ''
      : `<details class="how"><summary${OWN}>${HOW_TO_READ}</summary><p>${caption.more}</p></details>`;
  const groups = figure.groups
    .map((group) => renderGroup(group, pick(group.names, all), idle, fields(group.names, '')))
    .join('');
  return (
    `<figure class="live ${figure.name}" id="${label.id}" data-figure="${figure.name}" data-set="${set}" data-idle="${idle.join(' ')}"${figure.decidedBy.length === 0 ? '' : ` data-decided="${figure.decidedBy.join(' ')}"`}${waits === undefined ? '' : ` data-waits="${waits}"`} aria-label="${escapeText(figure.title)}">` +
    `<div class="bench"${OWN}>${parts.stage}${figure.chief.length === 0 ? '' : fields(figure.chief, ' chief')}</div>` +
    `<div class="foot">${parts.refusal}${waits === undefined ? '' : covered(waits)}${parts.says}<div class="foot-line"><p class="caption">${label.number === '' ? '' : `<span class="tag">${label.says}</span> `}${caption.says}</p>${more}${parts.numbers}</div></div>` +
    `${groups === '' ? '' : `<div class="groups"${OWN}>${groups}</div>`}</figure>`
  );
};

/** In place of what a figure says, while its prediction is to be made. */
const covered = (index: number): string =>
  `<p class="covered"${OWN}><a href="#${predictionId(index)}">${COVERED_UNTIL_PREDICTED}</a></p>`;
const predictionId = (index: number): string => `predict-${index + 1}`;

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
    `<section class="predict" id="${predictionId(index)}" data-predict="${index}" aria-label="${predictionNumber(index + 1)}"><p class="box-name"${OWN}>${PREDICT_FIRST}</p><p class="question">${question}</p>` +
    `${prediction.curve ? `<div class="shown" data-axes>${curveSvg(prediction.curve)}</div>` : ''}<div class="attempt"${OWN}></div><details class="reveal"><summary${OWN}>${SHOW_ANSWER}</summary><p>${answer}. ${reveal}</p></details></section>`
  );
};
