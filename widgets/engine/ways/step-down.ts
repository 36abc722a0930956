/**
 * From the motion wanted to a wedge or a lever: how far a screw has to be stepped down, and what does it.
 *
 * Equations: motion a turn for a motion s_h at the hand's angle θ, Δ_w = s_h 360°/θ; step-down m = Δ_w/L of the drive
 * screw; wedge φ = atan m; lever a = b/m. Source: geometry. Units: mm, rad; all positive.
 */
import { mm, plain, rad } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'hand-angle-of-nought': Record<string, never>;
  }
}

export const leadForAngle = relation({
  name: 'lead-for-angle',
  says: 'Motion per turn to look for, from the wanted step for the repeatable hand angle.',
  takes: ['s_h', 'theta_h'],
  gives: { Delta_w: 's_h*(360*deg)/theta_h' },
  source: 'Proportion: the angle is to a turn as the motion wanted is to the motion per turn.',
  refuses: ({ theta_h }) => (theta_h >= 1e-6 ? undefined : bad('hand-angle-of-nought', {})),
  compute: ({ s_h, theta_h }) => ({ Delta_w: mm((s_h * 2 * Math.PI) / theta_h) }),
});

export const stepDown = relation({
  name: 'step-down',
  says: 'Step-down: the motion of the tip as a share of the motion of its drive screw.',
  takes: ['Delta_w', 'L'],
  gives: { m_r: 'Delta_w/L' },
  source: 'Definition: motion of the tip per motion of the drive.',
  compute: ({ Delta_w, L }) => ({ m_r: plain(Delta_w / L) }),
});

export const wedgeFor = relation({
  name: 'wedge-for',
  says: 'Angle of the wedge that steps a motion down.',
  takes: ['m_r'],
  gives: { phi_w: 'atan(m_r)' },
  source: 'Geometry of an incline: the rise over the travel is the tangent of its angle.',
  compute: ({ m_r }) => ({ phi_w: rad(Math.atan(m_r)) }),
});

export const longArmFor = relation({
  name: 'long-arm-for',
  says: 'Long arm of the lever that steps a motion down.',
  takes: ['b_l', 'm_r'],
  gives: { a_l: 'b_l/m_r' },
  source: 'Similar triangles.',
  compute: ({ b_l, m_r }) => ({ a_l: mm(b_l / m_r) }),
});
