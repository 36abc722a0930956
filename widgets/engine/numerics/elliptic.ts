/**
 * Complete elliptic integrals, for the contact of a ball on a roller.
 *
 * Equation: K(m) = ∫₀^{π/2} dφ/√(1 − m sin²φ), E(m) = ∫₀^{π/2} √(1 − m sin²φ) dφ, by the arithmetic-geometric
 * mean; D = (K − E)/m and B = K − D, each without the cancellation that K − E suffers at small m.
 * Source: Abramowitz & Stegun 17.6 (from memory), with Σ 2ⁿ⁻¹ cₙ² = 1 − E/K. Argument m = k², from 0 to below 1; pure numbers.
 */
export interface Elliptic {
  readonly K: number;
  readonly E: number;
  /** (K − E)/m. */
  readonly D: number;
  /** K − D = (E − (1 − m)K)/m. */
  readonly B: number;
}

/** @param m1 the complementary parameter 1 − m, above 0 and up to 1: near a line contact 1 − m is the small one */
export const completeElliptic = (m1: number): Elliptic => {
  const m = 1 - m1;
  let a = 1;
  let g = Math.sqrt(m1);
  // c₀² = m divided out beforehand; c₁ = (1 − √m1)/2 = m/(2(1 + √m1)), so c₁²/m holds at m = 0 too.
  let sum = 0.5 + m / (4 * (1 + g) ** 2);
  [a, g] = [(a + g) / 2, Math.sqrt(a * g)];
  for (let weight = 2; weight < 2 ** 40 && Math.abs(a - g) > 1e-17 * a; weight *= 2) {
    sum += (weight * (a - g) ** 2) / (4 * m);
    [a, g] = [(a + g) / 2, Math.sqrt(a * g)];
  }
  const K = Math.PI / (2 * a);
  const D = K * sum;
  return { K, E: K - m * D, D, B: K - D };
};
