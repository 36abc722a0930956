/**
 * Inputs that are lists, typed as text: each with the reader that accepts or refuses it as a whole, and a note on what of an accepted text
 * is left out. What draws from such an input reads the text again with the engine’s own reader.
 */

import { TEXT_WORDS } from '#words/choices.ts';
import { TOO_LONG_FOR_LINK, threadsLeftOut, waysLeftOut, withoutPrice } from '#words/texts.ts';
import { bad, good, quoted, type Result, runToEnd, type Task } from '../engine/index.ts';
import { reasonOf } from '../words/reason.ts';
import { dayIn } from './day.ts';
import { readDividers } from './dividers.ts';
import { readFeet, readReadings, readRounds, readStands } from './levelling-table.ts';
import { LONGEST_PARTS, readPartsList } from './parts-list.ts';
import { LONGEST_PASSPORTS, readPassports, tidyPassports } from './passports.ts';
import { LONGEST_TEXT } from './quantity.ts';
import { MOST_CHARACTERS, parseReadingsRun, type ReadingsTable } from './readings-table.ts';
import { LONGEST_LIST, readSeriesList, readThreadList } from './thread-list.ts';
import { LONGEST_TITLE, readTitleBlock } from './title-block.ts';
import { readWayPrices, WAY_NAMES } from './way-prices.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'note-too-long': { readonly characters: number; readonly most: number };
    'list-too-long': { readonly characters: number; readonly most: number };
    'not-a-day': { readonly text: string };
    'not-a-temperature': { readonly text: string };
    'adjuster-too-long': { readonly text: string; readonly most: number };
    'drawer-too-long': { readonly rows: number; readonly characters: number; readonly most: number };
  }
}

const LONGEST_LOG = 6000;
const LONGEST_TICKED = 600;

interface TextFact {
  readonly says: string;
  readonly read: (text: string) => Result<string>;
  /** What the reader ought to know about an accepted text; empty where there is nothing. */
  readonly note: (text: string) => string;
  /** Reads a long text ahead in steps, after which `read` answers at once. */
  readonly ahead?: (text: string) => Task<unknown>;
  /** Rows the field shows, where the list has one entry a row; one line where left out. */
  readonly rows?: number;
  /** The longest text that the reader takes, where it is more than of other lists. */
  readonly longest?: number;
}

const tidied = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** One entry a row, however it was typed. */
const rowByRow = (text: string, between: RegExp): string => rowsOf(text, between).join('\n');

/** A list on one line; rows typed one below the other stay apart. */
const onOneLine = (text: string): string =>
  rowsOf(text, /\n/)
    .map((row) => row.replace(/[ ,;]+$/, ''))
    .filter((row) => row !== '')
    .join('; ');

const rowsOf = (text: string, between: RegExp): readonly string[] =>
  text
    .split(between)
    .map(tidied)
    .filter((row) => row !== '');

/** Rows one a line; on one line, as a chapter has them, they are parted by bars. */
const linesOf = (text: string): string =>
  text.includes('\n')
    ? text
    : text
        .split('|')
        .map((row) => row.trim())
        .join('\n');

/** The last table read: the field, its note and the figures ask for the same one after another. */
interface LastRuns {
  readonly text: string;
  readonly table: Result<ReadingsTable>;
}
let lastRuns: LastRuns | undefined;

/** Readings of a run up and down, positions in turns unless the header says flats of a hexagon or degrees. */
const readRuns = (typed: string): Result<ReadingsTable> => runToEnd(readRunsInSteps(typed));

export function* readRunsInSteps(typed: string, stepsPerTurn = 6): Task<Result<ReadingsTable>> {
  const text = linesOf(typed);
  // Another count of steps only matters to a table that is counted in them.
  if (stepsPerTurn !== 6) return yield* parseReadingsRun(text, { stepsPerTurn });
  if (lastRuns?.text !== text) {
    const table = yield* parseReadingsRun(text);
    lastRuns = { text, table };
    return table;
  }
  return lastRuns.table;
}

const LONGEST_NOTE = 300;

const readNote = (text: string): Result<string> =>
  text.length <= LONGEST_NOTE
    ? good(tidied(text))
    : bad('note-too-long', { characters: text.length, most: LONGEST_NOTE });

/** What was typed for a day or a temperature; a longer text is none, whatever stands in it. */
const oneLine = (text: string): string => (text.length <= LONGEST_TEXT ? tidied(text) : text);

/** A day of the calendar, or none yet. */
const readDate = (text: string): Result<string> => {
  const typed = oneLine(text);
  if (typed === '') return good('');
  const day = dayIn(typed);
  return day === undefined ? bad('not-a-day', { text: typed }) : good(day);
};

