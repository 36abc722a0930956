/**
 * The block ` ```exercise ID: title `: pools of stock sizes, question, steps, what is asked, slips and hint.
 *
 *   thread A = one of M8x1.25, M10x1.5     a pool; `n = 1/4 turn` is one with a single option
 *   Turned by {n}, how far does … move?    the question, plain text with places
 *   net-lead # Why                         a step as in an example, but without an expected value
 *   answer in µm, 3 digits                 unit and significant digits asked of the last step
 *   slip net-lead(h_A = -1) # Words        a known wrong way: steps joined by `;`, or `= formula`
 *   hint Words
 *
 * In place of `answer`, one line says that another kind of answer is asked, and one more that a number is read off a picture:
 *
 *   choose in µm, 3 digits                 one of the right answer and its slips
 *   which way | which flank                by the sign of the last step
 *   find the wrong line                    each slip is `slip Delta = formula # Words`: the result that is wrong, and what stands for it
 *   put in order 5 lines of foot, stop     the work of putting adjusters of the book together; it takes no pools, steps or slips
 *   choose a stack in µm, 3 digits         with a line `stack A + C = one of M10x1.5 + 3/8-16 UNC, …`; {wanted} in the question
 *   judge a table of sound, lead, lost     the last step gives the net lead of the readings
 *   picture dial of w | picture rule of thread | picture bar of l_s
 *
 *   backwards n in turns, 3 digits: Question with {answer}     the same with the answer told and n to be found, on papers
 *
 * Every item the pools can make is tried, up to 500 of them spread evenly.
 */

import { clause } from '#words/clause.ts';
import type { Fault } from '#words/papers.ts';
import { type Input, readInput } from '../assembly/numbers.ts';
import type { Step } from '../assembly/steps.ts';
import { bad, relationNamed, type SymbolName, symbolFact, UNITS, type Unit } from '../engine/index.ts';
import { workedPicks } from '../exercises/bank.ts';
import {
  draws,
  type Exercise,
  type Item,
  itemAt,
  type Pool,
  picksAt,
  type Sequence,
  type SlipRule,
} from '../exercises/exercise.ts';
import { formsOf } from '../exercises/forms.ts';
import { FAULT_NAMES } from '../exercises/lab-table.ts';
import type { Kind } from '../exercises/offered.ts';
import type { Picture } from '../exercises/picture.ts';
import { unitNamed } from '../input/quantity.ts';
import { reasonOf } from '../words/reason.ts';
import { type Adjusters, NO_ADJUSTERS } from './adjusters.ts';
import { workInOrder } from './build-sequence.ts';
import type { Diagnostics } from './diagnostics.ts';
import { readCall, readInputLine, splitComment } from './grammar.ts';

export interface ExerciseBlock {
  readonly kind: 'exercise';
  readonly exercise: Exercise;
  /** The line of each step in the chapter. */
  readonly lines: readonly number[];
}

/** Fewer different items than this and neighbours in a class share their numbers. */
const FEWEST = 8;

