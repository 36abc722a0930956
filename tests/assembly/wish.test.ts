/** What a reader may type as a wish, and what is said of anything else. */
import { describe, expect, it } from 'vitest';
import { readWish } from '../../widgets/assembly/backwards/wish.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const wish = (text: string) => readWish(text, 'mm', 'µm');

describe('a wish', () => {
  it.each([
    ['200', 0.2],
    ['0,2 mm', 0.2],
    ['-8 thou', -0.2032],
    ['0', 0],
  ])('%s is one number', (text, value) => {
    expect(valueIn(wish(text))).toBeCloseTo(value, 12);
  });

  it.each([
    ['200 µm ± 2 µm', /leave the ± out here/],
    ['200 µm +/- 2', /leave the ± out here/],
    ['200 µm; 2 turns', /more than one wish/],
    ['200 µm and 2 turns', /more than one wish/],
    ['200, 300', /more than one wish/],
    ['?', /what the result is to be/],
    ['n = ?', /what the result is to be/],
    ['', /Nothing was typed/],
    ['2 N', /2 N/],
  ])('%s is refused in one sentence', (text, says) => {
    expect(reasonIn(wish(text))).toMatch(says);
    expect(reasonIn(wish(text))).toMatch(/^\S.*\.$/s);
  });
});
