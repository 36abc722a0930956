/**
 * The section of an adjuster as path data, from the outlines of its parts: the one drawing that section, fit figure and sheet show at
 * different sizes. Parts that are bored are cut, and behind the cut stands the far wall of the bore with its edges; solid ones are seen from the
 * front, with the lines of their crests. Threads are drawn by their profile, chamfered at free ends; where that would be too fine to see, by the
 * convention of ISO 6410-1: a thick line at the crests, a thin one at the roots. A post guides the carried part where the lock holds.
 */
import { type Adjuster, partsOf, type Standing } from '../../assembly/adjuster/adjuster.ts';
import { heightOf, type Part, pointOf, type Role, reach, type Step, widestStep } from '../../assembly/adjuster/part.ts';
import { type Crests, crestOf, crestsOf, type Point as SkinPoint, sectionOf } from '../../assembly/adjuster/surface.ts';
import { diameters, mm, type Thread } from '../../engine/index.ts';
import { type Extents, guideOf, springsOf, tipOf } from './adjuster-extras.ts';
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
  /** Thin lines on it: crests and edges seen from the front, roots of threads drawn by convention. */
  readonly lines: string;
  /** The far wall of its bores, and the edges and crests on it; empty where the part is not cut. */
  readonly wall: string;
  readonly behind: string;
  readonly cut: boolean;
}

export interface Picture {
  readonly base: PartPaths;
  readonly turned: PartPaths;
  readonly carried: PartPaths | undefined;
  readonly tip: string;
  readonly guide: string;
  /** A post that no lock was stated for is drawn dashed. */
  readonly guideAssumed: boolean;
  readonly springs: string;
}

/** Ridges finer than this, in picture units, are drawn by convention: an outline of them would be a grey edge. */
const FINEST_RIDGE = 4;

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
  const fine = (thread: Thread) => thread.P * frame.scale < FINEST_RIDGE;
  const byProfile = ({ thread }: Step) => thread !== undefined && !fine(thread);
  const paint = (part: Part, role: Role): PartPaths => {
    const options = { crests: crests[role] };
    // Turned clockwise seen from above.
    const angle = role === 'turned' || (role === 'carried' && !locked) ? -2 * Math.PI * s.n : 0;
    const at = s.at[role];
    const up = (points: readonly SkinPoint[]) => points.map(([r, z]): SkinPoint => [r, z + at]);
    const cut = part.bores.length > 0;
    // By convention the thick lines stand at the crests: the major diameter of a screw, the minor one of a nut.
    const drawn = {
      ...part,
      outer: part.outer.map((step) => bySize(cut ? step : seen(step, angle), fine, 'screw')),
      bores: part.bores.map((step) => bySize(step, fine, 'nut')),
    };
    const outline = chamfered(sectionOf(drawn, angle, options), part, fine).map(up);
    const roots = [...part.outer, ...part.bores].flatMap((step) => rootsOf(step, part, fine));
    if (cut)
      return {
        cut,
        shape: shape(outline),
        lines: lines(roots.map(up)),
        wall: shape(part.bores.map((step) => up(boreOutline(step)))),
        behind: lines(
          [
            ...drawn.bores.flatMap(edgesAcross),
            ...part.bores.filter(byProfile).flatMap((step) => crestLinesOf(step, part, crests[role], angle, 'nut')),
          ].map(up),
        ),
      };
    return {
      cut,
      wall: '',
      behind: '',
      shape: shape(outline),
      lines: lines(
        [
          ...roots,
          ...part.outer.flatMap((step) => edgesOf(step, angle)),
          ...socketDashes(part, angle),
          ...part.outer.filter(byProfile).flatMap((step) => crestLinesOf(step, part, crests[role], angle, 'screw')),
        ].map(up),
      ),
    };
  };
  return {
    base: paint(a.base, 'base'),
    turned: paint(a.turned, 'turned'),
    carried: a.carried && paint(a.carried, 'carried'),
    tip: shape([tipSeen(a, s)]),
    guide: locked ? shape(guideOf(a, s)) : '',
    guideAssumed: a.lock.kind === 'assumed',
    springs: lines(springsOf(a, s)),
  };
};

