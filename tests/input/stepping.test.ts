/** Steps of a field without typing: to the next whole one, and from one standard thread to the next. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { METRIC_SERIES, UNIFIED_SERIES } from '../../widgets/engine/index.ts';
import { nextStep } from '../../widgets/input/next-step.ts';
import { neighbourOf } from '../../widgets/input/thread-step.ts';
import { anyThread, thread } from '../support/figures.ts';

describe('the next step of a number', () => {
  it('is the next whole number of steps, and the nearer one from between two, so that nought is always met', () => {
    expect([nextStep(4, 2, 1), nextStep(4, 2, -1), nextStep(-20, 50, 1), nextStep(30, 50, -1)]).toEqual([6, 2, 0, 0]);
    expect(nextStep(10.475, 1, 1)).toBe(11);
  });

  it('takes what is whole but for rounding as whole: six flats make a turn', () => {
    let n = 0;
    for (let i = 0; i < 6; i++) n = Number(nextStep(n, 1 / 6, 1).toFixed(6));
    expect(n).toBeCloseTo(1, 6);
  });
});

describe('the neighbour of a thread', () => {
  it('goes through metric and inch sizes together, by diameter and then by pitch, each once, and stops at the last', () => {
    const met: string[] = [];
    let at = thread('M1.6x0.2');
    // The smallest of all is the number nought, a hair thinner.
    while (neighbourOf(at, -1) !== at) at = neighbourOf(at, -1);
    for (; ; at = neighbourOf(at, 1)) {
      met.push(at.designation);
      if (neighbourOf(at, 1) === at) break;
    }
    expect(met.length).toBe(METRIC_SERIES.length + UNIFIED_SERIES.length);
    expect(new Set(met).size).toBe(met.length);
    expect(met.slice(met.indexOf('3/8-16 UNC')).slice(0, 4)).toEqual(['3/8-16 UNC', 'M10×0.75', 'M10×1', 'M10×1.25']);
  });

  it('keeps hand and starts, and the class where the new system has it too', () => {
    expect(neighbourOf(thread('M10x1.25-6H/6g LH'), 1).designation).toBe('M10×1.5-6H/6g LH');
    expect(neighbourOf(thread('M10x1.5-6H/6g'), 1).designation).toBe('7/16-28 UNEF');
    expect(neighbourOf(thread('3/8-24 UNF-2A 2 start'), 1)).toMatchObject({
      d: 9.525,
      tpi: 16,
      N: 2,
      toleranceClass: '2A',
    });
  });

  it('goes on from a size that is in no series', () => {
    expect(neighbourOf(thread('12 mm x 1.1 mm'), 1).designation).toBe('M12×1.25');
    expect(neighbourOf(thread('12 mm x 1.1 mm'), -1).designation).toBe('M12×1');
  });

  it('is larger or smaller as asked, whatever thread one begins with', () => {
    const size = (t: { d: number; P: number }) => t.d * 1e6 + t.P;
    fc.assert(
      fc.property(anyThread, (t) => {
        const [up, down] = [neighbourOf(t, 1), neighbourOf(t, -1)];
        if (up !== t) expect(size(up)).toBeGreaterThan(size(t));
        if (down !== t) expect(size(down)).toBeLessThan(size(t));
      }),
      { seed: 8, numRuns: 300 },
    );
  });
});
