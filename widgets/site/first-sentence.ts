/** A caption in two: its first sentence, and the rest. */

/** “To scale.” alone says too little to stand under a picture. */
const SHORTEST = 24;

/** What a full stop does not end: a value, algebra, code. */
const WHOLE = /\{\{.*?\}\}|\$[^$]*\$|`[^`]*`/g;

export const firstSentence = (text: string): { readonly says: string; readonly more: string } => {
  const plain = text.replace(WHOLE, (piece) => 'x'.repeat(piece.length));
  for (const { index } of plain.matchAll(/[.!?]”?(?=\s+[A-Z“])/g)) {
    const end = index + (plain[index + 1] === '”' ? 2 : 1);
    if (end >= SHORTEST) return { says: text.slice(0, end), more: text.slice(end).trim() };
  }
  return { says: text, more: '' };
};
