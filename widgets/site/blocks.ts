/**
 * The fenced blocks of a chapter: what they declare, checked against the engine, and the model the browser gets.
 *
 *   example ID [with SET]: title      numbers and steps, each with the value the author expects
 *   figure NAME SET | figure NAME with SET: caption
 *   predict [with SET]                a question, the steps of its answer, and `slip` lines: calls that give known wrong answers;
 *                                     `which way`, `which flank`, `on a dial` or `on a bar beside NAME: words` has it predicted on a
 *                                     picture; `draw over n from 0 turns to 4 turns, within 0 N to 40 N` has the curve of the last step drawn
 *   derivation: title                 see derivation.ts
 *   exercise ID: title                see exercise-block.ts
 *   papers, review                    where papers are set, and where exercises of the whole book are mixed
 *   ask                               questions that lead to a cause, see ask.ts
 *   routes, symbols                   the map of the chapters, and the glossary of symbols
 */

import { traced } from '../assembly/backwards/traced.ts';
import { gather, type Input, type NumberSet, readInput, scopeOf, type Value } from '../assembly/numbers.ts';
import { runSteps, type Step, type StepOutcome } from '../assembly/steps.ts';
import {
  bad,
  good,
  netLead,
  type Result,
  relationNamed,
  type SymbolName,
  symbolFact,
  UNITS,
  type Unit,
} from '../engine/index.ts';
import type { Axis } from '../exercises/curve.ts';
import type { Figure } from '../figures/kit/figure.ts';
import { formatOf, show } from '../input/format.ts';
import { type Reading, readQuantity } from '../input/quantity.ts';
import type { Prediction as OnPage, Slip } from '../page/model.ts';
import { reasonOf } from '../words/reason.ts';
import { type Adjusters, namesAdjuster, withAdjuster } from './adjusters.ts';
import { type Asked, readAsk } from './ask.ts';
import type { Diagnostics } from './diagnostics.ts';
import { type ExerciseBlock, readExercise } from './exercise-block.ts';
import { type ExpectedStep, isStepLine, readCall, readInputLine, readStepLine, splitComment } from './grammar.ts';
import { type IdeasBlock, readIdeasBlock } from './ideas-block.ts';
import { type Moved, readMoved } from './moved.ts';
import { didYouMean, nearest } from './near.ts';
import type { Passage } from './passage.ts';
import { type Route, readRoutes } from './routes.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'slip-without-words': Readonly<Record<never, never>>;
    'slip-without-value': { readonly why: Bad | undefined };
    'slip-right-by-chance': Readonly<Record<never, never>>;
  }
}

export interface Example {
  readonly kind: 'example';
  readonly id: string;
  readonly set: string;
  readonly title: string;
  readonly steps: readonly Step[];
  /** The line of each step in the chapter. */
  readonly lines: readonly number[];
  /** How many of its last steps the reader fills in. */
  readonly blank?: number;
}

export interface FigureBlock {
  readonly kind: 'figure';
  readonly figure: Figure;
  readonly set: string;
  readonly caption: string;
  /** The relations that it asks, by their names. */
  readonly relations: readonly string[];
}

export interface Prediction {
  readonly kind: 'predict';
  readonly on?: OnPage['on'];
  readonly beside?: OnPage['beside'];
  readonly curve?: OnPage['curve'];
  readonly turn?: OnPage['turn'];
  readonly question: Passage;
  readonly reveal: Passage;
  readonly output: SymbolName;
  readonly answer: number;
  readonly digits: number;
  readonly slips: readonly Slip[];
}

export interface Derivation {
  readonly kind: 'derivation';
  readonly title: string;
  readonly body: string;
  readonly line: number;
}

export interface Papers {
  readonly kind: 'papers' | 'review' | 'ideas-class';
}

/** Parts of the page for a class beside its papers. */
const CLASSWORK = ['lab', 'marking', 'own', 'plan', 'project', 'safety'] as const;
export type Classwork = (typeof CLASSWORK)[number];
export interface ClassworkBlock {
  readonly kind: 'classwork';
  readonly part: Classwork;
}

export interface AskBlock {
  readonly kind: 'ask';
  readonly ask: Asked;
}

export interface RoutesBlock {
  readonly kind: 'routes';
  readonly routes: readonly Route[];
}

/** Where sections stand now that stood on this page once. */
export interface MovedBlock {
  readonly kind: 'moved';
  readonly moved: readonly Moved[];
}

