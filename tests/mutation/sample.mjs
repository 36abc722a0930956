/**
 * Draws places to spoil: as many as are asked of the files that are read together, always the same for one seed and one state of them.
 * The mutation tester lists every place when it reads the files; those that were not drawn are then left as they are.
 */
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** The folder that a file stands in below `widgets`. */
export const roomOf = (file) => /widgets\/(.*)\/[^/]+$/.exec(file.replaceAll('\\', '/'))[1];

const keyOf = ({ fileName, location, mutatorName, replacement }) =>
  [roomOf(fileName), fileName.split(/[\\/]/).at(-1), JSON.stringify(location), mutatorName, replacement].join('|');

/** So many of them, by the seed. */
const some = (keys, count, seed) => {
  const rank = (key) => createHash('sha256').update(`${seed}|${key}`).digest('hex');
  const ranked = keys.map((key) => [rank(key), key]).sort();
  return new Set(ranked.slice(0, count).map(([, key]) => key));
};

/** From here on the mutation tester spoils so many places of what it reads, and no other. */
export const drawOnly = async (root, count, seed) => {
  const at = (file) => pathToFileURL(join(root, 'node_modules/@stryker-mutator/instrumenter/dist/src', file)).href;
  const { Instrumenter } = await import(at('instrumenter.js'));
  const { MutantCollector } = await import(at('transformers/mutant-collector.js'));
  const { Mutant } = await import(at('mutant.js'));
  const instrument = Instrumenter.prototype.instrument;
  const collect = MutantCollector.prototype.collect;
  let drawn;
  MutantCollector.prototype.collect = function (fileName, original, mutable, offset) {
    const key = keyOf(new Mutant('', fileName, original, mutable, offset).toApiMutant());
    const ignoreReason = drawn === undefined || drawn.has(key) ? mutable.ignoreReason : 'not drawn';
    return collect.call(this, fileName, original, { ...mutable, ignoreReason }, offset);
  };
  Instrumenter.prototype.instrument = async function (files, options) {
    drawn = undefined;
    const { mutants } = await instrument.call(this, files, options);
    const places = mutants.filter(({ status }) => status === undefined).map(keyOf);
    drawn = some(places, count, seed);
    return instrument.call(this, files, options);
  };
};
