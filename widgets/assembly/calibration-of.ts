/**
 * The calibration that the reader's readings and numbers make, worked out once and shared by every drawing of a figure.
 *
 * A long table is not worked while a drawing waits for it: the figure says that it is at work, and draws again when it is
 * done. The stated lead errors and the set-up are looked at afterwards, so that changing them costs nothing however long the table is.
 */

import {
  bad,
  type Calibration,
  calibrateRun,
  good,
  type Millimetres,
  mm,
  plain,
  type Result,
  rssLeadError,
  runToEnd,
  type SetUp,
  type Signed,
  signLead,
  type Task,
  type Thread,
  worstLeadError,
} from '../engine/index.ts';
import type { OptionOf } from '../input/choices.ts';
import type { ReadingsTable } from '../input/readings-table.ts';
import { LONG_TEXT, NO_READINGS, readRunsInSteps } from '../input/texts.ts';
import type { Adjuster } from './adjuster/adjuster.ts';
import { partsStated } from './adjuster/stated.ts';
import { pairOf } from './pair-of.ts';
import { runInSlices } from './run-in-slices.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'nothing-to-calibrate': Readonly<Record<never, never>>;
  }
}

/** What is stated of the set-up, which no fit can see. */
export const SET_UP = ['q_g', 'theta_i', 'a_o', 'theta_c', 'e_d', 'e_rp', 'e_mt'] as const;

/** What a calibration is worked from. */
export interface Given {
  readonly threads: Readonly<Record<'A' | 'C', Thread>>;
  readonly values: Readonly<Record<'k' | 'eps_A' | 'eps_C' | (typeof SET_UP)[number], number>>;
  readonly choices: Readonly<{ allowance: OptionOf<'allowance'> }>;
  readonly texts: Readonly<Record<'runs' | 'adjuster', string>>;
}

export interface Calibrated {
  readonly calibration: Calibration;
  /** The whole ± and what it tells of agreement. */
  readonly signed: Signed;
  readonly table: ReadingsTable;
  readonly nominal: number;
  /** Of the parts where they are stated; a plain screw has no thread C. */
  readonly threads: { readonly A: Thread; readonly C: Thread | undefined };
  /** The parts, where they are stated. */
  readonly adjuster: Adjuster | undefined;
  /** A difference as large as this matters, mm a turn. */
  readonly matters: number;
  readonly setUp: SetUp;
  /** Relative error of the net lead that the stated lead errors allow. */
  readonly leadError: number;
  readonly stepsPerTurn: number;
  /** Of the work done, to tell one result from another without looking at a hundred thousand rows. */
  readonly name: string;
}

/** No readings yet, still at work on a long table, or done. */
export type Found =
  | { readonly at: 'none'; readonly name: string }
  | { readonly at: 'work'; readonly characters: number; readonly name: string }
  | { readonly at: 'end'; readonly calibrated: Calibrated };

interface Work {
  readonly text: string;
  readonly nominal: number;
  readonly stepsPerTurn: number;
  readonly name: string;
  result: Result<{ readonly calibration: Calibration; readonly table: ReadingsTable }> | undefined;
}

/** What the figures of a page share: the work is done once for all of them. */
const shared = {
  last: undefined as Work | undefined,
  /** Ends the work on the table that stood before. */
  stop: () => {},
  /** Of the tables that came one after the other. */
  tables: 0,
  /** What draws a figure again, by its stage. */
  waiting: new Map<HTMLElement, () => void>(),
};

/** Tells a figure when long work is done, for as long as its stage is on the page. */
export const whenCalibrated = (stage: HTMLElement, redraw: () => void): void => void shared.waiting.set(stage, redraw);

