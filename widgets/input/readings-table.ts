/**
 * Readings as people paste them: a table of positions and indicator readings from a spreadsheet, a logger or by hand.
 *
 * Columns are parted by tabs, semicolons, commas or blanks, one kind in a table. The decimal mark is a point or a
 * comma, one kind in a table; thousands marks are not taken. A first line of words names the columns and their units:
 * `turns; reading (µm); direction`. Positions come in turns, flats (or other steps) or degrees; readings in any length.
 * Without a header the columns are position, reading and, where there is a third, direction. Lines left blank or begun
 * with # are passed over, but counted, so that a refusal names the line a text editor shows.
 *
 * Writing is by RFC 4180, October 2005, section 2: lines end with CR LF; a cell with a separator, a quote or a line
 * break in it stands in quotes, and quotes inside are doubled.
 * Out: turns (clockwise positive), readings in mm, direction of approach.
 */
import { columnsLeftOut, columnsSupposed, positionsSupposed, readingsSupposed } from '#words/texts.ts';
import {
  type Bad,
  bad,
  type Direction,
  good,
  mm,
  type PositionUnit,
  quoted,
  type ReadingRow,
  type Result,
  runToEnd,
  type Task,
  turns,
  UNITS,
  type Unit,
} from '../engine/index.ts';
import { unitNamed } from './quantity.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'steps-in-turn-odd': { readonly steps: number };
    'table-too-long': { readonly characters: number; readonly most: number };
    'table-of-other-kind': { readonly file: OtherKind };
    'table-not-text': Readonly<Record<never, never>>;
    'table-empty': Readonly<Record<never, never>>;
    'too-many-lines': { readonly lines: number; readonly most: number };
    'quote-unclosed': { readonly line: number; readonly text: string };
    'decimal-marks-mixed': { readonly comma: MarkedCell; readonly point: MarkedCell };
    'line-unread': {
      readonly line: number;
      readonly fault: LineFault;
      /** The next lines that are wrong as well, and how many there are beyond these. */
      readonly others: readonly number[];
      readonly more: number;
    };
    'header-alone': Readonly<Record<never, never>>;
    'column-twice': { readonly column: Kind; readonly first: string; readonly second: string };
    'position-unit-unknown': { readonly unit: string };
    'reading-unit-unknown': { readonly unit: string };
    'column-missing': {
      readonly header: string;
      readonly column: 'position' | 'reading';
      /** Whether nothing parts the columns. */
      readonly unparted: boolean;
    };
    'columns-without-names': {
      readonly width: number;
      /** Whether the commas between them may be decimal marks. */
      readonly commas: boolean;
    };
  }
}

export interface ReadingsTable {
  readonly rows: readonly ReadingRow[];
  readonly separator: 'tab' | 'semicolon' | 'comma' | 'blank';
  /** None where no number had a fraction. */
  readonly decimalMark: 'point' | 'comma' | 'none';
  readonly positionUnit: PositionUnit;
  readonly readingUnit: Unit;
  /** Whether the direction stood in a column or was taken from the order of the lines. */
  readonly directionFrom: 'column' | 'order';
  /** What the reader ought to know: units supposed, columns left out. */
  readonly notes: readonly string[];
}

export interface ReadingsOptions {
  /** Steps counted in a turn, where positions are flats or steps; 6 where left out. */
  readonly stepsPerTurn?: number;
  /** Units where the header names none; turns and µm where left out. */
  readonly positionUnit?: PositionUnit;
  readonly readingUnit?: Unit;
}

/** The largest paste taken: beyond it the page would stand still. */
export const MOST_CHARACTERS = 20_000_000;
export const MOST_ROWS = 250_000;

/** Reads the table; refuses files of another kind, mixed marks, and any line that is no reading, by its number. */
export const parseReadings = (text: string, options: ReadingsOptions = {}): Result<ReadingsTable> =>
  runToEnd(parseReadingsRun(text, options));

/** Rows read in one step. */
const ROWS_A_STEP = 5000;

/** Lines named besides the first that is wrong. */
const OTHERS_NAMED = 5;

/** The first cell with a decimal mark of one kind. */
interface MarkedCell {
  readonly line: number;
  readonly cell: string;
}

/** Why a line is no reading. */
type LineFault =
  | {
      readonly kind: 'width';
      readonly text: string;
      readonly columns: number;
      readonly wanted: number;
      /** Whether commas part the columns, which may be decimal marks. */
      readonly commas: boolean;
    }
  | { readonly kind: 'missing'; readonly column: 'position' | 'reading' }
  | { readonly kind: 'no number'; readonly column: 'position' | 'reading'; readonly cell: string }
  | { readonly kind: 'no direction'; readonly cell: string };

