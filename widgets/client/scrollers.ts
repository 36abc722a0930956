/** A formula wider than its place can be scrolled by keys: it becomes a stop for Tab while it is, and only then. */
import { FORMULA } from '#words/client.ts';
import { all } from './dom.ts';
import type { Store } from './store.ts';

/** Measuring lays the whole page out, so it waits until numbers and window have come to rest, ms. */
const REST = 200;

const STOP = { tabindex: '0', role: 'group', 'aria-label': FORMULA };

export const mountScrollers = (root: HTMLElement, store: Store): void => {
  const places = all(root, '.formula, .in-numbers, .derivation .right');
  let stops: ReadonlySet<HTMLElement> | undefined;
  const mark = () => {
    const wide = new Set(places.filter((place) => place.scrollWidth > place.clientWidth + 1));
    for (const place of places) {
      if (wide.has(place) === (stops?.has(place) ?? false)) continue;
      for (const [name, value] of Object.entries(STOP))
        if (wide.has(place)) place.setAttribute(name, value);
        else place.removeAttribute(name);
    }
    stops = wide;
  };
  let resting = 0;
  const later = () => {
    window.clearTimeout(resting);
    resting = window.setTimeout(mark, REST);
  };
  new ResizeObserver(() => (stops ? later() : mark())).observe(root);
  store.onDrawn(later);
};
