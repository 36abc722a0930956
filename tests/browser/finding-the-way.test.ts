/** The way through the book as a reader goes it: the list beside the text, marks, search, cards of symbols, symptoms, paper. */
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import { beyond, type Page } from '../support/driven.ts';
import { inChromium, needs } from '../support/engines.ts';
import { asFiles, seenInPrint, settled, useBrowser, words } from '../support/page.ts';

const { visit } = useBrowser();

describe('the list of sections', () => {
  it('stands beside the text where there is room, and is folded above it where there is none', async () => {
    const { page } = await visit('two-screws.html', { fresh: true, viewport: { width: 1440, height: 900 } });
    const entry = page.locator('.sections a').first();
    const text = page.locator('h1');
    const [at, beside] = [await entry.boundingBox(), await text.boundingBox()];
    expect((at?.x ?? 0) + (at?.width ?? 0)).toBeLessThan(beside?.x ?? 0);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await entry.isVisible()).toBe(false);
    await page.locator('.way > summary').click();
    await entry.click();
    expect(new URL(page.url()).hash).toBe('#see-it-move');
  });

  it('says where the reader is, by more than colour', inDeep, async () => {
    const { page } = await visit('two-screws.html#right-and-left', {
      fresh: true,
      viewport: { width: 1440, height: 900 },
    });
    await page.waitForFunction(
      () => document.querySelector('.sections [aria-current]')?.textContent === 'Right and left',
    );
  });

  it('says where a section stands now to whoever comes by its former address, and to nobody else', async () => {
    const { page } = await visit('two-screws.html', { fresh: true });
    const moved = page.locator('#what-must-be-held');
    expect(await moved.isVisible()).toBe(false);
    await page.goto(`${page.url()}#what-must-be-held`);
    await moved.locator('a').click();
    expect(new URL(page.url()).pathname).toContain('/what-must-be-held.html');
  });

  it('keeps the text to lines of 60 to 72 letters from a laptop to a wall', inDeep, async () => {
    for (const width of [1280, 1440, 1920]) {
      const { page } = await visit('two-screws.html', { fresh: true, viewport: { width, height: 900 } });
      const letters = await page.evaluate(() => {
        // Letters over lines, in the longest paragraphs of plain text, whose last lines are half full as a rule.
        const lines = [...document.querySelectorAll<HTMLElement>('article > p:not([class], :has(math))')]
          .sort((a, b) => b.textContent.length - a.textContent.length)
          .slice(0, 3)
          .map(
            (p) => p.textContent.length / (p.clientHeight / Number.parseFloat(getComputedStyle(p).lineHeight) - 0.5),
          );
        return lines.reduce((sum, n) => sum + n, 0) / lines.length;
      });
      expect(letters, `${width}`).toBeGreaterThan(60);
      expect(letters, `${width}`).toBeLessThan(72);
    }
  });
});

describe('what a reader has done', () => {
  it('is marked in the list and on the front, which leads on to where the reader left off', inChromium, async () => {
    const { page, turnTo } = await visit('two-screws.html', { fresh: true });
    await page.locator('.predict input[type=text]').first().fill('87.5 µm');
    await page.locator('.predict button').first().click();
    await page.locator('.chapter-done input').check();
    await turnTo('index.html');
    expect(await words(page.locator('.routes [data-chapter=two-screws]'))).toContain('done');
    expect(await words(page.locator('.continue'))).toContain('Two screws in series');
    await page.locator('.continue a').click();
    await page.waitForURL(/two-screws/);
    await page.waitForSelector('html[data-awake]');
    expect(await page.locator('.chapter-done input:checked').count()).toBe(1);
    await page.locator('.chapter-done input').click();
    await turnTo('index.html');
    expect(await page.locator('.routes .done-mark').count()).toBe(0);
  });
});

/** Presses Tab until it comes to such a thing, and says how often. */
const tabTo = async (page: Page, what: string): Promise<number> => {
  for (let presses = 1; presses < 200; presses++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate((one) => document.activeElement?.matches(one), what)) return presses;
  }
  throw new Error(`No Tab comes to ${what}.`);
};

