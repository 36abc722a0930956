/**
 * The whole ± of a measured net lead: what the fit leaves open, and what no fit can see.
 *
 * Each part as a bound or an interval on the lead, mm a turn, N the turns read over:
 *   fit     the standard error of its slope, with its degrees of freedom
 *   gauge   q |Δ|                      scale error of the indicator, ±q
 *   cosine  |Δ| (1/cos θ − 1)          plunger tilted by up to θ (cosine-error-face)
 *   Abbe    a tan θ_c/N                plunger beside the axis by a, tilt over the run (abbe-error)
 *   drift   e_d/N                      of stand and part over the run, ±e_d; turns and time going together, at worst
 *   repeat  √2 e_rp/N                   of the indicator at both ends, ±e_rp
 * Bounds are rectangular. They are combined by the law of propagation (propagate.ts), as if they had nothing to do with each other.
 * A lead differs where it is off the nominal one by more than this ± and ε |Δ| together, ε the relative error of the net lead that the stated lead
 * errors of the threads allow (lead-error.ts); comparison within their sum is common practice, no source. Whether it
 * agrees can only be told where the ± is no larger than the difference that matters. Source: JCGM 100:2008. Units: mm, rad.
 */
import { outOfBounds } from '../kernel/relation.ts';
import { good, type Result } from '../kernel/result.ts';
import { flat } from '../numerics/propagate.ts';
import { expandedOf, type SetUp, type SetUpPart, setUpBounds } from './set-up.ts';

export type SigningPart = 'fit' | SetUpPart;

export interface Signing extends SetUp {
  /** Measured net lead and its standard error by the fit, mm a turn, with the degrees of freedom of that. */
  readonly lead: number;
  readonly fit: number;
  readonly freedom: number;
  /** Turns read over. */
  readonly turns: number;
  /** Nominal net lead, and what the stated lead errors allow, mm a turn. */
  readonly nominal: number;
  readonly tolerance: number;
  /** A difference as large as this matters, mm a turn. */
  readonly matters: number;
}

export interface Signed {
  /** The whole ± of about 95 %, and its parts, each as that part alone would be, the largest first; mm a turn. */
  readonly U: number;
  readonly parts: readonly { readonly name: SigningPart; readonly U: number }[];
  /** Lead found less nominal, and what the stated lead errors allow, mm a turn. */
  readonly difference: number;
  readonly tolerance: number;
  readonly verdict: 'agrees' | 'differs' | 'not to be told';
}

export const signLead = (given: Signing): Result<Signed> => {
  const refusal = outOfBounds('e_mt', given.matters);
  if (refusal) return refusal;
  const bounds = setUpBounds(given.lead, Math.max(given.turns, 1e-9), given);
  if (!bounds.ok) return bounds;
  const parts = [
    { name: 'fit' as SigningPart, u: given.fit, freedom: given.freedom },
    ...bounds.value.map(([name, half]) => ({ name, ...flat(half) })),
  ];
  const { k, U } = expandedOf(parts);
  const difference = given.lead - given.nominal;
  const verdict =
    Math.abs(difference) > U + given.tolerance ? 'differs' : U > given.matters ? 'not to be told' : 'agrees';
  return good({
    U,
    parts: parts.map((part) => ({ name: part.name, U: k * part.u })).sort((a, b) => b.U - a.U),
    difference,
    tolerance: given.tolerance,
    verdict,
  });
};
