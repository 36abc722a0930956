/**
 * The whole ± of a measured net lead: what the fit leaves open, and what no fit can see.
 *
 * Each part as a bound or an interval on the lead, mm a turn, N the turns read over:
 *   fit     half its 95 % interval, taken as 2 u
 *   gauge   q |Δ|                      scale error of the indicator, ±q
 *   cosine  |Δ| (1/cos θ − 1)          plunger tilted by up to θ (cosine-error-face)
 *   Abbe    a tan θ_c/N                plunger beside the axis by a, tilt over the run (abbe-error)
 *   drift   e_d/N                      of stand and part over the run, ±e_d; turns and time going together, at worst
 *   repeat  √2 e_rp/N                   of the indicator at both ends, ±e_rp
 * Bounds are rectangular. They are combined by the law of propagation (propagation.ts), as if they had nothing to do with each other.
 * Whether a lead agrees can only be told where this ± is no larger than the difference that matters. Source: JCGM 100:2008. Units: mm, rad.
 */
import { mm, rad } from '../kernel/quantity.ts';
import { outOfBounds } from '../kernel/relation.ts';
import { good, type Result } from '../kernel/result.ts';
import { COVERAGE, type Combined, combined, ofBound } from '../numerics/propagation.ts';
import { abbeError, cosineErrorFace } from './calibration.ts';

export type SigningPart = 'fit' | 'gauge' | 'cosine' | 'abbe' | 'drift' | 'repeat';

export interface Signing {
  /** Measured net lead, and half the 95 % interval of its fit, mm a turn. */
  readonly lead: number;
  readonly fit: number;
  /** Turns read over. */
  readonly turns: number;
  readonly q_g: number;
  readonly theta_i: number;
  readonly a_o: number;
  readonly theta_c: number;
  readonly e_d: number;
  readonly e_rp: number;
  /** Nominal net lead, and what the stated lead errors allow, mm a turn. */
  readonly nominal: number;
  readonly tolerance: number;
  /** A difference as large as this matters, mm a turn. */
  readonly matters: number;
}

export interface Signed {
  readonly whole: Combined<SigningPart>;
  readonly verdict: 'agrees' | 'differs' | 'not to be told';
}

export const signLead = (given: Signing): Result<Signed> => {
  const refusal =
    outOfBounds('q_g', given.q_g) ??
    outOfBounds('e_d', given.e_d) ??
    outOfBounds('e_rp', given.e_rp) ??
    outOfBounds('e_mt', given.matters);
  if (refusal) return refusal;
  const size = Math.abs(given.lead);
  const over = Math.max(given.turns, 1e-9);
  const cosine = cosineErrorFace.of({ w: mm(size), theta_i: rad(given.theta_i) });
  if (!cosine.ok) return cosine;
  const abbe = abbeError.of({ a_o: mm(given.a_o), theta_c: rad(given.theta_c) });
  if (!abbe.ok) return abbe;
  const whole = combined<SigningPart>([
    { name: 'fit', u: given.fit / COVERAGE },
    { name: 'gauge', u: ofBound(given.q_g * size) },
    { name: 'cosine', u: ofBound(cosine.value.e_c) },
    { name: 'abbe', u: ofBound(abbe.value.e_a / over) },
    { name: 'drift', u: ofBound(given.e_d / over) },
    { name: 'repeat', u: ofBound((Math.SQRT2 * given.e_rp) / over) },
  ]);
  const off = Math.abs(given.lead - given.nominal);
  const verdict = off > whole.U + given.tolerance ? 'differs' : whole.U > given.matters ? 'not to be told' : 'agrees';
  return good({ whole, verdict });
};
