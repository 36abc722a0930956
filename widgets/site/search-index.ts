/**
 * The index of the search, made when the site is built: the plain text of every section, every term and every symbol. The book is
 * some hundred thousand letters, so looking through them all takes a browser a few milliseconds and no table of words is needed.
 */
import { parseHTML } from 'linkedom';
import { OTHER_WORDS } from '#words/other-words.ts';
import { alsoLookedFor, symbolFound } from '#words/page.ts';
import { isSymbol, symbolFact } from '../engine/index.ts';
import type { Findable } from '../page/search-index.ts';
import { setSymbol, typeset } from './expression.ts';
import type { MetAt } from './symbols-met.ts';
import { termId } from './terms.ts';

/** What a page shows besides its text: pictures, fields, numbers, algebra; and answers, which a search must not give away. */
const NO_TEXT =
  'svg, math, summary, .inputs, .stage, .numbers-behind, .calculation .heads, .in-numbers, .attempt, .reveal, .hint, .worked';

export const searchIndex = (
  places: readonly { readonly slug: string; readonly kind: string; readonly title: string }[],
  rendered: ReadonlyMap<string, { readonly html: string }>,
  met: ReadonlyMap<string, MetAt>,
): Findable[] => [
  ...places.flatMap(({ slug, kind, title }) =>
    sectionsOf(slug, title, rendered.get(slug)?.html ?? '', kind === 'help'),
  ),
  ...[...met].flatMap(([name, at]): Findable[] =>
    isSymbol(name)
      ? [
          {
            href: `glossary.html#symbol-${name}`,
            page: typeset(setSymbol(name)).replace(/<[^>]*>/g, ''),
            title: symbolFact(name).says,
            text: symbolFound(name, at.says),
            kind: 'symbol',
          },
        ]
      : [],
  ),
];

/** Printed text without these elements and what stands in them, a drawing within a drawing too. */
const without = (html: string, tag: string): string => {
  let [kept, depth, from] = ['', 0, 0];
  for (const { 0: mark, index } of html.matchAll(new RegExp(`<${tag}\\b[^>]*>|</${tag}>`, 'g'))) {
    const closes = mark.startsWith('</');
    if (depth === 0 && !closes) kept += html.slice(from, index);
    depth += closes ? -1 : 1;
    if (depth === 0) from = index + mark.length;
  }
  return kept + html.slice(from);
};

/** Longer algebra than this, and a fraction or a root, is not to be read without its layout. */
const LONGEST_ALGEBRA = 24;

/** Algebra within a sentence by its letters, so that the sentence has no holes. */
const inWords = (html: string): string =>
  html.replace(/<math\b[^>]*>([\s\S]*?)<\/math>/g, (_, set: string) => {
    const letters = /<m(?:frac|sqrt|root)\b/.test(set)
      ? ''
      : set
          .replace(/<[^>]*>/g, '')
          .replace(/\s+/g, ' ')
          .trim();
    return letters !== '' && letters.length <= LONGEST_ALGEBRA ? `<i>${letters}</i>` : ' … ';
  });

/** A page by its second headings; on a page that helps the items of a list are terms. */
const sectionsOf = (slug: string, page: string, html: string, terms: boolean): Findable[] => {
  // Pictures and algebra are most of a page, and cost most to read.
  const bare = without(inWords(html), 'svg');
  const { document } = parseHTML(`<!doctype html><html><body>${bare}</body></html>`);
  for (const element of document.querySelectorAll(NO_TEXT)) element.remove();
  // Words of neighbouring boxes are no one word.
  // A result is set in two parts, before and behind its point.
  for (const element of document.querySelectorAll('p, li, td, th, dt, dd, div, h3, span'))
    if (!element.parentElement?.matches('.result')) element.append(' ');
  const found: Findable[] = [];
  let [anchor, title, text] = ['', page, ''];
  const close = () => {
    const plain = text
      .replace(/\s+/g, ' ')
      .replace(/ (?=[,.;:)?!])/g, '')
      .trim();
    if (plain !== '')
      found.push({
        href: `${slug}.html${anchor === '' ? '' : `#${anchor}`}`,
        page,
        title,
        text: plain,
        kind: 'section',
      });
    text = '';
  };
  for (const element of document.body.children) {
    if (element.tagName === 'H2') {
      close();
      [anchor, title] = [element.id, element.textContent ?? ''];
      continue;
    }
    const items = terms && element.tagName === 'UL' ? [...element.children] : [];
    for (const item of items) {
      const term = item.querySelector('strong')?.textContent;
      const says = (item.textContent ?? '').replace(/\s+/g, ' ');
      if (term) {
        const also = Object.hasOwn(OTHER_WORDS, term) ? OTHER_WORDS[term] : undefined;
        found.push({
          href: `${slug}.html#${termId(term)}`,
          page,
          title: term,
          text: also === undefined ? says : `${says} ${alsoLookedFor(also.replaceAll('; ', ', '))}`,
          kind: 'term',
          ...(also !== undefined && { also }),
        });
      }
    }
    if (items.length === 0 && element.tagName !== 'H1')
      text += ` ${[...element.childNodes].map((n) => n.textContent).join(' ')}`;
  }
  close();
  return found;
};
