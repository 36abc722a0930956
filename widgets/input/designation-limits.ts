/**
 * The last step of reading a designation: the limits a thread has to keep, its class, and its canonical form.
 *
 * A core is left, d3 = d − 1.2269 P > 0 (thread.ts). The lead angle at the pitch diameter is at most 45°, L ≤ π d2: a
 * limit chosen for this notebook, steeper helices are not cut with taps and dies. The other bounds are those of the
 * glossary. Lengths in mm.
 */
import { pitchWithStarts } from '#words/designation.ts';
import {
  type Bad,
  bad,
  diameters,
  good,
  isUnifiedClass,
  type Millimetres,
  mm,
  type Result,
  readIsoClass,
  type SymbolName,
  symbolFact,
  type Thread,
} from '../engine/index.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'starts-twice': { readonly text: string; readonly made: number; readonly written: number };
    'diameter-out-of-range': { readonly text: string; readonly d: number };
    'tpi-out-of-range': { readonly text: string; readonly tpi: number };
    'pitch-without-core': { readonly text: string; readonly d: number; readonly P: number; readonly most: number };
    'pitch-out-of-range': { readonly text: string; readonly P: number };
    'starts-out-of-range': { readonly text: string; readonly N: number };
    'lead-too-steep': { readonly text: string; readonly L: number; readonly most: number };
    'class-unfit': {
      readonly text: string;
      readonly written: string;
      /** What it is a class of. */
      readonly of: 'metric' | 'unified' | 'nothing';
      /** What the thread is. */
      readonly kind: Thread['kind'];
    };
  }
}

/** A number as a pattern, its digits bounded. */
export const NUMBER = '(?:\\d{1,12}(?:\\.\\d{0,9})?|\\.\\d{1,9})';

/** Size and pitch as read, before the limits are checked. */
export interface Basic {
  readonly kind: Thread['kind'];
  readonly d: Millimetres;
  readonly P: Millimetres;
  readonly tpi?: number;
  /** Starts, where lead and pitch were both written. */
  readonly N?: number;
  /** The canonical form with N starts and, in its place, the class with its hyphen. */
  readonly spell: (N: number, toleranceClass: string) => string;
  readonly notes: readonly string[];
}

/** What stood round size and pitch. */
export interface Extras {
  readonly h: 1 | -1;
  readonly N: number | undefined;
  readonly toleranceClass: string | undefined;
}

/** The thread, or the refusal that says which limit it breaks; `text` is what was typed. */
export const finish = (basic: Basic, extras: Extras, text: string): Result<Thread> => {
  const { kind, d, P, tpi, spell } = basic;
  if (basic.N !== undefined && extras.N !== undefined && basic.N !== extras.N)
    return bad('starts-twice', { text, made: basic.N, written: extras.N });
  const N = basic.N ?? extras.N ?? 1;
  const toleranceClass = isUnifiedPair(extras.toleranceClass?.toUpperCase() ?? '')
    ? extras.toleranceClass?.toUpperCase()
    : extras.toleranceClass;
  const refusal = outsideLimits(text, d, P, tpi, N) ?? wrongClass(text, kind, toleranceClass);
  if (refusal !== undefined) return refusal;
  const notes = [...basic.notes];
  if (N > 1 && basic.N === undefined) notes.push(pitchWithStarts(P, N));
  return good({
    designation: spell(N, toleranceClass === undefined ? '' : `-${toleranceClass}`) + (extras.h === -1 ? ' LH' : ''),
    kind,
    d,
    P,
    N,
    L: mm(N * P),
    h: extras.h,
    ...(tpi !== undefined && { tpi }),
    ...(toleranceClass !== undefined && { toleranceClass }),
    notes,
  });
};

export const within = (x: number, symbol: SymbolName): boolean =>
  x >= symbolFact(symbol).min && x <= symbolFact(symbol).max;

/** Whether a pitch leaves a core on a diameter, both in the same unit. */
export const leavesCore = (d: number, P: number): boolean => diameters({ d: mm(d), P: mm(P) }).d3 > 0;

/** Why the thread can’t be made, or undefined where it can. */
const outsideLimits = (
  text: string,
  d: Millimetres,
  P: Millimetres,
  tpi: number | undefined,
  N: number,
): Bad | undefined => {
  if (!within(d, 'd')) return bad('diameter-out-of-range', { text, d });
  if (tpi !== undefined && !within(tpi, 'tpi')) return bad('tpi-out-of-range', { text, tpi });
  const { d2, d3 } = diameters({ d, P });
  if (!(d3 > 0)) return bad('pitch-without-core', { text, d, P, most: roundedDown((d * P) / (d - d3)) });
  if (!within(P, 'P')) return bad('pitch-out-of-range', { text, P });
  if (!within(N, 'N')) return bad('starts-out-of-range', { text, N });
  const most = Math.min(Math.PI * d2, symbolFact('L').max);
  return N * P <= most ? undefined : bad('lead-too-steep', { text, L: N * P, most: roundedDown(most) });
};

/** Rounded down, so that the value named is itself allowed. */
const roundedDown = (x: number): number => Math.floor(x * 100) / 100;

const wrongClass = (text: string, kind: Thread['kind'], written: string | undefined): Bad | undefined => {
  if (written === undefined) return undefined;
  const [metric, unified] = [isIsoPair(written), isUnifiedPair(written)];
  if ((metric && kind !== 'unified') || (unified && kind !== 'metric')) return undefined;
  return bad('class-unfit', { text, written, of: metric ? 'metric' : unified ? 'unified' : 'nothing', kind });
};

/** One class, or nut and screw together as `6H/6g`. */
const isIsoPair = (written: string): boolean => {
  const sides = written.split('/').map((cls) => {
    const read = readIsoClass(cls);
    return read.ok && read.value.pitch.grade >= 3 && read.value.crest.grade >= 3 ? read.value.side : undefined;
  });
  return !sides.includes(undefined) && new Set(sides).size === sides.length;
};

const isUnifiedPair = (written: string): boolean => {
  const classes = written.split('/');
  return classes.every(isUnifiedClass) && new Set(classes.map((cls) => cls.slice(1))).size === classes.length;
};
