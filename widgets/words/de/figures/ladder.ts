/** Wörter des Leiter-Prüflings. */
import type * as En from '../../en/figures/ladder.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Eine Leiter aus Löchern',
  name: 'Leiter-Prüfling',
  drawing: 'Der Prüfling von oben, maßstäblich, mit der Sprosse, die das Stück aufnimmt',
  takes: (width) => `nimmt es auf: ${width}`,
  files: 'Der Prüfling als Datei, in Millimetern, gedruckt wie gezeichnet:',
  save: (kind) => `Den Prüfling als ${kind.toUpperCase()} speichern`,
  check: '10 mm',
  fits: { tight: 'geht nicht hinein', goes: 'geht gerade hinein', loose: 'lose' },
  head: ['Sprosse', 'gezeichnete Schlüsselweite', 'das Stück'],
  offsets: { holes: 'Löcher zeichnen um', outsides: 'Außenmaße drucken um' },
  caption: (v) =>
    `Sprosse ${v.rung}, gezeichnet ${v.width}, nimmt ein Stück von ${v.piece} auf. Zeichne Löcher also ${v.holes}, auf ${v.half} genau nach jeder Seite; Außenmaße drucken ${v.outsides}.`,
};
