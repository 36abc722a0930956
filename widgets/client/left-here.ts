/**
 * The numbers with which a page was left, for as long as its tab is open: whoever follows a link of the book to another page and
 * comes back by a link finds them again. An address that carries numbers is whole, and a bare one that is typed, reloaded or gone
 * back to is the chapter, as ever; only a link to the page itself asks for what was left on it.
 */
import { leftNumbers } from '#words/client.ts';
import { readingsFrom } from '../assembly/readings.ts';
import { leftIn, putLeft } from './address.ts';
import { tabText, writeTab } from './storage.ts';
import type { Store } from './store.ts';

const pageName = () => document.body.dataset.page ?? '';
const leftKey = () => `notebook-left ${pageName()}`;
/** The page that the link leads to which was followed last. */
const FOLLOWED = 'notebook-followed';

/** Whether a link or the hand has opened the page, which was neither reloaded nor gone back to. */
export const newlyOpened = (): boolean => {
  const [opened] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  return opened?.type === 'navigate';
};

/** Puts back what was left, where a link of the book has opened the page; the sentence that says so, empty where nothing was. */
export const comeBack = (store: Store, search: string): string => {
  const followed = tabText(FOLLOWED) === pageName();
  writeTab(FOLLOWED, '');
  const carries = [...new URLSearchParams(search).keys()].some((key) => key.includes('.'));
  if (!followed || carries || !newlyOpened()) return '';
  try {
    const { texts, under } = JSON.parse(tabText(leftKey())) as Record<string, unknown>;
    const { back, away } = putLeft(store, { texts: readingsFrom(texts), under: readingsFrom(under) });
    return leftNumbers(back > 0, away);
  } catch {
    return '';
  }
};

/** Keeps them when the page is left, and which page a link leads to that carries no numbers. */
export const mountLeaving = (store: Store, until: AbortSignal): void => {
  const keep = () => {
    const left = leftIn(store);
    writeTab(leftKey(), Object.keys(left.under).length === 0 ? '' : JSON.stringify(left));
  };
  const follow = ({ target, ctrlKey, metaKey, shiftKey }: MouseEvent) => {
    const link = target instanceof Element ? target.closest('a[href]:not([target])') : null;
    const to = /^([a-z0-9-]+)\.html(?:#.*)?$/.exec(link?.getAttribute('href') ?? '')?.[1];
    if (to === undefined || ctrlKey || metaKey || shiftKey) return;
    // By then, since a browser may open the next page before this one is told that it is left.
    keep();
    writeTab(FOLLOWED, to);
  };
  document.addEventListener('click', follow, { signal: until });
  window.addEventListener('pagehide', keep, { signal: until });
};
