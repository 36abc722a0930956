/** Where WebKitGTK's browser for tests and its driver are; Debian puts the browser in a folder of the machine's kind. */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

export const WEBKIT_DRIVER = process.env.WEBKIT_DRIVER ?? '/usr/bin/WebKitWebDriver';

const found = () => {
  const libraries = '/usr/lib';
  if (!existsSync(libraries)) return undefined;
  return readdirSync(libraries)
    .map((folder) => join(libraries, folder, 'webkit2gtk-4.1/MiniBrowser'))
    .find((path) => existsSync(path));
};

export const MINI_BROWSER = process.env.MINI_BROWSER ?? found() ?? '/usr/lib/webkit2gtk-4.1/MiniBrowser';
