/**
 * Printed springs from their drawing: the rate of all of them, and what they are worth as a lock. What a page says of their rate or of their stiffness
 * round the axis comes from here, so a drawing has one rate. Lengths mm, forces N, modulus MPa.
 */
import {
  good,
  meanderRateAcross,
  meanderRateThick,
  megapascals,
  mm,
  newtons,
  newtonsPerMillimetre,
  plain,
  type Result,
  springLock,
} from '../../engine/index.ts';

/** A meander, as chapter and figure of printed springs draw it; its stubs are half a connector. */
export interface DrawnSpring {
  readonly waves: number;
  readonly leg: number;
  readonly connector: number;
  readonly strip: number;
  readonly high: number;
  /** Between its ends, where it is stretched to the mark. */
  readonly length: number;
  readonly modulus: number;
}

const asSymbols = (d: DrawnSpring) => ({
  E_f: megapascals(d.modulus),
  b_f: mm(d.high),
  t_f: mm(d.strip),
  m_f: plain(d.waves),
  L_f: mm(d.leg),
  p_f: mm(d.connector),
});

/** Of one of them, N/mm. */
export const drawnRate = (drawn: DrawnSpring): Result<number> => {
  const rate = meanderRateThick.of(asSymbols(drawn));
  return rate.ok ? good(rate.value.k_f) : rate;
};

/** Of all of them round the axis, N·mm a radian, and across of one, N/mm. */
export const drawnLock = (
  drawn: DrawnSpring,
  { count, radius, pull }: { readonly count: number; readonly radius: number; readonly pull: number },
): Result<{ readonly across: number; readonly kappa: number }> => {
  const across = meanderRateAcross.of({ ...asSymbols(drawn), e_f: mm(drawn.connector / 2) });
  if (!across.ok) return across;
  const lock = springLock.of({
    N_f: plain(count),
    r_k: mm(radius),
    k_x: newtonsPerMillimetre(across.value.k_x),
    F_s: newtons(pull),
    l_f: mm(drawn.length),
  });
  return lock.ok ? good({ across: across.value.k_x, kappa: lock.value.kappa }) : lock;
};

/** What a lock by drawn springs follows from; force of all of them together. */
interface LockingSprings {
  readonly drawn?: DrawnSpring | undefined;
  readonly count: number;
  readonly radius: number | undefined;
  readonly force: number | undefined;
  readonly between: string;
}

/** Stiffness of the lock that an adjuster’s springs make, where their drawing, force and place are stated and they stand on the base. */
export const lockOfSprings = ({ drawn, count, radius, force, between }: LockingSprings): number | undefined => {
  if (!drawn || radius === undefined || force === undefined || between !== 'base and carried') return undefined;
  const lock = drawnLock(drawn, { count, radius, pull: force / count });
  return lock.ok ? lock.value.kappa : undefined;
};

/** Stiffness of the lock that parts state, N·mm a radian: that of a key by its row, that of springs by their drawing. */
export const lockStiffnessOf = ({
  lock,
  springs,
}: {
  readonly lock: { readonly kind: string; readonly stiffness?: number };
  readonly springs: LockingSprings | undefined;
}): number | undefined => (lock.kind === 'springs' ? springs && lockOfSprings(springs) : lock.stiffness);
