/** The book: its chapter files, rendered when they are asked for, cross-checked for links, and set into pages. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { CHAPTERS, WRITTEN_IN } from '#words/language.ts';
import { type Bank, makeBank } from '../exercises/bank.ts';
import type { CourseChapter } from '../exercises/plan.ts';
import type { Figure } from '../figures/kit/figure.ts';
import { CLASS_GLOBAL, type ClassData } from '../page/class-data.ts';
import { INDEX_GLOBAL } from '../page/search-index.ts';
import { adjustersIn } from './adjusters.ts';
import { outlineOf, type RenderedChapter, renderChapter } from './chapter.ts';
import { CHAPTER_FILE, pageHref } from './chapter-href.ts';
import type { Diagnostic } from './diagnostics.ts';
import { nearest } from './near.ts';
import { citedPages, withCitations } from './numbering.ts';
import { type Assets, type Place, pageHtml } from './page.ts';
import { stepFormula } from './render.ts';
import { withRoutes } from './routes.ts';
import { searchIndex } from './search-index.ts';
import { metOn, symbolsMet, withSymbols } from './symbols-met.ts';
import { withTermIds } from './terms.ts';

export interface Book {
  readonly places: readonly Place[];
  readonly rendered: ReadonlyMap<string, RenderedChapter>;
  readonly mistakes: readonly Diagnostic[];
  /** Every exercise of every chapter. */
  readonly bank: Bank;
}

/** Chapters as last rendered, by file, so that a saved chapter is the only one rendered again. */
export type RenderCache = Map<string, { readonly text: string; readonly page: RenderedChapter }>;

interface Source {
  /** As mistakes name it. */
  readonly file: string;
  readonly slug: string;
  readonly text: string;
  readonly kind: Place['kind'];
  readonly number: number | undefined;
  readonly foreign: boolean;
  /** The adjusters that it may name, and the text that has them. */
  readonly shared: ReturnType<typeof adjustersIn>;
}

/** Pages beside the chapters, where the book has them: the front, and what helps to find the way. */
const FRONT = 'index.md';
const HELPS: readonly string[] = ['review.md', 'ideas.md', 'symptoms.md', 'glossary.md'];

const kindOf = (name: string): Place['kind'] => (name === FRONT ? 'front' : HELPS.includes(name) ? 'help' : 'chapter');
const ORDER: readonly Place['kind'][] = ['front', 'chapter', 'help'];

/** The chapter of an edition in another language, where it is translated. */
const ownOf = (folder: string, name: string): string | undefined =>
  CHAPTERS !== '' && existsSync(join(folder, CHAPTERS, name)) ? `${CHAPTERS}/${name}` : undefined;

/**
 * `index.md`, every `NN-name.md` of a folder in the order of their numbers, and the pages that help. A chapter is numbered by its place in that order, so
 * `04b-name.md` comes between the fourth and the fifth, and those after it move on by one.
 */
const sourcesIn = (folder: string): readonly Source[] => {
  const shared = adjustersIn(folder);
  let chapters = 0;
  return readdirSync(folder)
    .filter((f) => kindOf(f) !== 'chapter' || CHAPTER_FILE.test(f))
    .sort((a, b) => ORDER.indexOf(kindOf(a)) - ORDER.indexOf(kindOf(b)) || a.localeCompare(b, 'en', { numeric: true }))
    .map((name) => ({ name, own: ownOf(folder, name) }))
    .map(({ name, own }) => ({
      file: `chapters/${own ?? name}`,
      slug: pageHref(name).replace(/\.html$/, ''),
      text: readFileSync(join(folder, own ?? name), 'utf8'),
      foreign: CHAPTERS !== '' && own === undefined,
      kind: kindOf(name),
      number: kindOf(name) === 'chapter' ? ++chapters : undefined,
      shared,
    }));
};

