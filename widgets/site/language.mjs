/**
 * The language of an edition. `#words/…` is its folder of words; what the engine says of itself (symbols, relations, how a number and a list
 * are spoken) stands with the physics in English, and a table beside takes its place in any other language.
 */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const ALIASES = JSON.parse(readFileSync(resolve(root, 'package.json'), 'utf8')).imports;

/** Each by its own name, as a link to its edition has it. The first is the language in which the notebook is written. */
export const LANGUAGES = { en: 'English', de: 'Deutsch' };
const WRITTEN = 'en';

/** A language that there is, or a sentence in an error. */
export const languageNamed = (name = WRITTEN) => {
  if (!Object.hasOwn(LANGUAGES, name))
    throw new RangeError(`Read “${name}” as a language; there are ${Object.keys(LANGUAGES).join(' and ')}.`);
  return name;
};

/** Where `#words/…` is in an edition. */
export const aliasesIn = (language) =>
  Object.fromEntries(
    Object.entries(ALIASES).map(([alias, to]) => [alias, to.replace(`/words/${WRITTEN}/`, `/words/${language}/`)]),
  );

/** By file of the engine: its table of words, and how its code takes them. Declarations only, so that what no script uses of it is left out. */
const SPOKEN = {
  'kernel/say': {
    table: 'SPOKEN_WORDS',
    from: 'spoken',
    take: (code) =>
      code.replace('export const SPOKEN = {', 'export const SPOKEN = SPOKEN_WORDS;\nconst SPOKEN_IN_ENGLISH = {'),
  },
  'kernel/symbols': {
    table: 'SYMBOL_WORDS',
    from: 'symbols',
    take: (code) =>
      `${code.replace('export const SYMBOLS = {', 'const SYMBOLS_IN_ENGLISH = {').replace(/\btypeof SYMBOLS\b/g, 'typeof SYMBOLS_IN_ENGLISH')}
export const SYMBOLS = /*#__PURE__*/ Object.fromEntries(
  /*#__PURE__*/ Object.entries(SYMBOLS_IN_ENGLISH).map(([name, fact]) => [name, { ...fact, ...SYMBOL_WORDS[name] }]),
);`,
  },
  relations: {
    table: 'RELATION_WORDS',
    from: 'relations',
    take: (code) =>
      `${code}\nfor (const relation of RELATIONS) Object.assign(relation, RELATION_WORDS[relation.name]);`,
  },
};

/**
 * What builds or loads modules in a language; nothing is to do for that in which the notebook is written. `tellsRelations` is false where the
 * relations go without their words.
 */
export const inLanguage = (language, { tellsRelations = true } = {}) =>
  language === WRITTEN
    ? []
    : [
        {
          name: 'language',
          enforce: 'pre',
          resolveId: {
            filter: { id: /^#words\// },
            handler: (id) => resolve(root, 'widgets/words', language, id.slice('#words/'.length)),
          },
        },
        {
          name: 'spoken-engine',
          enforce: 'pre',
          transform: {
            // Not what stands before such a file and parts it among the scripts (lent.mjs).
            filter: { id: /^(?!\0).*\/widgets\/engine\/(?:kernel\/(?:symbols|say)|relations)\.ts$/ },
            handler(code, id) {
              const file = /engine\/(.+)\.ts$/.exec(id)[1];
              if (file === 'relations' && !tellsRelations) return undefined;
              const { table, from, take } = SPOKEN[file];
              const taken = take(code);
              if (taken === code)
                this.error(`Found nothing to say in ${language} in ${id}; mend widgets/site/language.mjs.`);
              return `import { ${table} } from '${resolve(root, 'widgets/words', language, `${from}.ts`)}';\n${taken}`;
            },
          },
        },
      ];
