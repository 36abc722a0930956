/** The reader's numbers: what a field reads, what it refuses and in which words, what it writes back. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldUnit, gather, type Input, readInput, scopeOf, writeQuantity } from '../../widgets/assembly/numbers.ts';
import { isSymbol, SYMBOLS, type SymbolName, symbolFact } from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { UNIT_VIEWS } from '../../widgets/input/format.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { howMany } from '../support/deep.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const quantity = (name: SymbolName, min = symbolFact(name).min, max = symbolFact(name).max): Input => ({
  kind: 'quantity',
  name,
  label: symbolFact(name).says,
  start: '1',
  min,
  max,
});
const A: Input = { kind: 'thread', name: 'A', label: 'thread A', start: 'M10x1.5' };

describe('readInput of a quantity', () => {
  const cases: readonly (readonly [SymbolName, string, number])[] = [
    // units as typed
    ['w', '0.4 mm', 0.4],
    ['w', '400 µm', 0.4],
    ['w', '400um', 0.4],
    ['w', '1 thou', 0.0254],
    ['w', '5 tenths', 0.0127],
    ['w', '1/64 in', 0.396875],
    ['w', '0,4 mm', 0.4],
    ['X_A', '3/8"', 9.525],
    ['theta', '30°', Math.PI / 6],
    ['theta', '30 deg', Math.PI / 6],
    ['theta', '0.5 rad', 0.5],
    ['n', '1 1/2', 1.5],
    ['n', '−2 turns', -2],
    ['k', '50', 50],
    ['eps_A', '0.1 %', 0.001],
    ['F', '200 N', 200],
    ['M', '0.32 N·m', 320],
    ['M', '320', 320],
    ['E_1', '210 GPa', 210_000],
    ['k_s', '2 N/mm', 2],
    ['alpha_T', '11.5 ppm/K', 11.5e-6],
    ['Delta_T', '2 K', 2],
    ['t', '90 min', 1.5],
  ];
  for (const [name, text, value] of cases)
    it(`${name}: “${text}” is ${value} ${symbolFact(name).unit}`, () => {
      for (const view of UNIT_VIEWS) expect(valueIn(readInput(quantity(name), text, view))).toBeCloseTo(value, 12);
    });

  it('takes a bare number in the unit that the view shows', () => {
    expect(valueIn(readInput(quantity('w'), '400', 'metric'))).toBeCloseTo(0.4, 12);
    expect(valueIn(readInput(quantity('w'), '400', 'both'))).toBeCloseTo(0.4, 12);
    expect(valueIn(readInput(quantity('w'), '4', 'inch'))).toBeCloseTo(0.1016, 12);
    expect(valueIn(readInput(quantity('X_A'), '10', 'metric'))).toBe(10);
    expect(valueIn(readInput(quantity('X_A'), '0.375', 'inch'))).toBeCloseTo(9.525, 12);
    expect(valueIn(readInput(quantity('theta'), '30', 'inch'))).toBeCloseTo(Math.PI / 6, 12);
    expect(valueIn(readInput(quantity('eps_A'), '1', 'metric'))).toBeCloseTo(0.01, 12);
  });

  it('refuses what is outside the field’s bounds in the reader’s units, naming what was read and the bounds', () => {
    const field = quantity('w', 0, 20);
    expect(reasonIn(readInput(field, '25 mm', 'metric')).replace(/\u00a0/g, ' ')).toBe(
      'Read “25 mm”; wanted motion goes from 0 µm to 20 mm here.',
    );
    expect(reasonIn(readInput(field, '1 in', 'inch')).replace(/\u00a0/g, ' ')).toBe(
      'Read “1 in”; wanted motion goes from 0 thou to 0.7874 in here.',
    );
    expect(valueIn(readInput(field, '20 mm', 'metric'))).toBe(20);
    expect(valueIn(readInput(field, '0', 'metric'))).toBe(0);
  });

  const refused: readonly (readonly [SymbolName, string, RegExp])[] = [
    ['n', '', /Nothing was typed/],
    ['n', '   ', /Nothing was typed/],
    ['n', 'NaN', /“NaN”, which is not a number/],
    ['n', 'Infinity', /which is not a number/],
    ['n', '1e999', /too large/],
    ['n', '1e9', /from −600 turns to 600 turns/],
    ['n', '3 mm', /in mm; this takes turns/],
    ['n', '3 bananas', /“bananas” as a unit/],
    ['n', '1/0', /fraction over zero/],
    ['n', '1..2', /which is not a number/],
    ['n', '0x10', /./],
    ['n', '1 2 3', /./],
    ['k', '2.5', /only whole numbers/],
    ['k', '0', /from 1 to 10000/],
    ['n', '<img src=x onerror=alert(1)>', /which is not a number/],
    ['n', 'constructor', /which is not a number/],
    ['n', '__proto__', /which is not a number/],
  ];
  for (const [name, text, words] of refused)
    it(`${name} refuses “${text}” in words`, () => {
      expect(reasonIn(readInput(quantity(name), text, 'metric'))).toMatch(words);
    });

  it('answers ten kilobytes of paste with one short sentence', () => {
    for (const input of [quantity('n'), quantity('w'), A])
      for (const paste of [
        '1'.repeat(10_240),
        'M10x1.5 '.repeat(1280),
        ' '.repeat(10_240),
        '9/'.repeat(5120),
        '\u0000'.repeat(10_240),
      ]) {
        const reason = reasonIn(readInput(input, paste, 'metric'));
        expect(reason.length).toBeLessThan(200);
        expect(reason).toMatch(/^[A-Z].*\.$/s);
      }
  });

  it('gives a finite value within bounds or one sentence for any text at all', () => {
    const names = Object.keys(SYMBOLS) as SymbolName[];
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.oneof(
          fc.string({ unit: 'binary' }),
          fc.string(),
          fc.double().map(String),
          fc.constantFrom('1,5', '-', '.', '°', '1/2/3'),
        ),
        fc.constantFrom(...UNIT_VIEWS),
        (name, text, view) => {
          const input = quantity(name);
          const read = readInput(input, text, view);
          if (!read.ok) expect(reasonOf(read)).toMatch(/^[A-Z].{10,}[.]$/s);
          else if (input.kind === 'quantity') {
            expect(read.value).toBeGreaterThanOrEqual(input.min);
            expect(read.value).toBeLessThanOrEqual(input.max);
          }
        },
      ),
      { numRuns: howMany(200, 5000) },
    );
  });
});

describe('readInput of a thread and of a choice', () => {
  it('reads a designation in its many spellings', () => {
    for (const text of ['M10x1.5', 'm10 X 1,5', 'M10×1.5', 'M10', ' M10 * 1.5 '])
      expect((valueIn(readInput(A, text, 'metric')) as { designation: string }).designation).toBe('M10×1.5');
  });
  it('takes only the options of a choice', () => {
    const input: Input = { kind: 'choice', name: 'lock', label: 'lock', start: 'holds' };
    expect(valueIn(readInput(input, 'gives', 'metric'))).toBe('gives');
    expect(reasonIn(readInput(input, 'breaks', 'metric'))).toBe(
      'Read “breaks” as the lock of the carried part; choose holds, gives.',
    );
    for (const hostile of ['__proto__', 'toString', '', 'HOLDS'])
      expect(readInput(input, hostile, 'metric').ok).toBe(false);
  });
});

describe('writeQuantity', () => {
  it('writes what reads back as itself, in every view', () => {
    const names = (Object.keys(SYMBOLS) as SymbolName[]).filter((n) => symbolFact(n).shown !== 'sense');
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.integer({ min: 0, max: 1e6 }),
        fc.constantFrom(...UNIT_VIEWS),
        (name, i, view) => {
          const { min, max, whole } = symbolFact(name);
          const raw = min + ((max - min) * i) / 1e6;
          const value = whole ? Math.round(raw) : raw;
          const back = readInput(quantity(name, -1e300, 1e300), writeQuantity(name, value, view), view);
          if (!back.ok) {
            // A bound written to nine digits may round to its far side.
            expect(Math.min(value - min, max - value)).toBeLessThan(1e-7 * (max - min));
            return;
          }
          expect(Math.abs((back.value as number) - value)).toBeLessThanOrEqual(1e-8 * Math.max(Math.abs(value), 1e-12));
        },
      ),
      { numRuns: 300 },
    );
  });
  it('writes the unit the view shows', () => {
    expect(writeQuantity('w', 0.4, 'metric')).toBe('400 µm');
    expect(writeQuantity('w', 0.0254, 'inch')).toBe('1 thou');
    expect(writeQuantity('X_A', 10, 'both')).toBe('10 mm');
    expect(writeQuantity('theta', -Math.PI / 6, 'metric')).toBe('−30°');
    expect(writeQuantity('n', -0.5, 'metric')).toBe('−0.5');
    expect(writeQuantity('k', 6, 'inch')).toBe('6');
  });
  it('shows the unit in which a bare number is read', () => {
    for (const name of Object.keys(SYMBOLS) as SymbolName[])
      for (const view of UNIT_VIEWS) {
        const unit = fieldUnit(name, view);
        expect(typeof unit, name).toBe('string');
      }
  });
});

describe('gather and scopeOf', () => {
  const thread = (text: string) => valueIn(readThread(text));
  it('sort values by kind and name what steps may use', () => {
    const set = {
      id: 's',
      inputs: [A, quantity('n'), { kind: 'choice', name: 'lock', label: '', start: 'holds' } as Input],
    };
    const numbers = gather(
      set,
      new Map<string, never>([
        ['A', thread('3/8-16 LH')],
        ['n', 2],
        ['lock', 'gives'],
      ] as never),
    );
    expect(numbers.values).toEqual({ n: 2 });
    expect(numbers.choices).toEqual({ lock: 'gives' });
    expect(scopeOf(numbers)).toMatchObject({ n: 2, d_A: 9.525, P_A: 1.5875, N_A: 1, L_A: 1.5875, h_A: -1 });
    expect(Object.keys(scopeOf(numbers)).sort()).toEqual(
      ['D_2max_A', 'D_2min_A', 'L_A', 'N_A', 'P_A', 'd_2max_A', 'd_2min_A', 'd_A', 'h_A', 'n'].sort(),
    );
  });
  it('give the plain thread the plain names, with tpi where it has one', () => {
    const numbers = { threads: { thread: thread('1/4-28') }, values: {}, choices: {}, texts: {} };
    expect(scopeOf(numbers)).toMatchObject({ d: 6.35, P: 25.4 / 28, N: 1, L: 25.4 / 28, h: 1, tpi: 28 });
    expect(Object.keys(scopeOf({ ...numbers, threads: { thread: thread('M10') } }))).not.toContain('tpi');
  });
  it('give the limits of the pitch diameters by the class written, or by the everyday one', () => {
    const limits = (text: string) => scopeOf({ threads: { thread: thread(text) }, values: {}, choices: {}, texts: {} });
    // ISO 965-1, M10×1.5: 6g 8.994/8.862 and 6H 9.026/9.206, 4h 9.026/8.941 and 4H 9.026/9.138 (from memory of the tables).
    expect(limits('M10x1.5')).toMatchObject({ d_2min: 8.862, d_2max: 8.994, D_2min: 9.026, D_2max: 9.206 });
    expect(limits('M10x1.5-6H/6g')).toEqual(limits('M10x1.5'));
    expect(limits('M10x1.5-4h')).toMatchObject({ d_2max: 9.026, D_2max: 9.206 });
    // No limits of ISO 965-1 below M1: the symbols are left out.
    expect(Object.keys(limits('M0.5x0.125')).filter((name) => name.includes('_2'))).toEqual([]);
  });
  it('name only symbols of the glossary', () => {
    for (const name of Object.keys(
      scopeOf({ threads: { A: thread('M10'), B: thread('M8') }, values: {}, choices: {}, texts: {} }),
    ))
      expect(isSymbol(name)).toBe(true);
  });
});