/** Its exercises go to papers and reviews without it, and take their language along. */
const inItsLanguage = (page: RenderedChapter): RenderedChapter => ({
  ...page,
  model: { ...page.model, exercises: page.model.exercises.map((exercise) => ({ ...exercise, lang: WRITTEN_IN })) },
});

const renderSource = (
  { file, text, shared, number, foreign }: Source,
  widgets: ReadonlyMap<string, Figure>,
  cache: RenderCache,
): RenderedChapter => {
  const known = cache.get(file);
  // A chapter is rendered again where an adjuster changed that it may name.
  const all = `${number}\n${shared.text}\n${text}`;
  const made = known?.text === all ? known.page : renderChapter(file, text, widgets, shared.adjusters, number);
  const page = foreign && made !== known?.page ? inItsLanguage(made) : made;
  cache.set(file, { text: all, page });
  return page;
};

/** Renders the whole book. */
export const readBook = (
  folder: string,
  widgets: ReadonlyMap<string, Figure>,
  cache: RenderCache = new Map(),
): Book => {
  const sources = sourcesIn(folder);
  const pages = sources.map((source) => ({ source, page: renderSource(source, widgets, cache) }));
  const rendered = new Map(pages.map(({ source, page }) => [source.slug, page]));
  return {
    places: pages.map(({ source: { slug, kind, number, foreign }, page: { title, goal } }) => ({
      slug,
      kind,
      title,
      goal,
      number,
      foreign,
    })),
    rendered,
    mistakes: inOrder([
      ...pages.flatMap(({ page }) => page.mistakes),
      ...sources.flatMap(({ file, slug }) => brokenLinks(file, slug, rendered, sources)),
      ...sameNames(sources, rendered),
      ...offTheMap(sources, rendered),
    ]),
    bank: makeBank(
      pages.map(({ source: { slug }, page: { title, model } }) => ({ slug, title, exercises: model.exercises })),
    ),
  };
};

/** As one goes through the files: file by file as they first come, and each from its top. */
const inOrder = (mistakes: readonly Diagnostic[]): readonly Diagnostic[] => {
  const files = [...new Set(mistakes.map(({ file }) => file))];
  return mistakes.toSorted((a, b) => files.indexOf(a.file) - files.indexOf(b.file) || a.line - b.line);
};

/** Renders one chapter that has not been, so that something else may be done between them; false where there is none. */
export const renderAnother = (folder: string, widgets: ReadonlyMap<string, Figure>, cache: RenderCache): boolean => {
  const next = sourcesIn(folder).find(({ file }) => !cache.has(file));
  if (next) renderSource(next, widgets, cache);
  return next !== undefined;
};

/**
 * One page, and no more of the book rendered than it takes: of the other chapters their titles, goals and minutes, unless the page
 * holds the exercises of all. Undefined where the book has no such page. Only the page's own mistakes are known then.
 */
export const readPage = (
  folder: string,
  slug: string,
  widgets: ReadonlyMap<string, Figure>,
  cache: RenderCache,
  assets: Assets,
): { readonly html: string; readonly mistakes: readonly Diagnostic[] } | undefined => {
  const sources = sourcesIn(folder);
  const own = sources.find((source) => source.slug === slug);
  if (!own) return undefined;
  const page = renderSource(own, widgets, cache);
  if (page.needsBook) {
    const book = readBook(folder, widgets, cache);
    const html = bookPage(book, slug, assets);
    return html === undefined ? undefined : { html, mistakes: page.mistakes };
  }
  const outlines = new Map(sources.map((source) => [source.slug, source === own ? page : outlineOf(source.text)]));
  const places = sources.map(({ slug, kind, number, foreign }) => {
    const { title = '', goal = '' } = outlines.get(slug) ?? {};
    return { slug, kind, number, foreign, title, goal };
  });
  const place = places.find((p) => p.slug === slug);
  const from = citedPages(page.html);
  const labels = new Map(
    sources
      .filter((source) => from.includes(source.slug))
      .map((source) => [source.slug, renderSource(source, widgets, cache).labels]),
  );
  const cited = withCitations(page.html, (of) => (of === '' ? page.labels : labels.get(of)));
  const html = withRoutes(cited, page.routes, places, outlines);
  return place && { html: pageHtml({ ...page, html }, place, places, assets), mistakes: page.mistakes };
};

