/**
 * Play: how far the parts of one thread, and of two in series, can be shaken before a flank stops them.
 *
 * One 60° thread with pitch diameters d2 (external) and D2 (internal), diametral clearance c = D2 − d2. With the
 * screw in the middle of its nut each flank stands off by c/2 radially, so by (c/2)·tan 30° along the axis:
 *   axial play, flank to flank          j = c·tan 30°            (0.577 c)
 *   radial float, side to side          r_f = c
 *   tilt to either side of square       τ = c/(ℓ + √3·d)        ℓ engaged length, d outermost engaged diameter
 *   the same for a plain pin in a hole  τ_p = c/ℓ               an upper bound
 *   tip float to either side            y_t = τ·y               y height of the tip above mid-engagement
 * A tilted screw moves out by τℓ/2 at the end of the engagement and along the axis by τd/2 at its rim; a point
 * of the flank touches when (moved out)·tan 30° + (moved along) = (c/2)·tan 30°. The plain-pin bound leaves the
 * second term out: for an engagement of one diameter it is 2.7 times too large. Good to about a pitch in ℓ.
 * All of this is for a screw that carries no axial load; a loaded one sits on one flank, which centres it.
 * Pushed sideways by e off the middle the nearer flanks stand off by c/2 − e only, so less axial play is left,
 *   j_e = (c − 2e)·tan 30°, down to nothing where the flanks touch at e = c/2.
 * Angles are taken as small; tan τ exceeds τ by tan τ/τ − 1 (0.01 % at 1°).
 *
 * Two threads in series, net lead Δ: on reversal the turned part has to cross both plays before the carried
 * part moves, n_j = (j_A + j_C)/|Δ|. This is for a carried part held by its own friction, the turned part freer
 * than that; simulator.ts shows the other cases. Play does not shrink with Δ.
 * Lengths mm, angles rad, rotation in turns. Geometry of ISO 68-1 flanks, worked here; no other source.
 */
import { mm, newtons, plain, rad, turns } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad } from '../kernel/result.ts';
import { symbolFact } from '../kernel/symbols.ts';
import { TAN30 } from '../thread/thread.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'thread-interference': { readonly clearance: number; readonly thread: 'A' | 'C' | undefined };
    'lead-over-clearance': { readonly deviation: number; readonly clearance: number };
    'coat-over-clearance': { readonly coat: number; readonly clearance: number };
    'screw-off-middle': { readonly off: number; readonly most: number };
    'tilt-no-small-angle': { readonly tilt: number };
    'tilt-of-nought': Record<string, never>;
    'play-never-taken-up': Record<string, never>;
  }
}

/** What a negative clearance means, or undefined where there is none. */
const interference = (clearance: number, thread?: 'A' | 'C'): Bad | undefined =>
  clearance >= 0 ? undefined : bad('thread-interference', { clearance, thread });

export const pitchClearance = relation({
  name: 'pitch-clearance',
  says: 'Pitch-diameter clearance: how much larger the nut is than the screw, measured at the flanks.',
  takes: ['D_2', 'd_2'],
  gives: { c: 'D_2 - d_2' },
  source: 'ISO 965-1 and ASME B1.1: difference of the actual pitch diameters of internal and external thread.',
  refuses: ({ D_2, d_2 }) => interference(D_2 - d_2),
  compute: ({ D_2, d_2 }) => ({ c: mm(D_2 - d_2) }),
});

export const axialPlay = relation({
  name: 'axial-play',
  says: 'Axial play of a 60° thread, from one flank to the other.',
  takes: ['c'],
  gives: { j: 'c*tan(30*deg)' },
  source: 'Geometry of the ISO 68-1 profile; the inverse of the pitch-diameter equivalent of a lead error.',
  refuses: ({ c }) => interference(c),
  compute: ({ c }) => ({ j: mm(c * TAN30) }),
});

