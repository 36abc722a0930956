/**
 * Linear least squares with few unknowns: y ≈ Σ b_j c_j, the sum of squared residuals being least.
 *
 * Source: Björck, Numerical Methods for Least Squares Problems (SIAM 1996), ch. 2 (from memory): QR by modified
 * Gram–Schmidt, y being treated as one more column. The normal equations are not formed, so digits are lost with the
 * condition of the columns and not with its square.
 *
 *   C = Q R,  R b = Qᵀ y,  (Cᵀ C)⁻¹ = R⁻¹ R⁻ᵀ
 *
 * Units: b_j is in the unit of y over that of its column. `independence` is a pure number from 0 (a column is a
 * mixture of those before it) to 1 (all stand square to one another).
 */
import { at } from '../kernel/at.ts';

export interface LeastSquares {
  /** b_j, in the order of the columns. */
  readonly coefficients: readonly number[];
  /** (Cᵀ C)⁻¹: times the variance of one y it is the covariance of the coefficients. */
  readonly inverse: readonly (readonly number[])[];
  /** y − C b. */
  readonly residuals: readonly number[];
  /** Σ residual². */
  readonly sumOfSquares: number;
  /** Rows less unknowns. */
  readonly freedom: number;
  /** The least share of a column that is left when the columns before it are taken out. */
  readonly independence: number;
}

/** Below this share a column is a mixture of the others but for rounding: the answer would be noise. */
const DEPENDENT = 1e-9;

/**
 * Fits the columns to y; each column and y have the same number of finite rows. Undefined where the columns can't
 * be told apart or are more than the rows: the caller knows the words for it.
 */
export const leastSquares = (
  columns: readonly (readonly number[])[],
  y: readonly number[],
): LeastSquares | undefined => {
  const unknowns = columns.length;
  if (!(unknowns >= 1 && y.length >= unknowns)) return undefined;
  const Q: number[][] = [];
  // R is kept by columns: R[j][i] is the part of column j along direction i ≤ j.
  const R: number[][] = [];
  let independence = 1;
  for (const column of columns) {
    const before = length(column);
    const q = [...column];
    const parts = takeOut(q, Q);
    const left = length(q);
    const share = left / before;
    if (!(share > DEPENDENT)) return undefined;
    independence = Math.min(independence, share);
    Q.push(q.map((v) => v / left));
    R.push([...parts, left]);
  }
  const residuals = [...y];
  const coefficients = backSubstitute(R, takeOut(residuals, Q));
  // Row j of R⁻¹ over all right-hand sides e_k; (CᵀC)⁻¹_ij = Σ_k (R⁻¹)_ik (R⁻¹)_jk.
  const inverseR = columns.map((_, k) =>
    backSubstitute(
      R,
      columns.map((__, i) => (i === k ? 1 : 0)),
    ),
  );
  const inverse = columns.map((_, i) =>
    columns.map((__, j) => inverseR.reduce((sum, col) => sum + at(col, i) * at(col, j), 0)),
  );
  return {
    coefficients,
    inverse,
    residuals,
    sumOfSquares: residuals.reduce((sum, e) => sum + e * e, 0),
    freedom: y.length - unknowns,
    independence,
  };
};

const length = (v: readonly number[]): number => Math.sqrt(v.reduce((sum, x) => sum + x * x, 0));

/** Takes the parts along the directions out of v, in place; gives those parts. */
const takeOut = (v: number[], directions: readonly (readonly number[])[]): number[] =>
  directions.map((q) => {
    let part = 0;
    for (let i = 0; i < v.length; i++) part += at(q, i) * at(v, i);
    for (let i = 0; i < v.length; i++) v[i] = at(v, i) - part * at(q, i);
    return part;
  });

const backSubstitute = (R: readonly (readonly number[])[], right: readonly number[]): number[] => {
  const b = [...right];
  for (let j = R.length - 1; j >= 0; j--) {
    const column = at(R, j);
    const value = at(b, j) / at(column, j);
    b[j] = value;
    for (let i = 0; i < j; i++) b[i] = at(b, i) - value * at(column, i);
  }
  return b;
};
