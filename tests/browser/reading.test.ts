/** The pages as a book: without script, on paper, from a folder, under any path. */
import { createReadStream, existsSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { howMany, inDeep, some, these } from '../support/deep.ts';
import { beyond, type Page } from '../support/driven.ts';
import { engine, inChromium, needs } from '../support/engines.ts';
import { unpainted } from '../support/layout-checks.ts';
import {
  asFiles,
  awake,
  fieldIn,
  figure,
  pageNames,
  readThrough,
  seenInPrint,
  sentence,
  sentenceWith,
  shown,
  type,
  useBrowser,
  words,
  written,
} from '../support/page.ts';
import { print } from '../support/paper.ts';

const { visit } = useBrowser();

/** A page of each kind: the front, plots, a worker, files and tables, papers. */
const KINDS = ['index.html', 'two-screws.html', 'measured-parts.html', 'calibrate.html', 'class-material.html'];
/** Pages differ from each other in the same way in every engine, so one engine is asked for all of them, and that in a deep run. */
const read = (): readonly string[] =>
  engine() === 'chromium' ? these(pageNames(), KINDS) : these(KINDS, ['measured-parts.html']);

describe('without script', () => {
  it('every page has its text, its numbers and a still picture in every figure', async () => {
    const { page, asked, turnTo } = await visit('index.html', { javaScriptEnabled: false });
    for (const name of read()) {
      await turnTo(name);
      expect(await page.locator('h1').count(), name).toBe(1);
      const figures = await page.locator('figure.live').evaluateAll((all) =>
        all.map((figure) => {
          const sides = [...figure.querySelectorAll('[data-stage] svg')].map((svg) =>
            Math.min(svg.clientWidth, svg.clientHeight),
          );
          return {
            tallest: Math.max(...sides),
            says: figure.querySelector('[data-says]')?.textContent ?? '',
            // The numbers it was drawn from, as a list of givens.
            names: figure.querySelectorAll('.inputs dt').length,
            givens: figure.querySelectorAll('.inputs dd').length,
          };
        }),
      );
      for (const { tallest, says, names, givens } of figures) {
        expect.soft(tallest, `${name}: ${says}`).toBeGreaterThan(15);
        expect.soft(says, name).toMatch(/\d.*\.\s*$/s);
        expect.soft(givens, `${name}: ${says}`).toBeGreaterThan(0);
        expect.soft(givens, `${name}: ${says}`).toBe(names);
      }
      for (const result of await page.locator('[data-example] [data-result]').allTextContents())
        expect(result, name).toMatch(/^=\s+.*[\d]/);
      expect(
        await page.locator('.q').evaluateAll((all) => all.filter((q) => !/\d/.test(q.textContent ?? '')).length),
      ).toBe(0);
      // Nothing stands there that only script could work; a test of ideas can be ticked on paper.
      const idle = page.locator('main button, main input:not([data-ideas] *), main select').locator('visible=true');
      expect(await idle.evaluateAll((all) => all.map((e) => e.outerHTML.slice(0, 100))), name).toEqual([]);
      // A box that scrolls is a stop for keys; what would slide is none.
      const stops = page.locator('[role=slider], [data-stage] [tabindex="0"]:not([role=group])');
      expect(await stops.evaluateAll((all) => all.map((e) => e.outerHTML.slice(0, 100))), name).toEqual([]);
      expect(asked.filter((url) => /plot-library|motion-plot/.test(url))).toEqual([]);
    }
  });

  it('the answer of a prediction and the table of a figure can still be opened', inChromium, async () => {
    const { page } = await visit('two-screws.html', { javaScriptEnabled: false });
    await page.locator('.predict summary').first().click();
    expect(await words(page.locator('.predict .reveal p').first())).toMatch(/^87\.50 µm\./);
    await page.locator('[data-figure=section] .numbers-behind summary').click();
    await page.locator('[data-figure=section] td', { hasText: '+87.50 µm' }).first().waitFor();
  });

  it('the pages print, each chapter on several sheets', inChromium, async (context) => {
    needs(context, 'paper');
    const { page, turnTo } = await visit('index.html', { javaScriptEnabled: false });
    for (const name of some(2, ['index.html', 'one-screw.html', 'two-screws.html'])) {
      await turnTo(name);
      const sheets = (await print(page)).length;
      expect(sheets, name).toBeGreaterThanOrEqual(name === 'index.html' ? 1 : 3);
      expect(sheets, name).toBeLessThan(40);
    }
  });
});

/** The width between the margins of A4, in pixels of 96 to the inch: 210 mm less twice 16. */
const BETWEEN_MARGINS = Math.floor((178 / 25.4) * 96);

describe('on paper', () => {
  it('every line of every derivation stands whole between the margins', async (context) => {
    needs(context, 'as printed');
    const { page, turnTo } = await visit('index.html', {
      javaScriptEnabled: false,
      fresh: true,
      viewport: { width: BETWEEN_MARGINS, height: 1000 },
    });
    await beyond(page).emulateMedia({ media: 'print' });
    let lines = 0;
    for (const name of read()) {
      await turnTo(name);
      const found = await page.locator('.derivation li').evaluateAll((all) =>
        all.map((li) => ({
          text: (li.textContent ?? '').slice(0, 60),
          // Where the last sign of the line ends, and where the boxes end that would cut it off.
          ends: Math.max(
            ...[...li.querySelectorAll('.katex-html .base, .why')].map((e) => e.getBoundingClientRect().right),
          ),
          cut: [...li.querySelectorAll('.left, .right')].some((e) => getComputedStyle(e).overflowX !== 'visible'),
        })),
      );
      for (const { text, ends, cut } of found) {
        expect.soft(cut, `${name}: ${text} scrolls`).toBe(false);
        expect.soft(ends, `${name}: ${text}`).toBeLessThanOrEqual(BETWEEN_MARGINS + 0.5);
      }
      lines += found.length;
    }
    expect(lines).toBeGreaterThan(engine() === 'chromium' ? howMany(10, 100) : 10);
  });

  const ANSWERS = '.reveal > p, .hint > p, .worked .steps > li, .worked .answer';
  /** Tables of more than fifteen rows are left to the screen. */
  const FOLDED = '.numbers-behind table:not(:has(tbody > tr:nth-child(16)))';
  /** How many of these are to be seen. */
  const standing = (page: Page, what: string) =>
    page.locator(what).evaluateAll((all) => all.filter((e) => e.checkVisibility()).length);
  /** The page as it prints when a button of that name is pressed: how much of each stands then, and whether the last steps are whole. */
  const printed = async (page: Page, name: string) => {
    await beyond(page).emulateMedia({ media: 'print' });
    const seen = await seenInPrint(page, name, [ANSWERS, FOLDED, '.worked .steps .result']);
    await beyond(page).emulateMedia({ media: 'screen' });
    const [answers, folded, results] = seen;
    return { answers, folded, results };
  };

  it('keeps the answers back without script, and opens what is folded besides', inDeep, async (context) => {
    needs(context, 'as printed');
    const { page } = await visit('two-screws.html', { javaScriptEnabled: false, fresh: true });
    await page.locator('.predict summary').first().click();
    await beyond(page).emulateMedia({ media: 'print' });
    expect(await page.locator('.reveal > p').first().isVisible(), 'opened by the reader').toBe(true);
    expect(await page.locator('.reveal > p').nth(1).isVisible()).toBe(false);
    for (const what of ['.hint > p', '.worked .answer', '.hint summary', '.worked summary'])
      expect(await page.locator(what).first().isVisible(), what).toBe(false);
    expect(await page.locator(FOLDED).first().isVisible()).toBe(true);
    expect(await page.locator('.exercise .question').first().isVisible()).toBe(true);
  });

  it('shows the answers that the reader has opened, or all of them when asked', inDeep, async (context) => {
    needs(context, 'as printed');
    const { page } = await visit('two-screws.html', { fresh: true });
    const all = await page.locator(ANSWERS).count();
    const tables = await page.locator(FOLDED).count();
    const steps = await page.locator('.worked .steps .result').count();
    expect(await printed(page, 'Print to read')).toEqual({ answers: 0, folded: tables, results: 0 });
    await page.locator('.predict summary').first().click();
    expect(await printed(page, 'Print to read')).toEqual({ answers: 1, folded: tables, results: 0 });
    // An exercise that was solved leaves its last step to the reader, but not where all answers are asked for.
    await page.evaluate(() =>
      localStorage.setItem('notebook-progress', JSON.stringify({ 'pair-turned': { tried: 1, right: 1 } })),
    );
    await page.reload();
    await page.waitForSelector('html[data-awake]');
    expect(await page.locator('.steps > li.left-out').count()).toBe(1);
    expect(await printed(page, 'Print with all answers')).toEqual({ answers: all, folded: tables, results: steps });
    expect(await standing(page, ANSWERS), 'closed again after it').toBe(0);
    expect(await printed(page, 'Print to read')).toEqual({ answers: 0, folded: tables, results: 0 });
  });

  it(
    'has by the browser’s own command no answer either, and leaves the page as it was',
    inChromium,
    async (context) => {
      needs(context, 'paper');
      const { page } = await visit('two-screws.html');
      const shut = await page.locator('details:not([open])').count();
      expect(shut).toBeGreaterThan(1);
      await page.evaluate((answers) => {
        window.addEventListener('beforeprint', () => {
          const open = (selector: string) => document.querySelectorAll(`${selector}[open]`).length;
          document.body.dataset.met = `${open(answers)} of ${open('details')}`;
        });
      }, ':is(.reveal, .hint, .worked)');
      await print(page, 'Letter');
      expect(await page.locator('body').getAttribute('data-met')).toMatch(/^0 of [1-9]/);
      expect(await page.locator('details:not([open])').count()).toBe(shut);
    },
  );
});

describe('opened as files', () => {
  it('every page wakes, every figure comes alive with all its hatchings and the plots are fetched, with no fault on the console', async () => {
    const { page, turnTo } = await visit('index.html', { from: asFiles() });
    for (const name of read()) {
      await turnTo(name);
      await readThrough(page);
      expect(await page.locator('.units input').count()).toBe(3);
      expect(await unpainted(page), name).toEqual([]);
    }
  });

  it('what the reader types works, stays in the address and is there again after a reload', inDeep, async () => {
    const { page } = await visit('two-screws.html', { from: asFiles() });
    const section = await shown(figure(page, 'section'));
    await type(fieldIn(section, /thread A/i), 'M8x1.25');
    await type(fieldIn(section, /thread C/i), '5/16-18');
    expect(await words(section.locator('[data-read=perTurn]'))).toBe('+161.1 µm');
    const url = await written(page);
    expect(url.searchParams.get('foot.A')).toBe('M8×1.25');
    await page.reload();
    expect(await fieldIn(section, /thread A/i).inputValue()).toBe('M8×1.25');
    expect(await words((await shown(section)).locator('[data-read=perTurn]'))).toBe('+161.1 µm');
  });

  it('a plot from a file follows the numbers', inDeep, async () => {
    const { page } = await visit('two-screws.html?foot.A=M8x1.25&foot.C=5/16-18', { from: asFiles() });
    const plot = await shown(figure(page, 'motion-plot'));
    await sentenceWith(plot, 'At 0.5 turns it is at +80.56 µm');
  });
});

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};

