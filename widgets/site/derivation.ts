/**
 * A derivation: lines of algebra, each written once, typeset and checked from the same text.
 *
 *   let z_t = -h_A*L_A*n            # thread A screws the turned part down [turned-motion]
 *   let z_c = z_t + z_r             # the carried part rides on the turned part
 *   z_c = n*(h_C*L_C - h_A*L_A)     # take n out
 *
 * `let` gives a symbol its expression; any other line claims an equality. A line that cites a relation in square
 * brackets is held against the engine. Both sides of every equality are evaluated at many points of the
 * glossary's box, with units at some, so a wrong sign or a length added to a number is a mistake with its line.
 */

import type { EvalFunction, MathNode } from 'mathjs';
import { DERIVATION, relationCited, whyLines } from '#words/page.ts';
import { type AnyRelation, isSymbol, RELATIONS, relationNamed, type SymbolName, symbolFact } from '../engine/index.ts';
import { escapeText } from '../input/escape.ts';
import type { Diagnostics } from './diagnostics.ts';
import { namesIn, notASymbol, parseExpression, setExpression, splitEquals, typeset } from './expression.ts';
import { OPEN_STEPS, splitComment } from './grammar.ts';
import { didYouMean } from './near.ts';
import type { Label } from './numbering.ts';
import { OWN } from './own-words.ts';
import { agree, inBase, pointAt, type Quantity, withoutUnits, withUnits } from './points.ts';

interface Line {
  readonly line: number;
  readonly given: boolean;
  readonly sides: readonly MathNode[];
  /** The sides, ready to be evaluated at many points. */
  readonly code: readonly EvalFunction[];
  readonly why: string;
  readonly cites: string | undefined;
}

const POINTS = 60;
/** Of these so many with units, which take most of the time. */
const WITH_UNITS = 10;
/** A line with more characters of algebra than this takes the whole width, its reason below. */
const LONG = 90;

/** Reads, checks and typesets the body of a derivation block whose first line stands at `firstLine`. */
export const derivation = (
  body: string,
  firstLine: number,
  title: string,
  book: Diagnostics,
  inline: (text: string, line: number) => string,
  numbered: (relation: string) => Label | undefined,
): string => {
  const before = book.mistakes.length;
  const lines = body.split('\n').flatMap((text, i) => readLine(text, firstLine + i, book) ?? []);
  // What is unread would be missed on every line below it.
  if (book.mistakes.length === before) check(lines, firstLine, book);
  const last = lines.at(-1);
  const steps = lines.slice(0, -1).map((l) => render(l, inline, undefined));
  const end = last ? render(last, inline, last.cites === undefined ? undefined : numbered(last.cites)) : '';
  const heading = `<h3>${escapeText(title || DERIVATION)}</h3>`;
  // What it arrives at is read by all, how it comes there by those who ask.
  return `<section class="derivation">${heading}${
    steps.length > OPEN_STEPS
      ? `<details><summary>${whyLines(steps.length)}</summary><ol>${steps.join('')}</ol></details><ol>${end}</ol>`
      : `<ol>${steps.join('')}${end}</ol>`
  }</section>`;
};

const readLine = (text: string, line: number, book: Diagnostics): Line[] | undefined => {
  if (text.trim() === '') return undefined;
  const { body, comment = '' } = splitComment(text);
  const given = /^let\s+/.test(body);
  const cited = /\s*\[([a-z0-9-]+)\]\s*$/.exec(comment);
  const sides: MathNode[] = [];
  for (const side of splitEquals(body.replace(/^let\s+/, '')))
    try {
      sides.push(parseExpression(side));
    } catch (error) {
      book.note(line, `“${side}” is not algebra that can be read: ${(error as Error).message}.`);
      return undefined;
    }
  try {
    for (const side of sides) setExpression(side);
  } catch (error) {
    book.note(line, `${(error as Error).message}.`);
    return undefined;
  }
  if (sides.length < 2) {
    book.note(
      line,
      `“${body}” has no equals sign; a line of a derivation is an equality, or “let symbol = expression”.`,
    );
    return undefined;
  }
  for (const name of sides.flatMap(namesIn))
    if (!isSymbol(name)) {
      book.note(line, notASymbol(name));
      return undefined;
    }
  if (comment === '') book.note(line, `This line does not say why; add “# reason” at its end.`);
  return [
    {
      line,
      given,
      sides,
      code: sides.map((side) => side.compile()),
      why: comment.replace(/\s*\[[a-z0-9-]+\]\s*$/, ''),
      cites: cited?.[1],
    },
  ];
};

