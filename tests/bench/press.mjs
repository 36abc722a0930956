/**
 * Building the pages of 10, 100 and 300 chapters, through the press and the build of the pages, less what a book of no chapters
 * takes: a chapter must take as long in a long book. The chapters are copies, whose algebra the press remembers; what a chapter
 * takes when nothing of it is known stands in the first line.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, runnerImport } from 'vite';
import { root } from './support.mjs';

export const title = 'Build of the pages by number of chapters (ratio 1 is linear)';

const COUNTS = (process.env.BENCH_CHAPTERS ?? '10,100,300').split(',').map(Number);

export const bench = async (line) => {
  const load = async (file) => (await runnerImport(join(root, file), { configFile: false, logLevel: 'error' })).module;
  const { site } = await load('widgets/site/plugin.ts');
  const { FIGURES } = await load('widgets/site/catalogue.ts');
  const pages = async (count) => {
    const chapters = copies(count);
    const out = mkdtempSync(join(tmpdir(), 'pages-'));
    const from = performance.now();
    await build({
      root,
      configFile: false,
      logLevel: 'error',
      base: './',
      publicDir: false,
      plugins: [site({ chapters })],
      define: { __FIGURES__: '{}' },
      build: {
        outDir: out,
        emptyOutDir: false,
        modulePreload: false,
        rolldownOptions: {
          input: join(root, 'widgets/client/main.ts'),
          output: { format: 'iife', codeSplitting: false },
        },
      },
    });
    const took = performance.now() - from;
    for (const folder of [chapters, out]) rmSync(folder, { recursive: true });
    return took;
  };
  const files = readdirSync(join(root, 'chapters')).filter((name) => /^\d+-/.test(name));
  const { renderChapter } = await load('widgets/site/chapter.ts');
  const from = performance.now();
  for (const name of files) renderChapter(name, readFileSync(join(root, 'chapters', name), 'utf8'), FIGURES);
  line(
    `the ${files.length} chapters of this book pressed for the first time, ms each`,
    ((performance.now() - from) / files.length).toFixed(0),
  );
  await pages(1);
  const none = await pages(0);
  line('a book of no chapters, ms', none.toFixed(0));
  const each = [];
  for (const count of COUNTS) {
    each.push(((await pages(count)) - none) / count);
    line(`${count} chapters, ms a chapter`, `${each.at(-1).toFixed(0)}   ratio ${(each.at(-1) / each[0]).toFixed(2)}`);
  }
};

/** A folder of so many chapters: one of middling length again and again, its exercises under names of their own. */
const copies = (count) => {
  const folder = mkdtempSync(join(tmpdir(), 'chapters-'));
  const source = join(root, 'chapters');
  const text = readFileSync(
    join(
      source,
      readdirSync(source).find((name) => name.startsWith('03-')),
    ),
    'utf8',
  ).replace(/\]\(\d+-[^)]*\)/g, '](index.md)');
  writeFileSync(join(folder, 'index.md'), '# A long book\n\n::: goal\nMany chapters.\n:::\n');
  for (let i = 1; i <= count; i++)
    writeFileSync(join(folder, `${i}-copy-${i}.md`), text.replace(/^```exercise ([a-z0-9-]+)/gm, `$&-${i}`));
  return folder;
};