export interface SymbolsBlock {
  readonly kind: 'symbols';
}

export type Block =
  | Example
  | FigureBlock
  | Prediction
  | Derivation
  | ExerciseBlock
  | Papers
  | ClassworkBlock
  | AskBlock
  | RoutesBlock
  | MovedBlock
  | SymbolsBlock
  | IdeasBlock;

/** What the blocks of one chapter have declared so far. */
export interface Declared {
  readonly sets: Map<string, Input[]>;
  readonly examples: Map<string, Example>;
  /** Adjusters of the book, by name. */
  readonly adjusters: Adjusters;
  /** Sets whose numbers are what a reader measured. */
  readonly measured: Set<string>;
  /** Sets with a mistake in them that has been told: what has no result for want of their numbers is no mistake of its own. */
  readonly spoilt: Set<string>;
}

const NAME = '[a-z][a-z0-9-]*';

const BLOCKS = [
  'example',
  'figure',
  'predict',
  'derivation',
  'exercise',
  'papers',
  'review',
  'classwork',
  'ask',
  'routes',
  'moved',
  'symbols',
  'ideas',
  'ideas-class',
];
const wordOf = (info: string): string => /^[a-z-]*/.exec(info.trim())?.[0] ?? '';

/** Whether a fence with this info string is a block of ours. */
export const isBlock = (info: string): boolean => BLOCKS.includes(wordOf(info));

/** The block that a fence was probably meant to be; plain code is called by one word, a block by more. */
export const blockMeant = (info: string): string | undefined =>
  isBlock(info) || !/^[a-z-]+[ :]/.test(info.trim()) ? undefined : nearest(wordOf(info), BLOCKS);

/** Reads one block; `line` is the line of its first body line. Undefined where it can't stand at all. */
export const readBlock = (
  info: string,
  body: string,
  line: number,
  declared: Declared,
  figures: ReadonlyMap<string, Figure>,
  book: Diagnostics,
): Block | undefined => {
  const [, head = '', title = ''] = /^([^:]*)(?::\s*(.*))?$/.exec(info.trim()) ?? [];
  const words = head.trim();
  const opening = line - 1;
  if (/^derivation$/.test(words)) return { kind: 'derivation', title, body, line };

  const example = new RegExp(`^example (${NAME})(?: with (${NAME}))?( measured)?( fades)?$`).exec(words);
  if (example) {
    const id = example[1] ?? '';
    const set = setFor(example[2], id, opening, declared, book);
    if (example[3]) declared.measured.add(set);
    if (declared.examples.has(id))
      book.note(opening, `There are two examples called “${id}”; give this one another name.`);
    if (title === '') book.note(opening, `The example “${id}” has no title; write “example ${id}: title”.`);
    const steps = readLines(body, line, set, declared, book);
    checkSteps(steps, set, declared, book);
    checkReasons(steps, book);
    if (steps.length === 0 && !declared.spoilt.has(id)) book.note(opening, `The example “${id}” has no steps.`);
    const block: Example = {
      kind: 'example',
      id,
      set,
      title,
      steps: steps.map((s) => s.step),
      lines: steps.map((s) => s.line),
      ...(example[4] && { blank: blanksAfter(declared) }),
    };
    declared.examples.set(id, block);
    return block;
  }

  const asked = new RegExp(`^figure (${NAME}) (with )?(${NAME})( measured)?$`).exec(words);
  if (asked) {
    const [, name = '', shared, id = ''] = asked;
    const figure = figures.get(name);
    if (!figure) {
      const near = nearest(name, figures.keys());
      book.note(
        opening,
        near === undefined
          ? `There is no figure called “${name}”; there are ${[...figures.keys()].join(', ')}.`
          : `There is no figure called “${name}”; did you mean “${near}”?`,
      );
      // Its numbers are there for the blocks below.
      readLines(body, line, setFor(shared ? id : undefined, id, opening, declared, book), declared, book);
      return undefined;
    }
    const set = setFor(shared ? id : undefined, id, opening, declared, book);
    if (asked[4]) declared.measured.add(set);
    const steps = readLines(body, line, set, declared, book);
    if (steps[0]) book.note(steps[0].line, 'A figure takes numbers, not steps.');
    const have = new Set(declared.sets.get(set)?.map((i) => i.name));
    const missing = [
      ...figure.threads.map((t) => (t === 'thread' ? 'thread' : `thread ${t}`)),
      ...figure.quantities,
      ...figure.choices,
      ...figure.texts,
    ].filter((n) => !have.has(n.replace(/^thread /, '')));
    if (missing.length > 0) {
      if (!declared.spoilt.has(set))
        book.note(
          opening,
          `The figure “${name}” also needs: ${missing.join(', ')}; add a line “${missing[0]} = …” to the block.`,
        );
      declared.spoilt.add(set);
      return undefined;
    }
    const { result: drawn, calls } = traced(() => figure.at(numbersAtStart(set, declared), 'metric'));
    if (!drawn.ok && !declared.spoilt.has(set))
      book.note(opening, `The figure can’t be drawn from its starting numbers: ${reasonOf(drawn)}`);
    const relations = [...new Set(calls.map(({ relation }) => relation.name))];
    return { kind: 'figure', figure, set, caption: title, relations };
  }

  const predict = new RegExp(`^predict (?:with )?(${NAME})$`).exec(words);
  if (predict) return readPrediction(predict[1] ?? '', /\bwith\b/.test(words), body, line, declared, book);

  const exercise = new RegExp(`^exercise (${NAME})$`).exec(words);
  if (exercise) return readExercise(exercise[1] ?? '', title, body, line, book, declared.adjusters);
  if (words === 'papers' || words === 'review' || words === 'symbols' || words === 'ideas-class')
    return { kind: words };
  const ideas = new RegExp(`^ideas (${NAME})$`).exec(words);
  if (ideas) return readIdeasBlock(ideas[1] ?? '', title, body, line, book);
  const part = CLASSWORK.find((one) => words === `classwork ${one}`);
  if (part) return { kind: 'classwork', part };
  if (words === 'routes') return { kind: words, routes: readRoutes(body, line, book) };
  if (words === 'moved') return { kind: words, moved: readMoved(body, line, book) };
  if (words === 'ask') {
    const ask = readAsk(body, line, book);
    return ask && { kind: words, ask };
  }

  book.note(
    opening,
    `“${head.trim()}” can’t be read; write “example NAME: title”, “example NAME fades: title”, “example NAME measured: title”, “figure NAME with SET: caption”, “predict with SET”, “derivation: title”, “exercise NAME: title”, “ask”, “routes”, “moved”, “symbols”, “papers”, “review”, “ideas NAME: title”, “ideas-class”, or “classwork” with ${CLASSWORK.join(', ')}.`,
  );
  return undefined;
};

