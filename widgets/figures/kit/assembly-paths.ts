/**
 * A posed layout as SVG path data, in picture coordinates. Ridges of thread A stand still in space, since base and turned
 * part share them: turning moves only the ends of the turned part along. Ridges of thread C move with the groove
 * of the carried part.
 */

import {
  type Layout,
  netReach,
  type Point,
  type Pose,
  rectangle,
  type Stretch,
  shift,
} from '../../assembly/assembly-layout.ts';
import { diameters, type Thread } from '../../engine/index.ts';
import { polygon, polyline } from './svg.ts';
import { crestLines, opposite, threadEdge } from './thread-outline.ts';

export interface Paths {
  readonly base: string;
  readonly turned: string;
  readonly turnedLines: string;
  readonly carried: string;
  readonly carriedLines: string;
  readonly guide: string;
}

/** Scale in picture units per mm, and the place of x = 0, z = 0. */
export interface Frame {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export const pathsOf = (layout: Layout, pose: Pose, frame: Frame, n: number, locked: boolean): Paths => {
  const place = ([x, z]: readonly [number, number]): Point => [frame.x + x * frame.scale, frame.y - z * frame.scale];
  const shape = (...polygons: (readonly (readonly [number, number])[])[]) =>
    polygons.map((p) => polygon(p.map(place))).join('');
  const lines = (...list: (readonly (readonly [number, number])[])[]) =>
    list.map((l) => polyline(l.map(place))).join('');
  const { A, C, base, turned, carried, guide } = layout;

  const a = shift(turned.a, pose.turned);
  const c = shift(turned.c, pose.turned);
  const head = shift(turned.head, pose.turned);
  const nut = shift(carried.c, pose.carried);
  const carriedTop = carried.top + pose.carried;
  const crestA = 0;
  const crestC = turned.c.z0 + pose.ridgeC;
  const bore = (half: number, thread: Thread, crest: number, s: Stretch) => [
    [half, s.z0] as const,
    ...edge(thread, crest, s, 1),
    [half, s.z1] as const,
  ];
  const boreLeft = (half: number, thread: Thread, crest: number, s: Stretch) => [
    [-half, s.z0] as const,
    ...edge(thread, crest, s, -1),
    [-half, s.z1] as const,
  ];
  const screw = (thread: Thread, crest: number, s: Stretch) => [
    ...edge(thread, crest, s, 1),
    ...[...edge(thread, crest, s, -1)].reverse(),
  ];
  const baseShape = shape(
    bore(base.halfWidth, A, crestA, base.stretch),
    boreLeft(base.halfWidth, A, crestA, base.stretch),
  );
  const headLines = edgesOfHead(turned.headHalf, n).map((x) => [[x, head.z0] as const, [x, head.z1] as const]);

  if (layout.arrangement === 'nested') {
    const clear = C.d / 2 + 0.06 * C.d;
    const tongue = 0.55 * diameters(C).d1 * 0.5;
    // The tongue stays in its slot over the whole drawn travel.
    const reach = netReach(A, C);
    const bridge = layout.bottom + 2 * reach + 0.3 * A.d;
    const thick = 0.45 * A.d;
    const sleeve = (side: 1 | -1) => [
      ...edge(A, crestA, a, side),
      [side * turned.headHalf, head.z0] as const,
      [side * turned.headHalf, head.z1] as const,
      ...[...edge(C, crestC, c, side)].reverse(),
      [side * clear, c.z0] as const,
      [side * clear, a.z0] as const,
    ];
    const columns = [1, -1].flatMap((s) => [
      rectangle(s * base.halfWidth, s * (base.halfWidth - 0.25 * A.d), bridge + thick, base.stretch.z0),
    ]);
    const slot = locked ? tongue : tongue * 2.2;
    const bridges = [1, -1].map((s) => rectangle(s * slot, s * base.halfWidth, bridge, bridge + thick));
    return {
      base: baseShape + shape(...columns, ...bridges),
      turned: shape(sleeve(1), sleeve(-1)),
      turnedLines: '',
      carried:
        shape([...screw(C, crestC, nut)]) +
        shape(
          rectangle(-tongue, tongue, bridge - reach - 0.15 * A.d + pose.carried, nut.z0),
          roundedEnd(diameters(C).d1 / 2, nut.z1, carriedTop),
        ),
      carriedLines: lines(...crestLines(C, crestC, nut.z0, nut.z1)),
      guide: '',
    };
  }

  const inLine = layout.arrangement === 'in line';
  const ear = guide.x - guide.half - 0.16 * A.d;
  const hole = guide.half * 1.12;
  const cap = inLine
    ? [
        [
          ...edge(C, crestC, nut, 1),
          [0, nut.z1] as const,
          [0, carriedTop] as const,
          [carried.halfWidth, carriedTop] as const,
          [carried.halfWidth, nut.z0] as const,
        ],
        [
          ...edge(C, crestC, nut, -1),
          [0, nut.z1] as const,
          [0, carriedTop] as const,
          [guide.x + hole, carriedTop] as const,
          [guide.x + hole, nut.z0] as const,
        ],
        rectangle(ear, guide.x - hole, nut.z0, carriedTop),
      ]
    : [
        [...edge(C, crestC, nut, 1), [carried.halfWidth, nut.z1] as const, [carried.halfWidth, nut.z0] as const],
        [...edge(C, crestC, nut, -1), [guide.x + hole, nut.z1] as const, [guide.x + hole, nut.z0] as const],
        rectangle(ear, guide.x - hole, nut.z0, nut.z1),
      ];
  const core = Math.min(diameters(A).d1, diameters(C).d1) / 2;
  const neck = inLine ? [] : [rectangle(-core, core, a.z1, c.z0)];
  return {
    base: baseShape,
    turned: shape(
      screw(A, crestA, a),
      ...neck,
      rectangle(-turned.headHalf, turned.headHalf, head.z0, head.z1),
      screw(C, crestC, c),
    ),
    turnedLines: lines(...crestLines(A, crestA, a.z0, a.z1), ...crestLines(C, crestC, c.z0, c.z1), ...headLines),
    carried: shape(...cap) + (inLine ? shape(roundedEnd(0.3 * C.d, carriedTop, carriedTop + 0.3 * C.d)) : ''),
    carriedLines: '',
    guide: locked ? shape(rectangle(guide.x - guide.half, guide.x + guide.half, 0, layout.top)) : '',
  };
};

const edge = (thread: Thread, crest: number, s: Stretch, side: 1 | -1): (readonly [number, number])[] =>
  threadEdge(thread, side === 1 ? crest : opposite(thread, crest), s.z0, s.z1).map(([x, z]) => [side * x, z] as const);

/** A rounded end of half width r from z0 to z1. */
export const roundedEnd = (r: number, z0: number, z1: number): (readonly [number, number])[] =>
  Array.from({ length: 13 }, (_, i) => {
    const t = (Math.PI * i) / 12;
    return [r * Math.cos(t), z0 + (z1 - z0) * Math.sin(t)] as const;
  });

/** Where the front edges of the hexagon stand, seen from the side, at n turns clockwise from above. */
const edgesOfHead = (half: number, n: number): number[] => {
  const edges: number[] = [];
  for (let i = 0; i < 6; i++) {
    const a = (Math.PI / 3) * i - 2 * Math.PI * n;
    if (Math.sin(a) < 0) edges.push(half * Math.cos(a));
  }
  return edges;
};
