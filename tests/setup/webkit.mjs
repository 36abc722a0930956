/** Where WebKitGTK's browser for tests and its driver are; Debian puts the browser in a folder of the machine's kind. */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

export const WEBKIT_DRIVER = process.env.WEBKIT_DRIVER ?? '/usr/bin/WebKitWebDriver';

const found = (libraries) => {
  if (!existsSync(libraries)) return undefined;
  return readdirSync(libraries)
    .map((folder) => join(libraries, folder, 'webkit2gtk-4.1/MiniBrowser'))
    .find((path) => existsSync(path));
};

/** Looks anew whenever it is asked: the packages may have been installed since. */
export const miniBrowser = (libraries = '/usr/lib') =>
  process.env.MINI_BROWSER ?? found(libraries) ?? join(libraries, 'webkit2gtk-4.1/MiniBrowser');
