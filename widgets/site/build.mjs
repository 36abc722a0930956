/**
 * Builds the notebook into a folder: `npm run build`, or `node widgets/site/build.mjs FOLDER`.
 *
 * Every script is a classic one, so that pages also run from a file: first the plot library, then each widget that is not
 * on every page, as a script of its own that is fetched when its figure comes near, then the pages and the script they
 * all share, which knows the names of the others.
 */
import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, runnerImport } from 'vite';
import { writeOffline } from './offline.mjs';
import { writeOneFile } from './one-file.mjs';
import { withoutPackages, withoutWords } from './strip.mjs';

const root = resolve(import.meta.dirname, '../..');
const PLOT = '@observablehq/plot';
/** Maps and colour schemes, which the notebook's plots have none of: a fifth of the library. It sets up one map as it loads. */
const NOT_PLOTTED = { 'd3-geo': ['geoTransform'], 'd3-scale-chromatic': [] };
/** The papers print worked steps, and so need the words of the relations. */
const WITH_WORDS = ['papers'];

/** One script from source text, its relative imports seen from widgets/. Gives its file name and what it leaves to others. */
const script = async (name, source, outDir, external = [], plugins = []) => {
  const entry = resolve(root, `widgets/${name}.entry.js`);
  const result = await build({
    root,
    configFile: false,
    base: './',
    publicDir: false,
    logLevel: 'error',
    mode: 'production',
    plugins: [
      {
        name: 'one-script',
        resolveId: (id) => (id === entry ? entry : undefined),
        load: (id) => (id === entry ? source : undefined),
      },
      ...plugins,
    ],
    build: {
      target: 'es2022',
      outDir,
      emptyOutDir: false,
      modulePreload: false,
      rolldownOptions: {
        input: { [name]: entry },
        external,
        output: {
          format: 'iife',
          codeSplitting: false,
          globals: { [PLOT]: 'Plot' },
          entryFileNames: 'assets/[name]-[hash].js',
        },
      },
    },
  });
  const [chunk] = [result].flat().flatMap((r) => r.output);
  return { file: chunk.fileName, plot: chunk.imports.includes(PLOT) };
};

/** What the widgets use of the plot library, so that the rest of it need not be sent. */
const plotNames = () => {
  const files = readdirSync(resolve(root, 'widgets'), { recursive: true }).filter((file) => file.endsWith('.ts'));
  const sources = files
    .map((file) => readFileSync(resolve(root, 'widgets', file), 'utf8'))
    .filter((source) => source.includes(PLOT));
  return [
    ...new Set(sources.flatMap((source) => [...source.matchAll(/\bPlot\.([a-z]\w*)\(/g)].map((match) => match[1]))),
  ].sort();
};

/** Builds everything into `outDir` and gives the scripts by widget. */
export const buildNotebook = async (outDir = resolve(root, 'dist'), logLevel = 'warn') => {
  // A test runner says NODE_ENV is “test”, in which Vite would build the dev server's page.
  const { NODE_ENV } = process.env;
  process.env.NODE_ENV = 'production';
  rmSync(outDir, { recursive: true, force: true });
  const { module } = await runnerImport(resolve(root, 'widgets/site/catalogue.ts'), {
    configFile: false,
    logLevel: 'error',
  });
  const used = plotNames().join(', ');
  const library = await script(
    'plot-library',
    `import { ${used} } from '${PLOT}'; globalThis.Plot = { ${used} };`,
    outDir,
    [],
    [withoutPackages(NOT_PLOTTED)],
  );
  const figures = {};
  for (const { name } of [...module.LAZY, ...module.PARTS]) {
    const source = `import * as figure from './${name}/${name}.ts'; (globalThis.notebookFigures ??= {})['${name}'] = figure;`;
    const slim = WITH_WORDS.includes(name) ? [] : [withoutWords()];
    const built = await script(name, source, outDir, [PLOT], slim);
    const worker = existsSync(resolve(root, `widgets/${name}/worker.ts`))
      ? (await script(`${name}-worker`, `import './${name}/worker.ts';`, outDir, [], slim)).file
      : undefined;
    figures[name] = { ...built, ...(worker && { worker }) };
  }
  await build({
    configFile: resolve(root, 'vite.config.ts'),
    logLevel,
    build: { outDir, emptyOutDir: false },
    define: { __FIGURES__: JSON.stringify({ library: library.file, figures }) },
  });
  process.env.NODE_ENV = NODE_ENV;
  writeOneFile(outDir);
  writeOffline(outDir);
  return { library: library.file, figures };
};

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  await buildNotebook(process.argv[2] && resolve(process.argv[2]), 'info');
