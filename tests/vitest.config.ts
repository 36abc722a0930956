import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';
import { ENGINES, leftOut, missing } from './setup/engines.mjs';

const root = resolve(import.meta.dirname, '..');
const here = ENGINES.filter((engine) => missing(engine).length === 0);
for (const engine of ENGINES) if (!here.includes(engine)) console.warn(leftOut(engine));

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
      ...here.map(({ engine, project }) => ({
        root,
        test: {
          name: project,
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: 'tests/setup/site.ts',
          provide: { engine },
          testTimeout: 60_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      })),
    ],
  },
});
