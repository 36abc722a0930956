/**
 * The bodies of the solid: the three parts, the tip, and what locks and preloads them, each a closed net of its own, made once
 * an adjuster. Each moves with one part, and each has for every corner what the picture needs: normal, thread, place.
 */
import { type Adjuster, partsOf, standing } from '../../../assembly/adjuster/adjuster.ts';
import { heightOf, type Part, type Role, type ThreadEnd } from '../../../assembly/adjuster/part.ts';
import { FOOT_WALL, postOf } from '../../../assembly/adjuster/post.ts';
import { type Mesh, meshAround, meshOf } from '../../../assembly/adjuster/solid.ts';
import {
  beyondSpring,
  springAt,
  springEnds,
  springHalf,
  springRadius,
  stretchAt,
} from '../../../assembly/adjuster/spring-place.ts';
import { crestsOf, type Point, type Skin } from '../../../assembly/adjuster/surface.ts';
import { plateMesh } from '../../../assembly/print/plate.ts';
import { coiledLength } from '../../../assembly/spring/coil-seen.ts';
import { springPlate } from '../../../assembly/spring/spring-plate.ts';
import { acrossOf, diameters } from '../../../engine/index.ts';
import { tipOf } from '../adjuster-extras.ts';
import { type Faceted, facetsOf } from './facets.ts';
import { SEEN_TURNS, springTurns } from './view.ts';

export interface Body {
  readonly name: Role | 'tip' | 'post' | 'arm' | 'spring' | 'plate';
  /** The part it is moved with, and coloured as. */
  readonly with: Role;
  /** Whether the cut goes through it: a solid screw is shown whole. */
  readonly cut: boolean;
  readonly facets: Faceted;
  /** Which adjuster it is of, where there are several. */
  readonly copy?: number;
}

/** Threads of a part by the letter of their joint, as the picture lights their flanks. */
const threadsOf = (part: Part): readonly (readonly ['A' | 'C', ThreadEnd])[] => {
  const named = { base: [undefined, 'A'], turned: ['A', 'C'], carried: ['C', undefined] } as const;
  const [below, above] = named[part.role];
  return [
    ...(part.below && below ? [[below, part.below] as const] : []),
    ...(part.above && above ? [[above, part.above] as const] : []),
  ];
};

/** The net of a part, with the thread that each triangle belongs to: 0 none, 1 A, 2 C. */
const facetsOfPart = (part: Part, mesh: Mesh): Faceted => {
  const ends = threadsOf(part).map(([letter, end]) => {
    const outer = end.thread.d / 2 + 1e-6;
    const inner = diameters(end.thread).d1 / 2 - 1e-6;
    return { code: letter === 'A' ? 1 : 2, from: end.from, to: end.to, inner, outer };
  });
  return facetsOf(mesh, (r, z) => ends.find((e) => z > e.from && z < e.to && r > e.inner && r < e.outer)?.code ?? 0);
};

const plain = (mesh: Mesh): Faceted => facetsOf(mesh, () => 0);

/** A closed body of revolution from the points of its edge. */
const turnedBody = (points: readonly Point[]): Mesh => meshAround((): Skin => ({ through: false, points }));

const moved = ({ positions, triangles }: Mesh, x: number, y: number): Mesh => ({
  triangles,
  positions: positions.map((p, i) => p + (i % 3 === 0 ? x : i % 3 === 1 ? y : 0)),
});

/** Between two values each way. */
type Span = readonly [from: number, to: number];
const box = (x: Span, y: Span, z: Span): Mesh => {
  const positions = new Float64Array(24);
  for (let i = 0; i < 8; i++) positions.set([x[i & 1], y[(i >> 1) & 1], z[i >> 2]] as number[], 3 * i);
  const sides = [
    [0, 2, 3, 1],
    [4, 5, 7, 6],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 4, 6, 2],
    [1, 3, 7, 5],
  ] as const;
  return { positions, triangles: Uint32Array.from(sides.flatMap(([a, b, c, d]) => [a, b, c, a, c, d])) };
};

