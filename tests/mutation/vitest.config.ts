import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';

/** Tests that draw or search by the hundred thousand. */
const MANY =
  /000 rows|\d{3,} (?:seeded )?rigs|Kolmogorov|finds what the slow search finds|beyond all measure|a large batch|1e5|many degrees of freedom|gets a thread or a sentence|of any thread that is read/;

export default defineConfig({
  root: resolve(import.meta.dirname, '../..'),
  test: {
    include: (process.env.MUTATION_TESTS ?? 'tests/engine/**/*.test.ts').split(' '),
    isolate: false,
    testTimeout: 120_000,
    testNamePattern: new RegExp(`^(?!.*(?:${MANY.source})).*$`),
  },
});