/** The same in steps of a few milliseconds. */
export function* parseReadingsRun(text: string, options: ReadingsOptions = {}): Task<Result<ReadingsTable>> {
  const steps = options.stepsPerTurn ?? 6;
  if (!(Number.isInteger(steps) && steps >= 1 && steps <= 10_000)) return bad('steps-in-turn-odd', { steps });
  const other = anotherKind(text);
  if (other !== undefined) return other;
  yield;
  const lines = linesOf(text);
  yield;
  const [first] = lines;
  if (first === undefined) return bad('table-empty', {});
  if (lines.length > MOST_ROWS) return bad('too-many-lines', { lines: lines.length, most: MOST_ROWS });
  const separator = separatorOf(lines);
  const split = splitter(separator);
  const head = split(first.text);
  if (head === undefined) return bad('quote-unclosed', first);
  // A header is all words; a line with a number in it is a reading, if perhaps a spoilt one.
  const named = !head.some((cell) => readCell(cell) !== undefined) && head.some((cell) => cell !== '');
  const columns = named ? columnsNamed(head, options, separator) : headless(head, options, separator);
  if (!columns.ok) return columns;
  const { position, reading, direction, positionUnit, readingUnit, width } = columns.value;
  const perTurn = positionUnit === 'turns' ? 1 : positionUnit === 'steps' ? steps : 360;
  const perReading = UNITS[readingUnit].factor;

  const positions: number[] = [];
  const readings: number[] = [];
  const directions: Direction[] = [];
  const numbers: number[] = [];
  let pointLine: MarkedCell | undefined;
  let commaLine: MarkedCell | undefined;
  const odd: { line: number; fault: LineFault }[] = [];
  for (const [i, { text: lineText, line }] of (named ? lines.slice(1) : lines).entries()) {
    if (i % ROWS_A_STEP === ROWS_A_STEP - 1) yield;
    const cells = split(lineText);
    if (cells === undefined) return bad('quote-unclosed', { line, text: lineText });
    if (cells.length !== width && !onlyTrailing(cells, width)) {
      const commas = separator === 'comma';
      odd.push({ line, fault: { kind: 'width', text: lineText, columns: cells.length, wanted: width, commas } });
      continue;
    }
    const at = readCell(cells[position] ?? '');
    const value = readCell(cells[reading] ?? '');
    if (commaLine === undefined || pointLine === undefined)
      for (const cell of [cells[position] ?? '', cells[reading] ?? '']) {
        if (cell.includes(',')) commaLine ??= { line, cell };
        if (cell.includes('.')) pointLine ??= { line, cell };
      }
    if (commaLine !== undefined && pointLine !== undefined)
      return bad('decimal-marks-mixed', { comma: commaLine, point: pointLine });
    if (at === undefined || value === undefined) {
      const column = at === undefined ? 'position' : 'reading';
      const cell = cells[at === undefined ? position : reading] ?? '';
      odd.push({ line, fault: cell === '' ? { kind: 'missing', column } : { kind: 'no number', column, cell } });
      continue;
    }
    if (direction !== undefined) {
      const sense = directionOf(cells[direction] ?? '');
      if (sense === undefined) {
        odd.push({ line, fault: { kind: 'no direction', cell: cells[direction] ?? '' } });
        continue;
      }
      directions.push(sense);
    }
    positions.push(at / perTurn);
    readings.push(value * perReading);
    numbers.push(line);
  }
  const [worst, ...alike] = odd;
  if (worst !== undefined) {
    const others = alike.slice(0, OTHERS_NAMED).map(({ line }) => line);
    return bad('line-unread', { ...worst, others, more: alike.length - others.length });
  }
  if (positions.length === 0) return bad('header-alone', {});
  yield;
  const senses = direction === undefined ? directionsFromOrder(positions) : directions;
  return good({
    rows: positions.map((at, i) => ({
      line: numbers[i] ?? 0,
      turns: turns(at),
      reading: mm(readings[i] ?? 0),
      direction: senses[i] ?? 'up',
    })),
    separator,
    decimalMark: commaLine !== undefined ? 'comma' : pointLine !== undefined ? 'point' : 'none',
    positionUnit,
    readingUnit,
    directionFrom: direction === undefined ? 'order' : 'column',
    notes: columns.value.notes,
  });
}

