/** A file of readings as text, whatever of the usual encodings it was saved in. */

import { bad, good, type Result } from '../../engine/index.ts';
import { MOST_CHARACTERS } from '../../input/readings-table.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'file-too-long': { readonly name: string; readonly bytes: number; readonly most: number };
    'file-unread': { readonly name: string };
  }
}

export const readTextFile = async (file: File): Promise<Result<string>> => {
  if (!(file.size <= MOST_CHARACTERS))
    return bad('file-too-long', { name: file.name, bytes: file.size, most: MOST_CHARACTERS });
  try {
    return good(decoded(await file.arrayBuffer()));
  } catch {
    return bad('file-unread', { name: file.name });
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
