/** Plates to print as they are drawn: knob, coupons and clip, each length worked by hand from its sizes and the offsets of the printer. */
import { describe, expect, it } from 'vitest';
import { clipPlate } from '../../widgets/assembly/print/clip-plate.ts';
import { ladderOf, stripCoupon } from '../../widgets/assembly/print/coupons.ts';
import { knobPlate } from '../../widgets/assembly/print/knob-plate.ts';
import type { Place } from '../../widgets/assembly/print/plate.ts';
import { printerOf } from '../../widgets/assembly/print/printer-of.ts';
import { capPart, postPart } from '../../widgets/assembly/print/turned-prints.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const PRINTER = { holes: 0.2, outsides: 0.1, line: 0.45 };
const radius = ([x, y]: Place) => Math.hypot(x, y);
/** The corner that lies in this direction, degrees; the nearest of several to the middle. */
const towards = (outline: readonly Place[], degrees: number): Place | undefined =>
  outline
    .filter(([x, y]) => Math.abs((((((Math.atan2(y, x) * 180) / Math.PI - degrees) % 360) + 540) % 360) - 180) < 1e-6)
    .sort((a, b) => radius(a) - radius(b))[0];

describe('a knob to print', () => {
  const knob = (marks: number) => knobPlate({ flats: 17, clearance: 0.1, marks }, PRINTER);
  // Hexagon drawn 17 + 0.1 + 0.2 across flats; a wall of 3 and the deepest notch of four lines round its corners.
  const least = 17.3 / Math.sqrt(3) + 3 + 4 * 0.45;

  it('has a notch at every mark: one line deep, two at every fifth, three at every tenth, four at nought', () => {
    const { outline, holes, height } = valueIn(knob(50));
    expect(height).toBe(8);
    for (let mark = 0; mark < 50; mark++) {
      const lines = mark === 0 ? 4 : mark % 10 === 0 ? 3 : mark % 5 === 0 ? 2 : 1;
      expect(radius(towards(outline, (mark * 360) / 50) ?? [0, 0]), `mark ${mark}`).toBeCloseTo(
        least - 0.45 * lines,
        9,
      );
    }
    // Between two marks it is round.
    expect(Math.max(...outline.map(radius))).toBeCloseTo(least, 9);
    expect(holes.length).toBe(1);
    // A hexagon’s corners lie farther out than its flats by 2/√3.
    expect(Math.max(...(holes[0] ?? []).map(radius))).toBeCloseTo(17.3 / Math.sqrt(3), 9);
  });

  it('is as large as its marks ask for: two lines of land and a notch of two between each and the next', () => {
    expect(Math.max(...valueIn(knob(50)).outline.map(radius))).toBeCloseTo(least, 9);
    expect(Math.max(...valueIn(knob(100)).outline.map(radius))).toBeCloseTo((100 * 4 * 0.45) / (2 * Math.PI), 9);
  });

  it('is refused where it would be larger than 200 mm across', () => {
    // 200 π over four lines a mark.
    expect(knob(349).ok).toBe(true);
    expect(reasonIn(knob(350))).toMatch(/350.*200/s);
  });

  it('leaves land between any two notches, deep ones too', () => {
    const { outline } = valueIn(knob(50));
    const rim = outline.filter((at) => Math.abs(radius(at) - least) < 1e-9);
    const angles = rim.map(([x, y]) => Math.atan2(y, x)).sort((a, b) => a - b);
    expect(new Set(angles.map((a) => a.toFixed(9))).size).toBe(rim.length);
    // The notch of nought is 90° wide as far as its neighbours let it: 45 hundredths of a division to each side.
    const beside = Math.min(...angles.filter((a) => a > 0));
    expect(beside).toBeCloseTo(Math.min((4 * 0.45) / least, 0.45 * ((2 * Math.PI) / 50)), 9);
  });
});

