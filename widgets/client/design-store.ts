/**
 * Where the reader's designs are kept: this browser's storage, shared by every page and every tab. Each change reads
 * what is there first, so that two tabs do not undo each other. Storage may be denied or full; then the answer is a sentence, the
 * designs live on in this page, and can be exported.
 */

import { type Design, MOST_DESIGNS, readDesigns, writeDesigns } from '../assembly/design-file.ts';
import { bad, good, type Result } from '../engine/index.ts';
import { onlyHeld, readStored, writeStored } from './storage.ts';

const KEY = 'notebook-designs';
const IN_USE = 'notebook-design-in-use';

/** The designs, or why what is stored can't be read. */
export const readDesignStore = (): Result<readonly Design[]> => {
  const text = readStored(KEY);
  if (text === '') return good([]);
  const read = readDesigns(text);
  // A half-written entry is not thrown away: it stays in storage until something good is kept over it.
  return read.ok
    ? good(read.value.designs)
    : bad(
        'What this browser kept of your designs can’t be read any more; open a file of them if you have one, since keeping a design writes over it.',
      );
};

export const designs = (): readonly Design[] => {
  const shelf = readDesignStore();
  return shelf.ok ? shelf.value : [];
};

const write = (list: readonly Design[]): Result<readonly Design[]> => {
  writeStored(KEY, writeDesigns(list));
  return onlyHeld(KEY)
    ? bad(
        'This browser would not keep the designs (its storage is full or switched off). They last until the page is closed: export them to a file.',
      )
    : good(list);
};

/** Keeps numbers under a name. Numbers a design has already and that are not given stay: it grows from chapter to chapter. */
export const keepDesign = (design: Design): Result<readonly Design[]> => {
  const list = designs();
  const known = list.find((d) => d.name === design.name);
  if (!known && list.length >= MOST_DESIGNS)
    return bad(`There are ${MOST_DESIGNS} designs, which is all that are kept; remove one first.`);
  const merged = { name: design.name, numbers: { ...known?.numbers, ...design.numbers } };
  return write(known ? list.map((d) => (d === known ? merged : d)) : [...list, merged]);
};

export const removeDesign = (name: string): Result<readonly Design[]> =>
  write(designs().filter((d) => d.name !== name));

export const designInUse = (): Design | undefined => {
  const name = readStored(IN_USE);
  return designs().find((d) => d.name === name);
};

export const useDesign = (name: string): void => {
  writeStored(IN_USE, name);
  for (const listener of listeners) listener();
};

const listeners = new Set<() => void>();

/** Tells when another design is in use, or another tab has changed the shelf. */
export const onDesignsChange = (listener: () => void, until: AbortSignal): void => {
  const stored = ({ key }: StorageEvent) => {
    if (key === KEY || key === IN_USE || key === null) listener();
  };
  listeners.add(listener);
  window.addEventListener('storage', stored, { signal: until });
  until.addEventListener('abort', () => listeners.delete(listener));
};
