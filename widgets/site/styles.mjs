/**
 * The styles of a page, in the order in which they override each other: those of every page, then of what figures share, then
 * each figure's own, then what has the last word over all of them. A page gets those of the figures that stand on it; the dev
 * server and the one-file notebook get all.
 */
import { existsSync, readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { build } from 'vite';

const root = resolve(import.meta.dirname, '../..');
const FIGURES = 'widgets/figures';
const client = (name) => `widgets/client/styles/${name}.css`;
const first = ['fonts', 'book', 'blocks', 'way'].map(client);
const last = ['projector', 'exercises', 'print'].map(client);

/** Style sheets by their paths from the root: of what figures share, and of each figure that has one. */
const ofFigures = () => {
  const folders = readdirSync(resolve(root, FIGURES), { withFileTypes: true }).filter((entry) => entry.isDirectory());
  const own = folders
    .map(({ name }) => [name, `${FIGURES}/${name}/${name}.css`])
    .filter(([, path]) => existsSync(resolve(root, path)))
    .sort(([a], [b]) => a.localeCompare(b, 'en'));
  // Where papers are set; such a page counts them among its figures.
  own.push(['papers', 'widgets/client/papers/papers.css']);
  const kit = readdirSync(resolve(root, FIGURES, 'kit'))
    .filter((name) => name.endsWith('.css'))
    .sort()
    .map((name) => `${FIGURES}/kit/${name}`);
  return { kit, own };
};

/** Every style sheet there is, in order, for a page that can hold any figure. */
export const allStyles = () => {
  const { kit, own } = ofFigures();
  return [...first, ...kit, ...own.map(([, path]) => path), ...last];
};

/**
 * The styles packed for pages: the text for a page with these figures, the text with those of every figure, and the fonts that
 * both name, by their place in the folder of the pages.
 */
export const packedStyles = async () => {
  const texts = new Map();
  const fonts = new Map();
  const collect = {
    name: 'collect-styles',
    generateBundle: {
      // After the fonts have their names.
      order: 'post',
      handler(_options, bundle) {
        for (const file of Object.values(bundle)) {
          if (file.type !== 'asset') continue;
          if (!file.fileName.endsWith('.css')) fonts.set(file.fileName, file.source);
          else texts.set(file.names[0], atPage(String(file.source)));
        }
      },
    },
  };
  const { kit, own } = ofFigures();
  const groups = { first, kit, last, ...Object.fromEntries(own.map(([name, path]) => [`figure-${name}`, [path]])) };
  const entries = new Map(Object.entries(groups).map(([name, paths]) => [resolve(root, `${name}.group.css`), paths]));
  await build({
    root,
    configFile: false,
    base: './',
    publicDir: false,
    logLevel: 'error',
    mode: 'production',
    plugins: [
      {
        name: 'styles-in-groups',
        resolveId: (id) => (entries.has(id) ? id : undefined),
        load: (id) =>
          entries
            .get(id)
            ?.map((path) => `@import "./${path}";`)
            .join('\n'),
      },
      collect,
    ],
    build: {
      target: 'es2022',
      write: false,
      assetsInlineLimit: 0,
      rolldownOptions: {
        input: Object.fromEntries([...entries.keys()].map((id, i) => [Object.keys(groups)[i], id])),
        output: { assetFileNames: 'assets/[name]-[hash][extname]' },
      },
    },
  });
  const text = (name) => texts.get(`${name}.css`) ?? '';
  const withFigures = (names) =>
    [
      text('first'),
      ...(names.length > 0 ? [text('kit')] : []),
      ...own.flatMap(([name]) => (names.includes(name) ? [text(`figure-${name}`)] : [])),
      text('last'),
    ].join('');
  return { withFigures, all: withFigures(own.map(([name]) => name)), fonts };
};

/** Pages stand one folder above their fonts. */
const atPage = (text) => text.replace(/url\((?!data:|#)(?:\.\/)?/g, 'url(assets/').trim();
