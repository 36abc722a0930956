/**
 * Which script carries what, of the modules that several scripts need. A late script (a figure, the papers) never carries what a
 * script before it has:
 *
 * 1. the script of every page carries what it needs itself, and lends of it the names that a late script imports;
 * 2. what it does not need but two late scripts do, a script for them carries: one for each package or module they share, with what nobody
 *    without that needs, one for the rest;
 * 3. what one late script alone needs, it carries itself.
 *
 * The names of one module may so be carried by several scripts, each with the helpers it takes. A module that remembers
 * something must not be there twice: all that is imported of it stands where its memory stands.
 */
import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { parseSync } from 'vite';
import { aliasesIn } from './language.mjs';

const root = resolve(import.meta.dirname, '../..');
const WIDGETS = `${resolve(root, 'widgets')}/`;
/** A module in which another script finds what is lent to it. */
const LENT = 'lent:';
/** A module that stands before another and says for each of its names who carries it. */
const PARTED = '\0parted:';

/** The file that an import names, in an edition of this language. */
const filesIn = (language) => {
  const aliases = aliasesIn(language);
  return (source, importer) => {
    if (source.startsWith('.')) return resolve(dirname(importer), source);
    const alias = Object.keys(aliases).find((key) => source.startsWith(key.replace('*', '')));
    return alias && resolve(root, aliases[alias].replace('*', source.slice(alias.length - 1)));
  };
};

const EMPTY = /^new (?:Map|Set|WeakMap|WeakSet)(?:<.*>)?\(\)$|^\[\]|^\{\}/s;

/** What a module remembers from one call to the next: names at its top that are set again, or are filled later. */
const memoryOf = (program, code) =>
  program.body
    .map((statement) => statement.declaration ?? statement)
    .filter((statement) => statement.type === 'VariableDeclaration' && !statement.declare)
    .flatMap(({ kind, declarations }) =>
      declarations.filter(
        ({ init }) =>
          kind === 'let' || (init && EMPTY.test(code.slice(init.start, init.end).replace(/^\/\*.*?\*\/\s*/, ''))),
      ),
    )
    .map(({ id }) => id.name);

const once = (work) => {
  let done;
  return () => (done ??= work());
};

/** Imports and exports of the modules under widgets/, types left out, each file read once. */
const reader = (fileOf) => {
  const known = new Map();
  const read = (file, code = undefined) => {
    if (!known.has(file)) {
      code ??= readFileSync(file, 'utf8');
      const parsed = parseSync(file, code);
      const { staticImports, staticExports } = parsed.module;
      const entries = (statements) =>
        statements.flatMap(({ moduleRequest, entries }) =>
          entries
            .filter(({ isType }) => !isType)
            .map((entry) => ({ ...entry, source: (entry.moduleRequest ?? moduleRequest)?.value })),
        );
      known.set(file, {
        imports: entries(staticImports),
        exports: entries(staticExports),
        // The tree of a file is costly to have, and few are asked for.
        memory: once(() => memoryOf(parsed.program, code)),
      });
    }
    return known.get(file);
  };
  /** The file that defines each exported name, and its name there: a module that only passes names on has none of its own. */
  const defined = new Map();
  const exportsOf = (file) => {
    if (!defined.has(file)) {
      const names = new Map();
      for (const { exportName, importName, source } of read(file).exports) {
        const from = source && fileOf(source, file);
        if (!from) names.set(exportName.name ?? 'default', { file, name: exportName.name ?? 'default' });
        else if (exportName.name) names.set(exportName.name, exportsOf(from).get(importName.name));
        else for (const [name, place] of exportsOf(from)) names.set(name, place);
      }
      defined.set(file, names);
    }
    return defined.get(file);
  };
  return { read, exportsOf, fileOf };
};

const keyOf = ({ file, name }) => `${file} ${name}`;

/** The modules under widgets/ that a module imports, as the names it takes of each; and the packages. */
const needsOf = ({ read, exportsOf, fileOf }, file) => {
  const packages = new Set();
  const places = [];
  const { imports, exports } = read(file);
  const passedOn = exports.filter(({ source }) => source);
  for (const { importName, source } of [...imports, ...passedOn]) {
    const from = fileOf(source, file);
    if (!from) packages.add(source);
    else if (!importName.name && from.endsWith('.ts')) places.push(...exportsOf(from).values());
    else if (from.endsWith('.ts')) places.push(exportsOf(from).get(importName.name));
  }
  return { packages, places };
};

/**
 * The plan: for each holder, `page` first, the names it lends by file. `late` gives the source of each late script as seen from the
 * root, `kept` for each file what the script of the pages has of it by itself (`names` others import, `code`), `libraries` the
 * package or module of each holder of one.
 */
