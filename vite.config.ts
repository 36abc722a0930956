import { resolve } from 'node:path';
import { defineConfig, type UserConfig } from 'vite';
import { inLanguage, languageNamed } from './widgets/site/language.mjs';
import { site } from './widgets/site/plugin.ts';

const root = import.meta.dirname;

/** The edition, and those its pages lead to as `de=de/`: as the build says, or for the dev server as its starter says. */
const language = languageNamed(process.env.NOTEBOOK_LANGUAGE || undefined);
const beside = process.env.NOTEBOOK_BESIDE ?? '';

/** The dev server, and the pages with the script they share; widgets/site/build.mjs builds the rest and then this. */
export default defineConfig(
  ({ command }): UserConfig => ({
    root,
    base: './',
    appType: 'mpa',
    publicDir: 'widgets/site/public',
    plugins: [
      site({ chapters: resolve(root, 'chapters'), language, beside }),
      ...inLanguage(language, { tellsRelations: command === 'serve' }),
    ],
    build: {
      target: 'es2022',
      modulePreload: false,
      rolldownOptions: {
        input: { notebook: resolve(root, 'widgets/client/main.ts') },
        output: {
          format: 'iife',
          codeSplitting: false,
          entryFileNames: 'assets/[name]-[hash].js',
        },
      },
    },
    server: { port: 5180 },
    preview: { port: 5181 },
  }),
);
