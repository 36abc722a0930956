/**
 * The section of an adjuster as path data, from the outlines of its parts: the one drawing that section, fit figure and sheet show at
 * different sizes. Parts that are bored are cut; solid ones are seen from the front, with the lines of their crests. A post guides the carried part
 * where the lock holds.
 */
import { type Adjuster, partsOf, type Standing, standing } from '../../assembly/adjuster/adjuster.ts';
import { heightOf, type Part, type Role, reach, type Step } from '../../assembly/adjuster/part.ts';
import { type Crests, crestOf, crestsOf, type Point as SkinPoint, sectionOf } from '../../assembly/adjuster/surface.ts';
import type { Thread } from '../../engine/index.ts';
import { guideOf, reachesOf, springsOf, widestStep } from './adjuster-extras.ts';
import { type Point, polygon, polyline } from './svg.ts';
import { crestLines } from './thread-outline.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    /** Of whatever draws these parts: lengths so far apart that no scale holds them. */
    'lengths-of-no-one-scale': Readonly<Record<never, never>>;
  }
}

/** Scale in picture units per mm, and the place of x = 0, z = 0. */
export interface Frame {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface PartPaths {
  readonly shape: string;
  /** Crests and edges seen from the front; empty where the part is cut. */
  readonly lines: string;
  readonly cut: boolean;
}

export interface Picture {
  readonly base: PartPaths;
  readonly turned: PartPaths;
  readonly carried: PartPaths | undefined;
  readonly tip: string;
  readonly guide: string;
  readonly springs: string;
}

export interface Extents {
  readonly bottom: number;
  readonly top: number;
  /** From the axis to the outside of the widest part, ball or spring. */
  readonly half: number;
  /** From the axis to the outside of the guide. */
  readonly left: number;
}

/** Finer ridges than this, in picture units, are a straight edge to the eye and thousands of points to the machine. */
const FINEST_RIDGE = 1.2;

const largest = (a: Adjuster): number => Math.max(a.A.thread.d, a.C?.thread.d ?? 0);

/** Room for every position between the stops, or within so many turns each way. */
export const extentsOf = (a: Adjuster, most = Number.POSITIVE_INFINITY): Extents => {
  const ends = [Math.max(a.anticlockwise.n, -most), Math.min(a.clockwise.n, most)].map((n) => standing(a, n));
  const { left, right } = reachesOf(a);
  const ball = a.tip.kind === 'ball' ? a.tip.diameter : 0;
  return {
    bottom: Math.min(0, ...ends.flatMap(({ at, height }) => [at.turned, at.carried, height - ball])),
    top: Math.max(...ends.flatMap((s) => [s.height, s.at.turned + heightOf(a.turned)])),
    half: right,
    left,
  };
};

/** The frame in which the stretch of z fills a height, the axis at x, with so much room right of it. */
export const frameIn = ({ bottom, top, half, left }: Extents, height: number, x: number, right: number): Frame => {
  const scale = Math.min(height / (top - bottom), (x - 3) / left, right / half);
  return { scale, x, y: height / 2 + ((top + bottom) / 2) * scale };
};

export const pictureOf = (a: Adjuster, s: Standing, frame: Frame, locked = true): Picture => {
  const place = ([x, z]: SkinPoint): Point => [frame.x + x * frame.scale, frame.y - z * frame.scale];
  const shape = (outlines: readonly (readonly SkinPoint[])[]) => outlines.map((o) => polygon(o.map(place))).join('');
  const lines = (list: readonly (readonly SkinPoint[])[]) => list.map((l) => polyline(l.map(place))).join('');
  const crests = crestsOf(a);
  const plain = (thread: Thread) => thread.P * frame.scale < FINEST_RIDGE;
  const paint = (part: Part, role: Role): PartPaths => {
    const options = { crests: crests[role], plain };
    // Turned clockwise seen from above.
    const angle = role === 'turned' || (role === 'carried' && !locked) ? -2 * Math.PI * s.n : 0;
    const at = s.at[role];
    const up = (points: readonly SkinPoint[]) => points.map(([r, z]): SkinPoint => [r, z + at]);
    const cut = part.bores.length > 0;
    if (cut) return { cut, lines: '', shape: shape(sectionOf(part, angle, options).map(up)) };
    const faced = { ...part, outer: part.outer.map((step) => seen(step, angle)) };
    return {
      cut,
      shape: shape(sectionOf(faced, angle, options).map(up)),
      lines: lines(
        [
          ...part.outer.flatMap((step) => edgesOf(step, angle)),
          ...part.outer.flatMap((step) => crestsSeen(step, part, crests[role], angle, plain)),
        ].map(up),
      ),
    };
  };
  return {
    base: paint(a.base, 'base'),
    turned: paint(a.turned, 'turned'),
    carried: a.carried && paint(a.carried, 'carried'),
    tip: a.tip.stands > 0 ? shape([tipOf(a, s)]) : '',
    guide: locked ? shape(guideOf(a, s, extentsOf(a).top)) : '',
    springs: lines(springsOf(a, s)),
  };
};

const SIDES = { round: 0, hexagon: 6, square: 4 } as const;

/** Corners of a prism from the front at an angle: x of each, and whether it faces the reader. */
const cornersOf = (step: Step, angle: number): { readonly x: number; readonly front: boolean }[] =>
  Array.from({ length: SIDES[step.shape] }, (_, i) => {
    const theta = angle + (2 * Math.PI * (i + 0.5)) / SIDES[step.shape];
    return { x: reach(step) * Math.cos(theta), front: Math.sin(theta) < -1e-9 };
  });

/** A prism as wide as it looks at this angle. */
const seen = (step: Step, angle: number): Step =>
  step.shape === 'round'
    ? step
    : { ...step, shape: 'round', r: Math.max(...cornersOf(step, angle).map((c) => Math.abs(c.x))) };

const edgesOf = (step: Step, angle: number): (readonly SkinPoint[])[] =>
  cornersOf(step, angle)
    .filter((c) => c.front)
    .map(({ x }) => [
      [x, step.from],
      [x, step.to],
    ]);

const crestsSeen = (
  step: Step,
  part: Part,
  crests: Crests,
  angle: number,
  plain: (thread: Thread) => boolean,
): readonly (readonly SkinPoint[])[] => {
  const { thread } = step;
  if (!thread || plain(thread)) return [];
  const crest = crestOf(part, step, crests);
  return crestLines(thread, crest - (thread.h * thread.L * angle) / (2 * Math.PI), step.from, step.to);
};

const ROUND = 12;

/** The tip as an outline: a ball whole, the rest as it rises from the part. */
const tipOf = (a: Adjuster, s: Standing): readonly SkinPoint[] => {
  const { tip } = a;
  const top = s.height;
  const foot = top - tip.stands;
  if (tip.kind === 'ball') {
    const r = tip.diameter / 2;
    return Array.from({ length: 4 * ROUND }, (_, i): SkinPoint => {
      const t = (2 * Math.PI * i) / (4 * ROUND);
      return [r * Math.cos(t), top - r + r * Math.sin(t)];
    });
  }
  const half = 0.3 * largest(a);
  if (tip.kind === 'cone')
    return [
      [-half, foot],
      [half, foot],
      [0, top],
    ];
  if (tip.kind === 'flat')
    return [
      [-half, foot],
      [half, foot],
      [half, top],
      [-half, top],
    ];
  return Array.from({ length: ROUND + 1 }, (_, i): SkinPoint => {
    const t = (Math.PI * i) / ROUND;
    return [half * Math.cos(t), foot + tip.stands * Math.sin(t)];
  });
};

/** Where the names of parts stand, beside them: x and z in mm. */
export const namesAt = (a: Adjuster, s: Standing): (readonly [Role, SkinPoint])[] =>
  partsOf(a).map((part) => {
    const step = widestStep(part);
    return [part.role, [step.shape === 'square' ? step.r : reach(step), (step.from + step.to) / 2 + s.at[part.role]]];
  });

const SHAPES = ['guide', 'springs', 'base', 'turned', 'turnedLines', 'carried', 'carriedLines', 'tip'] as const;

const pathsOf = (p: Picture): Readonly<Record<(typeof SHAPES)[number], string>> => ({
  guide: p.guide,
  springs: p.springs,
  base: p.base.shape,
  turned: p.turned.shape,
  turnedLines: p.turned.lines,
  carried: p.carried?.shape ?? '',
  carriedLines: p.carried?.lines ?? '',
  tip: p.tip,
});

/** The parts as markup: solid ones over those that are cut. `id` is that of the picture’s hatchings, `symbols` what a part stands for on its page. */
export const partsHtml = (p: Picture, id: string, symbols: Partial<Record<Role, string>> = {}): string => {
  const d = pathsOf(p);
  const part = (role: Role, { cut, lines }: PartPaths) =>
    `<path class="part ${role}${cut ? '' : ' solid'}" ${symbols[role] === undefined ? '' : `data-sym="${symbols[role]}" `}data-path="${role}" d="${d[role]}"${cut ? ` fill="url(#${id}-${role})"` : ''}/>${role === 'base' && lines === '' ? '' : `<path class="crests" data-path="${role}Lines" d="${lines}"/>`}`;
  const roles = (['base', 'turned', 'carried'] as const).flatMap((role) => {
    const paths = p[role];
    return paths ? [[role, paths] as const] : [];
  });
  const drawn = [...roles.filter(([, x]) => x.cut), ...roles.filter(([, x]) => !x.cut)];
  return (
    `<path class="part guide" data-path="guide" d="${d.guide}"/><path class="adjuster-springs" data-path="springs" d="${d.springs}"/>` +
    drawn.map(([role, x]) => part(role, x)).join('') +
    `<path class="part ${p.carried ? 'carried' : 'turned'} solid" data-path="tip" d="${d.tip}"/>`
  );
};

/** Moves the parts of a picture to where they stand now. */
export const updateParts = (stage: ParentNode, p: Picture): void => {
  for (const [name, d] of Object.entries(pathsOf(p)))
    stage.querySelector(`[data-path="${name}"]`)?.setAttribute('d', d);
};
