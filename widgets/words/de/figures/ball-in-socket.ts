/** Wörter der Kugel im Innensechskant. */
import type * as En from '../../en/figures/ball-in-socket.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Eine Kugel im Innensechskant',
  numbers: 'Alle Kugeln nahe diesem Innensechskant',
  drawing: 'Innensechskant und Kugel, entlang der Achse geschnitten, maßstäblich',
  inch: (size, inch) => `${size} (${inch} Zoll)`,
  fromTo: (from, to) => `${from} bis ${to}`,
  none: '–',
  rim: 'Rand',
  bottoms: 'keine: Sie stößt auf den Grund',
  facts: {
    flats: (key) => `Innensechskant für einen Schlüssel von ${key} mm, Schlüsselweite`,
    any: 'Übermaß in jedem solchen Innensechskant',
    top: 'ihr Scheitel über dem Rand, aufgelegt',
    measured: 'Übermaß in deinem',
    stands: 'steht aus deinem heraus, eingepresst',
    room: 'Luft unter ihr',
  },
  verdicts: {
    loose: 'in jedem Innensechskant lose: klebe sie ein oder nimm eine Hülse',
    perhaps: 'in einem weiten Innensechskant lose: miss deinen',
    presses: 'lässt sich einpressen',
    rests: 'bleibt auf dem Rand: breiter, als du einpressen darfst',
  },
  head: (key) => [
    'Kugel',
    `am wenigsten, Schlüsselweite ${key} mm`,
    'am meisten',
    'Scheitel über dem Rand, aufgelegt',
    'also',
  ],
  caption: (v) =>
    `Eine Kugel von ${v.ball} in einem Innensechskant von ${v.key} mm hat ${v.least} bis ${v.most} Übermaß: Sie ${
      {
        loose: 'ist in jedem lose',
        perhaps: 'ist in einem weiten lose',
        presses: 'lässt sich einpressen',
        rests: 'bleibt auf dem Rand, denn sie ist breiter, als du einpressen darfst',
      }[v.verdict]
    }. ${v.stands === undefined ? 'In deinen fällt sie hinein' : `In deinem, so weit eingepresst, steht sie ${v.stands} heraus${v.bottoms ? ' und stößt auf den Grund' : ''}`}.`,
};
