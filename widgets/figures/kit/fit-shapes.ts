/**
 * The three parts of each arrangement with the reader's own lengths, in mm, z up from the top of the base, x from the axis, and
 * as SVG path data. Shoulders, flanges and caps are plain; diameters, pitches and threaded lengths are to scale. The lock is left out.
 *
 * Home of thread A: the shoulder of the turned part on the top of the base. Home of thread C: in line, the carried part on
 * the shoulder above the hexagon; nested, the head of the spindle on the sleeve; one spindle, the carried nut under the hexagon.
 */

import { type Point, rectangle, type Stretch } from '../../assembly/assembly-layout.ts';
import type { FitState } from '../../assembly/fit-state.ts';
import { diameters, outAt, type Thread } from '../../engine/index.ts';
import { type Frame, roundedEnd } from './assembly-paths.ts';
import { polygon } from './svg.ts';
import { opposite, threadEdge } from './thread-outline.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    /** Of whatever draws these parts: lengths so far apart that no scale holds them. */
    'lengths-of-no-one-scale': Readonly<Record<never, never>>;
  }
}

/** Sizes that do not move. */
interface Sizes {
  readonly D: number;
  readonly head: number;
  readonly headHalf: number;
  readonly baseHalf: number;
  readonly collar: number;
}

const sizesOf = (s: FitState): Sizes => {
  const D = Math.max(s.A.thread.d, s.C.thread.d);
  return { D, head: 0.6 * D, headHalf: 0.95 * D, baseHalf: 1.35 * D, collar: 0.25 * D };
};

/** Where shoulders and mouths stand when the threads are out by these lengths. */
const place = (s: FitState, out: { readonly A: number; readonly C: number }) => {
  const { head, collar, D } = sizesOf(s);
  const { A, C } = s;
  const screwA: Stretch = { z0: out.A - A.screw, z1: out.A };
  const nutA: Stretch = { z0: -A.nut, z1: 0 };
  if (s.arrangement === 'one spindle, two nuts') {
    const z0 = out.A + collar + C.nut + 0.1 * D;
    const screwC = { z0, z1: z0 + C.screw };
    const top = screwC.z1 - out.C;
    return { screwA, nutA, screwC, nutC: { z0: top - C.nut, z1: top }, head: { z0: screwC.z1, z1: screwC.z1 + head } };
  }
  const above = { z0: out.A, z1: out.A + head };
  if (s.arrangement === 'nested') {
    const shoulder = above.z1 + out.C;
    return {
      screwA,
      nutA,
      screwC: { z0: shoulder - C.screw, z1: shoulder },
      nutC: { z0: above.z1 - C.nut, z1: above.z1 },
      head: above,
    };
  }
  const mouth = above.z1 + out.C;
  return {
    screwA,
    nutA,
    screwC: { z0: above.z1, z1: above.z1 + C.screw },
    nutC: { z0: mouth, z1: mouth + C.nut },
    head: above,
  };
};

/** The engaged stretch of a thread. */
const overlap = (screw: Stretch, nut: Stretch): Stretch => ({
  z0: Math.max(screw.z0, nut.z0),
  z1: Math.max(Math.max(screw.z0, nut.z0), Math.min(screw.z1, nut.z1)),
});

/** Room for every position between the stops. */
export const extents = (s: FitState): { readonly top: number; readonly bottom: number; readonly half: number } => {
  const { D, baseHalf } = sizesOf(s);
  // Everything moves in proportion to the turns, so the ends of the travel are the ends of the picture.
  const ends = [s.travel.anticlockwise.n, s.travel.clockwise.n].map((n) =>
    place(s, { A: outAt(s.A, s.travel.A, n), C: outAt(s.C, s.travel.C, n) }),
  );
  const bore = s.arrangement === 'in line' ? Math.max(0, s.C.screw - s.C.nut) + 0.1 * D : 0;
  return {
    top: Math.max(...ends.flatMap((p) => [p.head.z1, p.nutC.z1 + bore, p.screwC.z1])) + 0.6 * D,
    bottom: Math.min(...ends.flatMap((p) => [p.screwA.z0, p.nutA.z0, p.screwC.z0, p.nutC.z0])) - 0.1 * D,
    half: baseHalf,
  };
};

type Outline = readonly (readonly [x: number, z: number])[];

/** The three parts as closed outlines, in mm. */
export interface Parts {
  readonly base: readonly Outline[];
  readonly turned: readonly Outline[];
  readonly carried: readonly Outline[];
}

/** The same and the bars of engagement as path data. */
export interface Shapes extends Record<keyof Parts, string> {
  readonly barA: string;
  readonly barC: string;
  readonly nutA: string;
  readonly nutC: string;
}

/** Columns of the two engagement bars, in picture units. */
export interface Columns {
  readonly A: number;
  readonly C: number;
  readonly width: number;
}

export const shapesOf = (s: FitState, frame: Frame, columns: Columns): Shapes => {
  const parts = partsOf(s, frame.scale);
  const p = stretchesOf(s);
  const bar = (x: number, z: Stretch) =>
    polygon(
      rectangle(x - columns.width / 2, x + columns.width / 2, z.z0, z.z1).map(
        ([px, z]): Point => [px, frame.y - z * frame.scale],
      ),
    );
  return {
    base: pathOf(parts.base, frame),
    turned: pathOf(parts.turned, frame),
    carried: pathOf(parts.carried, frame),
    barA: bar(columns.A, overlap(p.screwA, p.nutA)),
    barC: bar(columns.C, overlap(p.screwC, p.nutC)),
    nutA: bar(columns.A, p.nutA),
    nutC: bar(columns.C, p.nutC),
  };
};

