/**
 * Springs from their drawing: the rate of all of them, and what they are worth as a lock. What a page says of their rate or of their stiffness
 * round the axis comes from here, so a drawing has one rate. Lengths mm, forces N, modulus MPa.
 */
import {
  coilRate,
  good,
  meanderRateAcross,
  meanderRateThick,
  meanderStrain,
  megapascals,
  mm,
  newtons,
  newtonsPerMillimetre,
  ovalRate,
  ovalRowRateAcross,
  ovalStrain,
  plain,
  type Result,
  type SpringForm,
  springLock,
  strapRate,
  strapRateEdgewise,
  strapStrain,
} from '../../engine/index.ts';

/** A spring as chapter and figure of printed springs draw it, or a coil of wire; the stubs of a meander are half a connector. */
export interface DrawnSpring {
  readonly form: SpringForm;
  /** As printed, across its bending; nought for a coil. */
  readonly high: number;
  /** Between its ends, where it is stretched to the mark; nought for a strap, which lies across. */
  readonly length: number;
  /** Young’s modulus of a print, shear modulus of a wire. */
  readonly modulus: number;
}

const stripOf = ({ form, high, modulus }: DrawnSpring) => ({
  E_f: megapascals(modulus),
  b_f: mm(high),
  t_f: mm(form.t),
});
const meanderOf = (f: Extract<SpringForm, { shape: 'meander' }>) => ({
  m_f: plain(f.m),
  L_f: mm(f.L),
  p_f: mm(f.p),
});
const ovalOf = (f: Extract<SpringForm, { shape: 'ring' | 'oval' }>) => ({ R_f: mm(f.R), h_f: mm(f.h) });

/** Of one of them, N/mm. */
export const drawnRate = (drawn: DrawnSpring): Result<number> => {
  const { form, modulus } = drawn;
  const strip = stripOf(drawn);
  const rate =
    form.shape === 'meander'
      ? meanderRateThick.of({ ...strip, ...meanderOf(form) })
      : form.shape === 'strap'
        ? strapRate.of({ ...strip, l_m: mm(form.l) })
        : form.shape === 'coil'
          ? coilRate.of({ G_f: megapascals(modulus), d_w: mm(form.t), D_w: mm(form.D), n_c: plain(form.turns) })
          : ovalRate.of({ ...strip, ...ovalOf(form), v_f: mm(0) });
  if (!rate.ok) return rate;
  // Rings in a row share the stretch.
  return good(rate.value.k_f / ('cells' in form ? form.cells : 1));
};

/** Strain at the surface of one that is stretched so far, mm; undefined for a coil, which is twisted. */
export const drawnStrain = ({ form }: DrawnSpring, stretch: number): Result<number> | undefined => {
  const [t_f, u_f] = [mm(form.t), mm(stretch)];
  if (form.shape === 'coil') return undefined;
  const strain =
    form.shape === 'meander'
      ? meanderStrain.of({ t_f, u_f, ...meanderOf(form) })
      : form.shape === 'strap'
        ? strapStrain.of({ t_f, u_f, l_m: mm(form.l) })
        : ovalStrain.of({ t_f, u_f: mm(stretch / form.cells), ...ovalOf(form), v_f: mm(0) });
  return strain.ok ? good(strain.value.eps_f) : strain;
};

/** Rate across of one, in the plane that lies round the axis. A strap stands edgewise to it; a coil is taken to have none. */
const acrossRate = (drawn: DrawnSpring): Result<number> => {
  const { form } = drawn;
  const strip = stripOf(drawn);
  if (form.shape === 'coil') return good(0);
  if (form.shape === 'strap') {
    const edgewise = strapRateEdgewise.of({ ...strip, l_m: mm(form.l) });
    return edgewise.ok ? good(edgewise.value.k_f) : edgewise;
  }
  const across =
    form.shape === 'meander'
      ? meanderRateAcross.of({ ...strip, ...meanderOf(form), e_f: mm(form.stub) })
      : ovalRowRateAcross.of({ ...strip, ...ovalOf(form), n_r: plain(form.cells) });
  return across.ok ? good(across.value.k_x) : across;
};

/** Of all of them round the axis, N·mm a radian, and across of one, N/mm. */
export const drawnLock = (
  drawn: DrawnSpring,
  { count, radius, pull }: { readonly count: number; readonly radius: number; readonly pull: number },
): Result<{ readonly across: number; readonly kappa: number }> => {
  const across = acrossRate(drawn);
  if (!across.ok) return across;
  // The pull of a strap is across it, and rights nothing.
  const straight = drawn.form.shape === 'strap' ? { F_s: newtons(0), l_f: mm(drawn.form.l) } : undefined;
  const lock = springLock.of({
    N_f: plain(count),
    r_k: mm(radius),
    k_x: newtonsPerMillimetre(across.value),
    F_s: newtons(pull),
    l_f: mm(drawn.length),
    ...straight,
  });
  return lock.ok ? good({ across: across.value, kappa: lock.value.kappa }) : lock;
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
