/**
 * `npm run prose` prints how each chapter reads: words, longest and median sentence, symbols in its main line, in one section of it and in all,
 * terms that are new, and then what is hard to read, with the better word, and terms that are used before they are explained. `npm run prose -- 07` looks at the files with that in their name.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import { loadRooms } from './rooms.mjs';

const root = resolve(import.meta.dirname, '../..');
const { countProse, proseFaults } = await loadRooms('widgets/site/prose.ts');
const { readingOrder, termsOf, termsTooEarly } = await loadRooms('widgets/site/term-order.ts');
const filesIn = (folder, ending) =>
  readdirSync(resolve(root, folder), { recursive: true })
    // What is hard to read in another language, other rules would have to say.
    .filter((name) => name.endsWith(ending) && !/^de\b/.test(name))
    .sort()
    .map((name) => resolve(root, folder, name));
const textOf = (file) => readFileSync(file, 'utf8');
const part = process.argv[2] ?? '';

const known = new Set();
console.log(
  'chapter: words, longest sentence, median sentence, symbols in the main line, in one section, in all, new terms',
);
for (const file of filesIn('chapters', '.md').filter((f) => /\/\d+[a-z]?-[^/]*\.md$/.test(f))) {
  const { words, longest, median, inMain, inView, inAll, terms } = countProse(textOf(file), known);
  if (file.includes(part))
    console.log(`${relative(root, file)}: ${[words, longest, median, inMain, inView, inAll, terms.length].join(', ')}`);
}
const terms = termsOf(textOf(resolve(root, 'chapters/glossary.md')));
const order = readingOrder(textOf(resolve(root, 'chapters/index.md')));
// All but the words that a reader may look for, which the notebook does not say itself.
for (const file of [...filesIn('chapters', '.md'), ...filesIn('widgets/words', '.ts')].filter(
  (f) => f.includes(part) && !f.endsWith('/other-words.ts'),
)) {
  const [name, text] = [relative(root, file), textOf(file)];
  for (const { line, says } of [...proseFaults(name, text), ...termsTooEarly(name, text, terms, order)])
    console.log(`${name}:${line}: ${says}`);
}
