/** Wörter eines Loses zusammengebauter Stücke. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/play-batch.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Spiel eines Loses',
  plot: 'Wie das Spiel der Stücke verteilt ist',
  asClass: (thread, classes) => `${spokenNumber(thread)} als ${classes}`,
  pair: (A, C) => `${spokenNumber(A)} mit ${spokenNumber(C)}`,
  places: {
    least: 'kleinstes nach den Grenzmaßen',
    low: '5 %',
    middle: 'Median',
    high: '95 %',
    most: 'größtes nach den Grenzmaßen',
  },
  drawn: (count) => `${count} Stücke gezogen`,
  sample: (count, whole) => `Eine erste Stichprobe von ${count}; das Los von ${whole} ist noch nicht gezogen`,
  above: (drawn, unit) => `${drawn}. Oben das Spiel in Umdrehungen; unten in ${unit}; Balken: Anteil der Stücke`,
  draw: (count) => `${count} ziehen`,
  stop: 'Halt',
  progress: 'Gezogene Stücke',
  stopped: 'Angehalten; die Stichprobe bleibt.',
  numbersChanged: 'Angehalten, weil sich die Zahlen geändert haben.',
  drawnIn: (seconds, besideThePage) =>
    `Gezogen in ${seconds} s, ${besideThePage ? 'neben der Seite' : 'in Stücken auf der Seite'}.`,
  resultHead: (flats) => ['vom Los', 'Spiel', flats ? 'Flächen' : 'Schritte', 'Umdrehungen'],
  caption: (v) =>
    `${v.classes}. ${v.drawn}: Die Hälfte der Stücke hat weniger Spiel als ${v.half}, das sind ${v.halfTurns} Umdrehungen. Neun von zehn liegen zwischen ${v.low} und ${v.high}, ${v.lowTurns} bis ${v.highTurns} Umdrehungen.${
      v.apart === undefined ? '' : ` ${v.apart} davon gehen wegen Übermaß nicht zusammen und sind ausgelassen.`
    }`,
  head: ['Spiel', 'bis, oder in Schritten', 'Stücke, oder Umdrehungen'],
  placeRow: (place, play) => `${place}: ${play}`,
  steps: (count) => `${count} Schritte`,
  turns: (count) => `${count} Umdrehungen`,
};
