/** WebKit as the tests open it: one browser a test file, whose windows share what they store and are used again when closed. */
import type { BrowserContextOptions } from 'playwright-core';
import type { Page } from '../driven.ts';
import { startWebkit } from './driver.ts';
import { WebkitPage } from './page.ts';

export interface WebkitBrowser {
  readonly open: (options: BrowserContextOptions) => Promise<Page>;
  readonly close: () => Promise<void>;
}

export const launchWebkit = async (likes: { dark: boolean }): Promise<WebkitBrowser> => {
  const driver = await startWebkit(likes);
  const at = { handle: '' };
  // The last window closed would end the session, so none is.
  const free = [(await driver.ask('GET', '/window')) as string];
  const open = async ({ viewport }: BrowserContextOptions): Promise<Page> => {
    const handle = free.pop() ?? ((await driver.ask('POST', '/window/new', {})) as { handle: string }).handle;
    const page = new WebkitPage(driver, at, handle, {
      close: () => free.push(handle),
      newPage: () => open({ viewport: viewport ?? null }),
    });
    await page.goto('about:blank');
    if (viewport) await page.setViewportSize(viewport);
    return page;
  };
  return { open, close: driver.close };
};

/** What the listener on the page has kept since it was last asked. */
export const heardBy = (page: Page): Promise<string[]> =>
  page.evaluate(() => ((window as unknown as { heard?: string[] }).heard ?? []).splice(0));
