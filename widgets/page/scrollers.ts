/** A formula wider than its place can be scrolled by keys: it becomes a stop for Tab while it is, and only then. */
import { all } from './dom.ts';

export const wakeScrollers = (root: HTMLElement): void => {
  const places = all(root, '.formula, .in-numbers, .derivation .right');
  const mark = () => {
    const wide = places.filter((place) => place.scrollWidth > place.clientWidth + 1);
    for (const place of places)
      if (wide.includes(place)) {
        place.tabIndex = 0;
        place.setAttribute('role', 'group');
        place.setAttribute('aria-label', 'Formula');
      } else if (place.hasAttribute('tabindex'))
        for (const name of ['tabindex', 'role', 'aria-label']) place.removeAttribute(name);
  };
  new ResizeObserver(mark).observe(root);
};