/** The first example of a chapter that fades has its last step blank, the next ones the last two. */
const MOST_BLANK = 2;
const blanksAfter = ({ examples }: Declared): number =>
  Math.min(MOST_BLANK, 1 + [...examples.values()].filter(({ blank }) => blank !== undefined).length);

const setFor = (
  shared: string | undefined,
  own: string,
  line: number,
  declared: Declared,
  book: Diagnostics,
): string => {
  if (shared !== undefined && !declared.sets.has(shared)) {
    const there = [...declared.sets.keys()];
    book.note(
      line,
      `No block above declares the numbers “${shared}”${didYouMean(shared, there, `; there are ${there.join(', ') || 'none yet'}.`)}`,
    );
    declared.spoilt.add(shared);
  }
  if (shared === undefined && declared.sets.has(own))
    book.note(
      line,
      `The numbers “${own}” are declared above; write “with ${own}” to share them, or choose another name.`,
    );
  const set = shared ?? own;
  if (!declared.sets.has(set)) declared.sets.set(set, []);
  return set;
};

interface PlacedStep extends ExpectedStep {
  readonly line: number;
}

/** Reads number and step lines; numbers join the set. */
const readLines = (
  body: string,
  firstLine: number,
  set: string,
  declared: Declared,
  book: Diagnostics,
): PlacedStep[] => {
  const steps: PlacedStep[] = [];
  const inputs = declared.sets.get(set) ?? [];
  const told = book.mistakes.length;
  for (const [i, text] of body.split('\n').entries()) {
    const line = firstLine + i;
    if (text.trim() === '') continue;
    if (isStepLine(text.trim())) {
      const step = readStepLine(text.trim());
      if (step.ok) steps.push({ ...step.value, line });
      else book.note(line, reasonOf(step));
    } else {
      const lines = withAdjuster(text.trim(), declared.adjusters);
      if (!lines.ok) book.note(line, reasonOf(lines));
      for (const each of lines.ok ? lines.value : []) {
        const input = readInputLine(each);
        if (!input.ok) book.note(line, reasonOf(input));
        else if (inputs.some((x) => x.name === input.value.name))
          book.note(line, `“${input.value.name}” is already one of the numbers of “${set}”.`);
        else inputs.push(input.value);
      }
    }
  }
  if (book.mistakes.length > told) declared.spoilt.add(set);
  return steps;
};

