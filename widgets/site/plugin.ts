/**
 * The press as a Vite plugin. In the dev server each page is pressed when it is asked for, and asks again
 * when a chapter is saved; in a build every page is written with its styles in it, beside one classic script, with relative
 * addresses only, so that the folder works on a server, under a sub-path or from a stick.
 */

import { readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Plugin } from 'vite';
import type { Widget } from '../figures/kit/widget.ts';
import { escapeText } from '../input/escape.ts';
import { type Book, bookPage, type RenderCache, readBook } from './book.ts';
import { diagnosticText } from './diagnostics.ts';

export interface SiteOptions {
  readonly chapters: string;
  readonly widgets: ReadonlyMap<string, Widget>;
}

const ICON = 'notebook.svg';

/** Tells open pages of the dev server that a chapter was saved; the page knows it by the same name. */
const CHAPTER_SAVED = 'notebook:saved';

export const press = ({ chapters, widgets }: SiteOptions): Plugin => {
  const cache: RenderCache = new Map();
  const read = () => readBook(chapters, widgets, cache);
  return {
    name: 'press',
    configureServer(server) {
      server.watcher.add(chapters);
      server.watcher.on('all', (_event, path) => {
        if (path.startsWith(chapters)) server.ws.send(CHAPTER_SAVED);
      });
      server.middlewares.use((request, response, next) => {
        const path = new URL(request.url ?? '/', 'http://local').pathname;
        const slug = path === '/' ? 'index' : /^\/([a-z0-9-]+)\.html$/.exec(path)?.[1];
        if (slug === undefined) return next();
        const book = read();
        if (book.mistakes.length > 0) server.config.logger.warn(`\n${book.mistakes.map(diagnosticText).join('\n')}`);
        const page = bookPage(book, slug, {
          // The server’s own client is named here: having it put in would read the whole page for the sake of one line.
          scripts: ['/@vite/client', '/widgets/page/main.ts'],
          style: { address: '/widgets/page/styles/notebook.css' },
          icon: `/${ICON}`,
          module: true,
        });
        if (page === undefined) return next();
        response.setHeader('content-type', 'text/html; charset=utf-8');
        response.end(withMistakes(page, book));
      });
    },
    buildStart() {
      if (this.environment.mode !== 'build') return;
      const { mistakes } = read();
      if (mistakes.length > 0)
        this.error(
          `The chapters have ${mistakes.length} ${mistakes.length === 1 ? 'mistake' : 'mistakes'}:\n${mistakes.map(diagnosticText).join('\n')}`,
        );
      for (const file of readdirSync(chapters)) this.addWatchFile(resolve(chapters, file));
    },
    // KaTeX names each font three times; every browser in use takes the first. Algebra is read before its fonts have come.
    transform: {
      order: 'pre',
      filter: { id: /katex[^/]*\.css$/ },
      handler: (code) =>
        code
          .replace(/,\s*url\([^)]*\)\s*format\(["'](?:woff|truetype)["']\)/g, '')
          .replace(/font-display:\s*block/g, 'font-display: swap'),
    },
    generateBundle: {
      // After scripts and fonts have their names.
      order: 'post',
      handler(_options, bundle) {
        const scripts = Object.keys(bundle).filter((name) => name.endsWith('.js'));
        const text = Object.values(bundle)
          .flatMap((file) => (file.type === 'asset' && file.fileName.endsWith('.css') ? [file] : []))
          .map((file) => {
            delete bundle[file.fileName];
            return String(file.source);
          })
          .join('')
          .replace(/url\((?!data:|#)(?:\.\/)?/g, 'url(assets/')
          .trim();
        const book = read();
        for (const { slug } of book.places) {
          const source = bookPage(book, slug, {
            scripts,
            style: { text },
            icon: ICON,
            module: false,
          });
          if (source !== undefined) this.emitFile({ type: 'asset', fileName: `${slug}.html`, source });
        }
      },
    },
  };
};

/** In the dev server an author sees every mistake on top of the page, with file and line. */
const withMistakes = (page: string, { mistakes }: Book): string =>
  mistakes.length === 0
    ? page
    : page.replace(
        '<article>',
        `<section class="mistakes" role="alert"><h2>${mistakes.length} to mend in the chapters</h2><ul>${mistakes.map((m) => `<li><code>${escapeText(`${m.file}:${m.line}`)}</code> ${escapeText(m.says)}</li>`).join('')}</ul></section><article>`,
      );
