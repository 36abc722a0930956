/** Wörter des taumelnden Gewindes. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/drunken-thread.ts';
import type { Same } from '../../same.ts';

const along = ({ from, to }: { readonly from: string; readonly to: string }): string => `von ${from} bis ${to}`;
const DOES = { 'runs back': 'läuft zurück', 'nearly stands': 'steht fast', 'moves on': 'geht weiter' };

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Periodische Fehler: Ort und Rate',
  does: DOES,
  sliders: {
    a_A: 'Amplitude von Gewinde A',
    a_C: 'Amplitude von Gewinde C',
    phi_C: 'Phase von Gewinde C',
    n: 'Umdrehungen',
  },
  legend: {
    carried: 'Hubteil',
    nominal: 'ohne periodischen Fehler',
    back: 'läuft zurück; steht an beiden Rändern still',
    slow: (share) => `steht fast, unter ${share} der Nettosteigung`,
  },
  panels: { place: 'Ort', rate: 'Rate: Bewegung je Umdrehung, an jeder Stelle' },
  readout: {
    nominal: 'Nettosteigung',
    slope: 'steilster Anstieg beider Wellen, je Umdrehung',
    slowest: 'Rate an der langsamsten Stelle, in Richtung der Nettobewegung',
    here: 'Rate hier, je Umdrehung',
    hereText: (motion, does) => `${motion}: ${DOES[does]}`,
    run: 'Rücklauf in jeder Umdrehung',
  },
  verdict: {
    back: (v) =>
      `mehr als die Nettosteigung. Darum läuft das Hubteil über ${v.share} jeder Umdrehung um ${v.motion} zurück, zuerst ${along(v.first)}, und steht an beiden Enden dieser Strecke still`,
    slow: (v) =>
      `knapp unter der Nettosteigung. Darum steht es fast, zuerst ${along(v.first)}, bis herab auf ${v.slowest} je Umdrehung`,
    never: (slowest) => `darum steht es nie still: An der langsamsten Stelle ist seine Rate ${slowest} je Umdrehung`,
  },
  caption: (v) =>
    `${spokenNumber(v.A)} mit ${spokenNumber(v.C)}, ${v.perTurn} je Umdrehung, mit periodischen Fehlern der Amplitude ${v.errorA} und ${v.errorC}: bei ihren Phasen zusammen ${v.together}. Das ändert die Rate um bis zu ${v.slope} je Umdrehung, ${v.verdict}. ` +
    `Bei ${v.here.turns} ist es bei ${v.here.place}, und seine Rate ist ${v.here.rate} je Umdrehung: Es ${DOES[v.here.does]}.`,
  head: ['Umdrehungen, im Uhrzeigersinn', 'ohne Fehler', 'periodischer Fehler', 'Ort', 'Rate, je Umdrehung', 'es'],
};
