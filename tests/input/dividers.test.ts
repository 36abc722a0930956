/** The list of what divides a turn. */
import { describe, expect, it } from 'vitest';
import { readDividers } from '../../widgets/input/dividers.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('readDividers', () => {
  it.each([
    ['hexagon, square, twelve points', [6, 4, 12]],
    ['Hexagon; 50', [6, 50]],
    ['knob 50, knob of 100, 72 divisions', [50, 100, 72]],
    ['6 flats, 12 points, 12-point, hexagon', [6, 12]],
    ['none', []],
    ['', []],
  ])('reads “%s” as steps in a turn', (text, counts) => {
    expect(valueIn(readDividers(text))).toEqual(counts);
  });

  it.each(['octagon', '0', '2.5', '10001', '-6', 'knob', '6 threads'])('refuses “%s” in one sentence', (text) => {
    expect(reasonIn(readDividers(`hexagon, ${text}`))).toBe(
      `Read “${text}” as a divider of a turn; name hexagon, square, twelve points or the steps per turn from 1 to 10000, like 50, or none.`,
    );
  });

  it('refuses more than a dozen', () => {
    expect(reasonIn(readDividers(Array.from({ length: 13 }, (_, i) => i + 1).join(', ')))).toContain('at most 12');
  });
});