/** An exercise is known by its name throughout the book, in papers and in a reader’s progress. */
const sameNames = (sources: readonly Source[], rendered: ReadonlyMap<string, RenderedChapter>): Diagnostic[] => {
  const first = new Map<string, string>();
  return sources.flatMap(({ slug, file }) =>
    (rendered.get(slug)?.model.exercises ?? []).flatMap(({ id }) => {
      const known = first.get(id);
      first.set(id, known ?? file);
      return known === undefined
        ? []
        : [{ file, line: 1, says: `An exercise of ${known} is called “${id}” as well; give this one another name.` }];
    }),
  );
};

/** A front page with a map of the chapters leads to all of them. */
const offTheMap = (sources: readonly Source[], rendered: ReadonlyMap<string, RenderedChapter>): Diagnostic[] => {
  const front = sources.find(({ kind }) => kind === 'front');
  const page = front && rendered.get(front.slug);
  if (!front || !page || page.routes.length === 0) return [];
  const led = new Set(page.links.map(({ href }) => pageHref(href).replace(/\.html.*$/, '')));
  const slugs = sources.map(({ slug }) => slug);
  // A route with a misspelt name leads to what was meant, as the mistake of its link says already.
  const misspelt = new Set([...led].filter((slug) => !slugs.includes(slug)).map((slug) => nearest(slug, slugs)));
  return sources
    .filter(({ kind, slug }) => kind === 'chapter' && !led.has(slug) && !misspelt.has(slug))
    .map(({ file }) => ({
      file: front.file,
      line: 1,
      says: `No route leads to ${file}; name it in the block “routes”, or link it in the text.`,
    }));
};

/** A chapter that was moved keeps its name behind its number; one that is misspelt is near another. */
const meant = (slug: string, sources: readonly Source[]): string => {
  const near = nearest(
    slug,
    sources.map((source) => source.slug),
  );
  const there = sources.find((source) => source.slug === near);
  return there
    ? `did you mean ${there.file.replace('chapters/', '')}?`
    : 'chapters are linked by their file name, for example 04-two-screws.md.';
};

