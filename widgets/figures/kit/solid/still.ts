/**
 * The adjuster as a line drawing, seen from the same side as the solid: what paper, forced colours and browsers without WebGL
 * show, and what stands there until the solid is drawn.
 *
 * Parts on one axis hide each other from the bottom up where they are seen from above, and from the top down where they are seen from below, so each
 * step is painted over those behind it. What is inside another part is not painted.
 */
import { type Adjuster, partsOf, type Standing, standing } from '../../../assembly/adjuster/adjuster.ts';
import { heightOf, type Role, reach, type Step } from '../../../assembly/adjuster/part.ts';
import { FOOT_WALL, postOf } from '../../../assembly/adjuster/post.ts';
import { springAt, springEnds, springHalf, springRadius, stretchAt } from '../../../assembly/adjuster/spring-place.ts';
import { crestOf, crestsOf } from '../../../assembly/adjuster/surface.ts';
import { coiledLength } from '../../../assembly/spring/coil-seen.ts';
import { springPlate } from '../../../assembly/spring/spring-plate.ts';
import type { Thread } from '../../../engine/index.ts';
import { tipOf } from '../adjuster-extras.ts';
import { type Point, polygon, polyline } from '../svg.ts';
import { type Aim, directionsOf, dot, onPicture, SEEN_TURNS, springTurns, type Vector } from './view.ts';

export interface StillPiece {
  readonly role: Role;
  /** Side, and the end that is seen over it, to fill: the top, or from below the bottom. */
  readonly shape: string;
  readonly top: string;
  /** Edges and crests, to stroke thin. */
  readonly lines: string;
}

/** The pieces as they stand in a drawing, painted one over the other. */
export const stillHtml = (pieces: readonly StillPiece[]): string =>
  pieces
    .map(
      ({ role, shape, top, lines }) =>
        `<path class="part ${role} solid" d="${shape}"/><path class="part ${role} solid" d="${top}"/><path class="crests" data-path="${role}Lines" d="${lines}"/>`,
    )
    .join('');

/** Turns of each part, clockwise seen from above. */
export type Turned = Readonly<Record<Role, number>>;

interface Piece {
  readonly role: Role;
  readonly step: Step;
  readonly from: number;
  readonly to: number;
  /** Height of the middle of a crest at angle 0, over the bottom of the base. */
  readonly crest: number;
}

const AROUND = 48;
/** Closer ridges than this, in picture units, are a grey to the eye. */
const FINEST = 2;

/** What of an interval lies outside others. */
const outside = (from: number, to: number, hidden: readonly (readonly [number, number])[]): [number, number][] =>
  hidden.reduce<[number, number][]>(
    (left, [a, b]) =>
      left.flatMap(([x, y]): [number, number][] =>
        (
          [
            [x, Math.min(y, a)],
            [Math.max(x, b), y],
          ] as [number, number][]
        ).filter(([p, q]) => q - p > 1e-6),
      ),
    [[from, to]],
  );

const piecesOf = (a: Adjuster, at: Readonly<Record<Role, number>>): Piece[] => {
  const crests = crestsOf(a);
  const all = partsOf(a).flatMap((part) =>
    part.outer.map((step) => ({ part, step, from: step.from + at[part.role], to: step.to + at[part.role] })),
  );
  return all
    .flatMap(({ part, step, from, to }) =>
      outside(
        from,
        to,
        all
          .filter((o) => o.part !== part && reach(o.step) > reach(step) + 1e-9)
          .map((o): [number, number] => [o.from, o.to]),
      ).map(([low, high]) => ({
        role: part.role,
        step,
        from: low,
        to: high,
        crest: at[part.role] + (step.thread ? crestOf(part, step, crests[part.role]) : 0),
      })),
    )
    .sort((p, q) => p.from - q.from || q.step.r - p.step.r);
};

/** What stands beside the parts: the post, and the springs, which while it is put together come last. */
interface Beside {
  readonly guided: boolean;
  readonly sprung: boolean;
}

