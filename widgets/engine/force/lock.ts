/**
 * The lock against turning: what its slack and its give do to the tip.
 *
 * The carried part must not turn; a key with a gap g at the radius r lets it turn by ψ = g/r, a springy lock of
 * stiffness κ by ψ = M/κ, where M is the torque that thread C hands over. Thread C turns ψ into motion of
 * the tip, h_C L_C ψ/2π (see wind-up), with the full lead of C: it is not reduced by the difference. While
 * the slack is taken up the carried part goes round with the turned part and moves by thread A alone.
 * Source: geometry of a small rotation, Hooke's law in torsion; derived here.
 * Sign: angles and torques on the carried part positive anticlockwise seen from above, motion positive up.
 * Units: mm, N·mm, N·mm per radian, rad.
 *
 * How far ψ = g/r holds: a pin that bears at r moves through the chord 2r sin(ψ/2).
 *   g/r        0.05     0.1      0.2     0.5
 *   ψ short by 0.01 %   0.04 %   0.2 %   1.1 %
 * Above one half it is no key gap but a missing key, and is refused.
 *
 * Springs as the lock, by their pull alone. A pull spring of force F and length l, along the axis at the radius r, leans as the part
 * turns by ψ: its end goes round by the chord 2r sin(ψ/2), its length becomes √(l² + 4r² sin²(ψ/2)), and by the work it does its
 * torque is F dl/dψ = F r² sin ψ/√(l² + 4r² sin²(ψ/2)). For small ψ that is F r²/l a radian: stiffness F/l sideways at r.
 * How far F r²/l holds, at a steady force: the torque falls short of it by about ψ²(1/6 + r²/2l²).
 *   ψ          5°       10°      20°      40°
 *   r/l = 0.5  0.2 %    0.9 %    3.5 %    13 %
 *   r/l = 1    0.5 %    2.0 %    7.4 %    24 %
 * The spring also stretches, which stiffens it by its rate; what it resists by bending and twist is not counted.
 */
import { mm, newtonMillimetres, newtons, newtonsPerMillimetre, rad } from '../kernel/quantity.ts';
import { outOfBounds, relation } from '../kernel/relation.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'lock-gap': { readonly gap: number; readonly radius: number };
    'spring-without-pull': Record<string, never>;
    'lock-winds-up': Record<string, never>;
    'lock-equal-leads': Record<string, never>;
  }
}

const tooLoose = ({ g_k, r_k }: { readonly g_k: number; readonly r_k: number }): Bad | undefined =>
  g_k <= r_k / 2 ? undefined : bad('lock-gap', { gap: g_k, radius: r_k });

export const lockSlop = relation({
  name: 'lock-slop',
  says: 'Rotation that the clearance of a key in its slot allows, from one side to the other.',
  takes: ['g_k', 'r_k'],
  gives: { psi: 'g_k/r_k' },
  source: 'Arc over radius, small angle; 1.1 % short at a gap of half the radius.',
  refuses: tooLoose,
  compute: ({ g_k, r_k }) => ({ psi: rad(g_k / r_k) }),
});

export const lockSlopMotion = relation({
  name: 'lock-slop-motion',
  says: 'Motion of the tip that the clearance of a key allows, from one side to the other.',
  takes: ['L_C', 'g_k', 'r_k'],
  gives: { z_k: 'L_C*g_k/(2*pi*r_k)' },
  source: 'Lead of thread C times the share of a turn that the key leaves free.',
  refuses: tooLoose,
  compute: ({ L_C, g_k, r_k }) => ({ z_k: mm((L_C * g_k) / (2 * Math.PI * r_k)) }),
});

export const lockStiffness = relation({
  name: 'lock-stiffness',
  says: 'Stiffness of the lock against turning, from how stiff it is sideways where it bears.',
  takes: ['k_g', 'r_k'],
  gives: { kappa: 'k_g*r_k^2' },
  source: 'Force k x at the radius r, x = r times the angle, torque r times the force.',
  compute: ({ k_g, r_k }) => ({ kappa: newtonMillimetres(k_g * r_k ** 2) }),
});

export const keyRub = relation({
  name: 'key-rub',
  says: 'Friction of the key along the axis, from the torque that it holds; it acts against the motion, either way.',
  takes: ['mu_g', 'M_L', 'r_k'],
  gives: { F_kr: 'mu_g*abs(M_L)/r_k' },
  source:
    'Torque over radius is the push of the slot on the key; Coulomb’s law. Twice as large arms, half of it; derived here.',
  compute: ({ mu_g, M_L, r_k }) => ({ F_kr: newtons((mu_g * Math.abs(M_L)) / r_k) }),
});

const pulls = (F_s: number): Bad | undefined => (F_s > 0 ? undefined : bad('spring-without-pull', {}));

