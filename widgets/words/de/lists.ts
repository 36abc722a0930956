/**
 * Wörter, die in Listen getippt werden: links das englische Wort, das Links, Entwurfsdateien und Kapitel behalten, daneben das gezeigte deutsche, dahinter
 * andere, die ebenso gelesen werden. Benennungen nach DIN ISO 1891-2 und DIN EN ISO 6410, wo es dort eine gibt.
 */
import { type TypedEdge, typedEdge } from '../typed-words.ts';
import { CHOICE_WORDS } from './choices.ts';
import { MATERIALS, PARTS, WAYS } from './kinds.ts';

type Words = Parameters<typeof typedEdge>[0]['words'];

/** Andere Namen derselben Teile und Werkstoffe. */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  'coupling nut': ['Verbindungsmutter', 'Gewindemuffe'],
  nut: ['Sechskantmutter'],
  screw: ['Sechskantschraube'],
  stud: ['Stiftschraube', 'Gewindestange'],
  sleeve: ['Hülse', 'Gewindebuchse'],
  adapter: ['Gewindeadapter'],
  'socket screw': ['Innensechskantschraube', 'Zylinderschraube mit Innensechskant'],
  'flange screw': ['Flanschkopfschraube', 'Sechskantschraube mit Flansch'],
  aluminium: ['Alu'],
};
const named = (table: Readonly<Record<string, string>>): Words =>
  Object.entries(table).map(([kept, shown]) => [kept, shown, ...(ALSO[kept] ?? [])]);

const PART_WORDS: Words = [
  ...named(PARTS),
  ...named(MATERIALS),
  ['external', 'außen', 'Außengewinde'],
  ['internal', 'innen', 'Innengewinde'],
  ['blind', 'Grundloch', 'Sackloch', 'nicht durchgehend'],
  ['through', 'durchgehend', 'Durchgangsloch'],
  ['on the ground', 'auf dem Boden'],
  ['off the ground', 'über dem Boden', 'nicht auf dem Boden'],
  ['thread', 'Gewinde', 'Gewindelänge'],
  ['body', 'Körper'],
  ['head', 'Kopf'],
  ['neck', 'Hals'],
  ['hexagon', 'Sechskant', 'Schlüsselweite', 'SW', 'Innensechskant'],
  ['width', 'Breite'],
  ['height', 'Höhe'],
  ['price', 'Preis'],
  ['count', 'Anzahl'],
  ['off', 'Stück'],
  ['coat', 'Schicht', 'Beschichtung'],
  ['class', 'Klasse', 'Toleranzklasse'],
];

const { assembly, divider, spring } = CHOICE_WORDS;
const ADJUSTER_WORDS: Words = [
  ...PART_WORDS,
  ...named(assembly.options),
  ...named(divider.options),
  ...named(spring.options),
  ['adjuster', 'Stellelement'],
  ['base', 'Grundteil'],
  ['turned', 'Stellteil'],
  ['carried', 'Hubteil'],
  ['lock', 'Verdrehsicherung'],
  ['springs', 'Federn', 'Feder'],
  ['tip', 'Spitze'],
  ['divider', 'Teilung'],
  ['wanted', 'gewünscht'],
  ['keep', 'Eingriff'],
  ['assembled', 'zusammengebaut'],
  ['key', 'Passfeder'],
  ['steel post', 'Stahlstift'],
  ['post', 'Stift'],
  ['at assembly', 'beim Zusammenbau'],
  ['at', 'bei'],
  ['clearance', 'Spiel'],
  ['stiffness', 'Steifigkeit'],
  ['none', 'keine', 'kein', 'keiner'],
  ['between', 'zwischen'],
  ['loses', 'verliert'],
  ['meander of', 'Mäander mit', 'Mäander aus', 'Mäander von'],
  ['meander', 'Mäander'],
  ['half waves', 'Halbwellen'],
  ['waves', 'Wellen'],
  ['row of', 'Reihe aus', 'Reihe von'],
  ['rings', 'Ringen', 'Ringe'],
  ['ring', 'Ring'],
  ['ovals', 'Ovalen', 'Ovale'],
  ['oval', 'Oval'],
  ['strap', 'Band'],
  ['coil of', 'Schraubenfeder mit', 'Schraubenfeder aus'],
  ['turns', 'Windungen'],
  ['radius', 'Radius'],
  ['straights', 'Geraden'],
  ['span', 'Spannweite'],
  ['wire', 'Draht'],
  ['legs', 'Schenkel'],
  ['connectors', 'Stege'],
  ['strip', 'Streifen'],
  ['high', 'hoch'],
  ['length', 'Länge'],
  ['modulus', 'E-Modul', 'Elastizitätsmodul'],
  ['ball', 'Kugel'],
  ['stands', 'Überstand', 'steht'],
  ['pressed with', 'gepresst mit', 'eingepresst mit'],
  ['round', 'rund', 'ballig'],
  ['flat', 'flach', 'eben'],
  ['cone', 'Kegel'],
  ['divisions', 'Skalenteile', 'Teilstriche'],
  ['diameter', 'Durchmesser'],
  ['turns out', 'Umdrehungen heraus'],
  ['turn out', 'Umdrehung heraus'],
  ['or', 'oder'],
];

