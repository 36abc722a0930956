/** Wörter des Bildes, das ein Stellelement aus seinen Teilen zeigt. */
import type * as En from '../../en/figures/adjuster.ts';
import type { Same } from '../../same.ts';
import { partKind } from '../kinds.ts';

const PARTS = { base: 'Grundteil', turned: 'Stellteil', carried: 'Hubteil' };

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Dein Stellelement, aus seinen Teilen',
  drawing: (name) => `Maßstäblicher Schnitt${name === '' ? '' : ` von ${name}`}, durch die Achse`,
  knob: 'Stellteil, von oben',
  springFace: 'Feder, auf ihre flache Seite gesehen',
  parts: PARTS,
  kind: (role, kind) => `${PARTS[role]}: ${partKind(kind)}`,
  list: {
    head: ['Teil', 'Höhe', 'Masse', 'Preis'],
    none: 'nicht angegeben',
  },
  sizes: {
    'thread A': 'Gewinde A',
    'thread C': 'Gewinde C',
    height: 'Höhe',
    body: 'Körper',
    head: 'Kopf',
    hexagon: 'Schlüsselweite',
    width: 'Breite',
    diameter: 'Durchmesser',
    plate: 'Dicke der Platte',
    collar: 'Bund',
    neck: 'Hals',
    'body diameter': 'Durchmesser des Körpers',
    'collar diameter': 'Durchmesser des Bunds',
    'neck diameter': 'Durchmesser des Halses',
    bore: 'Bohrung',
    relief: 'Freistich',
  },
  readout: {
    perTurn: 'Nettosteigung, im Uhrzeigersinn',
    perStep: (step, count) => `je ${step} (${count} auf eine Umdrehung)`,
    stroke: 'Hub zwischen den Anschlägen',
    engagedA: 'Einschraublänge, Gewinde A',
    engagedC: 'Einschraublänge, Gewinde C',
    height: 'Höhe jetzt',
    left: 'Umdrehungen übrig: im und gegen den Uhrzeigersinn',
    markA: 'Marke: A aus der Endlage zurückdrehen',
    markC: 'Marke: C aus der Endlage zurückdrehen',
    mass: 'Masse aller Teile',
    price: 'Preis aller Teile',
    springs: 'Kraft der Federn jetzt',
    play: (joint, limits) => `Spiel von Gewinde ${joint}${limits === '' ? '' : `, ${limits}`}`,
    limits: (limits, coat) => `${limits}${coat === '' ? '' : `, Schicht zusammen ${coat}`}`,
    range: (least, most) => `${least} bis ${most}`,
    binds: (most) => `die engsten Stücke klemmen; bis ${most}`,
    neverGoes: 'die Stücke gehen nicht zusammen',
    lost: 'toter Gang bei Umkehr ohne Vorspannung, höchstens',
  },
  turns: (count) => `${count} Umdrehungen`,
  both: (a, b) => `${a} und ${b}`,
  assumed: (sizes) =>
    sizes.length === 0
      ? 'Jedes Maß ist angegeben.'
      : `Gezeichnet mit dem, was du nicht angegeben hast: ${sizes.join('; ')}.`,
  assumedPost: (thick, radius) =>
    `ein Stift, ${thick} dick, ${radius} neben der Achse, der das Hubteil am Drehen hindert`,
  assumedThickness: (lock, thick) => `${lock === 'key' ? 'Passfeder' : 'Stift'} ${thick} dick`,
  assumedTip: (stands) => `Spitze ${stands} hoch`,
  over: (size, length) => `${size} über ${length}`,
  assumedSprings: (radius) => `Federn ${radius} neben der Achse`,
  size: (part, name, value) => `${part}, ${name} ${value}`,
  plain: 'einfache Schraube: Die Spitze sitzt auf dem Stellteil',
  caption: (v) =>
    `${v.stopped === undefined ? '' : `Bis ${v.stopped.asked} Umdrehungen geht es nicht: ${v.stopped.why}. `}Eine Umdrehung im Uhrzeigersinn bewegt die Spitze um ${v.perTurn}. Es geht ${v.clockwise.turns} Umdrehungen im Uhrzeigersinn (dann: ${v.clockwise.why}) und ${v.anticlockwise.turns} Umdrehungen dagegen (dann: ${v.anticlockwise.why}): ${v.stroke} Hub. Die Spitze ist ${v.height} über der Unterseite des Grundteils.`,
  head: [
    'Umdrehungen, im Uhrzeigersinn',
    'Einschraublänge, Gewinde A',
    'Einschraublänge, Gewinde C',
    'Spitze über dem Grundteil',
  ],
};
