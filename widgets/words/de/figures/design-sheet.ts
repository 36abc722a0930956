/** Wörter des Entwurfsblatts. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/design-sheet.ts';
import type { Same } from '../../same.ts';
import { chosen } from '../choices.ts';
import { partKind } from '../kinds.ts';
import { manySteps, oneStep } from '../steps.ts';
import { WORDS as ADJUSTER } from './adjuster.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Entwurfsblatt',
  caption: (v) =>
    `${spokenNumber(v.A)} mit ${spokenNumber(v.C)}: ${v.perTurn} je Umdrehung, ${oneStep(v.step)} ist ${v.perStep}. ${v.verdict}${v.failed === undefined ? '' : ` Als Erstes durchgefallen: ${v.failed}`}`,
  head: ['Gruppe', 'Größe', 'Wert'],
  sheetTitle: (v) =>
    `${v.name === '' ? '' : `${v.name}: `}${spokenNumber(v.A)} mit ${spokenNumber(v.C)}, ${chosen('arrangement', v.called)}`,
  ofParts: (kinds) => kinds.map(partKind).join(', '),
  fromParts: 'Aus den angegebenen Teilen. Felder, die sie ersetzen, zählen nicht und werden nicht gezeigt.',
  verdict: (v) => `${v.passed} von ${v.judged} Prüfungen bestanden; ${v.unjudged} nicht beurteilt.`,
  fromTo: (from, to) => `${from} bis ${to}`,
  steps: (count, step) => `${count} ${manySteps(step)}`,
  groups: {
    motion: 'Bewegung',
    travel: 'Hub',
    fit: 'Passung und Spiel',
    preload: 'Vorspannung',
    effort: 'Kraftaufwand und Verdrehsicherung',
    tip: 'Spitze und Wärme',
  },
  budget: {
    title: 'Fehlerbudget',
    head: (step) => ['Beitrag', 'Bewegung', manySteps(step), 'Umdrehungen'],
    playCounts: 'Spiel zählt, weil die Flanken nicht über den ganzen Hub angedrückt sind.',
    growing: 'wächst mit dem Hub',
    whole: 'alles zusammen',
  },
  checks: { title: 'Prüfungen', passed: 'bestanden', failed: 'durchgefallen' },
  unjudged: 'Nicht beurteilt',
  cautions: {
    title: 'Vorsicht und Annahmen',
    text: 'Ein feines Stellelement ist kein Hebezeug. Unterbaue schwere Werkstücke, halte Hände und Körper darunter weg und bleibe in der Last, die der Lieferant der Teile nennt. Trage bei Federn und eingepressten Kugeln eine Schutzbrille. Die Regeln des Betriebs, örtliche Vorschriften und zugelassene Fachleute gehen vor.',
    assumptions: [
      'Nettosteigung, Hub, Spiel und Kraftaufwand: die Beziehungen der Kapitel, mit ihren Quellen dort.',
      'Grenzmaße: ISO 965-1 und ASME B1.1 nach den geschriebenen Toleranzklassen oder den üblichen.',
      'Steigungsfehler, Reibung, Handwinkel und Steifigkeit der Sicherung sind die angegebenen Zahlen, nicht gemessen.',
      'Elastizitätsmoduln, Querkontraktionszahlen und Fließgrenzen der Werkstoffe sind aus dem Gedächtnis; die Ausdehnung wie im Kapitel über Wärme.',
    ],
  },
  parts: {
    title: 'Teile',
    head: ['Teil', 'Anzahl', 'Preis für eines', 'zusammen'],
    set: (count) => `ein Satz von ${count} Stück`,
    noPrice: 'kein Preis',
    together: 'zusammen',
    togetherOf: (v) =>
      `zusammen, ${v.priced} von ${v.lines} Zeilen; ${v.unpriced} ${v.unpriced === 1 ? 'hat' : 'haben'} keinen Preis`,
  },
  drawing: {
    label: (called) =>
      `Schnitt des Zusammenbaus, ${chosen('arrangement', called)}, maßstäblich, in der Mitte seines Hubs, mit den Längen seiner Gewinde`,
    lengths: { b_A: 'Mutter A', l_A: 'Schraube A', b_C: 'Mutter C', l_C: 'Schraube C' },
    sizes: { ...ADJUSTER.sizes, hexagon: 'Sechskant' },
    ofParts: (noLock) =>
      `Maßstäblich. Was die Teile angeben, ist bemaßt; was sie nicht angeben, ist in üblicher Größe gezeichnet.${noLock ? ' Keine Verdrehsicherung ist angegeben, darum ist keine gezeichnet.' : ''}`,
    overall: (height) => `(Höhe ${height})`,
    depth: (length) => `× ${length}`,
    block: {
      title: 'Schriftfeld',
      name: 'Benennung',
      assembly: 'Stellelement, Zusammenbau',
      number: 'Nummer',
      date: 'Datum',
      material: 'Werkstoff',
      tolerance: 'Allgemeintoleranz',
      scale: 'Maßstab auf Papier',
      units: 'Einheiten',
      unitsAre: (view) => (view === 'inch' ? 'Zoll' : 'mm'),
      projection: 'Projektion',
      firstAngle: 'Methode 1',
    },
    plain: (tip) =>
      `Maßstäblich: Gewinde und ihre Längen${tip ? ', Kugel' : ''}. Vereinfacht: Kopf, ${tip ? 'Kappe und Grundteil' : 'Mutter und Grundteil'}${tip ? ' und wie tief die Kugel sitzt' : ''}; ihre Maße sind nicht angegeben, darum steht keine Gesamthöhe da. Weggelassen: ${tip ? '' : 'Kugel, '}Verdrehsicherung und Federn.`,
  },
};