/** Directions from the order of the readings, for a list without a column of them: risen is up, fallen is down. */
export const directionsFromOrder = (positions: readonly number[]): readonly Direction[] => {
  const first = positions.findIndex((v, i) => i > 0 && v !== positions[i - 1]);
  let direction: Direction = (positions[first] ?? 0) < (positions[first - 1] ?? 0) ? 'down' : 'up';
  return positions.map((v, i) => {
    const before = positions[i - 1];
    // The same place again, or the first: as the one before, for nothing says otherwise.
    if (before !== undefined && v !== before) direction = v > before ? 'up' : 'down';
    return direction;
  });
};

/** How the text is written out; a comma as decimal mark needs another separator to be readable, and gets quotes if not. */
export interface CsvStyle {
  readonly separator?: ',' | ';' | '\t';
  readonly decimalMark?: '.' | ',';
}

/**
 * Text for a cell that a spreadsheet shows and does not work out: what begins like a formula gets an apostrophe in front. A number
 * with its sign, and a unit after it, is none.
 */
export const notFormula = (text: string): string =>
  /^[\s\0]*[=+\-@]/.test(text) && !/^[+-]\d+(?:[.,]\d+)?(?:e[+-]?\d+)?(?:[ \u00a0]?(?:%|°|[\p{L}·/]+))?$/iu.test(text)
    ? `'${text}`
    : text;

