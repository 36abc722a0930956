/**
 * Expressions of chapters and relations: one algebraic spelling (`h_C*L_C - h_A*L_A`), set as MathML, which the reader's
 * browser draws, and evaluated through mathjs, which is of build and test time only.
 */
import { type MathNode, parse } from 'mathjs';
import { isSymbol, SYMBOLS } from '../engine/index.ts';
import { escapeText } from '../input/escape.ts';
import {
  between,
  comma,
  digits,
  fenced,
  fraction,
  identifier,
  lowered,
  negation,
  operator,
  place,
  raised,
  root,
  sign,
  tagged,
  thinSpace,
  words,
} from './mathml.ts';
import { didYouMean } from './near.ts';

export const parseExpression = (text: string): MathNode => parse(text);

/** Names an expression uses, without functions and constants. */
export const namesIn = (node: MathNode): string[] => {
  const names = new Set<string>();
  node.traverse((n, path) => {
    const symbol = n as unknown as { isSymbolNode?: boolean; name: string };
    if (symbol.isSymbolNode && path !== 'fn' && !(symbol.name in CONSTANTS)) names.add(symbol.name);
  });
  return [...names];
};

const CONSTANTS: Record<string, string> = {
  pi: identifier('π'),
  deg: words('°'),
  mm: words('mm'),
  // Standard acceleration of free fall.
  g_n: `<msub>${identifier('g')}${identifier('n')}</msub>`,
};
const FUNCTIONS: Record<string, string> = {
  atan: identifier('arctan'),
  tan: identifier('tan'),
  sin: identifier('sin'),
  cos: identifier('cos'),
  min: identifier('min'),
  max: identifier('max'),
  exp: identifier('exp'),
  log: identifier('ln'),
  log10: lowered(identifier('log'), digits('10')),
  asin: identifier('arcsin'),
  acos: identifier('arccos'),
};

/** How a name is set. A place for a number is a thing of two parts, number and unit, and takes brackets under a power. */
export interface Leaf {
  readonly mark: (name: string) => string;
  readonly twoParts: boolean;
  /** What stands between factors. */
  readonly times: string;
}

/** The glossary's sign, tagged so that pointing at it can light it elsewhere. */
const symbolMark = (name: string): string =>
  isSymbol(name) ? tagged(sign(SYMBOLS[name].tex), name) : words(escapeText(name));

/** Names by their signs; `named` says under which name another is known where the expression stands. */
export const asSymbols = (named: (name: string) => string = (name) => name): Leaf => ({
  mark: (name) => symbolMark(named(name)),
  twoParts: false,
  times: thinSpace,
});

/** Names by their numbers, each in a place where the page can write another. */
export const asNumbers = (fill: (name: string) => string): Leaf => ({
  mark: (name) => place(escapeText(fill(name)), name),
  twoParts: true,
  times: operator('×'),
});

/** A piece of a line, begun by the sign that joins it to the one before; a line that is too long is broken there. */
interface Piece {
  readonly sign: string;
  readonly marks: string;
}
interface Algebra {
  readonly pieces: readonly Piece[];
  /** 1 sum, 2 product, 3 sign, 4 power, 5 one thing. */
  readonly rank: number;
  /** Taller than a line, so that brackets grow with it. */
  readonly tall?: boolean;
  readonly negative?: boolean;
}

const single = (marks: string, rank: number, tall = false): Algebra => ({
  pieces: [{ sign: '', marks }],
  rank,
  tall,
});
const inRow = ({ pieces }: Algebra): string =>
  pieces.map(({ sign, marks }) => (sign === '' ? '' : operator(sign)) + marks).join('');

/** Two parts side by side, without a place to break. */
const beside = (a: Algebra, glue: string, b: Algebra, rank: number): Algebra => {
  const [first, ...rest] = b.pieces;
  const last = a.pieces.at(-1);
  return {
    pieces: [
      ...a.pieces.slice(0, -1),
      { sign: last?.sign ?? '', marks: `${last?.marks}${glue}${first?.marks}` },
      ...rest,
    ],
    rank,
    tall: a.tall || b.tall || false,
    negative: a.negative ?? false,
  };
};
/** Two parts joined by a sign, before which a line can be broken. */
const joined = (a: Algebra, sign: string, b: Algebra, rank: number): Algebra => ({
  pieces: [...a.pieces, ...b.pieces.map((piece, i) => (i === 0 ? { ...piece, sign } : piece))],
  rank,
  tall: a.tall || b.tall || false,
  negative: a.negative ?? false,
});

/** A number; a power of ten is a product, so it may need brackets. */
const constant = (value: number): Algebra => {
  const [plain = '', exponent] = String(value).split('e');
  if (exponent === undefined) return single(digits(plain), 5);
  const power = Number(exponent);
  const raisedTen = raised(digits('10'), (power < 0 ? negation : '') + digits(String(Math.abs(power))));
  return single(digits(plain) + operator('×') + raisedTen, 2);
};