export const planOf = ({ late, kept, libraries, language = 'en' }) => {
  const modules = reader(filesIn(language));
  const plan = new Map(['page', 'figures', ...Object.keys(libraries)].map((holder) => [holder, new Map()]));
  const holds = (file, name) =>
    new RegExp(`\\b(?:const|let|var|function|class)\\*? ${name}\\b`).test(kept.get(file)?.code ?? '');
  const onPage = ({ file, name }) =>
    kept.get(file)?.names.includes(name) ||
    holds(file, name) ||
    modules
      .read(file)
      .memory()
      .some((remembered) => holds(file, remembered));
  const lend = (holder, { file, name }) => {
    const lent = plan.get(holder);
    if (!lent.has(file)) lent.set(file, new Set());
    lent.get(file).add(name);
  };

  /** By file and name, the late scripts that need it; and the packages and modules that a file comes to need. */
  const wanted = new Map();
  const reached = new Map();
  /** By late script, the names it comes to need, whoever carries them. */
  const needed = new Map(Object.keys(late).map((script) => [script, new Set()]));
  const reachOf = (file, script, seen) => {
    seen.add(file);
    const { packages, places } = needsOf(modules, file);
    const reach = new Set(packages);
    for (const place of places) {
      const key = keyOf(place);
      needed.get(script).add(key);
      if (onPage(place)) {
        lend('page', place);
        continue;
      }
      if (!wanted.has(key)) wanted.set(key, { place, scripts: new Set() });
      wanted.get(key).scripts.add(script);
      if (!seen.has(place.file)) reachOf(place.file, script, seen);
      reach.add(inside(place.file));
      for (const name of reached.get(place.file) ?? []) reach.add(name);
    }
    reached.set(file, reach);
  };
  for (const [script, source] of Object.entries(late)) {
    const file = resolve(root, `${script}.entry.js`);
    modules.read(file, source);
    reachOf(file, script, new Set());
  }

  const scriptsOf = new Map();
  for (const { place, scripts } of wanted.values())
    scriptsOf.set(place.file, new Set([...(scriptsOf.get(place.file) ?? []), ...scripts]));
  for (const { place, scripts } of wanted.values()) {
    const asking = modules.read(place.file).memory().length > 0 ? scriptsOf.get(place.file) : scripts;
    if (asking.size < 2) continue;
    // What needs the package, and what only scripts with that package ask for.
    const entry = (script) => resolve(root, `${script}.entry.js`);
    const shared = Object.keys(libraries).find(
      (holder) =>
        reached.get(place.file).has(libraries[holder]) ||
        [...asking].every((script) => reached.get(entry(script)).has(libraries[holder])),
    );
    lend(shared ?? 'figures', place);
  }
  return { holders: plan, needed, exportsOf: modules.exportsOf, fileOf: modules.fileOf, language };
};

const inside = (file) => file.slice(WIDGETS.length).replace(/\.ts$/, '');
const globalOf = (holder) => `lentBy${holder[0].toUpperCase()}${holder.slice(1)}`;

/** Source text that puts what a holder lends under its global, by file and name. */
export const lendingSource = (plan, holder) => {
  const files = [...plan.holders.get(holder)];
  return [
    ...files.map(
      ([file, names], i) =>
        `import { ${[...names].map((name) => `${name} as ${name}_${i}`).join(', ')} } from '${file}';`,
    ),
    `globalThis.${globalOf(holder)} = {`,
    ...files.map(
      ([file, names], i) => `'${inside(file)}': { ${[...names].map((name) => `${name}: ${name}_${i}`).join(', ')} },`,
    ),
    '};',
  ].join('\n');
};

/** Whether a script that is written takes anything of a holder. */
export const takesOf = (code, holder) => code.includes(globalOf(holder));

/** What a script is built with so that it takes from these holders what they lend, and carries the rest. */
export const takenFrom = (plan, script, holders) => {
  const needed = plan.needed.get(script) ?? new Set([...plan.needed.values()].flatMap((keys) => [...keys]));
  const lenders = (file) => holders.filter((holder) => plan.holders.get(holder).get(file));
  const parted = (file) => {
    const own = [...plan.exportsOf(file).values()].filter((place) => place.file === file && needed.has(keyOf(place)));
    const left = new Set(own.map(({ name }) => name));
    const lent = lenders(file).map((holder) => {
      const names = [...left].filter((name) => plan.holders.get(holder).get(file).has(name) && left.delete(name));
      return names.length > 0 ? `export { ${names.join(', ')} } from '${LENT}${holder}/${inside(file)}';` : '';
    });
    return [...lent, left.size > 0 ? `export { ${[...left].join(', ')} } from '${file}';` : ''].join('\n');
  };
  /** A module that passes on names of others, name by name: a bundler does not look into what stays outside, nor need it read the rest. */
  const passing = (file) =>
    [...plan.exportsOf(file)]
      .filter(([, place]) => needed.has(keyOf(place)))
      .map(([name, place]) => `export { ${place.name} as ${name} } from '${place.file}';`)
      .join('\n');
  const passesOn = (file) =>
    file.startsWith(WIDGETS) &&
    file.endsWith('.ts') &&
    [...plan.exportsOf(file).values()].some((place) => place.file !== file);
  return {
    external: (id) => id.startsWith(LENT),
    globals: (id) => {
      const [, holder, file] = /^lent:([^/]+)\/(.+)$/.exec(id) ?? [];
      return holder && `${globalOf(holder)}['${file}']`;
    },
    plugin: {
      name: 'takes-what-is-lent',
      enforce: 'pre',
      resolveId(source, importer) {
        if (source.startsWith(LENT)) return { id: source, external: true };
        const file = source.startsWith(WIDGETS)
          ? source
          : importer && plan.fileOf(source, importer.replace(PARTED, ''));
        if (!file?.endsWith('.ts')) return undefined;
        // What a script does not use of it is left out, though the bundler can’t see that nothing happens while it loads.
        if (importer === `${PARTED}${file}`) return { id: file, moduleSideEffects: false };
        return lenders(file).length > 0 || passesOn(file) ? `${PARTED}${file}` : undefined;
      },
      load(id) {
        if (!id.startsWith(PARTED)) return undefined;
        const file = id.slice(PARTED.length);
        return passesOn(file) ? passing(file) : parted(file);
      },
    },
  };
};