const check = (lines: readonly Line[], firstLine: number, book: Diagnostics): void => {
  const last = lines.at(-1);
  if (!last) {
    book.note(firstLine, 'This derivation has no lines.');
    return;
  }
  if (last.cites === undefined)
    book.note(
      last.line,
      'The last line cites no relation; name the one it arrives at in square brackets, so that the engine can check it.',
    );
  const defined = new Set<string>();
  for (const line of lines) {
    const fault = lineFault(line, lines, defined);
    if (fault !== undefined) {
      // The lines below stand on this one.
      book.note(line.line, fault);
      return;
    }
    if (line.given) defined.add(String(line.sides[0]));
  }
};

/** What is wrong with a line, or undefined. */
const lineFault = (line: Line, lines: readonly Line[], defined: ReadonlySet<string>): string | undefined => {
  const symbol = String(line.sides[0]);
  if (line.given && (!isSymbol(symbol) || defined.has(symbol)))
    return `“let ${symbol}” must name one symbol that is not set yet.`;
  const relation = line.cites === undefined ? undefined : relationNamed(line.cites);
  if (line.cites !== undefined && !relation)
    return `“${line.cites}” is not a relation of the engine${didYouMean(
      line.cites,
      RELATIONS.map((one) => one.name),
      '; npm run ask lists them.',
    )}`;
  if (relation && !Object.hasOwn(relation.gives, symbol))
    return `${line.cites} does not give ${symbol}, so it can’t be cited on this line.`;
  const earlier = lines.slice(0, lines.indexOf(line)).filter((l) => l.given);
  const said = JSON.stringify([[...earlier, line].map((l) => l.sides.map(String)), line.given, line.cites]);
  if (!faults.has(said)) faults.set(said, faultAtPoints(line, earlier, relation));
  return faults.get(said);
};

/** What was found of a line under the lines before it: all but one line of a saved chapter are as they were. */
const faults = new Map<string, string | undefined>();

/** Both sides of a line, and the engine where it cites a relation, at many points. */
const faultAtPoints = (line: Line, earlier: readonly Line[], relation: AnyRelation | undefined): string | undefined => {
  const symbol = String(line.sides[0]);
  const names = [...new Set([...earlier, line].flatMap((l) => l.sides).flatMap(namesIn)), ...(relation?.takes ?? [])];
  const free = [...new Set(names)].filter(
    (n) => isSymbol(n) && !earlier.some((l) => String(l.sides[0]) === n) && !(line.given && n === symbol),
  );
  const claim = { line, earlier, relation, symbol: symbol as SymbolName };
  let tried = 0;
  for (let i = 0; i < POINTS; i++) {
    const values = pointAt(free as SymbolName[], i);
    // Dimensions are the same at every point; numbers that do not agree are told of as quantities.
    const plain = i < WITH_UNITS ? undefined : atPoint(claim, values, false);
    const found = typeof plain === 'string' ? plain : atPoint(claim, values, true);
    if (found === 'holds') tried++;
    else if (found !== 'no value') return found.fault;
  }
  return tried >= POINTS / 10
    ? undefined
    : 'Hardly any admissible point has a value here, so the line could not be checked.';
};

interface Claim {
  readonly line: Line;
  readonly earlier: readonly Line[];
  readonly relation: AnyRelation | undefined;
  readonly symbol: SymbolName;
}

