import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Foot,
  footLoads,
  heightAt,
  type LevellingJob,
  levelPlate,
  mm,
  nextRound,
  type Place,
  type Point,
  planeThrough,
  tiltOf,
  turnsFor,
} from '../../widgets/engine/index.ts';
import { asRead } from '../../widgets/engine/kernel/say.ts';
import { reasonIn, valueIn } from '../support/results.ts';
import { seeded } from '../support/seeded.ts';

/** The three feet of the exact case, 0.45 mm a turn: −1/300 along x, 1/2700 along y. */
const feet = (Delta = 0.45, k = 6): readonly Foot[] => [
  { name: 'A', x: 0, y: 0, Delta, k },
  { name: 'B', x: 120, y: 0, Delta, k },
  { name: 'C', x: 40, y: 90, Delta, k },
];
const READINGS: readonly Point[] = [
  { x: 0, y: 0, z: 3 / 10 },
  { x: 120, y: 0, z: -1 / 10 },
  { x: 40, y: 90, z: 1 / 5 },
];
const job = (changes: Partial<LevellingJob> = {}): LevellingJob => ({
  feet: feet(),
  readings: READINGS,
  keep: { kind: 'foot', name: 'A' },
  ...changes,
});

describe('levelPlate', () => {
  it('raises B by 2/5 mm and C by 1/10 mm to bring them to A: 8/9 and 2/9 turn (exact fractions)', () => {
    const { moves } = valueIn(levelPlate(job()));
    expect(moves.map((m) => m.name)).toEqual(['A', 'B', 'C']);
    expect(moves.map((m) => m.correction)).toEqual([0, expect.closeTo(0.4, 12), expect.closeTo(0.1, 12)]);
    expect(moves.map((m) => m.turns)).toEqual([0, expect.closeTo(8 / 9, 12), expect.closeTo(2 / 9, 12)]);
    expect(moves.map((m) => m.steps)).toEqual([0, expect.closeTo(48 / 9, 11), expect.closeTo(12 / 9, 11)]);
    expect(moves.map((m) => m.wholeSteps)).toEqual([0, 5, 1]);
    expect(moves.map((m) => m.sense)).toEqual(['none', 'clockwise', 'clockwise']);
    // Left: 1/3 of a flat each, of 75 µm: 25 µm.
    expect(moves.map((m) => m.left)).toEqual([0, expect.closeTo(0.025, 12), expect.closeTo(0.025, 12)]);
  });

  it('says the tilt before and after: 25 µm short at B and C leave −25/120 and −1/6 µm per mm', () => {
    const { tilt, residualTilt, after } = valueIn(levelPlate(job()));
    expect(tilt.micrometresPerMetre).toBeCloseTo(1e6 * Math.hypot(1 / 300, 1 / 2700), 6);
    // q = −0.025/120; r from C: (−0.025 + 0.025·40/120)/90.
    expect(after.q).toBeCloseTo(-0.025 / 120, 14);
    expect(after.r).toBeCloseTo((-0.025 + (0.025 * 40) / 120) / 90, 14);
    expect(residualTilt.slope).toBeCloseTo(Math.hypot(after.q, after.r), 14);
  });

  it('keeps the mean height over the feet when asked', () => {
    const { moves } = valueIn(levelPlate(job({ keep: { kind: 'mean' } })));
    const corrections = moves.map((m) => m.correction);
    expect(corrections[0]).toBeCloseTo(0.4 / 3 - 0.3, 12);
    expect(corrections.reduce((a, c) => a + c, 0)).toBeCloseTo(0, 14);
    // The differences between the feet are those of the datum foot's answer.
    expect((corrections[1] ?? 0) - (corrections[0] ?? 0)).toBeCloseTo(0.4, 12);
  });

  it('turns the other way for the other sign of the net lead, with mirrored steps', () => {
    const right = valueIn(levelPlate(job())).moves;
    const left = valueIn(levelPlate(job({ feet: feet(-0.45) }))).moves;
    expect(left.map((m) => m.correction)).toEqual(right.map((m) => m.correction));
    expect(left.map((m) => m.wholeSteps)).toEqual([0, -5, -1]);
    expect(left.map((m) => m.sense)).toEqual(['none', 'anticlockwise', 'anticlockwise']);
    expect(left.map((m) => m.moved)).toEqual(right.map((m) => m.moved));
  });

  it('rounds half a step up in amount, so that mirrored hands turn alike', () => {
    // 0.5 mm short at B and at C with feet of 1 mm a step.
    const readings = READINGS.map((p, i) => ({ ...p, z: i === 0 ? 0.5 : 0 }));
    const steps = (Delta: number) =>
      valueIn(levelPlate(job({ readings, feet: feet(Delta, 1) }))).moves.map((m) => m.wholeSteps);
    expect(steps(1)).toEqual([0, 1, 1]);
    expect(steps(-1)).toEqual([0, -1, -1]);
  });

  it('counts each foot in its own lead and its own steps', () => {
    const own = feet().map((foot, i) => ({ ...foot, Delta: [0.0875, 0.25, 0.0875][i] ?? 0, k: [6, 4, 12][i] ?? 0 }));
    const { moves } = valueIn(levelPlate(job({ feet: own })));
    expect(moves.map((m) => m.steps)).toEqual([
      0,
      expect.closeTo((0.4 / 0.25) * 4, 10),
      expect.closeTo((0.1 / 0.0875) * 12, 10),
    ]);
  });

  it('aims at a slope when one is wanted', () => {
    const wanted = { q: 1e-4, r: -2e-4 };
    const fine = feet(0.005556, 10_000);
    const { tilt, residualTilt, after, moves } = valueIn(levelPlate(job({ wanted, feet: fine })));
    expect(tilt.slope).toBeCloseTo(Math.hypot(1 / 300 + 1e-4, 1 / 2700 + 2e-4), 12);
    expect(after.q).toBeCloseTo(1e-4, 7);
    expect(after.r).toBeCloseTo(-2e-4, 7);
    expect(residualTilt.slope).toBeLessThan(1e-8);
    expect(moves[0]?.correction).toBe(0);
  });

  it('is already done on a level part: no turns, no tilt, no −0', () => {
    const level = READINGS.map((p) => ({ ...p, z: 0.02 }));
    const { moves, residualTilt, tilt } = valueIn(levelPlate(job({ readings: level, feet: feet(-0.45) })));
    expect(moves.map((m) => m.sense)).toEqual(['none', 'none', 'none']);
    for (const m of moves) expect([m.wholeSteps, m.moved].map((v) => Object.is(v, -0))).toEqual([false, false]);
    expect([tilt.slope, residualTilt.slope].every((t) => t < 1e-15)).toBe(true);
  });

  it('leaves at most half a step at each foot, and carried out gives the plane it foretold', () => {
    const height = fc.integer({ min: -500, max: 500 }).map((v) => v / 1000);
    fc.assert(
      fc.property(fc.tuple(height, height, height, height), fc.constantFrom(0.0875, -0.25, 0.005556), (zs, Delta) => {
        const places: readonly Place[] = [
          { x: 20, y: 10 },
          { x: 100, y: 5 },
          { x: 60, y: 70 },
          { x: 15, y: 60 },
        ];
        const readings = places.map((p, i) => ({ ...p, z: zs[i] ?? 0 }));
        const found = valueIn(levelPlate(job({ readings, feet: feet(Delta), keep: { kind: 'mean' } })));
        for (const m of found.moves)
          expect(Math.abs(m.left)).toBeLessThanOrEqual((Math.abs(Delta) / 12) * (1 + 1e-9) + 1e-15);
        // Independent: move the part by the whole steps and read again at the same places.
        const lift = valueIn(
          planeThrough(feet().map((f, i) => ({ x: f.x, y: f.y, z: ((found.moves[i]?.wholeSteps ?? 0) * Delta) / 6 }))),
        );
        const again = readings.map((p) => ({ ...p, z: p.z + heightAt(lift, p) }));
        again.forEach((p, i) => {
          expect(found.expected[i]?.z).toBeCloseTo(p.z, 10);
        });
        const read = valueIn(planeThrough(again));
        expect(tiltOf(read).slope).toBeCloseTo(found.residualTilt.slope, 10);
        expect([found.after.p, found.after.q, found.after.r]).toEqual(
          [read.p, read.q, read.r].map((v) => expect.closeTo(v, 10)),
        );
        // Without rounding the part would be level: the exact corrections leave no slope.
        const exact = valueIn(
          planeThrough(feet().map((f, i) => ({ x: f.x, y: f.y, z: found.moves[i]?.correction ?? 0 }))),
        );
        expect(exact.q + found.plane.q).toBeCloseTo(0, 12);
        expect(exact.r + found.plane.r).toBeCloseTo(0, 12);
      }),
    );
  });

  it('refuses two readings, readings in a line, and feet in a line', () => {
    expect(reasonIn(levelPlate(job({ readings: READINGS.slice(0, 2) })))).toBe(
      'Read 2 readings; a plane needs three that are not in a line: add 1 more.',
    );
    const line = [0, 50, 100].map((x) => ({ x, y: 2 * x, z: x / 1e3 }));
    expect(reasonIn(levelPlate(job({ readings: line })))).toBe(
      'The 3 readings stand in a line, or so nearly that the tilt across it cannot be found: move one far off the line.',
    );
    expect(reasonIn(levelPlate(job({ feet: feet().map((f) => ({ ...f, y: 0 })) })))).toBe(
      'The 3 feet stand in a line, or so nearly that the tilt across it cannot be found: move one far off the line.',
    );
  });

  it('refuses two feet, four feet, and two of one name', () => {
    expect(reasonIn(levelPlate(job({ feet: feet().slice(0, 2) })))).toBe(
      'Read 2 feet; a plate is levelled on exactly three: give three.',
    );
    expect(levelPlate(job({ feet: [...feet(), { name: 'D', x: 9, y: 9, Delta: 1, k: 6 }] })).ok).toBe(false);
    expect(reasonIn(levelPlate(job({ feet: feet().map((f) => ({ ...f, name: 'A' })) })))).toBe(
      'Two feet have the same name (A, A and A); give each a name of its own.',
    );
    expect(
      reasonIn(levelPlate(job({ feet: feet().map((f) => ({ ...f, name: f.name === 'B' ? 'A' : f.name })) }))),
    ).toBe('Two feet have the same name (A, A and C); give each a name of its own.');
  });

  it('refuses a net lead of nought, half steps, and a foot that is not there', () => {
    expect(reasonIn(levelPlate(job({ feet: feet(0) })))).toBe(
      'Foot A has a net lead of 0 mm a turn; it must differ from zero and be within 120 mm: choose threads whose leads differ.',
    );
    for (const k of [0, 6.5, -6, Number.NaN])
      expect(reasonIn(levelPlate(job({ feet: feet(0.45, k) })))).toBe(
        `Foot A has ${asRead(k)} steps per turn; give a whole number from 1 to 10000, such as 6 for the flats of a hexagon.`,
      );
    expect(levelPlate(job({ feet: feet(Number.NaN) })).ok).toBe(false);
    expect(reasonIn(levelPlate(job({ keep: { kind: 'foot', name: 'Z' } })))).toBe(
      'There is no foot called Z to keep; choose one of A, B and C, or keep the mean height.',
    );
  });

  it('takes the last of what it allows: 120 mm a turn, 10000 steps, a slope of 100 mm per metre', () => {
    for (const Delta of [120, -120, 1e-6]) expect(levelPlate(job({ feet: feet(Delta) })).ok, `${Delta}`).toBe(true);
    for (const Delta of [120.001, -120.001])
      expect(reasonIn(levelPlate(job({ feet: feet(Delta) })))).toContain(`a net lead of ${asRead(Delta)} mm a turn`);
    for (const k of [1, 10_000]) expect(levelPlate(job({ feet: feet(0.45, k) })).ok, `${k}`).toBe(true);
    expect(reasonIn(levelPlate(job({ feet: feet(0.45, 10_001) })))).toContain('from 1 to 10000');
    const leaning = READINGS.map((p) => ({ ...p, z: 0.06 * p.x + 0.08 * p.y }));
    expect(valueIn(levelPlate(job({ readings: leaning, wanted: { q: 0.06, r: 0.08 } }))).tilt.slope).toBeCloseTo(0, 12);
    expect(reasonIn(levelPlate(job({ readings: leaning, wanted: { q: 0.061, r: 0.08 } })))).toContain('slopes wanted');
    expect(levelPlate(job({ readings: leaning.map((p) => ({ ...p, z: 0.999 * p.z })) })).ok).toBe(true);
    expect(reasonIn(levelPlate(job({ readings: leaning.map((p) => ({ ...p, z: 1.001 * p.z })) })))).toContain(
      'a tilt of 100 mm per metre',
    );
  });

  it('asks about the unit when the part would lean more than a plate can', () => {
    const readings = READINGS.map((p) => ({ ...p, z: p.z * 1000 }));
    expect(reasonIn(levelPlate(job({ readings })))).toBe(
      'The readings give a tilt of 3350 mm per metre; a plate on feet can have 100 at most: check whether you typed them in another unit.',
    );
    expect(reasonIn(levelPlate(job({ wanted: { q: 0.2, r: 0 } })))).toBe(
      'The slopes wanted are 0.2 along x and 0 along y; together they may be 0.1 at most, which is 100 mm per metre.',
    );
  });
});

