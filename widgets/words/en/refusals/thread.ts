/** Why a thread, its limits, its hole or its wires can’t be as asked. */
import { type IsoDiameter, quoted, say, type Thread } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const ISO_DIAMETERS: Readonly<Record<IsoDiameter, string>> = {
  d: 'the major diameter of a screw',
  d2: 'the pitch diameter of a screw',
  D1: 'the minor diameter of a nut',
  D2: 'the pitch diameter of a nut',
};

/** To a tenth of a micrometre, nought left off. */
const mm4 = (x: number): number => Number(x.toFixed(4));
const both = (of: 'P' | 'L', a: Pick<Thread, 'P' | 'L'>, b: Pick<Thread, 'P' | 'L'>): string =>
  `${mm4(a[of])} and ${mm4(b[of])} mm`;

const wireBetween = ({ low, high, best }: { readonly low: number; readonly high: number; readonly best: number }) =>
  `take one between ${say(low)} and ${say(high)} mm, best ${say(best)} mm.`;

export const THREAD = {
  'threads-pass-each-other': () =>
    'These diameters leave no ridge where screw and nut meet: check which is the screw’s and which the nut’s.',
  'bore-takes-the-core': ({ bore, core }) =>
    `A bore of ${say(bore)} mm removes the whole core of ${say(core)} mm: take a smaller bore.`,
  'pitch-leaves-no-core': ({ pitch, d, coarsest }) =>
    `A pitch of ${say(pitch)} mm is too coarse for a diameter of ${say(d)} mm, it leaves no core: take a pitch below ${say(coarsest, 3)} mm.`,

  'thread-leaves-no-hole': ({ share, pitch, d }) =>
    `A thread of ${say(100 * share)} % at a pitch of ${say(pitch)} mm would need a hole of no size in ${say(d)} mm: take less thread, or a finer pitch.`,
  'hole-not-below-thread': ({ hole, d }) =>
    `A hole of ${say(hole)} mm is no smaller than the thread of ${say(d)} mm, so there is nothing to tap: take a smaller drill.`,
  'hole-below-any-root': ({ hole, d, pitch }) =>
    `A hole of ${say(hole)} mm is too small for a thread of ${say(d)} mm with a pitch of ${say(pitch)} mm: the tap would cut below the root of any thread, so take a larger drill.`,

  'iso-diameter-outside': ({ d }) =>
    `Read a diameter of ${say(d, 6)} mm; ISO 965-1 gives tolerances over 0.99 mm and up to 355 mm: choose a diameter between those, or a thread without a tolerance class.`,
  'iso-pitch-outside': ({ pitch }) =>
    `Read a pitch of ${say(pitch, 6)} mm; ISO 965-1 gives tolerances for pitches from 0.2 mm to 8 mm: choose a pitch between those, or a thread without a tolerance class.`,
  'iso-position-too-fine': ({ position, pitch, finest }) =>
    `Read position ${position} for a pitch of ${say(pitch, 6)} mm; ISO 965-1 gives it from ${finest} mm up: take position g or h for so fine a thread.`,
  'iso-grade-missing': ({ of, grade, grades }) =>
    `Read grade ${grade} for ${ISO_DIAMETERS[of]}; ISO 965-1 has grades ${grades.join(', ')} there: choose one of those.`,
  'iso-grade-too-fine': ({ of, grade, pitch, finest }) =>
    `Read grade ${grade} for ${ISO_DIAMETERS[of]} at a pitch of ${say(pitch, 6)} mm; ISO 965-1 leaves that place blank, the grade begins at a pitch of ${finest} mm: choose a finer grade.`,
  'iso-place-blank': ({ of, grade, pitch }) =>
    `Read grade ${grade} for ${ISO_DIAMETERS[of]} at a pitch of ${say(pitch, 6)} mm; ISO 965-1 leaves that place blank over 22.4 and up to 45 mm: choose a finer grade.`,
  'iso-class-unread': ({ read }) =>
    `Read ${quoted(read)} as a tolerance class; a metric screw takes a grade and e, f, g or h, such as 6g or 5g6g; a metric nut takes a grade and G or H, such as 6H: write one of those.`,
  'diameter-step-falls': ({ low, high }) =>
    `A step from ${say(low, 6)} mm to ${say(high, 6)} mm does not rise: give the lower end first.`,

  'unified-diameter-outside': ({ D }) =>
    `Read a diameter of ${say(D, 5)} in; ASME B1.1 gives tolerances from #0 (0.06 in) to 6 in: choose a diameter between those, or a thread without a tolerance class.`,
  'unified-pitch-outside': ({ tpi, finest }) =>
    `Read ${say(tpi, 5)} threads per inch; the rules of ASME B1.1 are used here from 4 to ${finest} threads per inch: choose a thread between those, or one without a tolerance class.`,
  'unified-class-first-elsewhere': ({ cls }) =>
    `Read class ${cls}, which exists only for UNC and UNF threads of 1/4 in and larger: take ${cls.endsWith('A') ? '2A or 3A' : '2B or 3B'} here.`,
  'unified-class-on-metric': ({ cls, designation }) =>
    `Read class ${cls} for ${designation}; that is a class of Unified threads: take ${cls.endsWith('A') ? '6g' : '6H'} for a metric one.`,
  'unified-class-unread': ({ read }) =>
    `Read ${quoted(read)} as a tolerance class; a Unified screw takes 1A, 2A or 3A and a Unified nut 1B, 2B or 3B: write one of those.`,
  'limits-without-core': ({ designation }) =>
    `${designation} has no core left at its pitch, so it has no limits of size: choose a finer pitch.`,

  'fit-of-unlike-pitches': ({ screw, nut }) =>
    `${screw.designation} and ${nut.designation} differ in pitch or lead (${both('P', screw, nut)} pitch, ${both('L', screw, nut)} lead), so one can’t be screwed into the other: choose a nut of the screw’s own pitch and lead.`,
  'fit-of-unlike-hands': ({ screw, nut }) =>
    `${screw} and ${nut} are of opposite hands, so one can’t be screwed into the other: choose a nut of the screw’s own hand.`,

  'wire-rides-on-crests': ({ wire, pitch, ...wires }) =>
    `A wire of ${say(wire)} mm rides on the crests of a thread of ${say(pitch)} mm pitch: ${wireBetween(wires)}`,
  'wire-sinks-below-crests': ({ wire, pitch, ...wires }) =>
    `A wire of ${say(wire)} mm sinks below the crests of a thread of ${say(pitch)} mm pitch: ${wireBetween(wires)}`,
  'over-wires-too-little': ({ measured }) =>
    `A measurement of ${say(measured, 5)} mm is less than the wires alone take up: measure again over all three wires.`,
  'lead-angle-too-steep': ({ lambda }) =>
    `Read a lead angle of ${say((lambda * 180) / Math.PI)}°; the one-term correction is good up to 10°: measure so steep a thread with balls or by projection.`,
} satisfies Partial<RefusalWords>;