describe('coupons', () => {
  it('the ladder has eight rungs a step apart, the first of them the width of the piece, walls of 2 mm between, and a corner cut off', () => {
    const { plate, rungs, across } = ladderOf(13, 0.05);
    expect(rungs.map(({ width }) => Number(width.toFixed(9)))).toEqual([
      13, 13.05, 13.1, 13.15, 13.2, 13.25, 13.3, 13.35,
    ]);
    // 13.35 and two walls, up to the next whole millimetre.
    expect(across).toBe(18);
    const pitch = (2 * 13.35) / Math.sqrt(3) + 2;
    for (const [i, rung] of rungs.entries()) {
      expect(rung.at[0]).toBeCloseTo(1 + pitch * (i + 0.5), 9);
      expect(rung.at[1]).toBe(9);
      const xs = (plate.holes[i] ?? []).map(([x]) => x - rung.at[0]);
      const ys = (plate.holes[i] ?? []).map(([, y]) => y - rung.at[1]);
      // One of the two directions is that of the flats.
      const spans = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)].sort((a, b) => a - b);
      expect(spans[0]).toBeCloseTo(rung.width, 9);
      expect(spans[1]).toBeCloseTo((2 * rung.width) / Math.sqrt(3), 9);
    }
    expect(plate.outline).toEqual([
      [4.5, 0],
      [pitch * 8 + 2, 0],
      [pitch * 8 + 2, 18],
      [0, 18],
      [0, 4.5],
    ]);
  });

  it('the strip is as long, thick and high as it is asked for, on a block of 20 by 12, with 3 mm beyond where the weight hangs', () => {
    const { outline, holes, height } = stripCoupon(60, 2, 10);
    expect([holes, height]).toEqual([[], 10]);
    for (const corner of [
      [-20, -6],
      [-20, 6],
      [0, -6],
      [0, 6],
      [60, -1],
      [60, 1],
      [63, -1],
      [63, 1],
    ])
      expect(
        outline.some(([x, y]) => Math.abs(x - (corner[0] ?? 0)) < 1e-9 && Math.abs(y - (corner[1] ?? 0)) < 1e-9),
        `${corner}`,
      ).toBe(true);
    // Its root is rounded by half its thickness, from the block’s face to the strip.
    const root = outline.filter(([x, y]) => x >= 0 && x <= 1 && Math.abs(y) <= 2 + 1e-9 && Math.abs(y) < 6);
    expect(root.length).toBe(14);
    for (const [x, y] of root) expect(Math.hypot(x - 1, Math.abs(y) - 2)).toBeCloseTo(1, 9);
  });

  it('what they read is what a printer does: from the rung that takes the piece, and from the caliper on the ladder', () => {
    // Rung 4 is drawn 13.15 for a piece of 13: holes come out 0.15 small. The ladder, drawn 18, is 18.1 across: outsides come out 0.1 large.
    const { rung, printer } = valueIn(printerOf({ w_n: 13, w_s: 0.05, i_r: 4, w_p: 18.1 }));
    expect(rung).toBeCloseTo(13.15, 9);
    expect(printer.holes).toBeCloseTo(0.15, 9);
    expect(printer.outsides).toBeCloseTo(0.1, 9);
  });
});

