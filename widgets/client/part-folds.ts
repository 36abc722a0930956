/** Parts of a page that stand folded under their heading: a link to the heading, or to what stands in one, opens it. */

/** Opens the part that is asked for; what is not on the page opens nothing. */
const openAt = (hash: string): void => {
  let name = hash.slice(1);
  try {
    name = decodeURIComponent(name);
  } catch {
    // A broken address names no place.
  }
  const target = name === '' ? null : document.getElementById(name);
  const next = target?.nextElementSibling;
  const fold = target?.closest('details.part') ?? (next?.matches('details.part') ? next : undefined);
  if (!(target && fold instanceof HTMLDetailsElement) || fold.open) return;
  fold.open = true;
  target.scrollIntoView();
};

export const mountPartFolds = (root: HTMLElement, until: AbortSignal): void => {
  if (!root.querySelector('details.part')) return;
  window.addEventListener('hashchange', () => openAt(location.hash), { signal: until });
  // The same link twice changes no address.
  document.addEventListener(
    'click',
    (event) => {
      const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>('a[href*="#"]') : null;
      if (link && link.pathname === location.pathname && link.hash === location.hash) openAt(link.hash);
    },
    { signal: until },
  );
  openAt(location.hash);
};

/** Runs once: at once where the element stands in no folded part or in an open one, else when that is opened. */
export const whenOpened = (element: Element, run: () => void): void => {
  const fold = element.closest<HTMLDetailsElement>('details.part');
  if (!fold || fold.open) {
    run();
    return;
  }
  const opened = () => {
    // Printing opens all and shuts them again before this is told.
    if (!fold.open) return;
    fold.removeEventListener('toggle', opened);
    run();
  };
  fold.addEventListener('toggle', opened);
};
