/**
 * Binary STL: 80 bytes of heading, which must not begin with “solid”; the count; then 50 bytes a triangle, its normal and corners as 32-bit floats, little end
 * first, seen from outside anticlockwise. The form has no unit: the name of the file says it.
 * Source: the form as 3D Systems published it (from memory; read by an open mesh checker in the tests).
 */
import type { Mesh } from '../adjuster/solid.ts';

const HEADING = 80;
const FACET = 50;

export const stlOf = ({ positions, triangles }: Mesh): Uint8Array<ArrayBuffer> => {
  const count = triangles.length / 3;
  const bytes = new Uint8Array(HEADING + 4 + FACET * count);
  const view = new DataView(bytes.buffer);
  bytes.set(new TextEncoder().encode('binary STL, millimetres'));
  view.setUint32(HEADING, count, true);
  for (let t = 0; t < count; t++) {
    const corners = [0, 1, 2].map((k) => {
      const at = 3 * (triangles[3 * t + k] as number);
      return [positions[at], positions[at + 1], positions[at + 2]] as [number, number, number];
    }) as [Corner, Corner, Corner];
    let at = HEADING + 4 + FACET * t;
    for (const x of [normalOf(...corners), ...corners].flat()) {
      view.setFloat32(at, x, true);
      at += 4;
    }
  }
  return bytes;
};

type Corner = [number, number, number];

/** Nought for a sliver, which readers then work out themselves. */
const normalOf = (a: Corner, b: Corner, c: Corner): Corner => {
  const [u, v] = [b, c].map((p) => [p[0] - a[0], p[1] - a[1], p[2] - a[2]] as Corner) as [Corner, Corner];
  const n: Corner = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const length = Math.hypot(...n);
  return length > 0 ? [n[0] / length, n[1] / length, n[2] / length] : [0, 0, 0];
};
