/**
 * Spoils the engine and the assembly, one place at a time, and tells which faults no test turns red: `npm run mutate`, or
 * `npm run mutate -- effort contact`, with the score of each room at the end. Each file is judged by the tests that speak most of what it exports, less those that only
 * count many draws, which take minutes under a mutation tester's counters. `SAMPLE=300 SEED=8 npm run mutate` spoils about as many places as that, in equal
 * parts from each folder, a small one giving what it has; names may be folders too (`engine/thread`).
 */
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, resolve } from 'node:path';
import { Stryker } from '@stryker-mutator/core';
import { drawOnly, roomOf } from './sample.mjs';

const root = resolve(import.meta.dirname, '../..');
const out = process.env.MUTATION_REPORTS ?? join(tmpdir(), 'mutation');
mkdirSync(out, { recursive: true });

const everything = ['engine', 'assembly'].flatMap((room) =>
  readdirSync(join(root, 'widgets', room), { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    // Rooms of the engine stand below its entry and the list of relations, in which there is nothing to spoil.
    .filter((file) => (room === 'engine' ? /\/[\w-]+\.ts$/ : /\.ts$/).test(file))
    .sort()
    .map((file) => ({ room, file })),
);
const folderOf = ({ room, file }) => roomOf(`widgets/${room}/${file}`);
const names = process.argv.slice(2);
const files = everything.filter(
  (one) => names.length === 0 || names.includes(basename(one.file, '.ts')) || names.includes(folderOf(one)),
);

/** Test files a file is judged by, at the most; more cost minutes a fault and seldom find another. */
const JUDGES = 5;
/** Tests that work a great deal, and judge only the file they are named for. */
const BUSY = /^(?:any-text|calibration|designation|pair-search|play-batch|random|readings-table|simulator)\./;
/** Files whose work is only seen in that of another. */
const SEEN_IN = { 'pair-row.ts': 'pair-search.test.ts', 'pair-catalogue.ts': 'pair-search.test.ts' };

const TESTS = ['engine', 'assembly', 'input', 'figures', 'exercises', 'client', 'site'].flatMap((room) =>
  readdirSync(join(root, 'tests', room))
    .filter((test) => test.endsWith('.test.ts'))
    .map((test) => ({ room, test, text: readFileSync(join(root, 'tests', room, test), 'utf8') })),
);

/** The tests of a file: of its relations if it has any, those named for it, and those that speak most of what it exports; of other rooms those that take it from there. */
const testsOf = ({ room, file }) => {
  const source = readFileSync(join(root, 'widgets', room, file), 'utf8');
  const exported = [...source.matchAll(/^export (?:const|function\*?|class) (\w+)/gm)].map(([, name]) => name);
  const spoken = new RegExp(`\\b(?:${exported.join('|')})\\b`, 'g');
  const from = room === 'engine' ? 'widgets/engine/index.ts' : `widgets/${room}/${file}`;
  const weight = ({ room: of, test, text }) => {
    if (of === room) {
      if (`${basename(file, '.ts')}-`.startsWith(test.replace('.test.ts', '-'))) return Number.POSITIVE_INFINITY;
      if (SEEN_IN[basename(file)] === test) return Number.POSITIVE_INFINITY;
    }
    if (BUSY.test(test)) return 0;
    if (room === 'engine' && test === 'relations.test.ts' && source.includes('relation({')) return Number.MAX_VALUE;
    // Tests that read the whole book know what the engine exports by way of everything else.
    const near = of === room || (text.includes(from) && (room !== 'engine' || of === 'assembly' || of === 'input'));
    return near ? (text.match(spoken)?.length ?? 0) : 0;
  };
  const judges = TESTS.filter((test) => weight(test) > 0).sort((a, b) => weight(b) - weight(a));
  return (judges.length > 0 ? judges : TESTS.filter((test) => test.room === room && !BUSY.test(test.test)))
    .slice(0, JUDGES)
    .map(({ room: of, test }) => `tests/${of}/${test}`);
};

/** Spoils these files and has these tests judge. */
const spoil = (mutate, tests, report) => {
  process.env.MUTATION_TESTS = tests.join(' ');
  return new Stryker({
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
    mutate,
    // Words are for people to judge.
    mutator: { excludedMutations: ['StringLiteral'] },
    coverageAnalysis: 'perTest',
    ignoreStatic: true,
    reporters: ['json'],
    jsonReporter: { fileName: join(out, `${report}.json`) },
    tempDirName: join(out, 'work'),
    concurrency: Number(process.env.MUTATION_JOBS ?? 2),
    timeoutMS: 5000,
    dryRunTimeoutMinutes: 30,
    // TypeScript 7 has no interface for reading this file.
    tsconfigFile: 'none.json',
    allowEmpty: true,
    ignorePatterns: ['dist'],
    logLevel: 'error',
    allowConsoleColors: false,
  })
    .runMutationTest()
    .catch((error) => {
      console.log(`${report}: ${error.message}`);
      return [];
    });
};

/** Killed and left alive, by the folder of a file. */
const rooms = new Map();
const tell = (name, results) => {
  const killed = results.filter(({ status }) => status === 'Killed' || status === 'Timeout');
  const left = results.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
  for (const { fileName } of [...killed, ...left]) {
    const count = rooms.get(roomOf(fileName)) ?? { killed: 0, all: 0 };
    rooms.set(roomOf(fileName), count);
    count.all++;
  }
  for (const { fileName } of killed) rooms.get(roomOf(fileName)).killed++;
  console.log(`${name}: ${killed.length} of ${killed.length + left.length} killed`);
  for (const { fileName, location, mutatorName, replacement } of left)
    console.log(`  ${basename(fileName)} line ${location.start.line}, ${mutatorName}: ${replacement}`);
};

process.chdir(root);
const sample = process.env.SAMPLE;
if (sample === undefined)
  for (const { room, file } of files) {
    tell(file, await spoil([`widgets/${room}/${file}`], testsOf({ room, file }), basename(file, '.ts')));
  }
else {
  const folders = [...new Set(everything.map(folderOf))];
  await drawOnly(root, Math.ceil(Number(sample) / folders.length), process.env.SEED ?? '8');
  for (const folder of folders) {
    const inside = files.filter((file) => folderOf(file) === folder);
    if (inside.length === 0) continue;
    const tests = new Set(inside.flatMap(testsOf));
    const spoilt = inside.map(({ room, file }) => `widgets/${room}/${file}`);
    tell(folder, await spoil(spoilt, [...tests], folder.replace('/', '-')));
  }
}
const score = ({ killed, all }) => `${killed} of ${all} killed, ${((100 * killed) / Math.max(1, all)).toFixed(1)} %`;
for (const [of, counts] of rooms) console.log(`${of}: ${score(counts)}`);
const whole = [...rooms.values()].reduce((sum, r) => ({ killed: sum.killed + r.killed, all: sum.all + r.all }), {
  killed: 0,
  all: 0,
});
console.log(`${score(whole)}; reports in ${out}`);
