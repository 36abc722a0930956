/**
 * The differential screw held against what stands outside the engine: published examples, pairs that everybody in the
 * trade can work by hand, and helices moved as rigid bodies without any formula of the engine.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gain, mm, netLead, netMotion, perStep, plain, slippedLead, turns } from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const INCH = 25.4;

const pair = (a: string, c: string): number => {
  const [A, C] = [valueIn(readThread(a)), valueIn(readThread(c))];
  return valueIn(netLead.of({ h_A: plain(A.h), L_A: A.L, h_C: plain(C.h), L_C: C.L })).Delta;
};

/** `value` in mm, `within` half a unit of the last published digit. */
const PUBLISHED = [
  // Encyclopaedia entry “Differential screw” (older mirrored revision): a 3/8 in bolt cut 16 and 24 to the inch advances
  // 0.0208 in a turn. Read in the source.
  { what: '16 and 24 threads per inch', a: '3/8-24', c: '3/8-16', value: 0.0208 * INCH, within: 0.00005 * INCH },
  // Khurmi & Gupta, A Textbook of Machine Design, ch. 17, example 17.17: pitches 16 and 12 mm on a 50 mm screw. Only the
  // pitches are used here; the load raised a turn is their difference. Read in a transcription.
  { what: 'pitches of 16 and 12 mm', a: '50 mm x 12 mm', c: '50 mm x 16 mm', value: 4, within: 1e-9 },
  // Public study notes on power screws, exercise 3: 8 mm right and 6 mm left make 14 mm. A weak check: it is only a sum.
  { what: '8 mm right hand and 6 mm left hand', a: '40 mm x 6 mm LH', c: '40 mm x 8 mm', value: 14, within: 1e-9 },
  // Common practice, no source.
  { what: 'M8×1.25 with 5/16-18, in µm', a: 'M8x1.25', c: '5/16-18', value: 0.1611, within: 0.00005 },
  { what: 'M8×1.25 with 5/16-18, in thou', a: 'M8x1.25', c: '5/16-18', value: 0.00634 * INCH, within: 0.000005 * INCH },
  { what: 'M5×0.8 with 10-32', a: 'M5x0.8', c: '10-32', value: -0.00625, within: 0.000005 },
] as const;

describe('net lead of pairs that others have worked', () => {
  for (const { what, a, c, value, within } of PUBLISHED)
    it(`${what}: ${a} and ${c} move ${value.toPrecision(4)} mm a turn`, () => {
      expect(Math.abs(pair(a, c) - value), `${pair(a, c)} mm`).toBeLessThanOrEqual(within);
    });

  it('M5×0.8 with 10-32 is about 1.04 µm a flat (common practice, no source)', () => {
    const { s } = valueIn(perStep.of({ Delta: mm(pair('M5x0.8', '10-32')), k: plain(6) }));
    expect(Math.abs(s - 0.00104)).toBeLessThan(0.000005);
  });

  it('exact values in whole numbers: 25.4/18 − 1.25 is 29/180 mm, 25.4/32 − 0.8 is −1/160 mm, 1/16 − 1/24 in is 1/48 in', () => {
    expect(pair('M8x1.25', '5/16-18')).toBeCloseTo(29 / 180, 14);
    expect(pair('M5x0.8', '10-32')).toBeCloseTo(-1 / 160, 14);
    expect(pair('3/8-24', '3/8-16')).toBeCloseTo(INCH / 48, 14);
  });

  it('25.4/20 and 1.27 are one lead: 1/2-20 with 12 mm × 1.27 mm does not move at all', () => {
    expect(pair('1/2-20', '12 mm x 1.27 mm')).toBe(0);
  });

  it('three starts of 16 to the inch and a lead of 3/16 in are one lead, whatever a computer makes of 3 × 25.4/16', () => {
    const [starts, lead] = [mm(3 * (25.4 / 16)), mm(4.7625)];
    expect(starts).not.toBe(lead);
    expect(valueIn(netLead.of({ h_A: plain(1), L_A: starts, h_C: plain(1), L_C: lead })).Delta).toBe(0);
  });

  it('equal leads have no gain, and the reason given is that the carried part stands still', () => {
    expect(valueIn(gain.of({ L: mm(1.5), Delta: mm(-0.0125) })).G).toBeCloseTo(120, 9);
    expect(reasonIn(gain.of({ L: mm(1.5), Delta: mm(0) }))).toContain('turning does not move the carried part');
  });
});

/**
 * The independent path. A thread is a set of points on its helix, fixed to the part that carries it. A part is a rotation
 * about z (right-handed, so clockwise from above is negative) and a shift. The parts are moved in small rotations; after
 * each, the shift of the next part is whatever brings its points back onto the ridge of the part before it, found by
 * search and not by a formula of leads.
 */
