/** For a class: a figure or example shown to a room, the notebook in one file, and the hosted one without a network. */
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { WORDS } from '../../widgets/site/catalogue.ts';
import { writeOffline } from '../../widgets/site/offline.mjs';
import { inDeep, some } from '../support/deep.ts';
import { beyond } from '../support/driven.ts';
import { needs } from '../support/engines.ts';
import { fieldIn, figure, sentence, settled, shown, useBrowser, words } from '../support/page.ts';

const { visit } = useBrowser();

describe('the projector view', () => {
  it('fills the window with one figure, which still works, and goes on by arrow keys', async () => {
    const { page } = await visit('two-screws.html');
    const section = await shown(figure(page, 'section'));
    await section.getByRole('button', { name: 'Show large' }).click();
    await page.locator('.projected').waitFor();
    const box = await section.boundingBox();
    expect(box).toMatchObject({ x: 0, y: 0, width: 1280, height: 900 });
    /** Which of the figures and examples is shown. */
    const place = async () => Number.parseInt(await words(page.locator('.projector-place')), 10);
    const first = await place();
    // The bars beside it would tell the room how far each part goes.
    expect(await section.locator('.track').first().isVisible()).toBe(false);
    const knob = section.locator('[data-knob]');
    await knob.focus();
    await page.keyboard.press('Shift+ArrowUp');
    await settled(page);
    expect(await sentence(section)).toContain('1.5 turns clockwise');
    await page.getByRole('button', { name: 'The next one' }).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    expect(await place()).toBe(first + 2);
    await page.keyboard.press('PageUp');
    expect(await place()).toBe(first + 1);
    await page.keyboard.press('PageUp');
    await fieldIn(section, /^Turns/).focus();
    await page.keyboard.press('PageDown');
    expect(await place()).toBe(first + 1);
    await page.keyboard.press('Escape');
    expect(await page.locator('.projected').count()).toBe(0);
    expect(await page.locator('[inert]').count()).toBe(0);
  });

  it('draws letters that a room can read, in figures that are taller than the window too', async () => {
    for (const [path, name] of [
      ['two-screws.html', 'section'],
      ['calibrate.html', 'calibration'],
    ] as const) {
      const { page } = await visit(path, { fresh: true });
      await beyond(page).setViewportSize({ width: 1920, height: 1080 });
      const place = await shown(figure(page, name));
      await place.getByRole('button', { name: 'Show large' }).click();
      await page.locator('.projected').waitFor();
      const least = await place.locator('[data-stage]').evaluate((stage) => {
        const sizes = [...stage.querySelectorAll('svg text')]
          .filter((text) => text.checkVisibility())
          .map((text) => {
            const drawn = text instanceof SVGGraphicsElement ? text.getScreenCTM() : null;
            return Number.parseFloat(getComputedStyle(text).fontSize) * (drawn ? Math.hypot(drawn.a, drawn.b) : 1);
          });
        return Math.min(...sizes);
      });
      expect(least, name).toBeGreaterThan(23);
      await page.keyboard.press('Escape');
    }
  });

  it('hides the results of an example until asked for, step by step', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    const example = page.locator('[data-example=foot-turn]');
    await example.getByRole('button', { name: 'Show large' }).click();
    await page.locator('.projected').waitFor();
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

describe('a derivation and a prediction before a room', () => {
  it('tell their lines and their answer one key at a time, by the keys of a remote', async () => {
    const { page } = await visit('two-screws.html');
    const lines = page.locator('article > .derivation').first();
    await lines.getByRole('button', { name: 'Show large' }).click();
    await page.locator('.derivation.projected').waitFor();
    const visible = () =>
      lines
        .locator('li')
        .evaluateAll(
          (all) => all.filter((li) => getComputedStyle(li).visibility === 'visible' && li.checkVisibility()).length,
        );
    const whole = await lines.locator('li').count();
    expect(await visible()).toBe(0);
    for (let told = 1; told <= whole; told++) {
      await page.keyboard.press('ArrowDown');
      expect(await visible()).toBe(told);
    }
    for (const [i, key] of ['ArrowUp', '.', 'b'].entries()) {
      await page.keyboard.press(key);
      expect(await visible()).toBe(Math.max(0, whole - i - 1));
    }
    expect(await page.getByRole('button', { name: 'Show the next step' }).isVisible()).toBe(true);
    await page.keyboard.press('Escape');
    const asked = page.locator('article > .predict').first();
    await asked.getByRole('button', { name: 'Show large' }).click();
    await page.locator('.predict.projected').waitFor();
    expect(await asked.locator('.reveal p').isVisible()).toBe(false);
    await page.keyboard.press('ArrowDown');
    expect(await asked.locator('.reveal p').isVisible()).toBe(true);
    await page.keyboard.press('ArrowUp');
    expect(await asked.locator('.reveal p').isVisible()).toBe(false);
    await page.keyboard.press('PageDown');
    expect(await page.locator('.projected').count()).toBe(1);
    await page.keyboard.press('Escape');
    expect(await page.locator('[inert], .told, .projected').count()).toBe(0);
  });
});

describe('the notebook in one file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'stick-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  copyFileSync(join(inject('folder'), 'notebook-one-file.html'), join(folder, 'n.html'));
  const from = pathToFileURL(`${folder}/`).href;

  it('opens alone, leads from page to page, and every figure of a page with plots comes alive', async () => {
    const { page, asked } = await visit('n.html', { from, fresh: true });
    await page.getByRole('link', { name: 'Axial play' }).last().click();
    await page.waitForURL(/page=play-and-flanks/);
    await page.waitForSelector('html[data-awake]');
    for (const place of await page.locator('figure.live').all()) await shown(place);
    expect(await page.title()).toContain('Axial play');
    expect(asked.filter((url) => !url.startsWith('data:') && !/n\.html/.test(url))).toEqual([]);
  });

  it('keeps the reader’s numbers in its address, over a reload', inDeep, async () => {
    const { page } = await visit('n.html?page=two-screws&foot.A=M8x1.25&foot.C=5/16-18', { from, fresh: true });
    expect(await words((await shown(figure(page, 'section'))).locator('[data-read=perTurn]'))).toBe('+161.1 µm');
    await page.reload();
    expect(await words((await shown(figure(page, 'section'))).locator('[data-read=perTurn]'))).toBe('+161.1 µm');
  });

  it('shows its front page for a page it does not have, says so, and runs nothing from the address', async () => {
    for (const name of some(2, ['<img src=x onerror=alert(1)>', '__proto__', 'constructor', 'no-such-chapter'])) {
      const { page } = await visit(`n.html?page=${encodeURIComponent(name)}`, { from, fresh: true });
      expect(await page.locator('.contents').count(), name).toBe(1);
      expect(await words(page.locator('article'))).toContain(`no page “${name}”`);
      expect(await page.title()).not.toContain('undefined');
    }
    const { page } = await visit('n.html', { from, fresh: true });
    expect(await words(page.locator('article'))).not.toContain('no page');
  });
});

describe('the hosted notebook', () => {
  it('is read without a network after one visit, chapters not yet opened too', async (context) => {
    needs(context, 'offline');
    const { page, faults } = await visit('index.html', { fresh: true, serviceWorkers: 'allow' });
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await beyond(page).context().setOffline(true);
    await page.goto(`${inject('site')}per-flat.html`);
    await page.waitForSelector('html[data-awake]');
    expect(await sentence(await shown(figure(page, 'divided-turn')))).toContain('87.50 µm a turn');
    await page.goto(`${inject('site')}lead-error.html`);
    await shown(figure(page, 'lead-error'));
    await beyond(page).context().setOffline(false);
    faults.splice(0);
  });

  it('is read without a network on, where the browser has ended its worker', inDeep, async (context) => {
    needs(context, 'offline', 'protocol');
    const { page, faults } = await visit('index.html', { fresh: true, serviceWorkers: 'allow' });
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const browser = await beyond(page).context().newCDPSession(beyond(page));
    await browser.send('ServiceWorker.enable');
    await beyond(page).context().setOffline(true);
    for (const [name, shows] of [
      ['per-flat.html', 'divided-turn'],
      ['lead-error.html', 'lead-error'],
    ] as const) {
      await browser.send('ServiceWorker.stopAllWorkers');
      await page.goto(`${inject('site')}${name}`);
      expect(await sentence(await shown(figure(page, shows)))).toMatch(/\d/);
    }
    await beyond(page).context().setOffline(false);
    faults.splice(0);
  });

  it(
    'keeps the pages of one build together behind a cache on the way, and those of the build before one build longer',
    inDeep,
    async (context) => {
      needs(context, 'offline');
      const { page, faults } = await visit('index.html', { fresh: true, serviceWorkers: 'allow' });
      const host = await hostOf();
      const read = (address: string) =>
        page.evaluate(async (at) => {
          const answer = await fetch(at).catch(() => undefined);
          return answer?.ok ? answer.text() : undefined;
        }, address);
      /** Waits until the worker has these builds’ files and no others: it comes and clears up in its own time. */
      const keeps = (builds: readonly string[]) =>
        page.waitForFunction(async (wanted) => {
          const kept = await Promise.all(['1', '2', '3'].map((n) => caches.match(`assets/figure-${n}.js`)));
          const found = await navigator.serviceWorker.getRegistration();
          const settled = found?.active?.state === 'activated' && !found.installing && !found.waiting;
          return settled && ['1', '2', '3'].filter((_, i) => kept[i]).join() === wanted;
        }, builds.join());
      try {
        for (const [build, builds] of [
          ['1', ['1']],
          ['2', ['1', '2']],
          ['3', ['2', '3']],
        ] as const) {
          host.deploy(build);
          for (const name of ['chapter.html', 'index.html']) {
            await page.goto(host.address + name);
            expect(await words(page.locator('body'))).toBe(`${name} of build ${build}`);
          }
          await page.evaluate(async () => void (await (await navigator.serviceWorker.register('offline.js')).update()));
          await keeps(builds);
        }
        host.close();
        for (const name of ['index.html', 'chapter.html', '']) {
          await page.goto(host.address + name);
          expect(await words(page.locator('body')), name).toBe(`${name || 'index.html'} of build 3`);
        }
        expect(await read('assets/figure-3.js')).toBe('script 3');
        expect(await read('assets/figure-2.js')).toBe('script 2');
        const answer = await beyond(page).goto(`${host.address}no-such-page.html`);
        expect(answer?.status()).toBe(404);
        expect(await words(page.locator('body'))).toContain('no page at this address');
        await page.getByRole('link').click();
        await page.waitForURL(/index\.html$/);
      } finally {
        host.close();
        // Another site, and one that is cut off: these faults were asked for.
        faults.splice(0);
      }
    },
  );
});

/** A small notebook of a few builds on a server that tells browsers to keep everything for an hour. */
const hostOf = async () => {
  const folder = mkdtempSync(join(tmpdir(), 'host-'));
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://x').pathname;
    const file = join(folder, path === '/' ? 'index.html' : path);
    if (!existsSync(file)) return response.writeHead(404).end();
    const type = path.endsWith('.js') ? 'text/javascript' : 'text/html; charset=utf-8';
    return response.writeHead(200, { 'content-type': type, 'cache-control': 'max-age=3600' }).end(readFileSync(file));
  });
  await new Promise<void>((done) => server.listen(0, 'localhost', done));
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}/`,
    deploy: (build: string) => {
      rmSync(folder, { recursive: true });
      mkdirSync(join(folder, 'assets'), { recursive: true });
      for (const name of ['index.html', 'chapter.html'])
        writeFileSync(join(folder, name), `<!doctype html><title>t</title><p>${name} of build ${build}</p>`);
      writeFileSync(join(folder, 'assets', `figure-${build}.js`), `script ${build}`);
      writeOffline(folder, WORDS);
    },
    close: () => {
      server.closeAllConnections();
      server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};