export const readExercise = (
  id: string,
  title: string,
  body: string,
  firstLine: number,
  book: Diagnostics,
  adjusters: Adjusters = NO_ADJUSTERS,
): ExerciseBlock | undefined => {
  const opening = firstLine - 1;
  const before = book.mistakes.length;
  const pools: Pool[] = [];
  const steps: { step: Step; line: number }[] = [];
  const slips: { rule: SlipRule; line: number }[] = [];
  const question: string[] = [];
  const hint: string[] = [];
  let asked: { unit: Unit; digits: number } | undefined;
  let kind: Kind | undefined;
  let picture: Picture | undefined;
  let drawer: Exercise['drawer'];
  let faults: readonly Fault[] | undefined;
  let order: { of: readonly Sequence[]; lines: number } | undefined;
  let backwards: { readonly text: string; readonly line: number } | undefined;
  for (const [i, raw] of body.split('\n').entries()) {
    const text = raw.trim();
    const line = firstLine + i;
    const word = /^[a-z][a-z0-9-]*/.exec(text)?.[0] ?? '';
    if (text === '') continue;
    else if (text.startsWith('slip ')) {
      const rule = readSlipRule(text.slice(5));
      if (typeof rule === 'string') book.note(line, rule);
      else slips.push({ rule, line });
    } else if (text.startsWith('hint ')) hint.push(text.slice(5));
    else if (text.startsWith('backwards ')) backwards = { text: text.slice(10), line };
    else if (text === 'which way' || text === 'which flank') kind = text === 'which way' ? 'way' : 'flank';
    else if (text === 'find the wrong line') kind = 'wrong-line';
    else if (text.startsWith('put in order ')) {
      kind = 'order';
      const read = readOrder(text, adjusters);
      if (typeof read === 'string') book.note(line, read);
      else order = read;
    } else if (text.startsWith('stack ')) {
      const read = readDrawer(text);
      if (typeof read === 'string') book.note(line, read);
      else drawer = read;
    } else if (text.startsWith('judge a table')) {
      kind = 'table';
      faults = text
        .slice('judge a table of '.length)
        .split(',')
        .map((f) => f.trim()) as Fault[];
      if (faults.length < 3 || faults.some((f) => !FAULT_NAMES.includes(f)))
        book.note(line, `“${text}” can’t be read; a table shows three or more of ${FAULT_NAMES.join(', ')}.`);
    } else if (text.startsWith('picture ')) {
      const [, shows, of = ''] = /^picture (dial|rule|bar) of (\w+)$/.exec(text) ?? [];
      if (shows === undefined)
        book.note(line, `“${text}” can’t be read; write “picture dial of w” or “picture rule of thread”.`);
      else picture = { shows: shows as Picture['shows'], of };
    } else if (/^(answer|choose) /.test(text)) {
      if (text.startsWith('choose ')) kind = text.startsWith('choose a stack ') ? 'stack' : 'choice';
      const read = /^(?:answer|choose|choose a stack) in (.+), (\d) digits?$/.exec(text);
      const unit = read ? (read[1] === 'plain number' ? '1' : unitNamed(read[1] ?? '')) : undefined;
      const digits = Number(read?.[2]);
      if (unit === undefined || !(digits >= 2 && digits <= 6))
        book.note(
          line,
          `“${text}” can’t be read; write for example “answer in µm, 3 digits”, with 2 to 6 digits, or “answer in plain number, 3 digits”.`,
        );
      else asked = { unit, digits };
    } else if (/^(thread(\s+[A-Za-z])?|[A-Za-z_]\w*)\s*=/.test(text)) {
      const pool = readPool(text);
      if (typeof pool === 'string') book.note(line, pool);
      else if (pools.some((p) => p.input.name === pool.input.name))
        book.note(line, `“${pool.input.name}” has a pool already.`);
      else pools.push(pool);
    } else if (relationNamed(word) && /^[a-z0-9-]+\s*(\(|->|#|=|$)/.test(text)) {
      const { body: call, comment } = splitComment(text);
      const read = readCall(call);
      if (!read.ok) book.note(line, reasonOf(read));
      else if (read.value.rest !== '')
        book.note(
          line,
          `“${read.value.rest}” is too much; a step of an exercise has no expected value, since its numbers are drawn.`,
        );
      else steps.push({ step: { ...read.value.step, ...(comment === undefined ? {} : { why: comment }) }, line });
    } else question.push(text);
  }
  const last = steps.at(-1);
  if (title === '') book.note(opening, `The exercise “${id}” has no title; write “exercise ${id}: title”.`);
  if (kind === 'order' && order)
    return readOrderExercise({ id, title, question: question.join(' '), hint: hint.join(' '), order }, opening, book);
  // What is asked by sign or by line has no unit of its own: its last step is in that of the glossary.
  if (last && (kind === 'way' || kind === 'flank' || kind === 'wrong-line' || kind === 'table'))
    asked = { unit: unitOf(last.step.as), digits: 4 };
  const bySign = kind === 'way' || kind === 'flank';
  // A line that could not be read may be the one that is missing.
  if (
    book.mistakes.length === before &&
    (question.length === 0 ||
      !last ||
      !asked ||
      (slips.length === 0 && !(bySign || kind === 'table')) ||
      hint.length === 0)
  )
    book.note(
      opening,
      `The exercise “${id}” needs a question, the steps of its answer, a line “answer in UNIT, N digits”, at least one slip and a hint.`,
    );
  if (!last || !asked || book.mistakes.length > before) return undefined;
  const { unit, digits } = asked;
  const fact = symbolFact(last.step.as);
  if (UNITS[unit].base !== fact.unit) {
    book.note(last.line, `The last step gives ${fact.says}, which is not asked in ${unit}.`);
    return undefined;
  }
  const exercise: Exercise = {
    id,
    title,
    pools,
    question: question.join(' '),
    steps: steps.map(({ step }) => ({ ...step, digits: Math.max(4, digits + 1) })),
    unit,
    digits,
    slips: slips.map((s) => s.rule),
    hint: hint.join(' '),
    ...(kind && { kind }),
    ...(kind === 'wrong-line' && {
      formulas: steps.map(({ step }) => relationNamed(step.relation)?.gives[step.output] ?? ''),
    }),
    ...(picture && { picture }),
    ...(drawer && { drawer }),
    ...(faults && { faults }),
    ...(backwards && readBackwards(backwards.text, backwards.line, pools, book)),
  };
  if (kind !== undefined && backwards)
    book.note(backwards.line, 'Only an exercise that asks a number can be asked backwards.');
  if ((kind === 'stack') !== (drawer !== undefined) || (drawer && !exercise.question.includes('{wanted}')))
    book.note(opening, `“${id}”: “choose a stack” needs a line “stack A + C = one of …” and {wanted} in its question.`);
  checkSlipPlaces(exercise, opening, book);
  checkPicture(exercise, opening, book);
  checkBackwards(exercise, backwards?.line ?? opening, book);
  checkPlaces(exercise, opening, book);
  checkItems(exercise, opening, book);
  return book.mistakes.length > before ? undefined : { kind: 'exercise', exercise, lines: steps.map((s) => s.line) };
};

/** The unit of the glossary; a motion is asked in micrometres, since millimetres make it small. */
const unitOf = (symbol: SymbolName): Unit => {
  const { unit } = symbolFact(symbol);
  return unit === 'turn' ? 'turns' : (unit as Unit);
};

const readOrder = (text: string, adjusters: Adjusters): { of: readonly Sequence[]; lines: number } | string => {
  const [, count = '', list = ''] = /^put in order ([3-6]) lines of (.+)$/.exec(text) ?? [];
  if (count === '') return `“${text}” can’t be read; write “put in order 5 lines of foot, stop”, with 3 to 6 lines.`;
  const of: Sequence[] = [];
  for (const name of list.split(',').map((n) => n.trim())) {
    const rows = workInOrder(name, adjusters);
    if (!rows.ok) return reasonOf(rows);
    for (const lines of rows.value) {
      if (lines.length <= Number(count)) return `The work of “${name}” has only ${lines.length} lines in order.`;
      of.push({ name: name.replace('-', ' '), lines });
    }
  }
  return { of, lines: Number(count) };
};

const readOrderExercise = (
  given: Pick<Exercise, 'id' | 'title' | 'question' | 'hint'> & { readonly order: NonNullable<Exercise['order']> },
  opening: number,
  book: Diagnostics,
): ExerciseBlock | undefined => {
  const { id, title, question, hint, order } = given;
  if (title === '' || question === '' || hint === '')
    book.note(opening, `The exercise “${id}” needs a title, a question and a hint.`);
  if (order.of.length > 1 && !question.includes('{adjuster}'))
    book.note(opening, `The question of “${id}” does not tell whose work it is; put {adjuster} where it stands.`);
  const exercise: Exercise = { ...given, kind: 'order', pools: [], steps: [], unit: '1', digits: 2, slips: [] };
  checkItems(exercise, opening, book);
  return book.mistakes.length > 0 ? undefined : { kind: 'exercise', exercise, lines: [] };
};

/** A slip of a wrong line names the result that is wrong, by a formula; any other slip names none. */
const checkSlipPlaces = ({ kind, slips, steps }: Exercise, line: number, book: Diagnostics): void => {
  for (const { at, way, says } of slips) {
    if (kind !== 'wrong-line') {
      if (at !== undefined)
        book.note(line, `The slip “${says}” names a line; only “find the wrong line” asks for one.`);
    } else if (at === undefined || typeof way !== 'string' || !steps.some((s) => s.as === at))
      book.note(
        line,
        `The slip “${says}” names no line; write “slip Delta = formula # Words” with a result of the steps.`,
      );
  }
  for (const { relation, why } of kind === 'wrong-line' ? steps : [])
    if (why === undefined)
      book.note(line, `The step ${relation} has no reason; a worked line that was wrong is told with one, after #.`);
  if (kind === 'wrong-line' && steps.length < 2) book.note(line, 'A wrong line is found among two or more.');
};

const checkPicture = ({ picture, pools }: Exercise, line: number, book: Diagnostics): void => {
  if (!picture) return;
  const pool = pools.find((p) => p.input.name === picture.of)?.input;
  const fits =
    picture.shows === 'rule'
      ? pool?.kind === 'thread'
      : pool?.kind === 'quantity' && symbolFact(pool.name).unit === 'mm';
  if (!fits)
    book.note(
      line,
      `The picture shows “${picture.of}”; a dial shows a pool of lengths, so does a bar; a rule a pool of threads.`,
    );
};

const readBackwards = (
  text: string,
  line: number,
  pools: readonly Pool[],
  book: Diagnostics,
): Pick<Exercise, 'backwards'> | undefined => {
  const [, name = '', word = '', digits, question = ''] = /^(\w+) in (.+), ([2-6]) digits:\s*(.+)$/.exec(text) ?? [];
  const pool = pools.find(({ input }) => input.name === name)?.input;
  const unit = word === 'plain number' ? '1' : unitNamed(word);
  if (digits === undefined || unit === undefined) {
    book.note(
      line,
      `“backwards ${text}” can’t be read; write “backwards n in turns, 3 digits: question with {answer}”.`,
    );
    return undefined;
  }
  if (pool?.kind !== 'quantity' || UNITS[unit].base !== symbolFact(pool.name).unit) {
    book.note(line, `“${name}” can’t be found in ${word}; name a pool of quantities and a unit of its kind.`);
    return undefined;
  }
  const untold = pools.filter(
    ({ input, options }) => input.name !== name && options.length > 1 && !question.includes(`{${input.name}}`),
  );
  if (!question.includes('{answer}') || question.includes(`{${name}}`) || untold.length > 0)
    book.note(
      line,
      `A question asked backwards tells {answer} and every number but ${name}${untold.length > 0 ? `; it lacks ${untold.map(({ input }) => `{${input.name}}`).join(', ')}` : ''}.`,
    );
  return { backwards: { name, unit, digits: Number(digits), question } };
};

/** At most so many items are asked backwards when a chapter is read. */
const MOST_TURNED = 40;

const checkBackwards = (exercise: Exercise, line: number, book: Diagnostics): void => {
  const { find } = formsOf(exercise);
  if (!find) return;
  const all = draws(exercise);
  const tried = Math.min(all, MOST_TURNED);
  for (let i = 0; i < tried; i++) {
    const picks = picksAt(exercise, Math.floor((i * all) / tried));
    if (!itemAt(exercise, picks).ok) continue;
    const item = itemAt(find, picks);
    if (item.ok) continue;
    book.note(line, `Backwards, an item has no answer: ${clause(reasonOf(item))}`);
    return;
  }
};

const readPool = (text: string): Pool | string => {
  const [, name = '', one, list = ''] = /^([^=]+?)\s*=\s*(one of\s+)?(.*)$/.exec(splitComment(text).body) ?? [];
  const options = one === undefined ? [list.trim()] : list.split(',').map((o) => o.trim());
  const first = readInputLine(`${name} = ${options[0]}`);
  if (!first.ok) return reasonOf(first);
  if (first.value.kind !== 'thread' && first.value.kind !== 'quantity')
    return `“${name}” can’t be drawn; a pool holds threads or quantities.`;
  for (const option of options) {
    const read = readInput(first.value, option, 'metric');
    if (!read.ok) return `${name}: ${reasonOf(read)}`;
  }
  if (new Set(options).size < options.length) return `The pool of ${name} holds an option twice.`;
  return { input: first.value, options };
};

/** Five stacks or more, each as many texts as there are names. */
const readDrawer = (text: string): NonNullable<Exercise['drawer']> | string => {
  const [, names = '', list = ''] = /^stack ([^=]+?)\s*=\s*one of\s+(.+)$/.exec(text) ?? [];
  const stacks = list.split(',').map((stack) => stack.split(' + ').map((part) => part.trim()));
  const inputs: Input[] = [];
  for (const [i, name] of names.split('+').entries()) {
    const written = /^[ABC]$/.test(name.trim()) ? `thread ${name.trim()}` : name.trim();
    const input = readInputLine(`${written} = ${stacks[0]?.[i] ?? ''}`);
    if (!input.ok) return reasonOf(input);
    for (const stack of stacks) {
      const read = readInput(input.value, stack[i] ?? '', 'metric');
      if (!read.ok) return `${name.trim()}: ${reasonOf(read)}`;
    }
    inputs.push(input.value);
  }
  return stacks.length < 5 || stacks.some((stack) => stack.length !== inputs.length)
    ? `“${text}” can’t be read; write “stack A + C = one of M10x1.5 + 3/8-16 UNC, …”, with five stacks or more.`
    : { inputs, stacks };
};

const readSlipRule = (text: string): SlipRule | string => {
  const { body, comment } = splitComment(text);
  if (comment === undefined) return reasonOf(bad('slip-without-words', {}));
  if (body.startsWith('=')) return { way: body.slice(1).trim(), says: comment };
  const [, at, formula] = /^([A-Za-z]\w*)\s*=\s*(.+)$/.exec(body) ?? [];
  if (at !== undefined && formula !== undefined) return { way: formula, says: comment, at: at as SymbolName };
  const way: Step[] = [];
  for (const part of body.split(';')) {
    const call = readCall(part);
    if (!call.ok) return reasonOf(call);
    way.push(call.value.step);
  }
  return { way, says: comment };
};

/** Every place has its pool, and every pool of more than one option its place: a number the reader is not told can't be used. */
const checkPlaces = (
  { id, question, hint, slips, pools, picture, drawer }: Exercise,
  line: number,
  book: Diagnostics,
): void => {
  const names = [...pools.map((p) => p.input.name as string), ...(drawer ? ['wanted'] : [])];
  const before = book.mistakes.length;
  for (const text of [question, hint, ...slips.map((s) => s.says)])
    for (const [place, name = ''] of text.matchAll(/\{(\w+)\}/g))
      if (!names.includes(name))
        book.note(line, `“${place}” in the exercise “${id}” has no pool; there are ${names.join(', ')}.`);
  // A place under a wrong name is the one that a pool lacks.
  if (book.mistakes.length > before) return;
  for (const { input, options } of pools)
    if (options.length > 1 && !question.includes(`{${input.name}}`) && picture?.of !== input.name)
      book.note(line, `The question of “${id}” does not tell ${input.name}; put {${input.name}} where it stands.`);
};

const checkItems = (exercise: Exercise, line: number, book: Diagnostics): void => {
  const tried = workedPicks(exercise);
  const items: Item[] = [];
  let fault = '';
  for (const picks of tried) {
    const item = itemAt(exercise, picks);
    if (item.ok) items.push(item.value);
    else
      fault ||= `With ${exercise.pools.map((p, k) => `${p.input.name} = ${p.options[picks[k] ?? 0]}`).join(', ')}: ${clause(reasonOf(item))}`;
  }
  const good = items.length;
  if (good * 4 < tried.length)
    book.note(line, `Only ${good} of ${tried.length} items of “${exercise.id}” are sound. ${fault}`);
  else if (good < FEWEST)
    book.note(
      line,
      `The exercise “${exercise.id}” has only ${good} different items; give its pools more options. ${fault}`.trim(),
    );
  if (exercise.kind !== undefined && exercise.kind !== 'choice') return;
  for (const [rule, { says }] of exercise.slips.entries()) {
    const own = (item: Item, k: number) => item.slips.find((s) => s.rule === k)?.amount;
    if (good > 0 && items.every((item) => own(item, rule) === undefined))
      book.note(line, `The slip “${says}” has no value in any item: see the names in it.`);
    for (let k = 0; k < rule; k++) {
      const alike = (item: Item): boolean => {
        const [a, b] = [own(item, rule), own(item, k)];
        return a !== undefined && b !== undefined && Math.abs(a - b) <= 0.01 * Math.abs(a);
      };
      if (good > 0 && items.every(alike))
        book.note(line, `The slip “${says}” always gives what the slip “${exercise.slips[k]?.says}” gives: keep one.`);
    }
  }
};
