/** Loads as people know them: a mass, or a unit of weight, is read as newtons and said. */

import { describe, expect, it } from 'vitest';
import { readField } from '../../widgets/assembly/numbers.ts';
import { UNITS } from '../../widgets/engine/index.ts';
import { readQuantity } from '../../widgets/input/quantity.ts';
import { weightNote } from '../../widgets/input/weight.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const plainly = (text: string): string => text.replace(/\u00a0/g, ' ');

describe('a load', () => {
  // Standard acceleration of free fall 9.80665 m/s² (3rd CGPM, 1901); 1 lb = 0.45359237 kg, exactly (international pound, 1959); 1 lbf = 4.448 221 615 260 5 N
  // (NIST SP 811, B.8).
  it.each([
    ['10 kg', 98.0665],
    ['2,5 kg', 24.516625],
    ['1 kgf', 9.80665],
    ['1 kp', 9.80665],
    ['1 lb', 4.4482216152605],
    ['10 lbs', 44.482216152605],
    ['1 lbf', 4.4482216152605],
    ['1/2 lb', 2.22411080763025],
    ['20 N', 20],
  ])('of %s is %f N', (text, newtons) => {
    expect(valueIn(readQuantity(text, 'N', 'N')).value).toBeCloseTo(newtons, 12);
  });

  it('has its factors from one standard acceleration and one pound', () => {
    expect(UNITS.lb.factor / UNITS.kg.factor).toBeCloseTo(0.45359237, 15);
  });

  it('says what was read, a mass as a mass', () => {
    expect(plainly(weightNote('10 kg'))).toBe('10 kg is a mass; it weighs 98.07 N, by g = 9.80665 m/s².');
    expect(plainly(weightNote('3 lb'))).toBe('3 lb is a mass; it weighs 13.34 N, by g = 9.80665 m/s².');
    expect(plainly(weightNote('3 lbf'))).toBe('3 lbf is 13.34 N.');
    expect(plainly(weightNote('10 kg ± 1 kg'))).toMatch(/^10 kg is a mass; it weighs 98\.07 N/);
    for (const text of ['20 N', '20', '20 mm', 'kg', '']) expect(weightNote(text), text).toBe('');
  });

  it('is taken so by every field of a force, within its bounds, with a ±, and by no other field', () => {
    const load = { kind: 'quantity', name: 'W', label: 'weight', min: 0, max: 5000 } as never;
    expect(valueIn(readField(load, '10 kg', 'metric')).value).toBeCloseTo(98.0665, 9);
    expect(valueIn(readField(load, '10 lb ± 0.5 lb', 'inch')).spread?.half).toBeCloseTo(2.22411, 4);
    expect(reasonIn(readField(load, '1000 kg', 'metric'))).toContain('1000 kg');
    expect(reasonIn(readField(load, '10 stone', 'metric'))).toContain('use N, kg, lb, kgf, lbf');
    expect(reasonIn(readQuantity('10 kg', 'mm', 'mm'))).toMatch(/in kg; this takes mm/);
  });
});
