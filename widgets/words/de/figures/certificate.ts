/** Wörter des Scheins einer Kalibrierung. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/certificate.ts';
import type { Same } from '../../same.ts';

/** Mehrzahl der Schritte. */
const STEPS: Readonly<Record<string, string>> = {
  Fläche: 'Flächen',
  Skalenteil: 'Skalenteile',
  Zwölftel: 'Zwölftel',
};

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Kalibrierschein',
  caption: (v) =>
    `${v.verdict} ${v.missing.length === 0 ? 'Alles Gefragte ist angegeben.' : `Noch nicht angegeben: ${v.missing.join(', ')}.`}`,
  table: {
    head: ['Zeile', 'Wert'],
    noneYet: { head: ['Zeile'], row: 'noch keine' },
    correctionAt: (turns, way) => `Korrektur bei ${turns} Umdrehungen, ${way === 'up' ? 'Hinweg' : 'Rückweg'}`,
  },
  noReadings: 'Noch gibt es nichts zu unterschreiben: Die Kalibrierung oben hat keine Ablesungen deines Entwurfs.',
  working: {
    caption: 'Die Ablesungen werden durchgerechnet; der Kalibrierschein folgt.',
    note: 'Die Ablesungen werden durchgerechnet …',
  },
  heading: 'Kalibrierung einer Differenzialschraube',
  verdicts: {
    agrees: 'Stimmt mit der Sollsteigung überein',
    differs: 'Stimmt nicht mit der Sollsteigung überein',
    'not to be told': 'Zu grob gemessen für ein Urteil',
  },
  andLarge: (verdict, large, matters) =>
    `${verdict}; aber mehr als die ${matters}, auf die es ankommt: ${large.join(', ')}`,
  whole: {
    name: 'gesamtes ± dazu, 95 %',
    value: (U) => `${U} je Umdrehung`,
    largest: 'größte Anteile daran',
    part: (name, much) => `${name} ${much}`,
  },
  measured: 'Gemessen',
  found: 'Befund',
  correction: {
    title: 'Korrektur, zur Sollbewegung zu addieren',
    table: 'Korrekturen',
    steps: (step) => STEPS[step] ?? step,
    turns: 'Umdr.',
    up: 'Hinweg',
    down: 'Rückweg',
    curve: 'Korrektur',
    says: (unit, home) =>
      `In ${unit}. Nach der Anpassung, gezählt vom Anfang: Umdrehung ${home}, erreicht mit steigender Umdrehungszahl. Der Hinweg hat steigende, der Rückweg fallende Umdrehungen. U ist die erweiterte Unsicherheit, 95 %.`,
    thinned: (every) => `Von je ${every} Schritten steht hier einer; die Datei hält alle.`,
    oneWay: {
      up: 'Auf dem Rückweg wurde nicht abgelesen; dort steht nichts.',
      down: 'Auf dem Hinweg wurde nicht abgelesen; dort steht nichts.',
    },
    untold: (why) => `Für einen Weg steht nichts, weil sich die Umkehrspanne nicht finden lässt: ${why}`,
    save: 'Korrekturtabelle als CSV sichern',
  },
  notes:
    'Das ± neben der Steigung ist das der Anpassung, 95 % nach Student. Das gesamte ± nimmt hinzu, was zu Messuhr, Messbolzen, Drift und Wiederholung angegeben ist, nach dem Fortpflanzungsgesetz (JCGM 100), als Grenzen, die nicht voneinander abhängen. Es gilt für dieses Stück, über diese Umdrehungen, wie es an jenem Tag war.',
  signed: ['gemessen von', 'geprüft von'],
  passport: {
    write: 'In den Pass dieses Stücks schreiben',
    noDesign:
      'Ein Pass gehört zu einem Entwurf, und keiner ist in Gebrauch: Behalte erst deinen Versteller unter „Meine Entwürfe“.',
    noMark: 'Der Pass braucht das Zeichen des Stücks: Nenne erst das Stück, etwa Fuß Nr. 1.',
    otherThreads: (design) =>
      `Die Gewinde hier sind nicht die des Entwurfs in Gebrauch, „${design}“: Nichts wurde geschrieben.`,
    full: 'Die Pässe dieses Entwurfs sind voll: Sichere den Entwurf in eine Datei und nimm die ältesten Zeilen heraus.',
    written: (design, row, undated) =>
      `In die Pässe von „${design}“ geschrieben: ${row}.${undated ? ' Der Schein nennt kein Datum, also wurde das heutige genommen: Nenne das der Ablesungen, und schreibe noch einmal, falls es ein anderes ist.' : ''}`,
  },
  stated: { piece: 'Stück', dated: 'Datum', warmth: 'Temperatur', gauge: 'Messuhr', method: 'Verfahren' },
  notStated: 'nicht angegeben',
  adjuster: 'Stellelement',
  threads: 'Gewinde',
  threadsText: (A, C) => spokenNumber(C === undefined ? `${A}, eine einfache Schraube` : `${A} mit ${C}`),
  travel: 'Weg seiner Teile',
  travelText: (v) =>
    `${v.turns} Umdrehungen zwischen den Anschlägen, ${v.stroke}${v.beyond ? '; die Ablesungen gehen über mehr Umdrehungen, als diese Teile haben' : ''}`,
  readings: 'Ablesungen',
  readingsText: (v) => `${v.count}, von ${v.from} bis ${v.to} Umdrehungen`,
  nominalLead: 'Soll-Nettosteigung',
  perTurn: (motion) => `${motion} je Umdrehung`,
  leadErrors: 'angegebene Steigungsfehler',
  leadErrorsText: {
    'root-sum-square': (share) => `${share} der Nettosteigung, quadratisch addiert`,
    'at worst': (share) => `${share} der Nettosteigung, im schlimmsten Fall`,
  },
  measuredLead: 'gemessene Nettosteigung',
  lessNominal: 'minus Sollwert',
};
