/** The browser engines in which the notebook is tested, the project of each, and what it takes to have them, looked for when asked. */
import { existsSync } from 'node:fs';
import { chromiumForTests } from './chromium.mjs';
import { FIREFOX } from './firefox.mjs';
import { miniBrowser, WEBKIT_DRIVER } from './webkit.mjs';

export const ENGINES = [
  {
    engine: 'chromium',
    project: 'browser',
    name: 'Chromium',
    files: () => [chromiumForTests()],
    packages: ['chromium', 'chromium-headless-shell', 'fonts-liberation'],
    mend: 'Install it, or name another with CHROMIUM=/path/to/chromium.',
  },
  {
    engine: 'firefox',
    project: 'browser-firefox',
    name: 'Firefox',
    files: () => [FIREFOX],
    packages: ['firefox-esr', 'fonts-liberation'],
    mend: 'Install it, or name another with FIREFOX=/path/to/firefox.',
  },
  {
    engine: 'webkit',
    project: 'browser-webkit',
    name: 'WebKit',
    files: () => [WEBKIT_DRIVER, miniBrowser(), '/usr/bin/xvfb-run'],
    packages: ['webkit2gtk-driver', 'xvfb', 'xauth', 'fonts-liberation'],
    mend: 'Install WebKitGTK with its driver, and xvfb, or name them with WEBKIT_DRIVER= and MINI_BROWSER=.',
  },
];

/** The files of an engine that are not on this machine. */
export const missing = ({ files }) => files().filter((file) => !existsSync(file));

export const leftOut = (engine) =>
  `${engine.name} is left out, and the tests in it: ${missing(engine).join(', ')} not found. ${engine.mend}`;
