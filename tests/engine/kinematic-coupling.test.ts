import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BallInVee,
  type Contact,
  contactForces,
  type Load,
  openFlanks,
  type Vector,
} from '../../widgets/engine/index.ts';
import { evenCoupling } from '../support/even-coupling.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const deg = Math.PI / 180;
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const forceAt = (contacts: readonly Contact[], ball: string, flank: Contact['flank']): number =>
  contacts.find((c) => c.ball === ball && c.flank === flank)?.force ?? Number.NaN;

/**
 * The even coupling in closed form, forces in the plane of the balls' centres or above it. At each ball the vee holds
 * across T_i and up V_i. Across: Σ T_i t_i = −F, Σ T_i R = −M_z → T_i = −(2/3) F·t_i − M_z/(3R). Up: the plane rule,
 * V_i = −F_z/3 + (2/(3R²)) (x_i m_y − y_i m_x) with the tipping moments m. Then N = V/(2 sin α) ± T/(2 cos α).
 */
const closedForm = (R: number, alpha: number, { force, at }: Load): number[] => {
  const moment = cross(at, force);
  return [0, 1, 2].flatMap((i) => {
    const phi = (2 * Math.PI * i) / 3;
    const [x, y] = [R * Math.cos(phi), R * Math.sin(phi)];
    const T = -(2 / 3) * (-force[0] * Math.sin(phi) + force[1] * Math.cos(phi)) - moment[2] / (3 * R);
    // Σ y V = −m_x and −Σ x V = −m_y, with Σ x² = Σ y² = 3R²/2 and Σ xy = 0.
    const V = -force[2] / 3 + (2 / (3 * R * R)) * (x * moment[1] - y * moment[0]);
    return [1, -1].map((side) => V / (2 * Math.sin(alpha)) + (side * T) / (2 * Math.cos(alpha)));
  });
};

/** Determinant by expansion along the first row: a path that knows nothing of elimination. */
const determinant = (m: readonly (readonly number[])[]): number =>
  m.length === 1
    ? (m[0]?.[0] ?? 0)
    : (m[0] ?? []).reduce(
        (sum, v, j) =>
          sum + (j % 2 === 0 ? 1 : -1) * v * determinant(m.slice(1).map((row) => row.filter((_, k) => k !== j))),
        0,
      );

/**
 * Virtual work: let go of one flank. The motion that keeps the five others touching is the vector of cofactors; as no
 * other contact works in it, N × (approach at the freed flank) + work of the loads = 0.
 */
const byVirtualWork = (balls: readonly BallInVee[], loads: readonly Load[]): number[] => {
  const lines = balls.flatMap(({ centre, direction, halfAngle }) =>
    [1, -1].map((side): number[] => {
      const u: Vector = [
        -side * Math.sin(direction) * Math.cos(halfAngle),
        side * Math.cos(direction) * Math.cos(halfAngle),
        Math.sin(halfAngle),
      ];
      return [...u, ...cross(centre, u).map((v) => v / 100)];
    }),
  );
  const load = loads
    .map(({ force, at }) => [...force, ...cross(at, force).map((v) => v / 100)])
    .reduce((a, b) => a.map((v, i) => v + (b[i] ?? 0)));
  return lines.map((freed, i) => {
    const others = lines.filter((_, j) => j !== i);
    const motion = [0, 1, 2, 3, 4, 5].map(
      (k) => (k % 2 === 0 ? 1 : -1) * determinant(others.map((row) => row.filter((_, c) => c !== k))),
    );
    const dot = (a: readonly number[]) => a.reduce((s, v, k) => s + v * (motion[k] ?? 0), 0);
    return -dot(load) / dot(freed);
  });
};

