/**
 * The three parts in line, in axial section, to the scale of their diameters and pitches, with the spring between the two it
 * is hooked to; and for each thread a lens on one ridge, its play drawn much too large, that shows which flanks touch.
 */
import { WORDS } from '#words/figures/force-chain.ts';
import { type PreloadCase, type PreloadSpring, partMotion, type Thread } from '../../engine/index.ts';
import type { Point } from '../kit/svg.ts';
import { arrowheads, hatchings, polygon, polyline, px } from '../kit/svg.ts';
import { opposite, threadEdge } from '../kit/thread-outline.ts';
import { newtons, type Seat, type State, signedNewtons } from './state.ts';

const WIDTH = 380;
const HEIGHT = 430;
const AXIS = 150;
const ROOM = { top: 58, bottom: 8, half: 146 } as const;

/** Where the parts stand before turning, mm, z up from the top of the base; how far they are drawn to move. */
interface Layout {
  readonly D: number;
  readonly bottom: number;
  readonly headBottom: number;
  readonly headTop: number;
  readonly carriedBottom: number;
  readonly studTop: number;
  readonly cavityTop: number;
  readonly capTop: number;
  /** Drawn motion over true motion: 1 unless the stroke is long for the parts. */
  readonly drawn: number;
  readonly scale: number;
  readonly y0: number;
}

const layOut = (s: State): Layout => {
  const { A, C, given } = s;
  const D = Math.max(A.d, C.d);
  const turned = partMotion('turned', given.to, given);
  const carried = partMotion('carried', given.to, given);
  const relative = carried - turned;
  const largest = Math.max(Math.abs(turned), Math.abs(carried), Math.abs(relative));
  const drawn = largest > 1.3 * D ? (1.3 * D) / largest : 1;
  const up = (z: number) => Math.max(0, z * drawn);
  const down = (z: number) => Math.max(0, -z * drawn);
  const headBottom = 0.55 * D + down(turned);
  const headTop = headBottom + 0.5 * D;
  const carriedBottom = headTop + 0.5 * D + down(relative);
  const studTop = carriedBottom + 1.2 * C.d + up(relative) + 0.1 * D;
  const cavityTop = studTop + down(relative) + 0.15 * D;
  const capTop = cavityTop + 0.3 * D;
  const bottom = -1.2 * A.d - 0.3 * D - up(turned) - down(turned);
  const height = capTop + up(carried) - bottom;
  const scale = Math.min(ROOM.half / (1.9 * D), (HEIGHT - ROOM.top - ROOM.bottom) / height);
  const y0 = ROOM.top + (HEIGHT - ROOM.top - ROOM.bottom + height * scale) / 2 + bottom * scale;
  return { D, bottom, headBottom, headTop, carriedBottom, studTop, cavityTop, capTop, drawn, scale, y0 };
};

/** Paths of everything that moves as the hand turns. */
export const sectionPaths = (s: State) => {
  const l = layOut(s);
  const { A, C } = s;
  const { D } = l;
  const place = ([x, z]: readonly [number, number]): Point => [AXIS + x * l.scale, l.y0 - z * l.scale];
  const shape = (...list: (readonly (readonly [number, number])[])[]) =>
    list.map((points) => polygon(points.map(place))).join('');
  const zt = partMotion('turned', s.n, s.given) * l.drawn;
  const zc = partMotion('carried', s.n, s.given) * l.drawn;
  const crestC = l.carriedBottom + zc;

  const base = shape(
    [[1.9 * D, -1.2 * A.d], ...edge(A, 0, -1.2 * A.d, 0, 1), [1.9 * D, 0]],
    [[-1.9 * D, -1.2 * A.d], ...edge(A, 0, -1.2 * A.d, 0, -1), [-1.9 * D, 0]],
  );
  const studA = {
    z0: -1.2 * A.d - 0.3 * D - Math.max(0, partMotion('turned', s.given.to, s.given) * l.drawn) + zt,
    z1: l.headBottom + zt,
  };
  const studC = { z0: l.headTop + zt, z1: l.studTop + zt };
  const side = (sign: 1 | -1): (readonly [number, number])[] => [
    ...edge(A, 0, studA.z0, studA.z1, sign),
    [sign * 1.3 * D, studA.z1],
    [sign * 1.3 * D, studC.z0],
    ...edge(C, crestC, studC.z0, studC.z1, sign),
  ];
  const turned = shape([...side(1), ...side(-1).reverse()]);
  const nut = { z0: l.carriedBottom + zc, z1: l.cavityTop + zc };
  const outside = (sign: 1 | -1): (readonly [number, number])[] => [
    [sign * 1.9 * D, nut.z0],
    [sign * 1.9 * D, nut.z0 + 0.3 * D],
    [sign * 1.1 * D, nut.z0 + 0.3 * D],
    [sign * 1.1 * D, l.capTop + zc],
  ];
  const carried = shape([
    ...outside(1),
    ...outside(-1).reverse(),
    ...edge(C, crestC, nut.z0, nut.z1, -1),
    ...[...edge(C, crestC, nut.z0, nut.z1, 1)].reverse(),
  ]);
  const spring = s.spring ? springPaths(s.spring, l, zt, zc, place) : { coils: '', heads: '' };
  const top = place([0, l.capTop + zc])[1];
  const wall = (half: number, z0: number, z1: number) =>
    shape([
      [-half, z0],
      [half, z0],
      [half, z1],
      [-half, z1],
    ]);
  return {
    base,
    turned,
    carried,
    baseWall: wall(A.d / 2, -1.2 * A.d, 0),
    carriedWall: wall(C.d / 2, nut.z0, nut.z1),
    coils: spring.coils,
    heads: spring.heads,
    weight: weightArrow(s, top),
    ...loadArrows(s.given, top),
  };
};