/** Outlines in mm as path data in a picture. */
export const pathOf = (outlines: readonly Outline[], frame: Frame): string =>
  outlines
    .map((o) => polygon(o.map(([x, z]): Point => [frame.x + x * frame.scale, frame.y - z * frame.scale])))
    .join('');

/** Where the threads of screws and nuts, and the head, stand. */
export const stretchesOf = (s: FitState) => place(s, s.standing.out);

/**
 * At a scale, since ridges too fine to see are left out. `ball` is the radius of the ball at the tip, which sits in the carried
 * part to half; without it the tip is plain.
 */
export const partsOf = (s: FitState, scale: number, ball?: number): Parts => {
  const { D, headHalf, baseHalf, collar } = sizesOf(s);
  const { A, C, standing } = s;
  const p = stretchesOf(s);
  // Thread A is shared with the base, which stands; thread C with the carried part, which moves.
  const crestC = standing.motion;
  const edge = (thread: Thread, crest: number, z: Stretch, side: 1 | -1) => edgeOf(thread, crest, z, side, scale);
  const screw = (thread: Thread, crest: number, z: Stretch) => [
    ...edge(thread, crest, z, 1),
    ...[...edge(thread, crest, z, -1)].reverse(),
  ];
  const bore = (half: number, thread: Thread, crest: number, z: Stretch) =>
    ([1, -1] as const).map((side) => [
      [side * half, z.z0] as const,
      ...edge(thread, crest, z, side),
      [side * half, z.z1] as const,
    ]);
  const base = bore(baseHalf, A.thread, 0, p.nutA);
  const head = rectangle(-headHalf, headHalf, p.head.z0, p.head.z1);

  if (s.arrangement === 'nested') {
    const core = diameters(A.thread).d3 / 2;
    const clear = C.thread.d / 2 + 0.15 * (core - C.thread.d / 2);
    const foot = Math.min(p.screwA.z0, p.nutC.z0);
    const sleeve = (side: 1 | -1) => [
      ...(foot < p.screwA.z0 ? [[side * core, foot] as const, [side * core, p.screwA.z0] as const] : []),
      ...edge(A.thread, 0, p.screwA, side),
      [side * headHalf, p.head.z0] as const,
      [side * headHalf, p.head.z1] as const,
      ...[...edge(C.thread, crestC, p.nutC, side)].reverse(),
      [side * clear, p.nutC.z0] as const,
      [side * clear, foot] as const,
    ];
    const knob = 0.72 * C.thread.d;
    const top = p.screwC.z1 + 0.4 * C.thread.d;
    return {
      base,
      turned: [sleeve(1), sleeve(-1)],
      carried: [
        screw(C.thread, crestC, p.screwC),
        rectangle(-knob, knob, p.screwC.z1, top),
        roundedEnd(ball ?? 0.5 * knob, top, top + (ball ?? 0.2 * D)),
      ],
    };
  }
  if (s.arrangement === 'one spindle, two nuts') {
    const neck = Math.min(diameters(A.thread).d1, diameters(C.thread).d1) / 2;
    const flange = rectangle(-0.75 * D, 0.75 * D, p.screwA.z1, p.screwA.z1 + collar);
    return {
      base,
      turned: [
        screw(A.thread, 0, p.screwA),
        flange,
        rectangle(-neck, neck, p.screwA.z1 + collar, p.screwC.z0),
        screw(C.thread, crestC, p.screwC),
        head,
      ],
      carried: bore(0.95 * D, C.thread, crestC, p.nutC),
    };
  }
  const clear = 0.53 * C.thread.d;
  const ceiling = p.nutC.z0 + Math.max(C.nut, C.screw) + 0.1 * D;
  const top = ceiling + 0.25 * D;
  const half = 0.9 * D;
  const cap = (side: 1 | -1) => [
    [side * half, p.nutC.z0] as const,
    ...edge(C.thread, crestC, p.nutC, side),
    [side * clear, p.nutC.z1] as const,
    [side * clear, ceiling] as const,
    [0, ceiling] as const,
    [0, top] as const,
    [side * half, top] as const,
  ];
  return {
    base,
    turned: [screw(A.thread, 0, p.screwA), head, screw(C.thread, crestC, p.screwC)],
    carried: [cap(1), cap(-1), roundedEnd(ball ?? 0.3 * C.thread.d, top, top + (ball ?? 0.25 * D))],
  };
};

/** Where the names of the parts stand, z in mm. */
export const namesAt = (s: FitState): Record<'base' | 'turned' | 'carried', readonly [x: number, z: number]> => {
  const { D, headHalf, baseHalf } = sizesOf(s);
  const p = stretchesOf(s);
  const middle = (z: Stretch) => (z.z0 + z.z1) / 2;
  return {
    base: [baseHalf, middle(p.nutA)],
    turned: [headHalf, middle(p.head)],
    carried:
      s.arrangement === 'nested'
        ? [0.72 * s.C.thread.d, p.screwC.z1 + 0.2 * s.C.thread.d]
        : [(s.arrangement === 'in line' ? 0.9 : 0.95) * D, middle(p.nutC)],
  };
};

/** Finer ridges than this, in picture units, are a straight edge to the eye and thousands of points to the machine. */
const FINEST_RIDGE = 1.2;

const edgeOf = (
  thread: Thread,
  crest: number,
  z: Stretch,
  side: 1 | -1,
  scale: number,
): (readonly [number, number])[] =>
  thread.P * scale < FINEST_RIDGE
    ? [
        [(side * thread.d) / 2, z.z0],
        [(side * thread.d) / 2, z.z1],
      ]
    : threadEdge(thread, side === 1 ? crest : opposite(thread, crest), z.z0, z.z1).map(
        ([x, h]) => [side * x, h] as const,
      );
