/**
 * The views of a part as a shop reads them, in marks of the paper.
 *
 * A part that is bored is drawn half from outside, on the left of its axis, and half cut, on the right (half-section, ISO 128-3); a solid one from outside. The view from above
 * stands under it (first-angle, ISO 5456-2). Threads by the convention of ISO 6410-1: a wide line at the crests, a thin one at the roots, which is three quarters of a circle from
 * the end; hatching goes to the crests. A hexagon stands with a corner to either side. Standards from memory.
 */
import { heightOf, type Part, pointOf, reach, type Step } from '../../assembly/adjuster/part.ts';
import { chain, dashed, hatch, type Mark, type Spot, thin, wide } from '../../assembly/files/paper.ts';
import { diameters } from '../../engine/index.ts';

/** Where the axis stands on the paper, where z = 0 does, and how large a millimetre is. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

export const halfWidth = (step: Step): number => (step.shape === 'hexagon' ? reach(step) : step.r);
export const widestHalf = (part: Part): number => Math.max(...part.outer.map(halfWidth));

const roots = ({ thread, r }: Step): number => (thread ? diameters(thread).d1 / 2 : r);
const HATCH = 2.5;
const PAST = 4;

interface Level {
  readonly from: number;
  readonly to: number;
  readonly outer: number;
  readonly inner: number;
}

/** Stretches of z with one outside and one inside; a tapped hole is as wide as its crests. */
const levelsOf = (part: Part): readonly Level[] => {
  const cuts = [...new Set([...part.outer, ...part.bores].flatMap((s) => [s.from, s.to]))].sort((a, b) => a - b);
  return cuts.slice(1).flatMap((to, i) => {
    const from = cuts[i] as number;
    if (to - from < 1e-9) return [];
    const within = (s: Step) => s.from <= from + 1e-9 && s.to >= to - 1e-9;
    const outside = part.outer.find(within);
    if (!outside) return [];
    const bored = part.bores.filter(within).map(roots);
    return [{ from, to, outer: halfWidth(outside), inner: Math.max(0, ...bored) }];
  });
};

/** Where the cone of a drilled hole that ends with a level has its apex. */
const apexes = (part: Part, level: Level, point: 'up' | 'down'): number[] =>
  part.bores
    .filter((b) => b.point === point && Math.abs(point === 'up' ? b.to - level.to : b.from - level.from) < 1e-9)
    .map((b) => (point === 'up' ? b.to : b.from) + pointOf(b));

/** The socket of a screw, which is hidden from the side: dashed. */
const socketSide = ({ socket, ...part }: Part, { x, y, scale }: Place, side: 1 | -1): Mark[] => {
  if (!socket) return [];
  const top = heightOf(part);
  const at = (r: number, z: number): Spot => [x + side * r * scale, y + z * scale];
  // Corners stand to either side, as those of a head.
  const r = socket.flats / Math.sqrt(3);
  const apex = top - socket.depth - pointOf({ point: 'up', r: socket.flats / 2 });
  return [
    ...dashed(at(r, top), at(r, top - socket.depth)),
    ...dashed(at(r, top - socket.depth), at(0, top - socket.depth)),
    ...dashed(at(r / 2, top), at(r / 2, top - socket.depth)),
    ...dashed(at(socket.flats / 2, top - socket.depth), at(0, apex)),
  ];
};

/** One side of a cut part: its outline, hatched, its threads, and the edges of its bores behind the cut. */
const cutSide = (part: Part, side: 1 | -1, { x, y, scale }: Place, leaning: boolean, gap: number): Mark[] => {
  const at = (r: number, z: number): Spot => [x + side * r * scale, y + z * scale];
  const levels = levelsOf(part);
  const outline = [
    ...levels.flatMap((l) => [at(l.outer, l.from), at(l.outer, l.to)]),
    ...[...levels]
      .reverse()
      .flatMap((l) => [
        ...apexes(part, l, 'up').map((z) => at(0, z)),
        at(l.inner, l.to),
        at(l.inner, l.from),
        ...apexes(part, l, 'down').map((z) => at(0, z)),
      ]),
  ];
  const marks = hatch([outline], gap, leaning);
  for (const [i, a] of outline.entries()) {
    const b = outline[(i + 1) % outline.length] as Spot;
    const onAxis = Math.abs(a[0] - x) < 1e-6 && Math.abs(b[0] - x) < 1e-6;
    if (!onAxis && Math.hypot(a[0] - b[0], a[1] - b[1]) > 1e-6) marks.push(wide(a, b));
  }
  for (const step of part.outer)
    if (step.thread) marks.push(thin(at(roots(step), step.from), at(roots(step), step.to)));
  for (const step of part.bores) {
    if (!step.thread) continue;
    marks.push(thin(at(step.r, step.from), at(step.r, step.to)));
    for (const z of [step.from, step.to])
      if (z > 1e-9 && z < heightOf(part) - 1e-9) marks.push(wide(at(roots(step), z), at(step.r, z)));
  }
  return marks;
};

