/**
 * A net as a picture wants it: at each corner a normal that is smooth where the surface is round and not where it turns sharply, so a corner on an edge
 * is there once for each side of it. Triangles without area, which ends of threads have, are left out.
 */
import type { Mesh } from '../../../assembly/adjuster/solid.ts';

export interface Faceted {
  /** x, y, z of each corner, mm. */
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  /** Of each corner: which thread it belongs to, 0 for none. */
  readonly threads: Float32Array;
  /** Three corners a triangle. */
  readonly index: Uint32Array;
}

/** Surfaces that meet at less than this are one round surface: more than the 7.5° between two half planes, less than the 30° of a flank. */
const SMOOTH = Math.cos((24 * Math.PI) / 180);

export const facetsOf = ({ positions, triangles }: Mesh, threadAt: (r: number, z: number) => number): Faceted => {
  const count = triangles.length / 3;
  const normals = new Float64Array(3 * count);
  /** Triangles round each corner. */
  const round: number[][] = Array.from({ length: positions.length / 3 }, () => []);
  const at = (corner: number, k: number) => positions[3 * corner + k] as number;
  const kept: number[] = [];
  for (let t = 0; t < count; t++) {
    const [a, b, c] = [0, 1, 2].map((k) => triangles[3 * t + k] as number) as [number, number, number];
    const u = [0, 1, 2].map((k) => at(b, k) - at(a, k)) as [number, number, number];
    const v = [0, 1, 2].map((k) => at(c, k) - at(a, k)) as [number, number, number];
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    if (Math.hypot(...n) < 1e-9) continue;
    normals.set(n, 3 * t);
    kept.push(t);
    for (const corner of [a, b, c]) (round[corner] as number[]).push(t);
  }
  const unit = (t: number): [number, number, number] => {
    const n = [0, 1, 2].map((k) => normals[3 * t + k] as number) as [number, number, number];
    const length = Math.hypot(...n);
    return [n[0] / length, n[1] / length, n[2] / length];
  };
  const units = new Map(kept.map((t) => [t, unit(t)]));
  const [places, ways, threads, index]: [number[], number[], number[], number[]] = [[], [], [], []];
  /** What has been put for each corner of the net: one that several triangles share is worked once a frame. */
  const put: number[][] = Array.from({ length: positions.length / 3 }, () => []);
  const cornerOf = (corner: number, n: readonly number[], thread: number): number => {
    const same = (i: number) =>
      threads[i] === thread && n.every((x, j) => Math.abs(x - (ways[3 * i + j] as number)) < 1e-4);
    const there = (put[corner] as number[]).find(same);
    if (there !== undefined) return there;
    const next = threads.push(thread) - 1;
    places.push(at(corner, 0), at(corner, 1), at(corner, 2));
    ways.push(...n);
    (put[corner] as number[]).push(next);
    return next;
  };
  for (const t of kept) {
    const own = units.get(t) as [number, number, number];
    const corners = [0, 1, 2].map((k) => triangles[3 * t + k] as number);
    const middle = [0, 1, 2].map((k) => corners.reduce((sum, c) => sum + at(c, k), 0) / 3) as [number, number, number];
    const thread = threadAt(Math.hypot(middle[0], middle[1]), middle[2]);
    for (const corner of corners) {
      const sum = [0, 0, 0];
      for (const other of round[corner] as number[]) {
        const n = units.get(other) as [number, number, number];
        if (n[0] * own[0] + n[1] * own[1] + n[2] * own[2] < SMOOTH) continue;
        // By area, as the normals of the triangles still have it.
        for (let j = 0; j < 3; j++) sum[j] = (sum[j] as number) + (normals[3 * other + j] as number);
      }
      const length = Math.hypot(...sum);
      const way = sum.map((x) => x / length);
      index.push(cornerOf(corner, way, thread));
    }
  }
  return {
    positions: Float32Array.from(places),
    normals: Float32Array.from(ways),
    threads: Float32Array.from(threads),
    index: Uint32Array.from(index),
  };
};
