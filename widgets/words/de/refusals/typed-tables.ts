/** Warum eine eingegebene oder eingefügte Tabelle nicht zu lesen ist: Füße und ihre Ablesungen, Ablesungen eines Durchgangs. */
import { asRead, listed, quoted, type Refusals } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';
import { clause } from '../clause.ts';
import { inGerman } from '../lists.ts';

const typed = (text: string): string => inGerman('runs', text);

const SAVE_OR_COPY = 'Speichere die Ablesungen als CSV, oder kopiere die Spalten und füge sie hier ein.';
const NAME_LIKE = 'nenne die Spalten so: Umdrehungen; Ablesung (µm); Richtung.';
const COMMAS = 'wenn Kommas Dezimalzeichen sind, trenne die Spalten durch Semikolons oder Tabulatoren';

const FILES = {
  packed: 'eine Tabellenkalkulation oder eine andere gepackte Datei',
  pdf: 'eine PDF-Datei',
  rtf: 'eine RTF-Datei',
  xml: 'eine Webseite oder XML-Datei',
  json: 'eine JSON-Datei',
} as const;

const COLUMNS = { position: 'Stellung', reading: 'Ablesung', direction: 'Richtung' } as const;

const columns = (count: number): string => `${count} ${count === 1 ? 'Spalte' : 'Spalten'}`;

const faultOf = (fault: Refusals['line-unread']['fault']): string => {
  switch (fault.kind) {
    case 'width':
      return `${quoted(typed(fault.text))} hat ${columns(fault.columns)}, wo ${fault.wanted} sein sollten${fault.commas ? `; ${COMMAS}` : ''}`;
    case 'missing':
      return `die ${COLUMNS[fault.column]} fehlt`;
    case 'no number':
      return `die ${COLUMNS[fault.column]} ${quoted(typed(fault.cell))} ist keine Zahl`;
    case 'no direction':
      return `die Richtung ${quoted(typed(fault.cell))} ist nicht auf oder ab`;
  }
};

const likewise = (others: readonly number[], more: number): string => {
  if (others.length === 0) return '';
  const names = others.map(String);
  return ` (und ebenso ${others.length + more === 1 ? 'Zeile' : 'die Zeilen'} ${more > 0 ? `${names.join(', ')} und ${more} weitere` : listed(names)})`;
};

