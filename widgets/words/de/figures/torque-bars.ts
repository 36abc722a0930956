/** Wörter des Drehmoments in beiden Richtungen. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/torque-bars.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Drehmoment in beiden Richtungen, Gewinde für Gewinde',
  drawing: 'Drehmomente in beiden Richtungen, Gewinde für Gewinde, in einem Maßstab',
  kinds: {
    'a-rub': 'Reibung in Gewinde A',
    'a-slope': 'Anstieg von Gewinde A',
    'c-rub': 'Reibung in Gewinde C',
    'c-slope': 'Anstieg von Gewinde C',
    key: 'Reibung der Passfeder',
    collar: 'Bund oder Spitze',
  },
  rows: {
    raise: 'Drehmoment, Last heben',
    lower: 'Drehmoment, Last senken',
    efficiency: 'Wirkungsgrad des Paars',
    alone: 'Drehmoment von Gewinde C allein, Last heben',
  },
  pair: (A, C) => `${spokenNumber(A)} mit ${spokenNumber(C)}`,
  alone: (C) => `${spokenNumber(C)} allein`,
  raised: 'Last gehoben',
  lowered: 'Last gesenkt',
  turning: (way, sense) => `${way}, ${sense}`,
  case: (what, way) => `${what}, ${way}`,
  caseTorque: (what, way, torque) => `${what}, ${way}: ${torque}`,
  handFeels: 'was die Hand spürt',
  frictionless: (torque) => `ohne Reibung: ${torque}`,
  holds: (torque) => `Es hält von selbst: Senken braucht ${torque} von der Hand.`,
  onTheEdge: 'Es hält gerade noch: Senken braucht gar kein Drehmoment.',
  runsBack: (torque) =>
    `Es läuft von selbst zurück: Unter der Last dreht es mit ${torque}, welche die Hand halten muss.`,
  asMuch: (C) => `so viel wie ${spokenNumber(C)} allein`,
  times: (times, C) => `${times}-mal das Drehmoment von ${spokenNumber(C)} allein`,
  lessThan: (times, C) => `wo ${spokenNumber(C)} allein ${times}-mal so viel braucht`,
  caption: ({ load, friction, torque, compared, efficiency, plain, plainEfficiency, holds }) =>
    `${load} bei Reibung ${friction} zu heben braucht ${torque}, ${compared}. Der Wirkungsgrad ist ${efficiency}, der von ${spokenNumber(plain)} allein ${plainEfficiency}. ${holds}`,
  caseHead: 'Fall',
  torqueHead: 'Drehmoment',
};