export const startValues = (inputs: readonly Input[]): Map<string, Value> => {
  const values = new Map<string, Value>();
  for (const input of inputs) {
    const read = readInput(input, input.start, 'metric');
    if (read.ok) values.set(input.name, read.value);
  }
  return values;
};

export const asSet = (id: string, declared: Declared): NumberSet => ({
  id,
  inputs: declared.sets.get(id) ?? [],
  ...(declared.measured.has(id) && { measured: true }),
});

export const numbersAtStart = (id: string, declared: Declared) => {
  const set = asSet(id, declared);
  return gather(set, startValues(set.inputs));
};

export const startScope = (id: string, declared: Declared): Record<string, number> =>
  scopeOf(numbersAtStart(id, declared));

const checkSteps = (steps: readonly PlacedStep[], set: string, declared: Declared, book: Diagnostics): void => {
  const outcomes = runSteps(
    steps.map((s) => s.step),
    startScope(set, declared),
  );
  for (const [i, placed] of steps.entries()) {
    const outcome = outcomes[i];
    if (!outcome) continue;
    if (!outcome.ok) {
      if (declared.spoilt.has(set)) continue;
      declared.spoilt.add(set);
      const needs = relationNamed(placed.step.relation)?.takes.join(', ');
      book.note(placed.line, `${placed.step.relation} has no result here: ${reasonOf(outcome)} It takes ${needs}.`);
    } else {
      const fault = expectationFault(placed, outcome.value);
      if (fault !== undefined) book.note(placed.line, fault);
    }
  }
};

/** The reader may change any number of an example, so a reason that states one would become false. */
const checkReasons = (steps: readonly PlacedStep[], book: Diagnostics): void => {
  for (const { step, line } of steps) {
    const held = step.why?.replace(/\{\{\s*now\b.*?\}\}|\$.*?\$|\]\(.*?\)/g, '') ?? '';
    const [stated] = /\S*\d\S*/.exec(held) ?? [];
    if (stated !== undefined)
      book.note(
        line,
        `The reason of this step states “${stated}”, which is false once the reader changes a number; write it as a remark on the chapter’s own numbers, after #! in place of #.`,
      );
  }
};

/** What is wrong where the engine's value does not round to what the author expects; undefined where it does. */
export const expectationFault = (
  expected: { step: Step; expected: Reading; text: string },
  value: number,
): string | undefined => {
  const { half, digits } = expected.expected;
  if (Math.abs(value - expected.expected.value) <= half * (1 + 1e-6)) return undefined;
  const format = formatOf(symbolFact(expected.step.output), Math.max(digits, 4));
  return `You expect ${expected.text}; the engine’s ${expected.step.relation} gives ${show(value, format, 'both')}.`;
};

