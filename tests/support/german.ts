/** The German edition as modules, bundled once for its sources. */
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { inLanguage } from '../../widgets/site/language.mjs';
import type * as InGerman from './in-german.ts';
import { keptFile } from './kept.ts';

const bundle = async (): Promise<string> => {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    plugins: inLanguage('de'),
    build: {
      ssr: true,
      write: false,
      minify: false,
      rollupOptions: { input: resolve(import.meta.dirname, 'in-german.ts') },
    },
  });
  const [one] = Array.isArray(built) ? built : [built];
  const [chunk] = one && 'output' in one ? one.output : [];
  if (chunk?.type !== 'chunk') throw new Error('The German edition made no script.');
  return chunk.code;
};

export const german = async (): Promise<typeof InGerman> =>
  import(/* @vite-ignore */ pathToFileURL(await keptFile('in-german.mjs', bundle)).href);
