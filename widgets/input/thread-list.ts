/**
 * Lists as a maker writes them: the taps and dies that are in the drawer, and the series one is willing to buy from.
 *
 * Threads are parted by commas, semicolons or lines. A comma between two digits may be a decimal mark (`M10×1,5`), so such a piece is first
 * read as one thread. What can't be read is told, sentence by sentence, and the others are kept.
 */

import { type Bad, bad, good, type Result, SERIES_NAMES, type SeriesName, type Thread } from '../engine/index.ts';
import { readThread } from './designation.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'thread-list-too-long': { readonly text: string; readonly most: number };
    'too-many-threads': { readonly threads: number; readonly most: number };
    'no-thread-in-list': { readonly first: Bad; readonly others: number };
    'series-list-too-long': { readonly text: string };
    'series-empty': Readonly<Record<never, never>>;
    'series-unknown': { readonly typed: string };
  }
}

/** Longest list, in characters and in threads: a drawer, not a catalogue. */
export const LONGEST_LIST = 600;
const MOST_THREADS = 60;

export interface ThreadList {
  readonly threads: readonly Thread[];
  /** The pieces that are no thread, each with its refusal. */
  readonly wrong: readonly { readonly typed: string; readonly why: Bad }[];
}

/** The threads in a text; an empty text is an empty list. Refused as a whole only where it is too long or holds no thread at all. */
export const readThreadList = (text: string): Result<ThreadList> => {
  if (!(text.length <= LONGEST_LIST)) return bad('thread-list-too-long', { text, most: LONGEST_LIST });
  const threads: Thread[] = [];
  const wrong: { typed: string; why: Bad }[] = [];
  for (const piece of text.split(/[;\n]|,(?!\d)|,(?=\d+-)/)) {
    if (piece.trim() === '') continue;
    const whole = readThread(piece);
    for (const typed of whole.ok ? [piece] : piece.split(',')) {
      const read = readThread(typed);
      if (read.ok) threads.push(read.value);
      else wrong.push({ typed: typed.trim(), why: read });
    }
  }
  if (threads.length > MOST_THREADS) return bad('too-many-threads', { threads: threads.length, most: MOST_THREADS });
  const [first, ...others] = wrong;
  if (threads.length === 0 && first !== undefined)
    return bad('no-thread-in-list', { first: first.why, others: others.length });
  return good({ threads, wrong });
};

const ALSO: Readonly<Record<string, readonly SeriesName[]>> = {
  metric: ['coarse', 'fine'],
  iso: ['coarse', 'fine'],
  'iso 261': ['coarse', 'fine'],
  inch: ['UNC', 'UNF', 'UNEF'],
  unified: ['UNC', 'UNF', 'UNEF'],
  all: SERIES_NAMES,
  none: [],
};

/** Names of series, in any order, parted by commas: `coarse, UNF`; also metric, inch, all and none. */
export const readSeriesList = (text: string): Result<readonly SeriesName[]> => {
  if (!(text.length <= LONGEST_LIST)) return bad('series-list-too-long', { text });
  const found = new Set<SeriesName>();
  const pieces = text
    .split(/[,;\n]/)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '');
  if (pieces.length === 0) return bad('series-empty', {});
  for (const piece of pieces) {
    const key = piece.toLowerCase().replace(/^(?:iso|metric) (?=coarse|fine)/, '');
    const names = SERIES_NAMES.filter((name) => name.toLowerCase() === key);
    const meant = names.length > 0 ? names : Object.hasOwn(ALSO, key) ? ALSO[key] : undefined;
    if (meant === undefined) return bad('series-unknown', { typed: piece });
    for (const name of meant) found.add(name);
  }
  return good(SERIES_NAMES.filter((name) => found.has(name)));
};
