/**
 * `npm run deep`: every test in every engine, and the tests that ask by chance for long. Names after `--` choose among the files;
 * ACTIONS, SEED and REPLAY reach the tests through the environment.
 */
import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const { status } = spawnSync(
  process.execPath,
  [
    join(root, 'node_modules/vitest/vitest.mjs'),
    'run',
    '--config',
    'tests/vitest.config.ts',
    // What is asked for long has no time by which it must be done.
    '--testTimeout',
    '7200000',
    ...process.argv.slice(2),
  ],
  { cwd: root, stdio: 'inherit', env: { ENGINES: 'all', ...process.env, DEEP: '1' } },
);
process.exit(status ?? 1);