describe('contactForces', () => {
  it('gives W/(6 sin α) at every flank for a weight in the middle: 11.785 N for 50 N in vees of 90°', () => {
    const contacts = valueIn(contactForces(evenCoupling(40, 45 * deg), [{ force: [0, 0, -50], at: [0, 0, 25] }]));
    expect(contacts).toHaveLength(6);
    for (const { force } of contacts) expect(force).toBeCloseTo(50 / (6 * Math.sin(Math.PI / 4)), 10);
    for (const { force } of contacts) expect(force.toFixed(3)).toBe('11.785');
  });

  it('presses harder in a narrow vee: W/3 over 2 sin 30° is W/3', () => {
    const contacts = valueIn(contactForces(evenCoupling(40, 30 * deg), [{ force: [0, 0, -30], at: [0, 0, 0] }]));
    for (const { force } of contacts) expect(force).toBeCloseTo(10, 10);
  });

  it('agrees with the closed form of the even coupling under any small load', () => {
    const small = fc.integer({ min: -100, max: 100 }).map((v) => v / 20);
    const angle = fc.integer({ min: 20, max: 70 });
    fc.assert(
      fc.property(fc.tuple(small, small, small, small, small), angle, ([fx, fy, ax, ay, az], degrees) => {
        const load: Load = { force: [fx, fy, -80], at: [ax, ay, az] };
        const expected = closedForm(60, degrees * deg, load);
        const result = contactForces(evenCoupling(60, degrees * deg), [load]);
        expect(result.ok).toBe(expected.every((N) => N > 0));
        if (!result.ok) return;
        result.value.forEach(({ force }, i) => {
          expect(force).toBeCloseTo(expected[i] ?? 0, 9);
        });
      }),
    );
  });

  it('names left the flank that takes a push to the right of the groove', () => {
    // Groove of A along +x; a force along −y presses the ball against the flank whose push points to +y, the left one.
    const contacts = valueIn(
      contactForces(evenCoupling(40, 45 * deg), [
        { force: [0, 0, -90], at: [0, 0, 0] },
        { force: [0, -6, 0], at: [0, 0, 0] },
      ]),
    );
    expect(forceAt(contacts, 'A', 'left') - forceAt(contacts, 'A', 'right')).toBeCloseTo(
      ((2 / 3) * 6) / Math.cos(Math.PI / 4),
      9,
    );
    const half = expect.closeTo(Math.SQRT1_2, 12);
    expect(contacts[0]?.normal).toEqual([expect.closeTo(0, 12), half, half]);
  });

  it('agrees with virtual work for uneven couplings', () => {
    const shift = fc.integer({ min: -100, max: 100 });
    fc.assert(
      fc.property(fc.array(shift, { minLength: 17, maxLength: 17 }), (s) => {
        const at = (i: number) => s[i] ?? 0;
        const balls = evenCoupling(70, 45 * deg).map(
          (b, i): BallInVee => ({
            name: b.name,
            centre: [b.centre[0] + at(i) / 10, b.centre[1] + at(i + 3) / 10, at(i + 6) / 20],
            direction: b.direction + at(i + 9) / 400,
            halfAngle: b.halfAngle + at(i + 12) / 500,
          }),
        );
        const loads: Load[] = [
          { force: [0, 0, -200], at: [at(15) / 10, at(16) / 10, 30] },
          { force: [at(0) / 20, at(1) / 20, 0], at: [0, 0, 10] },
        ];
        const expected = byVirtualWork(balls, loads);
        const found = valueIn(contactForces(balls, loads));
        found.forEach(({ force }, i) => {
          expect(force).toBeCloseTo(expected[i] ?? 0, 8);
        });
        expect(openFlanks(found).length === 0).toBe(expected.every((N) => N > 0));
      }),
      { numRuns: 60 },
    );
  });

  it('takes a side force of nought beside the weight, as a slider at rest gives it', () => {
    const weight: Load = { force: [0, 0, -50], at: [3, 2, 10] };
    const alone = valueIn(contactForces(evenCoupling(40, 45 * deg), [weight]));
    expect(contactForces(evenCoupling(40, 45 * deg), [weight, { force: [0, 0, 0], at: [0, 0, 9] }])).toEqual({
      ok: true,
      value: alone,
    });
  });

  it('does not care where the origin lies, and forces grow with the load', () => {
    const load: Load = { force: [2, 1, -70], at: [5, -4, 12] };
    const move = ([x, y, z]: Vector): Vector => [x + 500, y - 300, z + 80];
    const here = valueIn(contactForces(evenCoupling(50, 40 * deg), [load]));
    const there = valueIn(
      contactForces(
        evenCoupling(50, 40 * deg).map((b) => ({ ...b, centre: move(b.centre) })),
        [{ force: load.force, at: move(load.at) }],
      ),
    );
    const twice = valueIn(contactForces(evenCoupling(50, 40 * deg), [load, load]));
    // A small one at the far end of a large machine is held as well, and so is one of any size.
    const far = ([x, y, z]: Vector): Vector => [x + 9e4, y - 9e4, z + 9e4];
    const small = evenCoupling(5, 40 * deg).map((b) => ({ ...b, centre: far(b.centre) }));
    for (const balls of [small, evenCoupling(0.05, 40 * deg), evenCoupling(9e4, 40 * deg)]) {
      const at: Vector = balls === small ? far([0, 0, 0]) : [0, 0, 0];
      for (const { force } of valueIn(contactForces(balls, [{ force: [0, 0, -70], at }])))
        expect(force).toBeCloseTo(70 / (6 * Math.sin(40 * deg)), 6);
    }
    here.forEach(({ force }, i) => {
      expect(there[i]?.force).toBeCloseTo(force, 9);
      expect(twice[i]?.force).toBeCloseTo(2 * force, 9);
    });
  });

  it('tells which flanks would open, and by how much they would have to pull', () => {
    const pulled = (loads: readonly Load[]) =>
      openFlanks(valueIn(contactForces(evenCoupling(40, 45 * deg), loads))).map((c) => `${c.flank} ${c.ball}`);
    const weight: Load = { force: [0, 0, -30], at: [0, 0, 0] };
    const aside: Load = { force: [0, 24, 0], at: [0, 0, 0] };
    expect(pulled([weight])).toEqual([]);
    expect(pulled([weight, aside])).toEqual(['left A']);
    // Closed form: 10/(2 sin 45°) − (2/3)·24/(2 cos 45°).
    expect(valueIn(contactForces(evenCoupling(40, 45 * deg), [weight, aside]))[0]?.force).toBeCloseTo(
      -6 / Math.SQRT2,
      9,
    );
    // The weight outside the triangle of the balls.
    expect(pulled([{ ...weight, at: [-60, 0, 0] }])).toEqual(['left A', 'right A']);
    // A flank that only touches is not pressed, though rounding leaves it a trace of force: 15 N aside under 30 N at 45°.
    for (const scale of [1e-4, 0.1, 1, 7, 1000, 3e5])
      expect(
        pulled([
          { ...weight, force: [0, 0, -30 * scale] },
          { ...aside, force: [0, 15 * scale, 0] },
        ]),
        `${scale}`,
      ).toEqual(['left A']);
  });

  it('refuses grooves that leave the part loose: all parallel, or along a circle', () => {
    const weight: Load[] = [{ force: [0, 0, -30], at: [0, 0, 0] }];
    for (const turn of [
      (b: BallInVee) => ({ ...b, direction: 0.3 }),
      (b: BallInVee) => ({ ...b, direction: b.direction + Math.PI / 2 }),
      (b: BallInVee) => ({ ...b, direction: b.direction + Math.PI / 2 + 1e-8 }),
    ])
      expect(reasonIn(contactForces(evenCoupling(40, 45 * deg).map(turn), weight))).toBe(
        'The part can still move a little with all six flanks touching, so the grooves do not hold it: point the grooves towards a common middle, with the balls far apart.',
      );
  });

  it('refuses balls in one place, two balls, no load, and odd angles', () => {
    const weight: Load[] = [{ force: [0, 0, -30], at: [0, 0, 0] }];
    const even = evenCoupling(40, 45 * deg);
    expect(contactForces(evenCoupling(0, 45 * deg), weight).ok).toBe(false);
    expect(reasonIn(contactForces(even.slice(0, 2), weight))).toBe(
      'Read 2 balls; this coupling has exactly three, each in its vee: give three.',
    );
    for (const none of [[], [{ force: [0, 0, 0], at: [0, 0, 0] }] satisfies Load[]])
      expect(reasonIn(contactForces(even, none))).toBe(
        'No load was given; give at least the weight of the part and where it acts.',
      );
    expect(reasonIn(contactForces(even, [...weight, { force: [Number.NaN, 0, 0], at: [0, 0, 1] }]))).toBe(
      'Read a load of (NaN, 0, 0) N at (0, 0, 1) mm; give numbers within 10000000.',
    );
    expect(contactForces(even, [{ force: [0, 0, Number.NaN], at: [0, 0, 0] }]).ok).toBe(false);
    for (const degrees of [5, 85]) expect(contactForces(evenCoupling(40, degrees * deg), weight).ok).toBe(true);
    for (const degrees of [4.9, 85.1])
      expect(reasonIn(contactForces(evenCoupling(40, degrees * deg), weight))).toContain(`half-angle of ${degrees}°`);
    const moved = (change: Partial<BallInVee>) =>
      contactForces([...even.slice(0, 2), { ...even[2], ...change } as BallInVee], weight);
    for (const change of [
      { centre: [1.01e5, 0, 0] },
      { centre: [0, 0, -1.01e5] },
      { direction: 101 },
      { direction: -101 },
    ] as const)
      expect(reasonIn(moved(change))).toContain('Ball C stands at');
    for (const change of [
      { centre: [1e5, 0, 0] },
      { centre: [0, 0, -1e5] },
      { direction: 100 },
      { direction: -100 },
    ] as const)
      expect(moved(change), JSON.stringify(change)).not.toMatchObject({ reason: expect.stringContaining('stands at') });
    // A whole number of turns on, the groove lies as before.
    expect(valueIn(moved({ direction: (even[2]?.direction ?? 0) + 20 * Math.PI }))[5]?.force).toBeCloseTo(
      30 / (6 * Math.SQRT1_2),
      6,
    );
    expect(contactForces(even, [{ force: [0, 0, -1e7], at: [0, 0, 1e7] }]).ok).toBe(true);
    expect(reasonIn(contactForces(even, [{ force: [0, 0, -1e7], at: [0, 0, 1.01e7] }]))).toContain(
      'numbers within 10000000',
    );
    expect(reasonIn(contactForces(evenCoupling(40, 45), weight))).toBe(
      'The vee at ball A has a half-angle of 2578°; give one from 5° to 85°, such as 45°.',
    );
  });
});
