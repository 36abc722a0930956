/** A flat a notch, whether a wheel says it at once or a trackpad in a hundred small words. */
import { describe, expect, it } from 'vitest';
import { notchCounter } from '../../widgets/figures/kit/notches.ts';

const count = (events: readonly (readonly [deltaY: number, deltaMode: number, timeStamp: number])[]): number => {
  const notches = notchCounter();
  return events.reduce((sum, [deltaY, deltaMode, timeStamp]) => sum + notches({ deltaY, deltaMode, timeStamp }), 0);
};

describe('notches', () => {
  // What engines say of one notch; common practice, no source.
  for (const [deltaY, deltaMode] of [
    [100, 0],
    [120, 0],
    [53, 0],
    [3, 1],
    [1, 2],
  ] as const)
    it(`counts one for ${deltaY} in mode ${deltaMode}, and one back`, () => {
      expect(count([[deltaY, deltaMode, 0]])).toBe(-1);
      expect(count([[-deltaY, deltaMode, 0]])).toBe(1);
    });

  it('counts a stroke of a trackpad by its length, not by its words', () => {
    const stroke = Array.from({ length: 100 }, (_, i) => [2, 0, i * 8] as const);
    expect(count(stroke)).toBe(-5);
  });

  it('forgets part of a notch when the stroke turns round or rests', () => {
    expect(
      count([
        [30, 0, 0],
        [-30, 0, 8],
        [30, 0, 16],
      ]),
    ).toBe(0);
    expect(
      count([
        [30, 0, 0],
        [30, 0, 1000],
      ]),
    ).toBe(0);
    expect(
      count([
        [30, 0, 0],
        [30, 0, 100],
      ]),
    ).toBe(-1);
  });

  it('takes a stroke sideways for none', () => {
    expect(
      count([
        [0, 0, 0],
        [0, 0, 8],
      ]),
    ).toBe(0);
  });
});
