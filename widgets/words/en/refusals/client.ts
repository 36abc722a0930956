/** Why this browser keeps no designs, and a form sets no papers. */
import { quoted } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const CLIENT = {
  'shelf-of-newer-notebook': () =>
    'This browser keeps designs that this notebook can’t read, of a newer notebook or too many of them. They are left as they are, so none can be kept here: the address of the page carries its numbers.',
  'shelf-unreadable': () =>
    'What this browser kept of your designs can’t be read any more; open a file of them if you have one, since keeping a design writes over it.',
  'shelf-without-room': () => 'The designs would take more room than a file of them may have; remove one first.',
  'shelf-full': ({ most }) => `There are ${most} designs, which is all that are kept; remove one first.`,
  'shelf-not-lasting': () =>
    'This browser would not keep the designs (its storage is full or switched off). They last until the page is closed: export them to a file.',
  'papers-count-odd': ({ chapter, text, most }) =>
    `${chapter}: read ${quoted(text)}; give a whole number from 0 to ${most}.`,
  'papers-variants-odd': ({ text, most }) => `Read ${quoted(text)}; each exercise has from 1 to ${most} variants.`,
  'papers-none-asked': () => 'No exercise is asked for; put a number beside at least one chapter.',
} satisfies Partial<RefusalWords>;
