/** Numbers that can be cited, the map of the chapters, questions that lead to a cause, the glossary and the index of the search. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { find } from '../../widgets/client/find.ts';
import { aroundPoint } from '../../widgets/page/around-point.ts';
import { type Findable, INDEX_GLOBAL } from '../../widgets/page/search-index.ts';
import { bookPage, readBook, searchScript } from '../../widgets/site/book.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { countProse } from '../../widgets/site/prose.ts';
import { OTHER_WORDS as IN_GERMAN } from '../../widgets/words/de/other-words.ts';
import { OTHER_WORDS } from '../../widgets/words/en/other-words.ts';
import { CHAPTERS, FOLDER, mistakesIn, press } from '../support/chapters.ts';

const EXAMPLE = (id: string, set = '') => `\`\`\`example ${id}${set}: The Foot
${set === '' ? 'thread A = M10x1.5\nthread C = 3/8-16 UNC\n' : ''}net-lead = 87.50 µm
per-step(k = 6) = 14.58 µm
\`\`\`
`;
const FIRST = `# One

::: goal
Say one thing of one screw, as a chapter does that is there to be cited.
:::

## The lead

A turn moves $L$.

${EXAMPLE('turn')}
${EXAMPLE('again', ' with turn')}
`;
const FRONT = `# Front

\`\`\`routes
Begin here: the first things.
01-one.md
02-two.md needs 01-one.md
\`\`\`
`;

const build = (files: Readonly<Record<string, string>>) => {
  const folder = mkdtempSync(join(tmpdir(), 'book-'));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  const book = readBook(folder, FIGURES);
  rmSync(folder, { recursive: true });
  const page = (slug: string) =>
    parseHTML(bookPage(book, slug, { scripts: [], style: { addresses: [] }, icon: 'i.svg', module: false }) ?? '')
      .document;
  const index = (): readonly Findable[] => {
    const script = searchScript(book);
    return JSON.parse(script.slice(script.indexOf('['), script.lastIndexOf(']') + 1));
  };
  return { book, page, index, mistakes: book.mistakes.map(({ file, line, says }) => `${file}:${line} ${says}`) };
};

describe('a figure, an example and an equation', () => {
  it('are numbered through their chapter, and cited by number from the same chapter and from others', () => {
    const { page, mistakes } = build({
      'index.md': FRONT,
      '01-one.md': FIRST,
      '02-two.md': '# Two\n\nAs in [](01-one.md#example-turn) and [](01-one.md#example-again).\n',
    });
    expect(mistakes).toEqual([]);
    const links = [...page('two').querySelectorAll('article a')].map((a) => [a.getAttribute('href'), a.textContent]);
    expect(links).toEqual([
      ['one.html#example-turn', 'Example\u00a01.1'],
      ['one.html#example-again', 'Example\u00a01.2'],
    ]);
    expect(page('one').querySelector('#example-again .tag')?.textContent).toBe('Example\u00a01.2');
  });

  it('that are not there are refused where they are cited, and so is a heading cited without words', () => {
    const { mistakes } = build({
      'index.md': FRONT,
      '01-one.md': FIRST,
      '02-two.md': '# Two\n\nSee [](01-one.md#example-none).\n\nSee [](01-one.md#the-lead).\n',
    });
    expect(mistakes).toHaveLength(2);
    expect(mistakes[0]).toMatch(/^chapters\/02-two\.md:3 .*example-turn/);
    expect(mistakes[1]).toMatch(/^chapters\/02-two\.md:5 /);
  });
});

describe('a worked example', () => {
  it('folds a step that an earlier example has worked to one line with its result, but never its last', () => {
    const { document } = parseHTML(press(FIRST, 'chapters/01-one.md').html);
    const folded = [...document.querySelectorAll('[data-example=again] [data-step]')].map((li) => [
      li.querySelector(':scope > details') !== null,
      li.querySelector(':scope > .result')?.textContent?.replace('\u00a0', ' '),
    ]);
    expect(folded).toEqual([
      [true, '= 87.50 µm'],
      [false, '= 14.58 µm'],
    ]);
    expect(document.querySelectorAll('[data-example=turn] details').length).toBe(0);
  });

  it('stands on its decimal points: a result is cut before it, and no part of it is lost', () => {
    for (const [text, whole] of [
      ['= 1.500 mm', '= 1'],
      ['= −1,234.5 N', '= −1,234'],
      ['= 12 mm', '= 12'],
      ['= 87.50 µm (3.445 thou)', '= 87'],
      ['right hand', ''],
    ] as const) {
      const [before, after] = aroundPoint(text);
      expect(before).toBe(whole);
      expect(before + after).toBe(text);
    }
  });
});

describe('a page on paper', () => {
  it('has its title at the head of every sheet, and no title ends the styles it stands in', () => {
    const { book } = build({ 'index.md': '# Front\n', '01-one.md': '# The "}</style><b> end\\\n' });
    const html = bookPage(book, 'one', { scripts: [], style: { text: () => '' }, icon: 'i.svg', module: false }) ?? '';
    const { document } = parseHTML(html);
    const [style = ''] = [...document.querySelectorAll('head > style')].map((e) => e.textContent ?? '');
    expect(style).toMatch(/@top-right\{content:"1 {2}The .* end[^"]*";font/);
    expect(style.match(/"/g)?.length).toBe(4);
    expect(document.querySelectorAll('b').length).toBe(0);
  });
});

describe('the map of the chapters', () => {
  it('names each with its number and what it needs', () => {
    const { page } = build({ 'index.md': FRONT, '01-one.md': FIRST, '02-two.md': '# Two\n' });
    const stops = [...page('index').querySelectorAll('.route li')];
    expect(stops.map((li) => [li.getAttribute('value'), li.querySelector('a')?.getAttribute('href')])).toEqual([
      ['1', 'one.html'],
      ['2', 'two.html'],
    ]);
    expect(stops[1]?.textContent).toMatch(/min, after 1$/);
  });

  it('that leaves a chapter out, or names one that is not there, is refused', () => {
    const { mistakes } = build({ 'index.md': FRONT, '01-one.md': FIRST, '03-three.md': '# Three\n' });
    const told = mistakes.filter((m) => m.startsWith('chapters/index.md')).join('\n');
    for (const file of ['02-two.md', '03-three.md']) expect(told).toContain(file);
  });
});

const ASK = (body: string) =>
  mistakesIn(`# Page\n\n\`\`\`ask\n${body}\n\`\`\`\n`).map(({ line, says }) => `${line} ${says}`);

describe('questions that lead to a cause', () => {
  const GOOD = `Is it dirty?
check Look at it.
yes: Clean it: [how](#page).
no: Is it bent?
  check Roll it.
  yes: Take another: [which](#page).
  no: Ask [somebody](#page).`;

  it('are read as a tree, and open without script', () => {
    expect(ASK(GOOD)).toEqual([]);
    const { document } = parseHTML(press(`# Page\n\n\`\`\`ask\n${GOOD}\n\`\`\`\n`).html);
    expect([...document.querySelectorAll('.asked .question')].map((q) => q.textContent)).toEqual([
      'Is it dirty?',
      'Is it bent?',
    ]);
    const no = document.querySelectorAll('.asked > details')[1];
    expect(no?.querySelectorAll('details').length).toBe(2);
    expect([...(no?.querySelectorAll('.cause a') ?? [])].map((a) => a.textContent)).toEqual(['which', 'somebody']);
  });

  it('are refused at their line without a check, without an answer, and where a cause links nowhere', () => {
    expect(ASK(GOOD.replace('check Look at it.\n', ''))[0]).toMatch(/^4 .*check/);
    expect(ASK(GOOD.replace('  no: Ask [somebody](#page).', ''))[0]).toMatch(/^7 .*“no: …”/);
    expect(ASK(GOOD.replace('[which](#page)', 'a good one'))[0]).toMatch(/^9 .*link/);
    expect(ASK(GOOD.replace('yes: Clean', 'maybe: Clean')).join()).toMatch(/maybe/);
    expect(ASK('')).toHaveLength(1);
  });

  it('have their dead links found', () => {
    const { mistakes } = build({
      'index.md': '# Front\n',
      'symptoms.md': `# Why\n\n\`\`\`ask\n${GOOD.replace('[which](#page)', '[which](07-nowhere.md)').replaceAll('#page', '#why')}\n\`\`\`\n`,
    });
    expect(mistakes).toHaveLength(1);
    expect(mistakes[0]).toMatch(/^chapters\/symptoms\.md:9 .*07-nowhere\.md/);
  });
});

describe('the glossary and the index of the search', () => {
  const BOOK = {
    'index.md': FRONT,
    '01-one.md': FIRST,
    '02-two.md': '# Two\n\n## The hand\n\nNow $h_A$ and $L$.\n',
    'glossary.md': '# Terms\n\n## Words\n\n- **Lead**: how far a turn goes.\n\n## Signs\n\n```symbols\n```\n',
  };

  it('say where a symbol is met first: in the section of the first chapter that has it', () => {
    const { page, mistakes } = build(BOOK);
    expect(mistakes).toEqual([]);
    const at = (name: string) => page('glossary').querySelector(`#symbol-${name} a`)?.getAttribute('href');
    expect(at('L')).toBe('one.html#the-lead');
    expect(at('h_A')).toBe('one.html#the-lead');
    expect(page('glossary').querySelector('#symbol-L')?.textContent).toMatch(/lead.*mm/s);
    const model = JSON.parse(page('two').querySelector('#page-model')?.textContent ?? '{}');
    expect(model.met.L[0]).toBe('one.html#the-lead');
    expect(model.met.k).toBeUndefined();
  });

  it('hold every section, term and symbol as plain text, and no algebra, field or picture', () => {
    const entries = build(BOOK).index();
    const section = entries.find(({ href }) => href === 'one.html#the-lead');
    expect(section).toMatchObject({ title: 'The lead', page: 'One', kind: 'section' });
    expect(section?.text).toContain('A turn moves');
    expect(section?.text).not.toMatch(/\w\(|\)\w/);
    expect(section?.text).not.toMatch(/[<>]|M10/);
    expect(entries.find(({ kind }) => kind === 'term')).toMatchObject({ title: 'Lead' });
    expect(entries.find(({ href }) => href.endsWith('#symbol-h_A'))).toMatchObject({ page: 'hA', kind: 'symbol' });
    expect(searchScript(build(BOOK).book).startsWith(`globalThis.${INDEX_GLOBAL} = [`)).toBe(true);
  });
});

describe('a section that moved to another page', () => {
  const moved = (line: string) =>
    build({ 'index.md': FRONT, '01-one.md': FIRST, '02-two.md': `# Two\n\n\`\`\`moved\n${line}\n\`\`\`\n` });

  it('is still led to by its former address', () => {
    const { page, mistakes } = moved('the-lead: The lead now stands in [the first chapter](01-one.md#the-lead).');
    expect(mistakes).toEqual([]);
    expect(page('two').querySelector('#the-lead a')?.getAttribute('href')).toBe('one.html#the-lead');
  });

  it('is refused where its line can’t be read or leads nowhere', () => {
    expect(moved('The lead is gone').mistakes).toHaveLength(1);
    expect(moved('the-lead: It is [there](03-three.md).').mistakes).toHaveLength(1);
  });
});

describe('the glossary', () => {
  it('has every term that a chapter explains', () => {
    const glossary = readFileSync(join(FOLDER, 'glossary.md'), 'utf8').toLowerCase();
    const names = [...glossary.matchAll(/^- \*\*(.*?)\*\*/gm)].map((m) => m[1] ?? '').join(', ');
    const known = new Set<string>();
    const terms = CHAPTERS.flatMap(({ text }) => countProse(text, known).terms);
    // Enough of a word to know it in another form: yields, basic sizes.
    const missing = terms.filter((term) => !names.includes(term.replace(/[.]$|s$/, '')));
    expect(missing).toEqual([]);
  });

  it('gives each term a place of its own, to which the search leads', () => {
    const { page, index } = build({
      'index.md': `${FRONT}\n[Terms](glossary.md)\n`,
      '01-one.md': FIRST,
      '02-two.md': '# Two\n\nMore.\n',
      'glossary.md':
        '# Terms\n\n## Words\n\n- **Net lead**: what a turn moves.\n- **Pressed, pulled**: the two flanks.\n',
    });
    const found = index().filter(({ kind }) => kind === 'term');
    expect(found.map(({ title }) => title)).toEqual(['Net lead', 'Pressed, pulled']);
    for (const { title, href } of found)
      expect(page('glossary').querySelector(`[id="${href.split('#')[1]}"] strong`)?.textContent).toBe(title);
  });
});

