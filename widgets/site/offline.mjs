/**
 * The worker that lets a hosted notebook be read without a network after one visit. Pages come from the network where there is
 * one, so that a reader sees today's; scripts, styles and fonts have their content in their name and come from the cache.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ONE_FILE } from './one-file.mjs';

const OFFLINE = 'offline.js';

/** Runs in the browser as the service worker. */
const serve = (version, files) => {
  const name = `notebook-${version}`;
  self.addEventListener('install', (event) => {
    event.waitUntil(
      caches
        .open(name)
        .then((cache) => cache.addAll(files))
        .then(() => self.skipWaiting()),
    );
  });
  self.addEventListener('activate', (event) => {
    const old = caches
      .keys()
      .then((keys) =>
        Promise.all(keys.filter((key) => key.startsWith('notebook-') && key !== name).map((key) => caches.delete(key))),
      );
    event.waitUntil(old.then(() => self.clients.claim()));
  });
  self.addEventListener('fetch', (event) => {
    const { request } = event;
    if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
    const kept = () => caches.match(request, { ignoreSearch: true });
    const page = request.mode === 'navigate';
    event.respondWith(
      page
        ? fetch(request).catch(async () => (await kept()) ?? (await caches.match('index.html')) ?? Response.error())
        : kept().then((found) => found ?? fetch(request)),
    );
  });
};

export const writeOffline = (folder) => {
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
    `(${serve.toString()})(${JSON.stringify(hash.digest('hex').slice(0, 16))}, ${JSON.stringify(files)});\n`,
  );
};
