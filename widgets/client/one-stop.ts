/**
 * Long lists of one kind of thing are one stop for Tab, and the arrow keys go along them (the roving tabindex of the ARIA Authoring Practices
 * Guide). Whatever is reached takes the others of its list out of the way of Tab; so nothing is lost without script, and a list that a
 * figure draws anew is as before until it is reached again.
 */

/** Lists, and what is gone along in them. A field of one line has no use of its own for up and down. */
const LISTS: readonly (readonly [list: string, items: string])[] = [
  ['.glossary', 'td > a'],
  ['.help article > ul', 'a'],
  ['figure .sheet, figure table', 'a[href], button, summary'],
  // Steps that an earlier example has worked.
  ['.steps', '.again > summary'],
  ['.own-list', 'summary'],
  ['.papers-counts', 'input'],
  ['.offered-field ol', 'button'],
];

/** How far an arrow goes; the ends of the list are infinitely far. */
const STEPS: Readonly<Record<string, number>> = {
  ArrowDown: 1,
  ArrowUp: -1,
  ArrowRight: 1,
  ArrowLeft: -1,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

interface Place {
  readonly items: readonly HTMLElement[];
  readonly item: HTMLElement;
}

const placeOf = (target: EventTarget | null): Place | undefined => {
  if (!(target instanceof HTMLElement)) return;
  for (const [lists, kinds] of LISTS) {
    const list = target.matches(kinds) ? target.closest(lists) : null;
    if (!list) continue;
    const items = [...list.querySelectorAll<HTMLElement>(kinds)].filter((item) => item.checkVisibility());
    if (items.length > 2) return { items, item: target };
  }
  return undefined;
};

export const mountOneStops = (root: HTMLElement, until: AbortSignal): void => {
  root.addEventListener(
    'focusin',
    ({ target }) => {
      const place = placeOf(target);
      for (const item of place?.items ?? []) item.tabIndex = item === place?.item ? 0 : -1;
    },
    { signal: until },
  );
  root.addEventListener(
    'keydown',
    (event) => {
      const step = STEPS[event.key];
      const inField = event.target instanceof HTMLInputElement;
      if (step === undefined || event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey) return;
      // In a field left and right, first and last are those of its text.
      if (inField && !/^Arrow(?:Up|Down)$/.test(event.key)) return;
      const place = placeOf(event.target);
      if (!place) return;
      const at = place.items.indexOf(place.item) + step;
      event.preventDefault();
      place.items[Math.max(0, Math.min(place.items.length - 1, at))]?.focus();
    },
    { signal: until },
  );
};
