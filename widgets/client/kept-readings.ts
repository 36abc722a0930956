/**
 * Where readings are kept: this browser’s storage, one entry for each page and each design. They belong to the design that was in
 * use when they were typed, or to none; see assembly/readings.ts.
 */
import { markOf, type Readings, readingsFrom } from '../assembly/readings.ts';
import { storedKeys, storedText } from './storage.ts';

const HEAD = 'notebook-readings';

const pageName = (): string => (typeof document === 'undefined' ? '' : (document.body.dataset.page ?? ''));

/** The entry of this page, or of another, for a design; an empty name is none. */
export const readingsKey = (design: string, page = pageName()): string => `${HEAD} ${page} ${design}`;

export const readingsAt = (key: string, texts = storedText): Readings => {
  const text = texts(key);
  if (text === '') return {};
  try {
    return readingsFrom(JSON.parse(text));
  } catch {
    return {};
  }
};

/** The list with this mark, of whatever design; undefined where this browser keeps none. */
export const readingMarked = (key: string, mark: string): string | undefined =>
  storedKeys(readingsKey(''))
    .map((entry) => readingsAt(entry)[key])
    .find((text) => text !== undefined && markOf(text) === mark);

/** Entries of one design, by page. */
export const entriesOf = (design: string): readonly (readonly [page: string, entry: string])[] =>
  storedKeys(`${HEAD} `).flatMap((entry) => {
    const [, page, name] = /^\S+ (\S*) (.*)$/s.exec(entry) ?? [];
    return page !== undefined && name === design ? [[page, entry] as const] : [];
  });
