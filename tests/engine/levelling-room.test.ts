/** Levelling within the turns that the feet have: held against the places of the feet worked out by hand, and against trying every height. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Foot,
  type LevellingJob,
  levelPlate,
  levelWithin,
  type Room,
  roomOfFeet,
} from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const PLACES = [
  { name: 'A', x: 0, y: 0 },
  { name: 'B', x: 160, y: 0 },
  { name: 'C', x: 80, y: 140 },
];
const feetOf = (Delta: number, k = 6): Foot[] => PLACES.map((place) => ({ ...place, Delta, k }));
/** Readings over the feet themselves, so that each foot lacks what was read, sign reversed. */
const jobOn = (heights: readonly [number, number, number], Delta = 0.02, k = 6): LevellingJob => ({
  feet: feetOf(Delta, k),
  readings: PLACES.map(({ x, y }, i) => ({ x, y, z: heights[i] ?? 0 })),
  keep: { kind: 'foot', name: 'A' },
});
const either = (turns: number): Room[] => PLACES.map(() => ({ clockwise: turns, anticlockwise: turns }));

describe('turns left of a foot', () => {
  it('are half of all, less those it stands from the middle, and half with them the other way', () => {
    // 9.6 turns in all: 4.8 either way from the middle.
    expect(valueIn(roomOfFeet(PLACES, 9.6, [0, 4, -4.8]))).toEqual([
      { clockwise: 4.8, anticlockwise: 4.8 },
      { clockwise: expect.closeTo(0.8, 12), anticlockwise: expect.closeTo(8.8, 12) },
      { clockwise: expect.closeTo(9.6, 12), anticlockwise: 0 },
    ]);
  });

  it('are none for a foot outside its travel, or nowhere', () => {
    expect(reasonIn(roomOfFeet(PLACES, 9.6, [0, 4.81, 0]))).toMatch(
      /^Foot B stands 4\.81 turns .* 4\.8 turns either way/,
    );
    expect(reasonIn(roomOfFeet(PLACES, 9.6, [0, Number.NaN, 0]))).toMatch(/^Foot B stands/);
    expect(reasonIn(roomOfFeet(PLACES, 9.6, [0]))).toMatch(/^Foot B stands nowhere/);
    expect(reasonIn(levelWithin(jobOn([0, 0, 0]), either(-1)))).toMatch(/two counts that are not below zero/);
    expect(reasonIn(levelWithin(jobOn([0, 0, 0]), either(Number.NaN)))).toMatch(/two counts/);
  });
});

