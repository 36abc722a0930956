/**
 * One thread: pitch, lead, the basic 60° form and the helix.
 *
 * Form: ISO 68-1 / ASME B1.1 basic profile, H = P √3/2; d2 = d − 2·(3/8)H; d1 = d − 2·(5/8)H;
 * rounded root d3 = d − 2·(17/24)H (ISO 68-1 design profile with root radius H/6).
 * Lead angle at the pitch diameter: tan λ = L/(π d2).
 * Lengths mm, angles rad, rotation in turns.
 */
import { type Millimetres, mm, plain, rad, turns } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    /** Pitches below `coarsest` leave a core. */
    'pitch-leaves-no-core': { readonly pitch: number; readonly d: number; readonly coarsest: number };
  }
}

/** Smallest and largest pitch diameter that was measured, d2 of the screw and D2 of the nut. */
export interface MeasuredPitch {
  readonly screw?: MeasuredZone;
  readonly nut?: MeasuredZone;
}
export interface MeasuredZone {
  readonly min: Millimetres;
  readonly max: Millimetres;
}

/** A thread as designated: basic sizes, and the class or the measured limits where they are written. */
export interface Thread {
  /** The designation written out in one standard way, for example `M10×1.5` or `3/8-16 UNC LH`. */
  readonly designation: string;
  readonly kind: 'metric' | 'unified' | 'free';
  /** Major diameter. */
  readonly d: Millimetres;
  /** Pitch. */
  readonly P: Millimetres;
  /** Starts. */
  readonly N: number;
  /** Lead, starts times pitch. */
  readonly L: Millimetres;
  /** +1 right hand, −1 left hand. */
  readonly h: 1 | -1;
  /** Threads per inch, where it was designated so. */
  readonly tpi?: number;
  /** Tolerance class as written, for example `6g` or `2A`. */
  readonly toleranceClass?: string;
  /** Pitch diameters as measured, which rule over those of a class. */
  readonly measured?: MeasuredPitch;
  /** What the reader ought to know about how it was read: pitch implied, size not in the standard series. */
  readonly notes: readonly string[];
}

const ROOT3 = Math.sqrt(3);
/** Slope of a flank across the axis: half the angle between the flanks is 30°. */
export const TAN30 = 1 / ROOT3;

export const pitchFromTpi = relation({
  name: 'pitch-from-tpi',
  says: 'Pitch of an inch thread from its threads per inch.',
  takes: ['tpi'],
  gives: { P: '25.4*mm/tpi' },
  source: 'ASME B1.1: pitch is one inch over threads per inch; 1 in = 25.4 mm exactly (NIST SP 811, B.8).',
  compute: ({ tpi }) => ({ P: mm(25.4 / tpi) }),
});

export const lead = relation({
  name: 'lead',
  says: 'Lead: how far one full turn moves a nut that does not turn.',
  takes: ['N', 'P'],
  gives: { L: 'N*P' },
  source: 'ISO 5408, clause on lead: starts times pitch.',
  compute: ({ N, P }) => ({ L: mm(N * P) }),
});

export const turnsFromAngle = relation({
  name: 'turns-from-angle',
  says: 'Turns in an angle.',
  takes: ['theta'],
  gives: { n: 'theta/(360*deg)' },
  source: 'Definition: a full turn is 360°.',
  compute: ({ theta }) => ({ n: turns(theta / (2 * Math.PI)) }),
});

export const advance = relation({
  name: 'advance',
  says: 'Advance: how far a screw moves through a nut that is held, with its sense.',
  takes: ['h', 'L', 'n'],
  gives: { z: '-h*L*n' },
  source:
    'Kinematics of a helix; a right-hand screw turned clockwise moves away from the viewer (ISO 5408, right-hand thread).',
  compute: ({ h, L, n }) => ({ z: mm(-h * L * n) }),
});

export const threadHeight = relation({
  name: 'thread-height',
  says: 'Height of the sharp triangle on which a 60° thread is built.',
  takes: ['P'],
  gives: { H: 'sqrt(3)/2*P' },
  source: 'ISO 68-1, basic profile.',
  compute: ({ P }) => ({ H: mm((ROOT3 / 2) * P) }),
});

export const pitchDiameter = relation({
  name: 'pitch-diameter',
  says: 'Basic pitch diameter of a 60° thread, where ridge and groove are equally wide.',
  takes: ['d', 'P'],
  gives: { d_2: 'd - 3*sqrt(3)/8*P' },
  source: 'ISO 724 (d2 = d − 0.6495 P) and ASME B1.1, basic sizes.',
  refuses: ({ d, P }) => tooCoarse(d, P),
  compute: ({ d, P }) => ({ d_2: diameters({ d, P }).d2 }),
});

export const minorDiameter = relation({
  name: 'minor-diameter',
  says: 'Basic minor diameter of a 60° thread, the bore before tapping.',
  takes: ['d', 'P'],
  gives: { d_1: 'd - 5*sqrt(3)/8*P' },
  source: 'ISO 724 (D1 = d − 1.0825 P) and ASME B1.1, basic sizes.',
  refuses: ({ d, P }) => tooCoarse(d, P),
  compute: ({ d, P }) => ({ d_1: diameters({ d, P }).d1 }),
});

export const rootDiameter = relation({
  name: 'root-diameter',
  says: 'Minor diameter of an external 60° thread with a rounded root, the core that carries load.',
  takes: ['d', 'P'],
  gives: { d_3: 'd - 17*sqrt(3)/24*P' },
  source: 'ISO 68-1 design profile, root radius H/6 (d3 = d − 1.2269 P).',
  refuses: ({ d, P }) => tooCoarse(d, P),
  compute: ({ d, P }) => ({ d_3: diameters({ d, P }).d3 }),
});

export const onceRound = relation({
  name: 'once-round',
  says: 'Length once round the thread at its pitch diameter: the base of the unrolled ramp.',
  takes: ['d_2'],
  gives: { C_2: 'pi*d_2' },
  source: 'Circumference of a circle.',
  compute: ({ d_2 }) => ({ C_2: mm(Math.PI * d_2) }),
});

export const leadAngle = relation({
  name: 'lead-angle',
  says: 'Lead angle: the slope of the unrolled thread at its pitch diameter.',
  takes: ['L', 'd_2'],
  gives: { lambda: 'atan(L/(pi*d_2))' },
  source: 'ISO 5408, lead angle; Machinery’s Handbook, tan λ = L/(π d2) (from memory).',
  compute: ({ L, d_2 }) => ({ lambda: rad(Math.atan(L / (Math.PI * d_2))) }),
});

/** Depth at which a rounded-root thread would meet the axis: such a pitch can't be cut on the diameter. */
const tooCoarse = (d: Millimetres, P: Millimetres): Bad | undefined =>
  diameters({ d, P }).d3 > 0
    ? undefined
    : bad('pitch-leaves-no-core', { pitch: P, d, coarsest: (24 * d) / (17 * ROOT3) });

/** The basic diameters of a thread, for drawing and for walls; the thread must have passed the reader of designations. */
export const diameters = (
  thread: Pick<Thread, 'd' | 'P'>,
): { d: Millimetres; d2: Millimetres; d1: Millimetres; d3: Millimetres } => ({
  d: thread.d,
  d2: mm(thread.d - ((3 * ROOT3) / 8) * thread.P),
  d1: mm(thread.d - ((5 * ROOT3) / 8) * thread.P),
  d3: mm(thread.d - ((17 * ROOT3) / 24) * thread.P),
});

/** Starts as a plain ratio, where a relation wants one. */
export const starts = (thread: Thread) => plain(thread.N);