describe('under a sub-path of a plain web server', () => {
  let server: Server;
  let from = '';
  beforeAll(async () => {
    const under = '/some/sub/path/';
    server = createServer((request, response) => {
      const path = decodeURIComponent(new URL(request.url ?? '/', 'http://x').pathname);
      const file = join(inject('folder'), normalize(path.slice(under.length) || 'index.html'));
      if (!path.startsWith(under) || !existsSync(file)) {
        response.writeHead(404).end();
        return;
      }
      response.setHeader('content-type', TYPES[extname(file)] ?? 'application/octet-stream');
      createReadStream(file).pipe(response);
    });
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    from = `http://127.0.0.1:${(server.address() as AddressInfo).port}${under}`;
  });
  afterAll(() => {
    server.closeAllConnections();
    server.close();
  });

  it(
    'pages of each kind wake, with their fonts, plots, workers and neighbours, and ask for nothing elsewhere',
    inChromium,
    async (context) => {
      needs(context, 'requests');
      const { page, asked, turnTo } = await visit('', { from, fresh: true });
      for (const name of some(3, KINDS)) {
        await turnTo(name);
        await readThrough(page);
      }
      expect(asked.some((url) => /plot-library-.*\.js$/.test(url))).toBe(true);
      expect(asked.some((url) => /\.woff2$/.test(url))).toBe(true);
      expect(asked.length).toBeGreaterThan(8);
    },
  );

  it('leads from page to page by its own links', inDeep, async () => {
    const { page } = await visit('index.html', { from });
    await page.locator('.contents a').first().click();
    await page.waitForSelector('html[data-awake]');
    await page.locator('a[rel=next]').click();
    await page.waitForURL(/inch-and-starts/);
    await page.locator('.home').click();
    await page.waitForURL(/index\.html$/);
  });
});