export const stillOf = (
  a: Adjuster,
  { at }: Pick<Standing, 'at'>,
  aim: Aim,
  turned: Turned,
  { guided, sprung }: Beside = { guided: true, sprung: true },
): readonly StillPiece[] => {
  const { near } = directionsOf(aim);
  const below = near[2] < 0;
  const place = (p: Vector) => onPicture(aim, p);
  const steps = piecesOf(a, at).map((piece): StillPiece => {
    const { step, from, to, role } = piece;
    const angle = -2 * Math.PI * turned[role];
    const corners = cornersOf(step, angle);
    const ring = (z: number): Vector[] => corners.map(([x, y]) => [x, y, z]);
    const facing = corners.map((c) => dot([c[0], c[1], 0], near) > 0);
    const [top, bottom] = [ring(to).map(place), ring(from).map(place)];
    const lines: (readonly Point[])[] = [];
    if (step.shape !== 'round')
      corners.forEach((_, i) => {
        if (facing[i]) lines.push([top[i] as Point, bottom[i] as Point]);
      });
    const { socket } = partsOf(a).find((part) => part.role === role && part.outer.at(-1) === step) ?? {};
    // Its mouth in the top; what of it is deeper is left out.
    if (socket && !below) {
      const mouth = cornersOf({ ...step, shape: 'hexagon', r: socket.flats / 2 }, angle).map(([x, y]) =>
        place([x, y, to]),
      );
      lines.push([...mouth, mouth[0] as Point]);
    }
    if (step.thread && step.thread.P * aim.scale > FINEST) lines.push(...crestsSeen(piece, step.thread, angle, aim));
    const side = hull([...top, ...bottom]);
    return {
      role,
      shape: polygon(side),
      top: polygon(below ? bottom : top),
      lines: lines.map(polyline).join('') + scribed(step, angle, from, to, near, place),
    };
  });
  const tip = tipSeen(a, at, aim);
  const fromBehind = <T>(upwards: readonly T[]): readonly T[] => (below ? [...upwards].reverse() : upwards);
  const parts = fromBehind(tip ? [...steps, tip] : steps);
  const guide = fromBehind(guided ? guideSeen(a, at, aim) : []);
  // Left of the axis: in front of the parts where it is nearer than they.
  const whole = dot([-1, 0, 0], near) > 0 ? [...parts, ...guide] : [...guide, ...parts];
  const springs = sprung ? springsSeen(a, at, aim) : [];
  const inFront = ({ angle }: { readonly angle: number }) => dot([Math.cos(angle), Math.sin(angle), 0], near) > 0;
  const drawn = (front: boolean) => springs.filter((s) => inFront(s) === front).map(({ piece }) => piece);
  return [...drawn(false), ...whole, ...drawn(true)];
};

/** Pieces of an arc of a printed spring, points of a turn of wire, and turns of a coil of which none is stated. */
const ARC = 3;
const TURN = 12;
const COILS = 7;

/** Each spring at its angle, as lines: its wire, or the outline of the plate that was printed. */
const springsSeen = (
  a: Adjuster,
  at: Readonly<Record<Role, number>>,
  aim: Aim,
): readonly { readonly angle: number; readonly piece: StillPiece }[] => {
  const ends = springEnds(a, { at });
  if (!a.springs || !ends) return [];
  const { count } = a.springs;
  const radius = springRadius(a);
  const one = springLines(a, ends);
  return springTurns(count).map((angle) => {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const place = (out: number, round: number, z: number): Point =>
      onPicture(aim, [out * cos - round * sin, out * sin + round * cos, z]);
    const arm = (edge: number, z: number): Point[] => [place(Math.min(edge, radius), 0, z), place(radius, 0, z)];
    const lines = [
      ...one.map((line) => line.map(([out, round, z]) => place(out, round, z))),
      arm(ends.edges.foot, ends.foot),
      arm(ends.edges.head, ends.head),
    ];
    return { angle, piece: { role: 'base', shape: '', top: '', lines: lines.map(polyline).join('') } };
  });
};

