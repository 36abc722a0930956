/**
 * Printed parts that are one outline all the way up: a plate with holes, as outlines for a drawing and as a closed net for a printer.
 *
 * The faces are cut into triangles by a library; walls stand on the same corners, so every edge is in two triangles. mm, z up from the bed.
 */
import earcut from 'earcut';
import type { Mesh } from '../adjuster/solid.ts';
import type { Outline } from '../files/outline-files.ts';

export type Place = readonly [x: number, y: number];

export interface Plate {
  /** Anticlockwise seen from above. */
  readonly outline: readonly Place[];
  readonly holes: readonly (readonly Place[])[];
  readonly height: number;
}

/** A corner nearer than this to the last, or to the line through its neighbours, is none: faces would skip it and walls would not. */
const GRAIN = 1e-7;

const corners = (points: readonly Place[]): readonly Place[] => {
  let kept = points.filter((p, i) => {
    const [x, y] = points.at(i - 1) as Place;
    return Math.hypot(p[0] - x, p[1] - y) > GRAIN;
  });
  for (;;) {
    const bent = kept.filter((p, i) => {
      const [a, b] = [kept.at(i - 1) as Place, kept[(i + 1) % kept.length] as Place];
      const [u, v] = [
        [p[0] - a[0], p[1] - a[1]],
        [b[0] - p[0], b[1] - p[1]],
      ] as [Place, Place];
      const across = u[0] * v[1] - u[1] * v[0];
      return Math.abs(across) > GRAIN * (Math.hypot(...u) + Math.hypot(...v));
    });
    if (bent.length === kept.length) return kept;
    kept = bent;
  }
};

const area = (points: readonly Place[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [x1, y1] = points[(i + 1) % points.length] as Place;
    return sum + (x * y1 - x1 * y) / 2;
  }, 0);

const wound = (points: readonly Place[], anticlockwise: boolean): readonly Place[] =>
  area(points) > 0 === anticlockwise ? points : [...points].reverse();

export const plateMesh = ({ outline, holes, height }: Plate): Mesh => {
  const rings = [wound(corners(outline), true), ...holes.map((hole) => wound(corners(hole), false))];
  const flat = rings.flat();
  const starts: number[] = [];
  let count = 0;
  for (const ring of rings) {
    starts.push(count);
    count += ring.length;
  }
  const faces = earcut(flat.flat(), starts.slice(1));
  const positions = new Float64Array(6 * count);
  for (const [i, [x, y]] of flat.entries()) {
    positions.set([x, y, 0], 3 * i);
    positions.set([x, y, height], 3 * (count + i));
  }
  const triangles: number[] = [];
  const corner = (t: number): [number, number, number] =>
    [faces[t], faces[t + 1], faces[t + 2]] as [number, number, number];
  // They are all wound one way; slivers along a row of holes have no area of their own to tell it by.
  let turned = 0;
  for (let t = 0; t < faces.length; t += 3) turned += area(corner(t).map((i) => flat[i] as Place));
  for (let t = 0; t < faces.length; t += 3) {
    const [a, b, c] = corner(t);
    const [p, q, r] = turned > 0 ? [a, b, c] : [a, c, b];
    triangles.push(p + count, q + count, r + count, p, r, q);
  }
  for (const [k, ring] of rings.entries())
    for (let i = 0; i < ring.length; i++) {
      const start = starts[k] as number;
      const [a, b] = [start + i, start + ((i + 1) % ring.length)];
      triangles.push(a, b, b + count, a, b + count, a + count);
    }
  return { positions, triangles: Uint32Array.from(triangles) };
};

export const plateOutlines = ({ outline, holes }: Plate, layer: string): readonly Outline[] => [
  { layer, points: outline, closed: true },
  ...holes.map((points) => ({ layer: `${layer} holes`, points, closed: true })),
];

/** A hexagon by its width across flats, one flat pair level. */
export const hexagon = (width: number, [x, y]: Place = [0, 0]): readonly Place[] =>
  Array.from({ length: 6 }, (_, i): Place => {
    const angle = (Math.PI / 3) * i;
    return [x + (width / Math.sqrt(3)) * Math.cos(angle), y + (width / Math.sqrt(3)) * Math.sin(angle)];
  });
