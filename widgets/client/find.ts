/** Looking through the index: every word that was typed must begin a word of what is found, but for the small words of a sentence. */
import { ONE_OF_MANY, SMALL_WORDS } from '#words/client.ts';
import type { Findable } from '../page/search-index.ts';

export interface Found {
  readonly entry: Findable;
  /** The text round the first word that was found, cut at words, in pieces; every second piece is what was typed. */
  readonly around: readonly string[];
}

/** One spelling for the Greek letter and the sign of a millionth, for ligatures and for capitals. */
const plain = (text: string): string => text.normalize('NFKC').toLowerCase();
const WORD = /[\p{L}\p{N}_]+/gu;
const wordsIn = (text: string): string[] => plain(text).match(WORD) ?? [];

/** Whether a word of the text is what was typed or goes on from it; “nuts” finds a nut too. */
const answers = (other: string, word: string): boolean => other.startsWith(word) || other === ONE_OF_MANY(word);

const BEFORE: Readonly<Record<Findable['kind'], number>> = { symbol: 30, term: 40, section: 0 };
/** A word that comes often counts for no more than this. */
const MOST = 6;
const ROUND = 60;
const MOST_SYMBOLS = 4;

export const find = (index: readonly Findable[], typed: string, most = 12): Found[] => {
  const words = [...new Set(wordsIn(typed))];
  const telling = words.filter((word) => !SMALL_WORDS.has(word));
  const asked = telling.length > 0 ? telling : words;
  if (asked.length === 0) return [];
  return index
    .flatMap((entry) => {
      const score = scoreOf(entry, asked);
      return score === undefined ? [] : [{ entry, score }];
    })
    .sort((a, b) => b.score - a.score)
    .filter(withFewSymbols())
    .slice(0, most)
    .map(({ entry }) => ({ entry, around: around(entry.text, asked) }));
};

/** A word like “lead” is in the names of dozens of symbols, which must not push the text out. */
const withFewSymbols = () => {
  let symbols = 0;
  return ({ entry }: { readonly entry: Findable }): boolean => entry.kind !== 'symbol' || ++symbols <= MOST_SYMBOLS;
};

const scoreOf = ({ title, page, text, kind, also = '' }: Findable, asked: readonly string[]): number | undefined => {
  const [heads, body, others] = [wordsIn(`${title} ${page}`), wordsIn(text), wordsIn(also)];
  let score = 0;
  for (const word of asked) {
    const named = heads.some((head) => head === word || head === ONE_OF_MANY(word))
      ? 20 + BEFORE[kind]
      : others.includes(word) || others.includes(ONE_OF_MANY(word))
        ? BEFORE[kind]
        : heads.some((head) => answers(head, word)) || others.some((other) => answers(other, word))
          ? 10
          : 0;
    const said = body.filter((other) => answers(other, word)).length;
    if (named + said === 0) return undefined;
    score += named + Math.min(said, MOST);
  }
  // Of two names that have the word, the shorter is more about it.
  return score - heads.length / 2;
};

const around = (text: string, asked: readonly string[]): string[] => {
  const hits = [...text.matchAll(WORD)].filter(([word]) => asked.some((one) => answers(plain(word), one)));
  const first = hits[0]?.index ?? 0;
  const from = first <= ROUND ? 0 : text.indexOf(' ', first - ROUND) + 1;
  const end = text.length <= from + 3 * ROUND ? text.length : text.lastIndexOf(' ', from + 3 * ROUND);
  const pieces: string[] = [];
  let at = from;
  for (const { 0: word, index } of hits) {
    if (index + word.length > end) break;
    pieces.push(text.slice(at, index), word);
    at = index + word.length;
  }
  pieces.push(text.slice(at, end));
  if (from > 0) pieces[0] = `… ${pieces[0]}`;
  if (end < text.length) pieces.push('', ' …');
  return pieces;
};
