/** The scripts each page fetches when it is read to its end, and what they weigh together. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipped, kB, notebook, open, withSite } from './support.mjs';

export const title = 'Scripts of a page read to its end: how many, and kB packed with gzip';

export const bench = async (line) => {
  const folder = await notebook();
  const pages = readdirSync(folder).filter((name) => name.endsWith('.html') && !name.includes('one-file'));
  await withSite(async (browser, site) => {
    for (const name of pages) {
      const { page, close } = await open(browser, site + name);
      for (const figure of await page.locator('figure[data-figure]').all()) {
        await figure.scrollIntoViewIfNeeded();
        await figure.and(page.locator('[data-awake]')).waitFor();
      }
      await page.waitForLoadState('networkidle');
      const scripts = await page.evaluate(() =>
        performance.getEntriesByType('resource').flatMap(({ name: address }) => {
          const { pathname } = new URL(address);
          return pathname.endsWith('.js') ? [pathname] : [];
        }),
      );
      const bytes = [...new Set(scripts)].map((path) => gzipped(join(folder, path)).length);
      line(name, `${String(bytes.length).padStart(2)}   ${kB(bytes.reduce((sum, size) => sum + size, 0))}`);
      await close();
    }
  });
};
