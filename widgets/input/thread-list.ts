/**
 * Lists as a maker writes them: the taps and dies that are in the drawer, and the series one is willing to buy from.
 *
 * Threads are parted by commas, semicolons or lines. A comma between two digits may be a decimal mark (`M10×1,5`), so such a piece is first
 * read as one thread. What can't be read is told, sentence by sentence, and the others are kept.
 */

import {
  good,
  listed,
  quoted,
  type Result,
  SERIES_NAMES,
  type SeriesName,
  said,
  type Thread,
} from '../engine/index.ts';
import { reasonOf } from '../words/reason.ts';
import { readThread } from './designation.ts';

/** Longest list, in characters and in threads: a drawer, not a catalogue. */
export const LONGEST_LIST = 600;
const MOST_THREADS = 60;

export interface ThreadList {
  readonly threads: readonly Thread[];
  /** The pieces that are no thread, each with the sentence that says why. */
  readonly wrong: readonly { readonly typed: string; readonly reason: string }[];
}

/** The threads in a text; an empty text is an empty list. Refused as a whole only where it is too long or holds no thread at all. */
export const readThreadList = (text: string): Result<ThreadList> => {
  if (!(text.length <= LONGEST_LIST))
    return said(
      `Read ${quoted(text)}; a list is at most ${LONGEST_LIST} characters: name the threads you would use for this job.`,
    );
  const threads: Thread[] = [];
  const wrong: { typed: string; reason: string }[] = [];
  for (const piece of text.split(/[;\n]|,(?!\d)|,(?=\d+-)/)) {
    if (piece.trim() === '') continue;
    const whole = readThread(piece);
    for (const typed of whole.ok ? [piece] : piece.split(',')) {
      const read = readThread(typed);
      if (read.ok) threads.push(read.value);
      else wrong.push({ typed: typed.trim(), reason: reasonOf(read) });
    }
  }
  if (threads.length > MOST_THREADS)
    return said(`Read ${threads.length} threads; a list holds at most ${MOST_THREADS}: leave some out.`);
  if (threads.length === 0 && wrong.length > 0)
    return said(
      `${wrong[0]?.reason}${wrong.length > 1 ? ` None of the other ${wrong.length - 1} is a thread either.` : ''}`,
    );
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
  if (!(text.length <= LONGEST_LIST))
    return said(`Read ${quoted(text)}; name series, for example ${SERIES_NAMES[0]}, UNF.`);
  const found = new Set<SeriesName>();
  const pieces = text
    .split(/[,;\n]/)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '');
  if (pieces.length === 0) return said(`Nothing was typed; name series (${SERIES_NAMES.join(', ')}), or “none”.`);
  for (const piece of pieces) {
    const key = piece.toLowerCase().replace(/^(?:iso|metric) (?=coarse|fine)/, '');
    const names = SERIES_NAMES.filter((name) => name.toLowerCase() === key);
    const meant = names.length > 0 ? names : Object.hasOwn(ALSO, key) ? ALSO[key] : undefined;
    if (meant === undefined)
      return said(
        `Read ${quoted(piece)} as a series of threads, which is not one here: name ${listed(SERIES_NAMES.map(String))}, or metric, inch, all, none.`,
      );
    for (const name of meant) found.add(name);
  }
  return good(SERIES_NAMES.filter((name) => found.has(name)));
};
