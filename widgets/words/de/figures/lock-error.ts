/** Wörter dessen, was die Verdrehsicherung durchlässt. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/lock-error.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Bewegung, welche die Verdrehsicherung zulässt',
  plan: 'Das Hubteil von oben mit seiner Passfeder in einer Nut des Grundteils; das Schwenken ist viel zu groß gezeichnet',
  base: 'Grundteil',
  swings: (angle) => `schwenkt ${angle}`,
  steps: (count, step) =>
    step === 'Fläche' ? `${count} ${count === '1,00' ? 'Fläche' : 'Flächen'}` : `${count} × ${step}`,
  torques: (clockwise, anticlockwise) =>
    `Drehmoment auf die Verdrehsicherung: ${clockwise} beim Drehen im Uhrzeigersinn, ${anticlockwise} dagegen`,
  slack: (much) => `Spiel der Passfeder: ${much}`,
  notCrossed: (mark) =>
    `Spiel der Passfeder: ${mark('nicht durchlaufen')}, das Drehmoment drückt die Passfeder in beiden Richtungen auf dieselbe Seite`,
  wind: (much) => `Verdrehung der Sicherung: ${much}`,
  lost: (much) => `toter Gang bei Umkehr: ${much}`,
  ruler: (step) => `Maßstab in Schritten des Kopfs (${step})`,
  stepsEach: (motion, step) => (step === 'Fläche' ? `Flächen des Kopfs, je ${motion}` : `× ${step}, je ${motion}`),
  caption: ({ A, C, force, swing, slack, wind, all, perStep }) =>
    `${spokenNumber(A)} mit ${spokenNumber(C)} unter ${force}: Bei Umkehr schwenkt das Hubteil um ${swing}; ${
      slack === undefined ? 'die Passfeder durchläuft ihr Spiel nie' : `das Spiel der Passfeder lässt ${slack} zu`
    }, ihre Verdrehung ${wind}, zusammen ${all} von ${perStep}.`,
  windUp: 'Verdrehung, beide Richtungen zusammen',
  swing: 'Schwenken des Hubteils',
  head: (step) => [
    'Ursache',
    'Drehmoment, gegen den Uhrzeigersinn ist plus',
    'Bewegung der Spitze',
    step === 'Fläche' ? 'in Flächen' : `in Schritten (${step})`,
  ],
  rows: {
    clockwise: 'Verdrehung beim Drehen im Uhrzeigersinn',
    anticlockwise: 'Verdrehung beim Drehen gegen den Uhrzeigersinn',
    gap: 'Spiel der Passfeder, von Seite zu Seite',
    lost: 'toter Gang bei Umkehr',
  },
};
