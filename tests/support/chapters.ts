/** The chapters as they stand, and chapters made up for a test, pressed with every widget. */
import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { adjustersIn } from '../../widgets/site/adjusters.ts';
import { type Book, readBook } from '../../widgets/site/book.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { type RenderedChapter, renderChapter } from '../../widgets/site/chapter.ts';
import type { Diagnostic } from '../../widgets/site/diagnostics.ts';
import { kept } from './kept.ts';

export const FOLDER = resolve(import.meta.dirname, '../../chapters');

export interface ChapterText {
  /** As mistakes name it. */
  readonly file: string;
  readonly text: string;
}

/** Every chapter but the front page. */
export const CHAPTERS: readonly ChapterText[] = readdirSync(FOLDER)
  .filter((name) => /^\d+-[a-z0-9-]+\.md$/.test(name))
  .sort()
  .map((name) => ({ file: `chapters/${name}`, text: readFileSync(resolve(FOLDER, name), 'utf8') }));

export const { adjusters: ADJUSTERS } = adjustersIn(FOLDER);

/** The whole book as it stands, with its front page. */
export const wholeBook = (): Book => kept('book', () => readBook(FOLDER, FIGURES));

export const press = (text: string, file = 'chapters/99-test.md'): RenderedChapter => {
  const own = CHAPTERS.some((chapter) => chapter.file === file && chapter.text === text);
  const page = own ? wholeBook().rendered.get(file.replace(/^chapters\/\d+-|\.md$/g, '')) : undefined;
  return page ?? renderChapter(file, text, FIGURES, ADJUSTERS);
};

export const mistakesIn = (text: string): readonly Diagnostic[] => press(text).mistakes;

/** Fenced blocks of a chapter by their first word: the info string, the body's lines and the line of the opening fence. */
export const blocksOf = (text: string, kind: string): { info: string; lines: string[]; opening: number }[] => {
  const found: { info: string; lines: string[]; opening: number }[] = [];
  const lines = text.split('\n');
  for (let i = 0; i < lines.length; i++) {
    const info = /^```(\S.*)$/.exec(lines[i] ?? '')?.[1];
    if (info === undefined) continue;
    const end = lines.indexOf('```', i + 1);
    if (new RegExp(`^${kind}\\b`).test(info)) found.push({ info, lines: lines.slice(i + 1, end), opening: i + 1 });
    i = end;
  }
  return found;
};
