/**
 * The last step of reading a designation: the limits a thread has to keep, its class, and its canonical form.
 *
 * A core is left, d3 = d − 1.2269 P > 0 (thread.ts). The lead angle at the pitch diameter is at most 45°, L ≤ π d2: a
 * limit chosen for this notebook, steeper helices are not cut with taps and dies. The other bounds are those of the
 * glossary. Lengths in mm.
 */
import {
  diameters,
  good,
  isUnifiedClass,
  type Millimetres,
  mm,
  quoted,
  type Result,
  readIsoClass,
  type SymbolName,
  said,
  say,
  symbolFact,
  type Thread,
} from '../engine/index.ts';

/** What a reader who is lost is shown. */
export const EXAMPLES = 'M10×1.5, 3/8-16 or 12 mm × 1.1 mm';

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

/** The thread, or the sentence that says which limit it breaks; `typed` is the quotation the sentence begins with. */
export const finish = (basic: Basic, extras: Extras, typed: string): Result<Thread> => {
  const { kind, d, P, tpi, spell } = basic;
  if (basic.N !== undefined && extras.N !== undefined && basic.N !== extras.N)
    return said(`Read ${typed}; Ph and P make ${basic.N} starts, yet ${extras.N} are written: write one of the two.`);
  const N = basic.N ?? extras.N ?? 1;
  const toleranceClass = isUnifiedPair(extras.toleranceClass?.toUpperCase() ?? '')
    ? extras.toleranceClass?.toUpperCase()
    : extras.toleranceClass;
  const refusal = outsideLimits(d, P, tpi, N) ?? wrongClass(kind, toleranceClass);
  if (refusal !== undefined) return said(`Read ${typed}${refusal}.`);
  const notes = [...basic.notes];
  if (N > 1 && basic.N === undefined)
    notes.push(`${say(P, 5)} mm was read as the pitch, so with ${N} starts the lead is ${say(N * P, 5)} mm.`);
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

const range = (symbol: SymbolName): string => `from ${symbolFact(symbol).min} to ${symbolFact(symbol).max}`;

/** Whether a pitch leaves a core on a diameter, both in the same unit. */
export const leavesCore = (d: number, P: number): boolean => diameters({ d: mm(d), P: mm(P) }).d3 > 0;

/** How the sentence that begins with what was read goes on, or undefined where the thread can be made. */
const outsideLimits = (d: Millimetres, P: Millimetres, tpi: number | undefined, N: number): string | undefined => {
  if (!within(d, 'd')) return `, a diameter of ${say(d)} mm; one here is ${range('d')} mm: write one in that range`;
  if (tpi !== undefined && !within(tpi, 'tpi'))
    return `, with ${say(tpi)} threads per inch; a thread here has ${range('tpi')}: write one like 3/8-16`;
  const { d2, d3 } = diameters({ d, P });
  if (!(d3 > 0))
    return `, a pitch of ${say(P)} mm, which leaves no core in a diameter of ${say(d)} mm: take a pitch of at most ${roundedDown((d * P) / (d - d3))} mm`;
  if (!within(P, 'P')) return `, a pitch of ${say(P)} mm; one here is ${range('P')} mm: write one in that range`;
  if (!within(N, 'N')) return `, which makes ${say(N)} starts; a thread here has ${range('N')}: take a shorter lead`;
  const longest = symbolFact('L').max;
  const most = Math.min(Math.PI * d2, longest);
  return N * P <= most
    ? undefined
    : `, a lead of ${say(N * P)} mm; with this diameter and pitch it may be at most ${roundedDown(most)} mm, a lead angle of 45° or ${longest} mm: take fewer starts`;
};

/** Rounded down, so that the value named is itself allowed. */
const roundedDown = (x: number): string => String(Math.floor(x * 100) / 100);

const wrongClass = (kind: Thread['kind'], written: string | undefined): string | undefined => {
  if (written === undefined) return undefined;
  const [metric, unified] = [isIsoPair(written), isUnifiedPair(written)];
  if ((metric && kind !== 'unified') || (unified && kind !== 'metric')) return undefined;
  const what = metric ? 'a class of metric threads' : unified ? 'a class of Unified threads' : 'not a tolerance class';
  const allowed = {
    metric: 'a metric screw takes one like 6g and a nut one like 6H',
    unified: 'a Unified screw takes 1A, 2A or 3A and a nut 1B, 2B or 3B',
    free: 'a screw takes one like 6g or 2A and a nut one like 6H or 2B',
  }[kind];
  return `; ${quoted(written)} is ${what}, and ${allowed}: write one of those or leave it out`;
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