describe('levelling within them', () => {
  it('is what was asked where that fits, to the last whole step', () => {
    // 80 µm is 24 flats of 20/6 µm: 4 turns.
    const job = jobOn([0, -0.08, 0]);
    const fits = valueIn(levelWithin(job, either(4)));
    expect(fits.kind).toBe('as asked');
    expect(fits.levelling.moves).toEqual(valueIn(levelPlate(job)).moves);
    expect(valueIn(levelWithin(job, either(3.99))).kind).toBe('shared');
  });

  it('halves the largest by the height of the plate: 8 turns up become 4 up and 4 down', () => {
    const within = valueIn(levelWithin(jobOn([0, -0.16, -0.08]), either(4.8)));
    expect(within).toMatchObject({ kind: 'shared', short: 'B' });
    if (within.kind !== 'shared') return;
    expect(within.lift).toBeCloseTo(-0.08, 12);
    expect(within.levelling.moves.map((move) => move.wholeSteps)).toEqual([-24, 24, 0]);
    expect(within.levelling.residualTilt.slope).toBe(0);
  });

  it('uses the turns where they are: a foot near its upper end is spared', () => {
    const rooms = [
      { clockwise: 5, anticlockwise: 5 },
      { clockwise: 1, anticlockwise: 9 },
      { clockwise: 5, anticlockwise: 5 },
    ];
    const within = valueIn(levelWithin(jobOn([0, -0.08, 0]), rooms));
    expect(within.kind).toBe('shared');
    // Lifts from −5 turns + 0 (A and C down) to 1 − 4 = −3 turns: the middle is −4, so B stays.
    expect(within.levelling.moves.map((move) => move.wholeSteps)).toEqual([-24, 0, -24]);
  });

  it('refuses where no height does: 1.42 mm between two feet that can make 0.19', () => {
    // The plane falls by 620 µm over 120 mm to the right: B lacks 826.7 µm = 41.3 turns of 20 µm, C −594.7 µm.
    const job: LevellingJob = {
      feet: feetOf(0.02),
      readings: [
        { x: 20, y: 20, z: 0 },
        { x: 140, y: 20, z: -0.62 },
        { x: 80, y: 120, z: 0.41 },
      ],
      keep: { kind: 'foot', name: 'A' },
    };
    const within = valueIn(levelWithin(job, either(4.8)));
    expect(within.levelling.moves.map((move) => move.turns)).toEqual([
      0,
      expect.closeTo(41.33, 2),
      expect.closeTo(-29.73, 2),
    ]);
    expect(within).toMatchObject({ kind: 'too far', tooFar: { rises: 'B', sinks: 'C' } });
    if (within.kind !== 'too far') return;
    expect(within.tooFar.asked).toBeCloseTo(1.42133, 5);
    // 28 whole flats of 20/6 µm either way.
    expect(within.tooFar.there).toBeCloseTo((2 * 28 * 0.02) / 6, 12);
  });

  it('counts the other way round where clockwise lowers', () => {
    const rooms = PLACES.map(() => ({ clockwise: 1, anticlockwise: 9 }));
    // B must rise 8 turns, which these feet do anticlockwise.
    const within = valueIn(levelWithin(jobOn([0, -0.16, 0], -0.02), rooms));
    expect(within.kind).toBe('as asked');
    expect(within.levelling.moves.map((move) => move.wholeSteps)).toEqual([0, -48, 0]);
  });

  it('never orders more than a foot has, levels as well as what was asked, and refuses only what no height allows', () => {
    const lack = fc.double({ min: -0.3, max: 0.3, noNaN: true });
    const room = fc.record({
      clockwise: fc.double({ min: 0, max: 8, noNaN: true }),
      anticlockwise: fc.double({ min: 0, max: 8, noNaN: true }),
    });
    const kinds = new Set<string>();
    fc.assert(
      fc.property(
        fc.tuple(lack, lack, lack),
        fc.tuple(room, room, room),
        fc.constantFrom(0.02, -0.02, 0.0875),
        fc.constantFrom(4, 6, 12, 50),
        (heights, rooms, Delta, k) => {
          const job = jobOn(heights, Delta, k);
          const within = valueIn(levelWithin(job, rooms));
          kinds.add(within.kind);
          const step = Math.abs(Delta) / k;
          if (within.kind === 'too far') {
            // Half a step may go by rounding, and a tenth more to be safe.
            const fits = (h: number) =>
              heights.every((z, i) => {
                const n = (h - z) / Delta;
                return n <= (rooms[i]?.clockwise ?? 0) - 0.6 / k && -n <= (rooms[i]?.anticlockwise ?? 0) - 0.6 / k;
              });
            // If any height fits, one at which a foot is at an end of its turns does.
            const tried = heights.flatMap((z, i) => [
              z + Delta * ((rooms[i]?.clockwise ?? 0) - 0.61 / k),
              z - Delta * ((rooms[i]?.anticlockwise ?? 0) - 0.61 / k),
            ]);
            expect(tried.some(fits)).toBe(false);
            expect(within.tooFar.asked).toBeGreaterThan(within.tooFar.there);
            return;
          }
          for (const [i, move] of within.levelling.moves.entries()) {
            expect(move.wholeSteps / k).toBeLessThanOrEqual((rooms[i]?.clockwise ?? 0) + 1e-8);
            expect(-move.wholeSteps / k).toBeLessThanOrEqual((rooms[i]?.anticlockwise ?? 0) + 1e-8);
            expect(Math.abs(move.left)).toBeLessThanOrEqual(0.5001 * step);
          }
        },
      ),
      { numRuns: 150, seed: 12 },
    );
    expect([...kinds].sort()).toEqual(['as asked', 'shared', 'too far']);
  });
});
