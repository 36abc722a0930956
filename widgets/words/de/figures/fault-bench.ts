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
  checks: {
    block: 'Ein Endmaß unter die Messuhr legen',
    drift: 'Hände weg und warten',
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
    head: ['gesehen', 'hier', 'ein gutes Stellelement'],
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
    `Stellelement ${v.seed}, mit Werkstück, um ${v.turns} hinauf gedreht: Die Messuhr längs der Achse zeigt ${v.height}, ein fehlerfreies hätte sich um ${v.nominal} bewegt; die quer dazu zeigt ${v.side}.`,
  turns: (count) => (count === '1' ? '1 Umdrehung' : `${count} Umdrehungen`),
  head: ['Umdrehungen', 'Richtung', 'längs, mit Werkstück', 'quer, mit Werkstück', 'längs, ohne Werkstück'],
  directions: { up: 'hinauf', down: 'hinunter' },
  reads: 'zeigt',
};
