/** The hole before tapping, against tap drill charts and the shop formula in its own units. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  minorDiameter,
  mm,
  nearestDrills,
  nutLimits,
  plain,
  shareOfThread,
  tapDrill,
} from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { reasonIn, valueIn } from '../support/results.ts';

/** Tap drills of the usual charts with their share of thread in per cent (from memory). */
const CHART = [
  ['1/4-20', 0.201 * 25.4, 75, '#7'],
  ['3/8-16', 0.3125 * 25.4, 77, '5/16 in'],
  ['5/16-18', 0.257 * 25.4, 77, 'letter F'],
  ['8-36', 0.136 * 25.4, 78, '#29'],
  ['10-32', 0.159 * 25.4, 76, '#21'],
  ['M10x1.5', 8.5, 77, '8.5 mm'],
  ['M8x1.25', 6.8, 74, '6.8 mm'],
  ['M6x1', 5, 77, '5 mm'],
  ['M4x0.7', 3.3, 77, '3.3 mm'],
] as const;

describe('share of thread', () => {
  for (const [text, hole, percent, name] of CHART)
    it(`${name} for ${text} leaves ${percent} %`, () => {
      const { d, P } = valueIn(readThread(text));
      const { q_t } = valueIn(shareOfThread.of({ d, d_t: mm(hole), P }));
      expect(Math.round(100 * q_t)).toBe(percent);
    });

  it('is 83.3 % at the basic minor diameter', () => {
    const { d_1 } = valueIn(minorDiameter.of({ d: mm(10), P: mm(1.5) }));
    expect((100 * valueIn(shareOfThread.of({ d: mm(10), d_t: d_1, P: mm(1.5) })).q_t).toFixed(1)).toBe('83.3');
  });

  it('comes back from the hole it was worked from', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        (q, P) => {
          const hole = valueIn(tapDrill.of({ d: mm(12), q_t: plain(q), P: mm(P) })).d_t;
          expect(valueIn(shareOfThread.of({ d: mm(12), d_t: hole, P: mm(P) })).q_t).toBeCloseTo(q, 9);
        },
      ),
    );
  });
});

describe('hole for a share', () => {
  it('follows the shop formula in inches, D − 0.01299 per cent / tpi', () => {
    const hole = valueIn(tapDrill.of({ d: mm(0.25 * 25.4), q_t: plain(0.75), P: mm(25.4 / 20) })).d_t / 25.4;
    expect(hole).toBeCloseTo(0.25 - (0.01299 * 75) / 20, 5);
  });
  it('follows the shop formula in millimetres, d − P per cent / 76.98', () => {
    expect(valueIn(tapDrill.of({ d: mm(10), q_t: plain(0.75), P: mm(1.5) })).d_t).toBeCloseTo(
      10 - (1.5 * 75) / 76.98,
      4,
    );
  });
  it('at 77 % lies within the limits of the minor diameter of the everyday nut', () => {
    for (const text of ['M10x1.5', 'M8x1.25', 'M4x0.7', '3/8-16 UNC', '1/4-20 UNC']) {
      const thread = valueIn(readThread(text));
      const { minor } = valueIn(nutLimits(thread)).limits;
      const hole = valueIn(tapDrill.of({ d: thread.d, q_t: plain(0.77), P: thread.P })).d_t;
      expect(hole, text).toBeGreaterThan(minor.min);
      expect(hole, text).toBeLessThan(minor.max);
    }
  });
  it('refuses a hole of no size, and a drill as large as the thread', () => {
    expect(reasonIn(tapDrill.of({ d: mm(1.9), q_t: plain(0.8), P: mm(2) }))).toContain(
      'A thread of 80 % at a pitch of 2 mm would need a hole of no size in 1.9 mm',
    );
    expect(reasonIn(shareOfThread.of({ d: mm(10), d_t: mm(10), P: mm(1) }))).toContain('nothing to tap');
    expect(reasonIn(shareOfThread.of({ d: mm(10), d_t: mm(8), P: mm(1) }))).toContain('below the root of any thread');
  });
});

describe('nearestDrills', () => {
  it('names the drills of the charts', () => {
    expect(nearestDrills(mm(8.5)).metric?.name).toBe('8.5 mm');
    expect(nearestDrills(mm(0.201 * 25.4)).inch?.name).toBe('#7');
    expect(nearestDrills(mm(0.3125 * 25.4)).inch?.name).toBe('5/16 in');
    expect(nearestDrills(mm(0.257 * 25.4)).inch?.name).toBe('letter F');
    expect(nearestDrills(mm(2.55)).metric?.name).toBe('2.55 mm');
    // First and last of each kind, in thousandths of an inch.
    for (const [thousandths, name] of [
      [228, '#1'],
      [40, '#60'],
      [234, 'letter A'],
      [413, 'letter Z'],
      [15.625, '1/64 in'],
      [500, '1/2 in'],
      [1000, '1 in'],
    ] as const) {
      const drill = nearestDrills(mm((thousandths * 25.4) / 1000)).inch;
      expect(drill).toEqual({ name, size: expect.closeTo((thousandths * 25.4) / 1000, 9) });
    }
  });
  it('goes by halves of a tenth up to 3 mm and by tenths beyond', () => {
    for (const [hole, name] of [
      [2.96, '2.95 mm'],
      [2.98, '3 mm'],
      [3, '3 mm'],
      [3.04, '3 mm'],
      [3.06, '3.1 mm'],
      [12.34, '12.3 mm'],
    ] as const)
      expect(nearestDrills(mm(hole)).metric?.name, `${hole}`).toBe(name);
  });
  it('is silent where no drill is within two per cent', () => {
    expect(nearestDrills(mm(0.21))).toEqual({});
    for (const none of [0.02, 0]) expect(nearestDrills(mm(none))).toEqual({});
    // Nothing lies between 1/32 in and #60, which is 1.016 mm.
    expect(nearestDrills(mm(1.0)).inch?.name).toBe('#60');
    expect(nearestDrills(mm(0.99)).inch).toBeUndefined();
    expect(nearestDrills(mm(60)).inch).toBeUndefined();
  });
});
