/** Numbers and quantities as people type them: every unit by its published factor, how finely it was typed, and what is refused. */

import { describe, expect, it } from 'vitest';
import { type BaseUnit, fromBase, toBase, UNITS, type Unit } from '../../widgets/engine/index.ts';
import { readNumber, readQuantity, unitNamed } from '../../widgets/input/quantity.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('readNumber', () => {
  for (const [text, value] of [
    ['1.5', 1.5],
    ['1,5', 1.5],
    [' 1.5 ', 1.5],
    ['.375', 0.375],
    ['2.', 2],
    ['-2', -2],
    ['−2', -2],
    ['–2', -2],
    ['+2', 2],
    ['2e-3', 0.002],
    ['2E+3', 2000],
    ['3/8', 0.375],
    [' 3/8 ', 0.375],
    ['1 1/2', 1.5],
    ['1-1/2', 1.5],
    ['1  1/2', 1.5],
    ['-1/2', -0.5],
    ['−1 1/2', -1.5],
    ['+1/2', 0.5],
    ['1234 12345/12345', 1235],
    ['1'.padEnd(60, '0'), 1e59],
  ] as const)
    it(`reads “${text}” as ${value}`, () => expect(valueIn(readNumber(text))).toBe(value));

  for (const [text, says] of [
    ['', 'Nothing was typed; a number is needed, for example 1.5.'],
    ['  ', 'Nothing was typed; a number is needed, for example 1.5.'],
    ['two', 'Read “two”, which is not a number: write one like 1.5, 1,5 or 3/8.'],
    ['1.2.3', 'not a number'],
    ['1,2,3', 'not a number'],
    ['.', 'not a number'],
    ['1.5x', 'not a number'],
    ['x1.5', 'not a number'],
    ['2e', 'not a number'],
    ['1/2/3', 'not a number'],
    ['x1/2', 'not a number'],
    ['123456/2', 'not a number'],
    ['1/123456', 'not a number'],
    ['12345 1/2', 'not a number'],
    ['3/0', 'Read “3/0”, a fraction over zero: write one like 3/8.'],
    ['1e999', 'Read “1e999”, which is too large a number to work with: type a smaller one.'],
    ['1'.padEnd(61, '0'), 'a number is at most 60 characters'],
  ] as const)
    it(`refuses “${text.slice(0, 12)}”`, () => expect(reasonIn(readNumber(text))).toContain(says));
});

