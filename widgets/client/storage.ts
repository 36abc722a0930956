/**
 * Texts that this browser keeps, each under a key, for every page and every tab. What its storage would not take, since it is
 * full or denied, is held in this page and stands over what is stored, until storage takes the next.
 */
const held = new Map<string, string>();

/** The text under a key; empty where there is none. */
export const readStored = (key: string): string => held.get(key) ?? storedText(key);

/** The text that storage has under a key: what a page finds that is opened anew. */
export const storedText = (key: string): string => {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
};

/** Keys of what storage has that begin so. */
export const storedKeys = (head: string): readonly string[] => {
  try {
    return Object.keys(localStorage).filter((key) => key.startsWith(head));
  } catch {
    return [];
  }
};

/** Whether a text lasts only until the page is closed. */
export const onlyHeld = (key: string): boolean => held.has(key);

/** Keeps a text in the place of what is there, an empty one by taking that away. */
export const writeStored = (key: string, text: string): void => {
  try {
    if (text === '') localStorage.removeItem(key);
    else localStorage.setItem(key, text);
    held.delete(key);
  } catch {
    held.set(key, text);
  }
};

/** The text that this tab keeps under a key while it is open; empty where there is none. */
export const tabText = (key: string): string => {
  try {
    return sessionStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
};

/** Keeps a text for this tab, an empty one by taking it away; what has no room is not kept. */
export const writeTab = (key: string, text: string): void => {
  try {
    sessionStorage.removeItem(key);
    if (text !== '') sessionStorage.setItem(key, text);
  } catch {
    // A page that is left is then opened by its links as it always was.
  }
};
