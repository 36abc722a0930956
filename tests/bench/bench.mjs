/**
 * Prints speed and weight: `npm run bench`, or parts of it by name, `npm run bench -- frames weight`. It passes nothing and
 * fails nothing: on a shared machine absolute times wander, so read medians and ratios.
 */
import { loadavg } from 'node:os';

const PARTS = [
  'weight',
  'height',
  'scripts',
  'first-paint',
  'frames',
  'minute',
  'paste',
  'papers',
  'refresh',
  'press',
  'adjuster',
  'drawer',
  'backwards',
  'pair-search',
  'play-batch',
];

const line = (name, value) => console.log(`${name.padEnd(62)} ${value}`);
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !PARTS.includes(name));
if (unknown.length > 0) {
  console.error(`There is no part called ${unknown.join(', ')}; the parts are ${PARTS.join(', ')}.`);
  process.exit(1);
}
for (const name of asked.length > 0 ? asked : PARTS) {
  const { title, bench } = await import(`./${name}.mjs`);
  console.log(`\n${title}\n(${name}; ${loadavg()[0].toFixed(1)} other processes were running)`);
  await bench(line);
}
process.exit(0);
