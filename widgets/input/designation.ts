/**
 * Reads a thread as people write it, and writes it back in one canonical way.
 *
 * Metric `M10×1.5`, `M16×Ph3P1.5` (several starts by lead and pitch, ISO 965-1); Unified `3/8-16 UNC`, `#10-32 UNF`
 * (ASME B1.1); anything else of the 60° form as `12 mm × 1.1 mm`. After that the class (`-6g`, `-2A`), the starts of
 * an inch or free thread (` 2-start`), pitch diameters as measured (` d2 8.95 D2 9.1–9.12`) and ` LH`. Lengths in mm; hand +1 right, −1 left.
 *
 * Steps: tidy the characters; take off class, starts and hand; try metric, then inch or free; check the limits. What
 * can't be read gives one sentence. The length is bounded before any pattern runs.
 */

import { bad, good, type Result, symbolFact, type Thread } from '../engine/index.ts';
import { readInchOrFree } from './designation-inch.ts';
import { type Extras, finish } from './designation-limits.ts';
import { measuredOf, takeMeasured } from './designation-measured.ts';
import { isMetric, readMetric } from './designation-metric.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'thread-too-long': { readonly text: string; readonly most: number };
    'thread-empty': Readonly<Record<never, never>>;
    'two-threads': { readonly text: string };
    'thread-of-other-standard': { readonly text: string; readonly standard: OtherStandard };
    'pitch-or-tpi': { readonly text: string };
    'both-hands': { readonly text: string };
    'starts-unread': { readonly text: string; readonly most: number };
  }
}

/** A thread such as `M10x1.5`, `3/8-16 UNC-2A LH` or `12 x 1.1 mm, 2 start`, or one sentence that says how to mend it. */
export const readThread = (text: string): Result<Thread> => {
  if (!(text.length <= LONGEST_THREAD)) return bad('thread-too-long', { text, most: LONGEST_THREAD });
  let known = lately.get(text);
  if (known === undefined) {
    known = readNew(text);
    if (lately.size >= REMEMBERED) lately.clear();
    lately.set(text, known);
  }
  return known;
};

/** What was read lately: fields, parts and drawings of a page ask for the same few threads on every frame. */
const lately = new Map<string, Result<Thread>>();
const REMEMBERED = 200;

const readNew = (text: string): Result<Thread> => {
  const { rest, found } = takeMeasured(text);
  const tidied = tidy(rest);
  if (tidied === '') return bad('thread-empty', {});
  const thread = readOne(tidied, text);
  if (!thread.ok) return holdsTwo(tidied) ? bad('two-threads', { text }) : thread;
  return found.length === 0 ? thread : measuredOf(thread.value, found, text);
};

/** A free thread of several starts with both its pitch diameters measured. */
const LONGEST_THREAD = 100;