describe('readQuantity', () => {
  /** Text, what is wanted and the unit of a bare number; then value, unit and digits, and half a unit of the last digit typed. */
  const READ: readonly (readonly [string, BaseUnit, Unit, number, Unit, number, number])[] = [
    // NIST SP 811, B.8: 1 in = 25.4 mm; 1° = π/180 rad. SI prefixes for the rest.
    ['87.50 µm', 'mm', 'mm', 0.0875, 'µm', 4, 5e-6],
    ['87.50', 'mm', 'µm', 0.0875, 'µm', 4, 5e-6],
    ['2.5 MM', 'mm', 'µm', 2.5, 'mm', 2, 0.05],
    ['0.375"', 'mm', 'mm', 9.525, 'in', 3, 0.0127],
    ['.375 in', 'mm', 'mm', 9.525, 'in', 3, 0.0127],
    ['3,44 thou', 'mm', 'mm', 0.087376, 'thou', 3, 1.27e-4],
    ['2.1 tenths', 'mm', 'mm', 0.005334, 'tenths', 2, 1.27e-4],
    ['250 millionths', 'mm', 'mm', 0.00635, 'millionths', 3, 1.27e-5],
    ['30°', 'rad', '°', Math.PI / 6, '°', 2, Math.PI / 360],
    ['0.5 rad', 'rad', '°', 0.5, 'rad', 1, 0.05],
    ['-1.25 turns', 'turn', 'turns', -1.25, 'turns', 3, 0.005],
    ['−1.25', 'turn', 'turns', -1.25, 'turns', 3, 0.005],
    ['–1.25', 'turn', 'turns', -1.25, 'turns', 3, 0.005],
    ['+1.25', 'turn', 'turns', 1.25, 'turns', 3, 0.005],
    ['1.50E2 N', 'N', 'N', 150, 'N', 3, 0.5],
    ['3 N·m', 'N·mm', 'N·mm', 3000, 'N·m', 1, 500],
    ['3 Nm', 'N·mm', 'N·mm', 3000, 'N·m', 1, 500],
    ['210 GPa', 'MPa', 'MPa', 210000, 'GPa', 3, 500],
    ['0.4 N/µm', 'N/mm', 'N/mm', 400, 'N/µm', 1, 50],
    ['11.5 ppm/K', '1/K', 'ppm/K', 1.15e-5, 'ppm/K', 3, 5e-8],
    ['2 K', 'K', 'K', 2, 'K', 1, 0.5],
    ['90 min', 'h', 'h', 1.5, 'min', 2, 1 / 120],
    ['36 s', 'h', 'h', 0.01, 's', 2, 1 / 7200],
    ['2 days', 'h', 'h', 48, 'd', 1, 12],
    ['2.5 %', '1', '1', 0.025, '%', 2, 5e-4],
    ['0.0250', '1', '1', 0.025, '1', 3, 5e-5],
    ['2e-3 mm', 'mm', 'mm', 0.002, 'mm', 1, 5e-4],
    ['1000 mm', 'mm', 'mm', 1000, 'mm', 4, 0.5],
    ['0 mm', 'mm', 'mm', 0, 'mm', 1, 0.5],
    ['0.00 mm', 'mm', 'mm', 0, 'mm', 1, 0.005],
    // A fraction is exact, so nothing else rounds to it.
    ['1/4 in', 'mm', 'mm', 6.35, 'in', 4, 0.00127],
    ['1 1/2 in', 'mm', 'mm', 38.1, 'in', 4, 0.0127],
    ['1  1/2 in ', 'mm', 'mm', 38.1, 'in', 4, 0.0127],
    ['1-1/2"', 'mm', 'mm', 38.1, 'in', 4, 0.0127],
    ['-1/2 turns', 'turn', 'turns', -0.5, 'turns', 4, 5e-5],
    ['7/64 in', 'mm', 'mm', 2.778125, 'in', 6, 1.27e-5],
    ['1/3', '1', '1', 1 / 3, '1', 6, 5e-7],
  ];
  for (const [text, base, bare, value, unit, digits, half] of READ)
    it(`reads “${text}” where ${bare} ${bare === '1' ? 'is' : 'are'} meant`, () => {
      const read = valueIn(readQuantity(text, base, bare));
      expect(read).toMatchObject({ unit, digits });
      expect(Math.abs(read.value - value)).toBeLessThanOrEqual(1e-14 * Math.max(1, Math.abs(value)));
      expect(read.half / half).toBeCloseTo(1, 9);
    });

  for (const [text, base, bare, says] of [
    [
      '5 furlongs',
      'mm',
      'mm',
      'Read “furlongs” as a unit, which is not one used here: use mm, µm, in, thou, tenths, millionths.',
    ],
    ['5 N', 'mm', 'mm', 'Read “5 N”, in N; this takes mm, µm, in, thou, tenths, millionths.'],
    ['5 mm', '1', '1', 'Read “5 mm”, in mm; this takes %.'],
    ['', 'mm', 'mm', 'Nothing was typed'],
    ['mm', 'mm', 'mm', 'Read “mm”, which is not a number'],
    ['x5 mm', 'mm', 'mm', 'Read “x5 mm”, which is not a number'],
    ['5 mm\n7', 'mm', 'mm', 'Read “5 mm 7”, which is not a number'],
    ['1/0 in', 'mm', 'mm', 'a fraction over zero'],
    ['1e308 in', 'mm', 'mm', 'Read “1e308 in”, which is too large to work with: type a smaller number.'],
    ['0e400 in', 'mm', 'mm', 'too large to work with'],
    [`1${' '.repeat(58)}mm`, 'mm', 'mm', 'a quantity is at most 60 characters'],
  ] as const)
    it(`refuses “${text.slice(0, 12)}” for ${bare}`, () =>
      expect(reasonIn(readQuantity(text, base, bare))).toContain(says));

  it('takes a text of sixty characters', () =>
    expect(valueIn(readQuantity(`1${' '.repeat(57)}mm`, 'mm', 'mm')).value).toBe(1));
});

describe('units', () => {
  it('are known by each of their spellings, in any case and with room about them', () => {
    for (const [unit, { spellings }] of Object.entries(UNITS))
      for (const spelling of spellings) expect(unitNamed(` ${spelling.toUpperCase()} `), spelling).toBe(unit);
    expect(unitNamed('furlong')).toBeUndefined();
  });

  it('go to base and back', () => {
    expect(toBase({ amount: 2, unit: 'in' })).toBe(50.8);
    expect(fromBase(50.8, 'in')).toEqual({ amount: 2, unit: 'in' });
    expect(fromBase(0.00254, 'tenths').amount).toBeCloseTo(1, 12);
  });
});