export const calibrationOf = (numbers: Given): Result<Found> => {
  const parts = partsStated(numbers.texts.adjuster);
  if (parts && !parts.ok) return parts;
  const adjuster = parts?.value;
  const threads = adjuster ? { A: adjuster.A.thread, C: adjuster.C?.thread } : numbers.threads;
  const lead = leadOf(threads);
  if (!lead.ok) return lead;
  const { Delta } = lead.value;
  if (Delta === 0) return bad('nothing-to-calibrate', {});
  if (numbers.texts.runs === NO_READINGS) return good({ at: 'none', name: NO_READINGS });
  const { k, eps_A, eps_C } = numbers.values;
  const [A, C] = [threads.A, threads.C ?? threads.A];
  // A plain screw has the error of its one thread.
  const errors = { L_A: A.L, L_C: C.L, eps_A: plain(eps_A), eps_C: plain(threads.C ? eps_C : 0), Delta };
  const rss = numbers.choices.allowance === 'root-sum-square';
  const share = rss ? rssLeadError.of(errors) : worstLeadError.of(errors);
  if (!share.ok) return share;
  const leadError = 'eps_r' in share.value ? share.value.eps_r : share.value.eps_w;
  const work = workOn(numbers.texts.runs, Delta, k);
  if (work.result === undefined) return good({ at: 'work', characters: work.text.length, name: work.name });
  if (!work.result.ok) return work.result;
  const { calibration, table } = work.result.value;
  const [low, high] = turnsRead(calibration);
  const signed = signLead({
    ...numbers.values,
    lead: calibration.lead,
    fit: calibration.leadError,
    freedom: calibration.freedom,
    turns: high - low,
    nominal: Delta,
    tolerance: leadError * Math.abs(Delta),
    matters: numbers.values.e_mt,
  });
  if (!signed.ok) return signed;
  return good({
    at: 'end',
    calibrated: {
      calibration,
      signed: signed.value,
      table,
      nominal: Delta,
      threads,
      adjuster,
      leadError,
      matters: numbers.values.e_mt,
      setUp: numbers.values,
      stepsPerTurn: work.stepsPerTurn,
      name: work.name,
    },
  });
};

/** From the least turns to the most. */
export const turnsRead = ({ rows }: Pick<Calibration, 'rows'>): readonly [number, number] =>
  rows.reduce<readonly [number, number]>(
    ([low, high], { turns }) => [Math.min(low, turns), Math.max(high, turns)],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  );

const leadOf = ({ A, C }: Calibrated['threads']): Result<{ readonly Delta: Millimetres }> =>
  C ? pairOf({ threads: { A, C } }) : good({ Delta: mm(-A.h * A.L) });

/** The same, once it is worked out and stands. */
export const calibrated = (numbers: Given): Calibrated | undefined => {
  const found = calibrationOf(numbers);
  return found.ok && found.value.at === 'end' ? found.value.calibrated : undefined;
};

/** Whether a table takes so long that it is worked in slices. */
export const isLong = (runs: string): boolean => runs.length > LONG_TEXT;

const workOn = (text: string, nominal: number, stepsPerTurn: number): Work => {
  const { last } = shared;
  if (last?.text === text && last.nominal === nominal && last.stepsPerTurn === stepsPerTurn) return last;
  if (last?.text !== text) shared.tables++;
  // The same table at the same numbers has its name again, after it was asked backwards at others.
  const name = JSON.stringify([shared.tables, nominal, stepsPerTurn]);
  const work: Work = { text, nominal, stepsPerTurn, name, result: undefined };
  shared.last = work;
  shared.stop();
  const run = fitted(work);
  if (!isLong(text) || typeof window === 'undefined') {
    work.result = runToEnd(run);
    return work;
  }
  shared.stop = runInSlices(run, (result) => {
    work.result = result;
    for (const [stage, redraw] of shared.waiting)
      if (stage.isConnected) setTimeout(redraw);
      else shared.waiting.delete(stage);
  });
  return work;
};

function* fitted({ text, nominal, stepsPerTurn }: Work): Task<Exclude<Work['result'], undefined>> {
  const table = yield* readRunsInSteps(text, stepsPerTurn);
  if (!table.ok) return table;
  const calibration = yield* calibrateRun(table.value.rows, { nominal });
  return calibration.ok ? good({ calibration: calibration.value, table: table.value }) : calibration;
}
