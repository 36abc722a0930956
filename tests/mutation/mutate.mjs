/**
 * Spoils the engine, one place at a time, and tells which faults no test turns red: `npm run mutate`, or
 * `npm run mutate -- effort contact`. Each file is judged by the tests that speak most of what it exports, less those that only
 * count many draws, which take minutes under a mutation tester's counters.
 */
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, resolve } from 'node:path';
import { Stryker } from '@stryker-mutator/core';

const root = resolve(import.meta.dirname, '../..');
const engine = join(root, 'widgets/engine');
const tests = join(root, 'tests/engine');
const out = process.env.MUTATION_REPORTS ?? join(tmpdir(), 'mutation');
mkdirSync(out, { recursive: true });

const names = process.argv.slice(2);
const files = readdirSync(engine, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  // Rooms stand below the entry and the list of relations, in which there is nothing to spoil.
  .filter((file) => /\/[\w-]+\.ts$/.test(file) && (names.length === 0 || names.includes(basename(file, '.ts'))))
  .sort();

/** Test files a file is judged by, at the most; more cost minutes a fault and seldom find another. */
const JUDGES = 5;
/** Tests that work a great deal, and judge only the file they are named for. */
const BUSY = /^(?:any-text|calibration|designation|pair-search|play-batch|random|readings-table|simulator)\./;
/** Files whose work is only seen in that of another. */
const SEEN_IN = { 'pair-row.ts': 'pair-search.test.ts', 'pair-catalogue.ts': 'pair-search.test.ts' };

/** The tests of a file: of its relations if it has any, those named for it, and those that speak most of what it exports. */
const testsOf = (file) => {
  const source = readFileSync(join(engine, file), 'utf8');
  const exported = [...source.matchAll(/^export (?:const|function\*?|class) (\w+)/gm)].map(([, name]) => name);
  const spoken = new RegExp(`\\b(?:${exported.join('|')})\\b`, 'g');
  const weight = (test) => {
    if (`${basename(file, '.ts')}-`.startsWith(test.replace('.test.ts', '-'))) return Number.POSITIVE_INFINITY;
    if (SEEN_IN[basename(file)] === test) return Number.POSITIVE_INFINITY;
    if (BUSY.test(test)) return 0;
    if (test === 'relations.test.ts' && source.includes('relation({')) return Number.MAX_VALUE;
    return readFileSync(join(tests, test), 'utf8').match(spoken)?.length ?? 0;
  };
  const all = readdirSync(tests).filter((test) => test.endsWith('.test.ts'));
  const judges = all.filter((test) => weight(test) > 0).sort((a, b) => weight(b) - weight(a));
  return (judges.length > 0 ? judges : all.filter((test) => !BUSY.test(test))).slice(0, JUDGES);
};

const tally = { killed: 0, survived: 0 };
process.chdir(root);
for (const file of files) {
  const include = testsOf(file);
  process.env.MUTATION_TESTS = include.map((test) => `tests/engine/${test}`).join(' ');
  const report = join(out, `${basename(file, '.ts')}.json`);
  const results = await new Stryker({
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
    mutate: [`widgets/engine/${file}`],
    // Words are for people to judge.
    mutator: { excludedMutations: ['StringLiteral'] },
    coverageAnalysis: 'perTest',
    ignoreStatic: true,
    reporters: ['json'],
    jsonReporter: { fileName: report },
    tempDirName: join(tmpdir(), 'mutation-work'),
    concurrency: Number(process.env.MUTATION_JOBS ?? 2),
    timeoutMS: 5000,
    dryRunTimeoutMinutes: 10,
    // TypeScript 7 has no interface for reading this file.
    tsconfigFile: 'none.json',
    allowEmpty: true,
    ignorePatterns: ['dist'],
    logLevel: 'error',
    allowConsoleColors: false,
  })
    .runMutationTest()
    .catch((error) => {
      console.log(`${file}: ${error.message}`);
      return [];
    });
  const killed = results.filter(({ status }) => status === 'Killed' || status === 'Timeout').length;
  const left = results.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
  tally.killed += killed;
  tally.survived += left.length;
  console.log(`${file}: ${killed} of ${killed + left.length} killed (${include.length} test files)`);
  for (const { location, mutatorName, replacement } of left)
    console.log(`  line ${location.start.line}, ${mutatorName}: ${replacement}`);
}
const all = tally.killed + tally.survived;
console.log(
  `${tally.killed} of ${all} killed, ${((100 * tally.killed) / Math.max(1, all)).toFixed(1)} %; reports in ${out}`,
);