/** Sets an expression; `leaf` sets each name. */
export const setExpression = (node: MathNode, leaf: Leaf = asSymbols()): Algebra => {
  const write = (raw: MathNode): Algebra => {
    const n = raw as unknown as {
      type: string;
      name: string;
      value: unknown;
      op: string;
      args: MathNode[];
      content: MathNode;
      fn: { name?: string } & MathNode;
    };
    const [a, b] = n.args ?? [];
    switch (n.type) {
      case 'ParenthesisNode':
        return write(n.content);
      case 'ConstantNode':
        if (typeof n.value === 'number') return constant(n.value);
        break;
      case 'SymbolNode':
        return single(CONSTANTS[n.name] ?? leaf.mark(n.name), 5);
      case 'FunctionNode':
        return call(n.fn.name ?? String(n.fn), n.args);
      case 'OperatorNode':
        if (a && b) return binary(n.op, a, b);
        if (a && n.op === '-') return { ...beside(single(negation, 3), '', atLeast(a, 3), 3), negative: true };
        break;
    }
    throw new Error(`“${raw.toString()}” can’t be typeset here; use + − * / ^, brackets and the common functions`);
  };
  const bracketed = (inner: Algebra): Algebra =>
    single(fenced('(', inRow(inner), ')', inner.tall ?? false), 5, inner.tall);
  const atLeast = (node: MathNode, rank: number): Algebra => {
    const w = write(node);
    return w.rank >= rank ? w : bracketed(w);
  };
  /** What stands right of an operator takes brackets also where it begins with a minus. */
  const right = (node: MathNode, rank: number): Algebra => {
    const w = atLeast(node, rank);
    return w.negative ? bracketed(w) : w;
  };
  const base = (node: MathNode): Algebra =>
    leaf.twoParts && node.type === 'SymbolNode' && node.toString() !== 'pi' ? bracketed(write(node)) : atLeast(node, 5);
  const binary = (op: string, a: MathNode, b: MathNode): Algebra => {
    if (op === '+') return joined(atLeast(a, 1), '+', right(b, 1), 1);
    if (op === '-') return joined(atLeast(a, 1), '−', right(b, 2), 1);
    if (op === '*') return product(atLeast(a, 2), factorSign(a, b), right(b, 3));
    if (op === '/') return single(fraction(inRow(write(a)), inRow(write(b))), 4, true);
    if (op === '^') {
      const below = base(a);
      return single(raised(inRow(below), inRow(write(b))), 4, below.tall);
    }
    throw new Error(`“${op}” can’t be typeset here`);
  };
  const factorSign = (a: MathNode, b: MathNode): string => {
    if (b.toString() === 'deg') return '';
    if (b.toString() === 'mm') return thinSpace;
    const numberFirst = a.type === 'ConstantNode' && b.type === 'ConstantNode';
    return numberFirst ? operator('×') : leaf.times;
  };
  const product = (a: Algebra, glue: string, b: Algebra): Algebra =>
    glue === operator('×') ? joined(a, '×', b, 2) : beside(a, glue, b, 2);
  const call = (name: string, args: readonly MathNode[]): Algebra => {
    const parts = args.map(write);
    const inner = parts.map(inRow).join(comma);
    const tall = parts.some((part) => part.tall);
    if (name === 'abs') return single(fenced('|', inner, '|', tall), 5, tall);
    if (name === 'sqrt') return single(root(inner), 5, true);
    const known = Object.hasOwn(FUNCTIONS, name) ? FUNCTIONS[name] : undefined;
    if (known === undefined) throw new Error(`the function “${name}” can’t be typeset here`);
    return single(`${known}${operator('\u2061')}${fenced('(', inner, ')', tall)}`, 5, tall);
  };
  return write(node);
};

/** Characters that fit a line of a worked step on the narrowest phone. */
const ONE_LINE = 18;

/**
 * Sides with an equals sign between them, as MathML. No engine breaks a line within a formula, so one that may be longer than
 * a line is several, each begun by its sign. Sides that follow on from another formula have `first` empty.
 */
export const typeset = (...sides: readonly (Algebra | undefined)[]): string => {
  const pieces = sides.flatMap((side, i) =>
    (side?.pieces ?? []).map((piece, k): Piece => (k === 0 && i > 0 ? { ...piece, sign: '=' } : piece)),
  );
  const marks = pieces.map(({ sign, marks }) => (sign === '' ? '' : between(sign)) + marks);
  const length = pieces.reduce((sum, { sign, marks }) => sum + (sign + marks.replace(/<[^>]*>/g, '')).length, 0);
  return length <= ONE_LINE ? formula(marks.join('')) : marks.map(formula).join('<wbr>');
};
const formula = (marks: string): string => `<math>${marks}</math>`;

/** One symbol by its sign. */
export const setSymbol = (name: string): Algebra => single(symbolMark(name), 5);

/**
 * Sets what an author writes between dollar signs: an expression, or equals between expressions. Throws with the
 * reason where it can't.
 */
export const typesetEquation = (text: string): string => {
  const sides = splitEquals(text).map(parseExpression);
  const unknown = sides.flatMap(namesIn).find((name) => !isSymbol(name));
  if (unknown !== undefined) throw new Error(notASymbol(unknown).replace(/\.$/, ''));
  return typeset(...sides.map((side) => setExpression(side)));
};

/** A sentence to who names a symbol that there is not. */
export const notASymbol = (name: string): string =>
  `“${name}” is not a symbol of the engine’s glossary (widgets/engine/kernel/symbols.ts)${didYouMean(name, Object.keys(SYMBOLS), '.')}`;

/** The sides of `a = b = c`. */
export const splitEquals = (text: string): string[] => text.split('=').map((side) => side.trim());
