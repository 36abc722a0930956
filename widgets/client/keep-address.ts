/**
 * Keeps the address abreast of the page. To write it costs a browser as much as a whole picture, so it is written when the numbers rest, and
 * before whatever may lead away or be the hand on its way to the address. One that a reload takes first is kept for it.
 */
import { addressOf, rememberView } from './address.ts';
import { onDesignsChange } from './design-store.ts';
import { tabText, writeTab } from './storage.ts';
import type { Store } from './store.ts';

/** What numbers that have changed rest before the address is written, ms; and the longest it is behind while they don't. */
const REST = 250;
const LONGEST = 1000;

/** The address that a page still had when it was left, and what it should have had. */
const UNWRITTEN = 'notebook-unwritten';

/**
 * The search part that the page is opened with: that of its address, or what it was left with before its address was written, where the reader has
 * reloaded it or gone back to it.
 */
export const openedWith = (): string => {
  const kept = tabText(UNWRITTEN);
  if (kept === '') return location.search;
  writeTab(UNWRITTEN, '');
  const [opened] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  try {
    const [left, search] = JSON.parse(kept) as readonly unknown[];
    return left === location.href && typeof search === 'string' && opened?.type !== 'navigate'
      ? search
      : location.search;
  } catch {
    return location.search;
  }
};

/** Keys that a browser hears, too; not the letters of a text, nor what works a field. */
const OF_THE_BROWSER = /^(?:Control|Meta|Alt|F\d+|Browser\w+)$/;

export const keepAddress = (store: Store, until: AbortSignal): void => {
  let view = store.view();
  let pending = 0;
  let since = 0;

  const write = () => {
    window.clearTimeout(pending);
    pending = 0;
    const search = addressOf(store, location.search);
    if (search === new URLSearchParams(location.search).toString()) return;
    try {
      history.replaceState(history.state, '', `${search === '' ? location.pathname : `?${search}`}${location.hash}`);
    } catch {
      // Not allowed where the page stands: its numbers last as long as it does.
    }
  };
  const soon = () => {
    if (store.view() !== view) {
      view = store.view();
      rememberView(view);
    }
    const now = performance.now();
    if (pending === 0) since = now;
    window.clearTimeout(pending);
    pending = window.setTimeout(write, Math.max(0, Math.min(REST, since + LONGEST - now)));
  };
  const writeWaiting = () => {
    if (pending !== 0) write();
  };
  const leave = () => {
    if (pending === 0) return write();
    // A reload has taken the address already.
    const { href } = location;
    writeTab(UNWRITTEN, JSON.stringify([href, addressOf(store, location.search)]));
    write();
  };

  store.onWrite(soon);
  // What another tab keeps is what this page would begin with the next time.
  onDesignsChange(soon, until);
  // Back to an earlier place on this page brings the address it had there.
  for (const moment of ['storage', 'popstate']) window.addEventListener(moment, write, { signal: until });
  const back = () => {
    // Of a page that was kept whole meanwhile.
    writeTab(UNWRITTEN, '');
    write();
  };
  window.addEventListener('pageshow', back, { signal: until });
  window.addEventListener('pagehide', leave, { signal: until });
  for (const moment of ['blur', 'copy']) window.addEventListener(moment, writeWaiting, { signal: until });
  document.addEventListener('visibilitychange', writeWaiting, { signal: until });
  // The hand goes to the address, or to a button of the browser.
  document.documentElement.addEventListener('mouseleave', writeWaiting, { signal: until });
  const link = ({ target }: Event) => {
    if (target instanceof Element && target.closest('a[href]')) writeWaiting();
  };
  window.addEventListener('click', link, { signal: until, capture: true });
  const key = ({ key, ctrlKey, metaKey, altKey }: KeyboardEvent) => {
    if (ctrlKey || metaKey || altKey || OF_THE_BROWSER.test(key)) writeWaiting();
  };
  window.addEventListener('keydown', key, { signal: until });
  until.addEventListener('abort', writeWaiting);
  write();
};
