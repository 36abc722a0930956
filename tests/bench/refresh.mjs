/** From saving a chapter to the page in the dev server that shows it. The chapters are a copy. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { createServer, runnerImport } from 'vite';
import { LAUNCH } from '../setup/chromium.mjs';
import { median, quantile, root, wait } from './support.mjs';

export const title = 'From saving a chapter to seeing it in the dev server, ms: median (longest); aim < 300';

const CHAPTERS = ['01-one-screw.md', '28-effort-and-feel.md', '39-calibrate.md'];
const EDITS = 7;

export const bench = async (line) => {
  const load = async (file) => (await runnerImport(join(root, file), { configFile: false, logLevel: 'error' })).module;
  const { site } = await load('widgets/site/plugin.ts');
  const chapters = mkdtempSync(join(tmpdir(), 'chapters-'));
  cpSync(join(root, 'chapters'), chapters, { recursive: true });
  const server = await createServer({
    root,
    configFile: false,
    appType: 'mpa',
    logLevel: 'error',
    publicDir: 'widgets/site/public',
    plugins: [site({ chapters })],
    cacheDir: join(chapters, 'cache'),
    server: { port: 0, host: 'localhost' },
  });
  await server.listen();
  const browser = await chromium.launch(LAUNCH);
  try {
    const page = await browser.newPage();
    for (const file of CHAPTERS) {
      const slug = file.replace(/^\d+-|\.md$/g, '');
      await page.goto(`${server.resolvedUrls.local[0]}${slug}.html`);
      await page.waitForSelector('html[data-awake]');
      const text = readFileSync(join(chapters, file), 'utf8');
      const times = [];
      for (let i = 0; i < EDITS; i++) {
        await wait(700);
        const word = `Edit number ${i} of ${slug}.`;
        const from = performance.now();
        writeFileSync(join(chapters, file), `${text}\n${word}\n`);
        await page.waitForFunction(
          (said) => document.querySelector('article > p:last-of-type')?.textContent === said,
          word,
        );
        times.push(performance.now() - from);
      }
      line(file, `${median(times).toFixed(0)} (${quantile(times, 1).toFixed(0)})`);
    }
  } finally {
    await browser.close();
    await server.close();
    rmSync(chapters, { recursive: true });
  }
};