describe('the way from a file, without a server', () => {
  const oneFile = (): string => `${asFiles()}notebook-one-file.html`;

  it.each([
    ['a folder', (slug: string) => `${asFiles()}${slug}.html`],
    ['the notebook in one file', (slug: string) => `${oneFile()}?page=${slug}`],
  ])('is marked, gone on with and searched by keys alone in %s', inChromium, async (_, addressOf) => {
    const { page } = await visit('index.html', { from: asFiles(), fresh: true });
    const turnTo = async (slug: string) => {
      await page.goto(addressOf(slug));
      await page.waitForSelector('html[data-awake]');
    };
    await turnTo('round-last');
    await tabTo(page, '.chapter-done input');
    await page.keyboard.press('Space');
    await turnTo('index');
    expect(await words(page.locator('.routes [data-chapter=round-last]'))).toContain('done');
    await tabTo(page, '.continue a');
    await page.keyboard.press('Enter');
    await page.waitForURL(/round-last/);
    await page.waitForSelector('html[data-awake]');
    await tabTo(page, 'input[type=search]');
    await page.keyboard.type('warmth');
    await page.waitForFunction(() => document.querySelector('.search-results a') !== null);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForURL(/heat-and-creep|glossary/);
  });

  it.each([
    ['a folder', (slug: string) => `${asFiles()}${slug}.html`],
    ['the notebook in one file', (slug: string) => `${oneFile()}?page=${slug}`],
  ])('is marked, gone on with and searched by taps alone in %s', inChromium, async (_, addressOf) => {
    const { page } = await visit('index.html', {
      from: asFiles(),
      fresh: true,
      hasTouch: true,
      viewport: { width: 390, height: 844 },
    });
    const turnTo = async (slug: string) => {
      await page.goto(addressOf(slug));
      await page.waitForSelector('html[data-awake]');
    };
    await turnTo('round-last');
    await page.locator('.chapter-done label').tap();
    await turnTo('index');
    await page.locator('.continue a').tap();
    await page.waitForURL(/round-last/);
    await page.waitForSelector('html[data-awake]');
    expect(await page.locator('.chapter-done input:checked').count()).toBe(1);
    await page.locator('input[type=search]').tap();
    await page.keyboard.type('warmth');
    await page.waitForFunction(() => document.querySelector('.search-results a') !== null);
    await page.locator('.search-results a').first().tap();
    await page.waitForURL(/heat-and-creep|glossary/);
  });
});

describe('a long list', () => {
  it('is one stop for Tab, and arrows go to each of its lines', async () => {
    const { page } = await visit('glossary.html', { fresh: true });
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    const links = page.locator('.help article > ul a');
    await tabTo(page, '.help article > ul a');
    for (let at = 0; at < 5; at++) {
      expect(await focused()).toBe(await links.nth(at).textContent());
      await page.keyboard.press('ArrowDown');
    }
    await page.keyboard.press('End');
    expect(await focused()).toBe(await links.last().textContent());
    expect(await tabTo(page, '.glossary td > a')).toBeLessThan(5);
    await page.keyboard.press('End');
    expect(await tabTo(page, 'footer a')).toBeLessThan(6);
  });
});

/** Asks the search and waits for an answer. */
const search = async (page: Page, text: string) => {
  await page.getByLabel('Search', { exact: true }).fill(text);
  await page.waitForFunction(() => (document.querySelector('.search-results [role=status]')?.textContent ?? '') !== '');
  await page.waitForTimeout(300);
};

describe('the search', () => {
  const folder = mkdtempSync(join(tmpdir(), 'stick-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  it('fetches its index only when it is used, and leads by keys to a section, a term and a symbol', async (context) => {
    needs(context, 'requests');
    const { page, asked } = await visit('one-screw.html', { fresh: true });
    expect(asked.filter((url) => url.includes('search-index'))).toEqual([]);
    await search(page, 'warmth');
    expect(asked.filter((url) => url.includes('search-index')).length).toBe(1);
    expect(await page.locator('.search-results li').count()).toBeGreaterThan(0);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    await page.waitForURL(/heat-and-creep\.html#warmth|glossary/);
  });

  it('says that nothing is found, and offers the glossary', inDeep, async () => {
    const { page } = await visit('one-screw.html');
    await search(page, 'zzyzx');
    expect(await words(page.locator('.search-results'))).toContain('“zzyzx”');
    await page.keyboard.press('ArrowDown');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('href'))).toBe('glossary.html');
    await page.keyboard.press('Escape');
    expect(await page.locator('.search-results').isVisible()).toBe(false);
  });

  it('works in the notebook in one file, from a stick', inDeep, async () => {
    copyFileSync(join(inject('folder'), 'notebook-one-file.html'), join(folder, 'n.html'));
    const { page } = await visit('n.html', { from: pathToFileURL(`${folder}/`).href, fresh: true });
    await search(page, 'net lead');
    await page.locator('.search-results a').first().click();
    await page.waitForURL(/page=glossary/);
    await page.locator('h1').waitFor();
    expect(await page.title()).toContain('Terms and symbols');
  });
});

