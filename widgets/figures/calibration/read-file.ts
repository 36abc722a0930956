/** A file of readings as text, whatever of the usual encodings it was saved in. */

import { good, quoted, type Result, said } from '../../engine/index.ts';
import { MOST_CHARACTERS } from '../../input/readings-table.ts';

export const readTextFile = async (file: File): Promise<Result<string>> => {
  if (!(file.size <= MOST_CHARACTERS))
    return said(
      `${quoted(file.name)} has ${file.size} bytes; at most ${MOST_CHARACTERS} are taken: thin the readings out.`,
    );
  try {
    return good(decoded(await file.arrayBuffer()));
  } catch {
    return said(`${quoted(file.name)} could not be read; choose it again, or paste the readings instead.`);
  }
};

const decoded = (bytes: ArrayBuffer): string => {
  const [first, second] = new Uint8Array(bytes, 0, Math.min(2, bytes.byteLength));
  // Spreadsheets save “Unicode text” this way, with a mark in front.
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    // An older µ or °. What is no text at all shows itself to the reader of tables.
    return new TextDecoder('windows-1252').decode(bytes);
  }
};