const rectangle = (x0: number, x1: number, z0: number, z1: number): SkinPoint[] => [
  [x0, z0],
  [x1, z0],
  [x1, z1],
  [x0, z1],
];

/** A bore as it is seen through the cut; a drilled one ends in a cone. */
const boreOutline = (step: Step): SkinPoint[] => {
  const { r, from, to, point } = step;
  const apex: SkinPoint = [0, (point === 'up' ? to : from) + pointOf(step)];
  const [a, b, c, d] = rectangle(-r, r, from, to) as [SkinPoint, SkinPoint, SkinPoint, SkinPoint];
  return point === 'up' ? [a, b, c, apex, d] : point === 'down' ? [a, apex, b, c, d] : [a, b, c, d];
};

/** The socket of a screw, hidden in its head: dashed, by lines so short. */
const DASH = 0.9;
const socketDashes = ({ socket, ...part }: Part, angle: number): (readonly SkinPoint[])[] => {
  if (!socket) return [];
  const top = heightOf(part);
  const bottom = top - socket.depth;
  const step: Step = { name: 'bore', from: bottom, to: top, r: socket.flats / 2, shape: 'hexagon' };
  const xs = [...new Set(cornersOf(step, angle).map(({ x }) => Number(x.toFixed(6))))];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const run = (a: SkinPoint, b: SkinPoint): SkinPoint[][] => {
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const at = (t: number): SkinPoint => {
      const share = Math.min(1, t / (long || 1));
      return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
    };
    return Array.from({ length: Math.ceil(long / (1.6 * DASH)) }, (_, i) => [
      at(1.6 * DASH * i),
      at(1.6 * DASH * i + DASH),
    ]);
  };
  return [...run([left, bottom], [right, bottom]), ...xs.flatMap((x) => run([x, top], [x, bottom]))];
};

const minorOf = (thread: Thread): number => diameters(thread).d1 / 2;

/** A thread too fine to be drawn by its profile, as a plain step at its crests. */
const bySize = (step: Step, fine: (thread: Thread) => boolean, of: 'screw' | 'nut'): Step => {
  const { thread, ...plain } = step;
  return thread && fine(thread) ? { ...plain, r: of === 'screw' ? thread.d / 2 : minorOf(thread) } : step;
};

/** The thin lines of a thread drawn by convention, at its roots, both sides of the axis. */
const rootsOf = (step: Step, part: Part, fine: (thread: Thread) => boolean): (readonly SkinPoint[])[] => {
  const { thread, from, to } = step;
  if (!thread || !fine(thread)) return [];
  const r = part.outer.includes(step) ? minorOf(thread) : thread.d / 2;
  return [-r, r].map((x) => [
    [x, from],
    [x, to],
  ]);
};

/**
 * Threads of a part made to begin: a chamfer of 45° to the roots at each free end of a screw, a countersink of 45° at each open end of a nut
 * (common practice, no source). Points of the profile are only drawn in, so that its ridges stay where they were.
 */
const chamfered = (
  outlines: readonly (readonly SkinPoint[])[],
  part: Part,
  fine: (thread: Thread) => boolean,
): readonly (readonly SkinPoint[])[] => {
  const top = heightOf(part);
  const free = (step: Step) =>
    ([step.from < 1e-9 ? 0 : undefined, step.to > top - 1e-9 ? top : undefined] as const).filter(
      (z) => z !== undefined,
    );
  const ends = [...part.outer, ...part.bores].flatMap((step) => {
    const { thread } = step;
    if (!thread || fine(thread)) return [];
    const screw = part.outer.includes(step);
    const [major, minor] = [thread.d / 2, minorOf(thread)];
    return free(step).map((z) => ({ z, screw, major, minor }));
  });
  return outlines.map((points) =>
    points.map(([x, z]): SkinPoint => {
      let r = Math.abs(x);
      for (const end of ends) {
        const off = Math.abs(z - end.z);
        if (r > end.major + 1e-6 || r < end.minor - 1e-6) continue;
        r = end.screw ? Math.min(r, end.minor + off) : Math.max(r, end.major - off);
      }
      return [Math.sign(x) * r, z];
    }),
  );
};

