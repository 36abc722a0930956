/** Refusals of drawings for the shop. */
import { listed, quoted, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const DRAWINGS: RefusalWords<
  'part-larger-than-paper' | 'no-such-sheet' | 'title-row-unread' | 'title-field-twice' | 'title-too-long'
> = {
  'part-larger-than-paper': ({ part, paper, length }) =>
    `The ${part}, ${say(length)} mm, fits on ${paper} at no scale of the standard: take larger paper.`,
  'no-such-sheet': ({ sheet }) => `This adjuster has no ${sheet}: choose another sheet.`,
  'title-row-unread': ({ row, fields }) =>
    `Read ${quoted(row)} in the title block; write a row like number = RS-01, with one of ${listed(fields)}.`,
  'title-field-twice': ({ field }) => `The title block states ${field} twice: leave one out.`,
  'title-too-long': ({ field, most }) =>
    `What stands for ${field} is longer than its cell: use at most ${most} letters.`,
};
