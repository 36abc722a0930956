/**
 * The lines an author writes inside a fenced block. Five kinds:
 *
 *   thread A = M10x1.5                         # label          a number of the reader's: a thread
 *   n = 1 from -6 to 6                         # label          … a quantity of the glossary, with bounds if narrower
 *   arrangement = in line                      # label          … a choice
 *   taps = M10, 3/8-16 UNC                     # label          … a list, typed as text
 *   per-step(k = 6, Delta) -> s = 14.58 µm     # why            a step: a relation, its bindings, the name it is kept
 *                                                               under, the value the author expects
 *
 * A reader of lines gives the parsed thing or the refusal for the ledger; it knows nothing of HTML.
 */

import { threadLabel } from '#words/page.ts';
import { fieldUnit, type Input } from '../assembly/numbers.ts';
import type { Step } from '../assembly/steps.ts';
import {
  bad,
  good,
  isSymbol,
  outOfBounds,
  RELATIONS,
  type Result,
  relationNamed,
  SYMBOLS,
  type SymbolName,
  symbolFact,
} from '../engine/index.ts';
import { CHOICES, choiceSays, isChoice } from '../input/choices.ts';
import { readThread } from '../input/designation.ts';
import { type Reading, readQuantity } from '../input/quantity.ts';
import { isText, TEXTS, type TextName, textSays } from '../input/texts.ts';
import { nearest } from './near.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    /** A list that a field would take without some of its entries. */
    'list-with-odd-entries': { readonly note: string };
    'line-of-no-kind': { readonly line: string };
    'bounds-misspelt': { readonly name: string; readonly start: string; readonly rest: string };
    'option-not-of-choice': {
      readonly option: string;
      readonly choice: string;
      readonly options: readonly string[];
      readonly near: string | undefined;
    };
    'input-unknown': { readonly name: string; readonly near: string | undefined };
    'start-out-of-bounds': { readonly name: string; readonly start: string };
    'nothing-expected': { readonly step: string };
    'expected-without-unit': { readonly text: string; readonly unit: string };
    'not-a-relation': { readonly name: string; readonly near: string | undefined };
    'relation-gives-nothing': { readonly relation: string };
    'name-not-a-symbol': { readonly name: string; readonly near: string | undefined };
    'kept-under-other-unit': {
      readonly relation: string;
      /** What it gives, and what the name stands for, in the words of the glossary. */
      readonly gives: string;
      readonly name: string;
      readonly says: string;
    };
    'input-not-taken': { readonly relation: string; readonly name: string; readonly takes: readonly string[] };
    'binding-unread': { readonly relation: string; readonly name: string; readonly why: Bad };
  }
}

/** So many steps of a derivation stand open above its last line; of more only the last line does. */
export const OPEN_STEPS = 2;

/** Cuts off `# …` at the end of a line; a # that belongs to a number size (`#10-32`) is left. */
export const splitComment = (line: string): { body: string; comment: string | undefined } => {
  const at = /(^|\s)#\s+(.*)$/.exec(line);
  return at
    ? { body: line.slice(0, at.index).trim(), comment: at[2]?.trim() }
    : { body: line.trim(), comment: undefined };
};

/** A step line names a relation, alone or before `(`, `->` or `=`; everything else with `=` is a number. */
export const isStepLine = (line: string): boolean => {
  const name = /^([a-z][a-z0-9-]*)/.exec(line)?.[1] ?? '';
  return name.includes('-') || relationNamed(name) !== undefined || /->/.test(line);
};

export const readInputLine = (line: string): Result<Input> => {
  const { body, comment } = splitComment(line);
  const thread = /^thread(?:\s+([A-Za-z]))?\s*=\s*(.+)$/.exec(body);
  if (thread) {
    const start = thread[2] ?? '';
    const read = readThread(start);
    if (!read.ok) return read;
    const name = thread[1] ?? 'thread';
    return good({ kind: 'thread', name, label: comment ?? threadLabel(name), start });
  }
  const list = /^([a-z]+)\s*=\s*(.*)$/.exec(body);
  if (list && isText(list[1] ?? '')) {
    const name = list[1] as TextName;
    const start = list[2] ?? '';
    const read = TEXTS[name].read(start);
    if (!read.ok) return read;
    const note = TEXTS[name].note(start);
    return note === ''
      ? good({ kind: 'text', name, label: comment ?? textSays(name), start })
      : bad('list-with-odd-entries', { note });
  }
  const pair = /^([A-Za-z_][A-Za-z0-9_]*)\s*=\s*(.+?)(?:\s+from\s+(.+?)\s+to\s+(.+))?$/.exec(body);
  if (!pair) return bad('line-of-no-kind', { line: body });
  const [, name = '', start = '', from, to] = pair;
  if (isChoice(name)) {
    const options: readonly string[] = CHOICES[name].options;
    return options.includes(start)
      ? good({ kind: 'choice', name, label: comment ?? choiceSays(name), start })
      : bad('option-not-of-choice', { option: start, choice: name, options, near: nearest(start, options) });
  }
  // `1 form -4 to 4`: a number, then words that are no unit of it.
  const [, number, rest] =
    /^([+−-]?[\d.,/]+(?:\s*[^\s\d]+)?)\s+([a-z]+\s.*\d.*)$/i.exec(from === undefined ? start : '') ?? [];
  if (isSymbol(name) && number !== undefined && rest !== undefined)
    return bad('bounds-misspelt', { name, start: number, rest });
  if (!isSymbol(name))
    return bad('input-unknown', {
      name,
      near: nearest(name, [...Object.keys(SYMBOLS), ...Object.keys(CHOICES), ...Object.keys(TEXTS)]),
    });
  const fact = symbolFact(name);
  const unit = fieldUnit(name, 'metric');
  const read = (text: string) => readQuantity(text, fact.unit, unit);
  const value = read(start);
  if (!value.ok) return value;
  const low = from === undefined ? undefined : read(from);
  const high = to === undefined ? undefined : read(to);
  if (low && !low.ok) return low;
  if (high && !high.ok) return high;
  const min = low ? low.value.value : fact.min;
  const max = high ? high.value.value : fact.max;
  for (const bound of [min, max, value.value.value]) {
    const refusal = outOfBounds(name, bound);
    if (refusal) return refusal;
  }
  if (!(value.value.value >= min && value.value.value <= max)) return bad('start-out-of-bounds', { name, start });
  return good({ kind: 'quantity', name, label: comment ?? fact.says, start, min, max });
};

