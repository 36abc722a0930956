/**
 * What the page's scripts leave out, at build time only: of each relation the words and formulas, which the press has set
 * into the pages already, and of the plot library the parts it names but the notebook's plots never reach. Both stop the
 * build where they no longer find what they leave out.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { parseSync } from 'vite';

/** The parts of a relation that only the press, the papers and the tests read. */
const WORDS = ['says', 'gives', 'source'];
const ENGINE = /\/widgets\/engine\/(?:[\w-]+\/)?[\w-]+\.ts$/;

/**
 * The list of relations with each named, in place of everything that a file with one exports: what else is in these files comes into a
 * script only where something uses it. The build must find exactly `expected` of them.
 */
export const namedRelations = (expected) => ({
  name: 'named-relations',
  apply: 'build',
  enforce: 'pre',
  transform: {
    filter: { id: /\/widgets\/engine\/relations\.ts$/ },
    handler(code, id) {
      const files = readdirSync(dirname(id), { recursive: true })
        .map((file) => file.replaceAll('\\', '/'))
        .filter((file) => /^[^/]+\/[^/]+\.ts$/.test(file))
        .map((file) => ({ file, names: relationNames(resolve(dirname(id), file)) }))
        .filter(({ names }) => names.length > 0);
      const found = files.flatMap(({ names }) => names).length;
      const listed = files.map(
        ({ file, names }, i) => `'./${file}': { ${names.map((name) => `${name}: ${name}_${i}`)} }`,
      );
      const written = code.replace(/import\.meta\.glob<.*?>\('[^)]*\)/s, `{ ${listed.join(', ')} }`);
      if (found !== expected || written === code)
        this.error(`Found ${found} relations to name, but there are ${expected}; mend widgets/site/strip.mjs.`);
      const imports = files.map(
        ({ file, names }, i) => `import { ${names.map((name) => `${name} as ${name}_${i}`)} } from './${file}';`,
      );
      return [...imports, written].join('\n');
    },
  },
});

/** The names under which a file exports relations. */
const relationNames = (file) =>
  parseSync(file, readFileSync(file, 'utf8'))
    .program.body.filter(({ type }) => type === 'ExportNamedDeclaration')
    .flatMap(({ declaration }) => declaration?.declarations ?? [])
    .filter(({ init }) => init?.type === 'CallExpression' && init.callee.name === 'relation')
    .map(({ id }) => id.name);

/** Relations without their words. With `expected`, the build must have met exactly so many. */
export const withoutWords = (expected) => {
  let met = 0;
  return {
    name: 'without-words',
    apply: 'build',
    buildStart() {
      met = 0;
    },
    transform: {
      filter: { id: ENGINE, code: /\brelation\(\{/ },
      handler(code, id) {
        const before = cutBefore.get(code);
        const cut = before ?? cutWords(code, id, this);
        cutBefore.set(code, cut);
        met += cut.relations;
        return cut.code;
      },
    },
    buildEnd(error) {
      if (!error && expected !== undefined && met !== expected)
        this.error(`Left out the words of ${met} relations, but there are ${expected}; mend widgets/site/strip.mjs.`);
    },
  };
};

/** What was cut before, by its source: each script of a build has these files anew. */
const cutBefore = new Map();

const cutWords = (code, id, build) => {
  const definitions = relationsIn(build.parse(code));
  const cuts = definitions.flatMap(({ properties }) =>
    WORDS.map((word) => {
      const property = properties.find((p) => p.key?.name === word);
      if (!property) build.error(`A relation in ${id} has no “${word}” to leave out; mend widgets/site/strip.mjs.`);
      return property;
    }),
  );
  // From the end, so that the places before stay true.
  const left = cuts
    .sort((a, b) => b.start - a.start)
    .reduce((text, { start, end }) => text.slice(0, start) + text.slice(text[end] === ',' ? end + 1 : end), code);
  return { code: left, relations: definitions.length };
};

/** The object given to each call of `relation`, wherever it stands. */
const relationsIn = (node) => {
  if (typeof node !== 'object' || node === null) return [];
  const within = Object.values(node).flatMap(relationsIn);
  return node.type === 'CallExpression' && node.callee.name === 'relation' ? [node.arguments[0], ...within] : within;
};

/**
 * Packages that a library imports but that nothing here reaches: each name in them is a function that says so, but for those
 * it needs while it loads. `packages` gives these kept names by package.
 */
export const withoutPackages = (packages) => {
  const mark = '\0left-out:';
  const met = new Set();
  return {
    name: 'without-packages',
    enforce: 'pre',
    resolveId: (id, importer) => (id in packages && !importer?.startsWith(mark) ? `${mark}${id}` : undefined),
    load: {
      filter: { id: /^\0left-out:/ },
      async handler(id) {
        const name = id.slice(mark.length);
        met.add(name);
        const kept = packages[name];
        const left = Object.keys(await import(name)).filter((exported) => !kept.includes(exported));
        return [
          `const leftOut = () => { throw new Error('${name} is left out of this notebook; see widgets/site/strip.mjs.'); };`,
          `export { ${left.map((exported) => `leftOut as ${exported}`).join(', ')} };`,
          ...kept.map((exported) => `export { ${exported} } from '${name}';`),
        ].join('\n');
      },
    },
    buildEnd(error) {
      const missed = Object.keys(packages).filter((name) => !met.has(name));
      if (!error && missed.length > 0)
        this.error(`Nothing imports ${missed.join(', ')} any more; take it out of the list in widgets/site/build.mjs.`);
    },
  };
};
