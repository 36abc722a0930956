/**
 * The worker that lets a hosted notebook be read without a network after one visit. Pages come from the network where there is
 * one, so that a reader sees today's; scripts, styles and fonts have their content in their name and come from the cache. What
 * the build before had is kept for one build more: a page of it may still be open, or lie in a cache on the way.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ONE_FILE } from './one-file.mjs';

const OFFLINE = 'offline.js';

/** Runs in the browser as the service worker. */
const serve = (version, files, { language, noPage: words }) => {
  // Editions in several languages may stand at one address; each clears its own.
  const mine = `notebook-${language}-`;
  const name = `${mine}${version}`;
  // Only a name that holds the content is sure to bring this build's file; any other may lie in the browser's own cache.
  const asked = files.map((file) => new Request(file, { cache: file.startsWith('assets/') ? 'default' : 'reload' }));
  self.addEventListener('install', (event) => {
    event.waitUntil(
      caches
        .open(name)
        .then((cache) => cache.addAll(asked))
        .then(() => self.skipWaiting()),
    );
  });
  self.addEventListener('activate', (event) => {
    // In the order they were made: the last is the build before.
    const old = caches.keys().then((keys) =>
      Promise.all(
        keys
          .filter((key) => key.startsWith(mine) && key !== name)
          .slice(0, -1)
          .map((key) => caches.delete(key)),
      ),
    );
    event.waitUntil(old.then(() => self.clients.claim()));
  });
  self.addEventListener('fetch', (event) => {
    const { request } = event;
    if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
    // A cache that was emptied or can't be read is none: the host still has everything.
    const kept = (wanted, where) => caches.match(wanted, { ...where, ignoreSearch: true }).catch(() => undefined);
    const own = (wanted) => kept(wanted, { cacheName: name });
    const page = async () => {
      const { scope } = self.registration;
      const front = request.url.replace(/[?#].*/, '') === scope;
      return (await own(front ? 'index.html' : request)) ?? noPage(scope);
    };
    const file = async () => (await own(request)) ?? (await kept(request)) ?? fetch(request);
    // Asked of the host itself, or else an old page in the browser's own cache would stand for today's.
    event.respondWith(request.mode === 'navigate' ? fetch(request, { cache: 'no-cache' }).catch(page) : file());
  });
  const noPage = (scope) =>
    new Response(
      `<!doctype html><html lang="${language}"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><meta name="color-scheme" content="light dark"><title>${words.title}</title><p>${words.says} <a href="${scope}index.html">${words.pages}</a></p>`,
      { status: 404, headers: { 'content-type': 'text/html; charset=utf-8' } },
    );
};

export const writeOffline = (folder, { language, noPage }) => {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== ONE_FILE && entry.name !== OFFLINE)
    .map((entry) =>
      join(entry.parentPath ?? entry.path, entry.name)
        .slice(folder.length)
        .replace(/\\/g, '/')
        .replace(/^\//, ''),
    )
    .sort();
  const hash = createHash('sha256');
  for (const file of files) hash.update(file).update(readFileSync(join(folder, file)));
  writeFileSync(
    join(folder, OFFLINE),
    `(${serve.toString()})(${JSON.stringify(hash.digest('hex').slice(0, 16))}, ${JSON.stringify(files)}, ${JSON.stringify({ language, noPage })});\n`,
  );
};
