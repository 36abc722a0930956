/**
 * Where the reader's designs are kept: this browser's storage, shared by every page and every tab. Each change reads
 * what is there first, so that two tabs do not undo each other, and leaves in it what a newer notebook put there. Storage
 * may be denied or full; then the answer is a sentence, the designs live on in this page, and can be exported.
 */

import {
  type Design,
  type DesignFile,
  designsIn,
  MOST_DESIGNS,
  NO_DESIGNS,
  openFile,
  tooLong,
  withDesigns,
  withoutDesign,
  writeFile,
} from '../assembly/design-file.ts';
import { good, type Result, said } from '../engine/index.ts';
import { reasonOf } from '../words/reason.ts';
import { onlyHeld, readStored, storedText, writeStored } from './storage.ts';

const KEY = 'notebook-designs';
const IN_USE = 'notebook-design-in-use';

type Texts = (key: string) => string;

/** What is kept; where it can't be read, why, and whether it may be written over. */
const shelfFile = (
  texts: Texts,
):
  | { readonly ok: true; readonly value: DesignFile }
  | { readonly ok: false; readonly reason: string; readonly lost: boolean } => {
  const text = texts(KEY);
  if (text === '') return { ok: true, value: NO_DESIGNS };
  const file = openFile(text);
  if (file.ok) return file;
  return file.whole
    ? {
        ok: false,
        lost: false,
        reason:
          'This browser keeps designs that this notebook can’t read, of a newer notebook or too many of them. They are left as they are, so none can be kept here: the address of the page carries its numbers.',
      }
    : {
        ok: false,
        lost: true,
        // A half-written entry is not thrown away: it stays in storage until something good is kept over it.
        reason:
          'What this browser kept of your designs can’t be read any more; open a file of them if you have one, since keeping a design writes over it.',
      };
};

/** The designs, or why what is stored can't be read. */
export const readDesignStore = (texts: Texts = readStored): Result<readonly Design[]> => {
  const file = shelfFile(texts);
  return file.ok ? good(designsIn(file.value).designs) : said(file.reason);
};

export const designs = (texts: Texts = readStored): readonly Design[] => {
  const shelf = readDesignStore(texts);
  return shelf.ok ? shelf.value : [];
};

/** All that is kept, as a file. */
export const shelfText = (): string => {
  const file = shelfFile(readStored);
  return writeFile(file.ok ? file.value : NO_DESIGNS);
};

const change = (make: (file: DesignFile) => Result<DesignFile>): Result<DesignFile> => {
  const file = shelfFile(readStored);
  if (!file.ok && !file.lost) return said(file.reason);
  const made = make(file.ok ? file.value : NO_DESIGNS);
  if (!made.ok) return made;
  const text = writeFile(made.value);
  // What is written must be read again.
  if (tooLong(text.length, 'characters') !== undefined)
    return said('The designs would take more room than a file of them may have; remove one first.');
  writeStored(KEY, text);
  tell();
  return made;
};

const ONLY_HELD =
  'This browser would not keep the designs (its storage is full or switched off). They last until the page is closed: export them to a file.';

export interface Kept {
  /** Names of those that are on the shelf now. */
  readonly names: readonly string[];
  /** Why others are not, or why these do not last; empty where all is well. */
  readonly fault: string;
}

/** Keeps numbers under their names. Numbers a design has already and that are not given stay: it grows from chapter to chapter. */
export const keepDesigns = (given: readonly Design[]): Kept => {
  const names = new Set<string>();
  let full = false;
  const done = change((file) => {
    const known = new Set(designsIn(file).designs.map((d) => d.name));
    let room = MOST_DESIGNS - file.designs.length;
    const taken = given.filter(({ name }) => {
      if (!known.has(name) && room-- <= 0) return false;
      known.add(name);
      names.add(name);
      return true;
    });
    full = taken.length < given.length;
    return good(withDesigns(file, taken));
  });
  if (!done.ok) return { names: [], fault: reasonOf(done) };
  return {
    names: [...names],
    fault: onlyHeld(KEY)
      ? ONLY_HELD
      : full
        ? `There are ${MOST_DESIGNS} designs, which is all that are kept; remove one first.`
        : '',
  };
};

export const removeDesign = (name: string): Result<unknown> => {
  const done = change((file) => good(withoutDesign(file, name)));
  return done.ok && onlyHeld(KEY) ? said(ONLY_HELD) : done;
};

export const designInUse = (texts: Texts = readStored): Design | undefined => {
  const name = texts(IN_USE);
  return name === '' ? undefined : designs(texts).find((d) => d.name === name);
};

/** The design that a page opened anew begins with. */
export const lastingDesignInUse = (): Design | undefined => designInUse(storedText);

export const useDesign = (name: string): void => {
  writeStored(IN_USE, name);
  tell();
};

const listeners = new Set<() => void>();
const tell = () => {
  for (const listener of listeners) listener();
};

/** Tells when another design is in use or the shelf has changed, in this tab or in another. */
export const onDesignsChange = (listener: () => void, until: AbortSignal): void => {
  const stored = ({ key }: StorageEvent) => {
    if (key === KEY || key === IN_USE || key === null) listener();
  };
  listeners.add(listener);
  window.addEventListener('storage', stored, { signal: until });
  until.addEventListener('abort', () => listeners.delete(listener));
};
