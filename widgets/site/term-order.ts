/**
 * A term of the glossary that a chapter uses before the book has explained it. The glossary says where a term is explained, by its first
 * link; the map on the front page says in which order the chapters are read. A chapter that comes earlier may use the term once it has set
 * it bold or has linked to the chapter that explains it. The label of a number is a name and no sentence; its card says what it is.
 */
import { isSymbol } from '../engine/index.ts';
import type { Diagnostic } from './diagnostics.ts';
import { piecesOf } from './prose.ts';

export interface Term {
  /** As the glossary has it, and what it may look like in a sentence. */
  readonly says: string;
  readonly found: RegExp;
  /** The chapter that explains it, without number and ending. */
  readonly home: string;
}

/** Words that mean in a sentence what they mean anywhere, so that meeting one says nothing. */
const EVERYDAY = new Set(
  `accuracy adjuster approach base core divider flat guide hand home lifts lever pair reading settling stack stall starts
   step stone tip tips-over wedge yield in-line nested one-spindle two-nuts worst-case parts-you-have screws nuts hardware`.split(
    /\s+/,
  ),
);
const isEveryday = (form: string): boolean => EVERYDAY.has(form.replace(/\s+/g, '-'));

const slugOf = (file: string): string => file.replace(/^(?:.*\/)?(?:\d+[a-z]?-)?/, '').replace(/\.md.*$/, '');
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** The terms of the glossary that a chapter explains; an item without a link names what is explained nowhere. */
export const termsOf = (glossary: string): Term[] =>
  [...glossary.matchAll(/^- \*\*([^*]+)\*\*.*?\]\(([^)#]+\.md)/gm)].flatMap(([, names = '', to = '']) =>
    names
      .replace(/\s*\([^)]*\)/g, '')
      .split(/,\s*/)
      .map((name) => name.trim().toLowerCase())
      .filter((name) => !isEveryday(name))
      .map((name) => ({
        says: name,
        found: new RegExp(`(?<![\\p{L}-])${escaped(name)}(?:s|es)?(?![\\p{L}-])`, 'iu'),
        home: slugOf(to),
      })),
  );

/** The chapters in the order of the routes of the front page. */
export const readingOrder = (index: string): string[] => {
  const routes = /^```routes\n([\s\S]*?)^```/m.exec(index)?.[1] ?? '';
  return [...routes.matchAll(/^(\S+\.md)/gm)].map(([, file = '']) => slugOf(file));
};

/** What of the terms a chapter uses too early, each once, where it is first met. */
export const termsTooEarly = (
  file: string,
  text: string,
  terms: readonly Term[],
  order: readonly string[],
): Diagnostic[] => {
  const at = order.indexOf(slugOf(file));
  if (at < 0) return [];
  const lines = text.split('\n');
  const isLabel = (line: number): boolean => isSymbol(/^(\w+) = /.exec(lines[line - 1] ?? '')?.[1] ?? '');
  const pieces = piecesOf(text).filter((piece) => !piece.code && !piece.folded && !isLabel(piece.line));
  return terms.flatMap(({ says, found, home }) => {
    if (!(order.indexOf(home) > at)) return [];
    const first = pieces.findIndex((piece) =>
      found.test(piece.text.replace(/\{\{.*?\}\}/gs, '').replace(/\]\([^)]*\)/g, ']')),
    );
    const met = pieces[first];
    if (!met) return [];
    const explained = pieces
      .slice(0, first + 1)
      .some((piece) =>
        [...piece.text.matchAll(/\*\*([^*]+)\*\*|\]\(([^)#]+\.md)/g)].some(
          ([, bold, to]) => (bold !== undefined && found.test(bold)) || (to !== undefined && slugOf(to) === home),
        ),
      );
    return explained
      ? []
      : [
          {
            file,
            line: met.line,
            says: `“${says}” is explained later, in ${home}: say here in bold what it is, link there, or use another word.`,
          },
        ];
  });
};
