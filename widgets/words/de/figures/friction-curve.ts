/** Wörter des Drehmoments über der Reibung. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/friction-curve.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Drehmoment über der Reibung',
  curves: {
    raise: (A, C) => `${spokenNumber(A)} mit ${spokenNumber(C)}, heben`,
    lower: 'dasselbe, senken',
    plain: (C) => `${spokenNumber(C)} allein`,
  },
  noFriction: (pair, alone) => `ohne Reibung: ${pair}, allein ${alone}`,
  even: (friction) => `gleiches Drehmoment bei Reibung ${friction}`,
  panel: 'Drehmoment, in N·mm',
  marks: 'Reibung, mit ihrer Marke eingestellt',
  handle: 'Reibungszahl',
  handleText: (friction, torque) => `${friction}, Heben braucht ${torque}`,
  across: 'Reibungszahl, in beiden Gewinden gleich',
  caption: (v) => {
    const crossing =
      v.even === undefined
        ? `das Paar braucht bei jeder Reibung ${v.lighterBelow ? 'weniger' : 'mehr'} Drehmoment`
        : `das Paar braucht nur ${v.lighterBelow ? 'unter' : 'über'} der Reibung ${v.even} weniger Drehmoment als ${spokenNumber(v.C)} allein`;
    return `Von ${v.frictionless} ohne Reibung wächst das Drehmoment des Hebens mit der Reibung fast geradlinig; ${crossing}. Hier, bei ${v.friction}, braucht das Paar ${v.pair} und ${spokenNumber(v.C)} allein ${v.alone}.`;
  },
  head: ['Reibung', 'Paar, heben', 'Paar, senken', 'Gewinde C allein, heben', 'Wirkungsgrad des Paars'],
  evenAt: 'Reibung, bei der beide gleich viel brauchen',
};
