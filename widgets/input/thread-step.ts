/**
 * The neighbours of a thread among the standard ones, so that a thread can be changed without typing: metric and inch together, by
 * rising diameter, and within a diameter by rising pitch. Starts and hand stay as they are, and so does the class where it is
 * one of the new system too.
 */

import { METRIC_SERIES, type SeriesThread, type Thread, UNIFIED_SERIES } from '../engine/index.ts';
import { readThread } from './designation.ts';

const RISING: readonly SeriesThread[] = [...METRIC_SERIES, ...UNIFIED_SERIES].sort((a, b) => a.d - b.d || a.P - b.P);

/** Sizes nearer than this are one: a nanometre, far below any typed digit. */
const SAME = 1e-6;

/** The next standard thread smaller (−1) or larger (+1), or the thread itself beyond the last. */
export const neighbourOf = (thread: Thread, sign: 1 | -1): Thread => {
  const ahead = RISING.filter(({ d, P }) => {
    const off = Math.abs(d - thread.d) > SAME ? d - thread.d : P - thread.P;
    return sign * off > SAME;
  });
  if (sign < 0) ahead.reverse();
  for (const { designation } of ahead)
    for (const toleranceClass of [thread.toleranceClass, undefined]) {
      const read = readThread(designation + extrasOf({ ...thread, toleranceClass }));
      // Two starts may be too steep for a small size that is fine with one.
      if (read.ok) return read.value;
    }
  return thread;
};

const extrasOf = (t: Pick<Thread, 'N' | 'h'> & { readonly toleranceClass: string | undefined }): string =>
  `${t.toleranceClass === undefined ? '' : `-${t.toleranceClass}`}${t.N === 1 ? '' : ` ${t.N} starts`}${t.h === 1 ? '' : ' LH'}`;
