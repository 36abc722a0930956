/** Wörter des Stellelements auf der Prüfbank mit verstecktem Fehler. */
import type * as En from '../../en/figures/fault-bench.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Dein Stellelement auf der Prüfbank, mit verstecktem Fehler',
  drawing: (name) =>
    `${name === '' ? 'Das Stellelement' : `Das Stellelement ${name}`} auf der Prüfbank, eine Messuhr über seiner Spitze und eine daneben`,
  knob: 'Kopf des Stellelements, von oben',
  along: 'längs',
  across: 'quer',
  build: {
    first: (count) => `Dein Stellelement in Teilen. ${count} Schritte bauen es zusammen.`,
    of: (step, count) => `${step} von ${count}:`,
    count: (count) => (count === '–' ? '' : `Zählen: ${count}.`),
    on: 'Nächster Schritt',
    all: 'Alle Schritte',
    done: 'Es steht zusammengebaut, sein Bleistiftstrich ist gerade. Lege das Werkstück auf.',
  },
  work: {
    on: 'Werkstück auflegen',
    off: 'Werkstück abnehmen',
    is: (on) => (on ? 'Das Werkstück liegt auf.' : 'Das Werkstück ist abgenommen.'),
  },
  read: 'Diese Ablesung notieren',
  readAll: 'Eine Umdrehung hinauf und hinunter ablesen',
  take: 'Diese Ablesungen übernehmen',
  taken: (count) => `Übernommen: ${count} Ablesungen stehen im Feld der Kalibrierung.`,
  told: {
    reading: (when, read) =>
      `Notiert bei ${when.at}, ${when.direction} gedreht, ${when.work ? 'mit' : 'ohne'} Werkstück: längs ${read.along}, quer ${read.across}.`,
    turn: (count, work) =>
      `${count} Ablesungen ${work ? 'mit' : 'ohne'} Werkstück stehen in der Grafik und in der Tabelle.`,
    check: (row) =>
      `${row.seen.charAt(0).toUpperCase()}${row.seen.slice(1)}: ${row.here}; ein gutes Stellelement: ${row.good}, auf ${row.within} genau.`,
  },
  checks: {
    block: 'Endmaß unter die Messuhr',
    drift: 'Hände weg, und warten',
    line: 'Den Bleistiftstrich ansehen',
  },
  diagnosis: 'Der Fehler ist',
  choose: 'wählen',
  answer: 'Das ist es',
  next: 'Ein anderes Stellelement',
  right: (key) => `Ja. ${key} Was von einem guten abweicht, ist markiert.`,
  wrong: (why, look) => `Das nicht. ${why} ${look}`,
  notHere: 'Hier ist es nicht so.',
  plot: 'Messuhr minus Sollbewegung',
  legend: { up: 'hinauf gedreht', down: 'hinunter gedreht', off: 'hohl: ohne Werkstück' },
  evidence: {
    count: (count) => `Was zu sehen war, neben einem guten Stellelement: ${count}`,
    head: ['gesehen', 'hier', 'ein gutes Stellelement', 'ein Zeichen erst bei mehr Abweichung als'],
    lead: 'eine Umdrehung hinauf',
    wave: 'Viertel, neben einer Geraden',
    back: 'wieder am Anfang',
    loop: 'hinunter gegen hinauf, mit Werkstück',
    free: 'hinunter gegen hinauf, ohne Werkstück',
    swing: 'Schwenken quer, eine Umdrehung',
    aside: 'steht daneben um',
    block: 'Endmaß',
    drift: (minutes) => `nach ${minutes} Minuten, Hände weg`,
    line: 'Bleistiftstrich, zurückgedreht',
    differs: 'weicht ab',
  },
  none: 'keine',
  caption: (v) =>
    `Stellelement ${v.seed}, um ${v.turns} hinauf gedreht: Ein fehlerfreies hat sich um ${v.nominal} längs der Achse bewegt und quer dazu gar nicht. Was dieses zeigt, steht auf seinen zwei Messuhren.`,
  turns: (count) => (count === '1' ? '1 Umdrehung' : `${count} Umdrehungen`),
  head: ['Umdrehungen', 'Richtung', 'längs, mit Werkstück', 'quer, mit Werkstück', 'längs, ohne Werkstück'],
  directions: { up: 'hinauf', down: 'hinunter' },
  reads: 'zeigt',
};