export const TYPED_TABLES = {
  'rows-too-long': ({ text, most }) =>
    `Gelesen: ${quoted(text)}; ${most} Zeichen sind hier die Grenze: Lass einige Zeilen weg.`,
  'length-beyond': ({ text }) => `Gelesen: ${quoted(text)}; gib eine Länge von −10 m bis 10 m.`,
  'foot-row-unread': ({ row, text, why }, behind) =>
    `Zeile ${row} der Füße lautet ${quoted(inGerman('feet', text))}; ${why ? clause(behind(why)) : 'gib x und y, wie 1: 0, 0.'}`,
  'listed-feet-not-three': ({ feet }) =>
    `Gelesen: ${feet} Füße; eine Platte wird auf genau drei ausgerichtet: Gib drei Zeilen, wie 1: 0, 0.`,
  'foot-twice': ({ name }) => `Zwei Füße heißen ${name}; nenne sie 1, 2 und 3.`,
  'foot-of-other-name': ({ name }) => `Ein Fuß heißt ${name}; nenne sie 1, 2 und 3.`,
  'stand-unread': ({ foot, why }, behind) => `Fuß ${foot}: ${behind(why)}`,
  'stand-beyond': ({ foot, text, most }) =>
    `Fuß ${foot}: gelesen ${quoted(inGerman('stands', text))}; gib seine Umdrehungen von der Mitte des Hubs, höchstens ${asRead(most)}.`,
  'reading-row-unread': ({ row, text, why }, behind) =>
    `Zeile ${row} der Ablesungen lautet ${quoted(inGerman('readings', text))}; ${why ? clause(behind(why)) : 'gib x, y und die Ablesung, wie 40, 20: −3 µm.'}`,
  'reading-unread': ({ row, why }, behind) => `Zeile ${row} der Ablesungen: ${behind(why)}`,
  'too-many-readings': ({ readings, most }) =>
    `Gelesen: ${readings} Ablesungen; ${most} sind hier die Grenze: Wenige, weit auseinander, sind so gut.`,
  'too-many-rounds': ({ rounds, most }) =>
    `Gelesen: ${rounds} Runden; ${most} werden hier behalten: Setze die letzten Ablesungen zuerst und beginne neu.`,
  'round-unread': ({ round, why }, behind) => `Runde ${round}: ${behind(why)}`,

  'steps-in-turn-odd': ({ steps }) =>
    `Gelesen: ${asRead(steps)} Schritte je Umdrehung; gib eine ganze Zahl von 1 bis 10 000, etwa 6.`,
  'table-too-long': ({ characters, most }) =>
    `Gelesen: ${characters} Zeichen; höchstens ${most} werden genommen: Lass einige Ablesungen weg.`,
  'table-of-other-kind': ({ file }) =>
    `Das sieht nach ${FILES[file]} aus, nicht nach einer Texttabelle. ${SAVE_OR_COPY}`,
  'table-not-text': () => `Darin stehen Zeichen, die kein Text hat; es ist also eine andere Datei. ${SAVE_OR_COPY}`,
  'table-empty': () =>
    'Nichts eingefügt; gib zwei Spalten, Umdrehungen und Ablesungen, mit einer Zeile für jede Ablesung.',
  'too-many-lines': ({ lines, most }) =>
    `Gelesen: ${lines} Zeilen; höchstens ${most} werden genommen: Lass einige Ablesungen weg.`,
  'quote-unclosed': ({ line, text }) =>
    `Zeile ${line}: ${quoted(text)} öffnet ein Anführungszeichen und schließt es nicht; berichtige es und füge neu ein.`,
  'decimal-marks-mixed': ({ comma, point }) =>
    `Zeile ${comma.line} hat ein Dezimalkomma (${quoted(comma.cell)}) und Zeile ${point.line} einen Dezimalpunkt (${quoted(point.cell)}); nimm überall ein Zeichen und keine Tausenderzeichen.`,
  'line-unread': ({ line, fault, others, more }) =>
    `Zeile ${line}: ${faultOf(fault)}${likewise(others, more)}; berichtige oder entferne sie und füge neu ein.`,
  'header-alone': () => 'Da ist ein Kopf und keine Ablesung darunter; füge die Ablesungen mit ein.',
  'column-twice': ({ column, first, second }) =>
    `Der Kopf hat zwei Spalten einer Art, ${quoted(typed(first))} und ${quoted(typed(second))}: Behalte eine Spalte (${COLUMNS[column]}) und entferne die andere oder benenne sie um.`,
  'position-unit-unknown': ({ unit }) =>
    `Der Kopf nennt ${quoted(typed(unit))} als Einheit der Stellungen; nimm Umdrehungen, Flächen oder °, und ${NAME_LIKE}`,
  'reading-unit-unknown': ({ unit }) =>
    `Der Kopf nennt ${quoted(typed(unit))} als Einheit der Ablesungen; nimm mm, µm, in, thou, tenths oder millionths, und ${NAME_LIKE}`,
  'column-missing': ({ header, column, unparted }) =>
    `Der Kopf ${quoted(typed(header))} hat keine hier bekannte Spalte mit ${column === 'position' ? 'Stellungen' : 'Ablesungen'}${
      unparted ? ', und nichts trennt seine Spalten' : ''
    }; ${NAME_LIKE}`,
  'columns-without-names': ({ width, commas }) =>
    `Die erste Zeile hat ${columns(width)} und keine Namen; zwei sind nötig, Umdrehungen und Ablesungen${commas ? ` (${COMMAS})` : ''}, oder ${NAME_LIKE}`,
} satisfies Partial<RefusalWords>;
