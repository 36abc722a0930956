/**
 * What is stated of the indicator and the stand, as bounds on a motion that was measured with them; see signing.ts.
 * Units: mm, rad.
 */
import { mm, rad } from '../kernel/quantity.ts';
import { outOfBounds } from '../kernel/relation.ts';
import { good, type Result } from '../kernel/result.ts';
import { combined, coverageFactor, type Doubt, effectiveFreedom } from '../numerics/propagate.ts';
import { abbeError, cosineErrorFace } from './calibration.ts';

export interface SetUp {
  readonly q_g: number;
  readonly theta_i: number;
  readonly a_o: number;
  readonly theta_c: number;
  readonly e_d: number;
  readonly e_rp: number;
}

export type SetUpPart = 'gauge' | 'cosine' | 'abbe' | 'drift' | 'repeat';

/** Half widths, mm, on a motion of this size, where what comes once a motion is shared by so many turns. */
export const setUpBounds = (
  motion: number,
  shared: number,
  given: SetUp,
): Result<readonly (readonly [SetUpPart, number])[]> => {
  const refusal = outOfBounds('q_g', given.q_g) ?? outOfBounds('e_d', given.e_d) ?? outOfBounds('e_rp', given.e_rp);
  if (refusal) return refusal;
  // In proportion to the motion: asked of a millimetre, whatever the motion.
  const cosine = cosineErrorFace.of({ w: mm(1), theta_i: rad(given.theta_i) });
  if (!cosine.ok) return cosine;
  const abbe = abbeError.of({ a_o: mm(given.a_o), theta_c: rad(given.theta_c) });
  if (!abbe.ok) return abbe;
  const size = Math.abs(motion);
  return good([
    ['gauge', given.q_g * size],
    ['cosine', cosine.value.e_c * size],
    ['abbe', Math.abs(abbe.value.e_a) / shared],
    ['drift', Math.abs(given.e_d) / shared],
    ['repeat', (Math.SQRT2 * Math.abs(given.e_rp)) / shared],
  ]);
};

/** Parts that have nothing to do with each other, as one: the factor of about 95 % and the expanded uncertainty. */
export const expandedOf = (
  parts: readonly Pick<Doubt, 'u' | 'freedom'>[],
): { readonly k: number; readonly U: number } => {
  const u = combined(
    parts.map(() => 1),
    parts.map((part) => part.u),
  );
  const k = coverageFactor(
    effectiveFreedom(
      u,
      parts.map((part) => ({ part: part.u, freedom: part.freedom })),
    ),
  );
  return { k, U: k * u };
};
