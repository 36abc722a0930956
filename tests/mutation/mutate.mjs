/**
 * Spoils the engine, one place at a time, and tells which faults no test turns red: `npm run mutate`, or
 * `npm run mutate -- effort contact`. Each file is judged by the tests that speak most of what it exports, less those that only
 * count many draws, which take minutes under a mutation tester's counters.
 */
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { Stryker } from '@stryker-mutator/core';

const root = resolve(import.meta.dirname, '../..');
const engine = join(root, 'widgets/engine');
const tests = join(root, 'tests/engine');
const out = process.env.MUTATION_REPORTS ?? join(tmpdir(), 'mutation');
mkdirSync(out, { recursive: true });

const names = process.argv.slice(2);
const files = readdirSync(engine)
  .filter((file) => file !== 'index.ts' && (names.length === 0 || names.includes(file.replace('.ts', ''))))
  .sort();

/** Test files a file is judged by, at the most; more cost minutes a fault and seldom find another. */
const JUDGES = 5;

/** The test files that speak most of what a file exports. */
const testsOf = (file) => {
  const exported = [
    ...readFileSync(join(engine, file), 'utf8').matchAll(/^export (?:const|function\*?|class) (\w+)/gm),
  ];
  const spoken = new RegExp(`\\b(?:${exported.map(([, name]) => name).join('|')})\\b`, 'g');
  return readdirSync(tests)
    .filter((test) => test.endsWith('.test.ts'))
    .map((test) => ({ test, count: readFileSync(join(tests, test), 'utf8').match(spoken)?.length ?? 0 }))
    .sort((a, b) => b.count - a.count)
    .slice(0, JUDGES)
    .map(({ test }) => test);
};

const tally = { killed: 0, survived: 0 };
process.chdir(root);
for (const file of files) {
  const include = testsOf(file);
  process.env.MUTATION_TESTS = include.map((test) => `tests/engine/${test}`).join(' ');
  const report = join(out, file.replace('.ts', '.json'));
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
}
const all = tally.killed + tally.survived;
console.log(
  `${tally.killed} of ${all} killed, ${((100 * tally.killed) / Math.max(1, all)).toFixed(1)} %; reports in ${out}`,
);
