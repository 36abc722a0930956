/**
 * A net as a picture wants it: three corners of its own for each triangle, with a normal that is smooth where the surface
 * is round and not where it turns sharply. Triangles without area, which ends of threads have, are left out.
 */
import type { Mesh } from '../../../assembly/adjuster/solid.ts';

export interface Faceted {
  /** x, y, z of each corner, mm. */
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  /** Of each corner: which thread it belongs to, 0 for none. */
  readonly threads: Float32Array;
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
  const out = {
    positions: new Float32Array(9 * kept.length),
    normals: new Float32Array(9 * kept.length),
    threads: new Float32Array(3 * kept.length),
  };
  kept.forEach((t, i) => {
    const own = units.get(t) as [number, number, number];
    const corners = [0, 1, 2].map((k) => triangles[3 * t + k] as number);
    const middle = [0, 1, 2].map((k) => corners.reduce((sum, c) => sum + at(c, k), 0) / 3) as [number, number, number];
    out.threads.fill(threadAt(Math.hypot(middle[0], middle[1]), middle[2]), 3 * i, 3 * i + 3);
    corners.forEach((corner, k) => {
      const sum = [0, 0, 0];
      for (const other of round[corner] as number[]) {
        const n = units.get(other) as [number, number, number];
        if (n[0] * own[0] + n[1] * own[1] + n[2] * own[2] < SMOOTH) continue;
        // By area, as the normals of the triangles still have it.
        for (let j = 0; j < 3; j++) sum[j] = (sum[j] as number) + (normals[3 * other + j] as number);
      }
      const length = Math.hypot(...sum);
      for (let j = 0; j < 3; j++) {
        out.positions[9 * i + 3 * k + j] = at(corner, j);
        out.normals[9 * i + 3 * k + j] = (sum[j] as number) / length;
      }
    });
  });
  return out;
};
