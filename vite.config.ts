import { resolve } from 'node:path';
import { defineConfig, type UserConfig } from 'vite';
import { site } from './widgets/site/plugin.ts';

const root = import.meta.dirname;

/** The dev server, and the pages with the script they share; widgets/site/build.mjs builds the rest and then this. */
export default defineConfig(
  (): UserConfig => ({
    root,
    base: './',
    appType: 'mpa',
    publicDir: 'widgets/site/public',
    plugins: [site({ chapters: resolve(root, 'chapters') })],
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
