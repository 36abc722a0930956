/**
 * Draws places to spoil: as many as are asked, spread evenly over the rooms, always the same for one seed and one state of the files.
 * The mutation tester lists every place when it reads the files; those that were not drawn are then left as they are.
 */
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** The folder that a file stands in below `widgets`. */
export const roomOf = (file) => /widgets\/(.*)\/[^/]+$/.exec(file.replaceAll('\\', '/'))[1];

const keyOf = ({ fileName, location, mutatorName, replacement }) =>
  [roomOf(fileName), fileName.split(/[\\/]/).at(-1), JSON.stringify(location), mutatorName, replacement].join('|');

/** As many from each room; what a small room lacks, the larger ones give. */
const spread = (keys, count, seed) => {
  const rank = (key) => createHash('sha256').update(`${seed}|${key}`).digest('hex');
  const room = (key) => key.split('|', 1)[0];
  const queues = [...new Set(keys.map(room))].map((name) =>
    keys
      .filter((key) => room(key) === name)
      .map((key) => [rank(key), key])
      .sort()
      .map(([, key]) => key),
  );
  const drawn = [];
  for (let turn = 0; drawn.length < Math.min(count, keys.length); turn++)
    for (const queue of queues) if (turn < queue.length && drawn.length < count) drawn.push(queue[turn]);
  return new Set(drawn);
};

/** From here on the mutation tester spoils only places that are drawn. */
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
    drawn = spread(mutants.filter(({ status }) => status === undefined).map(keyOf), count, seed);
    return instrument.call(this, files, options);
  };
};
