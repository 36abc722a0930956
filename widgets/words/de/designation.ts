/** Was man von einem gelesenen Gewinde wissen soll: was für Ungeschriebenes angenommen wurde, und wie es zur Reihe steht. */
import { listed, METRIC_SIZES, say, spokenNumber, UNIFIED_SIZES } from '../../engine/index.ts';
import type * as En from '../en/designation.ts';

const n = (x: number | undefined): string => spokenNumber(String(x));

export const pitchWithStarts: typeof En.pitchWithStarts = (P, N) =>
  `${say(P, 5)} mm wurde als Teilung gelesen; mit ${N} Gängen ist die Steigung ${say(N * P, 5)} mm.`;
export const coarseTaken: typeof En.coarseTaken = (d, P) =>
  `Keine Teilung geschrieben, darum wurde die des Regelgewindes von M${n(d)} genommen, ${n(P)} mm.`;
export const oneFineTaken: typeof En.oneFineTaken = (d, P) =>
  `Keine Teilung geschrieben, darum wurde die eine Feinteilung von M${n(d)} genommen, ${n(P)} mm.`;
export const outsideMetricSeries: typeof En.outsideMetricSeries = (d, P, pitches) => {
  const first = `M${n(d)}×${n(P)} steht nicht in der Reihe der ISO 261`;
  return pitches.length === 0
    ? `${first}, ${nearSizes(d)}.`
    : `${first}: Für M${n(d)} sind die genormten Teilungen ${listed(pitches.map(n))} mm.`;
};
export const nearSizes: typeof En.nearSizes = (d) => {
  const below = METRIC_SIZES.findLast((size) => size < d);
  const above = METRIC_SIZES.find((size) => size > d);
  return below === undefined || above === undefined
    ? `von der dieses Heft M${n(METRIC_SIZES[0])} bis M${n(METRIC_SIZES.at(-1))} enthält`
    : `deren nächste Größen erster und zweiter Wahl M${n(below)} und M${n(above)} sind`;
};
export const readWithoutUnit: typeof En.readWithoutUnit = (name, standard) =>
  `Ohne Einheit geschrieben, darum als ${spokenNumber(name)} gelesen${standard === undefined ? '' : `; das Normgewinde schreibt man ${spokenNumber(standard)}`}.`;
export const roundedRoot: typeof En.roundedRoot = (written, series) =>
  `${written} wurde als ${series} gelesen: Die Größen sind gleich, nur der gerundete Grund der Schraube kommt dazu.`;
export const seriesTpiTaken: typeof En.seriesTpiTaken = (series, tpi) =>
  `Keine Gänge je Zoll geschrieben, darum wurden die von ${series} genommen, ${n(tpi)}.`;
export const roundedSizeTaken: typeof En.roundedSizeTaken = (inches, label, D) =>
  `${n(inches)} in wurde als die gerundete Größe ${label} genommen, ${n(D)} in.`;
export const bareWholeRead: typeof En.bareWholeRead = (size, asNumber, pitch) => {
  const [read, other] = asNumber ? [`die Nummerngröße #${size}`, `${size} in`] : [`${size} in`, `#${size}`];
  return `„${size}“ wurde als ${read} gelesen; für das andere schreibe ${other}-${pitch}.`;
};
export const beyondUnifiedSeries: typeof En.beyondUnifiedSeries = (name) =>
  `Die Unified-Reihen enden hier bei 1-1/2 in, darum wurde ${spokenNumber(name)} nicht mit ihnen verglichen.`;
export const outsideUnifiedSeries: typeof En.outsideUnifiedSeries = (D, name, constantPitch, size) => {
  const first = `${spokenNumber(name)} steht nicht in den Reihen UNC, UNF oder UNEF${constantPitch ? ', aber in der Reihe UN mit fester Teilung' : ''}`;
  if (size) return `${first}: Für ${size.label} haben sie ${offersOf(size)}.`;
  const near = [UNIFIED_SIZES.findLast((s) => s.D < D), UNIFIED_SIZES.find((s) => s.D > D)];
  return `${first}; ihre nächsten Größen sind ${listed(near.flatMap((s) => (s ? [s.label] : [])))}.`;
};
export const offersOf: typeof En.offersOf = (size) =>
  listed(Object.entries(size.tpi).map(([series, tpi]) => `${n(tpi)} (${series})`));
