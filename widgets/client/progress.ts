/**
 * What the reader has tried and got right, by exercise: kept in this browser and nowhere else, exportable, erasable. Where
 * storage is denied it lasts as long as the page.
 */
import { solvedOnce } from '#words/client.ts';
import { onlyHeld, readStored, writeStored } from './storage.ts';

export interface Tally {
  readonly tried: number;
  readonly right: number;
  /** How often it was right on days that follow one another at growing spaces; unknown where nothing was spaced yet. */
  readonly box?: number;
  /** The day of the last try where the reader is, counted from 1970. */
  readonly day?: number;
}
export type Progress = Readonly<Record<string, Tally>>;

const KEY = 'notebook-progress';
const NOTHING: Tally = { tried: 0, right: 0 };

const isCount = (x: unknown): x is number => Number.isSafeInteger(x) && (x as number) >= 0;

/** What is stored, each entry that makes sense; another page, or another hand, may have written there. */
export const progress = (): Progress => {
  try {
    const stored: unknown = JSON.parse(readStored(KEY));
    if (typeof stored !== 'object' || stored === null) return {};
    const sound: Record<string, Tally> = {};
    for (const [id, tally] of Object.entries(stored as Record<string, Partial<Tally> | null>))
      if (isCount(tally?.tried) && isCount(tally.right))
        sound[id] = {
          tried: tally.tried,
          right: tally.right,
          ...(isCount(tally.box) && isCount(tally.day) && { box: tally.box, day: tally.day }),
        };
    return sound;
  } catch {
    return {};
  }
};

export const tallyOf = (id: string): Tally => {
  const all = progress();
  return Object.hasOwn(all, id) ? (all[id] ?? NOTHING) : NOTHING;
};

/** Days until an exercise that was right so often comes again: each space about twice the one before (common practice, no source). */
const SPACES = [1, 2, 4, 9, 20, 45];

/** The day that the reader’s own clock and calendar show. */
const today = (): number => Math.floor(Date.now() / 86_400_000 - new Date().getTimezoneOffset() / 1440);

/** Right on another day than the last goes on by a space; wrong begins again, tomorrow. */
export const recordTry = (id: string, right: boolean, day = today()): void => {
  const { tried, right: good, box = 0, day: last } = tallyOf(id);
  const next = right ? (last === day && good > 0 ? box : Math.min(box + 1, SPACES.length - 1)) : 0;
  writeStored(
    KEY,
    JSON.stringify({ ...progress(), [id]: { tried: tried + 1, right: good + Number(right), box: next, day } }),
  );
};

/**
 * The exercises whose time has come, of all chapters: those tried once whose space is over, and those whose last try is still to
 * come, since the clock was wrong then or is now.
 */
export const dueOn = (day = today()): readonly string[] =>
  Object.entries(progress())
    .filter(([, { box = 0, day: last = Number.NaN }]) => !(day >= last && day < last + (SPACES[box] ?? 1)))
    .map(([id]) => id);

export const eraseProgress = (): void => writeStored(KEY, '');

export const progressSays = (ids: readonly string[]): string => {
  const all = progress();
  const done = ids.filter((id) => Object.hasOwn(all, id) && (all[id]?.right ?? 0) > 0).length;
  return solvedOnce(done, ids.length, !onlyHeld(KEY));
};
