/** Wörter der Zeichnungen für die Werkstatt. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/part-drawings.ts';
import type { Same } from '../../same.ts';
import { chosen } from '../choices.ts';
import { materialName, partKind } from '../kinds.ts';

const PARTS = { base: 'Grundteil', turned: 'Stellteil', carried: 'Hubteil' };
const BETWEEN = {
  'base and carried': 'Grundteil zu Hubteil',
  'base and turned': 'Grundteil zu Stellteil',
  'turned and carried': 'Stellteil zu Hubteil',
};

type Doubtful = Parameters<typeof En.WORDS.caption>[0]['doubtful'][number];
const doubtText = ({ thread, runOut, wall }: Doubtful): string =>
  `${runOut ? ` Achtung: Hinter ${thread} hat der Gewindebohrer ${runOut[0]} Auslauf, üblich sind ${runOut[1]}. Nimm einen Grundbohrer und zähle die Umdrehungen, kürze das Gewinde, oder lass mehr Werkstoff darunter.` : ''}${
    wall
      ? ` Achtung: Die Bohrung von ${thread} lässt eine Wand von ${wall[0]}; weniger als ${wall[1]} kann ausbrechen.`
      : ''
  }`;

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Zeichnungen für die Werkstatt',
  scroller: 'Das Blatt in wahrer Größe; verschiebe es, um alles zu sehen',
  part: (role, kind) => `${PARTS[role]}: ${partKind(kind)}`,
  material: materialName,
  assembly: 'Zusammenbau',
  adjuster: 'Stellelement',
  ball: 'Kugel',
  spring: (between, all) => `Feder, ${BETWEEN[between]}${all.length > 0 ? `; alle: ${all.join(', ')}` : ''}`,
  lock: (kind, radius) => `${kind === 'key' ? 'Passfeder' : 'Stift'}, ${radius} neben der Achse`,
  locked: {
    none: 'Keine Verdrehsicherung: Das Hubteil dreht mit.',
    assumed: 'Keine Verdrehsicherung ist angegeben, darum ist keine gezeichnet.',
    springs: 'Die Federn sichern das Hubteil.',
  },
  drill: (size) => `Kernloch ⌀${size}`,
  drilled: (depth) => `${depth} tief gebohrt, 118°`,
  runOut: (has, usual) => `Auslauf ${has} (üblich: ${usual})`,
  wall: (has, least) => `Wand ${has} (mindestens ${least})`,
  socket: (flats, depth) => `(Innensechskant SW ${flats} × ${depth})`,
  depth: (thread, depth) => `${spokenNumber(thread)} × ${depth}`,
  through: (thread) => `${spokenNumber(thread)}, durchgehend`,
  usual: (thread, usual) => `${spokenNumber(thread)} (${usual})`,
  assumed: (size) => `(${size})`,
  flats: (size) => `SW ${size}`,
  square: (size) => `□${size}`,
  round: (size) => `⌀${size}`,
  check: '100 mm auf einem Ausdruck in wahrer Größe',
  notes: [
    'Kanten gebrochen 0,2 bis 0,5, Gewinde angesenkt.',
    'In Klammern: nicht angegeben, in üblicher Größe gezeichnet.',
  ],
  stroke: (stroke, turns) => `Hub ${stroke} in ${turns} Umdrehungen.`,
  other: { spring: 'Feder', arm: 'Arm am Stift', post: 'Stift', foot: 'Fußplatte des Stifts', knob: 'Drehknopf' },
  printNotes: ['Auf der flachen Seite liegend gedruckt, wie gezeichnet.', 'Streifen sind an ihrer Mittellinie bemaßt.'],
  data: {
    title: 'Daten einer Feder',
    meander: (waves) => `Mäander, ${waves} halbe Wellen`,
    leg: (x) => `Schenkel ${x}`,
    connector: (x) => `Steg ${x}`,
    strip: (x) => `Streifen ${x} dick`,
    strap: 'Band zwischen zwei Klötzen',
    span: (x) => `Spannweite ${x}`,
    ring: (cells, shape) =>
      cells === 1
        ? shape === 'ring'
          ? 'ein Ring'
          : 'ein Oval'
        : `${cells} ${shape === 'ring' ? 'Ringe' : 'Ovale'} in einer Reihe`,
    radius: (x) => `mittlerer Radius ${x}`,
    straight: (x) => `Gerade ${x}`,
    wire: (x) => `Draht ⌀${x}`,
    mean: (x) => `mittlerer Durchmesser ${x}`,
    outside: (x) => `Außendurchmesser ${x}`,
    turns: (x) => `${x} federnde Windungen`,
    free: (x) => `frei ${x} zwischen den Haltern`,
    mark: (x, force) => `bei ${x}: ${force}`,
    between: (least, most) => `über den Hub ${least} bis ${most}`,
    rate: (x) => `Federrate ${x}`,
    modulus: (x) => `E-Modul ${x}`,
    count: (n) => `${n} gebraucht`,
    steel: 'Federstahldraht',
    hexagon: (flats) => `Sechskant SW ${flats} durch`,
    opening: (x, y) => `Öffnung ${x} × ${y}`,
    slot: (x, y) => `Langloch ${x} × ${y}`,
    hole: (x) => `Bohrung ⌀${x} durch`,
    apart: (x) => `${x} von Mitte zu Mitte`,
    marks: (n) => `${n} Striche im Rand`,
  },
  block: {
    name: 'Benennung',
    number: 'Nummer',
    date: 'Datum',
    revision: 'Änderung',
    tolerance: 'Allgemeintoleranz',
    drawn: 'gezeichnet von',
    material: 'Werkstoff',
    scale: 'Maßstab',
    units: 'Einheiten',
    paper: 'Papier',
    sheet: 'Blatt',
    projection: 'Methode 1',
  },
  sheet: (i, of) => `${i} von ${of}`,
  list: ['Pos.', 'Anzahl', 'Benennung', 'Werkstoff'],
  files: 'Dieses Blatt als Datei:',
  save: (kind) => `Dieses Blatt als ${kind.toUpperCase()} speichern`,
  head: ['Blatt', 'was', 'Maßstab', 'Maße'],
  caption: (v) =>
    `${v.what} auf ${chosen('paper', v.paper)}, ${v.scale}: ${
      v.listed > 0
        ? `${v.listed} Nummern führen zur Stückliste`
        : `${v.stated} ${v.stated === 1 ? 'Maß' : 'Maße'} wie angegeben${v.assumed > 0 ? `, ${v.assumed} in Klammern` : ''}`
    }.${v.doubtful.map(doubtText).join('')}`,
};
