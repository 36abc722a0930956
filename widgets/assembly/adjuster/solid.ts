/**
 * The solid of a part: a closed net of triangles from the same skin as its section, mm, seen from outside anticlockwise. It is made once a
 * part; turning and lifting it is one matrix.
 */
import type { Part } from './part.ts';
import { type Skin, type SkinOptions, skinAt } from './surface.ts';

export interface Mesh {
  /** x, y, z of each corner in turn. */
  readonly positions: Float64Array;
  /** Three corners a triangle. */
  readonly triangles: Uint32Array;
}

/** Half planes round the axis: a multiple of 24, so that corners of hexagons and squares fall on them. */
const AROUND = 48;
/** Corners closer than this are one, mm. */
const GRAIN = 1e-6;
/** Shifted, so that sizes of round fractions do not lie on the border of two cells. */
const cell = (x: number): number => Math.round(x / GRAIN + 0.137);

export const meshOf = (part: Part, options: SkinOptions, around = AROUND): Mesh =>
  meshAround((theta) => skinAt(part, theta, options), around);

/** The net of whatever has a line of as many points at every angle, up its outside. */
export const meshAround = (skin: (theta: number) => Skin, around = AROUND): Mesh => {
  const positions: number[] = [];
  const put3 = (r: number, z: number, theta: number): number => {
    positions.push(r * Math.cos(theta), r * Math.sin(theta), z);
    return positions.length / 3 - 1;
  };
  // Three kinds of corner are one: neighbours on a line, those on the axis, and those of the line that closes the round, which are
  // those of the first one turn up or down the thread.
  const onAxis = new Map<number, number>();
  const first = new Map<string, number>();
  const columns = Array.from({ length: around + 1 }, (_, j) => {
    const theta = (2 * Math.PI * j) / around;
    const { through, points } = skin(theta);
    const line: number[] = [];
    let [lastR, lastZ, last] = [Number.NaN, Number.NaN, 0];
    for (const [r, z] of points) {
      if (!(Math.abs(r - lastR) < GRAIN && Math.abs(z - lastZ) < GRAIN)) {
        const axial = r < GRAIN ? onAxis.get(cell(z)) : undefined;
        const key = j === 0 || j === around ? `${cell(r)},${cell(z)}` : '';
        last = axial ?? (j === around ? first.get(key) : undefined) ?? put3(r, z, theta);
        if (r < GRAIN) onAxis.set(cell(z), last);
        if (j === 0) first.set(key, last);
        [lastR, lastZ] = [r, z];
      }
      line.push(last);
    }
    return through ? [...line, line[0] as number] : line;
  });
  const triangles: number[] = [];
  const put = (a: number, b: number, c: number) => {
    if (a !== b && b !== c && c !== a) triangles.push(a, b, c);
  };
  for (let j = 0; j < around; j++) {
    const [here, next] = [columns[j] as number[], columns[j + 1] as number[]];
    for (let i = 0; i + 1 < here.length; i++) {
      const [a, b, c, d] = [here[i] as number, next[i] as number, next[i + 1] as number, here[i + 1] as number];
      put(a, b, c);
      put(a, c, d);
    }
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
};

/** Volume inside a closed net, mm³: the sum of the pyramids from the origin to its triangles. */
export const meshVolume = ({ positions, triangles }: Mesh): number => {
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * (triangles[t + k] as number)) as [number, number, number];
    const p = (i: number, k: number) => positions[i + k] as number;
    sum +=
      p(a, 0) * (p(b, 1) * p(c, 2) - p(b, 2) * p(c, 1)) -
      p(a, 1) * (p(b, 0) * p(c, 2) - p(b, 2) * p(c, 0)) +
      p(a, 2) * (p(b, 0) * p(c, 1) - p(b, 1) * p(c, 0));
  }
  return sum / 6;
};