/** One side of a part from outside. */
const seenSide = (part: Part, side: 1 | -1, { x, y, scale }: Place): Mark[] => {
  const at = (r: number, z: number): Spot => [x + side * r * scale, y + z * scale];
  const marks: Mark[] = [];
  for (const [i, step] of part.outer.entries()) {
    const half = halfWidth(step);
    marks.push(wide(at(half, step.from), at(half, step.to)));
    const below = part.outer[i - 1];
    marks.push(wide(at(0, step.from), at(Math.max(half, below ? halfWidth(below) : 0), step.from)));
    if (i === part.outer.length - 1) marks.push(wide(at(0, step.to), at(half, step.to)));
    if (step.thread) marks.push(thin(at(roots(step), step.from), at(roots(step), step.to)));
    if (step.shape === 'hexagon') marks.push(wide(at(half / 2, step.from), at(half / 2, step.to)));
  }
  marks.push(...socketSide(part, { x, y, scale }, side));
  return marks;
};

const boreEdges = (part: Part, side: 1 | -1, { x, y, scale }: Place, seen: (z: number) => boolean): Mark[] =>
  [...new Set(part.bores.flatMap((b) => [b.from, b.to]))].filter(seen).flatMap((z) => {
    const meeting = part.bores.filter((b) => b.from <= z + 1e-9 && b.to >= z - 1e-9).map(roots);
    return [wide([x, y + z * scale], [x + side * Math.max(...meeting) * scale, y + z * scale])];
  });

/** Half from outside, half cut where there is a bore. */
export const frontOf = (part: Part, place: Place): Mark[] => {
  const { x, y, scale } = place;
  const axis = chain([x, y - PAST], [x, y + heightOf(part) * scale + PAST]);
  if (part.bores.length === 0) return [...seenSide(part, -1, place), ...seenSide(part, 1, place), ...axis];
  return [
    ...seenSide(part, -1, place),
    ...cutSide(part, 1, place, false, HATCH),
    ...boreEdges(part, 1, place, () => true),
    ...axis,
  ];
};

/** In an assembly: cut all through where it is bored; `covered` says where another part stands before its bores. */
export const throughOf = (
  part: Part,
  place: Place,
  leaning: boolean,
  gap: number,
  covered: (z: number) => boolean,
): Mark[] =>
  part.bores.length === 0
    ? [...seenSide(part, -1, place), ...seenSide(part, 1, place)]
    : ([-1, 1] as const).flatMap((side) => [
        ...cutSide(part, side, place, leaning, gap),
        ...boreEdges(part, side, place, (z) => !covered(z)),
      ]);

const circle = (centre: Spot, r: number, isWide: boolean): Mark => ({
  kind: 'arc',
  centre,
  r,
  from: 0,
  to: 360,
  wide: isWide,
});
/** Three quarters, open at the upper right. */
const mostOfCircle = (centre: Spot, r: number): Mark => ({ kind: 'arc', centre, r, from: 100, to: 370, wide: false });

const outlineFromEnd = (step: Step, [x, y]: Spot, scale: number): Mark[] => {
  if (step.shape === 'round') return [circle([x, y], step.r * scale, true)];
  const sides = step.shape === 'hexagon' ? 6 : 4;
  const r = reach(step) * scale;
  const first = step.shape === 'hexagon' ? 0 : Math.PI / 4;
  const points = Array.from({ length: sides }, (_, i): Spot => {
    const a = first + (2 * Math.PI * i) / sides;
    return [x + r * Math.cos(a), y + r * Math.sin(a)];
  });
  return [{ kind: 'line', points, wide: true, closed: true }];
};

/** From above: what no higher step hides. */
export const endOf = (part: Part, centre: Spot, scale: number): Mark[] => {
  const marks: Mark[] = [];
  let hidden = 0;
  for (const step of [...part.outer].reverse()) {
    if (step.r <= hidden + 1e-9) continue;
    marks.push(...outlineFromEnd(step, centre, scale));
    if (step.thread && hidden === 0) marks.push(mostOfCircle(centre, roots(step) * scale));
    hidden = Math.max(hidden, reach(step));
  }
  if (part.socket)
    marks.push(
      ...outlineFromEnd({ name: 'bore', from: 0, to: 0, r: part.socket.flats / 2, shape: 'hexagon' }, centre, scale),
    );
  // Down the bores that are open above, each no wider than the last.
  let open = Number.POSITIVE_INFINITY;
  let z = heightOf(part);
  for (const bore of [...part.bores].sort((a, b) => b.to - a.to)) {
    if (Math.abs(bore.to - z) > 1e-9) break;
    z = bore.from;
    if (roots(bore) >= open - 1e-9) continue;
    open = roots(bore);
    marks.push(circle(centre, open * scale, true));
    if (bore.thread) marks.push(mostOfCircle(centre, bore.r * scale));
  }
  const far = widestHalf(part) * scale * 1.1 + PAST;
  const [x, y] = centre;
  return [...marks, ...chain([x - far, y], [x + far, y]), ...chain([x, y - far], [x, y + far])];
};
