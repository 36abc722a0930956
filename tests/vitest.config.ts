import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';
import { ENGINES, leftOut, missing } from './setup/engines.mjs';

const root = resolve(import.meta.dirname, '..');
const here = ENGINES.filter((engine) => missing(engine).length === 0);
for (const engine of ENGINES) if (!here.includes(engine)) console.warn(leftOut(engine));

/**
 * Asked of Firefox and WebKit at every run, a few tests each: pointer, wheel and keys, typing, a tablet, pages without script or from
 * files, a worker, and the policy. Their other tests (`inChromium`) and the other files are asked of Chromium alone unless ENGINES=all,
 * since the whole is to stay under six minutes on two cores.
 */
const EVERYWHERE = ['policy', 'reading', 'tablet', 'turning'];

const all = process.env.ENGINES === 'all';
if (!all && here.length > 1)
  console.info(
    `Chromium is asked all browser tests, Firefox and WebKit a few of them; ENGINES=all npm test asks every engine all.`,
  );

/** Two files at a time, which is what the smallest machine has cores for, each after another in the same process. */
const SHARED = { maxWorkers: 2, isolate: false };
const DRAWN = { setupFiles: 'tests/setup/seed.ts' };

export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: { name: 'engine', include: ['tests/engine/**/*.test.ts'], testTimeout: 30_000, ...DRAWN, ...SHARED },
      },
      {
        root,
        test: {
          name: 'rooms',
          include: ['input', 'assembly', 'figures', 'exercises', 'site', 'client'].map(
            (room) => `tests/${room}/**/*.test.ts`,
          ),
          testTimeout: 30_000,
          hookTimeout: 120_000,
          ...DRAWN,
          ...SHARED,
        },
      },
      ...here.map(({ engine, project }) => ({
        root,
        test: {
          name: project,
          include:
            engine === 'chromium' || all
              ? ['tests/browser/**/*.test.ts']
              : EVERYWHERE.map((file) => `tests/browser/${file}.test.ts`),
          // A shared machine may hold a browser up for seconds; a fault of the page is there the second time too.
          retry: 1,
          ...SHARED,
          globalSetup: 'tests/setup/site.ts',
          provide: { engine },
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      })),
    ],
  },
});