describe('a symbol', () => {
  const card = (page: Page) => page.locator('.symbol-card');

  it('says by keys what it is: one stop for Tab, and arrows from there', async () => {
    const { page } = await visit('two-screws.html');
    const stop = page.locator('main math [tabindex="0"]');
    expect(await stop.count()).toBe(1);
    await page.evaluate(() => document.querySelector<HTMLElement>('main math [tabindex="0"]')?.focus());
    await card(page).waitFor();
    const first = await words(card(page));
    expect(first).toMatch(/Unit: .*\d.*Met first in chapter/s);
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    expect(await words(card(page))).not.toBe(first);
    expect(await stop.count()).toBe(1);
    await page.keyboard.press('Escape');
    expect(await card(page).isVisible()).toBe(false);
  });

  it('says by a tap what it is worth here, follows the numbers, and prints as nothing', inDeep, async (context) => {
    const { page } = await visit('two-screws.html?foot.A=M8x1.25', { fresh: true });
    const symbol = page.locator('[data-example=foot-turn] .formula [data-sym=L_A]').first();
    await symbol.scrollIntoViewIfNeeded();
    await settled(page);
    await symbol.click();
    expect(await words(card(page))).toContain('lead of thread A');
    expect(await words(card(page))).toContain('1.250 mm');
    needs(context, 'as printed');
    await beyond(page).emulateMedia({ media: 'print' });
    expect(await card(page).isVisible()).toBe(false);
  });
});

describe('the page of symptoms', () => {
  it('leads by two answers to a cause and its chapter, without script', async () => {
    const { page } = await visit('symptoms.html', { javaScriptEnabled: false, fresh: true });
    const ask = page.locator('.asked').nth(2);
    expect(await ask.locator('.cause').first().isVisible()).toBe(false);
    await ask.locator('> details > summary').nth(1).click();
    await ask.locator('> details').nth(1).locator('> details > summary').first().click();
    const cause = ask.locator('.cause:visible a').first();
    expect(await cause.getAttribute('href')).toMatch(/turns-lost|preload-and-lock/);
    await cause.click();
    await page.waitForURL(/turns-lost|preload-and-lock/);
  });

  it('leads by keys alone to every cause, in three questions at most', inChromium, async () => {
    const { page } = await visit('symptoms.html', { fresh: true });
    const causes = await page.locator('.asked .cause a').count();
    const reached = new Set<string>();
    for (let on = true; on; ) {
      await page.keyboard.press('Tab');
      const [kind, at, questions] = await page.evaluate(() => {
        const here = document.activeElement;
        if (here?.matches('.asked summary')) return ['question', '', 0] as const;
        if (!here?.matches('.asked .cause a')) return [here?.matches('footer a') ? 'end' : '', '', 0] as const;
        let folds = 0;
        for (let up = here.closest('details'); up; up = up.parentElement?.closest('details') ?? null) folds++;
        return ['cause', [...document.querySelectorAll('.asked .cause a')].indexOf(here).toString(), folds] as const;
      });
      on = kind !== 'end';
      if (kind === 'question') await page.keyboard.press('Enter');
      if (kind === 'cause') reached.add(at);
      expect(questions).toBeLessThanOrEqual(3);
    }
    expect(reached.size).toBe(causes);
  });
});

describe('a worksheet', () => {
  it('has the questions and no answer, not even one that the reader has opened', async (context) => {
    needs(context, 'as printed');
    const { page } = await visit('two-screws.html', { fresh: true });
    await page.locator('.predict summary').first().click();
    await beyond(page).emulateMedia({ media: 'print' });
    const seen = await seenInPrint(page, 'Print as a worksheet', [
      '.predict .question',
      '.exercise .question',
      '.reveal > p',
      '.result',
      'article > p:not([class])',
      '.box.caution',
      '.worksheet-head',
    ]);
    const [predictions = 0, exercises = 0, ...rest] = seen;
    expect(predictions).toBeGreaterThan(0);
    expect(exercises).toBeGreaterThan(0);
    expect(rest).toEqual([0, 0, 0, 1, 1]);
    expect(await page.locator('.reveal[open]').count(), 'as the reader left it').toBe(1);
  });
  it('has one list of what is offered, to tick', async (context) => {
    needs(context, 'as printed');
    const { page } = await visit('what-must-be-held.html', { fresh: true });
    const chosen = '.exercise:has(.offered-field [type=radio])';
    await page.locator(chosen).first().waitFor({ state: 'attached' });
    await beyond(page).emulateMedia({ media: 'print' });
    for (const way of ['Print as a worksheet', 'Print to read']) {
      const [offered = 0, again] = await seenInPrint(page, way, [
        `${chosen} .offered li`,
        `${chosen} .offered-field label`,
      ]);
      expect(offered, way).toBeGreaterThan(1);
      expect(again, way).toBe(0);
    }
  });
});
