/**
 * The friction at which a pair costs the hand as much as a plain screw does: below it the finer pair is the lighter
 * to turn, above it the heavier.
 *
 * Equation: pair torque(µ) = plain torque(µ), both against the load (effort.ts), µ the same in every thread. At µ = 0 the torques
 * are F|Δ|/2π and F L/2π, so a pair finer than the plain screw starts below it; it rubs in two threads instead
 * of one, so its torque rises faster. The difference has one sign at either end, and the root is closed in between (numerics/invert.ts).
 * Units: coefficient of friction, a pure number. Source: derived here from the two torques.
 */

import { type Bad, good, type Result } from '../kernel/result.ts';
import { rootBetween } from '../numerics/invert.ts';
import { type EffortThread, pairEffort, plainEffort } from './effort.ts';

/** Friction up to which it is looked for: the largest that the glossary admits. */
const MOST = 1;

/**
 * Coefficient of friction at which the pair A, C and the plain screw `plain` take the same torque to raise a load; undefined where
 * the pair is the lighter, or the heavier, from nought to one. The load itself drops out.
 */
export const evenFriction = (
  A: EffortThread,
  C: EffortThread,
  plain: EffortThread,
): Result<{ readonly mu: number | undefined; readonly lighterWithout: boolean }> => {
  const excess = (mu: number): Result<number> => {
    const pair = pairEffort({ A: { ...A, mu }, C: { ...C, mu }, load: 1 });
    if (!pair.ok) return pair;
    const one = plainEffort({ ...plain, mu }, 1);
    return one.ok ? good(pair.value.against.torque - one.value.against) : one;
  };
  const first = excess(0);
  if (!first.ok) return first;
  const lighterWithout = first.value < 0;
  let high = MOST;
  let last = excess(high);
  // A steep thread jams before friction reaches one: look below the jam.
  while (!last.ok && high > 1e-3) {
    high *= 0.9;
    last = excess(high);
  }
  if (!last.ok) return last;
  if (last.value < 0 === lighterWithout) return good({ mu: undefined, lighterWithout });
  let refused: Bad | undefined;
  const root = rootBetween(
    (mu) => {
      const there = excess(mu);
      if (there.ok) return there.value;
      refused ??= there;
      return undefined;
    },
    0,
    high,
  );
  return refused ?? good({ mu: root, lighterWithout });
};
