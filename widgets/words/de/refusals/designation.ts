/** Warum das Eingegebene kein Gewinde ist. */
import {
  LAST_NUMBER_SIZE,
  listed,
  quoted,
  type SymbolName,
  say,
  spokenNumber,
  symbolFact,
} from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';
import { nearSizes, offersOf } from '../designation.ts';

const EXAMPLES = 'M10×1,5, 3/8-16 oder 12 mm × 1,1 mm';

const STANDARDS = {
  trapezoidal: 'ein Trapezgewinde',
  pipe: 'ein Rohrgewinde, dessen Größe nicht sein Durchmesser ist und das kegelig sein kann',
  whitworth: 'ein Whitworth-Gewinde mit einem Flankenwinkel von 55°',
  association: 'ein Gewinde der British Association (BA) mit einem Flankenwinkel von 47½°',
  round: 'ein Rund- oder Sägengewinde',
  'root radius': 'ein Gewinde mit vorgeschriebenem Radius im Grund',
} as const;

const CLASSES = {
  metric: 'eine metrische Schraube bekommt eine wie 6g und eine Mutter eine wie 6H',
  unified: 'eine Unified-Schraube bekommt 1A, 2A oder 3A und eine Mutter 1B, 2B oder 3B',
  free: 'eine Schraube bekommt eine wie 6g oder 2A und eine Mutter eine wie 6H oder 2B',
} as const;

const n = (x: number | string | undefined): string => spokenNumber(String(x));
const range = (symbol: SymbolName): string => `${n(symbolFact(symbol).min)} bis ${n(symbolFact(symbol).max)}`;

