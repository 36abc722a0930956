/**
 * Readings: what a reader measured on a piece of their own and typed, or had at hand. A number of a design is decided and can be
 * decided again; a reading is lost for good where it is not kept. So they are kept without being asked, by page and by the design in
 * use, each under its key in an address: `shop.runs`, and `shop.runs.metric` for a text that was refused.
 */
import type { TextName } from '../input/texts.ts';
import type { NumberSet } from './numbers.ts';

/** Texts by their keys in an address. */
export type Readings = Readonly<Record<string, string>>;

const LISTS: ReadonlySet<string> = new Set<TextName>([
  ...(['runs', 'piece', 'dated', 'warmth', 'gauge', 'method', 'settled'] as const),
  ...(['feet', 'readings', 'rounds', 'stands', 'passport', 'hardware', 'ticked'] as const),
]);

/** Characters that are kept of a page: a browser has room for some millions in all. */
export const MOST_KEPT = 400_000;
const MOST_PAGES = 60;
const MOST_KEYS = 100;

export const isReading = (set: NumberSet | undefined, name: string): boolean =>
  set !== undefined && (set.measured === true || LISTS.has(name));

export const readingFields = (sets: Iterable<NumberSet>): readonly { readonly id: string; readonly name: string }[] =>
  [...sets].flatMap((set) =>
    set.inputs.filter(({ name }) => isReading(set, name)).map(({ name }) => ({ id: set.id, name })),
  );

export const lengthOf = (readings: Readings): number =>
  Object.values(readings).reduce((sum, text) => sum + text.length, 0);

/** Readings as they were stored, by whatever hand: texts under keys, and not too much of either. */
export const readingsFrom = (stored: unknown): Readings => {
  if (typeof stored !== 'object' || stored === null) return {};
  const good = Object.entries(stored).filter(
    (entry): entry is [string, string] => typeof entry[1] === 'string' && /^[\w-]+(?:\.\w+){1,2}$/.test(entry[0]),
  );
  const readings = Object.fromEntries(good.slice(0, MOST_KEYS));
  return lengthOf(readings) <= MOST_KEPT ? readings : {};
};

/** The same for the pages of a design, by their names. */
export const pagesFrom = (stored: unknown): Readonly<Record<string, Readings>> =>
  typeof stored === 'object' && stored !== null
    ? Object.fromEntries(
        Object.entries(stored)
          .filter(([page]) => /^[a-z0-9-]{1,80}$/.test(page))
          .slice(0, MOST_PAGES)
          .map(([page, readings]): [string, Readings] => [page, readingsFrom(readings)])
          .filter(([, readings]) => Object.keys(readings).length > 0),
      )
    : {};

/** Tells one long list from another, for a link that can’t carry it: its length and a sum of its characters. */
export const markOf = (text: string): string => {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  return `${text.length.toString(36)}-${(sum >>> 0).toString(36)}`;
};
