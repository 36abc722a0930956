/**
 * Play of the joints of an adjuster, from what its ends state: a class, or the everyday one where none is written; pitch diameters as measured;
 * and the coats of the parts.
 *
 * Classes hold before coating (ISO 965-1, from memory), so a coat is taken off their clearance: four times its thickness
 * for each coated side, since the flanks of a nut move in as those of a screw move out. Where diameters were measured the coat was on. Lengths mm.
 */
import {
  axialPlay,
  fitOfThread,
  good,
  type Limits,
  type Millimetres,
  mm,
  playAfterCoat,
  type Result,
  turnsLost,
} from '../../engine/index.ts';
import { asMeasured } from '../../input/designation-sides.ts';
import type { Adjuster, Fitted } from './adjuster.ts';
import type { Joint } from './joint.ts';

interface PitchLimits {
  readonly min: Millimetres;
  readonly max: Millimetres;
}

export interface JointPlay {
  /** Classes or measured diameters, nut first, as drawings write them. */
  readonly limits: string;
  /** Whether one was left out and the everyday one taken. */
  readonly assumed: boolean;
  /** Whether both pitch diameters were measured. */
  readonly measured: boolean;
  readonly coat: number;
  /** Pitch diameters as they are fitted, coats on. */
  readonly screw: PitchLimits;
  readonly nut: PitchLimits;
  /** Diametral clearance at the flanks; negative is interference. */
  readonly clearance: { readonly least: Millimetres; readonly most: Millimetres };
  /** Axial play of the tightest and the loosest pieces, or why they do not go together. */
  readonly least: Result<Millimetres>;
  readonly most: Result<Millimetres>;
}

/** Flanks that lean by 30° move out by twice the coat, on both sides of the diameter. */
const ON_DIAMETER = 4;

export const jointPlay = (fitted: Fitted): Result<JointPlay> => {
  let play = known.get(fitted.joint);
  if (play === undefined) {
    play = playOf(fitted);
    known.set(fitted.joint, play);
  }
  return play;
};

/** Worked out once a joint: the figure, the sheet and every field of a page ask for it. */
const known = new WeakMap<Joint, Result<JointPlay>>();

const playOf = ({ thread, coat }: Fitted): Result<JointPlay> => {
  const fit = fitOfThread(thread);
  if (!fit.ok) return fit;
  const { screw, nut, clearance, classes, assumed } = fit.value;
  const both = coat.screw + coat.nut;
  const after = (c: Millimetres): Result<Millimetres> => {
    const j = both === 0 ? axialPlay.of({ c }) : playAfterCoat.of({ c, t_z: mm(both) });
    return j.ok ? good(j.value.j) : j;
  };
  const { least, most } = clearance.pitch;
  const [out, inwards] = [ON_DIAMETER * coat.screw, ON_DIAMETER * coat.nut];
  return good({
    limits: classes,
    assumed,
    measured: isMeasured(screw) && isMeasured(nut),
    coat: both,
    screw: { min: mm(screw.pitch.min + out), max: mm(screw.pitch.max + out) },
    nut: { min: mm(nut.pitch.min - inwards), max: mm(nut.pitch.max - inwards) },
    clearance: { least: mm(least - out - inwards), most: mm(most - out - inwards) },
    least: after(least),
    most: after(most),
  });
};

const isMeasured = ({ pitch }: Limits): boolean => pitch.basis === 'measured';

/** Turns that reversal costs without preload, with the tightest and with the loosest pieces; undefined where there is no such number. */
export const turnsLostIn = (a: Adjuster, end: 'least' | 'most'): number | undefined => {
  if (!a.C || a.Delta === 0) return undefined;
  const [A, C] = [jointPlay(a.A), jointPlay(a.C)];
  if (!A.ok || !C.ok) return undefined;
  const [j_A, j_C] = [A.value[end], C.value[end]];
  if (!j_A.ok || !j_C.ok) return undefined;
  const lost = turnsLost.of({ j_A: j_A.value, j_C: j_C.value, Delta: mm(a.Delta) });
  return lost.ok ? lost.value.n_j : undefined;
};

/** The designation that gives a page this very play: a coated side carries its pitch diameters with the coat on. */
export const designationWithCoat = (fitted: Fitted): string => {
  const { thread, coat } = fitted;
  const play = coat.screw + coat.nut === 0 ? undefined : jointPlay(fitted);
  if (!play?.ok) return thread.designation;
  const { screw, nut } = play.value;
  return asMeasured(thread, {
    ...thread.measured,
    ...(coat.screw > 0 && { screw }),
    ...(coat.nut > 0 && { nut }),
  }).designation;
};
