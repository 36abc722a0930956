/**
 * `npm run deep`: the tests that ask by chance, asked for long. They are the test files that import tests/support/deep.ts; names after
 * `--` choose among them. ACTIONS, SEED and REPLAY reach them through the environment.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const chosen = process.argv.slice(2);
const files = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
  .filter(
    (file) => file.endsWith('.test.ts') && readFileSync(join(root, 'tests', file), 'utf8').includes('support/deep.ts'),
  )
  .filter((file) => chosen.length === 0 || chosen.some((part) => file.includes(part)))
  .map((file) => join('tests', file));
if (files.length === 0) {
  console.error(`No test that asks by chance is called ${chosen.join(' or ')}.`);
  process.exit(1);
}
const { status } = spawnSync(
  process.execPath,
  [join(root, 'node_modules/vitest/vitest.mjs'), 'run', '--config', 'tests/vitest.config.ts', ...files],
  { cwd: root, stdio: 'inherit', env: { ...process.env, DEEP: '1' } },
);
process.exit(status ?? 1);
