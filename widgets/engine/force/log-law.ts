/**
 * The log law of creep and of relaxation: each tenfold time does as much as the one before.
 *
 * Equation: D = log10(1 + t/t0), the tenfold times gone after a time t from a starting time t0; long before t0 it is t/(t0 ln 10).
 * Source: logarithmic creep, the usual law of plastics well below softening (common practice, no source). t and t0 in hours, D a pure
 * number.
 */

/** Tenfold times gone after `t`. 1 + t/t0 would lose its digits long before the starting time. */
export const tenfoldTimes = (t: number, t_0: number): number => Math.log1p(t / t_0) / Math.LN10;
