/** Wörter der Leiter aus Löchern. */
import type * as En from '../../en/figures/ladder.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Eine Leiter aus Löchern',
  name: 'Leiter',
  drawing: 'Die Leiter von oben, maßstäblich, mit der Sprosse, die das Stück aufnimmt',
  takes: (width) => `nimmt es auf: ${width}`,
  files: 'Die Leiter als Datei, in Millimetern, gedruckt wie gezeichnet:',
  save: (kind) => `Die Leiter als ${kind.toUpperCase()} speichern`,
  check: '10 mm',
  fits: { tight: 'geht nicht hinein', goes: 'geht gerade hinein', loose: 'lose' },
  head: ['Sprosse', 'gezeichnete Schlüsselweite', 'das Stück'],
  offsets: { holes: 'Löcher weiter zeichnen um', outsides: 'Außenmaße drucken weiter um' },
  caption: (v) =>
    `Sprosse ${v.rung}, gezeichnet ${v.width}, nimmt ein Stück von ${v.piece} auf. Zeichne Löcher also um ${v.holes} weiter; die wahre Abweichung ist so groß oder bis zu ${v.step} kleiner. Außenmaße drucken um ${v.outsides} weiter.`,
};