/** °C or °F; a bare number is °C. */
const readTemperature = (text: string): Result<string> => {
  const typed = oneLine(text);
  if (typed === '') return good('');
  const [, number = '', unit] = /^([+−-]?\d+(?:[.,]\d+)?) ?(?:°? ?([CF]))?$/i.exec(typed) ?? [];
  const value = Number(number.replace('−', '-').replace(',', '.'));
  const [low, high] = unit?.toUpperCase() === 'F' ? [0, 140] : [-20, 60];
  return number !== '' && value >= low && value <= high
    ? good(`${number.replace(',', '.').replace('-', '−')} °${unit?.toUpperCase() ?? 'C'}`)
    : bad('not-a-temperature', { text: typed });
};

/** Ten rows of some length; a link still carries it. */
export const LONGEST_ADJUSTER = 2000;
/** What stands in a field of parts that may be left empty, where no parts are stated. */
export const NO_PARTS = 'none';
/** What stands in a field of readings before there are any. */
export const NO_READINGS = 'none';
/** Five hundred rows; a link carries the first fifty or so. */
export const LONGEST_DRAWER = 60_000;

export const TEXTS = {
  taps: {
    says: 'taps and dies you own',
    read: (text) => {
      const list = readThreadList(text);
      return list.ok ? good(onOneLine(text)) : list;
    },
    note: (text) => {
      const list = readThreadList(text);
      if (!list.ok || list.value.wrong.length === 0) return '';
      const { threads, wrong } = list.value;
      return threadsLeftOut(
        wrong.map((w) => quoted(w.typed)),
        threads.length,
        wrong[0] ? reasonOf(wrong[0].why) : '',
      );
    },
    rows: 2,
  },
  series: {
    says: 'series you would buy from',
    read: (text) => {
      const list = readSeriesList(text);
      return list.ok ? good(onOneLine(text)) : list;
    },
    note: () => '',
  },
  dividers: {
    says: 'other dividers at hand',
    read: (text) => {
      const list = readDividers(text);
      return list.ok ? good(onOneLine(text)) : list;
    },
    note: () => '',
  },
  feet: {
    says: 'feet: x, y of each',
    read: (text) => {
      const feet = readFeet(text);
      return feet.ok ? good(rowByRow(text, /[;\n]/)) : feet;
    },
    note: () => '',
    rows: 3,
  },
  readings: {
    says: 'readings: x, y and what the indicator shows there',
    read: (text) => {
      const readings = readReadings(text);
      return readings.ok ? good(rowByRow(text, /[;\n]/)) : readings;
    },
    note: () => '',
    rows: 5,
  },
  rounds: {
    says: 'next rounds: new readings at the same places, one row a round',
    read: (text) => {
      const rounds = readRounds(text);
      return rounds.ok ? good(rowByRow(text, /[|\n]/)) : rounds;
    },
    note: () => '',
    rows: 3,
  },
  stands: {
    says: 'where each foot stands: turns from the middle of its stroke, clockwise plus',
    read: (text) => {
      const stands = readStands(text);
      return stands.ok ? good(rowByRow(text, /[;\n]/)) : stands;
    },
    note: () => '',
    rows: 3,
  },
  runs: {
    says: 'readings: turns, indicator, up or down',
    read: (text) => {
      if (tidied(text.slice(0, 20)) === NO_READINGS) return good(NO_READINGS);
      const table = readRuns(text);
      return table.ok ? good(linesOf(text)) : table;
    },
    note: (text) => {
      const table = readRuns(text);
      return table.ok ? [...table.value.notes, ...(isCarried(text) ? [] : [TOO_LONG_FOR_LINK])].join(' ') : '';
    },
    ahead: readRunsInSteps,
    rows: 10,
    longest: MOST_CHARACTERS,
  },
  dated: {
    says: 'date, like 2026-03-31',
    read: readDate,
    note: () => '',
  },
  warmth: {
    says: 'temperature of part and stand, like 20.5 °C',
    read: readTemperature,
    note: () => '',
  },
  piece: { says: 'piece, with its mark', read: readNote, note: () => '' },
  gauge: { says: 'indicator, with its mark and its own certificate', read: readNote, note: () => '', rows: 2 },
  method: { says: 'method', read: readNote, note: () => '', rows: 3 },
  parts: {
    says: 'parts, each with count × price',
    read: (text) => {
      const list = readPartsList(text);
      return list.ok ? good(rowByRow(text, /[;\n]/)) : list;
    },
    note: (text) => {
      const list = readPartsList(text);
      return list.ok && list.value.unpriced.length > 0 ? withoutPrice(list.value.unpriced.map(quoted)) : '';
    },
    rows: 4,
    longest: LONGEST_PARTS,
  },
  prices: {
    says: 'your prices: way: count × price',
    read: (text) => {
      const list = readWayPrices(text);
      return list.ok ? good(rowByRow(text, /[;\n]/)) : list;
    },
    note: (text) => {
      const list = readWayPrices(text);
      return list.ok && list.value.unknown.length > 0 ? waysLeftOut(list.value.unknown.map(quoted), WAY_NAMES) : '';
    },
    rows: 5,
    longest: LONGEST_PARTS,
  },
  adjuster: {
    says: 'adjuster, a part a line',
    // Rows only: what they mean is read above this room, where parts are put together (assembly/adjuster/text.ts).
    read: (text) =>
      text.length <= LONGEST_ADJUSTER
        ? good(rowByRow(text, /[|\n]/))
        : bad('adjuster-too-long', { text, most: LONGEST_ADJUSTER }),
    note: () => '',
    rows: 7,
    longest: LONGEST_ADJUSTER,
  },
  // Read in the figure alone, which says what is wrong: pages without it need no reader of logs.
  settled: {
    says: 'readings after a setting: time; indicator; temperature',
    read: (text) =>
      text.length > LONGEST_LOG
        ? bad('list-too-long', { characters: text.length, most: LONGEST_LOG })
        : good(rowByRow(text, /[|\n]/)),
    note: (text) => (isCarried(text) ? '' : TOO_LONG_FOR_LINK),
    rows: 8,
    longest: LONGEST_LOG,
  },
  ticked: {
    says: 'steps that are done, by their names',
    read: (text) =>
      text.length <= LONGEST_TICKED
        ? good(rowsOf(text, /[;\n]/).join('; '))
        : bad('list-too-long', { characters: text.length, most: LONGEST_TICKED }),
    note: () => '',
    rows: 2,
  },
  passport: {
    says: 'passports of the pieces, a day a line',
    read: (text) => {
      if (text.length > LONGEST_PASSPORTS)
        return bad('list-too-long', { characters: text.length, most: LONGEST_PASSPORTS });
      const entries = readPassports(text);
      return entries.ok ? good(tidyPassports(text)) : entries;
    },
    note: (text) => (isCarried(text) ? '' : TOO_LONG_FOR_LINK),
    rows: 5,
    longest: LONGEST_PASSPORTS,
  },
  title: {
    says: 'title block, a field a line',
    read: (text) => {
      if (text.length > LONGEST_TITLE) return bad('list-too-long', { characters: text.length, most: LONGEST_TITLE });
      const block = readTitleBlock(text);
      return block.ok ? good(rowByRow(text, /[|\n]/)) : block;
    },
    note: () => '',
    rows: 5,
    longest: LONGEST_TITLE,
  },
  hardware: {
    says: 'parts in the drawer, one a line',
    // Rows only, as of an adjuster; which are left out is told with the picture (assembly/drawer).
    read: (text) =>
      text.length <= LONGEST_DRAWER
        ? good(rowByRow(text, /[|\n]/))
        : bad('drawer-too-long', { rows: text.split('\n').length, characters: text.length, most: LONGEST_DRAWER }),
    note: (text) => (isCarried(text) ? '' : TOO_LONG_FOR_LINK),
    rows: 9,
    longest: LONGEST_DRAWER,
  },
} as const satisfies Record<string, TextFact>;

export type TextName = keyof typeof TEXTS;
export const isText = (name: string): name is TextName => Object.hasOwn(TEXTS, name);

/** What a list is of, as its field says it. */
export const textSays = (name: TextName): string => TEXT_WORDS[name] ?? TEXTS[name].says;

/** A text longer than this, in characters, is read in slices: a shorter one takes no longer than a slice. */
export const LONG_TEXT = 60_000;

/** The reading ahead that a long text needs, or undefined where it can be read at once. */
export const aheadOf = (name: TextName, text: string): Task<unknown> | undefined => {
  const fact: TextFact = TEXTS[name];
  return text.length > LONG_TEXT ? fact.ahead?.(text) : undefined;
};

/** The longest text the reader of this list takes. */
export const longestOf = (name: TextName): number => {
  const fact: TextFact = TEXTS[name];
  return fact.longest ?? LONGEST_LIST;
};

/** The longest text that an address or a kept design carries: browsers and servers cut off longer ones. */
export const MOST_CARRIED = 2400;
export const isCarried = (text: string): boolean => text.length <= MOST_CARRIED;