export const stringStiffness = relation({
  name: 'string-stiffness',
  says: 'Stiffness sideways of stretched springs by their pull alone, like strings: they slope, and part of their force acts across.',
  takes: ['N_f', 'F_s', 'l_f'],
  gives: { k_g: 'N_f*F_s/l_f' },
  source: 'Force times the small angle x/l by which a sideways motion x makes it lean; derived here.',
  refuses: ({ F_s }) => pulls(F_s),
  compute: ({ N_f, F_s, l_f }) => ({ k_g: newtonsPerMillimetre((N_f * F_s) / l_f) }),
});

export const stringTorque = relation({
  name: 'string-torque',
  says: 'Torque by which stretched springs along the axis resist a turn of any size up to half round, their force held steady.',
  takes: ['N_f', 'F_s', 'r_k', 'l_f', 'psi_f'],
  gives: { M_L: 'N_f*F_s*r_k^2*sin(psi_f)/sqrt(l_f^2 + 2*r_k^2*(1 - cos(psi_f)))' },
  source: 'Virtual work: force times the change of its length with the angle; derived here.',
  refuses: ({ F_s }) => pulls(F_s),
  compute: ({ N_f, F_s, r_k, l_f, psi_f }) => ({
    M_L: newtonMillimetres((N_f * F_s * r_k ** 2 * Math.sin(psi_f)) / Math.hypot(l_f, 2 * r_k * Math.sin(psi_f / 2))),
  }),
});

export const springsAtMost = relation({
  name: 'springs-at-most',
  says: 'Most torque that stretched springs can resist by their pull, however they lean: more than that, and they are no lock.',
  takes: ['N_f', 'F_s', 'r_k'],
  gives: { M_L: 'N_f*F_s*r_k' },
  source: 'All of the pull across the radius; springs of some length reach less, by string-torque. Derived here.',
  refuses: ({ F_s }) => pulls(F_s),
  compute: ({ N_f, F_s, r_k }) => ({ M_L: newtonMillimetres(N_f * F_s * r_k) }),
});

export const lockWindUp = relation({
  name: 'lock-wind-up',
  says: 'Wind-up of a springy lock under the torque that thread C passes to the carried part.',
  takes: ['M_L', 'kappa'],
  gives: { psi: 'M_L/kappa' },
  source: 'Hooke’s law in torsion.',
  refuses: ({ M_L, kappa }) => (Math.abs(M_L) <= kappa * Math.PI ? undefined : bad('lock-winds-up', {})),
  compute: ({ M_L, kappa }) => ({ psi: rad(M_L / kappa) }),
});

export interface LockCase {
  /** Lead of thread C, mm, and its hand. */
  readonly L_C: number;
  readonly h_C: 1 | -1;
  /** Net lead, mm a turn. */
  readonly Delta: number;
  /** Torque handed to the carried part turning clockwise and turning anticlockwise, positive anticlockwise, N·mm. */
  readonly clockwise: number;
  readonly anticlockwise: number;
  /** N·mm per radian. */
  readonly kappa: number;
  /** Gap of the key and the radius at which it bears, mm. */
  readonly gap: number;
  readonly radius: number;
}

export interface LockError {
  /** Tip off its place while turning clockwise, and anticlockwise, by wind-up alone, mm. */
  readonly clockwise: number;
  readonly anticlockwise: number;
  /** Rotation of the carried part on reversal, slack and wind-up together, rad. */
  readonly swing: number;
  /** How far the tip is off by it, never negative, mm. */
  readonly shift: number;
  /** The same in turns of the hand, at the net lead. */
  readonly turns: number;
}

/** What the lock costs on reversal: slack of the key plus wind-up from one sense of turning to the other. */
export const lockError = (given: LockCase): Result<LockError> => {
  const { L_C, h_C, Delta, clockwise, anticlockwise, kappa, gap, radius } = given;
  const refusal =
    outOfBounds('L_C', L_C) ?? outOfBounds('h_C', h_C) ?? outOfBounds('Delta', Delta) ?? outOfBounds('kappa', kappa);
  if (refusal) return refusal;
  const slack = lockSlop.of({ g_k: mm(gap), r_k: mm(radius) });
  if (!slack.ok) return slack;
  const windUp = (torque: number) => lockWindUp.of({ M_L: newtonMillimetres(torque), kappa: newtonMillimetres(kappa) });
  const cw = windUp(clockwise);
  if (!cw.ok) return cw;
  const acw = windUp(anticlockwise);
  if (!acw.ok) return acw;
  if (!(Math.abs(Delta) > 0)) return bad('lock-equal-leads', {});
  const perRadian = (h_C * L_C) / (2 * Math.PI);
  // A part pressed to one side of its slot both ways never crosses the slack.
  const crosses = clockwise * anticlockwise < 0;
  const swing = Math.abs(acw.value.psi - cw.value.psi) + (crosses ? slack.value.psi : 0);
  const shift = Math.abs(perRadian) * swing;
  return good({
    clockwise: perRadian * cw.value.psi,
    anticlockwise: perRadian * acw.value.psi,
    swing,
    shift,
    turns: shift / Math.abs(Delta),
  });
};
