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
  withReadings,
  writeFile,
} from '../assembly/design-file.ts';
import type { Readings } from '../assembly/readings.ts';
import { type Bad, bad, type Good, good, type Result } from '../engine/index.ts';
import { reasonOf } from '../words/reason.ts';
import { entriesOf, readingsAt, readingsKey } from './kept-readings.ts';
import { onlyHeld, readStored, storedText, writeStored } from './storage.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'shelf-of-newer-notebook': Readonly<Record<never, never>>;
    'shelf-unreadable': Readonly<Record<never, never>>;
    'shelf-without-room': Readonly<Record<never, never>>;
    'shelf-full': { readonly most: number };
    /** The storage is denied or full: designs last until the page is closed. */
    'shelf-not-lasting': Readonly<Record<never, never>>;
  }
}

const KEY = 'notebook-designs';
const IN_USE = 'notebook-design-in-use';

type Texts = (key: string) => string;

/** What is kept; where it can't be read, why, and whether it may be written over. */
const shelfFile = (texts: Texts): Good<DesignFile> | (Bad & { readonly lost: boolean }) => {
  const text = texts(KEY);
  if (text === '') return good(NO_DESIGNS);
  const file = openFile(text);
  if (file.ok) return file;
  // A half-written entry is not thrown away: it stays in storage until something good is kept over it.
  return file.whole
    ? { ...bad('shelf-of-newer-notebook', {}), lost: false }
    : { ...bad('shelf-unreadable', {}), lost: true };
};

/** The designs, or why what is stored can't be read. */
export const readDesignStore = (texts: Texts = readStored): Result<readonly Design[]> => {
  const file = shelfFile(texts);
  return file.ok ? good(designsIn(file.value).designs) : file;
};

export const designs = (texts: Texts = readStored): readonly Design[] => {
  const shelf = readDesignStore(texts);
  return shelf.ok ? shelf.value : [];
};

/** All that is kept, as a file. */
export const shelfText = (): string => {
  const file = shelfFile(readStored);
  return writeFile(withReadings(file.ok ? file.value : NO_DESIGNS, readingsOf));
};

const readingsOf = (name: string): Readonly<Record<string, Readings>> =>
  Object.fromEntries(entriesOf(name).map(([page, entry]) => [page, readingsAt(entry)]));

/** Takes the readings of a design out of a file; those that this browser keeps of the same page stay. */
const keepReadings = ({ name, readings = {} }: Design): void => {
  for (const [page, texts] of Object.entries(readings)) {
    const entry = readingsKey(name, page);
    if (storedText(entry) === '') writeStored(entry, JSON.stringify(texts));
  }
};

const change = (make: (file: DesignFile) => Result<DesignFile>): Result<DesignFile> => {
  const file = shelfFile(readStored);
  if (!file.ok && !file.lost) return file;
  const made = make(file.ok ? file.value : NO_DESIGNS);
  if (!made.ok) return made;
  const text = writeFile(made.value);
  // What is written must be read again.
  if (tooLong(text.length, 'characters') !== undefined) return bad('shelf-without-room', {});
  writeStored(KEY, text);
  tell();
  return made;
};

export interface Kept {
  /** Names of those that are on the shelf now. */
  readonly names: readonly string[];
  /** Why others are not, or why these do not last, in a sentence; empty where all is well. */
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
  for (const design of given) if (names.has(design.name)) keepReadings(design);
  return {
    names: [...names],
    fault: onlyHeld(KEY)
      ? reasonOf(bad('shelf-not-lasting', {}))
      : full
        ? reasonOf(bad('shelf-full', { most: MOST_DESIGNS }))
        : '',
  };
};

export const removeDesign = (name: string): Result<unknown> => {
  const done = change((file) => good(withoutDesign(file, name)));
  if (done.ok) for (const [, entry] of entriesOf(name)) writeStored(entry, '');
  return done.ok && onlyHeld(KEY) ? bad('shelf-not-lasting', {}) : done;
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
