/**
 * Inputs that are lists, typed as text: each with the reader that accepts or refuses it as a whole, and a note on what of an accepted text
 * is left out. What draws from such an input reads the text again with the engine’s own reader.
 */
import {
  bad,
  good,
  LONGEST_LIST,
  quoted,
  type Result,
  readFeet,
  readPartsList,
  readReadings,
  readRounds,
  readSeriesList,
  readThreadList,
} from '../engine/index.ts';

interface TextFact {
  readonly says: string;
  readonly read: (text: string) => Result<string>;
  /** What the reader ought to know about an accepted text; empty where there is nothing. */
  readonly note: (text: string) => string;
  /** Rows the field shows, where the list has one entry a row; one line where left out. */
  readonly rows?: number;
}

const tidied = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** One entry a row, however it was typed. */
const rowByRow = (text: string, between: RegExp): string =>
  text
    .split(between)
    .map(tidied)
    .filter((row) => row !== '')
    .join('\n');

export const TEXTS = {
  taps: {
    says: 'taps and dies you own',
    read: (text) => {
      const list = readThreadList(text);
      return list.ok ? good(tidied(text)) : list;
    },
    note: (text) => {
      const list = readThreadList(text);
      if (!list.ok || list.value.wrong.length === 0) return '';
      const { threads, wrong } = list.value;
      return `Left out: ${wrong.map((w) => quoted(w.typed)).join(', ')}; the other ${threads.length === 1 ? 'one is' : `${threads.length} are`} kept. ${wrong[0]?.reason}`;
    },
    rows: 2,
  },
  series: {
    says: 'series you would buy from',
    read: (text) => {
      const list = readSeriesList(text);
      return list.ok ? good(tidied(text)) : bad(list.reason);
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
  parts: {
    says: 'parts, each with count × price',
    read: (text) => {
      const list = readPartsList(text);
      return list.ok ? good(rowByRow(text, /[;\n]/)) : list;
    },
    note: (text) => {
      const list = readPartsList(text);
      return list.ok && list.value.unpriced.length > 0 ? `Without a price: ${list.value.unpriced.join(', ')}.` : '';
    },
    rows: 4,
  },
} as const satisfies Record<string, TextFact>;

export type TextName = keyof typeof TEXTS;
export const isText = (name: string): name is TextName => Object.hasOwn(TEXTS, name);

/** The longest text a field keeps. */
export const LONGEST_FIELD = LONGEST_LIST;
