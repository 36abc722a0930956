/**
 * A knob to print for a divided turn: a wheel that goes over the hexagon of the turned part, with a notch in its rim for every mark. mm.
 *
 * A notch is a vee of 90° (common practice, no source); that of mark 0 goes four times as deep as the others, every fifth twice, every tenth three times, so that one can count. Notches stand two printed lines apart at the
 * least, and the knob is as large as that asks for.
 */
import { bad, drawnHole, good, mm, type Result } from '../../engine/index.ts';
import type { Printer } from './clip-plate.ts';
import { hexagon, type Place, type Plate } from './plate.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'knob-too-large': { readonly marks: number; readonly diameter: number; readonly most: number };
  }
}

/** Round the hexagon and under the deepest notch. */
const WALL = 3;
const HEIGHT = 8;
const LARGEST = 200;
/** Of a notch, in printed lines. */
const APART = 2;

export const knobPlate = (
  k: { readonly flats: number; readonly clearance: number; readonly marks: number },
  { holes, line }: Printer,
): Result<Plate> => {
  const pocket = drawnHole.of({ w_n: mm(k.flats), c_n: mm(k.clearance), o_h: mm(holes) });
  if (!pocket.ok) return pocket;
  const hole = pocket.value.w_d;
  const depth = (mark: number): number => line * (mark === 0 ? 4 : mark % 10 === 0 ? 3 : mark % 5 === 0 ? 2 : 1);
  const least = hole / Math.sqrt(3) + WALL + 4 * line;
  // A notch is twice as wide as it is deep; the deepest stand beside one of a line.
  const rim = Math.max(least, (k.marks * APART * 2 * line) / (2 * Math.PI));
  if (!(2 * rim <= LARGEST)) return bad('knob-too-large', { marks: k.marks, diameter: 2 * rim, most: LARGEST });
  const step = (2 * Math.PI) / k.marks;
  const around = Math.max(1, Math.ceil(96 / k.marks));
  const at = (angle: number, r: number): Place => [r * Math.cos(angle), r * Math.sin(angle)];
  // Deep ones are narrower than 90° where they would cut their neighbours.
  const half = (mark: number): number => Math.min(depth(mark % k.marks), 0.45 * step * rim) / rim;
  const outline = Array.from({ length: k.marks }, (_, mark): readonly Place[] => {
    const [from, to] = [mark * step + half(mark), (mark + 1) * step - half(mark + 1)];
    const land = Array.from({ length: around + 1 }, (_, i) => at(from + ((to - from) * i) / around, rim));
    return [at(mark * step, rim - depth(mark)), ...land];
  }).flat();
  return good({ outline, holes: [hexagon(hole)], height: HEIGHT });
};
