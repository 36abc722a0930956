/** Wörter einer Umdrehung, die in Schritte geteilt ist. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/divided-turn.ts';
import type { Same } from '../../same.ts';
import { manySteps, ofStep, oneStep } from '../steps.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Eine Umdrehung, in Schritte geteilt',
  pair: (A, C) => `${spokenNumber(A)} mit ${spokenNumber(C)}`,
  knob: 'Kopf des Stellteils, von oben',
  label: (steps) => `Die Nettosteigung einer Umdrehung, in ${steps} Schritten ausgelegt`,
  oneTurn: (v) => `eine Umdrehung, ${v.count} ${manySteps(v.step)}: ${v.motion}`,
  oneStep: (step, motion) => `${oneStep(step)}: ${motion}`,
  hand: (angle, motion) => `eine Hand, die auf ${angle} wiederholt: ${motion}`,
  here: (v) => `gedreht ${v.one ? oneStep(v.step) : `${v.count} ${manySteps(v.step)}`}: ${v.motion}`,
  caption: (v) => {
    const hand =
      v.hand === undefined
        ? ''
        : v.hand.fine
          ? ` Eine Hand, die auf ${v.hand.angle} wiederholt, stellt es auf ${v.hand.motion} genau ein, viel feiner als ${oneStep(v.step)}.`
          : ` Eine Hand, die auf ${v.hand.angle} wiederholt, stellt es auf ${v.hand.motion} genau ein. Eine feinere Teilung lässt sich ablesen, aber nicht einstellen.`;
    return `${v.pair}: ${v.perTurn} je Umdrehung, ${oneStep(v.step)} von ${v.steps} ist ${v.perStep}; hier ${v.here}.${hand}`;
  },
  rows: {
    step: (step) => `Bewegung ${ofStep(step)}`,
    hand: 'kleinste Bewegung der Hand',
    motion: 'Hubteil',
    perTurn: 'Nettosteigung',
  },
  head: ['geteilt durch', 'Schritte je Umdrehung', 'Bewegung je Schritt'],
  dividers: {
    square: 'Vierkant',
    hexagon: 'Sechskant',
    'twelve points': 'Zwölfkant',
    knob: (divisions) => `Drehknopf, ${divisions} Skalenteile`,
  },
};
