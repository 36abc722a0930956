/** How tall each page is as it is opened on a desk, folds closed and nothing turned: what a reader sees before a chapter. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { LAUNCH } from '../setup/chromium.mjs';
import { notebook } from './support.mjs';

export const title =
  'Height of each page as opened, 1440 px wide, px; aim for a chapter: 7500 at most, 6500 in the middle';

/** What is out of sight counts with its own height, not with the one that the browser guesses until it is seen. */
const ALL_DRAWN = 'figure, .example, .derivation, .predict { content-visibility: visible !important }';

export const bench = async (line) => {
  const folder = await notebook();
  const browser = await chromium.launch(LAUNCH);
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const pages = readdirSync(folder).filter((name) => name.endsWith('.html') && !name.includes('one-file'));
  for (const name of pages) {
    await page.goto(`file://${join(folder, name)}`);
    await page.waitForSelector('html[data-awake]', { state: 'attached' });
    await page.evaluate((rule) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(rule);
      document.adoptedStyleSheets.push(sheet);
    }, ALL_DRAWN);
    line(name, await page.evaluate(() => document.documentElement.scrollHeight));
  }
  await browser.close();
};
