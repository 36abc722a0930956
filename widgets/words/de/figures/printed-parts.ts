/** Wörter der gedruckten Teile, die halten. */
import type * as En from '../../en/figures/printed-parts.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Klemme, Kappe und Zapfen',
  files: 'Dateien dieser Teile',
  drawing:
    'Klemme von oben um ihren Sechskant, Kappe und Zapfen entlang der Achse geschnitten, in einem Maßstab, wie für den Drucker gezeichnet',
  clip: 'Klemme',
  cap: 'Kappe',
  post: 'Zapfen',
  coupon: 'Prüfstreifen',
  refused: (part, why) => `${part} fehlt: ${why}`,
  never: 'ihre Lippen halten, bis sie brechen',
  offsets: (holes, outsides) => `Löcher ${holes}, Außenmaße ${outsides}`,
  facts: {
    strain: 'Dehnung in einem Arm, Lippe zur Seite gedrückt',
    allowed: 'erlaubte Dehnung',
    least: 'kürzester Arm für das Erlaubte',
    on: 'Druck, der sie aufsetzt',
    off: 'Zug, der sie abnimmt',
    cap: 'bleibende Dehnung um die Bohrung der Kappe',
    offsets: 'in die Zeichnung aufgenommen',
  },
  save: (what, kind) => `${what} als ${kind.toUpperCase()} speichern`,
  listHead: ['Teil', 'Größe', 'Dateien, in Millimetern'],
  note: 'Die von der Leiter abgelesenen Abweichungen stehen in jeder Datei, außer in der des Prüfstreifens, der zum Messen wie gezeichnet gedruckt wird. Drucke Klemme und Prüfstreifen flach liegend.',
  check: '10 mm',
  head: ['Teil', 'lang', 'breit', 'hoch'],
  caption: (v) =>
    `Aufgeschnappt sind die Arme um ${v.strain} gedehnt: ${
      {
        over: `mehr als die erlaubten ${v.allowed}`,
        once: `gut für einmal, denn ${v.allowed} sind erlaubt, aber nicht für immer wieder, ${v.again}`,
        again: `das halten sie immer wieder aus, bis ${v.again}`,
      }[v.verdict]
    }. Aufsetzen braucht ${v.on}; ${v.off === undefined ? 'ab geht sie nicht wieder' : `Abnehmen braucht ${v.off}`}.`,
};
