/** The dev server as an author has it: a saved chapter takes the place of the page that is open, and mistakes stand on the page. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { createServer, type ViteDevServer } from 'vite';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { site } from '../../widgets/site/plugin.ts';
import { fieldIn, figure, sentence, shown, type, useBrowser, words, written } from '../support/page.ts';

const { visit } = useBrowser();
const root = resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(join(tmpdir(), 'chapters-'));
const chapter = join(folder, '04-two-screws.md');
let server: ViteDevServer;

beforeAll(async () => {
  cpSync(join(root, 'chapters'), folder, { recursive: true });
  server = await createServer({
    root,
    configFile: false,
    appType: 'mpa',
    logLevel: 'silent',
    publicDir: 'widgets/site/public',
    plugins: [site({ chapters: folder })],
    cacheDir: join(folder, 'cache'),
    server: { port: 0, host: 'localhost' },
  });
  await server.listen();
  // What a dev server does once, for the first page: a slow machine takes longer over it than a page is waited for.
  await fetch(`${server.resolvedUrls?.local[0]}two-screws.html`);
  await server.warmupRequest('/widgets/client/main.ts');
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

it('puts a saved chapter in the place of the page, with the reader’s numbers, and the page before hears nothing more', async () => {
  const { page } = await visit('two-screws.html', { from: server.resolvedUrls?.local[0] ?? '', fresh: true });
  const text = readFileSync(chapter, 'utf8');
  const save = async (last: string) => {
    writeFileSync(chapter, `${text}\n${last}\n`);
    await page.waitForFunction(
      (said) => [...document.querySelectorAll('article > p')].some((p) => p.textContent === said),
      last,
    );
  };
  await type(fieldIn(await shown(figure(page, 'section')), /^Thread A/i), 'M12x1.5');
  await written(page);
  // What pages listen to beyond their own body from here on.
  await page.evaluate(() => {
    const asked: (AbortSignal | undefined)[] = [];
    Object.assign(window, { asked });
    const add = EventTarget.prototype.addEventListener;
    EventTarget.prototype.addEventListener = function (...given: Parameters<typeof add>) {
      const [, , options] = given;
      if (this === window || this === document) asked.push(typeof options === 'object' ? options.signal : undefined);
      add.apply(this, given);
    };
  });
  const listening = () =>
    page.evaluate(() =>
      (window as unknown as { asked: (AbortSignal | undefined)[] }).asked.map((signal) => signal?.aborted),
    );
  await save('Saved once.');
  const section = await shown(figure(page, 'section'));
  expect(await sentence(section)).toContain('43.75 µm');
  expect(await fieldIn(section, /^Thread A/i).inputValue()).toBe('M12×1.5');
  const first = await listening();
  expect(first.length).toBeGreaterThan(2);
  expect(new Set(first)).toEqual(new Set([false]));
  await section.getByRole('button', { name: 'Show large' }).click();
  await save('Saved twice.');
  expect((await listening()).slice(0, first.length)).toEqual(first.map(() => true));
  expect(await page.evaluate(() => document.documentElement.classList.contains('projecting'))).toBe(false);
  expect(await page.evaluate(() => document.querySelectorAll('.projector-bar').length)).toBe(0);

  writeFileSync(chapter, `${text}\nIt moves 3 mm.\n`);
  await page.waitForSelector('.mistakes');
  expect(await words(page.locator('.mistakes'))).toMatch(
    /^1 to mend in the chapter.*04-two-screws\.md:\d+ “3 mm” is typed by hand/,
  );
});
