/** Three ways of a plate to swing, against closed forms, energy and one foot at a time. */
import { describe, expect, it } from 'vitest';
import { type PlateOnFeet, plateModes } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const G = 9806.65;
const even: PlateOnFeet = {
  feet: [90, 210, 330].map((degrees) => {
    const angle = (degrees * Math.PI) / 180;
    return { x: 100 * Math.cos(angle), y: 100 * Math.sin(angle) };
  }),
  weight: 60,
  centre: { x: 0, y: 0 },
  wide: { x: 240, y: 240 },
  stiffness: 20_000,
};
const hertz = (square: number) => Math.sqrt(square) / (2 * Math.PI);

describe('plateModes', () => {
  it('of an even square on an even triangle: 3k/m up and down, 3k R²/2 over m w²/12 both ways of rocking', () => {
    const modes = valueIn(plateModes(even));
    const m = 60 / G;
    const heave = hertz((3 * 20_000) / m);
    const rock = hertz((1.5 * 20_000 * 100 ** 2) / (m * (240 ** 2 / 12)));
    expect(modes.map(({ kind }) => kind).sort()).toEqual(['heave', 'rock', 'rock']);
    expect(modes.map(({ frequency }) => frequency).sort((a, b) => a - b)).toEqual(
      [heave, rock, rock].sort((a, b) => a - b).map((f) => expect.closeTo(f, 6)),
    );
  });

  it('parts into heave and two tilts where the feet are even about both axes of an oblong plate', () => {
    const modes = valueIn(plateModes({ ...even, wide: { x: 400, y: 100 } }));
    const m = 60 / G;
    const tilt = (w: number) => hertz((1.5 * 20_000 * 100 ** 2) / ((m * w ** 2) / 12));
    expect(modes.map(({ frequency }) => frequency)).toEqual(
      [tilt(400), hertz((3 * 20_000) / m), tilt(100)].sort((a, b) => a - b).map((f) => expect.closeTo(f, 6)),
    );
  });

  it('keeps the sum of the squares, the energy of each way alike, and ways square to each other, wherever the weight is', () => {
    const plate = { ...even, centre: { x: 25, y: -10 }, wide: { x: 300, y: 180 } };
    const modes = valueIn(plateModes(plate));
    const m = 60 / G;
    const r2 = (w: number) => w ** 2 / 12;
    const trace = plate.feet.reduce(
      (sum, { x, y }) => sum + (plate.stiffness / m) * (1 + (x - 25) ** 2 / r2(300) + (y + 10) ** 2 / r2(180)),
      0,
    );
    expect(modes.reduce((sum, { frequency }) => sum + (2 * Math.PI * frequency) ** 2, 0) / trace).toBeCloseTo(1, 9);
    const kinetic = (a: number, b: number) => {
      const [s, t] = [modes[a]?.shape, modes[b]?.shape];
      return s && t ? m * (s.u * t.u + r2(300) * s.p * t.p + r2(180) * s.q * t.q) : Number.NaN;
    };
    for (const [i, mode] of modes.entries()) {
      const springs = mode.feet.reduce((sum, z) => sum + plate.stiffness * z * z, 0);
      // Rayleigh: as much energy in the springs as in the motion.
      expect(springs / ((2 * Math.PI * mode.frequency) ** 2 * kinetic(i, i))).toBeCloseTo(1, 6);
      expect(Math.max(...mode.feet.map(Math.abs))).toBeCloseTo(1, 9);
      for (let j = 0; j < i; j++)
        expect(Math.abs(kinetic(i, j)) / Math.sqrt(kinetic(i, i) * kinetic(j, j))).toBeLessThan(1e-6);
    }
  });

  it('keeps the product of the squares, which the triangle of the feet gives alone, wherever the weight is (worked by hand)', () => {
    // det of Σ v vᵀ over the three feet is the square of det [1, x/r_x, y/r_y], twice the area of the triangle over r_x r_y.
    const area = (3 * Math.sqrt(3) * 100 ** 2) / 4;
    const product = (20_000 / (60 / G)) ** 3 * ((2 * area) ** 2 / ((300 ** 2 / 12) * (180 ** 2 / 12)));
    for (const centre of [
      { x: 0, y: 0 },
      { x: 25, y: -10 },
      { x: -30, y: 20 },
    ]) {
      const modes = valueIn(plateModes({ ...even, centre, wide: { x: 300, y: 180 } }));
      const squares = modes.map(({ frequency }) => (2 * Math.PI * frequency) ** 2);
      expect(squares.reduce((a, b) => a * b) / product).toBeCloseTo(1, 9);
    }
  });

  it('goes as the root of stiffness over weight, and faster on feet further apart', () => {
    const first = (over: Partial<PlateOnFeet>) => valueIn(plateModes({ ...even, ...over }))[0]?.frequency ?? 0;
    expect(first({ stiffness: 80_000 }) / first({})).toBeCloseTo(2, 9);
    expect(first({ weight: 240 }) / first({})).toBeCloseTo(0.5, 9);
    const nearer = even.feet.map(({ x, y }) => ({ x: x / 2, y: y / 2 }));
    expect(first({ feet: nearer }) / first({})).toBeLessThan(0.75);
  });

  it('refuses a weight outside its feet, none at all, and sizes that no plate has', () => {
    expect(reasonIn(plateModes({ ...even, centre: { x: 0, y: 150 } }))).toContain('lifts');
    // Foot 1 stands at (0, 100), so a weight beyond the line of the other two lifts it.
    const below = plateModes({ ...even, centre: { x: 0, y: -60 } });
    expect(below).toMatchObject({ ok: false, code: 'plate-foot-lifts' });
    expect(reasonIn(below)).toContain('oot 1');
    expect(reasonIn(plateModes({ ...even, weight: 0 }))).toContain('weigh');
    expect(reasonIn(plateModes({ ...even, wide: { x: Number.NaN, y: 100 } }))).toContain('idth');
    expect(plateModes({ ...even, feet: even.feet.map(({ x }) => ({ x, y: 0 })) }).ok).toBe(false);
  });
});
