/** What README.md and DEVELOPERS.md say of the notebook is so today: chapters, commands, files, packages. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPart } from '../../widgets/assembly/adjuster/text.ts';
import { readThread } from '../../widgets/input/designation.ts';

const root = resolve(import.meta.dirname, '../..');
const textOf = (name: string): string => readFileSync(join(root, name), 'utf8');
const README = textOf('README.md');
const DEVELOPERS = textOf('DEVELOPERS.md');
const PACKAGE = JSON.parse(textOf('package.json')) as {
  readonly scripts: Readonly<Record<string, string>>;
  readonly engines: { readonly node: string };
  readonly devDependencies: Readonly<Record<string, string>>;
};
/** As it is read: line breaks are blanks. */
const flowing = (text: string): string => text.replace(/\s+/g, ' ');
const chapters = readdirSync(join(root, 'chapters')).filter((name) => /^\d\d-.*\.md$/.test(name));
/** The first cells of the rows under a head. */
const firstCells = (text: string, head: string): string[] => {
  const lines = text.split('\n');
  const from = lines.findIndex((line) => line.startsWith(`| ${head} |`)) + 2;
  const rows = lines.slice(from);
  return rows
    .slice(
      0,
      rows.findIndex((line) => !line.startsWith('|')),
    )
    .map((row) => row.split('|')[1]?.trim() ?? '');
};

