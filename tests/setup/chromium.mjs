/** Where Chromium is, and how it is started where there is no desktop and no network. */
import { existsSync } from 'node:fs';

/** As readers have it. */
export const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';

/**
 * The same engine without the windows, menus and profiles of a browser: it opens a page for less than half the work, so the tests
 * take it where it is.
 */
export const SHELL = '/usr/bin/chromium-headless-shell';

/** Looks anew whenever it is asked: the package may have been installed since. */
export const chromiumForTests = () => process.env.CHROMIUM ?? (existsSync(SHELL) ? SHELL : CHROMIUM);

export const LAUNCH = {
  executablePath: CHROMIUM,
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};