const readPrediction = (
  id: string,
  shared: boolean,
  body: string,
  firstLine: number,
  declared: Declared,
  book: Diagnostics,
): Prediction | undefined => {
  const set = setFor(shared ? id : undefined, id, firstLine - 1, declared, book);
  const question: Passage[] = [];
  const reveal: Passage[] = [];
  const calls: { text: string; line: number }[] = [];
  const slips: { text: string; line: number }[] = [];
  const numbers: string[] = [];
  let on: OnPage['on'];
  let drawn: { readonly text: string; readonly line: number } | undefined;
  let bar: { readonly name: string; readonly says: string; readonly line: number } | undefined;
  for (const [i, raw] of body.split('\n').entries()) {
    const text = raw.trim();
    const line = firstLine + i;
    numbers.push('');
    if (text.startsWith('> ')) reveal.push({ text: text.slice(2), line });
    else if (text.startsWith('slip ')) slips.push({ text: text.slice(5), line });
    else if (text === 'on a dial') on = 'dial';
    else if (text.startsWith('on a bar ')) {
      const [, name = '', says = ''] = /^on a bar beside (\w+): (.+)$/.exec(text) ?? [];
      if (name === '') book.note(line, `“${text}” can’t be read; write “on a bar beside F: the load”.`);
      on = 'bar';
      bar = { name, says, line };
    } else if (text.startsWith('draw ')) {
      on = 'curve';
      drawn = { text, line };
    } else if (text === 'which way' || text === 'which flank') on = text === 'which way' ? 'way' : 'flank';
    else if (/^[a-z][a-z-]*\s*(\(|->|=)/.test(text) && isStepLine(text)) calls.push({ text, line });
    else if (/^(thread\b.*=|[A-Za-z_0-9]+\s*=)/.test(text) || namesAdjuster(text)) numbers[i] = text;
    else if (text !== '') question.push({ text, line });
  }
  readLines(numbers.join('\n'), firstLine, set, declared, book);
  const steps: PlacedStep[] = [];
  for (const { text, line } of calls) {
    const read = readStepLine(text);
    if (read.ok) steps.push({ ...read.value, line });
    else {
      book.note(line, reasonOf(read));
      declared.spoilt.add(set);
    }
  }
  const scope = startScope(set, declared);
  checkSteps(steps, set, declared, book);
  const last = steps.at(-1);
  const outcomes = runSteps(
    steps.map((s) => s.step),
    scope,
  );
  const answer = outcomes.at(-1);
  // A slip is made somewhere on the way, so it may use what the earlier steps found.
  const found = { ...scope };
  for (const [i, outcome] of outcomes.entries()) {
    const name = steps[i]?.step.as;
    if (outcome.ok && name !== undefined) found[name] = outcome.value;
  }
  if (on === 'dial' && last && symbolFact(last.step.as).unit !== 'mm')
    book.note(firstLine - 1, `A dial shows a length, and the last step gives ${symbolFact(last.step.as).says}.`);
  const known = bar && found[bar.name];
  const unitOf = (name: string) => symbolFact(name as SymbolName)?.unit;
  if (bar && last && (!known || unitOf(bar.name) !== unitOf(last.step.as)))
    book.note(
      bar.line,
      `A bar stands beside a number of its own kind, and “${bar.name}” is none that this prediction has in ${unitOf(last.step.as)}.`,
    );
  const ways = slips.map(({ text, line }) => ({ text, line, way: readWay(text) }));
  const curve =
    drawn && last
      ? readCurve(
          drawn.text,
          steps.map((s) => s.step),
          ways.flatMap(({ way }) => (way.ok ? [way.value] : [])),
          scope,
        )
      : undefined;
  if (typeof curve === 'string') book.note(drawn?.line ?? firstLine, curve);
  if (!last || !answer?.ok || question.length === 0) {
    if (question.length === 0 || !declared.spoilt.has(set))
      book.note(firstLine - 1, 'A prediction needs a question, and under it the step that answers it.');
    return undefined;
  }
  return {
    kind: 'predict',
    ...(on !== undefined && { on }),
    ...(bar && known && { beside: { value: known, says: bar.says } }),
    ...(typeof curve === 'object' && { curve }),
    ...turnOf(outcomes, found),
    question: joined(question, firstLine),
    reveal: joined(reveal, firstLine),
    output: last.step.as,
    answer: answer.value,
    digits: last.step.digits,
    // Of a curve the whole of it is judged, not its one value.
    slips: ways.flatMap(({ way, line }) => {
      const slip =
        way.ok && on !== 'curve' ? slipOf(way.value, found, answer.value, on === 'way' || on === 'flank') : way;
      if (!slip.ok) book.note(line, reasonOf(slip));
      return slip.ok && 'value' in slip.value ? [slip.value] : [];
    }),
  };
};

/** The common head has six flats. */
const FLATS = 6;

/** What a flat and a turn are worth here: the steps of the head where they are told, and the net lead where there is a pair. */
const turnOf = (
  outcomes: readonly StepOutcome[],
  scope: Readonly<Record<string, number>>,
): Pick<Prediction, 'turn'> => {
  const asked = outcomes.map((o) => (o.ok ? o.inputs.k : undefined)).find((k) => k !== undefined);
  const pair = netLead.of(scope as Parameters<typeof netLead.of>[0]);
  const motion = ['h_A', 'L_A', 'h_C', 'L_C'].every((name) => name in scope) && pair.ok ? pair.value.Delta : undefined;
  return { turn: { steps: asked ?? FLATS, ...(motion !== undefined && { motion }) } };
};

/** How many points of a curve a reader sets, and in how many steps it is drawn. */
const POINTS = 7;
const FINE = 72;
/** Curves nearer than this share of the axis are one to the eye. */
const ALIKE = 0.06;

const readCurve = (
  text: string,
  steps: readonly Step[],
  ways: readonly Way[],
  scope: Readonly<Record<string, number>>,
): OnPage['curve'] | string => {
  const [, name = '', from = '', to = '', low = '', high = ''] =
    /^draw over (\w+) from (.+) to (.+), within (.+) to (.+)$/.exec(text) ?? [];
  const last = steps.at(-1);
  if (name === '' || !(name in scope) || !last)
    return `“${text}” can’t be read; write “draw over n from 0 turns to 4 turns, within 0 N to 40 N”, with a number of this prediction.`;
  const axis = (symbol: SymbolName, first: string, second: string): Axis | string => {
    const { unit, says } = symbolFact(symbol);
    const [a, b] = [readQuantity(first, unit, unit as Unit), readQuantity(second, unit, unit as Unit)];
    if (!a.ok) return reasonOf(a);
    if (!b.ok) return reasonOf(b);
    const { factor } = UNITS[b.value.unit];
    return { says, unit: b.value.unit, from: a.value.value / factor, to: b.value.value / factor };
  };
  const across = axis(name as SymbolName, from, to);
  const up = axis(last.as, low, high);
  if (typeof across === 'string') return across;
  if (typeof up === 'string') return up;
  const place = (i: number, of: number) => across.from + ((across.to - across.from) * i) / of;
  const value = (x: number, more: readonly Step[] = []): number | undefined => {
    const at = { ...scope, [name]: x * UNITS[across.unit as Unit].factor };
    const outcomes = runSteps(steps, at);
    const found: Record<string, number> = { ...at };
    for (const [i, outcome] of outcomes.entries()) if (outcome.ok) found[steps[i]?.as ?? ''] = outcome.value;
    const outcome = more.length > 0 ? runSteps(more, found).at(-1) : outcomes.at(-1);
    return outcome?.ok ? outcome.value / UNITS[up.unit as Unit].factor : undefined;
  };
  const places = Array.from({ length: POINTS }, (_, i) => place(i, POINTS - 1));
  const at = (more?: readonly Step[]): number[] | undefined => {
    const values = places.map((x) => value(x, more));
    return values.every((y) => y !== undefined) ? values : undefined;
  };
  const right = at();
  const fine = Array.from({ length: FINE + 1 }, (_, i) => {
    const x = place(i, FINE);
    return [x, value(x) ?? Number.NaN] as const;
  });
  const [least, most] = [Math.min(up.from, up.to), Math.max(up.from, up.to)];
  if (!right || !fine.every(([, y]) => y >= least && y <= most))
    return `The curve leaves its axes, or has no value somewhere; it goes from ${Math.min(...fine.map(([, y]) => y))} to ${Math.max(...fine.map(([, y]) => y))} ${up.unit}.`;
  const slips: { at: number[]; says: string }[] = [];
  for (const { way, says } of ways) {
    const wrong = at(way);
    if (!wrong) return `The slip “${says}” has no value somewhere on the curve.`;
    if (wrong.every((y, i) => Math.abs(y - (right[i] ?? 0)) <= ALIKE * (most - least)))
      return `The slip “${says}” gives the right curve.`;
    slips.push({ at: wrong, says });
  }
  return { across, up, places, right, fine, slips };
};

const joined = (lines: readonly Passage[], line: number): Passage => ({
  text: lines.map((l) => l.text).join('\n'),
  line: lines[0]?.line ?? line,
});

interface Way {
  readonly way: readonly Step[];
  readonly says: string;
}

const readWay = (text: string): Result<Way> => {
  const { body, comment } = splitComment(text);
  if (comment === undefined) return bad('slip-without-words', {});
  const steps: Step[] = [];
  for (const part of body.split(';')) {
    const call = readCall(part);
    if (!call.ok) return call;
    steps.push(call.value.step);
  }
  return good({ way: steps, says: comment });
};

const slipOf = (
  { way, says }: Way,
  scope: Readonly<Record<string, number>>,
  answer: number,
  bySign: boolean,
): Result<Slip> => {
  const outcome = runSteps(way, scope).at(-1);
  if (!outcome?.ok) return bad('slip-without-value', { why: outcome });
  const alike = bySign
    ? Math.sign(outcome.value) === Math.sign(answer)
    : Math.abs(Math.abs(outcome.value) - Math.abs(answer)) <= 0.02 * Math.abs(answer);
  if (alike) return bad('slip-right-by-chance', {});
  return good({ value: outcome.value, says });
};
