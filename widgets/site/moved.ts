/**
 * Sections that stood on this page once, as a block: the name each had in an address, and a sentence that leads to where it stands now.
 * A link to it from elsewhere then does not end at the head of a page that says nothing of it. Nobody else sees the sentence.
 *
 *   what-must-be-held: This is now [a chapter of its own](05-what-must-be-held.md).
 */
import type { Diagnostics } from './diagnostics.ts';
import type { Inline } from './passage.ts';

export interface Moved {
  readonly id: string;
  readonly says: string;
  readonly line: number;
}

export const readMoved = (body: string, firstLine: number, book: Diagnostics): Moved[] =>
  body.split('\n').flatMap((raw, i) => {
    if (raw.trim() === '') return [];
    const [, id, says] = /^([a-z0-9-]+):\s+(\S.*)$/.exec(raw.trim()) ?? [];
    if (id !== undefined && says !== undefined) return [{ id, says, line: firstLine + i }];
    book.note(firstLine + i, 'Write the name that the section had in an address, a colon, and where it stands now.');
    return [];
  });

export const renderMoved = (moved: readonly Moved[], inline: Inline): string =>
  moved.map(({ id, says, line }) => `<p class="moved" id="${id}">${inline(says, line)}</p>`).join('');
