/** Wörter des Bildes, das Dateien der Teile macht. */
import type * as En from '../../en/figures/part-files.ts';
import type { Same } from '../../same.ts';
import { partKind } from '../kinds.ts';

const PARTS = { base: 'Grundteil', turned: 'Stellteil', carried: 'Hubteil' };

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Dateien deiner Teile',
  drawing: 'Maßstäblicher Schnitt',
  adjuster: 'Stellelement',
  section: 'Schnitt',
  check: '10 mm',
  part: (role, kind) => `${PARTS[role]}: ${partKind(kind)}`,
  print: { spring: 'Feder', arm: 'Arm am Stift', post: 'Stift', foot: 'Fußplatte des Stifts', knob: 'Drehknopf' },
  steelPost: 'Stift aus Stahl: abgelängt, nicht gedruckt',
  counted: (what, count) => (count > 1 ? `${what}, ${count} Stück` : what),
  all: 'alle Teile',
  together: 'Schnitt, zusammengebaut',
  by: (height, width) => `${height} hoch, ${width} breit`,
  save: (what, kind) => `${what} als ${kind.toUpperCase()} speichern`,
  listHead: ['Teil', 'Größe', 'Dateien, in Millimetern'],
  note: 'Die Körper der Teile haben Gewinde des Grundprofils, ohne Spiel: Ein Druck davon ist ein Modell zum Ansehen, außer du druckst die Gewinde größer. DXF und SVG sind Schnitte in wahrer Größe, mit einer Strecke von 10 mm zum Prüfen.',
  caption: (parts, highest, height) => `${parts} Teile aus den Zeilen oben; das höchste ist: ${highest}, ${height}.`,
  head: ['Teil', 'Höhe', 'über Eck', 'Dreiecke in seinem Körper'],
};
