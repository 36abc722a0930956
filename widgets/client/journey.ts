/**
 * How far a reader has come through the book: chapters they call done, predictions made, and where they left off. Kept in this
 * browser and nowhere else, like what was solved (progress.ts).
 */
import { progress } from './progress.ts';
import { readStored, writeStored } from './storage.ts';

export interface Journey {
  /** Chapters by their slugs. */
  readonly done: readonly string[];
  /** Predictions as `slug 0`. */
  readonly predicted: readonly string[];
  readonly at: { readonly href: string; readonly says: string } | undefined;
}

const KEY = 'notebook-journey';
/** Told to the page where anything of this or of the exercises has changed. */
export const MOVED = 'notebook-moved';

const texts = (x: unknown): string[] =>
  Array.isArray(x) ? x.filter((one): one is string => typeof one === 'string' && one.length < 100) : [];

/** A place within the notebook and nothing else: what is stored may have been written by another hand. */
const isPlace = (at: unknown): at is { href: string; says: string } => {
  const { href, says } = (at ?? {}) as Record<string, unknown>;
  return typeof says === 'string' && typeof href === 'string' && /^[a-z0-9-]+\.html(#[\w-]+)?$/.test(href);
};

export const journey = (): Journey => {
  try {
    const stored = (JSON.parse(readStored(KEY)) ?? {}) as Record<string, unknown>;
    return {
      done: texts(stored.done),
      predicted: texts(stored.predicted),
      at: isPlace(stored.at) ? { href: stored.at.href, says: stored.at.says.slice(0, 200) } : undefined,
    };
  } catch {
    return { done: [], predicted: [], at: undefined };
  }
};

const write = (change: Partial<Journey>): void => {
  writeStored(KEY, JSON.stringify({ ...journey(), ...change }));
  tellMoved();
};

export const tellMoved = (): void => {
  document.dispatchEvent(new Event(MOVED));
};

export const callDone = (slug: string, done: boolean): void => {
  const others = journey().done.filter((one) => one !== slug);
  write({ done: done ? [...others, slug] : others });
};

export const hasPredicted = (slug: string, index: number): boolean => journey().predicted.includes(`${slug} ${index}`);

export const recordPrediction = (slug: string, index: number): void => {
  const name = `${slug} ${index}`;
  const { predicted } = journey();
  if (!predicted.includes(name)) write({ predicted: [...predicted, name] });
};

export const leaveAt = (href: string, says: string): void => write({ at: { href, says } });

export const eraseJourney = (): void => {
  writeStored(KEY, '');
  tellMoved();
};

/** How many of these tasks are done, of predictions by their index on a page and exercises by name. */
export const tasksDone = (slug: string, predictions: readonly number[], exercises: readonly string[]): number => {
  const solved = progress();
  return (
    predictions.filter((index) => hasPredicted(slug, index)).length +
    exercises.filter((id) => Object.hasOwn(solved, id) && (solved[id]?.right ?? 0) > 0).length
  );
};
