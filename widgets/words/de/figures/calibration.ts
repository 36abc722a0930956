/** Wörter der Kalibrierung. */
import type * as En from '../../en/figures/calibration.ts';
import type { Same } from '../../same.ts';

const AGREES = {
  agrees: (nominal: string) => `Sie stimmt mit dem Sollwert ${nominal} überein.`,
  differs: (nominal: string) => `Sie stimmt nicht mit dem Sollwert ${nominal} überein.`,
  'not to be told': (nominal: string) => `Ob sie mit dem Sollwert ${nominal} übereinstimmt, lässt sich nicht sagen.`,
};

export const WORDS: Same<typeof En.WORDS> = {
  numbers: 'Befunde, Messuhr, Korrekturen',
  title: 'Ablesungen einer Messuhr über den Umdrehungen, angepasst',
  legend: {
    up: 'auf dem Hinweg abgelesen',
    down: 'auf dem Rückweg abgelesen',
    line: 'Gerade durch alle',
    modelUp: 'angepasst mit Umkehrspanne und periodischem Fehler, hin',
    modelDown: 'dasselbe, zurück',
  },
  noReadings:
    'Dein Entwurf hat noch keine Ablesungen: Gib seine eigenen in das Feld ein, füge sie ein oder öffne eine Datei. „Zahlen des Kapitels“ zeigt die der Werkstatt.',
  openFile: 'Datei mit Ablesungen öffnen',
  working: {
    note: (characters) => `${characters} Zeichen mit Ablesungen werden gelesen …`,
    caption: (characters) => `${characters} Zeichen mit Ablesungen werden gelesen.`,
  },
  thinned: (drawn, all) =>
    `${drawn} von ${all} Ablesungen sind gezeichnet, die äußersten jedes Abschnitts; alle gehen in die Anpassung ein.`,
  verdict: { agrees: 'Stimmt.', differs: 'Stimmt nicht.', 'not to be told': 'Nicht zu sagen.' },
  saveCorrections: 'Korrekturtabelle als CSV speichern',
  saveResiduals: 'Ablesungen mit Abweichungen speichern',
  ask: {
    label: 'Eine Frage zu den Einheiten',
    turn: 'Ja: das Vorzeichen der Ablesungen umkehren',
    steps: (ratio, own, steps) =>
      `Die Steigung der Geraden ist das ${ratio}-Fache der Nennsteigung: Sind es ${steps} Schritte je Umdrehung und nicht ${own}, wie angegeben?`,
    stepsYes: (steps) => `Ja: ${steps} Schritte je Umdrehung`,
    positions: (unit) =>
      `Ja: Die Stellungen waren in ${unit === 'steps' ? 'Flächen' : unit === 'turns' ? 'Umdrehungen' : unit}`,
    readings: (unit) => `Ja: Die Ablesungen waren in ${unit}`,
  },
  panels: { readings: 'Messuhr', residuals: 'Abstand von der Geraden' },
  slider: 'Umdrehungen, auf dem Hinweg',
  dial: 'Messuhr: gemessene Bewegung bei diesen Umdrehungen',
  rows: {
    lead: 'gemessene Nettosteigung',
    whole: 'gesamte Unsicherheit davon (±), 95 %',
    difference: 'minus Sollwert',
  },
  readout: {
    refused: 'keine Korrektur',
    nominal: 'Sollbewegung',
    correction: 'Korrektur',
    travel: 'gemessene Bewegung, auf der Messuhr',
  },
  caption: (v) => {
    const dial =
      typeof v.here === 'string'
        ? v.here
        : `Bei ${v.here.turns} Umdrehungen ist die Korrektur ${v.here.correction}; die Messuhr steht auf ${v.here.dial}.`;
    return `${v.readings} Ablesungen ergeben eine Nettosteigung von ${v.lead}, mit dem Aufbau ± ${v.U}. ${AGREES[v.verdict](v.nominal)} ${dial}`;
  },
  table: {
    head: ['Umdrehungen', 'Richtung', 'Ablesungen', 'Sollbewegung', 'gemessene Bewegung', 'Korrektur'],
    noneYet: { head: ['Umdrehungen'], row: 'noch keine' },
    directions: { up: 'hin', down: 'zurück' },
    more: (places) => `und ${places} weitere Stellen, die „Korrekturtabelle speichern“ enthält`,
  },
  files: { residuals: 'ablesungen-mit-abweichungen.csv' },
};
