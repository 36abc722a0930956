/** Wörter dessen, was Bilder gemeinsam haben. */
import type * as En from '../../en/figures/kit.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  figure: { numbersBehind: 'Zahlen', table: 'Tabelle' },
  knob: {
    notTurned: 'nicht gedreht',
    turned: (v) =>
      `${String(v.count).replace('.', ',')} ${v.count === 1 ? 'Umdrehung' : 'Umdrehungen'} ${v.clockwise ? 'im' : 'gegen den'} Uhrzeigersinn`,
  },
  slider: { name: (label) => `${label}:` },
  dial: {
    faces: { thou: '1 thou', tenth: '1 Zehntel-Thou', micrometres: '10 µm', micrometre: '1 µm' },
    reading: (divisions, face) => `${divisions} Skalenteile von ${face}`,
  },
  plot: {
    inUnit: (name, unit) => `${name}, in ${unit}`,
    across: 'Umdrehungen, im Uhrzeigersinn',
  },
};

export const SIGNING_PARTS: Same<typeof En.SIGNING_PARTS> = {
  fit: 'die Streuung der Ablesungen',
  gauge: 'die Skala der Messuhr',
  cosine: 'die Schrägstellung des Messbolzens',
  abbe: 'der Messbolzen neben der Achse',
  drift: 'die Drift',
  repeat: 'die Wiederholpräzision der Messuhr',
};

type Whole = Parameters<typeof En.FINDINGS.verdict.agrees>[0];

const found = (v: Whole): string =>
  `Die gemessene Nettosteigung ist ${v.lead} ± ${v.U} je Umdrehung mit allem vom Aufbau, ${v.off} ${v.below ? 'unter' : 'über'} dem Sollwert ${v.nominal}`;

export const FINDINGS: Same<typeof En.FINDINGS> = {
  correctionFile: 'korrekturtabelle.csv',
  lead: (lead, uncertainty) => `${lead} ± ${uncertainty} je Umdrehung`,
  verdict: {
    agrees: (v) =>
      `${found(v)}: Sie stimmt innerhalb dieses ± und des angegebenen Steigungsfehlers von ${v.stated} überein.`,
    differs: (v) =>
      `${found(v)}: Sie stimmt innerhalb dieses ± und des angegebenen Steigungsfehlers von ${v.stated} nicht überein.`,
    'not to be told': (v) =>
      `Ob sie übereinstimmt, lässt sich nicht sagen: Das gesamte ± ist ${v.U} je Umdrehung, mehr als die ${v.matters}, auf die es ankommt. Sein größter Teil ist ${v.largest}: Mache diesen zuerst kleiner.`,
  },
  untold: 'lässt sich nicht finden',
  hysteresis: {
    name: 'Umkehrspanne',
    value: (gap, uncertainty) => `${gap} ± ${uncertainty}`,
    says: (v) =>
      `Die Umkehrspanne zwischen hin und zurück ist ${v.gap} ± ${v.uncertainty}, das ist ${
        v.lost === undefined
          ? 'dem toten Gang entgegen, suche also nach Drift'
          : `ein toter Gang von ${v.lost} Umdrehungen`
      }.${v.slopesAgree ? '' : ' Die beiden Richtungen haben verschiedene Anstiege; eine Zahl beschreibt den Abstand darum nicht.'}`,
  },
  periodic: {
    name: 'periodischer Fehler',
    value: (amplitude, whole, significant) =>
      `${amplitude} nach jeder Seite (${whole} von Berg zu Tal)${significant ? '' : ', nicht mehr als Streuung'}`,
    says: (v) =>
      `Der periodische Fehler, einmal je Umdrehung, ist ${v.amplitude} nach jeder Seite, am höchsten bei ${v.crest} einer Umdrehung${
        v.significant ? '' : '; das ist nicht mehr, als Streuung allein gäbe'
      }.`,
  },
  repeatability: {
    name: 'Wiederholbarkeit',
    value: (deviation, widest) => `${deviation}, weitester Abstand ${widest}`,
    says: (deviation, widest) =>
      `Eine Stelle, von derselben Seite wieder abgelesen, wiederholt sich mit einer Standardabweichung von ${deviation}; die beiden entferntesten Ablesungen unterscheiden sich um ${widest}.`,
  },
  leftOver: {
    name: 'Streuung',
    says: (scatter, freedom) =>
      `Die Streuung, die bleibt, ist ${scatter}, Standardabweichung, mit ${freedom} ${freedom === 1 ? 'Freiheitsgrad' : 'Freiheitsgraden'}.`,
  },
};
