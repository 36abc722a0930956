/** For a class: a figure or example shown to a room, the notebook in one file, and the hosted one without a network. */
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { needs } from '../support/engines.ts';
import { figure, sentence, settled, shown, useBrowser, words } from '../support/page.ts';

const { visit } = useBrowser();

describe('the projector view', () => {
  it('fills the window with one figure, which still works, and goes on by arrow keys', async () => {
    const { page } = await visit('two-screws.html');
    const section = await shown(figure(page, 'section'));
    await section.getByRole('button', { name: 'Show large' }).click();
    const box = await section.boundingBox();
    expect(box).toMatchObject({ x: 0, y: 0, width: 1280, height: 900 });
    const knob = section.locator('[data-knob]');
    await knob.focus();
    await page.keyboard.press('Shift+ArrowUp');
    await settled(page);
    expect(await sentence(section)).toContain('2 turns clockwise');
    await page.getByRole('button', { name: 'The next one' }).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    expect(await words(page.locator('.projector-place'))).toMatch(/^3 of \d+$/);
    await page.keyboard.press('PageUp');
    expect(await words(page.locator('.projector-place'))).toMatch(/^2 of \d+$/);
    await page.keyboard.press('Escape');
    expect(await page.locator('.projected').count()).toBe(0);
    expect(await page.locator('[inert]').count()).toBe(0);
  });

  it('hides the results of an example until asked for, step by step', async () => {
    const { page } = await visit('two-screws.html');
    const example = page.locator('[data-example=foot-turn]');
    await example.getByRole('button', { name: 'Show large' }).click();
    const visible = () =>
      example
        .locator('.result')
        .evaluateAll((all) => all.filter((r) => getComputedStyle(r).visibility === 'visible').length);
    expect(await visible()).toBe(0);
    await page.getByRole('button', { name: 'Show the next step' }).click();
    expect(await visible()).toBe(1);
    await page.getByRole('button', { name: 'The next one' }).focus();
    await page.keyboard.press('ArrowDown');
    expect(await visible()).toBe(2);
    await page.keyboard.press('Escape');
    expect(await visible()).toBe(await example.locator('.result').count());
  });
});

describe('the notebook in one file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'stick-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  copyFileSync(join(inject('folder'), 'notebook-one-file.html'), join(folder, 'n.html'));
  const from = pathToFileURL(`${folder}/`).href;

  it('opens alone, leads from page to page, and every figure of a page with plots comes alive', async () => {
    const { page, asked } = await visit('n.html', { from, fresh: true });
    await page.getByRole('link', { name: 'Play and flanks' }).last().click();
    await page.waitForURL(/page=play-and-flanks/);
    await page.waitForSelector('html[data-awake]');
    for (const place of await page.locator('figure.live').all()) await shown(place);
    expect(await page.title()).toContain('Play and flanks');
    expect(asked.filter((url) => !url.startsWith('data:') && !/n\.html/.test(url))).toEqual([]);
  });

  it('keeps the reader’s numbers in its address, over a reload', async () => {
    const { page } = await visit('n.html?page=two-screws&foot.A=M8x1.25&foot.C=5/16-18', { from, fresh: true });
    expect(await sentence(await shown(figure(page, 'section')))).toContain('161.1 µm up per turn');
    await page.reload();
    expect(await sentence(await shown(figure(page, 'section')))).toContain('161.1 µm up per turn');
  });

  it('shows its front page for a page it does not have, and runs nothing from the address', async () => {
    const { page } = await visit('n.html?page=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E', { from, fresh: true });
    expect(await page.locator('.contents').count()).toBe(1);
  });
});

describe('the hosted notebook', () => {
  it('is read without a network after one visit, chapters not yet opened too', async (context) => {
    needs(context, 'offline');
    const { page, faults } = await visit('index.html', { fresh: true, serviceWorkers: 'allow' });
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.context().setOffline(true);
    await page.goto(`${inject('site')}per-flat.html`);
    await page.waitForSelector('html[data-awake]');
    expect(await sentence(await shown(figure(page, 'divided-turn')))).toContain('87.50 µm a turn');
    await page.goto(`${inject('site')}lead-error.html`);
    await shown(figure(page, 'lead-error'));
    await page.context().setOffline(false);
    faults.splice(0);
  });
});