/** Lines of one spring: out from the axis, round it, and up. */
const springLines = (a: Adjuster, ends: NonNullable<ReturnType<typeof springEnds>>): readonly (readonly Vector[])[] => {
  const radius = springRadius(a);
  const now = standing(a, 0);
  const flat = springAt(a, now);
  const form = a.springs?.drawn?.form;
  const long = Math.max(1, ends.head - ends.foot);
  if (!flat) {
    const coil = form?.shape === 'coil' ? form.D / 2 : springHalf(a);
    const turns = form?.shape === 'coil' ? form.turns : COILS;
    const coiled = form?.shape === 'coil' ? Math.min(long, coiledLength(form, stretchAt(a, 0))) : 0.8 * long;
    const count = Math.round(turns * TURN);
    const foot = ends.foot + (long - coiled) / 2;
    return [
      [
        [radius, 0, ends.foot],
        ...Array.from({ length: count + 1 }, (_, i): Vector => {
          const t = (2 * Math.PI * i) / TURN;
          return [radius - coil * Math.cos(t), coil * Math.sin(t), foot + (coiled * i) / count];
        }),
        [radius, 0, ends.head],
      ],
    ];
  }
  const { drawn, z } = flat;
  const plate = springPlate(drawn, ARC);
  const strap = drawn.form.shape === 'strap';
  const first = springEnds(a, now);
  // Stretched with its parts, from its foot.
  const stretched = strap || !first ? 1 : long / Math.max(1, first.head - first.foot);
  const foot = first?.foot ?? ends.foot;
  // By its middle plane: both faces would read as two springs.
  return [plate.outline, ...plate.holes].map((ring) =>
    [...ring, ring[0] as readonly [number, number]].map(([x, y]): Vector => {
      const up = ends.foot + (y + z - foot) * stretched;
      return strap ? [radius + x, 0, up] : [radius, x, up];
    }),
  );
};

/** The post, and the arm that slides along it. */
const guideSeen = (a: Adjuster, at: Readonly<Record<Role, number>>, aim: Aim): readonly StillPiece[] => {
  const post = postOf(a, SEEN_TURNS);
  if (!post) return [];
  const { x, half, top, arm, foot } = post;
  const below = directionsOf(aim).near[2] < 0;
  const ring = (z: number): Point[] =>
    Array.from({ length: AROUND }, (_, i) => {
      const t = (2 * Math.PI * i) / AROUND;
      return onPicture(aim, [x + half * Math.cos(t), half * Math.sin(t), z]);
    });
  const plate = (z: number): Point[] =>
    arm
      ? [
          [arm.from, -1.9 * half],
          [arm.to, -1.9 * half],
          [arm.to, 1.9 * half],
          [arm.from, 1.9 * half],
        ].map(([u, v]) => onPicture(aim, [u as number, v as number, z + at.carried]))
      : [];
  const column = (from: number, to: number): StillPiece => ({
    role: 'base',
    shape: polygon(hull([...ring(from), ...ring(to)])),
    top: polygon(ring(below ? from : to)),
    lines: '',
  });
  const boxed = (across: readonly [number, number], along: readonly [number, number], high: number): StillPiece => {
    const corners = (z: number): Point[] =>
      [
        [across[0], along[0]],
        [across[1], along[0]],
        [across[1], along[1]],
        [across[0], along[1]],
      ].map(([u, v]) => onPicture(aim, [u as number, v as number, z]));
    return {
      role: 'base',
      shape: polygon(hull([...corners(0), ...corners(high)])),
      top: polygon(corners(below ? 0 : high)),
      lines: '',
    };
  };
  // The plate that holds the post, from the base to beyond it.
  const held = foot
    ? [boxed([x - half - FOOT_WALL, -0.85 * foot.round.r], [-half - FOOT_WALL, half + FOOT_WALL], foot.high)]
    : [];
  const low = foot?.high ?? post.low;
  if (!arm) return [...held, column(low, top)];
  return [
    ...held,
    column(low, top),
    {
      role: 'carried',
      shape: polygon(hull([...plate(arm.low), ...plate(arm.high)])),
      top: polygon(plate(below ? arm.low : arm.high)),
      lines: '',
    },
    // Above the arm it is seen again.
    column(at.carried + arm.high, Math.max(top, at.carried + arm.high)),
  ];
};