/** What a line comes to at one point, as quantities or as pure numbers; no value where the engine refuses the point. */
const atPoint = (
  { line, earlier, relation, symbol }: Claim,
  values: Record<string, number>,
  units: boolean,
): 'holds' | 'no value' | { readonly fault: string } => {
  const quantities = units ? withUnits : withoutUnits;
  const scope = quantities(values);
  try {
    for (const { sides, code } of earlier) scope[String(sides[0])] = code[1]?.evaluate(scope) as Quantity;
    const found = line.code.slice(line.given ? 1 : 0).map((side) => side.evaluate(scope) as Quantity);
    const reference = found[0] as Quantity;
    for (const [j, other] of found.slice(1).entries())
      if (!agree(reference, other))
        return {
          fault: `The two sides are not equal: ${show(reference)} on the left, ${show(other)} on the right (side ${j + 2}) at ${point(values)}.`,
        };
    if (units && line.given && !hasUnit(reference, symbol))
      return {
        fault: `${symbol} is ${symbolFact(symbol).says}, in ${symbolFact(symbol).unit}, which this expression is not.`,
      };
    if (!relation) return 'holds';
    const inputs: Record<string, number> = {};
    for (const s of relation.takes) inputs[s] = units ? toNumber(scope[s] as Quantity, s) : Number(scope[s]);
    const engine = relation.of(inputs);
    if (!engine.ok) return 'no value';
    const want = quantities({ [symbol]: engine.value[symbol] ?? Number.NaN })[symbol] as Quantity;
    for (const side of found)
      if (!agree(want, side))
        return {
          fault: `The engine’s ${relation.name} gives ${show(want)}, this line ${show(side)} at ${point(values)}.`,
        };
    return 'holds';
  } catch (error) {
    return { fault: cannotBeEvaluated((error as Error).message) };
  }
};

/** The expression library speaks of types and functions; an author of units. */
const cannotBeEvaluated = (message: string): string =>
  /Units do not match|argument in function (?:add|subtract)/.test(message)
    ? 'This line adds or takes away things of different kinds, such as a length and a pure number; give both the same unit.'
    : `This line can’t be evaluated: ${message.replace(/\.$/, '')}.`;

const hasUnit = (value: Quantity, symbol: SymbolName): boolean => {
  const want = withUnits({ [symbol]: 1 })[symbol] as Quantity;
  return typeof value === 'number' ? typeof want === 'number' : typeof want !== 'number' && value.equalBase(want);
};

const toNumber = (value: Quantity, symbol: SymbolName): number => Number(inBase(value, symbolFact(symbol).unit));

const show = (value: Quantity): string =>
  typeof value === 'number' ? String(Number(value.toPrecision(6))) : value.format({ precision: 6 });

const point = (values: Record<string, number>): string =>
  Object.entries(values)
    .map(([k, v]) => `${k} = ${Number(v.toPrecision(4))}`)
    .join(', ');

const render = (
  { sides, why, given, cites, line }: Line,
  inline: (text: string, line: number) => string,
  label: Label | undefined,
): string => {
  const [left, ...rest] = sides.map((s) => setExpression(s));
  const marks = [...(given ? ['given'] : []), ...(sides.join('').length > LONG ? ['long'] : [])];
  return (
    `<li${label ? ` id="${label.id}"` : ''}${marks.length > 0 ? ` class="${marks.join(' ')}"` : ''}><span class="left">${typeset(left)}</span>` +
    `<span class="right">${rest.map((r) => typeset(undefined, r)).join('')}</span>` +
    `<span class="why">${inline(why, line)}${cites ? ` <span class="cites"${OWN}>(${escapeText(relationCited(cites, relationNamed(cites)?.says ?? cites))})</span>` : ''}${label ? ` <span class="equation-number">(${label.number})</span>` : ''}</span></li>`
  );
};
