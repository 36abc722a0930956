/** Wörter des Längsschnitts. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/section.ts';
import type { Same } from '../../same.ts';
import { chosen } from '../choices.ts';

type Motion = Parameters<typeof En.WORDS.caption>[0]['turned'];

const PARTS = { base: 'Grundteil', turned: 'Stellteil', relative: 'Hubteil auf Stellteil', carried: 'Hubteil' };
const upOrDown = (way: number): string => (way > 0 ? 'nach oben' : 'nach unten');
const went = ({ amount, way }: Motion): string => (way === 0 ? 'bleibt' : `geht um ${amount} ${upOrDown(way)}`);

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Längsschnitt zweier Gewinde in Reihe',
  drawing: (arrangement, A, C) =>
    `Maßstäblicher Längsschnitt, ${chosen('arrangement', arrangement)}: ${spokenNumber(A)} im Grundteil, ${spokenNumber(C)} zum Hubteil`,
  knob: 'Stellteil, von oben',
  dial: 'Messuhr auf dem Hubteil',
  parts: PARTS,
  held: 'gehalten',
  perTurn: 'netto, je Umdrehung',
  caption: ({ turns, n, turned, carried, perTurn, locked, dial }) => {
    const soFar =
      n === 0
        ? 'Noch nicht gedreht'
        : `${turns} ${Math.abs(n) === 1 ? 'Umdrehung' : 'Umdrehungen'} ${n > 0 ? 'im' : 'gegen den'} Uhrzeigersinn`;
    const why = !locked
      ? ' (seine Verdrehsicherung gibt nach, darum bewegt es Gewinde A allein)'
      : perTurn.way === 0
        ? ' (die Steigungen sind gleich, darum bewegt es sich nie)'
        : '';
    return `${soFar}: Das Stellteil ${went(turned)}, das Hubteil ${went(carried)}${why}. Die Messuhr steht auf ${dial}.`;
  },
  head: ['Umdrehungen, im Uhrzeigersinn', PARTS.turned, PARTS.relative, PARTS.carried],
};
