/** What the parts of the bench share: a notebook built once into a folder of its own, served as a host would, and medians. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { buildNotebook } from '../../widgets/site/build.mjs';
import { LAUNCH } from '../setup/chromium.mjs';

export const root = resolve(import.meta.dirname, '../..');

export const quantile = (xs, q) =>
  [...xs].sort((a, b) => a - b)[Math.min(xs.length - 1, Math.floor(xs.length * q))] ?? Number.NaN;
export const median = (xs) => quantile(xs, 0.5);
export const kB = (bytes) => (bytes / 1000).toFixed(1);
export const packed = (content) => gzipSync(content, { level: 9 });
export const gzipped = (path) => packed(readFileSync(path));
export const wait = (ms) => new Promise((done) => setTimeout(done, ms));

/** The text of the styles that stand in a built page. */
export const stylesOf = (html) => /<style>([\s\S]*?)<\/style>/.exec(html)?.[1] ?? '';

let built;
/** The folder of the notebook, built when first asked for; BENCH_FOLDER names one that is built already. */
export const notebook = async () => {
  built ??= process.env.BENCH_FOLDER ? resolve(process.env.BENCH_FOLDER) : await buildHere();
  return built;
};

const buildHere = async () => {
  const folder = mkdtempSync(join(tmpdir(), 'notebook-'));
  process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
  await buildNotebook(folder, 'error');
  return folder;
};

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

/** Serves a folder as hosts do, packed with gzip; `mend` may change a page on its way. */
export const serve = async (folder, mend = (text) => text) => {
  const server = createServer((request, response) => {
    const path = join(folder, decodeURIComponent(new URL(request.url ?? '/', 'http://local').pathname));
    const type = TYPES[extname(path)];
    try {
      const bytes = extname(path) === '.html' ? mend(readFileSync(path, 'utf8'), path) : readFileSync(path);
      const packed = type === 'font/woff2' ? bytes : gzipSync(bytes);
      response.writeHead(200, {
        'content-type': type ?? 'application/octet-stream',
        'content-length': packed.length,
        ...(packed === bytes ? {} : { 'content-encoding': 'gzip' }),
      });
      response.end(packed);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((done) => server.listen(0, 'localhost', done));
  return { site: `http://localhost:${server.address().port}/`, close: () => server.close() };
};

/** Runs `work` with a browser and the served notebook, and puts both away whatever happens. */
export const withSite = async (work, mend) => {
  const server = await serve(await notebook(), mend);
  const browser = await chromium.launch(LAUNCH);
  try {
    return await work(browser, server.site);
  } finally {
    await browser.close();
    server.close();
  }
};

/** A page of its own with a way to the browser’s own instruments. */
export const open = async (browser, address, { slowed = 1, width = 1280, height = 900 } = {}) => {
  const context = await browser.newContext({ viewport: { width, height }, serviceWorkers: 'block' });
  const page = await context.newPage();
  const client = await context.newCDPSession(page);
  await page.goto(address);
  await page.waitForSelector('html[data-awake]');
  if (slowed !== 1) await client.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  return { page, client, close: () => context.close() };
};
