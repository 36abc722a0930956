/**
 * Coupons: the ladder of hexagon holes from which the offsets of a printer are read, and the strip from which the modulus of a print is.
 *
 * Both are printed as drawn, with no offset in them: they are what is measured. Rungs rise from the width that the piece has, which goes into none of the first; the corner
 * beside the narrowest is cut off, so that one knows where to begin. mm.
 */
import { hexagon, type Place, type Plate } from './plate.ts';

const RUNGS = 8;
const WALL = 2;
/** A plate this high shows every fault of a wall and takes minutes. */
const HIGH = 5;

export interface Ladder {
  readonly plate: Plate;
  /** Widths across flats as drawn, rising, and the middles of the holes. */
  readonly rungs: readonly { readonly width: number; readonly at: Place }[];
  /** Width of the plate across the row, as drawn: what the caliper reads for outsides. */
  readonly across: number;
}

/** Rungs from `width` up, `step` apart. */
export const ladderOf = (width: number, step: number): Ladder => {
  const widest = width + step * (RUNGS - 1);
  // Whole millimetres, so that the caliper has a round number to compare with.
  const across = Math.ceil(widest + 2 * WALL);
  const pitch = (2 * widest) / Math.sqrt(3) + WALL;
  const rungs = Array.from({ length: RUNGS }, (_, i) => ({
    width: width + step * i,
    at: [WALL / 2 + pitch * (i + 0.5), across / 2] as const,
  }));
  const long = pitch * RUNGS + WALL;
  const cut = across / 4;
  return {
    plate: {
      outline: [
        [cut, 0],
        [long, 0],
        [long, across],
        [0, across],
        [0, cut],
      ],
      holes: rungs.map((rung) => hexagon(rung.width, rung.at)),
      height: HIGH,
    },
    rungs,
    across,
  };
};

const BLOCK = { long: 20, wide: 12 };

/** A strip to hang a weight on: a block to clamp, a rounded root, the free length, and a notch where the thread hangs. */
export const stripCoupon = (free: number, thickness: number, height: number): Plate => {
  const [half, r] = [thickness / 2, Math.min(thickness / 2, 2)];
  const root = (side: 1 | -1): Place[] =>
    Array.from({ length: 7 }, (_, i): Place => {
      const angle = ((Math.PI / 2) * i) / 6;
      return [r - r * Math.sin(angle), side * (half + r - r * Math.cos(angle))];
    });
  // From the free end towards the block: the arc begins level with the strip.
  const lower = root(-1);
  const upper = [...root(1)].reverse();
  return {
    outline: [
      [-BLOCK.long, -BLOCK.wide / 2],
      [0, -BLOCK.wide / 2],
      ...[...lower].reverse(),
      [free, -half],
      [free + 3, -half],
      [free + 3, half],
      [free, half],
      ...[...upper].reverse(),
      [0, BLOCK.wide / 2],
      [-BLOCK.long, BLOCK.wide / 2],
    ],
    holes: [],
    height,
  };
};
