/** The basic diameters of 60° threads, as relations and as the drawings ask for them, against published tables. */

import { describe, expect, it } from 'vitest';
import { diameters, minorDiameter, mm, pitchDiameter, rootDiameter } from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('basic diameters', () => {
  // d2 and D1: ISO 724; d3: DIN 13-1; inch rows: ASME B1.1 basic sizes, × 25.4. All from memory.
  const ROWS = [
    ['M6x1', 5.35, 4.917, 4.773],
    ['M10x1.5', 9.026, 8.376, 8.16],
    ['M12x1.75', 10.863, 10.106, 9.853],
    ['M20x2.5', 18.376, 17.294, 16.933],
    ['3/8-16 UNC', 0.3344 * 25.4, 0.3073 * 25.4, undefined],
    ['1/4-20 UNC', 0.2175 * 25.4, 0.1959 * 25.4, undefined],
  ] as const;

  it.each(ROWS)('of %s are those of the tables: pitch %f mm, bore %f mm, core %f mm', (name, d2, d1, d3) => {
    const thread = valueIn(readThread(name));
    const all = diameters(thread);
    const half = d3 === undefined ? 0.00005 * 25.4 : 0.0005;
    expect(Math.abs(all.d2 - d2)).toBeLessThanOrEqual(half + 1e-9);
    expect(Math.abs(all.d1 - d1)).toBeLessThanOrEqual(half + 1e-9);
    if (d3 !== undefined) expect(Math.abs(all.d3 - d3)).toBeLessThanOrEqual(half + 1e-9);
    const of = { d: thread.d, P: thread.P };
    expect(valueIn(pitchDiameter.of(of)).d_2).toBeCloseTo(all.d2, 12);
    expect(valueIn(minorDiameter.of(of)).d_1).toBeCloseTo(all.d1, 12);
    expect(valueIn(rootDiameter.of(of)).d_3).toBeCloseTo(all.d3, 12);
  });

  it('are refused where the groove would meet the axis: past 8.15 mm of pitch on 10 mm', () => {
    // d − 1.2269 P = 0 at P = 10/1.2269.
    for (const r of [pitchDiameter, minorDiameter, rootDiameter]) {
      expect(r.of({ d: mm(10), P: mm(8.15) }).ok).toBe(true);
      expect(reasonIn(r.of({ d: mm(10), P: mm(8.16) }))).toBe(
        'A pitch of 8.16 mm is too coarse for a diameter of 10 mm, it leaves no core: take a pitch below 8.15 mm.',
      );
    }
  });
});
