import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';

const root = resolve(import.meta.dirname, '..');

export default defineConfig({
  root,
  test: {
    projects: [
      { root, test: { name: 'engine', include: ['tests/engine/**/*.test.ts'], testTimeout: 30_000 } },
      {
        root,
        test: {
          name: 'press',
          include: ['tests/press/**/*.test.ts', 'tests/widgets/**/*.test.ts', 'tests/class/**/*.test.ts'],
          testTimeout: 30_000,
          hookTimeout: 120_000,
        },
      },
      {
        root,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: 'tests/setup/site.ts',
          testTimeout: 60_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
