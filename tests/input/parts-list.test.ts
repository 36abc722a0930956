/** A list of parts with prices: counted, summed, and refused where a row says no price. */

import { describe, expect, it } from 'vitest';
import { readPartsList } from '../../widgets/input/parts-list.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('readPartsList', () => {
  it('adds up counts times prices, decimal commas too, and names what has no price', () => {
    expect(valueIn(readPartsList('stud: 2 × 1,20; ball: 0.35\nguide post'))).toEqual({
      parts: [
        { name: 'stud', count: 2, price: 1.2 },
        { name: 'ball', count: 1, price: 0.35 },
        { name: 'guide post', count: 1, price: undefined },
      ],
      total: 2.75,
      unpriced: ['guide post'],
    });
  });
  it.each([
    ['stud: two × 1', 'is not a number'],
    ['stud: 1.5 × 1', 'whole number from 1 to 1000'],
    ['stud: 0 × 1', 'read “0” as the count'],
    ['stud: 1001 × 1', 'read “1001” as the count'],
    ['stud: 1 × -4', 'from 0 to 1 000 000'],
    ['stud: 1000001', 'read a price of “1000001”'],
    ['stud: 2 × cheap', '“stud”: Read “cheap”'],
    [': 4', 'a part has a name'],
    [`${'x'.repeat(61)}: 1`, 'at most 60 characters'],
    ['y'.repeat(2001), '2000 characters is the limit here'],
    [`${'x'.repeat(80)}: 1`, 'at most 60 characters'],
    ['a;'.repeat(41), 'Read 41 parts; at most 40'],
  ])('refuses %s', (text, says) => {
    expect(reasonIn(readPartsList(text))).toContain(says);
  });

  it('takes the bounds: forty parts, a name of sixty characters, a thousand of a part, a price of a million or of nought', () => {
    expect(valueIn(readPartsList('a;'.repeat(40))).parts).toHaveLength(40);
    expect(valueIn(readPartsList(`${'x'.repeat(60)}: 1`)).total).toBe(1);
    expect(valueIn(readPartsList('ball: 1000 * 0; plate: 1000000')).total).toBe(1e6);
    expect(valueIn(readPartsList('a'.padEnd(2000))).parts).toHaveLength(1);
  });
  it('reads ×, x and *, with room about them or none, rows apart by semicolon or line, and an empty price as none', () => {
    for (const cost of ['2 × 3', '2x3', '2 X 3', '2*3', ' 2  *  3 '])
      expect(valueIn(readPartsList(`ball:${cost}`)).total, cost).toBe(6);
    expect(valueIn(readPartsList(' \n; guide   post ;;\n ball: ')).unpriced).toEqual(['guide post', 'ball']);
    expect(valueIn(readPartsList(''))).toEqual({ parts: [], total: 0, unpriced: [] });
  });
});
