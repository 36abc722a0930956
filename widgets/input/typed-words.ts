/** What a reader types in a field of text, as links and files keep it, and back: at the edge of the page, never within. */
import { TYPED } from '#words/typed.ts';

/** Of a longer text only its head is turned into other words, since each takes as long as reading it. */
const SHORT = 60_000;

const headOnly = (text: string, turn: (text: string) => string): string => {
  if (text.length <= SHORT) return turn(text);
  const end = text.slice(0, SHORT).search(/[\n|]/);
  return end < 0 ? text : turn(text.slice(0, end)) + text.slice(end);
};

/** Words of the edition, of the list of this name or of a `thread`. */
export const wordsShown = (list: string, kept: string): string =>
  Object.hasOwn(TYPED, list) ? headOnly(kept, (text) => TYPED[list]?.toShown(text) ?? text) : kept;

/** The kept words; those of English stay as they are. */
export const wordsKept = (list: string, typed: string): string =>
  Object.hasOwn(TYPED, list) ? headOnly(typed, (text) => TYPED[list]?.toKept(text) ?? text) : typed;
