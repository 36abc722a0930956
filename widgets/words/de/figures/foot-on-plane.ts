/** Wörter des Fußes, der von der Seite gedrückt wird. */
import type * as En from '../../en/figures/foot-on-plane.ts';
import type { Same } from '../../same.ts';

const VERDICTS = {
  stands: 'sein Ring drückt rundum',
  lifts: 'eine Seite seines Rings hat abgehoben',
  tips: 'er kippt um',
  slides: 'er rutscht weg',
};

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Ein Fuß, von der Seite gedrückt',
  drawing:
    'Fuß auf seinem Ring von der Seite, maßstäblich; der gestrichelte Pfeil ist die Summe aus Last und Druck, die dicke Linie die sichere Mitte des Rings',
  core: 'sichere Mitte',
  rim: 'Rand',
  verdicts: VERDICTS,
  facts: {
    off: 'die Last trifft den Boden, neben der Achse',
    full: 'drückt rundum bis',
    tips: 'kippt bei',
    slides: 'rutscht bei',
    radius: 'Radius der gewölbten Fläche',
    convex: 'auf der gewölbten Fläche geht seine Spitze zur Seite um',
  },
  head: ['was', 'Betrag'],
  caption: (v) =>
    `Von ${v.push} gedrückt, trifft die Last den Boden ${v.off} neben der Achse: ${VERDICTS[v.verdict]}. ${
      v.convex === undefined
        ? `Auf einer Fläche, die ${v.proud} vorsteht, hat er keine Stelle zum Ruhen.`
        : `Auf einer Fläche, deren Mitte ${v.proud} vorsteht, würde derselbe Druck die Spitze um ${v.convex} zur Seite bewegen.`
    }`,
};