/** One spelling for each character and word: `M 10 х 1,5` becomes `M 10x1.5`, `1¼” – 7` becomes `1 1/4 in-7`. */
const tidy = (text: string): string =>
  text
    .replace(/["“”″]|''/g, ' in ')
    .replace(/[¼½¾⅐-⅞]/g, ' $&')
    .normalize('NFKC')
    .replace(/[\u200b-\u200f\u2060\ufeff]/g, '')
    .replace(/⁄/g, '/')
    .replace(/[×✕✖⨯*хХ]/g, 'x')
    .replace(/М/g, 'M')
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/,(?=\d)/g, '.')
    .replace(/[,;()[\]]/g, ' ')
    .replace(/threads?(?: per |\/)in(?:ch)?|t\.p\.i\.?/gi, 'tpi')
    .replace(/\b(?:inch(?:es)?|in\.)/gi, 'in')
    .replace(/millimet(?:re|er)s?/gi, 'mm')
    .replace(/\b(?:number|no|nr)\.? ?(?=\d)|# +/gi, '#')
    .replace(/(\d)([lr]h)\b/gi, '$1 $2')
    .replace(/(unr?(?:c|f|ef|s)?|n(?:c|f|ef))(?=\d)/gi, '$1 ')
    .replace(/\s+/g, ' ')
    .replace(/ ?([-/x]) ?(?=[\d.#mp-])/gi, '$1')
    .trim();

/** `text` is what was typed, for the refusal to quote. */
const readOne = (tidied: string, text: string): Result<Thread> => {
  const foreign = OTHER_STANDARDS.find(([pattern]) => pattern.test(tidied));
  if (foreign) return bad('thread-of-other-standard', { text, standard: foreign[1] });
  const extras = takeExtras(tidied, text);
  if (!extras.ok) return extras;
  const { core, called } = extras.value;
  const basic = isMetric(core) ? readMetric(core, text) : readInchOrFree(core, text);
  if (!basic.ok) return basic;
  // “x 8 thread” behind millimetres may be 8 to the inch: not to be guessed.
  return called && basic.value.kind === 'free' && !/(?:mm|in|tpi)$/i.test(core)
    ? bad('pitch-or-tpi', { text })
    : finish(basic.value, extras.value, text);
};

const holdsTwo = (tidied: string): boolean => {
  for (const { index, 0: mark } of tidied.matchAll(/ and | with |[ &+/]/gi)) {
    const first = tidied.slice(0, index).trim();
    // A series and half a fraction, “UNC 3” of “UNC 3/8”, is no thread.
    if (mark === '/' && /^[a-z]+[ -]\d+$/i.test(first)) continue;
    if (readOne(first, '').ok && readOne(tidied.slice(index + mark.length).trim(), '').ok) return true;
  }
  return false;
};

type OtherStandard = 'trapezoidal' | 'pipe' | 'whitworth' | 'association' | 'round' | 'root radius';

/** Threads people type that have another form; the flank angles are from memory. */
const OTHER_STANDARDS: readonly (readonly [RegExp, OtherStandard])[] = [
  [/^tr ?\d|trapez|acme/i, 'trapezoidal'],
  [/^(?:g|r|r[cps]) ?\d|bsp|np[ts]/i, 'pipe'],
  [/^w ?\d|bs[wf]|whitworth/i, 'whitworth'],
  [/(?:^|[^a-z])ba(?:$|[^a-z])/i, 'association'],
  [/^rd ?\d|^s ?\d|buttress|knuckle/i, 'round'],
  [/^mj|unj/i, 'root radius'],
];

// What may stand round a size: class, starts, hand.

const COUNTS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');
const MULTIPLES = 'single double triple quadruple quintuple sextuple'.split(' ');
const STARTS = new RegExp(
  `(?:^|[ -]+)(\\d{1,4}|twin|${COUNTS.join('|')}|${MULTIPLES.join('|')})[ -]?starts?(?![a-z])`,
  'i',
);
const HAND =
  /(?:^|[ -]+)(l\.?h|left(?:[ -]?hand(?:ed)?)?|r\.?h|right(?:[ -]?hand(?:ed)?)?)(?![a-z])\.?(?: threads?)?/gi;
const CLASS = /[ -]+(?:class |cl\.? ?)?((?:\d[a-z]){1,2}(?:\/(?:\d[a-z]){1,2})?)$/i;

const SERIES_FIRST = /^(unr?(?:c|f|ef|s)?|n(?:c|f|ef))[ :-]*(?=[#\d.m])(.*)$/i;
const CALLED_THREAD = /^thread[ :]+| thread$/i;

interface Taken extends Extras {
  /** Size and pitch, the series behind them. */
  readonly core: string;
  /** Whether the word “thread” stood beside them. */
  readonly called: boolean;
}

const takeExtras = (tidied: string, text: string): Result<Taken> => {
  const hands = new Set([...tidied.matchAll(HAND)].map(([, hand = '']) => hand.charAt(0).toLowerCase()));
  if (hands.size > 1) return bad('both-hands', { text });
  const handless = tidied.replace(HAND, '');
  const count = STARTS.exec(handless)?.[1]?.toLowerCase();
  const startless = handless.replace(STARTS, '');
  const most = symbolFact('N').max;
  const N = count === undefined ? undefined : countOf(count);
  if (/start/i.test(startless) || !(N === undefined || (N >= 1 && N <= most)))
    return bad('starts-unread', { text, most });
  const called = CALLED_THREAD.test(startless);
  const uncalled = startless.replace(CALLED_THREAD, '');
  const toleranceClass = CLASS.exec(uncalled)?.[1];
  const core = uncalled
    .replace(CLASS, '')
    .replace(/^[ -]+|[ -]+$/g, '')
    .replace(SERIES_FIRST, '$2 $1');
  return good({ core, called, h: hands.has('l') ? -1 : 1, N, toleranceClass });
};

const countOf = (word: string): number =>
  word === 'twin' ? 2 : Number(word) >= 0 ? Number(word) : 1 + Math.max(COUNTS.indexOf(word), MULTIPLES.indexOf(word));
