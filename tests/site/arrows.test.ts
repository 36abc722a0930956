/** The rooms of `widgets/` and which may know which; the arrows run one way, and nothing runs in a circle. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../../widgets');

/** What each room may import from, besides itself. */
const ARROWS: Readonly<Record<string, readonly string[]>> = {
  engine: [],
  words: ['engine'],
  input: ['engine', 'words'],
  assembly: ['engine', 'words', 'input'],
  'figures/kit': ['engine', 'words', 'input', 'assembly'],
  figures: ['engine', 'words', 'input', 'assembly', 'figures/kit'],
  exercises: ['engine', 'words', 'input', 'assembly', 'figures/kit'],
  page: ['engine', 'words', 'input', 'assembly', 'exercises'],
  site: ['engine', 'words', 'input', 'assembly', 'figures', 'figures/kit', 'exercises', 'page'],
  client: ['engine', 'words', 'input', 'assembly', 'figures', 'figures/kit', 'exercises', 'page'],
};

const FILES = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => /\.(?:ts|mjs)$/.test(file) && !/\.d\.m?ts$/.test(file));

const roomOf = (file: string): string => (file.startsWith('figures/kit/') ? 'figures/kit' : (file.split('/')[0] ?? ''));

/** Imports of a file, types too, by their path from the root. */
const importsOf = (file: string): string[] => {
  const source = readFileSync(join(root, file), 'utf8');
  const words = [...source.matchAll(/from '#words\/([^']+)'/g)].map(([, path = '']) => `words/en/${path}`);
  const beside = [...source.matchAll(/(?:from|import)\s*\(?\s*['"](\.{1,2}\/[^'"$]+)['"]/g)].map(([, path = '']) =>
    relative(root, resolve(root, dirname(file), path)).replaceAll('\\', '/'),
  );
  return [...words, ...beside];
};
const IMPORTS = new Map(FILES.map((file) => [file, importsOf(file)]));

describe('the rooms', () => {
  it('are those of the plan', () => {
    expect([...new Set(FILES.map(roomOf))].sort()).toEqual(Object.keys(ARROWS).sort());
  });

  it.each(Object.keys(ARROWS))('%s knows no room above it', (room) => {
    const wrong = [...IMPORTS].flatMap(([file, imports]) =>
      roomOf(file) !== room
        ? []
        : imports
            .filter((to) => roomOf(to) !== room && !ARROWS[room]?.includes(roomOf(to)))
            .map((to) => `${file} imports ${to}`),
    );
    expect(wrong).toEqual([]);
  });

  it('know the engine by its one entry', () => {
    const inside = [...IMPORTS].flatMap(([file, imports]) =>
      file.startsWith('engine/')
        ? []
        : imports.filter((to) => to.startsWith('engine/') && to !== 'engine/index.ts').map((to) => `${file}: ${to}`),
    );
    expect(inside).toEqual([]);
  });

  it('leave each figure to itself: what two need stands in the kit', () => {
    const folder = (file: string) => file.split('/')[1];
    const across = [...IMPORTS].flatMap(([file, imports]) =>
      roomOf(file) === 'figures' && file !== 'figures/lazy.ts'
        ? imports.filter((to) => roomOf(to) === 'figures' && folder(to) !== folder(file)).map((to) => `${file}: ${to}`)
        : [],
    );
    expect(across).toEqual([]);
  });

  it('hold no circle of files', () => {
    const done = new Set<string>();
    const circle = (file: string, path: readonly string[]): readonly string[] | undefined => {
      if (path.includes(file)) return [...path.slice(path.indexOf(file)), file];
      if (done.has(file)) return undefined;
      for (const next of IMPORTS.get(file) ?? []) {
        const found = circle(next, [...path, file]);
        if (found) return found;
      }
      done.add(file);
      return undefined;
    };
    for (const file of FILES) expect(circle(file, [])).toBeUndefined();
  });
});
