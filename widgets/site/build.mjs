/**
 * Builds the notebook into a folder: `npm run build`, or `node widgets/site/build.mjs FOLDER`. With `--language de` it is the German edition; with
 * `--language en,de` the first stands in the folder and each other in a folder of its own name in it, and their pages lead to each other.
 *
 * Every script is a classic one, so that pages also run from a file: the script of every page, which holds what it needs and no
 * more; what figures share; the plot library; and each widget that is not on every page, as a script of its own that is fetched when
 * its figure comes near. Who carries what is planned first (`lent.mjs`), and the script of every page is written last, since it
 * knows the names of the others.
 */
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { inLanguage, languageNamed } from './language.mjs';
import { lendingSource, planOf, takenFrom, takesOf } from './lent.mjs';
import { writeOffline } from './offline.mjs';
import { writeOneFile } from './one-file.mjs';
import { loadRooms } from './rooms.mjs';
import { namedRelations, withoutPackages, withoutWords } from './strip.mjs';
import { packedStyles } from './styles.mjs';

const root = resolve(import.meta.dirname, '../..');
const PLOT = '@observablehq/plot';
/** Maps and colour schemes, which the notebook's plots have none of: a fifth of the library. It sets up one map as it loads. */
const NOT_PLOTTED = { 'd3-geo': ['geoTransform'], 'd3-scale-chromatic': [] };
/** The script that carries what several figures need of a package or of a module, and which that is. */
const LIBRARIES = { plots: PLOT, solids: 'figures/kit/solid/canvas' };

/** What every script that holds engine is built with. */
const relationsOf = (count) => [namedRelations(count), withoutWords(count)];

/** Lets the script of the pages lend what late scripts take from it. */
const lends = (source) => ({
  name: 'lends',
  resolveId: (id) => (id === 'virtual:lent' ? resolve(root, 'lent.entry.js') : undefined),
  load: (id) => (id === resolve(root, 'lent.entry.js') ? source : undefined),
  transform: {
    filter: { id: /\/widgets\/client\/main\.ts$/ },
    handler: (code) => `import 'virtual:lent';\n${code}`,
  },
});

/** One script from source text, its relative imports seen from the root; `outDir` is false where only its chunk is asked for. */
const script = async (name, source, outDir, { external = [], globals = {}, plugins = [], language } = {}) => {
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
      ...inLanguage(language, { tellsRelations: false }),
    ],
    build: {
      target: 'es2022',
      ...(outDir ? { outDir, emptyOutDir: false } : { write: false, minify: false }),
      modulePreload: false,
      rolldownOptions: {
        input: { [name]: entry },
        external,
        output: { format: 'iife', codeSplitting: false, globals, entryFileNames: 'assets/[name]-[hash].js' },
      },
    },
  });
  return [result].flat().flatMap((r) => r.output)[0];
};

/** A late script: what holders that ran before it lend is left out of it. */
const lateScript = (name, source, outDir, plan, lenders, plugins = []) => {
  const taken = takenFrom(plan, name, lenders);
  return script(name, source, outDir, {
    external: (id) => (id === PLOT && lenders.includes('plots')) || taken.external(id),
    globals: (id) => (id === PLOT ? 'Plot' : taken.globals(id)),
    plugins: [taken.plugin, withoutWords(), ...plugins],
    language: plan.language,
  });
};

/** What the script of every page holds by itself, by file. */
const keptByPage = async (relations, language) => {
  const { modules } = await script('page', `import './widgets/client/main.ts';`, false, {
    plugins: [...relationsOf(relations)],
    language,
  });
  return new Map(
    Object.entries(modules).map(([file, { renderedExports, code }]) => [
      file,
      { names: renderedExports, code: code ?? '' },
    ]),
  );
};

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

/** The words of every relation, which the script of the pages leaves out: what prints worked steps or tells sources puts them back. */
const wordsOf = (relations) =>
  JSON.stringify(Object.fromEntries(relations.map(({ name, says, gives, source }) => [name, { says, gives, source }])));

const figureSource = (name) =>
  `import * as figure from './widgets/figures/${name}/${name}.ts'; (globalThis.notebookFigures ??= {})['${name}'] = figure;`;

/** A late script of the page, not of a figure. */
const partSource = (name) =>
  `import * as part from './widgets/client/${name}/${name}.ts'; (globalThis.notebookFigures ??= {})['${name}'] = part;`;

/** The same that has the words of relations. */
const wordySource = (name, relations) =>
  [
    `import { relationNamed } from './widgets/engine/index.ts';`,
    `const words = ${wordsOf(relations)};`,
    `for (const name of Object.keys(words)) Object.assign(relationNamed(name), words[name]);`,
    partSource(name),
  ].join('\n');

