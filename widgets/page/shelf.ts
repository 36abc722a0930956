/**
 * Where the reader's designs are kept: this browser's storage, shared by every page and every tab. Each change reads
 * what is there first, so that two tabs do not undo each other. Storage may be denied or full; then the answer is a sentence, the
 * designs live on in this page, and can be exported.
 */
import { bad, good, type Result } from '../engine/index.ts';
import { type Design, MOST_DESIGNS, readDesigns, writeDesigns } from '../shared/design-file.ts';

const KEY = 'notebook-designs';
const IN_USE = 'notebook-design-in-use';

/** What this page knows where storage gives nothing. */
let held: readonly Design[] = [];
let heldInUse = '';

export const designs = (): readonly Design[] => {
  let text: string | null = null;
  try {
    text = localStorage.getItem(KEY);
  } catch {
    return held;
  }
  if (text === null) return held;
  const read = readDesigns(text);
  // A half-written entry is not thrown away: it stays in storage until something good is kept over it.
  return read.ok ? read.value.designs : held;
};

const write = (list: readonly Design[]): Result<readonly Design[]> => {
  held = list;
  try {
    localStorage.setItem(KEY, writeDesigns(list));
  } catch {
    return bad(
      'This browser would not keep the designs (its storage is full or switched off). They last until the page is closed: export them to a file.',
    );
  }
  return good(list);
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
  let name = heldInUse;
  try {
    name = localStorage.getItem(IN_USE) ?? '';
  } catch {
    // The choice then lasts as long as the page.
  }
  return designs().find((d) => d.name === name);
};

export const useDesign = (name: string): void => {
  heldInUse = name;
  try {
    localStorage.setItem(IN_USE, name);
  } catch {
    // See designInUse().
  }
};

/** Tells when another tab has changed the shelf. */
export const onOtherTab = (listener: () => void): void => {
  window.addEventListener('storage', (event) => {
    if (event.key === KEY || event.key === IN_USE || event.key === null) listener();
  });
};
