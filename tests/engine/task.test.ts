/** Long work done in steps: the same result as at once, and steps enough for a page to breathe between them. */

import { describe, expect, it } from 'vitest';
import { calibrate, calibrateRun, type Task } from '../../widgets/engine/index.ts';
import { parseReadings, parseReadingsRun } from '../../widgets/input/readings-table.ts';
import { reasonOf } from '../../widgets/words/reason.ts';

const ROWS = 30_000;
const logged = Array.from({ length: ROWS }, (_, i) => {
  const n = ((i < ROWS / 2 ? i : ROWS - i) * 16) / (ROWS / 2);
  return `${n.toFixed(5)}; ${(88.6 * n + Math.sin(i)).toFixed(2)}; ${i < ROWS / 2 ? 'up' : 'down'}`;
});
const text = ['turns; reading (µm); direction', ...logged].join('\n');

/** The result, and how many steps it took. */
const driven = <T>(run: Task<T>): { result: T; steps: number } => {
  for (let steps = 1; ; steps++) {
    const step = run.next();
    if (step.done) return { result: step.value, steps };
  }
};

describe('a long table of readings', () => {
  it('is read in a step for every few thousand rows, to the same rows as at once', () => {
    const { result, steps } = driven(parseReadingsRun(text));
    expect(steps).toBeGreaterThan(ROWS / 5000);
    expect(result).toEqual(parseReadings(text));
  });

  it('is refused in steps with the sentence it gets at once', () => {
    const spoilt = `${text}\n17; many; up`;
    const { result } = driven(parseReadingsRun(spoilt));
    expect(result).toMatchObject({
      ok: false,
      code: 'line-unread',
      values: { line: ROWS + 2, fault: { kind: 'no number', column: 'reading', cell: 'many' } },
    });
    expect(parseReadings(spoilt)).toEqual(result);
  });

  it('is calibrated in several steps to the same result as at once', () => {
    const table = parseReadings(text);
    if (!table.ok) throw new Error(reasonOf(table));
    const plan = { nominal: 0.0875 };
    const { result, steps } = driven(calibrateRun(table.value.rows, plan));
    expect(steps).toBeGreaterThan(6);
    expect(result).toEqual(calibrate(table.value.rows, plan));
  });
});
