/**
 * Pages of the built notebook in one browser a test file. Whatever a page does wrong while it is open is gathered (errors
 * on the console, uncaught errors, dialogs, requests that leave the site) and fails the test that opened it.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, firefox } from 'playwright-core';
import { afterEach, beforeAll, expect, inject } from 'vitest';
import { chromiumForTests, LAUNCH } from '../setup/chromium.mjs';
import { firefoxFor } from '../setup/firefox.mjs';
import { acknowledgeAtOnce } from './at-once.ts';
import { beyond, type Locator, type Page } from './driven.ts';
import { engine } from './engines.ts';
import { withoutScript } from './served.ts';
import { heardBy, launchWebkit, type WebkitBrowser } from './webkit/browser.ts';

export interface Visit {
  readonly page: Page;
  /** Faults so far. */
  readonly faults: string[];
  /** Addresses asked for, in order. */
  readonly asked: string[];
  /** The site’s address. */
  readonly from: string;
  /** Opens another page of the site in the same place, awake unless it has no script. */
  readonly turnTo: (address: string) => Promise<void>;
  /** Closes a fresh page before its test ends; its faults are gathered all the same. */
  readonly close: () => Promise<void>;
}

export interface Way extends BrowserContextOptions {
  /** Where the pages are; the served notebook unless told. Ends in a slash. */
  readonly from?: string;
  /** A page of its own: for tests that change how it looks or loads, or count what it asks for. */
  readonly fresh?: boolean;
  /** In a browser that shares nothing with that of other pages; so is every fresh page where the driver has contexts. */
  readonly apart?: boolean;
}

export const WIDE = { width: 1280, height: 900 };
export const NARROW = { width: 360, height: 740 };

/** The folder of the notebook as an address. */
export const asFiles = (): string => pathToFileURL(inject('folder')).href.replace(/\/?$/, '/');

/** Every page of the built notebook: `index.html` first, then the chapters; the one-file edition holds them again. */
export const pageNames = (): string[] =>
  readdirSync(inject('folder'))
    .filter((name) => name.endsWith('.html') && !name.includes('one-file'))
    .sort((a, b) => Number(b === 'index.html') - Number(a === 'index.html'));

interface Kept {
  readonly page: Page;
  readonly way: string;
  readonly fresh: boolean;
  /** The visit the page now serves; its faults are written here. */
  visit: Visit | undefined;
}

export interface Needs {
  /** Whether solids are drawn, which without a graphics card costs a second a page; else pages show their still drawing, as to a reader who has none. */
  readonly solids?: boolean;
}

/** What the files that one process runs after another share, since starting a browser costs more than a test; it goes with the process. */
const held = globalThis as { browsers?: Map<string, Promise<Browser | WebkitBrowser>>; kept?: Map<string, Kept[]> };
held.browsers ??= new Map();
held.kept ??= new Map();
const { browsers, kept: keptBy } = held as Required<typeof held>;

/** The browser for a reader who prefers this; where the driver can't tell a page, a browser is started so. */
const browserFor = ({ colorScheme, forcedColors }: BrowserContextOptions, solids: boolean, apart = false) => {
  const likes = { dark: colorScheme === 'dark', forced: forcedColors === 'active' };
  const another = apart && engine() === 'webkit' ? ' another' : '';
  const key = `${engine()} ${engine() === 'chromium' ? solids : JSON.stringify(likes)}${another}`;
  const open = browsers.get(key);
  if (open) return open;
  const started: Promise<Browser | WebkitBrowser> =
    engine() === 'webkit'
      ? launchWebkit(likes)
      : engine() === 'firefox'
        ? firefox.launch(firefoxFor(likes))
        : chromium.launch({
            ...LAUNCH,
            args: solids ? LAUNCH.args : [...LAUNCH.args, '--disable-3d-apis'],
            executablePath: chromiumForTests(),
          });
  browsers.set(key, started);
  return started;
};

/**
 * `visit` opens a page that is awake. Pages are kept from test to test, emptied of what they stored, since opening one costs more than
 * a test; a `fresh` one is neither taken from there nor kept.
 */
