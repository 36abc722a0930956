/**
 * Size and pitch of a metric designation: `M10`, `M10x1.5`, `M16xPh3P1.5` (lead and pitch, ISO 965-1); `M6 coarse`, `M8x1 fine` and
 * `MF8x1` (spellings of the trade). Lengths in mm.
 */

import {
  coarsePitch,
  good,
  listed,
  METRIC_SIZES,
  type Millimetres,
  mm,
  type Result,
  said,
  standardPitches,
} from '../engine/index.ts';
import { type Basic, NUMBER, within } from './designation-limits.ts';

const METRIC = new RegExp(`^m(f?) ?(${NUMBER})(.*)$`, 'i');
const FINENESS = /[ -](coarse|fine)(?:[ -]pitch)?$/i;
const PITCH = new RegExp(`^(?:[ x-] ?p?|p) ?(-?${NUMBER})(?: ?mm)?$`, 'i');
const LEAD_AND_PITCH = new RegExp(`^[ x-]?ph ?(${NUMBER})[ x-]?p ?(${NUMBER})(?: ?mm)?$`, 'i');
const INCH_WORD = /(?:^|[^a-z])(?:un[a-z]*|nc|nf|tpi)/i;

export const isMetric = (core: string): boolean => METRIC.test(core);

/** Reads what is left when class, starts and hand are off; `typed` is the quotation a refusal begins with. */
export const readMetric = (core: string, typed: string): Result<Basic> => {
  const [, f = '', size = '', tail = ''] = METRIC.exec(core) ?? [];
  const d = mm(Number(size));
  const word = FINENESS.exec(tail)?.[1]?.toLowerCase();
  if (word === 'coarse' && f !== '')
    return said(`Read ${typed}; MF begins a fine thread, yet “coarse” is written: write one of the two.`);
  const rest = tail.replace(FINENESS, '');
  const fine = f !== '' || word === 'fine';
  if (rest === '') return fine ? readFine(d, typed) : readCoarse(d, typed);
  const read = readWithPitch(d, rest, typed);
  const refusal = read.ok ? otherFineness(d, read.value.P, fine ? 'fine' : word) : undefined;
  return refusal === undefined ? read : said(`Read ${typed}; ${refusal}.`);
};

const readWithPitch = (d: Millimetres, rest: string, typed: string): Result<Basic> => {
  const both = LEAD_AND_PITCH.exec(rest);
  const pitch = both?.[2] ?? PITCH.exec(rest)?.[1];
  if (pitch === undefined) return said(`Read ${typed}${restRefusal(d, rest)}.`);
  const P = mm(Number(pitch));
  if (both === null) return good(metric(d, P, outsideSeries(d, P)));
  const N = Number(both[1]) / P;
  return Math.round(N) >= 1 && Math.abs(N - Math.round(N)) < 1e-9
    ? good({ ...metric(d, P, outsideSeries(d, P)), N: Math.round(N) })
    : said(`Read ${typed}; the lead Ph is a whole number of pitches P: write it like M16×Ph3P1.5.`);
};

const metric = (d: Millimetres, P: Millimetres, notes: readonly string[]): Basic => ({
  kind: 'metric',
  d,
  P,
  spell: (N, toleranceClass) => `M${d}×${N === 1 ? P : `Ph${Number((N * P).toPrecision(12))}P${P}`}${toleranceClass}`,
  notes,
});

const readCoarse = (d: Millimetres, typed: string): Result<Basic> => {
  const P = coarsePitch(d);
  if (P !== undefined)
    return good(metric(d, P, [`No pitch was written, so the coarse pitch of M${d} was taken, ${P} mm.`]));
  // Out of range altogether: any pitch will do, the limits will refuse the diameter.
  if (!within(d, 'd')) return good(metric(d, mm(1), []));
  const example = Math.min(1.5, Number((d / 5).toPrecision(1)));
  return said(
    `Read ${typed}; a diameter of ${d} mm has no coarse pitch in the series of ISO 261, ${near(d)}: write the pitch too, like M${d}×${example}.`,
  );
};

/** The one fine pitch of a diameter; where there are several, none is taken for the reader. */
const readFine = (d: Millimetres, typed: string): Result<Basic> => {
  const [coarse, ...fine] = standardPitches(d);
  const [only, ...more] = fine;
  if (coarse === undefined || only === undefined) return readCoarse(d, typed);
  return more.length === 0
    ? good(metric(d, only, [`No pitch was written, so the one fine pitch of M${d} was taken, ${only} mm.`]))
    : said(
        `Read ${typed}; M${d} has ${fine.length} fine pitches in ISO 261, ${listed(fine.map(String))} mm: write the one you mean, like M${d}×${only}.`,
      );
};

/** Why a pitch that is written is not what the word beside it says, or undefined; fine is finer than coarse, in the series or not. */
const otherFineness = (d: Millimetres, P: Millimetres, word: string | undefined): string | undefined => {
  const coarse = coarsePitch(d);
  if (word === undefined || coarse === undefined || (word === 'coarse' ? P === coarse : P < coarse)) return undefined;
  return `the coarse pitch of M${d} is ${coarse} mm, so ${P} mm is not ${word}: write M${d}×${P} or M${d}×${word === 'coarse' ? coarse : standardPitches(d)[1]}`;
};

const restRefusal = (d: Millimetres, rest: string): string => {
  if (INCH_WORD.test(rest))
    return `, a metric diameter with an inch series; a thread is one or the other: write M${d} with a pitch in millimetres, or an inch size like 3/8-16 UNC`;
  if (/^[ x-]?ph ?[\d.]+$/i.test(rest))
    return '; Ph is the lead, and the pitch is needed as well: write both, like M16×Ph3P1.5';
  return '; after the diameter comes one pitch in millimetres, then only class, starts or hand: write it like M10×1.5-6g LH';
};

const outsideSeries = (d: Millimetres, P: Millimetres): readonly string[] => {
  const pitches = standardPitches(d);
  if (pitches.includes(P)) return [];
  const first = `M${d}×${P} is not in the series of ISO 261`;
  if (pitches.length === 0) return [`${first}, ${near(d)}.`];
  return [`${first}: for M${d} the standard pitches are ${listed(pitches.map(String))} mm.`];
};

/** Where a diameter lies among the sizes of the series. */
const near = (d: Millimetres): string => {
  const below = METRIC_SIZES.findLast((size) => size < d);
  const above = METRIC_SIZES.find((size) => size > d);
  return below === undefined || above === undefined
    ? `of which this notebook holds M${METRIC_SIZES[0]} to M${METRIC_SIZES.at(-1)}`
    : `whose nearest sizes of first and second choice are M${below} and M${above}`;
};