const STEPS: Words = [
  ['flats', 'Flächen'],
  ['flat', 'Fläche'],
  ['points', 'Zwölftel'],
  ['divisions', 'Skalenteile', 'Teilstriche'],
  ['steps', 'Schritte'],
];

/** Was hinter oder vor einer Gewindebezeichnung in Worten stehen kann; die Bezeichnung selbst ist die der Normen. */
const THREAD_WORDS: Words = [
  ['left hand', 'linksgängig', 'Linksgewinde', 'links'],
  ['right hand', 'rechtsgängig', 'Rechtsgewinde', 'rechts'],
  ['2-start', '2-gängig', 'zweigängig', 'doppelgängig'],
  ['3-start', '3-gängig', 'dreigängig'],
  ['start', 'gängig', 'Gang'],
  ['starts', 'Gänge'],
  ['coarse', 'Regelgewinde', 'grob'],
  ['fine', 'Feingewinde', 'fein'],
  ['thread', 'Gewinde'],
  ['class', 'Klasse', 'Toleranzklasse'],
];

export const LISTS = {
  thread: typedEdge({ words: THREAD_WORDS }),
  taps: typedEdge({ words: THREAD_WORDS, comma: true }),
  series: typedEdge({
    words: [
      ['coarse', 'Regelgewinde', 'grob'],
      ['fine', 'Feingewinde', 'fein'],
      ['metric', 'metrisch'],
      ['inch', 'Zoll', 'zöllig'],
      ['all', 'alle'],
      ['none', 'keine'],
    ],
  }),
  dividers: typedEdge({ words: [...named(divider.options), ...STEPS, ['none', 'keine']] }),
  feet: typedEdge({ words: [['foot', 'Fuß']], comma: 'where apart' }),
  readings: typedEdge({ words: [], comma: 'where apart' }),
  rounds: typedEdge({ words: [], comma: 'where parted' }),
  stands: typedEdge({
    words: [
      ['foot', 'Fuß'],
      ['turns', 'Umdrehungen'],
      ['turn', 'Umdrehung'],
    ],
    comma: true,
  }),
  runs: typedEdge({
    words: [
      ...STEPS,
      ['turns', 'Umdrehungen', 'Umdrehung'],
      ['degrees', 'Grad'],
      ['angle', 'Winkel'],
      ['position', 'Stellung'],
      ['reading', 'Ablesung', 'Messwert', 'Anzeige'],
      ['indicator', 'Messuhr', 'Feinzeiger'],
      ['direction', 'Richtung'],
      ['up', 'auf', 'aufwärts', 'hinauf'],
      ['down', 'ab', 'abwärts', 'hinab'],
      ['none', 'keine'],
    ],
    comma: 'where parted',
  }),
  parts: typedEdge({
    words: [
      ...named(PARTS),
      ['ball', 'Kugel'],
      ['spring', 'Feder'],
      ['guide post', 'Führungsstift'],
      ['key', 'Passfeder'],
    ],
    comma: true,
  }),
  prices: typedEdge({ words: named(WAYS), comma: true }),
  adjuster: typedEdge({ words: ADJUSTER_WORDS, comma: true }),
  settled: typedEdge({ words: [], comma: true }),
  passport: typedEdge({
    words: [
      ['lead', 'Steigung'],
      ['wave', 'Welle'],
      ['wear', 'Verschleiß'],
      ['hysteresis', 'Umkehrspanne'],
      ['place', 'Stelle'],
      ['turns', 'Umdrehungen'],
      ['turn', 'Umdrehung'],
    ],
    only: 'by a number',
    comma: true,
  }),
  title: typedEdge({
    words: [
      ['number', 'Nummer'],
      ['date', 'Datum'],
      ['revision', 'Änderung'],
      ['tolerance', 'Allgemeintoleranz', 'Toleranz'],
      ['drawn', 'gezeichnet'],
    ],
    only: 'before =',
  }),
  hardware: typedEdge({
    words: [
      ...PART_WORDS,
      ['standard metric', 'Normteile metrisch'],
      ['standard inch', 'Normteile Zoll'],
      ['standard adapters', 'Normteile Adapter'],
    ],
    comma: true,
  }),
} as const satisfies Record<string, TypedEdge>;

/** Was von einer solchen Liste in einem Satz steht, in deutschen Worten. */
export const inGerman = (list: keyof typeof LISTS, kept: string): string => LISTS[list].toShown(kept);
