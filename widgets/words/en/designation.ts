/** What a reader ought to know about a thread that was read: what was taken for what was not written, and how it stands to the series. */
import { listed, METRIC_SIZES, say, UNIFIED_SIZES, type UnifiedSize } from '../../engine/index.ts';

export const pitchWithStarts = (P: number, N: number): string =>
  `${say(P, 5)} mm was read as the pitch, so with ${N} starts the lead is ${say(N * P, 5)} mm.`;

export const coarseTaken = (d: number, P: number): string =>
  `No pitch was written, so the coarse pitch of M${d} was taken, ${P} mm.`;

export const oneFineTaken = (d: number, P: number): string =>
  `No pitch was written, so the one fine pitch of M${d} was taken, ${P} mm.`;

/** Of a pitch that the series do not have, beside those they have for this diameter. */
export const outsideMetricSeries = (d: number, P: number, pitches: readonly number[]): string => {
  const first = `M${d}×${P} is not in the series of ISO 261`;
  return pitches.length === 0
    ? `${first}, ${nearSizes(d)}.`
    : `${first}: for M${d} the standard pitches are ${listed(pitches.map(String))} mm.`;
};

/** Where a diameter lies among the sizes of the series. */
export const nearSizes = (d: number): string => {
  const below = METRIC_SIZES.findLast((size) => size < d);
  const above = METRIC_SIZES.find((size) => size > d);
  return below === undefined || above === undefined
    ? `of which this notebook holds M${METRIC_SIZES[0]} to M${METRIC_SIZES.at(-1)}`
    : `whose nearest sizes of first and second choice are M${below} and M${above}`;
};

/** A bare pair of numbers, and the standard thread of the same size and pitch where there is one. */
export const readWithoutUnit = (name: string, standard: string | undefined): string =>
  `No unit was written, so it was read as ${name}${standard === undefined ? '' : `; the standard thread is written ${standard}`}.`;

export const roundedRoot = (written: string, series: string): string =>
  `${written} was read as ${series}: the sizes are the same, and only the rounded root of the screw is added.`;

export const seriesTpiTaken = (series: string, tpi: number): string =>
  `No threads per inch were written, so those of ${series} were taken, ${tpi}.`;

export const roundedSizeTaken = (inches: number, label: string, D: number): string =>
  `${inches} in was taken as the rounded size ${label}, ${D} in.`;

/** `10` in `10-32`, which may be a number size or inches. */
export const bareWholeRead = (n: number, asNumber: boolean, pitch: string): string => {
  const [read, other] = asNumber ? [`the number size #${n}`, `${n} in`] : [`${n} in`, `#${n}`];
  return `“${n}” was read as ${read}; for the other reading write ${other}-${pitch}.`;
};

export const beyondUnifiedSeries = (name: string): string =>
  `The Unified series held here end at 1-1/2 in, so ${name} was not compared with them.`;

/** Of a thread that is in none of UNC, UNF and UNEF, beside what they have near it. */
export const outsideUnifiedSeries = (
  D: number,
  name: string,
  constantPitch: boolean,
  size: UnifiedSize | undefined,
): string => {
  const first = `${name} is not in the series UNC, UNF or UNEF${constantPitch ? ' but in the constant-pitch series UN' : ''}`;
  if (size) return `${first}: for ${size.label} they have ${offersOf(size)}.`;
  const near = [UNIFIED_SIZES.findLast((s) => s.D < D), UNIFIED_SIZES.find((s) => s.D > D)];
  return `${first}, whose nearest sizes are ${listed(near.flatMap((s) => (s ? [s.label] : [])))}.`;
};

export const offersOf = (size: UnifiedSize): string =>
  listed(Object.entries(size.tpi).map(([series, tpi]) => `${tpi} (${series})`));
