/**
 * Keeps the address abreast of the page. A change is written at once, since a reload takes the address as it stands when it
 * begins. Browsers stop a page that writes too often (one of them at 100 times in 30 s), so a drag or a long text is written a
 * few times a second, and when it ends.
 */
import { addressOf, rememberView } from './address.ts';
import { onDesignsChange } from './design-store.ts';
import type { Store } from './store.ts';

const BURST = 15;
/** The least time between two writings of a long burst, ms. */
const REST = 350;

export const keepAddress = (store: Store, until: AbortSignal): void => {
  let room = BURST;
  let last = performance.now();
  let view = store.view();

  const write = () => {
    if (store.view() !== view) {
      view = store.view();
      rememberView(view);
    }
    const search = addressOf(store, location.search);
    if (search === new URLSearchParams(location.search).toString()) return;
    room = Math.max(0, room - 1);
    try {
      history.replaceState(history.state, '', `${search === '' ? location.pathname : `?${search}`}${location.hash}`);
    } catch {
      // Not allowed where the page stands: its numbers last as long as it does.
    }
  };

  let pending = 0;
  const soon = () => {
    const now = performance.now();
    room = Math.min(BURST, room + (now - last) / REST);
    last = now;
    if (room >= 1) return write();
    if (pending === 0)
      pending = window.setTimeout(() => {
        pending = 0;
        write();
      }, REST);
  };

  store.onWrite(soon);
  // What another tab keeps is what this page would begin with the next time.
  onDesignsChange(soon, until);
  // Where a burst ends, and before what may lead away. Back to an earlier place on this page brings the address it had there.
  for (const moment of ['storage', 'pointerup', 'click', 'focusout', 'popstate', 'pagehide', 'pageshow'])
    window.addEventListener(moment, write, { signal: until });
  const key = ({ key, repeat }: KeyboardEvent) => {
    // Held arrows let go, and the keys of a browser; not the letters of a text.
    if (key.length > 1 && !repeat && pending !== 0) write();
  };
  window.addEventListener('keyup', key, { signal: until });
  window.addEventListener('keydown', key, { signal: until });
  until.addEventListener('abort', () => window.clearTimeout(pending));
  write();
};
