/**
 * The first paint on a slow line (150 ms there and back, 1.6 Mbit/s): what was asked for before it, and the same with the
 * styles in a file beside the page, which is asked for once more and sent once only.
 */
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { chromium } from 'playwright-core';
import { LAUNCH } from '../setup/chromium.mjs';
import { median, notebook, serve, stylesOf } from './support.mjs';

export const title = 'First paint on a slow line, ms (median of 5), and what had come before it; aim: the page alone';

const PAGES = ['index.html', 'one-screw.html', 'effort-and-feel.html'];
const LINE = { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 94_000 };
const ROUNDS = 5;

export const bench = async (line) => {
  const folder = await notebook();
  const apart = mkdtempSync(join(tmpdir(), 'notebook-apart-'));
  cpSync(folder, apart, { recursive: true });
  const linked = (html, path) => {
    const css = stylesOf(html);
    const name = `${basename(path, '.html')}.css`;
    writeFileSync(join(apart, name), css);
    return html.replace(`<style>${css}</style>`, `<link rel="stylesheet" href="${name}">`);
  };
  for (const [words, place, mend] of [
    ['as built', folder, undefined],
    ['styles beside it', apart, linked],
  ]) {
    const { site, close } = await serve(place, mend);
    const browser = await chromium.launch(LAUNCH);
    for (const page of PAGES) {
      const visits = [];
      for (let i = 0; i < ROUNDS; i++) visits.push(await visit(browser, site + page));
      const paints = visits.map(({ paint }) => paint);
      const before = [...new Set(visits.flatMap(({ ended }) => ended))].sort();
      line(`${page}, ${words}`, `${median(paints).toFixed(0)}   ${before.join(', ')}`);
    }
    await browser.close();
    close();
  }
  rmSync(apart, { recursive: true });
};

const visit = async (browser, address) => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  const client = await context.newCDPSession(page);
  await client.send('Network.enable');
  await client.send('Network.emulateNetworkConditions', LINE);
  await page.goto(address);
  await page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length > 0);
  const seen = await page.evaluate(() => {
    const [{ startTime: paint }] = performance.getEntriesByName('first-contentful-paint');
    const kind = (address) => /\.(\w+)$/.exec(new URL(address).pathname)?.[1] ?? 'page';
    const ended = performance
      .getEntriesByType('resource')
      .flatMap((r) => (r.responseEnd <= paint ? [kind(r.name)] : []));
    return { paint, ended: ['html', ...ended] };
  });
  await context.close();
  return seen;
};
