/**
 * Expressions of chapters and relations: one algebraic spelling (`h_C*L_C - h_A*L_A`), typeset through KaTeX and
 * evaluated through mathjs. Build and test time only; neither library reaches a page as script.
 */
import katex from 'katex';
import { type MathNode, parse } from 'mathjs';
import { isSymbol, SYMBOLS } from '../engine/index.ts';

export const parseExpression = (text: string): MathNode => parse(text);

/** Names an expression uses, without functions and constants. */
export const namesIn = (node: MathNode): string[] => {
  const names = new Set<string>();
  node.traverse((n, path) => {
    const symbol = n as unknown as { isSymbolNode?: boolean; name: string };
    if (symbol.isSymbolNode && path !== 'fn' && !(symbol.name in CONSTANT_TEX)) names.add(symbol.name);
  });
  return [...names];
};

const CONSTANT_TEX: Record<string, string> = { pi: '\\pi', deg: '{}^\\circ', mm: '\\mathrm{mm}' };
const FUNCTION_TEX: Record<string, string> = {
  atan: '\\arctan',
  tan: '\\tan',
  sin: '\\sin',
  cos: '\\cos',
  min: '\\min',
  max: '\\max',
  exp: '\\exp',
  log: '\\ln',
  log10: '\\log_{10}',
  asin: '\\arcsin',
  acos: '\\arccos',
};

/** How a name is set: the glossary's sign, tagged so that pointing at it can light it elsewhere. */
export const symbolTex = (name: string): string =>
  isSymbol(name) ? `\\htmlData{sym=${name}}{${SYMBOLS[name].tex}}` : `\\mathrm{${name.replace(/_/g, '\\_')}}`;

interface Tex {
  readonly tex: string;
  /** 1 sum, 2 product, 3 sign, 4 power, 5 one thing. */
  readonly rank: number;
}

/** A number; a power of ten is a product, so it may need brackets. */
const constant = (value: number): Tex => {
  const [digits = '', exponent] = String(value).split('e');
  return exponent === undefined
    ? { tex: digits, rank: 5 }
    : { tex: `${digits}\\times 10^{${Number(exponent)}}`, rank: 2 };
};

/** TeX of an expression; `leaf` sets each name, `times` stands between factors. */
export const toTex = (node: MathNode, leaf: (name: string) => string = symbolTex, times = '\\,'): string => {
  const write = (raw: MathNode): Tex => {
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
        // A string would be set as raw TeX.
        if (typeof n.value === 'number') return constant(n.value);
        break;
      case 'SymbolNode':
        return { tex: CONSTANT_TEX[n.name] ?? leaf(n.name), rank: 5 };
      case 'FunctionNode':
        return { tex: call(n.fn.name ?? String(n.fn), n.args), rank: 5 };
      case 'OperatorNode':
        if (a && b) return binary(n.op, a, b);
        if (a && n.op === '-') return { tex: `-${atLeast(a, 3)}`, rank: 3 };
        break;
    }
    throw new Error(`“${raw.toString()}” can’t be typeset here; use + − * / ^, brackets and the common functions`);
  };
  const atLeast = (node: MathNode, rank: number): string => {
    const w = write(node);
    return w.rank >= rank ? w.tex : `\\left(${w.tex}\\right)`;
  };
  /** What stands right of an operator takes brackets also where it begins with a minus. */
  const right = (node: MathNode, rank: number): string => {
    const tex = atLeast(node, rank);
    return tex.startsWith('-') ? `\\left(${tex}\\right)` : tex;
  };
  /** A number with its unit, filled into a slot, is a thing of two parts and takes brackets under a power. */
  const base = (node: MathNode): string =>
    leaf === slotTex && node.type === 'SymbolNode' ? `\\left(${write(node).tex}\\right)` : atLeast(node, 5);
  const binary = (op: string, a: MathNode, b: MathNode): Tex => {
    if (op === '+') return { tex: `${atLeast(a, 1)}+${right(b, 1)}`, rank: 1 };
    if (op === '-') return { tex: `${atLeast(a, 1)}-${right(b, 2)}`, rank: 1 };
    if (op === '*') return { tex: atLeast(a, 2) + between(a, b) + right(b, 3), rank: 2 };
    if (op === '/') return { tex: `\\frac{${write(a).tex}}{${write(b).tex}}`, rank: 4 };
    if (op === '^') return { tex: `${base(a)}^{${write(b).tex}}`, rank: 4 };
    throw new Error(`“${op}” can’t be typeset here`);
  };
  const between = (a: MathNode, b: MathNode): string => {
    if (b.toString() === 'deg') return '';
    if (b.toString() === 'mm') return '\\,';
    const numberFirst = a.type === 'ConstantNode' && b.type === 'ConstantNode';
    return numberFirst ? '\\times ' : times;
  };
  const call = (name: string, args: readonly MathNode[]): string => {
    const inner = args.map((x) => write(x).tex).join(',\\;');
    if (name === 'abs') return `\\left|${inner}\\right|`;
    if (name === 'sqrt') return `\\sqrt{${inner}}`;
    const tex = FUNCTION_TEX[name];
    if (tex === undefined) throw new Error(`the function “${name}” can’t be typeset here`);
    return `${tex}\\left(${inner}\\right)`;
  };
  return write(node).tex;
};

/** A place in a formula where a number stands that the reader may change. TeX text takes no underscore, so a dash stands in. */
export const slotTex = (name: string): string => `\\text{§${name.replace(/_/g, '-')}§}`;

/** What has been typeset before: a chapter is pressed again at each save, with nearly all its algebra as it was. */
const known = new Map<string, string>();

const typesetBare = (tex: string): string => {
  const html =
    known.get(tex) ??
    katex
      .renderToString(`\\displaystyle ${tex}`, {
        output: 'htmlAndMathml',
        trust: true,
        strict: false,
        throwOnError: true,
      })
      .replace(/<annotation.*?<\/annotation>/s, '');
  known.set(tex, html);
  return html;
};

/** Typesets TeX as MathML beside its picture; `fill` gives the text of each slot. */
export const typeset = (tex: string, fill: (slot: string) => string = () => ''): string => {
  const slot = (tag: string, mark: string): string => {
    const name = mark.replace(/-/g, '_');
    return `<${tag} data-slot="${name}">${fill(name)}</${tag}>`;
  };
  return typesetBare(tex)
    .replace(/<mtext>§([A-Za-z0-9-]+)§<\/mtext>/g, (_, mark: string) => slot('mtext', mark))
    .replace(/§([A-Za-z0-9-]+)§/g, (_, mark: string) => slot('span', mark));
};

/**
 * Typesets what an author writes between dollar signs: an expression, or equals between expressions. Throws with the
 * reason where it can't.
 */
export const typesetEquation = (text: string): string => {
  const sides = splitEquals(text).map(parseExpression);
  const unknown = sides.flatMap(namesIn).find((name) => !isSymbol(name));
  if (unknown !== undefined)
    throw new Error(`“${unknown}” is not a symbol of the engine’s glossary (widgets/engine/kernel/symbols.ts)`);
  return typeset(sides.map((side) => toTex(side)).join('='));
};

/** The sides of `a = b = c`. */
export const splitEquals = (text: string): string[] => text.split('=').map((side) => side.trim());
