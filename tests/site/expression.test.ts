/** One spelling of algebra, set as TeX: brackets where they are needed and nowhere else. */
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { RELATIONS, SYMBOLS, type SymbolName } from '../../widgets/engine/index.ts';
import {
  namesIn,
  parseExpression,
  slotTex,
  splitEquals,
  symbolTex,
  toTex,
  typeset,
  typesetEquation,
} from '../../widgets/site/expression.ts';

/** Names as plain letters, a dot for the product, so that the structure can be read. */
const tex = (text: string): string => toTex(parseExpression(text), (name) => name, '·');

describe('toTex', () => {
  const cases: readonly (readonly [string, string])[] = [
    // sums and signs
    ['a+b-c', 'a+b-c'],
    ['a-(b-c)', 'a-\\left(b-c\\right)'],
    ['a-(b+c)', 'a-\\left(b+c\\right)'],
    ['a+(b-c)', 'a+b-c'],
    ['-a*b', '-a·b'],
    ['-(a+b)', '-\\left(a+b\\right)'],
    ['a-(-b)', 'a-\\left(-b\\right)'],
    // products
    ['a*b*c', 'a·b·c'],
    ['n*(a - b)', 'n·\\left(a-b\\right)'],
    ['(a + b)*c', '\\left(a+b\\right)·c'],
    ['a*(-b)', 'a·\\left(-b\\right)'],
    ['a*(b*c)', 'a·\\left(b·c\\right)'],
    ['2*3*a', '2\\times 3·a'],
    // fractions take no brackets of their own
    ['(a+b)/c', '\\frac{a+b}{c}'],
    ['a/(b*c)', '\\frac{a}{b·c}'],
    ['a/b*c', '\\frac{a}{b}·c'],
    ['a/b/c', '\\frac{\\frac{a}{b}}{c}'],
    ['3*sqrt(3)/8*P', '\\frac{3·\\sqrt{3}}{8}·P'],
    // powers
    ['a^2', 'a^{2}'],
    ['(a+b)^2', '\\left(a+b\\right)^{2}'],
    ['a^(b+c)', 'a^{b+c}'],
    ['(a*b)^2', '\\left(a·b\\right)^{2}'],
    ['(a/b)^2', '\\left(\\frac{a}{b}\\right)^{2}'],
    ['-a^2', '-a^{2}'],
    ['(-a)^2', '\\left(-a\\right)^{2}'],
    // functions
    ['atan(L/(pi*d))', '\\arctan\\left(\\frac{L}{\\pi·d}\\right)'],
    ['abs(a-b)', '\\left|a-b\\right|'],
    ['sqrt(a+b)', '\\sqrt{a+b}'],
    ['min(a/b, c)', '\\min\\left(\\frac{a}{b},\\;c\\right)'],
    ['exp(-a)', '\\exp\\left(-a\\right)'],
    ['log(a)', '\\ln\\left(a\\right)'],
    // degrees and millimetres stand after their number
    ['theta/(360*deg)', '\\frac{theta}{360{}^\\circ}'],
    ['25.4*mm/tpi', '\\frac{25.4\\,\\mathrm{mm}}{tpi}'],
    ['2e-7*a', '2\\times 10^{-7}·a'],
    ['(2e-7)^2', '\\left(2\\times 10^{-7}\\right)^{2}'],
  ];
  for (const [text, expected] of cases)
    it(`sets ${text} as ${expected}`, () => {
      expect(tex(text)).toBe(expected);
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
      expect(() => tex(text), text).toThrow(words);
  });
});

describe('slotTex', () => {
  it('puts brackets round a slot under a power, since 2 mm squared is 4 mm²', () => {
    expect(toTex(parseExpression('R^2*F'), slotTex)).toBe('\\left(\\text{§R§}\\right)^{2}\\,\\text{§F§}');
  });
});

describe('symbolTex', () => {
  it('gives the glossary’s sign, tagged with the symbol’s name', () => {
    expect(symbolTex('h_C')).toBe('\\htmlData{sym=h_C}{h_C}');
    expect(symbolTex('Delta')).toBe('\\htmlData{sym=Delta}{\\Delta}');
  });
  it('sets a name that is not in the glossary upright', () => {
    expect(symbolTex('no_such')).toBe('\\mathrm{no\\_such}');
  });
  it('every sign of the glossary can be set', () => {
    for (const name of Object.keys(SYMBOLS) as SymbolName[])
      expect(typeset(symbolTex(name)), name).toContain(`data-sym="${name}"`);
  });
});

describe('every relation', () => {
  it('can be set, with its symbols and with slots for its numbers', () => {
    let set = 0;
    for (const r of RELATIONS)
      for (const [symbol, formula] of Object.entries(r.gives)) {
        if (formula === undefined) continue;
        const node = parseExpression(formula);
        for (const name of namesIn(node)) expect(r.takes, `${r.name}: ${formula}`).toContain(name);
        expect(typeset(`${symbolTex(symbol)}=${toTex(node)}`)).toContain('<math');
        const { document } = parseHTML(`<p>${typeset(toTex(node, slotTex, '\\times '), (s) => `[${s}]`)}</p>`);
        for (const name of namesIn(node)) {
          const slots = [...document.querySelectorAll(`[data-slot="${name}"]`)];
          // Once in the MathML, once in the picture, for each time it is named.
          expect(slots.length, `${r.name}: ${name}`).toBeGreaterThanOrEqual(2);
          expect(slots.every((s) => s.textContent === `[${name}]`)).toBe(true);
        }
        expect(document.body.textContent).not.toContain('§');
        set++;
      }
    expect(set).toBeGreaterThan(60);
  });
});

describe('typeset', () => {
  it('gives MathML beside a picture that assistive technology skips, and no TeX source', () => {
    const html = typesetEquation('Delta = h_C*L_C - h_A*L_A');
    expect(html).toContain('<math');
    expect(html).toMatch(/class="katex-html" aria-hidden="true"/);
    expect(html).not.toContain('annotation');
    expect(html).not.toContain('htmlData');
  });
  it('fills a slot the same in MathML and picture, and escapes nothing it was not given', () => {
    const html = typeset(slotTex('h_A'), () => '(−1)');
    expect(html.match(/data-slot="h_A">\(−1\)</g)?.length).toBe(2);
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
