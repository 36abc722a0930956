/**
 * Algebra as MathML: the marks it is made of. Spaces of operators are those of the MathML operator dictionary; form and
 * stretching are stated where engines infer them differently.
 */

const mark = (tag: string, content: string, attributes = ''): string => `<${tag}${attributes}>${content}</${tag}>`;

/** A single letter leans; the name of a function, being several, stands upright by itself. */
export const identifier = (letters: string): string => mark('mi', letters);
export const digits = (number: string): string => mark('mn', number);
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
/** One mark where a place takes only one. */
const one = (marks: readonly string[]): string => (marks.length === 1 ? (marks[0] ?? '') : row(marks.join('')));
export const fraction = (above: string, below: string): string => mark('mfrac', part(above) + part(below));
export const root = (content: string): string => mark('msqrt', content);
export const raised = (base: string, power: string): string => mark('msup', part(base) + part(power));
export const lowered = (base: string, index: string): string => mark('msub', base + index);
const overlined = (base: string): string => mark('mover', `${base}<mo>‾</mo>`, ' accent="true"');

/** Signs round something grow with it only where it is tall: one engine sets what may grow loosely even where it doesn't. */
export const fenced = (open: string, content: string, close: string, tall: boolean): string => {
  const fixed = tall ? '' : ' stretchy="false"';
  return row(mark('mo', open, fixed) + content + mark('mo', close, fixed));
};

/** Marks a part by name, so that it is found on the page: the sign of a symbol, for pointing. */
export const tagged = (part: string, name: string): string => part.replace(/^<\w+/, `$& data-sym="${name}"`);

const GREEK: Record<string, string> = {
  alpha: 'α',
  beta: 'β',
  delta: 'δ',
  varepsilon: 'ε',
  zeta: 'ζ',
  eta: 'η',
  theta: 'θ',
  vartheta: 'ϑ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  varphi: 'φ',
  psi: 'ψ',
  ell: 'ℓ',
  infty: '∞',
  uparrow: '↑',
  downarrow: '↓',
};
/** Upright by custom, as capital Greek letters are. */
const UPRIGHT: Record<string, string> = { Delta: 'Δ', min: 'min', max: 'max' };

/** The sign of a symbol, from the short TeX in which the glossary spells it: letters, Greek, \mathrm, \bar, _ and ^. */
export const sign = (spelling: string): string => {
  const tokens = [...spelling.matchAll(/\\[a-zA-Z]+|\d+|\S/g)].map(([token]) => token);
  const refuse = (token: string | undefined): never => {
    throw new Error(
      `the sign “${spelling}” can’t be set: “${token ?? 'its end'}” is not among letters, brackets, \\mathrm, \\bar, _ and ^`,
    );
  };
  let at = 0;
  const group = (): string[] => {
    const marks: string[] = [];
    while (at < tokens.length && tokens[at] !== '}') marks.push(scripted());
    return marks;
  };
  const braced = (): string[] => {
    if (tokens[at++] !== '{') refuse(tokens[at - 1]);
    const marks = group();
    if (tokens[at++] !== '}') refuse(undefined);
    return marks;
  };
  const atom = (): string => {
    const token = tokens[at];
    if (token === '{') return one(braced());
    at++;
    if (token === undefined) return refuse(token);
    if (token === '\\mathrm') {
      const end = tokens.indexOf('}', at);
      if (tokens[at] !== '{' || end < 0) return refuse(tokens[at]);
      const letters = tokens.slice(at + 1, end).join('');
      at = end + 1;
      return upright(letters);
    }
    if (token === '\\bar') return overlined(atom());
    if (token.startsWith('\\')) {
      const name = token.slice(1);
      const [leans, stands] = [GREEK[name], UPRIGHT[name]];
      return leans !== undefined ? identifier(leans) : stands !== undefined ? upright(stands) : refuse(token);
    }
    if (/^\d/.test(token)) return digits(token);
    if (token === '(' || token === ')') return mark('mo', token, ' stretchy="false"');
    if (token === '*') return upright('∗');
    return /^[A-Za-z]$/.test(token) ? identifier(token) : refuse(token);
  };
  const scripted = (): string => {
    let base = atom();
    for (;;) {
      if (tokens[at] === '_') {
        at++;
        base = lowered(base, atom());
      } else if (tokens[at] === '^') {
        at++;
        base = `<msup>${base}${atom()}</msup>`;
      } else return base;
    }
  };
  const marks = group();
  if (at < tokens.length || marks.length === 0) refuse(tokens[at]);
  return one(marks).replace(UPRIGHT_ALONE, uprightAlone);
};
