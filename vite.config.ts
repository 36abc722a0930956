import { resolve } from 'node:path';
import { defineConfig, type UserConfig } from 'vite';
import { WIDGETS } from './widgets/catalogue.ts';
import { builtPlots, press } from './widgets/press/plugin.ts';

const root = import.meta.dirname;

/**
 * Two builds, both classic scripts so that pages also run from a file: the plots first (fetched when one comes into
 * view), then the pages, which need its name.
 */
export default defineConfig(({ mode, command }): UserConfig => {
  const plots = mode === 'plots';
  return {
    root,
    base: './',
    appType: 'mpa',
    publicDir: plots ? false : 'widgets/page/public',
    define: {
      __PLOTS__: JSON.stringify(command === 'build' && !plots ? builtPlots(resolve(root, outDir(), 'assets')) : ''),
    },
    plugins: plots ? [] : [press({ chapters: resolve(root, 'chapters'), widgets: WIDGETS })],
    build: {
      target: 'es2022',
      emptyOutDir: plots,
      cssCodeSplit: false,
      modulePreload: false,
      assetsInlineLimit: 0,
      rolldownOptions: {
        input: plots
          ? { plots: resolve(root, 'widgets/plots/main.ts') }
          : { notebook: resolve(root, 'widgets/page/main.ts') },
        output: {
          format: 'iife',
          codeSplitting: false,
          entryFileNames: 'assets/[name]-[hash].js',
          assetFileNames: 'assets/[name]-[hash][extname]',
        },
      },
    },
    server: { port: 5180 },
    preview: { port: 5181 },
  };
});

/** The plots are looked for where this run writes. */
const outDir = (): string => {
  const at = process.argv.indexOf('--outDir');
  return (at > 0 ? process.argv[at + 1] : undefined) ?? 'dist';
};
