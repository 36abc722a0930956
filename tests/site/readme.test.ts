/** What README.md and DEVELOPERS.md say of the notebook is so today: chapters, commands, files, packages. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const textOf = (name: string): string => readFileSync(join(root, name), 'utf8');
const README = textOf('README.md');
const DEVELOPERS = textOf('DEVELOPERS.md');
const PACKAGE = JSON.parse(textOf('package.json')) as {
  readonly scripts: Readonly<Record<string, string>>;
  readonly engines: { readonly node: string };
  readonly devDependencies: Readonly<Record<string, string>>;
};
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
});

describe('both', () => {
  it('name commands that package.json has', () => {
    for (const [, name = ''] of `${README}${DEVELOPERS}`.matchAll(/npm run (?:--silent )?([a-z][a-z-]*)/g))
      expect(Object.keys(PACKAGE.scripts), name).toContain(name);
  });
});

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
});
