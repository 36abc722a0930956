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
import { packedStyles } from './styles.mjs';

const root = resolve(import.meta.dirname, '../..');
const PLOT = '@observablehq/plot';
/** Maps and colour schemes, which the notebook's plots have none of: a fifth of the library. It sets up one map as it loads. */
const NOT_PLOTTED = { 'd3-geo': ['geoTransform'], 'd3-scale-chromatic': [] };
/** Modules under widgets/ that scripts beside the page’s own share, by the global that holds them. */
const CORE = 'notebookCore';
const PLOTS = 'notebookPlots';
const under = (folder) =>
  readdirSync(resolve(root, 'widgets', folder), { recursive: true })
    .map((file) => `${folder}/${file}`.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts'))
    .sort();
const PLOT_MODULES = under('figures/kit/plots').filter((file) => !file.endsWith('/document.ts'));
/** The words of one figure travel in its own script. */
const ofOneFigure = (file) => /^words\/\w+\/figures\/(?!kit\.ts$)/.test(file);
/** Words that no figure says: whoever says one of them carries it, and no page has the others. */
const NOT_OF_FIGURES = ['client', 'page', 'papers', 'language'].map((name) => `words/en/${name}.ts`);
/** The engine by its one entry, and what stands between it and the figures. */
const CORE_MODULES = [
  'engine/index.ts',
  ...under('words'),
  ...under('input'),
  ...under('assembly'),
  ...under('figures/kit'),
].filter((file) => ![...PLOT_MODULES, ...NOT_OF_FIGURES].includes(file) && !ofOneFigure(file));
const SHARED = new Map([
  ...CORE_MODULES.map((file) => [resolve(root, 'widgets', file), `${CORE}['${file}']`]),
  ...PLOT_MODULES.map((file) => [resolve(root, 'widgets', file), `${PLOTS}['${file}']`]),
]);

/** Source text that puts modules under a global, each by its path. */
const asGlobal = (name, files) =>
  [
    ...files.map((file, i) => `import * as shared${i} from './widgets/${file}';`),
    `globalThis.${name} = { ${files.map((file, i) => `'${file}': shared${i}`).join(', ')} };`,
  ].join('\n');

/** Lets the script of the pages carry the core, whose modules the others find under a global. */
const carriesCore = () => ({
  name: 'carries-core',
  resolveId: (id) => (id === 'virtual:core' ? resolve(root, 'core.entry.js') : undefined),
  load: (id) => (id === resolve(root, 'core.entry.js') ? asGlobal(CORE, CORE_MODULES) : undefined),
  transform: {
    filter: { id: /\/widgets\/client\/main\.ts$/ },
    handler: (code) => `import 'virtual:core';\n${code}`,
  },
});

/** One script from source text, its relative imports seen from the root. Gives its file name and whether it needs the plots. */
const script = async (name, source, outDir, { external = [], globals = {}, plugins = [] } = {}) => {
  const entry = resolve(root, `${name}.entry.js`);
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
        output: { format: 'iife', codeSplitting: false, globals, entryFileNames: 'assets/[name]-[hash].js' },
      },
    },
  });
  const [chunk] = [result].flat().flatMap((r) => r.output);
  // The bundler names what stays outside by paths of its own, but the global it takes it from is ours.
  return { file: chunk.fileName, plot: chunk.imports.includes(PLOT) || chunk.code.includes(PLOTS) };
};

/** A script that takes engine, input, assembly, kit and plots from those that are on the page. */
const lazyScript = (name, source, outDir) =>
  script(name, source, outDir, {
    external: (id) => id === PLOT || SHARED.has(id),
    globals: (id) => (id === PLOT ? 'Plot' : SHARED.get(id)),
  });

/** What the figures use of the plot library, so that the rest of it need not be sent. */
const plotNames = () => {
  const files = readdirSync(resolve(root, 'widgets'), { recursive: true }).filter((file) => file.endsWith('.ts'));
  const sources = files
    .map((file) => readFileSync(resolve(root, 'widgets', file), 'utf8'))
    .filter((source) => source.includes(PLOT));
  return [
    ...new Set(sources.flatMap((source) => [...source.matchAll(/\bPlot\.([a-z]\w*)\(/g)].map((match) => match[1]))),
  ].sort();
};

/** The words of every relation, which the script of the pages leaves out: the papers print worked steps and put them back. */
const wordsOf = (relations) =>
  JSON.stringify(Object.fromEntries(relations.map(({ name, says, gives, source }) => [name, { says, gives, source }])));

/** Builds everything into `outDir` and gives the scripts by figure. */
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
    `import { ${used} } from '${PLOT}';\nglobalThis.Plot = { ${used} };\n${asGlobal(PLOTS, PLOT_MODULES)}`,
    outDir,
    {
      external: (id) => SHARED.get(id)?.startsWith(CORE) ?? false,
      globals: (id) => SHARED.get(id),
      plugins: [withoutPackages(NOT_PLOTTED)],
    },
  );
  const figures = {};
  for (const { name } of module.LAZY) {
    const source = `import * as figure from './widgets/figures/${name}/${name}.ts'; (globalThis.notebookFigures ??= {})['${name}'] = figure;`;
    const worker = existsSync(resolve(root, `widgets/figures/${name}/worker.ts`))
      ? (
          await script(`${name}-worker`, `import './widgets/figures/${name}/worker.ts';`, outDir, {
            plugins: [withoutWords()],
          })
        ).file
      : undefined;
    figures[name] = { ...(await lazyScript(name, source, outDir)), ...(worker && { worker }) };
  }
  const papers = [
    `import { RELATIONS } from './widgets/engine/index.ts';`,
    `import * as part from './widgets/client/papers/papers.ts';`,
    `const words = ${wordsOf(module.RELATIONS)};`,
    `for (const relation of RELATIONS) Object.assign(relation, words[relation.name]);`,
    `(globalThis.notebookFigures ??= {}).papers = part;`,
  ].join('\n');
  figures.papers = await lazyScript('papers', papers, outDir);
  await build({
    configFile: resolve(root, 'vite.config.ts'),
    logLevel,
    plugins: [carriesCore(), withoutWords(module.RELATIONS.length)],
    build: { outDir, emptyOutDir: false },
    define: { __FIGURES__: JSON.stringify({ library: library.file, figures }) },
  });
  process.env.NODE_ENV = NODE_ENV;
  writeOneFile(outDir, module.WORDS, (await packedStyles()).all);
  writeOffline(outDir, module.WORDS);
  return { library: library.file, figures };
};

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  await buildNotebook(process.argv[2] && resolve(process.argv[2]), 'info');
