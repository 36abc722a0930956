/**
 * A clip that snaps over a hexagon from the side and holds two springs: two arms along a pair of flats with lips behind its far corners, a back, and beside each arm, with a gap
 * to it, a limb with an open slot in which a spring’s strip stands and its wedge can’t pull through.
 *
 * The hexagon stands at the origin with a pair of flats along x; the mouth opens towards +x. Widths are given as they are to come out; they are drawn with the offsets
 * of the printer. mm.
 */
import { bad, drawnHole, drawnOutside, good, mm, type Result } from '../../engine/index.ts';
import type { Place, Plate } from './plate.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'clip-arm-short': { readonly length: number; readonly least: number };
    'clip-limb-inside': { readonly radius: number; readonly least: number };
    'wall-below-line': { readonly wall: number; readonly line: number };
  }
}

/** What the printer does to widths, mm; and its line, thinner than which no wall comes out. */
export interface Printer {
  readonly holes: number;
  readonly outsides: number;
  readonly line: number;
}

export interface ClipSizes {
  /** Hexagon across flats as measured, and clearance on it across; below zero it grips. */
  readonly flats: number;
  readonly clearance: number;
  readonly arm: { readonly length: number; readonly thickness: number };
  readonly lip: { readonly reach: number; readonly lean: number };
  readonly height: number;
  /** Springs at this radius: thickness and printed height of their strip. */
  readonly radius: number;
  readonly strip: { readonly thickness: number; readonly height: number };
}

/** Between arm and limb, beyond what the lip is pushed aside. */
const GAP = 0.8;
/** Of the limb, on each side of a slot and below it. */
const WALL = 2.4;
const SLIDES = 0.2;
/** Back of a lip: along the hexagon’s own corner, which leans 60° from its flat. */
export const LIP_BACK = Math.PI / 3;
const LIP_FLAT = 0.4;

const leastArm = (flats: number): number => (Math.sqrt(3) / 2) * flats;

export const clipPlate = (c: ClipSizes, printer: Printer): Result<Plate> => {
  const [o_h, o_u] = [mm(printer.holes), mm(printer.outsides)];
  const mouth = drawnHole.of({ w_n: mm(c.flats), c_n: mm(c.clearance), o_h });
  if (!mouth.ok) return mouth;
  const thick = drawnOutside.of({ w_n: mm(c.arm.thickness), c_n: mm(0), o_u });
  if (!thick.ok) return thick;
  const slot = drawnHole.of({ w_n: mm(c.strip.thickness), c_n: mm(SLIDES), o_h });
  if (!slot.ok) return slot;
  const [s, t, w] = [mouth.value.w_d, thick.value.w_d, slot.value.w_d];
  if (!(t >= printer.line)) return bad('wall-below-line', { wall: t, line: printer.line });
  // The corner of the hexagon needs its room before the back.
  if (!(c.arm.length >= leastArm(s))) return bad('clip-arm-short', { length: c.arm.length, least: leastArm(s) });
  const half = s / 2;
  const lipAt = s / (2 * Math.sqrt(3));
  const root = lipAt - c.arm.length;
  const { reach: lip, lean } = c.lip;
  const crest = lipAt + lip / Math.tan(LIP_BACK);
  const tip = crest + LIP_FLAT + lip / Math.tan(lean);
  const inside = half + t + lip + GAP;
  const deep = c.radius - c.strip.height / 2;
  if (!(deep - inside >= WALL))
    return bad('clip-limb-inside', { radius: c.radius, least: inside + WALL + c.strip.height / 2 });
  const end = c.radius + c.strip.height / 2;
  const front = w / 2 + WALL;
  const back = root - 1.5 * t;
  const r = Math.min(t / 2, 0.4 * half);
  const fillet = Array.from({ length: 7 }, (_, i): Place => {
    const angle = ((Math.PI / 2) * i) / 6;
    return [root + r - r * Math.sin(angle), half - r + r * Math.cos(angle)];
  });
  // From the middle of the back round the upper side, inside first: inside of the arm, lip, outside of the arm, limb with its slot, back.
  const upper: Place[] = [
    ...[...fillet].reverse(),
    [lipAt, half],
    [crest, half - lip],
    [crest + LIP_FLAT, half - lip],
    [tip, half],
    [tip, half + t],
    [root, half + t],
    [root, inside],
    [front, inside],
    [front, end],
    [w / 2, end],
    [w / 2, deep],
    [-w / 2, deep],
    [-w / 2, end],
    [-front, end],
    [-front, Math.min(end, inside + 2.5 * t)],
    [back, Math.min(end, inside + 2.5 * t)],
  ];
  const lower = [...upper].reverse().map(([x, y]): Place => [x, -y]);
  return good({ outline: [...upper, ...lower], holes: [], height: c.height });
};