describe('nextRound', () => {
  it('finds what each foot did and what is still to turn', () => {
    const first = valueIn(levelPlate(job()));
    const turned = first.moves.map((m) => m.wholeSteps);
    // Foot B fell 10 µm short of its five flats.
    const short = valueIn(planeThrough(feet().map((f) => ({ x: f.x, y: f.y, z: f.name === 'B' ? -0.01 : 0 }))));
    const readings = first.expected.map((p) => ({ ...p, z: p.z + heightAt(short, p) }));
    const { checks, levelling } = valueIn(nextRound(job(), turned, readings));
    expect(checks.map((c) => Number(c.expected.toFixed(9)))).toEqual([0, 0.375, 0.075]);
    expect(checks.map((c) => Number(c.extra.toFixed(9)) + 0)).toEqual([0, -0.01, 0]);
    expect(levelling.moves.map((m) => Number(m.correction.toFixed(9)))).toEqual([0, 0.035, 0.025]);
    expect(levelling.moves.map((m) => m.wholeSteps)).toEqual([0, 0, 0]);
  });

  it('comes to the last flat in two rounds for 200 seeded plates with lead errors of 5 %', () => {
    const { normal, uniform } = seeded(11);
    for (let trial = 0; trial < 200; trial++) {
      const three = feet(0.0875);
      const truth = three.map((f) => f.Delta * (1 + 0.05 * (2 * uniform() - 1)));
      let heights = three.map(() => 0.5 * normal());
      const read = () => three.map((f, i) => ({ x: f.x, y: f.y, z: heights[i] ?? 0 }));
      for (let round = 0; round < 2; round++) {
        const { moves } = valueIn(levelPlate(job({ feet: three, readings: read() })));
        heights = heights.map((z, i) => z + ((moves[i]?.wholeSteps ?? 0) * (truth[i] ?? 0)) / 6);
      }
      const { moves } = valueIn(levelPlate(job({ feet: three, readings: read() })));
      for (const m of moves) expect(Math.abs(m.steps)).toBeLessThan(0.75);
    }
  });

  it('refuses what either round refuses', () => {
    expect(reasonIn(nextRound(job({ keep: { kind: 'foot', name: 'Z' } }), [0, 0, 0], READINGS))).toContain('called Z');
    expect(reasonIn(nextRound(job(), [0, 0, 0], READINGS.slice(1)))).toContain('Read 2 readings');
    expect(reasonIn(nextRound(job({ readings: READINGS.slice(1) }), [0, 0, 0], READINGS))).toContain('Read 2 readings');
  });

  it('refuses steps that do not match the feet', () => {
    expect(nextRound(job(), [1e6, -1e6, 0], READINGS).ok).toBe(true);
    expect(reasonIn(nextRound(job(), [0, -1_000_001, 0], READINGS))).toContain('Read steps 0, −1000001, 0');
    expect(reasonIn(nextRound(job(), [1, 2], READINGS))).toBe(
      'Read steps 1, 2 for 3 feet; give one number of steps for each foot, 0 where it was left alone.',
    );
  });
});

