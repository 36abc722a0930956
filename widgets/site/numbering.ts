/**
 * Numbers of figures, examples and equations within a chapter (2.1, 2.2 …), and citing them: a link without words of its own,
 * `[](#example-foot-turn)` or `[](04-two-screws.md#figure-section)`, is given the number of what it leads to.
 */
import { cited, EXAMPLE_NUMBER, equationNumber, FIGURE_NUMBER } from '#words/page.ts';

export interface Label {
  readonly id: string;
  /** `2.1`; empty on a page that has no number of its own. */
  readonly number: string;
  /** As it stands at its place, and as it is cited. */
  readonly says: string;
}

export interface Numbering {
  /** What is cited under which words, by anchor. */
  readonly labels: ReadonlyMap<string, string>;
  figure(name: string): Label;
  example(id: string): Label;
  /** Undefined where the page has no numbers, since an equation is called nothing else. */
  equation(relation: string): Label | undefined;
}

/** The class of a link that is to be given a number. */
export const CITES = 'cites-number';

/** The number of a chapter, from the name of its file. */
export const numberOf = (file: string): number | undefined => {
  const number = /(?:^|\/)(\d+)[a-z]?-[^/]*\.md$/.exec(file)?.[1];
  return number === undefined ? undefined : Number(number);
};

export const createNumbering = (chapter: number | undefined): Numbering => {
  const labels = new Map<string, string>();
  const counts = { figure: 0, example: 0, equation: 0 };
  const label = (kind: keyof typeof counts, name: string, word: (number: string) => string): Label => {
    const plain = `${kind}-${name}`;
    let id = plain;
    for (let again = 2; labels.has(id); again++) id = `${plain}-${again}`;
    const number = chapter === undefined ? '' : `${chapter}.${++counts[kind]}`;
    const says = word(number);
    labels.set(id, says);
    return { id, number, says };
  };
  return {
    labels,
    figure: (name) => label('figure', name, (number) => cited(FIGURE_NUMBER, number)),
    example: (id) => label('example', id, (number) => cited(EXAMPLE_NUMBER, number)),
    equation: (relation) => (chapter === undefined ? undefined : label('equation', relation, equationNumber)),
  };
};

/** Gives every citation on a page its number; `labelsOf` has the labels of a page by its slug, or of this page for ''. */
export const withCitations = (
  html: string,
  labelsOf: (slug: string) => ReadonlyMap<string, string> | undefined,
): string =>
  html.replace(
    new RegExp(`<a href="([^"#]*?)(?:\\.html)?#([^"]*)" class="${CITES}"></a>`, 'g'),
    (all, slug: string, id: string) => {
      const says = labelsOf(slug)?.get(id);
      return says === undefined ? all : all.replace('></a>', `>${says}</a>`);
    },
  );

/** The pages that a text cites from. */
export const citedPages = (html: string): string[] => [
  ...new Set(
    [...html.matchAll(new RegExp(`<a href="([^"#]+)\\.html#[^"]*" class="${CITES}"></a>`, 'g'))].map(
      ([, slug = '']) => slug,
    ),
  ),
];
