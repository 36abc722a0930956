/** Wörter einer Schraube und ihrer Rampe. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/ramp.ts';
import type { Same } from '../../same.ts';

const COLUMNS = { angle: 'Winkel, im Uhrzeigersinn', turns: 'Umdrehungen', motion: 'Bewegung der Schraube' };

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Eine Schraube und ihre Rampe',
  drawing: (thread) =>
    `Gewinde ${spokenNumber(thread)} und seine Schraubenlinie, zu einer Rampe abgewickelt, in einem Maßstab`,
  onceRound: (length) => `einmal herum: ${length}`,
  lead: (length) => `Steigung\n${length}`,
  leadAngle: (angle) => `Steigungswinkel ${angle}`,
  knob: 'Schraubenkopf, von oben',
  readout: COLUMNS,
  caption: ({ thread, rightHand, starts, pitch, lead, angle, motion, way }) => {
    const cut =
      starts === 1 ? `Teilung und Steigung ${lead}` : `${starts} Gänge mit Teilung ${pitch}, Steigung ${lead}`;
    const moved =
      way === 0
        ? 'hat sich die Schraube nicht bewegt'
        : `geht die Schraube um ${motion} ${way < 0 ? 'nach unten' : 'nach oben'} durch ihre Mutter`;
    return `${spokenNumber(thread)}, ${rightHand ? 'rechtsgängig' : 'linksgängig'}, ${cut}: Um ${angle} im Uhrzeigersinn gedreht, ${moved}.`;
  },
  head: [COLUMNS.angle, COLUMNS.turns, COLUMNS.motion],
};