export const playAfterCoat = relation({
  name: 'play-after-coat',
  says: 'Axial play of a 60° thread whose screw was coated after its clearance was found: a coat adds four times its thickness to the pitch diameter.',
  takes: ['c', 't_z'],
  gives: { j: '(c - 4*t_z)/sqrt(3)' },
  source:
    'Geometry of flanks that lean by 30°: a coat of thickness t moves each flank out by t/sin 30° = 2t; worked here. That ISO 965-1 states its limits for the screw before coating is from memory.',
  refuses: ({ c, t_z }) => (c - 4 * t_z >= 0 ? undefined : bad('coat-over-clearance', { coat: t_z, clearance: c })),
  compute: ({ c, t_z }) => ({ j: mm((c - 4 * t_z) / Math.sqrt(3)) }),
});

export const thickestCoat = relation({
  name: 'thickest-coat',
  says: 'Thickest coat on the flanks of a screw that its clearance still takes; of a class, its least clearance is the allowance.',
  takes: ['c'],
  gives: { t_zm: 'c/4' },
  source: 'Geometry of 60° flanks, as play-after-coat; the allowances are those of ISO 965-1.',
  refuses: ({ c }) => interference(c),
  compute: ({ c }) => ({ t_zm: mm(c / 4) }),
});

export const playAfterLead = relation({
  name: 'play-after-lead',
  says: 'Axial play of a 60° thread whose screw and nut are off each other’s lead by so much over the engagement.',
  takes: ['c', 'delta_L'],
  gives: { j: 'c/sqrt(3) - abs(delta_L)' },
  source:
    'The pitch-diameter equivalent of the deviation, √3 of it (see diameter-equivalent), is clearance no longer: one end of the engagement touches one flank, the other end the other.',
  refuses: ({ c, delta_L }) =>
    interference(c) ??
    (c / Math.sqrt(3) >= Math.abs(delta_L)
      ? undefined
      : bad('lead-over-clearance', { deviation: delta_L, clearance: c })),
  compute: ({ c, delta_L }) => ({ j: mm(c / Math.sqrt(3) - Math.abs(delta_L)) }),
});

export const axialPlayA = relation({
  name: 'axial-play-a',
  says: 'Axial play of thread A, between base and turned part.',
  takes: ['c_A'],
  gives: { j_A: 'c_A*tan(30*deg)' },
  source: 'Geometry of the ISO 68-1 profile; see axial-play.',
  refuses: ({ c_A }) => interference(c_A, 'A'),
  compute: ({ c_A }) => ({ j_A: mm(c_A * TAN30) }),
});

export const axialPlayC = relation({
  name: 'axial-play-c',
  says: 'Axial play of thread C, between turned and carried part.',
  takes: ['c_C'],
  gives: { j_C: 'c_C*tan(30*deg)' },
  source: 'Geometry of the ISO 68-1 profile; see axial-play.',
  refuses: ({ c_C }) => interference(c_C, 'C'),
  compute: ({ c_C }) => ({ j_C: mm(c_C * TAN30) }),
});

export const offCentrePlay = relation({
  name: 'off-centre-play',
  says: 'Axial play left when the screw is off the middle of its nut.',
  takes: ['c', 'e_s'],
  gives: { j: '(c - 2*e_s)*tan(30*deg)' },
  source: 'Geometry of ISO 68-1 flanks: the nearer side decides; worked in play.ts, a tilted-profile test beside it.',
  refuses: ({ c, e_s }) =>
    interference(c) ?? (2 * e_s <= c ? undefined : bad('screw-off-middle', { off: e_s, most: c / 2 })),
  compute: ({ c, e_s }) => ({ j: mm(Math.max(0, c - 2 * e_s) * TAN30) }),
});

export const radialFloat = relation({
  name: 'radial-float',
  says: 'Radial play of an unloaded screw in its nut, from side to side.',
  takes: ['c'],
  gives: { r_f: 'c' },
  source: 'Geometry: the flanks stand off by half the clearance on each side.',
  refuses: ({ c }) => interference(c),
  compute: ({ c }) => ({ r_f: mm(c) }),
});

/** Why a tilt as large as this is none, or undefined where the small-angle formulas hold. */
const tooSteep = (tau: number): Bad | undefined =>
  tau <= symbolFact('tau').max ? undefined : bad('tilt-no-small-angle', { tilt: tau });