/** Edges of a bore behind the cut, straight across it. */
const edgesAcross = ({ r, from, to, thread }: Step): (readonly SkinPoint[])[] =>
  [from, to].map((z) => {
    const half = thread ? thread.d / 2 : r;
    return [
      [-half, z],
      [half, z],
    ];
  });

/** Lines of the crests of a step at an angle: of a screw those in front, of a nut those on the far wall of its bore, which lean the other way. */
const crestLinesOf = (
  step: Step,
  part: Part,
  crests: Crests,
  angle: number,
  of: 'screw' | 'nut',
): readonly (readonly SkinPoint[])[] => {
  const { thread } = step;
  if (!thread) return [];
  const crest = crestOf(part, step, crests) - (thread.h * thread.L * angle) / (2 * Math.PI);
  if (of === 'screw') return crestLines(thread, crest, step.from, step.to);
  // The ridge of a nut stands in the groove of its screw, half a pitch on.
  const wall = { ...thread, d: mm(2 * minorOf(thread)), h: thread.h === 1 ? -1 : 1 } as const;
  return crestLines(wall, crest + thread.P / 2, step.from, step.to);
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

/** The tip as an outline, both sides of the axis. */
const tipSeen = (a: Adjuster, s: Standing): readonly SkinPoint[] => {
  const foot = s.height - a.tip.stands;
  const right = tipOf(a).map(([r, z]): SkinPoint => [r, foot + z]);
  const left = right.filter(([r]) => r > 0).map(([r, z]): SkinPoint => [-r, z]);
  return [...right, ...left.reverse()];
};

/** Where the names of parts stand, beside them: x and z in mm. */
export const namesAt = (a: Adjuster, s: Standing): (readonly [Role, SkinPoint])[] =>
  partsOf(a).map((part) => {
    const step = widestStep(part);
    return [part.role, [step.shape === 'square' ? step.r : reach(step), (step.from + step.to) / 2 + s.at[part.role]]];
  });

const ROLES = ['base', 'turned', 'carried'] as const;

const pathsOf = (p: Picture): Readonly<Record<string, string>> => ({
  guide: p.guide,
  springs: p.springs,
  tip: p.tip,
  ...Object.fromEntries(
    ROLES.flatMap((role) => [
      [role, p[role]?.shape ?? ''],
      [`${role}Lines`, p[role]?.lines ?? ''],
      [`${role}Wall`, p[role]?.wall ?? ''],
      [`${role}Behind`, p[role]?.behind ?? ''],
    ]),
  ),
});

/** The parts as markup: solid ones over those that are cut. `id` is that of the picture’s hatchings, `symbols` what a part stands for on its page. */
export const partsHtml = (p: Picture, id: string, symbols: Partial<Record<Role, string>> = {}): string => {
  const path = (classes: string, name: string, d: string, more = '') =>
    `<path class="${classes}" data-path="${name}" d="${d}"${more}/>`;
  const part = (role: Role, { cut, shape, lines, wall, behind }: PartPaths) =>
    (cut ? path(`bore-wall ${role}`, `${role}Wall`, wall) + path('behind', `${role}Behind`, behind) : '') +
    path(
      `part ${role}${cut ? '' : ' solid'}`,
      role,
      shape,
      `${symbols[role] === undefined ? '' : ` data-sym="${symbols[role]}"`}${cut ? ` fill="url(#${id}-${role})"` : ''}`,
    ) +
    path('crests', `${role}Lines`, lines);
  const roles = ROLES.flatMap((role) => {
    const paths = p[role];
    return paths ? [[role, paths] as const] : [];
  });
  const drawn = [...roles.filter(([, x]) => x.cut), ...roles.filter(([, x]) => !x.cut)];
  return (
    path(`part guide${p.guideAssumed ? ' assumed' : ''}`, 'guide', p.guide) +
    path('adjuster-springs', 'springs', p.springs) +
    drawn.map(([role, x]) => part(role, x)).join('') +
    path(`part ${p.carried ? 'carried' : 'turned'} solid`, 'tip', p.tip)
  );
};

/** Moves the parts of a picture to where they stand now. */
export const updateParts = (stage: ParentNode, p: Picture): void => {
  for (const [name, d] of Object.entries(pathsOf(p)))
    stage.querySelector(`[data-path="${name}"]`)?.setAttribute('d', d);
};
