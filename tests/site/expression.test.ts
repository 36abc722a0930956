/** One spelling of algebra, set as MathML: brackets where they are needed and nowhere else, each formula once. */
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { RELATIONS, SYMBOLS, type SymbolName } from '../../widgets/engine/index.ts';
import { CHARACTERS } from '../../widgets/site/algebra-font.mjs';
import {
  asNumbers,
  namesIn,
  parseExpression,
  setExpression,
  setSymbol,
  splitEquals,
  typeset,
  typesetEquation,
} from '../../widgets/site/expression.ts';
import { sign } from '../../widgets/site/mathml.ts';

const braced = (part = ''): string => (part.length > 1 ? `{${part}}` : part);
/** Two-dimensional marks written in a line, so that the structure can be read. */
const inLine = (e: Element): string => {
  const parts = [...e.children].map(inLine);
  switch (e.localName) {
    case 'mfrac':
      return `{${parts.join('|')}}`;
    case 'msup':
      return `${parts[0]}^${braced(parts[1])}`;
    case 'msub':
      return `${parts[0]}_${braced(parts[1])}`;
    case 'msqrt':
      return `√{${parts.join('')}}`;
    case 'mover':
      return `bar(${parts[0]})`;
    case 'mspace':
      return '·';
    default:
      return parts.length > 0 ? parts.join('') : (e.textContent ?? '').replace('\u2061', '').replace('−', '-');
  }
};
const read = (html: string): string =>
  [...parseHTML(`<p>${html}</p>`).document.querySelectorAll('math')].map(inLine).join(' ');
/** Names as they are spelled. */
const plain = { mark: (name: string) => `<mi>${name}</mi>`, twoParts: false, times: '<mspace></mspace>' };
const set = (text: string): string => read(typeset(setExpression(parseExpression(text), plain)));

