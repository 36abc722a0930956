/** Wörter des Gangs mit seiner Schicht. */
import type * as En from '../../en/figures/coated-thread.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Eine Schicht auf einem Gewinde',
  drawing:
    'Ein Gang der Schraube in der Rille ihrer Mutter, mit seiner Schicht; die dicke Linie liegt an, der Spalt auf der anderen Seite ist das Spiel',
  left: (play) => `Spiel ${play}`,
  coat: (thick) => `Schicht ${thick}`,
  rows: {
    bare: 'Spiel des blanken Gewindes',
    left: 'Spiel mit der Schicht',
    most: 'dickste Schicht, die noch zusammengeht',
  },
  caption: (v) =>
    `Mit einer Schicht von ${v.coat} auf der Schraube bleiben von ${v.bare} Spiel noch ${v.left}. Bei ${v.most} bleibt keines.`,
  head: ['Schicht', 'Spiel übrig'],
};