interface Pose {
  readonly angle: number;
  readonly z: number;
}

const RADIUS = 5;

/** Points of a helix: azimuth and height; z rises anticlockwise for a right-hand thread. */
const helix = (lead: number, hand: 1 | -1): readonly (readonly [number, number, number])[] =>
  Array.from({ length: 24 }, (_, i) => {
    const azimuth = (2 * Math.PI * i) / 24;
    return [RADIUS * Math.cos(azimuth), RADIUS * Math.sin(azimuth), (hand * lead * azimuth) / (2 * Math.PI)] as const;
  });

const moved = (points: readonly (readonly [number, number, number])[], { angle, z }: Pose) =>
  points.map(
    ([x, y, h]) =>
      [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle), h + z] as const,
  );

/** How far a set of points is, along the axis, from the ridge of a posed thread: a mean over the points, within one lead. */
const miss = (
  points: readonly (readonly [number, number, number])[],
  lead: number,
  hand: 1 | -1,
  ridge: Pose,
): number => {
  let sum = 0;
  for (const [x, y, z] of points) {
    const azimuth = Math.atan2(y, x) - ridge.angle;
    const off = (z - ridge.z) / lead - (hand * azimuth) / (2 * Math.PI);
    sum += off - Math.round(off);
  }
  return (sum / points.length) * lead;
};

/** The shift near `guess` at which the points of a part at this angle lie on the ridge, by halving the interval. */
const settle = (lead: number, hand: 1 | -1, angle: number, guess: number, ridge: Pose): number => {
  const points = helix(lead, hand);
  let [low, high] = [guess - lead / 5, guess + lead / 5];
  for (let i = 0; i < 60; i++) {
    const z = (low + high) / 2;
    if (miss(moved(points, { angle, z }), lead, hand, ridge) > 0) high = z;
    else low = z;
  }
  return (low + high) / 2;
};

/** Turns the turned part clockwise in steps of 10° and lets the carried part follow with a share f of the rotation. */
const walk = (n: number, A: { L: number; h: 1 | -1 }, C: { L: number; h: 1 | -1 }, f: number): number => {
  const base: Pose = { angle: 0, z: 0 };
  let turned: Pose = { angle: 0, z: 0 };
  let carried: Pose = { angle: 0, z: 0 };
  const steps = Math.ceil(Math.abs(n) * 36);
  for (let i = 1; i <= steps; i++) {
    const angle = (-2 * Math.PI * n * i) / steps;
    const before = turned.z;
    turned = { angle, z: settle(A.L, A.h, angle, before, base) };
    // The nut on thread C rides along; the search is for what the step adds, so that it stays on its own turn of the ridge.
    const rides = carried.z + turned.z - before;
    carried = { angle: f * angle, z: settle(C.L, C.h, f * angle, rides, turned) };
  }
  return carried.z;
};

const leadOf = fc.integer({ min: 25, max: 600 }).map((i) => i / 100);
const hand = fc.constantFrom(1 as const, -1 as const);

describe('two helices moved as rigid bodies, step by step', () => {
  it('one turn of the Foot clockwise lifts the carried part by the difference of its leads', () => {
    expect(walk(1, { L: 1.5, h: 1 }, { L: 1.5875, h: 1 }, 0)).toBeCloseTo(0.0875, 9);
  });

  it('carries the part as net-motion says, for any leads, hands and turns', () => {
    fc.assert(
      fc.property(leadOf, hand, leadOf, hand, fc.integer({ min: -12, max: 12 }), (L_A, h_A, L_C, h_C, flats) => {
        const n = flats / 6;
        const { Delta } = valueIn(netLead.of({ h_A: plain(h_A), L_A: mm(L_A), h_C: plain(h_C), L_C: mm(L_C) }));
        const { z_c } = valueIn(netMotion.of({ n: turns(n), Delta }));
        expect(walk(n, { L: L_A, h: h_A }, { L: L_C, h: h_C }, 0)).toBeCloseTo(z_c, 8);
      }),
      { numRuns: 25 },
    );
  });

  it('carries it as slipped-lead says when it follows with a share of the rotation', () => {
    fc.assert(
      fc.property(leadOf, hand, leadOf, hand, fc.constantFrom(0, 0.25, 0.5, 1), (L_A, h_A, L_C, h_C, f) => {
        const { Delta } = valueIn(
          slippedLead.of({ f: plain(f), h_A: plain(h_A), L_A: mm(L_A), h_C: plain(h_C), L_C: mm(L_C) }),
        );
        expect(walk(1, { L: L_A, h: h_A }, { L: L_C, h: h_C }, f)).toBeCloseTo(Delta, 8);
      }),
      { numRuns: 25 },
    );
  });
});
