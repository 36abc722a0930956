/** The whole book: every chapter file pressed, cross-checked for links, and set into pages. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Bank, makeBank } from '../exercises/bank.ts';
import type { Widget } from '../figures/kit/widget.ts';
import { pageHref, type RenderedChapter, renderChapter } from './chapter.ts';
import type { Diagnostic } from './diagnostics.ts';
import { type Assets, type Place, pageHtml } from './page.ts';

export interface Book {
  readonly places: readonly Place[];
  readonly pressed: ReadonlyMap<string, RenderedChapter>;
  readonly mistakes: readonly Diagnostic[];
  /** Every exercise of every chapter. */
  readonly bank: Bank;
}

/** Chapters as last pressed, by file, so that a saved chapter is the only one pressed again. */
export type RenderCache = Map<string, { readonly text: string; readonly page: RenderedChapter }>;

/** Presses `index.md` and every `NN-name.md` of a folder, in order of their numbers. */
export const readBook = (
  folder: string,
  widgets: ReadonlyMap<string, Widget>,
  cache: RenderCache = new Map(),
): Book => {
  const files = readdirSync(folder)
    .filter((f) => f === 'index.md' || /^\d+-[a-z0-9-]+\.md$/.test(f))
    .sort((a, b) => Number(b === 'index.md') - Number(a === 'index.md') || a.localeCompare(b, 'en', { numeric: true }));
  const pressed = new Map<string, RenderedChapter>();
  const places: Place[] = [];
  const mistakes: Diagnostic[] = [];
  for (const file of files) {
    const slug = pageHref(file).replace(/\.html$/, '');
    const text = readFileSync(join(folder, file), 'utf8');
    const known = cache.get(file);
    const page = known?.text === text ? known.page : renderChapter(`chapters/${file}`, text, widgets);
    cache.set(file, { text, page });
    pressed.set(slug, page);
    mistakes.push(...page.mistakes);
    places.push({
      slug,
      title: page.title,
      goal: page.goal,
      number: slug === 'index' ? undefined : Number.parseInt(file, 10),
    });
  }
  for (const [i, place] of places.entries()) mistakes.push(...brokenLinks(`chapters/${files[i]}`, place.slug, pressed));
  mistakes.push(...sameNames(places, files, pressed));
  const bank = makeBank(
    places.map(({ slug, title }) => ({ slug, title, exercises: pressed.get(slug)?.model.exercises ?? [] })),
  );
  return { places, pressed, mistakes, bank };
};

/** An exercise is known by its name throughout the book, in papers and in a reader’s progress. */
const sameNames = (
  places: readonly Place[],
  files: readonly string[],
  pressed: ReadonlyMap<string, RenderedChapter>,
): Diagnostic[] => {
  const first = new Map<string, string>();
  return places.flatMap(({ slug }, i) =>
    (pressed.get(slug)?.model.exercises ?? []).flatMap(({ id }) => {
      const file = `chapters/${files[i]}`;
      const known = first.get(id);
      first.set(id, known ?? file);
      return known === undefined
        ? []
        : [{ file, line: 1, says: `An exercise of ${known} is called “${id}” as well; give this one another name.` }];
    }),
  );
};

const brokenLinks = (file: string, slug: string, pressed: ReadonlyMap<string, RenderedChapter>): Diagnostic[] => {
  const page = pressed.get(slug);
  return (page?.links ?? []).flatMap(({ href, line }) => {
    if (/^https?:\/\//.test(href)) return [];
    const [target = '', anchor] = pageHref(href).split('#');
    const there = target === '' ? page : pressed.get(target.replace(/\.html$/, ''));
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
  const page = book.pressed.get(slug);
  const place = book.places.find((p) => p.slug === slug);
  if (!page || !place) return undefined;
  const full = page.needsBank ? { ...page, model: { ...page.model, bank: book.bank } } : page;
  return pageHtml(full, place, book.places, assets);
};
