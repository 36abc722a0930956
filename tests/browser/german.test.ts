/** The German edition beside the English one, built once in a deep run: what its scripts say, the decimal comma in fields and links, ways between both. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseHTML } from 'linkedom';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildNotebook } from '../../widgets/site/build.mjs';
import { inDeep } from '../support/deep.ts';
import { inChromium } from '../support/engines.ts';
import { englishIn } from '../support/english.ts';
import { expectGoodLettering } from '../support/letter-sizes.ts';
import { pageNames, readThrough, useBrowser } from '../support/page.ts';

const { visit } = useBrowser();

describe.skipIf(inDeep.skip || inChromium.skip)('the German edition', () => {
  let folder = '';
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'german-'));
    await buildNotebook(folder, 'error', 'de', 'en=../');
  }, 240_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const from = () => `${pathToFileURL(folder).href}/`;

  it('says nothing in English on its own pages once its scripts have run', async () => {
    const { page, turnTo, faults } = await visit('index.html', { from: from() });
    for (const name of ['index', 'one-screw', 'inch-and-starts', 'three-parts']) {
      await turnTo(`${name}.html`);
      const { document } = parseHTML(await page.evaluate(() => document.documentElement.outerHTML));
      expect(englishIn(document), name).toEqual([]);
      expect(document.documentElement?.getAttribute('lang')).toBe('de');
    }
    expect(faults).toEqual([]);
  });

  for (const name of pageNames())
    it(`letters the drawings of ${name} well, as they open and at their ends`, async () => {
      const { page } = await visit(name, { from: from(), fresh: true });
      await readThrough(page);
      await expectGoodLettering(page);
    });

  it('takes a decimal comma, writes one, and puts a point into its link', async () => {
    const { page } = await visit('one-screw.html', { from: from() });
    const field = page.locator('#example-metric-screw [data-field="thread"] input');
    await field.fill('M8x1,25');
    await field.press('Enter');
    await page.waitForFunction(() => location.search.includes('metric-screw.thread'));
    expect(await field.inputValue()).toBe('M8×1,25');
    expect(new URL(page.url()).searchParams.get('metric-screw.thread')).toBe('M8×1.25');
    await page.waitForFunction(() =>
      document.querySelector('#example-metric-screw .steps')?.textContent?.includes('−104,2'),
    );
    const other = page.locator('.masthead .edition');
    expect(await other.getAttribute('lang')).toBe('en');
    expect(await other.getAttribute('href')).toBe('../one-screw.html');
  });
});
