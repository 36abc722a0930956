/**
 * The site as a Vite plugin. In the dev server each page is rendered when it is asked for, and asks again when a chapter is
 * saved; in a build every page is written with its styles in it, beside one classic script, with relative addresses only, so
 * that the folder works on a server, under a sub-path or from a stick.
 *
 * It imports nothing of the rooms but how text is escaped: Vite starts anew when what its configuration imports is saved. They come as one module,
 * site.ts, which the dev server loads again by itself.
 */
import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Plugin, ViteDevServer } from 'vite';
import { escapeText } from '../input/escape.ts';
import type { RenderCache } from './book.ts';
import { LANGUAGES, type Language, languageNamed } from './language.mjs';
import { loadRooms } from './rooms.mjs';
import type * as Site from './site.ts';
import { allStyles, packedStyles } from './styles.mjs';

const WIDGETS = resolve(import.meta.dirname, '..');
const ICON = 'notebook.png';
const SEARCH = 'search-index.js';
const CLASS = 'class-data.js';

/** Tells open pages of the dev server that a chapter was saved; the page knows it by the same name. */
const CHAPTER_SAVED = 'notebook:saved';

/** How long the server rests after a page before it reads the other chapters for their mistakes, ms. */
const REST = 2000;

interface Edition {
  /** The folder of the chapters. */
  readonly chapters: string;
  readonly language?: Language;
  /** Where the other editions are, seen from a page: `de=de/`, parted by commas. */
  readonly beside?: string;
}