/** A table as RFC 4180 text. A number without value is an empty cell; no cell of words is a formula. */
export const toCsv = (
  header: readonly string[],
  rows: readonly (readonly (string | number)[])[],
  { separator = ',', decimalMark = '.' }: CsvStyle = {},
): string => {
  const cell = (value: string | number): string => {
    const text =
      typeof value === 'string'
        ? notFormula(value)
        : Number.isFinite(value)
          ? String(value).replace('.', decimalMark)
          : '';
    return text.includes(separator) || /["\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  };
  return [header, ...rows].map((row) => `${row.map(cell).join(separator)}\r\n`).join('');
};

/**
 * Readings written so that parseReadings takes them back, one a line: `turns; reading (µm); direction`. Numbers go out
 * in the units named, with the digits they have.
 */
export const writeReadingsTable = (
  rows: readonly Pick<ReadingRow, 'turns' | 'reading' | 'direction'>[],
  { readingUnit = 'µm', positionUnit = 'turns', stepsPerTurn = 6 }: ReadingsOptions = {},
): string => {
  const perTurn = positionUnit === 'turns' ? 1 : positionUnit === 'steps' ? stepsPerTurn : 360;
  const { factor } = UNITS[readingUnit];
  const number = (x: number) => String(Number(x.toPrecision(12)));
  return [
    `${positionUnit === '°' ? 'degrees' : positionUnit}; reading (${readingUnit}); direction`,
    ...rows.map((row) => `${number(row.turns * perTurn)}; ${number(row.reading / factor)}; ${row.direction}`),
  ].join('\n');
};

interface Line {
  readonly line: number;
  readonly text: string;
}

const linesOf = (text: string): readonly Line[] => {
  const found: Line[] = [];
  // The byte order mark that spreadsheets put first counts as a blank and goes with the trimming.
  text.split(/\r\n|\n|\r/).forEach((line, i) => {
    // Separators alone are the empty rows of a spreadsheet.
    if (!/^[;,\s]*(?:#|$)/.test(line)) found.push({ line: i + 1, text: line });
  });
  return found;
};

type OtherKind = 'packed' | 'pdf' | 'rtf' | 'xml' | 'json';

/** Files that are no table, by their first characters; what is no text at all shows itself by control characters. */
const OTHER_KINDS: readonly (readonly [RegExp, OtherKind])[] = [
  [/^PK/, 'packed'],
  [/^%PDF/, 'pdf'],
  [/^\{\\rtf/, 'rtf'],
  [/^<(!doctype|html|\?xml|svg|table)/i, 'xml'],
  [/^[{[]/, 'json'],
];

const anotherKind = (text: string): Bad | undefined => {
  if (!(text.length <= MOST_CHARACTERS))
    return bad('table-too-long', { characters: text.length, most: MOST_CHARACTERS });
  const start = text.slice(0, 200).trimStart();
  for (const [signature, file] of OTHER_KINDS) if (signature.test(start)) return bad('table-of-other-kind', { file });
  return hasControlCharacter(text) ? bad('table-not-text', {}) : undefined;
};

/** A character below the blank that is no tab or line break, or the mark of a byte that could not be read as text. */
const hasControlCharacter = (text: string): boolean => {
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if ((code < 32 && !(code >= 9 && code <= 13)) || code === 0xfffd) return true;
  }
  return false;
};

type Separator = ReadingsTable['separator'];

/** The separator, by the first lines: a tab or a semicolon can’t be anything else; a comma can be a decimal mark. */
const separatorOf = (lines: readonly Line[]): Separator => {
  const sample = lines.slice(0, 20).map(({ text }) => text);
  if (sample.some((text) => text.trim().includes('\t'))) return 'tab';
  if (sample.some((text) => text.includes(';'))) return 'semicolon';
  // Two numbers with nothing but blanks between them, and the commas inside the numbers.
  const blank = /^\s*[+\-−–]?[\d.,]*\d\s+[+\-−–]?[\d.,]*\d/;
  return sample.some((text) => text.includes(',')) && !sample.some((text) => blank.test(text)) ? 'comma' : 'blank';
};

const MARK: Record<Exclude<Separator, 'blank'>, string> = { tab: '\t', semicolon: ';', comma: ',' };

/** Cells of a line, trimmed; undefined where a quote is not closed. */
const splitter = (separator: Separator): ((line: string) => readonly string[] | undefined) => {
  if (separator === 'blank') return (line) => blankCells(line);
  const mark = MARK[separator];
  return (line) => (line.includes('"') ? quotedCells(line, mark) : line.split(mark).map((cell) => cell.trim()));
};

/** Blanks part the cells, except before a unit in brackets: `reading (µm)` is one cell. */
const blankCells = (line: string): readonly string[] => line.trim().split(/\s+(?![([])/);

const quotedCells = (line: string, mark: string): readonly string[] | undefined => {
  const cells: string[] = [];
  let cell = '';
  let inside = false;
  for (let i = 0; i < line.length; i++) {
    const c = line[i];
    if (inside) {
      if (c !== '"') cell += c;
      else if (line[i + 1] === '"') {
        cell += '"';
        i++;
      } else inside = false;
    } else if (c === '"' && cell.trim() === '') {
      inside = true;
      cell = '';
    } else if (c === mark) {
      cells.push(cell.trim());
      cell = '';
    } else cell += c;
  }
  return inside ? undefined : [...cells, cell.trim()];
};

/** A plain decimal number, with point or comma; undefined where it is none. Beyond 1e9 it is no reading. */
const readCell = (cell: string): number | undefined => {
  // Most cells are this plain, and a table may hold a hundred thousand.
  if (/^-?\d{1,9}(?:\.\d+)?$/.test(cell)) return Number(cell);
  const text = cell.replace(/^[−–]/, '-').replace(',', '.');
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i.test(text)) return undefined;
  const value = Number(text);
  return Math.abs(value) <= 1e9 ? value : undefined;
};

const UP = new Set(['up', 'u', 'rising', 'out', 'forward', 'clockwise', 'cw', '+', '↑']);
const DOWN = new Set([
  'down',
  'd',
  'falling',
  'back',
  'backward',
  'anticlockwise',
  'counterclockwise',
  'ccw',
  '-',
  '−',
  '↓',
]);

const directionOf = (cell: string): Direction | undefined => {
  const word = cell.toLowerCase();
  return UP.has(word) ? 'up' : DOWN.has(word) ? 'down' : undefined;
};
const isDirection = (cell: string): boolean => directionOf(cell) !== undefined;

interface Columns {
  readonly position: number;
  readonly reading: number;
  readonly direction: number | undefined;
  readonly positionUnit: PositionUnit;
  readonly readingUnit: Unit;
  readonly width: number;
  readonly notes: readonly string[];
}

/** Words that name a column of positions, with the unit they imply. */
const POSITION_WORDS: ReadonlyMap<string, PositionUnit | 'any'> = new Map([
  ['turns', 'turns'],
  ['turn', 'turns'],
  ['revs', 'turns'],
  ['rev', 'turns'],
  ['revolutions', 'turns'],
  ['flats', 'steps'],
  ['flat', 'steps'],
  ['steps', 'steps'],
  ['step', 'steps'],
  ['divisions', 'steps'],
  ['degrees', '°'],
  ['angle', 'any'],
  ['position', 'any'],
  ['n', 'any'],
  ['x', 'any'],
]);
const POSITION_UNITS: ReadonlyMap<string, PositionUnit> = new Map([
  ...[...POSITION_WORDS].filter((entry): entry is [string, PositionUnit] => entry[1] !== 'any'),
  ['°', '°'],
  ['deg', '°'],
  ['degree', '°'],
]);
const READING_WORDS = new Set([
  'reading',
  'readings',
  'indicator',
  'gauge',
  'gage',
  'dial',
  'height',
  'motion',
  'travel',
  'z',
  'y',
]);
const DIRECTION_WORDS = new Set(['direction', 'dir', 'approach', 'sense', 'up/down']);

type Kind = 'position' | 'reading' | 'direction';

/** What a column holds, by any one word of its name or, if it has none, by its unit. */
const kindOf = (name: string, unit: string): Kind | undefined => {
  const words = name.split(/\s+/);
  if (words.some((word) => DIRECTION_WORDS.has(word))) return 'direction';
  if (words.some((word) => READING_WORDS.has(word)) || (name === '' && isLength(unit))) return 'reading';
  return words.some((word) => POSITION_WORDS.has(word)) || (name === '' && POSITION_UNITS.has(unit))
    ? 'position'
    : undefined;
};

const columnsNamed = (head: readonly string[], options: ReadingsOptions, separator: Separator): Result<Columns> => {
  // Trailing empty cells are a spreadsheet’s, not columns.
  const cells = [...head];
  while (cells.at(-1) === '') cells.pop();
  const notes: string[] = [];
  const left: string[] = [];
  const places: Partial<Record<Kind, number>> = {};
  let positionUnit: PositionUnit | undefined;
  let readingUnit: Unit | undefined;
  for (const [i, cell] of cells.entries()) {
    const { name, unit } = nameAndUnit(cell);
    const kind = kindOf(name, unit);
    if (kind === undefined) {
      left.push(quoted(cell));
      continue;
    }
    const before = places[kind];
    if (before !== undefined) return bad('column-twice', { column: kind, first: cells[before] ?? '', second: cell });
    places[kind] = i;
    if (kind === 'position') {
      const own = name
        .split(/\s+/)
        .map((word) => POSITION_WORDS.get(word))
        .find((word) => word !== undefined);
      if (unit !== '' && !POSITION_UNITS.has(unit)) return bad('position-unit-unknown', { unit });
      positionUnit = unit !== '' ? POSITION_UNITS.get(unit) : own === 'any' ? undefined : own;
    }
    if (kind === 'reading' && unit !== '') {
      const found = unitNamed(unit);
      if (!(found !== undefined && isLength(unit))) return bad('reading-unit-unknown', { unit });
      readingUnit = found;
    }
  }
  const { position, reading, direction } = places;
  if (position === undefined || reading === undefined)
    return bad('column-missing', {
      header: head.join(' | '),
      column: position === undefined ? 'position' : 'reading',
      unparted: separator === 'blank' && cells.length === 1,
    });
  if (left.length > 0) notes.push(columnsLeftOut(left));
  if (positionUnit === undefined) notes.push(positionsSupposed(options.positionUnit ?? 'turns'));
  if (readingUnit === undefined) notes.push(readingsSupposed(options.readingUnit ?? 'µm'));
  return good({
    position,
    reading,
    direction,
    positionUnit: positionUnit ?? options.positionUnit ?? 'turns',
    readingUnit: readingUnit ?? options.readingUnit ?? 'µm',
    width: cells.length,
    notes,
  });
};

const headless = (cells: readonly string[], options: ReadingsOptions, separator: Separator): Result<Columns> => {
  const width = cells.findLastIndex((cell) => cell !== '') + 1;
  const third = width === 3 && isDirection(cells[2] ?? '');
  if (!(width === 2 || third))
    return bad('columns-without-names', { width, commas: separator === 'comma' && width > 2 });
  const positionUnit = options.positionUnit ?? 'turns';
  const readingUnit = options.readingUnit ?? 'µm';
  return good({
    position: 0,
    reading: 1,
    direction: third ? 2 : undefined,
    positionUnit,
    readingUnit,
    width,
    notes: [columnsSupposed(positionUnit, readingUnit)],
  });
};

/** `reading (µm)`, `reading [µm]`, `reading/µm`, `reading, µm`, or a name or a unit alone. */
const nameAndUnit = (cell: string): { readonly name: string; readonly unit: string } => {
  const text = cell.toLowerCase().trim();
  if (POSITION_WORDS.has(text) || READING_WORDS.has(text) || DIRECTION_WORDS.has(text)) return { name: text, unit: '' };
  if (isLength(text) || POSITION_UNITS.has(text)) return { name: '', unit: text };
  const found = /^([^([/,]*)(?:\(([^)]*)\)|\[([^\]]*)\]|[/,](.*))$/.exec(text);
  const unit = found?.[2] ?? found?.[3] ?? found?.[4] ?? '';
  return { name: (found?.[1] ?? text).trim(), unit: unit.trim() };
};

const isLength = (unit: string): boolean => {
  const found = unitNamed(unit);
  return found !== undefined && UNITS[found].base === 'mm';
};

/** A row that is right but for the empty cells a spreadsheet adds. */
const onlyTrailing = (cells: readonly string[], width: number): boolean =>
  cells.length > width && cells.slice(width).every((cell) => cell === '');