/** A ball as the circle that it is from every side; other tips as what goes round their rings. */
const tipSeen = (a: Adjuster, at: Readonly<Record<Role, number>>, aim: Aim): StillPiece | undefined => {
  const { tip } = a;
  const top = a.carried ?? a.turned;
  if (!(tip.stands > 0)) return undefined;
  const foot = at[top.role] + heightOf(top);
  const ring = (r: number, z: number): Point[] =>
    Array.from({ length: AROUND }, (_, i) => {
      const t = (2 * Math.PI * i) / AROUND;
      return onPicture(aim, [r * Math.cos(t), r * Math.sin(t), z]);
    });
  if (tip.kind === 'ball') {
    const [x, y] = onPicture(aim, [0, 0, foot + tip.stands - tip.diameter / 2]);
    const r = (tip.diameter / 2) * aim.scale;
    // Of a ball that is sunk in, what stands below the top of its part is hidden.
    const edge = onPicture(aim, [0, 0, foot])[1] + r;
    const circle = Array.from({ length: AROUND }, (_, i): Point => {
      const t = (2 * Math.PI * i) / AROUND;
      return [x + r * Math.cos(t), Math.min(edge, y + r * Math.sin(t))];
    });
    return { role: top.role, shape: polygon(circle), top: '', lines: '' };
  }
  const rings = tipOf(a).map(([r, z]) => ring(r, foot + z));
  return {
    role: top.role,
    shape: polygon(hull(rings.flat())),
    top: tip.kind === 'flat' ? polygon(rings.at(-2) ?? []) : '',
    lines: '',
  };
};

/** Corners of a step across the axis. */
const cornersOf = (step: Step, angle: number): readonly (readonly [number, number])[] => {
  const sides = step.shape === 'round' ? AROUND : step.shape === 'hexagon' ? 6 : 4;
  const first = step.shape === 'round' ? 0 : Math.PI / sides;
  return Array.from({ length: sides }, (_, i) => {
    const theta = angle + first + (2 * Math.PI * i) / sides;
    return [reach(step) * Math.cos(theta), reach(step) * Math.sin(theta)] as const;
  });
};

/** The line that was scribed straight up the front at home; on a thread it would be lost among the crests. */
const scribed = (
  step: Step,
  angle: number,
  from: number,
  to: number,
  near: Vector,
  place: (p: Vector) => Point,
): string => {
  if (step.thread) return '';
  const theta = angle + SCRIBED;
  const sector = (2 * Math.PI) / (step.shape === 'hexagon' ? 6 : 4);
  const r = step.shape === 'round' ? step.r : step.r / Math.cos(SCRIBED - sector * Math.round(SCRIBED / sector));
  const [x, y] = [r * Math.cos(theta), r * Math.sin(theta)];
  return dot([x, y, 0], near) > 0 ? polyline([place([x, y, from]), place([x, y, to])]) : '';
};

/** Where the scribed line stands at home: in the middle of a flat of a hexagon, left of the cut. */
export const SCRIBED = (-2 * Math.PI) / 3;

const crestsSeen = ({ from, to, crest, step }: Piece, thread: Thread, angle: number, aim: Aim): Point[][] => {
  const { near } = directionsOf(aim);
  const { P, L, h } = thread;
  const front = Math.atan2(near[1], near[0]);
  const curves: Point[][] = [];
  const first = Math.floor((from - crest) / P) - thread.N - 1;
  const last = Math.ceil((to - crest) / P) + thread.N + 1;
  for (let k = first; k <= last; k++) {
    const curve: Point[] = [];
    for (let i = 0; i <= 16; i++) {
      const phi = front - Math.PI / 2 + (Math.PI * i) / 16;
      // The angle on the part; whole turns of it are other ridges.
      const theta = phi - angle;
      const within = theta - 2 * Math.PI * Math.round((front - angle) / (2 * Math.PI));
      const z = crest + k * P + (h * L * within) / (2 * Math.PI);
      if (z > from && z < to) curve.push(onPicture(aim, [step.r * Math.cos(phi), step.r * Math.sin(phi), z]));
    }
    if (curve.length > 1) curves.push(curve);
  }
  return curves;
};

/** The outline round points, anticlockwise on the picture. */
export const hull = (points: readonly Point[]): Point[] => {
  const sorted = [...points].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const half = (list: readonly Point[]): Point[] => {
    const line: Point[] = [];
    for (const p of list) {
      while (line.length > 1) {
        const [a, b] = [line.at(-2) as Point, line.at(-1) as Point];
        if ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 0) break;
        line.pop();
      }
      line.push(p);
    }
    return line.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
};