export const useBrowser = ({
  solids = false,
}: Needs = {}): {
  visit: (address: string, way?: Way) => Promise<Visit>;
} => {
  const place = `${engine()} ${solids}`;
  const kept = () => keptBy.get(place) ?? [];
  beforeAll(async () => {
    if (engine() === 'firefox') acknowledgeAtOnce();
    await browserFor({}, solids);
  });
  afterEach(async () => {
    const used = kept().filter((k) => k.visit);
    if (engine() === 'webkit') for (const { page, visit } of used) visit?.faults.push(...(await heardBy(page)));
    const faults = [...heard, ...used.flatMap((k) => k.visit?.faults ?? [])];
    heard = [];
    for (const k of used) {
      if (k.fresh) await shut(k.page);
      else {
        await k.page.evaluate(() => {
          localStorage.clear();
          sessionStorage.clear();
          // What it would keep as it is left.
          Storage.prototype.setItem = () => {};
        });
        await k.page.goto('about:blank');
      }
      k.visit = undefined;
    }
    keptBy.set(
      place,
      kept().filter((k) => !k.fresh),
    );
    expect(
      faults.map((f) => f.slice(0, 300)),
      'faults of the pages that were open',
    ).toEqual([]);
  });

  const shut = (page: Page): Promise<void> => (engine() === 'webkit' ? page.close() : beyond(page).context().close());
  /** Of pages that their test closed itself. */
  let heard: string[] = [];

  const open = async (way: string, fresh: boolean, apart: boolean, options: BrowserContextOptions): Promise<Kept> => {
    const browser = await browserFor(options, solids, apart);
    if ('open' in browser) {
      const one: Kept = {
        page: await browser.open({ viewport: WIDE, ...options }),
        way,
        fresh,
        visit: undefined,
      };
      keptBy.set(place, [...kept(), one]);
      return one;
    }
    const context = await browser.newContext({
      viewport: WIDE,
      reducedMotion: 'reduce',
      // What a page asks for is counted and stopped here, which a worker would hide.
      serviceWorkers: 'block',
      ...options,
    });
    // What bars a page from WebGL does not bar its workers.
    if (!solids && engine() === 'chromium')
      await context.addInitScript(
        'if (self.HTMLCanvasElement) delete HTMLCanvasElement.prototype.transferControlToOffscreen',
      );
    // Not every engine says on its console what the page’s policy stopped.
    await context.addInitScript(() =>
      document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI }) =>
        console.error(`policy: ${effectiveDirective} ${blockedURI}`),
      ),
    );
    const page = await context.newPage();
    const one: Kept = { page, way, fresh, visit: undefined };
    const fault = (text: string) => one.visit?.faults.push(text);
    page.on('console', (message) => {
      // Said by the test's own browser, which is told to block it.
      if (message.text().startsWith('Service Worker registration blocked by')) return;
      // A driver without a graphics card says that it is slow.
      if (/^\[\.WebGL-.*GL Driver Message .*Performance/.test(message.text())) return;
      if (message.type() === 'error' || message.type() === 'warning') fault(`console: ${message.text()}`);
    });
    page.on('pageerror', (error) => fault(`uncaught: ${error.message}`));
    page.on('dialog', (dialog) => {
      fault(`dialog: ${dialog.message()}`);
      void dialog.dismiss();
    });
    page.on('response', (response) => {
      if (response.status() >= 400) fault(`${response.status()}: ${response.url()}`);
    });
    page.on('request', (request) => {
      const url = request.url();
      one.visit?.asked.push(url);
      if (!url.startsWith(one.visit?.from ?? '') && !/^(?:data|blob|about):/.test(url)) fault(`left the site: ${url}`);
    });
    keptBy.set(place, [...kept(), one]);
    return one;
  };

  return {
    visit: async (address, { from = inject('site'), fresh = false, apart = false, ...options } = {}) => {
      const way = JSON.stringify(options);
      const free = fresh ? undefined : kept().find((k) => !k.visit && k.way === way);
      const one = free ?? (await open(way, fresh, apart, options));
      const still = options.javaScriptEnabled === false;
      const turnTo = async (to: string) => {
        await one.page.goto(still && engine() !== 'chromium' ? withoutScript(from + to, inject('site')) : from + to);
        if (!still) await awake(one.page);
      };
      const close = async () => {
        if (engine() === 'webkit') heard.push(...(await heardBy(one.page)));
        heard.push(...(one.visit?.faults ?? []));
        keptBy.set(
          place,
          kept().filter((k) => k !== one),
        );
        await shut(one.page);
      };
      one.visit = { page: one.page, faults: [], asked: [], from, turnTo, close };
      await turnTo(address);
      return one.visit;
    },
  };
};

export const awake = async (page: Page): Promise<void> => {
  await page.waitForSelector('html[data-awake]');
  await settled(page);
};

/**
 * After the next two frames, when the page has drawn what it was told, and its words have followed; those out of sight follow when the numbers rest,
 * or the reader turns to another window.
 */
export const settled = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((done) =>
        requestAnimationFrame(() =>
          requestAnimationFrame(() =>
            setTimeout(() => {
              window.dispatchEvent(new Event('blur'));
              done();
            }),
          ),
        ),
      ),
  );

/** After the address has followed, which it does likewise. */
export const written = async (page: Page): Promise<URL> => {
  await settled(page);
  return new URL(await page.evaluate(() => location.href));
};

/** The n-th figure of a widget on the page. */
export const figure = (page: Page, widget: string, index = 0): Locator =>
  page.locator(`figure[data-figure="${widget}"]`).nth(index);

/**
 * Brings a figure into view, where it is drawn, and waits until it is alive, its script having come; or, not `alive`, only till it is
 * drawn. Its groups of fields and what is read off are opened, as by a reader who works with all of it; or, not `unfold`, left as they
 * are.
 */