describe('other words of the trade', () => {
  const termsOf = (glossary: string) => new Set([...glossary.matchAll(/^- \*\*([^*]+)\*\*/gm)].map(([, term]) => term));

  it('stand each at a term of the glossary, in English and in German', () => {
    for (const [words, file] of [
      [OTHER_WORDS, 'glossary.md'],
      [IN_GERMAN, 'de/glossary.md'],
    ] as const) {
      const terms = termsOf(readFileSync(join(FOLDER, file), 'utf8'));
      expect(Object.keys(words).filter((term) => !terms.has(term))).toEqual([]);
      for (const list of Object.values(words)) expect(list).toMatch(/^[^;]+(?:; [^;]+)*$/);
    }
  });

  it('lead a machinist to our term', () => {
    const glossary = readFileSync(join(FOLDER, 'glossary.md'), 'utf8');
    const index = build({ 'index.md': '# Front\n', 'glossary.md': glossary }).index();
    const found = (typed: string) => find(index, typed).map(({ entry: { title } }) => title);
    for (const [typed, term] of [
      ['backlash', 'Lost motion'],
      ['slop', 'Axial play, radial play'],
      ['shim', 'Wedge'],
      ['gauge', 'Reading'],
      ['dial indicator', 'Reading'],
      ['closed height', 'Home'],
      ['jam nut', 'Preload'],
      ['micrometer head', 'Resolution'],
      ['gearing', 'Net lead'],
      ['self-locking', 'Holds by itself'],
    ] as const)
      expect(found(typed).slice(0, 3), typed).toContain(term);
  });
});
