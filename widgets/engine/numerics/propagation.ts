/**
 * The law of propagation of uncertainty: what independent inputs, each known only so well, do to a result.
 *
 *   u² = Σ (c_i u_i)²,   c_i how much the result changes per unit of the input, u_i the standard uncertainty of the input
 * A bound ±a inside which every value is as likely has u = a/√3. The expanded uncertainty of about 95 % is U = 2 u.
 * Holds where the result is nearly straight over the spread of each input, and where no single rectangular part rules: then the
 * interval of 95 % is narrower than 2 u (1.65 u for one such part alone).
 * Source: JCGM 100:2008, 5.1.2 and 4.3.7; its example H.1 and example 9.2.3 of JCGM 101:2008 are in the tests.
 */

export interface Contribution<N extends string = string> {
  readonly name: N;
  /** What it does to the result: sensitivity times standard uncertainty, in the unit of the result. */
  readonly u: number;
}

export interface Combined<N extends string = string> {
  /** Standard uncertainty of the result. */
  readonly u: number;
  /** Expanded, about 95 %. */
  readonly U: number;
  /** The contributions, largest first, each with its share of u². */
  readonly ranked: readonly (Contribution<N> & { readonly share: number })[];
}

export const COVERAGE = 2;

/** Standard uncertainty of a bound to each side. */
export const ofBound = (bound: number): number => Math.abs(bound) / Math.sqrt(3);

export const combined = <N extends string>(parts: readonly Contribution<N>[]): Combined<N> => {
  const u = Math.hypot(...parts.map((part) => part.u));
  const ranked = parts
    .map((part) => ({ ...part, u: Math.abs(part.u), share: u > 0 ? (part.u / u) ** 2 : 0 }))
    .sort((a, b) => b.u - a.u);
  return { u, U: COVERAGE * u, ranked };
};
