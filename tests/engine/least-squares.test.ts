import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../widgets/engine/numerics/least-squares.ts';

describe('leastSquares', () => {
  it('gives the textbook quadratic through five points (normal equations by hand)', () => {
    // y = 1, 0, 2, 3, 7 at x = −2 … 2: Σy 13, Σxy 15, Σx²y 35; b = 15/10, c = (35·5 − 13·10)/(34·5 − 100) = 45/70,
    // a = (13 − 10c)/5; residual sum of squares Σy² − aΣy − bΣxy − cΣx²y.
    const x = [-2, -1, 0, 1, 2];
    const fit = leastSquares([x.map(() => 1), x, x.map((v) => v * v)], [1, 0, 2, 3, 7]);
    const c = 45 / 70;
    const a = (13 - 10 * c) / 5;
    expect(fit?.coefficients).toEqual([expect.closeTo(a, 12), expect.closeTo(1.5, 12), expect.closeTo(c, 12)]);
    expect(fit?.sumOfSquares).toBeCloseTo(63 - 13 * a - 15 * 1.5 - 35 * c, 10);
    expect(fit?.freedom).toBe(2);
    // (CᵀC)⁻¹ by hand: middle entry 1/Σx², corner Σ1/(Σ1 Σx⁴ − (Σx²)²), mixed −Σx²/(same).
    expect(fit?.inverse[1]?.[1]).toBeCloseTo(1 / 10, 12);
    expect(fit?.inverse[2]?.[2]).toBeCloseTo(5 / 70, 12);
    expect(fit?.inverse[0]?.[2]).toBeCloseTo(-10 / 70, 12);
    expect(fit?.inverse[2]?.[0]).toBeCloseTo(-10 / 70, 12);
    expect(fit?.inverse[0]?.[0]).toBeCloseTo(34 / 70, 12);
  });

  it('says how far the columns stand apart: the sine of the angle between two', () => {
    const at = (degrees: number) =>
      leastSquares(
        [
          [1, 0, 0],
          [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180), 0],
          [0, 0, 1],
        ],
        [1, 2, 3],
      )?.independence;
    expect(at(90)).toBeCloseTo(1, 12);
    expect(at(30)).toBeCloseTo(0.5, 12);
  });

  it('is the mean for one column of ones', () => {
    expect(leastSquares([[1, 1, 1, 1]], [1, 2, 4, 9])).toMatchObject({
      coefficients: [4],
      sumOfSquares: 38,
      freedom: 3,
    });
  });

  it('does not care for the size of the columns', () => {
    for (const size of [1e-9, 1, 1e9]) {
      const of = (...columns: number[][]) =>
        leastSquares(
          columns.map((c) => c.map((v) => v * size)),
          [1, 2, 4],
        );
      expect(
        of([1, 1, 1], [0, 1, 2])?.coefficients.map((v) => v * size),
        `${size}`,
      ).toEqual([expect.closeTo(5 / 6, 12), expect.closeTo(1.5, 12)]);
      expect(of([1, 1, 1], [0.1, 0.1, 0.1]), `${size}`).toBeUndefined();
      expect(of([0.1, 0.7, 0.3], [0.3, 2.1, 0.9]), `${size}`).toBeUndefined();
    }
  });

  it('keeps nine digits where the columns stand a ten-millionth apart', () => {
    const d = 2 ** -23;
    const fit = leastSquares(
      [
        [1, 1, 1],
        [1, 1 + d, 1 - d],
      ],
      [5, 5 + 3 * d, 5 - 3 * d],
    );
    expect(fit?.coefficients[0]).toBeCloseTo(2, 7);
    expect(fit?.coefficients[1]).toBeCloseTo(3, 7);
  });

  it('gives nothing for columns that are mixtures of one another, for none, and for more than the rows', () => {
    expect(
      leastSquares(
        [
          [1, 2, 3],
          [2, 4, 6 + 1e-12],
        ],
        [1, 2, 3],
      ),
    ).toBeUndefined();
    expect(leastSquares([[0, 0, 0]], [1, 2, 3])).toBeUndefined();
    expect(leastSquares([], [1, 2, 3])).toBeUndefined();
    expect(leastSquares([[1], [2]], [1])).toBeUndefined();
  });
});