const brokenLinks = (
  file: string,
  slug: string,
  rendered: ReadonlyMap<string, RenderedChapter>,
  sources: readonly Source[],
): Diagnostic[] => {
  const page = rendered.get(slug);
  return (page?.links ?? []).flatMap(({ href, line, cites }) => {
    if (/^https?:\/\//.test(href)) return [];
    const [target = '', anchor] = pageHref(href).split('#');
    const there = target === '' ? page : rendered.get(target.replace(/\.html$/, ''));
    if (!there)
      return [
        {
          file,
          line,
          says: `The link “${href}” leads nowhere; ${meant(target.replace(/\.html$/, ''), sources)}`,
        },
      ];
    if (cites && !(anchor && there.labels.has(anchor)))
      return [
        {
          file,
          line,
          says: `The link “${href}” has no words; only a figure, an example or an equation that has a number is cited without: ${[...there.labels.keys()].join(', ') || 'there are none'}.`,
        },
      ];
    if (anchor && !there.anchors.includes(anchor))
      return [
        {
          file,
          line,
          says: `The link “${href}” names a heading that is not there; the headings and what has a number are ${there.anchors.join(', ')}.`,
        },
      ];
    return [];
  });
};

/** The index of the search as a classic script. */
export const searchScript = (book: Book): string =>
  `globalThis.${INDEX_GLOBAL} = ${JSON.stringify(searchIndex(book.places, book.rendered, throughout(book).met))};\n`;

/** The script with what the page for a class needs of the whole book. */
export const classScript = (book: Book): string => {
  const data: ClassData = { bank: book.bank, methods: methodsOf(book.bank), course: courseOf(book) };
  return `globalThis.${CLASS_GLOBAL} = ${JSON.stringify(data)};\n`;
};

/** The numbered line of a derivation that arrives at each relation, the first in the book. */
const derivedIn = (book: Book): ReadonlyMap<string, readonly [string, string]> => {
  const derived = new Map<string, readonly [string, string]>();
  for (const { slug } of book.places)
    for (const [id, says] of book.rendered.get(slug)?.labels ?? []) {
      const [, relation] = /^equation-(.*?)(?:-\d+)?$/.exec(id) ?? [];
      if (relation !== undefined && !derived.has(relation)) derived.set(relation, [`${slug}.html#${id}`, says]);
    }
  return derived;
};

interface Throughout {
  readonly met: ReturnType<typeof symbolsMet>;
  readonly derived: ReturnType<typeof derivedIn>;
}
const gathered = new WeakMap<Book, Throughout>();

/** What every page takes from all pages of a book. */
const throughout = (book: Book): Throughout => {
  const found = gathered.get(book) ?? { met: symbolsMet(book.places, book.rendered), derived: derivedIn(book) };
  gathered.set(book, found);
  return found;
};

/** Of the relations that the examples and figures of a page work with. */
const derivedOn = ({ relations }: RenderedChapter, derived: ReturnType<typeof derivedIn>) =>
  Object.fromEntries(
    relations.flatMap((relation) => {
      const at = derived.get(relation);
      return at ? [[relation, at] as const] : [];
    }),
  );

/** The formulas of every exercise’s steps, set once here: what a teacher prints of how each is worked. */
const methodsOf = (bank: Bank): Readonly<Record<string, readonly string[]>> =>
  Object.fromEntries(
    bank.chapters.flatMap(({ exercises }) =>
      exercises.map(({ id, steps }) => [
        id,
        steps.map((step) => stepFormula(step).replace(/ data-(?:sym|slot)="[^"]*"/g, '')),
      ]),
    ),
  );

/** What the chapters state: minutes from their text, needs from the map of the front page, outcomes from their goals. */
const courseOf = ({ places, rendered }: Book): readonly CourseChapter[] => {
  const stops = [...rendered.values()].flatMap(({ routes }) => routes.flatMap((route) => route.stops));
  const slugOf = (href: string) => pageHref(href).replace(/\.html$/, '');
  return places.flatMap(({ slug, number, title, goal, foreign }) => {
    const page = rendered.get(slug);
    // The page for the class is no lesson.
    if (number === undefined || !page || page.needsBank) return [];
    return [
      {
        slug,
        number,
        title,
        ...(foreign && { lang: WRITTEN_IN }),
        minutes: page.minutes,
        needs: stops.filter(({ href }) => slugOf(href) === slug).flatMap(({ needs }) => needs.map(slugOf)),
        outcomes: goal.split(/(?<=[.!?])\s+(?=\p{Lu})/u),
        exercises: page.model.exercises.map((exercise) => exercise.title),
      },
    ];
  });
};

export const bookPage = (book: Book, slug: string, assets: Assets): string | undefined => {
  const page = book.rendered.get(slug);
  const place = book.places.find((p) => p.slug === slug);
  if (!page || !place) return undefined;
  const { met, derived } = throughout(book);
  const cited = withCitations(page.html, (of) => (of === '' ? page : book.rendered.get(of))?.labels);
  const mapped = withSymbols(withRoutes(cited, page.routes, book.places, book.rendered), met);
  const html = place.kind === 'help' ? withTermIds(mapped) : mapped;
  const full = {
    ...page,
    html,
    model: {
      ...page.model,
      met: metOn(page.html, met),
      derived: derivedOn(page, derived),
      ...(page.needsBank && assets.classData !== undefined ? { classData: assets.classData } : {}),
    },
  };
  return pageHtml(full, place, book.places, assets);
};
