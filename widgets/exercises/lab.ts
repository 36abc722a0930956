/**
 * The lab of a class: each student has a pair, a sheet to measure it by with an indicator, and for who has no hardware the readings of a jack of that
 * pair with a hidden fault: the bench of the chapter on calibration, on paper. All of it follows from class code, student and bank version, as papers do.
 */
import { adjusterOf } from '../assembly/adjuster/from-numbers.ts';
import {
  type Bench,
  type BenchReading,
  benchOf,
  type Checks,
  checksOf,
  leadOf,
  readingsOf,
} from '../assembly/bench/hidden-fault.ts';
import { type Pair, pairOf } from '../assembly/pair-of.ts';
import {
  bad,
  calibrate,
  type GaugeReading,
  good,
  mm,
  netMotion,
  perStep,
  plain,
  type Result,
  turns,
} from '../engine/index.ts';
import { readThread } from '../input/designation.ts';
import { pick, stateOf } from './seed.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'lab-pairs-empty': Readonly<Record<never, never>>;
    'lab-pairs-many': { readonly pairs: number; readonly most: number };
    'lab-pair-unread': { readonly line: number; readonly text: string };
    'lab-pair-side': { readonly line: number; readonly why: Bad };
    'lab-pair-idle': { readonly line: number; readonly text: string };
  }
}

/** The common head of a differential screw has six flats. */
export const FLATS = 6;
/** Readings of one way: two turns by flats, the start and the end among them. */
export const PLACES = 2 * FLATS + 1;
const RUNS = 2;

const MOST_PAIRS = 50;

/** A pair a line, `M10x1.5 + 3/8-16`: first the thread in the base, then the one in the carried part. */
export const readLabPairs = (text: string): Result<readonly Pair[]> => {
  const lines = text
    .split(/\r\n|\r|\n/)
    .map((line, i) => ({ line: i + 1, text: line.trim() }))
    .filter((one) => one.text !== '');
  if (lines.length === 0) return bad('lab-pairs-empty', {});
  if (!(lines.length <= MOST_PAIRS)) return bad('lab-pairs-many', { pairs: lines.length, most: MOST_PAIRS });
  const pairs: Pair[] = [];
  for (const { line, text: both } of lines) {
    const [first = '', second, ...more] = both.split(/\s*[+;]\s*|\s+over\s+/);
    if (second === undefined || more.length > 0) return bad('lab-pair-unread', { line, text: both });
    const [A, C] = [readThread(first), readThread(second)];
    if (!A.ok) return bad('lab-pair-side', { line, why: A });
    if (!C.ok) return bad('lab-pair-side', { line, why: C });
    const pair = pairOf({ threads: { A: A.value, C: C.value } });
    if (!pair.ok) return bad('lab-pair-side', { line, why: pair });
    if (!(Math.abs(pair.value.Delta) > 1e-4)) return bad('lab-pair-idle', { line, text: both });
    pairs.push(pair.value);
  }
  return good(pairs);
};

/** Of the ball at the tip, mm: a quarter of an inch across, as the shop's feet have it. */
const BALL = 3.175;
/** Quarters of a turn, where the tip is read across and with the work off. */
const QUARTERS = [0, 0.25, 0.5, 0.75, 1];
const SEEDS = 1e9;

export interface Lab {
  readonly student: string;
  readonly pair: Pair;
  /** Motion of a flat, with its sign. */
  readonly flat: number;
  /** What the indicator should show at each place, mm. */
  readonly expected: readonly number[];
  readonly bench: Bench;
  /** Up and down by flats, twice, with the work on. */
  readonly readings: readonly GaugeReading[];
  /** One turn up and down by quarters, with the work on and off. */
  readonly quarters: { readonly on: readonly BenchReading[]; readonly off: readonly BenchReading[] };
  readonly checks: Checks;
  /** Net lead of the jack, and what a fit finds, mm a turn; the fit is none where the readings refuse it. */
  readonly truth: number;
  readonly found: number | undefined;
}

const drawnPair = (pairs: readonly Pair[], classCode: string, student: string, version: string) => {
  const state = stateOf(['lab', classCode, student, version]);
  return { state, pair: pairs[pick(state, pairs.length)] };
};

/** The pair alone, which is quick. */
export const labPairOf = (
  pairs: readonly Pair[],
  classCode: string,
  student: string,
  version: string,
): Result<Pair> => {
  const { pair } = drawnPair(pairs, classCode, student, version);
  return pair ? good(pair) : bad('lab-pairs-empty', {});
};

/** The lab of one student. */
export const labOf = (pairs: readonly Pair[], classCode: string, student: string, version: string): Result<Lab> => {
  const { state, pair } = drawnPair(pairs, classCode, student, version);
  if (!pair) return bad('lab-pairs-empty', {});
  const { A, C, Delta } = pair;
  const jack = adjusterOf({ threads: { A, C }, choices: { arrangement: 'in line' }, ball: BALL });
  if (!jack.ok) return jack;
  const bench = benchOf(jack.value, pick(state, SEEDS));
  if (!bench.ok) return bench;
  const places = Array.from({ length: PLACES }, (_, i) => i / FLATS);
  const rows = readingsOf(bench.value, places, true, RUNS);
  if (!rows.ok) return rows;
  const on = readingsOf(bench.value, QUARTERS, true);
  if (!on.ok) return on;
  const off = readingsOf(bench.value, QUARTERS, false);
  if (!off.ok) return off;
  const checks = checksOf(bench.value);
  if (!checks.ok) return checks;
  const readings = rows.value.map(({ turns: at, height, direction }) => ({
    turns: turns(at),
    reading: mm(height),
    direction,
  }));
  const flat = perStep.of({ Delta, k: plain(FLATS) });
  if (!flat.ok) return flat;
  const expected = places.map((at) => {
    const moved = netMotion.of({ n: turns(at), Delta });
    return moved.ok ? moved.value.z_c : 0;
  });
  const fit = calibrate(readings, { nominal: Delta });
  return good({
    student,
    pair,
    flat: Math.sign(Delta) * flat.value.s,
    expected,
    bench: bench.value,
    readings,
    quarters: { on: on.value, off: off.value },
    checks: checks.value,
    truth: leadOf(bench.value),
    found: fit.ok ? fit.value.lead : undefined,
  });
};
