/** Loads a module of the rooms with all that it imports, for what runs without a page: bundled first, which is several times as quick as one file after another. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { inLanguage, languageNamed } from './language.mjs';

const root = resolve(import.meta.dirname, '../..');
/** Beside the packages, so that what a module imports of them is found. */
const FOLDER = resolve(root, 'node_modules/.cache/rooms');

/** `file` as seen from the root of the repository. */
export const loadRooms = async (file, language = languageNamed()) => {
  const built = await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    plugins: inLanguage(language),
    build: { ssr: true, write: false, minify: false, rolldownOptions: { input: resolve(root, file) } },
  });
  const [{ code }] = [built].flat().flatMap(({ output }) => output);
  const name = `${basename(file, '.ts')}-${language}-`;
  const own = `${name}${createHash('sha256').update(code).digest('hex').slice(0, 16)}.mjs`;
  const place = join(FOLDER, own);
  if (!existsSync(place)) {
    mkdirSync(FOLDER, { recursive: true });
    for (const old of readdirSync(FOLDER))
      if (old.startsWith(name) && old.endsWith('.mjs')) rmSync(join(FOLDER, old), { force: true });
    // Whole under a name of its own first: another process may look for it.
    const half = `${place}.${process.pid}`;
    writeFileSync(half, code);
    renameSync(half, place);
  }
  return import(pathToFileURL(place).href);
};
