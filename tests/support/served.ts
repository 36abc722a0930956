/**
 * The standard protocols can’t turn a page’s scripts off, and that of WebKit says nothing of its console. So Firefox and
 * WebKit are served the notebook once more, under a path of its own, without its scripts; and WebKit with a listener
 * before all else.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Connect, Plugin } from 'vite';
import type { Engine } from './engines.ts';

const WITHOUT_SCRIPT = '/without-script/';
const LISTENER = '/listener.js';

/** The address at which a page of the site has no script. */
export const withoutScript = (address: string, site: string): string =>
  address.replace(site, site.replace(/\/$/, WITHOUT_SCRIPT));

/** What the listener keeps on the page until the test collects it. */
const listener = (): void => {
  const heard: string[] = [];
  (window as unknown as { heard: string[] }).heard = heard;
  for (const kind of ['error', 'warn'] as const) {
    const said = console[kind].bind(console);
    console[kind] = (...words: unknown[]) => {
      heard.push(`console: ${words.join(' ')}`);
      said(...words);
    };
  }
  addEventListener('error', (event) => heard.push(`uncaught: ${event.message ?? 'a file did not load'}`), true);
  addEventListener('unhandledrejection', (event) => heard.push(`uncaught: ${event.reason}`));
  addEventListener('securitypolicyviolation', (event) =>
    heard.push(`policy: ${event.violatedDirective} ${event.blockedURI}`),
  );
};

const pageOf = (folder: string, path: string): string | undefined => {
  const file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
  return file.endsWith('.html') && existsSync(file) ? readFileSync(file, 'utf8') : undefined;
};

/** The pages as an engine’s tests need them served. */
export const servedTo = (engine: Engine, folder: string): Plugin[] => {
  if (engine === 'chromium') return [];
  const answer: Connect.NextHandleFunction = (request, response, next) => {
    const { pathname } = new URL(request.url ?? '/', 'http://x');
    const still = pathname.startsWith(WITHOUT_SCRIPT);
    const path = still ? pathname.slice(WITHOUT_SCRIPT.length - 1) : pathname;
    const html = pageOf(folder, path);
    if (path === LISTENER) {
      response.setHeader('content-type', 'text/javascript');
      response.end(`(${listener})()`);
    } else if (html !== undefined && (still || engine === 'webkit')) {
      response.setHeader('content-type', 'text/html; charset=utf-8');
      response.end(
        still
          ? html.replace(/<script\b(?![^>]*application\/)[^>]*>.*?<\/script>/gs, '')
          : html.replace('<head>', `<head><script src="${LISTENER}"></script>`),
      );
    } else {
      if (still) request.url = path;
      next();
    }
  };
  return [{ name: 'served', configurePreviewServer: (server) => void server.middlewares.use(answer) }];
};