describe('README.md', () => {
  it('lists every chapter by its title, in order', () => {
    expect(firstCells(README, 'chapter')).toEqual(
      chapters.map((name) => /^# (.+)$/m.exec(textOf(`chapters/${name}`))?.[1]),
    );
  });

  it('names the oldest Node that package.json takes, and files that are there', () => {
    expect(PACKAGE.engines.node).toBe('>=20.19');
    expect(README).toContain('20.19 or later');
    for (const [, file = ''] of README.matchAll(/\]\((?!https?:)([^)#]+)\)/g))
      expect(existsSync(join(root, file)), file).toBe(true);
  });

  it('counts the routes, the checks that lead to a cause, and the pages that are translated', () => {
    const routes = /```routes\n([\s\S]*?)```/.exec(textOf('chapters/index.md'))?.[1] ?? '';
    expect(routes.split('\n').filter((line) => /^[^\d:]+: /.test(line)).length).toBe(3);
    expect(README).toContain('The front page has three routes');
    const causes = textOf('chapters/symptoms.md')
      .split('\n')
      .flatMap((line) => /^( *)(?:yes|no): .*\]\(/.exec(line)?.[1]?.length ?? []);
    expect(Math.min(...causes)).toBe(0);
    expect(Math.max(...causes)).toBe(4);
    expect(flowing(README)).toContain('leads by one to three checks at the bench');
    expect(readdirSync(join(root, 'chapters/de')).sort()).toEqual([
      ...chapters.slice(0, 3),
      'glossary.md',
      'index.md',
      'review.md',
    ]);
    expect(flowing(README)).toContain('the front page, the first three chapters, the glossary and the review are');
  });

  it('shows parts and threads that are read as they stand there', () => {
    const shown = /Threads are typed the way people write them: ([\s\S]*?), and many more/.exec(README)?.[1] ?? '';
    const threads = [...shown.matchAll(/`([^`]+)`/g)].map(([, text = '']) => text);
    expect(threads.length).toBeGreaterThan(5);
    for (const text of threads) expect(readThread(text).ok, text).toBe(true);
    const [, base = ''] = /a row \(`base = ([^`]+)`\)/.exec(README) ?? [];
    expect(readPart('base', base).ok).toBe(true);
  });
});

describe('both', () => {
  it('name commands that package.json has', () => {
    for (const [, name = ''] of `${README}${DEVELOPERS}`.matchAll(/npm run (?:--silent )?([a-z][a-z-]*)/g))
      expect(Object.keys(PACKAGE.scripts), name).toContain(name);
  });
});

const FENCED = /^(`{3,})[^`\n]*\n[\s\S]*?^\1$/gm;
const withoutCode = (text: string): string => text.replace(/(?<!`)(`+)(?!`).+?(?<!`)\1(?!`)/g, '');
/** Names with a figure in them, which count nothing. */
const NAMES = /3MF|qti3|QTI 3|QTI$|that is not ours|TypeScript 7|source-s|ten, 25\.4, a thousand|\+1 for right hand/;
/** What the guide says, and where the number stands by which the code goes. */
const NUMBERS: readonly (readonly [phrase: string, file: string, there: string])[] = [
  ['at most 28 words', 'widgets/site/prose.ts', 'LONGEST = 28;'],
  [
    'at most twelve symbols in a chapter and eight in a section',
    'widgets/site/prose.ts',
    'MOST_SYMBOLS = 12; export const MOST_IN_VIEW = 8;',
  ],
  ['(120 of them where there are more)', 'widgets/exercises/bank.ts', 'MOST_WORKED = 120;'],
  ['fewer than one in four are sound', 'widgets/site/exercise-block.ts', 'good * 4 < tried.length'],
  ['within 1 % or half a unit', 'widgets/exercises/interval.ts', 'SHARE = 0.01;'],
  ['at 60 admissible points', 'widgets/site/derivation.ts', 'POINTS = 60;'],
  ['more than two steps before it are folded', 'widgets/site/grammar.ts', 'OPEN_STEPS = 2;'],
  [
    'Six to eight exercises stand in a chapter, two on the sheet',
    'tests/exercises/generators.test.ts',
    'are six to eight a chapter, two of the sheet',
  ],
  ['beyond 2400 characters', 'widgets/input/texts.ts', 'MOST_CARRIED = 2400;'],
  ['while they take under 8 ms', 'widgets/client/store.ts', 'SHORT = 8;'],
  ['names one to three', 'tests/figures/idle.test.ts', 'chief.length).toBeLessThanOrEqual(3)'],
  ['at most 640 px high', 'tests/browser/figures-first.test.ts', 'TALLEST = 640.5;'],
  [
    'lines (1.8 px for outlines and curves, 0.9 px for all else)',
    'widgets/figures/kit/drawing.css',
    'stroke-width: 1.8px;',
  ],
  ['letters (15 px for', 'widgets/figures/kit/drawing.css', '--letter: 15px;'],
  ['13 px for the rest', 'widgets/figures/kit/drawing.css', 'var(--letter, 13px)'],
  ['"version": 3,', 'widgets/assembly/design-file.ts', 'DESIGN_VERSION = 3'],
  [
    'four thousand of them, always the same, and a hundred thousand in',
    'tests/support/any-text.ts',
    'howMany(4000, 100_000)',
  ],
  ['hundreds of sequences against the store', 'tests/client/address.test.ts', 'howMany(400, 100_000)'],
  ['some dozens of actions', 'tests/browser/random-user.test.ts', 'howMany(24, 5000'],
  ['in two processes', 'tests/vitest.config.ts', 'maxWorkers: 2'],
  ['held at 1.64.1', 'package.json', '"playwright-core": "1.64.1"'],
  ['held at 9, which runs on Node 20', 'package.json', '"@stryker-mutator/core": "9.'],
];

describe('DEVELOPERS.md', () => {
  it('names files and folders that are there', () => {
    const named = [...DEVELOPERS.matchAll(/`((?:widgets|tests|chapters)\/[\w./-]+)`/g)].map(([, path = '']) => path);
    expect(named.length).toBeGreaterThan(20);
    for (const path of named) expect(existsSync(join(root, path)), path).toBe(true);
  });

  it('gives a new chapter the next number', () => {
    expect(DEVELOPERS).toContain(`\`${chapters.length + 1}-my-chapter.md\``);
  });

  it('says of each package why it is there, and of no other', () => {
    const why = firstCells(DEVELOPERS, 'package').flatMap((cell) => cell.split(', '));
    expect(why.toSorted()).toEqual(Object.keys(PACKAGE.devDependencies).toSorted());
  });

  it('states no number that does not stand in what it speaks of', () => {
    for (const [phrase, file, there] of NUMBERS) {
      expect(flowing(DEVELOPERS), phrase).toContain(phrase);
      expect(flowing(textOf(file)), `${phrase}: ${file}`).toContain(there);
    }
    const prose = flowing(
      withoutCode(
        NUMBERS.reduce((text, [phrase]) => text.replace(phrase, ''), flowing(DEVELOPERS.replace(FENCED, ''))),
      ),
    );
    expect(
      [...prose.matchAll(/.{0,20}\d\S*.{0,20}/g)].map(([found]) => found).filter((found) => !NAMES.test(found)),
    ).toEqual([]);
  });
});
