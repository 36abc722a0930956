/**
 * What the reader has tried and got right, by exercise: kept in this browser and nowhere else, exportable, erasable. Where
 * storage is denied it lasts as long as the page.
 */
import { solvedOnce } from '#words/client.ts';
import { onlyHeld, readStored, writeStored } from './storage.ts';

export interface Tally {
  readonly tried: number;
  readonly right: number;
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
      if (isCount(tally?.tried) && isCount(tally.right)) sound[id] = { tried: tally.tried, right: tally.right };
    return sound;
  } catch {
    return {};
  }
};

export const tallyOf = (id: string): Tally => {
  const all = progress();
  return Object.hasOwn(all, id) ? (all[id] ?? NOTHING) : NOTHING;
};

export const recordTry = (id: string, right: boolean): void => {
  const { tried, right: good } = tallyOf(id);
  writeStored(KEY, JSON.stringify({ ...progress(), [id]: { tried: tried + 1, right: good + Number(right) } }));
};

export const eraseProgress = (): void => writeStored(KEY, '');

export const progressSays = (ids: readonly string[]): string => {
  const all = progress();
  const done = ids.filter((id) => Object.hasOwn(all, id) && (all[id]?.right ?? 0) > 0).length;
  return solvedOnce(done, ids.length, !onlyHeld(KEY));
};