const tipMesh = (a: Adjuster, top: Part): Mesh | undefined => {
  const points = tipOf(a).map(([r, z]): Point => [r, heightOf(top) + z]);
  return points.length === 0 ? undefined : turnedBody(points);
};

/** The post and the arm that slides along it, left of the axis, as in the section. */
const guideBodies = (a: Adjuster): Body[] => {
  const post = postOf(a, SEEN_TURNS);
  if (!post) return [];
  const { x, half, low, top, arm, foot } = post;
  const column = turnedBody([
    [0, low],
    [half, low],
    [half, top],
    [0, top],
  ]);
  return [
    { name: 'post', with: 'base', cut: false, facets: plain(moved(column, x, 0)) },
    // Its ends are hidden in the base; round the base it is not shown.
    ...(foot
      ? [
          {
            name: 'post',
            with: 'base',
            cut: false,
            facets: plain(
              box([x - half - FOOT_WALL, -0.85 * foot.round.r], [-half - FOOT_WALL, half + FOOT_WALL], [0, foot.high]),
            ),
          } satisfies Body,
        ]
      : []),
    // From inside the side of its part, which hides the end; a hair above its face, so that the two do not fight for the same place.
    ...(arm
      ? [
          {
            name: 'arm',
            with: 'carried',
            cut: false,
            facets: plain(box([arm.from, 0.85 * arm.to], [-1.9 * half, 1.9 * half], [arm.low + 0.02, arm.high])),
          } satisfies Body,
        ]
      : []),
  ];
};

/** Turns of a coil that is not drawn, and how finely one and its wire are made. */
const COILS = 7;
const ALONG = 12;
const WIRE = 8;

interface Wound {
  /** Radius of the coil and of its wire; turns; how long its coils are of how far from hold to hold. */
  readonly coil: number;
  readonly wire: number;
  readonly turns: number;
  readonly coiled: number;
  readonly between: number;
}

/**
 * A spring as a wire from the lower part out to its radius, up in coils and back to the upper part, one mm long: the picture stretches it along the axis. The
 * ends of the wire are inside the parts, and closed.
 */