describe('a clip to print', () => {
  const SIZES = {
    flats: 13,
    clearance: -0.1,
    arm: { length: 15, thickness: 2 },
    lip: { reach: 0.5, lean: Math.PI / 6 },
    height: 6,
    radius: 18,
    strip: { thickness: 1.2, height: 8 },
  };
  const has = (outline: readonly Place[], x: number, y: number) =>
    outline.some(([a, b]) => Math.abs(a - x) < 1e-9 && Math.abs(b - y) < 1e-9);

  it('has its mouth, arms, lips and slots where its sizes and the offsets of the printer put them, on both sides', () => {
    const { outline, height } = valueIn(clipPlate(SIZES, PRINTER));
    expect(height).toBe(6);
    // Mouth 13 − 0.1 + 0.2, arm 2 − 0.1, slot 1.2 + 0.2 + 0.2.
    const [half, thick, slot] = [6.55, 1.9, 1.6];
    const lip = 13.1 / (2 * Math.sqrt(3));
    const crest = lip + 0.5 / Math.tan(Math.PI / 3);
    const tip = crest + 0.4 + 0.5 / Math.tan(Math.PI / 6);
    for (const side of [1, -1])
      for (const [x, y] of [
        [lip, half],
        [crest, half - 0.5],
        [crest + 0.4, half - 0.5],
        [tip, half],
        [tip, half + thick],
        [lip - 15, half + thick],
        // A gap of 0.8 beyond what the lip is pushed aside; a wall of 2.4 beside the slot.
        [lip - 15, half + thick + 0.5 + 0.8],
        [slot / 2 + 2.4, 22],
        [slot / 2, 22],
        [slot / 2, 14],
        [-slot / 2, 14],
      ] as const)
        expect(has(outline, x, side * y), `${x}, ${side * y}`).toBe(true);
  });

  it('is refused at the bound where an arm is thinner than a line, shorter than the hexagon, or a limb has no wall under its slot', () => {
    const withArm = (thickness: number, length: number) => clipPlate({ ...SIZES, arm: { length, thickness } }, PRINTER);
    // Drawn 0.1 thinner than it comes out.
    expect(withArm(0.551, 15).ok).toBe(true);
    expect(reasonIn(withArm(0.549, 15))).toContain('0.4');
    const least = (Math.sqrt(3) / 2) * 13.1;
    expect(withArm(2, least + 1e-6).ok).toBe(true);
    expect(withArm(2, least - 1e-6).ok).toBe(false);
    // Half a mouth, an arm, a lip, a gap, a wall, and half the height of the strip.
    const inside = 6.55 + 1.9 + 0.5 + 0.8 + 2.4 + 4;
    expect(clipPlate({ ...SIZES, radius: inside + 1e-6 }, PRINTER).ok).toBe(true);
    expect(clipPlate({ ...SIZES, radius: inside - 1e-6 }, PRINTER).ok).toBe(false);
  });
});

describe('a cap and a post to print', () => {
  it('the cap has a floor of 1.6 under its hexagon, and a wall of a line at least beside its corners', () => {
    const cap = valueIn(capPart({ flats: 13, clearance: -0.1, outside: 24, depth: 6 }, PRINTER));
    expect(cap.outer).toEqual([{ name: 'cap', from: 0, to: 7.6, r: (24 - 0.1) / 2, shape: 'round' }]);
    expect(cap.bores).toEqual([{ name: 'bore', from: 1.6, to: 7.6, r: expect.closeTo(13.1 / 2, 9), shape: 'hexagon' }]);
    const least = 2 * (13.1 / Math.sqrt(3) + 0.45) + 0.1;
    const outside = (D: number) => capPart({ flats: 13, clearance: -0.1, outside: D, depth: 6 }, PRINTER).ok;
    expect([outside(least + 1e-6), outside(least - 1e-6)]).toEqual([true, false]);
  });

  it('the post goes into its hole with its clearance, on a foot that is wider', () => {
    const post = valueIn(postPart({ hole: 6, clearance: 0.2, length: 30, screw: 3 }, PRINTER));
    const rod = post.outer.find(({ to }) => to >= 30);
    expect(2 * (rod?.r ?? 0)).toBeCloseTo(6 - 0.2 - 0.1, 9);
    expect(post.outer.some(({ from, r }) => from === 0 && r > (rod?.r ?? 0))).toBe(true);
    // 4 − 0.2 − 0.1 round a bore of 3 + 0.2 leaves a quarter of a millimetre.
    const thin = reasonIn(postPart({ hole: 4, clearance: 0.2, length: 30, screw: 3 }, PRINTER));
    expect(thin).toMatch(/0\.25.*0\.45/s);
  });
});