/** A thread too fine for the picture is drawn as its outline. */
const edge = (thread: Thread, crest: number, z0: number, z1: number, sign: 1 | -1): (readonly [number, number])[] => {
  if ((z1 - z0) / thread.P > 90)
    return [
      [(sign * thread.d) / 2, z0],
      [(sign * thread.d) / 2, z1],
    ];
  return threadEdge(thread, sign === 1 ? crest : opposite(thread, crest), z0, z1).map(
    ([x, z]) => [sign * x, z] as const,
  );
};

const springPaths = (
  spring: PreloadSpring,
  l: Layout,
  zt: number,
  zc: number,
  place: (point: readonly [number, number]) => Point,
): { coils: string; heads: string } => {
  const z0 = spring.lower === 'base' ? 0 : l.headTop + zt;
  const z1 = spring.upper === 'turned' ? l.headBottom + zt : l.carriedBottom + zc;
  const x = spring.lower === 'base' && spring.upper === 'carried' ? 1.62 : 0.95;
  const width = 0.14 * l.D;
  const lead = 0.08 * (z1 - z0);
  const turns = 12;
  const coil = (at: number): Point[] => [
    place([at, z0]),
    ...Array.from({ length: turns + 1 }, (_, i) =>
      place([
        at + (i === 0 || i === turns ? 0 : i % 2 === 0 ? -width : width),
        z0 + lead + ((z1 - z0 - 2 * lead) * i) / turns,
      ]),
    ),
    place([at, z1]),
  ];
  // Heads show the force on each part: towards the spring where it pulls, away from it where it pushes.
  const head = (at: number, z: number, up: boolean): string => {
    const [hx, hy] = place([at, z]);
    return `M${px(hx)} ${px(hy)}l-5 ${up ? 9 : -9}h10Z`;
  };
  const at = x * l.D;
  const pulls = spring.kind === 'pull';
  const room = 10 / l.scale;
  const heads = [-at, at]
    .map((a) => head(a, pulls ? z0 + room : z0, pulls) + head(a, pulls ? z1 - room : z1, !pulls))
    .join('');
  return { coils: [-at, at].map((a) => polyline(coil(a))).join(''), heads };
};

const ARROW = 30;
/** The way the weight acts on the assembly, which the picture does not turn. */
const weightArrow = (s: State, top: number): string => {
  const x = AXIS - 34;
  if (s.attitude === 'upright') return arrow(x, top - 3, 1);
  if (s.attitude === 'upside down') return arrow(x, top - 3 - ARROW, -1);
  const y = top - 14;
  return `M${x - ARROW} ${px(y)}h${ARROW}`;
};

/** The load down, towards the base, and up, each where it can act so. */
const loadArrows = ({ load: { least, most } }: PreloadCase, top: number): { load: string; lift: string } => {
  const x = AXIS + 34;
  return {
    load: most > 0 ? arrow(least < 0 ? x + 14 : x, top - 3, 1) : '',
    lift: least < 0 ? arrow(x, top - 3 - ARROW, -1) : '',
  };
};

/** Two lines from the top edge down. */
const note = (x: number, anchor: 'start' | 'end', [first, second]: readonly [string, string]): string =>
  `<text class="figure-note" x="${x}" y="0" dy="1em" text-anchor="${anchor}">${first}<tspan x="${x}" dy="1.2em">${second}</tspan></text>`;

/** Weight and load as arrows, with what they are and how much. */
const pushes = (s: State, p: ReturnType<typeof sectionPaths>): string => {
  const { load, weightTurned, weightCarried } = s.given;
  const one = (name: 'weight' | 'load' | 'lift') =>
    `<path class="arrow strong" data-path="${name}" marker-end="url(#chain-head)" d="${p[name]}"/>`;
  const loaded = load.least !== 0 || load.most !== 0;
  return (
    `${one('weight')}${one('load')}${one('lift')}` +
    note(AXIS - 46, 'end', WORDS.section.weight(newtons(weightTurned + weightCarried))) +
    (loaded
      ? note(
          AXIS + 58,
          'start',
          load.least === load.most
            ? WORDS.section.load(signedNewtons(load.most))
            : WORDS.section.loads(signedNewtons(load.least), signedNewtons(load.most)),
        )
      : '')
  );
};

/** A vertical arrow whose head ends at y: 1 points down, −1 up. */
const arrow = (x: number, y: number, way: 1 | -1): string => `M${x} ${px(y - way * ARROW)}V${px(y)}`;

