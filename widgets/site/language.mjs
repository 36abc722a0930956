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

/** By file of the engine, what a table of words puts in place of its English. */
const SPOKEN = {
  'kernel/symbols': [
    'symbols',
    (table) => `for (const name in ${table}) Object.assign(SYMBOLS[name], ${table}[name]);`,
  ],
  'kernel/say': ['spoken', (table) => `Object.assign(SPOKEN, ${table});`],
  relations: [
    'relations',
    (table) => `for (const relation of RELATIONS) Object.assign(relation, ${table}[relation.name]);`,
  ],
};
const NAMES = { symbols: 'SYMBOL_WORDS', spoken: 'SPOKEN_WORDS', relations: 'RELATION_WORDS' };

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
            filter: { id: /\/widgets\/engine\/(?:kernel\/(?:symbols|say)|relations)\.ts$/ },
            handler(code, id) {
              const [file, put] = SPOKEN[/engine\/(.+)\.ts$/.exec(id)[1]];
              if (file === 'relations' && !tellsRelations) return undefined;
              const path = resolve(root, 'widgets/words', language, `${file}.ts`);
              return `import { ${NAMES[file]} } from '${path}';\n${code}\n${put(NAMES[file])}\n`;
            },
          },
        },
      ];
