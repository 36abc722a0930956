/**
 * Resolution: what a flat, a division or an angle of the turned part moves. Definition of a step as an equal
 * share of a turn; no standard behind it. Lengths mm, angles rad.
 */
import { mm, plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'division-without-motion': Readonly<Record<string, never>>;
    'step-without-motion': Readonly<Record<string, never>>;
  }
}

export const perStep = relation({
  name: 'per-step',
  says: 'Motion per step, the turn being divided into k equal steps: 6 flats, 4, 12 points or any count of divisions.',
  takes: ['Delta', 'k'],
  gives: { s: 'abs(Delta)/k' },
  source: 'Definition: an equal share of a turn.',
  compute: ({ Delta, k }) => ({ s: mm(Math.abs(Delta) / k) }),
});

export const perAngle = relation({
  name: 'per-angle',
  says: 'Motion for a stated angle, such as the repeatable hand angle.',
  takes: ['Delta', 'theta'],
  gives: { s: 'abs(Delta)*theta/(360*deg)' },
  source: 'Definition: an angle is its share of a turn.',
  compute: ({ Delta, theta }) => ({ s: mm((Math.abs(Delta) * theta) / (2 * Math.PI)) }),
});

export const wantedNetLead = relation({
  name: 'wanted-net-lead',
  says: 'Motion per turn to look for, from the wanted step and the steps per turn.',
  takes: ['s_w', 'k'],
  gives: { Delta_w: 's_w*k' },
  source: 'Definition: k equal steps make a turn.',
  compute: ({ s_w, k }) => ({ Delta_w: mm(s_w * k) }),
});

export const divisionsFor = relation({
  name: 'divisions-for',
  says: 'Divisions a knob needs so that one division is a wanted motion.',
  takes: ['Delta', 'v'],
  gives: { m: 'abs(Delta)/v' },
  source: 'Definition: turns divided so that k divisions make the net lead.',
  refuses: ({ v }) => (v > 0 ? undefined : bad('division-without-motion', {})),
  compute: ({ Delta, v }) => ({ m: plain(Math.abs(Delta) / v) }),
});

export const stepsFor = relation({
  name: 'steps-for',
  says: 'Steps to turn for a wanted motion, before rounding to whole steps.',
  takes: ['w', 's'],
  gives: { m: 'w/s' },
  source: 'Definition: motion wanted over motion per step.',
  refuses: ({ s }) => (s > 0 ? undefined : bad('step-without-motion', {})),
  compute: ({ w, s }) => ({ m: plain(w / s) }),
});
