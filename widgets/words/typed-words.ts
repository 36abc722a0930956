/**
 * Words that a reader types in a list, in his language and in the one form that links, design files and chapters keep, which is English. A list is
 * turned at the edge alone: what is typed becomes the kept form before it is read, and the kept form is shown in the words of the edition.
 * English words are nobody's own, so they are read in every edition.
 */

interface TypedWords {
  /** The kept word, the one that is shown for it, and any others that are read. */
  readonly words: readonly (readonly [kept: string, shown: string, ...also: string[]])[];
  /** Where a word is one of these: anywhere by default; else what stands beside it is the reader's own and stays. */
  readonly only?: 'by a number' | 'before =';
  /**
   * Whether its numbers bear the decimal mark of the language, which is then a comma; or only where a semicolon or a tab parts them, or where
   * no comma without a blank can part them, as the second one of 40,5,20 would.
   */
  readonly comma?: boolean | 'where parted' | 'where apart';
}

export interface TypedEdge {
  readonly toShown: (kept: string) => string;
  readonly toKept: (typed: string) => string;
}

const PLACES: Readonly<Record<'anywhere' | NonNullable<TypedWords['only']>, (word: string) => string>> = {
  anywhere: (word) => word,
  'by a number': (word) => `${word}(?=\\s*[+−-]?\\d)|(?<=\\d\\s?)${word}(?=\\s*(?:[,;|\\n]|$))`,
  'before =': (word) => `(?<=(?:^|[|\\n])\\s*)${word}(?=\\s*=)`,
};

const escaped = (word: string): string => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(' ', '\\s+');

/** Puts the second of each pair for the first, the longest first, so that a coupling nut is not a nut. */
const replacing = (
  pairs: readonly (readonly [from: string, to: string])[],
  only: keyof typeof PLACES,
): ((text: string) => string) => {
  let pattern: RegExp | undefined;
  if (pairs.length === 0) return (text) => text;
  const by = new Map(pairs.map(([from, to]) => [from.toLowerCase(), to]));
  return (text) => {
    if (pattern === undefined) {
      const words = [...by.keys()].sort((a, b) => b.length - a.length).map(escaped);
      pattern = new RegExp(PLACES[only](`(?<![\\p{L}\\p{N}_])(?:${words.join('|')})(?![\\p{L}\\p{N}_])`), 'giu');
    }
    return text.replace(pattern, (found) => by.get(found.toLowerCase().replace(/\s+/g, ' ')) ?? found);
  };
};

const pointed = (text: string): string => text.replace(/(?<![\d.,])(\d+),(\d+)(?![\d-])/g, '$1.$2');
const commaed = (text: string): string => text.replace(/(\d)\.(?=\d)/g, '$1,');

export const typedEdge = ({ words, only, comma = false }: TypedWords): TypedEdge => {
  const place = only ?? 'anywhere';
  const show = replacing(
    words.map(([kept, shown]) => [kept, shown]),
    place,
  );
  const keep = replacing(
    words.flatMap(([kept, ...own]) => own.map((word) => [word, kept] as const)),
    place,
  );
  const marked = (text: string) =>
    comma === 'where parted' ? /[;\t]/.test(text) : comma === 'where apart' ? !/\d,\d+,\d/.test(text) : comma;
  return {
    toShown: (kept) => show(marked(kept) ? commaed(kept) : kept),
    toKept: (typed) => keep(marked(typed) ? pointed(typed) : typed),
  };
};
