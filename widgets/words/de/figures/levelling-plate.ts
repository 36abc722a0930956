/** Wörter des Plans einer Platte auf drei Füßen. */
import type * as En from '../../en/figures/levelling-plate.ts';
import type { Same } from '../../same.ts';
import { STEP_NAMES } from '../choices.ts';
import { manySteps } from '../steps.ts';

const stepWord = (k: number, count: number): string => {
  const one = k === 4 || k === 6 ? STEP_NAMES.other : k === 12 ? STEP_NAMES['twelve points'] : STEP_NAMES.knob;
  return Math.abs(count) === 1 ? one : manySteps(one);
};
const stepsWord = (k: number): string => stepWord(k, 2);
const inSteps = (k: number): string => stepsWord(k).replace(/e$/, 'en');

const EIGHTHS = [
  'rechts',
  'oben rechts',
  'oben',
  'oben links',
  'links',
  'unten links',
  'unten',
  'unten rechts',
] as const;

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Plan einer Platte auf drei Füßen',
  plan: 'Maßstäblicher Plan der Platte, von oben',
  movable: 'beweglicher Punkt',
  place: (x, y) => `x ${x}, y ${y}`,
  readingName: (index) => String.fromCharCode(97 + index),
  reading: (name, height) => `Ablesung ${name}, ${height}`,
  centre: 'Schwerpunkt',
  weight: 'Gewicht',
  foot: (name, order) => `Fuß ${name}, ${order}`,
  picked: (what) => `${what}: Tippe auf die neue Stelle, oder noch einmal darauf, um es zu lassen.`,
  places: {
    write: 'In die Pässe schreiben, wo die Füße stehen',
    full: 'Die Pässe sind voll: Nimm ihre ältesten Zeilen heraus.',
    written:
      'In die Pässe geschrieben, mit dem heutigen Datum. Die Runden sind in den Stellen enthalten; sie beginnen neu mit den letzten Ablesungen.',
  },

  equallyHigh: 'gleich hoch; gestrichelt: unter null; ',
  lineEvery: (height) => `eine Linie alle ${height}`,
  wayItRises: 'Richtung, in der sie ansteigt',
  turnThem: 'So drehen',
  roundBack: 'Eine Runde zurück',
  leans: (round, tilt) => `Runde ${round}: Neigung ${tilt}`,
  whatToTurn: 'Was zu drehen ist',
  turnHead: (k) => ['Fuß', 'muss gehen', 'Umdrehungen', 'hat Umdrehungen', stepsWord(k), 'drehen'],
  shouldBeLeft: (tilt, k) => `Dann sollten ${tilt} bleiben, vom Runden auf ganze ${stepsWord(k)}.`,
  plusIsClockwise: 'Plus ist im Uhrzeigersinn, von oben gesehen.',
  measuredFoot: (foot, lead, day) => `Fuß ${foot} ${lead} (${day})`,
  measured: (feet) => `Gedreht nach der gemessenen Nettosteigung: ${feet.join(', ')} je Umdrehung.`,
  placedFoot: (foot, turns, day) => `Fuß ${foot} ${turns} (${day})`,
  placed: (feet) => `Gezählt von der Stelle, an der der Pass ihn ließ: ${feet.join(', ')}.`,
  fromParts: (turns) =>
    `Nettosteigung, Schritte und die ${turns} Umdrehungen zwischen den Anschlägen sind die der Teile eines Fußes; die Felder für Gewinde und Längen zählen nicht.`,
  done: {
    level: 'Nichts mehr zu drehen: Kein Fuß liegt einen halben Schritt daneben.',
    'to and fro': 'Nichts mehr zu gewinnen: Der nächste Schritt nähme nur den letzten zurück.',
  },
  carries: (feet) => `Kein Fuß hebt ab: ${feet.map(({ name, load }) => `Fuß ${name} trägt ${load}`).join(', ')}.`,
  order: (steps, count, k) =>
    count === 0 ? 'lassen' : `${steps} ${stepWord(k, count)} ${count > 0 ? 'im' : 'gegen den'} Uhrzeigersinn`,
  orderLabel: (steps, count, k) => (count === 0 ? 'bleibt' : `${steps} ${stepWord(k, count)}`),
  tooFar: 'zu weit',
  wait: 'warten',
  range: (low, high) => `${low} bis ${high}`,
  roundByRound: 'Runde für Runde',
  roundsHead: ['Runde', 'abgelesene Neigung', 'Füße 1, 2, 3 drehen'],
  notWithin: 'nicht in den Gewinden',
  shared: ({ keptFoot, short, raised, by }) =>
    `${keptFoot === undefined ? 'Bei unveränderter mittlerer Höhe' : `Wenn Fuß ${keptFoot} bleibt, wie er ist,`} ginge Fuß ${short} das Gewinde aus. ` +
    `Darum wird die ganze Platte auch um ${by} ${raised ? 'gehoben' : 'gesenkt'}, und alle drei Füße teilen sich das Drehen.`,
  notEnoughTurns: ({ rises, sinks, asked, askedTurns, there, thereTurns, missingTurns, k }) =>
    `Die Füße haben dafür nicht genug Umdrehungen: Fuß ${rises} muss gegen Fuß ${sinks} um ${asked} steigen, das sind ${askedTurns}; ` +
    `von wo sie stehen, können sich die beiden in ganzen ${inSteps(k)} um ${there} gegeneinander bewegen, das sind ${thereTurns}. ` +
    `Keine Höhe der Platte geht; es fehlen ${missingTurns}. Drehe noch keinen Fuß. ` +
    'Richte die Platte zuerst grob aus, mit einer Unterlage unter dem tiefen Fuß oder mit den Füßen in der groben Stellung; dann lies neu ab.',
  leaning: ({ round, tilt, eighth, flat }) =>
    `Runde ${round}: Die Platte hat eine Neigung von ${tilt} und steigt nach ${EIGHTHS[eighth] ?? ''} an${
      flat === undefined ? '' : `; die ${flat.readings} Ablesungen liegen auf ${flat.within} genau in einer Ebene`
    }.`,
  orders: (feet, tilt) =>
    `${feet.map(({ name, order }) => `Fuß ${name}: ${order}`).join('; ')}; dann sollten ${tilt} bleiben.`,
  movedLess: (feet) =>
    `Bewegt minus verlangt, seit der Runde davor: ${feet.map(({ name, extra }) => `Fuß ${name} ${extra}`).join(', ')}.`,
  noFootLifts: 'Kein Fuß hebt ab.',
  head: (k) => [
    'Runde',
    'was',
    'Stelle',
    'zeigt, oder muss gehen',
    'Ablesung minus Ebene, oder vom Runden übrig',
    'Umdrehungen',
    'Umdrehungen, die er hat',
    stepsWord(k),
    'drehen',
    'trägt',
  ],
  rows: {
    tilt: 'Neigung, in Millionsteln (µm/m)',
    turns: (foot) => `Fuß ${foot}, Umdrehungen`,
    carries: (foot) => `Fuß ${foot} trägt`,
  },
  readingRow: (name) => `Ablesung ${name}`,
  footRow: (name) => `Fuß ${name}`,
};
