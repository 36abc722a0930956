/** Wörter des Diagramms der Steigungsfehler. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/lead-error.ts';
import type { Same } from '../../same.ts';

type LeadError = Parameters<typeof En.WORDS.caption>[0]['errorA'];

const errorWords = ({ size, error }: LeadError): string =>
  error === 0 ? 'ohne Steigungsfehler' : `${size} zu ${error > 0 ? 'lang' : 'kurz'}`;
const ifIndependent = (words: string, linked: boolean): string =>
  linked ? `${words}, wenn sie unabhängig wären` : words;

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Steigungsfehler beider Gewinde und die Nettosteigung',
  sliders: { eps_A: 'Steigungsfehler von Gewinde A', eps_C: 'Steigungsfehler von Gewinde C', n: 'Umdrehungen' },
  thisPair: 'dieses Paar',
  nominal: 'Sollwert',
  worst: (linked) => ifIndependent('schlimmster Fall', linked),
  rss: (linked) => ifIndependent('quadratisch addiert', linked),
  offPanel: 'Wie weit das Hubteil danebenliegt',
  ratePanel: 'Bewegung einer Umdrehung',
  readout: {
    nominal: 'Soll-Nettosteigung',
    real: 'Nettosteigung mit den Fehlern',
    eps: 'Fehler der Nettosteigung',
    off: 'daneben nach den Umdrehungen',
  },
  caption: (v) => {
    const errors = v.linked
      ? `beide Gewinde ${errorWords(v.errorA)}, um denselben Anteil`
      : `Gewinde A ${errorWords(v.errorA)}, Gewinde C ${errorWords(v.errorC)}`;
    const bands = v.linked
      ? `Derselbe Fehler an beiden wird nicht verstärkt; unabhängige Fehler dieser Größe könnten ${v.worst} machen`
      : `Fehler dieser Größe nach jeder Seite ergeben ${v.worst} im schlimmsten Fall und ${v.rss} quadratisch addiert (Verstärkungen ${v.gainA} und ${v.gainC})`;
    return `${spokenNumber(v.A)} mit ${spokenNumber(v.C)}, ${errors}: Eine Umdrehung bewegt ${v.real} statt ${v.meant}, ${v.share}; nach ${v.turns} liegt das Hubteil um ${v.off} daneben. ${bands}.`;
  },
  head: [
    'Umdrehungen, im Uhrzeigersinn',
    'Sollwert',
    'mit den Fehlern',
    'daneben um',
    'schlimmster Fall ±',
    'quadratisch ±',
  ],
};