export const DESIGNATION = {
  'thread-too-long': ({ text, most }) =>
    `Gelesen: ${quoted(text)}; eine Bezeichnung hat höchstens ${most} Zeichen: Schreibe ein Gewinde, wie ${EXAMPLES}.`,
  'thread-empty': () => `Nichts eingegeben; ein Gewinde ist nötig, etwa ${EXAMPLES}.`,
  'two-threads': ({ text }) =>
    `Gelesen: ${quoted(text)}, das sind zwei Gewinde; hier passt eines: Schreibe das andere in sein eigenes Feld.`,
  'thread-of-other-standard': ({ text, standard }) =>
    `Gelesen: ${quoted(text)}, ${STANDARDS[standard]}; dieses Heft zeichnet zylindrische Gewinde der 60°-Grundform: Schreibe eines wie ${EXAMPLES}.`,
  'not-a-thread': ({ text }) =>
    `Gelesen: ${quoted(text)}, das keine Gewindebezeichnung ist: Schreibe eine wie ${EXAMPLES}.`,
  'pitch-or-tpi': ({ text }) =>
    `Gelesen: ${quoted(text)}, das offen lässt, ob eine Teilung oder Gänge je Zoll gemeint sind: Schreibe mm oder tpi dahinter.`,
  'both-hands': ({ text }) =>
    `Gelesen: ${quoted(text)}, links- und rechtsgängig; ein Gewinde hat eine Gangrichtung: Schreibe LH oder lass es weg.`,
  'starts-unread': ({ text, most }) =>
    `Gelesen: ${quoted(text)}; ein Gewinde hat 1 bis ${most} Gänge, eine ganze Zahl: Schreibe etwa „2 starts“.`,
  'starts-twice': ({ text, made, written }) =>
    `Gelesen: ${quoted(text)}; Ph und P ergeben ${made} Gänge, aber ${written} sind geschrieben: Schreibe eines von beiden.`,

  'pitch-diameter-twice': ({ text, letter }) =>
    `Gelesen: ${quoted(text)}; ${letter} steht zweimal: Schreibe es einmal, mit dem kleinsten und dem größten gefundenen Maß.`,
  'pitch-diameter-far-off': ({ text, letter, size, least, most }) =>
    `Gelesen: ${quoted(text)}; ${letter} ${say(size)} mm ist kein Flankendurchmesser dieses Gewindes: Gib einen von ${n(least.toFixed(3))} bis ${n(most.toFixed(3))} mm.`,

  'diameter-out-of-range': ({ text, d }) =>
    `Gelesen: ${quoted(text)}, ein Durchmesser von ${say(d)} mm; hier sind es ${range('d')} mm: Schreibe einen darin.`,
  'tpi-out-of-range': ({ text, tpi }) =>
    `Gelesen: ${quoted(text)}, mit ${say(tpi)} Gängen je Zoll; ein Gewinde hat hier ${range('tpi')}: Schreibe eines wie 3/8-16.`,
  'pitch-without-core': ({ text, d, P, most }) =>
    `Gelesen: ${quoted(text)}, eine Teilung von ${say(P)} mm, die bei einem Durchmesser von ${say(d)} mm keinen Kern lässt: Nimm eine Teilung von höchstens ${n(most)} mm.`,
  'pitch-out-of-range': ({ text, P }) =>
    `Gelesen: ${quoted(text)}, eine Teilung von ${say(P)} mm; hier sind es ${range('P')} mm: Schreibe eine darin.`,
  'starts-out-of-range': ({ text, N }) =>
    `Gelesen: ${quoted(text)}, das macht ${say(N)} Gänge; ein Gewinde hat hier ${range('N')}: Nimm eine kürzere Steigung.`,
  'lead-too-steep': ({ text, L, most }) =>
    `Gelesen: ${quoted(text)}, eine Steigung von ${say(L)} mm; mit diesem Durchmesser und dieser Teilung darf sie höchstens ${n(most)} mm sein, ein Steigungswinkel von 45° oder ${n(symbolFact('L').max)} mm: Nimm weniger Gänge.`,
  'class-unfit': ({ text, written, of, kind }) => {
    const what =
      of === 'metric'
        ? 'eine Toleranzklasse metrischer Gewinde'
        : of === 'unified'
          ? 'eine Toleranzklasse von Unified-Gewinden'
          : 'keine Toleranzklasse';
    return `Gelesen: ${quoted(text)}; ${quoted(written)} ist ${what}, und ${CLASSES[kind]}: Schreibe eine davon oder lass sie weg.`;
  },

  'fine-and-coarse': ({ text }) =>
    `Gelesen: ${quoted(text)}; MF beginnt ein Feingewinde, aber „coarse“ ist geschrieben: Schreibe eines von beiden.`,
  'pitch-unlike-its-word': ({ text, d, P, coarse, word, instead }) =>
    `Gelesen: ${quoted(text)}; die Teilung des Regelgewindes von M${n(d)} ist ${n(coarse)} mm, darum ist ${n(P)} mm nicht „${word}“: Schreibe M${n(d)}×${n(P)} oder M${n(d)}×${n(instead)}.`,
  'lead-not-of-pitches': ({ text }) =>
    `Gelesen: ${quoted(text)}; die Steigung Ph ist eine ganze Zahl von Teilungen P: Schreibe es wie M16×Ph3P1,5.`,
  'lead-without-pitch': ({ text }) =>
    `Gelesen: ${quoted(text)}; Ph ist die Steigung, und die Teilung wird auch gebraucht: Schreibe beide, wie M16×Ph3P1,5.`,
  'no-coarse-pitch': ({ text, d, example }) =>
    `Gelesen: ${quoted(text)}; ein Durchmesser von ${n(d)} mm hat kein Regelgewinde in der Reihe der ISO 261, ${nearSizes(d)}: Schreibe auch die Teilung, wie M${n(d)}×${n(example)}.`,
  'fine-pitches': ({ text, d, pitches }) =>
    `Gelesen: ${quoted(text)}; M${n(d)} hat in ISO 261 ${pitches.length} Feinteilungen, ${listed(pitches.map(n))} mm: Schreibe die gemeinte, wie M${n(d)}×${n(pitches[0])}.`,
  'metric-and-inch': ({ text, d }) =>
    `Gelesen: ${quoted(text)}, ein metrischer Durchmesser mit einer Zollreihe; ein Gewinde ist eines oder das andere: Schreibe M${n(d)} mit einer Teilung in Millimetern oder eine Zollgröße wie 3/8-16 UNC.`,
  'metric-rest-unread': ({ text }) =>
    `Gelesen: ${quoted(text)}; nach dem Durchmesser kommt eine Teilung in Millimetern, dann nur Toleranzklasse, Gänge oder Gangrichtung: Schreibe es wie M10×1,5-6g LH.`,

  'inch-rest-unread': ({ text }) =>
    `Gelesen: ${quoted(text)}; nach der Größe kommt eine Teilung oder eine Zahl von Gängen je Zoll, dann nur Reihe, Toleranzklasse, Gänge oder Gangrichtung: Schreibe es wie 3/8-16 UNC-2A LH.`,
  'inch-fraction-odd': ({ text }) =>
    `Gelesen: ${quoted(text)}; Zollbrüche sind Halbe bis Vierundsechzigstel: Schreibe einen wie 3/8 oder eine Dezimalzahl wie 0,375.`,
  'number-size-and-length': ({ text }) =>
    `Gelesen: ${quoted(text)}; zu einer Nummerngröße gehören Gänge je Zoll: Schreibe es wie #10-32.`,
  'number-size-beyond': ({ text }) =>
    `Gelesen: ${quoted(text)}; Nummerngrößen gehen von #0 bis #${LAST_NUMBER_SIZE}: Schreibe einen anderen Durchmesser in Zoll, wie 0,242-20.`,
  'number-size-or-inches': ({ text, n: size, asNumber, asInches, series }) =>
    `Gelesen: ${quoted(text)}; #${size}-${asNumber} und ${size}-${asInches} stehen beide in ${series}: Schreibe eines von beiden.`,
  'inches-without-unit': ({ text, size, n: count, most }) =>
    `Gelesen: ${quoted(text)}; ohne Einheit wären das ${n(size)} in, und über ${n(most)} in muss die Einheit dastehen: Schreibe M${n(count)} oder ${n(count)} mm × 1,1 mm für Millimeter, ${n(count)} in-12 für Zoll.`,
  'series-with-free-thread': ({ text, series }) =>
    `Gelesen: ${quoted(text)}; zur Reihe ${series} gehören eine Zollgröße und Gänge je Zoll: Schreibe es wie 3/8-16 UNC.`,
  'diameter-without-pitch': ({ text }) =>
    `Gelesen: ${quoted(text)}, ein Durchmesser ohne Teilung: Schreibe beide, wie 12 mm × 1,1 mm.`,
  'not-in-series': ({ text, series, label, size }) =>
    `Gelesen: ${quoted(text)}, das nicht in ${series} steht: ${
      size
        ? `${size.label} hat ${offersOf(size)} Gänge je Zoll, schreibe eine davon`
        : `${label} ist keine ihrer Größen, lass also ${series} weg und schreibe die Gänge je Zoll`
    }.`,
  'size-without-tpi': ({ text, inch, metric }) =>
    `Gelesen: ${quoted(text)}, eine Größe ohne Gänge je Zoll: Schreibe sie auch, wie ${inch}${
      metric === undefined ? '' : `, oder ${n(metric)} für ein metrisches Gewinde`
    }.`,
} satisfies Partial<RefusalWords>;
