/**
 * Where the three parts of each arrangement stand, in millimetres, z up from the top of the base, x from the axis.
 *
 * The parts are real in what matters (diameters, pitches, the way each thread joins two parts) and plain in the rest:
 * engaged lengths of 1.2 diameters and room for the drawn turns. A layout is made once for a pair; a pose of it
 * adds the motion.
 */
import { good, nestingRefusal, type Result, type Thread } from '../engine/index.ts';
import type { OptionOf } from '../input/choices.ts';

/** Turns each way for which the drawing leaves room. */
export const DRAWN_TURNS = 4;

export type Arrangement = OptionOf<'arrangement'>;

/** A stretch of thread on a part, z0 < z1, in the coordinates of the unturned layout. */
export interface Stretch {
  readonly z0: number;
  readonly z1: number;
}

export interface Layout {
  readonly arrangement: Arrangement;
  readonly A: Thread;
  readonly C: Thread;
  /** Extents of the picture. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly base: { readonly halfWidth: number; readonly stretch: Stretch };
  /** External thread A on the turned part; thread C on it, external or internal. */
  readonly turned: { readonly a: Stretch; readonly c: Stretch; readonly head: Stretch; readonly headHalf: number };
  /** Thread C on the carried part. */
  readonly carried: { readonly c: Stretch; readonly top: number; readonly halfWidth: number };
  readonly guide: { readonly x: number; readonly half: number };
}

export const layOut = (arrangement: Arrangement, A: Thread, C: Thread): Result<Layout> => {
  if (arrangement === 'nested') {
    const refusal = nestingRefusal(A, C);
    if (refusal !== undefined) return refusal;
  }
  const D = Math.max(A.d, C.d);
  const reachA = DRAWN_TURNS * A.L;
  const reachC = DRAWN_TURNS * C.L;
  const gap = 0.15 * D;
  const nutA = 1.2 * A.d;
  const nutC = 1.2 * C.d;
  const headHalf = 0.85 * D;
  const base = { halfWidth: 1.5 * D, stretch: { z0: -nutA, z1: 0 } };
  const guide = { x: -1.2 * D, half: 0.13 * D };
  const common = { arrangement, A, C, left: -1.6 * D, right: 1.6 * D, base, guide };

  if (arrangement === 'in line') {
    const head = { z0: reachA + gap, z1: reachA + gap + 0.7 * D };
    const bottomOfCarried = head.z1 + reachC + gap;
    const topOfStud = bottomOfCarried + nutC + reachC;
    return good({
      ...common,
      turned: { a: { z0: -nutA - reachA, z1: head.z0 }, c: { z0: head.z1, z1: topOfStud }, head, headHalf },
      carried: {
        c: { z0: bottomOfCarried, z1: topOfStud + reachC + gap },
        top: topOfStud + reachC + gap + 0.25 * D,
        halfWidth: 0.85 * D,
      },
      bottom: -nutA - 2 * reachA,
      top: topOfStud + reachC + 0.75 * D + netReach(A, C),
    });
  }
  if (arrangement === 'nested') {
    const head = { z0: reachA + gap, z1: reachA + gap + 0.5 * D };
    const nut = { z0: head.z1 - nutC, z1: head.z1 };
    const spindleTop = head.z1 + reachC + gap;
    return good({
      ...common,
      turned: { a: { z0: -nutA - reachA, z1: head.z0 }, c: nut, head, headHalf: 1.15 * D },
      carried: { c: { z0: nut.z0 - reachC, z1: spindleTop }, top: spindleTop + 0.35 * C.d, halfWidth: C.d / 2 },
      bottom: -nutA - 2 * reachA - 1.1 * D - 2 * netReach(A, C),
      top: spindleTop + 0.6 * D + netReach(A, C),
    });
  }
  const nutFloor = reachA + reachC + gap;
  const head = { z0: nutFloor + nutC + reachC + gap, z1: nutFloor + nutC + reachC + gap + 0.6 * D };
  return good({
    ...common,
    turned: {
      a: { z0: -nutA - reachA, z1: reachA },
      c: { z0: nutFloor - reachC, z1: head.z0 },
      head,
      headHalf: 1.0 * D,
    },
    carried: { c: { z0: nutFloor, z1: nutFloor + nutC }, top: nutFloor + nutC, halfWidth: 0.85 * D },
    bottom: -nutA - 2 * reachA,
    top: head.z1 + reachA + gap,
  });
};

/** How far the carried part goes each way over the drawn turns. */
export const netReach = (A: Thread, C: Thread): number => DRAWN_TURNS * Math.abs(C.h * C.L - A.h * A.L);

/** Motions that pose a layout, mm and turns. */
export interface Pose {
  readonly turned: number;
  readonly carried: number;
  /** Shift of the ridge of thread C, which is that of the carried part's groove: it follows z_t + h_C L_C n. */
  readonly ridgeC: number;
}

export const shift = (s: Stretch, dz: number): Stretch => ({ z0: s.z0 + dz, z1: s.z1 + dz });
export const rectangle = (x0: number, x1: number, z0: number, z1: number): Point[] => [
  [x0, z0],
  [x1, z0],
  [x1, z1],
  [x0, z1],
];

export type Point = readonly [x: number, y: number];
