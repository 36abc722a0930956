/**
 * A printed row of rings or ovals as a plate: one outline round the row, joined by necks, a hole in each, and a wedge at each end that slides into a slot. mm.
 *
 * Neighbours touch along their straight; rings, which touch in a point, are joined by a neck two thicknesses wide, which stiffens them a little (not counted).
 */
import type { OvalDesign } from '../../engine/index.ts';
import type { Place, Plate } from './plate.ts';

const ARC = 24;
const WEDGE = { flare: 1.5, straight: 1, half: 2 };

export const ringPlate = ({ cells, R, h, t }: OvalDesign, height: number): Plate => {
  const [outer, inner] = [R + t / 2, R - t / 2];
  const [stem, neck] = [t / 2, Math.max(h, t)];
  const arc = (r: number, middle: number): Place[] =>
    Array.from({ length: 2 * ARC + 1 }, (_, i): Place => {
      const angle = -Math.PI / 2 + (Math.PI * i) / (2 * ARC);
      return [h + r * Math.cos(angle), middle + r * Math.sin(angle)];
    });
  /** Half the height of a ring from outside, at x. */
  const rise = (x: number): number => Math.sqrt(outer ** 2 - Math.max(0, x - h) ** 2);
  const middles = Array.from({ length: cells }, (_, cell) => (cell + 0.5) * (2 * R + t));
  // Up the right side: each ring from its lower joint to its upper one, where the outline goes straight on to the next.
  const sides = middles.flatMap((middle, cell): Place[] => {
    const [low, high] = [cell === 0 ? stem : neck, cell === cells - 1 ? stem : neck];
    return [
      [low, middle - rise(low)],
      ...arc(outer, middle).filter(([x, y]) => x > (y < middle ? low : high)),
      [high, middle + rise(high)],
    ];
  });
  const wedge = (y: number, out: 1 | -1): Place[] => [
    [WEDGE.half * t, y + out * WEDGE.flare * t],
    [WEDGE.half * t, y + out * (WEDGE.flare + WEDGE.straight) * t],
  ];
  const [[, first], [, last]] = [sides[0] as Place, sides.at(-1) as Place];
  const right = [...wedge(first, -1).reverse(), ...sides, ...wedge(last, 1)];
  const closed = (half: readonly Place[]): Place[] => [...half, ...[...half].reverse().map(([x, y]): Place => [-x, y])];
  return { outline: closed(right), holes: middles.map((middle) => closed(arc(inner, middle))), height };
};
