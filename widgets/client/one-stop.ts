/**
 * Things of one kind that stand together, or one after another down the page, are one stop for Tab, and the arrow keys go along them (the roving tabindex
 * of the ARIA Authoring Practices Guide). Whatever is reached takes the others of its list out of the way of Tab; so nothing is lost without script, and a
 * list that a figure draws anew is as before until it is reached again.
 */

/** Lists, and what is gone along in them. A field of one line has no use of its own for up and down. */
export const LISTS: readonly (readonly [list: string, items: string])[] = [
  ['nav.chapters', 'a, summary'],
  ['nav.neighbours', 'a'],
  ['.glossary', 'td > a'],
  ['.help article > ul', 'a'],
  ['figure .sheet, figure table', 'a[href], button, summary'],
  // What unfolds of a figure, and what shows it large.
  ['figure', '.foot-line > button, .foot-line > details > summary, .group > summary'],
  ['.predict', '[type=submit], .reveal > summary, .project'],
  // Steps that an earlier example has worked.
  ['.steps', '.again > summary'],
  ['article', '.example > .project, .derivation > .project'],
  ['article', '.exercise > .whole > summary'],
  ['.exercise', '.hint > summary, .worked > summary, .attempt > .plain'],
  ['.own-list', 'summary'],
  ['.papers-counts', 'input'],
  ['.offered-field ol', 'button'],
  ['.button-row', 'button'],
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
    const items = [...list.querySelectorAll<HTMLElement>(kinds)].filter(
      (item) => item.checkVisibility() && !item.matches(':disabled'),
    );
    if (items.length > 1) return { items, item: target };
  }
  return undefined;
};

/** To a room one thing is shown, in which Tab goes to all, and the arrow keys are those of a remote. */
const projecting = () => document.documentElement.matches('.projecting');

export const mountOneStops = (root: HTMLElement, until: AbortSignal): void => {
  root.addEventListener(
    'focusin',
    ({ target }) => {
      const place = placeOf(target);
      for (const item of place?.items ?? []) item.tabIndex = item === place?.item || projecting() ? 0 : -1;
    },
    { signal: until },
  );
  root.addEventListener(
    'keydown',
    (event) => {
      const step = STEPS[event.key];
      const inField = event.target instanceof HTMLInputElement;
      if (
        step === undefined ||
        projecting() ||
        event.defaultPrevented ||
        event.altKey ||
        event.ctrlKey ||
        event.metaKey
      )
        return;
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
