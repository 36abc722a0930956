/**
 * What is out of sight follows the numbers when they rest, so that a key costs only what its reader sees of it. It follows sooner where it comes
 * into sight, and at once before the page is printed or left.
 */

import type { Store } from './store.ts';

/** How long numbers rest before what is out of sight follows, ms. */
const REST = 150;

const waiting = new Set<() => void>();
let timer = 0;

const follow = () => {
  window.clearTimeout(timer);
  timer = 0;
  const now = [...waiting];
  waiting.clear();
  for (const work of now) work();
};

/** Does something once the numbers rest. */
export const whenTheyRest = (work: () => void): void => {
  waiting.add(work);
  window.clearTimeout(timer);
  timer = window.setTimeout(follow, REST);
};

/** What waits follows before the page is printed, and as its reader turns to another window. */
export const mountFollowing = (store: Pick<Store, 'catchUp'>, until: AbortSignal): void => {
  const now = () => {
    // What the store still owes comes first: more may come to wait by it.
    store.catchUp();
    follow();
  };
  for (const moment of ['blur', 'beforeprint']) window.addEventListener(moment, now, { signal: until });
  until.addEventListener('abort', () => {
    window.clearTimeout(timer);
    waiting.clear();
  });
};

/** Gives what is to be called at each change: it refreshes a place that is in sight at once, and any other when the numbers rest. */
export const inSight = (place: Element, refresh: () => void): (() => void) => {
  let seen = true;
  let behind = false;
  const catchUp = () => {
    if (behind) refresh();
    behind = false;
  };
  new IntersectionObserver((entries) => {
    seen = entries.at(-1)?.isIntersecting ?? true;
    if (seen) catchUp();
  }).observe(place);
  return () => {
    if (seen) return refresh();
    behind = true;
    whenTheyRest(catchUp);
  };
};