/** The script of a worker, one for all figures that name it: it stands alone. `kit/solid/painter` is called `solid-painter`. */
const workerScript = async (file, outDir, language) => {
  const name = file.split('/').slice(-2).join('-');
  const { fileName } = await script(name, `import './widgets/figures/${file}.ts';`, outDir, {
    plugins: [withoutWords()],
    language,
  });
  return fileName;
};

/** Builds everything into `outDir` and gives the scripts by figure. `beside` are the editions its pages lead to, as `vite.config.ts` reads them. */
export const buildNotebook = async (
  outDir = resolve(root, 'dist'),
  logLevel = 'warn',
  language = languageNamed(),
  beside = '',
) => {
  // A test runner says NODE_ENV is “test”, in which Vite would build the dev server's page.
  const { NODE_ENV, NOTEBOOK_LANGUAGE, NOTEBOOK_BESIDE } = process.env;
  Object.assign(process.env, { NODE_ENV: 'production', NOTEBOOK_LANGUAGE: language, NOTEBOOK_BESIDE: beside });
  rmSync(outDir, { recursive: true, force: true });
  const module = await loadRooms('widgets/site/site.ts', language);
  const count = module.RELATIONS.length;
  const late = Object.fromEntries(module.LAZY.map(({ name }) => [name, figureSource(name)]));
  for (const name of ['papers', 'backwards']) late[name] = wordySource(name, module.RELATIONS);
  for (const name of ['practice', 'ideas', 'projector', 'readings', 'figure-page']) late[name] = partSource(name);
  const plan = planOf({ late, kept: await keptByPage(count, language), libraries: LIBRARIES, language });
  const shared = await lateScript('figures-share', lendingSource(plan, 'figures'), outDir, plan, ['page']);
  const used = plotNames().join(', ');
  const library = await lateScript(
    'plot-library',
    `import { ${used} } from '${PLOT}';\nglobalThis.Plot = { ${used} };\n${lendingSource(plan, 'plots')}`,
    outDir,
    plan,
    ['page', 'figures'],
    [withoutPackages(NOT_PLOTTED)],
  );
  const solids = await lateScript('solid-library', lendingSource(plan, 'solids'), outDir, plan, ['page', 'figures']);
  /** In the order in which they run. */
  const holders = { figures: shared.fileName, plots: library.fileName, solids: solids.fileName };
  const files = new Map(module.LAZY.flatMap(({ name, worker }) => (worker ? [[name, worker.file]] : [])));
  const workers = new Map(
    await Promise.all(
      [...new Set(files.values())].map(async (file) => [file, await workerScript(file, outDir, language)]),
    ),
  );
  const lateOf = async ([name, source]) => {
    const { fileName, code, imports } = await lateScript(name, source, outDir, plan, ['page', ...Object.keys(holders)]);
    const before = Object.keys(holders).filter(
      (holder) => takesOf(code, holder) || imports.includes(LIBRARIES[holder]),
    );
    return [
      name,
      { file: fileName, before: before.map((holder) => holders[holder]), worker: workers.get(files.get(name)) },
    ];
  };
  const scripts = Object.fromEntries(await Promise.all(Object.entries(late).map(lateOf)));
  await build({
    configFile: resolve(root, 'vite.config.ts'),
    logLevel,
    plugins: [{ name: 'rooms', api: module }, lends(lendingSource(plan, 'page')), ...relationsOf(count)],
    build: { outDir, emptyOutDir: false },
    define: { __FIGURES__: JSON.stringify(scripts) },
  });
  for (const [name, was] of Object.entries({ NODE_ENV, NOTEBOOK_LANGUAGE, NOTEBOOK_BESIDE }))
    if (was === undefined) delete process.env[name];
    else process.env[name] = was;
  writeOneFile(outDir, module.WORDS, (await packedStyles()).all);
  writeOffline(outDir, module.WORDS);
  return scripts;
};

/** From an edition to the others: the first stands at the top, each other in a folder of its name. */
const besideOf = (languages, language) =>
  languages
    .filter((other) => other !== language)
    .map((other) => {
      const up = language === languages[0] ? '' : '../';
      return `${other}=${up}${other === languages[0] ? '' : `${other}/`}`;
    })
    .join(',');

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const { values, positionals } = parseArgs({ options: { language: { type: 'string' } }, allowPositionals: true });
  const folder = resolve(positionals[0] ?? resolve(root, 'dist'));
  try {
    const languages = (values.language ?? languageNamed()).split(',').map((name) => languageNamed(name.trim()));
    for (const language of languages)
      await buildNotebook(
        language === languages[0] ? folder : resolve(folder, language),
        'info',
        language,
        besideOf(languages, language),
      );
  } catch (error) {
    // What an author has to mend is told without where in the program it was found.
    const mistakes = /The chapters have \d+ mistakes?:\n[\s\S]*?(?=\n\s+at |$)/.exec(error.message)?.[0];
    if (mistakes === undefined && !(error instanceof RangeError)) throw error;
    console.error(mistakes ?? error.message);
    process.exitCode = 2;
  }
}
