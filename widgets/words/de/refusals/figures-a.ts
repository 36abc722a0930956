/** Warum ein Bild nicht zu zeichnen ist, für die Bilder von der Kugel bis zur Kraft der Hand. */
import { quoted } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const FIGURES_A = {
  'sheet-of-one-thread': ({ part }) =>
    `Dieses Blatt ist für zwei Gewinde in Reihe, und beschrieben ist eine einfache Schraube (${part}) mit einem: Gib ein Hubteil mit einem zweiten Gewinde dazu, oder sieh Bewegung und Anschläge im Bild der Teile.`,
  'design-that-moves-nothing': () =>
    'Die beiden Steigungen sind gleich, darum bewegt dieser Entwurf nicht, was er trägt: Wähle Gewinde mit verschiedenen Steigungen.',
  'lengths-of-no-one-scale': () =>
    'Diese Längen lassen sich nicht in einem Maßstab zeichnen: Mache sie weniger verschieden.',
  'nothing-to-divide': () =>
    'Die beiden Steigungen sind gleich, darum bewegt eine Umdrehung das Hubteil nicht, und es gibt nichts zu teilen: Wähle Gewinde mit verschiedenen Steigungen.',
  'step-of-nothing': () =>
    'Die beiden Steigungen sind gleich, darum bewegt ein Schritt nichts und kann kein Maß sein: Wähle Gewinde mit verschiedenen Steigungen.',
  'holding-below-sliding': ({ holds, slides }) =>
    `Die Haftreibungszahl ist ${holds}, unter der Gleitreibungszahl ${slides}, darum haftet nichts: Gib mindestens ${slides}.`,
  'file-too-long': ({ name, bytes, most }) =>
    `${quoted(name)} hat ${bytes} Byte; höchstens ${most} werden genommen: Lass einige Ablesungen weg.`,
  'file-unread': ({ name }) =>
    `${quoted(name)} war nicht zu lesen; wähle die Datei noch einmal oder füge die Ablesungen ein.`,
} satisfies Partial<RefusalWords>;
