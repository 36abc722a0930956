/** Was hinter einem Ergebnis steht: der Wunsch nach einem anderen, woher es kommt, und sein ±. */
import { listed, spokenNumber } from '../../engine/index.ts';
import type * as En from '../en/backwards.ts';
import type { Same } from '../same.ts';

export const behind: typeof En.behind = (says) => `Hinter dem Ergebnis: ${says}`;
export const I_WANT = 'Ich will';
export const WHICH_GIVES_WAY = 'Welche Zahl darf nachgeben?';
export const CLOSE_BEHIND = 'Schließen';
export const bareCounts: typeof En.bareCounts = (unit) => `Eine Zahl ohne Einheit zählt als ${unit}.`;

export const becomes: typeof En.becomes = (label, text) => `${label} = ${spokenNumber(text)}`;
export const andBecomes: typeof En.andBecomes = (first, second) => `${first}, ${second}`;
export const andGives: typeof En.andGives = (result) => `ergibt ${result}`;
export const upTo: typeof En.upTo = (text) => `und jeder Wert bis ${spokenNumber(text)} auch`;
export const canHave: typeof En.canHave = (label, count) =>
  `${capital(label)} ${count === 1 ? 'kann es' : `kann es, auf ${count} Arten`}:`;
export const cannot: typeof En.cannot = (label, reach) => `${capital(label)} kann es nicht: ${reach}. Am nächsten:`;
export const cannotAtAll: typeof En.cannotAtAll = (label) =>
  `${capital(label)} kann es nicht: Im ganzen Bereich hat das Ergebnis keinen Wert.`;
export const reaches: typeof En.reaches = (least, most, stock, range) =>
  `${range ? `von ${spokenNumber(range[0])} bis ${spokenNumber(range[1])}` : stock ? 'mit Gewinden der Reihe' : 'über alle Möglichkeiten'} geht das Ergebnis von ${least} bis ${most}`;
export const stays: typeof En.stays = (value) => `das Ergebnis bleibt ${value}, wie groß sie auch ist`;
export const exactPitch: typeof En.exactPitch = (pitches) =>
  `Genau, auf neun Stellen: ein eigenes Gewinde mit einer Teilung von ${pitches.map(spokenNumber).join(' oder ')}.`;
export const found: typeof En.found = (text, gives, digits) =>
  `Jetzt ${spokenNumber(text)}, und das Ergebnis ist ${gives}${digits >= 9 ? '' : digits < 1 ? ', nicht das Gewünschte' : `, dein Wunsch auf ${digits} ${digits === 1 ? 'Stelle' : 'Stellen'}`}.`;
export const NOTHING_FITS = 'Keine einzelne Zahl kann genau das ergeben. Die nächsten stehen hinter jeder.';
export const undoTo: typeof En.undoTo = (fields) =>
  `Zurück: wieder ${listed(fields.map(([label, text]) => `${label} = ${spokenNumber(text)}`))}`;
export const undone: typeof En.undone = (fields) =>
  `${capital(listed(fields.map(([label, text]) => `${label} ist wieder ${spokenNumber(text)}`)))}.`;
export const together: typeof En.together = (first, second) => `${spokenNumber(first)} mit ${spokenNumber(second)}`;
export const STOCK: Same<typeof En.STOCK> = {
  balls: 'Die nächsten Kugeln, die es zu kaufen gibt:',
  drills: 'Mit den nächsten Bohrern, die es zu kaufen gibt:',
};
export const MEANS: Same<typeof En.MEANS> = {
  clockwise: 'im Uhrzeigersinn',
  anticlockwise: 'gegen den Uhrzeigersinn',
  up: 'nach oben',
  down: 'nach unten',
};

export const WHERE_FROM = 'Woher?';
export const sourceIs: typeof En.sourceIs = (source) => `Quelle: ${source.replace(/\.$/, '')}.`;
export const DERIVED_AT = 'Hergeleitet in';
export const TAKES = 'Dazu gehören';
export const fromField: typeof En.fromField = (label) => `deine Zahl: ${label}`;
export const FROM_STEP = 'unten gerechnet';
export const WORKED_HERE = 'Das Bild rechnet diese Zahl selbst, aus den Zahlen daneben.';
export const STATED = 'im Beispiel angegeben';

export const DOUBT = 'Wie sicher ist es?';
export const coverage: typeof En.coverage = (k, freedom) =>
  `± ist k = ${k} mal die Standardunsicherheit: Etwa 95 von 100 solchen Ergebnissen liegen darin${freedom === undefined ? '' : `. k ist größer als 2, weil wenige Messungen dahinter stehen (${freedom} ${freedom === 1 ? 'Freiheitsgrad' : 'Freiheitsgrade'})`}.`;
export const COMES_FROM = 'Woraus es kommt, das Größte zuerst, als Anteile der Varianz:';
export const halveFirst: typeof En.halveFirst = (label, now, then) =>
  `Halbiere zuerst das ± von ${label}: Das ± des Ergebnisses fällt von ${now} auf ${then}.`;
export const drawnSame: typeof En.drawnSame = (count, low, high) =>
  `Das Gesetz ist hier gekrümmt, oder ein ± herrscht vor. Darum wurde es auch ${count}-mal gezogen: Die mittleren 95 von 100 liegen von ${low} bis ${high}, das stimmt überein.`;
export const drawnDiffers: typeof En.drawnDiffers = (count, low, high) =>
  `Das Gesetz ist hier gekrümmt, oder ein ± herrscht vor. Vertraue darum eher den Ziehungen: Von ${count} liegen die mittleren 95 von 100 von ${low} bis ${high}.`;
export const drawnLost: typeof En.drawnLost = (percent) =>
  `Bei ${percent} der Ziehungen gibt es überhaupt kein Ergebnis.`;
export const NO_DOUBT =
  'Die Zahlen haben kein ±. Schreibe eines hinter eine Zahl: 1° ± 0,1°, 30 N ± 10 %, oder M10×1,5 ± 2 µm für die Teilung eines Gewindes.';
export const UNDOUBTED: typeof En.UNDOUBTED = (labels) => `Als genau genommen: ${listed(labels)}.`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
