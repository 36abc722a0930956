/**
 * Figures are printed in the chapter's own numbers and wake when they come near the window. Where a figure's numbers are others, by a link, a
 * design or typing, it wakes without being seen too, once the page rests, so that no paper shows the chapter's numbers for the reader's. One that
 * still sleeps when the page is printed says so in place of its picture.
 */
import { NOT_YET_YOURS } from '#words/client.ts';
import type { Store } from './store.ts';

/** Rest of the page before figures out of view wake, ms. */
const REST = 700;

/** The most that a busy page puts one off, ms. */
const LATEST = 2000;

const untilIdle = (): Promise<unknown> =>
  new Promise((resolve) => {
    // One engine has no idle time to ask for.
    if ('requestIdleCallback' in window) window.requestIdleCallback(resolve, { timeout: LATEST });
    else setTimeout(resolve, 50);
  });

/** Whether the printed picture of a figure with this set shows other numbers, or other units, than are in force. */
const differsFromPrinted = (store: Store, set: string): boolean =>
  store.view() !== 'metric' || (store.sets.get(set)?.inputs.some(({ name }) => !store.unchanged(set, name)) ?? false);

export interface Waking {
  /** A figure that sleeps until it is seen. */
  readonly add: (figure: HTMLElement, wake: () => Promise<void>) => void;
  /** Wakes all whose printed picture is not that of the numbers in force, and waits for them. */
  readonly wakeChanged: () => Promise<void>;
}

export const mountWaking = (store: Store, until: AbortSignal): Waking => {
  const asleep = new Map<HTMLElement, () => Promise<void>>();
  const waking = new Set<HTMLElement>();
  const changed = () => [...asleep.keys()].filter((figure) => differsFromPrinted(store, figure.dataset.set ?? ''));
  const rouse = async (figure: HTMLElement) => {
    const wake = asleep.get(figure);
    if (!wake || waking.has(figure)) return;
    waking.add(figure);
    await wake().finally(() => asleep.delete(figure));
  };

  let resting = 0;
  let walking = false;
  const walk = async () => {
    if (walking) return;
    walking = true;
    for (let [figure] = changed().filter((one) => !waking.has(one)); figure && !until.aborted; ) {
      await untilIdle();
      await rouse(figure);
      [figure] = changed().filter((one) => !waking.has(one));
    }
    walking = false;
  };
  const whenAtRest = () => {
    window.clearTimeout(resting);
    if (asleep.size > 0) resting = window.setTimeout(walk, REST);
  };
  store.onDrawn(whenAtRest);
  until.addEventListener('abort', () => window.clearTimeout(resting));

  let marked: HTMLElement[] = [];
  window.addEventListener(
    'beforeprint',
    () => {
      // Nor what is still being worked out.
      marked = [...changed(), ...document.querySelectorAll<HTMLElement>('figure.live:has([data-working])')];
      for (const figure of marked) figure.dataset.notYet = NOT_YET_YOURS;
    },
    { signal: until },
  );
  window.addEventListener(
    'afterprint',
    () => {
      for (const figure of marked) delete figure.dataset.notYet;
      marked = [];
    },
    { signal: until },
  );

  return {
    add: (figure, wake) => {
      asleep.set(figure, wake);
      const watch = new IntersectionObserver(
        ([entry]) => {
          if (!entry?.isIntersecting) return;
          watch.disconnect();
          void rouse(figure);
        },
        { rootMargin: '300px' },
      );
      watch.observe(figure);
      whenAtRest();
    },
    wakeChanged: async () => {
      await Promise.all(changed().map(rouse));
      // Some may have been on their way already.
      while (changed().length > 0 && !until.aborted) await new Promise((resolve) => setTimeout(resolve, 30));
    },
  };
};