/** A step together with what the author expects of it. */
export interface ExpectedStep {
  readonly step: Step;
  readonly expected: Reading;
  readonly text: string;
}

export const readStepLine = (line: string): Result<ExpectedStep> => {
  // A remark comes last, after the reason if there is one.
  const at = /\s#!\s+(.*)$/.exec(line);
  const { body, comment } = splitComment(at ? line.slice(0, at.index) : line);
  const call = readCall(body);
  if (!call.ok) return call;
  const { step, rest } = call.value;
  const expected = /^=\s*(.+)$/.exec(rest);
  if (!expected?.[1]) return bad('nothing-expected', { step: body });
  const fact = symbolFact(step.output);
  const unit = fieldUnit(step.output, 'metric');
  const reading = readQuantity(expected[1], fact.unit, unit);
  if (!reading.ok) return reading;
  // Turns and plain numbers are written without one.
  if (fact.unit !== '1' && fact.unit !== 'turn' && /^[\d.,/\s+−-]*$/.test(expected[1]))
    return bad('expected-without-unit', { text: expected[1].trim(), unit });
  return good({
    step: {
      ...step,
      digits: reading.value.digits,
      ...(comment === undefined ? {} : { why: comment }),
      ...(at?.[1] === undefined ? {} : { remark: at[1].trim() }),
    },
    expected: reading.value,
    text: expected[1].trim(),
  });
};

/** Reads `relation(binding, …) -> name`, and returns what stands after it. */
export const readCall = (text: string): Result<{ step: Step; rest: string }> => {
  const match = /^([a-z][a-z0-9-]*)\s*(?:\(([^)]*)\))?\s*(?:->\s*([A-Za-z_][A-Za-z0-9_]*))?\s*(.*)$/.exec(text.trim());
  const [, name = '', bindings = '', as, rest = ''] = match ?? [];
  const relation = relationNamed(name);
  if (!match || !relation)
    return bad('not-a-relation', {
      name: name || text,
      near: nearest(
        name,
        RELATIONS.map((one) => one.name),
      ),
    });
  const outputs = Object.keys(relation.gives) as SymbolName[];
  const first = outputs[0];
  if (first === undefined) return bad('relation-gives-nothing', { relation: name });
  const output = as !== undefined && outputs.includes(as as SymbolName) ? (as as SymbolName) : first;
  if (as !== undefined && !isSymbol(as))
    return bad('name-not-a-symbol', { name: as, near: nearest(as, Object.keys(SYMBOLS)) });
  if (as !== undefined && symbolFact(as as SymbolName).unit !== symbolFact(output).unit)
    return bad('kept-under-other-unit', {
      relation: name,
      gives: symbolFact(output).says,
      name: as,
      says: symbolFact(as as SymbolName).says,
    });
  const bind: Partial<Record<SymbolName, number | string>> = {};
  for (const binding of bindings.split(',').filter((b) => b.trim() !== '')) {
    const [left = '', right] = binding.split('=').map((b) => b.trim());
    if (!relation.takes.includes(left as SymbolName))
      return bad('input-not-taken', { relation: name, name: left, takes: relation.takes });
    const symbol = left as SymbolName;
    if (right === undefined) continue;
    if (isSymbol(right)) bind[symbol] = right;
    else {
      const read = readQuantity(right, symbolFact(symbol).unit, fieldUnit(symbol, 'metric'));
      if (!read.ok) return bad('binding-unread', { relation: name, name: left, why: read });
      bind[symbol] = read.value.value;
    }
  }
  return good({ step: { relation: name, output, bind, as: (as as SymbolName) ?? output, digits: 4 }, rest });
};