export const site = ({ chapters, language = languageNamed(), beside = '' }: Edition): Plugin => {
  const editions =
    beside === ''
      ? []
      : beside.split(',').map((one) => {
          const [to = '', folder = ''] = one.split('=');
          return { language: to, name: LANGUAGES[languageNamed(to)], folder };
        });
  /** A render of a chapter holds as long as the rooms it was made with. */
  const caches = new WeakMap<typeof Site, RenderCache>();
  const cacheOf = (rooms: typeof Site) => {
    const cache: RenderCache = caches.get(rooms) ?? new Map();
    caches.set(rooms, cache);
    return cache;
  };
  const built = () => loadRooms<typeof Site>('widgets/site/site.ts', language);
  // A build has loaded the rooms already, to know the figures: it hands them on.
  let rooms: typeof Site | undefined;
  const readWhole = async () => {
    rooms ??= await built();
    return { rooms, book: rooms.readBook(chapters, rooms.FIGURES, cacheOf(rooms)) };
  };
  return {
    name: 'site',
    configResolved({ plugins }) {
      rooms ??= plugins.find(({ name }) => name === 'rooms')?.api as typeof Site | undefined;
    },
    configureServer(server) {
      server.watcher.add(chapters);
      let loading: Promise<typeof Site> | undefined;
      server.watcher.on('all', (_event, path) => {
        if (path.startsWith(chapters)) server.ws.send(CHAPTER_SAVED);
        if (!path.startsWith(WIDGETS) || !path.endsWith('.ts')) return;
        loading = undefined;
        server.ws.send({ type: 'full-reload' });
      });
      // What does not load is tried again at the next page.
      const load = () => {
        loading ??= built().catch((error) => {
          loading = undefined;
          throw error;
        });
        return loading;
      };
      let asked = 0;
      let serves = true;
      server.httpServer?.once('close', () => {
        serves = false;
      });
      const rested = async () => {
        do await new Promise((done) => setTimeout(done, Math.max(0, asked + REST - performance.now())));
        while (performance.now() < asked + REST);
      };
      const tellMistakes = teller(server, async () => {
        const now = await load();
        // One by one, while nothing is asked, so that pages and their scripts are answered first.
        for (await rested(); serves && now.renderAnother(chapters, now.FIGURES, cacheOf(now)); await rested());
        return serves ? now.readBook(chapters, now.FIGURES, cacheOf(now)).mistakes.map(now.diagnosticText) : [];
      });
      server.middlewares.use(async (request, response, next) => {
        asked = performance.now();
        const path = new URL(request.url ?? '/', 'http://local').pathname;
        if (path === `/${SEARCH}` || path === `/${CLASS}`) {
          const now = await load();
          const book = now.readBook(chapters, now.FIGURES, cacheOf(now));
          response.setHeader('content-type', 'text/javascript; charset=utf-8');
          response.end(path === `/${SEARCH}` ? now.searchScript(book) : now.classScript(book));
          return;
        }
        const slug = path === '/' ? 'index' : /^\/([a-z0-9-]+)\.html$/.exec(path)?.[1];
        if (slug === undefined) return next();
        try {
          const now = await load();
          const page = now.readPage(chapters, slug, now.FIGURES, cacheOf(now), {
            // The server’s own client is named here: having it put in would read the whole page for the sake of one line.
            scripts: ['/@vite/client', '/widgets/client/main.ts'],
            style: { addresses: allStyles().map((path) => `/${path}`) },
            icon: `/${ICON}`,
            search: `/${SEARCH}`,
            classData: `/${CLASS}`,
            module: true,
            editions,
          });
          if (page === undefined) return next();
          response.setHeader('content-type', 'text/html; charset=utf-8');
          response.end(withMistakes(page.html, page.mistakes));
          tellMistakes();
        } catch (error) {
          next(error);
        }
      });
    },
    async buildStart() {
      if (this.environment.mode !== 'build') return;
      const { rooms, book } = await readWhole();
      const { mistakes } = book;
      if (mistakes.length > 0)
        this.error(
          `The chapters have ${mistakes.length} ${mistakes.length === 1 ? 'mistake' : 'mistakes'}:\n${mistakes.map(rooms.diagnosticText).join('\n')}`,
        );
      for (const file of readdirSync(chapters)) this.addWatchFile(resolve(chapters, file));
    },
    generateBundle: {
      // After the script has its name.
      order: 'post',
      async handler(_options, bundle) {
        const scripts = Object.keys(bundle).filter((name) => name.endsWith('.js'));
        const { withFigures, fonts } = await packedStyles();
        for (const [fileName, source] of fonts) this.emitFile({ type: 'asset', fileName, source });
        const { rooms, book } = await readWhole();
        // A name that holds its content, as the scripts have.
        const written = (name: string, source: string): string => {
          const fileName = `assets/${name}-${createHash('sha256').update(source).digest('base64url').slice(0, 8)}.js`;
          this.emitFile({ type: 'asset', fileName, source });
          return fileName;
        };
        const search = written('search-index', rooms.searchScript(book));
        const classData = written('class-data', rooms.classScript(book));
        for (const { slug } of book.places) {
          const source = rooms.bookPage(book, slug, {
            scripts,
            style: { text: withFigures },
            icon: ICON,
            search,
            classData,
            module: false,
            editions,
          });
          if (source !== undefined) this.emitFile({ type: 'asset', fileName: `${slug}.html`, source });
        }
      },
    },
  };
};

/** Reads the whole book once pages have rested, and says its mistakes where they are new. */
const teller = (server: ViteDevServer, mistakes: () => Promise<readonly string[]>): (() => void) => {
  let rest: ReturnType<typeof setTimeout> | undefined;
  let said = '';
  server.httpServer?.once('close', () => clearTimeout(rest));
  return () => {
    clearTimeout(rest);
    rest = setTimeout(async () => {
      const text = (await mistakes().catch(() => [])).join('\n');
      if (text !== said && text !== '') server.config.logger.warn(`\n${text}`);
      said = text;
    }, REST);
  };
};

/** In the dev server an author sees every mistake of a chapter on top of its page, with file and line. */
const withMistakes = (page: string, mistakes: readonly { file: string; line: number; says: string }[]): string =>
  mistakes.length === 0
    ? page
    : page.replace(
        '<article>',
        `<section class="mistakes" role="alert"><h2>${mistakes.length} to mend in the chapter</h2><ul>${mistakes.map((m) => `<li><code>${escapeText(`${m.file}:${m.line}`)}</code> ${escapeText(m.says)}</li>`).join('')}</ul></section><article>`,
      );