export const shown = async (place: Locator, alive = true, unfold = true): Promise<Locator> => {
  if (unfold)
    await place.evaluate((figure: HTMLElement) => {
      const folds = figure.querySelectorAll<HTMLDetailsElement>('details.group, details.numbers-behind');
      for (const fold of folds) fold.open = true;
    });
  await place.scrollIntoViewIfNeeded();
  // Opened out, a figure is higher than a window; the picture is what a hand goes to.
  const stage = place.locator('[data-stage]');
  if ((await stage.count()) > 0) await stage.first().scrollIntoViewIfNeeded();
  const scripted = (await place.page().locator('html[data-awake]').count()) > 0;
  if (alive && scripted && (await place.getAttribute('data-figure')) !== null)
    await place.and(place.page().locator('[data-awake]')).waitFor({ timeout: 15_000 });
  await settled(place.page());
  return place;
};

/** Draws every figure, as a reader who has scrolled through, a few at a time: a window that holds all is painted in seconds. */
export const readThrough = async (page: Page): Promise<void> => {
  const size = page.viewportSize() ?? WIDE;
  await page.setViewportSize({ width: size.width, height: 6000 });
  const further = () =>
    page.evaluate(() => {
      const before = scrollY;
      scrollBy(0, innerHeight);
      return scrollY > before;
    });
  do await settled(page);
  while (await further());
  await page.waitForFunction(() =>
    [...document.querySelectorAll<HTMLElement>('figure.live')].every((figure) => figure.dataset.awake),
  );
  await page.evaluate(() => scrollTo(0, 0));
  await page.setViewportSize(size);
  await settled(page);
};

export const fieldIn = (place: Locator, label: string | RegExp): Locator =>
  place.getByLabel(label).and(place.locator('input[type=text], textarea'));

/** Types a text into a field as a reader does: all of it replaced, without leaving the field. */
export const type = async (field: Locator, text: string): Promise<void> => {
  await field.fill(text);
  await settled(field.page());
};

/** Text with plain spaces. */
export const words = async (place: Locator): Promise<string> =>
  ((await place.textContent()) ?? '').replace(/\u00a0/g, ' ').trim();

/** The sentence under a figure. */
export const sentence = (place: Locator): Promise<string> => words(place.locator('[data-says]'));

/** Waits until the sentence under a figure says this, as when its script has still to come. */
export const sentenceWith = async (place: Locator, part: string): Promise<string> => {
  for (let i = 0; i < 100 && !(await sentence(place)).includes(part); i++) await place.page().waitForTimeout(50);
  const text = await sentence(place);
  expect(text).toContain(part);
  return text;
};

/** What stands beside a field: a note, or the reason why the text is not in force. */
export const beside = (field: Locator): Promise<string> =>
  words(field.locator('xpath=ancestor::*[contains(@class, "field")][last()]').locator('.field-note'));

/** Chooses the units of the page, at its head, and comes back to where the reader was. */
export const units = async (page: Page, view: 'metric' | 'inch' | 'both'): Promise<void> => {
  const from = await page.evaluate(() => scrollY);
  await page.locator(`.units input[value=${view}]`).check();
  await page.evaluate((y) => scrollTo(0, y), from);
  await settled(page);
};

/** What a click hands the reader as a file. Where the driver tells of no downloads, it is taken as the page offers it. */
export const saved = async (page: Page, act: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> => {
  if (engine() === 'chromium') {
    const [download] = await Promise.all([beyond(page).waitForEvent('download'), act()]);
    return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
  }
  await page.evaluate(() => {
    const blobs = new Map<string, Blob>();
    const made = URL.createObjectURL.bind(URL);
    URL.createObjectURL = (blob: Blob) => {
      const address = made(blob);
      blobs.set(address, blob);
      return address;
    };
    HTMLAnchorElement.prototype.click = function (this: HTMLAnchorElement) {
      Object.assign(window, { offered: { name: this.download, blob: blobs.get(this.href) } });
    };
  });
  await act();
  await page.waitForFunction(() => 'offered' in window);
  const { name, base64 } = await page.evaluate(async () => {
    const { offered } = window as unknown as { offered: { name: string; blob: Blob } };
    Reflect.deleteProperty(window, 'offered');
    const bytes = new Uint8Array(await offered.blob.arrayBuffer());
    return { name: offered.name, base64: btoa(Array.from(bytes, (b) => String.fromCharCode(b)).join('')) };
  });
  return { name, bytes: Buffer.from(base64, 'base64') };
};

/** Presses a button that prints, and counts what stands on the paper of each selector; figures are waited for before. */
export const seenInPrint = (page: Page, button: string, selectors: readonly string[]): Promise<number[]> =>
  page.evaluate(
    ([name, asked]) =>
      new Promise<number[]>((done) => {
        // What a browser does about printing, with a look at the page between.
        window.print = () => {
          window.dispatchEvent(new Event('beforeprint'));
          const seen = asked.map(
            (selector) =>
              [...document.querySelectorAll(selector)].filter((e) => e.checkVisibility({ visibilityProperty: true }))
                .length,
          );
          window.dispatchEvent(new Event('afterprint'));
          done(seen);
        };
        [...document.querySelectorAll('button')].find((b) => b.textContent === name)?.click();
      }),
    [button, selectors] as const,
  );