export const tilt = relation({
  name: 'tilt',
  says: 'Tilt of an unloaded screw in its nut, to each side, until its flanks touch.',
  takes: ['c', 'l_e', 'd'],
  gives: { tau: 'c/(l_e + sqrt(3)*d)' },
  source:
    'Geometry of a rigid tilt against 60° flanks, worked in play.ts; the tests tilt a sampled thread until it touches.',
  refuses: ({ c, l_e, d }) => interference(c) ?? tooSteep(c / (l_e + Math.sqrt(3) * d)),
  compute: ({ c, l_e, d }) => ({ tau: rad(c / (l_e + Math.sqrt(3) * d)) }),
});

export const pinTilt = relation({
  name: 'pin-tilt',
  says: 'Tilt of a plain pin of the same clearance, an upper bound for the screw.',
  takes: ['c', 'l_e'],
  gives: { tau: 'c/l_e' },
  source: 'Geometry of a pin in a hole, small angle: opposite walls touched at the two ends.',
  refuses: ({ c, l_e }) => interference(c) ?? tooSteep(c / l_e),
  compute: ({ c, l_e }) => ({ tau: rad(c / l_e) }),
});

export const smallAngle = relation({
  name: 'small-angle',
  says: 'How much a small-angle formula leaves out: by how much the tangent exceeds the angle.',
  takes: ['tau'],
  gives: { eps_t: 'tan(tau)/tau - 1' },
  source: 'Trigonometry: tan τ/τ − 1 = τ²/3 + 2τ⁴/15 + …',
  refuses: ({ tau }) => (tau > 0 ? undefined : bad('tilt-of-nought', {})),
  // The series where the difference would lose its digits.
  compute: ({ tau }) => ({ eps_t: plain(tau < 1e-3 ? tau ** 2 / 3 + (2 * tau ** 4) / 15 : Math.tan(tau) / tau - 1) }),
});

export const tipFloat = relation({
  name: 'tip-float',
  says: 'Sideways play of the tip, to each side, as the screw tilts in its nut.',
  takes: ['tau', 'y'],
  gives: { y_t: 'tau*y' },
  source: 'Small angle: lever of the height above the middle of the engagement.',
  compute: ({ tau, y }) => ({ y_t: mm(tau * y) }),
});

export const flankForces = relation({
  name: 'flank-forces',
  says: 'Force across each thread: C carries what acts on the carried part, A what acts on both parts; towards the base is plus.',
  takes: ['Q_pt', 'Q_pc'],
  gives: { F_A: 'Q_pt + Q_pc', F_C: 'Q_pc' },
  source: 'Statics: the axial forces on the parts above a thread add up at that thread.',
  compute: ({ Q_pt, Q_pc }) => ({ F_A: newtons(Q_pt + Q_pc), F_C: newtons(Q_pc) }),
});

export const turnsLost = relation({
  name: 'turns-lost',
  says: 'Turns lost on reversal before the carried part follows, without preload.',
  takes: ['j_A', 'j_C', 'Delta'],
  gives: { n_j: '(j_A + j_C)/abs(Delta)' },
  source:
    'Two play operators in series with friction on the carried part, one play operator of the summed play; see simulator.ts.',
  refuses: ({ Delta }) => (Math.abs(Delta) > 0 ? undefined : bad('play-never-taken-up', {})),
  compute: ({ j_A, j_C, Delta }) => ({ n_j: turns((j_A + j_C) / Math.abs(Delta)) }),
});

export const motionAfterReversal = relation({
  name: 'motion-after-reversal',
  says: 'Motion of the carried part once the hand turns the other way, without preload: it stands still until the play is taken up.',
  takes: ['n', 'n_j', 'Delta'],
  gives: { z_c: '(max(0, n - n_j) - max(0, -n - n_j))*Delta' },
  source: 'One play operator of the summed play, as in turns-lost; see simulator.ts.',
  compute: ({ n, n_j, Delta }) => ({ z_c: mm((Math.max(0, n - n_j) - Math.max(0, -n - n_j)) * Delta) }),
});

export const stepsLost = relation({
  name: 'steps-lost',
  says: 'Steps or flats lost on reversal.',
  takes: ['n_j', 'k'],
  gives: { m_j: 'n_j*k' },
  source: 'Turns lost times steps in a turn.',
  compute: ({ n_j, k }) => ({ m_j: plain(n_j * k) }),
});