describe('footLoads', () => {
  it('gives a third each with the weight in the middle, and all of it over one foot just inside', () => {
    const middle = { x: 160 / 3, y: 30 };
    for (const { load } of valueIn(footLoads(feet(), 90, middle))) expect(load).toBeCloseTo(30, 10);
  });

  it('gives 5/18, 7/18 and 1/3 of the weight at (60, 30) (exact fractions)', () => {
    const loads = valueIn(footLoads(feet(), 180, { x: 60, y: 30 })).map((f) => f.load);
    expect(loads).toEqual([expect.closeTo(50, 9), expect.closeTo(70, 9), expect.closeTo(60, 9)]);
  });

  it('balances force and both moments anywhere inside', () => {
    const share = fc.integer({ min: 1, max: 1000 });
    fc.assert(
      fc.property(share, share, share, fc.integer({ min: 1, max: 10_000 }), (a, b, c, W) => {
        const [A, B, C] = feet();
        if (A === undefined || B === undefined || C === undefined) return;
        const s = a + b + c;
        const centre = { x: (a * A.x + b * B.x + c * C.x) / s, y: (a * A.y + b * B.y + c * C.y) / s };
        const loads = valueIn(footLoads(feet(), W, centre));
        const sum = (weigh: (f: Foot) => number) =>
          loads.reduce((t, { load }, i) => t + load * weigh(feet()[i] ?? A), 0);
        expect(sum(() => 1) / W).toBeCloseTo(1, 10);
        expect(sum((f) => f.x) / W).toBeCloseTo(centre.x, 8);
        expect(sum((f) => f.y) / W).toBeCloseTo(centre.y, 8);
      }),
    );
  });

  it('names the foot that would lift, outside the triangle and on its edge', () => {
    expect(reasonIn(footLoads(feet(), 100, { x: 60, y: -9 }))).toBe(
      'With the weight at (60, −9) mm foot C would lift, since −10 N would be needed there: move the weight inside the triangle of the feet, or the feet outward.',
    );
    for (const weight of [1, 100, 1e7])
      expect(reasonIn(footLoads(feet(), weight, { x: 60, y: 0 }))).toMatch(/foot C would lift, since 0 N/);
    expect(reasonIn(footLoads(feet(), 100, { x: -60, y: -90 }))).toMatch(/feet B and C would lift, since −/);
  });

  it('refuses no weight and feet in a line', () => {
    for (const weight of [0, -5, Number.NaN])
      expect(reasonIn(footLoads(feet(), weight, { x: 60, y: 30 }))).toBe(
        `Read a weight of ${asRead(weight)} N; give one above zero and up to 10000000 N.`,
      );
    expect(
      footLoads(
        feet().map((f) => ({ ...f, x: f.y })),
        5,
        { x: 1, y: 1 },
      ).ok,
    ).toBe(false);
    expect(valueIn(footLoads(feet(), 1e7, { x: 60, y: 30 }))[2]?.load).toBeCloseTo(1e7 / 3, 3);
    expect(reasonIn(footLoads(feet(), 1.01e7, { x: 60, y: 30 }))).toContain('up to 10000000 N');
    expect(reasonIn(footLoads([], 5, { x: 60, y: 30 }))).toContain('Read 0 feet');
    for (const far of [1e5, -1e5])
      for (const centre of [
        { x: far, y: 30 },
        { x: 60, y: far },
      ])
        expect(reasonIn(footLoads(feet(), 5, centre))).toContain('would lift');
    for (const centre of [
      { x: Number.NaN, y: 1 },
      { x: 1.01e5, y: 1 },
      { x: 1, y: -1.01e5 },
    ])
      expect(reasonIn(footLoads(feet(), 5, centre))).toBe(
        `Read a centre of gravity at (${asRead(centre.x)}, ${asRead(centre.y)}); give two numbers of millimetres within 100000.`,
      );
  });
});

describe('turnsFor', () => {
  it('has no answer for equal leads', () => {
    expect(reasonIn(turnsFor.of({ w: mm(0.4), Delta: mm(0) }))).toContain('no number of turns moves the carried part');
  });

  it('is signed with the motion and with the net lead', () => {
    const n = (w: number, Delta: number) => valueIn(turnsFor.of({ w, Delta } as Parameters<typeof turnsFor.of>[0])).n;
    expect([n(0.4, 0.45), n(-0.4, 0.45), n(0.4, -0.45)].map((v) => v * 9)).toEqual([
      expect.closeTo(8, 10),
      expect.closeTo(-8, 10),
      expect.closeTo(-8, 10),
    ]);
  });
});