export const sectionSvg = (s: State): string => {
  const p = sectionPaths(s);
  const l = layOut(s);
  const y = (z: number) => px(l.y0 - z * l.scale + 4);
  const x = AXIS + 1.95 * l.D * l.scale + 6;
  const name = (key: 'base' | 'turned' | 'carried', z: number) =>
    `<text class="part-name ${key}" x="${px(x)}" y="${y(z)}">${WORDS.section.parts[key]}</text>`;
  return (
    `<svg class="chain-section" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.section.label({ A: s.A.designation, C: s.C.designation, spring: s.spring })}">` +
    `${hatchings('chain')}<path class="bore-wall base" data-path="baseWall" d="${p.baseWall}"/><path class="bore-wall carried" data-path="carriedWall" d="${p.carriedWall}"/><path class="part base" data-path="base" d="${p.base}" fill="url(#chain-base)"/>` +
    `<path class="part carried" data-path="carried" d="${p.carried}" fill="url(#chain-carried)"/>` +
    `<path class="part turned solid" data-path="turned" d="${p.turned}"/>` +
    `<path class="axis" d="M${AXIS} 4V${HEIGHT - 4}"/>` +
    `${arrowheads('chain-head', 'strong')}<path class="coils" data-path="coils" d="${p.coils}"/><path class="heads" data-path="heads" d="${p.heads}"/>` +
    `${pushes(s, p)}` +
    `${name('carried', (l.carriedBottom + l.cavityTop) / 2)}${name('turned', (l.headBottom + l.headTop) / 2)}${name('base', -0.6 * s.A.d)}</svg>`
  );
};

// A lens: the turned part is the screw at the left, drawn twice as high as the play would ever be.
const PITCH = 60;
const DEPTH = 24;
const RUN = DEPTH * Math.tan(Math.PI / 6);
const FLAT = (PITCH - 2 * RUN) / 4;
const ROOT = 40;
const GAP = 6;
const LENS = { width: 124, height: 116, middle: 58 } as const;

/** One ridge between x = ROOT and the crest, from its middle: y offset at the root and at the crest. */
const screwOutline = (): Point[] => {
  const points: Point[] = [[ROOT, -40]];
  for (let k = -1; k <= 3; k++) {
    const middle = LENS.middle + (k - 1.5) * PITCH;
    points.push(
      [ROOT, middle - FLAT - RUN],
      [ROOT + DEPTH, middle - FLAT],
      [ROOT + DEPTH, middle + FLAT],
      [ROOT, middle + FLAT + RUN],
    );
  }
  points.push([ROOT, LENS.height + 40]);
  return points;
};

const nutOutline = (off: number): Point[] => {
  const points: Point[] = [[ROOT + DEPTH + 4, -60]];
  // The screw's grooves lie at the middle and a pitch either side of it.
  for (let k = -1; k <= 1; k++) {
    const middle = LENS.middle + k * PITCH + off;
    const tip = FLAT - GAP + RUN * (4 / DEPTH);
    points.push(
      [ROOT + DEPTH + 4, middle - tip - RUN],
      [ROOT + 4, middle - tip],
      [ROOT + 4, middle + tip],
      [ROOT + DEPTH + 4, middle + tip + RUN],
    );
  }
  points.push([ROOT + DEPTH + 4, LENS.height + 60]);
  return points;
};

/** The nut of thread A is the base, below; that of thread C is the carried part, above: pressed together it goes down. */
const offOf = (thread: 'A' | 'C', seat: Seat): number =>
  seat === 'neither for sure' ? 0 : (seat === 'pressed' ? 1 : -1) * (thread === 'C' ? GAP : -GAP);

export const lensPaths = (thread: 'A' | 'C', seat: Seat): { nut: string; touch: string } => {
  const off = offOf(thread, seat);
  const nut = polygon([...nutOutline(off), [LENS.width + 10, LENS.height + 60], [LENS.width + 10, -60]]);
  if (off === 0) return { nut, touch: '' };
  const way = Math.sign(off);
  const tip = FLAT - GAP + RUN * (4 / DEPTH);
  const touch = [-1, 0, 1]
    .map((k) => {
      const middle = LENS.middle + k * PITCH + off;
      return polyline([
        [ROOT + 4, middle + way * tip],
        [ROOT + DEPTH, middle + way * (tip + RUN * ((DEPTH - 4) / DEPTH))],
      ]);
    })
    .join('');
  return { nut, touch };
};

export const lensSvg = (thread: 'A' | 'C', seat: Seat): string => {
  const { nut, touch } = lensPaths(thread, seat);
  const other = thread === 'A' ? 'base' : 'carried';
  const screw = polygon([...screwOutline(), [-10, LENS.height + 40], [-10, -40]]);
  return (
    `<svg class="chain-lens" viewBox="0 0 ${LENS.width} ${LENS.height}" aria-hidden="true">` +
    `<path class="part turned solid" d="${screw}"/><path class="part ${other}" data-nut="${thread}" d="${nut}" fill="url(#chain-${other})"/>` +
    `<path class="touch" data-touch="${thread}" d="${touch}"/></svg>`
  );
};
