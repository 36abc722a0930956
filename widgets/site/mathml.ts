/**
 * Algebra as MathML: the marks it is made of. Spaces of operators are those of the MathML operator dictionary; form and
 * stretching are stated where engines infer them differently.
 */

import { renderToString } from 'katex';
import { spokenNumber } from '../engine/index.ts';

const mark = (tag: string, content: string, attributes = ''): string => `<${tag}${attributes}>${content}</${tag}>`;

/** A single letter leans; the name of a function, being several, stands upright by itself. */
export const identifier = (letters: string): string => mark('mi', letters);
export const digits = (number: string): string => mark('mn', spokenNumber(number));
/** A number that is written anew; as words it would count as space, and a sign between two such would lose its own. */
export const place = (text: string, name: string): string => mark('mn', text, ` data-slot="${name}"`);
export const words = (text: string): string => mark('mtext', text);
/** Letters that stand upright in a sign. Beside others they are words: one engine sets an upright identifier apart, like a function. */
const upright = (letters: string): string => words(letters);
const UPRIGHT_ALONE = /^<mtext>([^<]*)<\/mtext>$/;
const uprightAlone = (_: string, letters: string): string =>
  mark('mi', letters, [...letters].length === 1 ? ' mathvariant="normal"' : '');
export const operator = (sign: string): string => mark('mo', sign);
/** A minus that stands before one thing is set close to it, wherever in a row it is. */
export const negation = '<mo form="prefix">−</mo>';
/** A sign between two things that begins a line of its own keeps its space. */
export const between = (sign: string): string => mark('mo', sign, ' form="infix"');
export const comma = '<mo rspace=".28em">,</mo>';
export const thinSpace = '<mspace width=".17em"></mspace>';
const row = (content: string): string => mark('mrow', content);
const LEAF = /^<(mi|mn|mtext)\b[^>]*>[^<]*<\/\1>$/;
/** A part that takes one mark: a single letter or number is one already. */
const part = (content: string): string => (LEAF.test(content) ? content : row(content));
export const fraction = (above: string, below: string): string => mark('mfrac', part(above) + part(below));
export const root = (content: string): string => mark('msqrt', content);
export const raised = (base: string, power: string): string => mark('msup', part(base) + part(power));
export const lowered = (base: string, index: string): string => mark('msub', base + index);

/** Signs round something grow with it only where it is tall: one engine sets what may grow loosely even where it doesn't. */
export const fenced = (open: string, content: string, close: string, tall: boolean): string => {
  const fixed = tall ? '' : ' stretchy="false"';
  return row(mark('mo', open, fixed) + content + mark('mo', close, fixed));
};

/** Marks a part by name, so that it is found on the page: the sign of a symbol, for pointing. */
export const tagged = (part: string, name: string): string => part.replace(/^<\w+/, `$& data-sym="${name}"`);

/**
 * What KaTeX’s MathML is tidied by, so that three engines set a sign alike: an upright identifier would be set apart from its neighbours
 * like a function by one of them, and arrows and stars in an index are letters there, not operators.
 */
const TIDY: readonly (readonly [RegExp, string | ((all: string) => string)])[] = [
  [/<mi mathvariant="normal">([ℓ∞])<\/mi>/g, '<mi>$1</mi>'],
  [/<mo\b[^>]*>([↑↓])<\/mo>/g, '<mi>$1</mi>'],
  [/<mo\b[^>]*>∗<\/mo>/g, '<mtext>∗</mtext>'],
  [/<mi>(min|max)<\/mi><mo>\u2061<\/mo>/g, '<mtext>$1</mtext>'],
  // Letters of one \\mathrm, each a mark of its own, are one word.
  [
    /<mrow>(?:<mi mathvariant="normal">[^<]*<\/mi>|<mn>[^<]*<\/mn>)*<mi mathvariant="normal">[^<]*<\/mi><\/mrow>/g,
    (all) => upright(all.replace(/<[^>]*>/g, '')),
  ],
  [/<mi mathvariant="normal">([^<]*)<\/mi>/g, '<mtext>$1</mtext>'],
  [/<mo stretchy="true">ˉ<\/mo>|<mo[^>]*>ˉ<\/mo>/g, '<mo>‾</mo>'],
];

/** The sign of a symbol, from the short TeX in which the glossary spells it. */
export const sign = (spelling: string): string => {
  const set = spelling.trim() === '' ? '' : mathmlOf(spelling);
  const [, marks] = /<semantics>(<mrow>[\s\S]*<\/mrow>)<annotation/.exec(set) ?? [];
  if (marks === undefined) throw new Error(`the sign “${spelling}” can’t be set`);
  const tidy = TIDY.reduce((text, [from, to]) => text.replace(from, to as string), marks);
  const inner = /^<mrow>([\s\S]*)<\/mrow>$/.exec(tidy)?.[1];
  return (inner !== undefined && marksIn(inner) === 1 ? inner : tidy).replace(UPRIGHT_ALONE, uprightAlone);
};

const mathmlOf = (spelling: string): string => {
  try {
    return renderToString(spelling, { output: 'mathml', strict: 'error', throwOnError: true });
  } catch (error) {
    throw new Error(`the sign “${spelling}” can’t be set: ${(error as Error).message}`);
  }
};

/** How many marks stand side by side. */
const marksIn = (content: string): number => {
  let depth = 0;
  let count = 0;
  for (const [, close] of content.matchAll(/<(\/?)\w+[^>]*>/g)) {
    depth += close === '' ? 1 : -1;
    if (depth === 0) count++;
  }
  return count;
};

/** How wide a formula is, in letters: what stands over one another is as wide as the wider of the two, and an index is small. */
export const lettersWide = (html: string): number => {
  /** The widths of what stands in each element that is open, outermost first. */
  const open: { tag: string; parts: number[] }[] = [{ tag: '', parts: [] }];
  for (const [, close, tag, text] of html.matchAll(/<(\/?)(\w+)[^>]*>|([^<]+)/g)) {
    if (text !== undefined) open.at(-1)?.parts.push([...text.replace(/&\w+;/g, ' ')].length);
    else if (close === '' && tag !== 'wbr') open.push({ tag: tag ?? '', parts: [] });
    else if (close === '/') {
      const { tag: ended, parts } = open.pop() ?? { tag: '', parts: [] };
      open.at(-1)?.parts.push(widthIn(ended, parts));
    }
  }
  return widthIn('', open[0]?.parts ?? []);
};
const widthIn = (tag: string, parts: readonly number[]): number => {
  if (tag === 'mfrac') return Math.max(0, ...parts);
  const [base = 0, ...rest] = parts;
  const small = rest.reduce((sum, part) => sum + part, 0);
  return base + (tag === 'msub' || tag === 'msup' ? 0.6 * small : small);
};