describe('setExpression', () => {
  const cases: readonly (readonly [string, string])[] = [
    // sums and signs
    ['a+b-c', 'a+b-c'],
    ['a-(b-c)', 'a-(b-c)'],
    ['a-(b+c)', 'a-(b+c)'],
    ['a+(b-c)', 'a+b-c'],
    ['-a*b', '-a·b'],
    ['-(a+b)', '-(a+b)'],
    ['a-(-b)', 'a-(-b)'],
    // products
    ['a*b*c', 'a·b·c'],
    ['n*(a - b)', 'n·(a-b)'],
    ['(a + b)*c', '(a+b)·c'],
    ['a*(-b)', 'a·(-b)'],
    ['a*(b*c)', 'a·(b·c)'],
    ['2*3*a', '2×3·a'],
    // fractions take no brackets of their own
    ['(a+b)/c', '{a+b|c}'],
    ['a/(b*c)', '{a|b·c}'],
    ['a/b*c', '{a|b}·c'],
    ['a/b/c', '{{a|b}|c}'],
    ['3*sqrt(3)/8*P', '{3·√{3}|8}·P'],
    // powers
    ['a^2', 'a^2'],
    ['(a+b)^2', '(a+b)^2'],
    ['a^(b+c)', 'a^{b+c}'],
    ['(a*b)^2', '(a·b)^2'],
    ['(a/b)^2', '({a|b})^2'],
    ['-a^2', '-a^2'],
    ['(-a)^2', '(-a)^2'],
    // functions
    ['atan(L/(pi*d))', 'arctan({L|π·d})'],
    ['abs(a-b)', '|a-b|'],
    ['sqrt(a+b)', '√{a+b}'],
    ['min(a/b, c)', 'min({a|b},c)'],
    ['exp(-a)', 'exp(-a)'],
    ['log(a)', 'ln(a)'],
    ['log10(a)', 'log_{10}(a)'],
    // degrees and millimetres stand after their number
    ['theta/(360*deg)', '{theta|360°}'],
    ['25.4*mm/tpi', '{25.4·mm|tpi}'],
    ['2e-7*a', '2×10^{-7}·a'],
    ['(2e-7)^2', '(2×10^{-7})^2'],
  ];
  for (const [text, expected] of cases)
    it(`sets ${text} as ${expected}`, () => {
      expect(set(text)).toBe(expected);
    });

  it('lets brackets grow with what is tall and with nothing else', () => {
    const brackets = (text: string) => typeset(setExpression(parseExpression(text))).match(/<mo[^>]*>[(|]/)?.[0];
    expect(brackets('n*(L - P)')).toBe('<mo stretchy="false">(');
    expect(brackets('abs(L)')).toBe('<mo stretchy="false">|');
    expect(brackets('(L/P)^2')).toBe('<mo>(');
    expect(brackets('abs(sqrt(L) - P)')).toBe('<mo>|');
  });

  it('refuses what it has no sign for, in words', () => {
    for (const [text, words] of [
      ['[1, 2]', /can’t be typeset here; use \+ − \* \//],
      ['a == b', /can’t be typeset here/],
      ['a > b', /“>” can’t be typeset here/],
      ['gamma(a)', /the function “gamma” can’t be typeset here/],
      ['"\\\\href{javascript:x}{y}"', /can’t be typeset here/],
      ['true', /can’t be typeset here/],
      ['x = 1', /can’t be typeset here/],
      ['f(x) = x', /can’t be typeset here/],
      ['a!', /can’t be typeset here/],
    ] as const)
      expect(() => set(text), text).toThrow(words);
  });
});

describe('asNumbers', () => {
  const numbers = (text: string) =>
    typeset(
      undefined,
      setExpression(
        parseExpression(text),
        asNumbers((name) => `[${name}]`),
      ),
    );
  it('puts brackets round a number under a power, since 2 mm squared is 4 mm²', () => {
    expect(read(numbers('R^2*F'))).toBe('=([R])^2×[F]');
    expect(read(numbers('pi^2*F'))).toBe('=π^2×[F]');
  });
  it('gives each number one place, in which nothing that is filled in becomes a mark', () => {
    const html = typeset(
      setExpression(
        parseExpression('h_A'),
        asNumbers(() => '<b>'),
      ),
    );
    expect(html).toBe('<math><mn data-slot="h_A">&#60;b&#62;</mn></math>');
  });
});

describe('sign', () => {
  it('reads the spellings of the glossary', () => {
    for (const [spelling, expected] of [
      ['d_2', 'd_2'],
      ['D_{2\\min A}', 'D_{2minA}'],
      ['\\Delta T_{\\infty}', 'ΔT_∞'],
      ['\\bar n', 'bar(n)'],
      ['E^{*}', 'E^∗'],
      ['es_{\\mathrm{gf}}', 'es_{gf}'],
    ] as const)
      expect(read(`<math>${sign(spelling)}</math>`), spelling).toBe(expected);
  });
  it('refuses what it has no mark for, in words', () => {
    for (const spelling of ['', 'a_', '{a', 'a}', '\\nosuch'])
      expect(() => sign(spelling), spelling).toThrow(/can’t be set/);
  });
  it('is there for every symbol, tagged with the symbol’s name', () => {
    for (const name of Object.keys(SYMBOLS) as SymbolName[])
      expect(typeset(setSymbol(name)), name).toMatch(new RegExp(`^<math><m\\w+ data-sym="${name}"`));
  });
  it('of a name that is not in the glossary is the name, upright', () => {
    expect(typeset(setSymbol('no_such'))).toBe('<math><mtext>no_such</mtext></math>');
  });
});

describe('every relation', () => {
  it('can be set, with its symbols and with places for its numbers, in characters that the face of algebra has', () => {
    let count = 0;
    for (const r of RELATIONS)
      for (const [symbol, formula] of Object.entries(r.gives)) {
        if (formula === undefined) continue;
        const node = parseExpression(formula);
        for (const name of namesIn(node)) expect(r.takes, `${r.name}: ${formula}`).toContain(name);
        const { document } = parseHTML(`<p>${typeset(setSymbol(symbol), setExpression(node))}</p>`);
        for (const letter of document.querySelector('p')?.textContent ?? '')
          expect(CHARACTERS, `${r.name}: ${letter}`).toContain(letter);
        const numbers = parseHTML(
          `<p>${typeset(
            setExpression(
              node,
              asNumbers((s) => `[${s}]`),
            ),
          )}</p>`,
        ).document;
        for (const name of namesIn(node)) {
          const slots = [...numbers.querySelectorAll(`[data-slot="${name}"]`)];
          expect(slots.length, `${r.name}: ${name}`).toBeGreaterThanOrEqual(1);
          expect(slots.every((s) => s.textContent === `[${name}]`)).toBe(true);
        }
        count++;
      }
    expect(count).toBeGreaterThan(60);
  });
});

describe('typesetEquation', () => {
  it('gives one formula where it fits a line of a phone', () => {
    expect(read(typesetEquation('Delta = h_C*L_C - h_A*L_A'))).toBe('Δ=h_C·L_C-h_A·L_A');
  });
  it('gives a longer one in pieces that begin with their sign, since no engine breaks a line within one', () => {
    const html = typesetEquation('eps_w = L_C*abs(eps_C)/abs(Delta) + L_A*abs(eps_A)/abs(Delta) - (L_A + L_C)');
    expect(
      read(html)
        .split(' ')
        .map((piece) => piece[0]),
    ).toEqual(['ε', '=', '+', '-']);
    expect(html.match(/<mo form="infix">[=+−]</g)?.length).toBe(3);
  });
});

describe('namesIn and splitEquals', () => {
  it('give the names without functions and constants', () => {
    expect(namesIn(parseExpression('atan(L/(pi*d_2)) + 3*deg + 2*mm + L')).sort()).toEqual(['L', 'd_2']);
  });
  it('give the sides of a chain of equals', () => {
    expect(splitEquals('a = b =c')).toEqual(['a', 'b', 'c']);
  });
});
