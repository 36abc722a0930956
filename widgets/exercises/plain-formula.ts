/**
 * Formulas and signs in plain text, as a book would print them in a line: `h_C × L_C`, `17 × √3/24 × P`, `|Δ|`. An index follows
 * its letter after a `_`, which `withIndexes` sets low where there is HTML.
 */
import { isSymbol, spokenNumber, symbolFact } from '../engine/index.ts';

const GREEK: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  Delta: 'Δ',
  varepsilon: 'ε',
  zeta: 'ζ',
  eta: 'η',
  theta: 'θ',
  vartheta: 'ϑ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'µ',
  nu: 'ν',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  varphi: 'φ',
  phi: 'φ',
  psi: 'ψ',
  omega: 'ω',
  ell: 'ℓ',
  infty: '∞',
  uparrow: '↑',
  downarrow: '↓',
  min: 'min',
  max: 'max',
};

/** The glossary’s sign of a symbol, its index behind one `_`. */
export const plainSign = (name: string): string => {
  if (!isSymbol(name)) return name;
  const plain = symbolFact(name)
    .tex.replace(/\\(?:mathrm|text)\{([^{}]*)\}/g, ' $1')
    .replace(/\\bar\s*\{?(\w)\}?/g, '$1\u0304')
    .replace(/\\([A-Za-z]+)\s*/g, (all, word: string) => GREEK[word] ?? all)
    .replace(/\^\{?\*\}?/g, '*')
    .replace(/[{}]/g, '');
  const [head = '', ...index] = plain.split('_');
  return index.length === 0 ? head.trim() : `${head.trim()}_${index.join('').replace(/\s/g, '')}`;
};

/** Text that is escaped already, the index of each letter set low. */
export const withIndexes = (text: string): string =>
  text.replace(/(?<![\p{L}\p{N}_])(Δ?\p{L}[\u0304*]?)_([\p{L}\p{N}↑↓*∞]+)/gu, '$1<sub>$2</sub>');

const FUNCTIONS: Readonly<Record<string, string>> = {
  atan: 'arctan',
  asin: 'arcsin',
  acos: 'arccos',
  log: 'ln',
  log10: 'lg',
};
/** A power that is a number, set high. */
const high = (power: string): string => [...power].map((c) => (c === '.' ? '·' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)])).join('');

/** A formula of relations or slips; its quantities, which `takes` knows, are written by `fill`. */
export const plainFormula = (
  formula: string,
  takes: (word: string) => boolean,
  fill: (symbol: string) => string,
): string => {
  const tokens = formula.match(/\d+\.?\d*(?:e[+-]?\d+)?|[A-Za-z_]\w*|\S/g) ?? [];
  /** The bracket that closes the one at `open`. */
  const closing = (open: number): number => {
    let depth = 0;
    for (let i = open; i < tokens.length; i++) {
      if (tokens[i] === '(') depth++;
      else if (tokens[i] === ')' && --depth === 0) return i;
    }
    return tokens.length;
  };
  const write = (from: number, to: number): string => {
    let text = '';
    for (let i = from; i < to; i++) {
      const token = tokens[i] ?? '';
      const raised = tokens[i + 1] === '^';
      if (token === '(' || (/^[A-Za-z]/.test(token) && tokens[i + 1] === '(')) {
        const open = token === '(' ? i : i + 1;
        const end = closing(open);
        const inside = write(open + 1, end);
        // One number with its unit needs no brackets of its own, but a root of several things does.
        const single = end - open === 2 || (token === '(' && /^[\d.]+°$/.test(inside));
        if (token === 'sqrt') text += single ? `√${inside}` : `√(${inside})`;
        else if (token === 'abs') text += `|${inside.replace(/^\((−.*)\)$/, '$1')}|`;
        else if (token === '(') text += single && !/^−/.test(inside) ? inside : `(${inside})`;
        else text += `${FUNCTIONS[token] ?? token}(${inside})`;
        i = end;
      } else if (token === 'pi') text += 'π';
      else if (token === 'g_n') text += 'g_n';
      else if (/^\d/.test(token) && tokens[i + 1] === '*' && (tokens[i + 2] === 'deg' || tokens[i + 2] === 'mm')) {
        text += `${spokenNumber(token)}${tokens[i + 2] === 'deg' ? '°' : '\u00a0mm'}`;
        i += 2;
      } else if (takes(token)) {
        const filled = fill(token);
        // The power is of number and unit together.
        text += raised && /\s|^\(?−/u.test(filled) && !/^\(.*\)$/.test(filled) ? `(${filled})` : filled;
      } else if (token === '*') text += ' × ';
      else if (token === '+') text += ' + ';
      else if (token === '-') text += /^$|[\s(,]$/.test(text) ? '−' : ' − ';
      else if (token === ',') text += ', ';
      else if (token === '^') {
        const power = tokens[i + 1] ?? '';
        if (power === '(' && tokens[i + 3] === '/' && tokens[i + 5] === ')') {
          text += `${high(tokens[i + 2] ?? '')}ᐟ${high(tokens[i + 4] ?? '')}`;
          i += 5;
        } else if (/^[\d.]+$/.test(power)) {
          text += high(power);
          i++;
        } else text += '^';
      } else text += spokenNumber(token);
    }
    return text;
  };
  return write(0, tokens.length);
};