describe('a page', () => {
  it('is dressed by what it brings with it, before anything else has come', inChromium, async (context) => {
    needs(context, 'requests');
    const opened = await visit('index.html', { fresh: true });
    const { page } = opened;
    const looks = () =>
      page.evaluate(() =>
        ['body', '.masthead', 'h1', '[data-figure=section] svg'].map((place) => {
          const { color, backgroundColor, fontFamily, display, maxWidth } = getComputedStyle(
            document.querySelector(place) ?? document.documentElement,
          );
          return [place, color, backgroundColor, fontFamily, display, maxWidth];
        }),
      );
    await beyond(page).route(/\/assets\//, (route) => route.abort());
    await page.goto(`${inject('site')}two-screws.html`);
    const bare = await looks();
    await beyond(page).unroute(/\/assets\//);
    await page.goto(`${inject('site')}two-screws.html`);
    await awake(page);
    expect(bare).toEqual(await looks());
    expect(bare[0]?.[3]).toContain('Palatino');
    // These faults were asked for.
    opened.faults.splice(0);
  });
});

describe('a page that is left by a link and come back to', () => {
  it('has every number and answer that was typed, where the engine kept the page', async (context) => {
    needs(context, 'kept pages');
    const { page } = await visit('two-screws.html', { fresh: true });
    const turns = fieldIn(await shown(figure(page, 'section')), /turns/i);
    await type(turns, '3');
    const guess = page.locator('[data-predict] input[type=text]').first();
    await guess.fill('87');
    await page.evaluate(() => {
      Object.assign(window, { before: true });
      document.querySelector<HTMLElement>('nav a[href^="one-screw"]')?.click();
    });
    await page.waitForFunction(() => location.pathname.endsWith('one-screw.html'));
    await awake(page);
    // Playwright waits for a load, which an engine that kept the page does not make.
    await page.evaluate(() => history.back());
    await page.waitForFunction(() => location.pathname.endsWith('two-screws.html'));
    await awake(page);
    expect(await turns.inputValue()).toBe('3');
    if (await page.evaluate(() => 'before' in window)) expect(await guess.inputValue()).toBe('87');
    else expect(engine()).not.toBe('webkit');
  });
});

describe('an address with a heading in it', () => {
  const HEADINGS = ['lead-error', 'effort-and-feel', 'calibrate', 'three-feet'].map((slug) => `${slug}.html#exercises`);
  for (const [where, way] of [
    ['a desktop', {}],
    ['a phone', { viewport: { width: 390, height: 844 } }],
  ] as const)
    it(
      `opens at that heading on ${where}, for a reader to whom motion may be shown, and stays there`,
      inChromium,
      async () => {
        const { page, turnTo } = await visit('index.html', { ...way, reducedMotion: 'no-preference', fresh: true });
        const top = () =>
          page.evaluate(() => document.querySelector('#exercises')?.getBoundingClientRect().top ?? -1e9);
        for (const address of some(2, HEADINGS)) {
          await turnTo(address);
          const padding = await page.evaluate(() =>
            Number.parseFloat(getComputedStyle(document.documentElement).fontSize),
          );
          // The figures near it come alive meanwhile.
          for (let i = 0; i < 3; i++) {
            await page.waitForTimeout(300);
            expect.soft(Math.abs((await top()) - padding), address).toBeLessThan(12);
          }
        }
      },
    );
});

describe('the scripts of the plots', () => {
  it('are fetched only when a plot comes near the window, the library once', inChromium, async (context) => {
    needs(context, 'requests');
    const { page, asked } = await visit('two-screws.html', { fresh: true });
    await page.waitForTimeout(300);
    expect(asked.filter((url) => /plot-library|motion-plot/.test(url))).toEqual([]);
    await shown(figure(page, 'motion-plot'));
    expect(asked.filter((url) => /plot-library/.test(url)).length).toBe(1);
    expect(asked.filter((url) => /motion-plot/.test(url)).length).toBe(1);
  });

  it('leaves the printed picture where it can’t be fetched', inDeep, async (context) => {
    needs(context, 'requests');
    const opened = await visit('index.html', { fresh: true });
    const { page } = opened;
    await beyond(page).route(/motion-plot-/, (route) => route.abort());
    await page.goto(`${inject('site')}two-screws.html`);
    const plot = await shown(figure(page, 'motion-plot'), false);
    await page.waitForTimeout(200);
    expect(await plot.locator('svg').count()).toBeGreaterThan(2);
    expect(await sentence(plot)).toContain('+350.0 µm');
    // These faults were asked for.
    opened.faults.splice(0);
  });
});
