/**
 * Values inside sentences, written between double braces:
 *
 *   {{ 2.5 µm }}                                   a given quantity, shown in the reader's units
 *   {{! 60° }}                                     text as it stands: names, definitions
 *   {{ foot.Delta = 87.50 µm }}                    a result of the example `foot` at its starting numbers
 *   {{ foot: net-lead; per-step(k = 6) = 14.58 µm }}   steps run on the numbers `foot`
 *   {{ now foot.Delta = 87.50 µm }}                the same, following the reader's numbers
 */

import { runSteps, type Step } from '../assembly/steps.ts';
import { type SymbolName, symbolFact, UNITS } from '../engine/index.ts';
import { escapeText } from '../input/escape.ts';
import { formatOf, type NumberFormat, show, shownIn } from '../input/format.ts';
import { readQuantity, unitNamed } from '../input/quantity.ts';
import type { LiveValue } from '../page/model.ts';
import { reasonOf } from '../words/reason.ts';
import { type Declared, expectationFault, startScope } from './blocks.ts';
import type { Diagnostics } from './diagnostics.ts';
import { readCall, readStepLine } from './grammar.ts';
import { didYouMean } from './near.ts';

export const renderInline = (
  content: string,
  line: number,
  declared: Declared,
  live: LiveValue[],
  book: Diagnostics,
): string => {
  if (content.startsWith('!')) return escapeText(content.slice(1).trim());
  const text = content.trim();
  if (!/=/.test(text)) return given(text, line, book);
  const now = /^now\s+/.test(text);
  const source = locate(text.replace(/^now\s+/, ''), declared);
  if (typeof source === 'string') {
    if (source !== '') book.note(line, source);
    return escapeText(text);
  }
  const { set, steps, last } = source;
  const outcome = runSteps(steps, startScope(set, declared)).at(-1);
  if (!outcome?.ok) {
    if (!declared.spoilt.has(set))
      book.note(line, `“${text}” has no result: ${outcome ? reasonOf(outcome) : 'no steps.'}`);
    return escapeText(text);
  }
  const fault = expectationFault(last, outcome.value);
  if (fault !== undefined) book.note(line, fault);
  const format = formatOf(symbolFact(last.step.as), last.expected.digits);
  if (now) live.push({ set, steps });
  return quantity(outcome.value, format, last.step.as, now ? live.length - 1 : undefined);
};

type Source = { set: string; steps: Step[]; last: Extract<ReturnType<typeof readStepLine>, { ok: true }>['value'] };

/** An empty text where what is missing has been told already. */
const locate = (text: string, declared: Declared): Source | string => {
  const named = /^([a-z][a-z0-9-]*)\.([A-Za-z_0-9]+)\s*=\s*(.+)$/.exec(text);
  if (named) {
    const [, id = '', symbol = '', expected = ''] = named;
    const example = declared.examples.get(id);
    if (!example) return `No example is called “${id}”${meantOr(id, [...declared.examples.keys()])}`;
    const at = example.steps.findIndex((s) => s.as === symbol);
    const step = example.steps[at];
    if (!step) {
      const gives = example.steps.map((s) => s.as);
      return declared.spoilt.has(example.set)
        ? ''
        : `The example “${id}” has no step that gives ${symbol}${didYouMean(symbol, gives, `; it gives ${gives.join(', ')}.`)}`;
    }
    const read = readStepLine(`${step.relation} -> ${step.as} = ${expected}`);
    if (!read.ok) return reasonOf(read);
    return { set: example.set, steps: example.steps.slice(0, at + 1), last: { ...read.value, step } };
  }
  const run = /^([a-z][a-z0-9-]*):\s*(.+)$/.exec(text);
  if (!run) return `“${text}” can’t be read; write {{ example.symbol = value }} or {{ numbers: relation = value }}.`;
  const [, set = '', calls = ''] = run;
  if (!declared.sets.has(set))
    return `No block declares the numbers “${set}”${meantOr(set, [...declared.sets.keys()])}`;
  const parts = calls.split(';');
  const steps: Step[] = [];
  for (const part of parts.slice(0, -1)) {
    const call = readCall(part);
    if (!call.ok) return reasonOf(call);
    steps.push(call.value.step);
  }
  const last = readStepLine(parts.at(-1) ?? '');
  if (!last.ok) return reasonOf(last);
  return { set, steps: [...steps, last.value.step], last: last.value };
};

const meantOr = (word: string, there: readonly string[]): string =>
  didYouMean(word, there, `; there are ${there.join(', ') || 'none'}.`);

/** A given quantity: its unit says whether it is a size or a motion. */
const given = (text: string, line: number, book: Diagnostics): string => {
  const unit = unitNamed(/[^\d.,/+\-−\s].*$/.exec(text)?.[0] ?? '');
  const read = unit === undefined ? undefined : readQuantity(text, UNITS[unit].base, unit);
  if (!read?.ok) {
    book.note(
      line,
      `“${text}” is not a quantity; write for example {{ 2.5 µm }}, or {{! ${text} }} to print it as it stands.`,
    );
    return escapeText(text);
  }
  const base = UNITS[read.value.unit].base;
  const small = read.value.unit !== 'mm' && read.value.unit !== 'in';
  const shown: NumberFormat['shown'] =
    base === 'mm' && small ? 'motion' : read.value.unit === '%' ? 'percent' : shownIn(base);
  return quantity(read.value.value, { shown, digits: read.value.digits }, undefined, undefined);
};

const quantity = (
  value: number,
  format: NumberFormat,
  symbol: SymbolName | undefined,
  now: number | undefined,
): string =>
  `<span class="q${now === undefined ? '' : ' now'}" data-value="${value}" data-shown="${format.shown}" data-digits="${format.digits ?? ''}"` +
  `${symbol ? ` data-sym="${symbol}"` : ''}${now === undefined ? '' : ` data-now="${now}"`}>${show(value, format, 'metric')}</span>`;
