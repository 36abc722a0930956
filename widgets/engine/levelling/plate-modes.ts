/**
 * How a plate on three feet swings: up and down, and rocking about two lines.
 *
 * The plate is rigid, its weight spread evenly over a rectangle w_x by w_y round the centre of gravity; each foot is a spring k along its axis that stays pressed.
 * With the height u of the centre and the tilts p, q as motion a half-gyration away (r_x = w_x/√12, r_y = w_y/√12), foot i at (x_i, y_i) from the centre moves by
 *   z_i = u + p x_i/r_x + q y_i/r_y
 * so all three coordinates have the mass m, and ω² are the eigenvalues of A = Σ k v_i v_iᵀ/m, v_i = (1, x_i/r_x, y_i/r_y). Found by Jacobi's rotations. Where the
 * plate does not move, u + p x/r_x + q y/r_y = 0, is the line about which it rocks.
 * Left out: thickness of the plate, and that it sways sideways. Source: small vibrations of a rigid body on springs, any text on mechanics; Jacobi (1846), from memory.
 * Checked against closed forms for even plates. Units: mm, N, N/mm, Hz.
 */
import { FREE_FALL } from '../contact/stiffness.ts';
import { at } from '../kernel/at.ts';
import { mm, newtons } from '../kernel/quantity.ts';
import { outOfBounds } from '../kernel/relation.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { weightOnFeet } from './levelling.ts';
import type { Place } from './plane.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'plate-weightless': Record<string, never>;
    'plate-foot-lifts': { readonly foot: number; readonly force: number };
  }
}

export interface PlateMode {
  /** Hz. */
  readonly frequency: number;
  /** Up and down, or rocking: whichever has more of the motion’s energy. */
  readonly kind: 'heave' | 'rock';
  /** Height of the motion at the centre, and its rise along x and y, a mm; the largest foot moves by 1. */
  readonly shape: { readonly u: number; readonly p: number; readonly q: number };
  /** Motion at each foot, the largest 1. */
  readonly feet: readonly number[];
}

export interface PlateOnFeet {
  readonly feet: readonly Place[];
  readonly weight: number;
  readonly centre: Place;
  readonly wide: { readonly x: number; readonly y: number };
  /** Of each foot, N/mm. */
  readonly stiffness: number;
}

/** The three ways in which it swings, slowest first. */
export const plateModes = ({ feet, weight, centre, wide, stiffness }: PlateOnFeet): Result<readonly PlateMode[]> => {
  const refusal = outOfBounds('w_x', wide.x) ?? outOfBounds('w_y', wide.y) ?? outOfBounds('k_j', stiffness);
  if (refusal) return refusal;
  if (!(weight >= 1e-3)) return bad('plate-weightless', {}, 'W');
  const [a, b, c] = [at(feet, 0), at(feet, 1), at(feet, 2)];
  const places = { x_1: mm(a.x), y_1: mm(a.y), x_2: mm(b.x), y_2: mm(b.y), x_3: mm(c.x), y_3: mm(c.y) };
  const shared = weightOnFeet.of({ W: newtons(weight), x_g: mm(centre.x), y_g: mm(centre.y), ...places });
  if (!shared.ok) return shared;
  const loads = [shared.value.F_1, shared.value.F_2, shared.value.F_3];
  const lifted = loads.findIndex((F) => !(F > 0));
  if (lifted >= 0) return bad('plate-foot-lifts', { foot: lifted + 1, force: at(loads, lifted) });
  const [rx, ry] = [wide.x / Math.sqrt(12), wide.y / Math.sqrt(12)];
  // In N/mm over tonnes ω² comes in 1/s².
  const mass = weight / FREE_FALL;
  const rows = feet.map(({ x, y }) => [1, (x - centre.x) / rx, (y - centre.y) / ry] as const);
  const A = [0, 1, 2].map((i) =>
    [0, 1, 2].map((j) => rows.reduce((sum, v) => sum + (stiffness * at(v, i) * at(v, j)) / mass, 0)),
  );
  const { values, vectors } = eigen(A);
  return good(
    values
      .map((square, i): PlateMode => {
        const v = vectors.map((row) => at(row, i));
        const moved = rows.map((row) => row.reduce((sum, x, j) => sum + x * at(v, j), 0));
        const most = moved.reduce((m, x) => (Math.abs(x) > Math.abs(m) ? x : m), 0);
        return {
          frequency: Math.sqrt(Math.max(0, square)) / (2 * Math.PI),
          kind: at(v, 0) ** 2 > 0.5 ? 'heave' : 'rock',
          shape: { u: at(v, 0) / most, p: at(v, 1) / rx / most, q: at(v, 2) / ry / most },
          feet: moved.map((x) => x / most),
        };
      })
      .sort((x, y) => x.frequency - y.frequency),
  );
};

/** Of a symmetric matrix: values, and vectors as columns. */
const eigen = (matrix: readonly (readonly number[])[]) => {
  const A = matrix.map((row) => [...row]);
  const V = A.map((_, i) => A.map((__, j) => (i === j ? 1 : 0)));
  const get = (M: number[][], i: number, j: number) => at(at(M, i), j);
  const rotate = (M: number[][], i: number, j: number, k: number, l: number, c: number, s: number) => {
    const [x, y] = [get(M, i, j), get(M, k, l)];
    at(M, i)[j] = c * x - s * y;
    at(M, k)[l] = s * x + c * y;
  };
  // Each sweep makes what is off the diagonal smaller by its square; a handful ends it.
  for (let sweep = 0; sweep < 30; sweep++)
    for (const [p, q] of [
      [0, 1],
      [0, 2],
      [1, 2],
    ] as const) {
      const off = get(A, p, q);
      if (Math.abs(off) < 1e-300) continue;
      const theta = (get(A, q, q) - get(A, p, p)) / (2 * off);
      const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.hypot(1, theta));
      const c = 1 / Math.hypot(1, t);
      for (let k = 0; k < A.length; k++) rotate(A, k, p, k, q, c, t * c);
      for (let k = 0; k < A.length; k++) rotate(A, p, k, q, k, c, t * c);
      for (let k = 0; k < A.length; k++) rotate(V, k, p, k, q, c, t * c);
    }
  return { values: A.map((row, i) => at(row, i)), vectors: V };
};
