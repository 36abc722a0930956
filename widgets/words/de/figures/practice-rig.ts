/** Wörter des Übungsaufbaus. */
import type * as En from '../../en/figures/practice-rig.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Ein Übungsaufbau und was seine Messuhr zeigt',
  up: 'hinauf gedreht',
  down: 'hinunter gedreht',
  panel: 'Messuhr minus Sollbewegung',
  readings: 'Ablesungen',
  nominal: 'Soll-Nettosteigung',
  truth: 'Nettosteigung dieses Aufbaus',
  flanks: 'Flanken',
  loose: 'lose: Spiel zeigt sich',
  touching: (threads) =>
    `${threads.map(({ thread, flank }) => `Gewinde ${thread}: Die ${flank} liegt an`).join('; ')}; Spiel zeigt sich nicht`,
  take: 'Diese Ablesungen übernehmen',
  again: 'Mit der nächsten Startzahl neu ablesen',
  taken: (count) => `Übernommen: ${count} Ablesungen stehen im Feld der Kalibrierung.`,
  caption: ({ count, seed, lowest, highest, truth }) =>
    `${count} Ablesungen mit Startzahl ${seed}: Gegen die Sollbewegung geht die Messuhr von ${lowest} bis ${highest}, und die Nettosteigung dieses Aufbaus ist ${truth} je Umdrehung.`,
  directions: { up: 'hinauf', down: 'hinunter' },
  head: ['Umdrehungen', 'Richtung', 'Messuhr'],
};
