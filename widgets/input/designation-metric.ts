/**
 * Size and pitch of a metric designation: `M10`, `M10x1.5`, `M16xPh3P1.5` (lead and pitch, ISO 965-1); `M6 coarse`, `M8x1 fine` and
 * `MF8x1` (spellings of the trade). Lengths in mm.
 */

import { coarseTaken, oneFineTaken, outsideMetricSeries } from '#words/designation.ts';
import {
  type Bad,
  bad,
  coarsePitch,
  good,
  type Millimetres,
  mm,
  type Result,
  standardPitches,
} from '../engine/index.ts';
import { type Basic, NUMBER, within } from './designation-limits.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'fine-and-coarse': { readonly text: string };
    'pitch-unlike-its-word': {
      readonly text: string;
      readonly d: number;
      readonly P: number;
      readonly coarse: number;
      readonly word: string;
      /** A pitch that the word fits. */
      readonly instead: number | undefined;
    };
    'lead-not-of-pitches': { readonly text: string };
    'lead-without-pitch': { readonly text: string };
    'no-coarse-pitch': { readonly text: string; readonly d: number; readonly example: number };
    'fine-pitches': { readonly text: string; readonly d: number; readonly pitches: readonly number[] };
    'metric-and-inch': { readonly text: string; readonly d: number };
    'metric-rest-unread': { readonly text: string };
  }
}

const METRIC = new RegExp(`^m(f?) ?(${NUMBER})(.*)$`, 'i');
const FINENESS = /[ -](coarse|fine)(?:[ -]pitch)?$/i;
const PITCH = new RegExp(`^(?:[ x-] ?p?|p) ?(-?${NUMBER})(?: ?mm)?$`, 'i');
const LEAD_AND_PITCH = new RegExp(`^[ x-]?ph ?(${NUMBER})[ x-]?p ?(${NUMBER})(?: ?mm)?$`, 'i');
const INCH_WORD = /(?:^|[^a-z])(?:un[a-z]*|nc|nf|tpi)/i;

export const isMetric = (core: string): boolean => METRIC.test(core);

/** Reads what is left when class, starts and hand are off; `text` is what was typed. */
export const readMetric = (core: string, text: string): Result<Basic> => {
  const [, f = '', size = '', tail = ''] = METRIC.exec(core) ?? [];
  const d = mm(Number(size));
  const word = FINENESS.exec(tail)?.[1]?.toLowerCase();
  if (word === 'coarse' && f !== '') return bad('fine-and-coarse', { text });
  const rest = tail.replace(FINENESS, '');
  const fine = f !== '' || word === 'fine';
  if (rest === '') return fine ? readFine(d, text) : readCoarse(d, text);
  const read = readWithPitch(d, rest, text);
  return (read.ok ? otherFineness(d, read.value.P, fine ? 'fine' : word, text) : undefined) ?? read;
};

const readWithPitch = (d: Millimetres, rest: string, text: string): Result<Basic> => {
  const both = LEAD_AND_PITCH.exec(rest);
  const pitch = both?.[2] ?? PITCH.exec(rest)?.[1];
  if (pitch === undefined) return restRefusal(d, rest, text);
  const P = mm(Number(pitch));
  if (both === null) return good(metric(d, P, outsideSeries(d, P)));
  const N = Number(both[1]) / P;
  return Math.round(N) >= 1 && Math.abs(N - Math.round(N)) < 1e-9
    ? good({ ...metric(d, P, outsideSeries(d, P)), N: Math.round(N) })
    : bad('lead-not-of-pitches', { text });
};

const metric = (d: Millimetres, P: Millimetres, notes: readonly string[]): Basic => ({
  kind: 'metric',
  d,
  P,
  spell: (N, toleranceClass) => `M${d}×${N === 1 ? P : `Ph${Number((N * P).toPrecision(12))}P${P}`}${toleranceClass}`,
  notes,
});

const readCoarse = (d: Millimetres, text: string): Result<Basic> => {
  const P = coarsePitch(d);
  if (P !== undefined) return good(metric(d, P, [coarseTaken(d, P)]));
  // Out of range altogether: any pitch will do, the limits will refuse the diameter.
  if (!within(d, 'd')) return good(metric(d, mm(1), []));
  const example = Math.min(1.5, Number((d / 5).toPrecision(1)));
  return bad('no-coarse-pitch', { text, d, example });
};

/** The one fine pitch of a diameter; where there are several, none is taken for the reader. */
const readFine = (d: Millimetres, text: string): Result<Basic> => {
  const [coarse, ...fine] = standardPitches(d);
  const [only, ...more] = fine;
  if (coarse === undefined || only === undefined) return readCoarse(d, text);
  return more.length === 0
    ? good(metric(d, only, [oneFineTaken(d, only)]))
    : bad('fine-pitches', { text, d, pitches: fine });
};

/** Why a pitch that is written is not what the word beside it says, or undefined; fine is finer than coarse, in the series or not. */
const otherFineness = (d: Millimetres, P: Millimetres, word: string | undefined, text: string): Bad | undefined => {
  const coarse = coarsePitch(d);
  if (word === undefined || coarse === undefined || (word === 'coarse' ? P === coarse : P < coarse)) return undefined;
  const instead = word === 'coarse' ? coarse : standardPitches(d)[1];
  return bad('pitch-unlike-its-word', { text, d, P, coarse, word, instead });
};

const restRefusal = (d: Millimetres, rest: string, text: string): Bad => {
  if (INCH_WORD.test(rest)) return bad('metric-and-inch', { text, d });
  return /^[ x-]?ph ?[\d.]+$/i.test(rest) ? bad('lead-without-pitch', { text }) : bad('metric-rest-unread', { text });
};

const outsideSeries = (d: Millimetres, P: Millimetres): readonly string[] => {
  const pitches = standardPitches(d);
  return pitches.includes(P) ? [] : [outsideMetricSeries(d, P, pitches)];
};
