/** The book: its chapter files, rendered when they are asked for, cross-checked for links, and set into pages. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Bank, makeBank } from '../exercises/bank.ts';
import type { Figure } from '../figures/kit/figure.ts';
import { adjustersIn } from './adjusters.ts';
import { outlineOf, pageHref, type RenderedChapter, renderChapter } from './chapter.ts';
import type { Diagnostic } from './diagnostics.ts';
import { type Assets, type Place, pageHtml } from './page.ts';

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
  readonly number: number | undefined;
  /** The adjusters that it may name, and the text that has them. */
  readonly shared: ReturnType<typeof adjustersIn>;
}

/** `index.md` and every `NN-name.md` of a folder, in order of their numbers. */
const sourcesIn = (folder: string): readonly Source[] => {
  const shared = adjustersIn(folder);
  return readdirSync(folder)
    .filter((f) => f === 'index.md' || /^\d+-[a-z0-9-]+\.md$/.test(f))
    .sort((a, b) => Number(b === 'index.md') - Number(a === 'index.md') || a.localeCompare(b, 'en', { numeric: true }))
    .map((name) => ({
      file: `chapters/${name}`,
      slug: pageHref(name).replace(/\.html$/, ''),
      text: readFileSync(join(folder, name), 'utf8'),
      number: name === 'index.md' ? undefined : Number.parseInt(name, 10),
      shared,
    }));
};

const renderSource = (
  { file, text, shared }: Source,
  widgets: ReadonlyMap<string, Figure>,
  cache: RenderCache,
): RenderedChapter => {
  const known = cache.get(file);
  // A chapter is rendered again where an adjuster changed that it may name.
  const all = `${shared.text}\n${text}`;
  const page = known?.text === all ? known.page : renderChapter(file, text, widgets, shared.adjusters);
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
    places: pages.map(({ source: { slug, number }, page: { title, goal } }) => ({ slug, title, goal, number })),
    rendered,
    mistakes: [
      ...pages.flatMap(({ page }) => page.mistakes),
      ...sources.flatMap(({ file, slug }) => brokenLinks(file, slug, rendered)),
      ...sameNames(sources, rendered),
    ],
    bank: makeBank(
      pages.map(({ source: { slug }, page: { title, model } }) => ({ slug, title, exercises: model.exercises })),
    ),
  };
};

/**
 * One page, and no more of the book rendered than it takes: of the other chapters their titles and goals, unless the page
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
  if (page.needsBank) {
    const book = readBook(folder, widgets, cache);
    const html = bookPage(book, slug, assets);
    return html === undefined ? undefined : { html, mistakes: page.mistakes };
  }
  const places = sources.map((source) => ({
    slug: source.slug,
    number: source.number,
    ...(source === own ? { title: page.title, goal: page.goal } : outlineOf(source.text)),
  }));
  const place = places.find((p) => p.slug === slug);
  return place && { html: pageHtml(page, place, places, assets), mistakes: page.mistakes };
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

const brokenLinks = (file: string, slug: string, rendered: ReadonlyMap<string, RenderedChapter>): Diagnostic[] => {
  const page = rendered.get(slug);
  return (page?.links ?? []).flatMap(({ href, line }) => {
    if (/^https?:\/\//.test(href)) return [];
    const [target = '', anchor] = pageHref(href).split('#');
    const there = target === '' ? page : rendered.get(target.replace(/\.html$/, ''));
    if (!there)
      return [
        {
          file,
          line,
          says: `The link “${href}” leads nowhere; chapters are linked by their file name, for example 02-two-screws.md.`,
        },
      ];
    if (anchor && !there.anchors.includes(anchor))
      return [
        {
          file,
          line,
          says: `The link “${href}” names a heading that is not there; the headings are ${there.anchors.join(', ')}.`,
        },
      ];
    return [];
  });
};

export const bookPage = (book: Book, slug: string, assets: Assets): string | undefined => {
  const page = book.rendered.get(slug);
  const place = book.places.find((p) => p.slug === slug);
  if (!page || !place) return undefined;
  const full = page.needsBank ? { ...page, model: { ...page.model, bank: book.bank } } : page;
  return pageHtml(full, place, book.places, assets);
};
