/**
 * The lab of a class: each student has a pair, a sheet to measure it by with an indicator, and a rig that hides faults for who has no
 * hardware. All of it follows from class code, student and bank version, as papers do. The rig is the engine’s simulator; its faults are
 * invented, each well over the scatter, so that a careful fit can find them.
 */
import { type Pair, pairOf } from '../assembly/pair-of.ts';
import {
  bad,
  calibrate,
  type GaugeReading,
  good,
  mm,
  netLeadError,
  netMotion,
  newtons,
  perStep,
  plain,
  practiceReadings,
  type Result,
  trueNetLead,
  turns,
  uniform,
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

/** What can be hidden in a rig. */
const HIDDEN = ['long', 'short', 'loose', 'wave', 'drift', 'misread'] as const;
export type Hidden = (typeof HIDDEN)[number];

export interface Lab {
  readonly student: string;
  readonly pair: Pair;
  /** Motion of a flat, with its sign. */
  readonly flat: number;
  /** What the indicator should show at each place, mm. */
  readonly expected: readonly number[];
  readonly readings: readonly GaugeReading[];
  readonly hidden: readonly { readonly fault: Hidden; readonly size: number }[];
  /** Net lead that the rig was given, and what a fit finds, mm a turn; the fit is none where the readings refuse it. */
  readonly truth: number;
  readonly found: number | undefined;
}

const LEADS: readonly Hidden[] = ['long', 'short'];

/** The lab of one student. */
export const labOf = (pairs: readonly Pair[], classCode: string, student: string, version: string): Result<Lab> => {
  const state = stateOf(['lab', classCode, student, version]);
  const between = (low: number, high: number) => low + (high - low) * uniform(state);
  const pair = pairs[pick(state, pairs.length)];
  if (!pair) return bad('lab-pairs-empty', {});
  const { A, C, leads, Delta } = pair;
  const size = Math.abs(Delta);
  const first = HIDDEN[pick(state, HIDDEN.length)] ?? 'long';
  // Long and short can't both be; all else may come together.
  const others = HIDDEN.filter((one) => one !== first && !(LEADS.includes(one) && LEADS.includes(first)));
  const faults = [first, ...(uniform(state) < 0.5 ? [others[pick(state, others.length)] ?? 'wave'] : [])];
  const has = (fault: Hidden) => faults.includes(fault);
  const share = between(0.015, 0.04) * (has('short') ? -1 : 1);
  const off = has('long') || has('short') ? share : between(-0.002, 0.002);
  const lost = has('loose') ? between(0.08, 0.2) * size : between(0.004, 0.01) * size;
  const wave = has('wave') ? between(0.04, 0.08) * size : between(0.001, 0.004) * size;
  const phase = uniform(state);
  const drift = between(0.0015, 0.003) * size * (uniform(state) < 0.5 ? -1 : 1);
  // The whole error of the net lead laid on thread C.
  const eps_C = plain((off * Delta) / (leads.h_C * leads.L_C));
  const error = netLeadError.of({ ...leads, eps_A: plain(0), eps_C, Delta });
  if (!error.ok) return error;
  const truth = trueNetLead.of({ Delta, eps: error.value.eps });
  if (!truth.ok) return truth;
  const rig = practiceReadings(
    {
      A: { h: A.h, L: A.L, play: mm(lost / 2) },
      C: { h: C.h, L: C.L, play: mm(lost / 2), leadError: eps_C, periodic: mm(wave), phase: turns(phase) },
      // Without a weight the play of both threads shows, which is what a loose rig is to teach.
      loads: { turned: newtons(0), carried: newtons(has('loose') ? 0 : 20) },
      drags: { turned: newtons(0), carried: newtons(2) },
      noise: mm(Math.min(0.0005, 0.004 * size)),
      seed: pick(state, 1e6),
    },
    { out: turns((PLACES - 1) / FLATS), stepsPerTurn: FLATS, runs: RUNS, division: mm(1e-4) },
  );
  if (!rig.ok) return rig;
  const odd = 2 + pick(state, PLACES - 4);
  const slip = between(0.5, 0.8) * (size / FLATS) * (uniform(state) < 0.5 ? -1 : 1);
  const readings = rig.value.map((row, i) => ({
    ...row,
    reading: mm(
      Math.round((row.reading + (has('drift') ? drift * i : 0) + (has('misread') && i === odd ? slip : 0)) / 1e-4) *
        1e-4,
    ),
  }));
  const flat = perStep.of({ Delta, k: plain(FLATS) });
  if (!flat.ok) return flat;
  const expected = Array.from({ length: PLACES }, (_, i) => {
    const at = netMotion.of({ n: turns(i / FLATS), Delta });
    return at.ok ? at.value.z_c : 0;
  });
  const fit = calibrate(readings, { nominal: Delta });
  const sizes: Readonly<Record<Hidden, number>> = {
    long: off * Delta,
    short: off * Delta,
    loose: lost,
    wave,
    drift: drift * (readings.length - 1),
    misread: slip,
  };
  return good({
    student,
    pair,
    flat: Math.sign(Delta) * flat.value.s,
    expected,
    readings,
    hidden: faults.map((fault) => ({ fault, size: sizes[fault] })),
    truth: truth.value.Delta_e,
    found: fit.ok ? fit.value.lead : undefined,
  });
};