const coilMesh = (radius: number, angle: number, { coil, wire, turns, coiled, between }: Wound): Mesh => {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const count = Math.round(turns * ALONG);
  const low = (1 - coiled / between) / 2;
  const path = [
    [0.5 * radius, 0, 0],
    [radius - coil, 0, 0],
    ...Array.from({ length: count + 1 }, (_, i) => {
      const t = (2 * Math.PI * i) / ALONG;
      return [radius - coil * Math.cos(t), coil * Math.sin(t), low + ((1 - 2 * low) * i) / count];
    }),
    [radius - coil, 0, 1],
    [0.5 * radius, 0, 1],
  ] as const;
  const positions: number[] = [];
  const triangles: number[] = [];
  path.forEach(([x, y, z], i) => {
    const [px, py] = path[Math.max(0, i - 1)] ?? [x, y];
    const [qx, qy] = path[Math.min(path.length - 1, i + 1)] ?? [x, y];
    // The wire runs nearly flat, so its ring stands on the direction it has across the axis.
    const length = Math.hypot(qx - px, qy - py) || 1;
    const [ox, oy] = [(qy - py) / length, -(qx - px) / length];
    for (let k = 0; k < WIRE; k++) {
      const t = (2 * Math.PI * k) / WIRE;
      const out = wire * Math.cos(t);
      const [u, v] = [x + out * ox, y + out * oy];
      // A mm along the axis is stretched to the length of the spring, so the wire is as much flatter before.
      positions.push(u * cos - v * sin, u * sin + v * cos, z + (wire * Math.sin(t)) / between);
    }
  });
  const ring = (i: number, k: number) => i * WIRE + (k % WIRE);
  for (let i = 0; i + 1 < path.length; i++)
    for (let k = 0; k < WIRE; k++) {
      triangles.push(ring(i, k), ring(i + 1, k + 1), ring(i, k + 1));
      triangles.push(ring(i, k), ring(i + 1, k), ring(i + 1, k + 1));
    }
  for (let k = 1; k + 1 < WIRE; k++) {
    triangles.push(ring(0, 0), ring(0, k), ring(0, k + 1));
    triangles.push(ring(path.length - 1, 0), ring(path.length - 1, k + 1), ring(path.length - 1, k));
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
};

/** Of an arc a quarter, in so many pieces. */
const PIECES = 3;

/** What springs are made of on the screen, at angle 0, one mm from foot to head: the plate that is printed, stood up, or a coil; undefined where there are none. */
const springMesh = (a: Adjuster, angle: number): Mesh | undefined => {
  const now = standing(a, 0);
  const ends = springEnds(a, now);
  if (!a.springs || !ends) return undefined;
  const between = Math.max(1, ends.head - ends.foot);
  const radius = springRadius(a);
  const form = a.springs.drawn?.form;
  const flat = springAt(a, now);
  if (!flat) {
    const half = springHalf(a);
    const wound =
      form?.shape === 'coil'
        ? { coil: form.D / 2, wire: form.t / 2, turns: form.turns, coiled: coiledLength(form, stretchAt(a, 0)) }
        : { coil: half, wire: 0.42 * half, turns: COILS, coiled: between };
    return coilMesh(radius, angle, { ...wound, between });
  }
  const { drawn, z, post } = flat;
  const plate = springPlate(drawn, PIECES);
  const { positions, triangles } = plateMesh(plate);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const strap = drawn.form.shape === 'strap';
  const stood = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    const [x, y, w] = [positions[i], positions[i + 1], positions[i + 2]] as [number, number, number];
    const thick = plate.height / 2 - w;
    // Across its plane it points round the axis; a strap’s plane holds the axis.
    const [out, round] = strap ? [radius + x, thick] : [radius + thick, x];
    stood.set([out * cos - round * sin, out * sin + round * cos, (y + z - ends.foot) / between], i);
  }
  const mesh = { positions: stood, triangles };
  if (!strap || !post) return mesh;
  const half = beyondSpring(drawn.form);
  const middle = radius + acrossOf(drawn.form) - half;
  const leg = moved(
    box([-half, half], [-half, half], [0, (post.to - half - ends.foot) / between]),
    middle * cos,
    middle * sin,
  );
  return together(mesh, leg);
};

const together = (a: Mesh, b: Mesh): Mesh => ({
  positions: Float64Array.from([...a.positions, ...b.positions]),
  triangles: Uint32Array.from([...a.triangles, ...b.triangles.map((t) => t + a.positions.length / 3)]),
});

const springBodies = (a: Adjuster): Body[] => {
  const count = a.springs?.count ?? 0;
  return springTurns(count).flatMap((angle) => {
    const mesh = springMesh(a, angle);
    return mesh ? [{ name: 'spring', with: 'base', cut: false, facets: plain(mesh) } satisfies Body] : [];
  });
};

export const plateBody = (x: Span, y: Span, thick: number): Body => ({
  name: 'plate',
  with: 'base',
  cut: false,
  facets: plain(box(x, y, [0, thick])),
});

/** `around`: how many half planes a part is made of; a multiple of 24. */
export const bodiesOf = (a: Adjuster, around?: number): readonly Body[] => {
  const crests = crestsOf(a);
  const parts = partsOf(a).map(
    (part): Body => ({
      name: part.role,
      with: part.role,
      cut: part.bores.length > 0,
      facets: facetsOfPart(part, meshOf(part, { crests: crests[part.role] }, around)),
    }),
  );
  const top = a.carried ?? a.turned;
  const tip = tipMesh(a, top);
  return [
    ...parts,
    ...(tip ? [{ name: 'tip', with: top.role, cut: false, facets: plain(tip) } satisfies Body] : []),
    ...guideBodies(a),
    ...springBodies(a),
  ];
};
